// The heat estimate with the materials that come with the program.
#pragma once

#include "core/base/result.h"
#include "core/estimate/heat_estimate.h"

#include <optional>

namespace seamclock {

/// Errors as estimateHeat, and where the materials can't be read.
Result<HeatEstimate> estimated(const Result<HeatCourse>& course, double chosenC = 60);

/// Beside a card or a record, which are whole without it: absent where it can't be worked out.
std::optional<HeatEstimate> estimatedIfKnown(const Result<HeatCourse>& course);

} // namespace seamclock
