#include "core/rescue/set_aside.h"

#include "core/log/log_reader.h"
#include "core/log/recover.h"
#include "core/log/verify.h"
#include "core/rescue/salvage.h"
#include "tests/core/rescue/damage.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/log_samples.h"
#include "tests/support/sanitized.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

using test::closedWeld;
using test::quick;
using test::rowsOf;
using test::unfinishedWeld;
using test::weldName;

class SetAsideTest : public ::testing::Test {
protected:
    Result<OpenedLog<Production>> open(const std::vector<LogDocument>& known = {}) {
        return openLog<Production>(path, clock, known, quick());
    }
    /// Five welds, of which the last is open with nine events.
    void writeLog() { test::writeSampleLog(path, clock); }

    /// A body's first letters are changed wherever it stands in the file.
    void spoil(const std::string& body, const std::string& word, const std::string& other) {
        std::string bytes = test::textOf(path);
        int changed = 0;
        for (auto at = bytes.find(body); at != std::string::npos; at = bytes.find(body, at + 1)) {
            const auto inside = body.find(word);
            ASSERT_NE(inside, std::string::npos);
            bytes.replace(at + inside, word.size(), other);
            ++changed;
        }
        ASSERT_GT(changed, 0);
        std::ofstream(path, std::ios::binary) << bytes;
    }
    void spoilHeader() {
        std::string bytes = test::textOf(path);
        bytes.replace(0, 20, std::string(20, '\0'));
        std::ofstream(path, std::ios::binary) << bytes;
    }
    /// All of a page that holds this, and where: it is a page of zeros afterwards.
    void zeroPageOf(const std::string& text) {
        std::string bytes = test::textOf(path);
        for (auto at = bytes.find(text); at != std::string::npos; at = bytes.find(text)) {
            const auto page = at / 4096 * 4096;
            std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(page), 4096, '\0');
        }
        std::ofstream(path, std::ios::binary) << bytes;
    }
    /// A log of one weld whose newest row stands in a torn transaction of the write-ahead log.
    void leaveTornEnd() {
        const std::string source = folder.file("b.log");
        const auto rows = rowsOf(unfinishedWeld(1, kTornEvents));
        {
            auto writer = LogWriter<Production>::open(source, clock, quick());
            ASSERT_TRUE(writer);
            for (const LogRow& row : rows) {
                writer->submit({row}, test::sampleDocuments());
                ASSERT_TRUE(writer->flush());
            }
            fs::copy_file(source, path);
            fs::copy_file(source + "-wal", path + "-wal");
        }
        // The write-ahead log ends with the transaction of the newest row, of which another page
        // than the row's is torn. A frame is 24 bytes and a page; its second word is 0 but for the
        // last of a transaction (https://www.sqlite.org/fileformat2.html, "WAL File Format").
        std::string wal = test::textOf(path + "-wal");
        const auto newest = wal.rfind(rows.back().body);
        ASSERT_NE(newest, std::string::npos);
        constexpr std::size_t kFrame = 24 + 4096;
        const std::size_t ofRow = (newest - 32) / kFrame;
        const auto isLast = [&](std::size_t frame) {
            return wal.substr(32 + frame * kFrame + 4, 4) != std::string(4, '\0');
        };
        std::size_t last = ofRow;
        while (!isLast(last)) {
            ++last;
        }
        const std::size_t torn = last > ofRow ? last : ofRow - 1;
        ASSERT_TRUE(torn == last || !isLast(torn)) << "a transaction of one page";
        wal.resize(32 + (last + 1) * kFrame);
        const std::size_t byte = 32 + torn * kFrame + 24 + 2000;
        wal[byte] = static_cast<char>(~wal[byte]);
        std::ofstream(path + "-wal", std::ios::binary) << wal;
    }
    static constexpr int kTornEvents = 7;
    std::vector<std::string> bodies(const std::string& subject) {
        return LogReader::open(path).value().bodies(subject).value();
    }
    void expectSound() {
        const auto report = verifyLog(path);
        ASSERT_TRUE(report.has_value()) << report.error().detail;
        EXPECT_TRUE(report->ok) << report->finding->reason;
    }
    std::vector<std::string> names() {
        std::vector<std::string> out;
        for (const auto& entry : fs::directory_iterator(folder.path())) {
            out.push_back(entry.path().filename().string());
        }
        std::sort(out.begin(), out.end());
        return out;
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    std::string path = folder.file("a.log");
};

TEST_F(SetAsideTest, ASoundLogAndANewOneAreSimplyOpened) {
    {
        const auto opened = open();
        ASSERT_TRUE(opened) << opened.error().detail;
        EXPECT_FALSE(opened->aside);
        EXPECT_EQ(opened->writer.origin(), LogOrigin::New);
    }
    const auto opened = open();
    ASSERT_TRUE(opened);
    EXPECT_FALSE(opened->aside);
    EXPECT_EQ(opened->writer.origin(), LogOrigin::Known);
    EXPECT_EQ(highestNumberAside(path), 0);
}

TEST_F(SetAsideTest, ADamagedHeaderCostsNothingTheSameChainGoesOn) {
    writeLog();
    const auto report = verifyLog(path).value();
    const auto lines = LogReader::open(path)->joints({}).value();
    spoilHeader();
    const std::string damaged = test::textOf(path);
    {
        auto opened = open();
        ASSERT_TRUE(opened) << opened.error().detail;
        ASSERT_TRUE(opened->aside);
        EXPECT_TRUE(opened->aside->sameChain);
        EXPECT_EQ(opened->aside->lostRows, 0);
        EXPECT_EQ(opened->aside->rows, report.rows);
        EXPECT_EQ(opened->aside->damaged, path + ".damaged-20300107T060000Z");
        EXPECT_EQ(test::textOf(opened->aside->damaged), damaged);
        ASSERT_EQ(opened->aside->welds.size(), 1U);
        EXPECT_EQ(opened->aside->welds[0].weld, weldName(5));
        EXPECT_EQ(opened->aside->welds[0].number, 5);
        EXPECT_EQ(opened->aside->welds[0].events, 9);
        EXPECT_TRUE(opened->aside->welds[0].whole());
        EXPECT_EQ(opened->writer.logId(), report.logId);
    }
    const auto after = verifyLog(path).value();
    EXPECT_TRUE(after.ok);
    EXPECT_EQ(after.head, report.head);
    EXPECT_EQ(after.rows, report.rows);
    EXPECT_EQ(LogReader::open(path)->joints({}).value(), lines);
    EXPECT_FALSE(open()->aside) << "it is told once";
}

TEST_F(SetAsideTest, ALostClosedWeldIsNamedAndTheOthersAreInANewChain) {
    writeLog();
    const std::string id = LogReader::open(path)->logId();
    spoil(rowsOf(closedWeld(2))[4].body, "\"v\":1", "\"v\":7");
    spoilHeader();
    {
        auto opened = open();
        ASSERT_TRUE(opened) << opened.error().detail;
        ASSERT_TRUE(opened->aside);
        EXPECT_FALSE(opened->aside->sameChain);
        EXPECT_NE(opened->writer.logId(), id);
        EXPECT_EQ(opened->aside->highestNumber, 5);
        ASSERT_EQ(opened->aside->welds.size(), 2U);
        const SetAsideWeld& lost = opened->aside->welds[0];
        EXPECT_EQ(lost.weld, weldName(2));
        EXPECT_FALSE(lost.taken);
        EXPECT_EQ(lost.lost, std::vector<std::int64_t>{5});
        EXPECT_EQ(lost.apart.size(), closedWeld(2).size() - 5);
        EXPECT_TRUE(opened->aside->welds[1].open);
        const std::string note = test::textOf(opened->aside->note);
        EXPECT_NE(note.find("highest joint number: 5"), std::string::npos) << note;
        EXPECT_NE(note.find("joint 2 ("), std::string::npos) << note;
        EXPECT_NE(
            note.find("lost: event 5; to be read in the damaged log only: event 6 to"),
            std::string::npos)
            << note;
    }
    EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(1)).value(), closedWeld(1));
    EXPECT_TRUE(bodies(weldName(2)).empty());
    EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(3)).value(), closedWeld(3));
    EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(5)).value(), unfinishedWeld(5, 9));
    EXPECT_EQ(recoverOpenWelds(path)->size(), 1U);
    EXPECT_EQ(bodies("bench:bench-a").size(), 1U);
    expectSound();
}

TEST_F(SetAsideTest, AnOpenWeldComesBackToItsFirstLostEvent) {
    writeLog();
    const auto rows = rowsOf(unfinishedWeld(5, 9));
    // A changed body is still JSON: only the chain tells.
    spoil(rows[6].body, "\"boot_ms\":", "\"boot_nn\":");
    {
        auto opened = open();
        ASSERT_TRUE(opened) << opened.error().detail;
        ASSERT_TRUE(opened->aside);
        ASSERT_EQ(opened->aside->welds.size(), 1U);
        const SetAsideWeld& weld = opened->aside->welds[0];
        EXPECT_TRUE(weld.open);
        EXPECT_FALSE(weld.whole());
        EXPECT_EQ(weld.events, 6);
        EXPECT_EQ(weld.lost, std::vector<std::int64_t>{7});
        EXPECT_EQ(weld.apart, (std::vector<std::int64_t>{8, 9}));
    }
    EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(5)).value(), unfinishedWeld(5, 6));
    expectSound();
}

TEST_F(SetAsideTest, AChangedRowOfAnOpenWeldIsFoundAtTheStart) {
    writeLog();
    // One digit of an instant: the file's structure and the JSON are as they were.
    const auto rows = rowsOf(unfinishedWeld(5, 9));
    const auto at = rows[8].body.find("\"boot_ms\":") + 10;
    std::string changed = rows[8].body;
    changed[at] = changed[at] == '9' ? '8' : '9';
    std::string bytes = test::textOf(path);
    bytes.replace(bytes.find(rows[8].body), changed.size(), changed);
    std::ofstream(path, std::ios::binary) << bytes;
    const auto plain = LogWriter<Production>::open(path, clock, quick());
    ASSERT_FALSE(plain);
    EXPECT_EQ(plain.error().code, ErrorCode::Damaged);
    EXPECT_NE(
        plain.error().detail.find(weldName(5) + ", is not what was written"), std::string::npos)
        << plain.error().detail;
    const auto opened = open();
    ASSERT_TRUE(opened) << opened.error().detail;
    ASSERT_EQ(opened->aside->welds.size(), 1U);
    EXPECT_EQ(opened->aside->welds[0].lost, std::vector<std::int64_t>{9});
    EXPECT_EQ(opened->aside->welds[0].events, 8);
}

TEST_F(SetAsideTest, RowsOfTheSpillFileComeBackToo) {
    const auto rows = rowsOf(unfinishedWeld(6, 8));
    for (const bool chainLost : {false, true}) {
        for (const std::string& name : names()) {
            fs::remove(folder.file(name));
        }
        writeLog();
        {
            test::FaultyDisk disk;
            auto writer = LogWriter<Production>::open(path, clock, quick());
            ASSERT_TRUE(writer);
            writer->submit({rows.begin(), rows.begin() + 4}, test::sampleDocuments());
            ASSERT_TRUE(writer->flush());
            disk.set(test::FaultyDisk::Fault::Full);
            writer->submit({rows.begin() + 4, rows.end()});
            ASSERT_FALSE(writer->flush());
        }
        if (chainLost) {
            spoil(rowsOf(closedWeld(2))[4].body, "\"v\":1", "\"v\":7");
        }
        spoilHeader();
        {
            const auto opened = open();
            ASSERT_TRUE(opened) << opened.error().detail;
            ASSERT_TRUE(opened->aside);
            EXPECT_EQ(opened->aside->sameChain, !chainLost);
            EXPECT_TRUE(fs::exists(opened->aside->damaged + ".spill"));
        }
        EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(6)).value(), unfinishedWeld(6, 8));
        expectSound();
    }
}

TEST_F(SetAsideTest, ALostDocumentIsTakenFromWhatTheProgramHas) {
    writeLog();
    const auto documents = test::sampleDocuments();
    spoil(documents[1].bytes, "bench-a", "bench-z");
    spoilHeader();
    const std::string damaged = test::textOf(path);
    {
        const auto opened = open({documents[1]});
        ASSERT_TRUE(opened) << opened.error().detail;
        EXPECT_EQ(LogReader::open(path)->document(documents[1].sha256).value(), documents[1]);
        EXPECT_EQ(recoverOpenWelds(path)->size(), 1U);
    }
    expectSound();
    // Without it the welds are there all the same, and what is lost is named, by verify too.
    for (const std::string& name : names()) {
        fs::remove(folder.file(name));
    }
    std::ofstream(path, std::ios::binary) << damaged;
    const auto opened = open();
    ASSERT_TRUE(opened) << opened.error().detail;
    ASSERT_TRUE(opened->aside);
    const auto& welds = opened->aside->welds;
    EXPECT_EQ(
        std::count_if(
            welds.begin(), welds.end(),
            [](const SetAsideWeld& weld) { return weld.documentsLost && weld.taken; }),
        6); // the bench's own fact among them
    EXPECT_NE(
        test::textOf(opened->aside->note).find("a document that it names is lost"),
        std::string::npos);
    EXPECT_EQ(recoverOpenWelds(path)->size(), 1U);
    const auto verified = verifyLog(path);
    ASSERT_TRUE(verified && verified->finding);
    EXPECT_NE(verified->finding->reason.find(documents[1].sha256), std::string::npos);
}

TEST_F(SetAsideTest, NothingIsOverwrittenHoweverOftenItHappens) {
    std::vector<std::string> seen;
    for (int i = 0; i < 3; ++i) {
        if (i == 0) {
            writeLog();
        }
        spoilHeader();
        const std::string damaged = test::textOf(path);
        const auto opened = open();
        ASSERT_TRUE(opened) << opened.error().detail;
        ASSERT_TRUE(opened->aside);
        EXPECT_EQ(test::textOf(opened->aside->damaged), damaged);
        seen.push_back(opened->aside->damaged);
        for (const std::string& name : seen) {
            EXPECT_TRUE(fs::exists(name));
        }
    }
    EXPECT_EQ(seen[1], seen[0] + "-2");
    EXPECT_EQ(seen[2], seen[0] + "-3");
    expectSound();
}

TEST_F(SetAsideTest, OnlyADamagedLogOfThisWorldIsMoved) {
    const auto expectLeft = [&](const std::string& words) {
        const std::string before = fs::is_directory(path) ? "" : test::textOf(path);
        const auto opened = open();
        ASSERT_FALSE(opened) << words;
        EXPECT_NE(opened.error().detail.find(words), std::string::npos) << opened.error().detail;
        if (!fs::is_directory(path)) {
            EXPECT_EQ(test::textOf(path), before);
        }
        for (const std::string& name : names()) {
            EXPECT_EQ(name.find("damaged"), std::string::npos) << name;
        }
        for (const std::string& name : names()) {
            fs::remove_all(folder.file(name));
        }
    };
    std::ofstream(path) << std::string(5000, 'x');
    expectLeft("not a database");
    std::ofstream(path).close();
    expectLeft("0 bytes");
    fs::create_directory(path);
    expectLeft("is a folder");
    SQLite::Database(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
        .exec("CREATE TABLE recipes(name TEXT)");
    expectLeft("not a joint log");
    {
        const auto practice = LogWriter<Practice>::open(path, clock, quick());
        ASSERT_TRUE(practice);
    }
    expectLeft("is a practice log");
    {
        const auto practice = LogWriter<Practice>::open(path, clock, quick());
        ASSERT_TRUE(practice);
    }
    spoilHeader(); // a damaged one of the other world
    expectLeft("not a database");
    writeLog();
    SQLite::Database(path, SQLite::OPEN_READWRITE).exec("PRAGMA user_version=9");
    expectLeft("newer program");
}

TEST_F(SetAsideTest, AFileThatWasEmptiedBesideItsSpillFileWasALog) {
    writeLog();
    std::ofstream(path, std::ios::binary | std::ios::trunc).close();
    const auto opened = open();
    ASSERT_TRUE(opened) << opened.error().detail;
    ASSERT_TRUE(opened->aside);
    EXPECT_EQ(opened->aside->rows, 0);
    EXPECT_TRUE(fs::exists(opened->aside->damaged));
}

TEST_F(SetAsideTest, AWriteAheadLogWithoutItsFileIsNoReasonToForgetIt) {
    const auto rows = rowsOf(unfinishedWeld(7, 6));
    {
        auto writer = LogWriter<Production>::open(path, clock, quick());
        ASSERT_TRUE(writer);
        for (const LogRow& row : rows) {
            writer->submit({row}, test::sampleDocuments());
        }
        ASSERT_TRUE(writer->flush());
        fs::copy_file(path + "-wal", folder.file("kept"));
    }
    fs::remove(path);
    fs::rename(folder.file("kept"), path + "-wal");
    const auto opened = open();
    ASSERT_TRUE(opened) << opened.error().detail;
    ASSERT_TRUE(opened->aside);
    EXPECT_TRUE(fs::exists(opened->aside->damaged + "-wal"));
    EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(7)).value(), unfinishedWeld(7, 6));
}

TEST_F(SetAsideTest, AnOpenedDamagedLogIsLeftAsItIs) {
    const std::string source = folder.file("b.log");
    {
        auto writer = LogWriter<Production>::open(source, clock, quick());
        ASSERT_TRUE(writer);
        for (const LogRow& row : rowsOf(closedWeld(1))) {
            writer->submit({row}, test::sampleDocuments());
        }
        ASSERT_TRUE(writer->flush());
        fs::copy_file(source, path);
        fs::copy_file(source + "-wal", path + "-wal");
    }
    std::string wal = test::textOf(path + "-wal");
    wal[wal.size() / 2] = static_cast<char>(~wal[wal.size() / 2]);
    std::ofstream(path + "-wal", std::ios::binary) << wal;
    const std::string log = test::textOf(path);
    const auto writer = LogWriter<Production>::open(path, clock, quick());
    ASSERT_FALSE(writer);
    EXPECT_EQ(writer.error().code, ErrorCode::Damaged);
    EXPECT_NE(
        writer.error().detail.find("-wal: is damaged, and whole transactions stand behind that"),
        std::string::npos)
        << writer.error().detail;
    EXPECT_EQ(test::textOf(path), log);
    EXPECT_EQ(test::textOf(path + "-wal"), wal);
}

TEST_F(SetAsideTest, ALogOfWhichTheFirstPageIsLeftSaysThatNothingTellsHowMuchIsLost) {
    writeLog();
    fs::resize_file(path, 6'000);
    const auto opened = open();
    ASSERT_TRUE(opened) << opened.error().detail;
    ASSERT_TRUE(opened->aside);
    EXPECT_FALSE(opened->aside->endKnown);
    EXPECT_TRUE(opened->aside->welds.empty());
    const auto said = sentencesOf(*opened->aside);
    EXPECT_NE(
        std::find(
            said.begin(), said.end(),
            "Nothing left of it tells how many rows it held; welds may be lost that nothing "
            "names."),
        said.end());
    EXPECT_NE(
        test::textOf(opened->aside->note).find("nothing left of it tells how many it held"),
        std::string::npos);
    EXPECT_EQ(test::textOf(opened->aside->damaged).size(), 6'000U);
    expectSound();
}

TEST_F(SetAsideTest, ALogThatLostRowsInItsMiddleKnowsItsEnd) {
    writeLog();
    zeroPageOf(bodies(weldName(2)).at(3));
    const auto opened = open();
    ASSERT_TRUE(opened) << opened.error().detail;
    ASSERT_TRUE(opened->aside);
    EXPECT_TRUE(opened->aside->endKnown);
    EXPECT_GT(opened->aside->lostRows, 0);
}

TEST_F(SetAsideTest, ATornLastTransactionIsTakenAsItsRowsWereGiven) {
    leaveTornEnd();
    {
        auto opened = open();
        ASSERT_TRUE(opened) << opened.error().detail;
        EXPECT_FALSE(opened->aside);
        ASSERT_TRUE(opened->writer.flush());
    }
    EXPECT_EQ(
        LogReader::open(path)->weldEvents(weldName(1)).value(), unfinishedWeld(1, kTornEvents));
    expectSound();
}

TEST_F(SetAsideTest, ATornLastTransactionWaitsBesideADiskThatIsFull) {
    leaveTornEnd();
    {
        test::FaultyDisk disk;
        disk.set(test::FaultyDisk::Fault::Full);
        auto opened = open();
        ASSERT_TRUE(opened) << opened.error().detail;
        EXPECT_FALSE(opened->aside);
        EXPECT_EQ(opened->writer.status(weldName(1), kTornEvents), RowStatus::Spilled);
        const auto welds = recoverOpenWelds(path);
        ASSERT_TRUE(welds) << welds.error().detail;
        ASSERT_EQ(welds->size(), 1U);
        ASSERT_TRUE(welds->front().weld) << welds->front().weld.error().detail;
        EXPECT_EQ(welds->front().weld->events, unfinishedWeld(1, kTornEvents));
        disk.set(test::FaultyDisk::Fault::None);
        ASSERT_TRUE(opened->writer.flush());
    }
    EXPECT_EQ(
        LogReader::open(path)->weldEvents(weldName(1)).value(), unfinishedWeld(1, kTornEvents));
    expectSound();
}

TEST_F(SetAsideTest, APowerCutAtAnyMomentOfTheMoveIsFinishedAtTheNextStart) {
    // The move is made of renames; each state that a cut can leave is made here by hand.
    writeLog();
    spoilHeader();
    const test::ScratchFolder before;
    const std::string damaged = test::textOf(path);
    const std::string spill = test::textOf(path + ".spill");
    std::string name;
    std::string note;
    {
        const auto opened = open();
        ASSERT_TRUE(opened) << opened.error().detail;
        name = opened->aside->damaged;
        note = test::textOf(opened->aside->note);
    }
    const std::string fresh = test::textOf(path);
    for (int moved = 0; moved <= 2; ++moved) {
        SCOPED_TRACE(moved);
        for (const std::string& one : names()) {
            fs::remove(folder.file(one));
        }
        std::ofstream(name + ".new", std::ios::binary) << fresh;
        std::ofstream(name + ".txt", std::ios::binary) << note;
        std::ofstream((moved >= 1 ? name : path) + ".spill", std::ios::binary) << spill;
        std::ofstream(moved >= 2 ? name : path, std::ios::binary) << damaged;
        {
            const auto opened = open();
            ASSERT_TRUE(opened) << opened.error().detail;
            ASSERT_TRUE(opened->aside);
            EXPECT_TRUE(opened->aside->finished);
            EXPECT_EQ(opened->aside->note, name + ".txt");
        }
        EXPECT_EQ(test::textOf(name), damaged);
        EXPECT_EQ(test::textOf(name + ".spill"), spill);
        EXPECT_FALSE(fs::exists(name + ".new"));
        EXPECT_EQ(recoverOpenWelds(path)->size(), 1U);
        expectSound();
    }
    // Before the note is there nothing counts yet: it begins again.
    for (const std::string& one : names()) {
        fs::remove(folder.file(one));
    }
    std::ofstream(name + ".new", std::ios::binary) << "half";
    std::ofstream(name + ".work", std::ios::binary) << "half";
    std::ofstream(path, std::ios::binary) << damaged;
    const auto opened = open();
    ASSERT_TRUE(opened) << opened.error().detail;
    ASSERT_TRUE(opened->aside);
    EXPECT_FALSE(opened->aside->finished);
    EXPECT_EQ(test::textOf(opened->aside->damaged), damaged);
    EXPECT_FALSE(fs::exists(name + ".work"));
}

TEST_F(SetAsideTest, OnAFullDiskTheDamagedLogStaysWhereItIs) {
    writeLog();
    spoilHeader();
    const std::string damaged = test::textOf(path);
    {
        test::FaultyDisk disk;
        disk.set(test::FaultyDisk::Fault::Full);
        const auto opened = open();
        ASSERT_FALSE(opened);
        EXPECT_EQ(opened.error().code, ErrorCode::NotWritten);
        EXPECT_NE(opened.error().detail.find("can't be set aside"), std::string::npos)
            << opened.error().detail;
        EXPECT_EQ(test::textOf(path), damaged);
    }
    EXPECT_EQ(names(), (std::vector<std::string>{"a.log", "a.log.lock", "a.log.spill"}));
    EXPECT_TRUE(open()->aside);
}

/// A file of the folder has these bytes.
bool isKept(const std::string& folder, const std::string& bytes) {
    const fs::directory_iterator files(folder);
    return std::any_of(begin(files), end(files), [&](const fs::directory_entry& file) {
        return file.file_size() == bytes.size() && test::textOf(file.path().string()) == bytes;
    });
}

TEST_F(SetAsideTest, ADiskThatFailsAtAnyMomentCostsNeitherTheDamagedLogNorARowOfTheNew) {
    writeLog();
    spoil(rowsOf(closedWeld(2))[4].body, "\"v\":1", "\"v\":7");
    spoilHeader();
    const std::string damaged = test::textOf(path);
    int refused = 0;
    for (const bool whole : {false, true}) { // the disk is lost, or one write of it
        std::int64_t most = 1;
        for (std::int64_t n = 0; n <= most;
             n += n == 0 ? 1 : std::max<std::int64_t>(1, most / 60)) {
            SCOPED_TRACE((whole ? "access " : "write ") + std::to_string(n));
            for (const std::string& one : names()) {
                fs::remove(folder.file(one));
            }
            std::ofstream(path, std::ios::binary) << damaged;
            {
                test::FaultyDisk disk;
                whole ? disk.loseAt(n) : disk.failOnce(n);
                const auto opened = open();
                refused += opened ? 0 : 1;
                most = n == 0 ? (whole ? disk.accesses() : disk.writes()) : most;
                disk.loseAt(0);
            }
            ASSERT_TRUE(isKept(folder.path(), damaged));
            {
                const auto again = open();
                ASSERT_TRUE(again) << again.error().detail;
            }
            EXPECT_TRUE(isKept(folder.path(), damaged));
            EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(1)).value(), closedWeld(1));
            EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(3)).value(), closedWeld(3));
            EXPECT_EQ(LogReader::open(path)->weldEvents(weldName(5)).value(), unfinishedWeld(5, 9));
            expectSound();
        }
    }
    EXPECT_GT(refused, 20);
}

TEST_F(SetAsideTest, ASoundLogIsNeverMovedForADiskThatIsGone) {
    writeLog();
    std::int64_t most = 1;
    for (std::int64_t n = 0; n <= most; ++n) {
        {
            test::FaultyDisk disk;
            disk.loseAt(n);
            const auto opened = open();
            EXPECT_TRUE(!opened || !opened->aside) << n << ": " << opened->aside->why;
            most = n == 0 ? disk.accesses() : most;
            disk.loseAt(0);
        }
        ASSERT_EQ(
            std::count_if(
                fs::directory_iterator(folder.path()), fs::directory_iterator(),
                [](const fs::directory_entry& file) {
                    return file.path().string().find(".damaged") != std::string::npos;
                }),
            0)
            << n;
    }
    EXPECT_FALSE(open()->aside);
    expectSound();
}

TEST_F(SetAsideTest, LogsDamagedAtRandomPlacesComeBackOrSayWhatIsLost) {
    const int trials = test::rounds(80);
    const test::DamageCount count = test::damageLogs(trials, 1);
    RecordProperty("opened", count.opened);
    RecordProperty("mended", count.mended);
    RecordProperty("new_chain", count.newChain);
    EXPECT_GE(count.mended, trials * 6 / 80);
    EXPECT_GE(count.newChain, trials * 6 / 80);
    EXPECT_GE(count.openWhole, trials * 60 / 80);
    EXPECT_LE(count.refused, std::max(1, trials * 4 / 80));
}

} // namespace
} // namespace seamclock
