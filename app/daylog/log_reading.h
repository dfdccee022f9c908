// Reads the log for the day log's pages on a thread of its own: a page of lines, one joint whole,
// the values that a list can be narrowed to. What was asked later counts: an answer to a question
// that stands no more is dropped. The heat estimate of a joint is worked out on another thread, and
// comes when it comes. Nothing here writes.
#pragma once

#include "app/daylog/day_filter.h"
#include "app/daylog/day_jobs.h"
#include "app/daylog/joint_view.h"
#include "core/bench/bench.h"
#include "core/heat/material.h"
#include "core/log/log_reader.h"

#include <QObject>
#include <QThreadPool>
#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// A page of the list, each line as it is painted.
struct DayLines {
    std::vector<JointRowView> rows;
    std::optional<JointKey> last; // where it ended
    bool more = false;
};

/// One joint as the log has it.
struct JointSeen {
    JointLine line;
    std::optional<WeldRecord> record; // absent: its events make no weld
    std::optional<Bench> bench;       // as it was when the weld was planned
    std::vector<JointPhoto> photos;
    bool photosLeftBehind = false;     // of a copy that has no folder of them beside it
    std::vector<CouponSeries> coupons; // that were cut from it
    /// Who is who by its own log, where it came with another; absent: by this one.
    std::optional<std::map<std::string, std::string>> people;
};

class LogReading : public QObject {
    Q_OBJECT

public:
    /// `log`: its path.
    explicit LogReading(std::string log, QObject* parent = nullptr);
    ~LogReading() override;

    template <class T>
    using Then = std::function<void(const Result<T>&)>;

    /// Errors as LogReader::open and joints. `after`: where the page before ended.
    void askLines(
        const JointFilter& filter, const DayNames& names, UnitSystem units, Then<DayLines> then);
    /// Missing: no such weld.
    void askJoint(const std::string& weld, Then<JointSeen> then);
    /// By person: how they are called.
    void askPeople(Then<std::map<std::string, std::string>> then);
    /// Of days at most kMostDays, the newest first; before that day, if one is given.
    void askValues(
        FilterBy by, const std::optional<std::string>& before, Then<std::vector<std::string>> then);
    void askJobs(Then<std::vector<DayJob>> then);
    /// Any other reading, done in its turn: a file, a paper.
    void askFor(std::function<Result<QString>(LogReader&)> work, Then<QString> then);
    /// The row at which the log ends: whether something came.
    void askHead(Then<std::int64_t> then);
    /// Nothing comes where there is no estimate. What was asked before is dropped.
    void askHeat(
        const WeldRecord& record, const std::optional<Bench>& bench,
        const std::vector<Material>& materials, std::function<void(const HeatEstimate&)> then);
    void dropHeat();

    /// Questions whose answer did not come yet, the estimate's among them.
    bool isBusy() const { return m_running > 0; }

signals:
    /// An answer was told.
    void told();

private:
    class Source; // the reader, opened when it is first needed

    template <class T>
    void run(std::function<Result<T>(LogReader&)> work, Then<T> then);

    std::shared_ptr<Source> m_source;
    std::shared_ptr<std::atomic<bool>> m_dropped; // of the estimate under way
    int m_running = 0;
    QThreadPool m_thread; // last: it ends before what it works with
};

} // namespace seamclock
