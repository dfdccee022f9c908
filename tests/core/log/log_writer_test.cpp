#include "core/log/log_writer.h"

#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"
#include "core/log/recover.h"
#include "core/log/verify.h"
#include "core/weld/fold.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <algorithm>
#include <atomic>
#include <condition_variable>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <mutex>
#include <sys/mount.h>
#include <thread>
#include <unistd.h>

namespace seamclock {
namespace {

using test::closedWeld;
using test::quick;
using test::rowsOf;
using test::stationRow;
using test::unfinishedWeld;
using test::weldName;
using Fault = test::FaultyDisk::Fault;

// Waits for what the writer's thread will do; woken by its callback, so nothing sleeps.
class Watch {
public:
    std::function<void()> callback() {
        return [this] {
            const std::lock_guard<std::mutex> lock(m_mutex);
            ++m_calls;
            m_changed.notify_all();
        };
    }
    template <class Condition>
    bool until(Condition condition) {
        std::unique_lock<std::mutex> lock(m_mutex);
        return m_changed.wait_for(lock, std::chrono::seconds(30), [&] { return condition(); });
    }

private:
    std::mutex m_mutex;
    std::condition_variable m_changed;
    std::int64_t m_calls = 0;
};

class Writer : public ::testing::Test {
protected:
    LogWriter<Production> opened() {
        auto options = quick();
        options.changed = watch.callback();
        auto writer = LogWriter<Production>::open(path, clock, options);
        if (!writer) {
            throw std::runtime_error(writer.error().detail);
        }
        return std::move(*writer);
    }
    std::vector<std::string> storedBodies(const std::string& subject) {
        return LogReader::open(path).value().bodies(subject).value();
    }
    void expectSound() {
        const auto report = verifyLog(path);
        ASSERT_TRUE(report.has_value()) << report.error().detail;
        EXPECT_TRUE(report->ok) << report->finding->reason;
    }
    std::int64_t spillBytesUsed() {
        return static_cast<std::int64_t>(
            test::textOf(path + ".spill").find_last_not_of('\0') + 1); // npos + 1 is 0
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    Watch watch;
    std::string path = folder.file("a.log");
};

TEST_F(Writer, MakesALogWhereThereIsNoneAndKnowsItTheNextTime) {
    std::string id;
    {
        auto writer = opened();
        EXPECT_EQ(writer.origin(), LogOrigin::New);
        id = writer.logId();
    }
    auto writer = opened();
    EXPECT_EQ(writer.origin(), LogOrigin::Known);
    EXPECT_EQ(writer.logId(), id);
    EXPECT_EQ(LogReader::open(path)->world(), "production");
}

TEST_F(Writer, ReportsARowAsSavedWhenItIsInTheFile) {
    auto writer = opened();
    const auto rows = rowsOf(closedWeld(1));
    for (const LogRow& row : rows) {
        writer.submit({row});
    }
    writer.submit({}, test::sampleDocuments());
    ASSERT_TRUE(writer.flush().has_value());
    for (const LogRow& row : rows) {
        EXPECT_EQ(writer.status(row.subject, row.n), RowStatus::Saved);
    }
    EXPECT_EQ(writer.state().saved, static_cast<std::int64_t>(rows.size()));
    EXPECT_EQ(writer.state().pending, 0);
    EXPECT_TRUE(writer.waiting().empty());
    EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(1)).value(), closedWeld(1));
    expectSound();
}

TEST_F(Writer, KeepsTheRowsOfOneCallTogetherWithTheirDocuments) {
    auto writer = opened();
    writer.submit(rowsOf(unfinishedWeld(1, 3)), test::sampleDocuments());
    ASSERT_TRUE(writer.flush().has_value());
    for (const LogDocument& document : test::sampleDocuments()) {
        EXPECT_EQ(LogReader::open(path)->document(document.sha256).value(), document);
    }
    EXPECT_FALSE(LogReader::open(path)->document(std::string(64, '0')).value().has_value());
    expectSound();
}

TEST_F(Writer, GathersWhatWaitsAndLosesNoneOfIt) {
    auto options = quick();
    options.gather = true;
    auto writer = LogWriter<Production>::open(path, clock, options);
    ASSERT_TRUE(writer);
    constexpr int kWelds = 40;
    std::int64_t rows = 0;
    for (int number = 1; number <= kWelds; ++number) {
        for (const LogRow& row : rowsOf(closedWeld(number))) {
            writer->submit({row}); // one by one, as a session does
            ++rows;
        }
    }
    writer->submit({}, test::sampleDocuments());
    ASSERT_TRUE(writer->flush());
    EXPECT_EQ(writer->state().pending, 0);
    EXPECT_GE(writer->state().saved, rows);
    for (int number = 1; number <= kWelds; ++number) {
        std::vector<std::string> bodies;
        for (const LogRow& row : rowsOf(closedWeld(number))) {
            bodies.push_back(row.body);
            EXPECT_EQ(writer->status(row.subject, row.n), RowStatus::Saved);
        }
        EXPECT_EQ(storedBodies(weldName(number)), bodies);
    }
    expectSound();
}

TEST_F(Writer, TakesTheSameRowTwiceAndWritesItOnce) {
    auto writer = opened();
    const auto rows = rowsOf(unfinishedWeld(1, 5));
    writer.submit(rows, test::sampleDocuments());
    writer.submit(rows, test::sampleDocuments());
    ASSERT_TRUE(writer.flush().has_value());
    writer.submit({rows[2]});
    ASSERT_TRUE(writer.flush().has_value());
    EXPECT_EQ(storedBodies(weldName(1)).size(), 5U);
    EXPECT_EQ(writer.status(weldName(1), 3), RowStatus::Saved);
    EXPECT_TRUE(writer.state().refused.empty());
    expectSound();
}

TEST_F(Writer, RefusesAnotherBodyUnderTheSameNumberAndKeepsBoth) {
    auto writer = opened();
    writer.submit({stationRow(1, 10)});
    ASSERT_TRUE(writer.flush().has_value());
    writer.submit({stationRow(1, 11), stationRow(2, 12)});
    ASSERT_TRUE(writer.flush().has_value());
    EXPECT_EQ(writer.status("station", 1), RowStatus::Refused);
    EXPECT_EQ(writer.status("station", 2), RowStatus::Saved);
    EXPECT_EQ(
        storedBodies("station"),
        (std::vector<std::string>{stationRow(1, 10).body, stationRow(2, 12).body}));
    const auto state = writer.state();
    ASSERT_EQ(state.refused.size(), 1U);
    EXPECT_EQ(state.refused[0].row, stationRow(1, 11));
    EXPECT_NE(state.refused[0].reason.find("station, n 1"), std::string::npos);
    EXPECT_NE(test::textOf(path + ".refused").find(stationRow(1, 11).body), std::string::npos);
    EXPECT_EQ(state.saved, 2);
    expectSound();
}

TEST_F(Writer, RefusesWhatIsNoEventWithoutHoldingUpTheOthers) {
    auto writer = opened();
    LogRow noJson{"station", 1, "coffee"};
    LogRow misfiled = stationRow(2);
    misfiled.n = 3;
    writer.submit(
        {noJson, stationRow(1), misfiled}, {{std::string(64, 'f'), "bench", "not its bytes"}});
    ASSERT_TRUE(writer.flush().has_value());
    EXPECT_EQ(storedBodies("station"), std::vector<std::string>{stationRow(1).body});
    EXPECT_EQ(writer.state().refused.size(), 3U);
    EXPECT_EQ(writer.status("station", 3), RowStatus::Refused);
    EXPECT_EQ(writer.state().saved, 1);
    const std::string kept = test::textOf(path + ".refused");
    EXPECT_NE(kept.find("coffee"), std::string::npos);
    EXPECT_NE(kept.find("not its bytes"), std::string::npos);
    expectSound();
}

TEST_F(Writer, NumbersFactsOnFromWhatTheLogHolds) {
    {
        auto writer = opened();
        EXPECT_EQ(writer.note(clock.now(), "station", "station", ProgramStarted{})->n, 1);
        EXPECT_EQ(writer.note(clock.now(), "station", "station", SoundLost{})->n, 2);
        EXPECT_EQ(
            writer.note(clock.now(), "person:k", "bench:east", BenchSet{std::string(64, '1')})->n,
            1);
        writer.submit(rowsOf(unfinishedWeld(1, 2)));
        writer.submit({stationRow(3)});
    }
    auto writer = opened();
    EXPECT_EQ(writer.note(clock.now(), "station", "station", SoundBack{})->n, 4);
    EXPECT_EQ(
        writer.note(clock.now(), "person:k", "bench:east", BenchSet{std::string(64, '1')})->n, 2);
    EXPECT_EQ(
        writer.note(clock.now(), "person:k", "bench:west", BenchSet{std::string(64, '1')})->n, 1);
    EXPECT_FALSE(writer.note(clock.now(), "station", "bench:east", SoundBack{}).has_value());
    EXPECT_FALSE(writer.note(clock.now(), "station", "weld:1", ClockJumped{}).has_value());
    EXPECT_FALSE(writer.note(clock.now(), "\xff", "station", SoundBack{}).has_value());
    EXPECT_EQ(writer.note(clock.now(), "station", "station", SoundBack{})->n, 5);
    ASSERT_TRUE(writer.flush().has_value());
}

TEST_F(Writer, OnlyOneWritesALog) {
    auto first = opened();
    const auto second = LogWriter<Production>::open(path, clock, quick());
    ASSERT_FALSE(second.has_value());
    EXPECT_EQ(second.error().code, ErrorCode::Conflict);
    EXPECT_NE(second.error().detail.find("another program is writing this log"), std::string::npos);
    first.submit({stationRow(1)});
    EXPECT_TRUE(first.flush().has_value());
    { const auto gone = std::move(first); }
    EXPECT_TRUE(LogWriter<Production>::open(path, clock, quick()).has_value());
}

TEST_F(Writer, TheWorldsNeverMeet) {
    { auto writer = opened(); }
    const auto practice = LogWriter<Practice>::open(path, clock, quick());
    ASSERT_FALSE(practice.has_value());
    EXPECT_EQ(practice.error().code, ErrorCode::Foreign);
    EXPECT_NE(
        practice.error().detail.find("is a production log, expected a practice log"),
        std::string::npos);
}

TEST_F(Writer, NeverTakesAnUnreadableFileForANewLog) {
    const auto expect = [&](ErrorCode code, const std::string& words) {
        const std::string before = std::filesystem::is_directory(path) ? "" : test::textOf(path);
        const auto writer = LogWriter<Production>::open(path, clock, quick());
        ASSERT_FALSE(writer.has_value()) << words;
        EXPECT_EQ(writer.error().code, code) << writer.error().detail;
        EXPECT_NE(writer.error().detail.find(words), std::string::npos) << writer.error().detail;
        if (!std::filesystem::is_directory(path)) {
            EXPECT_EQ(test::textOf(path), before);
        }
        std::filesystem::remove_all(path);
    };
    std::ofstream(path).close();
    expect(ErrorCode::Unreadable, "0 bytes");
    std::filesystem::create_directory(path);
    expect(ErrorCode::Unreadable, "is a folder");
    std::ofstream(path) << std::string(5000, 'x');
    expect(ErrorCode::Unreadable, "not a database");
    std::ofstream(path) << "SQLite format 3";
    expect(ErrorCode::Unreadable, "not a database");
    SQLite::Database(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
        .exec("CREATE TABLE recipes(name TEXT)");
    expect(ErrorCode::Foreign, "not a joint log");
    test::writeSampleLog(path, clock);
    std::filesystem::resize_file(path, 3 * 4096);
    expect(ErrorCode::Damaged, "damaged");
}

TEST_F(Writer, SaysWhenTheFolderIsNotThere) {
    path = folder.file("nowhere/a.log");
    const auto writer = LogWriter<Production>::open(path, clock, quick());
    ASSERT_FALSE(writer.has_value());
    EXPECT_EQ(writer.error().code, ErrorCode::NotWritten);
    EXPECT_NE(writer.error().detail.find("nowhere is not there"), std::string::npos)
        << writer.error().detail;
}

TEST_F(Writer, RefusesALogWhoseHeadDoesNotFit) {
    test::writeSampleLog(path, clock);
    {
        test::BehindTheBack stranger(path);
        stranger.database().exec("DELETE FROM event WHERE seq = (SELECT max(seq) FROM event)");
    }
    const auto writer = LogWriter<Production>::open(path, clock, quick());
    ASSERT_FALSE(writer.has_value());
    EXPECT_EQ(writer.error().code, ErrorCode::Damaged);
    EXPECT_NE(writer.error().detail.find("head row"), std::string::npos);
}

// Root ignores file modes, so a folder is mounted read-only for it; another user takes the rights
// away.
class ReadOnly {
public:
    explicit ReadOnly(const std::string& folder) : m_folder(folder) {
        if (geteuid() == 0) {
            m_done = mount(folder.c_str(), folder.c_str(), nullptr, MS_BIND, nullptr) == 0;
            if (m_done && mount(
                              nullptr, folder.c_str(), nullptr, MS_BIND | MS_REMOUNT | MS_RDONLY,
                              nullptr) != 0) {
                umount2(folder.c_str(), MNT_DETACH);
                m_done = false;
            }
        } else {
            using std::filesystem::perms;
            for (const auto& entry : std::filesystem::directory_iterator(folder)) {
                std::filesystem::permissions(entry.path(), perms::owner_read);
            }
            std::filesystem::permissions(folder, perms::owner_read | perms::owner_exec);
            m_done = true;
        }
    }
    ~ReadOnly() {
        if (m_done && geteuid() == 0) {
            umount2(m_folder.c_str(), MNT_DETACH);
        } else {
            std::filesystem::permissions(m_folder, std::filesystem::perms::owner_all);
        }
    }
    bool done() const { return m_done; }

private:
    std::string m_folder;
    bool m_done = false;
};

TEST_F(Writer, AReadOnlyPlaceIsReadButNotWritten) {
    const std::string place = folder.file("place");
    std::filesystem::create_directory(place);
    path = place + "/a log?.log"; // characters that mean something in a URI
    test::writeSampleLog(path, clock);
    const ReadOnly sealed(place);
    if (!sealed.done()) {
        GTEST_SKIP() << "this root may not mount a folder read-only";
    }
    const auto writer = LogWriter<Production>::open(path, clock, quick());
    ASSERT_FALSE(writer.has_value());
    EXPECT_EQ(writer.error().code, ErrorCode::NotWritten) << writer.error().detail;
    auto reader = LogReader::open(path);
    ASSERT_TRUE(reader.has_value()) << reader.error().detail;
    EXPECT_EQ(reader->weldEvents(weldName(2)).value(), closedWeld(2));
    EXPECT_TRUE(verifyLog(path)->ok);
    EXPECT_EQ(recoverOpenWelds(path)->size(), 1U);
}

TEST_F(Writer, AFullDiskSpillsTheRowsAndTheyJoinInTheirOrderWhenThereIsRoomAgain) {
    test::FaultyDisk disk;
    auto writer = opened();
    writer.submit(rowsOf(unfinishedWeld(1, 2)), test::sampleDocuments());
    ASSERT_TRUE(writer.flush().has_value());

    disk.set(Fault::Full);
    const auto later = rowsOf(closedWeld(1));
    writer.submit({later[2]});
    const auto flushed = writer.flush();
    ASSERT_FALSE(flushed.has_value());
    EXPECT_EQ(flushed.error().code, ErrorCode::NotWritten);
    EXPECT_NE(flushed.error().detail.find("the disk is full"), std::string::npos)
        << flushed.error().detail;
    EXPECT_EQ(writer.status(weldName(1), 2), RowStatus::Saved);
    EXPECT_EQ(writer.status(weldName(1), 3), RowStatus::Spilled);
    ASSERT_TRUE(writer.state().trouble.has_value());
    EXPECT_FALSE(writer.state().trouble->spillFailed);
    EXPECT_GE(writer.state().trouble->attempts, 1);

    // The weld goes on; two benches at once.
    const auto other = rowsOf(unfinishedWeld(2, 2));
    writer.submit({other[1]});
    writer.submit({other[0]}, test::sampleDocuments());
    writer.submit({later[3]});
    ASSERT_FALSE(writer.flush().has_value());
    EXPECT_EQ(writer.status(weldName(1), 4), RowStatus::Spilled);
    EXPECT_EQ(writer.status(weldName(2), 1), RowStatus::Spilled);
    EXPECT_EQ(writer.state().pending, 0);
    EXPECT_GT(spillBytesUsed(), 0);
    EXPECT_EQ(storedBodies(weldName(1)).size(), 2U);

    disk.set(Fault::None);
    // Nobody asks: the writer finds out by itself.
    ASSERT_TRUE(watch.until([&] {
        const auto state = writer.state();
        return !state.trouble && state.spilled == 0 && state.pending == 0;
    }));
    ASSERT_TRUE(writer.flush().has_value());
    EXPECT_EQ(writer.status(weldName(1), 4), RowStatus::Saved);
    EXPECT_EQ(spillBytesUsed(), 0);
    EXPECT_EQ(storedBodies(weldName(1)).size(), 4U);
    std::vector<std::string> joined;
    ASSERT_TRUE(LogReader::open(path)->eachRow([&](const StoredRow& row) {
        joined.push_back(row.body);
        return true;
    }));
    // Rows 1 and 2 stood already; then by (subject, n), "station" before "weld:".
    std::vector<std::string> welds(joined.begin() + 2, joined.end());
    welds.erase(
        std::remove_if(
            welds.begin(), welds.end(),
            [](const std::string& body) {
                return body.find("\"station\",\"v\"") != std::string::npos;
            }),
        welds.end());
    EXPECT_EQ(
        welds,
        (std::vector<std::string>{later[2].body, later[3].body, other[0].body, other[1].body}));
    expectSound();
}

TEST_F(Writer, TellsInTheLogWhatWasSpilledAndJoined) {
    test::FaultyDisk disk;
    auto writer = opened();
    disk.set(Fault::Error);
    writer.submit(rowsOf(unfinishedWeld(1, 3)), test::sampleDocuments());
    ASSERT_FALSE(writer.flush().has_value());
    clock.wait(Milliseconds(90'000));
    disk.set(Fault::None);
    ASSERT_TRUE(writer.flush().has_value());
    ASSERT_TRUE(writer.flush().has_value());
    std::vector<FactDetail> facts;
    std::vector<Milliseconds> instants;
    for (const std::string& body : storedBodies("station")) {
        facts.push_back(factFromBody(body)->d);
        instants.push_back(factFromBody(body)->at.boot);
    }
    // Three rows went out; with the fact that says so, four came back.
    EXPECT_EQ(facts, (std::vector<FactDetail>{RowsSpilled{3}, RowsJoined{4}}));
    EXPECT_EQ(instants[1] - instants[0], Milliseconds(90'000));
    expectSound();
}

TEST_F(Writer, JoinsWhatTheLastRunLeftInTheSpillFile) {
    const auto rows = rowsOf(unfinishedWeld(1, 6));
    {
        test::FaultyDisk disk;
        auto writer = opened();
        writer.submit({rows[0], rows[1]});
        ASSERT_TRUE(writer.flush().has_value());
        disk.set(Fault::Full);
        writer.submit({rows[2], rows[3], rows[4]}, test::sampleDocuments());
        ASSERT_FALSE(writer.flush().has_value());
        writer.submit({rows[5]}); // not even flushed: the writer's end spills it
    }
    EXPECT_EQ(storedBodies(weldName(1)).size(), 2U);
    // Before any writer starts, recovery knows them.
    auto recovered = recoverOpenWelds(path);
    ASSERT_TRUE(recovered.has_value()) << recovered.error().detail;
    ASSERT_EQ(recovered->size(), 1U);
    ASSERT_TRUE(recovered->front().weld.has_value()) << recovered->front().weld.error().detail;
    EXPECT_EQ(recovered->front().weld->events, unfinishedWeld(1, 6));

    auto writer = opened();
    EXPECT_EQ(storedBodies(weldName(1)).size(), 6U) << "joined before open returns";
    EXPECT_EQ(writer.state().spilled, 0);
    EXPECT_EQ(spillBytesUsed(), 0);
    EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(1)).value(), unfinishedWeld(1, 6));
    ASSERT_TRUE(writer.flush().has_value());
    expectSound();
}

TEST_F(Writer, StartsOnAFullDiskAndShowsWhatIsLeft) {
    const auto rows = rowsOf(unfinishedWeld(1, 4));
    test::FaultyDisk disk;
    {
        auto writer = opened();
        writer.submit({rows[0]}, test::sampleDocuments());
        ASSERT_TRUE(writer.flush().has_value());
        disk.set(Fault::Full);
        writer.submit({rows[1], rows[2]});
        ASSERT_FALSE(writer.flush().has_value());
    }
    auto writer = opened();
    EXPECT_TRUE(writer.state().trouble.has_value());
    EXPECT_EQ(writer.status(weldName(1), 3), RowStatus::Spilled);
    const auto waiting = writer.waiting();
    EXPECT_NE(std::find(waiting.begin(), waiting.end(), rows[2]), waiting.end());
    writer.submit({rows[3]});
    ASSERT_FALSE(writer.flush().has_value());
    EXPECT_EQ(writer.status(weldName(1), 4), RowStatus::Spilled);
    disk.set(Fault::None);
    ASSERT_TRUE(writer.flush().has_value());
    EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(1)).value(), unfinishedWeld(1, 4));
    expectSound();
}

TEST_F(Writer, DoesNotWriteTwiceWhatACrashLeftInBothPlaces) {
    const auto rows = rowsOf(unfinishedWeld(1, 3));
    std::string spilled;
    {
        test::FaultyDisk disk;
        auto writer = opened();
        disk.set(Fault::Full);
        writer.submit(rows, test::sampleDocuments());
        ASSERT_FALSE(writer.flush().has_value());
        spilled = test::textOf(path + ".spill");
        disk.set(Fault::None);
        ASSERT_TRUE(writer.flush().has_value());
    }
    std::ofstream(path + ".spill", std::ios::binary)
        << spilled; // as if the power went before it was cleared
    auto writer = opened();
    ASSERT_TRUE(writer.flush().has_value());
    EXPECT_EQ(storedBodies(weldName(1)).size(), 3U);
    EXPECT_EQ(storedBodies("station").size(), 2U);
    EXPECT_TRUE(writer.state().refused.empty());
    EXPECT_EQ(spillBytesUsed(), 0);
    expectSound();
}

TEST_F(Writer, KeepsRowsInMemoryWhenTheSpillFileIsFullTooAndSaysSo) {
    test::FaultyDisk disk;
    auto options = quick();
    options.spillBytes = 4096;
    options.changed = watch.callback();
    auto writer = LogWriter<Production>::open(path, clock, options);
    ASSERT_TRUE(writer.has_value());
    disk.set(Fault::Full);
    const auto rows = rowsOf(closedWeld(1));
    for (const LogRow& row : rows) {
        writer->submit({row});
    }
    const auto flushed = writer->flush();
    ASSERT_FALSE(flushed.has_value());
    EXPECT_TRUE(writer->state().trouble->spillFailed);
    EXPECT_GT(writer->state().pending, 0);
    disk.set(Fault::None);
    writer->submit({}, test::sampleDocuments());
    ASSERT_TRUE(writer->flush().has_value());
    EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(1)).value(), closedWeld(1));
    expectSound();
}

TEST_F(Writer, SurvivesAnErrorAtEveryWriteOfACommit) {
    // Each single write or sync on the way of two welds fails once; nothing is lost, doubled or out
    // of order.
    for (std::int64_t n = 1; n <= 24; ++n) {
        const test::ScratchFolder own;
        path = own.file("a.log");
        test::FaultyDisk disk;
        auto writer = opened();
        writer.submit({}, test::sampleDocuments());
        ASSERT_TRUE(writer.flush().has_value());
        disk.failOnce(n);
        for (const LogRow& row : rowsOf(closedWeld(1))) {
            writer.submit({row});
        }
        writer.submit(rowsOf(closedWeld(2)));
        static_cast<void>(writer.flush());
        ASSERT_TRUE(watch.until([&] { return !writer.state().trouble; })) << n;
        ASSERT_TRUE(writer.flush().has_value()) << n;
        EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(1)).value(), closedWeld(1)) << n;
        EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(2)).value(), closedWeld(2)) << n;
        expectSound();
    }
}

TEST_F(Writer, ALockedLogIsTroubleThatPasses) {
    auto writer = opened();
    {
        SQLite::Database other(path, SQLite::OPEN_READWRITE);
        other.exec("BEGIN IMMEDIATE");
        writer.submit(rowsOf(unfinishedWeld(1, 3)), test::sampleDocuments());
        const auto flushed = writer.flush();
        ASSERT_FALSE(flushed.has_value());
        EXPECT_NE(
            flushed.error().detail.find("another program holds it locked"), std::string::npos);
        EXPECT_EQ(writer.status(weldName(1), 3), RowStatus::Spilled);
        other.exec("ROLLBACK");
    }
    ASSERT_TRUE(
        watch.until([&] { return !writer.state().trouble && writer.state().spilled == 0; }));
    ASSERT_TRUE(writer.flush().has_value());
    EXPECT_EQ(storedBodies(weldName(1)).size(), 3U);
    expectSound();
}

TEST_F(Writer, NoticesThatTheLogWasMovedAwayAndWritesNoOther) {
    auto writer = opened();
    writer.submit(rowsOf(unfinishedWeld(1, 1)), test::sampleDocuments());
    ASSERT_TRUE(writer.flush().has_value());
    const std::string away = folder.file("away.log");
    for (const char* tail : {"", "-wal", "-shm"}) {
        std::filesystem::rename(path + tail, away + tail);
    }
    writer.submit({rowsOf(unfinishedWeld(1, 2)).back()});
    ASSERT_FALSE(writer.flush().has_value());
    EXPECT_EQ(writer.status(weldName(1), 2), RowStatus::Spilled);
    EXPECT_FALSE(std::filesystem::exists(path));
    // Another log in its place is not taken for it.
    test::writeSampleLog(folder.file("other.log"), clock);
    std::filesystem::copy_file(folder.file("other.log"), path);
    ASSERT_FALSE(writer.flush().has_value());
    EXPECT_NE(writer.state().trouble->detail.find("another log stands there"), std::string::npos);
    std::filesystem::remove(path);
    for (const char* tail : {"-wal", "-shm"}) {
        std::filesystem::remove(path + tail);
    }
    for (const char* tail : {"", "-wal", "-shm"}) {
        if (std::filesystem::exists(away + tail)) {
            std::filesystem::rename(away + tail, path + tail);
        }
    }
    ASSERT_TRUE(writer.flush().has_value());
    EXPECT_EQ(storedBodies(weldName(1)).size(), 2U);
    expectSound();
}

TEST_F(Writer, ABrokenListHoldsNoEventUpAndIsMadeAgain) {
    test::writeSampleLog(path, clock);
    const auto lines = LogReader::open(path)->joints({}).value();
    {
        test::BehindTheBack stranger(path);
        stranger.database().exec("ALTER TABLE joint DROP COLUMN trouble");
        stranger.database().exec("UPDATE joint_state SET seq = 3");
    }
    EXPECT_EQ(LogReader::open(path)->joints({}).value(), lines) << "read from the events instead";
    auto writer = opened();
    writer.submit(rowsOf(unfinishedWeld(9, 3)));
    ASSERT_TRUE(writer.flush().has_value());
    ASSERT_TRUE(writer.flush().has_value());
    EXPECT_FALSE(writer.state().listTrouble.has_value());
    EXPECT_EQ(LogReader::open(path)->joints({})->size(), lines.size() + 1);
    expectSound();
}

TEST_F(Writer, TakesRowsFromSeveralThreadsAtOnce) {
    constexpr int kThreads = 4;
    auto writer = opened();
    writer.submit({}, test::sampleDocuments());
    std::atomic<std::int64_t> asked{0};
    std::vector<std::thread> threads;
    for (int t = 0; t < kThreads; ++t) {
        threads.emplace_back([&writer, &asked, &own = clock, t] {
            for (const LogRow& row : rowsOf(closedWeld(t + 1))) {
                writer.submit({row});
                asked += writer.status(row.subject, row.n) == RowStatus::Saved ? 1 : 0;
                asked +=
                    writer.state().pending + static_cast<std::int64_t>(writer.waiting().size());
                static_cast<void>(writer.note(own.now(), "station", "station", SoundBack{}));
            }
            static_cast<void>(writer.flush());
        });
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    ASSERT_TRUE(writer.flush().has_value());
    for (int t = 0; t < kThreads; ++t) {
        EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(t + 1)).value(), closedWeld(t + 1));
    }
    EXPECT_EQ(storedBodies("station").size(), kThreads * closedWeld(1).size());
    expectSound();
}

TEST_F(Writer, SeveralThreadsSeeAFailingDiskThrough) {
    test::FaultyDisk disk;
    auto writer = opened();
    writer.submit({}, test::sampleDocuments());
    std::vector<std::thread> threads;
    for (int t = 0; t < 3; ++t) {
        threads.emplace_back([&writer, t] {
            for (const LogRow& row : rowsOf(closedWeld(t + 1))) {
                writer.submit({row});
            }
        });
    }
    for (int i = 0; i < 20; ++i) {
        disk.set(i % 2 == 0 ? Fault::Full : Fault::None);
        static_cast<void>(writer.flush());
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    disk.set(Fault::None);
    ASSERT_TRUE(watch.until([&] { return !writer.state().trouble; }));
    ASSERT_TRUE(writer.flush().has_value());
    for (int t = 0; t < 3; ++t) {
        EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(t + 1)).value(), closedWeld(t + 1));
    }
    expectSound();
}

} // namespace
} // namespace seamclock
