// Where a weld is: one small struct for each state, holding only what its own deadlines and next
// steps need. Times are weld time: ms since weld_opened, an interval since a reboot may have been
// bridged.
#pragma once

#include "core/base/instant.h"

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace seamclock {

/// Weld time known to lie in [lo, hi]; both advance together, and part only at a bridge. What must
/// at least have passed (cooling) is counted with lo, what may at most have passed (changeover)
/// with hi.
struct WeldTime {
    Milliseconds lo{0};
    Milliseconds hi{0};

    WeldTime operator+(Milliseconds step) const { return {lo + step, hi + step}; }
    WeldTime operator-(WeldTime from) const { return {lo - from.lo, hi - from.hi}; }
    bool operator==(const WeldTime&) const = default;
};

struct Preparing {
    std::vector<std::string> openChecks;
    std::set<std::string> settled; // passed, or overridden

    bool operator==(const Preparing&) const = default;
};
struct Aligning {
    WeldTime from;
    bool lateAcknowledged = false;

    bool operator==(const Aligning&) const = default;
};
struct Soaking {
    WeldTime from;
    WeldTime due;

    bool operator==(const Soaking&) const = default;
};
struct ChangingOver {
    WeldTime from;
    WeldTime limit;
    bool lateAcknowledged = false;

    bool operator==(const ChangingOver&) const = default;
};
struct BuildingUp {
    WeldTime from;
    WeldTime target;
    WeldTime late;
    std::optional<WeldTime> inBandSince;     // the first joining reading in band
    std::optional<std::int64_t> lastReading; // joining, in thousandths

    bool operator==(const BuildingUp&) const = default;
};
struct Cooling {
    WeldTime from;
    WeldTime due;
    std::vector<WeldTime> rechecks;   // when each is due
    std::vector<bool> recheckSettled; // read, or acknowledged
    bool doneAcknowledged = false;

    bool operator==(const Cooling&) const = default;
};
struct Releasing {
    int stepsDone = 1;

    bool operator==(const Releasing&) const = default;
};
struct Inspecting {
    bool operator==(const Inspecting&) const = default;
};
struct Closed {
    bool operator==(const Closed&) const = default;
};
struct Aborted {
    bool operator==(const Aborted&) const = default;
};

using State = std::variant<
    Preparing, Aligning, Soaking, ChangingOver, BuildingUp, Cooling, Releasing, Inspecting, Closed,
    Aborted>;

/// "preparing", "aligning", …
std::string_view phaseName(const State& state);
/// Neither closed nor aborted.
bool isOpen(const State& state);

} // namespace seamclock
