#include "app/daylog/day_view.h"

#include "core/weld/record.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

JointRowView rowOf(const test::Story& story, const DayNames& names = {}) {
    const WeldRecord made = record(story.weld());
    return jointRow(lineOf(made), &made, names);
}

TEST(DayView, ALineSaysWhatMatters) {
    test::Story story;
    story.close();
    const JointRowView row = rowOf(story, {{{"bench-a", "A"}}, {}});
    EXPECT_EQ(row.number, "7");
    EXPECT_EQ(row.seam, "Seam S3, A");
    EXPECT_EQ(row.time, "7:00") << "by the clock of that place";
    EXPECT_EQ(row.mark, Mark::Done);
    EXPECT_EQ(row.reason, "within limits");
    EXPECT_TRUE(row.decided.isEmpty());
}

TEST(DayView, ALineOfSeveralDaysSaysItsDay) {
    test::Story story;
    story.close();
    const WeldRecord made = record(story.weld());
    EXPECT_EQ(jointRow(lineOf(made), &made, {}, UnitSystem::Metric, false).time, "13 Jan 2030");
}

TEST(DayView, APlateThatWasTooHotIsSaidWithItsPlace) {
    test::Story story;
    CheckMade read;
    read.check = "plate_temperature";
    read.valueMc = 225'000;
    read.place = "back";
    read.face = "moving";
    story.then(read);
    story.close();
    EXPECT_TRUE(rowOf(story).reason.contains("(back, moving side)"))
        << rowOf(story).reason.toStdString();
}

TEST(DayView, AStoppedWeldSaysSoAndWhy) {
    test::Story story;
    story.align();
    story.then(WeldAborted{"bead_missing", "Bead missing at one end"});
    const JointRowView row = rowOf(story);
    EXPECT_EQ(row.mark, Mark::Cut);
    EXPECT_EQ(row.tone, Tone::Late);
    EXPECT_EQ(row.reason, "stopped: Bead missing at one end");
}

TEST(DayView, AnOpenWeldHasNoVerdictYet) {
    test::Story story;
    story.buildUp();
    const JointRowView row = rowOf(story);
    EXPECT_EQ(row.mark, Mark::Open);
    EXPECT_EQ(row.tone, Tone::Rest);
    EXPECT_EQ(row.reason, "not finished: cooling");
}

TEST(DayView, APersonsDecisionStandsBesideTheVerdict) {
    test::Story story;
    story.close();
    story.then(Decided{Decision::CutOut, "test_failed"});
    EXPECT_EQ(rowOf(story).decided, "to cut out");
    EXPECT_EQ(rowOf(story).reason, "within limits") << "and changes nothing of it";
    EXPECT_EQ(rowOf(story).mark, Mark::Done);
    story.then(Decided{Decision::Accept, "tested"});
    EXPECT_EQ(rowOf(story).decided, "accepted") << "the last holds";
}

TEST(DayView, ATrialJointIsReleased) {
    WeldOpened opened = test::inventedOpening();
    opened.type = WeldType::Trial;
    test::Story story(opened);
    story.close();
    EXPECT_TRUE(rowOf(story).reason.startsWith("trial: "));
    story.then(Decided{Decision::Accept, "trial_held"});
    EXPECT_EQ(rowOf(story).decided, "released");
}

TEST(DayView, AVerdictOfOlderRulesIsShownBesideTodaysAndNeverReplaced) {
    test::Story story;
    story.inspect();
    WeldClosed older = closing(story.weld());
    older.verdict = "out of limits";
    older.rules = 0;
    story.then(older);
    const JointRowView row = rowOf(story);
    EXPECT_EQ(row.mark, Mark::Late) << "as it was stored";
    EXPECT_EQ(row.reason, "out of limits; by today's rules within limits");
}

TEST(DayView, ALineSaysTheFirstReasonWithItsValueAndLimit) {
    test::Story hot;
    CheckMade read;
    read.check = "plate_temperature";
    read.valueMc = 225'000; // at most 220 °C
    read.place = "front";
    hot.then(read);
    hot.close();
    EXPECT_TRUE(rowOf(hot).reason.startsWith("out of limits: plate temperature (front) 225 °C"))
        << rowOf(hot).reason.toStdString();
}

TEST(DayView, ARemarkIsSaidAsOneBesideTheTick) {
    test::Story story;
    story.then(RemarkMade{"draught"});
    story.close();
    const JointRowView row = rowOf(story);
    EXPECT_EQ(row.mark, Mark::Done);
    EXPECT_TRUE(row.remarks);
    EXPECT_EQ(row.reason, "remark: draught") << "what was remarked, not that something was";
}

TEST(DayView, ACorrectionsVerdictIsNotBlamedOnTheRules) {
    test::Story story;
    CheckMade read;
    read.check = "plate_temperature";
    read.valueMc = 211'000;
    read.place = "front";
    story.then(read);
    const auto n = static_cast<std::int64_t>(story.weld().events.size());
    story.close();
    story.then(ValueCorrected{n, "value_mC", "211000", "225000", "misread"});
    const JointRowView row = rowOf(story);
    EXPECT_TRUE(row.reason.startsWith("within limits; after a correction out of limits: plate"))
        << row.reason.toStdString();
    EXPECT_TRUE(row.reason.contains("225") && row.reason.contains("220"))
        << row.reason.toStdString();
    EXPECT_EQ(row.mark, Mark::Trouble) << "it is no tick any more";
}

TEST(DayView, AJointThatAnotherLogTellsDifferentlySaysSo) {
    test::Story story;
    story.close();
    const WeldRecord made = record(story.weld());
    JointLine line = lineOf(made);
    line.trouble = "another log tells it differently";
    const JointRowView row = jointRow(line, &made, {});
    EXPECT_EQ(row.mark, Mark::Trouble);
    EXPECT_TRUE(row.reason.contains("another log tells it differently"))
        << row.reason.toStdString();
}

TEST(DayView, AJointWhoseEventsMakeNoneHasALineToo) {
    JointLine line;
    line.number = 12;
    line.bench = "east";
    line.trouble = "event 4 does not fit";
    const JointRowView row = jointRow(line, nullptr, {});
    EXPECT_EQ(row.mark, Mark::Trouble);
    EXPECT_EQ(row.reason, "damaged: event 4 does not fit");
}

TEST(DayView, PeopleGoByTheirNames) {
    const DayNames names{{}, {{"person:ilva", "Ilva Borrick"}}};
    EXPECT_EQ(names.person("person:ilva"), "Ilva Borrick");
    EXPECT_EQ(names.person("person:oddo"), "oddo") << "nobody said how that person is called";
    EXPECT_EQ(names.person("station"), "station");
}

} // namespace
} // namespace seamclock
