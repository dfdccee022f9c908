// Works a practice weld's score out beside the screens: the take once more, the weld of a steady
// hand, and what is said of the two. It takes seconds; how far it is, is told.
#pragma once

#include <QObject>
#include <atomic>
#include <memory>

namespace seamclock {

struct PracticeWork;
struct PracticeResult;

class ScoreWorker : public QObject {
    Q_OBJECT

public:
    explicit ScoreWorker(QObject* parent = nullptr) : QObject(parent) {}
    ~ScoreWorker() override;

    /// What was asked before is dropped.
    void ask(const PracticeWork& work);
    void drop();

signals:
    void progressed(double share);
    void came(std::shared_ptr<const seamclock::PracticeResult> result);
    void failed(const QString& why);

private:
    std::shared_ptr<std::atomic<bool>> m_dropped; // of the work that is under way
};

} // namespace seamclock
