#include "core/report/weld_card.h"

#include "core/report/plain_text.h"
#include "core/report/wording.h"

#include <cmath>
#include <fmt/format.h>
#include <map>
#include <utility>

namespace seamclock {
namespace {

using Rows = std::vector<std::vector<std::string>>;

constexpr const char* kNoValue = "no value";

std::string mm(std::int64_t um) {
    return fromThousandths(um) + " mm";
}

std::string celsius(std::int64_t milli) {
    return fromThousandths(milli) + " °C";
}

std::string pressure(std::int64_t pa) {
    return fromMillionths(pa, 4) + " N/mm²";
}

std::string band(const WeldPlan::ScalePlan& scale, const ReadingBand& reading) {
    return fmt::format(
        "{} {} ({} to {})", fromThousandths(reading.setMilli), scale.unit,
        fromThousandths(reading.lowMilli), fromThousandths(reading.highMilli));
}

std::string reading(const WeldPlan& plan, ReadingBand WeldPlan::ScalePlan::*which) {
    return plan.scale ? band(*plan.scale, (*plan.scale).*which) : "-";
}

Rows phaseRows(const WeldPlan& plan) {
    Rows rows = {{"", "scale: set (band)", "time"}};
    std::string until = plan.beadMinUm
                            ? "until a " + mm(*plan.beadMinUm) +
                                  " bead stands all along, on both sheets, top and bottom"
                            : "until the bead stands: its height has no value";
    if (plan.alignLate) {
        until += plan.alignMedian ? "; median " + spokenTime(*plan.alignMedian) + "," : ";";
        until += " slow from " + spokenTime(*plan.alignLate);
    }
    rows.push_back({"Alignment", reading(plan, &WeldPlan::ScalePlan::alignment), until});
    rows.push_back(
        {"Soak", reading(plan, &WeldPlan::ScalePlan::soak),
         plan.soak ? fmt::format(
                         "{} ({} to {}), from the moment the soak reading is reached",
                         spokenTime(plan.soak->target), spokenTime(plan.soak->low),
                         spokenTime(plan.soak->high, Seconds::Down))
                   : kNoValue});
    rows.push_back(
        {"Changeover", "-",
         plan.changeoverMax ? "at most " + spokenTime(*plan.changeoverMax, Seconds::Down)
                            : kNoValue});
    rows.push_back(
        {"Build-up", reading(plan, &WeldPlan::ScalePlan::joining),
         plan.buildUp
             ? fmt::format(
                   "{} ({} to {}), evenly, then lock the wheel", spokenTime(plan.buildUp->target),
                   spokenTime(plan.buildUp->low), spokenTime(plan.buildUp->high, Seconds::Down))
             : kNoValue});
    std::string cooling = kNoValue;
    if (plan.cooling) {
        cooling = "at least " + spokenTime(plan.cooling->atLeast) + " from the lock";
        for (std::size_t i = 0; i < plan.cooling->rechecks.size(); ++i) {
            cooling +=
                (i == 0 ? "; read the scale at " : " and ") + spokenTime(plan.cooling->rechecks[i]);
        }
        if (plan.halfCooling) {
            cooling += "; cut to half: full load only after the whole time";
        }
    }
    rows.push_back({"Cooling", reading(plan, &WeldPlan::ScalePlan::joining), cooling});
    return rows;
}

/// The exact reading for a force, in the scale's unit.
std::string exactReading(const SpringScale& scale, double force) {
    const double milli = static_cast<double>(scale.zeroMilli) +
                         (force + inNewtons(scale.preload)) / inNewtons(scale.rate()) * 1000;
    return fromThousandths(std::llround(milli), 2);
}

std::string sum(const WeldPlan& plan, std::int64_t pa, std::int64_t mn) {
    return fmt::format(
        "{} × {} × {} = {} N", pressure(pa), mm(plan.thicknessUm), mm(plan.lengthUm),
        fromThousandths(mn, 1));
}

struct Arithmetic {
    std::string name;
    std::int64_t pa;
    std::int64_t mn;
    int dragSign;
    std::int64_t setMilli;
};

std::string inOneLine(const WeldPlan& plan, const Bench* bench, const Arithmetic& a) {
    std::string line = sum(plan, a.pa, a.mn);
    if (bench == nullptr || !plan.scale) {
        return line;
    }
    const SpringScale& scale = bench->scale;
    const double drag = static_cast<double>(a.dragSign * plan.dragMn) / 1000;
    if (plan.dragMn != 0) {
        line += fmt::format(
            ", {} drag {} N", a.dragSign < 0 ? "−" : "+", fromThousandths(plan.dragMn, 1));
    }
    if (scale.preload != Force()) {
        line += fmt::format(
            ", {} preload {} N", scale.preload < Force() ? "−" : "+",
            fromThousandths(std::llround(std::abs(inNewtons(scale.preload)) * 1000), 1));
    }
    line += fmt::format(
        ", ÷ {} N/{}", fromThousandths(std::llround(inNewtons(scale.rate()) * 1000), 2),
        scale.unit);
    if (scale.zeroMilli != 0) {
        line += fmt::format(", zero at {}", fromThousandths(scale.zeroMilli));
    }
    return line + fmt::format(
                      " = {} {}, set {}",
                      exactReading(scale, static_cast<double>(a.mn) / 1000 + drag), scale.unit,
                      fromThousandths(a.setMilli));
}

Rows arithmeticRows(const WeldPlan& plan, const Bench* bench) {
    Rows rows;
    const auto add = [&](const char* name, std::optional<std::int64_t> pa,
                         std::optional<std::int64_t> mn, int dragSign,
                         ReadingBand WeldPlan::ScalePlan::*which) {
        if (!pa || !mn) {
            return;
        }
        const std::int64_t set = plan.scale ? ((*plan.scale).*which).setMilli : 0;
        rows.push_back({name, inOneLine(plan, bench, {name, *pa, *mn, dragSign, set})});
    };
    if (plan.alignmentPa && plan.alignmentPa == plan.joiningPa) {
        add("Align and join", plan.alignmentPa, plan.alignmentMn, 1, &WeldPlan::ScalePlan::joining);
    } else {
        add("Align", plan.alignmentPa, plan.alignmentMn, 1, &WeldPlan::ScalePlan::alignment);
        add("Join", plan.joiningPa, plan.joiningMn, 1, &WeldPlan::ScalePlan::joining);
    }
    add("Soak, at most", plan.soakMaxPa, plan.soakMaxMn, -1, &WeldPlan::ScalePlan::soak);
    return rows;
}

std::string bulleted(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines) {
        text += "  - " + wrapped(line, 4) + "\n";
    }
    return text;
}

} // namespace

std::string weldCard(const WeldPlan& plan, const Bench* bench) {
    std::string text = headline(fmt::format(
        "Weld card: {} {} × {} mm", onOneLine(plan.material), fromThousandths(plan.thicknessUm),
        fromThousandths(plan.lengthUm)));
    Rows head = {
        {"Procedure", onOneLine(plan.procedure + ", edition " + plan.edition)},
        {"Bench", plan.bench.empty() ? "none given: no readings"
                  : bench != nullptr && bench->name != plan.bench
                      ? onOneLine(bench->name + " (" + plan.bench + ")")
                      : onOneLine(plan.bench)},
        {"Shop", celsius(plan.ambientMc)},
        {"Drag", fromThousandths(plan.dragMn, 1) + " N with this sheet"},
        {"Cooling", ruleInWords(plan.coolingRule)}};
    text += aligned(head) + "\n";
    if (!plan.isComplete()) {
        std::string lacking;
        for (const std::string& name : plan.missing) {
            lacking += (lacking.empty() ? "" : ", ") + codeInWords(name);
        }
        text += wrapped("Not ready to weld. No value for: " + lacking + ".", 0) + "\n\n";
    }
    text += aligned(
        {{"Plate", plan.plate
                       ? fmt::format(
                             "{} ({} to {}), read on its face", celsius(plan.plate->targetMc),
                             celsius(plan.plate->minMc), celsius(plan.plate->maxMc))
                       : kNoValue},
         {"Gap", fmt::format(
                     "{}, then {} for the second sheet; edges meet to {}, faces in line to {}",
                     mm(plan.gapUm), mm(plan.clampingGapUm), mm(plan.edgeGapMaxUm),
                     mm(plan.misalignmentMaxUm))}});
    text += "\n" + aligned(phaseRows(plan));
    const Rows arithmetic = arithmeticRows(plan, bench);
    if (!arithmetic.empty()) {
        text += "\nHow the readings come about\n" + aligned(arithmetic);
    }
    if (!plan.checks.empty()) {
        std::string checks;
        for (const std::string& check : plan.checks) {
            checks += (checks.empty() ? "" : "; ") + codeInWords(check);
        }
        text += "\nChecks before alignment\n  " + wrapped(checks + ".", 2) + "\n";
    }
    if (!plan.releaseOrder.empty()) {
        std::string order;
        for (const std::string& step : plan.releaseOrder) {
            order += (order.empty() ? "" : "; ") + codeInWords(step);
        }
        text += "\nRelease, in this order\n  " + wrapped(order + ".", 2) + "\n";
    }
    if (!plan.warnings.empty()) {
        std::vector<std::string> lines;
        lines.reserve(plan.warnings.size());
        for (const PlanWarning& warning : plan.warnings) {
            lines.push_back(onOneLine(warning.text));
        }
        text += "\nKnow before you start\n" + bulleted(lines);
    }
    if (!plan.sources.empty()) {
        text += "\nWhere the values come from\n" + bulleted(sourcesInWords(plan));
    }
    return text;
}

} // namespace seamclock
