// The force of a set-up as a check. The contract's list of checks has no code for it, and drag and
// force are one fact of the scale: reading = zero + (F + drag + preload) / rate. So it is the check
// "drag" at the place "joining": once the drag is read, the person marks on the scale the reading
// that joins, and that reading is the check's value. What the drag itself reads has no place.
#pragma once

#include "core/weld/event.h"

namespace seamclock {

inline constexpr const char* kDrag = "drag";
inline constexpr const char* kForcePlace = "joining";

/// Whether it says that the joining reading was marked, and not what the drag is.
bool isForceMark(const CheckMade& made);

/// The mark at the reading that the plan joins with, which has a scale.
CheckMade forceMark(const WeldPlan& plan);

} // namespace seamclock
