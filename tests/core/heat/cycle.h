// A weld as its procedure's table has it, at nominal values, led through core/heat: what the tests
// compare with the trade and with the judge.
#pragma once

#include "core/heat/sheet_run.h"
#include "core/procedure/procedure.h"

#include <array>
#include <functional>
#include <string>

namespace seamclock::test {

inline constexpr std::array kMaterials{"pe-hd", "pp-h", "pvdf", "pvc-u"};

Material shippedMaterial(const std::string& id);

/// The one whose table we have; PVC-U's is the demo's, invented.
Procedure procedureFor(const std::string& material);

struct Cycle {
    double plateC = 0;
    double alignment = 0; // [Pa]
    double soaking = 0;
    double joining = 0;
    double bead = 0;   // [m]
    double alignS = 0; // [s] where the bead does not end it
    double soakS = 0;
    double changeoverS = 0;
    double buildUpS = 0;
    double coolingS = 0;

    /// The same times with nothing pressed.
    Cycle withoutPressure() const;
};

/// The plate in the middle of its window; the cooling's class by the ambient, the longer on a
/// boundary. Where a table has no value for a thickness its nearest piece is carried on: that makes
/// a history to work out, not a weld.
Cycle cycleOf(const Procedure& procedure, Length thickness, double ambientC = 20);

/// Core's own nominal values, with that plate.
HeatInputs inputsFor(const Cycle& cycle, double thicknessMm);

/// The stages after alignment, in order; `each` is called after every step, `then` after each
/// stage.
void lead(
    SheetRun& run, const Cycle& cycle, const std::function<void()>& each = {},
    const std::function<void()>& then = {});

/// Alignment until the smallest bead is there, or until `longest` [s]; what it took.
double alignUntilBead(SheetRun& run, const Cycle& cycle, double longest = 600);

} // namespace seamclock::test
