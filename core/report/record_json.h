// The record of a joint as JSON with stable keys. Numbers stand in the trade's units, named by
// their key or by "unit" beside them, and with the n of the event that each comes from, so that a
// reader can go back to the log.
#pragma once

#include "core/report/record_text.h"

#include <string>

namespace seamclock {

/// Pretty-printed, ending with a line feed. Keys without a value are absent.
std::string recordJson(const WeldRecord& record, const RecordExtras& extras);

} // namespace seamclock
