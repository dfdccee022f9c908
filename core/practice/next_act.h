// What the virtual operator does next, as a pure function of the weld, his seed and his faults. He
// keeps no memory of his own: what he has done is what the weld's events say. So he can be killed
// at any moment and goes on the same. When a bead stands and what a scale shows is plausible and
// invented here [practice]; with physics the virtual bench says it instead (bench_weld.h), and this
// is asked only for what follows: the reasons that are owed, and the closing.
#pragma once

#include "core/practice/hand.h"
#include "core/weld/fold.h"

#include <optional>

namespace seamclock {

struct Act {
    Milliseconds due{0}; // weld time, the lower count: cooling is waited for with it
    WeldDetail d;
};

/// Empty: the weld is over. `due` may lie in the past: then it is to be done at once. The hand's
/// faults are all that he makes: whoever wants its slips too has put them in (withSlips).
std::optional<Act> nextAct(const Weld& weld, const Hand& hand);

/// How much bead, of the least, ends alignment where that is the fault [percent].
inline constexpr std::int64_t kThinBeadPercent = 66;
/// What a low reading has of the band's lower end, above zero [percent].
inline constexpr std::int64_t kLowReadingPercent = 85;
inline constexpr std::int64_t kLeftLowPercent = 45;
inline constexpr std::int64_t kColderMc = 8000;       // than the window, and welded all the same
inline constexpr Milliseconds kShortOfSoak{6000};     // a plate tapped out too early, taken back
inline constexpr Milliseconds kSecondThought{2000};   // until he takes it back
inline constexpr Milliseconds kBackdateThought{1500}; // until he corrects the instant
inline constexpr Milliseconds kLockAfterReading{1400};
/// In that share of an interrupted phase's time [percent].
inline constexpr std::int64_t kAbortAtPercent = 40;

} // namespace seamclock
