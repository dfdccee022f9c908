// Numbers are rounded to the side on which nobody is misled: worked by hand, beside each.
#include "app/text/numbers.h"

#include <QLocale>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(Numbers, WhatIsLeftIsRoundedUpAndWhatHasGoneByIsRoundedDown) {
    EXPECT_EQ(leftText(Milliseconds(72'000)), "1:12");
    EXPECT_EQ(leftText(Milliseconds(72'001)), "1:13");
    EXPECT_EQ(leftText(Milliseconds(1)), "0:01") << "not over yet";
    EXPECT_EQ(leftText(Milliseconds(-400)), "0:00");
    EXPECT_EQ(goneText(Milliseconds(72'999)), "1:12");
    EXPECT_EQ(goneText(Milliseconds(-400)), "0:00");
    EXPECT_EQ(secondsText(Milliseconds(8'899)), "8.8");
    EXPECT_EQ(timeText(Milliseconds(59'999)), "59.9 s");
    EXPECT_EQ(timeText(Milliseconds(69'999)), "1:09");
}

TEST(Numbers, ABandIsShownNoWiderThanItIs) {
    // divisions of half a unit: a tenth is the finest that is shown
    EXPECT_EQ(lowEndText(8'810, 500), "8.9");
    EXPECT_EQ(lowEndText(8'800, 500), "8.8");
    EXPECT_EQ(highEndText(8'890, 500), "8.8");
    // of a twentieth: a hundredth
    EXPECT_EQ(lowEndText(8'811, 50), "8.82");
    EXPECT_EQ(highEndText(8'819, 50), "8.81");
    // below zero, inward is towards zero for the low end
    EXPECT_EQ(lowEndText(-150, 500), "−0.1");
    EXPECT_EQ(highEndText(-150, 500), "−0.2");
}

TEST(Numbers, LengthsHaveTheDecimalsThatTheyNeed) {
    EXPECT_EQ(millimetresText(8'000), "8");
    EXPECT_EQ(millimetresText(8'000, 1), "8.0");
    EXPECT_EQ(millimetresText(2'500), "2.5");
    EXPECT_EQ(millimetresText(1'417), "1.417");
}

TEST(Numbers, NothingIsNeverNegative) {
    EXPECT_EQ(numberText(-0.004, 2), "0.00");
    EXPECT_EQ(numberText(-0.006, 2), "−0.01");
    EXPECT_EQ(numberText(-0.4, 0), "0");
    EXPECT_EQ(numberText(12345.678, 1), "12345.7");
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German));
    EXPECT_EQ(numberText(-0.006, 2), "−0,01");
    QLocale::setDefault(before);
}

} // namespace
} // namespace seamclock
