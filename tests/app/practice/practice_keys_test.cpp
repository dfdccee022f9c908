// The keys of the practice bench: the wheel's are held, a held key's repeats are one hold, the
// step's keys are the operator's, and no key of one window is a step in the other.
#include "tests/app/operate/demo_shop.h"
#include "tests/app/practice/practice_shop.h"

#include <QKeyEvent>
#include <QTest>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

class PracticeKeys : public testing::Test {
protected:
    void SetUp() override {
        const auto there = m_shop.walk().toBench("pe10-first");
        ASSERT_TRUE(there) << there.error().detail;
        const auto prepared = m_shop.walk().prepare({});
        ASSERT_TRUE(prepared) << prepared.error().detail;
    }

    double wheel() { return m_shop.room().run().bench().view().wheelMmPerS; }
    BenchView bench() { return m_shop.room().run().bench().view(); }
    PracticeWindow* window() { return &m_shop.window(); }
    void down(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyPress(window(), static_cast<Qt::Key>(key), modifiers);
    }
    void up(int key) { QTest::keyRelease(window(), static_cast<Qt::Key>(key)); }
    /// As a person's: a second after the one before, by the events' own time stamps.
    void key(int which) {
        m_stamp += 1'000;
        const QString text(QChar(static_cast<char16_t>(which)).toLower());
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, which, Qt::NoModifier, which < 0x1000 ? text : QString());
            event.setTimestamp(m_stamp += 80);
            QCoreApplication::sendEvent(window(), &event);
        }
    }

    Practising m_shop;
    quint64 m_stamp = 1'000'000;
};

TEST_F(PracticeKeys, TheWheelTurnsWhileItsKeyIsHeld) {
    down(Qt::Key_Down);
    EXPECT_DOUBLE_EQ(wheel(), -2);
    m_shop.walk().go(Milliseconds(1'000));
    // From where the edges met; the spring's preload and the drag take up half a millimetre.
    EXPECT_NEAR(bench().travelMm, -2, 0.6);
    up(Qt::Key_Down);
    m_shop.walk().go(Milliseconds(200));
    EXPECT_DOUBLE_EQ(wheel(), 0);
    EXPECT_EQ(bench().wheel, WheelHold::Held);
}

TEST_F(PracticeKeys, AHeldKeysRepeatsAreOneHold) {
    down(Qt::Key_Down);
    const std::size_t acts = m_shop.room().take().acts.size();
    for (int i = 0; i < 20; ++i) { // as X11 tells a repeat: release and press at once
        up(Qt::Key_Down);
        down(Qt::Key_Down);
        m_shop.walk().go(Milliseconds(30));
    }
    EXPECT_DOUBLE_EQ(wheel(), -2);
    EXPECT_EQ(m_shop.room().take().acts.size(), acts);
    up(Qt::Key_Down);
    m_shop.walk().go(Milliseconds(200));
    EXPECT_DOUBLE_EQ(wheel(), 0);
}

TEST_F(PracticeKeys, TheRingsPressOfTheWheelIsNoHoldThatNobodyEnds) {
    auto* ring = window()->findChild<KeyRing*>("keyRing");
    ASSERT_NE(ring, nullptr);
    const ControlButton* wheelButton = m_shop.window().benchPage()->control(1);
    for (int i = 0; i < 40 && ring->on() != wheelButton; ++i) {
        key(Qt::Key_Tab);
    }
    ASSERT_EQ(ring->on(), wheelButton);
    key(Qt::Key_Return);
    EXPECT_DOUBLE_EQ(wheel(), 0);
    m_shop.walk().go(Milliseconds(1'000));
    EXPECT_NEAR(bench().travelMm, 0, 0.01);
}

TEST_F(PracticeKeys, ShiftIsFastAndControlIsSlow) {
    down(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_DOUBLE_EQ(wheel(), -25);
    up(Qt::Key_Down);
    m_shop.walk().go(Milliseconds(200));
    down(Qt::Key_Up, Qt::ControlModifier);
    EXPECT_DOUBLE_EQ(wheel(), 0.5);
    up(Qt::Key_Up);
    m_shop.walk().go(Milliseconds(200));
}

TEST_F(PracticeKeys, AFingerThatSlidesTurnsFasterAndSlower) {
    ControlButton* button = m_shop.window().benchPage()->control(1);
    const QPoint at = button->rect().center();
    QTest::mousePress(button, Qt::LeftButton, Qt::NoModifier, at);
    EXPECT_DOUBLE_EQ(wheel(), -2);
    QTest::mouseMove(button, at - QPoint(0, 32));
    EXPECT_DOUBLE_EQ(wheel(), -8);
    QTest::mouseMove(button, at - QPoint(0, 400));
    EXPECT_DOUBLE_EQ(wheel(), -25) << "nobody turns faster";
    QTest::mouseMove(button, at + QPoint(0, 400));
    EXPECT_DOUBLE_EQ(wheel(), -0.5);
    QTest::mouseRelease(button, Qt::LeftButton, Qt::NoModifier, at);
    EXPECT_DOUBLE_EQ(wheel(), 0);
}

TEST_F(PracticeKeys, LockClampsAndPlateHaveTheirLetters) {
    key(Qt::Key_L);
    EXPECT_EQ(bench().wheel, WheelHold::Locked);
    m_shop.window().refresh();
    down(Qt::Key_Up);
    EXPECT_DOUBLE_EQ(wheel(), 0) << "locked";
    up(Qt::Key_Up);
    m_shop.walk().go(Milliseconds(200));
    key(Qt::Key_L);
    EXPECT_EQ(bench().wheel, WheelHold::Held);
    key(Qt::Key_C);
    EXPECT_EQ(m_shop.window().benchPage()->view().controls[0].view.text, "Ease clamps");
    key(Qt::Key_6);
    EXPECT_EQ(m_shop.window().benchPage()->view().controls[0].view.text, "Wheel +");
    key(Qt::Key_P);
    EXPECT_EQ(m_shop.window().benchPage()->view().controls[4].view.text, "Plate in");
    key(Qt::Key_6);
}

TEST_F(PracticeKeys, ADigitDoesNothingWhileNoPanelStands) {
    const std::size_t acts = m_shop.room().take().acts.size();
    for (const int digit : {Qt::Key_1, Qt::Key_3, Qt::Key_5}) {
        key(digit);
    }
    EXPECT_EQ(m_shop.room().take().acts.size(), acts);
}

TEST_F(PracticeKeys, SpeedWrongAndMenuHaveTheirLetters) {
    EXPECT_EQ(m_shop.window().pace(), 1);
    key(Qt::Key_S);
    EXPECT_EQ(m_shop.window().pace(), 2);
    for (int i = 0; i < 4; ++i) {
        key(Qt::Key_S);
    }
    EXPECT_EQ(m_shop.window().pace(), 1) << "round";
    key(Qt::Key_W);
    EXPECT_EQ(m_shop.window().page(), PracticePage::Wrong);
    emit m_shop.window().choicePage()->slotPressed(SlotPlace::Stop);
    key(Qt::Key_M);
    EXPECT_EQ(m_shop.window().page(), PracticePage::Side);
}

TEST_F(PracticeKeys, AnEndIsShimmedByKeysAlone) {
    // Everything is clamped: C, the fifth button, and one press for 0.2 mm.
    const double before = m_shop.room().run().bench().view().leanMm[1];
    key(Qt::Key_C);
    key(Qt::Key_5);
    key(Qt::Key_3);
    EXPECT_NEAR(m_shop.room().run().bench().view().leanMm[1], before - 0.2, 1e-9);
    key(Qt::Key_4);
    EXPECT_NEAR(m_shop.room().run().bench().view().leanMm[1], before, 1e-9);
    key(Qt::Key_6);
    key(Qt::Key_6);
}

TEST_F(PracticeKeys, TheEyeGoesAlongTheSeam) {
    EXPECT_EQ(m_shop.window().benchPage()->view().bench.placeText, "middle");
    key(Qt::Key_Left);
    key(Qt::Key_Left);
    key(Qt::Key_Left);
    EXPECT_EQ(m_shop.window().benchPage()->view().bench.placeText, "front");
    key(Qt::Key_Right);
    EXPECT_EQ(m_shop.window().benchPage()->view().bench.placeText, "near the front");
}

TEST_F(PracticeKeys, SpaceIsTheStep) {
    const std::size_t events = m_shop.room().weld()->events.size();
    key(Qt::Key_Space); // everything is checked: pressure is on, whatever the bench says to that
    EXPECT_EQ(m_shop.room().weld()->events.size(), events + 2);
}

TEST_F(PracticeKeys, TheHandLeavesTheWheelWhenItGoesToAnotherPage) {
    down(Qt::Key_Down);
    key(Qt::Key_W);
    EXPECT_DOUBLE_EQ(wheel(), 0);
    up(Qt::Key_Down);
}

TEST(PracticeKeysOfTwoWindows, AKeyCountsInItsOwnWindowAlone) {
    Shop joints;
    Practising practice;
    ASSERT_TRUE(practice.walk().toBench("pe10-first"));
    joints.window().openNextCard();
    const std::size_t events = practice.room().weld()->events.size();
    QTest::keyClick(&practice.window(), Qt::Key_Space);
    EXPECT_EQ(joints.window().page(), PageKind::Card) << "not prepared by the trainee's key";
    EXPECT_GT(practice.room().weld()->events.size(), events);
    const std::size_t after = practice.room().weld()->events.size();
    QTest::keyClick(&joints.window(), Qt::Key_Space);
    EXPECT_EQ(joints.window().page(), PageKind::Trial) << "what the card's step leads to";
    EXPECT_EQ(practice.room().weld()->events.size(), after);
}

} // namespace
} // namespace seamclock::test
