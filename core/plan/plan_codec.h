// The plan as JSON: in a weld's opening event (integers, canonical keys) and as the terminal
// program prints it.
#pragma once

#include "core/base/canonical_json.h"
#include "core/base/json.h"
#include "core/plan/plan.h"

namespace seamclock {

/// The event's form: integers with the unit in the key, absent where there is no value.
Json planToJson(const WeldPlan& plan);
/// Malformed: a field is missing, unknown or of the wrong type.
Result<WeldPlan> planFromJson(CanonicalValue json);

/// The terminal's form: floats in the trade's units, named as the terminal contract says, "ready"
/// and "missing". Beside the plan: what is only estimated, under "estimate", and how well the
/// calibration of `bench` (the plan's own, or null) knows its forces.
std::string planReportJson(const WeldPlan& plan, const Bench* bench = nullptr);

} // namespace seamclock
