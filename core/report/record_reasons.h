// The reasons of a verdict as a record shows them: from which events each follows, so that a reader
// can go back to the log; and whether the verdict that was stored at closing is another than the
// one that this program's rules give.
#pragma once

#include "core/weld/record.h"

#include <cstdint>
#include <set>
#include <string_view>

namespace seamclock {

/// The n of the events that a reason with this code was worked out from.
std::set<std::int64_t> eventsBehind(std::string_view code, const WeldRecord& record);

/// False while nothing is stored.
bool differsFromStored(const WeldRecord& record);

} // namespace seamclock
