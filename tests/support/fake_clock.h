// A clock that shows what a test sets. A log's writer thread reads it too.
#pragma once

#include "core/base/instant.h"

#include <mutex>
#include <string>
#include <utility>

namespace seamclock::test {

class FakeClock : public Clock {
public:
    FakeClock() {
        m_now.boot = Milliseconds(5'000'000);
        m_now.bootId = "boot-1";
        m_now.utc = Milliseconds(1'893'996'000'000);
        m_now.offset = std::chrono::minutes(60);
    }

    Instant now() const override {
        const std::lock_guard<std::mutex> held(m_mutex);
        return m_now;
    }
    void wait(Milliseconds gap) {
        change([&](Instant& at) { at.boot += gap, at.utc += gap; });
    }
    void setWallClock(Milliseconds by) {
        change([&](Instant& at) { at.utc += by; });
    }
    /// The machine starts again; its wall clock then shows `off` more than before.
    void reboot(Milliseconds off, const std::string& bootId = "boot-2") {
        change([&](Instant& at) {
            at.boot = Milliseconds(20'000);
            at.bootId = bootId;
            at.utc += off;
        });
    }

private:
    template <class Change>
    void change(Change how) {
        const std::lock_guard<std::mutex> held(m_mutex);
        how(m_now);
    }
    mutable std::mutex m_mutex;
    Instant m_now;
};

} // namespace seamclock::test
