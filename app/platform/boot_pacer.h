// Waits on the boot clock, faster or slower than time itself. A sleep of the machine counts as
// waited.
#pragma once

#include "core/practice/pacer.h"

namespace seamclock {

class BootPacer : public Pacer {
public:
    /// `speed` times as fast as time: 1 is true time. It must be positive and finite.
    explicit BootPacer(double speed);
    void wait(Milliseconds gap) override;

private:
    double m_speed;
};

} // namespace seamclock
