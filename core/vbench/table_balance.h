// Where the moving table comes to rest between its spring, its friction and the edges that it
// presses: without inertia, as everything here is slow beside what the table weighs.
//
// The tables are rigid and run in straight guides, so one travel holds for the whole seam. A
// station touches when the travel is past its own point; then it gives elastically, and by the melt
// that flows out of it during the step: d = p/k + s · p^(1/n), with the power law's n. Friction is
// dry: within ±drag the table stays where it is, which is why a reading that comes down leaves more
// on the faces than the same reading that went up.
#pragma once

#include <vector>

namespace seamclock {

struct TableSpring {
    double rate = 0;    // [N/m] all springs together
    double preload = 0; // [N] lost before the faces press
    double drag = 0;    // [N]
};

struct TablePoint {
    double touchesAt = 0; // [m] travel of the table
    double area = 0;      // [m²]
    double stiffness = 0; // k: of two edges against each other [Pa/m]
    double softness = 0;  // s: both sheets' closing in the step under one pascal [m]
    bool bonded = false;  // solid across the faces: carries pull as well
};

struct TableBalance {
    double travel = 0;             // [m]
    std::vector<double> pressures; // [Pa] at each point
    double faces = 0;              // [N] their sum over the areas
    double friction = 0;           // [N] against closing; within ±drag
};

/// `wheel` and `travel` [m] count towards closing; the spring is pressed by their difference.
/// `index` is the power law's n.
TableBalance balanceTable(
    const TableSpring& spring, double wheel, double travel, const std::vector<TablePoint>& points,
    double index);

} // namespace seamclock
