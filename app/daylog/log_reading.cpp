#include "app/daylog/log_reading.h"

#include "core/bench/bench_codec.h"
#include "core/copies/photo_copies.h"
#include "core/estimate/heat_estimate.h"
#include "core/log/roster.h"
#include "core/report/record_facts.h"
#include "core/weld/event_codec.h"
#include "core/weld/fold.h"

#include <QCoreApplication>
#include <QPointer>
#include <utility>

namespace seamclock {
namespace {

Result<JointSeen> seenIn(LogReader& reader, const std::string& weld) {
    JointSeen out;
    out.line.weld = weld;
    const auto events = reader.weldEvents(weld);
    auto folded = events ? fold(*events) : Result<Weld>(tl::unexpected<Error>(events.error()));
    if (events && events->empty()) {
        return fail(ErrorCode::Missing, weld + " is not in this log");
    }
    auto coupons = readCoupons(reader, weld);
    if (!coupons) {
        return tl::unexpected<Error>(coupons.error());
    }
    out.coupons = std::move(coupons->series);
    if (!folded) {
        out.line.trouble = folded.error().detail;
        const auto first = reader.body(weld, 1); // what its opening says, if that can be read
        const auto event = first && *first ? eventFromBody(**first) : fail(ErrorCode::Missing, "");
        const auto* opened = event ? std::get_if<WeldOpened>(&event->d) : nullptr;
        if (opened != nullptr) {
            out.line.number = opened->number;
            out.line.bench = opened->bench;
            out.line.seam = opened->seam.value_or("");
        }
        return out;
    }
    out.record = record(std::move(*folded));
    out.line = lineOf(*out.record);
    const auto rows = reader.rowsOf(weld);
    if (!rows) {
        return tl::unexpected<Error>(rows.error());
    }
    if (rows->empty()) {
        const auto roster = peopleElsewhere(reader, *out.record);
        if (!roster) {
            return tl::unexpected<Error>(roster.error());
        }
        out.people.emplace();
        for (const Person& person : roster->people) {
            (*out.people)[person.id] = person.name;
        }
    }
    auto dispute = reader.dispute(weld);
    if (!dispute) {
        return tl::unexpected<Error>(dispute.error());
    }
    out.line.trouble = std::move(*dispute);
    const auto bench = reader.document(out.record->opened.docs.bench);
    if (!bench && bench.error().code != ErrorCode::Damaged) {
        return tl::unexpected<Error>(bench.error());
    }
    if (bench && *bench) {
        if (auto read = readBench("the bench of " + weld, (*bench)->bytes)) {
            out.bench = std::move(read->bench);
        }
    }
    const QString log = QString::fromStdString(reader.path());
    out.photosLeftBehind = !out.record->photos.empty() && photosOfCopy(reader.path()).empty();
    for (const Retained& one : out.record->photos) {
        JointPhoto photo = lookAtPhoto(std::get<PhotoAdded>(one.d), log);
        photo.n = one.n;
        photo.by = one.by;
        out.photos.push_back(std::move(photo));
    }
    return out;
}

Result<DayLines>
linesIn(LogReader& reader, const JointFilter& filter, const DayNames& names, UnitSystem units) {
    JointFilter one = filter;
    ++one.limit; // whether there is another page
    auto lines = reader.joints(one);
    if (!lines) {
        return tl::unexpected<Error>(lines.error());
    }
    DayLines out;
    out.more = lines->size() > filter.limit;
    if (out.more) {
        lines->resize(filter.limit);
    }
    if (!lines->empty()) {
        out.last = keyOf(lines->back());
    }
    const bool oneDay = filter.fromDay && filter.fromDay == filter.toDay;
    for (const JointLine& line : *lines) {
        const auto events = reader.weldEvents(line.weld);
        if (!events && events.error().code != ErrorCode::Damaged) {
            return tl::unexpected<Error>(events.error());
        }
        auto folded = events ? fold(*events) : Result<Weld>(tl::unexpected<Error>(events.error()));
        if (folded) {
            const WeldRecord made = record(std::move(*folded));
            out.rows.push_back(jointRow(line, &made, names, units, oneDay));
        } else {
            out.rows.push_back(jointRow(line, nullptr, names, units, oneDay));
        }
    }
    return out;
}

} // namespace

/// Touched by the reading thread alone.
class LogReading::Source {
public:
    explicit Source(std::string log) : m_log(std::move(log)) {}

    Result<LogReader*> reader() {
        if (!m_reader) {
            auto opened = LogReader::open(m_log);
            if (!opened) {
                return tl::unexpected<Error>(opened.error());
            }
            m_reader.emplace(std::move(*opened));
        }
        return &*m_reader;
    }
    /// After an error the file is opened anew: it may be another by then.
    void drop() { m_reader.reset(); }

private:
    std::string m_log;
    std::optional<LogReader> m_reader;
};

LogReading::LogReading(std::string log, QObject* parent)
    : QObject(parent), m_source(std::make_shared<Source>(std::move(log))) {
    m_thread.setMaxThreadCount(1);
}

LogReading::~LogReading() {
    dropHeat();
    m_thread.clear();
    m_thread.waitForDone();
}

template <class T>
void LogReading::run(std::function<Result<T>(LogReader&)> work, Then<T> then) {
    ++m_running;
    m_thread.start([this, source = m_source, work = std::move(work), then = std::move(then)] {
        auto reader = source->reader();
        auto result = std::make_shared<Result<T>>(
            reader ? work(**reader) : Result<T>(tl::unexpected<Error>(reader.error())));
        if (!*result) {
            source->drop();
        }
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

void LogReading::askLines(
    const JointFilter& filter, const DayNames& names, UnitSystem units, Then<DayLines> then) {
    run<DayLines>(
        [filter, names, units](LogReader& reader) { return linesIn(reader, filter, names, units); },
        std::move(then));
}

void LogReading::askJoint(const std::string& weld, Then<JointSeen> then) {
    run<JointSeen>([weld](LogReader& reader) { return seenIn(reader, weld); }, std::move(then));
}

void LogReading::askPeople(Then<std::map<std::string, std::string>> then) {
    using People = std::map<std::string, std::string>;
    run<People>(
        [](LogReader& reader) -> Result<People> {
            const auto roster = readRoster(reader);
            if (!roster) {
                return tl::unexpected<Error>(roster.error());
            }
            People out;
            for (const Person& person : roster->people) {
                out[person.id] = person.name;
            }
            return out;
        },
        std::move(then));
}

void LogReading::askValues(
    FilterBy by, const std::optional<std::string>& before, Then<std::vector<std::string>> then) {
    run<std::vector<std::string>>(
        [by, before](LogReader& reader) -> Result<std::vector<std::string>> {
            switch (by) {
            case FilterBy::Day:
                return reader.days(kMostDays, before);
            case FilterBy::Bench:
                return reader.values(JointField::Bench);
            case FilterBy::Verdict:
                return reader.values(JointField::Verdict);
            case FilterBy::Operator:
                return reader.values(JointField::By);
            case FilterBy::Material:
                return reader.values(JointField::Material);
            case FilterBy::Job:
                break;
            }
            const auto jobs = jobsIn(reader);
            if (!jobs) {
                return tl::unexpected<Error>(jobs.error());
            }
            std::vector<std::string> names;
            for (const DayJob& job : *jobs) {
                names.push_back(job.name);
            }
            return names;
        },
        std::move(then));
}

void LogReading::askJobs(Then<std::vector<DayJob>> then) {
    run<std::vector<DayJob>>([](LogReader& reader) { return jobsIn(reader); }, std::move(then));
}

void LogReading::askFor(std::function<Result<QString>(LogReader&)> work, Then<QString> then) {
    run<QString>(std::move(work), std::move(then));
}

void LogReading::askHead(Then<std::int64_t> then) {
    run<std::int64_t>(
        [](LogReader& reader) -> Result<std::int64_t> {
            const auto head = reader.head();
            if (!head) {
                return tl::unexpected<Error>(head.error());
            }
            return head->seq;
        },
        std::move(then));
}

void LogReading::dropHeat() {
    if (m_dropped) {
        *m_dropped = true;
        m_dropped.reset();
    }
}

void LogReading::askHeat(
    const WeldRecord& record, const std::optional<Bench>& bench,
    const std::vector<Material>& materials, std::function<void(const HeatEstimate&)> then) {
    dropHeat();
    const auto dropped = std::make_shared<std::atomic<bool>>(false);
    m_dropped = dropped;
    ++m_running;
    QThreadPool::globalInstance()->start([self = QPointer<LogReading>(this), events = record.events,
                                          bench, materials, dropped, then = std::move(then)] {
        const auto folded = fold(events);
        const auto course = folded ? courseOf(*folded, bench ? &*bench : nullptr)
                                   : Result<HeatCourse>(tl::unexpected<Error>(folded.error()));
        auto estimate = std::make_shared<Result<HeatEstimate>>(
            course ? estimateHeat(*course, materials, 60, dropped.get())
                   : Result<HeatEstimate>(tl::unexpected<Error>(course.error())));
        QMetaObject::invokeMethod(qApp, [self, estimate, dropped, then] {
            if (!self) {
                return;
            }
            --self->m_running;
            if (!*dropped && *estimate) {
                then(**estimate);
            }
            emit self->told();
        });
    });
}

} // namespace seamclock
