// The record of a joint: set and actual side by side, from its events alone. Reports and lists are
// printed from it; a cache row that holds some of it can be deleted and comes back.
#pragma once

#include "core/weld/verdict.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// One phase as it went. Durations are intervals since a bridge may lie in them.
struct PhaseRecord {
    std::string phase;      // "alignment", "soak", "changeover", "build_up", "cooling"
    std::int64_t fromN = 0; // the event it began with
    std::int64_t toN = 0;   // and ended with; 0: it has not
    Instant from;
    std::optional<WeldTime> took;
    std::optional<Milliseconds> low; // limits as planned
    std::optional<Milliseconds> target;
    std::optional<Milliseconds> high;

    bool operator==(const PhaseRecord&) const = default;
};

struct WeldRecord {
    std::string weld; // "weld:UUID"
    WeldOpened opened;
    Instant openedAt;
    std::string openedBy;
    WeldPlan plan; // the one it was welded with
    std::string phaseNow;
    std::vector<PhaseRecord> phases;
    std::vector<Retained> checks;   // CheckMade, CheckOverridden
    std::vector<Retained> readings; // ReadingTaken
    std::vector<Retained> beads;    // BeadMeasured
    std::vector<Retained> remarks;  // RemarkMade
    std::vector<Retained> reasons;  // ReasonGiven
    std::vector<Retained> releases; // ReleaseStep
    std::vector<Retained> photos;
    std::vector<Retained> decisions; // Graded, Decided, SignedOff
    std::optional<Instant> numberedAt;
    std::optional<WeldAborted> aborted;
    std::optional<WeldClosed> stored; // the verdict as it was stored
    Verdict verdict;                  // by the rules of this program
    std::vector<Event> events;        // all, with what was taken back

    bool operator==(const WeldRecord&) const = default;
};

WeldRecord record(Weld weld);

/// The plate's readings that it was welded with: of each place and face the latest. One that was
/// read again since is none.
std::vector<Retained> plateWeldedWith(const std::vector<Retained>& events);

/// The air that a joint was made in, as it was in the end: what the order assumed may have been
/// read anew, and the guard that it asked for left out.
struct Surroundings {
    enum class Guard {
        None,   // neither asked for nor looked at
        Asked,  // by the order, and not looked at
        Seen,   // a person said that the seam is shielded
        LeftOut // the check was passed over
    };

    std::int64_t ambientMc = 0; // as it was read, else the plan's
    std::int64_t ambientN = 1;  // the event that gave it
    Guard guard = Guard::None;
    std::int64_t guardN = 1;

    bool operator==(const Surroundings&) const = default;
};

Surroundings surroundings(const WeldRecord& record);

} // namespace seamclock
