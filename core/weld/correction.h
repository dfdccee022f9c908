// Corrections of values, never of instants: what a person wrote down wrong, set right after the
// weld is over. The original stays in the events; records and verdicts are worked out with the
// corrected value.
#pragma once

#include "core/base/result.h"
#include "core/weld/fold.h"

#include <vector>

namespace seamclock {

/// Refused: no such event still stands, a field that can't be corrected (the sentence lists those
/// that can), `was` is not its value, or `is` is not one it may take.
Result<void> checkCorrection(const ValueCorrected& correction, const std::vector<Retained>& events);

/// Applies a correction that was checked; one that does not fit changes nothing.
void applyCorrection(const ValueCorrected& correction, std::vector<Retained>& events);

} // namespace seamclock
