#include "core/session/align_median.h"

#include "core/log/log_reader.h"
#include "core/weld/record.h"

#include <algorithm>

namespace seamclock {

namespace {

constexpr std::size_t kLookedThrough = 500;
constexpr std::size_t kMost = 10;
constexpr std::size_t kLeast = 5;

std::optional<Milliseconds> alignmentOf(const std::vector<Event>& events) {
    const auto weld = fold(events);
    if (!weld) {
        return {}; // a damaged weld is the log's to report; it has no time to give
    }
    for (const PhaseRecord& phase : record(*weld).phases) {
        if (phase.phase == "alignment" && phase.took) {
            return phase.took->hi;
        }
    }
    return {};
}

} // namespace

Result<std::optional<AlignTimes>> alignTimes(
    LogReader& log, const std::string& bench, const std::string& procedure,
    std::int64_t thicknessUm) {
    JointFilter filter;
    filter.bench = bench;
    filter.limit = kLookedThrough;
    const auto lines = log.joints(filter);
    if (!lines) {
        return tl::unexpected<Error>(lines.error());
    }
    std::vector<Milliseconds> times;
    for (const JointLine& line : *lines) {
        const bool alike = line.procedure == procedure && line.thicknessUm == thicknessUm &&
                           line.phase == "closed";
        if (!alike) {
            continue;
        }
        const auto events = log.weldEvents(line.weld);
        if (!events) {
            return tl::unexpected<Error>(events.error());
        }
        if (const auto time = alignmentOf(*events)) {
            times.push_back(*time);
        }
        if (times.size() == kMost) {
            break;
        }
    }
    if (times.size() < kLeast) {
        return std::optional<AlignTimes>();
    }
    std::sort(times.begin(), times.end());
    return std::optional(AlignTimes{times.front(), times[(times.size() - 1) / 2], times.back()});
}

} // namespace seamclock
