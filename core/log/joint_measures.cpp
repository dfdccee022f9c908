#include "core/log/joint_measures.h"

#include <algorithm>
#include <variant>

namespace seamclock {

namespace {

constexpr std::array kAll{JointMeasure::Preparation, JointMeasure::Alignment,
                          JointMeasure::Changeover,  JointMeasure::Release,
                          JointMeasure::Plate,       JointMeasure::Drift};

/// Between two instants of one boot; absent over a reboot.
std::optional<std::int64_t> between(const Instant& from, const Instant& to) {
    return from.bootId == to.bootId ? std::optional((to.boot - from.boot).count()) : std::nullopt;
}

std::optional<std::int64_t> exactly(const std::optional<WeldTime>& took) {
    return took && took->lo == took->hi ? std::optional(took->hi.count()) : std::nullopt;
}

std::optional<std::int64_t> plateOf(const WeldRecord& record) {
    std::int64_t sum = 0;
    std::int64_t count = 0;
    for (const Retained& one : plateWeldedWith(record.checks)) {
        const auto& made = std::get<CheckMade>(one.d);
        if (!made.takenUtc) {
            sum += *made.valueMc;
            ++count;
        }
    }
    return count > 0 ? std::optional(sum / count) : std::nullopt;
}

std::optional<std::int64_t> driftOf(const WeldRecord& record) {
    std::optional<std::int64_t> joined;
    for (const Retained& one : record.readings) {
        const auto* taken = std::get_if<ReadingTaken>(&one.d);
        if (taken == nullptr) {
            continue;
        }
        if (taken->phase == ReadingPhase::Joining) {
            joined = taken->readingMilli;
        } else if (taken->phase == ReadingPhase::Recheck) {
            return joined ? std::optional(taken->readingMilli - *joined) : std::nullopt;
        }
    }
    return std::nullopt;
}

} // namespace

std::string_view toString(JointMeasure measure) {
    switch (measure) {
    case JointMeasure::Preparation:
        return "preparation";
    case JointMeasure::Alignment:
        return "alignment";
    case JointMeasure::Changeover:
        return "changeover";
    case JointMeasure::Release:
        return "release";
    case JointMeasure::Plate:
        return "plate";
    case JointMeasure::Drift:
        return "drift";
    }
    return "";
}

std::optional<JointMeasure> jointMeasureOf(std::string_view word) {
    const auto found = std::find_if(
        kAll.begin(), kAll.end(), [&](JointMeasure one) { return toString(one) == word; });
    return found == kAll.end() ? std::nullopt : std::optional(*found);
}

JointMeasures measuresOf(const WeldRecord& record) {
    JointMeasures out;
    for (const PhaseRecord& phase : record.phases) {
        if (phase.phase == "alignment") {
            out[JointMeasure::Preparation] = between(record.openedAt, phase.from);
            out[JointMeasure::Alignment] = exactly(phase.took);
        } else if (phase.phase == "changeover") {
            out[JointMeasure::Changeover] = exactly(phase.took);
        }
    }
    if (record.releases.size() > 1) {
        out[JointMeasure::Release] = between(record.releases.front().at, record.releases.back().at);
    }
    out[JointMeasure::Plate] = plateOf(record);
    out[JointMeasure::Drift] = driftOf(record);
    return out;
}

} // namespace seamclock
