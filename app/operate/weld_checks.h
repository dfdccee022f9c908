// Preparation: what each check says and what its step attests, and the screen between the last
// check and the pressure. Which check is asked is checkAsked's (weld_view.h); which checks a plan
// has and what they settle is core's.
#pragma once

#include "app/operate/weld_sketch.h"

namespace seamclock {

void tell(Sketch& s, const Preparing& state);

/// Whether the force is asked for now: in a new set-up, or where another drag or length changed the
/// reading, once the drag is read and until the joining reading is marked
/// (core/weld/force_check.h). `markedMilli`: as it is marked on the bench; absent: as this weld was
/// planned at first.
bool isForceAsked(const Weld& weld, const std::optional<std::int64_t>& markedMilli = {});

} // namespace seamclock
