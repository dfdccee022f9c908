// Faults made under the real program while it welds in true time: at the file system (a small one
// that is full, the folder moved away), at SQLite's own door to the disk (fault_shim.cpp), by
// another program (locked, the same log again), or in the file itself (damaged, at a start). Each
// is made in each phase, stands while the weld goes on, and ends. What must hold is worked out from
// what the program had told.
#pragma once

#include <string>
#include <vector>

namespace seamclock::test {

struct FaultRow {
    std::string fault;
    std::string phase;
    std::string outcome;            // one line, for people
    std::vector<std::string> wrong; // empty: all held
    bool skipped = false;
};

struct FaultCase {
    std::string fault;
    std::string phase;
    bool killed = false; // the program is killed while the fault stands, and started after it
};

std::vector<std::string> faultNames();
std::vector<std::string> phaseNames();

/// Several at a time.
std::vector<FaultRow> runFaults(const std::vector<FaultCase>& cases);
/// `fault_report.txt` in the build's folder, and on standard output.
void writeReport(const std::vector<FaultRow>& rows);
/// Fails the test for each thing that did not hold.
void expectAllHeld(const std::vector<FaultRow>& rows);

} // namespace seamclock::test
