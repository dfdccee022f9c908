// A log for others to read while it is being written: after each closing a copy of it is put into a
// folder that the shop chose, mostly a share of its network. Nothing but the finished copy and its
// temporary file is ever written there, and whoever reads it opens it as a file that never changes;
// a newer one takes its place by a rename, which a reader of the older one does not notice.
#pragma once

#include "core/copies/log_copy.h"

#include <string>

namespace seamclock {

/// The name of a log's snapshot: its own name without its ending, and the first eight digits of its
/// id, since several tablets may use one folder: "joints-0f3a96c2.seamlog".
std::string snapshotName(const std::string& log, const std::string& logId);

/// Puts a copy of the log as it is now into the folder, in the place of the one before. Errors as
/// copyLog; Conflict: a file of that name is there that is no copy of this log.
Result<LogCopy>
publishSnapshot(const std::string& log, const std::string& folder, const CopyOptions& options = {});

} // namespace seamclock
