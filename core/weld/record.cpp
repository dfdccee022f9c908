#include "core/weld/record.h"

#include <algorithm>
#include <utility>

namespace seamclock {

namespace {

PhaseRecord begun(const char* phase, const Retained& from) {
    PhaseRecord out;
    out.phase = phase;
    out.fromN = from.n;
    out.from = from.at;
    return out;
}

void end(PhaseRecord& phase, WeldTime from, const Retained& to) {
    phase.toN = to.n;
    phase.took = to.t - from;
}

// The five phases, each from its pivotal event to the next one's.
std::vector<PhaseRecord> phasesOf(const Weld& weld, const std::vector<Retained>& events) {
    const WeldPlan& plan = weld.plan;
    std::vector<PhaseRecord> out;
    WeldTime from;
    // Out of band a lock is stored and does not start cooling: only the last one did, once cooling
    // has begun.
    std::int64_t lock = 0;
    for (const Retained& one : events) {
        if (std::holds_alternative<PressureLocked>(one.d) &&
            !std::holds_alternative<BuildingUp>(weld.state)) {
            lock = one.n;
        }
    }
    const auto next = [&](const char* phase, const Retained& at) {
        if (!out.empty() && !out.back().took) {
            end(out.back(), from, at);
        }
        out.push_back(begun(phase, at));
        from = at.t;
    };
    for (const Retained& one : events) {
        if (std::holds_alternative<AlignmentStarted>(one.d)) {
            next("alignment", one);
            out.back().target = plan.alignMedian;
            out.back().high = plan.alignLate;
        } else if (std::holds_alternative<SoakStarted>(one.d)) {
            next("soak", one);
            out.back().low = plan.soak->low;
            out.back().target = plan.soak->target;
            out.back().high = plan.soak->high;
        } else if (std::holds_alternative<PlateOut>(one.d)) {
            next("changeover", one);
            out.back().high = plan.changeoverMax;
        } else if (std::holds_alternative<FacesMet>(one.d)) {
            next("build_up", one);
            out.back().low = plan.buildUp->low;
            out.back().target = plan.buildUp->target;
            out.back().high = plan.buildUp->high;
        } else if (const auto* reading = std::get_if<ReadingTaken>(&one.d)) {
            const bool joining = reading->phase == ReadingPhase::Joining && !out.empty() &&
                                 out.back().phase == "build_up" && !out.back().took;
            if (joining && plan.scale->joining.holds(reading->readingMilli)) {
                end(out.back(), from, one);
            }
        } else if (one.n == lock) {
            next("cooling", one);
            out.back().low = plan.cooling->atLeast;
        } else if (std::holds_alternative<ReleaseStep>(one.d)) {
            if (!out.empty() && out.back().phase == "cooling" && !out.back().took) {
                end(out.back(), from, one);
            }
        }
    }
    return out;
}

} // namespace

WeldRecord record(Weld weld) {
    WeldRecord out;
    out.weld = weld.id();
    auto events = retained(weld.events);
    out.openedAt = weld.events.front().at;
    out.openedBy = weld.events.front().by;
    out.phaseNow = phaseName(weld.state);
    out.phases = phasesOf(weld, events);
    for (const Retained& one : events) {
        if (std::holds_alternative<CheckMade>(one.d) ||
            std::holds_alternative<CheckOverridden>(one.d)) {
            out.checks.push_back(one);
        } else if (std::holds_alternative<ReadingTaken>(one.d)) {
            out.readings.push_back(one);
        } else if (std::holds_alternative<BeadMeasured>(one.d)) {
            out.beads.push_back(one);
        } else if (std::holds_alternative<RemarkMade>(one.d)) {
            out.remarks.push_back(one);
        } else if (std::holds_alternative<ReasonGiven>(one.d)) {
            out.reasons.push_back(one);
        } else if (std::holds_alternative<ReleaseStep>(one.d)) {
            out.releases.push_back(one);
        } else if (std::holds_alternative<PhotoAdded>(one.d)) {
            out.photos.push_back(one);
        } else if (
            std::holds_alternative<Graded>(one.d) || std::holds_alternative<Decided>(one.d) ||
            std::holds_alternative<SignedOff>(one.d)) {
            out.decisions.push_back(one);
        } else if (std::holds_alternative<JointNumbered>(one.d)) {
            out.numberedAt = one.at;
        } else if (const auto* aborted = std::get_if<WeldAborted>(&one.d)) {
            out.aborted = *aborted;
        } else if (const auto* closed = std::get_if<WeldClosed>(&one.d)) {
            out.stored = *closed;
        }
    }
    out.verdict = verdict(weld, events);
    out.opened = std::move(std::get<WeldOpened>(events.front().d)); // the plan in it is large
    out.plan = std::move(weld.plan);
    out.events = std::move(weld.events);
    return out;
}

std::vector<Retained> plateWeldedWith(const std::vector<Retained>& events) {
    std::vector<Retained> latest;
    for (const Retained& one : events) {
        const auto* made = std::get_if<CheckMade>(&one.d);
        if (made == nullptr || made->check != "plate_temperature") {
            continue;
        }
        if (!made->valueMc) {
            if (!made->passed) {
                latest.clear(); // set aside
            }
            continue;
        }
        const auto same = [made](const Retained& other) {
            const auto& before = std::get<CheckMade>(other.d);
            return before.place == made->place && before.face == made->face;
        };
        latest.erase(std::remove_if(latest.begin(), latest.end(), same), latest.end());
        latest.push_back(one);
    }
    return latest;
}

Surroundings surroundings(const WeldRecord& record) {
    using Guard = Surroundings::Guard;
    Surroundings out;
    out.ambientMc = record.plan.ambientMc;
    out.guard = record.opened.shielded ? Guard::Asked : Guard::None;
    std::int64_t before = record.opened.ambientMc;
    for (const Event& event : record.events) {
        const auto* replaced = std::get_if<PlanReplaced>(&event.d);
        if (replaced != nullptr && replaced->plan.ambientMc != before) {
            before = replaced->plan.ambientMc;
            out.ambientN = event.n;
        }
    }
    for (const Retained& one : record.checks) {
        const auto* made = std::get_if<CheckMade>(&one.d);
        const auto* left = std::get_if<CheckOverridden>(&one.d);
        if (made != nullptr && made->check == "shielded" && made->passed) {
            out.guard = Guard::Seen;
            out.guardN = one.n;
            if (made->valueMc) { // as it was read, or corrected since
                out.ambientMc = *made->valueMc;
                out.ambientN = one.n;
            }
        } else if (left != nullptr && left->check == "shielded") {
            out.guard = Guard::LeftOut;
            out.guardN = one.n;
        }
    }
    return out;
}

} // namespace seamclock
