#include "tests/core/log/log_kill.h"
#include "tests/support/sanitized.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(KilledWriter, LosesNoRowThatItReportedInFiftyKills) {
    test::killWriters(test::rounds(50), 1);
}

} // namespace
} // namespace seamclock
