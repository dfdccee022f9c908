// Time is an argument. A Clock stands at the edge of the program, is read once per input, and its
// Instant is passed down; no other place asks what time it is. Durations come from the boot clock,
// which goes on while a tablet sleeps, as the plastic goes on cooling; the wall clock is only for
// the record and for bridging a reboot.
#pragma once

#include <chrono>
#include <cstdint>
#include <string>

namespace seamclock {

using Milliseconds = std::chrono::milliseconds;

/// One reading of the clocks. `boot` counts from the machine's start (CLOCK_BOOTTIME) and compares
/// only with readings of the same `bootId`; `utc` counts from 1970-01-01T00:00Z; `offset` is local
/// time minus UTC.
struct Instant {
    Milliseconds boot{0};
    std::string bootId;
    Milliseconds utc{0};
    std::chrono::minutes offset{0};

    bool operator==(const Instant&) const = default;
};

/// The edge: implementations read the machine (app/platform) or a virtual operator's own time
/// (core/practice).
class Clock {
public:
    virtual ~Clock() = default;
    virtual Instant now() const = 0;
};

/// "2030-01-07T06:00:00.000Z". An instant outside the years 0 to 9999 is shown as their first or
/// last.
std::string toIsoUtc(Milliseconds utc);
/// "2030-01-07T07:00:00+01:00": the local time at that offset, whole seconds.
std::string toIsoLocal(Milliseconds utc, std::chrono::minutes offset);
/// "2030-01-07": the local date.
std::string toIsoDate(Milliseconds utc, std::chrono::minutes offset);

} // namespace seamclock
