// A job's seam as the order of a weld: its procedure and its bench with their very bytes. What it
// leaves open (drag measured on the day, the air's temperature) the caller puts in before the weld
// is opened.
#pragma once

#include "core/session/order.h"
#include "core/shift/job.h"

#include <vector>

namespace seamclock {

/// Of a seam that names no file the bench is empty: it is the one that the caller opens the weld
/// on. Missing: a procedure that isn't among these. As readBenchFile for the seam's bench.
Result<WeldOrder> orderOf(const JobSeam& seam, const std::vector<ProcedureDocument>& procedures);

} // namespace seamclock
