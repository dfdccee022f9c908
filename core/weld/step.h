// The one place where an ordinary event moves a weld from state to state: pure, without clock,
// sound or disk. A fact is never refused for being out of limits; what does not fit the state is
// refused with one sentence and not stored.
#pragma once

#include "core/base/result.h"
#include "core/weld/event.h"
#include "core/weld/state.h"

namespace seamclock {

/// The state after `detail` at weld time `t`. Refused: it does not fit. Take-back, backdating and
/// bridges are not ordinary and belong to fold.h; weld_opened starts a weld there too. `plan` is
/// the one in force; for plan_replaced the new one.
Result<State> step(const WeldPlan& plan, const State& state, const WeldDetail& detail, WeldTime t);

/// Where every weld starts.
Preparing preparing(const WeldPlan& plan);

} // namespace seamclock
