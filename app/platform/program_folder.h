// Where the program that runs lies, which each system is asked in its own way.
#pragma once

#include <filesystem>

namespace seamclock {

/// bin/ of the program that runs, links followed; empty: it can't be told.
std::filesystem::path programFolder();

} // namespace seamclock
