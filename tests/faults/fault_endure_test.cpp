// Every fault in every phase, and each with the program killed under it.
#include "tests/faults/fault_matrix.h"

#include <gtest/gtest.h>

using namespace seamclock::test;

TEST(FaultsEndure, EveryFaultInEveryPhaseAndWithAKill) {
    std::vector<FaultCase> cases;
    for (const std::string& fault : faultNames()) {
        for (const std::string& phase : phaseNames()) {
            cases.push_back({fault, phase, false});
        }
    }
    for (const std::string& phase : phaseNames()) {
        cases.push_back({"damaged at start", phase, true});
        for (const char* fault : {"disk full", "disk error", "sync error", "every 3rd write"}) {
            cases.push_back({fault, phase, true});
        }
    }
    const auto rows = runFaults(cases);
    writeReport(rows);
    expectAllHeld(rows);
}
