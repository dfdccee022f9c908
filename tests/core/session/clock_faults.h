// A shop whose clocks go wrong: a machine with a boot clock and a wall clock of its own, a program
// (Session, LogWriter and log file) that runs on it, dies and is started again, and a witness of
// each weld who knows what the program can't: how much time really passed. What must hold is worked
// out here from that true time alone, not by the program's own fold.
#pragma once

#include "core/log/world.h"
#include "core/session/session.h"
#include "core/weld/cues.h"
#include "core/weld/record.h"
#include "tests/support/scratch_folder.h"

#include <map>
#include <mutex>
#include <optional>
#include <random>
#include <string>
#include <vector>

namespace seamclock::test {

/// The wall clock's error is what it shows beyond the true time; the boot clock has none.
class Machine : public Clock {
public:
    Instant now() const override;
    /// Time passes, with the program awake or the machine suspended.
    void live(Milliseconds time);
    void stepWall(Milliseconds by);
    void setOffset(std::chrono::minutes offset);
    /// Without power for `off`; the wall clock comes back with `by` more error.
    void reboot(Milliseconds off, Milliseconds by);

    Milliseconds truth() const;
    Milliseconds error() const;

private:
    mutable std::mutex m_mutex; // a log's writer thread reads the clock too
    Milliseconds m_truth{0};
    Milliseconds m_bootedAt{-5'000'000};
    Milliseconds m_error{0};
    std::chrono::minutes m_offset{60};
    int m_boot = 1;
};

/// What is known of one weld beside the program.
struct Witness {
    std::vector<Milliseconds> truths; // of event n at [n - 1]
    std::vector<ClockBridged> bridges;
    std::vector<Milliseconds> jumps;
    Instant openedAt;
    bool behind = false;  // a bridge was made while the wall clock showed too little
    bool vouched = false; // a person confirmed a wall clock that showed too much
    bool open = true;

    // At its last event.
    Instant last;
    Milliseconds lastTruth{0};
    Milliseconds lastError{0};
};

class Shop {
public:
    explicit Shop(const std::string& path);

    void start();
    /// The rows are on disk, and the program is gone without a word.
    void kill();
    bool isRunning() const { return m_session.has_value(); }

    std::string open(std::size_t seam);
    /// Empty: refused.
    std::optional<Weld> act(const std::string& weld, const WeldDetail& detail);
    /// With the answer held against the rules. A confirmation that must be refused is followed by
    /// RebootWord::GoOnUnconfirmed.
    void settle(const std::string& weld, RebootWord word);
    /// The program reads the clock, and what it would paint and sound is held against the truth.
    void look(const std::string& weld);

    const Weld& weld(const std::string& id) { return *m_session->find(id); }
    /// Record, file and list of a weld that is over.
    void judge(const std::string& weld);
    void judgeLog();

    Machine machine;

private:
    void readClock();
    void noteEvents(const std::string& weld);
    void judgePainted(const Weld& weld, const Witness& witness);
    void judgePhases(const WeldRecord& record, const Witness& witness);
    void judgeTexts(const WeldRecord& record, const Witness& witness);

    std::string m_path;
    std::optional<LogWriter<Production>> m_writer;
    std::optional<Session<Production>> m_session;
    std::map<std::string, Witness> m_witnesses;
    std::vector<std::string> m_opened;
    std::vector<Milliseconds> m_stationJumps;
    // Of the program's last reading, and of the station's last row.
    std::optional<Milliseconds> m_readError;
    std::string m_readBoot;
    std::string m_rowBoot;
    Milliseconds m_rowTruth{0};
    Milliseconds m_rowError{0};
};

/// Something that befalls the machine while a weld is made.
struct Mishap {
    enum class Kind { StepWall, ChangeOffset, Suspend, Kill, Reboot };
    Kind kind = Kind::StepWall;
    Milliseconds time{0};  // how long it lasts
    Milliseconds error{0}; // of the wall clock, or minutes of the offset
    RebootWord word = RebootWord::None;
};

/// When: `after` this long in the phase, or at the first moment past it.
struct Planned {
    std::string phase;
    Milliseconds after{0};
    std::vector<Mishap> mishaps; // one right after the other
};

/// A hand that makes the next step when the program says so, or where it is hasty, at a moment of
/// its own.
class Welder {
public:
    Welder(
        Shop& shop, std::size_t seam, std::vector<Planned> planned, std::uint64_t seed, bool hasty);

    /// To the end of the weld. Whether every mishap came.
    bool weldOn();
    const std::string& id() const { return m_weld; }

private:
    void step();
    bool wait(Milliseconds time);
    bool befall();
    void make(const WeldDetail& detail);
    bool stands(CueKind kind);
    void waitFor(CueKind kind, Milliseconds usual);
    Milliseconds own(Milliseconds least, Milliseconds most);

    Shop& m_shop;
    std::string m_weld;
    std::vector<Planned> m_planned;
    std::mt19937_64 m_random;
    bool m_hasty;
    std::string m_phase;
    Milliseconds m_since{0};
    std::optional<Milliseconds> m_ownTime;
};

/// Weld after weld in one log, some by a hasty hand, with mishaps of every kind, size and moment by
/// chance; each weld and the whole log are judged.
void befallByChance(int atLeast, std::uint64_t seed);

} // namespace seamclock::test
