// Where a person's own files lie: by the XDG base directory specification 0.8, logs in
// $XDG_DATA_HOME/seamclock (else ~/.local/share/seamclock) and settings in
// $XDG_CONFIG_HOME/seamclock (else ~/.config/seamclock); or all in one folder, which is carried
// elsewhere by copying it: the one that SEAMCLOCK_HOME names, or --home.
#pragma once

#include "core/base/result.h"

#include <string>

namespace seamclock {

/// The variable that names one folder for everything. As those of the specification, it counts if
/// it is an absolute path.
inline constexpr const char* kHomeVariable = "SEAMCLOCK_HOME";

/// The logs that are used when none is named. Missing: neither the variable above nor
/// XDG_DATA_HOME nor HOME is an absolute path. Nothing is made yet; nor by the others.
Result<std::string> practiceLogPath();
Result<std::string> productionLogPath();
/// The demo shop's own folder, beside the logs.
Result<std::string> demoShopFolder();
/// Missing: likewise, with XDG_CONFIG_HOME.
Result<std::string> settingsPath();

} // namespace seamclock
