// When a battery is low, value by value. The states are UPower's own numbers
// (https://upower.freedesktop.org/docs/Device.html, "State").
#include "app/power/battery_watch.h"

#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

constexpr quint32 kUnknown = 0;
constexpr quint32 kCharging = 1;
constexpr quint32 kDischarging = 2;
constexpr quint32 kEmpty = 3;
constexpr quint32 kFull = 4;
constexpr quint32 kPendingCharge = 5;
constexpr quint32 kPendingDischarge = 6;

bool low(quint32 state, double percent, bool wasLow = false) {
    return isLow({true, static_cast<Charge>(state), percent}, wasLow);
}

TEST(Battery, IsLowBelowFifteenPercentAndNotAtIt) {
    EXPECT_FALSE(low(kDischarging, 100));
    EXPECT_FALSE(low(kDischarging, 15.01));
    EXPECT_FALSE(low(kDischarging, 15));
    EXPECT_TRUE(low(kDischarging, 14.99));
    EXPECT_TRUE(low(kDischarging, 0));
}

TEST(Battery, IsNotLowWhileItIsCharged) {
    for (const quint32 state : {kCharging, kFull, kPendingCharge}) {
        EXPECT_FALSE(low(state, 3)) << state;
        EXPECT_FALSE(low(state, 3, true)) << state;
    }
    for (const quint32 state : {kUnknown, kDischarging, kEmpty, kPendingDischarge}) {
        EXPECT_TRUE(low(state, 3)) << state;
    }
}

TEST(Battery, ThatTremblesAboutItsLimitIsLowOnce) {
    EXPECT_TRUE(low(kDischarging, 15.4, true));
    EXPECT_TRUE(low(kDischarging, 16.99, true));
    EXPECT_FALSE(low(kDischarging, 17, true));
}

TEST(Battery, ThatIsNotThereIsNeverLow) {
    EXPECT_FALSE(isLow({}, false));
    EXPECT_FALSE(isLow({false, Charge::Discharging, 0}, true));
}

} // namespace
} // namespace seamclock::test
