// What the person at the bench is told when the wall clock was set, by hand or by the network. How
// far is told in the largest unit that says it; the log has the milliseconds.
#pragma once

#include "core/base/instant.h"

#include <QString>

namespace seamclock {

/// "Clock was set 61 min back. No time of a weld changed."
QString clockNotice(Milliseconds jump);

} // namespace seamclock
