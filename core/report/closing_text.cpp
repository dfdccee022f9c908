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

} // namespace

std::string closingText(const WeldPlan& plan, const Bench* bench) {
    const auto estimate = estimateClosing(plan, bench);
    if (!estimate) {
        return "";
    }
    std::vector<std::vector<std::string>> rows{
        {"After the lock", "the tables close by " + inWords(estimate->closingMm, "mm")}};
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
    rows.push_back(
        {"Length",
         fmt::format(
             "each sheet loses {}: cut it longer by that", inWords(estimate->sheetLossMm, "mm"))});
    return "\nEstimate: what closes up\n" + aligned(rows) + "  " +
           wrapped(estimate->basis + ".", 2) + "\n";
}

} // namespace seamclock
