// The machine's clocks, read in the one place that may. Durations come from CLOCK_BOOTTIME, which
// goes on while the machine sleeps; the wall clock and the local offset are only for the record.
// Which boot it is is read once, when the clock is made: a running program can't see another.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"

#include <string>

namespace seamclock {

class BootClock : public Clock {
public:
    /// Unreadable or Malformed: the kernel's boot id can't be had, without which no time can be
    /// compared after a restart.
    static Result<BootClock>
    make(const std::string& bootIdFile = "/proc/sys/kernel/random/boot_id");

    Instant now() const override;
    const std::string& bootId() const { return m_bootId; }

private:
    explicit BootClock(std::string bootId);
    std::string m_bootId;
};

/// CLOCK_BOOTTIME since the machine's start.
Milliseconds bootTime();

} // namespace seamclock
