// How fast pressed melt flows out between the plate and the solid sheet, or between two sheets: a
// plane squeeze film of a power-law melt whose consistency changes with depth, because temperature
// does. Across the thickness the mean of what flows at each depth counts.
//
// With a film of depth h along half the thickness b, the sheet coming nearer at V, the outflow at
// the height y is q = V·y. A gradient of pressure G drives q = K·G^(1/n), so that the mean pressure
// over the thickness is p = (V/K)^n · b^(n+1) / (n+2).
// For n = 1 between solid walls K = h³/12μ and V = p·h³/(μ·s²), s = 2b (Stefan's film; Bird,
// Armstrong & Hassager, Dynamics of Polymeric Liquids, vol. 1; from memory; derived again here).
#pragma once

#include "core/heat/material.h"
#include "core/heat/sheet_field.h"

#include <vector>

namespace seamclock {

/// What the melt is pressed against.
enum class FilmWall {
    Plate, // it sticks to the plate as to the solid
    Sheet  // the other half presses back alike: at the weld plane nothing shears
};

/// (1/consistency)^(1/n) at each depth, nothing where it does not flow [(Pa·sⁿ)^(-1/n)]; the mean
/// over the rows.
std::vector<double>
fluidity(const SheetField& field, const Material& material, double consistencyFactor);

/// The film that this pressure drives out of these layers, from the face inward.
SheetFlow squeezeFilm(
    const std::vector<double>& fluidity, const std::vector<double>& widths, double halfThickness,
    double pressure, double index, FilmWall wall);

} // namespace seamclock
