#include "core/report/weld_card.h"

#include "core/procedure/fume.h"
#include "core/report/heat_text.h"
#include "core/report/plain_text.h"
#include "core/report/wording.h"

#include <cmath>
#include <fmt/format.h>
#include <map>
#include <utility>

namespace seamclock {
namespace {

using TextRows = std::vector<std::vector<std::string>>;

constexpr const char* kNoValue = "no value";

/// What a card is made from, and its lengths, forces and degrees in the reader's units.
struct Card {
    const WeldPlan& plan;
    const Bench* bench;
    UnitSystem units;

    std::string length(std::int64_t um) const { return lengthIn(units, um).text(); }
    std::string force(std::int64_t mN) const { return forceIn(units, mN).text(); }
    std::string pressure(std::int64_t pa) const { return pressureIn(units, pa).text(); }
    std::string degrees(std::int64_t mC) const { return temperatureIn(units, mC).text(); }
};

std::string band(const WeldPlan::ScalePlan& scale, const ReadingBand& reading) {
    return fmt::format(
        "{} {} ({} to {})", fromThousandths(reading.setMilli), scale.unit,
        fromThousandths(reading.lowMilli), fromThousandths(reading.highMilli));
}

std::string reading(const WeldPlan& plan, ReadingBand WeldPlan::ScalePlan::*which) {
    return plan.scale ? band(*plan.scale, (*plan.scale).*which) : "-";
}

TextRows phaseRows(const Card& card) {
    const WeldPlan& plan = card.plan;
    TextRows rows = {{"", "scale: set (band)", "time"}};
    std::string until = plan.beadMinUm
                            ? "until a " + card.length(*plan.beadMinUm) +
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

struct Arithmetic {
    std::string name;
    std::int64_t pa;
    std::int64_t mn;
    int dragSign;
    std::int64_t setMilli;
};

std::string sum(const Card& card, const Arithmetic& a) {
    std::string line = fmt::format(
        "{} × {} × {} = {}", card.pressure(a.pa), card.length(card.plan.thicknessUm),
        card.length(card.plan.lengthUm), card.force(a.mn));
    if (card.plan.scale && card.plan.scale->unit == "kgf") {
        line += " (" + kilogramsForceOf(a.mn).text() + ")";
    }
    return line;
}

std::string inOneLine(const Card& card, const Arithmetic& a) {
    const WeldPlan& plan = card.plan;
    std::string line = sum(card, a);
    if (card.bench == nullptr || !plan.scale) {
        return line;
    }
    const SpringScale& scale = card.bench->scale;
    const double drag = static_cast<double>(a.dragSign * plan.dragMn) / 1000;
    if (plan.dragMn != 0) {
        line += fmt::format(", {} drag {}", a.dragSign < 0 ? "−" : "+", card.force(plan.dragMn));
    }
    if (scale.preload != Force()) {
        line += fmt::format(
            ", {} preload {}", scale.preload < Force() ? "−" : "+",
            card.force(std::llround(std::abs(inNewtons(scale.preload)) * 1000)));
    }
    line +=
        ", ÷ " +
        rateIn(card.units, std::llround(inNewtons(scale.rate()) * 1000), plan.scale->unit).text();
    if (scale.zeroMilli != 0) {
        line += fmt::format(", zero at {}", fromThousandths(scale.zeroMilli));
    }
    return line + fmt::format(
                      " = {} {}, set {}",
                      exactReading(scale, static_cast<double>(a.mn) / 1000 + drag), scale.unit,
                      fromThousandths(a.setMilli));
}

TextRows arithmeticRows(const Card& card) {
    const WeldPlan& plan = card.plan;
    TextRows rows;
    const auto add = [&](const char* name, std::optional<std::int64_t> pa,
                         std::optional<std::int64_t> mn, int dragSign,
                         ReadingBand WeldPlan::ScalePlan::*which) {
        if (!pa || !mn) {
            return;
        }
        const std::int64_t set = plan.scale ? ((*plan.scale).*which).setMilli : 0;
        rows.push_back({name, inOneLine(card, {name, *pa, *mn, dragSign, set})});
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

std::string named(const std::vector<std::string>& codes) {
    std::string names;
    for (const std::string& code : codes) {
        names += (names.empty() ? "" : ", ") + codeInWords(code);
    }
    return names;
}

/// When the scale was calibrated, and how well its force is known where it will be set.
std::string calibrationInWords(const Card& card) {
    if (!card.bench->calibration) {
        return "no calibration on record";
    }
    const CalibrationNote& note = *card.bench->calibration;
    std::string text = "calibrated " + note.doneOn + ", due " + note.dueOn;
    if (card.plan.scale) {
        const std::int64_t set = card.plan.scale->joining.setMilli;
        if (const auto band = calibrationBand(*card.bench, static_cast<double>(set))) {
            text += fmt::format(
                "; ± {} at {} {} (95 %)", card.force(std::llround(inNewtons(*band) * 1000)),
                fromThousandths(set), card.plan.scale->unit);
        }
    }
    return onOneLine(text);
}

std::string fumeCaution(const std::string& material) {
    switch (fumeOf(material)) {
    case Fume::None:
        return {};
    case Fume::HydrogenChloride:
        return "Too hot, it gives off hydrogen chloride: extraction on.";
    case Fume::Fluorine:
        return "Too hot, it gives off toxic acid gas: extraction on, do not smoke.";
    }
    return {};
}

} // namespace

std::string
weldCard(const WeldPlan& plan, const Bench* bench, UnitSystem units, const HeatEstimate* heat) {
    const Card card{plan, bench, units};
    std::string text = headline(fmt::format(
        "Weld card: {} {} × {}", onOneLine(plan.material), card.length(plan.thicknessUm),
        card.length(plan.lengthUm)));
    TextRows head = {
        {"Procedure", onOneLine(plan.procedure + ", edition " + plan.edition)},
        {"Bench", plan.bench.empty() ? "none given: no readings"
                  : bench != nullptr && bench->name != plan.bench
                      ? onOneLine(bench->name + " (" + plan.bench + ")")
                      : onOneLine(plan.bench)},
        {"Shop", card.degrees(plan.ambientMc)},
        {"Drag", card.force(plan.dragMn) + " with this sheet"},
        {"Cooling", ruleInWords(plan.coolingRule)}};
    if (bench != nullptr) {
        head.push_back({"Scale", calibrationInWords(card)});
    }
    text += aligned(head) + "\n";
    if (!plan.missing.empty()) {
        text +=
            wrapped("Not ready to weld. No value for: " + named(plan.missing) + ".", 0) + "\n\n";
    }
    if (!plan.unattested.empty()) {
        text += wrapped(
                    "Not ready to weld: nobody has attested " + named(plan.unattested) +
                        ", filled in by the shop.",
                    0) +
                "\n\n";
    }
    text += aligned(
        {{"Plate", plan.plate
                       ? fmt::format(
                             "{} ({} to {}), read on its face", card.degrees(plan.plate->targetMc),
                             card.degrees(plan.plate->minMc), card.degrees(plan.plate->maxMc))
                       : kNoValue},
         {"Gap", fmt::format(
                     "{}, then {} for the second sheet; edges meet to {}, faces in line to {}",
                     card.length(plan.gapUm), card.length(plan.clampingGapUm),
                     card.length(plan.edgeGapMaxUm), card.length(plan.misalignmentMaxUm))}});
    text += "\n" + aligned(phaseRows(card));
    const TextRows arithmetic = arithmeticRows(card);
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
    const std::string fume = fumeCaution(plan.material);
    if (!plan.warnings.empty() || !fume.empty()) {
        std::vector<std::string> lines;
        lines.reserve(plan.warnings.size() + 1);
        if (!fume.empty()) {
            lines.push_back(fume);
        }
        for (const PlanWarning& warning : plan.warnings) {
            lines.push_back(sentenceIn(
                units, onOneLine(warning.text),
                {plan.scale ? std::string_view(plan.scale->unit) : "", warning.unit == "milli"}));
        }
        text += "\nKnow before you start\n" + bulleted(lines);
    }
    if (heat != nullptr) {
        text += cardHeatText(*heat, plan, units);
    }
    if (!plan.sources.empty()) {
        text += "\nWhere the values come from\n" + bulleted(sourcesInWords(plan));
    }
    return text;
}

} // namespace seamclock
