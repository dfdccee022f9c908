// charts and due: how the shop is doing, and what will soon be due.
#include "app/cli/bench_files.h"
#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/numbers.h"
#include "app/cli/shop_json.h"
#include "app/platform/boot_clock.h"
#include "core/base/plain_number.h"
#include "core/log/log_reader.h"
#include "core/report/plain_text.h"
#include "core/report/wording.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <memory>

namespace seamclock {
namespace {

constexpr std::size_t kMostShown = 5;      // findings of a chart in text
constexpr std::size_t kMostFindings = 100; // and in JSON, the newest

struct ChartsCall {
    std::string log;
    std::optional<std::string> measure;
    std::optional<std::string> thickness;
    MeasureFilter filter;
    bool points = false;
    bool json = false;
};

struct DueCall {
    std::optional<std::string> log;
    std::vector<std::string> benches;
    std::optional<std::string> days;
    std::optional<std::string> today;
    bool json = false;
};

std::string shown(double value) {
    return plainNumber(std::round(value * 1e2) / 1e2);
}

std::string signText(const ShopChart& chart, const ChartFinding& finding) {
    const std::string to = std::to_string(chart.numbers[finding.to]);
    const std::string joints =
        "joints " + std::to_string(chart.numbers[finding.from]) + " to " + to;
    const std::string value = shown(chart.values[finding.to]);
    const std::size_t count = finding.to - finding.from + 1;
    switch (finding.sign) {
    case ChartSign::AboveLimit:
        return "joint " + to + " is above the upper limit: " + value;
    case ChartSign::BelowLimit:
        return "joint " + to + " is below the lower limit: " + value;
    case ChartSign::RangeAboveLimit:
        return joints + " are further apart than the ranges' limit";
    case ChartSign::AboveMean:
        return joints + fmt::format(": {} in a row above the mean", count);
    case ChartSign::BelowMean:
        return joints + fmt::format(": {} in a row below the mean", count);
    case ChartSign::Rising:
        return joints + fmt::format(": {} in a row, each higher than the last", count);
    case ChartSign::Falling:
        return joints + fmt::format(": {} in a row, each lower than the last", count);
    }
    return "";
}

std::string chartText(const ShopChart& chart) {
    std::string text = headline(onOneLine(fmt::format(
        "{} [{}]: {}, {}, {}, {} mm", codeInWords(std::string(toString(chart.measure))),
        unitOf(chart.measure), chart.joints.bench, chart.joints.by, chart.joints.procedure,
        fromThousandths(chart.joints.thicknessUm))));
    if (!chart.limits) {
        return text + fmt::format("  {} joint: no limits yet\n", chart.values.size());
    }
    text += aligned(
        {{"Joints",
          fmt::format(
              "{}{}", chart.values.size(),
              chart.values.size() < kFirmLimits
                  ? fmt::format(", fewer than {}: the limits are provisional", kFirmLimits)
                  : "")},
         {"Mean", fmt::format(
                      "{}, limits {} to {}", shown(chart.limits->mean), shown(chart.limits->lower),
                      shown(chart.limits->upper))},
         {"Ranges", fmt::format(
                        "mean {}, limit {}", shown(chart.limits->meanRange),
                        shown(chart.limits->upperRange))}});
    const std::size_t left = chart.findings.size() - std::min(chart.findings.size(), kMostShown);
    for (std::size_t i = chart.findings.size(); i > left; --i) {
        text += wrapped("  " + signText(chart, chart.findings[i - 1]), 4) + "\n";
    }
    if (left > 0) {
        text += fmt::format("  and {} older ones\n", left);
    }
    if (chart.plateColdOrDirty) {
        text += wrapped(
                    "  Alignment takes longer than it did: often a cold or a dirty plate. Measure "
                    "it on its face, and wipe it.",
                    4) +
                "\n";
    }
    return text;
}

Result<int> showCharts(const ChartsCall& call, Terminal& terminal) {
    std::vector<JointMeasure> measures = chartedMeasures();
    if (call.measure) {
        const auto named = jointMeasureOf(*call.measure);
        if (!named || std::find(measures.begin(), measures.end(), *named) == measures.end()) {
            std::string allowed;
            for (const JointMeasure one : measures) {
                allowed += (allowed.empty() ? "" : ", ") + std::string(toString(one));
            }
            return fail(
                ErrorCode::Malformed,
                "--measure " + inQuotes(*call.measure) + " is not charted; allowed: " + allowed);
        }
        measures = {*named};
    }
    MeasureFilter filter = call.filter;
    for (const auto& [option, word] :
         {std::pair("--from", &filter.fromDay), std::pair("--to", &filter.toDay)}) {
        if (*word && !dayNumber(**word)) {
            return fail(
                ErrorCode::Malformed, std::string(option) + " " + inQuotes(**word) +
                                          " is not a date; allowed: 0000-01-01 to 9999-12-31");
        }
    }
    if (call.thickness) {
        const auto thickness = parseNumber("--thickness", *call.thickness, {0.1, 1'000, "mm"});
        if (!thickness) {
            return tl::unexpected(thickness.error());
        }
        filter.thicknessUm = std::llround(*thickness * 1e3);
    }
    auto reader = LogReader::open(call.log);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    const auto all = shopCharts(*reader, measures, filter);
    if (!all) {
        return tl::unexpected(all.error());
    }
    if (call.json) {
        terminal.write(chartsJson(call.log, *all, kMostFindings, call.points));
        return 0;
    }
    std::string text;
    for (const ShopChart& chart : *all) {
        text += (text.empty() ? "" : "\n") + chartText(chart);
    }
    terminal.write(text.empty() ? "no joint to chart\n" : text);
    return 0;
}

Result<DueFacts> dueFacts(const DueCall& call) {
    DueFacts facts;
    std::optional<LogReader> log;
    if (call.log) {
        auto reader = LogReader::open(*call.log);
        if (!reader) {
            return tl::unexpected(reader.error());
        }
        log.emplace(std::move(*reader));
        auto shelf = readShelf(*log);
        if (!shelf) {
            return tl::unexpected(shelf.error());
        }
        auto roster = readRoster(*log);
        if (!roster) {
            return tl::unexpected(roster.error());
        }
        facts.shelf = std::move(*shelf);
        facts.roster = std::move(*roster);
        const auto procedures = proceduresOf(call.log);
        if (!procedures) {
            return tl::unexpected(procedures.error());
        }
        for (const ProcedureDocument& one : *procedures) {
            facts.procedures.push_back(one.procedure);
        }
    }
    auto benches = benchesOf(call.benches, log ? &*log : nullptr);
    if (!benches) {
        return tl::unexpected(benches.error());
    }
    for (BenchDocument& one : *benches) {
        facts.benches.push_back(std::move(one.bench));
    }
    return facts;
}

std::string whenText(const DueItem& item) {
    if (item.date.empty()) {
        return item.kind == DueKind::Attestation ? "changed since" : "none is noted";
    }
    if (item.days < 0) {
        return fmt::format("{}: {} days ago", item.date, -item.days);
    }
    return item.days == 0 ? item.date + ": today"
                          : fmt::format("{}: in {} days", item.date, item.days);
}

Result<int> showDue(const DueCall& call, Terminal& terminal) {
    if (!call.log && call.benches.empty()) {
        return fail(
            ErrorCode::Missing, "neither a log nor a bench is named; allowed: --log FILE, --bench "
                                "FILE, or both");
    }
    const auto days =
        call.days ? parseInteger("--days", *call.days, 0, kMostDueDays) : Result<std::int64_t>(30);
    if (!days) {
        return tl::unexpected(days.error());
    }
    if (call.today && !dayNumber(*call.today)) {
        return fail(
            ErrorCode::Malformed, "--today " + inQuotes(*call.today) +
                                      " is not a date; allowed: 0000-01-01 to 9999-12-31");
    }
    const auto clock = BootClock::make();
    if (!clock) {
        return tl::unexpected(clock.error());
    }
    const Instant now = clock->now();
    const std::string today = call.today.value_or(toIsoDate(now.utc, now.offset));
    const auto facts = dueFacts(call);
    if (!facts) {
        return tl::unexpected(facts.error());
    }
    const auto items = dueWithin(*facts, today, *days);
    if (!items) {
        return tl::unexpected(items.error());
    }
    if (call.json) {
        terminal.write(dueJson(today, *days, *items));
        return 0;
    }
    if (items->empty()) {
        terminal.write(fmt::format("nothing is due by {} days from {}\n", *days, today));
        return 0;
    }
    std::vector<std::vector<std::string>> rows = {{"due", "what", "whose", "of"}};
    for (const DueItem& item : *items) {
        rows.push_back(
            {whenText(item), std::string(toString(item.kind)), onOneLine(item.name),
             onOneLine(item.what)});
    }
    terminal.write(aligned(rows));
    return 0;
}

} // namespace

void addCharts(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<ChartsCall>();
    CLI::App* charts = root.add_subcommand(
        "charts", "Control charts of joints that are alike: what changed in the shop.");
    charts->add_option("--log", call->log, "the log's FILE")->required();
    charts->add_option("--measure", call->measure, "changeover, alignment, plate or drift (all)");
    charts->add_option("--bench", call->filter.bench, "only of that bench, by its id");
    charts->add_option("--by", call->filter.by, "only opened by that person:ID");
    charts->add_option("--procedure", call->filter.procedure, "only of that procedure, by its id");
    charts->add_option("--thickness", call->thickness, "only of that thickness in mm");
    charts->add_option("--from", call->filter.fromDay, "only of that local DATE or later");
    charts->add_option("--to", call->filter.toDay, "only of that local DATE or earlier");
    charts->add_flag("--points", call->points, "with every value (in JSON)");
    charts->add_flag("--json", call->json, "as JSON");
    commands.push_back({charts, [call, &terminal] { return showCharts(*call, terminal); }});

    auto dueCall = std::make_shared<DueCall>();
    CLI::App* due = root.add_subcommand(
        "due", "Calibrations, welders' certificates and attestations that are past or soon due.");
    due->add_option("--log", dueCall->log, "the log's FILE");
    due->add_option("--bench", dueCall->benches, "a bench's FILE, once for each")
        ->allow_extra_args(false);
    due->add_option("--days", dueCall->days, "within so many days, 0 to 3650 (30)");
    due->add_option("--today", dueCall->today, "another local DATE than today's");
    due->add_flag("--json", dueCall->json, "as JSON");
    commands.push_back({due, [dueCall, &terminal] { return showDue(*dueCall, terminal); }});
}

} // namespace seamclock
