// A plan for two sheets that are known by their papers: core/plan's numbers, and what the sheets
// mean together. Every plan of a weld is made here, so that none forgets the sheets.
#pragma once

#include "core/base/result.h"
#include "core/bench/bench.h"
#include "core/plan/plan.h"
#include "core/procedure/procedure.h"
#include "core/weld/event.h"

#include <vector>

namespace seamclock {

/// As makePlan and judgeSheets; what the sheets warn of comes last in the plan's warnings. Other
/// than two sheets say nothing about each other.
Result<WeldPlan> planWithSheets(
    const PlanRequest& request, const Procedure& procedure, const Bench* bench,
    const std::vector<Sheet>& sheets);

/// Missing, in one sentence: what the shop fills in of the procedure, or what a foreman attests,
/// before anything can be welded by it.
Result<void> checkReady(const WeldPlan& plan);

} // namespace seamclock
