#include "app/operate/clock_notice.h"

#include <chrono>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

TEST(ClockNotice, SaysHowFarAndWhichWayInTheLargestUnitThatTellsIt) {
    EXPECT_EQ(
        clockNotice(Milliseconds(2'001)), "Clock was set 2 s ahead. No time of a weld changed.");
    EXPECT_EQ(
        clockNotice(Milliseconds(-2'500)), "Clock was set 3 s back. No time of a weld changed.");
    EXPECT_EQ(clockNotice(minutes(-61)), "Clock was set 61 min back. No time of a weld changed.");
    EXPECT_EQ(clockNotice(seconds(119)), "Clock was set 119 s ahead. No time of a weld changed.");
    EXPECT_EQ(clockNotice(hours(2)), "Clock was set 2 h ahead. No time of a weld changed.");
    EXPECT_EQ(clockNotice(hours(47)), "Clock was set 47 h ahead. No time of a weld changed.");
    // A tablet whose clock began at 1970 and that the network then set.
    EXPECT_EQ(
        clockNotice(hours(24) * 20'000),
        "Clock was set 20000 days ahead. No time of a weld changed.");
}

} // namespace
} // namespace seamclock
