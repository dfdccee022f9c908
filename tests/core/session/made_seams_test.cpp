// Which seams of a job are made: that the running state says of every weld what the log would say
// if it were read anew, and that a log of many joints is not read through for it.
#include "core/session/made_seams.h"

#include "core/log/world.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::hours;
using test::Story;
using test::weldName;

/// Seams of the job J1, of the sheets that a story's weld has.
std::vector<JobSeam> jobOf(const std::vector<std::string>& labels, const std::string& job = "J1") {
    std::vector<JobSeam> seams;
    for (const std::string& label : labels) {
        seams.emplace_back();
        seams.back().label = label;
        seams.back().job = job;
        seams.back().sheets = test::inventedOpening().sheets;
    }
    return seams;
}

/// A weld of that seam, told so far by `tell`; each number an hour after the one before.
template <class Tell>
Weld weldOf(
    std::int64_t number, const std::string& seam, const Tell& tell,
    WeldType type = WeldType::Production, const std::string& job = "J1") {
    WeldOpened opened = test::inventedOpening();
    if (!job.empty()) {
        opened.job = job;
    }
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
const auto kToRepair = [](Story& story) {
    story.close().then(Decided{Decision::Repair, "notch_in_the_bead"});
};
/// Nobody read the scale in build-up: incomplete.
const auto kIncomplete = [](Story& story) {
    story.changeOver().wait(std::chrono::seconds(8)).then(PressureLocked{});
    story.wait(std::chrono::seconds(700));
    for (const std::string& step : std::vector<std::string>(story.weld().plan.releaseOrder)) {
        story.then(ReleaseStep{step}).wait(std::chrono::seconds(2));
    }
    story.then(closing(story.weld()));
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
    MadeSeams read(const std::vector<std::string>& labels) { return read(jobOf(labels)); }
    MadeSeams read(const std::vector<JobSeam>& job) {
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader) << reader.error().detail;
        MadeSeams seams(job);
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
    EXPECT_EQ(seams.of({"S1", "J1"}), (SeamFinding{SeamState::Made, weldName(1), "S1", 1}));
    EXPECT_EQ(seams.of({"S2", "J1"}), SeamFinding{}) << "its faces never met";
    EXPECT_EQ(seams.of({"S3", "J1"}), (SeamFinding{SeamState::CutOut, weldName(3), "S3", 3}));
    EXPECT_EQ(seams.of({"S4", "J1"}), (SeamFinding{SeamState::CutOut, weldName(4), "S4", 4}));
    EXPECT_EQ(seams.of({"S5", "J1"}), SeamFinding{}) << "a trial joint";
    EXPECT_EQ(seams.of({"S6", "J1"}), (SeamFinding{SeamState::Made, weldName(7), "S6/R1", 7}));
    EXPECT_EQ(seams.of({"S7", "J1"}), (SeamFinding{SeamState::CutOut, weldName(8), "S7", 8}));
    EXPECT_EQ(seams.of({"S8", "J1"}).state, SeamState::Made) << "the last word counts";
    EXPECT_EQ(seams.of({"S9", "J1"}), SeamFinding{});
    EXPECT_EQ(seams.of({"S10", "J1"}), SeamFinding{}) << "no seam of this job";
}

TEST_F(MadeSeamsOfALog, WhatNobodyDecidedOnIsNeitherMadeNorWeldedAgainByItself) {
    const auto accepted = [](Story& story) {
        kIncomplete(story);
        story.then(Decided{Decision::Accept, "held"});
    };
    write({
        weldOf(1, "S1", kIncomplete),
        weldOf(2, "S2", kToRepair),
        weldOf(3, "S3", kToRepair),
        weldOf(4, "S3/R1", kClosed),
        weldOf(5, "S4", accepted),
    });
    const MadeSeams seams = read({"S1", "S2", "S3", "S4"});
    EXPECT_EQ(seams.of({"S1", "J1"}), (SeamFinding{SeamState::ToDecide, weldName(1), "S1", 1}));
    EXPECT_EQ(seams.of({"S2", "J1"}), (SeamFinding{SeamState::ToRepair, weldName(2), "S2", 2}));
    EXPECT_EQ(seams.of({"S3", "J1"}).state, SeamState::Made) << "a later joint stands";
    EXPECT_EQ(seams.of({"S4", "J1"}).state, SeamState::Made) << "the foreman took it as it is";
    EXPECT_FALSE(isToBeWelded(SeamState::ToDecide));
    EXPECT_FALSE(isToBeWelded(SeamState::Made));
    EXPECT_TRUE(isToBeWelded(SeamState::ToRepair));
    EXPECT_TRUE(isToBeWelded(SeamState::CutOut));
}

// Good as it was stored; a value that was written down wrong then made a bad joint of it.
TEST(SeamState, OfAJointThatACorrectionMadeBadIsToBeDecidedAnew) {
    const auto correct = [](Story& story) {
        std::int64_t bead = 0;
        for (const Event& event : story.weld().events) {
            bead = std::holds_alternative<BeadMeasured>(event.d) ? event.n : bead;
        }
        story.then(ValueCorrected{bead, "k_um", "800", "-200", "misread"});
    };
    const auto stateOf = [](const auto& tell) { return seamStateOf(weldOf(1, "S1", tell)); };
    EXPECT_EQ(stateOf(kClosed), SeamState::Made);
    EXPECT_EQ(stateOf([&](Story& story) { correct(story.close()); }), SeamState::ToDecide);
    const auto acceptedBefore = [&](Story& story) {
        correct(story.close().then(Decided{Decision::Accept, "by eye"}));
    };
    EXPECT_EQ(stateOf(acceptedBefore), SeamState::ToDecide) << "that was another joint";
    const auto acceptedSince = [&](Story& story) {
        correct(story.close());
        story.then(Decided{Decision::Accept, "tested"});
    };
    EXPECT_EQ(stateOf(acceptedSince), SeamState::Made);
    // What was out and accepted stays so, whatever batch was written down wrong.
    const auto batchOnly = [&](Story& story) {
        correct(story.close());
        story.then(Decided{Decision::Accept, "tested"});
        story.then(ValueCorrected{1, "sheets.0.batch", "batch 11", "batch 13", "misread"});
    };
    EXPECT_EQ(stateOf(batchOnly), SeamState::Made);
}

TEST_F(MadeSeamsOfALog, AnotherJobsSeamOfTheSameNameIsAnotherSeam) {
    const auto production = WeldType::Production;
    const std::vector<Weld> welds{
        weldOf(1, "S1", kClosed, production, "J1"), weldOf(2, "S2", kCutOut, production, "J2"),
        weldOf(3, "S3", kClosed, production, "")};
    write(welds);
    std::vector<JobSeam> both = jobOf({"S1", "S2", "S3"}, "J1");
    for (const JobSeam& seam : jobOf({"S1", "S2", "S3"}, "J2")) {
        both.push_back(seam);
    }
    const MadeSeams asRead = read(both);
    MadeSeams asTold(both);
    for (const Weld& weld : welds) {
        EXPECT_TRUE(asTold.take(weld));
    }
    for (const MadeSeams* seams : {&asRead, static_cast<const MadeSeams*>(&asTold)}) {
        EXPECT_EQ(seams->of({"S1", "J1"}).state, SeamState::Made);
        EXPECT_EQ(seams->of({"S1", "J2"}), SeamFinding{});
        EXPECT_EQ(seams->of({"S2", "J1"}), SeamFinding{});
        EXPECT_EQ(seams->of({"S2", "J2"}).state, SeamState::CutOut);
        // Of no job that was told, as in logs of earlier versions: whoever has such a seam.
        EXPECT_EQ(seams->of({"S3", "J1"}).state, SeamState::Made);
        EXPECT_EQ(seams->of({"S3", "J2"}).state, SeamState::Made);
    }
    std::vector<JobSeam> thick = jobOf({"S3"}, "J1");
    thick.front().sheets.front().thicknessUm = 12'000;
    EXPECT_EQ(read(thick).of({"S3", "J1"}), SeamFinding{}) << "other sheets";
}

TEST_F(MadeSeamsOfALog, WhatAWeldTellsIsWhatTheLogWouldSay) {
    MadeSeams seams(jobOf({"S1"}));
    EXPECT_FALSE(seams.isRead());
    EXPECT_FALSE(seams.take(weldOf(1, "S2", kClosed))) << "of another job";
    EXPECT_TRUE(seams.take(weldOf(1, "S1", [](Story& story) { story.align(); })));
    EXPECT_EQ(seams.of({"S1", "J1"}).state, SeamState::Made) << "from its opening on";
    EXPECT_TRUE(seams.take(weldOf(1, "S1", kStoppedBefore)));
    EXPECT_EQ(seams.of({"S1", "J1"}), SeamFinding{});
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
        EXPECT_EQ(seams.of({"S1", "J1"}), read({"S1"}).of({"S1", "J1"}))
            << "after joint " << until.size();
    }
    EXPECT_EQ(seams.of({"S1", "J1"}), (SeamFinding{SeamState::Made, weldName(5), "S1/R2", 5}));
}

TEST_F(MadeSeamsOfALog, AnOpenJointThatIsStoppedLeavesTheOneBeforeIt) {
    const auto opened = [](Story& story) { story.align(); };
    write({weldOf(1, "S1", kStoppedAfter), weldOf(2, "S1/R1", opened)});
    MadeSeams seams = read({"S1"});
    EXPECT_EQ(seams.of({"S1", "J1"}).number, 2);
    EXPECT_TRUE(seams.take(weldOf(2, "S1/R1", kStoppedBefore)));
    EXPECT_EQ(seams.of({"S1", "J1"}), (SeamFinding{SeamState::CutOut, weldName(1), "S1", 1}));
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
    MadeSeams seams(jobOf({"S1"}));
    const auto refused = seams.read(*reader);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Refused);
    EXPECT_FALSE(seams.isRead());
    for (int i = 0; i < 60 && reader->unlistedRows().value() > 0; ++i) {
        write({}); // its writer makes the list again, some rows at a time
    }
    EXPECT_EQ(reader->unlistedRows().value(), 0);
    EXPECT_TRUE(seams.read(*reader));
    EXPECT_EQ(seams.of({"S1", "J1"}).state, SeamState::Made);
}

} // namespace
} // namespace seamclock
