// Logs of the tests' short weld: what a log holds now, and logs that are brought to a chosen step
// with instants that lie behind the present one, so that nobody waits through the phases.
#pragma once

#include "core/base/instant.h"
#include "core/shift/job.h"
#include "core/weld/fold.h"

#include <optional>
#include <string>

namespace seamclock::test {

/// "weld:UUID" of the newest weld in the log; empty: none.
std::string newestWeld(const std::string& log);
/// That weld by its rows; empty: there is none, or it can't be read yet.
std::optional<Weld> weldIn(const std::string& log);
/// Its events but those of the station's own (a jump of the wall clock).
std::vector<Event> handsEvents(const Weld& weld);

Job jobOfTests();

/// How far a log is brought, and how long ago its last step lies.
struct Brought {
    std::string phase;            // "preparing", "aligning", …
    std::size_t stepsInPhase = 0; // made there
    Milliseconds ago{0};
    int seam = 0;                   // of the job
    std::optional<Instant> present; // absent: the machine's own
};

/// Writes the log through session and writer, as the program does, and leaves it as a killed
/// program would.
void bringLog(const std::string& log, const Brought& to);

/// Now, with the machine's boot.
Instant presentInstant();

} // namespace seamclock::test
