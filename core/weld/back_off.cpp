#include "core/weld/back_off.h"

#include <algorithm>

namespace seamclock {

std::optional<BackOff> backOffIn(const std::vector<Retained>& standing, const WeldPlan& plan) {
    if (!plan.scale) {
        return std::nullopt;
    }
    const std::int64_t high = plan.scale->alignment.highMilli;
    BackOff found;
    bool over = false;
    bool back = false;
    for (const Retained& event : standing) {
        const auto* taken = std::get_if<ReadingTaken>(&event.d);
        if (taken == nullptr || taken->phase != ReadingPhase::Alignment) {
            continue;
        }
        if (taken->readingMilli > high) {
            found.overMilli =
                over ? std::max(found.overMilli, taken->readingMilli) : taken->readingMilli;
            over = true;
            back = false;
        } else if (over) {
            found.backMilli = taken->readingMilli;
            back = true;
        }
    }
    return back ? std::optional(found) : std::nullopt;
}

} // namespace seamclock
