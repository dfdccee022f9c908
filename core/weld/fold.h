// A weld is what its events make of it. `apply` adds one event to a live weld, `fold` makes a weld
// from all of them; the law is that both always agree. Take-back, backdating and a bridge fold
// again what remains.
#pragma once

#include "core/weld/step.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// Turns instants into weld time: the boot now running, and the weld time at one instant of it.
struct WeldClock {
    std::string bootId;
    Milliseconds boot{0};
    WeldTime at;

    bool operator==(const WeldClock&) const = default;
};

struct Weld {
    WeldPlan plan;             // the one in force
    std::vector<Event> events; // n = 1, 2, …
    State state;
    WeldClock clock;

    const std::string& id() const { return events.front().subject; }
    const WeldOpened& opened() const { return std::get<WeldOpened>(events.front().d); }
    bool operator==(const Weld&) const = default;
};

/// An event that still stands: not taken back, at its instant as corrected by backdating, with its
/// values as corrected. Take-backs, backdatings and corrections themselves are not in the list of
/// these.
struct Retained {
    std::int64_t n = 0;
    WeldTime t;
    Instant at;
    std::string by;
    WeldDetail d;

    bool operator==(const Retained&) const = default;
};

/// The first event of a weld. Refused: not weld_opened, n not 1, a plan that is not ready or has no
/// scale, not two sheets, an empty subject.
Result<Weld> open(const Event& event);

/// The weld with one more event. Refused: the event does not fit; the weld is unchanged.
Result<Weld> apply(const Weld& weld, const Event& event);

/// From all events, sorted by n. Damaged: an event that does not fit; the detail names its n.
Result<Weld> fold(const std::vector<Event>& events);
/// The same without a copy: the weld takes the events over; where they make none they stay.
Result<Weld> foldTaking(std::vector<Event>& events);

/// The events that still stand, in the order of n.
std::vector<Retained> retained(const std::vector<Event>& events);

/// Weld time at an instant. Refused: another boot than the weld's; bridge first.
Result<WeldTime> weldTimeAt(const Weld& weld, const Instant& at);

/// The n of the last retained event that can be taken back; 0 if there is none. An intent names it
/// (`onto`).
std::int64_t lastTakeable(const Weld& weld);

} // namespace seamclock
