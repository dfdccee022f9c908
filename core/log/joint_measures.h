// The few numbers of a joint that a shop follows from joint to joint: how long preparation,
// alignment, changeover and release took, how warm the plate was, and how far the reading drifted
// early in cooling. They are worked out from the weld's events alone and kept beside its line in
// the cache of joints, so that a chart over years is one read of a narrow table.
#pragma once

#include "core/weld/record.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace seamclock {

enum class JointMeasure { Preparation, Alignment, Changeover, Release, Plate, Drift };
inline constexpr std::size_t kJointMeasures = 6;

/// "preparation", "alignment", …
std::string_view toString(JointMeasure measure);
std::optional<JointMeasure> jointMeasureOf(std::string_view word);

/// Absent: not reached, or not known (a reboot lay in it, nothing was measured).
struct JointMeasures {
    std::array<std::optional<std::int64_t>, kJointMeasures> values;

    std::optional<std::int64_t>& operator[](JointMeasure measure) {
        return values[static_cast<std::size_t>(measure)];
    }
    const std::optional<std::int64_t>& operator[](JointMeasure measure) const {
        return values[static_cast<std::size_t>(measure)];
    }
    bool operator==(const JointMeasures&) const = default;
};

/// [ms] of the four times, preparation from the opening to the alignment and release from the first
/// step to the last; the mean of what was measured on the plate for this weld [m°C], values carried
/// over from an earlier weld left out; the first re-check less the joining reading before it, in
/// thousandths of the scale's unit.
JointMeasures measuresOf(const WeldRecord& record);

/// Whose measures a reader asks for. Absent: any.
struct MeasureFilter {
    std::optional<std::string> fromDay; // local dates, both included
    std::optional<std::string> toDay;
    std::optional<std::string> bench;
    std::optional<std::string> by;
    std::optional<std::string> procedure;
    std::optional<std::int64_t> thicknessUm;
};

/// One joint as it is handed out; the texts hold during the call. Trial joints are not among them.
struct MeasuredJoint {
    std::int64_t place = 0; // in the list of joints: the later opened, the higher
    std::int64_t number = 0;
    std::int64_t openedUtcMs = 0;
    std::string_view bench;
    std::string_view by;
    std::string_view procedure;
    std::int64_t thicknessUm = 0;
    JointMeasures values; // those that were asked for, as far as the joint has them
};

} // namespace seamclock
