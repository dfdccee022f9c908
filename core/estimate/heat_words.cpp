#include "core/estimate/heat_words.h"

#include <fmt/format.h>

namespace seamclock {
namespace {

std::string shown(const HeatRange& range, const std::string& unit, int decimals, double scale = 1) {
    return fmt::format(
        "{:.{}f}{} ({:.{}f} to {:.{}f})", range.likely * scale, decimals,
        unit.empty() ? "" : " " + unit, range.low * scale, decimals, range.high * scale, decimals);
}

} // namespace

std::vector<HeatLine> heatLines(const HeatEstimate& estimate, const std::string& unit) {
    std::vector<HeatLine> lines;
    const HeatNumbers& numbers = estimate.numbers;
    const auto add = [&lines](
                         const std::string& what, const std::optional<HeatRange>& range,
                         const std::string& in, int decimals, double scale = 1) {
        if (range) {
            lines.push_back({what, shown(*range, in, decimals, scale)});
        }
    };
    add("the bead stands after", numbers.alignS, "s", 0);
    add("bead after alignment", numbers.beadMm, "mm", 1);
    add("melt on each sheet after soak", numbers.meltDepthMm, "mm", 1);
    add("skin after soak", numbers.skinEndOfSoakC, "°C", 0);
    add("skin when the faces meet", numbers.skinFacesMeetC, "°C", 0);
    add("weld plane at release", numbers.weldPlaneAtReleaseC, "°C", 0);
    add(fmt::format("weld plane at {:.0f} °C after the faces meet", estimate.chosenC),
        numbers.chosenReachedS, "min", 1, 1.0 / 60);
    add("length lost by each sheet", numbers.sheetLossMm, "mm", 1);
    add("tables close up after the lock by", numbers.closingMm, "mm", 2);
    add("pressure falls by that", numbers.pressureFallPa, "N/mm²", 3, 1e-6);
    add("reading falls by that", numbers.readingFallUnits, unit, 1);
    return lines;
}

std::vector<std::string> heatCautions(const HeatEstimate& estimate) {
    std::vector<std::string> out{
        "An estimate: it explains a weld and judges none. The procedure's limits, the machine's "
        "own instructions and a qualified welder decide.",
        "In brackets what uncertain inputs make of it: contact, air, plate, conductivity, heat, "
        "consistency of the melt."};
    if (estimate.numbers.skinFacesMeetC &&
        estimate.numbers.skinFacesMeetC->low < estimate.meltingC) {
        out.push_back(fmt::format(
            "The skin may no longer be molten when the faces meet: it melts at {:.0f} °C.",
            estimate.meltingC));
    }
    if (estimate.material.gasFrom > 0 &&
        estimate.course.inputs.plateC > estimate.material.gasFrom) {
        out.push_back(fmt::format(
            "{} gives off harmful gas from {:.0f} °C: a plate at {:.0f} °C needs extraction at "
            "least. Do not weld so on this estimate's word.",
            estimate.material.name, estimate.material.gasFrom, estimate.course.inputs.plateC));
    }
    return out;
}

} // namespace seamclock
