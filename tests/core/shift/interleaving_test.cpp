// Interleavings of four benches: some in every run of the tests, 10,000 in the endure stage.
#include "tests/core/shift/interleaving.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <iostream>

namespace seamclock::test {
namespace {

constexpr std::uint32_t kRuns = SEAMCLOCK_INTERLEAVINGS;

TEST(Interleavings, OfFourBenchesWithTakeBacksAndAcknowledgementsKeepTheClaim) {
    Interleaved all;
    for (std::uint32_t seed = 1; seed <= kRuns; ++seed) {
        const Interleaved one = interleave(seed);
        ASSERT_EQ(one.complaints, "") << "seed " << seed;
        all.events += one.events;
        all.takenBack += one.takenBack;
        all.backdated += one.backdated;
        all.acknowledged += one.acknowledged;
        all.welds += one.welds;
        all.cues += one.cues;
        all.atOnce += one.atOnce;
        all.longest = std::max(all.longest, one.longest);
    }
    // It did what it is named for.
    const int runs = static_cast<int>(kRuns);
    EXPECT_GT(all.welds, runs * 39 / 10);
    EXPECT_GT(all.takenBack, runs);
    EXPECT_GT(all.backdated, runs);
    EXPECT_GT(all.acknowledged, runs / 2);
    EXPECT_GT(all.cues, runs * 16);
    EXPECT_GT(all.atOnce, all.cues / 3);
    std::cout << runs << " interleavings: " << all.welds << " welds, " << all.events << " events, "
              << all.takenBack << " taken back, " << all.backdated << " backdated, "
              << all.acknowledged << " acknowledged; " << all.cues << " cues of ranks 2 to 6, "
              << all.atOnce << " at their instant, longest wait " << all.longest << " ms\n";
}

} // namespace
} // namespace seamclock::test
