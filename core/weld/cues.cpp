#include "core/weld/cues.h"

#include <algorithm>

namespace seamclock {

namespace {

using std::chrono::seconds;

constexpr Milliseconds kSoakNotice = seconds{10};
constexpr Milliseconds kCoolingNotice = seconds{60};
constexpr int kCountInFrom = 3;
// A limit is within; what is past it begins with the next millisecond.
constexpr Milliseconds kPast{1};

using Cues = std::vector<Cue>;

// Every cue this state can bring by time alone, past and future, relative to t.
Cues spansOf(const WeldPlan& plan, const Aligning& state, WeldTime t) {
    if (!plan.alignLate || state.lateAcknowledged) {
        return {};
    }
    return {{CueKind::AlignmentLate, (state.from - t).hi + *plan.alignLate + kPast, {}, 0}};
}

Cues spansOf(const WeldPlan&, const Soaking& state, WeldTime t) {
    const Milliseconds from = (state.from - t).lo;
    const Milliseconds due = (state.due - t).lo;
    Cues out{
        {CueKind::ActNow, due, {}, 0},
        {CueKind::GetReady, std::max(from, due - kSoakNotice), due, 0},
    };
    for (int count = kCountInFrom; count >= 1; --count) {
        const Milliseconds onset = due - seconds{count};
        if (onset >= from) {
            out.push_back({CueKind::CountIn, onset, onset + seconds{1}, count});
        }
    }
    return out;
}

Cues spansOf(const WeldPlan&, const ChangingOver& state, WeldTime t) {
    if (state.lateAcknowledged) {
        return {};
    }
    return {{CueKind::ChangeoverOverrun, (state.limit - t).hi + kPast, {}, 0}};
}

Cues spansOf(const WeldPlan&, const BuildingUp& state, WeldTime t) {
    if (state.inBandSince) {
        return {};
    }
    return {{CueKind::BuildUpLate, (state.late - t).hi + kPast, {}, 0}};
}

Cues spansOf(const WeldPlan& plan, const Cooling& state, WeldTime t) {
    Cues out;
    const Milliseconds from = (state.from - t).lo;
    const Milliseconds due = (state.due - t).lo;
    for (std::size_t i = 0; i < state.rechecks.size(); ++i) {
        if (state.recheckSettled[i]) {
            continue;
        }
        const bool last = i + 1 == state.rechecks.size();
        const Milliseconds until =
            last ? from + plan.cooling->atLeast * 2 / 3 : (state.rechecks[i + 1] - t).lo;
        const Milliseconds onset = (state.rechecks[i] - t).lo;
        if (onset < until) {
            out.push_back({CueKind::RecheckDue, onset, until, static_cast<int>(i) + 1});
        }
    }
    out.push_back({CueKind::GetReady, std::max(from, due - kCoolingNotice), due, 0});
    if (!state.doneAcknowledged) {
        out.push_back({CueKind::CoolingDone, due, {}, 0});
    }
    return out;
}

template <class Quiet>
Cues spansOf(const WeldPlan&, const Quiet&, WeldTime) {
    return {};
}

Cues spans(const Weld& weld, WeldTime t) {
    return std::visit([&](const auto& state) { return spansOf(weld.plan, state, t); }, weld.state);
}

bool stands(const Cue& cue) {
    return cue.onset <= Milliseconds{0} && (!cue.until || *cue.until > Milliseconds{0});
}

} // namespace

int rank(CueKind kind) {
    switch (kind) {
    case CueKind::ProgramLost:
        return 1;
    case CueKind::ChangeoverOverrun:
        return 2;
    case CueKind::ActNow:
        return 3;
    case CueKind::BuildUpLate:
        return 4;
    case CueKind::CountIn:
        return 5;
    case CueKind::GetReady:
        return 6;
    case CueKind::RowNotSaved:
    case CueKind::ClockJumped:
    case CueKind::BatteryLow:
    case CueKind::NoSound:
        return 7;
    case CueKind::AlignmentLate:
    case CueKind::RecheckDue:
        return 8;
    case CueKind::CoolingDone:
        return 9;
    }
    return 9;
}

std::string_view toString(CueKind kind) {
    switch (kind) {
    case CueKind::ProgramLost:
        return "program_lost";
    case CueKind::ChangeoverOverrun:
        return "changeover_overrun";
    case CueKind::ActNow:
        return "act_now";
    case CueKind::BuildUpLate:
        return "build_up_late";
    case CueKind::CountIn:
        return "count_in";
    case CueKind::GetReady:
        return "get_ready";
    case CueKind::RowNotSaved:
        return "row_not_saved";
    case CueKind::ClockJumped:
        return "clock_jumped";
    case CueKind::BatteryLow:
        return "battery_low";
    case CueKind::NoSound:
        return "no_sound";
    case CueKind::AlignmentLate:
        return "alignment_late";
    case CueKind::RecheckDue:
        return "recheck_due";
    case CueKind::CoolingDone:
        return "cooling_done";
    }
    return "";
}

std::optional<CueKind> cueFromString(std::string_view code) {
    for (int i = 0; i <= static_cast<int>(CueKind::CoolingDone); ++i) { // the last of them
        if (toString(static_cast<CueKind>(i)) == code) {
            return static_cast<CueKind>(i);
        }
    }
    return std::nullopt;
}

std::optional<Milliseconds> staleAfter(CueKind kind) {
    if (kind == CueKind::CountIn) {
        return Milliseconds{150};
    }
    if (kind == CueKind::GetReady) {
        return seconds{3};
    }
    return std::nullopt;
}

bool isScheduled(CueKind kind) {
    switch (kind) {
    case CueKind::ChangeoverOverrun:
    case CueKind::ActNow:
    case CueKind::BuildUpLate:
    case CueKind::CountIn:
    case CueKind::GetReady:
    case CueKind::AlignmentLate:
    case CueKind::RecheckDue:
    case CueKind::CoolingDone:
        return true;
    case CueKind::ProgramLost:
    case CueKind::RowNotSaved:
    case CueKind::ClockJumped:
    case CueKind::BatteryLow:
    case CueKind::NoSound:
        return false;
    }
    return false;
}

std::vector<Cue> cuesAt(const Weld& weld, WeldTime t) {
    return cuesUntil(weld, t, Milliseconds{0});
}

std::optional<Milliseconds> nextChange(const Weld& weld, WeldTime t) {
    std::optional<Milliseconds> next;
    const auto consider = [&next](Milliseconds at) {
        if (at > Milliseconds{0} && (!next || at < *next)) {
            next = at;
        }
    };
    for (const Cue& cue : spans(weld, t)) {
        consider(cue.onset);
        if (cue.until) {
            consider(*cue.until);
        }
    }
    return next;
}

std::vector<Cue> cuesUntil(const Weld& weld, WeldTime t, Milliseconds horizon) {
    std::vector<Cue> out;
    for (const Cue& cue : spans(weld, t)) {
        const bool ahead = cue.onset > Milliseconds{0} && cue.onset <= horizon;
        if (stands(cue) || ahead) {
            out.push_back(cue);
        }
    }
    std::stable_sort(out.begin(), out.end(), [](const Cue& a, const Cue& b) {
        const Milliseconds from = std::max(a.onset, Milliseconds{0});
        const Milliseconds to = std::max(b.onset, Milliseconds{0});
        return std::pair(from, rank(a.kind)) < std::pair(to, rank(b.kind));
    });
    return out;
}

} // namespace seamclock
