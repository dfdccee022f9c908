// What a hand does at the wheel until its eye is content: the moves that every weld on the virtual
// bench is made of, a steady hand's and a rehearsal's. Speeds are plausible and invented here
// [practice]. Each move looks at the bench every so often, lets its time go on, and leaves the
// wheel held.
#pragma once

#include "core/vbench/virtual_bench.h"

namespace seamclock {

inline constexpr double kPlateRoomMm = 16;   // edges so far apart before the plate comes in
inline constexpr double kPlateOffMm = 1.5;   // from each face before it goes out
inline constexpr double kTurnMmPerS = 6;     // to a reading
inline constexpr Milliseconds kFollows{500}; // how often a hand that follows the melt looks

class HandMoves {
public:
    /// The bench must outlive the moves.
    explicit HandMoves(VirtualBench& bench) : m_bench(&bench) {}

    // Refused: as the bench says; its time went on to there.
    /// If `touching`, no further than until nothing touches.
    Result<void> turnTo(double reading, double mmPerS, bool touching = false);
    Result<void> approach();       // until something touches
    Result<void> apart(double mm); // until every place is so far from what it faced
    Result<void> inContact();      // as lightly as can be, where the reading alone leaves a gap
    /// As fast as the wheel goes, past the reading, and looked at when it has stopped.
    Result<void> slam(double set);
    /// What the reading lost, once it can be seen.
    Result<void> follow(double set);
    /// Evenly from the reading as it is, all of it in so long.
    Result<void> raise(double set, Milliseconds lasts);

private:
    double mmPerUnit() const;

    VirtualBench* m_bench;
};

/// Over all stations.
double leastOf(const BenchView& view, double StationView::*field);
bool anyTouches(const BenchView& view);

} // namespace seamclock
