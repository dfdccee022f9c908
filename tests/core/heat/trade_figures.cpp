#include "tests/core/heat/trade_figures.h"

#include "tests/support/shipped.h"

#include <algorithm>

namespace seamclock::test {
namespace {

Material withoutHeatOfMelting(Material material, LeftOut leftOut) {
    if (leftOut == LeftOut::HeatOfMelting && material.crystals) {
        material.crystals->heat = 1; // [J/kg]: as good as none
    }
    return material;
}

} // namespace

WeldFigures
weldFigures(const Material& material, const Cycle& cycle, HeatInputs inputs, LeftOut leftOut) {
    Cycle done = cycle;
    switch (leftOut) {
    case LeftOut::Nothing:
        break;
    case LeftOut::SideLoss:
        inputs.sideAir = 0;
        break;
    case LeftOut::Squeeze:
        done = cycle.withoutPressure();
        break;
    case LeftOut::HeatOfMelting:
        break; // the material's
    }
    SheetRun run(withoutHeatOfMelting(material, leftOut), inputs);
    WeldFigures figures;
    figures.thicknessMm = inMillimetres(inputs.thickness);
    figures.ambientC = inputs.ambientC;
    figures.coolingS = cycle.coolingS;
    if (done.alignment > 0) {
        figures.alignedS = alignUntilBead(run, done);
    } else {
        run.go({HeatStage::At::Plate, cycle.alignS, 0, 0, {}});
        figures.alignedS = cycle.alignS;
    }
    double met = 0;
    int stage = 0;
    lead(
        run, done,
        [&] {
            if (stage == 3 && figures.below90S == 0 && run.faceC() < 90) {
                figures.below90S = run.seconds() - met;
            }
        },
        [&] {
            switch (++stage) {
            case 1:
                figures.skinC = run.faceC();
                figures.meltDepthMm = run.meltDepth() * 1e3;
                break;
            case 2:
                figures.facesMeetC = run.faceC();
                break;
            default:
                met = run.seconds();
            }
        });
    figures.planeC = run.faceC();
    figures.closingMm = run.closing() * 1e3;
    return figures;
}

std::vector<WeldFigures> table2005(LeftOut leftOut, double sideAir) {
    const Procedure procedure = shippedProcedure("pe-hd-dvs2207-1-2005");
    const Material material = shippedMaterial("pe-hd");
    std::vector<WeldFigures> welds;
    for (const double thicknessMm : {5.0, 7.0, 10.0, 15.0, 26.0, 37.0, 50.0}) {
        const Cycle cycle = cycleOf(procedure, millimetres(thicknessMm));
        HeatInputs inputs = inputsFor(cycle, thicknessMm);
        inputs.plateC = 215;
        inputs.sideAir = sideAir;
        welds.push_back(weldFigures(material, cycle, inputs, leftOut));
    }
    return welds;
}

std::vector<WeldFigures> classes2015(double thicknessMm, LeftOut leftOut) {
    const Procedure procedure = shippedProcedure("pe-hd-dvs2207-1-2015");
    const Material material = shippedMaterial("pe-hd");
    std::vector<WeldFigures> classes;
    for (const double ambientC : {10.0, 20.0, 32.0}) {
        const Cycle cycle = cycleOf(procedure, millimetres(thicknessMm), ambientC);
        HeatInputs inputs = inputsFor(cycle, thicknessMm);
        inputs.ambientC = ambientC;
        classes.push_back(weldFigures(material, cycle, inputs, leftOut));
    }
    return classes;
}

double bead10(double consistency, LeftOut leftOut) {
    const Cycle cycle = cycleOf(shippedProcedure("pe-hd-dvs2207-1-2005"), millimetres(10));
    HeatInputs inputs = inputsFor(cycle, 10);
    inputs.plateC = 215;
    Material material = withoutHeatOfMelting(shippedMaterial("pe-hd"), leftOut);
    material.flow.consistency = consistency;
    SheetRun run(material, inputs);
    return alignUntilBead(run, cycle);
}

double skinAfter(double changeovers, const std::string& material, double thicknessMm) {
    const Cycle cycle = cycleOf(procedureFor(material), millimetres(thicknessMm));
    SheetRun run(shippedMaterial(material), inputsFor(cycle, thicknessMm));
    alignUntilBead(run, cycle);
    run.go({HeatStage::At::Plate, cycle.soakS, cycle.soaking, cycle.soaking, {}});
    run.go({HeatStage::At::Air, changeovers * cycle.changeoverS, 0, 0, {}});
    return run.faceC();
}

double spreadOf(const std::vector<WeldFigures>& welds) {
    const auto [coldest, warmest] = std::minmax_element(
        welds.begin(), welds.end(),
        [](const WeldFigures& one, const WeldFigures& other) { return one.planeC < other.planeC; });
    return (warmest->planeC - coldest->planeC) / 2;
}

} // namespace seamclock::test
