// Individuals and moving range (I-MR): the chart for numbers that come one by one, as a joint's do.
// The limits are the shop's own scatter, worked out from what is on the chart: mean ± 2.66 mean
// moving range for the values, 3.267 mean moving range for the ranges (NIST/SEMATECH e-Handbook
// 6.3.2.2: 3 / 1.128 and D4 of two values, by memory). They say that something changed, never that
// a joint is bad: that is the procedure's to say.
//
// Two rules find what single points don't: eight in a row on one side of the mean (Western
// Electric, Statistical Quality Control Handbook, 1956) and six in a row that each go further up,
// or down (L. S. Nelson, J. Quality Technology 16, 237, 1984; both cited from memory).
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

namespace seamclock {

inline constexpr double kIndividualsFactor = 3 / 1.128; // 2.66
inline constexpr double kRangesFactor = 3.267;
inline constexpr std::size_t kRunOnOneSide = 8;
inline constexpr std::size_t kRunOneWay = 6;
/// Chosen: with fewer the limits are shown as provisional.
inline constexpr std::size_t kFirmLimits = 20;

struct ControlLimits {
    double mean = 0;
    double lower = 0;
    double upper = 0;
    double meanRange = 0;
    double upperRange = 0;

    bool operator==(const ControlLimits&) const = default;
};

/// Absent: fewer than two values.
std::optional<ControlLimits> limitsOf(const std::vector<double>& values);

enum class ChartSign {
    AboveLimit,
    BelowLimit,
    RangeAboveLimit, // from the value before
    AboveMean,       // eight in a row or more
    BelowMean,
    Rising, // six in a row or more
    Falling
};
std::string_view toString(ChartSign sign); // "above_limit", …

/// Values `from` to `to`, both included, counted from 0.
struct ChartFinding {
    ChartSign sign = ChartSign::AboveLimit;
    std::size_t from = 0;
    std::size_t to = 0;

    bool operator==(const ChartFinding&) const = default;
};

/// In the order of `to`. A run is one finding, as long as it lasts.
std::vector<ChartFinding>
findingsOf(const std::vector<double>& values, const ControlLimits& limits);

} // namespace seamclock
