// A spring scale's calibration: the straight line through readings and the forces that a load cell
// showed, how well the points fix it, and whether it is straight enough to weld by.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// y = intercept + slope · x by ordinary least squares, with standard deviations from the residuals
/// (n − 2 degrees of freedom; any textbook of regression).
struct LineFit {
    double intercept = 0;
    double slope = 0;
    double interceptSd = 0;
    double slopeSd = 0;
    double residualSd = 0;
    std::vector<double> residuals;
    double meanX = 0;
    double sumSquaresX = 0; // about the mean
    double t95 = 0;         // Student's t, two-sided, 95 %, n − 2 degrees of freedom

    double at(double x) const { return intercept + slope * x; }
    /// Half the width of the 95 % band [y]: the line itself lies in it,
    double confidenceAt(double x) const;
    /// and one further point does.
    double predictionAt(double x) const;
    bool operator==(const LineFit&) const = default;
};

/// OutOfRange: fewer than 3 points, sizes that differ, a value that is not finite, or all x the
/// same.
Result<LineFit> fitLine(const std::vector<double>& x, const std::vector<double>& y);

struct CalibrationPoint {
    double reading = 0; // in the scale's unit
    double force = 0;   // [N], by the load cell

    bool operator==(const CalibrationPoint&) const = default;
};

/// Force [N] = rate [N/unit] · (reading − zero).
struct ScaleFit {
    std::vector<CalibrationPoint> points;
    LineFit line;                      // force over reading
    double rate = 0;                   // [N per unit of the scale]
    double zero = 0;                   // [unit]
    double zeroSd = 0;                 // [unit], to first order
    double rateUncertaintyPercent = 0; // one standard deviation
    double worstResidual = 0;          // [N], the largest in size
    std::size_t worstPoint = 0;        // its place among the points
    double lowestReading = 0;          // the fitted range
    double highestReading = 0;

    bool operator==(const ScaleFit&) const = default;
};

/// What may be off the line [N]: a share of the largest force (straightEnough).
double allowedResidual(const ScaleFit& fit);

/// OutOfRange: as fitLine, a reading or force that no scale has, or a rate that is not positive.
Result<ScaleFit> fitPoints(const std::vector<CalibrationPoint>& points);

/// OutOfRange: a point lies too far off the line; the sentence names the worst one, how far it is
/// off and what is allowed. The limit is our judgement.
Result<void> straightEnough(const ScaleFit& fit);

/// CSV with a header line "reading,force_N" (the first name may carry a unit: reading_mm); lines
/// starting with '#' are comments. Malformed: with the line and the value. OutOfRange: a value that
/// no scale has, with its line.
Result<std::vector<CalibrationPoint>>
readCalibrationCsv(std::string_view name, std::string_view csv);

/// The three together. The errors' sentences begin with `name`.
Result<ScaleFit> fitScale(std::string_view name, std::string_view csv);

/// Readings and forces outside these are slips of the pen; so are more points than this.
inline constexpr double kLeastReading = -1000;
inline constexpr double kGreatestReading = 100'000;
inline constexpr double kLeastCellForce = -1000; // [N]
inline constexpr double kGreatestCellForce = 1'000'000;
inline constexpr std::size_t kMostCalibrationPoints = 1000;

} // namespace seamclock
