// The weld card: one plan as a person reads it before the weld, from the plate to cooling, with the
// arithmetic behind each reading and where each value comes from. It adds nothing to the plan and
// leaves nothing out. In either system of units it holds the same values (core/units/measure.h); a
// scale's readings stay in what is printed on the scale, and sources are quoted as they are
// written.
#pragma once

#include "core/bench/bench.h"
#include "core/estimate/heat_estimate.h"
#include "core/plan/plan.h"
#include "core/units/measure.h"

#include <string>

namespace seamclock {

/// `bench` is the one that the plan was made with; without it the arithmetic ends at the force.
/// `heat`, if it is known, is what the plan will do.
std::string weldCard(
    const WeldPlan& plan, const Bench* bench, UnitSystem units = UnitSystem::Metric,
    const HeatEstimate* heat = nullptr);

} // namespace seamclock
