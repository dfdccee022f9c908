#include "app/platform/boot_pacer.h"

#include <cassert>
#include <cerrno>
#include <cmath>
#include <time.h>

namespace seamclock {

BootPacer::BootPacer(double speed) : m_speed(speed) {
    assert(std::isfinite(speed) && speed > 0);
}

void BootPacer::wait(Milliseconds gap) {
    if (gap <= Milliseconds(0))
        return;
    constexpr double kNanosPerMilli = 1e6;
    constexpr double kLongest =
        1e17; // three years: beyond it, the sum would not fit a timespec's type
    const double nanos =
        std::fmin(static_cast<double>(gap.count()) / m_speed * kNanosPerMilli, kLongest);
    timespec due{};
    clock_gettime(CLOCK_BOOTTIME, &due);
    const auto total = static_cast<long long>(nanos) + due.tv_nsec;
    constexpr long long kNanosPerSecond = 1'000'000'000;
    due.tv_sec += static_cast<time_t>(total / kNanosPerSecond);
    due.tv_nsec = static_cast<long>(total % kNanosPerSecond);
    while (clock_nanosleep(CLOCK_BOOTTIME, TIMER_ABSTIME, &due, nullptr) == EINTR) {
    }
}

} // namespace seamclock
