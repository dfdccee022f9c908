#include "core/report/evidence.h"

#include "core/report/record_text.h"

#include "core/log/chain.h"
#include "core/log/fact_codec.h"
#include "core/log/log_writer.h"
#include "core/log/seal.h"
#include "core/log/world.h"
#include "core/weld/event_codec.h"
#include "tests/support/log_samples.h"
#include "tests/support/sanitized.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <cstdlib>
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <random>

namespace seamclock {
namespace {

/// Joints 1, 2 and 3, the day sealed behind the second by this key; the third signed by the
/// station; the fourth is open.
class EvidenceTest : public ::testing::Test {
protected:
    void SetUp() override {
        LogWriterOptions options = test::quick();
        options.sign = true;
        auto writer = LogWriter<Production>::open(path, clock, options);
        ASSERT_TRUE(writer.has_value()) << writer.error().detail;
        for (const FactDetail& detail :
             {FactDetail(PersonSet{"Ines Falk", "foreman", true}),
              FactDetail(KeySet{key.publicKey(), "first"})}) {
            ASSERT_TRUE(writer->note(clock.now(), "station", "person:ines", detail).has_value());
        }
        writer->submit(test::rowsOf(test::closedWeld(1)), test::sampleDocuments());
        writer->submit(test::rowsOf(test::closedWeld(2)));
        const auto sealed = sealDay(*writer, key, "person:ines", "2030-01-07", clock.now());
        ASSERT_TRUE(sealed.has_value()) << sealed.error().detail;
        paper = sealFingerprint(*sealed);
        writer->submit(test::rowsOf(test::closedWeld(3)));
        ASSERT_TRUE(writer->flush().has_value());
        writer->submit(test::rowsOf(test::unfinishedWeld(4, 6)));
        ASSERT_TRUE(writer->flush().has_value());
    }
    std::string evidenceOf(std::int64_t number) {
        auto reader = LogReader::open(path);
        const auto text = evidenceJson(*reader, test::weldName(number));
        EXPECT_TRUE(text.has_value()) << (text ? "" : text.error().detail);
        return text.value_or("");
    }
    static EvidenceReport check(const std::string& text) {
        const auto report = checkEvidence("evidence", text);
        EXPECT_TRUE(report.has_value()) << (report ? "" : report.error().detail);
        return report.value_or(EvidenceReport{});
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    std::string path = folder.file("a.log");
    SigningKey key = SigningKey::make();
    std::string paper;
};

TEST_F(EvidenceTest, OfASealedJointNamesSealAndKey) {
    const EvidenceReport report = check(evidenceOf(1));
    EXPECT_TRUE(report.ok) << report.finding;
    EXPECT_EQ(report.weld, test::weldName(1));
    EXPECT_EQ(report.number, 1);
    EXPECT_TRUE(report.sealed);
    EXPECT_EQ(report.by, "person:ines");
    EXPECT_EQ(report.day, "2030-01-07");
    EXPECT_EQ(report.fingerprint, paper);
    EXPECT_EQ(report.publicKey, key.publicKey());
    EXPECT_EQ(report.keyFingerprint, fingerprint(key.publicKey()));
    EXPECT_NE(report.record.find("within limits"), std::string::npos);
    EXPECT_EQ(report.verdict, "within limits");
}

TEST_F(EvidenceTest, OfAJointBehindTheSealIsTheStationsAndSaysSo) {
    const EvidenceReport report = check(evidenceOf(3));
    EXPECT_TRUE(report.ok) << report.finding;
    EXPECT_FALSE(report.sealed);
    EXPECT_EQ(report.by, "station");
    EXPECT_EQ(report.fingerprint, "");
}

TEST_F(EvidenceTest, IsRefusedWhereNoSignatureCoversTheJoint) {
    auto reader = LogReader::open(path);
    const auto open = evidenceJson(*reader, test::weldName(4));
    ASSERT_FALSE(open.has_value());
    EXPECT_EQ(open.error().code, ErrorCode::Refused);
    EXPECT_NE(open.error().detail.find("sealing the day makes one"), std::string::npos);
    EXPECT_EQ(evidenceJson(*reader, "weld:none").error().code, ErrorCode::Missing);
}

// Each byte of every row, hash and document is under the signature or compared with what is.
TEST_F(EvidenceTest, AnyChangedDigitIsFound) {
    const std::string sound = evidenceOf(1);
    std::mt19937_64 random(11);
    for (int round = 0; round < test::rounds(300); ++round) {
        std::string text = sound;
        std::size_t at = 0;
        do {
            at = random() % text.size();
        } while (text[at] < '1' || text[at] > '8');
        ++text[at];
        const auto report = checkEvidence("evidence", text);
        if (report && text.compare(at - 9, 9, "\"words\": ") != 0) {
            EXPECT_FALSE(report->ok) << "byte " << at << " of " << text;
        }
    }
}

TEST_F(EvidenceTest, NamesWhatDoesNotHoldTogether) {
    const std::string sound = evidenceOf(1);
    const auto finding = [&](const std::string& was, const std::string& now) {
        std::string text = sound;
        const auto at = text.find(was);
        EXPECT_NE(at, std::string::npos) << was;
        text.replace(at, was.size(), now);
        return check(text).finding;
    };
    EXPECT_EQ(check(sound).finding, "");
    EXPECT_NE(
        finding("within limits", "within Limits").find("the record in the file"),
        std::string::npos);
    // A file of another version: what it says itself is told to prove nothing.
    std::string older = sound;
    const std::string words = "\"words\": " + std::to_string(kRecordWords);
    ASSERT_NE(older.find(words), std::string::npos);
    older.replace(older.find(words), words.size(), "\"words\": 1");
    EXPECT_TRUE(check(older).ok);
    EXPECT_FALSE(check(older).otherWords) << "the words are the same by chance";
    older.replace(older.find("within limits"), 13, "within Limits");
    EXPECT_TRUE(check(older).ok) << check(older).finding;
    EXPECT_TRUE(check(older).otherWords);
    EXPECT_NE(check(older).record.find("within limits"), std::string::npos);
    EXPECT_NE(
        finding("\"weld\": \"" + test::weldName(1), "\"weld\": \"" + test::weldName(7))
            .find("there is no row of"),
        std::string::npos);
    // Another log's id: the seal is not of that log.
    const auto id = sound.find("\"id\": \"") + 7;
    std::string other = sound;
    other[id] = other[id] == 'a' ? 'b' : 'a';
    EXPECT_EQ(check(other).finding, "the signature is not one of the key that it names");
    for (const std::string& none :
         {std::string(), std::string("{}"), std::string("[1]"), sound.substr(0, 400)}) {
        const auto refused = checkEvidence("evidence", none);
        ASSERT_FALSE(refused.has_value()) << none;
        EXPECT_EQ(refused.error().code, ErrorCode::Malformed);
    }
}

/// An evidence file in the hands of somebody who chains what he changed anew; where he also signs
/// it, it is with a key of his own, as he has no other.
class Forged {
public:
    explicit Forged(const std::string& sound) : m_file(nlohmann::json::parse(sound)) {}

    nlohmann::json& operator[](const char* key) { return m_file[key]; }
    nlohmann::json& rows() { return m_file["rows"]; }
    void chain() {
        std::string previous = m_file["before"]["hash"];
        std::int64_t seq = m_file["before"]["seq"];
        for (nlohmann::json& row : rows()) {
            row["seq"] = ++seq;
            row["hash"] = chainHash(previous, row["body"].get<std::string>());
            previous = row["hash"];
        }
    }
    /// The weld's rows alone.
    void unsign() {
        const auto isOfWeld = [](const std::string& body) {
            return body.find("\"subject\":\"weld:") != std::string::npos;
        };
        while (!isOfWeld(rows().back()["body"])) {
            rows().erase(rows().end() - 1);
        }
    }
    /// His signature over them in place of the shop's.
    void sign() {
        unsign();
        chain();
        const LogHead head{rows().back()["seq"], rows().back()["hash"]};
        const std::string message = headMessage(m_file["log"]["id"].get<std::string>(), head);
        const auto body = toBody(Fact{
            {{}, "boot-1", {}, {}},
            "station",
            "station",
            9,
            HeadSigned{head.seq, head.hash, m_key.publicKey(), m_key.sign(message)}});
        ASSERT_TRUE(body.has_value()) << body.error().detail;
        rows().push_back({{"seq", 0}, {"hash", ""}, {"body", *body}});
        chain();
    }
    EvidenceReport check() const {
        const auto report = checkEvidence("evidence", m_file.dump(1));
        EXPECT_TRUE(report.has_value()) << (report ? "" : report.error().detail);
        return report.value_or(EvidenceReport{});
    }

private:
    nlohmann::json m_file;
    SigningKey m_key = SigningKey::make();
};

TEST_F(EvidenceTest, ALinkThatIsLeftOutOrAddedIsFoundWhereItIs) {
    const std::string sound = evidenceOf(1);
    const std::string second = std::to_string(Forged(sound).rows()[1]["seq"].get<int>());
    Forged cut(sound);
    cut.rows().erase(1);
    EXPECT_EQ(cut.check().finding, "row " + second + " is missing");
    Forged begun(sound);
    begun["before"]["seq"] = 0;
    EXPECT_EQ(begun.check().finding, "the chain does not begin with the genesis of its log");
    Forged open(sound);
    open.unsign();
    EXPECT_EQ(open.check().finding, "the last row is no signature");
    Forged empty(sound);
    empty.rows() = nlohmann::json::array();
    EXPECT_EQ(empty.check().finding, "the last row is no signature");
    Forged sealAlone(sound);
    const nlohmann::json signedRow = sealAlone.rows()[sealAlone.rows().size() - 2];
    sealAlone["before"] = {{"seq", signedRow["seq"]}, {"hash", signedRow["hash"]}};
    sealAlone.rows() = nlohmann::json::array({sealAlone.rows().back()});
    EXPECT_EQ(sealAlone.check().finding, "the signature is not of a row that is here");
    Forged changed(sound);
    changed.rows()[0]["body"] = changed.rows()[1]["body"];
    changed.chain();
    EXPECT_EQ(changed.check().finding, "the signature is not of a row that is here");
    // What the seal does not cover may not be said of the joint.
    Forged late(sound);
    late.rows().insert(late.rows().end() - 1, late.rows()[0]);
    late.chain();
    const auto lateRow = std::to_string((late.rows().end() - 2)->at("seq").get<int>());
    EXPECT_EQ(late.check().finding, "row " + lateRow + " of the joint stands behind the signature");
}

TEST_F(EvidenceTest, ADocumentThatIsLeftOutIsNamedWithTheRowThatNeedsIt) {
    Forged file(evidenceOf(1));
    const std::string procedure = file["documents"][0]["sha256"];
    const std::string opening = std::to_string(file.rows()[0]["seq"].get<int>());
    file["documents"].erase(0);
    EXPECT_EQ(
        file.check().finding,
        "the document " + procedure + " is missing; row " + opening + " names it");
}

// His key is not the shop's, which the reader compares; what it signs must still make a weld.
TEST_F(EvidenceTest, AnotherKeyIsToldAndSignsNoStoryThatIsNone) {
    const std::string sound = evidenceOf(1);
    Forged whole(sound);
    whole.sign();
    EXPECT_EQ(whole.check().finding, "");
    EXPECT_FALSE(whole.check().sealed);
    EXPECT_NE(whole.check().keyFingerprint, fingerprint(key.publicKey()));
    Forged gap(sound);
    gap.rows().erase(1);
    gap.sign();
    const std::string from = std::to_string(gap.rows()[1]["seq"].get<int>());
    EXPECT_EQ(
        gap.check().finding,
        "row " + from + ": it is event 3 of " + test::weldName(1) + ", and event 2 is missing");
    Forged closedFirst(sound);
    const std::size_t last = test::closedWeld(1).size() - 1; // of those rows, which come first
    auto closing = eventFromBody(closedFirst.rows()[last]["body"].get<std::string>());
    ASSERT_TRUE(closing.has_value()) << closing.error().detail;
    closing->n = 2;
    closedFirst.rows()[1]["body"] = *toBody(*closing);
    closedFirst.sign();
    EXPECT_EQ(
        closedFirst.check().finding.rfind("the events of " + test::weldName(1) + " fit no weld: "),
        0U)
        << closedFirst.check().finding;
    Forged noise(sound);
    noise.rows()[1]["body"] = "{}";
    noise.sign();
    EXPECT_EQ(noise.check().finding.rfind("row " + from + ": "), 0U) << noise.check().finding;
}

// As the user guide shows: with python's JSON, sha256sum and openssl alone.
TEST_F(EvidenceTest, IsCheckedByHandWithoutThisProgram) {
    if (std::system("command -v python3 openssl sha256sum >/dev/null") != 0) {
        GTEST_SKIP() << "python3, openssl or sha256sum is not installed";
    }
    std::ofstream(folder.file("evidence.json")) << evidenceOf(1);
    std::ofstream(folder.file("by_hand.py")) << R"py(
import hashlib, json, subprocess, sys
told = json.load(open(sys.argv[1]))
previous = told["before"]["hash"]
for row in told["rows"]:
    assert hashlib.sha256((previous + "\n" + row["body"]).encode()).hexdigest() == row["hash"]
    previous = row["hash"]
seal = json.loads(told["rows"][-1]["body"])
assert seal["kind"] == "day_sealed"
d = seal["d"]
signed = [row for row in told["rows"] if row["seq"] == d["to_seq"]][0]
assert signed["hash"] == d["head"]
message = "\n".join(["seamclock-seal/1", told["log"]["id"], seal["subject"][4:], seal["by"],
                     str(d["to_seq"]), d["head"]])
open("message", "w").write(message)
open("signature", "wb").write(bytes.fromhex(d["signature"]))
open("key.der", "wb").write(bytes.fromhex("302a300506032b6570032100" + d["public_key"]))
subprocess.run("openssl pkeyutl -verify -pubin -keyform DER -inkey key.der -rawin -in message "
               "-sigfile signature".split(), check=True, stdout=subprocess.DEVNULL)
paper = hashlib.sha256("\n".join([message, d["public_key"], d["signature"]]).encode()).hexdigest()
print(" ".join(paper[i:i + 4] for i in range(0, 32, 4)), end="")
)py";
    const std::string command =
        "cd '" + folder.path() + "' && python3 by_hand.py evidence.json > paper";
    ASSERT_EQ(std::system(command.c_str()), 0);
    EXPECT_EQ(test::textOf(folder.file("paper")), paper);
}

} // namespace
} // namespace seamclock
