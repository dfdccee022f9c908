// bench: a spring scale's calibration, and the files that describe benches.
#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/numbers.h"
#include "app/cli/output_json.h"
#include "core/base/plain_number.h"
#include "core/bench/calibration.h"
#include "core/report/plain_text.h"
#include "core/report/wording.h"

#include <CLI/CLI.hpp>
#include <cmath>
#include <fmt/format.h>
#include <memory>

namespace seamclock {
namespace {

struct BenchCall {
    std::string file;
    bool json = false;
};

std::string rounded(double value) {
    return plainNumber(std::round(value * 1e3) / 1e3);
}

std::string fitText(const ScaleFit& fit) {
    std::string text = headline("Calibration of a spring scale");
    text += aligned(
        {{"Points", std::to_string(fit.points)},
         {"Rate", fmt::format(
                      "{} N for one unit of the scale, ± {} % (one standard deviation)",
                      rounded(fit.rate), rounded(fit.rateUncertaintyPercent))},
         {"Zero", rounded(fit.zero) + " on the scale"},
         {"Scatter", fmt::format(
                         "{} N about the line; the worst point is {} N off",
                         rounded(fit.line.residualSd), rounded(fit.worstResidual))}});
    std::vector<std::vector<std::string>> rows = {{"point", "off the line"}};
    for (std::size_t i = 0; i < fit.line.residuals.size(); ++i) {
        rows.push_back({std::to_string(i + 1), rounded(fit.line.residuals[i]) + " N"});
    }
    return text + "\n" + aligned(rows);
}

std::string benchText(const Bench& bench) {
    const SpringScale& scale = bench.scale;
    std::string springs;
    for (const Force& rate : scale.ratePerUnit) {
        springs += (springs.empty() ? "" : " + ") + rounded(inNewtons(rate));
    }
    std::string order;
    for (const std::string& step : bench.releaseOrder) {
        order += (order.empty() ? "" : "; ") + codeInWords(step);
    }
    const GapRule& gap = bench.gapRule;
    std::vector<std::vector<std::string>> rows = {
        {"Id", onOneLine(bench.id)},
        {"Seam", "up to " + rounded(inMillimetres(bench.longestSeam)) + " mm"},
        {"Sheet", rounded(inMillimetres(bench.thinnestSheet)) + " to " +
                      rounded(inMillimetres(bench.thickestSheet)) + " mm"},
        {"Springs",
         springs + " N/" + onOneLine(scale.unit) +
             (scale.preload == Force() ? ""
                                       : ", preload " + rounded(inNewtons(scale.preload)) + " N")},
        {"Scale", fmt::format(
                      "{} to {} {}, divisions of {}", fromThousandths(scale.zeroMilli),
                      fromThousandths(scale.maxMilli), onOneLine(scale.unit),
                      fromThousandths(scale.divisionMilli))},
        {"Gap", fmt::format(
                    "{} × thickness, at least {} mm{}; × {} for the second sheet",
                    rounded(gap.factor), rounded(inMillimetres(gap.floor)),
                    gap.cap ? ", at most " + rounded(inMillimetres(*gap.cap)) + " mm" : "",
                    rounded(gap.clampingFactor))},
        {"Edges", "meet to " + rounded(inMillimetres(bench.edgeGapMax)) + " mm"},
        {"Release", order}};
    if (bench.calibration) {
        rows.push_back(
            {"Calibration",
             onOneLine(fmt::format(
                 "{}, due {}, rate ± {} %", bench.calibration->doneOn, bench.calibration->dueOn,
                 rounded(bench.calibration->rateUncertaintyPercent)))});
    }
    return headline(onOneLine(bench.name)) + aligned(rows);
}

Result<int> fitFile(const BenchCall& call, Terminal& terminal) {
    const auto text = readText(call.file);
    if (!text) {
        return tl::unexpected(text.error());
    }
    const auto fit = fitScale(call.file, *text);
    if (!fit) {
        return tl::unexpected(fit.error());
    }
    terminal.write(call.json ? scaleFitJson(*fit) : fitText(*fit));
    return 0;
}

Result<int> showBench(const BenchCall& call, Terminal& terminal) {
    const auto bench = readBenchFile(call.file);
    if (!bench) {
        return tl::unexpected(bench.error());
    }
    terminal.write(call.json ? benchJson(*bench) : benchText(bench->bench));
    return 0;
}

Result<int> printTemplate(Terminal& terminal) {
    std::string text = benchTemplate();
    text += text.empty() || text.back() != '\n' ? "\n" : "";
    terminal.write(text);
    return 0;
}

} // namespace

void addBench(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<BenchCall>();
    CLI::App* bench = root.add_subcommand("bench", "Benches: their files and their spring scales.");
    bench->require_subcommand(0, 1);
    CLI::App* fit = bench->add_subcommand(
        "fit", "A spring scale's calibration from readings and forces (CSV: reading,force_N).");
    fit->add_option("FILE", call->file, "a CSV file with the header reading,force_N")->required();
    CLI::App* show =
        bench->add_subcommand("show", "What a bench file says, and whether it is sound.");
    show->add_option("FILE", call->file, "a bench's JSON file")->required();
    CLI::App* blank = bench->add_subcommand("template", "A bench file to fill in, explained.");
    for (CLI::App* words : {fit, show, blank}) {
        words->add_flag("--json", call->json, "as JSON");
    }
    commands.push_back({fit, [call, &terminal] { return fitFile(*call, terminal); }});
    commands.push_back({show, [call, &terminal] { return showBench(*call, terminal); }});
    commands.push_back({blank, [&terminal] { return printTemplate(terminal); }});
}

} // namespace seamclock
