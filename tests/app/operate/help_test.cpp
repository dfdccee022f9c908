// Help in the window: how it is opened, that it never stands over a changeover or a build-up, and
// that what the guide shows is what the walk through the screens paints.
#include "app/guide/guide.h"
#include "app/operate/questions.h"
#include "app/operate/window.h"
#include "tests/app/operate/all_screens.h"
#include "tests/app/operate/demo_shop.h"

#include <QTest>
#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

using std::chrono::seconds;

Result<Guide> shipped() {
    return readGuide(QString(SEAMCLOCK_SOURCE_DIR) + "/docs/guide", {});
}

class HelpInTheWindow : public ::testing::Test {
protected:
    Window& window() { return m_shop.window(); }
    void press(SlotPlace place = SlotPlace::Step) {
        emit window().currentPage()->slotPressed(place);
        window().refresh();
    }
    void go(Milliseconds gap) {
        m_shop.clock().advance(gap);
        window().refresh();
    }
    const Weld& weld() { return *m_shop.floor().weld(0); }
    bool is(const char* phase) { return phaseName(weld().state) == phase; }
    /// The first bench's next seam, by its own offers, to that phase.
    void bring(const char* phase) {
        Floor& floor = m_shop.floor();
        if (floor.weld(0) == nullptr) {
            window().openNextCard();
            press();
            window().passTrial();
        }
        for (int i = 0; i < 60 && !is(phase); ++i) {
            m_shop.clock().advance(seconds(1));
            const auto view = floor.view(0, floor.now(), false, false);
            const auto* number = std::get_if<AskNumber>(&view->step.offer);
            ASSERT_TRUE(
                number == nullptr ? floor.press(0, view->step.offer, view->onto)
                                  : floor.answer(0, NumberAnswer{number->what, 210}));
        }
        ASSERT_TRUE(is(phase));
        window().refresh();
    }

    Shop m_shop{
        QSize(1280, 800),
        {},
        std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo",
        [](WindowParts& parts) { parts.readGuide = shipped; }};
};

TEST_F(HelpInTheWindow, OpensFromTheMenuAndByF1AndLeadsBack) {
    window().openMenu();
    const Menu menu = menuFor(window().preferences());
    const auto at = std::find(menu.items.begin(), menu.items.end(), MenuItem::Help);
    ASSERT_NE(at, menu.items.end());
    emit window().choicePage()->chosen(static_cast<int>(at - menu.items.begin()));
    EXPECT_EQ(static_cast<int>(window().page()), static_cast<int>(PageKind::Guide));
    press();
    EXPECT_NE(static_cast<int>(window().page()), static_cast<int>(PageKind::Guide));
    QTest::keyClick(&window(), Qt::Key_F1);
    EXPECT_EQ(static_cast<int>(window().page()), static_cast<int>(PageKind::Guide));
    EXPECT_EQ(window().currentPage(), window().guide()->listPage());
}

TEST_F(HelpInTheWindow, NeverStandsOverAChangeoverOrABuildUp) {
    for (const char* phase : {"changing_over", "building_up"}) {
        ASSERT_NO_FATAL_FAILURE(bring(phase));
        ASSERT_EQ(static_cast<int>(window().page()), static_cast<int>(PageKind::Weld));
        QTest::keyClick(&window(), Qt::Key_F1);
        EXPECT_EQ(static_cast<int>(window().page()), static_cast<int>(PageKind::Weld)) << phase;
        window().guide()->open(); // whoever asks
        EXPECT_EQ(static_cast<int>(window().page()), static_cast<int>(PageKind::Weld)) << phase;
        EXPECT_EQ(window().guide()->page(), nullptr) << phase;
    }
}

TEST_F(HelpInTheWindow, GivesTheScreenToABenchThatCallsAndStandsThereAgainAfterwards) {
    ASSERT_NO_FATAL_FAILURE(bring("soaking"));
    window().openHelp();
    window().guide()->showChapter(4);
    window().guide()->chapterPage()->scroll(2);
    ASSERT_EQ(window().currentPage(), window().guide()->chapterPage());
    const Milliseconds left =
        std::get<Soaking>(weld().state).due.lo - weldTimeAt(weld(), m_shop.floor().now())->lo;
    go(left - seconds(11));
    ASSERT_EQ(window().currentPage(), window().guide()->chapterPage()) << "not yet";
    go(seconds(2));
    EXPECT_EQ(static_cast<int>(window().page()), static_cast<int>(PageKind::Weld));
    EXPECT_EQ(window().guide()->page(), nullptr);
    window().openHelp();
    EXPECT_EQ(window().currentPage(), window().guide()->chapterPage());
    EXPECT_EQ(window().guide()->chapterPage()->chapter(), 4);
}

TEST_F(HelpInTheWindow, IsLeftByItsStepAndByAPedal) {
    window().openHelp();
    window().guide()->showChapter(2);
    emit window().hands().step();
    EXPECT_NE(static_cast<int>(window().page()), static_cast<int>(PageKind::Guide));
}

// The names that pictures are painted under, without painting one: the walk is made, and what it
// would keep is noted. Practice's are held in practice_screens_test.
TEST(GuidePictures, AreAllOnesThatTheWalkPaints) {
    const auto guide = shipped();
    ASSERT_TRUE(guide) << guide.error().detail;
    std::set<QString> named;
    for (const GuideChapter& chapter : guide->chapters) {
        for (const QString& name : picturesNamed(chapter)) {
            if (!name.startsWith("practice-")) {
                named.insert(name);
            }
        }
    }
    EXPECT_GE(named.size(), 8U);
    Stage stage;
    stage.walk([](Window&, const std::string&) {});
    for (const QString& name : named) {
        EXPECT_TRUE(stage.seen().count(name) > 0)
            << "the guide shows \"" << name.toStdString() << "\", which no screen is called";
    }
}

} // namespace
} // namespace seamclock
