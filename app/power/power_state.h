// What the machine's power services have answered, as one value that goes from their thread to the
// window's; and which services are asked.
#pragma once

#include <QMetaType>
#include <QString>

namespace seamclock {

/// How a lock stands: not wanted; asked for and not yet answered; held; the service said no; there
/// is no such service, or no bus.
enum class LockState { Off, Asked, Held, Refused, Missing };

struct PowerState {
    LockState sleep = LockState::Off;  // the machine's own sleep
    LockState screen = LockState::Off; // the screen going dark or asking for a password
    bool batteryLow = false;
    int batteryPercent = -1; // rounded down; -1: no battery, or nobody knows

    bool operator==(const PowerState&) const = default;
};

struct PowerSources {
    QString systemBus{};  // an address; empty: the machine's
    QString sessionBus{}; // an address; empty: the user's, and none is started if there is none
    /// Until a lock that was refused, and a bus that is away, are tried again [ms].
    int retryMs = 60'000;
};

} // namespace seamclock

Q_DECLARE_METATYPE(seamclock::PowerState)
