// The heat estimate in plain English, for a terminal, a card and a record. Numbers come as integers
// that are no finer than the estimate, so that both systems of units say the same.
#pragma once

#include "core/estimate/heat_estimate.h"
#include "core/units/measure.h"

#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

enum class HeatQuantity { InSeconds, InMinutes, Millimetres, Celsius, Pascals, ScaleUnits };

/// "2.3 mm (2.1 to 2.5 mm)"; lengths to 0.1 mm, degrees to 1 °C, pressures to 0.001 N/mm².
std::string heatRangeText(
    const HeatRange& range, HeatQuantity quantity, UnitSystem units = UnitSystem::Metric,
    std::string_view scaleUnit = "");

struct HeatLine {
    std::string what;
    std::string value;

    bool operator==(const HeatLine&) const = default;
};

/// A card lies beside the operator while the joint cools, and a weld plane's temperature would
/// argue for an early release: it is for whoever looks at the estimate itself, or at the record.
enum class HeatShown { All, WithoutWeldPlane };

/// What the course came to, in the order in which it happens; `scaleUnit`: "" without a scale.
std::vector<HeatLine> heatLines(
    const HeatEstimate& estimate, std::string_view scaleUnit, UnitSystem units = UnitSystem::Metric,
    HeatShown shown = HeatShown::All);

/// What the numbers are worth: one sentence each.
std::vector<std::string> heatCautions(const HeatEstimate& estimate);

/// Where they are from and what the brackets are, in one sentence.
std::string heatBasis(const HeatEstimate& estimate);

} // namespace seamclock
