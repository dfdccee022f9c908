#include "app/power/wake_lock.h"

#include <QDBusError>
#include <QDBusPendingCallWatcher>
#include <limits>

namespace seamclock {
namespace {

constexpr int kForEver = std::numeric_limits<int>::max(); // to the library

bool isMissing(const QDBusMessage& error) {
    switch (QDBusError(error).type()) {
    case QDBusError::ServiceUnknown:
    case QDBusError::UnknownMethod:
    case QDBusError::UnknownObject:
    case QDBusError::UnknownInterface:
    case QDBusError::NoReply: // it ended over the question
    case QDBusError::Disconnected:
    case QDBusError::NoServer:
    case QDBusError::NoNetwork:
        return true;
    case QDBusError::NoError:
    case QDBusError::Other:
    case QDBusError::Failed:
    case QDBusError::NoMemory:
    case QDBusError::BadAddress:
    case QDBusError::NotSupported:
    case QDBusError::LimitsExceeded:
    case QDBusError::AccessDenied:
    case QDBusError::Timeout:
    case QDBusError::AddressInUse:
    case QDBusError::InvalidArgs:
    case QDBusError::TimedOut:
    case QDBusError::InvalidSignature:
    case QDBusError::InternalError:
    case QDBusError::InvalidService:
    case QDBusError::InvalidObjectPath:
    case QDBusError::InvalidInterface:
    case QDBusError::InvalidMember:
    case QDBusError::UnknownProperty:
    case QDBusError::PropertyReadOnly:
        break;
    }
    // The bus could not start it.
    return error.errorName().startsWith("org.freedesktop.DBus.Error.Spawn.");
}

} // namespace

WakeLock::WakeLock(const QString& service, int retryMs, QObject* parent)
    : QObject(parent), m_watcher(this), m_retry(this) {
    m_watcher.setWatchMode(QDBusServiceWatcher::WatchForOwnerChange);
    m_watcher.addWatchedService(service);
    connect(
        &m_watcher, &QDBusServiceWatcher::serviceOwnerChanged, this,
        [this](const QString&, const QString& before, const QString& now) {
            ownerChanged(before, now);
        });
    m_retry.setSingleShot(true);
    m_retry.setInterval(retryMs);
    connect(&m_retry, &QTimer::timeout, this, &WakeLock::pursue);
}

void WakeLock::setWanted(bool wanted) {
    if (wanted == m_wanted) {
        return;
    }
    m_wanted = wanted;
    m_failed.reset();
    pursue();
}

void WakeLock::busCame(const QDBusConnection& bus) {
    m_bus = bus;
    m_watcher.setConnection(bus);
    m_failed.reset();
    pursue();
}

void WakeLock::busLost() {
    if (m_bus) {
        m_watcher.setConnection(QDBusConnection(QString()));
        m_bus.reset();
        ownerChanged("the bus", {});
    } else {
        m_failed = LockState::Missing;
        emit changed();
    }
}

LockState WakeLock::state() const {
    if (!m_wanted) {
        return LockState::Off;
    }
    return m_held ? LockState::Held : m_failed.value_or(LockState::Asked);
}

void WakeLock::pursue() {
    if (!m_wanted) {
        m_retry.stop();
        m_held = false;
        giveBack(m_bus);
    } else if (!m_bus) {
        m_failed = LockState::Missing;
    } else if (!m_held && !m_asking) {
        ask();
    }
    emit changed();
}

void WakeLock::ask() {
    m_asking = true;
    auto* answer = new QDBusPendingCallWatcher(m_bus->asyncCall(question(), kForEver), this);
    connect(
        answer, &QDBusPendingCallWatcher::finished, this,
        [this, round = m_round](QDBusPendingCallWatcher* call) {
            call->deleteLater();
            if (round == m_round) {
                answered(call->reply());
            }
        });
}

void WakeLock::answered(const QDBusMessage& answer) {
    m_asking = false;
    m_held = answer.type() == QDBusMessage::ReplyMessage && keep(answer);
    if (m_held) {
        m_failed.reset();
        m_retry.stop();
        pursue(); // it may not be wanted any more
        return;
    }
    const bool missing = answer.type() == QDBusMessage::ErrorMessage && isMissing(answer);
    m_failed = missing ? LockState::Missing : LockState::Refused;
    if (m_wanted) {
        m_retry.start();
    }
    emit changed();
}

// Without an owner before, a question may be on its way to this one: the bus starts services that
// are asked.
void WakeLock::ownerChanged(const QString& before, const QString& now) {
    if (!before.isEmpty()) {
        ++m_round;
        m_asking = false;
        m_held = false;
        giverGone();
    }
    if (now.isEmpty()) {
        m_failed = LockState::Missing;
        emit changed();
        return;
    }
    m_failed.reset();
    pursue();
}

} // namespace seamclock
