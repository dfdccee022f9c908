// The jobs that a log keeps: seams that a foreman entered or imported there, each a subject of its
// own ("seam:UUID"), as the last fact of it says. What is made of them is made_seams.h's; jobs that
// lie in a folder beside the program are not in here.
#pragma once

#include "core/base/result.h"
#include "core/shift/job.h"

#include <vector>

namespace seamclock {

class LogReader;

/// Of this log's own chain, in the order in which they were first entered, those that were taken
/// away left out. Damaged: a document that is named and lacks, or is none.
Result<std::vector<JobSeam>> readJobSeams(LogReader& log);

} // namespace seamclock
