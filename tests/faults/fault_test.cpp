// Each fault once, in a phase of its own; the whole matrix is fault_endure_test's.
#include "tests/faults/fault_matrix.h"

#include <gtest/gtest.h>

using namespace seamclock::test;

TEST(Faults, TheWeldGoesOnUnderEachAndNothingIsLost) {
    const auto faults = faultNames();
    const auto phases = phaseNames();
    std::vector<FaultCase> cases;
    for (std::size_t i = 0; i < faults.size(); ++i) {
        cases.push_back({faults[i], phases[i % phases.size()], false});
    }
    cases.push_back({"damaged at start", "cooling", true});
    cases.push_back({"disk full", "soak", true});
    const auto rows = runFaults(cases);
    writeReport(rows);
    expectAllHeld(rows);
}
