// Which seams of a job are made, as running state. What the log says of the job's labels is read
// once, by the index of the list of joints, so it takes as long as the job is and not as the log;
// from then on every weld of this program tells how it stands. Nothing is read again after a step,
// and a seam counts as made at the instant of its opening, before its row is on disk.
//
// The newest joint of a seam decides, its re-welds (S3/R1) among them. One that was stopped before
// its faces met, and a trial joint, leave it as it was; one that was stopped after that, or that a
// foreman decided to cut out or to repair, leaves it to be welded again. One that is out of limits
// or incomplete and that nobody decided on is neither: it waits for the foreman, and is not welded
// again by itself. This is the one place that says so; how far a job is (job_state.h) asks it.
#pragma once

#include "core/log/log_reader.h"
#include "core/shift/job.h"
#include "core/weld/fold.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

enum class SeamState {
    Open,     // no joint yet
    Made,     // or being made
    ToDecide, // out of limits or incomplete, and a foreman has not said what becomes of it
    ToRepair, // as he said: to be welded again
    CutOut    // likewise, or stopped after its faces met
};

/// Whether an operator is offered it.
bool isToBeWelded(SeamState state);

struct SeamFinding {
    SeamState state = SeamState::Open;
    std::string weld;        // "weld:UUID" of the joint that decides; "": none
    std::string label;       // that joint's own: S3, S3/R1
    std::int64_t number = 0; // its

    bool operator==(const SeamFinding&) const = default;
};

/// What a joint makes of its seam; Open: nothing.
SeamState seamStateOf(const Weld& weld);

/// Whether a joint whose label is the seam's is of that seam: of the same job, or of none that was
/// told (an older log, a seam typed by hand), and its first sheet of the same material and about as
/// thick. A seam without sheets takes any.
bool isOfJob(const JobSeam& seam, std::string_view job);
bool hasSheetsOf(const JobSeam& seam, std::string_view material, std::int64_t thicknessUm);

class MadeSeams {
public:
    explicit MadeSeams(const std::vector<JobSeam>& seams);

    /// What was told by take() stays. Errors as LogReader's; then nothing is known, as before.
    /// Refused: the list of joints is being made anew, and is asked again later.
    Result<void> read(LogReader& log);
    bool isRead() const { return m_read; }

    /// A weld as it stands now. Of a seam that is none of the job's nothing comes. True: what of()
    /// answers may have changed.
    bool take(const Weld& weld);

    SeamFinding of(const SeamName& name) const;

private:
    struct Joint {
        SeamFinding finding;
        Milliseconds openedUtc{0};
        std::size_t events = 0; // that it was worked out from
    };
    using Joints = std::map<std::string, Joint>; // by weld
    struct Seam {
        JobSeam asked;
        Joints joints;
    };

    static Result<void> readSeam(LogReader& log, const JobSeam& seam, Joints& into);

    std::map<SeamName, Seam> m_seams;
    bool m_read = false;
};

} // namespace seamclock
