// A slot as sound: 16 bits, one channel, 48,000 frames a second. What its partials, its rise and
// its level are is core/shift's pattern; here are only the samples. Every partial has the same
// strength, so low that the loudest pattern (three of them, or two that are 3 dB up) never clips.
// The envelope is half a cosine at both ends, within the slot's length: no click, and silence
// before and after.
#pragma once

#include "core/shift/pattern.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace seamclock {

inline constexpr int kFramesPerSecond = 48'000;
inline constexpr int kFramesPerMilli = kFramesPerSecond / 1'000;
/// Of one partial at level 0 dB, as a share of full scale.
inline constexpr double kPartialStrength = 0.3;

std::vector<std::int16_t> render(const PatternSlot& slot);

} // namespace seamclock
