// Keeps the tablet awake while a weld runs, and tells when its battery runs low. The program asks
// the login manager not to sleep and the screen saver not to go dark; what isn't there or refuses
// is asked again when it may be, and a weld never waits for any of it. All that touches a bus is
// done by a thread of its own, since a bus that is frozen makes even opening wait.
#pragma once

#include "app/power/power_state.h"

#include <QObject>

class QThread;

namespace seamclock {

class PowerKeeper;

class StayAwake : public QObject {
    Q_OBJECT

public:
    explicit StayAwake(const PowerSources& sources = {}, QObject* parent = nullptr);
    /// Gives everything back; a bus that is frozen is waited for a second, and then left alone.
    ~StayAwake() override;

    void hold(bool weldRuns);
    const PowerState& state() const { return m_state; }
    /// A frozen bus still holds a thread that was left alone. Qt would wait for it at the end of
    /// the process, without limit: end it by std::_Exit, when all else is done.
    static bool isProcessHeld();

signals:
    void changed();

private:
    QThread* m_thread;
    PowerKeeper* m_keeper; // the thread's
    bool m_hold = false;
    PowerState m_state;
};

} // namespace seamclock
