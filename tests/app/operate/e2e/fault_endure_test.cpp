// Each phase under another fault of the disk.
#include "tests/app/operate/e2e/window_faults.h"

#include <gtest/gtest.h>
#include <ostream>

namespace seamclock::test {

void PrintTo(const WindowFault& fault, std::ostream* out) {
    *out << fault.phase << ", " << fault.fault;
}

namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

class WindowFaultsEndure : public ::testing::TestWithParam<WindowFault> {};

TEST_P(WindowFaultsEndure, TheStepCountsAndIsSavedLater) {
    expectStepOutlivesFault(GetParam());
}

INSTANTIATE_TEST_SUITE_P(
    Phases, WindowFaultsEndure,
    ::testing::Values(
        WindowFault{"preparing", {"preparing", 4, seconds(2), 0, {}}, "space", "full"},
        WindowFault{"aligning", {"preparing", 17, seconds(2), 0, {}}, "Return", "error"},
        WindowFault{"soaking", {"aligning", 0, seconds(2), 0, {}}, "Next", "sync"},
        WindowFault{"changing_over", {"soaking", 0, milliseconds(12'100), 0, {}}, "F9", "readonly"},
        WindowFault{
            "building_up", {"changing_over", 0, milliseconds(1'200), 0, {}}, "space", "every 3"},
        WindowFault{"cooling", {"building_up", 1, milliseconds(700), 0, {}}, "Return", "full"},
        WindowFault{"releasing", {"cooling", 1, seconds(2), 0, {}}, "Next", "error"},
        WindowFault{"inspecting", {"releasing", 2, seconds(2), 0, {}}, "F9", "readonly"}),
    [](const ::testing::TestParamInfo<WindowFault>& fault) {
        return std::string(fault.param.phase);
    });

} // namespace
} // namespace seamclock::test
