// A practice weld for the tests of the virtual bench: a shipped procedure and material on the
// demo's east bench, one metre long.
#pragma once

#include "core/vbench/bend_test.h"
#include "core/vbench/steady_hand.h"
#include "core/vbench/virtual_bench.h"

#include <optional>
#include <string>

namespace seamclock::test {

struct PracticeWeld {
    std::string procedure = "pe-hd-dvs2207-1-2005";
    std::string material = "pe-hd";
    double thicknessMm = 10;
    double dragN = 0;
    std::string bench = "east";
};

inline const PracticeWeld kPe10;
inline const PracticeWeld kPp12{"pp-dvs2207-11", "pp-h", 12};
inline const PracticeWeld kPvdf8{"pvdf-dvs2207-15", "pvdf", 8};

BenchSetup setupFor(const PracticeWeld& weld);
/// Absent: there is no plan that is ready for it.
std::optional<BenchSetup> setupIfPlanned(const PracticeWeld& weld);
/// What a wrong card says for that bench: the row of a sheet so many times as thick (at least the
/// thinnest that the procedure and the bench take), and readings a tenth as high above zero as they
/// ought to be.
WeldPlan rowOf(const BenchSetup& setup, double times);
WeldPlan kgfForN(const BenchSetup& setup);
/// The test fails if it can't be set.
VirtualBench benchFor(const BenchSetup& setup);

struct WeldStory {
    VirtualBench bench;
    HandTimes times;
    BenchView soaked; // when soak was over
    BenchView locked; // when the wheel was locked
    BenchView lifted; // at the end
    BendTest bend;
};

/// A whole weld by hand; the test fails if the hand can't go on.
WeldStory welded(const BenchSetup& setup, const HandFaults& faults = {});

/// So many of its stations have that reason.
int with(const BendTest& bend, BendReason reason);

} // namespace seamclock::test
