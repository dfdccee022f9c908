// What a practice stands on: its own log, session and clock, the lessons, and the one weld that is
// made just now with the bench it is made on. Only core's PracticeRun moves the clock while a
// lesson runs; this tells it by how much. Nothing here can reach a production log, by type.
#pragma once

#include "app/operate/floor.h"
#include "core/log/world.h"
#include "core/practice/broken_off.h"
#include "core/practice/practice_history.h"
#include "core/practice/practice_run.h"
#include "core/practice/virtual_clock.h"
#include "core/rescue/set_aside.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// How a lesson went so far, of one trainee.
struct LessonSoFar {
    int takes = 0;
    std::optional<VerdictWord> best; // among those whose joint bends everywhere, if there are any
    bool ductile = false;
    bool found = false; // what was wrong was noticed, all of it, and the weld stopped

    /// There is nothing more to show in it.
    bool isDone() const;
    bool operator==(const LessonSoFar&) const = default;
};
LessonSoFar soFar(const std::vector<PracticeLine>& lines, const std::string& lesson);

class PracticeRoom {
public:
    /// `begins`: the practice clock's first instant; its boot id must be of practice. Errors as
    /// openLog and Session::start.
    static Result<std::unique_ptr<PracticeRoom>> open(
        const Instant& begins, PracticeShop shop, std::vector<Lesson> lessons,
        const std::string& logPath, std::string by);
    /// A lesson under way is left.
    ~PracticeRoom();

    PracticeRoom(const PracticeRoom&) = delete;
    PracticeRoom& operator=(const PracticeRoom&) = delete;

    const std::vector<Lesson>& lessons() const { return m_lessons; }
    const PracticeShop& shop() const { return m_shop; }
    const std::string& by() const { return m_by; }
    const std::string& logPath() const { return m_path; }
    LogWriter<Practice>& writer() { return m_writer; }
    /// Welds that the program's last end left open: ended now, at the opening.
    const std::vector<BrokenOffWeld>& brokenOff() const { return m_brokenOff; }
    Instant now() const { return m_clock->now(); }

    /// Opens the lesson's weld on its bench, set anew. Errors as setLesson, PracticeRun::begin and
    /// Session::open.
    Result<void> begin(const Lesson& lesson);
    bool runs() const { return m_run != nullptr; }
    /// Of the lesson that runs.
    PracticeRun& run() { return *m_run; }
    const PracticeRun& run() const { return *m_run; }
    Floor& floor() { return *m_floor; }
    const Floor& floor() const { return *m_floor; }
    const Weld* weld() const { return m_floor ? m_floor->weld(0) : nullptr; }
    /// A true frame of so long, at that pace where time may hurry.
    void advance(Milliseconds frame, int pace);
    /// Whether time may run faster just now.
    bool mayHurryNow() const;
    /// The weld is closed or aborted: what was made, for the score. The bench stays until end().
    PracticeTake take() const;
    WeldRecord recordOfWeld() const;
    /// Something was done, told, tried or said since the lesson began.
    bool isTouched() const;
    /// A weld that is still open is aborted in the log, as left; the bench stays until end().
    void leave();
    /// Leaves the lesson.
    void end();

    /// Waits for the rows, then reads. Errors as practiceHistory.
    Result<std::vector<PracticeLine>> history();
    /// The events of a weld of this log. Errors as LogReader.
    Result<std::vector<Event>> eventsOf(const std::string& weld);
    Result<KeptTake> kept(const PracticeLine& line);

private:
    PracticeRoom(
        PracticeShop shop, std::vector<Lesson> lessons, std::string by,
        std::unique_ptr<VirtualClock> clock, LogWriter<Practice> writer);

    PracticeShop m_shop;
    std::vector<Lesson> m_lessons;
    std::string m_by;
    std::string m_path;
    std::unique_ptr<VirtualClock> m_clock;
    LogWriter<Practice> m_writer;
    std::unique_ptr<Session<Practice>> m_session;
    std::vector<BrokenOffWeld> m_brokenOff;
    std::unique_ptr<Floor> m_floor; // of the lesson that runs
    std::unique_ptr<PracticeRun> m_run;
};

} // namespace seamclock
