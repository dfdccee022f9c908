// The log that speeds are measured with is a true one: what is measured on a forgery would be worth
// nothing.
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "tests/speed/big_log.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

test::BigLogOptions smallOptions() {
    test::BigLogOptions options;
    options.joints = 300;
    options.resources = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources";
    return options;
}

class BigLog : public testing::Test {
protected:
    void SetUp() override {
        const auto made = test::makeBigLog(m_folder.file("big.log"), smallOptions());
        ASSERT_TRUE(made.has_value()) << made.error().detail;
        m_facts = *made;
        auto reader = LogReader::open(m_folder.file("big.log"));
        ASSERT_TRUE(reader.has_value()) << reader.error().detail;
        m_reader.emplace(std::move(*reader));
    }

    std::int64_t hits(const std::function<void(JointFilter&)>& choose) {
        JointFilter filter;
        choose(filter);
        filter.limit = 1'000;
        const auto lines = m_reader->joints(filter);
        EXPECT_TRUE(lines.has_value());
        return lines ? static_cast<std::int64_t>(lines->size()) : -1;
    }

    test::ScratchFolder m_folder;
    test::BigLogFacts m_facts;
    std::optional<LogReader> m_reader;
};

TEST_F(BigLog, VerifiesWithItsCacheAndIsFinished) {
    const auto report = verifyLog(m_folder.file("big.log"));
    ASSERT_TRUE(report.has_value()) << report.error().detail;
    EXPECT_TRUE(report->ok) << report->finding->reason;
    EXPECT_EQ(report->welds, 300);
    EXPECT_EQ(report->rows, m_facts.events);
    EXPECT_EQ(report->notes, std::vector<std::string>{}); // the cache is whole
    EXPECT_EQ(m_reader->openWelds().value(), std::vector<std::string>{});
    EXPECT_EQ(m_reader->highestNumber().value(), 300);
}

TEST_F(BigLog, HoldsWhatTheCodecWritesOfItsEvents) {
    const auto sample = test::sampleOfBigLog(smallOptions(), 3);
    ASSERT_TRUE(sample.has_value()) << sample.error().detail;
    ASSERT_GT(sample->size(), 700U);
    std::string subject;
    std::vector<std::string> bodies;
    for (const LogRow& row : *sample) {
        if (row.subject != subject) {
            subject = row.subject;
            bodies = m_reader->bodies(subject).value();
        }
        ASSERT_LE(row.n, static_cast<std::int64_t>(bodies.size()));
        ASSERT_EQ(bodies[static_cast<std::size_t>(row.n - 1)], row.body);
    }
}

TEST_F(BigLog, HasTenEventsAJointAndBenchesThatWeldAtTheSameTime) {
    EXPECT_GT(m_facts.events, 300 * 9);
    EXPECT_LT(m_facts.events, 300 * 11);
    std::string before;
    std::int64_t changes = 0;
    ASSERT_TRUE(m_reader
                    ->eachRow([&](const StoredRow& row) {
                        const auto from = row.body.find("\"subject\":\"") + 11;
                        const std::string subject = row.body.substr(from, 41);
                        changes += subject == before ? 0 : 1;
                        before = subject;
                        return true;
                    })
                    .has_value());
    EXPECT_GT(changes, 600); // one after the other would be 300
}

TEST_F(BigLog, HasFewAndManyOfWhatIsLookedFor) {
    EXPECT_EQ(hits([](JointFilter& f) { f.bench = test::kRareBench; }), 7);
    EXPECT_EQ(hits([](JointFilter& f) { f.by = test::kRareBy; }), 7);
    EXPECT_EQ(hits([](JointFilter& f) { f.material = test::kRareMaterial; }), 7);
    EXPECT_EQ(hits([](JointFilter& f) { f.verdict = test::kRareVerdict; }), 7);
    EXPECT_EQ(hits([](JointFilter& f) { f.text = test::kRareWord; }), 7);
    EXPECT_EQ(hits([](JointFilter& f) { f.text = "velmorra"; }), 300);
    EXPECT_GT(hits([](JointFilter& f) { f.bench = "west"; }), 60);
    EXPECT_GT(hits([](JointFilter& f) { f.verdict = "within limits"; }), 150);
}

TEST(BigLogSeed, SameSeedSameFileAnotherSeedAnother) {
    const test::ScratchFolder folder;
    test::BigLogOptions options = smallOptions();
    options.joints = 20;
    ASSERT_TRUE(test::makeBigLog(folder.file("a.log"), options).has_value());
    ASSERT_TRUE(test::makeBigLog(folder.file("b.log"), options).has_value());
    options.seed = 2;
    ASSERT_TRUE(test::makeBigLog(folder.file("c.log"), options).has_value());
    const auto headOf = [&](const char* name) {
        return LogReader::open(folder.file(name)).value().head().value().hash;
    };
    EXPECT_EQ(headOf("a.log"), headOf("b.log"));
    EXPECT_NE(headOf("a.log"), headOf("c.log"));
}

TEST(BigLogRefuses, AFileThatIsThereAndSizesThatMakeNoLog) {
    const test::ScratchFolder folder;
    test::BigLogOptions options = smallOptions();
    options.joints = 3;
    ASSERT_TRUE(test::makeBigLog(folder.file("a.log"), options).has_value());
    EXPECT_EQ(test::makeBigLog(folder.file("a.log"), options).error().code, ErrorCode::NotWritten);
    options.joints = 0;
    EXPECT_EQ(test::makeBigLog(folder.file("b.log"), options).error().code, ErrorCode::OutOfRange);
}

} // namespace
} // namespace seamclock
