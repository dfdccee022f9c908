#include "core/practice/shift_pace.h"

#include "core/practice/practice_run.h"

#include <algorithm>

namespace seamclock {

ShiftPace paceOf(const Shift& shift, const Instant& now, Milliseconds horizon, int pace) {
    const bool hurries =
        pace > 1 && !shift.benches.empty() &&
        std::all_of(shift.benches.begin(), shift.benches.end(), [&now](const ShiftBench& bench) {
            return mayHurry(bench.weld, now);
        });
    if (!hurries) {
        return {1, now.boot};
    }
    Milliseconds gap = horizon;
    for (const ShiftBench& bench : shift.benches) {
        gap = std::min(gap, paced(&bench.weld, now, horizon / pace, pace));
    }
    return {pace, now.boot + gap};
}

} // namespace seamclock
