#include "core/copies/log_keeper.h"

#include "core/copies/snapshot.h"
#include "core/log/log_reader.h"
#include "core/log/start_check.h"
#include "core/log/verify.h"
#include "tests/support/log_content.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

namespace fs = std::filesystem;
using test::namesIn;

class Keeper : public ::testing::Test {
protected:
    void SetUp() override {
        log = folder.file("joints.seamlog");
        share = folder.file("share");
        fs::create_directory(share);
        test::writeSampleLog(log, clock);
        id = LogReader::open(log)->logId();
    }
    KeeperOptions options(const std::string& into) const {
        KeeperOptions out;
        out.quiet = Milliseconds(5);
        out.reserveBytes = 0;
        out.snapshotFolder = into;
        return out;
    }
    LogWriter<Production> opened(LogKeeper& keeper) const {
        auto quick = test::quick();
        quick.changed = [&keeper] { keeper.look(); };
        auto writer = LogWriter<Production>::open(log, clock, std::move(quick));
        EXPECT_TRUE(writer.has_value());
        return std::move(*writer);
    }
    std::vector<std::string> backups() const { return namesIn(log + ".backups"); }
    std::int64_t rowsOfSnapshot() const {
        const auto copy = readCopy(share + "/" + snapshotName(log, id));
        EXPECT_TRUE(copy.has_value()) << copy.error().detail;
        return copy ? copy->rows : 0;
    }

    test::FakeClock clock;
    test::ScratchFolder folder;
    std::string log;
    std::string share;
    std::string id;
};

TEST_F(Keeper, BacksUpAtTheStartAndAfterADaysFirstClosing) {
    LogKeeper keeper(log, clock, options(""));
    keeper.settle();
    EXPECT_FALSE(fs::exists(log + ".backups")) << "nothing before it begins";
    auto writer = opened(keeper);
    keeper.begin();
    keeper.settle();
    const std::string first = backupName("2030-01-07", id);
    EXPECT_EQ(backups(), std::vector<std::string>{first});
    EXPECT_EQ(keeper.state().backups, 1);
    EXPECT_EQ(keeper.state().backup, log + ".backups/" + first);
    EXPECT_FALSE(keeper.state().backupTrouble.has_value());

    writer.submit(test::rowsOf(test::closedWeld(6)));
    ASSERT_TRUE(writer.flush().has_value());
    keeper.settle();
    EXPECT_EQ(keeper.state().backups, 1) << "one a day";

    // 06:00Z is 07:00 local time (offset 60 min): the next day begins at 23:00Z.
    clock.wait(std::chrono::hours(17) - Milliseconds(1));
    writer.submit(test::rowsOf(test::closedWeld(7)));
    ASSERT_TRUE(writer.flush().has_value());
    keeper.settle();
    EXPECT_EQ(keeper.state().backups, 1) << "still the same local day";
    clock.wait(Milliseconds(1));
    writer.submit(test::rowsOf(test::unfinishedWeld(8, 6)));
    ASSERT_TRUE(writer.flush().has_value());
    keeper.settle();
    EXPECT_EQ(keeper.state().backups, 1) << "no closing yet";
    writer.submit(test::rowsOf(test::abortedWeld(9, "stopped")));
    ASSERT_TRUE(writer.flush().has_value());
    keeper.settle();
    EXPECT_EQ(keeper.state().backups, 2);
    EXPECT_EQ(backups(), (std::vector<std::string>{first, backupName("2030-01-08", id)}));
    const auto copy = readCopy(keeper.state().backup);
    ASSERT_TRUE(copy.has_value());
    EXPECT_EQ(copy->rows, verifyLog(log)->rows);
}

TEST_F(Keeper, FindsTheDaysBackupThatIsThereAlready) {
    ASSERT_TRUE(backUpDay(log, "2030-01-07", {}).has_value());
    LogKeeper keeper(log, clock, options(""));
    keeper.begin();
    keeper.settle();
    EXPECT_EQ(keeper.state().backups, 0);
    EXPECT_EQ(keeper.state().backup, log + ".backups/" + backupName("2030-01-07", id));
}

TEST_F(Keeper, PublishesAtTheStartAndAfterEachClosing) {
    LogKeeper keeper(log, clock, options(share));
    auto writer = opened(keeper);
    keeper.begin();
    keeper.settle();
    const std::int64_t atStart = rowsOfSnapshot();
    EXPECT_EQ(keeper.state().snapshots, 1);
    EXPECT_EQ(namesIn(share), std::vector<std::string>{snapshotName(log, id)});
    const auto rows = test::rowsOf(test::closedWeld(6));
    writer.submit({rows.begin(), rows.end() - 1});
    ASSERT_TRUE(writer.flush().has_value());
    keeper.settle();
    EXPECT_EQ(keeper.state().snapshots, 1) << "not in the middle of a weld";
    writer.submit({rows.back()});
    ASSERT_TRUE(writer.flush().has_value());
    keeper.settle();
    EXPECT_EQ(keeper.state().snapshots, 2);
    EXPECT_EQ(rowsOfSnapshot(), atStart + static_cast<std::int64_t>(rows.size()));
    EXPECT_EQ(test::contentRows(share + "/" + snapshotName(log, id)), test::contentRows(log));
    for (std::int64_t number = 7; number < 12; ++number) {
        writer.submit(test::rowsOf(test::closedWeld(number)));
        ASSERT_TRUE(writer.flush().has_value());
        keeper.settle();
        EXPECT_EQ(keeper.state().snapshots, number - 4);
    }
}

TEST_F(Keeper, TellsOfAFailureAndTriesAgainAtTheNextClosing) {
    fs::remove(share);
    std::ofstream(log + ".backups") << "in the way";
    LogKeeper keeper(log, clock, options(share));
    auto writer = opened(keeper);
    keeper.begin();
    keeper.settle();
    ASSERT_TRUE(keeper.state().backupTrouble.has_value());
    ASSERT_TRUE(keeper.state().snapshotTrouble.has_value());
    EXPECT_EQ(keeper.state().backupTrouble->find(log + ".backups: "), 0U)
        << *keeper.state().backupTrouble;
    EXPECT_EQ(keeper.state().snapshotTrouble->find(share + ": "), 0U)
        << *keeper.state().snapshotTrouble;
    EXPECT_EQ(keeper.state().backups + keeper.state().snapshots, 0);
    fs::remove(log + ".backups");
    fs::create_directory(share);
    keeper.settle();
    EXPECT_EQ(keeper.state().backups, 0) << "not until something is closed";
    writer.submit(test::rowsOf(test::closedWeld(6)));
    ASSERT_TRUE(writer.flush().has_value());
    keeper.settle();
    EXPECT_FALSE(keeper.state().backupTrouble.has_value());
    EXPECT_FALSE(keeper.state().snapshotTrouble.has_value());
    EXPECT_EQ(keeper.state().backups, 1);
    EXPECT_EQ(keeper.state().snapshots, 1);
    EXPECT_FALSE(writer.state().trouble.has_value()) << "the log itself never knew";
}

TEST_F(Keeper, TakesAnotherFolderAtOnce) {
    LogKeeper keeper(log, clock, options(""));
    keeper.begin();
    keeper.settle();
    EXPECT_EQ(keeper.state().snapshots, 0);
    keeper.publishInto(share);
    keeper.settle();
    EXPECT_EQ(keeper.state().snapshots, 1);
    keeper.publishInto(folder.file("not there"));
    keeper.settle();
    EXPECT_TRUE(keeper.state().snapshotTrouble.has_value());
    keeper.publishInto("");
    keeper.settle();
    EXPECT_FALSE(keeper.state().snapshotTrouble.has_value());
    EXPECT_EQ(keeper.state().snapshots, 1);
}

TEST_F(Keeper, OfALogThatIsGoneTellsAndEnds) {
    fs::remove(log);
    LogKeeper keeper(log, clock, options(share));
    keeper.begin();
    keeper.begin();
    keeper.look();
    keeper.settle();
    EXPECT_TRUE(keeper.state().backupTrouble.has_value());
    EXPECT_TRUE(keeper.state().snapshotTrouble.has_value());
    EXPECT_FALSE(fs::exists(log));
}

// Whenever it ends, what stands is whole and nothing half-made is taken for a copy.
TEST_F(Keeper, EndsAtAnyMoment) {
    for (int i = 0; i < 8; ++i) {
        {
            LogKeeper keeper(log, clock, options(share));
            auto writer = opened(keeper);
            keeper.begin();
            writer.submit(test::rowsOf(test::closedWeld(10 + i)));
            if (i % 2 == 0) {
                static_cast<void>(writer.flush());
            }
        }
        clock.wait(std::chrono::hours(24));
        for (const std::string& place : {log + ".backups", share}) {
            if (!fs::exists(place)) {
                continue;
            }
            for (const std::string& name : namesIn(place)) {
                EXPECT_EQ(name.find(".part"), std::string::npos) << name;
                EXPECT_TRUE(verifyLog(place + "/" + name)->ok) << name;
            }
        }
    }
    EXPECT_TRUE(verifyLog(log)->ok);
}

/// The file's header tells of a free page that is not there (the count at offset 36 of SQLite's
/// file format): nothing is amiss for who reads, nor for who adds a row where there is room.
void spoilFreeList(const std::string& log) {
    std::fstream file(log, std::ios::binary | std::ios::in | std::ios::out);
    file.seekp(39);
    file.put('\1');
}

TEST_F(Keeper, LooksThroughALogThatWasTooLargeForTheStartAndLeavesWordOfDamage) {
    auto quick = test::quick();
    quick.quickCheckUpTo = 0; // any log is too large
    auto how = options("");
    how.checkAbove = 0;
    {
        auto writer = LogWriter<Production>::open(log, clock, quick);
        ASSERT_TRUE(writer.has_value());
        LogKeeper keeper(log, clock, how);
        keeper.begin();
        keeper.settle();
        EXPECT_TRUE(keeper.state().structureChecked);
        EXPECT_FALSE(keeper.state().structureTrouble.has_value());
        EXPECT_FALSE(isDoubtful(log));
    }
    spoilFreeList(log);
    {
        auto writer = LogWriter<Production>::open(log, clock, quick);
        ASSERT_TRUE(writer.has_value()) << "a start does not need it";
        LogKeeper keeper(log, clock, how);
        keeper.begin();
        keeper.settle();
        EXPECT_TRUE(keeper.state().structureChecked);
        ASSERT_TRUE(keeper.state().structureTrouble.has_value());
        EXPECT_EQ(keeper.state().structureTrouble->find(log + ": its structure is damaged ("), 0U)
            << *keeper.state().structureTrouble;
        EXPECT_TRUE(isDoubtful(log));
    }
    const auto again = LogWriter<Production>::open(log, clock, quick);
    ASSERT_FALSE(again.has_value());
    EXPECT_EQ(again.error().code, ErrorCode::Damaged);
}

TEST_F(Keeper, ADoubtThatTurnsOutToBeNoneIsForgotten) {
    ASSERT_TRUE(leaveDoubt(log));
    auto quick = test::quick();
    quick.quickCheckUpTo = 0;
    ASSERT_TRUE(LogWriter<Production>::open(log, clock, quick).has_value());
    EXPECT_FALSE(isDoubtful(log));
}

TEST_F(Keeper, LooksThroughNoLogThatTheStartLookedThrough) {
    LogKeeper keeper(log, clock, options(""));
    keeper.begin();
    keeper.settle();
    EXPECT_FALSE(keeper.state().structureChecked);
}

} // namespace
} // namespace seamclock
