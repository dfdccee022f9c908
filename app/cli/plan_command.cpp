// plan: a weld card, or its numbers.
#include "app/cli/command.h"
#include "app/cli/numbers.h"
#include "app/cli/plan_options.h"
#include "core/plan/plan_codec.h"
#include "core/report/weld_card.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace seamclock {
namespace {

struct PlanCall {
    PlanWords words;
    std::string units = "metric";
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
    const auto plan = makePlan(input->request, input->procedure.procedure, bench);
    if (!plan) {
        return tl::unexpected(plan.error());
    }
    terminal.write(
        call.json ? planReportJson(*plan, bench) + "\n" : weldCard(*plan, bench, *units));
    return 0;
}

} // namespace

void addPlan(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<PlanCall>();
    CLI::App* words = root.add_subcommand("plan", "The weld card for a sheet, a seam and a bench.");
    addPlanOptions(*words, call->words, true);
    words->add_option("--log", call->words.log, "the procedures as they hold in this log's FILE");
    words->add_option(
        "--units", call->units, "metric or imperial, for the text; JSON has its units in its keys");
    words->add_flag("--json", call->json, "as JSON");
    commands.push_back({words, [call, &terminal] { return runPlan(*call, terminal); }});
}

} // namespace seamclock
