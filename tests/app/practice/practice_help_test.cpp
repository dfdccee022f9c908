// Help in practice: by the line above the lessons, beside a weld and by F1, at every page of a
// whole weld; never over a changeover or a build-up, and the screen goes back to a weld that calls
// for hands.
#include "tests/app/practice/practice_shop.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QTest>
#include <algorithm>
#include <gtest/gtest.h>
#include <set>
#include <string>

namespace seamclock::test {
namespace {

using std::chrono::seconds;

class PracticeHelp : public testing::Test {
protected:
    PracticeWindow& window() { return m_shop.window(); }
    const Weld& weld() { return *m_shop.room().weld(); }
    /// As a person's: a second after the one before, by the events' own time stamps.
    void key(int which) {
        m_stamp += 1'000;
        const QString text(QChar(static_cast<char16_t>(which)).toLower());
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, which, Qt::NoModifier, which < 0x1000 ? text : QString());
            event.setTimestamp(m_stamp += 80);
            QCoreApplication::sendEvent(&window(), &event);
        }
    }
    bool helps() { return window().page() == PracticePage::Guide; }
    void go(Milliseconds gap) {
        while (gap > Milliseconds(0)) { // a longer frame is not caught up
            const Milliseconds frame = std::min(gap, Milliseconds(200));
            m_shop.machine().advance(frame);
            window().tick();
            gap -= frame;
        }
    }

    Practising m_shop;
    quint64 m_stamp = 1'000'000;
};

TEST_F(PracticeHelp, StandsAboveTheLessonsAndOnF1AndLeadsBackToThem) {
    const auto rows = window().listPage()->view().rows;
    EXPECT_EQ(window().strip()->line().time, "Help: the user guide");
    ASSERT_TRUE(window().strip()->line().pressable);
    emit window().strip()->linePressed();
    ASSERT_TRUE(helps());
    EXPECT_FALSE(window().strip()->line().pressable) << "it stands already";
    EXPECT_EQ(window().currentPage(), window().guide()->listPage());
    EXPECT_EQ(window().currentPage()->stepView().text, "Back to practice");
    key(Qt::Key_Return);
    EXPECT_EQ(window().page(), PracticePage::Lessons);
    EXPECT_EQ(window().listPage()->view().rows.size(), rows.size());
    key(Qt::Key_F1);
    EXPECT_TRUE(helps());
    key(Qt::Key_F1);
    key(Qt::Key_Space);
    EXPECT_EQ(window().page(), PracticePage::Lessons) << "asked for twice, it is left once";
}

TEST_F(PracticeHelp, AWordTypedInItsSearchTurnsNoWheelAndLeadsToItsPlace) {
    ASSERT_TRUE(m_shop.walk().toBench("pe10-first"));
    key(Qt::Key_F1);
    window().guide()->showSearch();
    const auto acts = m_shop.room().take().acts.size();
    auto* line = window().guide()->listPage()->findChild<QLineEdit*>();
    ASSERT_NE(line, nullptr);
    QTest::keyClicks(line, "battery");
    ASSERT_FALSE(window().guide()->listPage()->view().rows.empty());
    QTest::keyClick(line, Qt::Key_Return);
    EXPECT_EQ(window().currentPage(), window().guide()->chapterPage())
        << "found, and not left by the same press";
    EXPECT_EQ(m_shop.room().take().acts.size(), acts);
    key(Qt::Key_Return);
    EXPECT_EQ(window().page(), PracticePage::Bench);
}

TEST_F(PracticeHelp, StandsBesideAWeldWhoseTimeGoesOn) {
    ASSERT_TRUE(m_shop.walk().toBench("pe10-first"));
    key(Qt::Key_M);
    ASSERT_EQ(window().page(), PracticePage::Side);
    const auto& choices = window().choicePage()->view().choices;
    const auto help = std::find_if(choices.begin(), choices.end(), [](const auto& one) {
        return one.text == QLatin1String("Help");
    });
    ASSERT_NE(help, choices.end());
    emit window().choicePage()->chosen(static_cast<int>(help - choices.begin()));
    ASSERT_TRUE(helps());
    const Milliseconds before = m_shop.room().run().now();
    go(seconds(10));
    EXPECT_EQ(m_shop.room().run().now() - before, seconds(10));
    key(Qt::Key_Return);
    EXPECT_EQ(window().page(), PracticePage::Bench);
}

TEST_F(PracticeHelp, GivesTheScreenToAWeldThatCallsAndStandsThereAgainAfterwards) {
    ASSERT_TRUE(m_shop.walk().toBench("pe10-first"));
    ASSERT_TRUE(m_shop.walk().prepare({}));
    ASSERT_TRUE(m_shop.walk().align({}));
    const auto* soaking = std::get_if<Soaking>(&weld().state);
    ASSERT_NE(soaking, nullptr);
    key(Qt::Key_F1);
    window().guide()->showChapter(4);
    const Milliseconds left = soaking->due.lo - weldTimeAt(weld(), m_shop.room().now())->lo;
    go(left - seconds(11));
    ASSERT_TRUE(helps()) << "not yet";
    go(seconds(2));
    EXPECT_EQ(window().page(), PracticePage::Bench) << "get ready";
    key(Qt::Key_F1);
    ASSERT_TRUE(helps()) << "asked for in spite of it";
    EXPECT_EQ(window().currentPage(), window().guide()->chapterPage());
    EXPECT_EQ(window().guide()->chapterPage()->chapter(), 4);
    go(seconds(5));
    EXPECT_TRUE(helps());
    go(seconds(6));
    EXPECT_EQ(window().page(), PracticePage::Bench) << "the soak is over";
    EXPECT_EQ(window().guide()->page(), nullptr);
}

TEST_F(PracticeHelp, OpensAtEveryPageOfAWeldButOverNoChangeoverOrBuildUp) {
    int opened = 0;
    std::set<std::string> held;
    const auto look = [&](const QString& name) {
        const PracticePage before = window().page();
        const Weld* now = m_shop.room().weld();
        const std::string phase(now != nullptr ? phaseName(now->state) : "none");
        const bool taken = phase == "changing_over" || phase == "building_up";
        if (!taken && before == PracticePage::Bench &&
            (m_shop.room().run().bench().view().wheelMmPerS != 0 ||
             window().benchPage()->view().controls[0].view.text != "Wheel +")) {
            return; // a hand lets go of the wheel for Help, and a panel of controls closes
        }
        key(Qt::Key_F1);
        if (taken) {
            EXPECT_EQ(window().page(), before) << name.toStdString();
            window().guide()->open(); // whoever asks
            EXPECT_EQ(window().page(), before) << name.toStdString();
            EXPECT_EQ(window().guide()->page(), nullptr);
            held.insert(phase);
            return;
        }
        if (before == PracticePage::Call || before == PracticePage::Working) {
            EXPECT_EQ(window().page(), before) << name.toStdString();
            return;
        }
        EXPECT_TRUE(helps()) << name.toStdString();
        key(Qt::Key_Return);
        EXPECT_EQ(window().page(), before) << name.toStdString();
        ++opened;
    };
    const auto done = m_shop.walk().weld("pe10-first", {}, look);
    ASSERT_TRUE(done) << done.error().detail;
    EXPECT_EQ(held, (std::set<std::string>{"building_up", "changing_over"}));
    EXPECT_GE(opened, 8);
}

} // namespace
} // namespace seamclock::test
