#include "app/text/coupon_words.h"

#include "app/text/card_text.h"
#include "app/text/numbers.h"
#include "app/text/record_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

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

QString factorText(const WeldingFactor& factor, const std::optional<double>& required) {
    // With as many places that what is below the required one does not read as if it reached it.
    const auto shown = [&required](double value) {
        const bool close =
            required && value < *required && std::round(value * 1e3) >= *required * 1e3;
        return numberText(value, close ? 6 : 3);
    };
    const QString value = shown(factor.factor);
    return factor.interval
               ? tr("%1, with 95 % between %2 and %3")
                     .arg(value, shown(factor.interval->low), shown(factor.interval->high))
               : tr("%1, no interval: too few coupons, or too much scatter").arg(value);
}

QString answerText(const WeldingFactor& factor, const std::optional<double>& required) {
    const QString limit = required ? numberText(*required, 2) : QString();
    switch (answerOf(factor, required)) {
    case FactorAnswer::Met:
        return tr("Above the required %1, with all its interval.").arg(limit);
    case FactorAnswer::MetByMean:
        if (!factor.interval) {
            return tr("Reaches the required %1 by its means; there is no interval.").arg(limit);
        }
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

QStringList couponValues(const CouponTested& tested, UnitSystem units) {
    QStringList parts;
    const auto add = [&parts](const QString& words, const QString& numbers) {
        if (!numbers.isEmpty()) {
            parts << words.arg(numbers);
        }
    };
    if (!tested.cracked.empty()) {
        parts << bendText(tested);
    }
    const QString angles = couponNumbers(tested.angleMilli, 1e3, 1);
    if (units == UnitSystem::Metric) {
        add(tr("welded %1 N/mm²"), couponNumbers(tested.weldedPa, kPaPerMpa, 2));
        add(tr("parent sheet %1 N/mm²"), couponNumbers(tested.parentPa, kPaPerMpa, 2));
        add(tr("bend angle %1 °"), angles);
        add(tr("travel of the ram %1 mm"), couponNumbers(tested.ramUm, 1e3, 1));
        return parts;
    }
    const auto turned = [units](const std::vector<std::int64_t>& values, const auto& in) {
        QStringList out;
        for (const std::int64_t one : values) {
            out << measureNumber(in(units, one));
        }
        return out.join(QStringLiteral(" · "));
    };
    add(tr("welded %1 psi"), turned(tested.weldedPa, pressureIn));
    add(tr("parent sheet %1 psi"), turned(tested.parentPa, pressureIn));
    add(tr("bend angle %1 °"), angles);
    add(tr("travel of the ram %1 in"), turned(tested.ramUm, lengthIn));
    return parts;
}

QString couponResult(const CouponSeries& series, UnitSystem units) {
    if (series.factor) {
        return tr("welding factor %1").arg(factorText(*series.factor, series.required));
    }
    const CouponTested& now = series.now();
    return now.cracked.empty() ? couponValues(now, units).join(tr("; ")) : bendText(now);
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
    const CouponVersion& was, const CouponVersion& next, UnitSystem units,
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
    if (old.welder != now.welder) {
        out
            << (!was.welderName.empty() ? tr("welded by %1").arg(plainText(was.welderName))
                : old.welder            ? tr("welded by %1").arg(person(*old.welder))
                                        : tr("no welder named"));
    }
    if (old.procedure != now.procedure) {
        out << (old.procedure.empty() ? tr("no procedure named") : plainText(old.procedure));
    }
    if (old.material != now.material || old.thicknessUm != now.thicknessUm) {
        out << tr("%1, %2").arg(
            plainText(old.material), measureText(lengthIn(units, old.thicknessUm)));
    }
    return out;
}

} // namespace seamclock
