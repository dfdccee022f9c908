// A hand that makes a whole weld on the virtual bench by its plan, looking at the scale and the
// beads as a person would, and wrong only in what it is told: what tests and rehearsals need. Its
// speeds are plausible and invented here [practice]; it has no reaction time.
#pragma once

#include "core/vbench/hand_moves.h"

#include <array>
#include <optional>
#include <utility>

namespace seamclock {

/// Nothing set: by the plan.
struct HandFaults {
    std::optional<WeldPlan> card; // followed in place of the bench's own: a wrong row, or unit
    bool filmLeft = false;
    bool notPlaned = false;
    bool plateNotWiped = false;
    std::optional<int> touched; // permille of the seam
    // How the second sheet is pushed against the first, at its ends and below [µm].
    std::int64_t leftUm = 0;
    std::int64_t rightUm = 0;
    std::int64_t leanUm = 0;
    bool topBeadOnly = false;                // nobody looks underneath
    bool firstBeadOnly = false;              // the largest bead ends the alignment
    std::optional<Milliseconds> alignFor;    // the clock ends it, whatever the bead
    bool soakUnderPressure = false;          // the reading is never brought down
    std::optional<std::int64_t> backedOffUm; // tables drawn back so far in soak
    std::optional<Milliseconds> soakFor;
    bool plateOutPressed = false;
    std::optional<Milliseconds> changeover; // waits in air until so much is over
    bool slammed = false; // as fast as the wheel goes, looked at only then, and let back
    std::optional<Milliseconds> letBackAfter; // the lock; the spring is let off while still molten
    bool noTopUp = false;                     // the reading is not looked at again
    std::optional<Milliseconds> coolFor;

    bool operator==(const HandFaults&) const = default;
};

/// How long each phase took, as the hand saw it.
struct HandTimes {
    Milliseconds alignment{0};
    Milliseconds soak{0};
    Milliseconds changeover{0};
    Milliseconds buildUp{0};
    Milliseconds cooling{0};

    bool operator==(const HandTimes&) const = default;
};

class SteadyHand {
public:
    /// The bench as it was set; both must outlive the hand.
    SteadyHand(VirtualBench& bench, HandFaults faults)
        : m_bench(bench), m_moves(bench), m_faults(std::move(faults)) {}

    // Each ends where the next begins. Refused, with what the bench said, where it can't go on;
    // Missing: the plan lacks a time or the bead.
    Result<void> prepare(); // sheets clamped, edges together, plate wiped
    Result<void> align();   // plate in, until the bead stands
    Result<void> soak();
    Result<void> changeOver(); // until the faces meet
    Result<void> buildUp();    // until the wheel is locked
    Result<void> cool();
    Result<void> release();
    Result<void> weld(); // all of them

    const HandTimes& times() const { return m_times; }

private:
    const WeldPlan& plan() const { return m_faults.card ? *m_faults.card : m_bench.setup().plan; }
    double bead() const; // that ends the alignment [mm]

    VirtualBench& m_bench;
    HandMoves m_moves;
    HandFaults m_faults;
    HandTimes m_times;
};

} // namespace seamclock
