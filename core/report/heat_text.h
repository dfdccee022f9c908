// The heat estimate as it stands on a weld card and in a record.
#pragma once

#include "core/estimate/heat_estimate.h"
#include "core/plan/plan.h"
#include "core/units/measure.h"

#include <string>

namespace seamclock {

/// For a card: what the plan will do, how far the reading will fall and what to do about it, what
/// to add to a sheet's length. Nothing of the weld plane in cooling. `estimate` is the plan's.
std::string cardHeatText(
    const HeatEstimate& estimate, const WeldPlan& plan, UnitSystem units = UnitSystem::Metric);

/// For a record: what the weld did, in all its numbers. `plan` is the weld's.
std::string recordHeatText(const HeatEstimate& estimate, const WeldPlan& plan);

} // namespace seamclock
