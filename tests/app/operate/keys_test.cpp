// Keys instead of touches: a weld with a step taken back, one backdated and one stopped for a
// reason, by real key events alone; every target of every screen; and what a key may never do.
#include "core/shift/hands.h"
#include "tests/app/operate/all_screens.h"
#include "tests/app/operate/typist.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

using std::chrono::seconds;

class Keys : public ::testing::Test {
protected:
    Window& window() { return m_shop.window(); }
    Floor& floor() { return m_shop.floor(); }
    const Weld& weld() { return *floor().weld(floor().selected()); }
    bool is(const std::string& phase) { return phaseName(weld().state) == phase; }
    const QWidget* ringOn() const { return m_shopRing == nullptr ? nullptr : m_shopRing->on(); }
    void key(Qt::Key which) {
        m_typist.press(which);
        window().refresh();
    }
    /// The ring to that target, by Tab; not there: a failure.
    void ringTo(const QString& name) {
        for (int i = 0; i < 60; ++i) {
            key(Qt::Key_Tab);
            ASSERT_NE(ringOn(), nullptr);
            if (ringOn()->objectName() == name) {
                return;
            }
        }
        FAIL() << "no key reaches " << name.toStdString();
    }
    void pressByKeys(const QString& name) {
        ASSERT_NO_FATAL_FAILURE(ringTo(name));
        key(Qt::Key_Return);
    }
    void wait(Milliseconds gap) {
        m_shop.clock().advance(gap);
        window().refresh();
    }
    /// A weld by the step's own key, with a number typed where one is asked for, to that phase.
    void bring(const std::string& phase) {
        window().openNextCard();
        key(Qt::Key_Return);
        if (window().page() == PageKind::Trial) {
            key(Qt::Key_Return);
            window().passTrial();
        }
        for (int i = 0; i < 90 && !is(phase); ++i) {
            wait(seconds(1));
            if (window().page() == PageKind::Pad) {
                for (const Qt::Key digit : {Qt::Key_2, Qt::Key_1, Qt::Key_0}) {
                    key(digit);
                }
            }
            key(Qt::Key_Space);
        }
        ASSERT_TRUE(is(phase)) << phaseName(weld().state);
    }

    Shop m_shop;
    KeyRing* m_shopRing = m_shop.window().findChild<KeyRing*>("keyRing");
    test::Typist m_typist{m_shop.window()};
};

TEST_F(Keys, TakeAStepBackBackdateOneAndStopForAReason) {
    ASSERT_NO_FATAL_FAILURE(bring("aligning"));
    wait(seconds(1));
    ASSERT_NO_FATAL_FAILURE(pressByKeys("weldBack"));
    EXPECT_TRUE(is("preparing")) << "the step was taken back";
    key(Qt::Key_Space);
    ASSERT_TRUE(is("aligning"));
    wait(seconds(20));
    key(Qt::Key_Space);
    ASSERT_TRUE(is("soaking"));
    wait(seconds(1));
    ASSERT_NO_FATAL_FAILURE(pressByKeys("weldEarlier"));
    const auto& events = weld().events;
    EXPECT_TRUE(std::any_of(events.begin(), events.end(), [](const Event& event) {
        return std::holds_alternative<StepBackdated>(event.d);
    }));
    ASSERT_NO_FATAL_FAILURE(pressByKeys("weldStop"));
    ASSERT_EQ(window().page(), PageKind::Reasons);
    ASSERT_NO_FATAL_FAILURE(pressByKeys("choice0"));
    EXPECT_FALSE(isOpen(weld().state)) << "stopped, for the first reason of the page";
}

TEST_F(Keys, ThePedalIsTheStepWhereverTheRingStands) {
    ASSERT_NO_FATAL_FAILURE(bring("aligning"));
    wait(seconds(20));
    ASSERT_NO_FATAL_FAILURE(ringTo("weldStop"));
    key(Qt::Key_PageDown);
    EXPECT_EQ(window().page(), PageKind::Weld);
    EXPECT_TRUE(is("soaking"));
}

TEST_F(Keys, TheRingLeavesWhenTheNextPhaseComesAndWhereSecondsCountByItself) {
    ASSERT_NO_FATAL_FAILURE(bring("aligning"));
    wait(seconds(20));
    ASSERT_NO_FATAL_FAILURE(ringTo("weldStop"));
    emit window().currentPage()->slotPressed(SlotPlace::Step); // by touch
    window().refresh();
    EXPECT_EQ(ringOn(), nullptr) << "the key would press another step's button";
    ASSERT_NO_FATAL_FAILURE(ringTo("weldStop"));
    auto* patience = m_shopRing->findChild<QTimer*>();
    ASSERT_NE(patience, nullptr);
    EXPECT_TRUE(patience->isActive());
    EXPECT_EQ(patience->interval(), 5'000);
    QMetaObject::invokeMethod(patience, "timeout");
    EXPECT_EQ(ringOn(), nullptr);
    ASSERT_NO_FATAL_FAILURE(ringTo("weldStop"));
    key(Qt::Key_Escape);
    EXPECT_EQ(ringOn(), nullptr);
    EXPECT_TRUE(is("soaking")) << "and nothing else happened";
}

TEST_F(Keys, ShiftAndTabGoFromTheStepBackwards) {
    ASSERT_NO_FATAL_FAILURE(bring("aligning"));
    wait(seconds(1));
    key(Qt::Key_Backtab);
    ASSERT_NE(ringOn(), nullptr);
    EXPECT_EQ(ringOn()->objectName(), QStringLiteral("weldStep"));
}

TEST_F(Keys, OneToFourChangeTheBenchFromEveryPageThatTypesNoDigits) {
    ASSERT_GE(floor().posts().size(), 2U);
    const auto fromThere = [this](PageKind kind) {
        ASSERT_EQ(window().page(), kind);
        floor().select(0);
        key(Qt::Key_2);
        EXPECT_EQ(floor().selected(), 1) << static_cast<int>(kind);
        floor().select(0);
        window().refresh();
    };
    window().openNextCard();
    fromThere(PageKind::Card);
    window().openNextCard();
    key(Qt::Key_Return);
    if (window().page() == PageKind::Trial) {
        fromThere(PageKind::Trial);
    }
    window().openMenu();
    fromThere(PageKind::Menu);
    window().openDay();
    fromThere(PageKind::Day);
    window().setup()->open();
    fromThere(PageKind::Setup);
    window().shop()->open();
    fromThere(PageKind::Shop);
    window().people()->openWho();
    fromThere(PageKind::People);
    window().openEntry();
    key(Qt::Key_2);
    EXPECT_EQ(window().page(), PageKind::Entry) << "a page that is typed into";
    EXPECT_EQ(floor().selected(), 0);
}

// Every button of every screen that pictures are painted of, by Tab.
TEST(EveryScreen, IsReachedByKeysAlone) {
    Stage stage;
    int reachedInAll = 0;
    stage.walk([&](Window& window, const std::string& name) {
        auto* ring = window.findChild<KeyRing*>("keyRing");
        ASSERT_NE(ring, nullptr);
        std::set<const QWidget*> wanted;
        for (PressPart* part : window.findChildren<PressPart*>()) {
            if (part->isVisible() && part->isThere() && part->takesPress()) {
                wanted.insert(part);
            }
        }
        std::set<const QWidget*> reached;
        for (std::size_t i = 0; i < wanted.size() + 12; ++i) { // lines that are typed into, too
            ring->move(1);
            reached.insert(ring->on());
        }
        for (const QWidget* target : wanted) {
            EXPECT_EQ(reached.count(target), 1U)
                << name << ": no key reaches " << target->objectName().toStdString();
        }
        reachedInAll += static_cast<int>(wanted.size());
        ring->leave();
        window.setFocus();
    });
    EXPECT_GT(reachedInAll, 1'000);
}

} // namespace
} // namespace seamclock
