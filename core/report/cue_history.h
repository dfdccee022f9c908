// When which cue fell due in a weld's life, worked out from its events: what a screen showed and a
// horn was asked to sound while they were made. Nothing of it is stored, since it follows from the
// events; whether a person heard it is not known here. Over a reboot nothing can have sounded, so
// the time before it is left out.
#pragma once

#include "core/weld/cues.h"

#include <cstdint>
#include <vector>

namespace seamclock {

struct CueDue {
    std::int64_t afterN = 0; // the last event before it
    Milliseconds utc{0};
    Milliseconds boot{0};
    Cue cue;

    bool operator==(const CueDue&) const = default;
};

/// In the order of time. Cues that outlast the last event are in it only up to that event. Events
/// that do not make a weld give the cues of the part that does.
std::vector<CueDue> cueHistory(const std::vector<Event>& events);

} // namespace seamclock
