#include "core/report/cue_history.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace seamclock {
namespace {

using Key = std::tuple<CueKind, int, Milliseconds>;

} // namespace

std::vector<CueDue> cueHistory(const std::vector<Event>& events) {
    std::vector<CueDue> history;
    if (events.empty()) {
        return history;
    }
    auto weld = open(events.front());
    std::set<Key> told;
    for (std::size_t i = 0; weld && i + 1 < events.size(); ++i) {
        const Instant& at = events[i].at;
        const Instant& next = events[i + 1].at;
        const auto t = weldTimeAt(*weld, at);
        if (t && at.bootId == next.bootId && next.boot >= at.boot) {
            for (const Cue& cue : cuesUntil(*weld, *t, next.boot - at.boot)) {
                if (!told.emplace(cue.kind, cue.count, at.boot + cue.onset).second) {
                    continue;
                }
                // One that a take-back put into the past stands from the event that put it there.
                const Milliseconds onset = std::max(cue.onset, Milliseconds(0));
                history.push_back({events[i].n, at.utc + onset, at.boot + onset, cue});
            }
        }
        weld = apply(*weld, events[i + 1]);
    }
    return history;
}

} // namespace seamclock
