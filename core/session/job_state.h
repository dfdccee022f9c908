// How far a job is, by the joints in the log: each of its seams is open, running, done, to redo or
// cut out. A joint belongs to the seam whose label it has ("S3/R1" is S3 welded again), if its
// sheets are of the same material and about as thick; one that has the label and other sheets is of
// another job and is named apart, since labels like "S1" come again. Trial joints don't count, and
// neither does a weld that was stopped before its alignment: nothing was melted.
#pragma once

#include "core/base/result.h"
#include "core/log/joint.h"
#include "core/shift/job.h"
#include "core/weld/event.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

class LogReader;

enum class JobSeamState { Open, Running, Done, ToRedo, CutOut };
std::string_view toString(JobSeamState state); // "open", "running", "done", "to_redo", "cut_out"

struct SeamJoint {
    JointLine line;
    std::optional<Decision> decision; // the last one made
    bool melted = false;              // its alignment was begun

    bool operator==(const SeamJoint&) const = default;
};

struct SeamProgress {
    std::string label;
    JobSeamState state = JobSeamState::Open;
    std::string why;               // "" where the state says all
    std::vector<SeamJoint> joints; // newest first

    bool operator==(const SeamProgress&) const = default;
};

struct JobProgress {
    std::vector<SeamProgress> seams;  // in the job's order
    std::vector<JointLine> elsewhere; // the label of a seam, but other sheets

    std::size_t count(JobSeamState state) const;
    bool operator==(const JobProgress&) const = default;
};

/// What the newest joint that counts makes of its seam:
///   open                      running
///   decided: accept           done        decided: cut out   cut out
///   decided: repair           to redo     stopped            to redo
///   within limits, also with remarks, and nobody decided     done
///   out of limits or incomplete, and nobody decided          to redo
/// `fromDay`: only joints opened on that local day or later. Errors as the reader's.
Result<JobProgress> jobProgress(
    LogReader& log, const std::vector<JobSeam>& seams,
    const std::optional<std::string>& fromDay = {});

} // namespace seamclock
