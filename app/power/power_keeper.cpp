#include "app/power/power_keeper.h"

#include <cmath>

namespace seamclock {

PowerKeeper::PowerKeeper(const PowerSources& sources)
    : m_sleep(sources.retryMs, this), m_screen(sources.retryMs, this), m_battery(this),
      m_system(BusLine::Bus::System, sources, this),
      m_session(BusLine::Bus::Session, sources, this) {
    connect(&m_system, &BusLine::came, &m_sleep, &WakeLock::busCame);
    connect(&m_system, &BusLine::lost, &m_sleep, &WakeLock::busLost);
    connect(&m_system, &BusLine::came, &m_battery, &BatteryWatch::busCame);
    connect(&m_system, &BusLine::lost, &m_battery, &BatteryWatch::busLost);
    connect(&m_session, &BusLine::came, &m_screen, &WakeLock::busCame);
    connect(&m_session, &BusLine::lost, &m_screen, &WakeLock::busLost);
    connect(&m_sleep, &WakeLock::changed, this, &PowerKeeper::tell);
    connect(&m_screen, &WakeLock::changed, this, &PowerKeeper::tell);
    connect(&m_battery, &BatteryWatch::changed, this, &PowerKeeper::tell);
}

void PowerKeeper::begin() {
    m_system.open();
    m_session.open();
}

void PowerKeeper::hold(bool wanted) {
    m_sleep.setWanted(wanted);
    m_screen.setWanted(wanted);
}

void PowerKeeper::tell() {
    PowerState now;
    now.sleep = m_sleep.state();
    now.screen = m_screen.state();
    now.batteryLow = m_battery.low();
    if (m_battery.battery().present) {
        now.batteryPercent = static_cast<int>(std::floor(m_battery.battery().percent));
    }
    if (now != m_state) {
        m_state = now;
        emit told(now);
    }
}

} // namespace seamclock
