// What was set and read of a joint as comma-separated values, one row a value, so that a
// spreadsheet can do with many joints what a record does with one: readings, forces, pressures,
// lengths and temperatures from set_actual.h, and the five times. Each row names the event that
// its actual value comes from; a value that was corrected has also what stood there first and the
// event that holds what stands now (a force, which follows from a reading, the latter alone).
// Numbers have a dot and their unit in a column of its own.
#pragma once

#include "core/bench/bench.h"
#include "core/log/log_reader.h"
#include "core/weld/record.h"

#include <cstdint>
#include <string>

namespace seamclock {

std::string valueRowsHeader();
/// What a row begins with: of a million joints no more needs to be held in memory.
struct NamedJoint {
    std::string weld; // "weld:UUID"
    std::int64_t number = 0;
    Milliseconds openedUtc{0};
    std::string seam;
};

/// Of a joint whose events make none: one row with why.
std::string damagedRow(const NamedJoint& joint, const std::string& trouble);
/// Of a joint as it stands in the log; one that can't be read or folded has the row that says why.
std::string valueRows(LogReader& reader, const NamedJoint& joint);
/// Without a bench there are no actual forces and pressures.
std::string valueRows(const WeldRecord& record, const Bench* bench);

} // namespace seamclock
