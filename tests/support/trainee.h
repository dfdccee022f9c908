// A whole practice weld for tests, as a trainee would leave it: the steady hand leads the bench,
// right or with faults, and the steps are told at the times at which it did them, through a session
// on the run's own clock.
#pragma once

#include "core/log/log_writer.h"
#include "core/practice/practice_history.h"
#include "core/practice/practice_run.h"
#include "core/practice/practice_score.h"
#include "core/session/session.h"

#include <functional>
#include <string>

namespace seamclock::test {

/// What is told otherwise than it was done, or done besides.
struct Telling {
    bool soakAtContact = false;    // soak told as soon as the plate is touched
    Milliseconds plateOutLate{0};  // told so long after it was done
    std::int64_t misreadMilli = 0; // added to the joining reading that is typed
    std::int64_t plateOffMc = 0;   // likewise to the plate's temperature
    std::vector<Noticed> noticed;
    std::vector<TimedAct> tries; // acts that the bench will refuse
};

struct MadeWeld {
    PracticeTake take;
    WeldRecord record;
};

/// All procedures, the demo's benches and all materials.
const PracticeShop& shop();
Lesson shippedLesson(const std::string& id);
SetLesson setFor(const Lesson& lesson);

/// The weld is made in `log` (a practice log, which must be open) with a clock that begins at
/// `clock`'s now. The test fails where a step is refused.
MadeWeld practised(
    const SetLesson& set, const HandFaults& faults, LogWriter<Practice>& log, VirtualClock& clock,
    const Telling& telling = {});
/// In a log of its own, which is thrown away.
MadeWeld
practised(const SetLesson& set, const HandFaults& faults = {}, const Telling& telling = {});

PracticeScore scoreOf(const SetLesson& set, const MadeWeld& made);

bool has(const PracticeScore& score, Lapse lapse);
/// "slammed, early_release"; for failures.
std::string names(const PracticeScore& score);

VirtualClock practiceClock();

} // namespace seamclock::test
