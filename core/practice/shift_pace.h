// How fast time may run for several benches by one clock, on a practice log: faster only while each
// of them may hurry. A bench whose checks are being made, or that wants its hands, holds all of
// them to true time, since one pair of hands works in it.
#pragma once

#include "core/shift/shift.h"

namespace seamclock {

struct ShiftPace {
    int factor = 1;
    Milliseconds until{0}; // by the benches' clock; true time from then on

    bool operator==(const ShiftPace&) const = default;
};

/// From `now` on, looking `horizon` of the benches' time ahead: ask again before that is over, and
/// after each step. A factor of 1 without a bench, or with one that mayHurry() refuses.
ShiftPace paceOf(const Shift& shift, const Instant& now, Milliseconds horizon, int pace);

} // namespace seamclock
