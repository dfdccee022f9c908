#include "tests/core/log/losing_disk.h"
#include "tests/core/log/power_loss.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(PowerLoss, TakesNothingInSixHundredMomentsOfAShift) {
    if (const std::string why = test::Recorder::whyNot(); !why.empty()) {
        GTEST_SKIP() << why;
    }
    for (std::uint64_t seed = 2; seed < 5; ++seed) {
        const auto report = test::losePowerInAShift(200, seed);
        EXPECT_GT(report.joined, 0);
    }
}

TEST(PowerLoss, AtEveryMomentOfALogsMakingAndMigration) {
    if (const std::string why = test::Recorder::whyNot(); !why.empty()) {
        GTEST_SKIP() << why;
    }
    EXPECT_GT(test::losePowerWhileALogIsMade(1).states, 100);
    EXPECT_GT(test::losePowerInAMigration(1).states, 100);
}

} // namespace
} // namespace seamclock
