// What may follow a joint on its bench: the next seam of the same kind, and the trial joint that a
// series begins with. Values and words only; the window opens the weld.
#pragma once

#include "app/operate/job_seams.h"
#include "app/pages/choice_page.h"
#include "core/session/carry.h"
#include "core/weld/fold.h"

#include <optional>
#include <vector>

namespace seamclock {

/// The first seam of the job on that weld's bench that was never made, with the same procedure,
/// thickness, lengths and materials. One that was cut out is no next: what was lost of it is asked.
std::optional<JobSeam> nextAlike(const JobSeams& seams, const Weld& weld);

/// How often the job lets this seam be welded again; absent: it does not say.
std::optional<int>
reweldsAllowed(const std::vector<JobSeam>& seams, const std::string& job, const std::string& label);

enum class TrialAnswer {
    Without, // goes on; the record says so
    Release  // the foreman, by his PIN
};

struct TrialQuestion {
    ChoiceView page; // its step is a trial joint
    std::vector<TrialAnswer> answers;
};

/// `foremanHere`: one could prove himself.
TrialQuestion trialQuestion(const TrialFinding& found, const QString& letter, bool foremanHere);

} // namespace seamclock
