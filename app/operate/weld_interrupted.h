// What stands before a phase may say anything of its own: power was off, so that the weld's clock
// stopped and a person's word is asked; or a limit was passed before the lock, which is spoken of
// when hands are free. What the words do to the weld is core's (after_cut.h, verdict.h).
#pragma once

#include "app/operate/weld_sketch.h"

namespace seamclock {

void tellPowerWasOff(Sketch& s);
/// In cooling; false: nothing is owed, and nothing of the view was changed.
bool tellOwed(Sketch& s);

} // namespace seamclock
