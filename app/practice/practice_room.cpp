#include "app/practice/practice_room.h"

#include "core/log/log_reader.h"

#include <algorithm>

namespace seamclock {
namespace {

constexpr Milliseconds kSlice{100}; // of process time, between two looks at whether it may hurry
constexpr Milliseconds kLongestHurry = std::chrono::hours(20); // a take is no longer than a day

int rankOf(VerdictWord word) {
    switch (word) {
    case VerdictWord::WithinLimits:
        return 3;
    case VerdictWord::WithRemarks:
        return 2;
    case VerdictWord::OutOfLimits:
        return 1;
    case VerdictWord::Incomplete:
        return 0;
    }
    return 0;
}

std::vector<LogDocument> documentsOf(const PracticeShop& shop) {
    std::vector<LogDocument> all;
    for (const ProcedureDocument& one : shop.procedures) {
        all.push_back({one.sha256, "procedure", one.bytes});
    }
    for (const BenchDocument& one : shop.benches) {
        all.push_back({one.sha256, "bench", one.bytes});
    }
    return all;
}

} // namespace

bool LessonSoFar::isDone() const {
    return found || (ductile && best && *best != VerdictWord::OutOfLimits &&
                     *best != VerdictWord::Incomplete);
}

LessonSoFar soFar(const std::vector<PracticeLine>& lines, const std::string& lesson) {
    LessonSoFar so;
    int best = -1;
    for (const PracticeLine& line : lines) {
        if (line.lesson != lesson || line.brokenOff) {
            continue;
        }
        ++so.takes;
        so.found = so.found || (line.verdict == VerdictWord::Incomplete && line.toNotice > 0 &&
                                line.noticed == line.toNotice);
        // What bends everywhere goes before what only looks well.
        const int rank = rankOf(line.verdict) + (line.ductile ? 10 : 0);
        if (rank > best) {
            best = rank;
            so.best = line.verdict;
            so.ductile = line.ductile;
        }
    }
    return so;
}

PracticeRoom::PracticeRoom(
    PracticeShop shop, std::vector<Lesson> lessons, std::string by,
    std::unique_ptr<VirtualClock> clock, LogWriter<Practice> writer)
    : m_shop(std::move(shop)), m_lessons(std::move(lessons)), m_by(std::move(by)),
      m_path(writer.path()), m_clock(std::move(clock)), m_writer(std::move(writer)) {}

Result<std::unique_ptr<PracticeRoom>> PracticeRoom::open(
    const Instant& begins, PracticeShop shop, std::vector<Lesson> lessons,
    const std::string& logPath, std::string by) {
    auto clock = std::make_unique<VirtualClock>(begins);
    auto opened = openLog<Practice>(logPath, *clock, documentsOf(shop));
    if (!opened) {
        return tl::unexpected<Error>(opened.error());
    }
    std::unique_ptr<PracticeRoom> room(new PracticeRoom(
        std::move(shop), std::move(lessons), std::move(by), std::move(clock),
        std::move(opened->writer)));
    auto session = Session<Practice>::start(room->m_writer, *room->m_clock);
    if (!session) {
        return tl::unexpected<Error>(session.error());
    }
    if (opened->aside) {
        session->takeUp(*opened->aside);
    }
    room->m_session = std::make_unique<Session<Practice>>(std::move(*session));
    auto ended = endBrokenOff(*room->m_session);
    if (!ended) {
        return tl::unexpected<Error>(ended.error());
    }
    room->m_brokenOff = std::move(*ended);
    return room;
}

PracticeRoom::~PracticeRoom() {
    end();
    static_cast<void>(m_session ? m_session->stop() : Result<void>()); // rows left are spilled
}

Result<void> PracticeRoom::begin(const Lesson& lesson) {
    end();
    auto set = setLesson(lesson, m_shop);
    if (!set) {
        return tl::unexpected<Error>(set.error());
    }
    auto run = PracticeRun::begin(*set, *m_clock);
    if (!run) {
        return tl::unexpected<Error>(run.error());
    }
    auto floor = std::make_unique<Floor>(*m_session, m_writer, *m_clock, m_shop.procedures, m_by);
    if (const auto added = floor->addBench(set->order.bench); !added) {
        return added;
    }
    floor->setSign(0, QStringLiteral("P"));
    if (const auto opened = floor->open(0, set->order); !opened) {
        return opened;
    }
    m_run = std::make_unique<PracticeRun>(std::move(*run));
    m_floor = std::move(floor);
    return {};
}

void PracticeRoom::advance(Milliseconds frame, int pace) {
    if (!m_run) {
        return;
    }
    if (m_run->now() >= kLongestHurry) {
        pace = 1;
    }
    // In slices: a cue that wants true time ends the hurry where it begins.
    Milliseconds left = frame;
    while (left.count() > 0) {
        const Milliseconds slice =
            std::min(left, std::max(kSlice / std::max(pace, 1), Milliseconds(1)));
        const bool waits = weld() != nullptr && m_run->waitsForPlate(*weld());
        m_run->advance(
            waits ? slice * std::max(pace, 1) : paced(weld(), m_clock->now(), slice, pace));
        left -= slice;
    }
    m_session->look();
}

bool PracticeRoom::mayHurryNow() const {
    return m_run && weld() != nullptr && m_run->now() < kLongestHurry &&
           (m_run->waitsForPlate(*weld()) || mayHurry(*weld(), m_clock->now()));
}

PracticeTake PracticeRoom::take() const {
    return m_run->take(weld()->id());
}

WeldRecord PracticeRoom::recordOfWeld() const {
    return record(*weld());
}

bool PracticeRoom::isTouched() const {
    if (!m_run || weld() == nullptr) {
        return false;
    }
    const PracticeTake made = take();
    return weld()->events.size() > 1 || !made.acts.empty() || !made.tries.empty() ||
           !made.noticed.empty();
}

void PracticeRoom::leave() {
    if (m_floor && weld() != nullptr && isOpen(weld()->state)) {
        ReasonAnswer left;
        left.asked.what = ReasonFor::Stop;
        left.choice = std::string(kLeft);
        static_cast<void>(m_floor->answer(0, left));
    }
}

void PracticeRoom::end() {
    leave();
    m_floor.reset();
    m_run.reset();
}

Result<std::vector<PracticeLine>> PracticeRoom::history() {
    static_cast<void>(m_writer.flush()); // what can't be written is not in the history yet
    auto reader = LogReader::open(m_path);
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    auto lines = practiceHistory(*reader, m_by);
    if (lines) {
        for (PracticeLine& line : *lines) {
            for (const Lesson& lesson : m_lessons) {
                if (line.brokenOff && lesson.id == line.lesson) {
                    line.lessonTitle = lesson.title;
                }
            }
        }
    }
    return lines;
}

Result<std::vector<Event>> PracticeRoom::eventsOf(const std::string& weld) {
    auto reader = LogReader::open(m_path);
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    return reader->weldEvents(weld);
}

Result<KeptTake> PracticeRoom::kept(const PracticeLine& line) {
    auto reader = LogReader::open(m_path);
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    return keptTake(*reader, line);
}

} // namespace seamclock
