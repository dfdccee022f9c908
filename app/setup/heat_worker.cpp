#include "app/setup/heat_worker.h"

#include "core/estimate/heat_estimate.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

namespace seamclock {

HeatWorker::~HeatWorker() {
    drop();
}

void HeatWorker::drop() {
    if (m_dropped) {
        *m_dropped = true;
        m_dropped.reset();
    }
}

void HeatWorker::ask(const HeatCourse& course, const std::vector<Material>& materials) {
    drop();
    m_dropped = std::make_shared<std::atomic<bool>>(false);
    QThreadPool::globalInstance()->start(
        [worker = QPointer<HeatWorker>(this), course, materials, dropped = m_dropped] {
            auto estimate = std::make_shared<Result<HeatEstimate>>(
                estimateHeat(course, materials, 60, dropped.get()));
            QMetaObject::invokeMethod(qApp, [worker, estimate, dropped] {
                if (worker && !*dropped && *estimate) {
                    emit worker->came(**estimate);
                }
            });
        });
}

} // namespace seamclock
