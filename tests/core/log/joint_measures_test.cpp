// The numbers that are followed from joint to joint, against the invented story's own times.
#include "core/log/joint_measures.h"

#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using test::Story;

JointMeasures measured(const Story& story) {
    return measuresOf(record(story.weld()));
}

TEST(JointMeasures, AreTheStorysTimes) {
    Story story;
    story.close();
    const JointMeasures all = measured(story);
    EXPECT_EQ(all[JointMeasure::Preparation], 50'000); // 20 + 10 + 10 + 10 s
    EXPECT_EQ(all[JointMeasure::Alignment], 50'000);
    EXPECT_EQ(all[JointMeasure::Changeover], 4'000);
    EXPECT_EQ(all[JointMeasure::Release], 16'000); // three steps, 8 s apart
    EXPECT_EQ(all[JointMeasure::Plate], 211'000);
    EXPECT_EQ(all[JointMeasure::Drift], -500); // 15.5 to 15.0, by the first re-check
}

TEST(JointMeasures, AreAbsentAsLongAsTheyArentReached) {
    Story story;
    EXPECT_EQ(measured(story), JointMeasures{});
    story.align();
    EXPECT_EQ(measured(story)[JointMeasure::Alignment], 50'000);
    EXPECT_EQ(measured(story)[JointMeasure::Changeover], std::nullopt);
    story.wait(std::chrono::seconds(80)).then(PlateOut{});
    EXPECT_EQ(measured(story)[JointMeasure::Changeover], std::nullopt);
}

TEST(JointMeasures, AValueCarriedOverIsNoNewMeasurement) {
    Story story;
    story.wait(std::chrono::seconds(20));
    story.then(
        CheckMade{"plate_temperature", true, 205'000, {}, {}, "middle", "left", Milliseconds(1)});
    EXPECT_EQ(measured(story)[JointMeasure::Plate], std::nullopt);
    for (const char* place : {"middle", "front"}) {
        const std::int64_t mC = place[0] == 'm' ? 209'000 : 212'000;
        story.wait(std::chrono::seconds(5));
        story.then(CheckMade{"plate_temperature", true, mC, {}, {}, place, "right", {}});
    }
    EXPECT_EQ(measured(story)[JointMeasure::Plate], 210'500); // their mean
}

// "Stop: plate too cold", and then it was read again.
TEST(JointMeasures, APlateThatWasReadAgainIsMeasuredByItsLastReading) {
    Story story;
    for (const std::int64_t mC : {150'000, 210'000}) {
        story.wait(std::chrono::seconds(5));
        story.then(CheckMade{"plate_temperature", mC > 200'000, mC, {}, {}, "middle", "right", {}});
    }
    EXPECT_EQ(measured(story)[JointMeasure::Plate], 210'000);
}

TEST(JointMeasures, WhatARebootLayInIsNotKnown) {
    Story story;
    story.cool();
    story.reboot(std::chrono::minutes(5));
    story.then(
        ClockBridged{"boot-1", Milliseconds(0), std::chrono::minutes(5), BridgeBasis::Unconfirmed});
    for (const char* step : {"clamps_eased", "bars_opened", "sheet_out"}) {
        story.then(ReleaseStep{step}).wait(std::chrono::seconds(3));
    }
    EXPECT_EQ(measured(story)[JointMeasure::Release], 6'000); // all on the new boot
    EXPECT_EQ(measured(story)[JointMeasure::Alignment], 50'000);
}

TEST(JointMeasures, HaveWordsThatComeBack) {
    for (std::size_t i = 0; i < kJointMeasures; ++i) {
        const auto one = static_cast<JointMeasure>(i);
        EXPECT_EQ(jointMeasureOf(toString(one)), one);
    }
    EXPECT_EQ(jointMeasureOf("soak"), std::nullopt);
}

} // namespace
} // namespace seamclock
