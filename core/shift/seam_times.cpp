#include "core/shift/seam_times.h"

#include "core/plan/plan.h"
#include "core/plan/sheets.h"

#include <cmath>

namespace seamclock {

namespace {

std::string listed(const std::vector<std::string>& names) {
    std::string all;
    for (const std::string& name : names) {
        all += (all.empty() ? "" : ", ") + name;
    }
    return all;
}

PlanRequest requestOf(const JobSeam& seam, const Procedure& procedure) {
    PlanRequest request;
    request.thickness = millimetres(seam.thicknessMm);
    for (const double length : seam.lengthsMm) {
        request.lengths.push_back(millimetres(length));
    }
    request.ambient =
        seam.ambientC ? Temperature::celsius(*seam.ambientC) : procedure.referenceAmbient;
    if (seam.dragN) {
        request.drag = newtons(*seam.dragN);
    }
    return request;
}

SheetFacts factsOf(const Sheet& sheet) {
    return {sheet.material, sheet.grade, sheet.thicknessUm, sheet.mfr};
}

} // namespace

std::string_view toString(TimeFrom from) {
    switch (from) {
    case TimeFrom::Shop:
        return "shop";
    case TimeFrom::Chosen:
        return "chosen";
    }
    return "";
}

Result<SeamWork> seamWork(
    const JobSeam& seam, const Procedure& procedure, const Bench& bench, const ShopTimes& shop) {
    const auto plan = makePlan(requestOf(seam, procedure), procedure, &bench);
    if (!plan) {
        return tl::unexpected<Error>(plan.error());
    }
    if (seam.sheets.size() == 2) {
        const auto fit =
            judgeSheets(factsOf(seam.sheets[0]), factsOf(seam.sheets[1]), procedure.material);
        if (!fit) {
            return tl::unexpected<Error>(fit.error());
        }
    }
    if (!plan->missing.empty()) {
        return fail(
            ErrorCode::Missing, "the procedure " + procedure.id + " says nothing of " +
                                    listed(plan->missing) + "; allowed: one that a foreman filled");
    }
    if (!plan->unattested.empty()) {
        return fail(
            ErrorCode::Missing, "the procedure " + procedure.id + " is not attested in " +
                                    listed(plan->unattested) + "; allowed: one that is");
    }
    if (!plan->isReady() || !plan->soak || !plan->changeoverMax || !plan->buildUp ||
        !plan->cooling || !plan->plate) {
        return fail(ErrorCode::Missing, "the plan of seam " + seam.label + " has no times");
    }
    SeamWork out;
    SeamTimes& times = out.times;
    times.soak = plan->soak->target;
    times.changeover = *plan->changeoverMax;
    times.buildUp = plan->buildUp->target;
    times.cooling = plan->cooling->atLeast;
    times.plate = {plan->material, plan->plate->targetMc};
    const auto shopOr = [](const std::optional<Milliseconds>& measured, Milliseconds chosen,
                           TimeFrom& from) {
        from = measured ? TimeFrom::Shop : TimeFrom::Chosen;
        return measured.value_or(chosen);
    };
    const Milliseconds alignment{
        std::llround(static_cast<double>(times.soak.count()) * kChosenAlignment)};
    times.preparation = shopOr(shop.preparation, kChosenPreparation, out.preparation);
    times.alignment = shopOr(shop.alignment, alignment, out.alignment);
    times.release = shopOr(shop.release, kChosenRelease, out.release);
    return out;
}

} // namespace seamclock
