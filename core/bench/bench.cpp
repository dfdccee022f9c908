#include "core/bench/bench.h"

#include <algorithm>
#include <cmath>

namespace seamclock {

Force SpringScale::rate() const {
    Force sum;
    for (const Force& each : ratePerUnit) {
        sum = sum + each;
    }
    return sum;
}

std::optional<Force> SpringScale::ratePerMillimetre() const {
    return unit == "mm" ? std::optional<Force>(rate()) : ratePerMm;
}

double dragReading(const SpringScale& scale, Force drag) {
    return static_cast<double>(scale.zeroMilli) / 1000.0 +
           inNewtons(drag + scale.preload) / inNewtons(scale.rate());
}

Force dragOf(const SpringScale& scale, double reading) {
    return scale.rate() * (reading - static_cast<double>(scale.zeroMilli) / 1000.0) - scale.preload;
}

Length GapRule::gap(Length thickness) const {
    const Length asked = std::max(thickness * factor, floor);
    return cap ? std::min(asked, *cap) : asked;
}

std::string_view toString(Drive drive) {
    switch (drive) {
    case Drive::Handwheel:
        return "handwheel";
    case Drive::FootLever:
        return "foot_lever";
    }
    return "";
}

std::string_view toString(PlateRead read) {
    switch (read) {
    case PlateRead::Middle:
        return "middle";
    case PlateRead::Ends:
        return "ends";
    case PlateRead::Three:
        return "three";
    case PlateRead::EachFace:
        return "each_face";
    }
    return "";
}

const std::vector<PlatePlace>& platePlaces(PlateRead read) {
    static const std::vector<PlatePlace> kMiddle{{"middle", ""}};
    static const std::vector<PlatePlace> kEnds{{"front", ""}, {"back", ""}};
    static const std::vector<PlatePlace> kThree{{"front", ""}, {"middle", ""}, {"back", ""}};
    static const std::vector<PlatePlace> kEachFace{{"front", "fixed"},   {"middle", "fixed"},
                                                   {"back", "fixed"},    {"front", "moving"},
                                                   {"middle", "moving"}, {"back", "moving"}};
    switch (read) {
    case PlateRead::Middle:
        return kMiddle;
    case PlateRead::Ends:
        return kEnds;
    case PlateRead::Three:
        return kThree;
    case PlateRead::EachFace:
        return kEachFace;
    }
    return kThree;
}

std::optional<Force> calibrationBand(const Bench& bench, double readingMilli) {
    if (!bench.calibration) {
        return std::nullopt;
    }
    if (bench.calibration->fit) {
        return newtons(bench.calibration->fit->line.confidenceAt(readingMilli / 1e3));
    }
    // How many points stood behind a rate that was only written down is unknown: the normal
    // distribution's quantile.
    constexpr double kNormal95 = 1.959964;
    const double units = (readingMilli - static_cast<double>(bench.scale.zeroMilli)) / 1e3;
    return bench.scale.rate() *
           (kNormal95 * bench.calibration->rateUncertaintyPercent / 100 * std::fabs(units));
}

bool calibrationOverdue(const Bench& bench, std::string_view today) {
    return bench.calibration && bench.calibration->dueOn < today; // ISO dates sort as days do
}

} // namespace seamclock
