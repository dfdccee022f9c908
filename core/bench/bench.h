// A bench as its owner describes it: what fits on it, its springs and their scale, its gap rule and
// the order in which a joint is released. The order is data because benches differ and the
// machine's own instructions decide. core/plan turns forces into readings with it.
#pragma once

#include "core/bench/calibration.h"
#include "core/units/quantity.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// The scale beside the spring. Readings are in its own unit, in thousandths ("milli"), as events
/// store them.
struct SpringScale {
    std::string unit;               // "mm", or what is printed on it
    std::int64_t divisionMilli = 0; // the smallest step a person can set
    std::int64_t zeroMilli = 0;     // reading without force
    std::int64_t maxMilli = 0;      // the scale's end
    int count = 1;                  // scales beside the springs, one or two
    std::vector<Force>
        ratePerUnit; // one per spring: force for one unit of the scale; two springs add
    Force preload;   // force lost before the faces press (positive)
    std::optional<Force> ratePerMm; // all springs together; only where the unit isn't "mm"

    Force rate() const; // the sum [N per unit]
    /// What the force falls by when the tables close by a millimetre [N]; absent where that is not
    /// known.
    std::optional<Force> ratePerMillimetre() const;
    bool operator==(const SpringScale&) const = default;
};

/// What the scale reads while the table moves and nothing touches [in its unit]: at the spring
/// stand the drag and the preload. From reading = zero + (F + drag + preload) / rate, with F = 0.
double dragReading(const SpringScale& scale, Force drag);
/// The drag that such a reading says; below zero where it shows less than the preload alone takes.
Force dragOf(const SpringScale& scale, double reading);

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

enum class Drive { Handwheel, FootLever };

/// What the drive can hold, at the spring: the seam's force with drag and preload.
struct ForceLimits {
    std::optional<Force> min;
    std::optional<Force> max;

    bool operator==(const ForceLimits&) const = default;
};

/// With points, `fit`, the scale's zero and its one rate come from them (readBench fills all
/// three), and preload is 0: what the load cell showed is what presses.
struct CalibrationNote {
    std::string doneOn; // ISO date
    std::string dueOn;
    double rateUncertaintyPercent = 0; // one standard deviation
    std::string loadCell;              // which one; "" where there are no points
    std::vector<CalibrationPoint> points;
    std::optional<ScaleFit> fit;

    bool operator==(const CalibrationNote&) const = default;
};

/// Where the heated plate's faces are read at the start of a shift, as the foreman chose it.
enum class PlateRead { Middle, Ends, Three, EachFace };

struct PlatePlace {
    std::string_view place; // "front", "middle", "back"
    std::string_view face;  // "fixed", "moving": to which table it is turned; "": either

    bool operator==(const PlatePlace&) const = default;
};

struct Bench {
    std::string id;
    std::string name;
    Length longestSeam;
    Length thinnestSheet;
    Length thickestSheet;
    std::optional<Drive> drive;
    PlateRead plateRead = PlateRead::Three;
    ForceLimits forceLimits;
    SpringScale scale;
    GapRule gapRule;
    Length edgeGapMax;                     // between the edges when they meet
    std::vector<std::string> releaseOrder; // codes, e.g. "clamps_eased"
    std::optional<CalibrationNote> calibration;

    bool operator==(const Bench&) const = default;
};

/// "handwheel", "foot_lever"
std::string_view toString(Drive drive);

/// "middle", "ends", "three", "each_face"
std::string_view toString(PlateRead read);
/// In the order in which they are read; never empty.
const std::vector<PlatePlace>& platePlaces(PlateRead read);

/// Half the width of the calibration's 95 % band [N] at a reading in thousandths: of the fitted
/// line, or from the rate's standard deviation where only that is known. Absent without a
/// calibration.
std::optional<Force> calibrationBand(const Bench& bench, double readingMilli);

/// On `today`, an ISO date: the last day on which it was due counts as in time.
bool calibrationOverdue(const Bench& bench, std::string_view today);

} // namespace seamclock
