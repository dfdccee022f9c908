// The machine's sleep, held off by the login manager's Inhibit: for as long as the descriptor that
// it gives is open, and so not a moment longer than this process lives.
#pragma once

#include "app/power/wake_lock.h"

#include <QDBusUnixFileDescriptor>

namespace seamclock {

class SleepLock : public WakeLock {
    Q_OBJECT

public:
    SleepLock(int retryMs, QObject* parent);

protected:
    QDBusMessage question() const override;
    bool keep(const QDBusMessage& answer) override;
    void giveBack(const std::optional<QDBusConnection>& bus) override;
    void giverGone() override;

private:
    QDBusUnixFileDescriptor m_descriptor;
};

} // namespace seamclock
