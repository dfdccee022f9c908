#include "tests/app/operate/e2e/window_faults.h"

#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

TEST(WindowFaults, AStepOnAFullDiskCountsAndIsSavedLater) {
    expectStepOutlivesFault({"soaking", {"aligning", 0, seconds(2), 0, {}}, "Next", "full"});
}

TEST(WindowFaults, ADamagedLogIsSetAsideAndTheWeldIsThere) {
    expectStartFromDamagedLog({"cooling", 0, seconds(3), 0, {}});
}

} // namespace
} // namespace seamclock::test
