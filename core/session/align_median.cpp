#include "core/session/align_median.h"

#include "core/log/log_reader.h"

#include <algorithm>

namespace seamclock {

namespace {

constexpr std::size_t kLookedThrough = 500;
constexpr std::size_t kLeast = 5;

} // namespace

std::optional<Milliseconds> alignmentOf(const Weld& weld) {
    std::optional<WeldTime> from;
    std::optional<Milliseconds> took;
    for (const Retained& event : retained(weld.events)) {
        if (std::holds_alternative<AlignmentStarted>(event.d)) {
            from = event.t;
        } else if (std::holds_alternative<SoakStarted>(event.d) && from) {
            took = (event.t - *from).hi;
        }
    }
    return took;
}

Result<std::vector<Milliseconds>> lastAlignments(
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
        auto events = log.weldEvents(line.weld);
        if (!events && events.error().code != ErrorCode::Damaged) {
            return tl::unexpected<Error>(events.error());
        }
        // A damaged weld is the log's to report; it has no time to give.
        const auto weld = events ? foldTaking(*events) : tl::unexpected<Error>(events.error());
        const auto time = weld ? alignmentOf(*weld) : std::nullopt;
        if (time) {
            times.push_back(*time);
        }
        if (times.size() == kAlignmentsKept) {
            break;
        }
    }
    return times;
}

std::optional<AlignTimes> alignTimesOf(std::vector<Milliseconds> times) {
    if (times.size() < kLeast) {
        return std::nullopt;
    }
    std::sort(times.begin(), times.end());
    return AlignTimes{times.front(), times[(times.size() - 1) / 2], times.back()};
}

} // namespace seamclock
