#include "core/shift/hands.h"

#include "core/weld/cues.h"

#include <algorithm>

namespace seamclock {

bool takesBothHands(const Weld& weld) {
    return std::holds_alternative<ChangingOver>(weld.state) ||
           std::holds_alternative<BuildingUp>(weld.state);
}

HandsCall handsCall(const Weld& weld, const Instant& now) {
    const auto time = weldTimeAt(weld, now);
    if (!time) {
        return HandsCall::None;
    }
    if (takesBothHands(weld)) {
        return HandsCall::Taken;
    }
    if (!std::holds_alternative<Soaking>(weld.state)) {
        return HandsCall::None;
    }
    const std::vector<Cue> cues = cuesAt(weld, *time);
    const auto has = [&cues](CueKind kind) {
        return std::any_of(
            cues.begin(), cues.end(), [kind](const Cue& cue) { return cue.kind == kind; });
    };
    return has(CueKind::ActNow)     ? HandsCall::Now
           : has(CueKind::GetReady) ? HandsCall::Soon
                                    : HandsCall::None;
}

} // namespace seamclock
