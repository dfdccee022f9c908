// The ribbon under a weld's screen: what was done and how long it took, what runs, what is ahead.
// It reads the standing events and the plan alone, so it is the same whichever state speaks.
#pragma once

#include "app/operate/weld_sketch.h"

namespace seamclock {

/// `now`: by the weld's own clock.
RibbonView ribbonOf(const Sketch& s, WeldTime now);

} // namespace seamclock
