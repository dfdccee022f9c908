#include "app/text/numbers.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr std::int64_t kSecond = 1000;
constexpr QChar kMinus(0x2212); // as wide as a plus: seen from three metres, which a hyphen isn't

QLocale plain() {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale;
}

QString minutesText(std::int64_t seconds) {
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

std::int64_t floorTo(std::int64_t value, std::int64_t step) {
    const std::int64_t down = value / step * step;
    return down > value ? down - step : down;
}

std::int64_t stepOf(std::int64_t divisionMilli) {
    // A tenth of the unit, or finer where the scale itself is.
    return decimalsOf(divisionMilli) <= 1 ? 100 : 10;
}

} // namespace

QString leftText(Milliseconds left) {
    const std::int64_t ms = std::max<std::int64_t>(left.count(), 0);
    return minutesText((ms + kSecond - 1) / kSecond);
}

QString goneText(Milliseconds gone) {
    return minutesText(std::max<std::int64_t>(gone.count(), 0) / kSecond);
}

QString secondsText(Milliseconds time) {
    return plain().toString(static_cast<double>(floorTo(time.count(), 100)) / 1000.0, 'f', 1);
}

QString timeText(Milliseconds time) {
    return time.count() < 60 * kSecond ? secondsText(time) + QStringLiteral(" s") : goneText(time);
}

int decimalsOf(std::int64_t divisionMilli) {
    if (divisionMilli % 1000 == 0) {
        return 0;
    }
    if (divisionMilli % 100 == 0) {
        return 1;
    }
    return divisionMilli % 10 == 0 ? 2 : 3;
}

QString readingText(std::int64_t milli, std::int64_t divisionMilli) {
    // a scale with a line for each whole unit is read to half a unit
    const int least = divisionMilli <= 1000 ? 1 : 0;
    return numberText(
        static_cast<double>(milli) / 1000.0, std::max(decimalsOf(divisionMilli), least));
}

QString lowEndText(std::int64_t milli, std::int64_t divisionMilli) {
    const std::int64_t step = stepOf(divisionMilli);
    const std::int64_t up = -floorTo(-milli, step);
    return numberText(static_cast<double>(up) / 1000.0, step == 100 ? 1 : 2);
}

QString highEndText(std::int64_t milli, std::int64_t divisionMilli) {
    const std::int64_t step = stepOf(divisionMilli);
    return numberText(static_cast<double>(floorTo(milli, step)) / 1000.0, step == 100 ? 1 : 2);
}

QString millimetresText(std::int64_t um, int decimals) {
    int needed = 0;
    for (std::int64_t rest = um % 1000; rest % 1000 != 0 && needed < 3; rest *= 10) {
        ++needed;
    }
    return numberText(static_cast<double>(um) / 1000.0, std::max(decimals, needed));
}

QString celsiusText(std::int64_t milliC) {
    return numberText(std::round(static_cast<double>(milliC) / 1000.0), 0);
}

QString numberText(double value, int decimals) {
    const double kept = std::round(value * std::pow(10.0, decimals));
    const QString text = plain().toString(kept == 0 ? 0.0 : value, 'f', decimals); // never "-0.0"
    return kept < 0 ? QString(text).replace(QLatin1Char('-'), kMinus) : text;
}

QString wallClockText(const Instant& at) {
    return wallClockText(at, Milliseconds(0));
}

QString wallClockText(const Instant& at, Milliseconds ahead) {
    constexpr std::int64_t kDay = 24 * 60 * 60;
    const std::int64_t local =
        floorTo(at.utc.count() + ahead.count(), kSecond) / kSecond + at.offset.count() * 60;
    const std::int64_t ofDay = ((local % kDay) + kDay) % kDay;
    return QStringLiteral("%1:%2").arg(ofDay / 3600).arg(ofDay / 60 % 60, 2, 10, QLatin1Char('0'));
}

} // namespace seamclock
