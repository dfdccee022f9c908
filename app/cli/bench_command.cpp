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
    const LineFit& line = fit.line;
    std::string text = headline("Calibration of a spring scale");
    text += aligned(
        {{"Points",
          fmt::format(
              "{}, from {} to {} on the scale; no reading outside is planned with",
              fit.points.size(), rounded(fit.lowestReading), rounded(fit.highestReading))},
         {"Rate",
          fmt::format(
              "{} N for one unit of the scale, ± {} (standard error; {} %)", rounded(fit.rate),
              rounded(line.slopeSd), rounded(fit.rateUncertaintyPercent))},
         {"Zero",
          fmt::format(
              "{} on the scale, ± {} (standard error)", rounded(fit.zero), rounded(fit.zeroSd))},
         {"95 %", fmt::format(
                      "the rate lies in {} ± {}, zero in {} ± {} (Student's t {})",
                      rounded(fit.rate), rounded(line.t95 * line.slopeSd), rounded(fit.zero),
                      rounded(line.t95 * fit.zeroSd), rounded(line.t95))},
         {"Scatter",
          fmt::format("{} N about the line (standard deviation)", rounded(line.residualSd))},
         {"Straight", fmt::format(
                          "the worst point is {} N off; allowed {} N, 2 % of the largest force "
                          "(our judgement)",
                          rounded(fit.worstResidual), rounded(allowedResidual(fit)))}});
    std::vector<std::vector<std::string>> rows = {
        {"point", "reading", "force", "off the line", "line ± (95 %)", "a point ± (95 %)"}};
    for (std::size_t i = 0; i < fit.points.size(); ++i) {
        const CalibrationPoint& point = fit.points[i];
        rows.push_back(
            {std::to_string(i + 1), rounded(point.reading), rounded(point.force) + " N",
             rounded(line.residuals[i]) + " N", rounded(line.confidenceAt(point.reading)) + " N",
             rounded(line.predictionAt(point.reading)) + " N"});
    }
    return text + "\n" + aligned(rows);
}

std::string forceText(const Bench& bench) {
    std::string text = bench.drive ? codeInWords(std::string(toString(*bench.drive))) : "";
    const ForceLimits& limits = bench.forceLimits;
    const auto add = [&text](const char* word, const std::optional<Force>& limit) {
        if (limit) {
            text += (text.empty() ? "" : ", ") + std::string(word) + " " +
                    rounded(inNewtons(*limit)) + " N";
        }
    };
    add("at least", limits.min);
    add("at most", limits.max);
    return text.empty() ? "no limits given" : text;
}

std::string calibrationText(const CalibrationNote& note) {
    std::string text = fmt::format(
        "{}, due {}, rate ± {} %", note.doneOn, note.dueOn, rounded(note.rateUncertaintyPercent));
    if (note.fit) {
        text += fmt::format(
            ", {} points from {} to {}, load cell {}", note.points.size(),
            rounded(note.fit->lowestReading), rounded(note.fit->highestReading), note.loadCell);
    }
    return onOneLine(text);
}

std::string shownBench(const Bench& bench) {
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
        {"Force", forceText(bench)},
        {"Springs",
         springs + " N/" + onOneLine(scale.unit) +
             (scale.preload == Force() ? ""
                                       : ", preload " + rounded(inNewtons(scale.preload)) + " N")},
        {"Scale",
         fmt::format(
             "{}{} to {} {}, divisions of {}{}", scale.count == 2 ? "two, " : "",
             fromThousandths(scale.zeroMilli), fromThousandths(scale.maxMilli),
             onOneLine(scale.unit), fromThousandths(scale.divisionMilli),
             scale.ratePerMm ? "; " + rounded(inNewtons(*scale.ratePerMm)) + " N/mm of travel"
                             : "")},
        {"Gap", fmt::format(
                    "{} × thickness, at least {} mm{}; × {} for the second sheet",
                    rounded(gap.factor), rounded(inMillimetres(gap.floor)),
                    gap.cap ? ", at most " + rounded(inMillimetres(*gap.cap)) + " mm" : "",
                    rounded(gap.clampingFactor))},
        {"Edges", "meet to " + rounded(inMillimetres(bench.edgeGapMax)) + " mm"},
        {"Release", order}};
    if (bench.calibration) {
        rows.push_back({"Calibration", calibrationText(*bench.calibration)});
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
    terminal.write(call.json ? benchJson(*bench) : shownBench(bench->bench));
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
