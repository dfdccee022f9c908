// A practice weld while it is made: the virtual bench and the take, led on together with the clock
// that the practice session lives by. The weld itself is made as every weld is, through a session
// on that clock; this knows the bench's side of it only.
#pragma once

#include "core/practice/practice_take.h"
#include "core/practice/virtual_clock.h"
#include "core/weld/fold.h"

namespace seamclock {

class PracticeRun {
public:
    /// The clock must outlive the run; nobody else moves it. Errors as VirtualBench::set.
    static Result<PracticeRun> begin(const SetLesson& set, VirtualClock& clock);

    const SetLesson& set() const { return m_set; }
    const VirtualBench& bench() const { return m_bench; }
    Milliseconds now() const { return m_bench.now(); }

    /// What a hand does now. Refused and OutOfRange as VirtualBench::act; then nothing happened,
    /// but what was Refused is kept among the tries (a wrong order is worth telling).
    Result<void> act(const BenchAct& act);
    void notice(Wrong what);
    void takeCall();
    /// Bench and clock go on by so much process time.
    void advance(Milliseconds gap);
    /// Whether the weld is prepared, the plate stands parked and is still on its way to its target:
    /// there is nothing to do but wait.
    bool waitsForPlate(const Weld& weld) const;

    /// Of the weld that was made here.
    PracticeTake take(const std::string& weld) const;

private:
    PracticeRun(SetLesson set, VirtualBench bench, VirtualClock& clock);

    SetLesson m_set;
    VirtualBench m_bench;
    VirtualClock* m_clock;
    PracticeTake m_take;
};

/// Whether time may run faster now: in alignment, in soak before get ready, in cooling but for a
/// reading that is due; true time from get ready to the lock, and wherever hands are busy. A plate
/// that warms up is the bench's (PracticeRun::waitsForPlate).
bool mayHurry(const Weld& weld, const Instant& now);

/// How much process time a frame of true time is at that pace: never beyond the instant at which it
/// must be true time again. Without a weld it is the frame.
Milliseconds paced(const Weld* weld, const Instant& now, Milliseconds frame, int pace);

/// The paces that are offered: 1, 2, 5, 10, 30.
const std::vector<int>& practicePaces();

} // namespace seamclock
