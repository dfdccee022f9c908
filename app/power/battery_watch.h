// The battery as UPower's DisplayDevice tells it: all batteries of the machine as one.
#pragma once

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusServiceWatcher>
#include <QObject>
#include <QVariantMap>
#include <optional>

namespace seamclock {

/// UPower's numbers: org.freedesktop.UPower.Device, "State".
enum class Charge : quint32 {
    Unknown = 0,
    Charging = 1,
    Discharging = 2,
    Empty = 3,
    Full = 4,
    PendingCharge = 5,
    PendingDischarge = 6
};

struct Battery {
    bool present = false;
    Charge charge = Charge::Unknown;
    double percent = 100;

    bool operator==(const Battery&) const = default;
};

inline constexpr double kLowPercent = 15;
/// Once low, until it is at least that full: a measurement that trembles must not call twice.
inline constexpr double kWellPercent = 17;

/// A battery that isn't being charged and is below its limit. One that doesn't say whether it is
/// charged counts as running out.
bool isLow(const Battery& battery, bool wasLow);

class BatteryWatch : public QObject {
    Q_OBJECT

public:
    explicit BatteryWatch(QObject* parent);

    void busCame(const QDBusConnection& bus);
    void busLost();
    const Battery& battery() const { return m_battery; }
    bool low() const { return m_low; }

signals:
    void changed();

private slots:
    void
    changes(const QString& interface, const QVariantMap& values, const QStringList& invalidated);

private:
    void ask();
    void take(const QVariantMap& values);
    void set(const Battery& battery);

    std::optional<QDBusConnection> m_bus;
    QDBusServiceWatcher m_watcher;
    Battery m_battery;
    bool m_low = false;
    int m_round = 0; // of the service that is asked
};

} // namespace seamclock
