// The one way from a hand to the log. A session holds the open welds of a running program; every
// step passes through act(): the clock is read once, the step is judged against the weld as it is
// now, counts at once, and its row is on its way to the disk without being waited for. It also
// writes down what befalls the station: program started and stopped, the wall clock jumped. It
// knows no screen and no cue; what a step means is core/weld's. One thread.
#pragma once

#include "core/log/log_writer.h"
#include "core/people/credentials.h"
#include "core/rescue/set_aside.h"
#include "core/session/after_cut.h"
#include "core/session/align_median.h"
#include "core/session/bench_past.h"
#include "core/session/carry.h"
#include "core/session/clock_watch.h"
#include "core/session/order.h"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace seamclock {

/// A weld that stood open in the log when the session began.
struct FoundWeld {
    std::string weld; // "weld:UUID"
    AfterCut after = AfterCut::GoesOn;
};

/// One whose events make no weld: it stays in the log as it is.
struct DamagedWeld {
    std::string weld;
    Error error;
};

/// What both worlds share. Made by Session<World>::start.
class SessionBase {
public:
    /// In the order in which they were opened. They are live at once; one of another boot takes no
    /// step until it was settled.
    const std::vector<FoundWeld>& found() const { return m_found; }
    const std::vector<DamagedWeld>& damaged() const { return m_damaged; }

    /// "weld:UUID" of the welds that are open now, in the order in which they were opened.
    std::vector<std::string> openWelds() const;
    /// Null: neither open nor ended in this session. Valid until the next call that changes the
    /// weld.
    const Weld* find(const std::string& weld) const;
    /// Every weld that is here, open or ended.
    void eachWeld(const std::function<void(const Weld&)>& use) const;
    /// How long alignment took in the last welds like that one, as the log had them when it was
    /// opened or found. Empty: fewer than five, a weld of practice, or one past its alignment.
    std::optional<AlignTimes> usualAlignment(const std::string& weld) const;

    /// Plans the weld and opens it, with the next number of this log; the documents' bytes go with
    /// the row, and a calibration that is overdue today is flagged. As planWithSheets; Missing: the
    /// procedure lacks values that a weld needs. Refused: a weld of practice in production, or the
    /// other way round. With order.carriesChecks the checks that still stand from earlier welds on
    /// the bench are its first events.
    Result<Weld> open(const WeldOrder& order, const std::string& by);

    /// Whether the set-up of this order has had its trial joint today, on its bench. Errors as
    /// open.
    Result<TrialFinding> trialOf(const WeldOrder& order);

    /// The weld with this step. As accept(), and Missing for a weld that isn't here, Refused for
    /// what only a foreman may do; nothing changed then.
    Result<Weld> act(const std::string& weld, const Intent& intent);
    /// The step of somebody who has proved who he is, in his name, whatever `intent.by` says: a
    /// foreman may sign off and override what an operator may not. A weld that ended before this
    /// session is read from the log.
    Result<Weld> act(const std::string& weld, const Intent& intent, const ProvenPerson& by);

    /// The person's word, or the default, on a weld that a cut interrupted.
    Result<Weld> settle(const std::string& weld, RebootWord word, const std::string& by);

    /// After a damaged log was set aside: a weld that goes on without all its events says so in a
    /// remark; one of another boot does when it was settled.
    void takeUp(const SetAside& aside);

    /// Lets go of a weld that has ended: it stays in the log, and is not here any more once its
    /// last row is on disk, which later calls look for. An open one stays.
    void forget(const std::string& weld);

    /// The sound was lost, or is there again: the log says so. What was heard before it was lost
    /// does not stand, neither for the next welds nor for those that are still prepared.
    void soundChanged(bool heard);

    /// Reads the clock and notes a jump of the wall clock, and which checks a weld has outlived
    /// while it is prepared: they are asked again. For timers, which may wake up to a changed time.
    Instant look();
    /// By how much the wall clock was set the last time, also while no program ran on this boot;
    /// empty: not since somebody has seen it.
    std::optional<Milliseconds> clockJump() const { return m_jump; }
    void clockJumpSeen() { m_jump.reset(); }

    RowStatus status(const std::string& weld, std::int64_t n) const {
        return m_writer->status(weld, n);
    }

    /// Notes that the program ends, and waits until the rows are on disk. NotWritten: as
    /// LogWriter::flush.
    Result<void> stop();

protected:
    SessionBase(LogWriterBase& writer, const Clock& clock, std::string_view world)
        : m_writer(&writer), m_clock(&clock), m_world(world), m_past(writer.path()) {}
    Result<void> begin();

private:
    struct Open {
        Weld weld;
        std::int64_t order = 0;
        std::optional<AlignTimes> usual{};
        std::optional<Instant> plateUse{}; // before it, on its bench
    };

    Result<Weld> keep(Open& open, Weld next);
    void payOwed(const std::string& weld, const Instant& at);
    void noteJump(const Instant& now, Milliseconds jump);
    void noteJump(const std::string& weld, const Instant& now, Milliseconds jump);
    Result<Weld> actAt(const std::string& weld, const Intent& intent, const Instant& at);
    Result<std::int64_t> nextNumber();
    Result<WeldPlan> planOf(const WeldOrder& order, const std::optional<AlignTimes>& usual) const;
    Result<std::vector<Weld>> earlierOn(const std::string& bench, const Instant& now);
    Result<void> takeInEnded(const std::string& weld);
    void letGo();
    Result<std::optional<AlignTimes>> usualFor(const WeldOrder& order);
    void lookWhatIsUsual();
    void lookWhenThePlateWasUsed(const Instant& now);
    void askAnew(const Instant& now);
    void setAside(
        const std::string& weld, const std::string& check, const Instant& now,
        const std::optional<std::string>& place = {});

    LogWriterBase* m_writer;
    const Clock* m_clock;
    std::string_view m_world;
    ClockWatch m_watch;
    BenchPast m_past;
    std::optional<Milliseconds> m_soundLostUtc; // last
    std::optional<Milliseconds> m_jump;         // of the wall clock, that nobody has seen yet
    std::map<std::string, Open> m_welds;
    std::set<std::string> m_leaving; // ended; they go when their last row is on disk
    std::vector<FoundWeld> m_found;
    std::vector<DamagedWeld> m_damaged;
    std::map<std::string, std::string> m_owed; // remarks of welds that wait to be settled
    std::int64_t m_lastNumber = 0;
    std::int64_t m_opened = 0;
};

template <class World>
class Session : public SessionBase {
public:
    /// Recovers the open welds and notes that the program started. Writer and clock must outlive
    /// the session. Errors as recoverOpenWelds.
    static Result<Session> start(LogWriter<World>& writer, const Clock& clock) {
        Session session(writer, clock);
        const Result<void> begun = session.begin();
        if (!begun) {
            return tl::unexpected<Error>(begun.error());
        }
        return session;
    }

private:
    Session(LogWriter<World>& writer, const Clock& clock)
        : SessionBase(writer, clock, World::kName) {}
};

} // namespace seamclock
