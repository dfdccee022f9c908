// Everything that speaks with a bus, in the thread that may wait for it: both locks, the battery,
// and the two connections. It tells what has become of them as one value.
#pragma once

#include "app/power/battery_watch.h"
#include "app/power/bus_line.h"
#include "app/power/power_state.h"
#include "app/power/screen_lock.h"
#include "app/power/sleep_lock.h"

#include <QObject>

namespace seamclock {

class PowerKeeper : public QObject {
    Q_OBJECT

public:
    explicit PowerKeeper(const PowerSources& sources);

    void begin();
    void hold(bool wanted);

signals:
    void told(const seamclock::PowerState& state);

private:
    void tell();

    SleepLock m_sleep;
    ScreenLock m_screen;
    BatteryWatch m_battery;
    BusLine m_system;
    BusLine m_session;
    PowerState m_state;
};

} // namespace seamclock
