// The strength of one frequency in a stretch of samples, as an amplitude in shares of full scale:
// the Goertzel recurrence, with a Hann window so that a loud neighbour doesn't leak in. It shares
// nothing with what renders the tones.
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>

namespace seamclock::test {

inline double strengthAt(double hertz, const std::int16_t* samples, std::size_t count) {
    constexpr double kTurn = 6.283185307179586;
    constexpr double kFramesASecond = 48'000;
    const double factor = 2 * std::cos(kTurn * hertz / kFramesASecond);
    double last = 0;
    double before = 0;
    double weight = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const double hann =
            0.5 - 0.5 * std::cos(kTurn * static_cast<double>(i) / static_cast<double>(count));
        weight += hann;
        const double next =
            static_cast<double>(samples[i]) / 32'767 * hann + factor * last - before;
        before = last;
        last = next;
    }
    const double power = last * last + before * before - factor * last * before;
    return 2 * std::sqrt(power > 0 ? power : 0) / weight;
}

} // namespace seamclock::test
