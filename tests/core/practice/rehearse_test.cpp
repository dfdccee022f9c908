#include "core/practice/virtual_operator.h"

#include "core/log/log_reader.h"
#include "core/log/log_writer.h"
#include "core/log/recover.h"
#include "core/log/verify.h"
#include "core/log/world.h"
#include "tests/support/demo_order.h"
#include "tests/support/fake_clock.h"
#include "tests/support/materials.h"
#include "tests/support/scratch_folder.h"

#include <fstream>
#include <gtest/gtest.h>

using namespace seamclock;
using namespace seamclock::test;
using std::chrono::minutes;
using std::chrono::seconds;

namespace {

RehearseOptions optionsFor(const std::string& log, std::size_t seam = 1) {
    RehearseOptions options;
    options.order = orderOf(kDemoSeams.at(seam));
    options.logPath = log;
    return options;
}

RehearseResult done(const RehearseOptions& options, const RehearseTools& tools = {}) {
    auto result = rehearse(options, tools);
    EXPECT_TRUE(result) << (result ? "" : result.error().detail);
    return result ? std::move(*result) : RehearseResult{};
}

std::string refusal(const RehearseOptions& options, const RehearseTools& tools = {}) {
    const auto result = rehearse(options, tools);
    return result ? "done" : result.error().detail;
}

/// What must not depend on the log or the hour: without UUIDs, hashes, log id and number.
std::vector<Event> comparable(std::vector<Event> events) {
    for (Event& event : events) {
        event.subject = "weld:";
        event.at.bootId = "";
        if (auto* opened = std::get_if<WeldOpened>(&event.d)) {
            opened->number = 0;
        }
    }
    return events;
}

/// A machine whose clock moves only while somebody waits on it.
class WaitingMachine : public Pacer {
public:
    explicit WaitingMachine(FakeClock& clock) : m_clock(clock) {}
    void wait(Milliseconds gap) override { m_clock.wait(gap); }

private:
    FakeClock& m_clock;
};

/// Adds up what it was asked to wait, and does not.
class Tally : public Pacer {
public:
    void wait(Milliseconds gap) override { total += gap; }
    Milliseconds total{0};
};

class Listener : public RehearseWatcher {
public:
    void planned(const Weld&, bool resumed) override { planning.push_back(resumed); }
    void happened(const Weld& weld, const Event& event) override {
        events.push_back(event);
        EXPECT_EQ(weld.events[static_cast<std::size_t>(event.n - 1)], event);
        see(event.at);
    }
    void cued(const Weld&, const CueNote& cue) override { see(cue.at); }
    void saved(const Weld&, std::int64_t n) override { savedRows.push_back(n); }

    std::vector<bool> planning;
    std::vector<Event> events;
    std::vector<std::int64_t> savedRows;
    bool inOrder = true;

private:
    void see(const Instant& at) {
        inOrder = inOrder && m_last <= at.boot;
        m_last = at.boot;
    }
    Milliseconds m_last{0};
};

const Event* firstNamed(const std::vector<Event>& events, const std::string& kind) {
    for (const Event& event : events) {
        if (kindOf(event.d) == kind) {
            return &event;
        }
    }
    return nullptr;
}

std::vector<Milliseconds> onsets(const RehearseResult& result, CueKind kind) {
    std::vector<Milliseconds> all;
    for (const CueNote& note : result.cues) {
        if (note.cue.kind == kind) {
            all.push_back(note.at.boot);
        }
    }
    return all;
}

class Rehearsing : public ::testing::Test {
protected:
    ScratchFolder m_folder;
};

} // namespace

TEST_F(Rehearsing, PutsAWholeWeldIntoAPracticeLogThatVerifies) {
    const std::string log = m_folder.file("a/b/c/practice.seamlog");
    const RehearseResult result = done(optionsFor(log));
    EXPECT_EQ(toString(result.record.verdict.word), "within limits");
    EXPECT_EQ(result.notSaved, "");
    EXPECT_EQ(result.logPath, log);
    auto reader = LogReader::open(log);
    ASSERT_TRUE(reader) << reader.error().detail;
    EXPECT_EQ(reader->world(), "practice");
    EXPECT_EQ(reader->weldEvents(result.weld).value_or(std::vector<Event>{}), result.events);
    const auto verified = verifyLog(log);
    ASSERT_TRUE(verified);
    EXPECT_TRUE(verified->ok) << (verified->finding ? verified->finding->reason : "");
    EXPECT_EQ(verified->documents, 2);
    // The record was stored as it is recomputed.
    ASSERT_TRUE(result.record.stored);
    EXPECT_EQ(result.record.stored->verdict, toString(result.record.verdict.word));
}

// The boot id is "practice:UUID", start 2030-01-07T06:00Z, both clocks go on
// together.
TEST_F(Rehearsing, LivesOnAPracticeClockFromTheFixedHour) {
    const RehearseResult result = done(optionsFor(m_folder.file("p.seamlog")));
    const Instant& start = result.events.front().at;
    EXPECT_EQ(toIsoUtc(start.utc), "2030-01-07T06:00:00.000Z");
    EXPECT_EQ(start.bootId.substr(0, 9), "practice:");
    EXPECT_EQ(start.bootId.size(), 9U + 36U);
    for (const Event& event : result.events) {
        EXPECT_EQ(event.at.utc - start.utc, event.at.boot - start.boot);
        EXPECT_EQ(event.at.bootId, start.bootId);
    }
}

TEST_F(Rehearsing, GivesOneSeedOneRecordWhateverThePaceAndTheLog) {
    const RehearseResult once = done(optionsFor(m_folder.file("1.seamlog")));
    Tally tally;
    Listener listener;
    RehearseTools tools;
    tools.pacer = &tally;
    tools.watcher = &listener;
    const RehearseResult paced = done(optionsFor(m_folder.file("2.seamlog")), tools);
    const RehearseResult next = done(optionsFor(m_folder.file("1.seamlog")));
    EXPECT_EQ(comparable(paced.events), comparable(once.events));
    EXPECT_EQ(comparable(next.events), comparable(once.events));
    EXPECT_EQ(next.record.opened.number, 2);
    EXPECT_EQ(paced.cues.size(), once.cues.size());
    EXPECT_EQ(tally.total, once.events.back().at.boot - once.events.front().at.boot);
    RehearseOptions other = optionsFor(m_folder.file("3.seamlog"));
    other.seed = 2;
    EXPECT_NE(comparable(done(other).events), comparable(once.events));
}

TEST_F(Rehearsing, TellsEverythingInTheOrderOfTime) {
    Listener listener;
    RehearseTools tools;
    tools.watcher = &listener;
    const RehearseResult result = done(optionsFor(m_folder.file("p.seamlog")), tools);
    EXPECT_EQ(listener.planning, std::vector<bool>{false});
    EXPECT_EQ(listener.events, result.events);
    EXPECT_TRUE(listener.inOrder);
    ASSERT_EQ(listener.savedRows.size(), result.events.size());
    EXPECT_EQ(listener.savedRows.back(), static_cast<std::int64_t>(result.events.size()));
}

// Get ready 10 s before soak's end and 60 s before cooling's, count-in 3, 2, 1,
// act now when soak is due, done when cooling is.
TEST_F(Rehearsing, NamesEachCueAtItsInstant) {
    const RehearseResult result = done(optionsFor(m_folder.file("p.seamlog")));
    const Milliseconds soak = firstNamed(result.events, "soak_started")->at.boot;
    const Milliseconds lock = firstNamed(result.events, "pressure_locked")->at.boot;
    const Milliseconds due = soak + result.plan.soak->target;
    const Milliseconds cooled = lock + result.plan.cooling->atLeast;
    EXPECT_EQ(onsets(result, CueKind::ActNow), std::vector<Milliseconds>{due});
    EXPECT_EQ(
        onsets(result, CueKind::GetReady),
        (std::vector<Milliseconds>{due - seconds(10), cooled - seconds(60)}));
    EXPECT_EQ(
        onsets(result, CueKind::CountIn),
        (std::vector<Milliseconds>{due - seconds(3), due - seconds(2), due - seconds(1)}));
    EXPECT_EQ(onsets(result, CueKind::CoolingDone), std::vector<Milliseconds>{cooled});
    EXPECT_TRUE(onsets(result, CueKind::ChangeoverOverrun).empty());
    const auto acts =
        std::find_if(result.soundings.begin(), result.soundings.end(), [](const Sounding& slot) {
            return slot.code == "act_now";
        });
    ASSERT_NE(acts, result.soundings.end());
    EXPECT_EQ(acts->start, due);
}

TEST_F(Rehearsing, SoundsTheOverrunOfALateChangeover) {
    RehearseOptions options = optionsFor(m_folder.file("p.seamlog"));
    options.faults.lateChangeover = seconds(3);
    const RehearseResult result = done(options);
    const Milliseconds limit =
        firstNamed(result.events, "plate_out")->at.boot + *result.plan.changeoverMax;
    EXPECT_EQ(
        onsets(result, CueKind::ChangeoverOverrun),
        std::vector<Milliseconds>{limit + Milliseconds(1)});
    EXPECT_EQ(toString(result.record.verdict.word), "out of limits");
}

TEST_F(Rehearsing, ResumesAWeldThatWasLeftInTheMiddleToTheSameEnd) {
    const RehearseResult whole = done(optionsFor(m_folder.file("whole.seamlog")));
    for (const std::string kind : {"alignment_started", "plate_out", "pressure_locked"}) {
        // The first events of that weld, as a killed program would have left them.
        const std::string log = m_folder.file(kind + ".seamlog");
        const FakeClock clock;
        {
            auto writer = LogWriter<Practice>::open(log, clock);
            ASSERT_TRUE(writer);
            auto reader = LogReader::open(whole.logPath);
            ASSERT_TRUE(reader);
            const auto bodies = reader->bodies(whole.weld);
            ASSERT_TRUE(bodies);
            const std::int64_t last = firstNamed(whole.events, kind)->n;
            for (std::int64_t n = 1; n <= last; ++n) {
                writer->submit({{whole.weld, n, (*bodies)[static_cast<std::size_t>(n - 1)]}});
            }
            ASSERT_TRUE(writer->flush());
        }
        RehearseOptions options;
        options.logPath = log;
        options.resume = true;
        Listener listener;
        RehearseTools tools;
        tools.watcher = &listener;
        const RehearseResult resumed = done(options, tools);
        EXPECT_EQ(resumed.events, whole.events) << kind;
        EXPECT_EQ(listener.planning, std::vector<bool>{true});
        ASSERT_TRUE(resumed.resumed);
        EXPECT_FALSE(resumed.resumed->rebooted);
        EXPECT_EQ(resumed.resumed->events, firstNamed(whole.events, kind)->n);
        EXPECT_EQ(resumed.resumed->inPhase, (std::optional<WeldTime>(WeldTime{})));
    }
}

TEST_F(Rehearsing, InTrueTimeWaitsForTheMachinesClock) {
    FakeClock clock;
    WaitingMachine machine(clock);
    RehearseTools tools;
    tools.machine = &clock;
    tools.machinePacer = &machine;
    RehearseOptions options = optionsFor(m_folder.file("t.seamlog"));
    options.trueTime = true;
    const RehearseResult result = done(options, tools);
    EXPECT_EQ(result.events.front().at.bootId, "boot-1");
    const RehearseResult practised = done(optionsFor(m_folder.file("p.seamlog")));
    ASSERT_EQ(result.events.size(), practised.events.size());
    for (std::size_t i = 0; i < result.events.size(); ++i) {
        EXPECT_EQ(
            result.events[i].at.boot - result.events.front().at.boot,
            practised.events[i].at.boot - practised.events.front().at.boot);
    }
}

namespace {

/// Stops a rehearsal in its middle, as a kill would, by never coming back from a wait.
struct Cut {};
class CutAt : public RehearseWatcher {
public:
    explicit CutAt(std::string kind) : m_kind(std::move(kind)) {}
    void planned(const Weld&, bool) override {}
    void happened(const Weld&, const Event& event) override {
        if (kindOf(event.d) == m_kind) {
            throw Cut{};
        }
    }
    void cued(const Weld&, const CueNote&) override {}
    void saved(const Weld&, std::int64_t) override {}

private:
    std::string m_kind;
};

struct RebootRow {
    const char* cutAt;
    RebootWord word;
    const char* verdict;
    bool aborted;
    BridgeBasis basis;
};

} // namespace

TEST_F(Rehearsing, OverARebootGoesOnAsTheRulesAndTheWordSay) {
    const char* const remarked = "within limits with remarks";
    const RebootRow rows[] = {
        {"pressure_locked", RebootWord::None, remarked, false, BridgeBasis::Unconfirmed},
        {"pressure_locked", RebootWord::GoOnConfirmed, remarked, false, BridgeBasis::Confirmed},
        {"pressure_locked", RebootWord::Abort, "incomplete", true, BridgeBasis::Unconfirmed},
        {"soak_started", RebootWord::None, "incomplete", true, BridgeBasis::Unconfirmed},
        {"soak_started", RebootWord::GoOnConfirmed, remarked, false, BridgeBasis::Confirmed},
        {"check_made", RebootWord::None, "incomplete", true, BridgeBasis::Unconfirmed},
    };
    int number = 0;
    for (const RebootRow& row : rows) {
        const std::string log = m_folder.file(std::to_string(number++) + ".seamlog");
        FakeClock clock;
        WaitingMachine machine(clock);
        CutAt cut(row.cutAt);
        RehearseTools tools;
        tools.machine = &clock;
        tools.machinePacer = &machine;
        tools.watcher = &cut;
        RehearseOptions options = optionsFor(log);
        options.trueTime = true;
        EXPECT_THROW(static_cast<void>(rehearse(options, tools)), Cut);
        clock.reboot(seconds(50));
        tools.watcher = nullptr;
        options.resume = true;
        options.trueTime = false; // the weld itself says by which clock it lives
        options.word = row.word;
        const RehearseResult result = done(options, tools);
        ASSERT_TRUE(result.resumed) << row.cutAt;
        EXPECT_TRUE(result.resumed->rebooted);
        EXPECT_EQ(result.resumed->aborted, row.aborted) << row.cutAt;
        ASSERT_TRUE(result.resumed->bridge);
        EXPECT_EQ(result.resumed->bridge->basis, row.basis);
        EXPECT_EQ(result.resumed->bridge->hi, seconds(50));
        EXPECT_EQ(toString(result.record.verdict.word), row.verdict) << row.cutAt;
        if (!row.aborted && std::string(row.cutAt) == "pressure_locked") {
            // Cooling by what is certain of it.
            const PhaseRecord& cooling = result.record.phases.back();
            ASSERT_EQ(cooling.phase, "cooling");
            EXPECT_GE(cooling.took->lo, result.plan.cooling->atLeast);
            EXPECT_EQ(
                cooling.took->hi - cooling.took->lo,
                row.basis == BridgeBasis::Confirmed ? seconds(0) : seconds(50));
        }
    }
}

TEST_F(Rehearsing, LeavesAnotherOpenWeldAloneAndSaysSo) {
    const std::string log = m_folder.file("p.seamlog");
    CutAt cut("plate_out");
    RehearseTools tools;
    tools.watcher = &cut;
    EXPECT_THROW(static_cast<void>(rehearse(optionsFor(log), tools)), Cut);
    const RehearseResult second = done(optionsFor(log));
    EXPECT_EQ(second.record.opened.number, 2);
    EXPECT_EQ(second.leftOpen, std::vector<std::int64_t>{1});
    RehearseOptions options;
    options.logPath = log;
    options.resume = true;
    EXPECT_EQ(done(options).record.opened.number, 1);
    EXPECT_NE(refusal(options).find("holds no open weld"), std::string::npos);
}

TEST_F(Rehearsing, RefusesWhatCannotBeDoneWithOneSentence) {
    RehearseOptions options = optionsFor("/proc/nowhere/practice.seamlog");
    EXPECT_NE(refusal(options).find("the folder \"/proc/nowhere\""), std::string::npos)
        << refusal(options);

    options = optionsFor(m_folder.file("zero.seamlog"));
    std::ofstream(options.logPath).flush();
    EXPECT_NE(refusal(options).find("zero.seamlog"), std::string::npos) << refusal(options);

    options = optionsFor(m_folder.file("text.seamlog"));
    std::ofstream(options.logPath) << std::string(4096, 'x');
    EXPECT_NE(refusal(options).find("text.seamlog"), std::string::npos) << refusal(options);

    options = optionsFor(m_folder.file("shop.seamlog"));
    {
        const FakeClock clock;
        ASSERT_TRUE(LogWriter<Production>::open(options.logPath, clock));
    }
    const auto foreign = rehearse(options, {});
    ASSERT_FALSE(foreign);
    EXPECT_EQ(foreign.error().code, ErrorCode::Foreign);

    options = optionsFor(m_folder.file("none.seamlog"));
    options.resume = true;
    EXPECT_NE(refusal(options).find("none.seamlog"), std::string::npos) << refusal(options);

    options = optionsFor(m_folder.file("true.seamlog"));
    options.trueTime = true;
    EXPECT_EQ(refusal(options), "true time needs the machine's clock");

    options = optionsFor(m_folder.file("fault.seamlog"));
    options.faults.earlyRelease = std::chrono::hours(5);
    EXPECT_NE(
        refusal(options).find("early release of 18000000 ms is outside 0 to "), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(options.logPath)) << "refused before a log was made";

    options = optionsFor(m_folder.file("hand.seamlog"));
    options.handPercent = -1;
    EXPECT_EQ(refusal(options), "the hand's time of -1 % is outside 0 to 1000 %");
}

TEST_F(Rehearsing, DoesNotTakeAPracticeClocksWeldIntoTrueTime) {
    const std::string log = m_folder.file("p.seamlog");
    CutAt cut("soak_started");
    RehearseTools tools;
    tools.watcher = &cut;
    EXPECT_THROW(static_cast<void>(rehearse(optionsFor(log), tools)), Cut);
    FakeClock clock;
    WaitingMachine machine(clock);
    RehearseTools real;
    real.machine = &clock;
    real.machinePacer = &machine;
    RehearseOptions options;
    options.logPath = log;
    options.resume = true;
    options.trueTime = true;
    const auto refused = rehearse(options, real);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Conflict);
}

TEST_F(Rehearsing, WithPhysicsTellsTheSameWhateverThePaceAndTheLog) {
    RehearseOptions options = optionsFor(m_folder.file("1.seamlog"));
    options.physics = test::materials().front();
    ASSERT_EQ(options.physics->id, "pe-hd");
    const RehearseResult once = done(options);
    ASSERT_TRUE(once.bench);
    EXPECT_TRUE(once.bench->bend.ductile);
    EXPECT_EQ(toString(once.record.verdict.word), "within limits");
    Tally tally;
    RehearseTools tools;
    tools.pacer = &tally;
    options.logPath = m_folder.file("2.seamlog");
    const RehearseResult paced = done(options, tools);
    EXPECT_EQ(comparable(paced.events), comparable(once.events));
    EXPECT_EQ(paced.bench, once.bench);
    EXPECT_EQ(tally.total, once.events.back().at.boot - once.events.front().at.boot);
    EXPECT_NE(
        comparable(done(optionsFor(m_folder.file("3.seamlog"))).events), comparable(once.events));
}

TEST_F(Rehearsing, HandsOutACardThatIsWrong) {
    RehearseOptions options = optionsFor(m_folder.file("1.seamlog"));
    options.physics = test::materials().front();
    options.faults.wrongRowUm = 5000;
    const RehearseResult row = done(options);
    EXPECT_EQ(row.plan.thicknessUm, 5000);
    EXPECT_EQ(row.record.opened.sheets.front().thicknessUm, 8000);
    ASSERT_TRUE(row.bench);
    options.faults = {};
    const RehearseResult right = done(options);
    EXPECT_NE(row.bench->end.planMeltMm, 0);
    EXPECT_EQ(row.bench->end.planMeltMm, right.bench->end.planMeltMm)
        << "the sheet's, not the card's";
    // The east bench: the west one's scale is too coarse to show so little.
    options.order = orderOf(kDemoSeams.at(0));
    const RehearseResult newtons = done(options);
    options.faults.kgfForN = true;
    const RehearseResult kgf = done(options);
    ASSERT_TRUE(newtons.plan.scale && kgf.plan.scale);
    const auto above = [](const WeldPlan& plan) {
        return static_cast<double>(plan.scale->joining.setMilli - plan.scale->zeroMilli);
    };
    // Contract: what is set is the nearest division.
    const auto half = static_cast<double>(options.order.bench.bench.scale.divisionMilli) / 2;
    EXPECT_NEAR(above(kgf.plan) * 9.80665, above(newtons.plan), 9.80665 * half + half);
}

TEST_F(Rehearsing, WithPhysicsIsRefusedWhereThereIsNoBenchForIt) {
    RehearseOptions options = optionsFor(m_folder.file("1.seamlog"));
    options.faults.slammed = true;
    EXPECT_NE(refusal(options).find("rehearse it with physics"), std::string::npos);
    options.faults = {};
    options.skill = 101;
    EXPECT_EQ(refusal(options), "the skill of 101 is outside 0 to 100");
    EXPECT_FALSE(std::filesystem::exists(options.logPath)) << "refused before a log was made";
    options.skill = kPerfect;
    options.physics = test::materials().front();
    options.resume = true;
    EXPECT_EQ(
        refusal(options),
        "a weld can't be resumed with physics: the virtual bench did not outlive the program");
}

TEST(Rehearse, GoesOnWithAWeldWhoseLogWasDamaged) {
    const ScratchFolder folder;
    const std::string sound = folder.file("sound.seamlog");
    const auto whole = done(optionsFor(sound));
    const std::string log = folder.file("a.seamlog");
    {
        FakeClock clock;
        auto writer = LogWriter<Practice>::open(log, clock);
        ASSERT_TRUE(writer);
        auto reader = LogReader::open(sound);
        ASSERT_TRUE(reader);
        std::vector<LogRow> rows;
        const auto bodies = reader->bodies(whole.weld).value();
        for (std::size_t i = 0; i < 12; ++i) {
            rows.push_back({whole.weld, static_cast<std::int64_t>(i) + 1, bodies[i]});
        }
        const WeldOrder order = optionsFor(log).order;
        writer->submit(
            std::move(rows), {{order.procedure.sha256, "procedure", order.procedure.bytes},
                              {order.bench.sha256, "bench", order.bench.bytes}});
        ASSERT_TRUE(writer->flush());
    }
    std::fstream file(log, std::ios::binary | std::ios::in | std::ios::out);
    file.seekp(16);
    file.write("\xff\xff\xff\xff", 4);
    file.close();
    RehearseOptions options = optionsFor(log);
    options.resume = true;
    const auto result = done(options);
    ASSERT_TRUE(result.aside);
    EXPECT_TRUE(result.aside->sameChain);
    EXPECT_EQ(result.weld, whole.weld);
    EXPECT_EQ(comparable(result.events), comparable(whole.events));
    EXPECT_TRUE(verifyLog(log)->ok);
}
