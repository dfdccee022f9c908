#include "core/vbench/bend_test.h"

#include "core/vbench/bench_numbers.h"

#include <algorithm>

namespace seamclock {
namespace {

using namespace bench_numbers;

StationBend bend(const StationView& station, const WeldPlan& plan, const BenchView& view) {
    StationBend out;
    out.placeMm = station.placeMm;
    const auto found = [&out](bool so, BendReason reason) {
        if (so) {
            out.reasons.push_back(reason);
        }
    };
    if (!station.joined || station.marks.parted) {
        out.reasons.push_back(BendReason::NotJoined);
        return out;
    }
    const JoinView& join = *station.joined;
    const double hotC = plan.plate ? static_cast<double>(plan.plate->maxMc) / 1e3 + kOverheatedK
                                   : station.hottestPlateC;
    const double coldC = plan.plate ? static_cast<double>(plan.plate->minMc) / 1e3 - kUnderheatedK
                                    : station.hottestPlateC;
    const double holdPa = kLeastHoldShare * static_cast<double>(plan.joiningPa.value_or(0));
    found(!join.frozen, BendReason::NotFrozen);
    found(join.skinC < join.leastSkinC, BendReason::ColdSkin);
    found(join.meltMm < join.leastMeltMm || join.leftMm() < join.leastLeftMm, BendReason::ThinMelt);
    found(station.marks.contaminated(), BendReason::Contaminated);
    found(station.hottestPlateC > 0 && station.hottestPlateC < coldC, BendReason::Underheated);
    found(station.hottestPlateC > hotC, BendReason::Overheated);
    found(join.frozen && join.frozePa < holdPa, BendReason::LowPressure);
    found(std::min(station.valleyTopMm, station.valleyBottomMm) <= 0, BendReason::Notch);
    found(station.behindMm > 0 || join.behindMm > kMostBehind * 1e3, BendReason::NotClosedBelow);
    found(view.kinkDeg > 0, BendReason::Kinked);
    out.ductile = out.reasons.empty();
    return out;
}

} // namespace

std::string_view toString(BendReason reason) {
    switch (reason) {
    case BendReason::NotJoined:
        return "not_joined";
    case BendReason::NotFrozen:
        return "not_frozen";
    case BendReason::ColdSkin:
        return "cold_skin";
    case BendReason::ThinMelt:
        return "thin_melt";
    case BendReason::Contaminated:
        return "contaminated";
    case BendReason::Underheated:
        return "underheated";
    case BendReason::Overheated:
        return "overheated";
    case BendReason::LowPressure:
        return "low_pressure";
    case BendReason::Notch:
        return "notch";
    case BendReason::NotClosedBelow:
        return "not_closed_below";
    case BendReason::Kinked:
        return "kinked";
    }
    return "";
}

BendTest bendTest(const BenchView& view, const WeldPlan& plan) {
    BendTest test;
    test.ductile = !view.stations.empty();
    for (const StationView& station : view.stations) {
        test.stations.push_back(bend(station, plan, view));
        test.ductile = test.ductile && test.stations.back().ductile;
    }
    return test;
}

} // namespace seamclock
