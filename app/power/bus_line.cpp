#include "app/power/bus_line.h"

#include <QFile>
#include <atomic>

namespace seamclock {
namespace {

/// Empty: the user has no bus. Left to itself the library would start one for him.
QString usersBus() {
    const QString named = qEnvironmentVariable("DBUS_SESSION_BUS_ADDRESS");
    if (!named.isEmpty()) {
        return named;
    }
    const QString socket = qEnvironmentVariable("XDG_RUNTIME_DIR") + "/bus";
    return QFile::exists(socket) ? "unix:path=" + socket : QString();
}

QString newName() {
    static std::atomic<int> made{0};
    return QString("seamclock-power-%1").arg(made++);
}

} // namespace

BusLine::BusLine(Bus bus, const PowerSources& sources, QObject* parent)
    : QObject(parent), m_bus(bus),
      m_address(bus == Bus::System ? sources.systemBus : sources.sessionBus), m_retry(this) {
    m_retry.setSingleShot(true);
    m_retry.setInterval(sources.retryMs);
    connect(&m_retry, &QTimer::timeout, this, &BusLine::open);
}

BusLine::~BusLine() {
    close();
}

void BusLine::open() {
    close();
    m_name = newName();
    const QString address = m_bus == Bus::Session && m_address.isEmpty() ? usersBus() : m_address;
    const QDBusConnection bus =
        !address.isEmpty()     ? QDBusConnection::connectToBus(address, m_name)
        : m_bus == Bus::System ? QDBusConnection::connectToBus(QDBusConnection::SystemBus, m_name)
                               : QDBusConnection(m_name);
    if (!bus.isConnected()) {
        close();
        m_retry.start();
        emit lost();
        return;
    }
    QDBusConnection(bus).connect(
        {}, "/org/freedesktop/DBus/Local", "org.freedesktop.DBus.Local", "Disconnected", this,
        SLOT(end()));
    emit came(bus);
}

void BusLine::end() {
    close();
    m_retry.start();
    emit lost();
}

void BusLine::close() {
    if (!m_name.isEmpty()) {
        QDBusConnection::disconnectFromBus(m_name);
        m_name.clear();
    }
}

} // namespace seamclock
