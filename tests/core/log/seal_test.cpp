#include "core/log/seal.h"

#include "core/base/uuid.h"
#include "core/log/chain.h"
#include "core/log/connection.h"
#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"
#include "core/log/roster.h"
#include "core/log/verify.h"
#include "core/people/credentials.h"
#include "core/rescue/set_aside.h"
#include "tests/core/log/tampering.h"
#include "tests/support/log_samples.h"
#include "tests/support/sanitized.h"
#include "tests/support/scratch_folder.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <sys/stat.h>

namespace seamclock {
namespace {

using test::BehindTheBack;
using test::change;
using test::Mutation;
using test::pick;
using test::Random;
using test::Row;
using test::rowAt;

using test::enterForeman;
using test::kForeman;
using test::signing;
using test::writeSealedLog;

constexpr const char* kDay = "2030-01-07"; // of the fake clock

std::int64_t numberOf(const std::string& path, const std::string& sql) {
    return BehindTheBack(path).number(sql);
}

TEST(Seal, CoversTheRowsBeforeItAndTheStationsSignatureTheRest) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    const SigningKey key = SigningKey::make();
    writeSealedLog(path, test::FakeClock(), key);
    const auto report = verifyLog(path);
    ASSERT_TRUE(report.has_value()) << report.error().detail;
    ASSERT_TRUE(report->ok) << report->finding->reason;
    ASSERT_EQ(report->seals.size(), 1U);
    const FoundSeal& seal = report->seals.front();
    EXPECT_EQ(seal.day, kDay);
    EXPECT_EQ(seal.person, kForeman);
    EXPECT_EQ(seal.name, "Ines Falk");
    EXPECT_EQ(seal.seq, seal.toSeq + 1);
    EXPECT_EQ(seal.keyFingerprint, fingerprint(key.publicKey()));
    EXPECT_EQ(report->sealedTo, seal.toSeq);
    EXPECT_EQ(report->signedTo, report->rows);
    EXPECT_EQ(
        report->covered, "rows 1.." + std::to_string(seal.toSeq) +
                             " are covered by the seal of Ines Falk, 2030-01-07; rows " +
                             std::to_string(seal.toSeq + 1) + ".." + std::to_string(report->rows) +
                             " are covered by the station's signature");
    // In the chain: after the closing came the station's key and its signature of the closing.
    EXPECT_EQ(numberOf(path, "SELECT count(*) FROM event WHERE kind = 'key_set'"), 2);
    EXPECT_EQ(
        numberOf(
            path, "SELECT body->>'$.d.to_seq' FROM event WHERE kind = 'head_signed' "
                  "ORDER BY seq DESC LIMIT 1"),
        numberOf(path, "SELECT max(seq) FROM event WHERE kind = 'weld_closed'"));
}

TEST(Seal, TheFingerprintIsOverMessageKeyAndSignature) {
    const SigningKey key = SigningKey::make();
    const LogHead head{12, std::string(64, 'a')};
    const std::string message = sealMessage("7f", kDay, kForeman, head);
    EXPECT_EQ(message, "seamclock-seal/1\n7f\n2030-01-07\nperson:ines\n12\n" + head.hash);
    EXPECT_EQ(headMessage("7f", head), "seamclock-head/1\n7f\n12\n" + head.hash);
    const Fact sealed{
        test::FakeClock().now(), kForeman, "day:2030-01-07", 1,
        DaySealed{"7f", head.seq, head.hash, key.publicKey(), key.sign(message)}};
    EXPECT_EQ(
        sealFingerprint(sealed),
        fingerprint(message + "\n" + key.publicKey() + "\n" + key.sign(message)));
    EXPECT_EQ(sealFingerprint({{}, "station", "station", 1, ProgramStarted{}}), "");
}

TEST(Seal, RefusesWhatCannotBeSealed) {
    const test::ScratchFolder folder;
    const test::FakeClock clock;
    const SigningKey key = SigningKey::make();
    auto writer = LogWriter<Production>::open(folder.file("a.log"), clock, signing());
    ASSERT_TRUE(writer.has_value());
    const auto seal = [&](const std::string& day) {
        const auto sealed = sealDay(*writer, key, kForeman, day, clock.now());
        return sealed ? std::string() : sealed.error().detail;
    };
    EXPECT_EQ(seal(kDay), "the log has no rows, so there is nothing to seal");
    enterForeman(*writer, clock, key);
    EXPECT_EQ(seal("2030-01-08"), "the day 2030-01-08 has not come yet; allowed: up to 2030-01-07");
    EXPECT_EQ(seal("Monday"), "the date \"Monday\" is none; allowed 0000-01-01 to 9999-12-31");
    EXPECT_EQ(seal(kDay), "");
    EXPECT_EQ(seal(kDay), "nothing came since the last seal, which covers row 3");
    ASSERT_TRUE(writer->note(clock.now(), "station", "station", ProgramStopped{}).has_value());
    EXPECT_EQ(seal(kDay), "");
    EXPECT_EQ(verifyLog(folder.file("a.log"))->seals.size(), 2U);
}

// A log that can't be written has rows that a seal could not cover.
TEST(Seal, IsRefusedWhileRowsAreNotOnDisk) {
    const test::ScratchFolder folder;
    const test::FakeClock clock;
    const std::string path = folder.file("a.log");
    const SigningKey key = SigningKey::make();
    auto writer = LogWriter<Production>::open(path, clock, signing());
    ASSERT_TRUE(writer.has_value());
    enterForeman(*writer, clock, key);
    ASSERT_TRUE(writer->flush().has_value());
    {
        SQLite::Database other(path, SQLite::OPEN_READWRITE);
        other.exec("BEGIN IMMEDIATE");
        writer->submit({test::stationRow(1)});
        const auto sealed = sealDay(*writer, key, kForeman, kDay, clock.now());
        ASSERT_FALSE(sealed.has_value());
        EXPECT_EQ(sealed.error().code, ErrorCode::NotWritten);
        EXPECT_EQ(sealed.error().detail.rfind("the day can't be sealed yet: ", 0), 0U);
        other.exec("ROLLBACK");
    }
    EXPECT_TRUE(sealDay(*writer, key, kForeman, kDay, clock.now()).has_value());
    EXPECT_TRUE(verifyLog(path)->ok);
}

TEST(HeadSigned, AtEachEndedWeldAndHourly) {
    const test::ScratchFolder folder;
    test::FakeClock clock;
    const std::string path = folder.file("a.log");
    auto writer = LogWriter<Production>::open(path, clock, signing());
    ASSERT_TRUE(writer.has_value());
    const auto signatures = [&] {
        EXPECT_TRUE(writer->flush().has_value());
        return numberOf(path, "SELECT count(*) FROM event WHERE kind = 'head_signed'");
    };
    writer->submit(test::rowsOf(test::unfinishedWeld(1, 5)), test::sampleDocuments());
    EXPECT_EQ(signatures(), 0);
    writer->submit(test::rowsOf(test::abortedWeld(2, "power")));
    EXPECT_EQ(signatures(), 1);
    writer->submit(test::rowsOf(test::closedWeld(3)));
    EXPECT_EQ(signatures(), 2);
    clock.wait(std::chrono::minutes(59));
    ASSERT_TRUE(writer->note(clock.now(), "station", "station", SoundLost{}).has_value());
    EXPECT_EQ(signatures(), 2);
    clock.wait(std::chrono::minutes(1));
    EXPECT_EQ(signatures(), 2) << "nothing came that could be signed";
    ASSERT_TRUE(writer->note(clock.now(), "station", "station", SoundBack{}).has_value());
    EXPECT_EQ(signatures(), 3);
    EXPECT_TRUE(verifyLog(path)->ok);
    EXPECT_EQ(numberOf(path, "SELECT seq FROM head_signature"), verifyLog(path)->rows);
}

// The next start signs with the same key, from its first row on.
TEST(HeadSigned, ByTheSameKeyAfterARestart) {
    const test::ScratchFolder folder;
    const test::FakeClock clock;
    const std::string path = folder.file("a.log");
    for (int run = 1; run <= 2; ++run) {
        auto writer = LogWriter<Production>::open(path, clock, signing());
        ASSERT_TRUE(writer.has_value());
        writer->submit(test::rowsOf(test::closedWeld(run)), test::sampleDocuments());
        ASSERT_TRUE(writer->flush().has_value());
    }
    EXPECT_EQ(numberOf(path, "SELECT count(*) FROM event WHERE kind = 'key_set'"), 1);
    EXPECT_TRUE(verifyLog(path)->ok);
    EXPECT_TRUE(verifyLog(path)->notes.empty());
    const auto key = Credentials(path + ".credentials").stationKey();
    EXPECT_FALSE(key->made);
    EXPECT_EQ(
        BehindTheBack(path).text("SELECT public_key FROM head_signature"), key->key.publicKey());
}

// A lost key is replaced by an event, which stands before any row that the new one signs; so the
// log stays whole, and says so.
TEST(HeadSigned, ALostKeyIsReplacedByAnEvent) {
    const test::ScratchFolder folder;
    const test::FakeClock clock;
    const std::string path = folder.file("a.log");
    for (const char* reason : {"first", "lost", "not_stored"}) {
        if (std::string(reason) == "not_stored") {
            std::filesystem::remove(path + ".credentials");
            std::filesystem::create_directory(path + ".credentials"); // no file can stand there
        } else {
            std::filesystem::remove(path + ".credentials");
        }
        auto writer = LogWriter<Production>::open(path, clock, signing());
        ASSERT_TRUE(writer.has_value()) << writer.error().detail;
        ASSERT_TRUE(writer->note(clock.now(), "station", "station", ProgramStarted{}).has_value());
        ASSERT_TRUE(writer->flush().has_value());
        const std::int64_t number = numberOf(path, "SELECT count(*) FROM event");
        writer->submit(test::rowsOf(test::closedWeld(number)), test::sampleDocuments());
        ASSERT_TRUE(writer->flush().has_value());
        EXPECT_EQ(
            BehindTheBack(path).text("SELECT body->>'$.d.reason' FROM event WHERE "
                                     "kind = 'key_set' ORDER BY seq DESC LIMIT 1"),
            reason);
        const auto report = verifyLog(path);
        EXPECT_TRUE(report->ok) << reason << ": " << report->finding->reason;
    }
    const auto report = verifyLog(path);
    ASSERT_EQ(report->notes.size(), 2U);
    EXPECT_NE(report->notes[0].find("the station signs with another key (lost)"), std::string::npos)
        << report->notes[0];
}

TEST(HeadSigned, SpilledRowsAreSignedWhenTheyJoin) {
    const test::ScratchFolder folder;
    const test::FakeClock clock;
    const std::string path = folder.file("a.log");
    {
        auto writer = LogWriter<Production>::open(path, clock, signing());
        ASSERT_TRUE(writer.has_value());
        writer->submit(test::rowsOf(test::closedWeld(1)), test::sampleDocuments());
        ASSERT_TRUE(writer->flush().has_value());
        SQLite::Database other(path, SQLite::OPEN_READWRITE);
        other.exec("BEGIN IMMEDIATE");
        writer->submit(test::rowsOf(test::closedWeld(2)));
        EXPECT_FALSE(writer->flush().has_value());
        EXPECT_GT(writer->state().spilled, 0);
        other.exec("ROLLBACK");
        EXPECT_TRUE(writer->flush().has_value());
    }
    const auto report = verifyLog(path);
    EXPECT_TRUE(report->ok) << report->finding->reason;
    EXPECT_EQ(report->signedTo, report->rows);
    EXPECT_EQ(report->welds, 2);
}

// The key is lost and rows wait in the spill file: the event about the key comes first.
TEST(HeadSigned, ALostKeyIsStatedBeforeLeftoverRowsJoin) {
    const test::ScratchFolder folder;
    const test::FakeClock clock;
    const std::string path = folder.file("a.log");
    {
        auto writer = LogWriter<Production>::open(path, clock, signing());
        ASSERT_TRUE(writer.has_value());
        writer->submit(test::rowsOf(test::closedWeld(1)), test::sampleDocuments());
        ASSERT_TRUE(writer->flush().has_value());
    }
    {
        SQLite::Database other(path, SQLite::OPEN_READWRITE);
        auto writer = LogWriter<Production>::open(path, clock, signing());
        ASSERT_TRUE(writer.has_value());
        other.exec("BEGIN IMMEDIATE");
        writer->submit(test::rowsOf(test::closedWeld(2)));
        EXPECT_FALSE(writer->flush().has_value());
        // ends with rows in the spill file
        std::filesystem::remove(path + ".credentials");
        { const auto gone = std::move(*writer); }
        other.exec("ROLLBACK");
    }
    auto writer = LogWriter<Production>::open(path, clock, signing());
    ASSERT_TRUE(writer.has_value());
    ASSERT_TRUE(writer->flush().has_value());
    const auto report = verifyLog(path);
    EXPECT_TRUE(report->ok) << report->finding->reason;
    EXPECT_EQ(report->welds, 2);
}

TEST(Roster, FoldsPeopleAndKeysByTheirRows) {
    const test::ScratchFolder folder;
    const test::FakeClock clock;
    const std::string path = folder.file("a.log");
    const SigningKey key = SigningKey::make();
    {
        auto writer = LogWriter<Production>::open(path, clock, signing());
        ASSERT_TRUE(writer.has_value());
        enterForeman(*writer, clock, key);
        for (const FactDetail& detail :
             {FactDetail(PersonSet{"Jo", "operator", true}),
              FactDetail(PersonSet{"Jo Lind", "trainee", false})}) {
            ASSERT_TRUE(writer->note(clock.now(), kForeman, "person:jo", detail).has_value());
        }
        ASSERT_TRUE(writer->flush().has_value());
    }
    auto reader = LogReader::open(path);
    const auto roster = readRoster(*reader);
    ASSERT_TRUE(roster.has_value()) << roster.error().detail;
    EXPECT_EQ(
        roster->people, (std::vector<Person>{
                            {kForeman, "Ines Falk", Role::Foreman, true},
                            {"person:jo", "Jo Lind", Role::Trainee, false}}));
    EXPECT_EQ(roster->key.size(), 1U);
    EXPECT_EQ(roster->key.at(kForeman), key.publicKey());
    EXPECT_EQ(
        reader->bodiesFrom("person:")->size(),
        static_cast<std::size_t>(
            numberOf(path, "SELECT count(*) FROM event WHERE subject GLOB 'person:*'")));
}

// ---- Tampering with a signed log, by somebody who knows its form but has no key

/// The chain made anew from that row on, its head row with it.
void rechain(BehindTheBack& s, std::int64_t from) {
    const std::int64_t rows = s.number("SELECT max(seq) FROM event");
    std::string previous =
        from == 1 ? s.text("SELECT genesis FROM chain") : rowAt(s, from - 1).hash;
    for (std::int64_t seq = from; seq <= rows; ++seq) {
        Row row = rowAt(s, seq);
        row.hash = chainHash(previous, row.body);
        previous = row.hash;
        change(s, seq, row);
    }
    s.database().exec("UPDATE chain SET seq = (SELECT max(seq) FROM event), head = "
                      "(SELECT hash FROM event ORDER BY seq DESC LIMIT 1)");
}

/// The first row that a rewriting of row `seq` and all behind it shows at: the next signature over
/// it, or the last row, whose hash the signed head names.
std::int64_t showsAt(BehindTheBack& s, std::int64_t seq, std::int64_t rows) {
    const std::string next = "SELECT coalesce(min(seq), " + std::to_string(rows) +
                             ") FROM event WHERE kind IN ('head_signed', 'day_sealed') AND "
                             "body->>'$.d.to_seq' >= " +
                             std::to_string(seq);
    return s.number(next);
}

void signHeadWith(BehindTheBack& s, const SigningKey& key) {
    const LogHead head{s.number("SELECT seq FROM chain"), s.text("SELECT head FROM chain")};
    s.database().exec(
        "UPDATE head_signature SET seq = " + std::to_string(head.seq) + ", public_key = '" +
        key.publicKey() + "', signature = '" +
        key.sign(headMessage(s.text("SELECT log_id FROM chain"), head)) + "'");
}

std::int64_t rewriteFrom(BehindTheBack& s, Random& r, std::int64_t rows) {
    const auto seq = pick(r, 1, rows);
    Row row = rowAt(s, seq);
    const auto at = row.body.find("\"utc_ms\":1");
    ++row.body[at + 9];
    change(s, seq, row);
    const auto shows = showsAt(s, seq, rows);
    rechain(s, seq);
    return shows;
}

std::int64_t sealRow(BehindTheBack& s) {
    return s.number("SELECT seq FROM event WHERE kind = 'day_sealed'");
}

/// The seal's row with its details edited, and all behind it made to fit.
std::int64_t editSeal(BehindTheBack& s, const std::function<void(Fact&, DaySealed&)>& edit) {
    const std::int64_t seq = sealRow(s);
    Row row = rowAt(s, seq);
    Fact fact = *factFromBody(row.body);
    DaySealed seal = std::get<DaySealed>(fact.d);
    edit(fact, seal);
    fact.d = seal;
    row.body = *toBody(fact);
    change(s, seq, row);
    rechain(s, seq);
    return seq;
}

const std::vector<Mutation>& forgeries() {
    static const std::vector<Mutation> all = {
        {"row forged behind the last signature, head row and all",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const std::string body = test::stationRow(pick(r, 900, 999)).body;
             test::put(s, rows + 1, {chainHash(rowAt(s, rows).hash, body), body});
             rechain(s, rows + 1);
             return rows + 1;
         }},
        {"tail cut off, head row and all",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto last = pick(r, 1, rows - 1);
             s.database().exec("DELETE FROM event WHERE seq > " + std::to_string(last));
             rechain(s, last);
             return last + 1;
         }},
        {"rows rewritten with every hash made to fit", rewriteFrom},
        {"rows rewritten, the head signed with a stranger's key",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const auto shows = rewriteFrom(s, r, rows);
             signHeadWith(s, SigningKey::make());
             return shows;
         }},
        {"row forged, the head signed with a stranger's key",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const std::string body = test::stationRow(pick(r, 900, 999)).body;
             test::put(s, rows + 1, {chainHash(rowAt(s, rows).hash, body), body});
             rechain(s, rows + 1);
             signHeadWith(s, SigningKey::make());
             return rows + 1;
         }},
        {"the head's signature gone",
         [](BehindTheBack& s, Random&, std::int64_t) {
             s.database().exec("DELETE FROM head_signature");
             return std::int64_t{0};
         }},
        {"the head's signature changed",
         [](BehindTheBack& s, Random& r, std::int64_t rows) {
             const std::string other =
                 test::touched(s.text("SELECT signature FROM head_signature"), r);
             s.database().exec("UPDATE head_signature SET signature = '" + other + "'");
             return rows;
         }},
        {"another seal by a stranger's key in the seal's place",
         [](BehindTheBack& s, Random&, std::int64_t) {
             const SigningKey key = SigningKey::make();
             return editSeal(s, [&](Fact& fact, DaySealed& seal) {
                 seal.publicKey = key.publicKey();
                 seal.signature =
                     key.sign(sealMessage(seal.log, kDay, fact.by, {seal.toSeq, seal.head}));
             });
         }},
        {"the seal's signature changed",
         [](BehindTheBack& s, Random& r, std::int64_t) {
             return editSeal(s, [&](Fact&, DaySealed& seal) {
                 seal.signature = test::touched(seal.signature, r);
             });
         }},
        {"the seal put under another day",
         [](BehindTheBack& s, Random&, std::int64_t) {
             return editSeal(s, [&](Fact& fact, DaySealed&) { fact.subject = "day:2030-01-06"; });
         }},
        {"the seal put under somebody else's name",
         [](BehindTheBack& s, Random&, std::int64_t) {
             return editSeal(s, [&](Fact& fact, DaySealed&) { fact.by = "person:jo"; });
         }},
        {"the seal made to end earlier",
         [](BehindTheBack& s, Random& r, std::int64_t) {
             const auto to = pick(r, 1, sealRow(s) - 2);
             const std::string hash = rowAt(s, to).hash;
             return editSeal(s, [&](Fact&, DaySealed& seal) {
                 seal.toSeq = to;
                 seal.head = hash;
             });
         }},
        {"the foreman's key exchanged for a stranger's",
         [](BehindTheBack& s, Random&, std::int64_t rows) {
             const std::int64_t seq = s.number(
                 "SELECT seq FROM event WHERE kind = 'key_set' AND subject = 'person:ines'");
             Row row = rowAt(s, seq);
             Fact fact = *factFromBody(row.body);
             fact.d = KeySet{SigningKey::make().publicKey(), "first"};
             row.body = *toBody(fact);
             change(s, seq, row);
             const auto shows = showsAt(s, seq, rows);
             rechain(s, seq);
             return shows;
         }},
        {"the foreman made an operator", [](BehindTheBack& s, Random&, std::int64_t rows) {
             const std::int64_t seq = s.number(
                 "SELECT seq FROM event WHERE kind = 'person_set' AND subject = 'person:ines'");
             Row row = rowAt(s, seq);
             Fact fact = *factFromBody(row.body);
             fact.d = PersonSet{"Ines Falk", "operator", true};
             row.body = *toBody(fact);
             change(s, seq, row);
             const auto shows = showsAt(s, seq, rows);
             rechain(s, seq);
             return shows;
         }}};
    return all;
}

TEST(Forgery, OfEveryKindIsFoundInASignedLog) {
    const test::ScratchFolder folder;
    const std::string sound = folder.file("sound.log");
    writeSealedLog(sound, test::FakeClock(), SigningKey::make());
    ASSERT_TRUE(verifyLog(sound)->ok);
    const int made = test::tamper(sound, forgeries(), test::rounds(25), 20300108);
    EXPECT_GE(made, test::rounds(350));
}

// Else the next row would be signed over what a stranger did while no program ran.
TEST(Forgery, IsNotSignedOverByTheNextStart) {
    const test::FakeClock clock;
    for (const bool cut : {false, true}) {
        const test::ScratchFolder folder;
        const std::string path = folder.file("a.log");
        writeSealedLog(path, clock, SigningKey::make());
        {
            BehindTheBack s(path);
            const std::int64_t rows = s.number("SELECT max(seq) FROM event");
            if (cut) {
                s.database().exec("DELETE FROM event WHERE seq = " + std::to_string(rows));
                rechain(s, rows - 1);
            } else {
                const std::string body = test::stationRow(900).body;
                test::put(s, rows + 1, {chainHash(rowAt(s, rows).hash, body), body});
                rechain(s, rows + 1);
            }
        }
        const auto writer = LogWriter<Production>::open(path, clock, signing());
        ASSERT_FALSE(writer.has_value());
        EXPECT_EQ(writer.error().code, ErrorCode::Damaged);
        EXPECT_NE(writer.error().detail.find(kNotSigned), std::string::npos)
            << writer.error().detail;
        EXPECT_FALSE(verifyLog(path)->ok) << "and is left as it is";
        const auto opened = openLog<Production>(path, clock, {}, signing());
        ASSERT_TRUE(opened.has_value()) << opened.error().detail;
        ASSERT_TRUE(opened->aside.has_value());
        EXPECT_FALSE(opened->aside->sameChain);
        EXPECT_FALSE(verifyLog(opened->aside->damaged)->ok) << "kept as the proof";
    }
}

// Only the hash of one row is damaged: the same chain goes on in a sound file, signed as before.
TEST(HeadSigned, AChainThatWasCopiedIntoASoundFileIsSignedAtOnce) {
    const test::ScratchFolder folder;
    const test::FakeClock clock;
    const std::string path = folder.file("a.log");
    writeSealedLog(path, clock, SigningKey::make());
    {
        BehindTheBack s(path);
        const std::int64_t seq =
            s.number("SELECT max(seq) FROM event WHERE subject = '" + test::weldName(5) + "'");
        Row row = rowAt(s, seq);
        row.hash[0] = row.hash[0] == 'a' ? 'b' : 'a';
        change(s, seq, row);
    }
    auto opened = openLog<Production>(path, clock, {}, signing());
    ASSERT_TRUE(opened.has_value()) << opened.error().detail;
    ASSERT_TRUE(opened->aside.has_value());
    EXPECT_TRUE(opened->aside->sameChain);
    ASSERT_TRUE(opened->writer.flush().has_value());
    const auto report = verifyLog(path);
    EXPECT_TRUE(report->ok) << report->finding->reason;
    EXPECT_EQ(report->seals.size(), 1U);
    EXPECT_EQ(report->signedTo, report->rows);
    EXPECT_TRUE(report->notes.empty()) << report->notes.front();
}

// Whoever has the station's key, which lies open on the tablet, can sign what he forged: that is
// what the seal's fingerprint on paper is for, and what the README says.
TEST(Forgery, WithTheStationsOwnKeyShowsOnlyAtTheSeal) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    writeSealedLog(path, test::FakeClock(), SigningKey::make());
    const auto before = verifyLog(path);
    auto station = Credentials(path + ".credentials").stationKey();
    {
        BehindTheBack s(path);
        const std::int64_t rows = s.number("SELECT max(seq) FROM event");
        s.database().exec("DELETE FROM event WHERE seq > " + std::to_string(sealRow(s)));
        rechain(s, rows > 0 ? sealRow(s) : 1);
        // The station's key was stated behind the seal; a forger states it again.
        const Fact stated{
            test::FakeClock().now(), "station", "station",
            s.number("SELECT max(n) FROM event WHERE subject = 'station'") + 1,
            KeySet{station->key.publicKey(), "first"}};
        const std::int64_t last = s.number("SELECT max(seq) FROM event");
        const std::string body = *toBody(stated);
        test::put(s, last + 1, {chainHash(rowAt(s, last).hash, body), body});
        s.database().exec("DELETE FROM joint WHERE number = 6");
        rechain(s, last + 1);
        signHeadWith(s, station->key);
    }
    const auto forged = verifyLog(path);
    EXPECT_TRUE(forged->ok) << forged->finding->reason;
    EXPECT_EQ(forged->seals, before->seals) << "what is sealed is still as it was";
    EXPECT_LT(forged->welds, before->welds);
}

TEST(Seal, AnUnsignedLogOfAnOlderVersionStaysSound) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    std::filesystem::copy_file(std::string(SEAMCLOCK_SOURCE_DIR) + "/tests/data/log-v1.log", path);
    const auto report = verifyLog(path);
    ASSERT_TRUE(report.has_value());
    EXPECT_TRUE(report->ok) << report->finding->reason;
    EXPECT_EQ(report->signedTo, 0);
    EXPECT_EQ(report->covered.rfind("no signature: rows 1..", 0), 0U) << report->covered;
}

} // namespace
} // namespace seamclock
