// Reads the log for the shop's pages on a thread of its own, one question after the other, and
// works out there what may take its time: a day's plan, charts over years. An answer comes on the
// window's thread. Nothing here writes.
#pragma once

#include "core/log/log_reader.h"

#include <QObject>
#include <QThreadPool>
#include <functional>
#include <memory>
#include <string>
#include <utility>

namespace seamclock {

class ShopReading : public QObject {
    Q_OBJECT

public:
    /// `log`: its path.
    explicit ShopReading(std::string log, QObject* parent = nullptr);
    /// Waits for the question that is under way; the others are dropped.
    ~ShopReading() override;

    /// Errors as LogReader::open and as the work's own.
    template <class T>
    void
    ask(std::function<Result<T>(LogReader&)> work, std::function<void(const Result<T>&)> then) {
        ++m_running;
        m_thread.start([this, log = m_log, work = std::move(work), then = std::move(then)] {
            auto reader = LogReader::open(log);
            auto result = std::make_shared<Result<T>>(
                reader ? work(*reader) : Result<T>(tl::unexpected<Error>(reader.error())));
            QMetaObject::invokeMethod(
                this,
                [this, result, then] {
                    --m_running;
                    then(*result);
                    emit told();
                },
                Qt::QueuedConnection);
        });
    }

    /// Questions whose answer did not come yet.
    bool isBusy() const { return m_running > 0; }

signals:
    /// An answer was told.
    void told();

private:
    std::string m_log;
    int m_running = 0;
    QThreadPool m_thread; // last: it ends before what it works with
};

} // namespace seamclock
