#include "core/plan/closing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace seamclock {

namespace {

struct Ends {
    double low;
    double middle;
    double high;
};

/// For heat: middles of ranges. Their standing is beside each; "memory" is recalled, not re-read.
struct Plastic {
    const char* name;
    double meltingPeak;       // [°C]
    double fusion;            // [J/kg]
    double solidHeat;         // [J/kg/K]
    double meltHeat;          // [J/kg/K]
    double solidConductivity; // [W/m/K]
    double meltConductivity;  // [W/m/K]
    double solidDensity;      // [kg/m³]
    double meltDensity;       // [kg/m³]
    Ends shrinkage;           // 1 − melt's density / solid's, from both ranges' ends
};

constexpr double lost(double melt, double solid) {
    return 1 - melt / solid;
}

constexpr std::array kMaterials{
    // peak 125 to 135 (seen); 185 to 201 kJ/kg (seen 201); 1.8 to 2.7 solid (seen), melt 2.5 to 2.6
    // (memory); conductivity 0.33 to 0.53 solid (seen), melt about 0.25 (memory); 940 to 960, melt
    // 760 to 800 (memory)
    Plastic{
        "PE-HD",
        130,
        193e3,
        2250,
        2550,
        0.43,
        0.25,
        950,
        780,
        {lost(800, 940), lost(780, 950), lost(760, 960)}},
    // 160 to 165 (seen); 94 to 112 (seen); 1.7 to 2.7 (memory); 0.22, melt 0.16 to 0.19 (memory);
    // 900 to 915, melt 750 to 770 (memory)
    Plastic{
        "PP",
        162.5,
        103e3,
        2200,
        2200,
        0.22,
        0.175,
        907.5,
        760,
        {lost(770, 900), lost(760, 907.5), lost(750, 915)}},
    // 168 to 175; 50 to 60; 1.2 to 1.5; 0.19, melt 0.15; 1780, melt 1500 (all memory). One value
    // each is no range: its spread is taken as PP's, ± a sixth, by our judgement.
    Plastic{
        "PVDF",
        171.5,
        55e3,
        1350,
        1350,
        0.19,
        0.15,
        1780,
        1500,
        {lost(1500, 1780) * 5 / 6, lost(1500, 1780), lost(1500, 1780) * 7 / 6}},
};

const Plastic* materialOf(const std::string& name) {
    const auto found =
        std::find_if(kMaterials.begin(), kMaterials.end(), [&name](const Plastic& each) {
            return name == each.name;
        });
    return found == kMaterials.end() ? nullptr : &*found;
}

/// Neumann's solution for a half-space that melts below a face held at one temperature (Carslaw and
/// Jaeger, Conduction of Heat in Solids, 2nd ed., ch. XI; densities of both phases taken as equal):
/// the front stands at 2 λ √(κ t), κ the melt's diffusivity, where
///   c (Tf − Tm) exp(−λ²) / erf λ − c k' √κ (Tm − T0) exp(−λ² κ/κ') / (k √κ' erfc(λ √(κ/κ')))
///     = λ L √π.
/// `front` is 2 λ √κ [m/√s], so that the depth is that times √t.
double front(const Plastic& m, double faceC, double startC) {
    const double melt = m.meltConductivity / (m.meltDensity * m.meltHeat);
    const double solid = m.solidConductivity / (m.solidDensity * m.solidHeat);
    const double ratio = std::sqrt(melt / solid);
    const auto surplus = [&](double lambda) {
        const double in =
            m.meltHeat * (faceC - m.meltingPeak) * std::exp(-lambda * lambda) / std::erf(lambda);
        const double on = m.meltHeat * m.solidConductivity / m.meltConductivity * ratio *
                          (m.meltingPeak - startC) * std::exp(-lambda * lambda * ratio * ratio) /
                          std::erfc(lambda * ratio);
        return in - on - lambda * m.fusion * std::sqrt(std::numbers::pi);
    };
    // It falls from plus infinity at 0 to below 0 well before 3, where the face would be thousands
    // of kelvins above the melting peak.
    double low = 1e-9;
    double high = 3;
    constexpr int kHalvings = 60;
    for (int i = 0; i < kHalvings; ++i) {
        const double middle = (low + high) / 2;
        (surplus(middle) > 0 ? low : high) = middle;
    }
    return 2 * low * std::sqrt(melt);
}

// Trials of ours: two-dimensional conduction with melting, PE-HD, plate at 215 °C, soak of 10 s for
// a millimetre. Started at 20 °C.
constexpr double kTrialPlateC = 215;
constexpr double kTrialStartC = 20;
constexpr double kTrialSecondsPerMm = 10;
struct Trial {
    double thicknessMm;
    double depthMm;
};
constexpr std::array kTrials{Trial{5, 1.7}, Trial{10, 2.5}, Trial{26, 4.3}, Trial{50, 6.0}};

/// Between trials a straight line over √thickness, as the depth grows with the root of the time and
/// the time with the thickness; beyond them in proportion to it.
double trialDepthMm(double thicknessMm) {
    const double root = std::sqrt(thicknessMm);
    const auto rootOf = [](const Trial& trial) { return std::sqrt(trial.thicknessMm); };
    if (thicknessMm <= kTrials.front().thicknessMm) {
        return kTrials.front().depthMm * root / rootOf(kTrials.front());
    }
    for (std::size_t i = 1; i < kTrials.size(); ++i) {
        if (thicknessMm <= kTrials[i].thicknessMm) {
            const double part =
                (root - rootOf(kTrials[i - 1])) / (rootOf(kTrials[i]) - rootOf(kTrials[i - 1]));
            return kTrials[i - 1].depthMm + part * (kTrials[i].depthMm - kTrials[i - 1].depthMm);
        }
    }
    return kTrials.back().depthMm * root / rootOf(kTrials.back());
}

// Our judgement: how far a melt depth of this estimate may be off; how much of it joining squeezes
// out (our trials: half); how much of that is still to come when the wheel is locked.
constexpr Ends kDepth{0.85, 1, 1.15};
constexpr Ends kSqueezed{0.4, 0.5, 0.6};
constexpr Ends kLeft{0, 0.1, 0.25};
constexpr double kBeadAboveMinimumMm = 0.5;

Spread over(
    const Ends& a, const Ends& b, const Ends& c, const Ends& d,
    double (*value)(double, double, double, double)) {
    Spread spread;
    spread.likely = value(a.middle, b.middle, c.middle, d.middle);
    spread.low = spread.likely;
    spread.high = spread.likely;
    for (int corner = 0; corner < 16; ++corner) {
        const auto end = [corner](const Ends& range, int bit) {
            return (corner & bit) != 0 ? range.high : range.low;
        };
        const double at = value(end(a, 1), end(b, 2), end(c, 4), end(d, 8));
        spread.low = std::min(spread.low, at);
        spread.high = std::max(spread.high, at);
    }
    return spread;
}

Spread scaled(const Spread& spread, double factor, double most) {
    return {
        std::min(spread.low * factor, most), std::min(spread.likely * factor, most),
        std::min(spread.high * factor, most)};
}

std::optional<Spread> fallOf(const Spread& closing, const WeldPlan& plan, const Bench* bench) {
    if (bench == nullptr || !plan.scale) {
        return std::nullopt;
    }
    const auto perMm = bench->scale.ratePerMillimetre();
    if (!perMm) {
        return std::nullopt;
    }
    // A spring that is let go further shows no force, and not less.
    const auto most =
        static_cast<double>(plan.scale->joining.setMilli - plan.scale->zeroMilli) / 1e3;
    return scaled(closing, *perMm / bench->scale.rate(), std::max(most, 0.0));
}

} // namespace

std::optional<double> meltDepthMm(const WeldPlan& plan) {
    const Plastic* material = materialOf(plan.material);
    if (material == nullptr || !plan.soak) {
        return std::nullopt;
    }
    const double mm = static_cast<double>(plan.thicknessUm) / 1e3;
    const double plateC =
        plan.plate ? static_cast<double>(plan.plate->targetMc) / 1e3 : kTrialPlateC;
    const double startC = static_cast<double>(plan.ambientMc) / 1e3;
    if (plateC <= material->meltingPeak || startC >= material->meltingPeak || !(mm > 0)) {
        return std::nullopt;
    }
    const double seconds = static_cast<double>(plan.soak->target.count()) / 1e3;
    const double asTrial =
        front(kMaterials.front(), kTrialPlateC, kTrialStartC) * std::sqrt(kTrialSecondsPerMm * mm);
    const double depth =
        trialDepthMm(mm) * front(*material, plateC, startC) * std::sqrt(seconds) / asTrial;
    return depth;
}

std::optional<ClosingEstimate> estimateClosing(const WeldPlan& plan, const Bench* bench) {
    const Plastic* material = materialOf(plan.material);
    const auto depth = meltDepthMm(plan);
    if (material == nullptr || !depth || !plan.beadMinUm) {
        return std::nullopt;
    }
    const Ends melt{*depth * kDepth.low, *depth, *depth * kDepth.high};
    ClosingEstimate estimate;
    // Both sheets: what is left of the squeeze, and what stays inside and shrinks as it sets.
    estimate.closingMm = over(
        melt, kSqueezed, kLeft, material->shrinkage,
        [](double d, double squeezed, double left, double shrinkage) {
            return 2 * d * (squeezed * left + (1 - squeezed) * shrinkage);
        });
    estimate.readingFall = fallOf(estimate.closingMm, plan, bench);
    // Two beads on each sheet, half ellipses of height h and width 2 h: together π h², off a sheet
    // of thickness s.
    const double mm = static_cast<double>(plan.thicknessUm) / 1e3;
    const double least = static_cast<double>(plan.beadMinUm.value()) / 1e3;
    const Ends bead{least, least, least + kBeadAboveMinimumMm};
    const Ends thickness{mm, mm, mm};
    estimate.sheetLossMm =
        over(melt, kSqueezed, bead, thickness, [](double d, double squeezed, double h, double s) {
            return std::numbers::pi * h * h / s + d * squeezed;
        });
    estimate.basis =
        "an estimate: melt depth from trials of ours on PE-HD" +
        std::string(
            plan.material == "PE-HD"
                ? ""
                : ", scaled by the closed melting solution with values of mixed "
                  "standing") +
        ", half of it squeezed out in joining, a tenth of that after the lock, the rest "
        "shrinking as it sets; the spread is our judgement";
    return estimate;
}

} // namespace seamclock
