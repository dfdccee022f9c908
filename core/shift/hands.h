// Which weld wants the operator's two hands, and how soon. A screen for several benches gives way
// in this order, and what can wait is not told of while both hands are taken.
#pragma once

#include "core/weld/fold.h"

namespace seamclock {

enum class HandsCall {
    None,
    Soon, // get ready: the last seconds of its soak
    Now,  // its soak is over: the plate is to leave
    Taken // between plate out and lock
};

/// None also for a weld that doesn't know the time: bridge it first.
HandsCall handsCall(const Weld& weld, const Instant& now);

/// Taken, whatever the time is.
bool takesBothHands(const Weld& weld);

} // namespace seamclock
