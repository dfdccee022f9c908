// A button counts on press, once, by mouse and by finger, anywhere on its tile.
#include <QAccessible>
#include <QApplication>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QtTest/qtest.h>
#include <QtTest/qtesttouch.h>
#include <gtest/gtest.h>

#include "app/parts/number_pad.h"
#include "app/parts/slot_button.h"
#include "app/parts/strip.h"

namespace seamclock {
namespace {

SlotView view(SlotView::Look look) {
    SlotView slot;
    slot.text = QStringLiteral("Plate out");
    slot.look = look;
    return slot;
}

QPointingDevice* finger() {
    static QPointingDevice* const device = QTest::createTouchDevice();
    return device;
}

class Press : public ::testing::Test {
protected:
    Press() : m_button(QStringLiteral("step")), m_presses(&m_button, &PressPart::pressed) {
        m_button.resize(618, 124);
        m_button.show(view(SlotView::Look::Act));
        m_button.show();
    }

    void touch(const QPoint& at) { QTest::touchEvent(&m_button, finger()).press(0, at, &m_button); }
    void lift(const QPoint& at) {
        QTest::touchEvent(&m_button, finger()).release(0, at, &m_button);
    }

    SlotButton m_button;
    QSignalSpy m_presses;
};

TEST_F(Press, CountsWhenTheMouseGoesDownAndNotWhenItComesUp) {
    QTest::mousePress(&m_button, Qt::LeftButton, {}, QPoint(300, 60));
    EXPECT_EQ(m_presses.count(), 1);
    QTest::mouseRelease(&m_button, Qt::LeftButton, {}, QPoint(300, 60));
    EXPECT_EQ(m_presses.count(), 1);
}

TEST_F(Press, CountsATouchOnce) {
    touch(QPoint(300, 60));
    QApplication::processEvents();
    EXPECT_EQ(m_presses.count(), 1);
    lift(QPoint(300, 60));
    QApplication::processEvents();
    EXPECT_EQ(m_presses.count(), 1);
    touch(QPoint(20, 20));
    lift(QPoint(20, 20));
    QApplication::processEvents();
    EXPECT_EQ(m_presses.count(), 2);
}

TEST_F(Press, AFingerThatSlidesOffHasPressedOnce) {
    touch(QPoint(300, 60));
    QTest::touchEvent(&m_button, finger()).move(0, QPoint(900, 300), &m_button);
    lift(QPoint(900, 300));
    QApplication::processEvents();
    EXPECT_EQ(m_presses.count(), 1);
}

TEST_F(Press, TwoQuickPressesAreTwo) {
    QTest::mousePress(&m_button, Qt::LeftButton, {}, QPoint(300, 60));
    QTest::mouseRelease(&m_button, Qt::LeftButton, {}, QPoint(300, 60));
    // the second of two quick presses comes as a double click
    QTest::mouseDClick(&m_button, Qt::LeftButton, {}, QPoint(300, 60));
    EXPECT_EQ(m_presses.count(), 2);
}

TEST_F(Press, OtherButtonsOfTheMouseDoNotCount) {
    QTest::mousePress(&m_button, Qt::RightButton, {}, QPoint(300, 60));
    QTest::mousePress(&m_button, Qt::MiddleButton, {}, QPoint(300, 60));
    EXPECT_EQ(m_presses.count(), 0);
}

TEST_F(Press, TheWholeTileIsTheTarget) {
    const QRect box = m_button.rect();
    for (const QPoint& at : {box.topLeft(), box.topRight(), box.bottomLeft(), box.bottomRight()}) {
        m_presses.clear();
        QTest::mousePress(&m_button, Qt::LeftButton, {}, at);
        QTest::mouseRelease(&m_button, Qt::LeftButton, {}, at);
        EXPECT_EQ(m_presses.count(), 1) << at.x() << " " << at.y();
    }
}

TEST_F(Press, AMousePressMadeFromATouchDoesNotCountAgain) {
    const auto mouse = [&](Qt::MouseEventSource source) {
        QMouseEvent event(
            QEvent::MouseButtonPress, QPointF(300, 60), QPointF(300, 60), QPointF(300, 60),
            Qt::LeftButton, Qt::LeftButton, Qt::NoModifier, source);
        QApplication::sendEvent(&m_button, &event);
    };
    // a system that sends no touches but mouse presses made from them: they are all there is
    mouse(Qt::MouseEventSynthesizedBySystem);
    EXPECT_EQ(m_presses.count(), 1);
    touch(QPoint(300, 60));
    QApplication::processEvents();
    EXPECT_EQ(m_presses.count(), 2);
    mouse(Qt::MouseEventSynthesizedBySystem);
    mouse(Qt::MouseEventSynthesizedByQt);
    EXPECT_EQ(m_presses.count(), 2);
    mouse(Qt::MouseEventNotSynthesized);
    EXPECT_EQ(m_presses.count(), 3);
}

TEST_F(Press, WhatIsOverHiddenOrOffDoesNotCount) {
    SlotView off = view(SlotView::Look::Plain);
    off.enabled = false;
    for (const SlotView& slot : {view(SlotView::Look::Gone), view(SlotView::Look::Hidden), off}) {
        m_button.show(slot);
        QTest::mousePress(&m_button, Qt::LeftButton, {}, QPoint(300, 60));
        QTest::mouseRelease(&m_button, Qt::LeftButton, {}, QPoint(300, 60));
        touch(QPoint(300, 60));
        lift(QPoint(300, 60));
        QApplication::processEvents();
        EXPECT_EQ(m_presses.count(), 0);
    }
    m_button.show(view(SlotView::Look::Waiting));
    QTest::mousePress(&m_button, Qt::LeftButton, {}, QPoint(300, 60));
    EXPECT_EQ(m_presses.count(), 1);
}

TEST_F(Press, AScreenReaderIsToldAButtonAndCanPressIt) {
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(&m_button);
    ASSERT_NE(told, nullptr);
    EXPECT_EQ(told->role(), QAccessible::Button);
    EXPECT_EQ(told->text(QAccessible::Name), QStringLiteral("Plate out"));
    EXPECT_FALSE(told->state().disabled);
    const QString press = QAccessibleActionInterface::pressAction();
    ASSERT_NE(told->actionInterface(), nullptr);
    EXPECT_TRUE(told->actionInterface()->actionNames().contains(press));
    told->actionInterface()->doAction(press);
    EXPECT_EQ(m_presses.count(), 1);

    m_button.show(view(SlotView::Look::Gone));
    EXPECT_TRUE(told->state().disabled);
    EXPECT_FALSE(told->actionInterface()->actionNames().contains(press));
    told->actionInterface()->doAction(press);
    EXPECT_EQ(m_presses.count(), 1);
}

TEST(StripPress, CellAndClockTileAreButtons) {
    StripCell cell(QStringLiteral("bench_a"));
    cell.resize(348, 90);
    QSignalSpy cellPresses(&cell, &PressPart::pressed);
    QTest::mousePress(&cell, Qt::LeftButton, {}, QPoint(1, 1));
    QTest::mouseRelease(&cell, Qt::LeftButton, {}, QPoint(1, 1));
    EXPECT_EQ(cellPresses.count(), 1);
    StatusTile tile;
    tile.resize(178, 90);
    QSignalSpy tilePresses(&tile, &PressPart::pressed);
    QTest::mousePress(&tile, Qt::LeftButton, {}, QPoint(177, 89));
    EXPECT_EQ(tilePresses.count(), 1);
}

class Pad : public ::testing::Test {
protected:
    Pad() : m_pad(QLatin1Char(',')), m_texts(&m_pad, &NumberPad::textChanged) {
        m_pad.resize(592, 534);
        m_pad.show();
    }

    void press(const char* name) {
        auto* const key = m_pad.findChild<SlotButton*>(QString::fromLatin1(name));
        ASSERT_NE(key, nullptr) << name;
        QTest::mousePress(key, Qt::LeftButton, {}, key->rect().center());
        QTest::mouseRelease(key, Qt::LeftButton, {}, key->rect().center());
    }

    NumberPad m_pad;
    QSignalSpy m_texts;
};

TEST_F(Pad, TypesAndErases) {
    for (const char* key : {"key_2", "key_1", "key_2"}) {
        press(key);
    }
    EXPECT_EQ(m_pad.text(), QStringLiteral("212"));
    EXPECT_EQ(m_texts.count(), 3);
    EXPECT_EQ(m_texts.last().at(0).toString(), QStringLiteral("212"));
    press("key_erase");
    EXPECT_EQ(m_pad.text(), QStringLiteral("21"));
    press("key_erase");
    press("key_erase");
    press("key_erase");
    EXPECT_EQ(m_pad.text(), QString());
    EXPECT_EQ(m_texts.count(), 6); // nothing is left to erase: no signal
}

TEST_F(Pad, TakesOneDecimalSignOfTheLanguage) {
    press("key_decimal");
    press("key_5");
    press("key_decimal");
    press("key_2");
    press("key_7");
    EXPECT_EQ(m_pad.text(), QStringLiteral("0,52"));
    m_pad.setDecimalSign(QLatin1Char('.'));
    EXPECT_EQ(m_pad.text(), QStringLiteral("0.52"));
}

TEST_F(Pad, OneTwoThreeIsTheTopRowAndKeysAreLarge) {
    const auto* const one = m_pad.findChild<SlotButton*>(QStringLiteral("key_1"));
    const auto* const nine = m_pad.findChild<SlotButton*>(QStringLiteral("key_9"));
    ASSERT_NE(one, nullptr);
    ASSERT_NE(nine, nullptr);
    EXPECT_EQ(one->pos(), QPoint(0, 0));
    EXPECT_GT(nine->y(), one->y());
    EXPECT_GE(one->width(), kTargetUnits);
    EXPECT_GE(one->height(), kTargetUnits);
}

TEST_F(Pad, LeavesOutWhatIsNoNumber) {
    m_pad.setText(QStringLiteral("1a2,,3"));
    EXPECT_EQ(m_pad.text(), QStringLiteral("12,3"));
    m_pad.setMostDigits(3);
    m_pad.type(QLatin1Char('9'));
    EXPECT_EQ(m_pad.text(), QStringLiteral("12,3"));
    m_pad.setText(QStringLiteral("0"));
    m_pad.type(QLatin1Char('7'));
    EXPECT_EQ(m_pad.text(), QStringLiteral("7"));
    m_pad.setDecimals(0);
    m_pad.type(QLatin1Char(','));
    EXPECT_EQ(m_pad.text(), QStringLiteral("7"));
}

} // namespace
} // namespace seamclock
