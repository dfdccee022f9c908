#include "app/operate/clock_notice.h"

#include <QCoreApplication>
#include <cstdint>

namespace seamclock {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("ClockNotice", text);
}

std::int64_t nearest(Milliseconds time, std::int64_t unitMs) {
    return (time.count() + unitMs / 2) / unitMs;
}

QString amount(Milliseconds time) {
    constexpr std::int64_t kSecond = 1'000;
    constexpr std::int64_t kMinute = 60 * kSecond;
    constexpr std::int64_t kHour = 60 * kMinute;
    if (time.count() < 2 * kMinute) {
        return tr("%1 s").arg(nearest(time, kSecond));
    }
    if (time.count() < 2 * kHour) {
        return tr("%1 min").arg(nearest(time, kMinute));
    }
    if (time.count() < 48 * kHour) {
        return tr("%1 h").arg(nearest(time, kHour));
    }
    return tr("%1 days").arg(nearest(time, 24 * kHour));
}

} // namespace

QString clockNotice(Milliseconds jump) {
    return jump < Milliseconds(0)
               ? tr("Clock was set %1 back. No time of a weld changed.").arg(amount(-jump))
               : tr("Clock was set %1 ahead. No time of a weld changed.").arg(amount(jump));
}

} // namespace seamclock
