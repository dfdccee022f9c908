#include "app/platform/boot_clock.h"

#include <algorithm>
#include <fstream>
#include <time.h>
#include <utility>

namespace seamclock {

namespace {

Milliseconds read(clockid_t clock) {
    timespec t{};
    clock_gettime(clock, &t);
    return std::chrono::seconds(t.tv_sec) +
           std::chrono::duration_cast<Milliseconds>(std::chrono::nanoseconds(t.tv_nsec));
}

std::chrono::minutes localOffset(Milliseconds utc) {
    const time_t seconds = std::chrono::duration_cast<std::chrono::seconds>(utc).count();
    tm local{};
    if (localtime_r(&seconds, &local) == nullptr)
        return std::chrono::minutes(0);
    return std::chrono::duration_cast<std::chrono::minutes>(std::chrono::seconds(local.tm_gmtoff));
}

/// "8-4-4-4-12" lower-case hexadecimal digits (random(4)).
bool isUuid(const std::string& text) {
    if (text.size() != 36)
        return false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const bool dash = i == 8 || i == 13 || i == 18 || i == 23;
        if (dash ? c != '-' : !((c >= '0' && c <= '9') || (c >= 'a' && c <= 'f')))
            return false;
    }
    return true;
}

} // namespace

Milliseconds bootTime() {
    return read(CLOCK_BOOTTIME);
}

BootClock::BootClock(std::string bootId) : m_bootId(std::move(bootId)) {}

Result<BootClock> BootClock::make(const std::string& bootIdFile) {
    std::ifstream file(bootIdFile);
    std::string id;
    if (!std::getline(file, id)) {
        return fail(
            ErrorCode::Unreadable, "the machine's boot id can't be read from " + bootIdFile +
                                       ": without it no time can be trusted after a restart");
    }
    if (!isUuid(id)) {
        return fail(
            ErrorCode::Malformed, "the machine's boot id in " + bootIdFile + " is \"" +
                                      id.substr(0, 60) + "\", not 32 hexadecimal digits in groups");
    }
    return BootClock(std::move(id));
}

Instant BootClock::now() const {
    Instant at;
    at.boot = bootTime();
    at.utc = read(CLOCK_REALTIME);
    at.bootId = m_bootId;
    at.offset = localOffset(at.utc);
    return at;
}

} // namespace seamclock
