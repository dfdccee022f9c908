// The timed phases, from alignment to cooling: what the lamp counts, what the sentence asks and
// which press ends the phase. Times, limits and what is late come from the plan and the folded
// state. The words of a limit that was passed before the lock are weld_interrupted's, the release
// weld_ending's.
#pragma once

#include "app/operate/weld_sketch.h"

namespace seamclock {

void tell(Sketch& s, const Aligning& state);
void tell(Sketch& s, const Soaking& state);
void tell(Sketch& s, const ChangingOver& state);
void tell(Sketch& s, const BuildingUp& state);
void tell(Sketch& s, const Cooling& state);

} // namespace seamclock
