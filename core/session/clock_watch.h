// Whether the wall clock was set between two readings of the clocks: it then moved by something
// else than the boot clock did. Durations don't suffer from it, but the record's wall-clock times
// do, so it is written down.
#pragma once

#include "core/base/instant.h"

#include <optional>

namespace seamclock {

inline constexpr Milliseconds kJumpTolerance{2000};

class ClockWatch {
public:
    /// The wall clock's jump, Δutc − Δboot, since the last reading of the same boot, where it is
    /// more than the tolerance. Readings of another boot, or from before the last, are not
    /// compared.
    std::optional<Milliseconds> see(const Instant& now);

private:
    std::optional<Instant> m_last;
};

} // namespace seamclock
