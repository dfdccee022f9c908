// Kills rehearsals at chosen and at random moments, starts them again, and holds what is found
// against what was told.
#pragma once

#include <cstdint>
#include <string>

namespace seamclock::test {

/// A weld in true time, with phases of seconds, killed at random moments (and then again, until it
/// is done; then the next) `kills` times, and until every timed phase was hit. After each: the rows
/// that were told saved are there, the events are those that were told, their fold is the live
/// weld, phase and elapsed time are right.
void killInTrueTime(const std::string& log, int kills, std::uint64_t seed);

/// The same for paced welds on a practice clock, each of which must end in the very record of an
/// uninterrupted one.
void killPaced(const std::string& log, int kills, std::uint64_t seed);

/// One weld for every `step`-th event, killed as soon as that event was told of, and resumed; every
/// record as uninterrupted. Returns how many kills that was.
int killAfterEvents(const std::string& folder, std::uint64_t seed, int step);

} // namespace seamclock::test
