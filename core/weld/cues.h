// Cues are values: what should be heard and seen is a pure function of a weld and the time. Nothing
// here keeps a timer; whoever shows or sounds them asks again when something changed. core/shift
// decides which cue sounds when several benches want to be heard.
#pragma once

#include "core/weld/fold.h"

#include <optional>
#include <string_view>
#include <vector>

namespace seamclock {

/// In the order of urgency; rank() gives the contract's number.
enum class CueKind {
    ProgramLost,
    ChangeoverOverrun,
    ActNow,
    BuildUpLate,
    CountIn,
    GetReady,
    RowNotSaved,
    ClockJumped,
    BatteryLow,
    NoSound, // on the screen only
    AlignmentLate,
    RecheckDue,
    CoolingDone
};

int rank(CueKind kind);
std::string_view toString(CueKind kind); // "get_ready"
std::optional<CueKind> cueFromString(std::string_view code);

/// How late a first sounding may begin before it is dropped; absent: never.
std::optional<Milliseconds> staleAfter(CueKind kind);
/// Whether its onset is known ahead of time, so that lower ranks make way for it.
bool isScheduled(CueKind kind);

struct Cue {
    CueKind kind = CueKind::GetReady;
    Milliseconds onset{0}; // relative to the time asked about: negative if it began earlier
    std::optional<Milliseconds> until; // likewise; absent: until a step or an acknowledgement
    int count = 0;                     // count-in: 3, 2, 1; re-check: which, from 1

    bool operator==(const Cue&) const = default;
};

/// The cues that stand at weld time t, most urgent first.
std::vector<Cue> cuesAt(const Weld& weld, WeldTime t);

/// How long after t cuesAt next changes by time alone; absent: never.
std::optional<Milliseconds> nextChange(const Weld& weld, WeldTime t);

/// The cues that stand at t and those that begin after it, up to and including t + horizon, by
/// onset.
std::vector<Cue> cuesUntil(const Weld& weld, WeldTime t, Milliseconds horizon);

} // namespace seamclock
