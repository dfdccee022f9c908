// What a practice log keeps of takes, and the wall: nothing of practice gets into a log of joints.
#include "core/practice/practice_history.h"

#include "core/base/uuid.h"
#include "core/bench/bench_codec.h"
#include "core/copies/log_import.h"
#include "core/log/fact_codec.h"
#include "core/log/verify.h"
#include "core/practice/practice_words.h"
#include "core/procedure/procedure_codec.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/trainee.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>
#include <type_traits>

namespace seamclock::test {
namespace {

// By type: whoever has a log of joints can't hand it to what makes or keeps practice.
static_assert(!std::is_convertible_v<LogWriter<Production>&, LogWriter<Practice>&>);
static_assert(!std::is_convertible_v<LogWriter<Production>*, LogWriter<Practice>*>);
static_assert(!std::is_constructible_v<LogWriter<Practice>, LogWriter<Production>>);
static_assert(!std::is_invocable_v<
              decltype(&keepTake), LogWriter<Production>&, const PracticeTake&, const SetLesson&,
              const PracticeScore&, const std::string&, const Instant&>);
static_assert(!std::is_invocable_v<
              decltype(&Session<Practice>::start), LogWriter<Production>&, const Clock&>);

/// One practice weld in a log, kept with its score.
class KeptPractice : public ::testing::Test {
protected:
    KeptPractice() {
        VirtualClock clock = practiceClock();
        auto log = LogWriter<Practice>::open(path, clock);
        EXPECT_TRUE(log) << log.error().detail;
        HandFaults slow;
        slow.changeover = std::chrono::seconds(16);
        set = setFor(shippedLesson("pe10-first"));
        made = practised(set, slow, *log, clock);
        score = scoreOf(set, made);
        const auto kept = keepTake(*log, made.take, set, score, "person:tilda", clock.now());
        EXPECT_TRUE(kept) << kept.error().detail;
        EXPECT_TRUE(log->flush());
        EXPECT_TRUE(log->state().refused.empty());
    }

    std::vector<PracticeLine> history(const std::string& by = "") {
        auto log = LogReader::open(path);
        EXPECT_TRUE(log) << log.error().detail;
        auto lines = practiceHistory(*log, by);
        EXPECT_TRUE(lines) << lines.error().detail;
        return lines.value_or(std::vector<PracticeLine>());
    }

    ScratchFolder folder;
    std::string path = folder.file("practice.db");
    SetLesson set;
    MadeWeld made;
    PracticeScore score;
};

TEST_F(KeptPractice, StandsInTheHistoryInItsMakersName) {
    const auto lines = history();
    ASSERT_EQ(lines.size(), 1U);
    const PracticeLine& line = lines.front();
    EXPECT_EQ(line.by, "person:tilda");
    EXPECT_EQ(line.lesson, "pe10-first");
    EXPECT_EQ(line.lessonTitle, set.lesson.title);
    EXPECT_EQ(line.weld, made.record.weld);
    EXPECT_EQ(line.number, made.record.opened.number);
    EXPECT_EQ(line.verdict, score.verdict.word);
    EXPECT_EQ(line.judged, score.judged);
    EXPECT_EQ(line.inLimits, score.inLimits);
    EXPECT_EQ(line.ductile, score.made.bend.ductile);
    EXPECT_EQ(line.lapses.size(), score.lapses.size());
    EXPECT_EQ(line.orderErrors, static_cast<int>(score.order.size()));
    EXPECT_EQ(history("person:tilda"), lines);
    EXPECT_TRUE(history("person:other").empty());
}

TEST_F(KeptPractice, GivesTakeAndLessonBackAndTheSameScore) {
    auto log = LogReader::open(path);
    ASSERT_TRUE(log);
    auto line = history().front();
    const auto kept = keptTake(*log, line);
    ASSERT_TRUE(kept) << kept.error().detail;
    EXPECT_EQ(kept->take, made.take);
    EXPECT_EQ(kept->lesson, set.lesson);
    const PracticeScore again = scoreOf(setFor(kept->lesson), {kept->take, made.record});
    EXPECT_EQ(again.lapses, score.lapses);
    EXPECT_EQ(again.made, score.made); // to the last bit
    EXPECT_EQ(again.readings, score.readings);
    EXPECT_EQ(kept->take.procedureSha256, set.order.procedure.sha256);
    EXPECT_EQ(kept->take.benchSha256, set.bench.sha256);
    line.takeSha256 = sha256Hex("another");
    EXPECT_EQ(keptTake(*log, line).error().code, ErrorCode::Missing);
    line.weld = "no weld";
    EXPECT_EQ(keptTake(*log, line).error().code, ErrorCode::Missing);
}

TEST_F(KeptPractice, IsSeenAgainOnItsOwnBenchByItsOwnProcedureWhateverTheShopHasNow) {
    auto log = LogReader::open(path);
    ASSERT_TRUE(log);
    const auto kept = keptTake(*log, history().front());
    ASSERT_TRUE(kept) << kept.error().detail;
    PracticeShop today = shop();
    for (BenchDocument& one : today.benches) { // a softer spring
        Bench other = one.bench;
        if (other.scale.ratePerMm) {
            other.scale.ratePerMm = newtons(inNewtons(*other.scale.ratePerMm) * 0.9);
        }
        for (Force& rate : other.scale.ratePerUnit) {
            rate = newtons(inNewtons(rate) * 0.9);
        }
        one = readBench("today's bench", benchText(other)).value();
    }
    for (ProcedureDocument& one : today.procedures) { // and less of the joining pressure
        if (one.procedure.id == kept->lesson.procedure) {
            std::string text = one.bytes;
            const std::string was = "\"joining_N_mm2\": 0.15";
            ASSERT_NE(text.find(was), std::string::npos);
            one =
                readProcedure(
                    "today's", text.replace(text.find(was), was.size(), "\"joining_N_mm2\": 0.14"))
                    .value();
        }
    }
    const auto now = setLesson(kept->lesson, today);
    const auto then = setLesson(kept->lesson, shopOf(*kept, today));
    ASSERT_TRUE(now) << now.error().detail;
    ASSERT_TRUE(then) << then.error().detail;
    EXPECT_NE(now->bench.sha256, set.bench.sha256);
    EXPECT_EQ(then->bench.sha256, set.bench.sha256);
    EXPECT_EQ(then->setup.plan.scale->joining, set.setup.plan.scale->joining);
    EXPECT_NE(now->setup.plan.scale->joining, set.setup.plan.scale->joining);
    EXPECT_EQ(now->setup.plan.joiningPa, 140'000);
    EXPECT_EQ(then->setup.plan.joiningPa, 150'000);
    const PracticeScore again = scoreOf(*then, {kept->take, made.record});
    EXPECT_EQ(again.made, score.made);
    EXPECT_EQ(again.planned, score.planned);
    today.benches.clear();
    today.procedures.clear();
    EXPECT_FALSE(setLesson(kept->lesson, today));
    const auto without = setLesson(kept->lesson, shopOf(*kept, today));
    ASSERT_TRUE(without) << without.error().detail;
    EXPECT_EQ(without->bench.sha256, set.bench.sha256);
}

TEST_F(KeptPractice, VerifiesAsAnyLog) {
    const auto report = verifyLog(path);
    ASSERT_TRUE(report) << report.error().detail;
    EXPECT_TRUE(report->ok) << report->finding->reason;
    EXPECT_EQ(report->world, "practice");
}

TEST_F(KeptPractice, CanNotBeImportedIntoALogOfJoints) {
    VirtualClock clock = practiceClock();
    const std::string joints = folder.file("joints.db");
    ASSERT_TRUE(LogWriter<Production>::open(joints, clock));
    const auto imported = importLog(path, joints, clock);
    ASSERT_FALSE(imported);
    EXPECT_EQ(imported.error().code, ErrorCode::Foreign);
    EXPECT_TRUE(verifyLog(joints)->ok);
}

TEST_F(KeptPractice, ItsRowsAreRefusedByAWriterOfJoints) {
    VirtualClock clock = practiceClock();
    auto log = LogReader::open(path);
    ASSERT_TRUE(log);
    std::vector<LogRow> rows;
    const std::string subject = "practice:" + made.take.weld.substr(5);
    rows.push_back({subject, 1, log->bodies(subject).value().front()});
    rows.push_back({made.take.weld, 1, log->bodies(made.take.weld).value().front()});
    auto joints = LogWriter<Production>::open(folder.file("joints.db"), clock);
    ASSERT_TRUE(joints);
    joints->submit(rows);
    EXPECT_TRUE(joints->flush());
    EXPECT_EQ(joints->status(subject, 1), RowStatus::Refused);
    EXPECT_EQ(joints->status(made.take.weld, 1), RowStatus::Refused);
    const auto noted =
        joints->note(clock.now(), "person:tilda", subject, seamclock::PracticeMade{});
    ASSERT_FALSE(noted);
    EXPECT_EQ(noted.error().code, ErrorCode::Refused);
    auto session = Session<Production>::start(*joints, clock);
    ASSERT_TRUE(session);
    const auto opened = session->open(set.order, "person:tilda");
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().code, ErrorCode::Refused);
    EXPECT_NE(opened.error().detail.find("practice"), std::string::npos);
}

/// Rows of the practice log behind those of a log of joints, with hashes that follow and a head
/// that is right: all that somebody with an SQL shell and a calculator can do.
void forge(const std::string& from, const std::string& subject, const std::string& into) {
    SQLite::Database source(from, SQLite::OPEN_READONLY);
    SQLite::Database target(into, SQLite::OPEN_READWRITE);
    std::vector<std::string> triggers;
    {
        SQLite::Statement names(target, "SELECT name FROM sqlite_master WHERE type = 'trigger'");
        while (names.executeStep()) {
            triggers.push_back(names.getColumn(0).getString());
        }
    }
    for (const std::string& name : triggers) {
        target.exec("DROP TRIGGER " + name);
    }
    SQLite::Statement head(target, "SELECT seq, head FROM chain WHERE no = 1");
    ASSERT_TRUE(head.executeStep());
    auto seq = head.getColumn(0).getInt64();
    std::string hash = head.getColumn(1).getString();
    head.reset();
    SQLite::Statement rows(source, "SELECT body FROM event WHERE subject = ? ORDER BY seq");
    rows.bind(1, subject);
    SQLite::Statement add(target, "INSERT INTO event(chain, seq, hash, body) VALUES(1, ?, ?, ?)");
    while (rows.executeStep()) {
        const std::string body = rows.getColumn(0).getString();
        hash = sha256Hex(hash + "\n" + body);
        add.reset();
        add.bind(1, ++seq);
        add.bind(2, hash);
        add.bind(3, body);
        add.exec();
    }
    SQLite::Statement move(target, "UPDATE chain SET seq = ?, head = ? WHERE no = 1");
    move.bind(1, seq);
    move.bind(2, hash);
    move.exec();
    target.exec("ATTACH '" + from + "' AS practice");
    target.exec("INSERT OR IGNORE INTO document SELECT * FROM practice.document");
}

TEST_F(KeptPractice, RowsThatWereCopiedWithSqlAreFoundByVerify) {
    VirtualClock clock = practiceClock();
    for (const std::string& subject : {made.take.weld, "practice:" + made.take.weld.substr(5)}) {
        const std::string joints = folder.file("joints-" + subject.substr(0, 4) + ".db");
        {
            LogWriterOptions unsignedRows;
            unsignedRows.sign = false; // else the head's signature alone would tell
            auto writer = LogWriter<Production>::open(joints, clock, unsignedRows);
            ASSERT_TRUE(writer) << writer.error().detail;
            ASSERT_TRUE(writer->note(clock.now(), "station", "station", ProgramStarted{}));
            ASSERT_TRUE(writer->flush());
        }
        forge(path, subject, joints);
        const auto report = verifyLog(joints);
        ASSERT_TRUE(report) << report.error().detail;
        EXPECT_FALSE(report->ok);
        ASSERT_TRUE(report->finding);
        EXPECT_EQ(report->finding->seq, 2);
        EXPECT_NE(report->finding->reason.find("practice"), std::string::npos)
            << report->finding->reason;
    }
}

TEST_F(KeptPractice, AWholeFileThatIsCalledProductionHasTheWrongGenesis) {
    SQLite::Database log(path, SQLite::OPEN_READWRITE);
    std::vector<std::string> triggers;
    {
        SQLite::Statement names(log, "SELECT name FROM sqlite_master WHERE type = 'trigger'");
        while (names.executeStep()) {
            triggers.push_back(names.getColumn(0).getString());
        }
    }
    for (const std::string& name : triggers) {
        log.exec("DROP TRIGGER " + name);
    }
    log.exec("PRAGMA application_id = " + std::to_string(Production::kApplicationId));
    log.exec("UPDATE chain SET world = 'production'");
    const auto report = verifyLog(path);
    EXPECT_TRUE(!report || !report->ok);
}

TEST(PracticeHistory, OfALogOfJointsIsForeign) {
    const ScratchFolder folder;
    VirtualClock clock = practiceClock();
    const std::string joints = folder.file("joints.db");
    ASSERT_TRUE(LogWriter<Production>::open(joints, clock));
    auto log = LogReader::open(joints);
    ASSERT_TRUE(log);
    EXPECT_EQ(practiceHistory(*log, "").error().code, ErrorCode::Foreign);
}

TEST_F(KeptPractice, HasItsWhyInWordsWithNumbers) {
    const std::vector<std::string> words = practiceWords(score);
    const auto said = [&words](const std::string& part) {
        return std::any_of(words.begin(), words.end(), [&part](const std::string& sentence) {
            return sentence.find(part) != std::string::npos;
        });
    };
    EXPECT_TRUE(said("The faces stood in air for 1")); // 16 s and a little
    EXPECT_TRUE(said("; at most 7.2 s."));             // as the plan has it for 10 mm
    EXPECT_TRUE(said("Melt left when it froze: "));
    EXPECT_TRUE(said(" mm, by the plan "));
    EXPECT_TRUE(said("can't teach the feel of a wheel"));
    for (const Lapse lapse : allLapses()) {
        EXPECT_FALSE(whyItMatters(lapse).empty());
        EXPECT_FALSE(lapseSentence({lapse, 1.0, 2.0, "mm", {1}}).empty());
    }
}

} // namespace
} // namespace seamclock::test
