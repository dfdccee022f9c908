// Take back, "4 s ago" and stop: the slots beside the step, which every state has unless it hid or
// replaced them. How long a press can be taken back is core's.
#pragma once

#include "app/operate/weld_sketch.h"

namespace seamclock {

/// After the state has spoken: what it set or hid stays.
void tellSideSlots(Sketch& s);

} // namespace seamclock
