#include "core/shift/shift.h"

#include "core/shift/hands.h"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace seamclock {

namespace {

constexpr Milliseconds kTickPeriod{1'000};
// A late tick would count another second.
constexpr Milliseconds kTickStale{50};
constexpr Milliseconds kTrialLasts{3'000};

const ShiftBench* find(const Shift& shift, const std::string& bench) {
    const auto found =
        std::find_if(shift.benches.begin(), shift.benches.end(), [&](const ShiftBench& other) {
            return other.bench == bench;
        });
    return found == shift.benches.end() ? nullptr : &*found;
}

Result<void> mayHold(const Shift& shift, const std::string& bench, const Weld& weld) {
    for (const ShiftBench& other : shift.benches) {
        if (other.bench != bench && other.weld.id() == weld.id()) {
            return fail(
                ErrorCode::Conflict, fmt::format(
                                         "{} can't be on bench \"{}\": it is on bench \"{}\"",
                                         weld.id(), bench, other.bench));
        }
    }
    return {};
}

void addCues(
    std::vector<Request>& out, const ShiftBench& bench, const Instant& now, WeldTime t,
    Milliseconds horizon, bool handsTaken) {
    for (const Cue& cue : cuesUntil(bench.weld, t, horizon)) {
        // A joint that has cooled can wait for the lock of another.
        if (handsTaken && cue.kind == CueKind::CoolingDone) {
            continue;
        }
        const Milliseconds onset = now.boot + cue.onset;
        const std::optional<Milliseconds> until =
            cue.until ? std::optional(now.boot + *cue.until) : std::nullopt;
        std::string id = fmt::format(
            "{}/{}/{}/{}", bench.weld.id(), toString(cue.kind), cue.count, onset.count());
        if (auto request = requestFor(cue.kind, bench.place, std::move(id), onset, until)) {
            out.push_back(*std::move(request));
        }
    }
}

void addTicks(
    std::vector<Request>& out, const ShiftBench& bench, const Instant& now, WeldTime t,
    Milliseconds horizon) {
    const auto* const state = std::get_if<ChangingOver>(&bench.weld.state);
    if (state == nullptr) {
        return;
    }
    const Milliseconds since = (t - state->from).hi;
    for (std::int64_t count = std::max<std::int64_t>(1, (since - kTickStale) / kTickPeriod);
         kTickPeriod * count <= since + horizon; ++count) {
        const Milliseconds onset = now.boot - since + kTickPeriod * count;
        if (onset + kTickStale < now.boot) {
            continue;
        }
        Request tick;
        tick.id = fmt::format("{}/tick/{}/{}", bench.weld.id(), count, onset.count());
        tick.code = toString(Sound::Tick);
        tick.sound = Sound::Tick;
        tick.place = bench.place;
        tick.rank = kTickRank;
        tick.onset = onset;
        tick.knownAhead = true;
        tick.staleAfter = kTickStale;
        out.push_back(std::move(tick));
    }
}

} // namespace

Result<Shift> withBench(const Shift& shift, ShiftBench bench) {
    if (bench.place < 1 || bench.place > kMostBenches) {
        return fail(
            ErrorCode::OutOfRange, fmt::format(
                                       "Bench \"{}\" at place {}: a place is 1 to {}", bench.bench,
                                       bench.place, kMostBenches));
    }
    if (shift.benches.size() >= static_cast<std::size_t>(kMostBenches)) {
        return fail(
            ErrorCode::OutOfRange,
            fmt::format(
                "Bench \"{}\" would be number {}: a shift has 1 to {} benches", bench.bench,
                shift.benches.size() + 1, kMostBenches));
    }
    for (const ShiftBench& other : shift.benches) {
        if (other.place == bench.place) {
            return fail(
                ErrorCode::Conflict,
                fmt::format(
                    "Bench \"{}\" can't have place {}: bench \"{}\" has it; each of 1 to {} is "
                    "given once",
                    bench.bench, bench.place, other.bench, kMostBenches));
        }
    }
    if (const ShiftBench* const same = find(shift, bench.bench)) {
        return fail(
            ErrorCode::Conflict,
            fmt::format(
                "Bench \"{}\" is in the shift already, at place {}", same->bench, same->place));
    }
    if (const Result<void> held = mayHold(shift, bench.bench, bench.weld); !held) {
        return tl::unexpected(held.error());
    }
    Shift out = shift;
    out.benches.push_back(std::move(bench));
    return out;
}

Result<Shift> withWeld(const Shift& shift, const std::string& bench, Weld weld) {
    const ShiftBench* const found = find(shift, bench);
    if (found == nullptr) {
        return fail(ErrorCode::Missing, fmt::format("Bench \"{}\" is not in the shift", bench));
    }
    if (const Result<void> held = mayHold(shift, bench, weld); !held) {
        return tl::unexpected(held.error());
    }
    Shift out = shift;
    out.benches[static_cast<std::size_t>(found - shift.benches.data())].weld = std::move(weld);
    return out;
}

Shift withoutBench(const Shift& shift, const std::string& bench) {
    Shift out = shift;
    out.benches.erase(
        std::remove_if(
            out.benches.begin(), out.benches.end(),
            [&](const ShiftBench& other) { return other.bench == bench; }),
        out.benches.end());
    return out;
}

Shift shiftOf(const Weld& weld) {
    Shift out;
    out.benches.push_back({weld.opened().bench, 1, weld});
    return out;
}

std::optional<Request> requestFor(
    CueKind kind, int place, std::string id, Milliseconds onset,
    std::optional<Milliseconds> until) {
    const std::optional<Sound> sound = soundOf(kind);
    if (!sound) {
        return std::nullopt;
    }
    Request out;
    out.id = std::move(id);
    out.code = toString(kind);
    out.sound = *sound;
    out.place = place;
    out.rank = rank(kind);
    out.onset = onset;
    out.knownAhead = isScheduled(kind);
    out.until = until;
    out.staleAfter = staleAfter(kind);
    return out;
}

namespace {

void addTrial(std::vector<Request>& requests, const Trial& trial, const Instant& now) {
    const Milliseconds until = trial.onset + kTrialLasts;
    if (until <= now.boot) {
        return;
    }
    Request asked;
    asked.id = fmt::format("trial/{}/{}", trial.place, trial.onset.count());
    asked.code = "trial";
    asked.sound = Sound::Reminder;
    asked.place = trial.place;
    asked.rank = kTickRank; // below everything that means something
    asked.onset = trial.onset;
    asked.until = until;
    requests.push_back(std::move(asked));
}

} // namespace

ShiftRequests requests(const Shift& shift, const Instant& now, Milliseconds horizon) {
    ShiftRequests out;
    const bool handsTaken =
        std::any_of(shift.benches.begin(), shift.benches.end(), [](const ShiftBench& bench) {
            return takesBothHands(bench.weld);
        });
    for (const ShiftBench& bench : shift.benches) {
        const Result<WeldTime> t = weldTimeAt(bench.weld, now);
        if (!t) {
            out.silent.push_back(
                {t.error().code, fmt::format("Bench \"{}\": {}", bench.bench, t.error().detail)});
            continue;
        }
        addCues(out.requests, bench, now, *t, horizon, handsTaken);
        if (shift.ticks) {
            addTicks(out.requests, bench, now, *t, horizon);
        }
    }
    for (const StationCue& cue : shift.station) {
        if (cue.onset > now.boot + horizon || (cue.until && *cue.until <= now.boot)) {
            continue;
        }
        std::string id = fmt::format("station/{}/{}", toString(cue.kind), cue.onset.count());
        if (auto request = requestFor(cue.kind, 0, std::move(id), cue.onset, cue.until)) {
            out.requests.push_back(*std::move(request));
        }
    }
    if (shift.trial && shift.trial->onset <= now.boot + horizon) {
        addTrial(out.requests, *shift.trial, now);
    }
    return out;
}

Arbitration soundings(
    const Shift& shift, const std::vector<Sounding>& history, const Instant& from,
    Milliseconds to) {
    // A slot at the very end still makes way for what comes next.
    const Milliseconds horizon = to - from.boot + kLongestSlot;
    return arbitrate(requests(shift, from, horizon).requests, history, from.boot, to);
}

} // namespace seamclock
