#include "app/power/stay_awake.h"

#include "app/power/power_keeper.h"

#include <QThread>
#include <algorithm>
#include <vector>

namespace seamclock {
namespace {

constexpr unsigned long kPatienceMs = 1'000;

/// Of threads that a frozen bus holds: they go with the process.
std::vector<QThread*>& leftAlone() {
    static auto* all = new std::vector<QThread*>;
    return *all;
}

} // namespace

StayAwake::StayAwake(const PowerSources& sources, QObject* parent)
    : QObject(parent), m_thread(new QThread), m_keeper(new PowerKeeper(sources)) {
    m_thread->setObjectName("power");
    m_keeper->moveToThread(m_thread);
    connect(m_thread, &QThread::finished, m_keeper, &QObject::deleteLater);
    connect(m_keeper, &PowerKeeper::told, this, [this](const PowerState& state) {
        m_state = state;
        emit changed();
    });
    m_thread->start();
    QMetaObject::invokeMethod(m_keeper, &PowerKeeper::begin);
}

StayAwake::~StayAwake() {
    QMetaObject::invokeMethod(m_keeper, [keeper = m_keeper] {
        keeper->hold(false);
        QThread::currentThread()->quit();
    });
    if (m_thread->wait(kPatienceMs)) {
        delete m_thread;
    } else {
        leftAlone().push_back(m_thread);
    }
}

bool StayAwake::isProcessHeld() {
    const std::vector<QThread*>& all = leftAlone();
    return std::any_of(
        all.begin(), all.end(), [](const QThread* thread) { return thread->isRunning(); });
}

void StayAwake::hold(bool weldRuns) {
    if (weldRuns == m_hold) {
        return;
    }
    m_hold = weldRuns;
    QMetaObject::invokeMethod(m_keeper, [keeper = m_keeper, weldRuns] { keeper->hold(weldRuns); });
}

} // namespace seamclock
