#include "core/session/clock_watch.h"

namespace seamclock {

std::optional<Milliseconds> ClockWatch::see(const Instant& now) {
    const std::optional<Instant> last = m_last;
    m_last = now;
    if (!last || last->bootId != now.bootId || now.boot < last->boot) {
        return {};
    }
    const Milliseconds jump = (now.utc - last->utc) - (now.boot - last->boot);
    if (std::chrono::abs(jump) <= kJumpTolerance) {
        return {};
    }
    return jump;
}

} // namespace seamclock
