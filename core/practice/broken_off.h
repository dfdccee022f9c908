// A lesson's weld that the program's end left open in mid-weld. Its bench stood in the program's
// memory and is gone with it, so the weld can't go on: at the next start it is ended by an event
// that says so, in the station's name, and the history lists it. A weld of a rehearsal or of the
// operator's own screens stands on no such bench; it goes on as after any power cut. Who closes
// practice in mid-weld ends it himself, and it is listed likewise.
#pragma once

#include "core/log/log_reader.h"
#include "core/session/session.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// The reason in the log.
inline constexpr std::string_view kBrokenOff = "practice_broken_off";
inline constexpr std::string_view kLeft = "practice_left"; // by the trainee

struct BrokenOffWeld {
    std::string weld; // "weld:UUID"
    std::int64_t number = 0;
    std::string lesson; // its id
    std::string by;     // who made it
    Instant last;       // of his last step, on its own clock
    std::string phase;  // in which it was broken off: "soaking"
    bool left = false;  // by the trainee, not by the program's end

    bool operator==(const BrokenOffWeld&) const = default;
};

/// Ends every lesson's weld that stands open. Call it at the start, before anybody can open one.
/// Errors as Session::settle and Session::act; a weld is then open as before.
Result<std::vector<BrokenOffWeld>> endBrokenOff(Session<Practice>& session);

/// All that a log tells of, oldest first. Errors as LogReader.
Result<std::vector<BrokenOffWeld>> brokenOffIn(LogReader& log);

} // namespace seamclock
