#include "tests/core/log/log_kill.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(KilledWriter, LosesNoRowThatItReportedInFiftyKills) {
    test::killWriters(50, 1);
}

} // namespace
} // namespace seamclock
