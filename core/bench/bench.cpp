#include "core/bench/bench.h"

#include <algorithm>

namespace seamclock {

Force SpringScale::rate() const {
    Force sum;
    for (const Force& each : ratePerUnit) {
        sum = sum + each;
    }
    return sum;
}

Length GapRule::gap(Length thickness) const {
    const Length asked = std::max(thickness * factor, floor);
    return cap ? std::min(asked, *cap) : asked;
}

} // namespace seamclock
