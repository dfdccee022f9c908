#include "core/copies/backup.h"

#include "core/log/connection.h"
#include "core/log/log_lock.h"
#include "core/log/log_reader.h"
#include "core/log/spill.h"
#include "core/log/verify.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/frozen_log.h"
#include "tests/support/log_content.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <map>

namespace seamclock {
namespace {

namespace fs = std::filesystem;
using test::contentRows;
using test::namesIn;
using Fault = test::FaultyDisk::Fault;

void expectSound(const std::string& path) {
    const auto report = verifyLog(path);
    ASSERT_TRUE(report.has_value()) << report.error().detail;
    EXPECT_TRUE(report->ok) << report->finding->reason;
}

class Backup : public ::testing::Test {
protected:
    void SetUp() override {
        log = folder.file("joints.seamlog");
        test::writeSampleLog(log, clock);
        id = LogReader::open(log)->logId();
        out = folder.file("out");
        fs::create_directory(out);
    }
    std::string inOut(const std::string& name) const { return out + "/" + name; }
    std::string dailyName(const std::string& day) const {
        return backupFolderOf(log) + "/" + backupName(day, id);
    }

    test::FakeClock clock;
    test::ScratchFolder folder;
    std::string log;
    std::string id;
    std::string out; // an empty folder
};

TEST_F(Backup, HoldsEveryRowByteForByteWhileTheLogIsBeingWritten) {
    auto writer = LogWriter<Production>::open(log, clock, test::quick());
    ASSERT_TRUE(writer.has_value());
    writer->submit(test::rowsOf(test::closedWeld(6)));
    ASSERT_TRUE(writer->flush().has_value());
    const auto copy = copyLog(log, inOut("copy.seamlog"), {});
    ASSERT_TRUE(copy.has_value()) << copy.error().detail;
    EXPECT_EQ(contentRows(copy->file), contentRows(log));
    EXPECT_EQ(test::contentOf(copy->file), test::contentOf(log));
    expectSound(copy->file);
    EXPECT_EQ(copy->logId, id);
    EXPECT_EQ(copy->world, "production");
    EXPECT_EQ(copy->rows, verifyLog(log)->rows);
    EXPECT_EQ(copy->head, verifyLog(log)->head);
    EXPECT_EQ(copy->bytes, static_cast<std::int64_t>(fs::file_size(copy->file)));
    EXPECT_EQ(readCopy(copy->file), *copy);
    EXPECT_EQ(namesIn(out), std::vector<std::string>{"copy.seamlog"})
        << "reading it leaves nothing";
    writer->submit(test::rowsOf(test::closedWeld(7)));
    ASSERT_TRUE(writer->flush().has_value());
}

// The judge is sqlite3's own shell: what it prints of both files, and its check of the copy.
TEST_F(Backup, IsTheSameToTheSqliteShell) {
    if (std::system("command -v sqlite3 >/dev/null") != 0) {
        GTEST_SKIP() << "the sqlite3 command line program is not installed";
    }
    ASSERT_TRUE(copyLog(log, inOut("a"), {}).has_value());
    CopyOptions page;
    page.way = CopyWay::PageByPage;
    ASSERT_TRUE(copyLog(log, inOut("b"), page).has_value());
    const auto printed = [&](const std::string& file, const std::string& sql) {
        const std::string answer = folder.file("answer");
        const std::string command = "sqlite3 '" + file + "' \"" + sql + "\" > '" + answer + "'";
        EXPECT_EQ(std::system(command.c_str()), 0);
        return test::textOf(answer);
    };
    const std::string all =
        "SELECT * FROM chain; SELECT chain, seq, hash, body, subject, n, kind FROM event; "
        "SELECT sha256, kind, hex(body) FROM document; SELECT * FROM head_signature; SELECT name, "
        "sql FROM sqlite_schema "
        "ORDER BY name; PRAGMA application_id; PRAGMA user_version;";
    for (const char* name : {"a", "b"}) {
        EXPECT_EQ(printed(inOut(name), all), printed(log, all)) << name;
        EXPECT_EQ(printed(inOut(name), "PRAGMA integrity_check"), "ok\n") << name;
        EXPECT_EQ(printed(inOut(name), "PRAGMA journal_mode"), "delete\n") << name;
    }
}

TEST_F(Backup, IsMadeOnceADay) {
    const auto first = backUpDay(log, "2030-01-07", {});
    ASSERT_TRUE(first.has_value()) << first.error().detail;
    ASSERT_TRUE(first->made.has_value());
    EXPECT_EQ(first->file, dailyName("2030-01-07"));
    EXPECT_EQ(first->made->file, first->file);
    const std::string bytes = test::textOf(first->file);
    {
        auto writer = LogWriter<Production>::open(log, clock, test::quick());
        ASSERT_TRUE(writer.has_value());
        writer->submit(test::rowsOf(test::closedWeld(6)));
    }
    const auto second = backUpDay(log, "2030-01-07", {});
    ASSERT_TRUE(second.has_value());
    EXPECT_FALSE(second->made.has_value());
    EXPECT_EQ(second->file, first->file);
    EXPECT_TRUE(test::textOf(first->file) == bytes);
    const auto next = backUpDay(log, "2030-01-08", {});
    ASSERT_TRUE(next.has_value() && next->made.has_value());
    EXPECT_GT(next->made->rows, first->made->rows);
    const auto again = backUpDay(log, "2030-01-07", {}, true);
    ASSERT_TRUE(again.has_value() && again->made.has_value());
    EXPECT_EQ(again->made->rows, next->made->rows);
    EXPECT_EQ(
        namesIn(backupFolderOf(log)),
        (std::vector<std::string>{backupName("2030-01-07", id), backupName("2030-01-08", id)}));
    EXPECT_EQ(backUpDay(log, "7 January", {}).error().code, ErrorCode::Malformed);
}

// ---- How many are kept

std::string dayPlus(int days) {
    const auto date = std::chrono::year_month_day(
        std::chrono::sys_days(
            std::chrono::year(2029) / std::chrono::January / std::chrono::day(1)) +
        std::chrono::days(days));
    char text[16];
    std::snprintf(
        text, sizeof text, "%04d-%02u-%02u", static_cast<int>(date.year()),
        static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return text;
}

std::vector<std::string> without(std::vector<std::string> days) {
    for (const std::string& dropped : daysToDrop(days)) {
        days.erase(std::find(days.begin(), days.end(), dropped));
    }
    std::sort(days.begin(), days.end());
    return days;
}

TEST(BackupsKept, AreFourteenDaysAndTheLastOfEachMonthForTwelveMonths) {
    std::vector<std::string> days;
    for (int i = 0; i < 1'000; ++i) {
        days.push_back(dayPlus(i)); // to 2031-09-27
    }
    EXPECT_EQ(
        without(days),
        (std::vector<std::string>{
            "2030-10-31", "2030-11-30", "2030-12-31", "2031-01-31", "2031-02-28", "2031-03-31",
            "2031-04-30", "2031-05-31", "2031-06-30", "2031-07-31", "2031-08-31", "2031-09-13",
            "2031-09-14", "2031-09-15", "2031-09-16", "2031-09-17", "2031-09-18", "2031-09-19",
            "2031-09-20", "2031-09-21", "2031-09-22", "2031-09-23", "2031-09-24", "2031-09-25",
            "2031-09-26", "2031-09-27"}));
}

TEST(BackupsKept, AreTheSameWhetherDroppedEachDayOrAtOnce) {
    std::vector<std::string> all;
    std::vector<std::string> kept;
    for (int i = 0; i < 1'200; ++i) {
        if (i % 7 == 6 || (i > 300 && i < 345)) {
            continue; // no work on Sundays and in a long holiday
        }
        all.push_back(dayPlus(i));
        kept.push_back(dayPlus(i));
        kept = without(kept);
        if (i % 20 == 0) {
            EXPECT_EQ(kept, without(all)) << dayPlus(i);
        }
        EXPECT_LE(kept.size(), kDaysKept + kMonthsKept);
        EXPECT_EQ(kept.back(), dayPlus(i));
    }
}

TEST(BackupsKept, AreCountedAndNotComparedWithToday) {
    EXPECT_TRUE(daysToDrop({}).empty());
    std::vector<std::string> few;
    for (int i = 0; i < 14; ++i) {
        few.push_back(dayPlus(i * 100)); // years apart, and all kept
    }
    EXPECT_TRUE(daysToDrop(few).empty());
    // A day on which the clock was wrong takes the place of one day, no more.
    few.push_back("2099-01-01");
    EXPECT_TRUE(daysToDrop(few).empty()) << "the oldest is the last of its month";
    few.push_back(few.front().substr(0, 8) + "02");
    EXPECT_EQ(daysToDrop(few), std::vector<std::string>{few.front()});
}

TEST_F(Backup, RemovesOnlyItsOwnThatAreNotKept) {
    ASSERT_TRUE(backUpDay(log, dayPlus(0), {}).has_value());
    for (int i = 1; i < 40; ++i) {
        fs::copy_file(dailyName(dayPlus(0)), dailyName(dayPlus(i)));
    }
    const std::string place = backupFolderOf(log) + "/";
    const std::vector<std::string> others = {
        backupName(dayPlus(3), "ffffffff-0000"), "2029-01-04.seamlog", "notes.txt",
        backupName("2029-1-4", id), backupName(dayPlus(3), id) + ".bak"};
    for (const std::string& name : others) {
        std::ofstream(place + name) << "of a person's own";
    }
    const auto made = backUpDay(log, dayPlus(40), {});
    ASSERT_TRUE(made.has_value()) << made.error().detail;
    std::vector<std::string> days;
    for (int i = 0; i <= 40; ++i) {
        days.push_back(dayPlus(i));
    }
    std::vector<std::string> expected = others;
    for (const std::string& day : without(days)) {
        expected.push_back(backupName(day, id));
    }
    std::sort(expected.begin(), expected.end());
    EXPECT_EQ(namesIn(backupFolderOf(log)), expected);
    EXPECT_EQ(made->removed.size(), daysToDrop(days).size());
    EXPECT_GT(made->removed.size(), 20U);
}

// ---- What may go wrong

TEST_F(Backup, CleansUpWhatAPowerCutLeft) {
    fs::create_directory(backupFolderOf(log));
    const std::string place = backupFolderOf(log) + "/";
    const std::string half = test::textOf(log).substr(0, 5'000);
    for (const std::string& name :
         {"." + backupName("2030-01-05", id) + ".part",
          "." + backupName("2030-01-07", id) + ".part",
          "." + backupName("2030-01-05", id) + ".part-journal"}) {
        std::ofstream(place + name, std::ios::binary) << half;
    }
    const std::string foreign = "." + backupName("2030-01-05", "ffffffff-1") + ".part";
    std::ofstream(place + foreign) << half;
    const auto made = backUpDay(log, "2030-01-07", {});
    ASSERT_TRUE(made.has_value()) << made.error().detail;
    EXPECT_EQ(
        namesIn(backupFolderOf(log)),
        (std::vector<std::string>{foreign, backupName("2030-01-07", id)}));
    expectSound(made->file);
}

TEST_F(Backup, OnAFullOrFailingDiskIsOneSentenceAndLeavesNothing) {
    ASSERT_TRUE(backUpDay(log, "2030-01-06", {}).has_value());
    const auto before = namesIn(backupFolderOf(log));
    const auto rows = contentRows(log);
    for (const Fault fault : {Fault::Full, Fault::Error}) {
        for (const CopyWay way : {CopyWay::Vacuumed, CopyWay::PageByPage}) {
            test::FaultyDisk disk;
            disk.set(fault);
            CopyOptions options;
            options.way = way;
            const auto made = backUpDay(log, "2030-01-07", options);
            ASSERT_FALSE(made.has_value());
            EXPECT_EQ(made.error().code, ErrorCode::NotWritten);
            EXPECT_NE(
                made.error().detail.find(
                    dailyName("2030-01-07") +
                    (fault == Fault::Full ? ": the disk is full" : ": the disk reports an error")),
                std::string::npos)
                << made.error().detail;
            EXPECT_EQ(namesIn(backupFolderOf(log)), before);
        }
    }
    EXPECT_EQ(contentRows(log), rows);
    EXPECT_TRUE(backUpDay(log, "2030-01-07", {})->made.has_value());
}

TEST_F(Backup, IsWholeOrNotThereWhicheverWriteFails) {
    for (const CopyWay way : {CopyWay::Vacuumed, CopyWay::PageByPage}) {
        CopyOptions options;
        options.way = way;
        std::int64_t writes = 0;
        {
            const test::FaultyDisk disk;
            ASSERT_TRUE(copyLog(log, inOut("counted"), options).has_value());
            writes = disk.writes();
        }
        ASSERT_GT(writes, 10);
        std::int64_t refused = 0;
        for (std::int64_t n = 1; n <= writes; n += std::max<std::int64_t>(1, writes / 40)) {
            test::FaultyDisk disk;
            disk.failOnce(n);
            const auto copy = copyLog(log, inOut("copy"), options);
            if (copy) {
                EXPECT_EQ(contentRows(inOut("copy")), contentRows(log)) << n;
                fs::remove(inOut("copy"));
            } else {
                ++refused;
                EXPECT_EQ(copy.error().code, ErrorCode::NotWritten) << copy.error().detail;
            }
            EXPECT_EQ(namesIn(out), std::vector<std::string>{"counted"}) << n;
        }
        EXPECT_GT(refused, 5);
        fs::remove(inOut("counted"));
    }
}

TEST_F(Backup, LeavesRoomForTheLog) {
    CopyOptions options;
    options.reserveBytes = INT64_MAX / 2;
    const auto made = backUpDay(log, "2030-01-07", options);
    ASSERT_FALSE(made.has_value());
    EXPECT_EQ(made.error().code, ErrorCode::NotWritten);
    EXPECT_NE(
        made.error().detail.find(" MB free, and a copy of this log takes up to 1 MB and must "
                                 "leave 4611686018428 MB free"),
        std::string::npos)
        << made.error().detail;
    EXPECT_TRUE(namesIn(backupFolderOf(log)).empty());
}

struct BadPlace {
    const char* name;
    std::string target;
    ErrorCode code;
    std::string words;
};

TEST_F(Backup, OverwritesNothing) {
    std::ofstream(inOut("notes")) << "a person's own";
    fs::create_directory(inOut("folder"));
    fs::create_symlink("nowhere", inOut("link"));
    const std::string other = folder.file("other.seamlog");
    test::writeSampleLog(other, clock);
    ASSERT_TRUE(copyLog(other, inOut("of another"), {}).has_value());
    const std::string sparedBytes = test::textOf(inOut("of another"));
    const std::vector<BadPlace> places = {
        {"a file", inOut("notes"), ErrorCode::Conflict, "is there already"},
        {"a folder", inOut("folder"), ErrorCode::NotWritten, "is a folder"},
        {"a folder's name", out + "/", ErrorCode::NotWritten, "is a folder"},
        {"a link to nowhere", inOut("link"), ErrorCode::Conflict, "is there already"},
        {"the log itself", log, ErrorCode::Conflict, "is the log itself"},
        {"another log", other, ErrorCode::Conflict, "is there already"},
        {"another's copy", inOut("of another"), ErrorCode::Conflict, "is there already"},
        {"no folder", inOut("gone/a"), ErrorCode::NotWritten, "is not there"}};
    for (const bool replace : {false, true}) {
        for (const BadPlace& place : places) {
            CopyOptions options;
            options.replace = replace;
            const auto copy = copyLog(log, place.target, options);
            ASSERT_FALSE(copy.has_value()) << place.name;
            EXPECT_EQ(copy.error().code, place.code) << place.name << copy.error().detail;
            EXPECT_NE(copy.error().detail.find(place.words), std::string::npos)
                << place.name << ": " << copy.error().detail;
        }
    }
    EXPECT_EQ(test::textOf(inOut("notes")), "a person's own");
    EXPECT_TRUE(test::textOf(inOut("of another")) == sparedBytes);
    expectSound(other);
    expectSound(log);
}

TEST_F(Backup, TellsWhereItsFolderIsAFile) {
    std::ofstream(backupFolderOf(log)) << "in the way";
    const auto made = backUpDay(log, "2030-01-07", {});
    ASSERT_FALSE(made.has_value());
    EXPECT_EQ(made.error().code, ErrorCode::NotWritten);
    EXPECT_NE(made.error().detail.find(backupFolderOf(log) + ": can't be made"), std::string::npos)
        << made.error().detail;
    fs::remove(backupFolderOf(log));
    fs::create_directory(backupFolderOf(log));
    std::ofstream(dailyName("2030-01-07")) << "in the way";
    const auto there = backUpDay(log, "2030-01-07", {});
    ASSERT_FALSE(there.has_value());
    EXPECT_EQ(there.error().code, ErrorCode::Conflict);
    EXPECT_EQ(test::textOf(dailyName("2030-01-07")), "in the way");
}

TEST_F(Backup, OfADamagedLogIsRefused) {
    std::string bytes = test::textOf(log);
    std::fill(
        bytes.begin() + static_cast<std::ptrdiff_t>(bytes.size() / 3),
        bytes.begin() + static_cast<std::ptrdiff_t>(bytes.size() / 3 + 40'000), '\x5a');
    const std::string damaged = folder.file("damaged.seamlog");
    std::ofstream(damaged, std::ios::binary) << bytes;
    const auto copy = copyLog(damaged, inOut("copy"), {});
    ASSERT_FALSE(copy.has_value());
    EXPECT_EQ(copy.error().code, ErrorCode::Damaged) << copy.error().detail;
    EXPECT_EQ(copy.error().detail.find(damaged), 0U) << copy.error().detail;
    EXPECT_TRUE(namesIn(out).empty());
    EXPECT_EQ(copyLog(folder.file("gone"), inOut("copy"), {}).error().code, ErrorCode::Unreadable);
}

TEST_F(Backup, CanBeStopped) {
    for (const CopyWay way : {CopyWay::Vacuumed, CopyWay::PageByPage}) {
        CopyStop stop;
        stop.stop();
        CopyOptions options;
        options.way = way;
        options.stop = &stop;
        const auto copy = copyLog(log, inOut("copy"), options);
        ASSERT_FALSE(copy.has_value());
        EXPECT_NE(copy.error().detail.find("stopped"), std::string::npos) << copy.error().detail;
        EXPECT_TRUE(namesIn(out).empty());
    }
}

// ---- Restored

TEST_F(Backup, RestoredIsTheLogAgainAndGoesOn) {
    const auto copy = copyLog(log, inOut("copy"), {});
    ASSERT_TRUE(copy.has_value());
    const auto rows = contentRows(log);
    const std::string content = test::contentOf(log);
    const std::string again = folder.file("again.seamlog");
    const auto restored = restoreLog(inOut("copy"), again);
    ASSERT_TRUE(restored.has_value()) << restored.error().detail;
    EXPECT_EQ(restored->file, again);
    EXPECT_EQ(restored->head, copy->head);
    EXPECT_FALSE(inspectLogFile(again)->published) << "it is a log, not a copy";
    expectSound(again);
    EXPECT_EQ(contentRows(again), rows);
    EXPECT_EQ(test::contentOf(again), content);
    auto before = LogReader::open(log);
    auto after = LogReader::open(again);
    for (std::int64_t number = 1; number <= 5; ++number) {
        EXPECT_EQ(
            after->weldEvents(test::weldName(number)).value(),
            before->weldEvents(test::weldName(number)).value());
    }
    {
        auto writer = LogWriter<Production>::open(again, clock, test::quick());
        ASSERT_TRUE(writer.has_value()) << writer.error().detail;
        EXPECT_EQ(writer->origin(), LogOrigin::Known);
        EXPECT_EQ(writer->logId(), id);
        writer->submit(test::rowsOf(test::closedWeld(6)));
        ASSERT_TRUE(writer->flush().has_value());
    }
    expectSound(again);
}

TEST_F(Backup, RestoredOverwritesNothing) {
    ASSERT_TRUE(copyLog(log, inOut("copy"), {}).has_value());
    const auto expectConflict = [&](const std::string& place, const std::string& words) {
        const auto restored = restoreLog(inOut("copy"), place);
        ASSERT_FALSE(restored.has_value());
        EXPECT_EQ(restored.error().code, ErrorCode::Conflict) << restored.error().detail;
        EXPECT_NE(restored.error().detail.find(words), std::string::npos)
            << restored.error().detail;
    };
    expectConflict(log, "a log is never overwritten");
    const std::string place = folder.file("again.seamlog");
    std::ofstream(place + "-wal") << "of the log that stood here";
    expectConflict(place, "-wal: belongs to a log that stood here");
    fs::remove(place + "-wal");
    {
        auto spill = SpillFile::open(place + ".spill", id, 4'096);
        ASSERT_TRUE(spill->append({test::stationRow(9)}, {}).has_value());
    }
    expectConflict(place, ".spill: holds rows of a log that stood here");
    fs::remove(place + ".spill");
    {
        const auto held = lockFor(place);
        expectConflict(place, "another program is writing this log");
    }
    EXPECT_FALSE(fs::exists(place));
    EXPECT_EQ(restoreLog(inOut("copy"), folder.file("gone/a")).error().code, ErrorCode::NotWritten);
    EXPECT_TRUE(restoreLog(inOut("copy"), place).has_value());
    expectSound(log);
}

TEST_F(Backup, ThatIsDamagedIsNotRestored) {
    const std::string place = folder.file("again.seamlog");
    const auto expectDamaged = [&](const std::string& copy) {
        const auto restored = restoreLog(copy, place);
        ASSERT_FALSE(restored.has_value()) << copy;
        EXPECT_EQ(restored.error().code, ErrorCode::Damaged) << restored.error().detail;
        EXPECT_EQ(restored.error().detail.find(copy), 0U) << restored.error().detail;
        EXPECT_FALSE(fs::exists(place)) << copy;
    };
    const auto changed = [&](const std::string& sql) {
        const std::string copy = inOut("copy");
        fs::remove(copy);
        EXPECT_TRUE(copyLog(log, copy, {}).has_value());
        test::BehindTheBack(copy).database().exec(sql);
        return copy;
    };
    expectDamaged(
        changed("UPDATE event SET body = replace(body, '\"v\":1', '\"v\":2') WHERE seq = 20"));
    expectDamaged(changed("DELETE FROM event WHERE seq = (SELECT max(seq) FROM event)"));
    expectDamaged(changed("UPDATE chain SET head = genesis"));
    expectDamaged(changed("DELETE FROM document"));
    const std::string cut = changed("SELECT 1");
    fs::resize_file(cut, fs::file_size(cut) / 2);
    expectDamaged(cut);
    EXPECT_EQ(restoreLog(inOut("gone"), place).error().code, ErrorCode::Unreadable);
    std::ofstream(inOut("text")) << std::string(400, 'x');
    EXPECT_EQ(restoreLog(inOut("text"), place).error().code, ErrorCode::Unreadable);
}

TEST_F(Backup, RestoredOnAFullDiskLeavesNoLog) {
    ASSERT_TRUE(copyLog(log, inOut("copy"), {}).has_value());
    const std::string place = inOut("again.seamlog");
    {
        test::FaultyDisk disk;
        disk.set(Fault::Full);
        const auto restored = restoreLog(inOut("copy"), place);
        ASSERT_FALSE(restored.has_value());
        EXPECT_EQ(restored.error().code, ErrorCode::NotWritten) << restored.error().detail;
    }
    EXPECT_EQ(namesIn(out), (std::vector<std::string>{"again.seamlog.lock", "copy"}));
    EXPECT_TRUE(restoreLog(inOut("copy"), place).has_value());
}

// A log of the first version is copied as it is, and restored it comes to this program's version.
TEST_F(Backup, OfAnOlderLogIsRestoredToo) {
    const std::string old = folder.file("old.seamlog");
    fs::copy_file(std::string(SEAMCLOCK_SOURCE_DIR) + "/tests/data/log-v1.log", old);
    ASSERT_TRUE(copyLog(old, inOut("copy"), {}).has_value());
    const std::string again = folder.file("again.seamlog");
    const auto restored = restoreLog(inOut("copy"), again);
    ASSERT_TRUE(restored.has_value()) << restored.error().detail;
    EXPECT_EQ(test::chainRows(again, 1), test::chainRows(old, 1));
    EXPECT_EQ(test::contentOf(again), test::contentOf(old));
}

} // namespace
} // namespace seamclock
