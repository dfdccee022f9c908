// A clock for practice at the operator's own screens: it stands for the machine's and may run
// faster for a while. How fast, and until when, is said from outside; between two such words it
// goes on by itself, so that a step pressed between two frames counts at its instant. Its boot is
// one of practice, so that none of its instants can be taken for the machine's.
#pragma once

#include "core/base/instant.h"

#include <mutex>
#include <optional>

namespace seamclock {

class PacedClock : public Clock {
public:
    /// Begins at the machine's present time, or on the wall at `utc`, whatever the machine's says.
    /// The machine's clock must outlive it.
    explicit PacedClock(const Clock& machine, std::optional<Milliseconds> utc = {});

    /// Never goes back. May be called from any thread.
    Instant now() const override;
    /// From now on `factor` times as fast as the machine, until it shows `until`; then true time.
    /// A factor below 1 is taken for 1.
    void run(int factor, Milliseconds until);

private:
    Milliseconds bootAt(Milliseconds machine) const;

    const Clock& m_machine;
    Instant m_began;
    mutable std::mutex m_mutex;
    Milliseconds m_from{0}; // of the machine's boot clock, when it was last told
    Milliseconds m_boot{0}; // what it showed then
    int m_factor = 1;
    Milliseconds m_until{0};
};

} // namespace seamclock
