#include "app/horn/tones.h"

#include <algorithm>
#include <cmath>

namespace seamclock {

namespace {

constexpr double kPi = 3.14159265358979323846;
constexpr double kFullScale = 32'767;

// 0 at the end of the slope that lies outside, 1 from `over` frames on.
double slope(std::int64_t frames, std::int64_t over) {
    if (frames >= over) {
        return 1;
    }
    return 0.5 - 0.5 * std::cos(kPi * static_cast<double>(frames) / static_cast<double>(over));
}

// How far a partial of 1 Hz has turned after t of T seconds: the integral of 2^(rise t / 12 T).
double turns(double t, double whole, int riseSemitones) {
    if (riseSemitones == 0) {
        return t;
    }
    const double pitch = static_cast<double>(riseSemitones) / 12 * std::log(2.0) / whole;
    return std::expm1(pitch * t) / pitch;
}

} // namespace

std::vector<std::int16_t> render(const PatternSlot& slot) {
    const std::int64_t frames = slot.time.length.count() * kFramesPerMilli;
    const double whole = static_cast<double>(frames) / kFramesPerSecond;
    const double strength =
        kFullScale * kPartialStrength * std::pow(10, static_cast<double>(slot.level) / 20);
    std::vector<std::int16_t> out;
    out.reserve(static_cast<std::size_t>(frames));
    for (std::int64_t i = 0; i < frames; ++i) {
        const double t = static_cast<double>(i) / kFramesPerSecond;
        const double turned = turns(t, whole, slot.riseSemitones);
        double sum = 0;
        for (const std::int64_t partial : slot.partials) {
            sum += std::sin(2 * kPi * static_cast<double>(partial) / 1'000 * turned);
        }
        const double envelope = slope(i, kRise.count() * kFramesPerMilli) *
                                slope(frames - i, kFall.count() * kFramesPerMilli);
        const double sample = std::clamp(strength * envelope * sum, -kFullScale, kFullScale);
        out.push_back(static_cast<std::int16_t>(std::lround(sample)));
    }
    return out;
}

} // namespace seamclock
