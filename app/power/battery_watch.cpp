#include "app/power/battery_watch.h"

#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

namespace seamclock {
namespace {

constexpr auto kService = "org.freedesktop.UPower";
constexpr auto kDevice = "/org/freedesktop/UPower/devices/DisplayDevice";
constexpr auto kInterface = "org.freedesktop.UPower.Device";
constexpr auto kProperties = "org.freedesktop.DBus.Properties";

} // namespace

bool isLow(const Battery& battery, bool wasLow) {
    if (!battery.present) {
        return false;
    }
    switch (battery.charge) {
    case Charge::Charging:
    case Charge::Full:
    case Charge::PendingCharge:
        return false;
    case Charge::Unknown:
    case Charge::Discharging:
    case Charge::Empty:
    case Charge::PendingDischarge:
        break;
    }
    return battery.percent < (wasLow ? kWellPercent : kLowPercent);
}

BatteryWatch::BatteryWatch(QObject* parent) : QObject(parent), m_watcher(this) {
    m_watcher.setWatchMode(QDBusServiceWatcher::WatchForOwnerChange);
    m_watcher.addWatchedService(kService);
    connect(
        &m_watcher, &QDBusServiceWatcher::serviceOwnerChanged, this,
        [this](const QString&, const QString& before, const QString& now) {
            if (!before.isEmpty()) {
                ++m_round;
                set({}); // nobody knows
            }
            if (!now.isEmpty()) {
                ask();
            }
        });
}

void BatteryWatch::busCame(const QDBusConnection& bus) {
    m_bus = bus;
    m_watcher.setConnection(bus);
    m_bus->connect(
        kService, kDevice, kProperties, "PropertiesChanged", this,
        SLOT(changes(QString, QVariantMap, QStringList)));
    ask();
}

void BatteryWatch::busLost() {
    m_watcher.setConnection(QDBusConnection(QString()));
    m_bus.reset();
    ++m_round;
    set({});
}

void BatteryWatch::ask() {
    QDBusMessage question =
        QDBusMessage::createMethodCall(kService, kDevice, kProperties, "GetAll");
    question << QString(kInterface);
    auto* answer = new QDBusPendingCallWatcher(m_bus->asyncCall(question), this);
    connect(
        answer, &QDBusPendingCallWatcher::finished, this,
        [this, round = m_round](QDBusPendingCallWatcher* call) {
            call->deleteLater();
            const QDBusPendingReply<QVariantMap> values = *call;
            if (round == m_round && values.isValid()) {
                take(values.value());
            }
        });
}

void BatteryWatch::changes(
    const QString& interface, const QVariantMap& values, const QStringList& invalidated) {
    if (interface != kInterface) {
        return;
    }
    take(values);
    if (!invalidated.isEmpty()) {
        ask();
    }
}

void BatteryWatch::take(const QVariantMap& values) {
    Battery now = m_battery;
    now.present = values.value("IsPresent", now.present).toBool();
    now.percent = values.value("Percentage", now.percent).toDouble();
    const quint32 state = values.value("State", static_cast<quint32>(now.charge)).toUInt();
    now.charge = state <= static_cast<quint32>(Charge::PendingDischarge)
                     ? static_cast<Charge>(state)
                     : Charge::Unknown;
    set(now);
}

void BatteryWatch::set(const Battery& battery) {
    if (battery == m_battery) {
        return;
    }
    m_battery = battery;
    m_low = isLow(battery, m_low);
    emit changed();
}

} // namespace seamclock
