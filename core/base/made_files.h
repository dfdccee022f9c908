// Which files of a folder this program wrote: a list in the folder itself, by name and by what was
// written, so that a file that somebody changed or put there under the same name is told for
// theirs. Only a folder that began with such a list has one; elsewhere nothing is noted.
#pragma once

#include "core/base/result.h"

#include <string>
#include <vector>

namespace seamclock {

/// Begins the list of a folder, which is made if need be. NotWritten: it can't.
Result<void> keepMadeFiles(const std::string& folder);

/// Of a file that was just written whole; nothing where its folder has no list. A list that can't
/// be written leaves the file for somebody else's.
void noteMadeFile(const std::string& file);

/// The names of what lies in the folder as it was written, the list's own last; none: no list. A
/// link is none of them.
std::vector<std::string> madeFiles(const std::string& folder);

} // namespace seamclock
