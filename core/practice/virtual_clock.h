// The time a rehearsal lives in when it doesn't live in the machine's: it stands still until the
// operator moves it.
#pragma once

#include "core/base/instant.h"

#include <mutex>
#include <utility>

namespace seamclock {

/// now() may be called from the log writer's thread meanwhile.
class VirtualClock : public Clock {
public:
    explicit VirtualClock(Instant start) : m_now(std::move(start)) {}

    Instant now() const override {
        const std::lock_guard<std::mutex> held(m_mutex);
        return m_now;
    }
    /// Both its clocks go on by `gap`.
    void advance(Milliseconds gap) {
        const std::lock_guard<std::mutex> held(m_mutex);
        m_now.boot += gap;
        m_now.utc += gap;
    }
    /// The one on the wall alone is set by `by`, as a hand or the network does it.
    void setWallClock(Milliseconds by) {
        const std::lock_guard<std::mutex> held(m_mutex);
        m_now.utc += by;
    }

private:
    mutable std::mutex m_mutex;
    Instant m_now;
};

} // namespace seamclock
