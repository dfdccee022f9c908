#include "core/weld/intent.h"

#include "core/weld/verdict.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <string_view>

namespace seamclock {

namespace {

// The operator may go on with a reason after most checks; these need the foreman (trade: a plate
// outside its window).
constexpr std::array<std::string_view, 2> kForemansChecks{"plate_temperature", kForemansScale};

constexpr std::string_view kTakenForOne = " ms is taken for one press";

tl::unexpected<Error> refused(std::string why) {
    return fail(ErrorCode::Refused, std::move(why));
}

bool isPhaseStep(const WeldDetail& detail, const State& state) {
    return isPivotal(detail) ||
           (std::holds_alternative<ReleaseStep>(detail) && std::holds_alternative<Cooling>(state));
}

// Two presses within a blink are one press: a held key, a trembling pedal, a double tap.
Result<void> checkBounce(const Weld& weld, const WeldDetail& detail, const Instant& at) {
    if (!isPhaseStep(detail, weld.state)) {
        return {};
    }
    const Retained* last = nullptr;
    const auto events = retained(weld.events);
    for (const Retained& one : events) {
        if (isPivotal(one.d)) {
            last = &one;
        }
    }
    if (last == nullptr || last->at.bootId != at.bootId) {
        return {};
    }
    // The press itself counts, not the instant it was backdated to.
    const Instant& pressed = weld.events[static_cast<std::size_t>(last->n - 1)].at;
    const bool faces =
        std::holds_alternative<FacesMet>(detail) && std::holds_alternative<PlateOut>(last->d);
    const Milliseconds least = faces ? kFacesBounce : kBounce;
    const Milliseconds passed = at.boot - pressed.boot;
    if (passed < least) {
        return refused(
            std::string(kindOf(detail)) + " came " + std::to_string(passed.count()) +
            " ms after the step before; less than " + std::to_string(least.count()) +
            std::string(kTakenForOne));
    }
    return {};
}

Result<void> checkOverride(const CheckOverridden& overridden, bool foreman) {
    if (overridden.authority == Authority::Foreman && !foreman) {
        return refused("a foreman's override needs his PIN");
    }
    if (isForemansCheck(overridden.check) && overridden.authority != Authority::Foreman) {
        return refused(
            "the check \"" + overridden.check + "\" can only be overridden by a foreman");
    }
    if (overridden.reason.empty()) {
        return refused("going on without the check \"" + overridden.check + "\" needs a reason");
    }
    return {};
}

// To the millisecond: rounded, one just outside a range would read as one of its ends.
std::string inSeconds(Milliseconds time) {
    const std::int64_t size = std::abs(time.count());
    const std::string thousandths = std::to_string(1000 + size % 1000).substr(1);
    return (time.count() < 0 ? "-" : "") + std::to_string(size / 1000) + "." + thousandths;
}

bool contains(const std::vector<std::string>& list, const std::string& item) {
    return std::find(list.begin(), list.end(), item) != list.end();
}

Result<void> checkReasons(const Weld& weld, const WeldDetail& detail) {
    if (const auto* reason = std::get_if<ReasonGiven>(&detail)) {
        if (!contains(reasonsOwed(weld), reason->limit)) {
            return refused("no reason is owed for \"" + reason->limit + "\"");
        }
        if (reason->choice.empty()) {
            return refused("a reason for \"" + reason->limit + "\" can't be empty");
        }
    }
    if (std::holds_alternative<WeldClosed>(detail)) {
        const auto owed = reasonsOwed(weld);
        if (!owed.empty()) {
            return refused("closing waits for a reason: " + owed.front() + " is out of limits");
        }
    }
    return {};
}

} // namespace

bool isForemansCheck(std::string_view check) {
    return std::find(kForemansChecks.begin(), kForemansChecks.end(), check) !=
           kForemansChecks.end();
}

bool isBounce(const Error& refusal) {
    const std::string& text = refusal.detail;
    const auto at = text.rfind(kTakenForOne);
    return refusal.code == ErrorCode::Refused && at != std::string::npos &&
           at + kTakenForOne.size() == text.size();
}

Result<Weld> accept(const Weld& weld, const Intent& intent, const Instant& at) {
    if (intent.onto && *intent.onto != lastTakeable(weld)) {
        return refused(
            std::string(kindOf(intent.d)) + " was meant for step " + std::to_string(*intent.onto) +
            ", the last one is " + std::to_string(lastTakeable(weld)));
    }
    if (const auto fits = checkBounce(weld, intent.d, at); !fits) {
        return tl::unexpected<Error>(fits.error());
    }
    if (const auto* overridden = std::get_if<CheckOverridden>(&intent.d)) {
        if (const auto fits = checkOverride(*overridden, intent.foreman); !fits) {
            return tl::unexpected<Error>(fits.error());
        }
    }
    if (const auto* made = std::get_if<CheckMade>(&intent.d);
        made != nullptr && made->check == kForemansScale && made->passed) {
        return refused(
            "the check \"" + made->check + "\" can only be overridden by a foreman: the scale " +
            "doesn't show what it asks");
    }
    if (const auto* remark = std::get_if<RemarkMade>(&intent.d);
        remark != nullptr && remark->text == kOtherMaterial && !intent.foreman) {
        return refused("only a foreman may go on with a sheet of another material");
    }
    if (std::holds_alternative<SignedOff>(intent.d) && !intent.foreman) {
        return refused("signing off needs a foreman's PIN");
    }
    if (std::holds_alternative<Decided>(intent.d) && !intent.foreman) {
        return refused("deciding on a joint needs a foreman's PIN");
    }
    if (std::holds_alternative<ValueCorrected>(intent.d) && !intent.foreman) {
        return refused("correcting a value needs a foreman's PIN");
    }
    if (const auto fits = checkReasons(weld, intent.d); !fits) {
        return tl::unexpected<Error>(fits.error());
    }
    const auto n = static_cast<std::int64_t>(weld.events.size()) + 1;
    return apply(weld, Event{at, intent.by, weld.id(), n, intent.d});
}

Result<std::optional<ClockBridged>> bridgeTo(const Weld& weld, const Instant& at, bool confirmed) {
    if (at.bootId == weld.clock.bootId) {
        return std::optional<ClockBridged>{};
    }
    const Milliseconds passed = at.utc - weld.events.back().at.utc;
    ClockBridged bridge{
        weld.clock.bootId, Milliseconds{0}, std::max(passed, Milliseconds{0}),
        BridgeBasis::Unconfirmed};
    if (confirmed) {
        if (passed < Milliseconds{0} || passed > std::chrono::hours{12}) {
            return refused(
                "a power cut of " + inSeconds(passed) +
                " s can't be confirmed: allowed are 0 to 43200 s");
        }
        bridge.lo = passed;
        bridge.basis = BridgeBasis::Confirmed;
    } else if (passed < Milliseconds{0}) {
        bridge.basis = BridgeBasis::Backwards;
    }
    return std::optional<ClockBridged>(bridge);
}

bool goesOnAfterReboot(const State& state) {
    return std::holds_alternative<Cooling>(state) || std::holds_alternative<Releasing>(state) ||
           std::holds_alternative<Inspecting>(state);
}

WeldClosed closing(const Weld& weld) {
    const Verdict result = verdictAtClosing(weld);
    WeldClosed out{std::string(toString(result.word)), {}, kVerdictRules};
    for (const Finding& finding : result.findings) {
        out.reasons.push_back(
            {finding.code, std::string(toString(finding.grade)), finding.limit, finding.actual,
             finding.unit, finding.text});
    }
    return out;
}

} // namespace seamclock
