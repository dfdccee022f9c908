// How long alignment usually takes on a bench: median and range of the last welds like this one.
// The plan stores the median, so that an alignment that takes twice as long is noticed; the range
// is shown beside it and judges nothing, so no plan holds it. The bead ends alignment, never these
// numbers.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/weld/fold.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

class LogReader;

struct AlignTimes {
    Milliseconds fastest{0};
    Milliseconds median{0};
    Milliseconds slowest{0};

    bool operator==(const AlignTimes&) const = default;
};

inline constexpr std::size_t kAlignmentsKept = 10;

/// How long it took in that weld; empty: it has not ended.
std::optional<Milliseconds> alignmentOf(const Weld& weld);

/// Of the last ten closed welds of that bench, procedure and thickness among the last 500 joints,
/// the newest first.
Result<std::vector<Milliseconds>> lastAlignments(
    LogReader& log, const std::string& bench, const std::string& procedure,
    std::int64_t thicknessUm);

/// The median is the lower of the two middle ones where their number is even. Empty: fewer than
/// five.
std::optional<AlignTimes> alignTimesOf(std::vector<Milliseconds> times);

} // namespace seamclock
