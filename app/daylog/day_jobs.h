// The jobs that a log knows: those that a foreman keeps in it and those that its joints name, each
// with its seams. They are gathered from the whole list of joints, which takes as long as the list
// is: asked when somebody wants to choose one, beside the window.
#pragma once

#include "core/log/log_reader.h"

#include <string>
#include <vector>

namespace seamclock {

struct DayJob {
    std::string name;               // "": of a file that tells none
    std::vector<std::string> seams; // their labels, without what was welded again ("S3/R1")

    bool operator==(const DayJob&) const = default;
};

/// By name. Errors as readJobSeams and the reader's.
Result<std::vector<DayJob>> jobsIn(LogReader& log);

/// `own`, of this tablet, if it has seams: first, with what the log knows of it besides.
std::vector<DayJob> withOwn(std::vector<DayJob> jobs, const DayJob& own);

} // namespace seamclock
