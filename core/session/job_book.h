// The jobs that a log keeps: seams that a foreman entered or imported there, each a subject of its
// own ("seam:UUID"), as the last fact of it says. What is made of them is made_seams.h's; jobs that
// lie in a folder beside the program are not in here.
#pragma once

#include "core/base/result.h"
#include "core/shift/job.h"

#include <string>
#include <vector>

namespace seamclock {

class LogReader;

struct KeptSeams {
    std::vector<JobSeam> seams;
    std::vector<std::string> unread; // a sentence for each fact and each document that can't be
};

/// Of this log's own chain, in the order in which they were first entered, those that were taken
/// away left out. One that can't be read takes no other with it; of a seam whose last fact can't
/// be, what the fact before it says. Errors: as the reader's.
Result<KeptSeams> readJobSeams(LogReader& log);

} // namespace seamclock
