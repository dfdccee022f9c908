// What the sheets do between the plate and the cold seam, as an estimate: how much they still close
// up after the wheel is locked, how far the reading falls by that, and what each sheet has lost in
// length at the end. An estimate is shown and called so; it is no part of a stored plan, makes no
// verdict and refuses nothing.
#pragma once

#include "core/plan/plan.h"

#include <optional>
#include <string>

namespace seamclock {

struct Spread {
    double low = 0;
    double likely = 0;
    double high = 0;

    bool operator==(const Spread&) const = default;
};

struct ClosingEstimate {
    Spread closingMm;                  // of both tables together, after the lock
    std::optional<Spread> readingFall; // of the joining reading, in units of the scale
    Spread sheetLossMm;                // of each sheet, over the whole weld
    std::string basis;                 // what it was worked out from, in one or two sentences
};

/// Absent for a material whose values aren't known, and where the plan lacks the soak or the bead.
/// `bench` may be null: then, and where the spring's travel isn't known in mm, no fall is given.
std::optional<ClosingEstimate> estimateClosing(const WeldPlan& plan, const Bench* bench);

/// Melt on one sheet at the end of soak [mm]; absent as above.
std::optional<double> meltDepthMm(const WeldPlan& plan);

} // namespace seamclock
