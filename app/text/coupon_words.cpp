#include "app/text/coupon_words.h"

#include "app/text/numbers.h"
#include "app/text/record_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace seamclock {
namespace {

struct Coupons {
    Q_DECLARE_TR_FUNCTIONS(Coupons)
};

QString tr(const char* text) {
    return Coupons::tr(text);
}

constexpr double kPaPerMpa = 1e6;

} // namespace

QString testWord(const std::string& test) {
    return test == "bend" ? tr("bend test") : tr("tensile test");
}

QString couponNumbers(const std::vector<std::int64_t>& values, double per, int decimals) {
    QStringList words;
    for (const std::int64_t one : values) {
        words << numberText(static_cast<double>(one) / per, decimals);
    }
    return words.join(QStringLiteral(" · "));
}

QString factorText(const WeldingFactor& factor) {
    const QString value = numberText(factor.factor, 3);
    return factor.interval ? tr("%1, with 95 % between %2 and %3")
                                 .arg(
                                     value, numberText(factor.interval->low, 3),
                                     numberText(factor.interval->high, 3))
                           : tr("%1, no interval: too few coupons, or too much scatter").arg(value);
}

QString answerText(const WeldingFactor& factor, const std::optional<double>& required) {
    const QString limit = required ? numberText(*required, 2) : QString();
    switch (answerOf(factor, required)) {
    case FactorAnswer::Met:
        return tr("Above the required %1, with all its interval.").arg(limit);
    case FactorAnswer::MetByMean:
        return tr("Reaches the required %1 by its means, not with all its interval.").arg(limit);
    case FactorAnswer::NotMet:
        return tr("Below the required %1.").arg(limit);
    case FactorAnswer::NoRequirement:
        break;
    }
    return tr("No required factor is known for this material.");
}

std::int64_t cracksOf(const CouponTested& tested) {
    return std::count(tested.cracked.begin(), tested.cracked.end(), 1);
}

QString bendText(const CouponTested& tested) {
    return tr("%1 of %2 cracked").arg(cracksOf(tested)).arg(tested.cracked.size());
}

QStringList couponValues(const CouponTested& tested) {
    QStringList parts;
    const auto add = [&parts](
                         const QString& words, const std::vector<std::int64_t>& values, double per,
                         int decimals) {
        if (!values.empty()) {
            parts << words.arg(couponNumbers(values, per, decimals));
        }
    };
    if (!tested.cracked.empty()) {
        parts << bendText(tested);
    }
    add(tr("welded %1 N/mm²"), tested.weldedPa, kPaPerMpa, 2);
    add(tr("parent sheet %1 N/mm²"), tested.parentPa, kPaPerMpa, 2);
    add(tr("bend angle %1 °"), tested.angleMilli, 1e3, 1);
    add(tr("travel of the ram %1 mm"), tested.ramUm, 1e3, 1);
    return parts;
}

QString couponResult(const CouponSeries& series) {
    if (series.factor) {
        return tr("welding factor %1").arg(factorText(*series.factor));
    }
    const CouponTested& now = series.now();
    return now.cracked.empty() ? couponValues(now).join(tr("; ")) : bendText(now);
}

QString couponTitle(const CouponTested& tested) {
    QString title = testWord(tested.test);
    title[0] = title[0].toUpper();
    return tested.standard.empty() ? title : tr("%1 by %2").arg(title, plainText(tested.standard));
}

QString
couponWelder(const CouponSeries& series, const std::function<QString(const std::string&)>& person) {
    return !series.joinedByName.empty() ? plainText(series.joinedByName)
           : series.joinedBy.empty()    ? QString()
                                        : person(series.joinedBy);
}

QStringList couponMoves(
    const CouponVersion& was, const CouponVersion& next,
    const std::function<QString(const std::string&)>& person) {
    QStringList out;
    const CouponTested& old = was.tested;
    const CouponTested& now = next.tested;
    if (old.weld != now.weld) {
        out
            << (was.joint > 0 ? tr("joint %1").arg(was.joint)
                : old.weld    ? plainText(*old.weld)
                              : tr("a procedure trial"));
    }
    if (old.test != now.test || old.standard != now.standard) {
        out
            << (old.standard.empty()
                    ? testWord(old.test)
                    : tr("%1 by %2").arg(testWord(old.test), plainText(old.standard)));
    }
    if (old.welder != now.welder && old.welder) {
        out << tr("welded by %1").arg(person(*old.welder));
    }
    if (old.material != now.material || old.thicknessUm != now.thicknessUm) {
        out << tr("%1, %2 mm")
                   .arg(
                       plainText(old.material), QLocale().toString(
                                                    static_cast<double>(old.thicknessUm) / 1e3, 'g',
                                                    QLocale::FloatingPointShortest));
    }
    return out;
}

} // namespace seamclock
