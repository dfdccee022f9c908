#include "tests/core/session/clock_faults.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(ClockFaults, ByChanceShortenNoPhaseInTenThousandMishaps) {
    for (std::uint64_t seed = 1; seed <= 5 && !HasFailure(); ++seed) {
        test::befallByChance(2'000, seed);
    }
}

} // namespace
} // namespace seamclock
