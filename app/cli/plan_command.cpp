// plan: a weld card, or its numbers.
#include "app/cli/command.h"
#include "app/cli/estimates.h"
#include "app/cli/numbers.h"
#include "app/cli/plan_options.h"
#include "core/estimate/heat_estimate_json.h"
#include "core/plan/plan_codec.h"
#include "core/plan/sheets.h"
#include "core/report/weld_card.h"
#include "core/session/sheet_plan.h"

#include <CLI/CLI.hpp>
#include <cmath>
#include <memory>

namespace seamclock {
namespace {

struct PlanCall {
    PlanWords words;
    std::string units = "metric";
    std::optional<std::string> secondThickness;
    std::optional<std::string> mfr;
    std::optional<std::string> secondMfr;
    bool foreman = false;
    bool json = false;
};

Result<UnitSystem> unitsCalled(const std::string& word) {
    for (const UnitSystem system : {UnitSystem::Metric, UnitSystem::Imperial}) {
        if (word == toString(system)) {
            return system;
        }
    }
    return fail(
        ErrorCode::Malformed,
        "--units " + inQuotes(word) + " is no system of units; allowed: metric, imperial");
}

/// What was said of the two sheets; none of them, if nothing was.
Result<std::vector<Sheet>> sheetsOf(const PlanCall& call, const PlanInput& input) {
    if (!call.secondThickness && !call.mfr && !call.secondMfr) {
        return std::vector<Sheet>();
    }
    Sheet first;
    first.material = input.procedure.procedure.material;
    first.thicknessUm = std::llround(inMicrometres(input.request.thickness));
    first.mfr = call.mfr;
    Sheet second = first;
    second.mfr = call.secondMfr;
    for (const auto& [option, flow] :
         {std::pair{"--mfr", call.mfr}, std::pair{"--second-mfr", call.secondMfr}}) {
        if (flow && !meltFlowIn(*flow)) {
            return fail(
                ErrorCode::Malformed, std::string(option) + " " + inQuotes(*flow) +
                                          " is not a melt flow rate; allowed: above 0 g/10 min, as "
                                          "0.5 or \"0.5 (190/5)\"");
        }
    }
    if (call.secondThickness) {
        constexpr double kThickestMm = 1000;
        const auto mm =
            parseNumber("--second-thickness", *call.secondThickness, {0.1, kThickestMm, "mm"});
        if (!mm) {
            return tl::unexpected(mm.error());
        }
        second.thicknessUm = std::llround(*mm * 1e3);
    }
    return std::vector<Sheet>{first, second};
}

Result<int> runPlan(const PlanCall& call, Terminal& terminal) {
    const auto units = unitsCalled(call.units);
    if (!units) {
        return tl::unexpected(units.error());
    }
    const auto input = readPlanInput(call.words, nullptr);
    if (!input) {
        return tl::unexpected(input.error());
    }
    const Bench* bench = input->bench ? &input->bench->bench : nullptr;
    const auto sheets = sheetsOf(call, *input);
    if (!sheets) {
        return tl::unexpected(sheets.error());
    }
    PlanRequest request = input->request;
    request.scaleIsForemans = call.foreman;
    const auto plan = planWithSheets(request, input->procedure.procedure, bench, *sheets);
    if (!plan) {
        return tl::unexpected(plan.error());
    }
    const auto heat = estimatedIfKnown(courseOf(*plan, bench));
    if (call.json) {
        const std::string numbers = planReportJson(*plan, bench);
        terminal.write((heat ? withEstimate(numbers, *heat) : numbers) + "\n");
    } else {
        terminal.write(weldCard(*plan, bench, *units, heat ? &*heat : nullptr));
    }
    return 0;
}

} // namespace

void addPlan(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<PlanCall>();
    CLI::App* words = root.add_subcommand("plan", "The weld card for a sheet, a seam and a bench.");
    addPlanOptions(*words, call->words, true);
    words->add_option("--log", call->words.log, "the procedures as they hold in this log's FILE");
    words->add_option("--second-thickness", call->secondThickness, "MM of the other sheet");
    words->add_option("--mfr", call->mfr, "melt flow rate, g/10 min, as \"0.5 (190/5)\"");
    words->add_option("--second-mfr", call->secondMfr, "that of the other sheet");
    words->add_option(
        "--units", call->units, "metric or imperial, for the text; JSON has its units in its keys");
    words->add_flag(
        "--foreman", call->foreman,
        "a scale too coarse for the tolerance is the foreman's to allow, not refused");
    words->add_flag("--json", call->json, "as JSON");
    commands.push_back({words, [call, &terminal] { return runPlan(*call, terminal); }});
}

} // namespace seamclock
