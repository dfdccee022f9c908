// A spring scale's calibration: the straight line through readings and the forces that a load cell
// showed.
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
};

/// OutOfRange: fewer than 3 points, sizes that differ, a value that is not finite, or all x the
/// same.
Result<LineFit> fitLine(const std::vector<double>& x, const std::vector<double>& y);

/// Force [N] = rate [N/unit] · (reading − zero).
struct ScaleFit {
    LineFit line;                      // force over reading
    double rate = 0;                   // [N per unit of the scale]
    double zero = 0;                   // [unit]
    double rateUncertaintyPercent = 0; // one standard deviation
    double worstResidual = 0;          // [N], the largest in size
    int points = 0;
};

/// CSV with a header line "reading,force_N" (the first name may carry a unit: reading_mm); lines
/// starting with '#' are comments. Malformed: with the line and the value. OutOfRange: as fitLine,
/// or a slope that is not positive.
Result<ScaleFit> fitScale(std::string_view name, std::string_view csv);

} // namespace seamclock
