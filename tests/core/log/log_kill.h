// Kills a program that writes a log, at random moments, and looks for what it had reported.
#pragma once

#include <cstdint>

namespace seamclock::test {

/// After each kill: every row reported as saved is in the log, every row reported as spilled is
/// there or in the spill file, and the log verifies. In some rounds the log is locked, so that rows
/// are spilled; the next start joins them.
void killWriters(int rounds, std::uint64_t seed);

} // namespace seamclock::test
