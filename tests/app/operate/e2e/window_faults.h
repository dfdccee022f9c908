// Faults of the disk under the window program: what the person at the bench sees of them, and what
// the log holds in the end.
#pragma once

#include "tests/app/operate/e2e/weld_log.h"

#include <string>

namespace seamclock::test {

struct WindowFault {
    const char* phase; // into which the press leads
    Brought before;    // one press before it
    const char* key;   // that press
    const char* fault; // as Rig::failDisk
};

/// The disk fails; a step is pressed: it counts, waits in the spill file, and the alarm stands. The
/// disk works again: the alarm goes, and the step is in the log with its instant.
void expectStepOutlivesFault(const WindowFault& fault);

/// The log's header is damaged before the start: the weld is there, with the notice until it was
/// seen.
void expectStartFromDamagedLog(const Brought& to);

} // namespace seamclock::test
