// A take seen again, as a pure function: the bench as it was made anew at that time, the operator's
// screen as it stood then, the weld's events along the time, and what the six controls do to it.
#pragma once

#include "app/practice/bench_page.h"
#include "app/practice/practice_result.h"

#include <QString>
#include <array>

namespace seamclock {

/// What the six controls are, in their order.
enum class ReplayKey { TenBack, OneBack, Play, OneOn, TenOn, Close };
inline constexpr std::array<ReplayKey, 6> kReplayKeys{ReplayKey::TenBack, ReplayKey::OneBack,
                                                      ReplayKey::Play,    ReplayKey::OneOn,
                                                      ReplayKey::TenOn,   ReplayKey::Close};
/// How far a key goes; 0 for the two that do something else.
Milliseconds stepOf(ReplayKey key);

struct ReplayLook {
    Milliseconds at{0};
    int place = 0; // along the seam
    bool plays = false;
    QString speed; // in words

    bool operator==(const ReplayLook&) const = default;
};

BenchPageView replayView(const PracticeResult& result, const ReplayLook& look);

} // namespace seamclock
