// What was set and read of a joint as comma-separated values, one row a value, so that a
// spreadsheet can do with many joints what a record does with one: readings, forces, pressures,
// lengths and temperatures from set_actual.h, and the five times. Each row names the event that
// its actual value comes from; a value that was corrected has also what stood there first and the
// event that holds what stands now (a force, which follows from a reading, the latter alone).
// Numbers have a dot and their unit in a column of its own.
#pragma once

#include "core/bench/bench.h"
#include "core/log/joint.h"
#include "core/weld/record.h"

#include <string>

namespace seamclock {

std::string valueRowsHeader();
/// Of a joint whose events make none: one row with why.
std::string damagedRow(const JointLine& line);
/// Without a bench there are no actual forces and pressures.
std::string valueRows(const WeldRecord& record, const Bench* bench);

} // namespace seamclock
