#include "core/vbench/bench_numbers.h"
#include "core/vbench/bench_state.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

using namespace bench_numbers;

/// While a hand turns the wheel, or the plate is on its way, by which stages end.
constexpr Milliseconds kQuick{40};
/// While melt is under the plate's pressure, and later.
constexpr Milliseconds kLongestAtPlate{1000};
constexpr Milliseconds kLongest{10000};
constexpr int kOfSince = 10; // a step is a tenth of the time since an edge met something else

void turn(const BenchFixed& fixed, BenchState& state, double seconds) {
    const double pressed = state.wheel - state.travel - fixed.spring.preload / fixed.spring.rate;
    switch (state.wheelDoes) {
    case WheelDoes::Held:
        break;
    case WheelDoes::Turns:
        state.wheel += state.wheelSpeed * seconds;
        break;
    case WheelDoes::RunsBack:
        state.wheel -= std::max(0.0, pressed) * (1 - std::exp(-seconds / kFreeWheelS));
        break;
    case WheelDoes::LetsOff:
        state.wheel -= std::clamp(pressed, -kSpringOffSpeed * seconds, kSpringOffSpeed * seconds);
        if (std::fabs(pressed) <= kSpringOffSpeed * seconds) {
            state.wheelDoes = WheelDoes::Held;
        }
        break;
    case WheelDoes::Locked:
        state.wheel -= std::clamp(
            fixed.setup.faults.lockCreepMmPerMin / 1e3 / 60 * seconds, 0.0, std::max(0.0, pressed));
        break;
    }
    // The scale's end is the spring's.
    const SpringScale& scale = fixed.setup.bench.scale;
    const double most = fixed.springN(static_cast<double>(scale.maxMilli) / 1e3);
    if (state.springN(fixed) > most) {
        state.wheel = state.travel + most / fixed.spring.rate;
        if (state.wheelDoes == WheelDoes::Turns) {
            state.wheelDoes = WheelDoes::Held;
            state.mishaps.push_back({MishapKind::ScaleEnd, state.at, fixed.reading(most)});
        }
    }
}

void movePlate(BenchState& state, double seconds) {
    if (state.plateLeftS <= 0) {
        return;
    }
    state.plateLeftS -= seconds;
    if (state.plateLeftS <= 1e-9) {
        state.plateLeftS = 0;
        state.plateIn = !state.plateGoes;
    }
}

/// The power law's way of both sheets under one pascal in so long [m].
double softness(const BenchState& state, const BenchEdge& edge, double seconds) {
    if (!edge.heated) {
        return 0;
    }
    const auto at = state.plateIn ? HeatStage::At::Plate : HeatStage::At::Sheet;
    return 2 * seconds * edge.run.closingUnderOnePascal(at);
}

/// How much of its elastic way an edge gives once more in a step.
double creeping(const BenchFixed& fixed, const BenchEdge& edge, double seconds) {
    return edge.heated && edge.run.faceC() > fixed.stiffC() ? seconds / kCreepS : 0;
}

void press(const BenchFixed& fixed, BenchState& state, double seconds) {
    if (state.clampsEased || state.barsOpen) {
        return; // the sheets slip: neither table nor faces feel the wheel
    }
    std::vector<TablePoint> points;
    points.reserve(state.edges.size());
    if (state.bothClamped()) {
        for (const BenchEdge& edge : state.edges) {
            points.push_back(
                {edge.touchesAt(state.plateThickness()), fixed.area(),
                 fixed.stiffness() / (1 + creeping(fixed, edge, seconds)),
                 softness(state, edge, seconds), edge.bonded(fixed)});
        }
    }
    const TableBalance balance = balanceTable(
        fixed.spring, state.wheel, state.travel, points, fixed.setup.material.flow.index);
    state.travel = balance.travel;
    state.friction = balance.friction;
    for (std::size_t i = 0; i < points.size(); ++i) {
        BenchEdge& edge = state.edges[i];
        edge.pressure = balance.pressures[i];
        edge.creep += edge.pressure / fixed.stiffness() * creeping(fixed, edge, seconds);
    }
}

/// How well the plate's heat comes over, through what air is between [W/m²K].
double overAir(double gap, double contact) {
    if (gap <= 0) {
        return contact;
    }
    return 1 / (1 / contact + 1 / (kAirConductivity / gap + kPlateRadiation));
}

void meet(const BenchFixed& fixed, BenchState& state, BenchEdge& edge) {
    edge.joined = true;
    edge.metLost = edge.run.closing();
    edge.join = {};
    edge.set = false;
    edge.sunk = 0;
    edge.torn = 0;
    edge.join.skinC = edge.run.faceC();
    edge.join.meltMm = edge.run.meltDepth() * 1e3;
    edge.join.leastSkinC = fixed.leastSkinC();
    edge.join.leastMeltMm = fixed.leastMeltMm(edge.hottestPlateC);
    edge.join.leastLeftMm = kLeastLeftShare * fixed.planLeftMm;
    edge.join.behindMm =
        std::max(0.0, std::max(state.behindAbove(), state.behindBelow()) - 2 * edge.metLost) * 1e3;
    if (!state.instants.facesMet) {
        state.instants.facesMet = state.at;
    }
}

void markTouch(const BenchState& state, BenchEdge& edge) {
    edge.marks.filmLeft = edge.marks.filmLeft || state.sheets[0].film || state.sheets[1].film;
    edge.marks.handTouched = edge.marks.handTouched || edge.hand[0] || edge.hand[1];
}

/// Stations that have been through the same are alike to the last bit: worked out once.
void lead(std::vector<BenchEdge>& edges, std::size_t station, const HeatStage& stage) {
    BenchEdge& edge = edges[station];
    if (edge.heated) {
        edge.led = stage;
    }
    const BenchEdge* before = station > 0 ? &edges[station - 1] : nullptr;
    edge.alike = edge.alike && before != nullptr && before->led == edge.led &&
                 before->run.inputs() == edge.run.inputs();
    if (edge.alike) {
        edge.run = before->run;
    } else if (edge.heated) {
        edge.run.go(stage);
    }
}

/// The heat's part of a step for one station, by what it touches now.
void heat(
    const BenchFixed& fixed, BenchState& state, std::size_t station, double seconds, double contact,
    double faceAir) {
    BenchEdge& edge = state.edges[station];
    const double gap = edge.touchesAt(state.plateThickness()) - state.travel;
    const bool pressed = edge.pressure > 0;
    Touches touches = Touches::Nothing;
    HeatStage stage;
    stage.seconds = seconds;
    const HeatInputs& inputs = edge.run.inputs();
    if (state.plateIn && state.bothClamped() && gap / 2 < kPlateFar) {
        const double plateC = state.plate.faceC(station);
        stage.at = HeatStage::At::Plate;
        edge.heated = true;
        if (pressed) {
            touches = Touches::Plate;
            markTouch(state, edge);
            edge.marks.dirtyPlate = edge.marks.dirtyPlate || state.plate.dirty();
            edge.hottestPlateC = std::max(edge.hottestPlateC, plateC);
            stage.pressureFrom = stage.pressureTo = edge.pressure;
        }
        edge.run.surround(plateC, overAir(pressed ? 0 : std::max(gap / 2, 0.0), contact), faceAir);
    } else {
        const bool faces = !state.plateIn && state.bothClamped();
        if (faces && pressed && edge.heated && !edge.joined) {
            markTouch(state, edge);
            meet(fixed, state, edge);
        }
        if (faces && (pressed || (edge.joined && edge.pressure < 0))) {
            touches = Touches::Face;
        }
        edge.farthest = edge.joined ? std::max(edge.farthest, state.travel) : state.travel;
        if (edge.joined && !edge.bonded(fixed) && edge.farthest - state.travel > kParted) {
            edge.joined = false;
            edge.marks.parted = true;
            state.mishaps.push_back({MishapKind::Parted, state.at, gap * 1e3});
        }
        if (edge.joined) {
            stage.at = HeatStage::At::Sheet;
            stage.pressureFrom = stage.pressureTo = std::max(edge.pressure, 0.0);
        } else {
            stage.at = HeatStage::At::Air;
            const double open = faces ? std::clamp(gap / kFaceOpen, 0.0, 1.0) : 1;
            edge.run.surround(inputs.plateC, contact, faceAir * open);
        }
    }
    if (touches != edge.touches) {
        edge.touches = touches;
        state.regime = state.at;
    }
    const double before = edge.run.field().heatThroughFace();
    const double lost = edge.run.closing();
    lead(state.edges, station, stage);
    if (!edge.heated) {
        return;
    }
    edge.swelling = edge.run.swelling();
    if (stage.at == HeatStage::At::Plate) {
        // Of half a wall of one sheet: the plate serves four of these.
        state.plate.give(station, 4 * (edge.run.field().heatThroughFace() - before));
    }
    if (edge.joined) {
        edge.join.peakPa = std::max(edge.join.peakPa, edge.pressure);
        if (fixed.planPace > 0) {
            edge.torn +=
                std::max(0.0, edge.run.closing() - lost - kTornPace * fixed.planPace * seconds);
        }
        if (!edge.set && edge.run.faceC() < fixed.setsC()) {
            edge.set = true;
            edge.join.frozePa = edge.pressure;
        }
        if (!edge.join.frozen) {
            edge.sunk = std::max(edge.sunk, gap);
        }
        if (!edge.join.frozen && edge.run.faceC() < fixed.solidC()) {
            edge.join.frozen = true;
        }
    }
}

/// What strings as plate and edge part, and what hangs on the edge when it is torn.
void strings(const BenchFixed& fixed, const BenchState& state, BenchEdge& edge) {
    if (!fixed.setup.plan.plate || edge.hottestPlateC <= 0 || edge.joined) {
        edge.thread = edge.hair = 0; // or it has gone into the joint
        return;
    }
    const double hotC = static_cast<double>(fixed.setup.plan.plate->maxMc) / 1e3 + kOverheatedK;
    const double longest = kThreadPerK * std::max(0.0, edge.hottestPlateC - hotC);
    if (longest <= 0) {
        return;
    }
    if (edge.touches == Touches::Plate) {
        edge.thread = edge.hair = 0;
        return;
    }
    const double apart = (edge.touchesAt(state.plateThickness()) - state.travel) / 2;
    // A plate on its way draws it along, too.
    const double goes = state.plateGoes ? kPlateTravelS - state.plateLeftS : 0;
    const double drawn =
        std::hypot(std::max(apart, 0.0), kPlateHeight * std::clamp(goes / kPlateTravelS, 0.0, 1.0));
    if (state.plateIn && edge.hair <= 0 && drawn <= longest) {
        edge.thread = std::max(edge.thread, drawn);
    } else {
        edge.hair = longest / 2;
        edge.thread = 0;
    }
}

} // namespace

double BenchFixed::reading(double force) const {
    return static_cast<double>(setup.bench.scale.zeroMilli) / 1e3 + force * unitsPerNewton;
}

double BenchFixed::springN(double units) const {
    return (units - static_cast<double>(setup.bench.scale.zeroMilli) / 1e3) / unitsPerNewton;
}

double BenchFixed::stiffness() const {
    return kSheetModulus / (2 * static_cast<double>(setup.plan.gapUm) / 1e6);
}

double BenchFixed::solidC() const {
    const Material& material = setup.material;
    return material.crystals ? material.crystals->crystallisesTo : material.meltingPoint();
}

double BenchFixed::setsC() const {
    const Material& material = setup.material;
    return material.crystals
               ? (material.crystals->crystallisesTo + material.crystals->crystallisesFrom) / 2
               : material.meltingPoint();
}

double BenchFixed::stiffC() const {
    const double ambient = static_cast<double>(setup.plan.ambientMc) / 1e3;
    return ambient + kStiffShare * (solidC() - ambient);
}

double BenchFixed::leastSkinC() const {
    const double melting = setup.material.meltingPoint();
    return melting + kLeastSkinShare * std::max(0.0, planSkinC - melting);
}

double BenchFixed::leastMeltMm(double plateC) const {
    const WeldPlan::Plate& window = *setup.plan.plate;
    const double within = std::clamp(
        plateC, static_cast<double>(window.minMc) / 1e3, static_cast<double>(window.maxMc) / 1e3);
    const double off = within - static_cast<double>(window.targetMc) / 1e3;
    return kLeastMeltShare * std::max(0.0, planMeltMm + planMeltPerK * off);
}

double BenchState::behindBelow() const {
    return std::max(0.0, sheets[0].leanM) + std::max(0.0, sheets[1].leanM);
}

double BenchState::behindAbove() const {
    return std::max(0.0, -sheets[0].leanM) + std::max(0.0, -sheets[1].leanM);
}

bool BenchState::anyJoined() const {
    return std::any_of(
        edges.begin(), edges.end(), [](const BenchEdge& edge) { return edge.joined; });
}

double BenchState::plateThickness() const {
    return plateIn ? kPlateThickness : 0;
}

Milliseconds benchStride(const BenchState& state) {
    const bool moves = state.plateLeftS > 0 || state.wheelDoes == WheelDoes::Turns ||
                       state.wheelDoes == WheelDoes::RunsBack ||
                       state.wheelDoes == WheelDoes::LetsOff;
    if (moves) {
        return kQuick;
    }
    return std::clamp(
        (state.at - state.regime) / kOfSince, kQuick, state.plateIn ? kLongestAtPlate : kLongest);
}

void stepBench(const BenchFixed& fixed, BenchState& state, Milliseconds gap) {
    const double seconds = static_cast<double>(gap.count()) / 1e3;
    state.at += gap;
    state.plate.warm(seconds);
    movePlate(state, seconds);
    turn(fixed, state, seconds);
    press(fixed, state, seconds);
    const HeatInputs nominal;
    for (std::size_t i = 0; i < state.edges.size(); ++i) {
        heat(
            fixed, state, i, seconds, nominal.contact,
            nominal.faceAir * fixed.setup.faults.draught);
        strings(fixed, state, state.edges[i]);
    }
    const auto any = [&state](Touches what) {
        return std::any_of(state.edges.begin(), state.edges.end(), [what](const BenchEdge& edge) {
            return edge.touches == what;
        });
    };
    if (any(Touches::Plate)) {
        if (!state.instants.plateTouched) {
            state.instants.plateTouched = state.at;
        }
        state.instants.plateLeft.reset();
    } else if (state.instants.plateTouched && !state.instants.plateLeft) {
        state.instants.plateLeft = state.at;
    }
}

} // namespace seamclock
