// Numbers as people at a bench read them: durations, scale readings, lengths, temperatures, in the
// language's own decimals. It rounds so that what is shown is never on the wrong side: what is left
// of a time is rounded up, what has gone by is rounded down, and a band is shown no wider than it
// is.
#pragma once

#include "core/base/instant.h"
#include "core/plan/plan.h"

#include <QString>
#include <cstdint>

namespace seamclock {

/// "1:12": what is left, rounded up to the second; nothing left is "0:00".
QString leftText(Milliseconds left);
/// "1:12": what has gone by, whole seconds.
QString goneText(Milliseconds gone);
/// "8.8": seconds with one decimal, rounded down.
QString secondsText(Milliseconds time);
/// "1:09" from a minute on, else "8.8 s".
QString timeText(Milliseconds time);

/// As many decimals as a scale of this division has.
int decimalsOf(std::int64_t divisionMilli);
/// "20.0": thousandths of the scale's unit at the division's decimals, and at least one
/// where a line means a unit or less.
QString readingText(std::int64_t milli, std::int64_t divisionMilli);
/// The ends of a band with one decimal more than the division's where they need it, rounded inward.
QString lowEndText(std::int64_t milli, std::int64_t divisionMilli);
QString highEndText(std::int64_t milli, std::int64_t divisionMilli);

/// "8" or "2.5": millimetres, with `decimals` at least.
QString millimetresText(std::int64_t um, int decimals = 0);
/// "212": whole degrees.
QString celsiusText(std::int64_t milliC);
/// A plain number in the language's decimals.
QString numberText(double value, int decimals);
/// "14:05": the wall clock at that place.
QString wallClockText(const Instant& at);
/// Of an instant that lies `ahead` of `at`.
QString wallClockText(const Instant& at, Milliseconds ahead);

} // namespace seamclock
