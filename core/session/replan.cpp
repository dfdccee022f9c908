#include "core/session/replan.h"

#include "core/log/log_reader.h"
#include "core/log/shelf.h"
#include "core/session/sheet_plan.h"

#include <algorithm>
#include <cmath>

namespace seamclock {

Result<ProcedureDocument> procedureOf(
    const Weld& weld, const std::vector<ProcedureDocument>& inForce, const std::string& log) {
    const std::string& sha256 = weld.opened().docs.procedure;
    const auto found =
        std::find_if(inForce.begin(), inForce.end(), [&sha256](const ProcedureDocument& one) {
            return one.sha256 == sha256;
        });
    if (found != inForce.end()) {
        return *found;
    }
    auto reader = LogReader::open(log);
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    const auto kept = reader->document(sha256);
    if (!kept) {
        return tl::unexpected<Error>(kept.error());
    }
    if (!*kept) {
        return fail(
            ErrorCode::Missing, "the procedure of this weld, " + weld.plan.procedure +
                                    ", is neither on this tablet nor in its log");
    }
    return procedureOfLog(*reader, sha256);
}

PlanRequest requestOf(const Weld& weld) {
    const WeldPlan& plan = weld.plan;
    PlanRequest request;
    request.thickness = micrometres(static_cast<double>(plan.thicknessUm));
    for (const std::int64_t um : weld.opened().lengthsUm) {
        request.lengths.push_back(micrometres(static_cast<double>(um)));
    }
    request.ambient = Temperature::celsius(static_cast<double>(plan.ambientMc) / 1e3);
    const bool measured =
        std::none_of(plan.warnings.begin(), plan.warnings.end(), [](const PlanWarning& warning) {
            return warning.code == kDragNotMeasured;
        });
    if (measured) { // else none was before, and the next plan is to say so, too
        request.drag = newtons(static_cast<double>(plan.dragMn) / 1e3);
    }
    request.coolingRule = plan.coolingRule;
    if (plan.halfCooling) {
        request.halfCooling = HalfCooling{true, true};
    }
    // Only a target that a foreman set is asked for again: it then says so.
    const bool set =
        std::any_of(plan.sources.begin(), plan.sources.end(), [](const PlanSource& each) {
            return each.value == "heated_tool_C.target" &&
                   each.source.text == plateTargetSetByForeman().text;
        });
    if (set && plan.plate) {
        request.plateTarget = Temperature::celsius(static_cast<double>(plan.plate->targetMc) / 1e3);
    }
    request.alignMedian = plan.alignMedian;
    request.scaleIsForemans =
        std::find(plan.checks.begin(), plan.checks.end(), kForemansScale) != plan.checks.end();
    return request;
}

Result<WeldPlan> planAgain(
    const Weld& weld, const Procedure& procedure, const Bench& bench, const Measured& measured) {
    PlanRequest request = requestOf(weld);
    request.ambient = measured.ambient.value_or(request.ambient);
    request.drag = measured.drag ? measured.drag : request.drag;
    return planWithSheets(request, procedure, &bench, weld.opened().sheets);
}

} // namespace seamclock
