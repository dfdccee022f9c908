#include "app/cli/plan_options.h"

#include "app/cli/files.h"
#include "app/cli/numbers.h"

#include <CLI/CLI.hpp>
#include <cmath>

namespace seamclock {
namespace {

// Beyond these no sheet, bench or shop is meant; the procedure's and the bench's own limits are
// narrower.
constexpr double kLongestMm = 100'000;
constexpr double kGreatestDragN = 100'000;
constexpr double kColdestC = -40;
constexpr double kWarmestC = 60;
constexpr double kHottestPlateC = 400;

/// In mm as it was written in the file, without the noise of metres.
double clean(Length length) {
    return std::round(inMicrometres(length)) / 1e3;
}

Result<void> readThickness(const PlanWords& words, PlanInput& input) {
    if (!words.thickness) {
        return {};
    }
    const Procedure& procedure = input.procedure.procedure;
    const auto mm = parseNumber(
        "--thickness", *words.thickness,
        {clean(procedure.thinnest()), clean(procedure.thickest()), "mm (" + procedure.id + ")"});
    if (!mm) {
        return tl::unexpected(mm.error());
    }
    input.request.thickness = millimetres(*mm);
    return {};
}

Result<void> readLengths(const PlanWords& words, PlanInput& input) {
    if (words.lengths.empty()) {
        return {};
    }
    const bool hasBench = input.bench.has_value();
    const Allowed allowed{
        1, hasBench ? clean(input.bench->bench.longestSeam) : kLongestMm,
        hasBench ? "mm (bench " + input.bench->bench.id + ")" : "mm"};
    input.request.lengths.clear();
    for (const std::string& word : words.lengths) {
        const auto mm = parseNumber("--length", word, allowed);
        if (!mm) {
            return tl::unexpected(mm.error());
        }
        input.request.lengths.push_back(millimetres(*mm));
    }
    return {};
}

Result<void> readSurroundings(const PlanWords& words, PlanInput& input) {
    if (words.drag) {
        const auto force = parseNumber("--drag", *words.drag, {0, kGreatestDragN, "N"});
        if (!force) {
            return tl::unexpected(force.error());
        }
        input.request.drag = newtons(*force);
    }
    if (words.ambient) {
        const auto ambient = parseNumber("--ambient", *words.ambient, {kColdestC, kWarmestC, "°C"});
        if (!ambient) {
            return tl::unexpected(ambient.error());
        }
        input.request.ambient = Temperature::celsius(*ambient);
    }
    if (words.plate) {
        const auto& window = input.procedure.procedure.plate;
        const double low = window ? std::round(window->min.inCelsius() * 1e3) / 1e3 : 0;
        const double high =
            window ? std::round(window->max.inCelsius() * 1e3) / 1e3 : kHottestPlateC;
        const auto plate = parseNumber("--plate", *words.plate, {low, high, "°C"});
        if (!plate) {
            return tl::unexpected(plate.error());
        }
        input.request.plateTarget = Temperature::celsius(*plate);
    }
    return {};
}

Result<void> readCooling(const PlanWords& words, PlanInput& input) {
    if (!words.cooling) {
        return {};
    }
    for (const BandRule rule : {BandRule::Line, BandRule::BandEnd}) {
        if (*words.cooling == toString(rule)) {
            input.request.coolingRule = rule;
            return {};
        }
    }
    return fail(
        ErrorCode::Malformed,
        "--cooling " + inQuotes(*words.cooling) + " is not a rule; allowed: line, band-end");
}

} // namespace

void addPlanOptions(CLI::App& command, PlanWords& words, bool required) {
    command.add_option("--procedure", words.procedure, "a procedure's ID or a file: its table")
        ->required(required);
    command
        .add_option("--thickness", words.thickness, "MM of the sheet, inside the procedure's range")
        ->required(required);
    command
        .add_option(
            "--length", words.lengths,
            "MM of the seam, 1 to the bench's longest; again for each further seam in one clamping")
        ->required(required)
        ->expected(1)
        ->take_all();
    command.add_option("--bench", words.bench, "a bench FILE: its springs give the readings");
    command.add_option("--drag", words.drag, "N that move the table with this sheet, 0 to 100000");
    command.add_option("--ambient", words.ambient, "°C in the shop, -40 to 60");
    command.add_option(
        "--plate", words.plate, "°C of the plate to aim at, inside the procedure's window");
    command.add_option("--cooling", words.cooling, "line or band-end: how a table's band is read");
    command.add_flag(
        "--half-cooling", words.halfCooling,
        "half the cooling time, where the procedure allows it; needs the next two");
    command.add_flag("--workshop", words.workshop, "the joint is made in workshop conditions");
    command.add_flag(
        "--hardly-loaded", words.hardlyLoaded,
        "the joint is hardly loaded when it is taken out and stored");
}

Result<PlanInput> readPlanInput(const PlanWords& words, const PlanInput* base) {
    PlanInput input;
    if (base != nullptr) {
        input = *base;
    }
    if (words.procedure) {
        auto procedure = findProcedure(*words.procedure, words.log);
        if (!procedure) {
            Error error = procedure.error();
            error.detail = "--procedure " + error.detail;
            return tl::unexpected(error);
        }
        input.procedure = std::move(*procedure);
        input.request.ambient = input.procedure.procedure.referenceAmbient;
    }
    if (words.bench) {
        auto bench = readBenchFile(*words.bench);
        if (!bench) {
            Error error = bench.error();
            error.detail = "--bench " + error.detail;
            return tl::unexpected(error);
        }
        input.bench = std::move(*bench);
    }
    if (words.halfCooling) {
        input.request.halfCooling = HalfCooling{words.workshop, words.hardlyLoaded};
    } else if (words.workshop || words.hardlyLoaded) {
        return fail(
            ErrorCode::Malformed,
            std::string(words.workshop ? "--workshop" : "--hardly-loaded") +
                " stands without --half-cooling; allowed: the two conditions beside it");
    }
    for (const auto read : {readThickness, readLengths, readSurroundings, readCooling}) {
        const auto done = read(words, input);
        if (!done) {
            return tl::unexpected(done.error());
        }
    }
    return input;
}

} // namespace seamclock
