#include "app/practice/bench_controls.h"

#include "app/text/numbers.h"
#include "core/practice/chance.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr std::int64_t kGapStepUm = 500;
constexpr std::int64_t kPushStepUm = 200;
constexpr std::int64_t kPlateStepsMc[] = {5'000, 1'000, -1'000, -5'000};

struct PracticeWords {
    Q_DECLARE_TR_FUNCTIONS(PracticeWords)
};

QString tr(const char* text) {
    return PracticeWords::tr(text);
}

Control control(
    const QString& text, std::optional<Sign> sign, ControlDoes does, const QString& under = {}) {
    Control one;
    one.view.text = text;
    one.view.under = under;
    one.view.sign = sign;
    one.does = std::move(does);
    return one;
}

Control nothing() {
    Control one;
    one.view.hidden = true;
    return one;
}

Control close() {
    return control(tr("Close"), Sign::Back, ShowPanel{ControlPanel::None});
}

/// For both sheets, or the one that is not clamped yet.
template <class Act>
std::vector<BenchAct> onLoose(const BenchView& bench) {
    std::vector<BenchAct> acts;
    for (const int sheet : {0, 1}) {
        if (!bench.clamped[sheet]) {
            acts.push_back(Act{sheet});
        }
    }
    return acts;
}

std::vector<Control> whileHeating(const ControlState& state) {
    const BenchView& bench = state.bench;
    std::vector<Control> all;
    all.push_back(control(tr("Wheel +"), Sign::Wheel, TurnIt{1}));
    all.push_back(control(tr("Wheel −"), Sign::Wheel, TurnIt{-1}));
    if (bench.wheel == WheelHold::Locked) {
        // The hand is on it before it is free.
        all.push_back(control(tr("Unlock"), Sign::Lock, DoActs{{UnlockWheel{}, TurnWheel{0}}, {}}));
        all.back().view.on = true;
        all[0].view.enabled = false;
        all[1].view.enabled = false;
    } else {
        all.push_back(control(tr("Lock"), Sign::Lock, DoActs{{LockWheel{}}, {}}));
        all.back().view.enabled = bench.clamped[0] && bench.clamped[1];
    }
    all.push_back(control(tr("Clamps"), Sign::Clamp, ShowPanel{ControlPanel::Clamps}));
    if (bench.plateInside > 0) {
        all.push_back(
            control(tr("Plate"), Sign::Changeover, DoActs{{TakePlateOut{}}, {}}, tr("out")));
    } else if (state.preparing) {
        all.push_back(control(tr("Plate"), Sign::Changeover, ShowPanel{ControlPanel::Plate}));
    } else {
        all.push_back(
            control(tr("Plate"), Sign::Changeover, DoActs{{BringPlateIn{}}, {}}, tr("in")));
    }
    Control back = control(tr("Take back"), Sign::Back, PressBack{});
    back.view.enabled = state.back.look != SlotView::Look::Gone &&
                        state.back.look != SlotView::Look::Hidden && state.back.enabled;
    back.view.under = back.view.enabled ? state.back.under : QString();
    all.push_back(back);
    return all;
}

bool anyJoined(const BenchView& bench) {
    return std::any_of(bench.stations.begin(), bench.stations.end(), [](const auto& station) {
        return station.joined.has_value();
    });
}

std::vector<Control> clampsPanel(const BenchView& bench) {
    std::vector<Control> all;
    if (bench.clamped[0] && bench.clamped[1]) {
        all.push_back(control(tr("Ease clamps"), Sign::Clamp, DoActs{{EaseClamps{}}, {}}));
        all.back().view.on = bench.clampsEased;
        all.push_back(control(tr("Open bars"), Sign::Clamp, DoActs{{OpenBars{}}, {}}));
        all.back().view.on = bench.barsOpen;
        all.push_back(control(tr("Spring off"), Sign::Spring, DoActs{{LetSpringOff{}}, {}}));
        all.push_back(control(tr("Lift sheet"), Sign::Release, DoActs{{LiftSheet{}}, {}}));
        all.back().view.on = bench.lifted;
        if (anyJoined(bench)) {
            all.push_back(nothing());
        } else { // before the plate comes in
            all.push_back(control(tr("Shim"), Sign::Prepare, ShowPanel{ControlPanel::Shim}));
            all.back().view.enabled = bench.plateInside <= 0;
        }
        all.push_back(close());
        return all;
    }
    all.push_back(control(
        tr("Film off"), Sign::Erase,
        DoActs{onLoose<TakeFilmOff>(bench), tr("The film is off the edges."), false}));
    all.back().view.on = !bench.film[0] && !bench.film[1];
    all.push_back(control(
        tr("Plane edges"), Sign::PlanedEdge,
        DoActs{onLoose<PlaneEdge>(bench), tr("The edges are planed, the chips are off."), false}));
    all.back().view.on = bench.planed[0] && bench.planed[1];
    all.push_back(control(
        tr("Set gap"), Sign::Prepare, ShowPanel{ControlPanel::Gap},
        tr("%1 / %2 mm").arg(numberText(bench.gapLeftMm, 1), numberText(bench.gapRightMm, 1))));
    if (bench.clamped[0]) {
        all.push_back(control(tr("Open bars"), Sign::Clamp, DoActs{{OpenBars{}}, {}}));
    } else {
        all.push_back(control(tr("First sheet"), Sign::Clamp, ShowPanel{ControlPanel::FirstSheet}));
    }
    all.push_back(control(tr("Second sheet"), Sign::Clamp, ShowPanel{ControlPanel::SecondSheet}));
    all.push_back(close());
    return all;
}

std::vector<Control> platePanel(const BenchView& bench) {
    std::vector<Control> all;
    all.push_back(control(
        tr("Wipe plate"), Sign::Damp, DoActs{{WipePlate{}}, tr("The plate is wiped."), false}));
    all.push_back(control(
        tr("Read plate"), Sign::PlateTemperature, ShowPanel{ControlPanel::PlateFace},
        tr("on its face")));
    all.push_back(control(
        tr("Set plate"), Sign::Prepare, ShowPanel{ControlPanel::PlateTarget},
        tr("%1 °C").arg(numberText(bench.plateTargetC, 0))));
    all.push_back(nothing());
    all.push_back(control(tr("Plate in"), Sign::Changeover, DoActs{{BringPlateIn{}}, {}, true}));
    all.push_back(close());
    return all;
}

std::vector<Control> plateFacePanel(const BenchView& bench) {
    const auto last = static_cast<int>(bench.stations.size()) - 1;
    const QString read = tr("read it");
    std::vector<Control> all;
    all.push_back(control(tr("Front"), Sign::PlateTemperature, ReadPlate{0}, read));
    all.push_back(control(tr("Middle"), Sign::PlateTemperature, ReadPlate{last / 2}, read));
    all.push_back(control(tr("Back"), Sign::PlateTemperature, ReadPlate{last}, read));
    all.push_back(nothing());
    all.push_back(nothing());
    all.push_back(control(tr("Close"), Sign::Back, ShowPanel{ControlPanel::Plate}));
    return all;
}

/// The controller's target, higher and lower.
std::vector<Control> plateTargetPanel(const BenchView& bench) {
    const auto now = static_cast<std::int64_t>(std::llround(bench.plateTargetC * 1e3));
    const QString set = tr("set: %1 °C").arg(numberText(bench.plateTargetC, 0));
    std::vector<Control> all;
    for (const std::int64_t step : kPlateStepsMc) {
        const QString sign = step > 0 ? QStringLiteral("+") : QString();
        const std::int64_t to = now + step;
        all.push_back(control(
            sign + tr("%1 °C").arg(numberText(static_cast<double>(step) / 1e3, 0)),
            Sign::PlateTemperature, DoActs{{SetPlate{to}}, {}, false}, set));
        all.back().view.enabled = to >= 0 && to <= act_limits::kHottestMc;
    }
    all.push_back(nothing());
    all.push_back(control(tr("Close"), Sign::Back, ShowPanel{ControlPanel::Plate}));
    return all;
}

QString signedMm(std::int64_t um) {
    const QString text = numberText(static_cast<double>(um) / 1e3, 1);
    return (um > 0 ? QStringLiteral("+") : QString()) + tr("%1 mm").arg(text);
}

std::vector<Control> gapPanel(const BenchView& bench) {
    const QString front = tr("%1 mm").arg(numberText(bench.gapLeftMm, 1));
    const QString back = tr("%1 mm").arg(numberText(bench.gapRightMm, 1));
    std::vector<Control> all;
    all.push_back(control(tr("Front +"), Sign::Wheel, GapMore{{kGapStepUm, 0}}, front));
    all.push_back(control(tr("Front −"), Sign::Wheel, GapMore{{-kGapStepUm, 0}}, front));
    all.push_back(control(tr("Back +"), Sign::Wheel, GapMore{{0, kGapStepUm}}, back));
    all.push_back(control(tr("Back −"), Sign::Wheel, GapMore{{0, -kGapStepUm}}, back));
    all.push_back(nothing());
    all.push_back(control(tr("Close"), Sign::Back, ShowPanel{ControlPanel::Clamps}));
    return all;
}

std::vector<Control> sheetPanel(int sheet, const Push& push) {
    std::vector<Control> all;
    const QString front = signedMm(push.frontUm);
    const QString back = signedMm(push.backUm);
    all.push_back(control(tr("Front +"), Sign::Prepare, PushMore{{kPushStepUm, 0}}, front));
    all.push_back(control(tr("Front −"), Sign::Prepare, PushMore{{-kPushStepUm, 0}}, front));
    all.push_back(control(tr("Back +"), Sign::Prepare, PushMore{{0, kPushStepUm}}, back));
    all.push_back(control(tr("Back −"), Sign::Prepare, PushMore{{0, -kPushStepUm}}, back));
    all.push_back(control(
        tr("Clamp it"), Sign::Clamp,
        DoActs{{ClampSheet{sheet, push.frontUm, push.backUm, 0}}, {}, true}));
    all.push_back(control(tr("Close"), Sign::Back, ShowPanel{ControlPanel::Clamps}));
    return all;
}

/// The second sheet, clamped, set right against the first: how far its front end stands out more
/// than its back, and its lower side more than its upper.
std::vector<Control> shimPanel(const BenchView& bench) {
    const auto um = [](double mm) { return std::llround(mm * 1e3); };
    const double ends = bench.stations.back().gapMm - bench.stations.front().gapMm;
    const auto last = static_cast<double>(bench.stations.size());
    const double whole = ends * last / std::max(last - 1, 1.0); // at the ends, not their middles
    const QString front = signedMm(um(std::round(whole * 10) / 10));
    const QString below = signedMm(um(std::round(-bench.leanMm[1] * 10) / 10));
    const auto shim = [](std::int64_t frontUm, std::int64_t belowUm) {
        return DoActs{{ShimSheet{1, frontUm, 0, belowUm}}, {}, false};
    };
    std::vector<Control> all;
    all.push_back(control(tr("Front +"), Sign::Prepare, shim(kPushStepUm, 0), front));
    all.push_back(control(tr("Front −"), Sign::Prepare, shim(-kPushStepUm, 0), front));
    all.push_back(control(tr("Below +"), Sign::Prepare, shim(0, kPushStepUm), below));
    all.push_back(control(tr("Below −"), Sign::Prepare, shim(0, -kPushStepUm), below));
    all.push_back(nothing());
    all.push_back(control(tr("Close"), Sign::Back, ShowPanel{ControlPanel::Clamps}));
    return all;
}

} // namespace

std::vector<Control> controlsOf(const ControlState& state) {
    switch (state.panel) {
    case ControlPanel::None:
        return whileHeating(state);
    case ControlPanel::Clamps:
        return clampsPanel(state.bench);
    case ControlPanel::Plate:
        return platePanel(state.bench);
    case ControlPanel::PlateFace:
        return plateFacePanel(state.bench);
    case ControlPanel::PlateTarget:
        return plateTargetPanel(state.bench);
    case ControlPanel::Gap:
        return gapPanel(state.bench);
    case ControlPanel::FirstSheet:
        return sheetPanel(0, state.push);
    case ControlPanel::SecondSheet:
        return sheetPanel(1, state.push);
    case ControlPanel::Shim:
        return shimPanel(state.bench);
    }
    return {};
}

Push firstGap(std::int64_t planUm, std::uint64_t seed) {
    const Chance chance(seed);
    const std::string name = "gap" + std::to_string(planUm);
    const std::int64_t off = chance.even(name, 1, 3) * kGapStepUm;
    const std::int64_t even = planUm / kGapStepUm * kGapStepUm;
    return {even, std::max<std::int64_t>(even - off, kGapStepUm)};
}

Push firstPush(int sheet, std::uint64_t seed) {
    const Chance chance(seed);
    const std::string name = "push" + std::to_string(sheet);
    const std::int64_t off = chance.even(name, 1, 3) * kPushStepUm;
    return chance.even(name + "end", 0, 1) == 0 ? Push{-off, 0} : Push{0, -off};
}

} // namespace seamclock
