// heat: what happens in the sheet, by the model: ahead of a weld from a plan, or of a weld in a
// log.
#include "app/cli/command.h"
#include "app/cli/estimates.h"
#include "app/cli/files.h"
#include "app/cli/numbers.h"
#include "app/cli/plan_options.h"
#include "core/estimate/heat_estimate_json.h"
#include "core/estimate/heat_words.h"
#include "core/log/log_reader.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace seamclock {
namespace {

struct HeatCall {
    PlanWords words;
    std::optional<std::string> plate;
    std::optional<std::string> soak;
    std::optional<std::string> changeover;
    std::optional<std::string> coolingTime;
    std::optional<std::string> until;
    std::optional<std::string> joint;
    std::optional<std::string> curves;
    bool json = false;
};

// Beyond these nothing is meant that a bench does.
const Allowed kPlate{100, 320, "°C"};
const Allowed kSoak{1, 3600, "s"};
const Allowed kChangeover{0, 600, "s"};
const Allowed kCooling{0, 600, "min"};
const Allowed kUntil{0, 200, "°C"};

struct CourseOfUnit {
    HeatCourse course;
    std::string unit; // of the scale
};

/// "What if" it were another number than the plan's, or the weld's.
Result<void> change(
    const char* option, const std::optional<std::string>& text, const Allowed& allowed,
    double scale, const std::function<void(double)>& set) {
    if (!text) {
        return {};
    }
    const auto number = parseNumber(option, *text, allowed);
    if (!number) {
        return tl::unexpected(number.error());
    }
    set(*number * scale);
    return {};
}

Result<CourseOfUnit> ofPlan(const HeatCall& call) {
    for (const auto& [option, text] :
         {std::pair{"--procedure", call.words.procedure},
          std::pair{"--thickness", call.words.thickness}}) {
        if (!text) {
            return fail(
                ErrorCode::Missing, std::string(option) +
                                        " is missing; allowed: it and the other of --procedure and "
                                        "--thickness, or --log");
        }
    }
    PlanWords words = call.words;
    if (words.lengths.empty()) {
        words.lengths = {"1000"}; // the same for every length but where a bench's spring counts
    }
    const auto input = readPlanInput(words, nullptr);
    if (!input) {
        return tl::unexpected(input.error());
    }
    const Bench* bench = input->bench ? &input->bench->bench : nullptr;
    const auto plan = makePlan(input->request, input->procedure.procedure, bench);
    if (!plan) {
        return tl::unexpected(plan.error());
    }
    auto course = courseOf(*plan, bench);
    if (!course) {
        return tl::unexpected(course.error());
    }
    return CourseOfUnit{std::move(*course), bench != nullptr ? bench->scale.unit : ""};
}

Result<CourseOfUnit> ofWeld(const HeatCall& call) {
    auto reader = LogReader::open(*call.words.log);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    const auto id = chooseWeld(*reader, *call.words.log, call.joint, {});
    if (!id) {
        return tl::unexpected(id.error());
    }
    const auto events = reader->weldEvents(*id);
    if (!events) {
        return tl::unexpected(events.error());
    }
    const auto weld = fold(*events);
    if (!weld) {
        return tl::unexpected(weld.error());
    }
    std::optional<BenchDocument> bench;
    const auto stored = reader->document(weld->opened().docs.bench);
    if (stored && *stored) {
        if (auto read = readBench("bench", (*stored)->bytes)) {
            bench = std::move(*read);
        }
    }
    auto course = courseOf(*weld, bench ? &bench->bench : nullptr);
    if (!course) {
        return tl::unexpected(course.error());
    }
    return CourseOfUnit{std::move(*course), bench ? bench->bench.scale.unit : ""};
}

Result<void> writeCurves(const std::string& path, const HeatEstimate& estimate) {
    auto file = OutFile::open(path);
    if (!file) {
        return tl::unexpected(file.error());
    }
    file->write(heatCurvesCsv(estimate));
    return file->finish();
}

Result<int> runHeat(const HeatCall& call, Terminal& terminal) {
    auto of = call.words.log && !call.words.procedure ? ofWeld(call) : ofPlan(call);
    if (!of) {
        return tl::unexpected(of.error());
    }
    HeatCourse& course = of->course;
    double until = 60;
    for (const auto& done :
         {change("--plate", call.plate, kPlate, 1, [&](double x) { course.inputs.plateC = x; }),
          change("--soak", call.soak, kSoak, 1, [&](double x) { course.soak = x; }),
          change(
              "--changeover", call.changeover, kChangeover, 1,
              [&](double x) { course.changeover = x; }),
          change(
              "--cooling-time", call.coolingTime, kCooling, 60,
              [&](double x) { course.cooling = x; }),
          change("--until", call.until, kUntil, 1, [&](double x) { until = x; })}) {
        if (!done) {
            return tl::unexpected(done.error());
        }
    }
    const auto estimate = estimated(course, until);
    if (!estimate) {
        return tl::unexpected(estimate.error());
    }
    if (call.curves) {
        if (const auto written = writeCurves(*call.curves, *estimate); !written) {
            return tl::unexpected(written.error());
        }
    }
    if (call.json) {
        terminal.write(heatReportJson(*estimate) + "\n");
        return 0;
    }
    std::string text = "Heat in " + estimate->material.name + ", estimated\n";
    for (const HeatLine& line : heatLines(*estimate, of->unit)) {
        text += "  " + line.what + ": " + line.value + "\n";
    }
    for (const std::string& caution : heatCautions(*estimate)) {
        text += caution + "\n";
    }
    terminal.write(text);
    return 0;
}

} // namespace

void addHeat(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<HeatCall>();
    CLI::App* words =
        root.add_subcommand("heat", "What happens in the sheet: an estimate, of a plan or a weld.");
    words->add_option(
        "--procedure", call->words.procedure, "a procedure's ID or a file: its table");
    words->add_option(
        "--thickness", call->words.thickness, "MM of the sheet, inside the procedure's range");
    words
        ->add_option(
            "--length", call->words.lengths, "MM of the seam (1000); a spring's fall needs it")
        ->expected(1)
        ->take_all();
    words->add_option(
        "--bench", call->words.bench, "a bench FILE: its spring, for the reading's fall");
    words->add_option("--ambient", call->words.ambient, "°C in the shop, -40 to 60");
    words->add_option(
        "--cooling", call->words.cooling, "line or band-end: how a table's band is read");
    words->add_option(
        "--log", call->words.log,
        "a log's FILE: a weld of it; with --procedure, the procedures as they hold in it");
    words->add_option("--joint", call->joint, "the joint with this number (the highest)");
    words->add_option("--plate", call->plate, "what if: °C of the plate, 100 to 320");
    words->add_option("--soak", call->soak, "what if: S of soak, 1 to 3600");
    words->add_option("--changeover", call->changeover, "what if: S of changeover, 0 to 600");
    words->add_option("--cooling-time", call->coolingTime, "what if: MIN of cooling, 0 to 600");
    words->add_option("--until", call->until, "when the weld plane is at this °C (60), 0 to 200");
    words->add_option("--curves", call->curves, "the curves as CSV into this FILE");
    words->add_flag("--json", call->json, "as JSON");
    commands.push_back({words, [call, &terminal] { return runHeat(*call, terminal); }});
}

} // namespace seamclock
