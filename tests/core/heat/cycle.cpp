#include "tests/core/heat/cycle.h"

#include "core/heat/material_codec.h"
#include "tests/support/shipped.h"

#include <algorithm>
#include <cmath>

namespace seamclock::test {
namespace {

double carriedOn(const Column& column, Length thickness) {
    double longest = 0;
    for (const Curve& curve : column.curves) {
        const Piece* nearest = curve.pieceAt(thickness);
        if (nearest == nullptr) {
            const bool before = thickness < curve.pieces.front().from;
            nearest = before ? &curve.pieces.front() : &curve.pieces.back();
        }
        longest = std::max(longest, nearest->at(thickness));
    }
    return longest;
}

double orNone(const std::optional<Pressure>& pressure) {
    return pressure ? inPascals(*pressure) : 0;
}

} // namespace

Material shippedMaterial(const std::string& id) {
    const auto read = readMaterialFile(resource("materials/" + id + ".json"));
    EXPECT_TRUE(read.has_value()) << read.error().detail;
    return read ? *read : Material{};
}

Procedure procedureFor(const std::string& material) {
    if (material == "pvc-u") {
        const auto read = readProcedureFile(resource("demo/procedure-pvc-u.json"));
        EXPECT_TRUE(read.has_value()) << read.error().detail;
        return read ? read->procedure : Procedure{};
    }
    return shippedProcedure(
        material == "pe-hd"  ? "pe-hd-dvs2207-1-2005"
        : material == "pp-h" ? "pp-dvs2207-11"
                             : "pvdf-dvs2207-15");
}

HeatInputs inputsFor(const Cycle& cycle, double thicknessMm) {
    HeatInputs inputs;
    inputs.thickness = millimetres(thicknessMm);
    inputs.plateC = cycle.plateC;
    return inputs;
}

Cycle Cycle::withoutPressure() const {
    Cycle cycle = *this;
    cycle.alignment = cycle.soaking = cycle.joining = 0;
    return cycle;
}

Cycle cycleOf(const Procedure& procedure, Length thickness, double ambientC) {
    Cycle cycle;
    cycle.plateC = (procedure.plate->min.inCelsius() + procedure.plate->max.inCelsius()) / 2;
    cycle.alignment = orNone(procedure.pressure.alignment);
    cycle.soaking = orNone(procedure.pressure.soakAim);
    cycle.joining = orNone(procedure.pressure.joining);
    cycle.bead = carriedOn(*procedure.bead, thickness) / 1e3;
    cycle.soakS = carriedOn(*procedure.soak, thickness);
    cycle.alignS = 0.6 * cycle.soakS; // about what the bead takes; common practice, no source
    cycle.changeoverS = carriedOn(*procedure.changeover, thickness);
    cycle.buildUpS = carriedOn(*procedure.buildUp, thickness);
    const Temperature ambient = Temperature::celsius(ambientC);
    for (const CoolingClass& each : procedure.cooling) {
        if ((!each.from || *each.from <= ambient) && (!each.to || ambient <= *each.to)) {
            cycle.coolingS = std::max(cycle.coolingS, 60 * carriedOn(each.minutes, thickness));
        }
    }
    return cycle;
}

void lead(
    SheetRun& run, const Cycle& cycle, const std::function<void()>& each,
    const std::function<void()>& then) {
    const auto stage = [&](HeatStage::At at, double seconds, double from, double to) {
        run.go({at, seconds, from, to, {}}, each);
        if (then) {
            then();
        }
    };
    stage(HeatStage::At::Plate, cycle.soakS, cycle.soaking, cycle.soaking);
    stage(HeatStage::At::Air, cycle.changeoverS, 0, 0);
    stage(HeatStage::At::Sheet, cycle.buildUpS, 0, cycle.joining);
    stage(HeatStage::At::Sheet, cycle.coolingS, cycle.joining, cycle.joining);
}

double alignUntilBead(SheetRun& run, const Cycle& cycle, double longest) {
    while (run.beadHeight() < cycle.bead && run.seconds() < longest) {
        const double step = std::max(0.5, 0.02 * run.seconds()); // how well the time is known
        run.go({HeatStage::At::Plate, step, cycle.alignment, cycle.alignment, {}});
    }
    return run.seconds();
}

} // namespace seamclock::test
