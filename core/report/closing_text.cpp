#include "core/report/closing_text.h"

#include "core/report/plain_text.h"

#include <cmath>
#include <fmt/format.h>
#include <vector>

namespace seamclock {

namespace {

std::string tenths(double value) {
    return fromThousandths(std::llround(value * 10) * 100);
}

std::string inWords(const Spread& spread, const std::string& unit) {
    return fmt::format(
        "about {} {} ({} to {})", tenths(spread.likely), unit, tenths(spread.low),
        tenths(spread.high));
}

/// In tenths of a millimetre, or as many thousandths of an inch: an estimate is no finer.
std::string inWords(const Spread& mm, UnitSystem units, double times = 1) {
    const auto text = [units, times](double value) {
        return lengthIn(units, std::llround(value * times * 10) * 100).text();
    };
    return fmt::format("about {} ({} to {})", text(mm.likely), text(mm.low), text(mm.high));
}

} // namespace

std::string closingText(const WeldPlan& plan, const Bench* bench, UnitSystem units) {
    const auto estimate = estimateClosing(plan, bench);
    if (!estimate) {
        return "";
    }
    std::vector<std::vector<std::string>> rows{
        {"After the lock", "the tables close by " + inWords(estimate->closingMm, units)}};
    if (estimate->readingFall && plan.scale) {
        const double left =
            static_cast<double>(plan.scale->joining.setMilli) / 1e3 - estimate->readingFall->likely;
        std::string fall =
            "falls by " + inWords(*estimate->readingFall, onOneLine(plan.scale->unit));
        fall += fmt::format(", to about {}", tenths(left));
        if (left < static_cast<double>(plan.scale->joining.lowMilli) / 1e3) {
            fall += fmt::format(
                ", below the band's {}: read the scale and top up in the first third",
                fromThousandths(plan.scale->joining.lowMilli));
        }
        rows.push_back({"Reading", fall});
    }
    if (plan.cooling && !plan.cooling->rechecks.empty()) {
        std::string times;
        for (const Milliseconds at : plan.cooling->rechecks) {
            times += (times.empty() ? "" : " and ") + spokenTime(at);
        }
        rows.push_back({"Re-checks", "read the scale at " + times + " after the lock"});
    }
    rows.push_back(
        {"Length",
         fmt::format(
             "each sheet loses {}: cut it longer by that; with a seam at both ends by {}",
             inWords(estimate->sheetLossMm, units), inWords(estimate->sheetLossMm, units, 2))});
    return "\nEstimate: what closes up\n" + aligned(rows) + "  " +
           wrapped(sentenceIn(units, onOneLine(estimate->basis)) + ".", 2) + "\n";
}

} // namespace seamclock
