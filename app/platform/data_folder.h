// Where a person's own files lie, by the XDG base directory specification 0.8: $XDG_DATA_HOME, else
// ~/.local/share.
#pragma once

#include "core/base/result.h"

#include <string>

namespace seamclock {

/// The logs that are used when none is named. Missing: neither XDG_DATA_HOME nor HOME is an
/// absolute path. Nothing is made yet.
Result<std::string> practiceLogPath();
Result<std::string> productionLogPath();

} // namespace seamclock
