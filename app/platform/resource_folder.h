// Where the programs find what comes with them. Procedures and the demo come from
// $SEAMCLOCK_RESOURCES if that is set, else from ../share/seamclock beside the program, else from
// the source tree that it was built from.
#pragma once

#include "core/base/result.h"

#include <string>

namespace seamclock {

/// Missing: none of the three places is there.
Result<std::string> resourceFolder();

} // namespace seamclock
