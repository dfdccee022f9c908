#include "core/copies/log_import.h"

#include "core/copies/backup.h"
#include "core/log/connection.h"
#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"
#include "core/log/recover.h"
#include "core/log/roster.h"
#include "core/log/spill.h"
#include "core/log/verify.h"
#include "core/quality/coupons.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/log_content.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <map>

namespace seamclock {
namespace {

namespace fs = std::filesystem;
using test::chainRows;
using test::contentRows;

void expectSound(const std::string& path) {
    const auto report = verifyLog(path);
    ASSERT_TRUE(report.has_value()) << report.error().detail;
    EXPECT_TRUE(report->ok) << report->finding->reason;
}

/// Tablets of one shop, each with a log of its own.
class LogImport : public ::testing::Test {
protected:
    /// Adds the closed welds of these numbers to a tablet's log, which is made if need be.
    std::string tablet(const std::string& name, const std::vector<std::int64_t>& numbers) {
        const std::string path = folder.file(name);
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        EXPECT_TRUE(writer.has_value()) << writer.error().detail;
        EXPECT_TRUE(writer->note(clock.now(), "station", "station", ProgramStarted{}).has_value());
        for (const std::int64_t number : numbers) {
            writer->submit(test::rowsOf(test::closedWeld(number)), test::sampleDocuments());
        }
        EXPECT_TRUE(writer->flush().has_value());
        return path;
    }
    void add(const std::string& path, const std::vector<Event>& events) {
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        ASSERT_TRUE(writer.has_value()) << writer.error().detail;
        writer->submit(test::rowsOf(events), test::sampleDocuments());
        ASSERT_TRUE(writer->flush().has_value());
        ASSERT_TRUE(writer->state().refused.empty());
    }
    ImportReport imported(const std::string& from, const std::string& path) {
        const auto report = importLog(from, path, clock);
        EXPECT_TRUE(report.has_value()) << report.error().detail;
        return report.value_or(ImportReport{});
    }
    /// The joints' numbers as the list shows them, in order.
    static std::vector<std::int64_t> numbers(const std::string& path) {
        std::vector<std::int64_t> out;
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader.has_value());
        const auto lines = reader->joints({}).value();
        for (const JointLine& line : lines) {
            EXPECT_EQ(line.trouble, "") << line.weld;
            out.push_back(line.number);
        }
        std::sort(out.begin(), out.end());
        return out;
    }
    static std::vector<LogImported> told(const std::string& path) {
        std::vector<LogImported> out;
        const auto station = LogReader::open(path)->bodies("station").value();
        for (const std::string& body : station) {
            const auto fact = factFromBody(body);
            if (const auto* one = std::get_if<LogImported>(&fact->d)) {
                out.push_back(*one);
            }
        }
        return out;
    }

    test::FakeClock clock;
    test::ScratchFolder folder;
};

using Numbers = std::vector<std::int64_t>;

TEST_F(LogImport, BringsTheOthersJointsEachOnceAndKeepsTheirRowsAsTheyAre) {
    const std::string east = tablet("east", {1, 2, 3});
    const std::string west = tablet("west", {11, 12});
    const auto before = chainRows(east, 1);
    const ImportReport report = imported(west, east);
    EXPECT_EQ(report.world, "production");
    EXPECT_EQ(report.joints, 2);
    EXPECT_EQ(report.documents, 0) << "both shops have the same";
    EXPECT_TRUE(report.conflicts.empty());
    ASSERT_EQ(report.chains.size(), 1U);
    EXPECT_EQ(report.chains[0].chain, 2);
    EXPECT_EQ(report.chains[0].logId, LogReader::open(west)->logId());
    EXPECT_EQ(report.chains[0].added, report.rows);
    EXPECT_EQ(report.chains[0].head, LogReader::open(west)->head()->hash);
    EXPECT_EQ(chainRows(east, 2), chainRows(west, 1));
    EXPECT_EQ(numbers(east), (Numbers{1, 2, 3, 11, 12}));
    expectSound(east);
    // The own chain grew by one row, the fact.
    auto after = chainRows(east, 1);
    ASSERT_EQ(after.size(), before.size() + 1);
    after.pop_back();
    EXPECT_EQ(after, before);
    EXPECT_EQ(
        told(east), (std::vector<LogImported>{
                        {report.chains[0].logId, report.chains[0].toSeq, report.chains[0].head}}));
    // A joint of the other tablet is read like an own one.
    EXPECT_EQ(LogReader::open(east)->weldEvents(test::weldName(11)).value(), test::closedWeld(11));
    add(east, test::closedWeld(4));
    expectSound(east);
    EXPECT_EQ(numbers(east), (Numbers{1, 2, 3, 4, 11, 12}));
}

// Ids are made of names: a person:jan of each shop is somebody else.
TEST_F(LogImport, KeepsWhoIsWhoBesideTheJointsThatTheyMade) {
    const std::string east = tablet("east", {1});
    const std::string west = tablet("west", {11});
    for (const auto& [path, name] : {std::pair{east, "Jan Tolm"}, std::pair{west, "Jan Verrik"}}) {
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        ASSERT_TRUE(writer.has_value());
        ASSERT_TRUE(
            writer->note(clock.now(), "station", "person:jan", PersonSet{name, "operator"}));
        const std::string welder = test::closedWeld(1).front().by;
        ASSERT_TRUE(writer->note(clock.now(), "station", welder, PersonSet{name, "operator"}));
        ASSERT_TRUE(writer->flush());
    }
    imported(west, east);
    auto reader = LogReader::open(east);
    ASSERT_TRUE(reader);
    const auto nameBeside = [&](std::int64_t weld) {
        const auto bodies = reader->bodiesBeside(test::weldName(weld), "person:jan");
        EXPECT_TRUE(bodies);
        EXPECT_EQ(bodies->size(), 1U);
        const auto fact = factFromBody(bodies->front());
        return std::get<PersonSet>(fact->d).name;
    };
    EXPECT_EQ(nameBeside(1), "Jan Tolm");
    EXPECT_EQ(nameBeside(11), "Jan Verrik");
    EXPECT_TRUE(reader->bodiesBeside("weld:none", "person:jan")->empty());
    EXPECT_EQ(nameElsewhere(*reader, test::weldName(11), "person:jan").value(), "Jan Verrik");
    EXPECT_EQ(nameElsewhere(*reader, test::weldName(11), "person:none").value(), "");
    EXPECT_EQ(nameElsewhere(*reader, test::weldName(1), "person:jan").value(), "")
        << "this log's own people say who that is";
    // Both ways of entering a test keep the welder's id beside the joint's.
    auto writer = LogWriter<Production>::open(east, clock, test::quick());
    ASSERT_TRUE(writer.has_value());
    CouponTested tested;
    tested.test = "tensile";
    tested.material = "PE-HD";
    tested.thicknessUm = 8'000;
    tested.weldedPa = {27'000'000, 28'000'000};
    tested.weld = test::weldName(11);
    tested.welder = test::closedWeld(11).front().by;
    ASSERT_TRUE(writer->note(clock.now(), "person:ines", "coupon:1", tested));
    ASSERT_TRUE(writer->flush());
    const auto coupons = readCoupons(*reader);
    ASSERT_TRUE(coupons);
    ASSERT_EQ(coupons->series.size(), 1U);
    EXPECT_EQ(coupons->series[0].joinedByName, "Jan Verrik");
}

TEST_F(LogImport, TakesOnlyWhatIsNewTheNextTime) {
    const std::string east = tablet("east", {1});
    const std::string west = tablet("west", {11});
    imported(west, east);
    const auto rows = contentRows(east);
    const ImportReport again = imported(west, east);
    EXPECT_EQ(again.rows, 0);
    EXPECT_EQ(contentRows(east), rows) << "nothing new, nothing written";
    const std::string older = folder.file("older copy");
    ASSERT_TRUE(copyLog(west, older, {}).has_value());
    add(west, test::closedWeld(12));
    const ImportReport more = imported(west, east);
    EXPECT_EQ(more.joints, 1);
    EXPECT_EQ(more.rows, static_cast<std::int64_t>(test::closedWeld(12).size()));
    EXPECT_EQ(more.chains[0].chain, 2);
    EXPECT_EQ(chainRows(east, 2), chainRows(west, 1));
    EXPECT_EQ(told(east).size(), 2U);
    EXPECT_EQ(told(east).back().toSeq, LogReader::open(west)->head()->seq);
    EXPECT_EQ(imported(older, east).rows, 0) << "an older copy has nothing new";
    EXPECT_EQ(numbers(east), (Numbers{1, 11, 12}));
    expectSound(east);
}

TEST_F(LogImport, OfTheLogItselfOrItsOlderCopyDoesNothing) {
    const std::string east = tablet("east", {1, 2});
    const std::string copy = folder.file("copy");
    ASSERT_TRUE(copyLog(east, copy, {}).has_value());
    add(east, test::closedWeld(3));
    const auto rows = contentRows(east);
    EXPECT_EQ(imported(copy, east).rows, 0);
    EXPECT_EQ(imported(east, east).rows, 0);
    fs::create_symlink(east, folder.file("link"));
    EXPECT_EQ(imported(folder.file("link"), east).rows, 0);
    EXPECT_EQ(contentRows(east), rows);
    EXPECT_TRUE(told(east).empty());
}

TEST_F(LogImport, GoesRoundAmongTabletsWithoutAJointTwice) {
    const std::string a = tablet("a", {1});
    const std::string b = tablet("b", {11});
    const std::string c = tablet("c", {21});
    imported(b, a); // a: a, b
    imported(a, c); // c: c, a, b
    EXPECT_EQ(numbers(c), (Numbers{1, 11, 21}));
    EXPECT_EQ(imported(b, c).rows, 0) << "it came with a";
    imported(c, b); // b: b, c, a; its own rows come back and are no news
    EXPECT_EQ(numbers(b), (Numbers{1, 11, 21}));
    add(b, test::closedWeld(12));
    imported(b, a);
    EXPECT_EQ(numbers(a), (Numbers{1, 11, 12, 21}));
    imported(a, b);
    imported(a, c);
    imported(b, c);
    for (const std::string& path : {a, b, c}) {
        EXPECT_EQ(numbers(path), (Numbers{1, 11, 12, 21})) << path;
        expectSound(path);
    }
    const auto settled = contentRows(c);
    EXPECT_EQ(imported(b, c).rows, 0);
    EXPECT_EQ(contentRows(c), settled);
}

TEST_F(LogImport, RefusesALogThatWentOnInTwoPlaces) {
    const std::string east = tablet("east", {1});
    const std::string west = tablet("west", {11});
    const std::string backup = folder.file("backup");
    ASSERT_TRUE(copyLog(west, backup, {}).has_value());
    add(west, test::closedWeld(12));
    imported(west, east);
    const auto rows = contentRows(east);
    const std::string fork = folder.file("fork");
    ASSERT_TRUE(restoreLog(backup, fork).has_value());
    EXPECT_EQ(imported(fork, east).rows, 0) << "so far only an older state";
    add(fork, test::closedWeld(13));
    const auto refused = importLog(fork, east, clock);
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, ErrorCode::Conflict);
    EXPECT_NE(refused.error().detail.find("went on in two places"), std::string::npos)
        << refused.error().detail;
    EXPECT_NE(refused.error().detail.find(LogReader::open(west)->logId()), std::string::npos);
    EXPECT_EQ(contentRows(east), rows);
    // The same for a log whose own chain forked.
    const auto own = importLog(fork, west, clock);
    ASSERT_FALSE(own.has_value());
    EXPECT_EQ(own.error().code, ErrorCode::Conflict);
    const std::string young = folder.file("young");
    ASSERT_TRUE(restoreLog(backup, young).has_value());
    const auto newer = importLog(west, young, clock);
    ASSERT_FALSE(newer.has_value());
    EXPECT_EQ(newer.error().code, ErrorCode::Conflict);
    EXPECT_NE(newer.error().detail.find("rows of this very log"), std::string::npos)
        << newer.error().detail;
}

TEST_F(LogImport, NeverMixesWorlds) {
    const std::string real = tablet("real", {1});
    const std::string practice = folder.file("practice");
    {
        auto writer = LogWriter<Practice>::open(practice, clock, test::quick());
        ASSERT_TRUE(writer.has_value());
        writer->submit(test::rowsOf(test::closedWeld(5)), test::sampleDocuments());
        ASSERT_TRUE(writer->flush().has_value());
    }
    const auto before = contentRows(real);
    for (const auto& [from, to] : {std::pair(practice, real), std::pair(real, practice)}) {
        const auto refused = importLog(from, to, clock);
        ASSERT_FALSE(refused.has_value());
        EXPECT_EQ(refused.error().code, ErrorCode::Foreign) << refused.error().detail;
        EXPECT_NE(refused.error().detail.find("practice log"), std::string::npos);
    }
    EXPECT_EQ(contentRows(real), before);
    // Whoever relabels the file is found out by the chain, whose beginning names its world.
    const std::string relabelled = folder.file("relabelled");
    ASSERT_TRUE(copyLog(practice, relabelled, {}).has_value());
    {
        test::BehindTheBack stranger(relabelled);
        stranger.database().exec("PRAGMA application_id=1396919376");
        stranger.database().exec("UPDATE chain SET world = 'production'");
    }
    const auto refused = importLog(relabelled, real, clock);
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, ErrorCode::Damaged) << refused.error().detail;
    EXPECT_EQ(contentRows(real), before);
    // Practice into practice is as good as any.
    const std::string other = folder.file("other");
    { ASSERT_TRUE(LogWriter<Practice>::open(other, clock, test::quick()).has_value()); }
    EXPECT_EQ(imported(practice, other).joints, 1);
}

TEST_F(LogImport, TakesNothingFromADamagedLog) {
    const std::string east = tablet("east", {1});
    const std::string west = tablet("west", {11, 12});
    const auto before = contentRows(east);
    for (const char* sql :
         {"UPDATE event SET body = replace(body, '\"v\":1', '\"v\":2') WHERE seq = 9",
          "DELETE FROM event WHERE seq = 7",
          "DELETE FROM event WHERE seq = (SELECT max(seq) FROM event)",
          "UPDATE document SET body = CAST(body || ' ' AS BLOB)", "UPDATE chain SET seq = seq - 1",
          "UPDATE event SET hash = (SELECT hash FROM event WHERE seq = 3) WHERE seq = 12"}) {
        const std::string damaged = folder.file("damaged");
        fs::remove(damaged);
        ASSERT_TRUE(copyLog(west, damaged, {}).has_value());
        test::BehindTheBack(damaged).database().exec(sql);
        const auto refused = importLog(damaged, east, clock);
        ASSERT_FALSE(refused.has_value()) << sql;
        EXPECT_EQ(refused.error().code, ErrorCode::Damaged) << refused.error().detail;
        EXPECT_EQ(refused.error().detail.find(damaged), 0U) << refused.error().detail;
        EXPECT_EQ(contentRows(east), before) << sql;
    }
    EXPECT_EQ(importLog(folder.file("gone"), east, clock).error().code, ErrorCode::Unreadable);
    EXPECT_EQ(importLog(west, folder.file("gone"), clock).error().code, ErrorCode::Unreadable);
    EXPECT_FALSE(fs::exists(folder.file("gone"))) << "no log is made for it";
}

TEST_F(LogImport, WaitsForNoRunningProgram) {
    const std::string east = tablet("east", {1});
    const std::string west = tablet("west", {11});
    const auto before = contentRows(east);
    {
        const auto running = LogWriter<Production>::open(east, clock, test::quick());
        const auto refused = importLog(west, east, clock);
        ASSERT_FALSE(refused.has_value());
        EXPECT_EQ(refused.error().code, ErrorCode::Conflict);
        EXPECT_NE(refused.error().detail.find("close that one first"), std::string::npos);
    }
    EXPECT_EQ(contentRows(east), before);
    // The other one may be in use: it is only read.
    const auto running = LogWriter<Production>::open(west, clock, test::quick());
    EXPECT_EQ(imported(west, east).joints, 1);
}

TEST_F(LogImport, AWeldThatIsInBothIsOneJoint) {
    const std::string east = tablet("east", {1});
    add(east, test::unfinishedWeld(5, 9));
    const std::string west = tablet("west", {11});
    add(west, test::unfinishedWeld(5, 9));
    const ImportReport report = imported(west, east);
    EXPECT_EQ(report.joints, 1) << "11 alone is new";
    EXPECT_TRUE(report.conflicts.empty());
    EXPECT_EQ(numbers(east), (Numbers{1, 5, 11}));
    EXPECT_EQ(LogReader::open(east)->weldEvents(test::weldName(5))->size(), 9U);
    expectSound(east);
    // It is still this tablet's to go on with.
    const auto open = recoverOpenWelds(east);
    ASSERT_TRUE(open.has_value());
    ASSERT_EQ(open->size(), 1U);
    EXPECT_EQ(open->front().subject, test::weldName(5));
}

TEST_F(LogImport, AWeldThatIsToldDifferentlyIsReportedAndTheOwnCounts) {
    const std::string east = tablet("east", {1});
    const std::string west = tablet("west", {11});
    add(east, test::closedWeld(5));
    auto other = test::abortedWeld(6, "another tale");
    for (Event& event : other) {
        event.subject = test::weldName(5);
    }
    add(west, other);
    const ImportReport report = imported(west, east);
    EXPECT_EQ(report.conflicts, (std::vector<ImportConflict>{{test::weldName(5), 1, 2, 1}}));
    EXPECT_EQ(report.joints, 1);
    EXPECT_EQ(chainRows(east, 2), chainRows(west, 1)) << "both are kept";
    expectSound(east);
    auto reader = LogReader::open(east);
    EXPECT_EQ(reader->weldEvents(test::weldName(5)).value(), test::closedWeld(5));
    const auto lines = reader->joints({}).value();
    ASSERT_EQ(lines.size(), 3U);
    int disputed = 0;
    for (const JointLine& line : lines) {
        if (line.weld == test::weldName(5)) {
            ++disputed;
            EXPECT_EQ(line.verdict, "within limits");
            EXPECT_EQ(line.trouble, "event 1 is another in chain 2 than in chain 1");
        } else {
            EXPECT_EQ(line.trouble, "");
        }
    }
    EXPECT_EQ(disputed, 1);
}

// A weld that was taken over into a new log goes on there; the old log has only its beginning.
TEST_F(LogImport, AWeldThatWentOnInTheOtherLogIsOneSoundJoint) {
    const std::string old = tablet("old", {1});
    add(old, test::unfinishedWeld(5, 9));
    const std::string next = tablet("next", {});
    add(next, test::closedWeld(5));
    for (const auto& [from, to] : {std::pair(old, next), std::pair(next, old)}) {
        EXPECT_TRUE(imported(from, to).conflicts.empty());
        EXPECT_EQ(numbers(to), (Numbers{1, 5}));
        EXPECT_TRUE(LogReader::open(to)->openWelds()->empty()) << to;
        EXPECT_EQ(LogReader::open(to)->weldEvents(test::weldName(5)).value(), test::closedWeld(5));
        expectSound(to);
        EXPECT_EQ(verifyLog(to)->welds, 2);
    }
}

TEST_F(LogImport, AnImportedChainThatLostItsEndOrWasExchangedIsFound) {
    const std::string west = tablet("west", {11, 12});
    for (const char* sql :
         {"DELETE FROM event WHERE chain = 2 AND seq = (SELECT seq FROM chain WHERE no = 2); "
          "UPDATE "
          "chain SET seq = seq - 1, head = (SELECT hash FROM event WHERE chain = 2 AND event.seq = "
          "chain.seq - 1) WHERE no = 2",
          "DELETE FROM event WHERE chain = 2; DELETE FROM chain WHERE no = 2",
          "DELETE FROM event WHERE chain = 2; UPDATE chain SET seq = 0, head = genesis WHERE no = "
          "2"}) {
        for (const char* tail : {"", "-wal", "-shm", ".spill"}) {
            fs::remove(folder.file("east") + tail);
        }
        const std::string east = tablet("east", {1});
        imported(west, east);
        test::BehindTheBack(east).database().exec(sql);
        const auto report = verifyLog(east);
        ASSERT_TRUE(report.has_value());
        ASSERT_FALSE(report->ok) << sql;
        EXPECT_NE(report->finding->reason.find("import"), std::string::npos)
            << report->finding->reason;
    }
}

TEST_F(LogImport, WhatStandsOpenElsewhereIsNotTakenUpHere) {
    const std::string east = tablet("east", {1});
    const std::string west = tablet("west", {});
    add(west, test::unfinishedWeld(5, 9));
    add(east, test::unfinishedWeld(6, 9));
    imported(west, east);
    EXPECT_EQ(
        LogReader::open(east)->openWelds().value(), std::vector<std::string>{test::weldName(6)});
    EXPECT_EQ(recoverOpenWelds(east)->size(), 1U);
    EXPECT_EQ(numbers(east), (Numbers{1, 5, 6})) << "but it stands in the list";
    EXPECT_EQ(LogReader::open(east)->highestNumber().value(), 6);
}

TEST_F(LogImport, FactsAreEachLogsOwn) {
    const std::string east = tablet("east", {1});
    const std::string west = tablet("west", {11});
    const auto note = [&](const std::string& path, const char* doc) {
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        const LogDocument bench = test::sampleDocuments()[doc[0] == 'p' ? 0 : 1];
        ASSERT_TRUE(
            writer->note(clock.now(), "station", "bench:one", BenchSet{bench.sha256}, {bench})
                .has_value());
        ASSERT_TRUE(writer->flush().has_value());
    };
    note(east, "p");
    note(west, "b");
    note(west, "p");
    EXPECT_TRUE(imported(west, east).conflicts.empty()) << "each numbers its facts for itself";
    auto reader = LogReader::open(east);
    EXPECT_EQ(reader->lastN("bench:one").value(), 1);
    EXPECT_EQ(reader->bodies("bench:one")->size(), 1U);
    expectSound(east);
}

TEST_F(LogImport, BringsTheDocumentsThatItsJointsName) {
    const std::string west = tablet("west", {11});
    const std::string east = folder.file("east");
    { ASSERT_TRUE(LogWriter<Production>::open(east, clock, test::quick()).has_value()); }
    EXPECT_EQ(imported(west, east).documents, 2);
    for (const LogDocument& document : test::sampleDocuments()) {
        EXPECT_EQ(LogReader::open(east)->document(document.sha256).value(), document);
    }
    expectSound(east);
}

TEST_F(LogImport, OfALogWithoutRowsDoesNothing) {
    const std::string east = tablet("east", {1});
    const std::string empty = folder.file("empty");
    { ASSERT_TRUE(LogWriter<Production>::open(empty, clock, test::quick()).has_value()); }
    const auto rows = contentRows(east);
    EXPECT_EQ(imported(empty, east).rows, 0);
    EXPECT_EQ(contentRows(east), rows);
}

// Rows that wait in the spill file have numbers of their own already; the fact of the import comes
// after them.
TEST_F(LogImport, JoinsWhatWaitsBesideTheLogFirst) {
    const std::string east = tablet("east", {1});
    const std::string west = tablet("west", {11});
    const std::string id = LogReader::open(east)->logId();
    {
        auto spill = SpillFile::open(east + ".spill", id, 256 * 1024);
        ASSERT_TRUE(spill.has_value()) << spill.error().detail;
        ASSERT_TRUE(spill->append({test::stationRow(2)}, {}).has_value());
    }
    imported(west, east);
    const auto station = LogReader::open(east)->bodies("station").value();
    ASSERT_GE(station.size(), 4U); // started, the one that waited, joined, imported
    EXPECT_EQ(station[1], test::stationRow(2).body);
    EXPECT_NE(station.back().find("log_imported"), std::string::npos) << station.back();
    expectSound(east);
}

// Rows and the fact that tells of them are two steps; whatever comes between, the next import makes
// up for it.
TEST_F(LogImport, TellsTheNextTimeWhatItCouldNotTell) {
    const std::string east = tablet("east", {1});
    const std::string west = tablet("west", {11});
    imported(west, east);
    const auto before = told(east);
    {
        test::BehindTheBack stranger(east);
        stranger.database().exec(
            "DELETE FROM event WHERE chain = 1 AND seq = (SELECT seq FROM chain WHERE no = 1)");
        stranger.database().exec(
            "UPDATE chain SET seq = seq - 1, head = (SELECT hash FROM event WHERE chain = 1 AND "
            "event.seq = chain.seq - 1) WHERE no = 1");
    }
    ASSERT_TRUE(told(east).empty());
    EXPECT_EQ(imported(west, east).rows, 0);
    EXPECT_EQ(told(east), before);
    EXPECT_EQ(imported(west, east).rows, 0);
    EXPECT_EQ(told(east), before) << "once";
    expectSound(east);
}

TEST_F(LogImport, TheOthersSignatureComesAlongAndHoldsHere) {
    auto signing = test::quick();
    signing.sign = true;
    const auto signedWeld = [&](const std::string& path, std::int64_t number) {
        auto writer = LogWriter<Production>::open(path, clock, signing);
        ASSERT_TRUE(writer.has_value()) << writer.error().detail;
        writer->submit(test::rowsOf(test::closedWeld(number)), test::sampleDocuments());
        ASSERT_TRUE(writer->flush().has_value());
    };
    const std::string east = folder.file("east");
    const std::string west = folder.file("west");
    signedWeld(east, 1);
    signedWeld(west, 11);
    imported(west, east);
    expectSound(east);
    EXPECT_GT(verifyLog(east)->signedTo, 0);
    signedWeld(west, 12);
    imported(west, east);
    expectSound(east);
    EXPECT_EQ(chainRows(east, 2), chainRows(west, 1));
    signedWeld(east, 2);
    EXPECT_EQ(numbers(east), (Numbers{1, 2, 11, 12}));
    expectSound(east);
    // A tail cut off with its head row is found by the signature alone.
    {
        test::BehindTheBack stranger(east);
        stranger.database().exec(
            "DELETE FROM event WHERE chain = 2 AND seq = (SELECT seq FROM chain WHERE no = 2)");
        stranger.database().exec(
            "UPDATE chain SET seq = seq - 1, head = (SELECT hash FROM event WHERE chain = 2 AND "
            "event.seq = chain.seq - 1) WHERE no = 2");
    }
    const auto report = verifyLog(east);
    ASSERT_TRUE(report.has_value());
    ASSERT_FALSE(report->ok);
    EXPECT_EQ(report->finding->chain, 2) << report->finding->reason;
}

TEST_F(LogImport, IsAllOrNothingWhicheverWriteFails) {
    const std::string west = tablet("west", {11, 12});
    const std::string fresh = tablet("fresh", {1});
    std::int64_t writes = 0;
    const auto prepared = [&] {
        const std::string path = folder.file("east");
        for (const char* tail : {"", "-wal", "-shm", ".spill", ".refused", ".credentials"}) {
            fs::remove(path + tail);
        }
        fs::copy_file(fresh, path);
        return path;
    };
    {
        const std::string east = prepared();
        const test::FaultyDisk disk;
        ASSERT_TRUE(importLog(west, east, clock).has_value());
        writes = disk.writes();
    }
    ASSERT_GT(writes, 20);
    std::int64_t failed = 0;
    std::map<std::string, std::int64_t> seen;
    for (std::int64_t n = 1; n <= writes; n += std::max<std::int64_t>(1, writes / 25)) {
        const std::string east = prepared();
        bool done = false;
        {
            test::FaultyDisk disk;
            disk.failOnce(n);
            const auto report = importLog(west, east, clock);
            done = report.has_value();
            if (!done) {
                ++failed;
                EXPECT_EQ(report.error().code, ErrorCode::NotWritten) << report.error().detail;
                ++seen[report.error().detail];
            }
        }
        expectSound(east);
        const bool there = !chainRows(east, 2).empty();
        EXPECT_TRUE(there || !done) << n;
        if (there) {
            EXPECT_EQ(chainRows(east, 2), chainRows(west, 1)) << n;
        } else {
            EXPECT_TRUE(told(east).empty()) << n;
        }
        EXPECT_TRUE(importLog(west, east, clock).has_value()) << n;
        EXPECT_EQ(told(east).size(), 1U) << n;
        EXPECT_EQ(numbers(east), (Numbers{1, 11, 12})) << n;
        expectSound(east);
    }
    EXPECT_GT(failed, 3);
}

} // namespace
} // namespace seamclock
