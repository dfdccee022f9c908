#include "core/estimate/heat_words.h"

#include <array>
#include <cmath>
#include <fmt/format.h>

namespace seamclock {
namespace {

/// To whole steps of a quantity's own integer unit.
std::int64_t inSteps(double value, double step) {
    return std::llround(value / step) * std::llround(step);
}

std::string ofOne(double value, HeatQuantity quantity, UnitSystem units) {
    switch (quantity) {
    case HeatQuantity::InSeconds:
        return fmt::format("{:.0f} s", value);
    case HeatQuantity::InMinutes:
        return fmt::format("{:.1f} min", value / 60);
    case HeatQuantity::Millimetres:
        return lengthIn(units, inSteps(value * 1e3, 100)).text();
    case HeatQuantity::Celsius:
        return temperatureIn(units, inSteps(value * 1e3, 1000)).text();
    case HeatQuantity::Pascals:
        return pressureIn(units, inSteps(value, 1000)).text();
    case HeatQuantity::ScaleUnits:
        return fmt::format("{:.1f}", value);
    }
    return "";
}

struct Told {
    const char* what;
    std::optional<HeatRange> HeatNumbers::*value;
    HeatQuantity quantity;
};
constexpr std::array kTold{
    Told{"the bead stands after", &HeatNumbers::alignS, HeatQuantity::InSeconds},
    Told{"bead after alignment", &HeatNumbers::beadMm, HeatQuantity::Millimetres},
    Told{"melt on each sheet after soak", &HeatNumbers::meltDepthMm, HeatQuantity::Millimetres},
    Told{"skin after soak", &HeatNumbers::skinEndOfSoakC, HeatQuantity::Celsius},
    Told{
        "skin stays molten once the plate is out for", &HeatNumbers::moltenInAirS,
        HeatQuantity::InSeconds},
    Told{"skin when the faces meet", &HeatNumbers::skinFacesMeetC, HeatQuantity::Celsius},
    Told{"weld plane at release", &HeatNumbers::weldPlaneAtReleaseC, HeatQuantity::Celsius},
    Told{"weld plane at", &HeatNumbers::chosenReachedS, HeatQuantity::InMinutes},
    Told{"length lost by each sheet", &HeatNumbers::sheetLossMm, HeatQuantity::Millimetres},
    Told{"tables close up after the lock by", &HeatNumbers::closingMm, HeatQuantity::Millimetres},
    Told{"pressure falls by that", &HeatNumbers::pressureFallPa, HeatQuantity::Pascals},
    Told{"reading falls by that", &HeatNumbers::readingFallUnits, HeatQuantity::ScaleUnits}};

bool ofWeldPlane(const Told& told) {
    return told.value == &HeatNumbers::weldPlaneAtReleaseC ||
           told.value == &HeatNumbers::chosenReachedS;
}

} // namespace

std::string heatRangeText(
    const HeatRange& range, HeatQuantity quantity, UnitSystem units, std::string_view scaleUnit) {
    const std::string likely = ofOne(range.likely, quantity, units);
    const std::string high = ofOne(range.high, quantity, units);
    std::string low = ofOne(range.low, quantity, units);
    low = low.substr(0, low.find(' ')); // the unit stands once behind both ends
    const std::string unit = scaleUnit.empty() ? "" : " " + std::string(scaleUnit);
    return quantity == HeatQuantity::ScaleUnits
               ? fmt::format("{}{} ({} to {}{})", likely, unit, low, high, unit)
               : fmt::format("{} ({} to {})", likely, low, high);
}

std::vector<HeatLine> heatLines(
    const HeatEstimate& estimate, std::string_view scaleUnit, UnitSystem units, HeatShown shown) {
    std::vector<HeatLine> lines;
    for (const Told& told : kTold) {
        const std::optional<HeatRange>& range = estimate.numbers.*told.value;
        if (!range || (shown == HeatShown::WithoutWeldPlane && ofWeldPlane(told))) {
            continue;
        }
        std::string what = told.what;
        if (told.value == &HeatNumbers::chosenReachedS) {
            what += " " + ofOne(estimate.chosenC, HeatQuantity::Celsius, units) +
                    ", after the faces meet";
        }
        lines.push_back({what, heatRangeText(*range, told.quantity, units, scaleUnit)});
    }
    return lines;
}

std::string heatBasis(const HeatEstimate& estimate) {
    return fmt::format(
        "An estimate by a model of heat and melt in {}: conduction along and across the sheet, "
        "melting, air, and a film of melt squeezed out; in brackets what uncertain inputs make of "
        "it. It explains a weld and judges none",
        estimate.material.name);
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
