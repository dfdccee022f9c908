// A virtual bend test of a practice weld, station by station: would the joint bend, or break, and
// why. It stands for what a real test would show of the same mistakes, since a good bead does not
// prove a good joint. It is plainly a model: each cause and its side (too cold a skin is brittle)
// is the trade's, but where ductile ends is set by the thresholds of core/vbench/bench_numbers.h,
// most of them invented for practice. It says nothing about a real weld.
#pragma once

#include "core/plan/plan.h"
#include "core/vbench/bench_view.h"

#include <string_view>
#include <vector>

namespace seamclock {

enum class BendReason {
    NotJoined,      // the faces never met here, hot; or parted again
    NotFrozen,      // let go or ended before the weld plane was solid
    ColdSkin,       // too cold when the faces met: a flat fracture
    ThinMelt,       // pressed out, or never there: a fat bead over a brittle joint
    Contaminated,   // film, grease, a dirty plate, smeared melt
    Underheated,    // the plate below its window: the melt is tough and does not wet
    Overheated,     // the plate above its window: stringing
    LowPressure,    // too little while it froze: hollow places
    Notch,          // the valley does not stand above the surface: K ≤ 0
    NotClosedBelow, // an edge that leans: one side never lay on the plate, or never met
    Kinked          // let go too warm: it bends where it should be straight
};
/// "not_joined" …
std::string_view toString(BendReason reason);

struct StationBend {
    double placeMm = 0;
    bool ductile = false;
    std::vector<BendReason> reasons; // the gravest first; empty: none

    bool operator==(const StationBend&) const = default;
};

struct BendTest {
    std::vector<StationBend> stations;
    bool ductile = false; // everywhere

    bool operator==(const BendTest&) const = default;
};

/// Of the seam as it lies, after its weld.
BendTest bendTest(const BenchView& view, const WeldPlan& plan);

} // namespace seamclock
