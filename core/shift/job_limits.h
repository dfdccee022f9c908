// What a job's seam may be at the most, by hand, from CSV and from JSON alike.
#pragma once

namespace seamclock {

inline constexpr double kThinnestMm = 0.1;
inline constexpr double kThickestMm = 1'000;
inline constexpr double kLongestMm = 100'000;
inline constexpr double kGreatestDragN = 100'000;

} // namespace seamclock
