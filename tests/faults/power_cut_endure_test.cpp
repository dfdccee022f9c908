// The same as power_cut_test, 500 kills long.
#include "tests/faults/kills.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

using namespace seamclock::test;

TEST(PowerCutEndure, TwoHundredKillsInTrueTime) {
    const ScratchFolder folder;
    killInTrueTime(folder.file("true.seamlog"), 200, 100);
}

TEST(PowerCutEndure, TwoHundredKillsOfPacedWelds) {
    const ScratchFolder folder;
    killPaced(folder.file("paced.seamlog"), 200, 200);
}

TEST(PowerCutEndure, AHundredKillsAfterEachEvent) {
    int kills = 0;
    for (std::uint64_t seed = 1; kills < 100 && !HasFailure(); ++seed) {
        const ScratchFolder folder;
        kills += killAfterEvents(folder.path(), seed, 1);
    }
    EXPECT_GE(kills, 100);
}
