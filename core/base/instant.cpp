#include "core/base/instant.h"

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

Fields split(Milliseconds sinceEpoch) {
    using namespace std::chrono;
    const sys_time<milliseconds> at{sinceEpoch};
    const auto midnight = floor<days>(at);
    const year_month_day date{midnight};
    const hh_mm_ss clock{at - midnight};
    return {static_cast<int>(date.year()),
            static_cast<unsigned>(date.month()),
            static_cast<unsigned>(date.day()),
            static_cast<int>(clock.hours().count()),
            static_cast<int>(clock.minutes().count()),
            static_cast<int>(clock.seconds().count()),
            static_cast<int>(clock.subseconds().count())};
}

} // namespace

std::string toIsoUtc(Milliseconds utc) {
    const Fields f = split(utc);
    char text[48];
    std::snprintf(
        text, sizeof text, "%04d-%02u-%02uT%02d:%02d:%02d.%03dZ", f.year, f.month, f.day, f.hour,
        f.minute, f.second, f.milli);
    return text;
}

std::string toIsoLocal(Milliseconds utc, std::chrono::minutes offset) {
    const Fields f = split(utc + offset);
    const long long total = offset.count();
    const long long size = total < 0 ? -total : total;
    char text[64];
    std::snprintf(
        text, sizeof text, "%04d-%02u-%02uT%02d:%02d:%02d%c%02lld:%02lld", f.year, f.month, f.day,
        f.hour, f.minute, f.second, total < 0 ? '-' : '+', size / 60, size % 60);
    return text;
}

std::string toIsoDate(Milliseconds utc, std::chrono::minutes offset) {
    const Fields f = split(utc + offset);
    char text[24];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", f.year, f.month, f.day);
    return text;
}

} // namespace seamclock
