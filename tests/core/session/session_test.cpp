#include "core/session/session.h"

#include "core/base/uuid.h"
#include "core/log/log_reader.h"
#include "core/log/recover.h"
#include "core/log/world.h"
#include "core/people/credentials.h"
#include "core/session/replan.h"
#include "core/weld/event_codec.h"
#include "tests/support/demo_order.h"
#include "tests/support/fake_clock.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace seamclock;
using namespace seamclock::test;
using std::chrono::minutes;
using std::chrono::seconds;

namespace {

constexpr const char* kIlva = "person:ilva";

/// A program that runs on one log: it can be ended (or cut off) and started again.
WeldOrder shopOrder(std::size_t seam) {
    WeldOrder order = orderOf(kDemoSeams.at(seam));
    order.type = WeldType::Production;
    return order;
}

class Program {
public:
    explicit Program(const std::string& path) : m_path(path) { start(); }

    void start() {
        auto writer = LogWriter<Production>::open(m_path, clock);
        ASSERT_TRUE(writer) << writer.error().detail;
        m_writer.emplace(std::move(*writer));
        auto session = Session<Production>::start(*m_writer, clock);
        ASSERT_TRUE(session) << session.error().detail;
        m_session.emplace(std::move(*session));
    }
    /// Rows are on disk, but nobody says goodbye.
    void cut() {
        ASSERT_TRUE(m_writer->flush());
        m_session.reset();
        m_writer.reset();
    }
    void restart() {
        cut();
        start();
    }

    Session<Production>& session() { return *m_session; }
    LogWriter<Production>& writer() { return *m_writer; }
    std::string open(std::size_t seam = 0) {
        const auto weld = session().open(shopOrder(seam), kIlva);
        EXPECT_TRUE(weld) << (weld ? "" : weld.error().detail);
        return weld ? weld->id() : "";
    }
    Weld act(const std::string& weld, WeldDetail detail) {
        auto next = session().act(weld, Intent{{}, kIlva, std::move(detail)});
        EXPECT_TRUE(next) << (next ? "" : next.error().detail);
        return next ? *next : *session().find(weld);
    }
    void prepare(const std::string& weld) {
        for (const std::string& check :
             std::vector<std::string>(m_session->find(weld)->plan.checks)) {
            CheckMade made;
            made.check = check;
            made.passed = true;
            if (check == "plate_temperature") {
                made.valueMc = m_session->find(weld)->plan.plate->targetMc;
            }
            act(weld, made);
            clock.wait(seconds(5));
        }
    }
    /// To the lock; alignment takes as long as is said.
    void toCooling(const std::string& weld, Milliseconds alignment = seconds(60)) {
        const WeldPlan plan = m_session->find(weld)->plan;
        prepare(weld);
        act(weld, AlignmentStarted{});
        clock.wait(alignment);
        act(weld, SoakStarted{});
        clock.wait(plan.soak->target);
        act(weld, PlateOut{});
        clock.wait(*plan.changeoverMax - Milliseconds(500));
        act(weld, FacesMet{});
        clock.wait(plan.buildUp->target);
        act(weld, ReadingTaken{ReadingPhase::Joining, plan.scale->joining.setMilli});
        act(weld, PressureLocked{});
    }
    void toTheEnd(const std::string& weld) {
        const WeldPlan plan = m_session->find(weld)->plan;
        clock.wait(plan.cooling->atLeast);
        for (const std::string& step : plan.releaseOrder) {
            act(weld, ReleaseStep{step});
            clock.wait(seconds(5));
        }
        act(weld, BeadMeasured{{}, 4000, 2500, 300, 100});
        act(weld, closing(*m_session->find(weld)));
    }

    FakeClock clock;

private:
    std::string m_path;
    std::optional<LogWriter<Production>> m_writer;
    std::optional<Session<Production>> m_session;
};

LogReader reading(const std::string& path) {
    auto reader = LogReader::open(path);
    EXPECT_TRUE(reader) << (reader ? "" : reader.error().detail);
    return std::move(*reader);
}

int count(const std::vector<std::string>& bodies, const std::string& part) {
    int found = 0;
    for (const std::string& body : bodies) {
        found += body.find(part) != std::string::npos ? 1 : 0;
    }
    return found;
}

template <class Kind>
int countOf(const Weld& weld) {
    int found = 0;
    for (const Event& event : weld.events) {
        found += std::holds_alternative<Kind>(event.d) ? 1 : 0;
    }
    return found;
}

class SessionTest : public ::testing::Test {
protected:
    ScratchFolder m_folder;
    std::string m_path = m_folder.file("shop.seamlog");
    Program m_program{m_path};
};

TEST_F(SessionTest, AWeldOfASeriesBeginsWithWhatStandsAlsoAfterARestart) {
    const std::string first = m_program.open(1);
    m_program.toCooling(first);
    m_program.toTheEnd(first);
    WeldOrder order = shopOrder(1);
    order.carriesChecks = true;
    const auto expectCarried = [&](const Weld& weld) {
        EXPECT_EQ(countOf<CheckMade>(weld), 9);
        const auto& state = std::get<Preparing>(weld.state);
        EXPECT_EQ(
            state.openChecks,
            (std::vector<std::string>{
                "drag", "film_off", "edges_planed", "plate_wiped", "edges_meet"}));
        for (std::size_t i = 1; i < weld.events.size(); ++i) {
            EXPECT_TRUE(std::get<CheckMade>(weld.events[i].d).takenUtc);
        }
    };
    const auto second = m_program.session().open(order, kIlva);
    ASSERT_TRUE(second) << second.error().detail;
    expectCarried(*second);
    m_program.restart();
    const Weld* kept = m_program.session().find(second->id());
    ASSERT_NE(kept, nullptr);
    EXPECT_EQ(*kept, *second);
    m_program.act(second->id(), WeldAborted{"wrong_sheet", ""});
    m_program.restart();
    const auto third = m_program.session().open(order, kIlva);
    ASSERT_TRUE(third) << third.error().detail;
    expectCarried(*third);
    EXPECT_EQ(countOf<CheckMade>(*m_program.session().find(m_program.open(1))), 0)
        << "only where it is asked for";
}

// Prepared before the break, welded after it: the plate has stood idle, and is read again.
TEST_F(SessionTest, AWeldThatIsPreparedOverABreakIsAskedForItsPlateAnew) {
    const std::string first = m_program.open(1);
    m_program.toCooling(first);
    m_program.toTheEnd(first);
    WeldOrder order = shopOrder(1);
    order.carriesChecks = true;
    const auto second = m_program.session().open(order, kIlva);
    ASSERT_TRUE(second) << second.error().detail;
    const auto open = [&] {
        m_program.session().look();
        return std::get<Preparing>(m_program.session().find(second->id())->state).openChecks;
    };
    const std::size_t before = open().size();
    m_program.restart(); // what was used before is known all the same
    EXPECT_EQ(open().size(), before);
    m_program.clock.wait(minutes(61));
    EXPECT_EQ(open().size(), before + 2) << "how warm it is, and for how long";
    EXPECT_EQ(
        std::get<CheckMade>(m_program.session().find(second->id())->events.back().d).place,
        kOutlived)
        << "nobody pressed it";
    EXPECT_FALSE(m_program.session().act(second->id(), Intent{{}, kIlva, AlignmentStarted{}}));
    const auto n = m_program.session().find(second->id())->events.size();
    EXPECT_EQ(open().size(), before + 2);
    EXPECT_EQ(m_program.session().find(second->id())->events.size(), n) << "said once";
}

// A sound that was heard before it was lost says nothing of the one that comes back.
TEST_F(SessionTest, ASoundThatWasLostIsAskedForAnewInTheWeldAndInThoseAfterIt) {
    const std::string first = m_program.open(1);
    m_program.toCooling(first);
    m_program.toTheEnd(first);
    WeldOrder order = shopOrder(1);
    order.carriesChecks = true;
    const auto asksForSound = [&](const std::string& weld) {
        const auto& open = std::get<Preparing>(m_program.session().find(weld)->state).openChecks;
        return std::count(open.begin(), open.end(), "sound_heard") == 1;
    };
    const auto next = [&] {
        const auto weld = m_program.session().open(order, kIlva);
        EXPECT_TRUE(weld) << (weld ? "" : weld.error().detail);
        return weld ? weld->id() : std::string();
    };
    const std::string second = next();
    const std::string left = next();
    ASSERT_FALSE(asksForSound(second));
    m_program.act(left, CheckOverridden{"sound_heard", "headset instead", Authority::Operator});
    ASSERT_FALSE(asksForSound(left));
    m_program.clock.wait(seconds(1));
    m_program.session().soundChanged(false);
    EXPECT_TRUE(asksForSound(second));
    EXPECT_FALSE(asksForSound(left)) << "it was never said to be heard";
    m_program.session().soundChanged(true);
    EXPECT_TRUE(asksForSound(second)) << "that it is back was not heard yet";
    EXPECT_TRUE(asksForSound(next()));
    m_program.restart();
    EXPECT_TRUE(asksForSound(next())) << "the log knows that it was lost";
    ASSERT_TRUE(m_program.writer().flush());
    auto log = reading(m_path);
    const auto said = log.bodies("station");
    ASSERT_TRUE(said) << said.error().detail;
    EXPECT_EQ(count(*said, "\"kind\":\"sound_lost\""), 1);
    EXPECT_EQ(count(*said, "\"kind\":\"sound_back\""), 1);
}

TEST_F(SessionTest, ATrialJointIsReleasedByAForemanAlsoAfterARestart) {
    WeldOrder order = shopOrder(1);
    const auto state = [&] {
        const auto found = m_program.session().trialOf(order);
        EXPECT_TRUE(found) << (found ? "" : found.error().detail);
        return found ? *found : TrialFinding{};
    };
    EXPECT_EQ(state().state, TrialState::Due);
    WeldOrder trial = order;
    trial.type = WeldType::Trial;
    const auto weld = m_program.session().open(trial, kIlva);
    ASSERT_TRUE(weld) << weld.error().detail;
    m_program.toCooling(weld->id());
    m_program.toTheEnd(weld->id());
    EXPECT_EQ(state(), (TrialFinding{TrialState::Waiting, weld->id(), weld->opened().number}));
    m_program.restart();
    EXPECT_EQ(state().state, TrialState::Waiting);
    for (int i = 0; i < 25; ++i) { // a long series: none of them lets it be forgotten
        const std::string next = m_program.open(1);
        m_program.act(next, WeldAborted{"sheet_slipped", ""});
    }
    EXPECT_EQ(state().state, TrialState::Waiting);
    m_program.restart();
    EXPECT_EQ(state().state, TrialState::Waiting);
    const Intent accepted{{}, kIlva, Decided{Decision::Accept, "bend test held"}};
    EXPECT_FALSE(m_program.session().act(weld->id(), accepted)) << "not by whoever stands there";
}

TEST_F(SessionTest, AnotherSetUpEndsATrialJointsSeriesHoweverLongAgoItWas) {
    const WeldOrder order = shopOrder(1);
    const auto state = [&] {
        const auto found = m_program.session().trialOf(order);
        EXPECT_TRUE(found) << (found ? "" : found.error().detail);
        return found ? found->state : TrialState::Released;
    };
    const auto stopped = [this](const WeldOrder& one) {
        const auto weld = m_program.session().open(one, kIlva);
        ASSERT_TRUE(weld) << weld.error().detail;
        m_program.act(weld->id(), WeldAborted{"sheet_slipped", ""});
    };
    WeldOrder trial = order;
    trial.type = WeldType::Trial;
    const auto weld = m_program.session().open(trial, kIlva);
    ASSERT_TRUE(weld) << weld.error().detail;
    m_program.toCooling(weld->id());
    m_program.toTheEnd(weld->id());
    EXPECT_EQ(state(), TrialState::Waiting);
    WeldOrder other = order;
    other.request.thickness = other.request.thickness + millimetres(1);
    for (Sheet& sheet : other.sheets) {
        sheet.thicknessUm += 1'000;
    }
    stopped(other);
    EXPECT_EQ(state(), TrialState::Due);
    for (int i = 0; i < 25; ++i) {
        stopped(order);
        EXPECT_EQ(state(), TrialState::Due) << i;
    }
    m_program.restart();
    EXPECT_EQ(state(), TrialState::Due);
}

} // namespace

TEST_F(SessionTest, NumbersJointsFromTheLogAndGivesTheNextAfterARestart) {
    const std::string first = m_program.open();
    const std::string second = m_program.open(1);
    EXPECT_EQ(m_program.session().find(first)->opened().number, 1);
    EXPECT_EQ(m_program.session().find(second)->opened().number, 2);
    m_program.act(second, WeldAborted{"wrong_sheet", "an aborted weld keeps its number"});
    m_program.restart();
    const std::string third = m_program.open();
    EXPECT_EQ(m_program.session().find(third)->opened().number, 3);
}

TEST_F(SessionTest, KeepsTheBytesOfProcedureAndBenchWithTheOpening) {
    const std::string weld = m_program.open();
    ASSERT_TRUE(m_program.writer().flush());
    const WeldOrder order = shopOrder(0);
    auto reader = reading(m_path);
    const auto& docs = m_program.session().find(weld)->opened().docs;
    for (const auto& [sha, bytes] :
         {std::pair{docs.procedure, order.procedure.bytes},
          std::pair{docs.bench, order.bench.bytes}}) {
        const auto document = reader.document(sha);
        ASSERT_TRUE(document && document->has_value());
        EXPECT_EQ((*document)->bytes, bytes);
        EXPECT_EQ(sha256Hex((*document)->bytes), sha);
    }
}

TEST_F(SessionTest, WritesEveryStepItAcceptsAndNothingItRefuses) {
    const std::string weld = m_program.open();
    const auto refused = m_program.session().act(weld, Intent{{}, kIlva, PlateOut{}});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Refused);
    const auto unreadable =
        m_program.session().act(weld, Intent{{}, kIlva, RemarkMade{"\xff not UTF-8"}});
    ASSERT_FALSE(unreadable);
    EXPECT_EQ(unreadable.error().code, ErrorCode::Malformed);
    m_program.toCooling(weld);
    m_program.toTheEnd(weld);
    ASSERT_TRUE(m_program.writer().flush());
    const Weld live = *m_program.session().find(weld);
    EXPECT_EQ(phaseName(live.state), "closed");
    EXPECT_EQ(
        m_program.session().status(weld, static_cast<std::int64_t>(live.events.size())),
        RowStatus::Saved);
    const auto stored = reading(m_path).weldEvents(weld);
    ASSERT_TRUE(stored);
    EXPECT_EQ(*stored, live.events);
    const auto folded = fold(*stored);
    ASSERT_TRUE(folded);
    EXPECT_EQ(*folded, live);
    EXPECT_TRUE(m_program.session().openWelds().empty());
}

TEST_F(SessionTest, RefusesAStepMeantForAnotherAndAWeldThatIsNotHere) {
    const std::string weld = m_program.open();
    m_program.prepare(weld);
    const std::int64_t onto = lastTakeable(*m_program.session().find(weld));
    const auto stale = m_program.session().act(weld, Intent{onto - 1, kIlva, AlignmentStarted{}});
    ASSERT_FALSE(stale);
    EXPECT_EQ(stale.error().code, ErrorCode::Refused);
    EXPECT_TRUE(m_program.session().act(weld, Intent{onto, kIlva, AlignmentStarted{}}));
    const auto unknown = m_program.session().act("weld:none", Intent{{}, kIlva, PlateOut{}});
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().code, ErrorCode::Missing);
}

TEST_F(SessionTest, LetsGoOfAWeldThatEndedAndOfNoOpenOne) {
    const std::string weld = m_program.open();
    m_program.session().forget(weld);
    ASSERT_NE(m_program.session().find(weld), nullptr) << "it is open";
    m_program.act(weld, WeldAborted{"plate_cold", "Plate cold or dirty"});
    ASSERT_TRUE(m_program.writer().flush());
    m_program.session().forget(weld);
    EXPECT_EQ(m_program.session().find(weld), nullptr);
    EXPECT_EQ(
        m_program.session().act(weld, Intent{{}, kIlva, RemarkMade{"late"}}).error().code,
        ErrorCode::Missing);
    m_program.session().forget(weld);
    m_program.session().forget("weld:nobody");
    ASSERT_TRUE(m_program.writer().flush());
    const auto events = LogReader::open(m_program.writer().path())->weldEvents(weld);
    ASSERT_TRUE(events) << events.error().detail;
    EXPECT_EQ(events->size(), 2U) << "it stays in the log";
}

// The screen lets go of a joint at the press that opens the next, and a disk is slower than that:
// what is not on disk then must not stay in memory for ever.
TEST_F(SessionTest, LetsGoLaterOfAWeldWhoseLastRowWasNotOnDiskYet) {
    m_program.cut();
    FaultyDisk disk;
    m_program.start();
    std::vector<std::string> ended;
    for (int i = 0; i < 3; ++i) {
        ended.push_back(m_program.open());
        ASSERT_TRUE(m_program.writer().flush());
        disk.set(FaultyDisk::Fault::Full);
        m_program.act(ended.back(), WeldAborted{"plate_cold", "Plate cold or dirty"});
        ASSERT_FALSE(m_program.writer().flush());
        m_program.session().forget(ended.back());
        EXPECT_NE(m_program.session().find(ended.back()), nullptr) << "it is not on disk";
        disk.set(FaultyDisk::Fault::None);
        ASSERT_TRUE(m_program.writer().flush());
    }
    const std::string next = m_program.open();
    std::vector<std::string> here;
    m_program.session().eachWeld([&here](const Weld& weld) { here.push_back(weld.id()); });
    EXPECT_EQ(here, std::vector<std::string>{next});
    m_program.cut();
}

// A foreman decides on joints of long ago; each is read for that, and goes again.
TEST_F(SessionTest, KeepsNoWeldThatWasTakenInForAForemansWord) {
    std::vector<std::string> ended;
    for (int i = 0; i < 3; ++i) {
        ended.push_back(m_program.open());
        m_program.act(ended.back(), WeldAborted{"plate_cold", "Plate cold or dirty"});
    }
    m_program.restart();
    Credentials credentials(m_folder.file("secrets"));
    Person ines;
    ines.id = "person:ines-falk";
    ines.name = "Ines Falk";
    ines.role = Role::Foreman;
    ASSERT_TRUE(credentials.setPin(ines, *Pin::read("123456")));
    const auto access = credentials.enter(ines, *Pin::read("123456"), m_program.clock.now());
    ASSERT_TRUE(access) << access.error().detail;
    for (int round = 0; round < 2; ++round) {
        for (const std::string& weld : ended) {
            const Intent cut{{}, ines.id, Decided{Decision::CutOut, "plate was cold"}};
            const auto decided = m_program.session().act(weld, cut, access->who);
            ASSERT_TRUE(decided) << decided.error().detail;
            ASSERT_TRUE(m_program.writer().flush());
        }
    }
    int here = 0;
    m_program.session().eachWeld([&here](const Weld&) { ++here; });
    EXPECT_EQ(here, 1) << "the last alone";
    for (const std::string& weld : ended) {
        const auto events = reading(m_path).weldEvents(weld);
        ASSERT_TRUE(events);
        EXPECT_EQ(events->size(), 4U) << "every word is in the log";
    }
}

TEST_F(SessionTest, OpensNoWeldOfPractice) {
    WeldOrder order = shopOrder(0);
    order.type = WeldType::Practice;
    const auto weld = m_program.session().open(order, kIlva);
    ASSERT_FALSE(weld);
    EXPECT_EQ(weld.error().code, ErrorCode::Refused);
    EXPECT_EQ(
        weld.error().detail, "a weld of type practice can't be opened in a log of production");
    EXPECT_TRUE(m_program.session().openWelds().empty());
}

TEST_F(SessionTest, RefusesAnIncompleteProcedureByNamingWhatItLacks) {
    WeldOrder order = shopOrder(3);
    order.procedure.procedure.soak.reset();
    const auto weld = m_program.session().open(order, kIlva);
    ASSERT_FALSE(weld);
    EXPECT_EQ(weld.error().code, ErrorCode::Missing);
    EXPECT_NE(weld.error().detail.find("soak_s"), std::string::npos) << weld.error().detail;
    EXPECT_TRUE(m_program.session().openWelds().empty());
}

TEST_F(SessionTest, RefusesSheetsThatCantBeWeldedToEachOther) {
    WeldOrder order = shopOrder(0);
    order.sheets[1].thicknessUm = 16'501; // a tenth of 15 mm is the most
    const auto uneven = m_program.session().open(order, kIlva);
    ASSERT_FALSE(uneven);
    EXPECT_EQ(uneven.error().code, ErrorCode::OutOfRange);
    EXPECT_NE(uneven.error().detail.find("16.501"), std::string::npos) << uneven.error().detail;
    order.sheets[1].thicknessUm = 16'500;
    EXPECT_TRUE(m_program.session().open(order, kIlva));
    order.sheets[1].material = "PP";
    EXPECT_FALSE(m_program.session().open(order, kIlva));
}

TEST_F(SessionTest, KeepsWhatTheSheetsWarnOfInEveryPlanOfTheWeld) {
    WeldOrder order = shopOrder(0);
    order.sheets[0].mfr = "0.2 g/10 min (190/5)";
    order.sheets[1].mfr = "1.7 g/10 min (190/5)";
    const auto weld = m_program.session().open(order, kIlva);
    ASSERT_TRUE(weld) << weld.error().detail;
    ASSERT_FALSE(weld->plan.warnings.empty());
    EXPECT_EQ(weld->plan.warnings.back().code, "mfr_far_apart");
    const auto again = planAgain(
        *weld, order.procedure.procedure, order.bench.bench, Measured{newtons(80), std::nullopt});
    ASSERT_TRUE(again);
    EXPECT_EQ(again->dragMn, 80'000);
    EXPECT_EQ(again->warnings.back().code, "mfr_far_apart");
}

TEST_F(SessionTest, FlagsACalibrationFromTheDayAfterItWasDue) {
    const auto flags = [this] {
        const auto weld = m_program.session().open(shopOrder(1), kIlva);
        EXPECT_TRUE(weld);
        return weld ? weld->opened().flags : std::vector<std::string>();
    };
    EXPECT_TRUE(flags().empty());
    // West is due on 2030-05-20; the clock stands at 7 January, 07:00 local time: 133 days on it is
    // that day, and a quarter of an hour before midnight still.
    m_program.clock.wait(std::chrono::hours(24 * 133 + 16) + minutes(45));
    EXPECT_TRUE(flags().empty());
    m_program.clock.wait(minutes(30));
    EXPECT_EQ(flags(), std::vector<std::string>{"calibration_overdue"});
}

TEST_F(SessionTest, NotesWhenTheProgramStartsAndStops) {
    m_program.restart();
    ASSERT_TRUE(m_program.session().stop());
    const auto bodies = reading(m_path).bodies("station");
    ASSERT_TRUE(bodies);
    EXPECT_EQ(count(*bodies, "\"kind\":\"program_started\""), 2);
    EXPECT_EQ(count(*bodies, "\"kind\":\"program_stopped\""), 1);
}

TEST_F(SessionTest, WritesAJumpOfTheWallClockToTheStationAndToEveryOpenWeld) {
    const std::string one = m_program.open();
    const std::string two = m_program.open(1);
    const std::string over = m_program.open(3);
    m_program.act(over, WeldAborted{"wrong_sheet", ""});
    m_program.clock.wait(seconds(30));
    m_program.clock.setWallClock(seconds(2));
    m_program.act(one, RemarkMade{"two seconds are no jump"});
    EXPECT_EQ(countOf<ClockJumped>(*m_program.session().find(one)), 0);
    EXPECT_FALSE(m_program.session().clockJump());
    m_program.clock.setWallClock(minutes(-61));
    m_program.act(one, RemarkMade{"an hour is"});
    for (const std::string& weld : {one, two}) {
        EXPECT_EQ(countOf<ClockJumped>(*m_program.session().find(weld)), 1);
    }
    EXPECT_EQ(countOf<ClockJumped>(*m_program.session().find(over)), 0);
    EXPECT_EQ(m_program.session().clockJump(), Milliseconds(-3'660'000));
    m_program.session().clockJumpSeen();
    m_program.session().look();
    EXPECT_FALSE(m_program.session().clockJump()) << "seen is seen";
    ASSERT_TRUE(m_program.writer().flush());
    const auto bodies = reading(m_path).bodies("station");
    ASSERT_TRUE(bodies);
    EXPECT_EQ(count(*bodies, "\"d\":{\"delta_ms\":-3660000}"), 1);
}

TEST_F(SessionTest, FindsAJumpThatHappenedWhileNoProgramRan) {
    const std::string weld = m_program.open();
    m_program.cut();
    m_program.clock.wait(minutes(2));
    m_program.clock.setWallClock(minutes(30));
    m_program.start();
    EXPECT_EQ(countOf<ClockJumped>(*m_program.session().find(weld)), 1);
}

TEST_F(SessionTest, TellsTheStationOfAJumpBetweenTwoRunsWithoutAWeld) {
    ASSERT_TRUE(m_program.session().stop());
    m_program.cut();
    m_program.clock.wait(minutes(2));
    m_program.clock.setWallClock(minutes(-30));
    m_program.start();
    EXPECT_EQ(m_program.session().clockJump(), Milliseconds(-1'800'000));
    m_program.restart(); // once is enough
    EXPECT_FALSE(m_program.session().clockJump());
    ASSERT_TRUE(m_program.writer().flush());
    const auto bodies = reading(m_path).bodies("station");
    ASSERT_TRUE(bodies);
    EXPECT_EQ(count(*bodies, "\"d\":{\"delta_ms\":-1800000}"), 1);
    EXPECT_EQ(count(*bodies, "\"kind\":\"clock_jumped\""), 1);
}

TEST_F(SessionTest, DoesNotCompareTheClocksOfTwoBoots) {
    m_program.cut();
    m_program.clock.reboot(minutes(-30));
    m_program.start();
    ASSERT_TRUE(m_program.writer().flush());
    const auto bodies = reading(m_path).bodies("station");
    ASSERT_TRUE(bodies);
    EXPECT_EQ(count(*bodies, "\"kind\":\"clock_jumped\""), 0);
}

// A jump is a row for the station and one for each weld: a cut may come between them.
TEST_F(SessionTest, TellsAWeldOfAJumpWhoseRowACutTook) {
    const std::string knows = m_program.open();
    const std::string other = m_program.open(1);
    m_program.clock.setWallClock(minutes(5));
    const Event last = m_program.session().find(knows)->events.back();
    m_program.cut();
    Event jumped{m_program.clock.now(), "station", knows, last.n + 1, ClockJumped{minutes(5)}};
    {
        auto writer = LogWriter<Production>::open(m_path, m_program.clock);
        ASSERT_TRUE(writer) << writer.error().detail;
        ASSERT_TRUE(
            writer->note(m_program.clock.now(), "station", "station", ClockJumped{minutes(5)}));
        writer->submit({{knows, jumped.n, toBody(jumped).value()}});
        ASSERT_TRUE(writer->flush());
    }
    m_program.start();
    EXPECT_EQ(countOf<ClockJumped>(*m_program.session().find(knows)), 1);
    EXPECT_EQ(countOf<ClockJumped>(*m_program.session().find(other)), 1);
    ASSERT_TRUE(m_program.writer().flush());
    const auto bodies = reading(m_path).bodies("station");
    ASSERT_TRUE(bodies);
    EXPECT_EQ(count(*bodies, "\"kind\":\"clock_jumped\""), 1);
}

TEST_F(SessionTest, GoesOnAtOnceAfterACrashOnTheSameBoot) {
    const std::string weld = m_program.open();
    m_program.toCooling(weld);
    const Weld before = *m_program.session().find(weld);
    m_program.cut();
    m_program.clock.wait(seconds(90));
    m_program.start();
    ASSERT_EQ(m_program.session().found().size(), 1U);
    EXPECT_EQ(m_program.session().found().front().after, AfterCut::GoesOn);
    EXPECT_EQ(*m_program.session().find(weld), before);
    const auto t = weldTimeAt(*m_program.session().find(weld), m_program.session().look());
    ASSERT_TRUE(t);
    EXPECT_EQ(t->lo - std::get<Cooling>(before.state).from.lo, seconds(90));
    EXPECT_EQ(t->lo, t->hi);
    m_program.act(weld, RemarkMade{"nothing needed to be said"});
}

TEST_F(SessionTest, AfterARebootTakesNoStepUntilTheWordIsGiven) {
    const std::string cooling = m_program.open();
    m_program.toCooling(cooling);
    const std::string aligning = m_program.open(1);
    m_program.prepare(aligning);
    m_program.act(aligning, AlignmentStarted{});
    m_program.cut();
    m_program.clock.reboot(minutes(4));
    m_program.start();
    ASSERT_EQ(m_program.session().found().size(), 2U);
    EXPECT_EQ(m_program.session().found()[0].after, AfterCut::Bridge);
    EXPECT_EQ(m_program.session().found()[1].after, AfterCut::AbortByDefault);
    for (const std::string& weld : {cooling, aligning}) {
        EXPECT_FALSE(m_program.session().act(weld, Intent{{}, kIlva, RemarkMade{"too soon"}}));
    }
    const auto stopped = m_program.session().settle(aligning, RebootWord::None, "station");
    ASSERT_TRUE(stopped) << stopped.error().detail;
    EXPECT_EQ(phaseName(stopped->state), "aborted");
    const auto goesOn = m_program.session().settle(cooling, RebootWord::None, "station");
    ASSERT_TRUE(goesOn) << goesOn.error().detail;
    EXPECT_EQ(phaseName(goesOn->state), "cooling");
    m_program.toTheEnd(cooling);
    ASSERT_TRUE(m_program.writer().flush());
    const auto stored = reading(m_path).weldEvents(cooling);
    ASSERT_TRUE(stored);
    EXPECT_EQ(*stored, m_program.session().find(cooling)->events);
}

TEST_F(SessionTest, LosesNothingWhenAConfirmationIsRefused) {
    const std::string weld = m_program.open();
    m_program.toCooling(weld);
    m_program.cut();
    m_program.clock.reboot(std::chrono::hours(13));
    m_program.start();
    const auto refused = m_program.session().settle(weld, RebootWord::GoOnConfirmed, kIlva);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Refused);
    EXPECT_EQ(countOf<ClockBridged>(*m_program.session().find(weld)), 0);
    EXPECT_TRUE(m_program.session().settle(weld, RebootWord::GoOnUnconfirmed, kIlva));
}

TEST_F(SessionTest, AJumpIsNotWrittenToAWeldThatStillWaitsForItsBridge) {
    const std::string weld = m_program.open();
    m_program.cut();
    m_program.clock.reboot(minutes(1));
    m_program.start();
    m_program.clock.setWallClock(minutes(10));
    m_program.session().look();
    EXPECT_EQ(countOf<ClockJumped>(*m_program.session().find(weld)), 0);
}

// The plan stores the median over the last ten welds of that bench, procedure and
// thickness, if there are at least five; alignment is late at twice that.
TEST_F(SessionTest, TakesTheMedianOfTheLastAlignmentsFromTheFifthLikeWeldOn) {
    const std::int64_t taken[] = {50, 90, 70, 60, 80};
    for (const std::int64_t alignment : taken) {
        const std::string weld = m_program.open(1);
        EXPECT_FALSE(m_program.session().find(weld)->plan.alignMedian);
        m_program.toCooling(weld, seconds(alignment));
        m_program.toTheEnd(weld);
        ASSERT_TRUE(m_program.writer().flush());
    }
    const std::string sixth = m_program.open(1);
    const WeldPlan like = m_program.session().find(sixth)->plan;
    EXPECT_EQ(like.alignMedian, std::optional<Milliseconds>(seconds(70)));
    EXPECT_EQ(like.alignLate, std::optional<Milliseconds>(seconds(140)));
    const AlignTimes usual{seconds(50), seconds(70), seconds(90)};
    EXPECT_EQ(m_program.session().usualAlignment(sixth), std::optional(usual));
    const std::string another = m_program.open(0);
    EXPECT_FALSE(m_program.session().find(another)->plan.alignMedian);
    EXPECT_FALSE(m_program.session().usualAlignment(another));
    EXPECT_FALSE(m_program.session().usualAlignment("weld:unknown"));
    // After a crash the log still knows.
    m_program.cut();
    m_program.start();
    EXPECT_EQ(m_program.session().usualAlignment(sixth), std::optional(usual));
    EXPECT_FALSE(m_program.session().usualAlignment(another));
}
