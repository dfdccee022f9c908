#include "core/session/sheet_plan.h"

#include "core/plan/sheets.h"

#include <iterator>

namespace seamclock {

namespace {

SheetFacts factsOf(const Sheet& sheet) {
    return {sheet.material, sheet.grade, sheet.thicknessUm, sheet.mfr};
}

} // namespace

Result<WeldPlan> planWithSheets(
    const PlanRequest& request, const Procedure& procedure, const Bench* bench,
    const std::vector<Sheet>& sheets) {
    auto plan = makePlan(request, procedure, bench);
    if (!plan || sheets.size() != 2) {
        return plan;
    }
    auto judged = judgeSheets(factsOf(sheets[0]), factsOf(sheets[1]), procedure.material);
    if (!judged) {
        return tl::unexpected<Error>(judged.error());
    }
    std::move(judged->begin(), judged->end(), std::back_inserter(plan->warnings));
    return plan;
}

} // namespace seamclock
