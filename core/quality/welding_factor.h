// How strong a joint is beside the sheet it is made of: the welding factor is the mean strength of
// welded coupons over the mean of parent coupons of the same shape, pulled at the same speed (EN
// 12814-2; trade.md). A handful of coupons fixes it loosely, so it never comes without its interval
// of 95 %. Short term only: a long-term factor is another number and has no place here.
//
// The interval is Fieller's (E. C. Fieller, J. R. Stat. Soc. B 16, 175, 1954): all ratios r for
// which mean(welded) - r · mean(parent) isn't told from 0 by Student's t. The two means scatter
// each in its own way, so the degrees of freedom are Welch's and Satterthwaite's for that
// difference, at the ratio that was found; by that the 95 % are close and not exact.
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

struct StrengthMean {
    std::size_t count = 0;
    double meanMpa = 0;
    double sdMpa = 0; // of single coupons, with count - 1; 0 for one coupon

    bool operator==(const StrengthMean&) const = default;
};

struct FactorInterval {
    double low = 0;
    double high = 0;
    double freedom = 0; // degrees of freedom; infinite where nothing scatters
    double t95 = 0;     // Student's t, two-sided, 95 %

    bool operator==(const FactorInterval&) const = default;
};

struct WeldingFactor {
    StrengthMean welded;
    StrengthMean parent;
    double factor = 0;
    std::optional<FactorInterval> interval; // absent: fewer than two coupons of either, or parents
                                            // that scatter too much to divide by

    bool operator==(const WeldingFactor&) const = default;
};

inline constexpr double kLeastStrengthMpa = 0.1;
inline constexpr double kGreatestStrengthMpa = 1'000;
inline constexpr std::size_t kMostCoupons = 200;

/// Strengths in MPa. Missing: no coupon of either. OutOfRange: a strength or a number of coupons
/// outside the above.
Result<WeldingFactor>
weldingFactor(const std::vector<double>& weldedMpa, const std::vector<double>& parentMpa);

/// The short-term factor that heated-tool butt joints of that material must reach: 0.9 for PE-HD,
/// PP, PVC-U and PVDF (DVS 2203-1; standing: memory). Absent: no number to hand.
std::optional<double> requiredFactor(std::string_view material);
/// Its source with its standing, in a sentence's words.
inline constexpr std::string_view kRequiredFactorSource =
    "DVS 2203-1, short term, heated-tool butt (memory)";

enum class FactorAnswer {
    Met,       // and the whole interval lies above
    MetByMean, // by the factor itself; the interval reaches below
    NotMet,
    NoRequirement
};
std::string_view toString(FactorAnswer answer); // "met", "met_by_mean", "not_met", …
FactorAnswer answerOf(const WeldingFactor& factor, const std::optional<double>& required);

} // namespace seamclock
