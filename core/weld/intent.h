// The front door: what a person at the screen or pedal wants, against the weld as it is now. It
// refuses what only a live hand can get wrong (a bounce, a stale screen, a reason nobody asked
// for); what it lets through becomes an event and is applied like any other.
#pragma once

#include "core/weld/fold.h"

#include <optional>
#include <string>
#include <string_view>

namespace seamclock {

inline constexpr Milliseconds kBounce{600};
inline constexpr Milliseconds kFacesBounce{1000}; // faces_met after plate_out
inline constexpr Milliseconds kTakeBackWindow{10'000};

struct Intent {
    std::optional<std::int64_t>
        onto; // the last takeable event its maker saw; absent: not from a hand
    std::string by;
    WeldDetail d;
    bool foreman = false; // `by` has proved to be one (core/people)
};

/// The event this intent becomes and the weld with it. Refused: as apply, or a bounce, a stale
/// `onto`, a reason that is not owed, an override, a remark or a sign-off that needs a foreman,
/// closing with a reason still owed.
Result<Weld> accept(const Weld& weld, const Intent& intent, const Instant& at);

/// Whether only a foreman may go on without that check.
bool isForemansCheck(std::string_view check);

/// The remark that what is printed on a sheet is not the plan's material, and that it is welded all
/// the same: a foreman's alone. It passes over no check.
inline constexpr const char* kOtherMaterial = "other_material";

/// Whether a refusal only says that two presses were taken for one: nothing to tell a person.
bool isBounce(const Error& refusal);

/// What to say when a power cut is over: the bridge from the weld's last event to `at`, unconfirmed
/// unless a person confirms that the wall clock was right. Empty on the same boot. A confirmed
/// bridge above twelve hours is Refused.
Result<std::optional<ClockBridged>> bridgeTo(const Weld& weld, const Instant& at, bool confirmed);

/// Only cooling and what follows goes on by itself after a reboot; before the lock the default is
/// to abort.
bool goesOnAfterReboot(const State& state);

/// The closing event of an inspected weld, with the verdict of its events.
WeldClosed closing(const Weld& weld);

} // namespace seamclock
