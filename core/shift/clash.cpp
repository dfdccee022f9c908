#include "core/shift/clash.h"

#include <algorithm>
#include <vector>

namespace seamclock {

namespace {

/// From now on, when a bench wants both hands.
struct Busy {
    Milliseconds from{0};
    Milliseconds to{0};
    const ShiftBench* bench = nullptr;
};

// What a changeover and a build-up may take at most; absent: the plan doesn't say.
std::optional<Milliseconds> changeoverOf(const Weld& weld) {
    return weld.plan.changeoverMax;
}
std::optional<Milliseconds> buildUpOf(const Weld& weld) {
    if (!weld.plan.buildUp) {
        return std::nullopt;
    }
    return weld.plan.buildUp->high;
}

std::optional<Busy> busy(const ShiftBench& bench, const Instant& now) {
    const auto changeover = changeoverOf(bench.weld);
    const auto buildUp = buildUpOf(bench.weld);
    const auto time = weldTimeAt(bench.weld, now);
    if (!changeover || !buildUp || !time) {
        return std::nullopt;
    }
    if (const auto* const soak = std::get_if<Soaking>(&bench.weld.state)) {
        const Milliseconds from = std::max(Milliseconds{0}, (soak->due - *time).lo);
        return Busy{from, from + *changeover + *buildUp, &bench};
    }
    if (const auto* const open = std::get_if<ChangingOver>(&bench.weld.state)) {
        const Milliseconds left = std::max(Milliseconds{0}, *changeover - (*time - open->from).hi);
        return Busy{Milliseconds{0}, left + *buildUp, &bench};
    }
    if (const auto* const rising = std::get_if<BuildingUp>(&bench.weld.state)) {
        const Milliseconds gone = (*time - rising->from).hi;
        return Busy{Milliseconds{0}, gone < *buildUp ? *buildUp - gone : *buildUp, &bench};
    }
    return std::nullopt;
}

const Weld* weldAt(const Shift& shift, int place) {
    const auto own =
        std::find_if(shift.benches.begin(), shift.benches.end(), [&](const ShiftBench& bench) {
            return bench.place == place;
        });
    return own == shift.benches.end() ? nullptr : &own->weld;
}

/// `ahead`: from now until the soak begins.
std::optional<Clash>
clashOf(const Shift& shift, int place, const Weld& own, Milliseconds ahead, const Instant& now) {
    const auto changeover = changeoverOf(own);
    const auto buildUp = buildUpOf(own);
    if (!own.plan.soak || !changeover || !buildUp) {
        return std::nullopt;
    }
    std::vector<Busy> others;
    for (const ShiftBench& bench : shift.benches) {
        if (bench.place != place) {
            if (const auto one = busy(bench, now)) {
                others.push_back(*one);
            }
        }
    }
    std::sort(others.begin(), others.end(), [](const Busy& a, const Busy& b) {
        return a.from < b.from || (a.from == b.from && a.bench->place < b.bench->place);
    });
    // Behind each one that it would fall into, in the order in which they begin: what lies before
    // the place where it stands then is clear of it.
    const Milliseconds takes = *changeover + *buildUp;
    const Milliseconds first = ahead + own.plan.soak->target;
    Milliseconds begins = first;
    const Busy* met = nullptr;
    for (const Busy& other : others) {
        if (begins < other.to && other.from < begins + takes) {
            begins = other.to;
            met = met ? met : &other;
        }
    }
    if (!met) {
        return std::nullopt;
    }
    return Clash{met->bench->bench, met->bench->place, begins - first};
}

} // namespace

std::optional<Clash> clashOfSoak(const Shift& shift, int place, const Instant& now) {
    const Weld* own = weldAt(shift, place);
    if (own == nullptr || !std::holds_alternative<Aligning>(own->state)) {
        return std::nullopt;
    }
    return clashOf(shift, place, *own, Milliseconds{0}, now);
}

std::optional<Clash> clashOfAlignment(const Shift& shift, int place, const Instant& now) {
    const Weld* own = weldAt(shift, place);
    const auto* state = own == nullptr ? nullptr : std::get_if<Preparing>(&own->state);
    if (state == nullptr || !state->openChecks.empty() || !own->plan.alignMedian) {
        return std::nullopt;
    }
    return clashOf(shift, place, *own, *own->plan.alignMedian, now);
}

} // namespace seamclock
