// The heat estimate for other programs: numbers with their spread as JSON, curves as CSV (RFC
// 4180).
#pragma once

#include "core/estimate/heat_estimate.h"

#include <string>

namespace seamclock {

/// `melt_depth_mm` and so on are the likely values; `spread` has `low` and `high` of each; what the
/// course did not come to is absent. It says that it is an estimate, what it was worked out from,
/// and where the material's values are from.
std::string heatReportJson(const HeatEstimate& estimate);

/// The JSON object (a plan's) with the estimate's in it as "estimate".
std::string withEstimate(const std::string& object, const HeatEstimate& estimate);

/// One line a step of the run with nominal values, from the beginning of alignment.
std::string heatCurvesCsv(const HeatEstimate& estimate);

/// "plate", "air", "sheet"
std::string_view toString(HeatStage::At at);

} // namespace seamclock
