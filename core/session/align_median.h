// How long alignment usually takes on a bench: the median of the last welds like this one. The plan
// stores it, so that an alignment that takes twice as long is noticed; the bead ends alignment,
// never this number.
#pragma once

#include "core/log/log_reader.h"

#include <optional>
#include <string>

namespace seamclock {

/// Over the last ten closed welds of that bench, procedure and thickness among the last 500 joints,
/// the lower of the two middle ones where their number is even. Empty: fewer than five.
Result<std::optional<Milliseconds>> alignMedian(
    LogReader& log, const std::string& bench, const std::string& procedure,
    std::int64_t thicknessUm);

} // namespace seamclock
