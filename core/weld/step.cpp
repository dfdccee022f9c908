#include "core/weld/step.h"

#include "core/base/overloaded.h"

#include <algorithm>
#include <string>

namespace seamclock {

namespace {

using Next = Result<State>;

Next refuse(const State& state, const WeldDetail& detail) {
    return fail(
        ErrorCode::Refused,
        std::string(kindOf(detail)) + " does not fit while " + std::string(phaseName(state)));
}

// Each phase answers what belongs to it; `otherwise` holds what every open state accepts.
Next otherwise(const State& state, const WeldDetail& detail) {
    const bool anywhere =
        std::holds_alternative<RemarkMade>(detail) || std::holds_alternative<PhotoAdded>(detail);
    const bool whileOpen = std::holds_alternative<CueAcknowledged>(detail) ||
                           std::holds_alternative<ClockJumped>(detail) ||
                           std::holds_alternative<ReasonGiven>(detail);
    if (anywhere || (whileOpen && isOpen(state))) {
        return state;
    }
    if (std::holds_alternative<WeldAborted>(detail) && isOpen(state)) {
        return Aborted{};
    }
    return refuse(state, detail);
}

bool isCheck(const WeldDetail& detail, std::string_view code) {
    const auto* made = std::get_if<CheckMade>(&detail);
    return made != nullptr && made->check == code;
}

bool isReading(const WeldDetail& detail) {
    return std::holds_alternative<ReadingTaken>(detail);
}

Preparing withSettled(const WeldPlan& plan, std::set<std::string> settled) {
    Preparing next;
    for (const std::string& check : plan.checks) {
        if (settled.count(check) == 0) {
            next.openChecks.push_back(check);
        }
    }
    next.settled = std::move(settled);
    return next;
}

Result<Preparing>
settle(const WeldPlan& plan, const Preparing& state, const std::string& check, bool passed) {
    if (std::find(plan.checks.begin(), plan.checks.end(), check) == plan.checks.end()) {
        return fail(
            ErrorCode::Refused, "the check \"" + check + "\" is not one of this weld's checks");
    }
    std::set<std::string> settled = state.settled;
    if (passed) {
        settled.insert(check);
    } else {
        settled.erase(check);
    }
    return withSettled(plan, std::move(settled));
}

Next on(const WeldPlan& plan, const Preparing& state, const WeldDetail& detail, WeldTime t) {
    if (const auto* made = std::get_if<CheckMade>(&detail)) {
        return settle(plan, state, made->check, made->passed);
    }
    if (const auto* overridden = std::get_if<CheckOverridden>(&detail)) {
        return settle(plan, state, overridden->check, true);
    }
    if (std::holds_alternative<PlanReplaced>(detail)) {
        return withSettled(plan, state.settled);
    }
    if (std::holds_alternative<AlignmentStarted>(detail)) {
        if (!state.openChecks.empty()) {
            return fail(
                ErrorCode::Refused,
                "alignment can't start: " + std::to_string(state.openChecks.size()) +
                    " checks are open, the first is " + state.openChecks.front());
        }
        return Aligning{t, false};
    }
    return otherwise(state, detail);
}

Next on(const WeldPlan& plan, const Aligning& state, const WeldDetail& detail, WeldTime t) {
    if (std::holds_alternative<SoakStarted>(detail)) {
        return Soaking{t, t + plan.soak->target};
    }
    if (isReading(detail)) {
        const ReadingPhase phase = std::get<ReadingTaken>(detail).phase;
        return phase == ReadingPhase::Alignment ? Next(state) : refuse(state, detail);
    }
    if (isCheck(detail, "alignment_bead")) {
        return state;
    }
    if (const auto* seen = std::get_if<CueAcknowledged>(&detail)) {
        Aligning next = state;
        next.lateAcknowledged = state.lateAcknowledged || seen->cue == "alignment_late";
        return next;
    }
    return otherwise(state, detail);
}

Next on(const WeldPlan& plan, const Soaking& state, const WeldDetail& detail, WeldTime t) {
    if (std::holds_alternative<PlateOut>(detail)) {
        return ChangingOver{t, t + *plan.changeoverMax, false};
    }
    if (isReading(detail)) {
        const ReadingPhase phase = std::get<ReadingTaken>(detail).phase;
        const bool fits = phase == ReadingPhase::Alignment || phase == ReadingPhase::Soak;
        return fits ? Next(state) : refuse(state, detail);
    }
    if (isCheck(detail, "alignment_bead")) {
        return state;
    }
    return otherwise(state, detail);
}

Next on(const WeldPlan& plan, const ChangingOver& state, const WeldDetail& detail, WeldTime t) {
    if (std::holds_alternative<FacesMet>(detail)) {
        return BuildingUp{t, t + plan.buildUp->target, t + plan.buildUp->high, {}, {}};
    }
    if (isReading(detail)) {
        const ReadingPhase phase = std::get<ReadingTaken>(detail).phase;
        const bool fits = phase == ReadingPhase::Alignment || phase == ReadingPhase::Soak;
        return fits ? Next(state) : refuse(state, detail);
    }
    if (const auto* seen = std::get_if<CueAcknowledged>(&detail)) {
        ChangingOver next = state;
        next.lateAcknowledged = state.lateAcknowledged || seen->cue == "changeover_overrun";
        return next;
    }
    return otherwise(state, detail);
}

Cooling startCooling(const WeldPlan& plan, WeldTime t) {
    Cooling next{t, t + plan.cooling->atLeast, {}, {}, false};
    for (const Milliseconds due : plan.cooling->rechecks) {
        next.rechecks.push_back(t + due);
        next.recheckSettled.push_back(false);
    }
    return next;
}

Next on(const WeldPlan& plan, const BuildingUp& state, const WeldDetail& detail, WeldTime t) {
    if (isReading(detail)) {
        const auto& reading = std::get<ReadingTaken>(detail);
        if (reading.phase == ReadingPhase::Recheck) {
            return refuse(state, detail);
        }
        BuildingUp next = state;
        if (reading.phase == ReadingPhase::Joining) {
            next.lastReading = reading.readingMilli;
            if (!next.inBandSince && plan.scale->joining.holds(reading.readingMilli)) {
                next.inBandSince = t;
            }
        }
        return next;
    }
    if (std::holds_alternative<PressureLocked>(detail)) {
        const bool known = state.lastReading.has_value();
        if (known && !plan.scale->joining.holds(*state.lastReading)) {
            return state; // locked out of band: stored, but cooling does not start
        }
        return startCooling(plan, t);
    }
    return otherwise(state, detail);
}

// Re-check i counts a reading from its due time to the next one's (the last: to two thirds of
// cooling).
void settleRecheck(Cooling& state, WeldTime t) {
    for (std::size_t i = state.rechecks.size(); i-- > 0;) {
        if (t.lo >= state.rechecks[i].lo) {
            state.recheckSettled[i] = true;
            return;
        }
    }
}

Next afterRelease(const WeldPlan& plan, int stepsDone) {
    if (stepsDone >= static_cast<int>(plan.releaseOrder.size())) {
        return Inspecting{};
    }
    return Releasing{stepsDone};
}

Next release(const WeldPlan& plan, const State& state, int stepsDone, const ReleaseStep& released) {
    const std::string& expected = plan.releaseOrder[static_cast<std::size_t>(stepsDone)];
    if (released.step != expected) {
        return fail(
            ErrorCode::Refused, "release step \"" + released.step + "\" does not fit while " +
                                    std::string(phaseName(state)) + ": this bench's next is \"" +
                                    expected + "\"");
    }
    return afterRelease(plan, stepsDone + 1);
}

Next on(const WeldPlan& plan, const Cooling& state, const WeldDetail& detail, WeldTime t) {
    if (isReading(detail)) {
        Cooling next = state;
        if (std::get<ReadingTaken>(detail).phase == ReadingPhase::Recheck) {
            settleRecheck(next, t);
        }
        return next;
    }
    if (const auto* seen = std::get_if<CueAcknowledged>(&detail)) {
        Cooling next = state;
        if (seen->cue == "recheck_due") {
            settleRecheck(next, t);
        }
        next.doneAcknowledged = state.doneAcknowledged || seen->cue == "cooling_done";
        return next;
    }
    if (const auto* released = std::get_if<ReleaseStep>(&detail)) {
        return release(plan, state, 0, *released);
    }
    if (std::holds_alternative<JointNumbered>(detail)) {
        return state;
    }
    return otherwise(state, detail);
}

Next on(const WeldPlan& plan, const Releasing& state, const WeldDetail& detail, WeldTime) {
    if (const auto* released = std::get_if<ReleaseStep>(&detail)) {
        return release(plan, state, state.stepsDone, *released);
    }
    if (std::holds_alternative<JointNumbered>(detail)) {
        return state;
    }
    return otherwise(state, detail);
}

Next on(const WeldPlan&, const Inspecting& state, const WeldDetail& detail, WeldTime) {
    if (std::holds_alternative<BeadMeasured>(detail) || std::holds_alternative<Graded>(detail) ||
        std::holds_alternative<JointNumbered>(detail)) {
        return state;
    }
    if (std::holds_alternative<WeldClosed>(detail)) {
        return Closed{};
    }
    return otherwise(state, detail);
}

template <class Ended>
Next afterTheEnd(const Ended& state, const WeldDetail& detail) {
    if (std::holds_alternative<Decided>(detail) || std::holds_alternative<SignedOff>(detail)) {
        return state;
    }
    return otherwise(state, detail);
}

Next on(const WeldPlan&, const Closed& state, const WeldDetail& detail, WeldTime) {
    return afterTheEnd(state, detail);
}

Next on(const WeldPlan&, const Aborted& state, const WeldDetail& detail, WeldTime) {
    return afterTheEnd(state, detail);
}

} // namespace

Result<State> step(const WeldPlan& plan, const State& state, const WeldDetail& detail, WeldTime t) {
    return std::visit([&](const auto& phase) { return on(plan, phase, detail, t); }, state);
}

Preparing preparing(const WeldPlan& plan) {
    return withSettled(plan, {});
}

} // namespace seamclock
