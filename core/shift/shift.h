// The benches of one room as one value: up to four, each with its weld, and what the station itself
// has to say. It turns the welds' cues into requests on the boot clock, which voice.h puts in
// order. It keeps no history: whoever sounds or prints keeps what was heard and hands it back.
#pragma once

#include "core/base/result.h"
#include "core/shift/voice.h"
#include "core/weld/fold.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

struct ShiftBench {
    std::string bench; // its id
    int place = 1;     // 1 to 4: pitch, and the pulses of its get ready
    Weld weld;

    bool operator==(const ShiftBench&) const = default;
};

/// row_not_saved, clock_jumped, battery_low: what no weld knows. Times are the boot clock's.
struct StationCue {
    CueKind kind = CueKind::RowNotSaved;
    Milliseconds onset{0};
    std::optional<Milliseconds> until; // acknowledged

    bool operator==(const StationCue&) const = default;
};

/// A sound in a bench's pitch that a person asked to hear. It makes way for every real cue.
struct Trial {
    int place = 1;
    Milliseconds onset{0}; // on the boot clock

    bool operator==(const Trial&) const = default;
};

struct Shift {
    std::vector<ShiftBench> benches;
    std::vector<StationCue> station;
    bool ticks = true; // each second of changeover
    std::optional<Trial> trial;

    bool operator==(const Shift&) const = default;
};

/// With one more bench. OutOfRange: a place outside 1 to 4, a fifth bench. Conflict: the place, the
/// bench or the weld is there already.
Result<Shift> withBench(const Shift& shift, ShiftBench bench);
/// With the weld on that bench as it is now, or the next one. Missing: no such bench. Conflict:
/// another bench has it.
Result<Shift> withWeld(const Shift& shift, const std::string& bench, Weld weld);
/// A bench that isn't there is no error.
Shift withoutBench(const Shift& shift, const std::string& bench);
/// One weld alone, at place 1.
Shift shiftOf(const Weld& weld);

struct ShiftRequests {
    std::vector<Request> requests;
    std::vector<Error>
        silent; // a bench whose weld doesn't know the time: bridge it first; one sentence each
};

/// Every cue that stands at `now` or begins by now + horizon, but those for the screen only.
ShiftRequests requests(const Shift& shift, const Instant& now, Milliseconds horizon);

/// The request for one cue; rank, sound and lateness follow from its kind. Absent: for the screen
/// only.
std::optional<Request> requestFor(
    CueKind kind, int place, std::string id, Milliseconds onset, std::optional<Milliseconds> until);

/// What will sound from `from` until the boot clock shows `to`, if nobody does anything meanwhile.
/// `history`: what has been heard before, by start; append each span's soundings to it, and the
/// next goes on from there.
Arbitration soundings(
    const Shift& shift, const std::vector<Sounding>& history, const Instant& from, Milliseconds to);

} // namespace seamclock
