#include "core/vbench/virtual_bench.h"

#include "core/vbench/bench_numbers.h"
#include "core/vbench/bench_state.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace seamclock {
namespace {

using namespace bench_numbers;

Result<void> inRange(double value, double low, double high, const char* what) {
    if (value >= low && value <= high) { // false for what is no number
        return {};
    }
    const auto shown = [](double number) {
        std::string text = std::to_string(number);
        return text.substr(0, text.find('.') + 3);
    };
    return fail(
        ErrorCode::OutOfRange, std::string(what) + " is " + shown(value) +
                                   "; allowed: " + shown(low) + " to " + shown(high));
}

Result<void> check(const BenchSetup& setup) {
    std::string lacks;
    const auto need = [&lacks](bool there, const char* what) {
        if (!there) {
            lacks += (lacks.empty() ? "" : ", ") + std::string(what);
        }
    };
    need(setup.plan.scale.has_value(), "the scale's readings");
    need(setup.plan.plate.has_value(), "the plate's temperature");
    need(setup.plan.joiningPa.has_value(), "the joining pressure");
    need(setup.bench.scale.ratePerMillimetre().has_value(), "the spring's rate in N/mm");
    if (!lacks.empty()) {
        return fail(ErrorCode::Missing, "no practice with this plan: it lacks " + lacks);
    }
    const BenchFaults& faults = setup.faults;
    const struct {
        double value;
        double low;
        double high;
        const char* what;
    } kRows[] = {
        {static_cast<double>(setup.stations), 3, 7, "the number of stations"},
        {setup.dragN, 0, 2000, "the drag [N]"},
        {faults.plateOffsetK, -100, 60, "the plate's offset [K]"},
        {faults.coldSpotK, 0, 150, "the cold spot's depth [K]"},
        {faults.coldSpotAt, 0, 1, "the cold spot's place"},
        {faults.coldSpotWidth, 0.01, 1, "the cold spot's width"},
        {faults.leanMm, -5, 5, "the edge's lean [mm]"},
        {faults.draught, 0.1, 10, "the draught's factor"},
        {faults.zeroOff, -20, 20, "the scale's zero error"},
        {faults.lockCreepMmPerMin, 0, 20, "the lock's creep [mm/min]"},
    };
    for (const auto& row : kRows) {
        if (auto ok = inRange(row.value, row.low, row.high, row.what); !ok) {
            return ok;
        }
    }
    return {};
}

double mixed(double from, double to, double share) {
    return from + (to - from) * share;
}

/// Of two rolls of that height, the crests two heights apart; of both sheets' melt so much a
/// surface came up after the faces met, and so much sank [m²].
double valley(double bead, double risen, double sunk) {
    const double fill = kValleyFill * risen - kValleySink * sunk;
    return bead > 0 ? std::min(bead, fill / (2 * bead) - kValleyFloor * bead) : 0;
}

double beadOf(double lost, double half) {
    constexpr double kPi = 3.14159265358979323846;
    return std::sqrt(2 * std::max(lost, 0.0) * half / kPi);
}

double seconds(Milliseconds time) {
    return static_cast<double>(time.count()) / 1e3;
}

/// On a plate of that temperature and off it again, by the plan, as slowly as it allows.
void heatByPlan(const WeldPlan& plan, SheetRun& edge, double plateC) {
    constexpr double kLongestAlignment = 1800; // [s]
    edge.surround(plateC, edge.inputs().contact, edge.inputs().faceAir);
    const auto alignment = static_cast<double>(*plan.alignmentPa);
    const auto soak = static_cast<double>(plan.soakAimPa.value_or(0));
    while (edge.beadHeight() < static_cast<double>(*plan.beadMinUm) / 1e6 &&
           edge.seconds() < kLongestAlignment) {
        edge.go({HeatStage::At::Plate, 1, alignment, alignment, {}});
    }
    edge.go({HeatStage::At::Plate, seconds(plan.soak->target), soak, soak, {}});
    edge.go({HeatStage::At::Air, seconds(*plan.changeoverMax), 0, 0, {}});
}

/// What the plan would leave of melt, by the same model: what a joint is compared with.
void leadByPlan(BenchFixed& fixed, SheetRun edge) {
    const WeldPlan& plan = fixed.setup.plan;
    if (!plan.alignmentPa || !plan.beadMinUm || !plan.soak || !plan.changeoverMax ||
        !plan.buildUp || !plan.cooling) {
        return;
    }
    const double targetC = static_cast<double>(plan.plate->targetMc) / 1e3;
    const double leastC = static_cast<double>(plan.plate->minMc) / 1e3;
    SheetRun cooler = edge;
    heatByPlan(plan, edge, targetC);
    fixed.planMeltMm = edge.meltDepth() * 1e3;
    fixed.planSkinC = edge.faceC();
    if (targetC > leastC) {
        heatByPlan(plan, cooler, leastC);
        fixed.planMeltPerK = (fixed.planMeltMm - cooler.meltDepth() * 1e3) / (targetC - leastC);
    }
    const auto joining = static_cast<double>(*plan.joiningPa);
    const double met = edge.closing();
    const double builtUp = seconds(plan.buildUp->target);
    edge.go({HeatStage::At::Sheet, builtUp, 0, joining, {}});
    fixed.planPace = (edge.closing() - met) / builtUp;
    for (double left = seconds(plan.cooling->atLeast); left > 0 && edge.faceC() > fixed.solidC();) {
        const double part = std::min(left, 10.0);
        edge.go({HeatStage::At::Sheet, part, joining, joining, {}});
        left -= part;
    }
    fixed.planLeftMm = fixed.planMeltMm - (edge.closing() - met) * 1e3;
}

} // namespace

std::string_view toString(MishapKind kind) {
    switch (kind) {
    case MishapKind::PlateDragged:
        return "plate_dragged";
    case MishapKind::SpringKick:
        return "spring_kick";
    case MishapKind::Parted:
        return "parted";
    case MishapKind::LetGoHot:
        return "let_go_hot";
    case MishapKind::ScaleEnd:
        return "scale_end";
    }
    return "";
}

BenchView viewOf(const BenchFixed& fixed, const BenchState& state) {
    BenchView view;
    view.at = state.at;
    view.scale.springN = state.springN(fixed);
    view.scale.reading = fixed.reading(view.scale.springN) + fixed.setup.faults.zeroOff;
    view.scale.frictionN = state.friction;
    view.scale.storedJ = view.scale.springN * view.scale.springN / 2 / fixed.spring.rate;
    view.wheel = state.wheelDoes == WheelDoes::Locked     ? WheelHold::Locked
                 : state.wheelDoes == WheelDoes::RunsBack ? WheelHold::Loose
                                                          : WheelHold::Held;
    view.wheelMmPerS = state.wheelDoes == WheelDoes::Turns ? state.wheelSpeed * 1e3 : 0;
    view.travelMm = state.travel * 1e3;
    view.plateShownC = state.plate.shownC();
    view.plateTargetC = state.plate.targetC();
    view.plateDirty = state.plate.dirty();
    const double way = state.plateLeftS / kPlateTravelS;
    view.plateInside = !state.plateIn ? 0 : state.plateGoes ? way : 1 - way;
    const double tables = state.reach - state.travel;
    view.gapLeftMm = (state.bothClamped() ? tables : state.gapLeft) * 1e3;
    view.gapRightMm = (state.bothClamped() ? tables : state.gapRight) * 1e3;
    for (std::size_t sheet = 0; sheet < 2; ++sheet) {
        view.film[sheet] = state.sheets[sheet].film;
        view.planed[sheet] = state.sheets[sheet].planed;
        view.clamped[sheet] = state.sheets[sheet].clamped;
        view.leanMm[sheet] = state.sheets[sheet].clamped ? state.sheets[sheet].leanM * 1e3 : 0;
    }
    view.draught = fixed.setup.faults.draught;
    view.clampsEased = state.clampsEased;
    view.barsOpen = state.barsOpen;
    view.lifted = state.lifted;
    view.instants = state.instants;
    view.mishaps = state.mishaps;
    view.planMeltMm = fixed.planMeltMm;
    view.planLeftMm = fixed.planLeftMm;

    const double lean = state.behindBelow();
    const double over = state.behindAbove();
    double kink = 0;
    for (std::size_t i = 0; i < state.edges.size(); ++i) {
        const BenchEdge& edge = state.edges[i];
        StationView out;
        const double half = fixed.thickness / 2;
        const double lost = edge.run.closing();
        out.placeMm = fixed.share(i) * fixed.length * 1e3;
        out.touches = edge.touches;
        if (state.bothClamped()) {
            const double gap = edge.touchesAt(state.plateThickness()) - state.travel;
            out.gapMm = std::max(0.0, state.plateIn ? gap / 2 : gap) * 1e3;
        }
        out.pressurePa = edge.pressure;
        view.scale.facesN += edge.pressure * fixed.area();
        out.plateC = state.plate.faceC(i);
        out.hottestPlateC = edge.hottestPlateC;
        out.skinC = edge.run.faceC();
        out.meltMm = edge.run.meltDepth() * 1e3;
        out.lostMm = lost * 1e3;
        // Each sheet bears its own part of what stands behind, half of it on the average.
        const double top = lost - over / 2;
        const double bottom = lost - lean / 2;
        out.beadTopMm = beadOf(top, half) * 1e3;
        out.beadBottomMm = beadOf(bottom, half) * 1e3;
        out.behindMm = std::max(0.0, std::max(lean, over) - 2 * lost) * 1e3;
        out.threadMm = edge.thread * 1e3;
        out.hairMm = edge.hair * 1e3;
        out.marks = edge.marks;
        if (edge.joined || edge.marks.parted) {
            JoinView join = edge.join;
            const double since = lost - edge.metLost;
            join.squeezedMm = since * 1e3;
            const auto valleyMm = [&](double beadMm, double own) {
                const double fills =
                    std::min(since, std::max(own, 0.0)) - (1 + kTornShare) * edge.torn;
                const double risen = fills * fixed.thickness;
                return valley(beadMm / 1e3, risen, edge.sunk * half) * 1e3;
            };
            out.valleyTopMm = valleyMm(out.beadTopMm, top);
            out.valleyBottomMm = valleyMm(out.beadBottomMm, bottom);
            if (join.letGoC) {
                const double stiff = fixed.stiffC();
                kink += kMostKinkDeg *
                        std::max(0.0, (*join.letGoC - stiff) / (fixed.solidC() - stiff)) /
                        static_cast<double>(fixed.stations());
            }
            out.joined = join;
        }
        view.stations.push_back(out);
    }
    view.kinkDeg = kink;
    return view;
}

Result<VirtualBench> VirtualBench::set(const BenchSetup& setup) {
    if (auto ok = check(setup); !ok) {
        return tl::unexpected<Error>(ok.error());
    }
    auto fixed = std::make_shared<BenchFixed>();
    fixed->setup = setup;
    const SpringScale& scale = setup.bench.scale;
    fixed->spring.rate = inNewtons(*scale.ratePerMillimetre()) * 1e3;
    fixed->spring.preload = inNewtons(scale.preload);
    fixed->spring.drag = setup.dragN;
    fixed->unitsPerNewton = 1 / inNewtons(scale.rate());
    fixed->thickness = static_cast<double>(setup.plan.thicknessUm) / 1e6;
    fixed->length = static_cast<double>(setup.plan.lengthUm) / 1e6;
    const auto place = [&setup](const char* code) {
        const auto& order = setup.plan.releaseOrder;
        return std::find(order.begin(), order.end(), code) - order.begin();
    };
    fixed->springOffFirst = place("spring_off") < place("bars_opened");

    PlateSetup plate;
    plate.targetC = static_cast<double>(setup.plan.plate->targetMc) / 1e3;
    plate.ambientC = static_cast<double>(setup.plan.ambientMc) / 1e3;
    plate.startC = setup.plateWarm ? plate.targetC : plate.ambientC;
    plate.offsetK = setup.faults.plateOffsetK;
    plate.coldAt = setup.faults.coldSpotAt;
    plate.coldK = setup.faults.coldSpotK;
    plate.coldWidth = setup.faults.coldSpotWidth;
    plate.dirty = setup.faults.plateDirty;

    HeatInputs inputs;
    inputs.thickness = Length::si(fixed->thickness);
    inputs.ambientC = plate.ambientC;
    inputs.plateC = plate.targetC;
    const SheetRun still(setup.material, inputs, setup.grid);
    inputs.sideAir *= setup.faults.draught;
    auto state = std::make_shared<BenchState>(VirtualPlate(plate, fixed->stations()));
    const SheetRun edge(setup.material, inputs, setup.grid);
    leadByPlan(*fixed, still);
    for (int i = 0; i < setup.stations; ++i) {
        state->edges.push_back(BenchEdge(edge));
    }
    for (std::size_t sheet = 0; sheet < 2; ++sheet) {
        state->sheets[sheet].film = setup.faults.filmOn[sheet];
        state->sheets[sheet].planed = setup.faults.planed[sheet];
    }
    VirtualBench bench;
    bench.m_fixed = std::move(fixed);
    bench.m_from = bench.m_to = std::move(state);
    return bench;
}

Result<void> VirtualBench::act(const BenchAct& act) {
    // Led anew from the step's beginning to now; where it is refused, the step stays as it was.
    auto state = std::make_shared<BenchState>(*(m_now < m_to->at ? m_from : m_to));
    if (state->at < m_now) {
        stepBench(*m_fixed, *state, m_now - state->at);
    }
    if (auto done = doAct(*m_fixed, *state, act); !done) {
        return done;
    }
    m_from = m_to = std::move(state);
    if (m_told) {
        m_told(m_now, act);
    }
    return {};
}

void VirtualBench::advance(Milliseconds gap) {
    if (gap.count() <= 0) {
        return;
    }
    m_now += gap;
    while (m_to->at < m_now) {
        auto state = std::make_shared<BenchState>(*m_to);
        stepBench(*m_fixed, *state, benchStride(*m_to));
        m_from = std::move(m_to);
        m_to = std::move(state);
    }
}

BenchView VirtualBench::view() const {
    BenchView from = viewOf(*m_fixed, *m_from);
    if (m_now > m_from->at) {
        const BenchView to = viewOf(*m_fixed, *m_to);
        const double share = static_cast<double>((m_now - m_from->at).count()) /
                             static_cast<double>((m_to->at - m_from->at).count());
        if (m_now == m_to->at) {
            from = to;
        } else {
            const auto mix = [share](double& one, double other) { one = mixed(one, other, share); };
            mix(from.scale.reading, to.scale.reading);
            mix(from.scale.springN, to.scale.springN);
            mix(from.scale.facesN, to.scale.facesN);
            mix(from.scale.frictionN, to.scale.frictionN);
            mix(from.scale.storedJ, to.scale.storedJ);
            mix(from.travelMm, to.travelMm);
            mix(from.plateShownC, to.plateShownC);
            mix(from.plateInside, to.plateInside);
            mix(from.gapLeftMm, to.gapLeftMm);
            mix(from.gapRightMm, to.gapRightMm);
            for (std::size_t i = 0; i < from.stations.size(); ++i) {
                StationView& one = from.stations[i];
                const StationView& other = to.stations[i];
                for (double StationView::*field :
                     {&StationView::gapMm, &StationView::pressurePa, &StationView::plateC,
                      &StationView::skinC, &StationView::meltMm, &StationView::lostMm,
                      &StationView::beadTopMm, &StationView::beadBottomMm,
                      &StationView::valleyTopMm, &StationView::valleyBottomMm,
                      &StationView::behindMm, &StationView::threadMm, &StationView::hairMm}) {
                    mix(one.*field, other.*field);
                }
            }
        }
    }
    from.at = m_now;
    const double division = static_cast<double>(m_fixed->setup.bench.scale.divisionMilli);
    from.scale.seenMilli = static_cast<std::int64_t>(
        std::llround(std::round(from.scale.reading * 1e3 / division) * division));
    return from;
}

const SheetRun& VirtualBench::edge(std::size_t station) const {
    return m_to->edges.at(station).run;
}

const BenchSetup& VirtualBench::setup() const {
    return m_fixed->setup;
}

} // namespace seamclock
