// From the benches to the horn's schedule: what was heard, and what will be for the next minute.
// core/shift says what sounds when; this keeps the history that it asks for, and knows which of it
// the horn has confirmed. What began less than 3 s ago and isn't confirmed stays in the schedule,
// since the horn may be a little late; it begins no slot twice. After a loss of sound whatever
// wasn't confirmed counts as never heard, so that what still matters sounds at once.
#pragma once

#include "app/horn/protocol.h"
#include "core/shift/shift.h"

#include <optional>
#include <string>
#include <unordered_set>
#include <vector>

namespace seamclock {

inline constexpr Milliseconds kSoundAhead{60'000};

class Speaker {
public:
    /// The benches have changed, or may have.
    void show(const Shift& shift);
    /// The whole schedule, if it differs from the last one given or that one runs out. Call it on
    /// every change and a few times a second. A boot other than before starts anew.
    std::optional<HornSchedule> update(const Instant& now);
    /// The horn has played this slot whole.
    void heard(const std::string& slot);
    /// The next update gives the whole schedule, whether or not it differs.
    void again() { m_changed = m_whole = true; }
    /// There is a new horn, which knows nothing: the next update gives a whole schedule.
    void restart(const Instant& now);

private:
    void remember(Milliseconds now);
    void forgetOld(const Instant& now);
    std::vector<HornSlot> soundSlots(const Instant& now);

    Shift m_shift;
    std::string m_bootId;
    std::vector<Sounding> m_history;         // started, by start
    std::vector<Sounding> m_ahead;           // what the schedule says from then on
    Milliseconds m_until{0};                 // how far m_ahead goes
    std::unordered_set<std::string> m_heard; // slots' ids
    std::vector<HornSlot> m_sent;
    std::int64_t m_generation = 0;
    bool m_changed = true;
    bool m_whole = true;
};

} // namespace seamclock
