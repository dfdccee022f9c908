// A held key or pedal never counts twice. The time stamps are as they were measured on X11 under
// load: repeats that are not marked as such carry the stamp of the release before them; a person's
// own presses lie half a second apart.
#include "app/operate/hands.h"

#include <QApplication>
#include <QKeyEvent>
#include <QSignalSpy>
#include <QWidget>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

class HandsTest : public ::testing::Test {
protected:
    HandsTest() : m_steps(&m_hands, &Hands::step) { m_widget.installEventFilter(&m_hands); }

    void
    send(QEvent::Type type, int key, quint64 at, bool marked = false, const QString& text = {}) {
        QKeyEvent event(type, key, Qt::NoModifier, text, marked);
        event.setTimestamp(at);
        QApplication::sendEvent(&m_widget, &event);
    }
    void press(int key, quint64 at, const QString& text = {}) {
        send(QEvent::KeyPress, key, at, false, text);
    }
    void release(int key, quint64 at) { send(QEvent::KeyRelease, key, at); }

    Hands m_hands;
    QWidget m_widget;
    QSignalSpy m_steps;
};

TEST_F(HandsTest, TakeSpaceEnterAndPageDownAsTheNextStep) {
    quint64 at = 1'000;
    for (const int key : {Qt::Key_Space, Qt::Key_Return, Qt::Key_Enter, Qt::Key_PageDown}) {
        press(key, at);
        release(key, at + 90);
        at += 700;
    }
    EXPECT_EQ(m_steps.count(), 4);
}

TEST_F(HandsTest, CountAHeldKeyOnceThoughItsRepeatsAreNotMarked) {
    press(Qt::Key_Space, 1'000);
    for (quint64 at = 1'660; at < 6'000; at += 40) {
        release(Qt::Key_Space, at);
        press(Qt::Key_Space, at); // the same stamp, unmarked: the trap
    }
    release(Qt::Key_Space, 6'000);
    EXPECT_EQ(m_steps.count(), 1);
}

TEST_F(HandsTest, CountAHeldKeyOnceThoughItsReleasesAreLeftOut) {
    press(Qt::Key_PageDown, 1'000);
    for (quint64 at = 1'660; at < 3'000; at += 40) {
        press(Qt::Key_PageDown, at);
    }
    release(Qt::Key_PageDown, 3'000);
    EXPECT_EQ(m_steps.count(), 1);
    press(Qt::Key_PageDown, 3'600);
    EXPECT_EQ(m_steps.count(), 2);
}

TEST_F(HandsTest, CountARepeatThatIsMarkedNever) {
    send(QEvent::KeyPress, Qt::Key_Space, 1'000);
    send(QEvent::KeyRelease, Qt::Key_Space, 1'500, true);
    send(QEvent::KeyPress, Qt::Key_Space, 1'560, true);
    EXPECT_EQ(m_steps.count(), 1);
}

TEST_F(HandsTest, CountTwoPressesOfAPersonTwice) {
    press(Qt::Key_Space, 1'000);
    release(Qt::Key_Space, 1'080);
    press(Qt::Key_Space, 1'130); // 50 ms after the release: as soon as a press can count
    EXPECT_EQ(m_steps.count(), 2);
}

TEST_F(HandsTest, LearnTheKeyOfAFootSwitchAndTakeItAsAStep) {
    QSignalSpy learnt(&m_hands, &Hands::pedalLearnt);
    press(Qt::Key_F9, 1'000);
    release(Qt::Key_F9, 1'050);
    EXPECT_EQ(m_steps.count(), 0);
    m_hands.learnPedal();
    press(Qt::Key_F9, 2'000);
    release(Qt::Key_F9, 2'050);
    ASSERT_EQ(learnt.count(), 1);
    EXPECT_EQ(m_hands.pedalKey(), Qt::Key_F9);
    EXPECT_EQ(m_steps.count(), 0);
    press(Qt::Key_F9, 3'000);
    EXPECT_EQ(m_steps.count(), 1);
}

TEST_F(HandsTest, GiveDigitsToWhoeverAsksForANumber) {
    QSignalSpy typed(&m_hands, &Hands::typed);
    QSignalSpy bench(&m_hands, &Hands::bench);
    press(Qt::Key_2, 1'000, "2");
    release(Qt::Key_2, 1'050);
    press(Qt::Key_Period, 1'600, ".");
    ASSERT_EQ(typed.count(), 2);
    EXPECT_EQ(typed[0][0].toChar(), QChar('2'));
    ASSERT_EQ(bench.count(), 1);
    EXPECT_EQ(bench[0][0].toInt(), 2);
}

TEST_F(HandsTest, ForgetAKeyThatWasHeldWhenTheWindowLostIt) {
    press(Qt::Key_Space, 1'000);
    QEvent away(QEvent::WindowDeactivate);
    QApplication::sendEvent(&m_widget, &away);
    press(Qt::Key_Space, 9'000);
    EXPECT_EQ(m_steps.count(), 2);
}

} // namespace
} // namespace seamclock
