// How far a job is, by the joints in the log: each of its seams is open, running, done, to decide,
// to redo or cut out. A joint belongs to the seam whose label it has ("S3/R1" is S3 welded again),
// if it is of the same job or of none that was told, and its sheets are of the same material and
// about as thick; one that has the label and other sheets is named apart, since labels like "S1"
// come again. Which joint decides, and what it makes of its seam, is made_seams.h's to say: what is
// offered at the bench and what the foreman reads can't differ. Beyond that this names the weld
// that was stopped before its faces met, as long as no other joint counts: its sheets were molten.
#pragma once

#include "core/base/result.h"
#include "core/log/joint.h"
#include "core/session/made_seams.h"
#include "core/shift/job.h"
#include "core/weld/event.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

class LogReader;

enum class JobSeamState { Open, Running, Done, ToDecide, ToRedo, CutOut };
std::string_view toString(JobSeamState state); // "open", "running", "done", "to_decide", …

struct SeamJoint {
    JointLine line;
    std::optional<Decision> decision;  // the last one made
    bool melted = false;               // its alignment was begun
    SeamState makes = SeamState::Open; // of its seam

    bool operator==(const SeamJoint&) const = default;
};

struct SeamProgress {
    std::string job;
    std::string label;
    JobSeamState state = JobSeamState::Open;
    std::string why;               // "" where the state says all
    std::string weld;              // "weld:UUID" of the joint that decides; "": none
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
///   out of limits, incomplete or unreadable, nobody decided  to decide
/// `fromDay`: only joints opened on that local day or later. Errors as the reader's.
Result<JobProgress> jobProgress(
    LogReader& log, const std::vector<JobSeam>& seams,
    const std::optional<std::string>& fromDay = {});

} // namespace seamclock
