// Reads the words of one call, runs its command and gives the exit status of the contract: 0 done,
// 1 the answer is "no" (verify and check only), 2 the words or their input won't do, with one line
// on standard error.
#pragma once

namespace seamclock {

int runCommandLine(int argc, const char* const* argv);

} // namespace seamclock
