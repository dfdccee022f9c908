// Take back, "4 s ago" and stop: the slots beside the step, which every state has unless it hid or
// replaced them. How long a press can be taken back is core's.
#pragma once

#include "app/operate/weld_sketch.h"

namespace seamclock {

/// Whether a clock begins or ends with that event of the last press: a phase's step, or the reading
/// that ends the build-up before the wheel is locked.
bool isOfAClock(const Weld& weld, const WeldDetail& detail);

/// After the state has spoken: what it set or hid stays.
void tellSideSlots(Sketch& s);

} // namespace seamclock
