#include "app/practice/score_worker.h"

#include "app/practice/practice_result.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

namespace seamclock {

ScoreWorker::~ScoreWorker() {
    drop();
}

void ScoreWorker::drop() {
    if (m_dropped) {
        *m_dropped = true;
        m_dropped.reset();
    }
}

void ScoreWorker::ask(const PracticeWork& work) {
    drop();
    m_dropped = std::make_shared<std::atomic<bool>>(false);
    QThreadPool::globalInstance()->start([worker = QPointer<ScoreWorker>(this), work,
                                          dropped = m_dropped] {
        const auto tell = [&worker, &dropped](double share) {
            QMetaObject::invokeMethod(qApp, [worker, dropped, share] {
                if (worker && !*dropped) {
                    emit worker->progressed(share);
                }
            });
            return !*dropped;
        };
        auto result = workOut(work, tell);
        QMetaObject::invokeMethod(
            qApp, [worker, dropped,
                   result = std::make_shared<Result<PracticeResult>>(std::move(result))] {
                if (!worker || *dropped) {
                    return;
                }
                if (*result) {
                    emit worker->came(std::make_shared<const PracticeResult>(std::move(**result)));
                } else {
                    emit worker->failed(QString::fromStdString(result->error().detail));
                }
            });
    });
}

} // namespace seamclock
