// Starts rehearse_driver as a process of its own, reads what it tells, and kills it (SIGKILL) when
// a test says so.
#pragma once

#include "core/base/instant.h"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace seamclock::test {

/// What one run of the driver told, until it ended or was killed.
struct Told {
    struct Event {
        std::string kind;
        std::int64_t bootMs = 0;
    };
    struct Resumed {
        std::string phase;
        std::int64_t loMs = 0; // weld time
        std::int64_t hiMs = 0;
        std::int64_t bootMs = 0; // the machine's boot clock at that moment
        std::size_t events = 0;  // that the weld has
    };
    std::map<std::int64_t, Event> events;
    std::set<std::int64_t> saved;
    std::string weld;
    std::optional<Resumed> resumed;
    std::string found; // the rest of the line: phase, events, same or rebooted, open or aborted
    std::string done;  // the verdict; "" if it was not reached
    std::string error;
    std::vector<std::string> troubles; // each time that it changed; "" where it ended
    std::string aside;                 // "same FILE" or "new FILE"
    bool killed = false;
};

struct DriverCall {
    std::string log;
    std::uint64_t seed = 1;
    bool trueTime = false;
    double speed = 1;
    bool resume = false;
    std::string word = "none";
    std::int64_t dieAt = 0;          // the event after which it kills itself; 0: none
    int hand = 0;                    // % of the operator's usual times, in true time
    std::vector<std::string> before; // words before the program's own: "env", "nsenter", …
    std::string
        bootIdFile; // another boot id, mounted over the kernel's in a mount namespace of its own
};

/// Runs it to its end.
Told runDriver(const DriverCall& call);
/// Kills it once `life` has passed since its first line, unless it ended before.
Told runDriverFor(const DriverCall& call, Milliseconds life);
/// Kills it as soon as it has told of an event of this kind and `more` has passed.
Told runDriverTo(const DriverCall& call, const std::string& kind, Milliseconds more);

/// Runs it to its end, and calls `look` after each line and at least every 50 ms; it is killed as
/// soon as that returns false.
Told runDriverWatched(const DriverCall& call, const std::function<bool(const Told&)>& look);
/// What `seamclock-cli log recover --json` says of the log on that boot ("": the machine's own).
std::string recoverSays(const std::string& log, const std::string& bootIdFile);

/// Empty: a mount namespace with another boot id can be made here. Else why not.
std::string whyNoOtherBoot(const std::string& bootIdFile);

} // namespace seamclock::test
