// From the cooled joint to the free bench: release in the bench's order, the bead's values, owed
// reasons, the painted number, saving, and what a closed or stopped weld says. The verdict is
// core's.
#pragma once

#include "app/operate/weld_sketch.h"

namespace seamclock {

void tell(Sketch& s, const Releasing& state);
void tell(Sketch& s, const Inspecting& state);
void tell(Sketch& s, const Closed& state);
void tell(Sketch& s, const Aborted& state);
/// The next step of release; cooling that is over asks for the first.
void tellRelease(Sketch& s, int stepsDone);

} // namespace seamclock
