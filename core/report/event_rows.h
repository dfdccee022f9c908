// The log's rows as they go out of it: every event with its place in the chain. The body's own JSON
// stays as it is stored; nothing is worked out here.
#pragma once

#include "core/base/result.h"
#include "core/log/log_reader.h"

#include <string>

namespace seamclock {

/// Comma-separated values with CRLF; "d" holds the event's own values as canonical JSON. Damaged: a
/// body that is no event; the sentence names the row.
std::string eventRowsHeader();
Result<std::string> eventRow(const StoredRow& row);

/// One JSON object {"seq", "hash", "event"}, of an imported chain with "log" as well, without a
/// line feed. Damaged: likewise.
Result<std::string> eventRowJson(const StoredRow& row);

} // namespace seamclock
