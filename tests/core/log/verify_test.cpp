#include "core/log/verify.h"

#include "core/base/uuid.h"
#include "core/log/chain.h"
#include "core/log/connection.h"
#include "core/log/log_reader.h"
#include "tests/core/log/tampering.h"
#include "tests/support/log_samples.h"
#include "tests/support/sanitized.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <filesystem>
#include <fstream>
#include <functional>
#include <gtest/gtest.h>
#include <random>

namespace seamclock {
namespace {

using test::BehindTheBack;
using test::change;
using test::drop;
using test::kAnyRow;
using test::Mutation;
using test::pick;
using test::put;
using test::Random;
using test::Row;
using test::rowAt;
using test::shift;
using test::touched;

TEST(Verify, ASoundLogSaysWhatItsAnswerCovers) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    test::writeSampleLog(path, test::FakeClock());
    const auto report = verifyLog(path);
    ASSERT_TRUE(report.has_value()) << report.error().detail;
    EXPECT_TRUE(report->ok) << report->finding->reason;
    EXPECT_FALSE(report->finding.has_value());
    EXPECT_EQ(report->world, "production");
    EXPECT_EQ(report->welds, 5);
    EXPECT_EQ(report->documents, 2);
    EXPECT_EQ(report->signedTo, 0);
    EXPECT_EQ(
        report->covered, "no signature: rows 1.." + std::to_string(report->rows) +
                             " are covered by the head row only");
    BehindTheBack stranger(path);
    EXPECT_EQ(report->rows, stranger.number("SELECT count(*) FROM event"));
    EXPECT_EQ(report->head, stranger.text("SELECT hash FROM event ORDER BY seq DESC LIMIT 1"));
}

// The chain is what the contract says it is, judged by programs that are not ours: sqlite3, printf
// and sha256sum.
TEST(Verify, AgreesWithTheChainWorkedOutByHand) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    test::writeSampleLog(path, test::FakeClock());
    if (std::system("command -v sqlite3 >/dev/null") != 0) {
        GTEST_SKIP() << "the sqlite3 command line program is not installed";
    }
    std::ofstream(folder.file("by_hand.sh")) << R"sh(set -e
log=$1
id=$(sqlite3 "$log" 'SELECT log_id FROM chain')
prev=$(printf 'seamclock-log/1\n%s\nproduction' "$id" | sha256sum | cut -d' ' -f1)
rows=$(sqlite3 "$log" 'SELECT count(*) FROM event')
seq=1
while [ "$seq" -le "$rows" ]; do
    body=$(sqlite3 "$log" "SELECT body FROM event WHERE seq = $seq")
    prev=$(printf '%s\n%s' "$prev" "$body" | sha256sum | cut -d' ' -f1)
    [ "$prev" = "$(sqlite3 "$log" "SELECT hash FROM event WHERE seq = $seq")" ]
    seq=$((seq + 1))
done
[ "$prev" = "$(sqlite3 "$log" 'SELECT head FROM chain')" ]
echo "$rows"
)sh";
    const std::string command =
        "sh '" + folder.file("by_hand.sh") + "' '" + path + "' > '" + folder.file("answer") + "'";
    ASSERT_EQ(std::system(command.c_str()), 0);
    EXPECT_EQ(test::textOf(folder.file("answer")), std::to_string(verifyLog(path)->rows) + "\n");
}

// ---- Mutations

/// The id of one of the list's five lines.
std::string anyLine(Random& random) {
    return "(SELECT id FROM joint ORDER BY id LIMIT 1 OFFSET " +
           std::to_string(pick(random, 0, 4)) + ")";
}

const std::vector<Mutation>& mutations() {
    static const std::vector<Mutation> all = {
        {"changed body",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto seq = pick(r, 1, rows);
             Row row = rowAt(s, seq);
             row.body = touched(row.body, r);
             // A changed n can meet another row's: then this is one row fewer as well.
             s.database().exec("DROP INDEX event_once");
             change(s, seq, row);
             return seq;
         }},
        {"changed hash",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto seq = pick(r, 1, rows);
             Row row = rowAt(s, seq);
             row.hash = touched(row.hash, r);
             change(s, seq, row);
             return seq;
         }},
        {"changed body with its own hash made to fit",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto seq = pick(r, 2, rows - 1);
             Row row = rowAt(s, seq);
             const auto at = row.body.find("\"utc_ms\":1");
             ++row.body[at + 9];
             row.hash = chainHash(rowAt(s, seq - 1).hash, row.body);
             change(s, seq, row);
             return seq + 1; // the first that does not follow
         }},
        {"missing row",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto seq = pick(r, 1, rows - 1);
             drop(s, seq);
             return seq;
         }},
        {"missing row, the later ones moved up",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto seq = pick(r, 1, rows - 1);
             drop(s, seq);
             shift(s, seq + 1, -1);
             return seq;
         }},
        {"cut tail",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto seq = pick(r, 1, rows);
             s.database().exec("DELETE FROM event WHERE seq >= " + std::to_string(seq));
             return seq;
         }},
        {"cut tail, the head's count moved back",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto seq = pick(r, 2, rows);
             s.database().exec("DELETE FROM event WHERE seq >= " + std::to_string(seq));
             s.database().exec("UPDATE chain SET seq = " + std::to_string(seq - 1));
             return seq - 1;
         }},
        {"row added at the end",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const std::string body = test::stationRow(pick(r, 900, 999)).body;
             put(s, rows + 1, {chainHash(rowAt(s, rows).hash, body), body});
             return rows + 1;
         }},
        {"row added between, the later ones moved down",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto seq = pick(r, 2, rows);
             const std::string body = test::stationRow(pick(r, 900, 999)).body;
             const Row row{chainHash(rowAt(s, seq - 1).hash, body), body};
             shift(s, seq, 1);
             put(s, seq, row);
             s.database().exec("UPDATE chain SET seq = seq + 1");
             return seq + 1;
         }},
        {"row added before the first",
         [](BehindTheBack& s, Random& r, std::int64_t) {
             const auto seq = pick(r, -5, 0);
             const std::string body = test::stationRow(pick(r, 900, 999)).body;
             put(s, seq, {sha256Hex(body), body});
             return seq;
         }},
        {"row added to a chain that is none",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             s.database().exec(
                 "INSERT INTO event(chain, seq, hash, body) SELECT 7, seq, hash, body FROM event "
                 "WHERE seq = " +
                 std::to_string(pick(r, 1, rows)));
             return std::int64_t{0};
         }},
        {"two rows swapped",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto a = pick(r, 1, rows - 1);
             const auto b = pick(r, a + 1, rows);
             const Row first = rowAt(s, a);
             const Row second = rowAt(s, b);
             drop(s, a);
             drop(s, b);
             put(s, a, second);
             put(s, b, first);
             return a;
         }},
        {"two bodies swapped under their hashes",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto a = pick(r, 1, rows - 1);
             const auto b = pick(r, a + 1, rows);
             const Row first = rowAt(s, a);
             const Row second = rowAt(s, b);
             drop(s, a);
             drop(s, b);
             put(s, a, {first.hash, second.body});
             put(s, b, {second.hash, first.body});
             return a;
         }},
        {"changed head",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const std::string head = touched(s.text("SELECT head FROM chain"), r);
             s.database().exec("UPDATE chain SET head = '" + head + "'");
             return rows;
         }},
        {"changed count of the head",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto more = pick(r, 1, 9);
             s.database().exec("UPDATE chain SET seq = seq + " + std::to_string(more));
             return rows + 1;
         }},
        {"changed log id",
         [](BehindTheBack& s, Random&, std::int64_t) {
             s.database().exec("UPDATE chain SET log_id = '" + newUuid() + "'");
             return std::int64_t{0};
         }},
        {"changed world",
         [](BehindTheBack& s, Random&, std::int64_t) {
             s.database().exec("UPDATE chain SET world = 'practice'");
             return std::int64_t{0};
         }},
        {"changed document",
         [](BehindTheBack& s, Random& r, std::int64_t) {
             const auto at = pick(r, 0, 1);
             SQLite::Statement update(
                 s.database(), "UPDATE document SET body = CAST(? AS BLOB) WHERE sha256 = "
                               "(SELECT sha256 FROM document ORDER BY sha256 LIMIT 1 OFFSET ?)");
             update.bind(1, touched("{\"id\":\"1234567\"}", r));
             update.bind(2, at);
             update.exec();
             return kAnyRow;
         }},
        {"document gone",
         [](BehindTheBack& s, Random& r, std::int64_t) {
             s.database().exec(
                 "DELETE FROM document WHERE sha256 = (SELECT sha256 FROM document ORDER BY sha256 "
                 "LIMIT 1 OFFSET " +
                 std::to_string(pick(r, 0, 1)) + ")");
             return kAnyRow;
         }},
        {"stale line in the list",
         [](BehindTheBack& s, Random& r, std::int64_t) {
             static const std::vector<std::string> columns = {
                 "number = number + 1",      "opened_ms = opened_ms - 1",
                 "day = '2029-12-31'",       "bench = 'x'",
                 "material = 'x'",           "thickness_um = 1",
                 "phase = 'closed '",        "open = 1 - open",
                 "verdict = verdict || ' '", "findings = findings + 1",
                 "events = events - 1",      "trouble = 'x'"};
             s.database().exec(
                 "UPDATE joint SET " + columns[static_cast<std::size_t>(pick(r, 0, 11))] +
                 " WHERE id = " + anyLine(r));
             return std::int64_t{0};
         }},
        {"stale text of the list",
         [](BehindTheBack& s, Random& r, std::int64_t) {
             s.database().exec(
                 "UPDATE joint_text SET text = 'nothing of note' WHERE rowid = " + anyLine(r));
             return std::int64_t{0};
         }},
        {"stale numbers of the charts",
         [](BehindTheBack& s, Random& r, std::int64_t) {
             const bool value = pick(r, 0, 1) == 0;
             s.database().exec(
                 value ? "UPDATE joint_measure SET alignment = coalesce(alignment, 0) + 1 WHERE "
                         "joint = " +
                             anyLine(r)
                       : std::string("UPDATE joint_measure SET bench = 'x' WHERE joint = (SELECT "
                                     "max(joint) FROM joint_measure WHERE alignment IS NOT NULL)"));
             return std::int64_t{0};
         }},
        {"a line in the list that no events make", [](BehindTheBack& s, Random& r, std::int64_t) {
             s.database().exec(
                 "CREATE TEMP TABLE one AS SELECT * FROM joint WHERE id = " + anyLine(r));
             s.database().exec("UPDATE one SET weld = 'weld:forged', id = 99; INSERT INTO joint "
                               "SELECT * FROM one");
             return std::int64_t{0};
         }}};
    return all;
}

TEST(Verify, FindsEachOfAThousandMutationsMadeBehindItsBack) {
    const test::ScratchFolder folder;
    const std::string sound = folder.file("sound.log");
    test::writeSampleLog(sound, test::FakeClock());
    ASSERT_GT(verifyLog(sound)->rows, 70);
    const int made = test::tamper(sound, mutations(), test::rounds(50), 20300107);
    EXPECT_GE(made, test::rounds(1000));
}

TEST(Verify, TellsTheFirstBadRowInASentence) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    test::writeSampleLog(path, test::FakeClock());
    {
        BehindTheBack stranger(path);
        drop(stranger, 12);
    }
    EXPECT_EQ(verifyLog(path)->finding->reason, "row 12 is missing: after row 11 comes row 13");
    {
        BehindTheBack stranger(path);
        stranger.database().exec("DELETE FROM event WHERE seq > 9");
    }
    const auto cut = verifyLog(path);
    EXPECT_EQ(cut->finding->seq, 10);
    EXPECT_NE(cut->finding->reason.find("missing at the end"), std::string::npos);
}

// What a bare chain can't see is said, not hidden.
TEST(Verify, ATailCutWithItsHeadIsSeenByNoBareChainAndTheReportSaysSo) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    test::writeSampleLog(path, test::FakeClock());
    std::int64_t rows = 0;
    {
        BehindTheBack stranger(path);
        rows = stranger.number("SELECT seq - 1 FROM chain");
        drop(stranger, rows + 1);
        stranger.database().exec("UPDATE chain SET seq = seq - 1, head = (SELECT hash FROM event "
                                 "ORDER BY seq DESC LIMIT 1)");
    }
    const auto report = verifyLog(path);
    EXPECT_TRUE(report->ok);
    EXPECT_EQ(
        report->covered,
        "no signature: rows 1.." + std::to_string(rows) + " are covered by the head row only");
}

// A chain made anew from a row on is sound as a chain; what is in the bodies is still judged.
void rewrite(
    const std::string& path, std::int64_t seq,
    const std::function<std::string(std::string)>& edit) {
    BehindTheBack stranger(path);
    const auto rows = stranger.number("SELECT seq FROM chain");
    std::string previous = stranger.text("SELECT genesis FROM chain");
    SQLite::Transaction together(stranger.database());
    for (std::int64_t at = 1; at <= rows; ++at) {
        Row row = rowAt(stranger, at);
        if (at == seq) {
            row.body = edit(row.body);
        }
        row.hash = chainHash(previous, row.body);
        previous = row.hash;
        change(stranger, at, row);
    }
    stranger.database().exec("UPDATE chain SET head = '" + previous + "'");
    together.commit();
}

TEST(Verify, JudgesBodiesAndFoldsUnderAChainMadeAnew) {
    const test::ScratchFolder folder;
    const std::string sound = folder.file("sound.log");
    test::writeSampleLog(sound, test::FakeClock());
    const std::int64_t locked = [&] {
        BehindTheBack stranger(sound);
        return stranger.number("SELECT min(seq) FROM event WHERE kind = 'plate_out'");
    }();
    const std::vector<std::tuple<std::int64_t, std::string, std::string, std::string>> edits = {
        {1, "\"kind\":\"program_started\"", "\"kind\":\"program_startet\"", "unknown kind"},
        {1, "\"v\":1", "\"v\":2", "version"},
        {1, "\"d\":{}", "\"d\":{\"x\":1}", "missing, unknown or of the wrong type"},
        {1, "\"d\":{}", "\"d\":{ }", "canonical"},
        {1, "\"d\":{}", "\"d\":{\"x\":1.5}", "float"},
        {2, "\"doc\":\"", "\"doc\":\"0", "not here"},
        {locked, "\"kind\":\"plate_out\"", "\"kind\":\"faces_met\"", "does not fit"},
        {locked, "\"d\":{}", "\"d\":{\"x\":1}", ""}};
    for (const auto& [seq, was, now, words] : edits) {
        const std::string path = folder.file("edited.log");
        std::filesystem::copy_file(sound, path, std::filesystem::copy_options::overwrite_existing);
        const std::string from = was;
        const std::string to = now;
        rewrite(path, seq, [&](const std::string& body) { return test::replaced(body, from, to); });
        const auto report = verifyLog(path);
        ASSERT_TRUE(report.has_value());
        ASSERT_FALSE(report->ok) << now;
        EXPECT_EQ(report->finding->seq, seq) << now << ": " << report->finding->reason;
        EXPECT_NE(report->finding->reason.find(words), std::string::npos)
            << report->finding->reason;
    }
}

// So many welds that they are not all made out at once: still the first bad row is the answer,
// whether it is the form of a row, a fold, or what stands between the rows.
TEST(Verify, FindsTheFirstOfTwoBadRowsThatLieFarApart) {
    const test::ScratchFolder folder;
    const std::string sound = folder.file("sound.log");
    const test::FakeClock clock;
    {
        auto writer = LogWriter<Production>::open(sound, clock, test::quick());
        ASSERT_TRUE(writer.has_value()) << writer.error().detail;
        for (std::int64_t number = 1; number <= 160; ++number) {
            writer->submit(test::rowsOf(test::closedWeld(number)), test::sampleDocuments());
        }
        ASSERT_TRUE(writer->flush().has_value());
    }
    std::vector<std::int64_t> plateOut; // by weld
    {
        BehindTheBack stranger(sound);
        SQLite::Statement query(
            stranger.database(), "SELECT seq FROM event WHERE kind = 'plate_out' ORDER BY seq");
        while (query.executeStep()) {
            plateOut.push_back(query.getColumn(0).getInt64());
        }
    }
    ASSERT_EQ(plateOut.size(), 160U);
    using Edit = std::function<void(const std::string& path, std::int64_t seq)>;
    const auto inBody = [](const std::string& from, const std::string& to) {
        return Edit([from, to](const std::string& path, std::int64_t seq) {
            rewrite(
                path, seq, [&](const std::string& body) { return test::replaced(body, from, to); });
        });
    };
    const Edit unfit = inBody("\"kind\":\"plate_out\"", "\"kind\":\"faces_met\"");
    const Edit unread = inBody("\"v\":1", "\"v\":2");
    const Edit gone = [](const std::string& path, std::int64_t seq) {
        BehindTheBack stranger(path);
        drop(stranger, seq);
    };
    const Edit rotten = [](const std::string& path, std::int64_t seq) {
        BehindTheBack stranger(path);
        Row row = rowAt(stranger, seq);
        row.hash.front() = row.hash.front() == '0' ? '1' : '0';
        change(stranger, seq, row);
    };
    const std::int64_t early = plateOut[20];
    const std::int64_t late = plateOut[150];
    // The chain is made anew by some, so those come first.
    const std::vector<std::tuple<Edit, std::int64_t, Edit, std::int64_t>> pairs = {
        {unfit, early, gone, late},   {unfit, early, rotten, late},  {unread, early, gone, late},
        {unfit, early, unread, late}, {unread, early, unfit, late},  {unfit, late, gone, early},
        {unfit, late, rotten, early}, {unread, late, rotten, early}, {unfit, early, unfit, late}};
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const std::string path = folder.file("edited.log");
        std::filesystem::copy_file(sound, path, std::filesystem::copy_options::overwrite_existing);
        const auto& [first, firstAt, second, secondAt] = pairs[i];
        first(path, firstAt);
        second(path, secondAt);
        const auto report = verifyLog(path);
        ASSERT_TRUE(report.has_value()) << i;
        ASSERT_TRUE(report->finding.has_value()) << i;
        EXPECT_EQ(report->finding->seq, early) << i << ": " << report->finding->reason;
    }
    const auto report = verifyLog(sound);
    EXPECT_TRUE(report->ok) << report->finding->reason;
    EXPECT_EQ(report->welds, 160);
}

TEST(Verify, NoticesGuardsThatWereTakenAwayOrThingsThatWereAdded) {
    const test::ScratchFolder folder;
    const std::string sound = folder.file("sound.log");
    test::writeSampleLog(sound, test::FakeClock());
    for (const char* tampering :
         {"DROP TRIGGER event_no_update",
          "CREATE TRIGGER mine AFTER INSERT ON event BEGIN SELECT 1; END", "CREATE TABLE mine(x)",
          "DROP INDEX event_once"}) {
        const std::string path = folder.file("tampered.log");
        std::filesystem::copy_file(sound, path, std::filesystem::copy_options::overwrite_existing);
        SQLite::Database(path, SQLite::OPEN_READWRITE).exec(tampering);
        const auto report = verifyLog(path);
        ASSERT_TRUE(report.has_value()) << tampering;
        EXPECT_FALSE(report->ok) << tampering;
    }
}

// Its guard changed, the list is one that this program did not make: nobody reads it.
TEST(Verify, SaysThatAListWithAnotherGuardWillBeMadeAgain) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    test::writeSampleLog(path, test::FakeClock());
    const auto joints = LogReader::open(path)->joints({});
    SQLite::Database(path, SQLite::OPEN_READWRITE)
        .exec("DROP TRIGGER joint_gone; CREATE TRIGGER joint_gone AFTER DELETE ON joint BEGIN "
              "SELECT 1; END; DELETE FROM joint WHERE number = 3");
    const auto report = verifyLog(path);
    ASSERT_TRUE(report) << report.error().detail;
    EXPECT_TRUE(report->ok);
    EXPECT_EQ(
        report->notes,
        std::vector<std::string>{"the list of joints is not there and will be made again"});
    EXPECT_EQ(LogReader::open(path)->joints({}), joints);
}

/// All that a log must keep, as SQLite alone reads it; a sentence instead if it can't.
std::string everything(const std::string& path) {
    std::string out;
    try {
        SQLite::Database database(path);
        for (const char* sql :
             {"SELECT no || log_id || world || genesis || seq || head FROM chain NOT INDEXED ORDER "
              "BY no",
              "SELECT chain || ' ' || seq || hash || body FROM event NOT INDEXED ORDER BY seq",
              "SELECT sha256 || hex(body) FROM document NOT INDEXED ORDER BY rowid"}) {
            SQLite::Statement query(database, sql);
            while (query.executeStep()) {
                out += query.getColumn(0).getString() + "\n";
            }
        }
    } catch (const SQLite::Exception& thrown) {
        out += thrown.what();
    }
    return out;
}

TEST(Verify, NoticesRottenBytesWhereverTheyTouchWhatTheLogMustKeep) {
    const test::ScratchFolder folder;
    const std::string sound = folder.file("sound.log");
    test::writeSampleLog(sound, test::FakeClock());
    const std::string bytes = test::textOf(sound);
    const std::string kept = everything(sound);
    Random random(7);
    int touchedSomething = 0;
    for (int i = 0; i < test::rounds(300); ++i) {
        const std::string path = folder.file("rotten.log");
        std::string rotten = bytes;
        // Behind the header page's first 100 bytes, which say whose file it is.
        const auto at = static_cast<std::size_t>(
            pick(random, 100, static_cast<std::int64_t>(bytes.size()) - 8));
        for (std::size_t k = 0; k < 8; ++k) {
            rotten[at + k] = static_cast<char>(random() & 0xFFU);
        }
        std::ofstream(path, std::ios::binary) << rotten;
        const auto report = verifyLog(path);
        if (everything(path) != kept) {
            ++touchedSomething;
            EXPECT_TRUE(!report || !report->ok) << "byte " << at;
        }
    }
    // Bytes in no use (free space, the cache) may rot unseen; if none of the others did, nothing
    // was tested.
    EXPECT_GT(touchedSomething, test::rounds(30));
}

} // namespace
} // namespace seamclock
