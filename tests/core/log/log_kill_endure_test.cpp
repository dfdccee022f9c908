#include "tests/core/log/log_kill.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(KilledWriter, LosesNoRowThatItReportedInFiveHundredKills) {
    for (std::uint64_t seed = 2; seed < 12; ++seed) {
        test::killWriters(50, seed);
    }
}

} // namespace
} // namespace seamclock
