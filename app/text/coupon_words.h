// Tests of strength in a person's words: what was pulled or bent, what came of it, and what that is
// to the factor that is asked for. The shop's pages, the joint's page and paper take theirs from
// here. A factor never stands without its interval, or without saying why there is none.
#pragma once

#include "core/quality/coupons.h"
#include "core/units/measure.h"

#include <QString>
#include <QStringList>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// "tensile test" or "bend test"
QString testWord(const std::string& test);
/// "22.40 · 22.90": each value divided by `per`.
QString couponNumbers(const std::vector<std::int64_t>& values, double per, int decimals);
/// "0.96, with 95 % between 0.91 and 1.01"
QString
factorText(const WeldingFactor& factor, const std::optional<double>& required = std::nullopt);
/// How that is to the required one: "Above the required 0.9, with all its interval."
QString answerText(const WeldingFactor& factor, const std::optional<double>& required);
std::int64_t cracksOf(const CouponTested& tested);
/// "1 of 2 cracked"
QString bendText(const CouponTested& tested);

/// All values of one version: "welded 27.00 · 28.00 N/mm²" and "parent sheet 30.00 N/mm²", or "1 of
/// 2 cracked" and "bend angle 160.0 · 95.5 °".
QStringList couponValues(const CouponTested& tested, UnitSystem units = UnitSystem::Metric);
/// What holds of a series, in short: "welding factor 0.96, with 95 % between 0.91 and 1.01", "1 of
/// 2 cracked"; without coupons of the parent sheet the strengths.
QString couponResult(const CouponSeries& series, UnitSystem units = UnitSystem::Metric);
/// "Tensile test by EN 12814-2", "Bend test".
QString couponTitle(const CouponTested& tested);
/// Who welded what was tested; empty: it isn't told. `person`: how this log calls one of its own.
QString
couponWelder(const CouponSeries& series, const std::function<QString(const std::string&)>& person);
/// What a version was said to be and the next one isn't: "joint 41", "tensile test by EN 12814-2";
/// beside them stand couponValues.
QStringList couponMoves(
    const CouponVersion& was, const CouponVersion& next, UnitSystem units,
    const std::function<QString(const std::string&)>& person);

} // namespace seamclock
