// What the model says of the welds that the trade knows: the figures that the published tables and
// common practice can be held against, and what becomes of them when a part of the model is taken
// out.
#pragma once

#include "tests/core/heat/cycle.h"

#include <vector>

namespace seamclock::test {

enum class LeftOut { Nothing, SideLoss, Squeeze, HeatOfMelting };

/// Of one whole weld.
struct WeldFigures {
    double thicknessMm = 0;
    double ambientC = 0;
    double alignedS = 0; // until the bead was there; the longest, if it never was
    double skinC = 0;    // at the end of soak
    double meltDepthMm = 0;
    double facesMeetC = 0;
    double planeC = 0; // at the end of cooling
    double closingMm = 0;
    double coolingS = 0;
    double below90S = 0; // of cooling, when the weld plane falls below 90 °C
};

WeldFigures weldFigures(
    const Material& material, const Cycle& cycle, HeatInputs inputs,
    LeftOut leftOut = LeftOut::Nothing);

/// PE-HD, by the table of 2005: plate 215 °C, contact 1500 W/m²K, 20 °C.
std::vector<WeldFigures> table2005(LeftOut leftOut = LeftOut::Nothing, double sideAir = 8);
/// PE-HD, by the table of 2015: one wall's three classes, 10, 20 and 32 °C.
std::vector<WeldFigures> classes2015(double thicknessMm, LeftOut leftOut = LeftOut::Nothing);
/// Seconds until 10 mm PE-HD has its 1.5 mm, at that consistency [Pa·sⁿ].
double bead10(double consistency, LeftOut leftOut = LeftOut::Nothing);
/// When the faces meet after so many times the longest changeover [°C].
double skinAfter(double changeovers, const std::string& material, double thicknessMm);

/// Half of what lies between the warmest and the coldest.
double spreadOf(const std::vector<WeldFigures>& welds);

} // namespace seamclock::test
