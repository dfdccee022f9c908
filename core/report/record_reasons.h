// The reasons of a verdict as a record shows them: from which events each follows, so that a reader
// can go back to the log; and whether the verdict that was stored at closing is another than the
// one that this program's rules give.
#pragma once

#include "core/weld/record.h"

#include <cstdint>
#include <set>
#include <string_view>

namespace seamclock {

/// The n of the events that a reason with this code was worked out from, those that corrected one
/// of them or bridged its time included.
std::set<std::int64_t> eventsBehind(std::string_view code, const WeldRecord& record);
/// Of one that tells of a single event that one alone, and what corrected it.
std::set<std::int64_t> eventsBehind(const Finding& finding, const WeldRecord& record);

/// Of the event that closed it, which holds the stored verdict; 0: none did.
std::int64_t closedN(const WeldRecord& record);

/// The n of the first event behind that one which changes what the joint is told to be: a value or
/// an instant corrected, another decision; 0: none. Who signed before it has not seen it.
std::int64_t changedAfter(std::int64_t n, const WeldRecord& record);

/// False while nothing is stored.
bool differsFromStored(const WeldRecord& record);
/// A value or an instant of it was corrected behind its closing, by this program's rules: what
/// differs from the stored verdict differs because of that.
bool isCorrectedSinceClosing(const WeldRecord& record);

} // namespace seamclock
