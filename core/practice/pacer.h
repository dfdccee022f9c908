// How a rehearsal waits. core never sleeps: whoever wants a rehearsal to take time hands one of
// these in (app/platform does, on the boot clock). A pacer only delays; nothing in a record depends
// on it.
#pragma once

#include "core/base/instant.h"

namespace seamclock {

class Pacer {
public:
    virtual ~Pacer() = default;
    /// Returns once `gap` of the rehearsal's time has been waited for, at whatever speed it is set
    /// to.
    virtual void wait(Milliseconds gap) = 0;
};

} // namespace seamclock
