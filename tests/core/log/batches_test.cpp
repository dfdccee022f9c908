// From a batch to its joints and back, in a real log; held against going through every weld.
#include "core/log/batches.h"

#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

std::vector<Event> weldOf(std::int64_t number, const std::string& one, const std::string& two) {
    auto events = test::closedWeld(number);
    auto& opened = std::get<WeldOpened>(events.front().d);
    opened.sheets[0].batch = one;
    opened.sheets[1].batch = two;
    return events;
}

class Batches : public ::testing::Test {
protected:
    void write(const std::vector<Event>& events) {
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        writer->submit(test::rowsOf(events), test::sampleDocuments());
        ASSERT_TRUE(writer->flush());
    }
    std::vector<std::int64_t> numbers(const std::string& batch) {
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader);
        const auto found = jointsOfBatch(*reader, batch);
        EXPECT_TRUE(found) << (found ? "" : found.error().detail);
        std::vector<std::int64_t> out;
        for (const BatchJoint& joint : found ? found->joints : std::vector<BatchJoint>()) {
            out.push_back(joint.line.number);
        }
        return out;
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    std::string path = folder.file("a.log");
};

using Numbers = std::vector<std::int64_t>;

TEST_F(Batches, AreFoundByTheirWholeNameOnEitherSheet) {
    write(weldOf(1, "VP-40713", "VP-40714"));
    write(weldOf(2, "VP-407", "VP 40713"));
    write(weldOf(3, "vp-40713", "VP-40714"));
    write(weldOf(4, "VP-40713", "VP-40713"));
    // Newest first; whoever recalls a batch would rather see one that is spelt another way.
    EXPECT_EQ(numbers("VP-40713"), (Numbers{4, 3, 1}));
    EXPECT_EQ(numbers("vp-40713"), (Numbers{4, 3, 1}));
    EXPECT_EQ(numbers(" VP-40714 "), (Numbers{3, 1}));
    EXPECT_EQ(numbers("VP-407"), Numbers{2});
    EXPECT_EQ(numbers("VP 40713"), Numbers{2});
    EXPECT_EQ(numbers("VP-4071"), Numbers{});
    EXPECT_EQ(numbers("40713"), Numbers{});
    auto reader = LogReader::open(path);
    const auto both = jointsOfBatch(*reader, "VP-40713");
    ASSERT_EQ(both->joints.front().sheets.size(), 2U);
    EXPECT_EQ(both->joints.front().sheets[1].sheet, 2);
    EXPECT_FALSE(jointsOfBatch(*reader, "  ").has_value());
}

TEST_F(Batches, OfOddSignsAreFoundToo) {
    write(weldOf(1, "--", "\"7\" * OR 8"));
    write(weldOf(2, "Ж-7", "(7)"));
    EXPECT_EQ(numbers("--"), Numbers{1});
    EXPECT_EQ(numbers("\"7\" * OR 8"), Numbers{1});
    EXPECT_EQ(numbers("Ж-7"), Numbers{2});
    EXPECT_EQ(numbers("(7)"), Numbers{2});
    EXPECT_EQ(numbers("7"), Numbers{});
    write(weldOf(3, "A – 12", "Lot № 7"));
    EXPECT_EQ(numbers("A – 12"), Numbers{3});
    EXPECT_EQ(numbers("Lot № 7"), Numbers{3});
}

TEST_F(Batches, ACorrectionIsFoundUnderBothNames) {
    auto events = weldOf(1, "VP-1", "VP-2");
    Event corrected = events.back();
    corrected.n = events.back().n + 1;
    corrected.d = ValueCorrected{1, "sheets.0.batch", "VP-1", "VP-9", "read wrongly"};
    events.push_back(corrected);
    write(events);
    EXPECT_EQ(numbers("VP-1"), Numbers{1});
    EXPECT_EQ(numbers("VP-9"), Numbers{1});
    const auto sheets = batchesOf(events);
    ASSERT_TRUE(sheets) << sheets.error().detail;
    ASSERT_EQ(sheets->size(), 3U);
    EXPECT_EQ((*sheets)[0].batch, "VP-9");
    EXPECT_TRUE((*sheets)[0].corrected);
    EXPECT_EQ((*sheets)[1].batch, "VP-1");
    EXPECT_TRUE((*sheets)[1].overruled);
    EXPECT_EQ((*sheets)[2].batch, "VP-2");
    EXPECT_FALSE((*sheets)[2].corrected || (*sheets)[2].overruled);
}

TEST_F(Batches, AJointThatCantBeReadIsCountedAsOneThatMayHoldIt) {
    write(weldOf(1, "VP-1", "VP-2"));
    write(weldOf(2, "VP-1", "VP-3"));
    write(weldOf(3, "VP-4", "VP-4"));
    {
        test::BehindTheBack tool(path);
        tool.database().exec(
            "UPDATE event SET body = replace(body, '\"v\":', '\"w\":') WHERE subject = '" +
            test::weldName(2) + "' AND n = 3");
    }
    const auto found = [&] {
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader);
        return jointsOfBatch(*reader, "VP-1").value_or(BatchFound());
    };
    const auto expectOne = [](const BatchFound& one, const char* when) {
        ASSERT_EQ(one.joints.size(), 1U) << when;
        EXPECT_EQ(one.joints[0].line.number, 1) << when;
        EXPECT_EQ(one.damaged, 1U) << when;
    };
    expectOne(found(), "its line was worked out before");
    {
        SQLite::Database tool(path, SQLite::OPEN_READWRITE);
        tool.exec("DROP TABLE joint_text");
    }
    expectOne(found(), "and after");
}

TEST_F(Batches, AreTheSameWithoutTheCache) {
    write(weldOf(1, "VP-1", "VP-2"));
    write(weldOf(2, "VP-2", "VP-3"));
    {
        SQLite::Database tool(path, SQLite::OPEN_READWRITE);
        tool.exec("DROP TABLE joint_text");
    }
    EXPECT_EQ(numbers("VP-2"), (Numbers{2, 1}));
}

} // namespace
} // namespace seamclock
