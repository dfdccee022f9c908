#include "app/platform/paced_clock.h"

#include "core/base/uuid.h"

#include <algorithm>

namespace seamclock {

PacedClock::PacedClock(const Clock& machine, std::optional<Milliseconds> utc)
    : m_machine(machine), m_began(machine.now()), m_from(m_began.boot), m_boot(m_began.boot) {
    m_began.bootId = "practice:" + newUuid();
    m_began.utc = utc.value_or(m_began.utc);
}

Milliseconds PacedClock::bootAt(Milliseconds machine) const {
    const Milliseconds gone = std::max(machine - m_from, Milliseconds(0));
    const Milliseconds ahead = std::max(m_until - m_boot, Milliseconds(0));
    // The machine's time that the fast part takes, to its last millisecond.
    const Milliseconds fast = (ahead + Milliseconds(m_factor - 1)) / m_factor;
    return gone < fast ? m_boot + gone * m_factor : m_boot + ahead + (gone - fast);
}

Instant PacedClock::now() const {
    const std::lock_guard<std::mutex> held(m_mutex);
    Instant now = m_began;
    now.boot = bootAt(m_machine.now().boot);
    now.utc += now.boot - m_began.boot;
    return now;
}

void PacedClock::run(int factor, Milliseconds until) {
    const std::lock_guard<std::mutex> held(m_mutex);
    const Milliseconds machine = m_machine.now().boot;
    m_boot = bootAt(machine);
    m_from = machine;
    m_factor = std::max(factor, 1);
    m_until = m_factor > 1 ? until : m_boot;
}

} // namespace seamclock
