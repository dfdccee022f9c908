// The screen saver, held off by its Inhibit on the user's bus: until UnInhibit, or until the
// connection that asked is gone.
#pragma once

#include "app/power/wake_lock.h"

namespace seamclock {

class ScreenLock : public WakeLock {
    Q_OBJECT

public:
    ScreenLock(int retryMs, QObject* parent);

protected:
    QDBusMessage question() const override;
    bool keep(const QDBusMessage& answer) override;
    void giveBack(const std::optional<QDBusConnection>& bus) override;
    void giverGone() override;

private:
    std::optional<quint32> m_cookie;
};

} // namespace seamclock
