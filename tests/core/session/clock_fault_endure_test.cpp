#include "tests/core/session/clock_faults.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(ClockFaults, ByChanceShortenNoPhaseInTwoThousandMishaps) {
    for (std::uint64_t seed = 1; seed <= 2 && !HasFailure(); ++seed) {
        test::befallByChance(1'000, seed);
    }
}

} // namespace
} // namespace seamclock
