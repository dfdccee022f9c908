// A take as the document that a practice log keeps of it: canonical JSON, `seamclock-take/1`. Read
// back it is the same take, so a replay of it is the same weld to the last bit.
#pragma once

#include "core/practice/practice_take.h"

#include <string>
#include <string_view>

namespace seamclock {

/// Malformed: a text in it that is not UTF-8.
Result<std::string> takeText(const PracticeTake& take);

/// Malformed, with field, value and what is allowed: a field missing or unknown, an act that is
/// none, a time outside 0 to the take's length or before the one above it, a length beyond a day.
Result<PracticeTake> readTake(std::string_view name, std::string_view text);

} // namespace seamclock
