// Which seams of a job are made: that the running state says of every weld what the log would say
// if it were read anew, and that a log of many joints is not read through for it.
#include "core/session/made_seams.h"

#include "core/log/world.h"
#include "tests/core/log/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::hours;
using test::Story;
using test::weldName;

/// A weld of that seam, told so far by `tell`; each number an hour after the one before.
template <class Tell>
Weld weldOf(
    std::int64_t number, const std::string& seam, const Tell& tell,
    WeldType type = WeldType::Production) {
    WeldOpened opened = test::inventedOpening();
    opened.number = number;
    opened.seam = seam;
    opened.type = type;
    Story story(opened);
    tell(story);
    auto events = story.weld().events;
    for (Event& event : events) {
        event.subject = weldName(number);
        event.at.boot += hours(number);
        event.at.utc += hours(number);
    }
    return fold(events).value();
}

const auto kClosed = [](Story& story) { story.close(); };
const auto kStoppedBefore = [](Story& story) {
    story.align().then(WeldAborted{"sheet_slipped", "A sheet slipped"});
};
const auto kStoppedAfter = [](Story& story) {
    story.buildUp().then(WeldAborted{"changeover_late", "Changeover too late"});
};
const auto kCutOut = [](Story& story) {
    story.close().then(Decided{Decision::CutOut, "bend_failed"});
};
const auto kPardoned = [](Story& story) {
    story.close()
        .then(Decided{Decision::CutOut, "bend_failed"})
        .then(Decided{Decision::Accept, "the wrong joint"});
};

class MadeSeamsOfALog : public testing::Test {
protected:
    void write(const std::vector<Weld>& welds) {
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        for (const Weld& weld : welds) {
            writer->submit(test::rowsOf(weld.events), test::sampleDocuments());
        }
        ASSERT_TRUE(writer->flush());
    }
    MadeSeams read(const std::vector<std::string>& labels) {
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader) << reader.error().detail;
        MadeSeams seams(labels);
        const auto done = seams.read(*reader);
        EXPECT_TRUE(done) << done.error().detail;
        return seams;
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    std::string path = folder.file("seams.log");
};

TEST_F(MadeSeamsOfALog, TheNewestJointThatCountsDecides) {
    write({
        weldOf(1, "S1", kClosed),
        weldOf(2, "S2", kStoppedBefore),
        weldOf(3, "S3", kStoppedAfter),
        weldOf(4, "S4", kCutOut),
        weldOf(5, "S5", kClosed, WeldType::Trial),
        weldOf(6, "S6", kCutOut),
        weldOf(7, "S6/R1", kClosed),
        weldOf(8, "S7", kCutOut),
        weldOf(9, "S7/R1", kStoppedBefore),
        weldOf(10, "S8", kPardoned),
        weldOf(11, "S10", kClosed),
    });
    const MadeSeams seams = read({"S1", "S2", "S3", "S4", "S5", "S6", "S7", "S8", "S9"});
    EXPECT_EQ(seams.of("S1"), (SeamFinding{SeamState::Made, weldName(1), "S1", 1}));
    EXPECT_EQ(seams.of("S2"), SeamFinding{}) << "its faces never met";
    EXPECT_EQ(seams.of("S3"), (SeamFinding{SeamState::CutOut, weldName(3), "S3", 3}));
    EXPECT_EQ(seams.of("S4"), (SeamFinding{SeamState::CutOut, weldName(4), "S4", 4}));
    EXPECT_EQ(seams.of("S5"), SeamFinding{}) << "a trial joint";
    EXPECT_EQ(seams.of("S6"), (SeamFinding{SeamState::Made, weldName(7), "S6/R1", 7}));
    EXPECT_EQ(seams.of("S7"), (SeamFinding{SeamState::CutOut, weldName(8), "S7", 8}));
    EXPECT_EQ(seams.of("S8").state, SeamState::Made) << "the last word counts";
    EXPECT_EQ(seams.of("S9"), SeamFinding{});
    EXPECT_EQ(seams.of("S10"), SeamFinding{}) << "no seam of this job";
}

TEST_F(MadeSeamsOfALog, WhatAWeldTellsIsWhatTheLogWouldSay) {
    MadeSeams seams({"S1"});
    EXPECT_FALSE(seams.isRead());
    EXPECT_FALSE(seams.take(weldOf(1, "S2", kClosed))) << "of another job";
    EXPECT_TRUE(seams.take(weldOf(1, "S1", [](Story& story) { story.align(); })));
    EXPECT_EQ(seams.of("S1").state, SeamState::Made) << "from its opening on";
    EXPECT_TRUE(seams.take(weldOf(1, "S1", kStoppedBefore)));
    EXPECT_EQ(seams.of("S1"), SeamFinding{});
    const std::vector<Weld> welds{
        weldOf(1, "S1", kStoppedBefore), weldOf(2, "S1", kStoppedAfter),
        weldOf(3, "S1/R1", kStoppedBefore), weldOf(4, "S1/R1", kCutOut),
        weldOf(5, "S1/R2", kClosed)};
    std::vector<Weld> until;
    for (const Weld& weld : welds) {
        seams.take(weld);
        EXPECT_FALSE(seams.take(weld)) << "nothing new";
        until.push_back(weld);
        write(until);
        EXPECT_EQ(seams.of("S1"), read({"S1"}).of("S1")) << "after joint " << until.size();
    }
    EXPECT_EQ(seams.of("S1"), (SeamFinding{SeamState::Made, weldName(5), "S1/R2", 5}));
}

TEST_F(MadeSeamsOfALog, AnOpenJointThatIsStoppedLeavesTheOneBeforeIt) {
    const auto opened = [](Story& story) { story.align(); };
    write({weldOf(1, "S1", kStoppedAfter), weldOf(2, "S1/R1", opened)});
    MadeSeams seams = read({"S1"});
    EXPECT_EQ(seams.of("S1").number, 2);
    EXPECT_TRUE(seams.take(weldOf(2, "S1/R1", kStoppedBefore)));
    EXPECT_EQ(seams.of("S1"), (SeamFinding{SeamState::CutOut, weldName(1), "S1", 1}));
}

TEST_F(MadeSeamsOfALog, AreNotReadWhileTheListOfJointsIsMadeAnew) {
    std::vector<Weld> many;
    for (std::int64_t number = 1; number <= 110; ++number) {
        many.push_back(weldOf(number, "S" + std::to_string(number), kClosed));
    }
    write(many);
    test::BehindTheBack(path).database().exec("DELETE FROM joint_state");
    auto reader = LogReader::open(path);
    ASSERT_TRUE(reader);
    ASSERT_GT(reader->unlistedRows().value(), 2'000);
    MadeSeams seams({"S1"});
    const auto refused = seams.read(*reader);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Refused);
    EXPECT_FALSE(seams.isRead());
    for (int i = 0; i < 60 && reader->unlistedRows().value() > 0; ++i) {
        write({}); // its writer makes the list again, some rows at a time
    }
    EXPECT_EQ(reader->unlistedRows().value(), 0);
    EXPECT_TRUE(seams.read(*reader));
    EXPECT_EQ(seams.of("S1").state, SeamState::Made);
}

} // namespace
} // namespace seamclock
