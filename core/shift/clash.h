// Two hands, one plate at a time: whether a soak that is started now would end while the same
// operator is wanted at another bench, between its plate out and its lock. Known ahead is only what
// is fixed: benches in soak, changeover or build-up. One in alignment ends it when its bead stands,
// and is asked then; one that is ready to align is asked with the time that alignment usually takes
// there, since an alignment that has begun can't wait.
#pragma once

#include "core/shift/shift.h"

#include <optional>
#include <string>

namespace seamclock {

struct Clash {
    std::string bench; // the other's id: the first one whose time it would fall into
    int place = 1;     // its place
    /// To wait before the soak (or the alignment) is started, so that it ends clear of every other
    /// bench.
    Milliseconds wait{0};

    bool operator==(const Clash&) const = default;
};

/// For the bench at that place, whose weld is in alignment. Each bench wants its hands from the
/// signal that its soak is over for as long as changeover and build-up may take by its plan; one
/// that is late already wants them for as long from now on. Empty: nothing in the way, no such
/// bench, not in alignment, or a plan that lacks these times.
std::optional<Clash> clashOfSoak(const Shift& shift, int place, const Instant& now);

/// As above, for a bench whose weld is prepared: if its alignment began now and took its plan's
/// median. Empty also where the plan knows none, or a check is open.
std::optional<Clash> clashOfAlignment(const Shift& shift, int place, const Instant& now);

} // namespace seamclock
