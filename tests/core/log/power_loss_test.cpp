// The order in which things reach the disk. SQLite promises that a commit in WAL mode with
// synchronous=FULL survives a loss of power
// (https://www.sqlite.org/pragma.html#pragma_synchronous); our own files and renamings must keep to
// the same order. That a rename is only there for good once its folder was synced is fsync(2)'s.
#include "tests/core/log/losing_disk.h"
#include "tests/core/log/power_loss.h"
#include "tests/support/sanitized.h"

#include <cstdio>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

class PowerLoss : public ::testing::Test {
protected:
    void SetUp() override {
        if (const std::string why = test::Recorder::whyNot(); !why.empty()) {
            GTEST_SKIP() << why;
        }
    }
    static void print(const test::PowerLossReport& report) {
        std::printf(
            "%d disks looked at, %d from before the log; %d promises kept; %d spill files joined\n",
            report.states, report.beforeTheLog, report.promises, report.joined);
    }
};

TEST_F(PowerLoss, TakesNoSavedOrSpilledRowAtAnyMomentOfAShift) {
    const auto report = test::losePowerInAShift(test::rounds(40), 1);
    print(report);
    EXPECT_GT(report.promises, report.states);
    EXPECT_GT(report.joined, 0);
}

TEST_F(PowerLoss, LeavesNoHalfMadeLog) {
    const auto report = test::losePowerWhileALogIsMade(4);
    print(report);
    EXPECT_GT(report.states, 25);
    EXPECT_GT(report.beforeTheLog, 0);
    EXPECT_LT(report.beforeTheLog, report.states);
}

TEST_F(PowerLoss, LeavesAMigrationBeforeOrAfterAStepWithItsCopy) {
    const auto report = test::losePowerInAMigration(4);
    print(report);
    EXPECT_GT(report.states, 25);
}

TEST_F(PowerLoss, WithoutTheWriteAheadLogNothingIsSilentlyWrong) {
    const auto report = test::loseTheFilesBesideTheLog(test::rounds(20), 2);
    print(report);
    EXPECT_GT(report.promises, 0);
}

} // namespace
} // namespace seamclock
