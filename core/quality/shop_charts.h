// How the shop is doing: for joints that are alike (one bench, one operator, one procedure, one
// thickness) a chart of each number that is followed. Alike, because a thicker sheet aligns longer
// and that is no news. Alignment that rises is named for what it often is, a cold or dirty plate
// (common practice, no source); nothing here judges a joint. The same numbers give the medians that
// the day's plan counts with.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/log/joint_measures.h"
#include "core/quality/control_chart.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

namespace seamclock {

class LogReader;

struct LikeJoints {
    std::string bench;
    std::string by;
    std::string procedure;
    std::int64_t thicknessUm = 0;

    auto key() const { return std::tie(bench, by, procedure, thicknessUm); }
    bool operator==(const LikeJoints&) const = default;
    bool operator<(const LikeJoints& other) const { return key() < other.key(); }
};

/// What a chart shows: seconds of changeover and alignment, °C of the plate, and the drift in the
/// scale's unit.
struct ShopChart {
    JointMeasure measure = JointMeasure::Alignment;
    LikeJoints joints;
    std::vector<double> values;            // oldest first
    std::vector<std::int64_t> numbers;     // of the joints
    std::vector<std::int64_t> openedUtcMs; // likewise
    std::optional<ControlLimits> limits;   // absent: fewer than two
    std::vector<ChartFinding> findings;
    /// The newest values of an alignment chart rise, or lie above its mean or its limit without
    /// coming down again: look at the plate.
    bool plateColdOrDirty = false;

    /// A finding of that sign lasts up to the newest value.
    bool endsWith(ChartSign sign) const;

    bool operator==(const ShopChart&) const = default;
};

/// Those that are charted: changeover, alignment, plate, drift.
const std::vector<JointMeasure>& chartedMeasures();
std::string_view unitOf(JointMeasure measure); // "s", "°C", "scale"

/// By measure in the order in which they are asked, then bench, operator, procedure and thickness;
/// the log is read once for all of them. Errors as LogReader::eachMeasured.
Result<std::vector<ShopChart>>
shopCharts(LogReader& log, const std::vector<JointMeasure>& measures, const MeasureFilter& filter);

/// Whose times are alike for the day's plan: whoever welds, the bench and the sheet decide.
struct LikeTimes {
    std::string bench;
    std::string procedure;
    std::int64_t thicknessUm = 0;

    auto key() const { return std::tie(bench, procedure, thicknessUm); }
    bool operator<(const LikeTimes& other) const { return key() < other.key(); }
};

struct MedianTimes {
    std::optional<Milliseconds> preparation;
    std::optional<Milliseconds> alignment;
    std::optional<Milliseconds> release;

    bool operator==(const MedianTimes&) const = default;
};

/// Medians (the lower of the two middle ones) over the last ten such joints, where there are at
/// least five, as for the plan's own alignment median (core/session/align_median.h).
Result<std::map<LikeTimes, MedianTimes>> medianTimes(LogReader& log);

} // namespace seamclock
