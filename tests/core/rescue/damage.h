// Damages logs at random places and opens them again. What must come back is worked out here from
// the undamaged log and the damaged bytes, not by the program's own reading.
#pragma once

#include <cstdint>

namespace seamclock::test {

/// What became of them.
struct DamageCount {
    int opened = 0;    // the damage touched nothing that a start looks at
    int refused = 0;   // left where it was, with a sentence
    int mended = 0;    // the same chain again, whole
    int newChain = 0;  // a chain of its own
    int openWhole = 0; // open welds that came back with all their events
    int openNamed = 0; // open welds of which something is missing, and named
};

/// `trials` logs, each damaged once in one of several ways. Fails if one crashes (with the test),
/// is overwritten, loses a readable event of an open weld, or loses anything without naming it.
DamageCount damageLogs(int trials, std::uint64_t seed);

} // namespace seamclock::test
