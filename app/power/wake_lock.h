// One thing that keeps the tablet awake, of one service: asked for when it is wanted, given back
// when it isn't. A service that is away, refuses, dies or comes back is met here: what it gave ends
// with it, and a new one is asked for it again. A question is never given up, as its answer may be
// a lock that nobody would then give back: what comes too late is given back at once.
#pragma once

#include "app/power/power_state.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusServiceWatcher>
#include <QObject>
#include <QTimer>
#include <optional>

namespace seamclock {

class WakeLock : public QObject {
    Q_OBJECT

public:
    WakeLock(const QString& service, int retryMs, QObject* parent);

    void setWanted(bool wanted);
    void busCame(const QDBusConnection& bus);
    void busLost();
    LockState state() const;

signals:
    void changed();

protected:
    virtual QDBusMessage question() const = 0;
    /// Keeps what the service gave; false: it is not what such a service gives.
    virtual bool keep(const QDBusMessage& answer) = 0;
    virtual void giveBack(const std::optional<QDBusConnection>& bus) = 0;
    /// The service that gave it is gone.
    virtual void giverGone() = 0;

private:
    void pursue();
    void ask();
    void answered(const QDBusMessage& answer);
    void ownerChanged(const QString& before, const QString& now);

    std::optional<QDBusConnection> m_bus;
    QDBusServiceWatcher m_watcher;
    QTimer m_retry;
    bool m_wanted = false;
    bool m_asking = false;
    bool m_held = false;
    int m_round = 0; // an answer to an older one is another service's
    std::optional<LockState> m_failed;
};

} // namespace seamclock
