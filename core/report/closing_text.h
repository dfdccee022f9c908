// The estimate of what closes up after the lock, as text on a weld card.
#pragma once

#include "core/plan/closing.h"
#include "core/units/measure.h"

#include <string>

namespace seamclock {

/// A heading that says estimate, and its lines; "" where nothing can be estimated. `bench` as
/// estimateClosing.
std::string
closingText(const WeldPlan& plan, const Bench* bench, UnitSystem units = UnitSystem::Metric);

} // namespace seamclock
