#include "core/practice/next_act.h"

#include "core/base/overloaded.h"
#include "core/weld/intent.h"
#include "core/weld/verdict.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <string_view>

namespace seamclock {

namespace {

using std::chrono::seconds;

/// The weld's open phase as the operator sees it: what stands, what happened since the phase began.
class View {
public:
    View(const Weld& weld, const Hand& hand)

        : m_weld(weld), m_hand(hand), m_chance(hand), m_standing(retained(weld.events)) {}

    const WeldPlan& plan() const { return m_weld.plan; }
    const RehearseFaults& faults() const { return m_hand.faults; }
    const Weld& weld() const { return m_weld; }
    const Chance& chance() const { return m_chance.chance(); }
    const HandChance& hand() const { return m_chance; }
    const std::vector<Retained>& standing() const { return m_standing; }

    Milliseconds draw(std::string_view name, Milliseconds low, Milliseconds high) const {
        return m_chance.draw(name, low, high);
    }
    /// The same, for what is a matter of his hand's pace alone.
    Milliseconds handTime(std::string_view name, Milliseconds low, Milliseconds high) const {
        return m_chance.handTime(name, low, high);
    }
    /// Weld time of the last thing that was done.
    Milliseconds last() const { return m_standing.back().t.lo; }
    Act after(std::string_view name, Milliseconds low, Milliseconds high, WeldDetail d) const {
        return {last() + handTime(name, low, high), std::move(d)};
    }

    /// Whether an event of this kind for which `fits` holds stands since weld time `from`.
    template <class Kind, class Fits>
    bool hasSince(WeldTime from, Fits fits) const {
        return std::any_of(m_standing.begin(), m_standing.end(), [&](const Retained& one) {
            const Kind* d = std::get_if<Kind>(&one.d);
            return d != nullptr && one.t.lo >= from.lo && fits(*d);
        });
    }
    template <class Kind>
    bool has() const {
        return hasSince<Kind>(WeldTime{}, [](const Kind&) { return true; });
    }
    bool hasReading(WeldTime from, ReadingPhase phase) const {
        return hasSince<ReadingTaken>(
            from, [&](const ReadingTaken& d) { return d.phase == phase; });
    }
    /// Taken back or backdated: events that answer others and do not stand themselves.
    template <class Kind>
    bool everHappened() const {
        return std::any_of(m_weld.events.begin(), m_weld.events.end(), [](const Event& event) {
            return std::holds_alternative<Kind>(event.d);
        });
    }
    bool aborts() const { return faults().abortIn && *faults().abortIn == phaseName(m_weld.state); }

    /// Where he turns to: the nearest division, seldom one beside it, and in the band, since he
    /// turns until he sees it there.
    std::int64_t turned(std::string_view name, const ReadingBand& band) const {
        static constexpr std::array<std::int64_t, 5> kBeside{0, 0, 0, -1, 1};
        const auto which = static_cast<std::size_t>(chance().even(name, 0, kBeside.size() - 1));
        const std::int64_t read = band.setMilli + kBeside[which] * plan().scale->divisionMilli;
        return band.holds(read) ? read : band.setMilli;
    }
    /// What he reads there later: a perfect eye the same.
    std::int64_t reading(std::string_view name, const ReadingBand& band) const {
        const std::int64_t off = m_chance.misreading(name) * plan().scale->divisionMilli;
        return std::max(plan().scale->zeroMilli, turned(name, band) + off);
    }

private:
    const Weld& m_weld;
    const Hand& m_hand;
    HandChance m_chance;
    std::vector<Retained> m_standing;
};

std::int64_t scaled(std::int64_t value, std::int64_t percent) {
    return value * percent / 100;
}
Milliseconds scaled(Milliseconds value, std::int64_t percent) {
    return value * percent / 100;
}

WeldAborted aborting() {
    return {"practice", "the rehearsal was asked to stop in this phase"};
}

CheckMade checked(const View& view, const std::string& code) {
    CheckMade made;
    made.check = code;
    made.passed = true;
    const WeldPlan& plan = view.plan();
    const Chance& chance = view.chance();
    if (code == "plate_temperature") {
        made.place = "middle";
        made.face = "left";
        const std::int64_t room = std::min<std::int64_t>(
            {3000, plan.plate->targetMc - plan.plate->minMc,
             plan.plate->maxMc - plan.plate->targetMc});
        const std::int64_t measured =
            view.faults().coldPlate
                ? plan.plate->minMc - kColderMc
                : plan.plate->targetMc + chance.around("plate_left", -room, room);
        made.valueMc = measured / 500 * 500; // a surface probe shows half degrees
        if (!view.faults().coldPlate) {
            made.valueMc = std::clamp(*made.valueMc, plan.plate->minMc, plan.plate->maxMc);
        }
    } else if (code == "scale_zero") {
        made.valueMilli = plan.scale->zeroMilli;
    } else if (code == "gap") {
        made.valueUm = plan.gapUm;
    } else if (code == "clamping_gap") {
        made.valueUm = plan.clampingGapUm;
    } else if (code == "edges_meet") {
        made.valueUm = chance.even("edge_gap", 0, plan.edgeGapMaxUm / 100 / 2) * 100;
    }
    return made;
}

Act next(const View& view, const Preparing& state) {
    if (view.aborts() && view.standing().size() > 3) {
        return view.after("abort", seconds(5), seconds(10), aborting());
    }
    if (state.openChecks.empty()) {
        return view.after("to_the_plate", seconds(3), seconds(8), AlignmentStarted{});
    }
    const std::string& code = state.openChecks.front();
    const auto time = timeForCheck(code);
    if (view.faults().skipCheck && *view.faults().skipCheck == code) {
        return view.after(
            "skip", seconds(2), seconds(4),
            CheckOverridden{code, "practice: left out on request", Authority::Operator});
    }
    return view.after("check_" + code, time.first, time.second, checked(view, code));
}

/// The bead ends alignment, not the clock; this is about what a bead of the table's height takes
/// [practice], as a share of soak's target. A thin bead ends it at two thirds.
Milliseconds alignmentTime(const View& view) {
    const Milliseconds whole =
        scaled(view.plan().soak->target, view.chance().around("alignment", 58, 70));
    return view.faults().thinBead ? scaled(whole, kThinBeadPercent) : whole;
}

Act next(const View& view, const Aligning& state) {
    const Milliseconds began = state.from.lo;
    const Milliseconds whole = alignmentTime(view);
    if (view.aborts())
        return {began + scaled(whole, kAbortAtPercent), aborting()};
    if (!view.hasReading(state.from, ReadingPhase::Alignment)) {
        return {
            began + std::min(view.draw("align_reading", seconds(4), seconds(8)), whole / 3),
            ReadingTaken{
                ReadingPhase::Alignment,
                view.reading("align_reading", view.plan().scale->alignment)}};
    }
    const bool beadSeen = view.hasSince<CheckMade>(
        state.from, [](const CheckMade& d) { return d.check == "alignment_bead"; });
    if (!beadSeen && view.plan().beadMinUm) {
        CheckMade bead;
        bead.check = "alignment_bead";
        bead.passed = true;
        const std::int64_t least = *view.plan().beadMinUm;
        bead.valueUm =
            view.faults().thinBead
                ? scaled(least, kThinBeadPercent) / 100 * 100
                : least + view.chance().even("bead", 1, 4 + view.hand().unskilled(8)) * 100;
        return {began + scaled(whole, 90), bead};
    }
    return {began + whole + view.faults().backdate.value_or(Milliseconds(0)), SoakStarted{}};
}

std::int64_t lastOf(const Weld& weld) {
    return lastTakeable(weld);
}

Act next(const View& view, const Soaking& state) {
    const RehearseFaults& faults = view.faults();
    const Milliseconds began = state.from.lo;
    const Milliseconds due = state.due.lo;
    if (faults.backdate && !view.everHappened<StepBackdated>()) {
        return {
            view.last() + kBackdateThought, StepBackdated{lastOf(view.weld()), *faults.backdate}};
    }
    if (view.aborts())
        return {began + scaled(due - began, kAbortAtPercent), aborting()};
    if (!view.hasReading(state.from, ReadingPhase::Soak)) {
        return {
            began + std::min(view.draw("soak_reading", seconds(3), seconds(6)), (due - began) / 4),
            ReadingTaken{
                ReadingPhase::Soak, view.reading("soak_reading", view.plan().scale->soak)}};
    }
    if (faults.takeBack && !view.everHappened<StepTakenBack>()) {
        return {due - std::min(kShortOfSoak, (due - began) / 2), PlateOut{}};
    }
    if (faults.shortSoak)
        return {due - *faults.shortSoak, PlateOut{}};
    if (faults.longSoak)
        return {due + *faults.longSoak, PlateOut{}};
    if (faults.phoneCall)
        return {due + *faults.phoneCall, PlateOut{}};
    return {due + view.hand().plateOutLag(*view.plan().soak), PlateOut{}};
}

Act next(const View& view, const ChangingOver& state) {
    const RehearseFaults& faults = view.faults();
    if (faults.takeBack && !view.everHappened<StepTakenBack>()) {
        return {state.from.lo + kSecondThought, StepTakenBack{lastOf(view.weld())}};
    }
    const Milliseconds most = state.limit.lo - state.from.lo;
    if (view.aborts())
        return {state.from.lo + most / 2, aborting()};
    if (faults.lateChangeover)
        return {state.limit.lo + *faults.lateChangeover, FacesMet{}};
    const Milliseconds taken = scaled(most, view.hand().changeoverShare());
    return {state.from.lo + std::max(taken, kFacesBounce), FacesMet{}};
}

Act next(const View& view, const BuildingUp& state) {
    const RehearseFaults& faults = view.faults();
    const ReadingBand& band = view.plan().scale->joining;
    const Milliseconds target = state.target.lo - state.from.lo;
    if (view.aborts())
        return {state.from.lo + target / 2, aborting()};
    const bool low = faults.lowReading == RehearseFaults::LowReading::Corrected;
    if (low && !view.hasReading(state.from, ReadingPhase::Joining)) {
        const std::int64_t zero = view.plan().scale->zeroMilli;
        const std::int64_t tooLow =
            std::max(zero, zero + scaled(band.lowMilli - zero, kLowReadingPercent));
        return {state.from.lo + scaled(target, 60), ReadingTaken{ReadingPhase::Joining, tooLow}};
    }
    const bool lockedOnce =
        view.hasSince<PressureLocked>(state.from, [](const PressureLocked&) { return true; });
    if (low && !lockedOnce)
        return {view.last() + Milliseconds(800), PressureLocked{}};
    if (!state.inBandSince) {
        const Milliseconds asked = faults.slowBuildUp ? target + *faults.slowBuildUp
                                                      : scaled(target, view.hand().buildUpShare());
        return {
            std::max(state.from.lo + asked, view.last() + kBounce),
            ReadingTaken{ReadingPhase::Joining, view.turned("joining_reading", band)}};
    }
    return {view.last() + kLockAfterReading, PressureLocked{}};
}

/// The next re-check that was neither read nor missed for good, if any.
std::optional<Act> nextRecheck(const View& view, const Cooling& state) {
    if (view.faults().missedRecheck)
        return {};
    const WeldPlan::ScalePlan& scale = *view.plan().scale;
    const Milliseconds end = state.from.lo + (state.due.lo - state.from.lo) * 2 / 3;
    for (std::size_t i = 0; i < state.rechecks.size(); ++i) {
        if (state.recheckSettled[i])
            continue;
        const Milliseconds opens = state.rechecks[i].lo;
        const Milliseconds closes = i + 1 < state.rechecks.size() ? state.rechecks[i + 1].lo : end;
        if (closes <= opens || view.last() >= closes)
            continue;
        const std::string name = fmt::format("recheck_{}", i + 1);
        const Milliseconds lag =
            std::min(view.draw(name, seconds(5), seconds(20)), (closes - opens) / 3);
        std::int64_t read = view.reading(name, scale.joining);
        if (view.faults().lowReading == RehearseFaults::LowReading::LeftLow) {
            read =
                scale.zeroMilli + scaled(scale.joining.setMilli - scale.zeroMilli, kLeftLowPercent);
        }
        return Act{opens + lag, ReadingTaken{ReadingPhase::Recheck, read}};
    }
    return {};
}

Act next(const View& view, const Cooling& state) {
    const Milliseconds whole = state.due.lo - state.from.lo;
    const Milliseconds early = view.faults().earlyRelease.value_or(Milliseconds(0));
    const Milliseconds opens =
        state.due.lo - early +
        (early > Milliseconds(0) ? Milliseconds(0)
                                 : view.handTime("release", seconds(3), seconds(15)));
    std::vector<Act> acts;
    if (view.aborts())
        acts.push_back({state.from.lo + scaled(whole, kAbortAtPercent), aborting()});
    if (const auto recheck = nextRecheck(view, state))
        acts.push_back(*recheck);
    if (!view.has<JointNumbered>()) {
        acts.push_back({state.from.lo + whole * 11 / 20, JointNumbered{}});
    }
    acts.push_back({opens, ReleaseStep{view.plan().releaseOrder.front()}});
    return *std::min_element(
        acts.begin(), acts.end(), [](const Act& a, const Act& b) { return a.due < b.due; });
}

Act next(const View& view, const Releasing& state) {
    const std::string& step = view.plan().releaseOrder[static_cast<std::size_t>(state.stepsDone)];
    if (view.aborts())
        return view.after("abort", seconds(3), seconds(6), aborting());
    return view.after("release_" + step, seconds(5), seconds(15), ReleaseStep{step});
}

BeadMeasured measured(const View& view) {
    const Chance& chance = view.chance();
    const std::int64_t least = view.plan().beadMinUm.value_or(1000);
    BeadMeasured bead;
    bead.heightUm =
        view.faults().thinBead ? scaled(least, 90) : least + chance.even("bead_height", 2, 8) * 100;
    bead.widthUm = scaled(bead.heightUm, chance.around("bead_width", 180, 240));
    bead.kUm = chance.even("k", 3, 9) * 100;
    const std::int64_t most = view.plan().misalignmentMaxUm;
    bead.misalignmentUm =
        view.faults().misaligned ? 2 * most : scaled(most, chance.around("misalignment", 5, 50));
    return bead;
}

Act next(const View& view, const Inspecting&) {
    if (view.aborts())
        return view.after("abort", seconds(3), seconds(6), aborting());
    if (!view.has<JointNumbered>()) {
        return view.after("number", seconds(5), seconds(10), JointNumbered{});
    }
    if (!view.has<BeadMeasured>()) {
        return view.after("measure", seconds(40), seconds(90), measured(view));
    }
    const std::vector<std::string> owed = reasonsOwed(view.weld());
    if (!owed.empty()) {
        return view.after(
            "reason_" + owed.front(), seconds(4), seconds(10),
            ReasonGiven{owed.front(), "practice", "asked for in this rehearsal"});
    }
    return view.after("close", seconds(5), seconds(12), closing(view.weld()));
}

} // namespace

std::optional<Act> nextAct(const Weld& weld, const Hand& hand) {
    const View view(weld, hand);
    return std::visit(
        Overloaded{
            [](const Closed&) { return std::optional<Act>(); },
            [](const Aborted&) { return std::optional<Act>(); },
            [&](const auto& state) { return std::optional<Act>(next(view, state)); }},
        weld.state);
}

} // namespace seamclock
