// Works the heat estimate out beside the screens, for who asked last.
#pragma once

#include <QObject>
#include <atomic>
#include <memory>
#include <vector>

namespace seamclock {

struct HeatCourse;
struct HeatEstimate;
struct Material;

class HeatWorker : public QObject {
    Q_OBJECT

public:
    explicit HeatWorker(QObject* parent = nullptr) : QObject(parent) {}
    ~HeatWorker() override;

    /// What was asked before is dropped. Nothing comes where there is no estimate.
    void ask(const HeatCourse& course, const std::vector<Material>& materials);
    void drop();

signals:
    void came(const HeatEstimate& estimate);

private:
    std::shared_ptr<std::atomic<bool>> m_dropped; // of the work that is under way
};

} // namespace seamclock
