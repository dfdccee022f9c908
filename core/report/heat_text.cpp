#include "core/report/heat_text.h"

#include "core/estimate/heat_words.h"
#include "core/report/plain_text.h"

#include <fmt/format.h>
#include <vector>

namespace seamclock {
namespace {

using TextTable = std::vector<std::vector<std::string>>;

std::string unitOf(const WeldPlan& plan) {
    return plan.scale ? onOneLine(plan.scale->unit) : "";
}

TextTable
rowsOf(const HeatEstimate& estimate, const WeldPlan& plan, UnitSystem units, HeatShown shown) {
    TextTable rows;
    for (const HeatLine& line : heatLines(estimate, unitOf(plan), units, shown)) {
        rows.push_back({line.what, line.value});
    }
    return rows;
}

std::string block(const char* heading, const TextTable& rows, const HeatEstimate& estimate) {
    return fmt::format("\n{}\n", heading) + aligned(rows) + "  " +
           wrapped(heatBasis(estimate) + ".", 2) + "\n";
}

} // namespace

std::string cardHeatText(const HeatEstimate& estimate, const WeldPlan& plan, UnitSystem units) {
    TextTable rows = rowsOf(estimate, plan, units, HeatShown::WithoutWeldPlane);
    const HeatNumbers& numbers = estimate.numbers;
    if (numbers.readingFallUnits && plan.scale) {
        const double left = static_cast<double>(plan.scale->joining.setMilli) / 1e3 -
                            numbers.readingFallUnits->likely;
        std::string fall = fmt::format("{:.1f} {}", left, unitOf(plan));
        if (left < static_cast<double>(plan.scale->joining.lowMilli) / 1e3) {
            fall += fmt::format(
                ", below the band's {}: read the scale and top up in the first third",
                fromThousandths(plan.scale->joining.lowMilli));
        }
        rows.push_back({"to about", fall});
    }
    if (plan.cooling && !plan.cooling->rechecks.empty()) {
        std::string times;
        for (const Milliseconds at : plan.cooling->rechecks) {
            times += (times.empty() ? "" : " and ") + spokenTime(at);
        }
        rows.push_back({"re-checks", "read the scale at " + times + " after the lock"});
    }
    if (numbers.sheetLossMm) {
        HeatRange twice = *numbers.sheetLossMm;
        twice = {2 * twice.low, 2 * twice.likely, 2 * twice.high};
        rows.push_back(
            {"cut allowance", fmt::format(
                                  "what a sheet loses; with a seam at both ends twice that, {}",
                                  heatRangeText(twice, HeatQuantity::Millimetres, units))});
    }
    return block("Estimate: what this plan will do", rows, estimate);
}

std::string recordHeatText(const HeatEstimate& estimate, const WeldPlan& plan) {
    return block(
        "Estimate: what this weld did", rowsOf(estimate, plan, UnitSystem::Metric, HeatShown::All),
        estimate);
}

} // namespace seamclock
