// A take seen again at any of its times: the bench made anew from lesson and acts. It keeps the
// bench at a few times, so that going there costs at most a few seconds of process time, worked
// out.
#pragma once

#include "core/practice/practice_take.h"

#include <functional>

namespace seamclock {

class PracticeReplay {
public:
    /// Works the whole take out; `each` is told the share that is done, and stops it by false
    /// (then: Refused). Malformed: acts that this bench refuses.
    static Result<PracticeReplay> make(
        const BenchSetup& setup, const PracticeTake& take,
        const std::function<bool(double share)>& each = {});

    Milliseconds length() const { return m_take.length; }
    const PracticeTake& take() const { return m_take; }
    /// The bench at that time, kept within 0 and the take's length.
    VirtualBench at(Milliseconds time) const;

private:
    PracticeReplay() = default;

    PracticeTake m_take;
    std::vector<VirtualBench> m_kept; // by time
};

} // namespace seamclock
