// A bench as its owner describes it: what fits on it, its springs and their scale, its gap rule and
// the order in which a joint is released. The order is data because benches differ and the
// machine's own instructions decide. core/plan turns forces into readings with it.
#pragma once

#include "core/units/quantity.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// The scale beside the spring. Readings are in its own unit, in thousandths ("milli"), as events
/// store them.
struct SpringScale {
    std::string unit;               // "mm", or what is printed on it
    std::int64_t divisionMilli = 0; // the smallest step a person can set
    std::int64_t zeroMilli = 0;     // reading without force
    std::int64_t maxMilli = 0;      // the scale's end
    std::vector<Force>
        ratePerUnit; // one per spring: force for one unit of the scale; two springs add
    Force preload;   // force lost before the faces press (positive)

    Force rate() const; // the sum [N per unit]
    bool operator==(const SpringScale&) const = default;
};

/// The gap between the tables before the first sheet: factor · s, with a floor for thin and a cap
/// for thick sheet.
struct GapRule {
    double factor = 1;
    Length floor;
    std::optional<Length> cap;
    double clampingFactor = 2; // before the second sheet, times the first gap

    Length gap(Length thickness) const;
    bool operator==(const GapRule&) const = default;
};

struct CalibrationNote {
    std::string doneOn; // ISO date
    std::string dueOn;
    double rateUncertaintyPercent = 0;

    bool operator==(const CalibrationNote&) const = default;
};

struct Bench {
    std::string id;
    std::string name;
    Length longestSeam;
    Length thinnestSheet;
    Length thickestSheet;
    SpringScale scale;
    GapRule gapRule;
    Length edgeGapMax;                     // between the edges when they meet
    std::vector<std::string> releaseOrder; // codes, e.g. "clamps_eased"
    std::optional<CalibrationNote> calibration;

    bool operator==(const Bench&) const = default;
};

} // namespace seamclock
