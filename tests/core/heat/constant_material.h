// A material whose values do not change with temperature, so that its heat has closed forms; and
// how a field is led through equal steps.
#pragma once

#include "core/heat/sheet_field.h"

#include <cmath>

namespace seamclock::test {

inline constexpr double kConductivity = 0.38; // [W/mK]
inline constexpr double kDensity = 950;       // [kg/m³]
inline constexpr double kSpecificHeat = 2300; // [J/kgK]
inline constexpr double kDiffusivity = kConductivity / (kDensity * kSpecificHeat);

inline Material constantMaterial() {
    Material material;
    material.id = "constant";
    material.density = kDensity;
    material.meltDensity = kDensity;
    material.conductivity = {{{20, kConductivity}}};
    material.meltConductivity = {{{20, kConductivity}}};
    material.specificHeat = {{{20, kSpecificHeat}}};
    return material;
}

/// From `begun` to `until`, each step that share of the time that has passed, `first` at least.
inline void conductUntil(
    SheetField& field, const SheetSurroundings& around, double begun, double until, double share,
    double first) {
    double at = begun;
    while (at < until) {
        double step = std::max(first, share * at);
        const double left = until - at;
        step = left <= step ? left : left < 2 * step ? left / 2 : step;
        field.conduct(around, step);
        at = left <= step ? until : at + step;
    }
}

/// Between the middles of two cells a straight line.
inline double celsiusAt(const SheetField& field, double depth, std::size_t row = 0) {
    std::size_t i = 1;
    while (i + 1 < field.columns() && field.depthOf(i) < depth) {
        ++i;
    }
    const double share = (depth - field.depthOf(i - 1)) / (field.depthOf(i) - field.depthOf(i - 1));
    return field.celsius(i - 1, row) + share * (field.celsius(i, row) - field.celsius(i - 1, row));
}

} // namespace seamclock::test
