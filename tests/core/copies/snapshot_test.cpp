#include "core/copies/snapshot.h"

#include "core/log/connection.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/frozen_log.h"
#include "tests/support/log_content.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <atomic>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <thread>

namespace seamclock {
namespace {

namespace fs = std::filesystem;
using test::contentRows;
using test::namesIn;

class Snapshot : public ::testing::Test {
protected:
    void SetUp() override {
        log = folder.file("joints.seamlog");
        test::writeSampleLog(log, clock);
        name = snapshotName(log, LogReader::open(log)->logId());
        share = folder.file("share");
        fs::create_directory(share);
        place = share + "/" + name;
    }
    LogWriter<Production> opened() const {
        auto writer = LogWriter<Production>::open(log, clock, test::quick());
        EXPECT_TRUE(writer.has_value());
        return std::move(*writer);
    }

    test::FakeClock clock;
    test::ScratchFolder folder;
    std::string log;
    std::string name;
    std::string share; // an empty folder
    std::string place; // where the snapshot comes to stand
};

TEST_F(Snapshot, IsTheLogOfThatMomentAndNothingElseIsInTheFolder) {
    const auto published = publishSnapshot(log, share);
    ASSERT_TRUE(published.has_value()) << published.error().detail;
    EXPECT_EQ(published->file, place);
    EXPECT_EQ(contentRows(place), contentRows(log));
    EXPECT_EQ(test::contentOf(place), test::contentOf(log));
    EXPECT_TRUE(verifyLog(place)->ok);
    EXPECT_EQ(namesIn(share), std::vector<std::string>{name});
}

TEST_F(Snapshot, IsReplacedByTheNextAndAReaderOfTheOlderIsNotDisturbed) {
    ASSERT_TRUE(publishSnapshot(log, share).has_value());
    auto older = LogReader::open(place);
    ASSERT_TRUE(older.has_value());
    const auto head = older->head();
    {
        auto writer = opened();
        writer.submit(test::rowsOf(test::closedWeld(6)));
        ASSERT_TRUE(writer.flush().has_value());
        ASSERT_TRUE(publishSnapshot(log, share).has_value()) << "while the log is in use";
    }
    EXPECT_EQ(older->head(), head);
    EXPECT_EQ(older->joints({})->size(), 5U);
    EXPECT_EQ(LogReader::open(place)->joints({})->size(), 6U);
    EXPECT_EQ(namesIn(share), std::vector<std::string>{name});
}

// Rows come all the time, and the writer's log grows under the copy.
TEST_F(Snapshot, IsOfOneMomentHoweverBusyTheWriterIs) {
    auto writer = opened();
    std::atomic<bool> stop{false};
    std::thread busy([&] {
        for (std::int64_t number = 6; !stop && number < 2'000; ++number) {
            for (LogRow& row : test::rowsOf(test::closedWeld(number))) {
                writer.submit({std::move(row)});
            }
            static_cast<void>(writer.flush());
        }
    });
    std::int64_t last = 0;
    for (int i = 0; i < 10; ++i) {
        const auto published = publishSnapshot(log, share);
        EXPECT_TRUE(published.has_value()) << published.error().detail;
        if (!published) {
            break;
        }
        EXPECT_GE(published->rows, last);
        last = published->rows;
        const auto report = verifyLog(place);
        EXPECT_TRUE(report.has_value() && report->ok) << report->finding->reason;
    }
    stop = true;
    busy.join();
    EXPECT_FALSE(writer.state().trouble.has_value());
    EXPECT_GT(last, 0);
}

TEST_F(Snapshot, IsToldFromALiveLogByItsHeaderAndWhatIsBesideIt) {
    EXPECT_FALSE(inspectLogFile(log)->published) << "closed, but a log";
    {
        const auto writer = opened();
        EXPECT_FALSE(inspectLogFile(log)->published) << "in use";
    }
    ASSERT_TRUE(publishSnapshot(log, share).has_value());
    EXPECT_TRUE(inspectLogFile(place)->published);
    fs::create_symlink(place, folder.file("link"));
    EXPECT_TRUE(inspectLogFile(folder.file("link"))->published);
    const std::string bytes = test::textOf(place);
    // The form is SQLite's (https://www.sqlite.org/fileformat2.html): bytes 18 and 19, 1 or 2.
    EXPECT_EQ(bytes.substr(18, 2), std::string("\1\1"));
    EXPECT_EQ(test::textOf(log).substr(18, 2), std::string("\2\2"));
    for (const char* tail : {"-wal", "-journal"}) {
        std::ofstream(place + tail) << "somebody writes to it";
        EXPECT_FALSE(inspectLogFile(place)->published) << tail;
        fs::remove(place + tail);
    }
    // Taken into use as a log, it is one.
    { ASSERT_TRUE(LogWriter<Production>::open(place, clock, test::quick()).has_value()); }
    EXPECT_FALSE(inspectLogFile(place)->published);
}

TEST_F(Snapshot, ReplacesNoFileThatIsNoOlderCopyOfThisLog) {
    const auto expectConflict = [&](const char* what) {
        const std::string before = test::textOf(place);
        const auto published = publishSnapshot(log, share);
        ASSERT_FALSE(published.has_value()) << what;
        EXPECT_EQ(published.error().code, ErrorCode::Conflict) << published.error().detail;
        EXPECT_NE(published.error().detail.find("no copy of this log"), std::string::npos)
            << published.error().detail;
        EXPECT_TRUE(test::textOf(place) == before) << what;
        EXPECT_EQ(namesIn(share).front(), name) << what;
        fs::remove(place);
    };
    std::ofstream(place) << "a person's own";
    expectConflict("a text");
    const std::string other = folder.file("other.seamlog");
    test::writeSampleLog(other, clock);
    ASSERT_TRUE(copyLog(other, place, {}).has_value());
    expectConflict("another log's copy");
    fs::copy_file(log, place);
    expectConflict("a live log");
    EXPECT_TRUE(publishSnapshot(log, share).has_value());
}

TEST_F(Snapshot, WithoutItsFolderOrItsRightsIsOneSentence) {
    fs::remove(share);
    for (int i = 0; i < 2; ++i) {
        const auto published = publishSnapshot(log, share);
        ASSERT_FALSE(published.has_value());
        EXPECT_EQ(published.error().code, ErrorCode::NotWritten);
        EXPECT_EQ(published.error().detail.find(share + ": "), 0U) << published.error().detail;
        std::ofstream(share) << "a file of the folder's name";
    }
    fs::remove(share);
    fs::create_directory(share);
    EXPECT_TRUE(publishSnapshot(log, share).has_value());
}

TEST_F(Snapshot, CleansUpWhatAPowerCutLeft) {
    ASSERT_TRUE(publishSnapshot(log, share).has_value());
    std::ofstream(share + "/." + name + ".part", std::ios::binary)
        << test::textOf(log).substr(0, 9'000);
    std::ofstream(share + "/." + name + ".part-journal") << "half";
    EXPECT_TRUE(verifyLog(place)->ok) << "what stands is whole";
    ASSERT_TRUE(publishSnapshot(log, share).has_value());
    EXPECT_EQ(namesIn(share), std::vector<std::string>{name});
}

TEST_F(Snapshot, ThatFailsLeavesTheOneBefore) {
    ASSERT_TRUE(publishSnapshot(log, share).has_value());
    const std::string before = test::textOf(place);
    {
        auto writer = opened();
        writer.submit(test::rowsOf(test::closedWeld(6)));
    }
    for (const auto fault : {test::FaultyDisk::Fault::Full, test::FaultyDisk::Fault::Error}) {
        test::FaultyDisk disk;
        disk.set(fault);
        const auto published = publishSnapshot(log, share);
        ASSERT_FALSE(published.has_value());
        EXPECT_EQ(published.error().code, ErrorCode::NotWritten);
        EXPECT_NE(published.error().detail.find(place), std::string::npos)
            << published.error().detail;
    }
    EXPECT_TRUE(test::textOf(place) == before);
    EXPECT_EQ(namesIn(share), std::vector<std::string>{name});
}

// SQLite's locks are the process's, and the kernel drops them when the process closes any handle of
// the file. Without them a stranger's tool takes itself for the last user of the log, and takes its
// write-ahead log away; what the writer then writes is lost with the power.
TEST_F(Snapshot, ReadingALogLeavesItsWritersLocks) {
    if (std::system("command -v sqlite3 >/dev/null") != 0) {
        GTEST_SKIP() << "the sqlite3 command line program is not installed";
    }
    auto writer = opened();
    writer.submit(test::rowsOf(test::closedWeld(6)));
    ASSERT_TRUE(writer.flush().has_value());
    ASSERT_TRUE(LogReader::open(log).has_value());
    ASSERT_TRUE(verifyLog(log).has_value());
    ASSERT_TRUE(publishSnapshot(log, share).has_value());
    ASSERT_TRUE(copyLog(log, folder.file("backup"), {}).has_value());
    const auto hasWal = [&] { return fs::exists(log + "-wal") && fs::file_size(log + "-wal") > 0; };
    ASSERT_TRUE(hasWal());
    ASSERT_EQ(
        std::system(("sqlite3 '" + log + "' 'SELECT count(*) FROM event' >/dev/null").c_str()), 0);
    EXPECT_TRUE(hasWal()) << "the write-ahead log was taken away from under the writer";
    writer.submit(test::rowsOf(test::closedWeld(7)));
    ASSERT_TRUE(writer.flush().has_value());
    EXPECT_EQ(LogReader::open(log)->highestNumber().value(), 7);
}

} // namespace
} // namespace seamclock
