// Four benches weld at once, each by its own hands: steps at random times, late and early ones,
// readings, take-backs, backdatings and acknowledgements, through core's own front door, and
// sounded span by span as the horn is told. What sounded is held against the claim (contracts §6).
#pragma once

#include <cstdint>
#include <string>

namespace seamclock::test {

struct Interleaved {
    int events = 0;    // that were accepted
    int takenBack = 0; // of them
    int backdated = 0;
    int acknowledged = 0;
    int welds = 0;            // that came to their end
    int cues = 0;             // of ranks 2 to 6 that came to be
    int atOnce = 0;           // of them, at their very instant
    std::int64_t longest = 0; // wait for a first sounding [ms]
    std::string complaints;   // one a line; empty: the claim holds
};

Interleaved interleave(std::uint32_t seed);

} // namespace seamclock::test
