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

Result<void> checkReady(const WeldPlan& plan) {
    if (plan.isReady()) {
        return {};
    }
    const auto listed = [](const std::vector<std::string>& all) {
        std::string names;
        for (const std::string& name : all) {
            names += (names.empty() ? "" : ", ") + name;
        }
        return names;
    };
    const std::string cannot = "procedure " + plan.procedure + " can't be welded with yet: ";
    if (plan.missing.empty() && !plan.unattested.empty()) {
        return fail(
            ErrorCode::Missing, cannot + "the shop filled in " + listed(plan.unattested) +
                                    ", which a foreman attests first");
    }
    return fail(
        ErrorCode::Missing,
        cannot + "it lacks " + listed(plan.missing) + ", which the shop fills and attests first");
}

} // namespace seamclock
