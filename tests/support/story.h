// A weld told step by step, for tests: a plan of our own invention, one clock that moves as the
// story does, and each step through the same front doors as the program's. The numbers are nobody's
// data; tests that hold the program against the trade are in tests/standards.
#pragma once

#include "core/weld/fold.h"
#include "core/weld/intent.h"

#include <string>

namespace seamclock::test {

/// Every value is round and different from the others, so that a mix-up shows.
WeldPlan inventedPlan();
WeldOpened inventedOpening(const WeldPlan& plan = inventedPlan());
/// The n of the last such reading; 0 if there is none.
std::int64_t lastReading(const Weld& weld, ReadingPhase phase);

class Story {
public:
    explicit Story(const WeldPlan& plan = inventedPlan());
    explicit Story(const WeldOpened& opened);

    /// Moves the clock on.
    Story& wait(Milliseconds step);
    Story& waitUntil(Milliseconds weldTime);
    /// The machine starts again after `off` by its wall clock.
    Story& reboot(Milliseconds off, const std::string& bootId = "boot-2");

    /// Applies an event that must fit; a test fails (and says why) if it doesn't.
    Story& then(const WeldDetail& detail);
    /// What apply answers, without changing the story.
    Result<Weld> attempt(const WeldDetail& detail) const;
    Result<Weld>
    attemptIntent(const WeldDetail& detail, std::optional<std::int64_t> onto = {}) const;

    // A good weld, in stretches: each goes to the end of the phase, on target.
    Story& prepare();    // all checks passed
    Story& align();      // prepared, aligned 50 s, bead of 2 mm: soak has just begun
    Story& soak();       // … plate has just left
    Story& changeOver(); // … faces have just met
    Story& buildUp();    // … locked, cooling has just begun
    Story& cool();       // … re-checks read, cooling is just over
    Story& release();    // … all release steps done
    Story& inspect();    // … bead measured, numbered
    Story& close();      // … closed with its verdict

    const Weld& weld() const { return m_weld; }
    const State& state() const { return m_weld.state; }
    Instant now() const { return m_now; }
    WeldTime time() const;

private:
    Instant m_now;
    Weld m_weld;
};

} // namespace seamclock::test
