// Alignment's pressure that went above its band and was brought back: named for what it is, since
// whoever backs off may leave a gap of air behind. It follows from the readings alone, so a reading
// that is taken back takes it along; it is shown and in the record, and judges nothing (rules 1
// have no row for it).
#pragma once

#include "core/weld/fold.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace seamclock {

struct BackOff {
    std::int64_t overMilli = 0; // the highest reading
    std::int64_t backMilli = 0; // the last one, no higher than the band

    bool operator==(const BackOff&) const = default;
};

/// `standing`: of a weld with that plan, or its readings alone.
std::optional<BackOff> backOffIn(const std::vector<Retained>& standing, const WeldPlan& plan);

} // namespace seamclock
