// What the virtual operator does next, as a pure function of the weld, his seed and his faults. He
// keeps no memory of his own: what he has done is what the weld's events say. So he can be killed
// at any moment and goes on the same. His times are plausible for a practised hand and invented
// here [practice]; later the virtual bench's physics will say when the bead stands.
#pragma once

#include "core/practice/virtual_operator.h"

#include <optional>

namespace seamclock {

struct Act {
    Milliseconds due{0}; // weld time, the lower count: cooling is waited for with it
    WeldDetail d;
};

struct Hand {
    std::uint64_t seed = 1;
    std::int64_t handPercent = 100;
    RehearseFaults faults;
};

/// Empty: the weld is over. `due` may lie in the past: then it is to be done at once.
std::optional<Act> nextAct(const Weld& weld, const Hand& hand);

/// OutOfRange: a fault that can't be made with this plan; the detail names the value and the
/// allowed range.
Result<void> checkFaults(const RehearseFaults& faults, const WeldPlan& plan);

} // namespace seamclock
