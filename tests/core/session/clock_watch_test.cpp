#include "core/session/clock_watch.h"

#include <gtest/gtest.h>

using namespace seamclock;

namespace {

Instant at(std::int64_t bootMs, std::int64_t utcMs, const std::string& bootId = "boot-1") {
    return {Milliseconds(bootMs), bootId, Milliseconds(utcMs), std::chrono::minutes(0)};
}

} // namespace

// The rule: clock_jumped when |Δutc − Δboot| > 2 s between readings.
TEST(ClockWatch, NoticesMoreThanTwoSecondsInEitherDirectionAndNotTwo) {
    struct Row {
        std::int64_t deltaUtc;
        std::int64_t jump; // 0: none
    };
    for (const Row& row :
         {Row{10'000, 0}, Row{12'000, 0}, Row{12'001, 2001}, Row{8'000, 0}, Row{7'999, -2001},
          Row{-3'590'000, -3'600'000}}) {
        ClockWatch watch;
        EXPECT_FALSE(watch.see(at(100'000, 7'000'000)));
        const auto jump = watch.see(at(110'000, 7'000'000 + row.deltaUtc));
        EXPECT_EQ(jump.value_or(Milliseconds(0)).count(), row.jump);
    }
}

TEST(ClockWatch, TellsOfOneJumpOnce) {
    ClockWatch watch;
    watch.see(at(0, 0));
    EXPECT_TRUE(watch.see(at(1000, 61'000)));
    EXPECT_FALSE(watch.see(at(2000, 62'000)));
}

TEST(ClockWatch, ComparesReadingsOfOneBootOnly) {
    ClockWatch watch;
    watch.see(at(500'000, 1'000'000));
    EXPECT_FALSE(watch.see(at(10'000, 9'000'000, "boot-2")));
    EXPECT_TRUE(watch.see(at(11'000, 19'000'000, "boot-2")));
}

TEST(ClockWatch, DoesNotJudgeAReadingFromBeforeTheLast) {
    ClockWatch watch;
    watch.see(at(500'000, 1'000'000));
    EXPECT_FALSE(watch.see(at(400'000, 5'000'000)));
}
