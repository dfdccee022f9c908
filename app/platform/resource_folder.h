// Where the programs find what comes with them. Procedures and the demo come from
// $SEAMCLOCK_RESOURCES if that is set, else from ../share/seamclock beside the program, else from
// the source tree that it was built from.
#pragma once

#include "core/base/result.h"

#include <string>
#include <vector>

namespace seamclock {

/// Missing: none of the three places is there.
Result<std::string> resourceFolder();

/// Where the user guide lies: its chapters, and the folders in which a picture of it may be (the
/// build's own, too, where `guide` was built). Likewise looked for in three places.
struct GuidePlaces {
    std::string chapters;
    std::vector<std::string> pictures;
};
/// Missing: it is in none of them.
Result<GuidePlaces> guidePlaces();

} // namespace seamclock
