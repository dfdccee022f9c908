#include "core/quality/welding_factor.h"

#include "core/base/plain_number.h"
#include "core/plan/sheets.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>
#include <gsl/gsl_cdf.h>
#include <limits>

namespace seamclock {

namespace {

constexpr double kUpperTail = 0.975; // two-sided, 95 %

Result<StrengthMean> meanOf(const char* which, const std::vector<double>& strengths) {
    if (strengths.empty()) {
        return fail(
            ErrorCode::Missing,
            fmt::format("no {} coupon is given; allowed: 1 to {}", which, kMostCoupons));
    }
    if (strengths.size() > kMostCoupons) {
        return fail(
            ErrorCode::OutOfRange,
            fmt::format("{} {} coupons; allowed: 1 to {}", strengths.size(), which, kMostCoupons));
    }
    StrengthMean out;
    out.count = strengths.size();
    const auto count = static_cast<double>(out.count);
    for (const double one : strengths) {
        if (!(one >= kLeastStrengthMpa && one <= kGreatestStrengthMpa)) {
            return fail(
                ErrorCode::OutOfRange,
                fmt::format(
                    "a {} strength of {} MPa; allowed: {} to {} MPa", which, plainNumber(one),
                    plainNumber(kLeastStrengthMpa), plainNumber(kGreatestStrengthMpa)));
        }
        out.meanMpa += one;
    }
    out.meanMpa /= count; // once: each division would round
    double squares = 0;
    for (const double one : strengths) {
        squares += (one - out.meanMpa) * (one - out.meanMpa);
    }
    out.sdMpa = out.count > 1 ? std::sqrt(squares / (count - 1)) : 0;
    return out;
}

std::optional<FactorInterval>
intervalOf(const StrengthMean& welded, const StrengthMean& parent, double factor) {
    if (welded.count < 2 || parent.count < 2) {
        return std::nullopt;
    }
    const auto share = [](const StrengthMean& of) {
        return of.sdMpa * of.sdMpa / static_cast<double>(of.count);
    };
    const double a = share(welded);
    const double b = factor * factor * share(parent);
    if (a + b <= 0) {
        return FactorInterval{factor, factor, std::numeric_limits<double>::infinity(), 0};
    }
    FactorInterval out;
    out.freedom = (a + b) * (a + b) /
                  (a * a / static_cast<double>(welded.count - 1) +
                   b * b / static_cast<double>(parent.count - 1));
    out.t95 = gsl_cdf_tdist_Pinv(kUpperTail, out.freedom);
    // (mw - r mp)² = t² (sw² / nw + r² sp² / np), solved for r.
    const double g = out.t95 * out.t95 * share(parent) / (parent.meanMpa * parent.meanMpa);
    if (g >= 1) {
        return std::nullopt;
    }
    const double half = out.t95 / parent.meanMpa * std::sqrt(a * (1 - g) + b);
    out.low = (factor - half) / (1 - g);
    out.high = (factor + half) / (1 - g);
    return out;
}

} // namespace

Result<WeldingFactor>
weldingFactor(const std::vector<double>& weldedMpa, const std::vector<double>& parentMpa) {
    const auto welded = meanOf("welded", weldedMpa);
    if (!welded) {
        return tl::unexpected<Error>(welded.error());
    }
    const auto parent = meanOf("parent", parentMpa);
    if (!parent) {
        return tl::unexpected<Error>(parent.error());
    }
    WeldingFactor out{*welded, *parent, welded->meanMpa / parent->meanMpa, {}};
    out.interval = intervalOf(out.welded, out.parent, out.factor);
    return out;
}

std::optional<double> requiredFactor(std::string_view material) {
    constexpr std::array<std::string_view, 4> kKnown{"PE-HD", "PP", "PVC-U", "PVDF"};
    constexpr double kShortTerm = 0.9;
    const bool known = std::any_of(kKnown.begin(), kKnown.end(), [material](std::string_view one) {
        return isSamePlastic(one, material); // as its sheet is called: PP-H, PE 100
    });
    return known ? std::optional(kShortTerm) : std::nullopt;
}

std::string_view toString(FactorAnswer answer) {
    switch (answer) {
    case FactorAnswer::Met:
        return "met";
    case FactorAnswer::MetByMean:
        return "met_by_mean";
    case FactorAnswer::NotMet:
        return "not_met";
    case FactorAnswer::NoRequirement:
        return "no_requirement";
    }
    return "";
}

FactorAnswer answerOf(const WeldingFactor& factor, const std::optional<double>& required) {
    if (!required) {
        return FactorAnswer::NoRequirement;
    }
    // What is the required factor but for the last bits of a double reaches it.
    constexpr double kBits = 1e-9;
    if (factor.factor < *required - kBits) {
        return FactorAnswer::NotMet;
    }
    return factor.interval && factor.interval->low >= *required - kBits ? FactorAnswer::Met
                                                                        : FactorAnswer::MetByMean;
}

} // namespace seamclock
