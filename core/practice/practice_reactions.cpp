// How long after a cue its step came.
#include "core/practice/practice_course.h"

#include "core/base/overloaded.h"
#include "core/weld/cues.h"

#include <algorithm>

namespace seamclock {
namespace {

/// Far enough ahead that soak's and cooling's end are among the cues.
constexpr Milliseconds kAhead = std::chrono::hours(48);

/// Which cue the step answers, and whether it may come before that; absent: none.
struct Answered {
    CueKind cue = CueKind::ActNow;
    bool beforeToo = false;
};

std::optional<Answered> answeredBy(const State& state, const WeldDetail& step) {
    const auto is = [&step](auto kind) { return std::holds_alternative<decltype(kind)>(step); };
    if (std::holds_alternative<Aligning>(state) && is(SoakStarted{})) {
        return Answered{CueKind::AlignmentLate, false};
    }
    if (std::holds_alternative<Soaking>(state) && is(PlateOut{})) {
        return Answered{CueKind::ActNow, true};
    }
    if (std::holds_alternative<ChangingOver>(state) && is(FacesMet{})) {
        return Answered{CueKind::ChangeoverOverrun, false};
    }
    if (std::holds_alternative<BuildingUp>(state) && (is(PressureLocked{}) || is(ReadingTaken{}))) {
        return Answered{CueKind::BuildUpLate, false};
    }
    if (std::holds_alternative<Cooling>(state) && is(ReleaseStep{})) {
        return Answered{CueKind::CoolingDone, true};
    }
    const auto* reading = std::get_if<ReadingTaken>(&step);
    const bool recheck = reading != nullptr && reading->phase == ReadingPhase::Recheck;
    if (std::holds_alternative<Cooling>(state) && recheck) {
        return Answered{CueKind::RecheckDue, false};
    }
    return std::nullopt;
}

} // namespace

std::vector<CueReaction> cueReactions(const PracticeCourse& course) {
    std::vector<CueReaction> reactions;
    const std::vector<Event>& events = course.record.events;
    for (const Retained& one : course.told) {
        if (one.n < 2) {
            continue;
        }
        const auto before = fold({events.begin(), events.begin() + (one.n - 1)});
        if (!before) {
            continue;
        }
        const auto answered = answeredBy(before->state, one.d);
        if (!answered) {
            continue;
        }
        for (const Cue& cue : cuesUntil(*before, one.t, kAhead)) {
            const bool begun = cue.onset <= Milliseconds(0);
            if (cue.kind != answered->cue || !(begun || answered->beforeToo)) {
                continue;
            }
            reactions.push_back({cue.kind, course.timeOf(one.at) + cue.onset, -cue.onset});
            break;
        }
    }
    return reactions;
}

} // namespace seamclock
