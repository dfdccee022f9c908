// What a trainee's hands can do at the virtual bench, as values: a practice weld is these acts with
// their times, and played again they give the same weld. Lengths are whole micrometres, so that
// they can be stored. Sheets are 0 (clamped on the fixed table) and 1; left is the seam's
// beginning.
#pragma once

#include <cstdint>
#include <string_view>
#include <variant>

namespace seamclock {

/// What a value of an act can be; the bench and a stored act refuse the rest alike.
namespace act_limits {
inline constexpr std::int64_t kHottestMc = 300'000;
inline constexpr std::int64_t kWidestGapUm = 200'000;
inline constexpr std::int64_t kMostOffUm = 10'000;
inline constexpr std::int64_t kFastestUmPerS = 40'000; // nobody turns faster [practice]
} // namespace act_limits

struct SetPlate { // the controller's target
    std::int64_t targetMc = 0;

    bool operator==(const SetPlate&) const = default;
};
struct WipePlate {
    bool operator==(const WipePlate&) const = default;
};
struct TakeFilmOff {
    int sheet = 0;

    bool operator==(const TakeFilmOff&) const = default;
};
/// Planes the edge and takes the chips off.
struct PlaneEdge {
    int sheet = 0;

    bool operator==(const PlaneEdge&) const = default;
};
struct TouchEdge { // with the hand
    int sheet = 0;
    int permille = 0; // of the seam's length, from the left

    bool operator==(const TouchEdge&) const = default;
};
/// The tables' gap at both ends, while no more than one sheet is clamped.
struct SetGap {
    std::int64_t leftUm = 0;
    std::int64_t rightUm = 0;

    bool operator==(const SetGap&) const = default;
};
/// The first is pushed against the other table, the second against the first. How far each end is
/// pushed beyond that (or short of it), and how far the lower side of the edge stands behind the
/// upper, comes from the hand.
struct ClampSheet {
    int sheet = 0;
    std::int64_t leftUm = 0;
    std::int64_t rightUm = 0;
    std::int64_t leanUm = 0;

    bool operator==(const ClampSheet&) const = default;
};
/// A clamped sheet's edge set right where it is: one end pushed further by so much (or drawn back),
/// and its lower side brought forward by so much against the upper, with a shim under the sheet.
/// Only while nothing is hot: both sheets clamped, no plate between them, nothing joined.
struct ShimSheet {
    int sheet = 0;
    std::int64_t leftUm = 0;
    std::int64_t rightUm = 0;
    std::int64_t belowUm = 0;

    bool operator==(const ShimSheet&) const = default;
};
/// At that speed of the spring's far end, closing if positive, until told otherwise; 0: it is held.
struct TurnWheel {
    std::int64_t umPerS = 0;

    bool operator==(const TurnWheel&) const = default;
};
/// The hand leaves the wheel; unlocked, it runs back.
struct LetGoWheel {
    bool operator==(const LetGoWheel&) const = default;
};
struct LockWheel {
    bool operator==(const LockWheel&) const = default;
};
/// Without a hand on the wheel it runs back.
struct UnlockWheel {
    bool operator==(const UnlockWheel&) const = default;
};
struct BringPlateIn {
    bool operator==(const BringPlateIn&) const = default;
};
struct TakePlateOut {
    bool operator==(const TakePlateOut&) const = default;
};
struct EaseClamps {
    bool operator==(const EaseClamps&) const = default;
};
struct OpenBars {
    bool operator==(const OpenBars&) const = default;
};
/// Unlocks the wheel and turns it back until the spring has no force.
struct LetSpringOff {
    bool operator==(const LetSpringOff&) const = default;
};
struct LiftSheet { // the welded sheet out
    bool operator==(const LiftSheet&) const = default;
};

using BenchAct = std::variant<
    SetPlate, WipePlate, TakeFilmOff, PlaneEdge, TouchEdge, SetGap, ClampSheet, TurnWheel,
    LetGoWheel, LockWheel, UnlockWheel, BringPlateIn, TakePlateOut, EaseClamps, OpenBars,
    LetSpringOff, LiftSheet, ShimSheet>;

/// "set_plate", "clamp_sheet" …: what it is called where acts are kept.
std::string_view codeOf(const BenchAct& act);

} // namespace seamclock
