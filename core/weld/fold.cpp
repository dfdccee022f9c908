#include "core/weld/fold.h"

#include "core/weld/correction.h"
#include "core/weld/intent.h"

#include <algorithm>
#include <map>
#include <set>

namespace seamclock {

namespace {

constexpr Milliseconds kLongestConfirmedBridge = std::chrono::hours{12};

tl::unexpected<Error> refused(const Event& event, const std::string& why) {
    return fail(
        ErrorCode::Refused,
        std::string(kindOf(event.d)) + " (n " + std::to_string(event.n) + "): " + why);
}

WeldClock startOf(const Event& opening) {
    return {opening.at.bootId, opening.at.boot, WeldTime{}};
}

WeldTime timeOn(const WeldClock& clock, const Instant& at) {
    return clock.at + (at.boot - clock.boot);
}

WeldClock bridged(const WeldClock& clock, const Instant& last, const Event& event) {
    const auto& bridge = std::get<ClockBridged>(event.d);
    const WeldTime before = timeOn(clock, last);
    return {event.at.bootId, event.at.boot, {before.lo + bridge.lo, before.hi + bridge.hi}};
}

Result<void> checkPlan(const Event& event, const WeldPlan& plan) {
    if (!plan.scale) {
        return refused(event, "the plan has no scale: a weld needs a bench");
    }
    if (!plan.isComplete()) {
        return refused(
            event, plan.missing.empty()
                       ? "the plan is not ready to weld: " + plan.unattested.front() +
                             " was filled in by the shop and is not attested"
                       : "the plan is not ready to weld: " + plan.missing.front() + " is missing");
    }
    if (plan.releaseOrder.empty()) {
        return refused(event, "the plan has no release order: it needs at least one step");
    }
    return {};
}

/// An event's instant is on the weld's boot and not before the last event's. What a person says of
/// a weld that is over is no longer part of its time.
Result<void>
checkInstant(const Event& event, const Event* last, const WeldClock& clock, bool over) {
    const bool timed = !over && !std::holds_alternative<ClockBridged>(event.d);
    if (timed && event.at.bootId != clock.bootId) {
        return refused(event, "the machine was started again meanwhile; the clock must be bridged");
    }
    if (last != nullptr && event.at.bootId == last->at.bootId && event.at.boot < last->at.boot) {
        return refused(event, "its instant lies before the last event's");
    }
    return {};
}

// What an event answers or names must be there; the state itself is step's business.
Result<void> checkBridge(const Event& event, const WeldClock& clock) {
    const auto& bridge = std::get<ClockBridged>(event.d);
    if (event.at.bootId == clock.bootId) {
        return refused(event, "the boot is still the same; there is nothing to bridge");
    }
    if (bridge.from != clock.bootId) {
        return refused(
            event, "it bridges from boot " + bridge.from + ", the weld's is " + clock.bootId);
    }
    if (bridge.lo < Milliseconds{0} || bridge.hi < bridge.lo) {
        return refused(
            event, "its interval runs backwards: " + std::to_string(bridge.lo.count()) + " to " +
                       std::to_string(bridge.hi.count()) + " ms");
    }
    const bool confirmed = bridge.basis == BridgeBasis::Confirmed;
    if (confirmed && (bridge.lo != bridge.hi || bridge.hi > kLongestConfirmedBridge)) {
        return refused(
            event, std::to_string(bridge.hi.count()) +
                       " ms can't be confirmed: allowed is one value from 0 to 12 h");
    }
    if (!confirmed && bridge.lo != Milliseconds{0}) {
        return refused(
            event,
            "an unconfirmed bridge counts at least 0 ms, not " + std::to_string(bridge.lo.count()));
    }
    return {};
}

Result<void>
checkAnswer(const Event& event, std::int64_t target, std::int64_t last, const Event* targeted) {
    if (target == 0 || target != last || targeted == nullptr) {
        return refused(
            event, "it answers n " + std::to_string(target) + ", the last step that can be is n " +
                       std::to_string(last));
    }
    const Milliseconds passed = event.at.boot - targeted->at.boot;
    if (event.at.bootId != targeted->at.bootId || passed < Milliseconds{0} ||
        passed > kTakeBackWindow) {
        return refused(
            event, "it comes " + std::to_string(passed.count()) +
                       " ms after the step; allowed are 10000 ms on the same boot");
    }
    return {};
}

/// Follows which steps still stand: a step is pushed, a take-back removes the last one.
void keepTakeable(std::vector<std::int64_t>& takeable, const Event& event) {
    if (std::holds_alternative<StepTakenBack>(event.d)) {
        takeable.pop_back();
    } else if (isTakeable(event.d)) {
        takeable.push_back(event.n);
    }
}

/// An event that still stands, at its weld time; `earlier` is by how much it was backdated.
struct Kept {
    const Event* event;
    WeldTime t;
    Milliseconds earlier;
};

/// What take-backs and backdatings leave, before any correction of values.
std::vector<Kept> kept(const std::vector<Event>& events) {
    std::set<std::int64_t> gone;
    std::map<std::int64_t, Milliseconds> earlier;
    for (const Event& event : events) {
        if (const auto* back = std::get_if<StepTakenBack>(&event.d)) {
            gone.insert(back->targetN);
        } else if (const auto* dated = std::get_if<StepBackdated>(&event.d)) {
            earlier[dated->targetN] += dated->earlier;
        }
    }
    std::vector<Kept> out;
    if (events.empty()) {
        return out;
    }
    WeldClock clock = startOf(events.front());
    const Instant* last = &events.front().at;
    for (const Event& event : events) {
        if (std::holds_alternative<ClockBridged>(event.d)) {
            clock = bridged(clock, *last, event);
        }
        last = &event.at;
        const bool answer = std::holds_alternative<StepTakenBack>(event.d) ||
                            std::holds_alternative<StepBackdated>(event.d) ||
                            std::holds_alternative<ValueCorrected>(event.d);
        if (answer || gone.count(event.n) != 0) {
            continue;
        }
        const auto found = earlier.find(event.n);
        const Milliseconds by = found == earlier.end() ? Milliseconds{0} : found->second;
        out.push_back({&event, timeOn(clock, event.at) + -by, by});
    }
    return out;
}

/// A weld that its first event opens, without that event in it yet.
Result<Weld> begun(const Event& event) {
    const auto* opened = std::get_if<WeldOpened>(&event.d);
    if (opened == nullptr) {
        return refused(event, "a weld starts with weld_opened");
    }
    if (event.n != 1) {
        return refused(event, "a weld starts with n 1");
    }
    if (event.subject.rfind("weld:", 0) != 0 || event.subject.size() == 5) {
        return refused(event, "\"" + event.subject + "\" does not name a weld");
    }
    if (opened->sheets.size() != 2) {
        return refused(
            event, std::to_string(opened->sheets.size()) + " sheets given, a butt weld joins 2");
    }
    if (const auto fits = checkPlan(event, opened->plan); !fits) {
        return tl::unexpected<Error>(fits.error());
    }
    return Weld{opened->plan, {}, preparing(opened->plan), startOf(event)};
}

/// Steps through what still stands, from the opening on; the weld takes the events over.
Result<Weld> stepThrough(std::vector<Event>& events) {
    auto weld = begun(events.front());
    if (!weld) {
        return weld;
    }
    const Instant* last = &events.front().at;
    for (const Event& event : events) {
        if (std::holds_alternative<ClockBridged>(event.d)) {
            weld->clock = bridged(weld->clock, *last, event);
        }
        last = &event.at;
    }
    for (const Kept& one : kept(events)) {
        const WeldDetail& detail = one.event->d;
        if (std::holds_alternative<WeldOpened>(detail) ||
            std::holds_alternative<ClockBridged>(detail)) {
            continue;
        }
        if (const auto* replaced = std::get_if<PlanReplaced>(&detail)) {
            weld->plan = replaced->plan;
        }
        auto next = step(weld->plan, weld->state, detail, one.t);
        if (!next) {
            return fail(
                next.error().code,
                "n " + std::to_string(one.event->n) + ": " + next.error().detail);
        }
        weld->state = std::move(*next);
    }
    weld->events = std::move(events);
    return weld;
}

const Event* eventAt(const std::vector<Event>& events, std::int64_t n) {
    const bool there = n >= 1 && n <= static_cast<std::int64_t>(events.size());
    return there ? &events[static_cast<std::size_t>(n - 1)] : nullptr;
}

Result<void> checkBackdating(const Weld& weld, const Event& event) {
    const auto& dated = std::get<StepBackdated>(event.d);
    Milliseconds total = dated.earlier;
    for (const Event& old : weld.events) {
        if (const auto* before = std::get_if<StepBackdated>(&old.d);
            before != nullptr && before->targetN == dated.targetN) {
            total += before->earlier;
        }
    }
    if (dated.earlier <= Milliseconds{0} || total > kTakeBackWindow) {
        return refused(
            event, std::to_string(dated.earlier.count()) +
                       " ms earlier is not allowed: 1 to 10000 ms in all");
    }
    std::optional<WeldTime> previous;
    for (const Kept& one : kept(weld.events)) {
        if (one.event->n == dated.targetN) {
            if (previous && (one.t + -dated.earlier).lo < previous->lo) {
                return refused(event, "the step would come before the one it follows");
            }
        } else if (
            one.event->n < dated.targetN &&
            (isTakeable(one.event->d) || std::holds_alternative<WeldOpened>(one.event->d) ||
             std::holds_alternative<ClockBridged>(one.event->d))) {
            previous = one.t;
        }
    }
    return {};
}

// An event that folds again what remains, or changes no state at all. Empty: an ordinary one.
Result<std::optional<Weld>> applyAnswer(const Weld& weld, const Event& event) {
    const auto again = [&]() -> Result<std::optional<Weld>> {
        std::vector<Event> events = weld.events;
        events.push_back(event);
        auto folded = stepThrough(events);
        if (!folded) {
            return refused(event, folded.error().detail);
        }
        return std::optional<Weld>(std::move(*folded));
    };
    const auto stays = [&] {
        Weld next = weld;
        next.events.push_back(event);
        return std::optional<Weld>(std::move(next));
    };
    const bool open = isOpen(weld.state);
    if (const auto* back = std::get_if<StepTakenBack>(&event.d)) {
        if (!open) {
            return refused(event, "the weld is over");
        }
        const auto fits = checkAnswer(
            event, back->targetN, lastTakeable(weld), eventAt(weld.events, back->targetN));
        return fits ? again() : tl::unexpected<Error>(fits.error());
    }
    if (const auto* dated = std::get_if<StepBackdated>(&event.d)) {
        if (!open) {
            return refused(event, "the weld is over");
        }
        auto fits = checkAnswer(
            event, dated->targetN, lastTakeable(weld), eventAt(weld.events, dated->targetN));
        if (fits) {
            fits = checkBackdating(weld, event);
        }
        return fits ? again() : tl::unexpected<Error>(fits.error());
    }
    if (std::holds_alternative<ClockBridged>(event.d)) {
        if (!open) {
            return refused(event, "the weld is over");
        }
        const auto fits = checkBridge(event, weld.clock);
        return fits ? again() : tl::unexpected<Error>(fits.error());
    }
    if (const auto* correction = std::get_if<ValueCorrected>(&event.d)) {
        if (open) {
            return refused(event, "a value is corrected only after the weld is over");
        }
        const auto fits = checkCorrection(*correction, retained(weld.events));
        if (!fits) {
            return refused(event, fits.error().detail);
        }
        return stays();
    }
    return std::optional<Weld>{};
}

} // namespace

Result<Weld> open(const Event& event) {
    auto weld = begun(event);
    if (weld) {
        weld->events.push_back(event);
    }
    return weld;
}

Result<Weld> apply(const Weld& weld, const Event& event) {
    const auto next = static_cast<std::int64_t>(weld.events.size()) + 1;
    if (event.subject != weld.id()) {
        return refused(event, "it belongs to " + event.subject + ", not to " + weld.id());
    }
    if (event.n != next) {
        return refused(event, "the next n is " + std::to_string(next));
    }
    if (const auto fits = checkInstant(event, &weld.events.back(), weld.clock, !isOpen(weld.state));
        !fits) {
        return tl::unexpected<Error>(fits.error());
    }
    auto answer = applyAnswer(weld, event);
    if (!answer) {
        return tl::unexpected<Error>(answer.error());
    }
    if (*answer) {
        return **answer;
    }
    Weld out = weld;
    if (const auto* replaced = std::get_if<PlanReplaced>(&event.d)) {
        if (const auto fits = checkPlan(event, replaced->plan); !fits) {
            return tl::unexpected<Error>(fits.error());
        }
        out.plan = replaced->plan;
    }
    auto state = step(out.plan, weld.state, event.d, timeOn(weld.clock, event.at));
    if (!state) {
        return refused(event, state.error().detail);
    }
    out.state = std::move(*state);
    out.events.push_back(event);
    return out;
}

Result<Weld> fold(const std::vector<Event>& events) {
    std::vector<Event> mine = events;
    return foldTaking(mine);
}

Result<Weld> foldTaking(std::vector<Event>& events) {
    const auto damaged = [](const Error& error) { return fail(ErrorCode::Damaged, error.detail); };
    if (events.empty()) {
        return fail(ErrorCode::Damaged, "a weld without events");
    }
    WeldClock clock = startOf(events.front());
    std::vector<std::int64_t> takeable;
    bool over = false;
    for (std::size_t i = 0; i < events.size(); ++i) {
        const Event& event = events[i];
        if (event.n != static_cast<std::int64_t>(i) + 1 ||
            event.subject != events.front().subject) {
            return fail(
                ErrorCode::Damaged, event.subject + " has n " + std::to_string(event.n) +
                                        " where n " + std::to_string(i + 1) + " belongs");
        }
        Result<void> fits = checkInstant(event, i == 0 ? nullptr : &events[i - 1], clock, over);
        if (!fits) {
            return damaged(fits.error());
        }
        over = over || std::holds_alternative<WeldClosed>(event.d) ||
               std::holds_alternative<WeldAborted>(event.d);
        if (const auto* back = std::get_if<StepTakenBack>(&event.d)) {
            fits = checkAnswer(
                event, back->targetN, takeable.empty() ? 0 : takeable.back(),
                eventAt(events, back->targetN));
        } else if (const auto* dated = std::get_if<StepBackdated>(&event.d)) {
            fits = checkAnswer(
                event, dated->targetN, takeable.empty() ? 0 : takeable.back(),
                eventAt(events, dated->targetN));
        } else if (std::holds_alternative<ClockBridged>(event.d)) {
            fits = checkBridge(event, clock);
            if (fits) {
                clock = bridged(clock, events[i - 1].at, event);
            }
        } else if (const auto* replaced = std::get_if<PlanReplaced>(&event.d)) {
            fits = checkPlan(event, replaced->plan);
        }
        if (!fits) {
            return damaged(fits.error());
        }
        keepTakeable(takeable, event);
    }
    auto weld = stepThrough(events);
    if (!weld) {
        return damaged(weld.error());
    }
    return weld;
}

std::vector<Retained> retained(const std::vector<Event>& events) {
    std::vector<Retained> out;
    for (const auto& one : kept(events)) {
        Instant at = one.event->at;
        at.boot -= one.earlier;
        at.utc -= one.earlier;
        out.push_back({one.event->n, one.t, at, one.event->by, one.event->d});
    }
    for (const Event& event : events) {
        if (const auto* correction = std::get_if<ValueCorrected>(&event.d)) {
            applyCorrection(*correction, out);
        }
    }
    return out;
}

Result<WeldTime> weldTimeAt(const Weld& weld, const Instant& at) {
    if (at.bootId != weld.clock.bootId) {
        return fail(
            ErrorCode::Refused,
            "the machine was started again meanwhile; the clock must be bridged");
    }
    return timeOn(weld.clock, at);
}

std::int64_t lastTakeable(const Weld& weld) {
    std::vector<std::int64_t> takeable;
    for (const Event& event : weld.events) {
        keepTakeable(takeable, event);
    }
    return takeable.empty() ? 0 : takeable.back();
}

} // namespace seamclock
