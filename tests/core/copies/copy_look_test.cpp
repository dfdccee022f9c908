// Reading elsewhere: copies in a folder where nobody may write, looked at from outside by comparing
// the whole folder before and after.
#include "core/copies/copy_look.h"

#include "core/copies/snapshot.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "tests/support/log_content.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <filesystem>
#include <gtest/gtest.h>
#include <map>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

/// Every name in the folder with its bytes and its time.
std::map<std::string, std::pair<std::string, fs::file_time_type>>
folderAsItIs(const std::string& folder) {
    std::map<std::string, std::pair<std::string, fs::file_time_type>> out;
    for (const auto& entry : fs::directory_iterator(folder)) {
        out[entry.path().filename().string()] = {
            test::textOf(entry.path().string()), entry.last_write_time()};
    }
    return out;
}

class CopyLook : public ::testing::Test {
protected:
    void SetUp() override {
        log = folder.file("joints.seamlog");
        test::writeSampleLog(log, clock);
        share = folder.file("share");
        fs::create_directory(share);
        const auto published = publishSnapshot(log, share);
        ASSERT_TRUE(published) << published.error().detail;
        copy = published->file;
    }

    test::FakeClock clock;
    test::ScratchFolder folder;
    std::string log;
    std::string share;
    std::string copy;
};

TEST_F(CopyLook, TellsWhichLogItIsOfAndUpToWhen) {
    const auto seen = lookAtCopy(copy);
    ASSERT_TRUE(seen) << seen.error().detail;
    auto reader = LogReader::open(log);
    ASSERT_TRUE(reader);
    EXPECT_EQ(seen->copy.logId, reader->logId());
    EXPECT_EQ(seen->copy.rows, reader->head()->seq);
    ASSERT_TRUE(seen->lastRow);
    EXPECT_EQ(seen->lastRow->utc, clock.now().utc) << "the program's stop was noted last";
    const auto modified = fs::last_write_time(copy).time_since_epoch();
    const auto made = std::chrono::duration_cast<std::chrono::seconds>(seen->madeUtc);
    // The file's clock has another epoch than UTC here; both are read twice and must move alike.
    fs::last_write_time(copy, fs::last_write_time(copy) - std::chrono::hours(5));
    const auto again = lookAtCopy(copy);
    ASSERT_TRUE(again);
    EXPECT_EQ(
        made - std::chrono::duration_cast<std::chrono::seconds>(again->madeUtc),
        std::chrono::hours(5));
    EXPECT_GT(modified.count(), fs::last_write_time(copy).time_since_epoch().count());
}

TEST_F(CopyLook, LeavesTheFolderAsItWasWhateverIsRead) {
    fs::permissions(share, fs::perms::owner_read | fs::perms::owner_exec);
    const auto before = folderAsItIs(share);
    ASSERT_EQ(before.size(), 1U);
    ASSERT_TRUE(lookAtCopy(copy));
    {
        auto reader = LogReader::open(copy);
        ASSERT_TRUE(reader);
        EXPECT_EQ(reader->joints({})->size(), 5U);
        EXPECT_FALSE(reader->weldEvents(test::weldName(1))->empty());
        const auto report = verifyLog(copy);
        ASSERT_TRUE(report) << report.error().detail;
        EXPECT_TRUE(report->ok);
        EXPECT_EQ(folderAsItIs(share), before) << "while it is open";
    }
    EXPECT_EQ(folderAsItIs(share), before);
    fs::permissions(share, fs::perms::owner_all);
}

TEST_F(CopyLook, ALiveLogIsRefusedAndNothingComesToStandBesideIt) {
    const auto seen = lookAtCopy(log);
    ASSERT_FALSE(seen);
    EXPECT_EQ(seen.error().code, ErrorCode::Foreign);
    EXPECT_NE(seen.error().detail.find("is a live log and no copy"), std::string::npos)
        << seen.error().detail;
}

TEST_F(CopyLook, ALogOfANewerProgramSaysSoInOneSentence) {
    {
        SQLite::Database database(copy, SQLite::OPEN_READWRITE);
        database.exec("PRAGMA user_version = 4711");
    }
    const auto seen = lookAtCopy(copy);
    ASSERT_FALSE(seen);
    EXPECT_EQ(seen.error().code, ErrorCode::Foreign);
    EXPECT_NE(
        seen.error().detail.find("was written by a newer program (version 4711"), std::string::npos)
        << seen.error().detail;
    EXPECT_EQ(seen.error().detail.find('\n'), std::string::npos);
}

TEST_F(CopyLook, WhatIsNoLogIsRefused) {
    for (const std::string& name : {folder.file("none"), folder.path()}) {
        const auto seen = lookAtCopy(name);
        ASSERT_FALSE(seen);
        EXPECT_EQ(seen.error().code, ErrorCode::Unreadable);
    }
}

} // namespace
} // namespace seamclock
