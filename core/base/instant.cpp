#include "core/base/instant.h"

#include <algorithm>
#include <cstdio>

namespace seamclock {

namespace {

struct Fields {
    int year;
    unsigned month;
    unsigned day;
    int hour;
    int minute;
    int second;
    int milli;
};

Fields split(Milliseconds sinceEpoch, std::chrono::minutes offset) {
    using namespace std::chrono;
    // A damaged record may hold any number: ISO 8601 has four digits for the year.
    constexpr sys_time<milliseconds> kFirst{sys_days{year{0} / 1 / 2}};
    constexpr sys_time<milliseconds> kLast{sys_days{year{9999} / 12 / 30}};
    const milliseconds utc =
        std::clamp(sinceEpoch, kFirst.time_since_epoch(), kLast.time_since_epoch());
    const sys_time<milliseconds> at{utc + std::clamp(offset, -minutes(24h), minutes(24h))};
    const auto midnight = floor<days>(at);
    const year_month_day date{midnight};
    const hh_mm_ss clock{at - midnight};
    return {
        static_cast<int>(date.year()),
        static_cast<unsigned>(date.month()),
        static_cast<unsigned>(date.day()),
        static_cast<int>(clock.hours().count()),
        static_cast<int>(clock.minutes().count()),
        static_cast<int>(clock.seconds().count()),
        static_cast<int>(clock.subseconds().count())};
}

} // namespace

std::string toIsoUtc(Milliseconds utc) {
    const Fields f = split(utc, std::chrono::minutes(0));
    char text[48];
    std::snprintf(
        text, sizeof text, "%04d-%02u-%02uT%02d:%02d:%02d.%03dZ", f.year, f.month, f.day, f.hour,
        f.minute, f.second, f.milli);
    return text;
}

std::string toIsoLocal(Milliseconds utc, std::chrono::minutes offset) {
    const Fields f = split(utc, offset);
    const long long total = offset.count();
    const long long size = total < 0 ? -total : total;
    char text[64];
    std::snprintf(
        text, sizeof text, "%04d-%02u-%02uT%02d:%02d:%02d%c%02lld:%02lld", f.year, f.month, f.day,
        f.hour, f.minute, f.second, total < 0 ? '-' : '+', size / 60, size % 60);
    return text;
}

std::string toIsoDate(Milliseconds utc, std::chrono::minutes offset) {
    const Fields f = split(utc, offset);
    char text[24];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", f.year, f.month, f.day);
    return text;
}

} // namespace seamclock
