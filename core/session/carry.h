// What of a weld's preparation still stands from the welds before it on the same bench, so that a
// check is asked for only as often as it means something: some hold for a shift, some until another
// material, thickness or bench is set up, the rest is made for every joint. A check that stands is
// copied into the new weld with the time at which it was really made. And whether this set-up has
// had its trial joint today. Pure: what stands follows from the welds and the time.
#pragma once

#include "core/weld/fold.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

enum class CheckHolds {
    Weld,  // made anew for every joint
    SetUp, // until material, thickness or bench change
    Shift  // until kShift is over, the machine was off, or the plate cooled
};
CheckHolds holdsFor(std::string_view check);

/// Common practice, no source.
inline constexpr Milliseconds kShift{8 * 3'600'000};
/// A plate that stood idle for longer is read again (trade: "idle over an hour").
inline constexpr Milliseconds kPlateIdle{3'600'000};

/// The checks of `next` that stand, in the plan's order, each with the time it was taken.
/// `earlier`: the welds of that bench, the newest first, ended or not. `soundLostUtc`: when the
/// sound was lost last; what was heard before that does not stand.
std::vector<CheckMade> checksThatStand(
    const WeldOpened& next, const std::vector<Weld>& earlier, const Instant& now,
    std::optional<Milliseconds> soundLostUtc = {});

/// The place of a check that the session set aside, since it had been outlived: nobody pressed it.
inline constexpr const char* kOutlived = "outlived";

/// When the plate was last at work on that bench, or read; absent: no weld says it. `earlier` as
/// above.
std::optional<Instant> plateLastUsed(const std::vector<Weld>& earlier);

/// The checks of a shift that were made for this weld and stand no more, since it has been prepared
/// for too long: eight hours, an hour without work for the plate, or over a start of the machine.
/// `plateUse`: as above, of the welds before it.
std::vector<std::string>
checksOutlived(const Weld& weld, const std::optional<Instant>& plateUse, const Instant& now);

enum class TrialState {
    Due,     // the first of the day, or another material, thickness or bench
    Waiting, // made, and nobody released it yet
    Refused, // made, and a foreman did not accept it
    Released
};

struct TrialFinding {
    TrialState state = TrialState::Due;
    std::string weld; // "weld:UUID" of the trial joint; empty: there is none
    std::int64_t number = 0;

    bool operator==(const TrialFinding&) const = default;
};

/// Whether series work may begin with the set-up of `next`; `earlier` as above.
TrialFinding trialFor(const WeldOpened& next, const std::vector<Weld>& earlier, const Instant& now);

/// What a production weld that begins without a released trial joint carries among its flags;
/// empty: nothing.
std::string_view flagOf(TrialState state);

} // namespace seamclock
