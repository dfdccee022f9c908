// Each row of the verdict table on its limit and one unit past it. The limits themselves (remark
// bands, what is left low, two taps' error) are the trade's defaults of this project: common
// practice, no source.
#include "core/weld/verdict.h"
#include "tests/support/story.h"

#include <algorithm>
#include <functional>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using test::Story;

/// "out", "remark", "incomplete" or "within": the worst that the findings say under this code.
std::string gradeOf(const Weld& weld, const std::string& code) {
    std::string grade = "within";
    for (const Finding& finding : findings(weld)) {
        if (finding.code == code && grade != "out") {
            grade = toString(finding.grade);
        }
    }
    return grade;
}

const Finding* find(const std::vector<Finding>& all, const std::string& code) {
    const auto found = std::find_if(
        all.begin(), all.end(), [&](const Finding& finding) { return finding.code == code; });
    return found == all.end() ? nullptr : &*found;
}

struct Step {
    Milliseconds took;
    const char* grade;
};

TEST(Verdict, AGoodWeldIsWithinLimitsAndSaysNothing) {
    const Weld weld = Story().close().weld();
    const Verdict result = verdict(weld);
    EXPECT_EQ(result.word, VerdictWord::WithinLimits);
    EXPECT_TRUE(result.findings.empty());
    EXPECT_TRUE(reasonsOwed(weld).empty());
    EXPECT_EQ(closing(Story().inspect().weld()).verdict, "within limits");
}

TEST(Verdict, AWeldThatIsNotClosedIsIncompleteWhereverItStands) {
    for (Story* story :
         {new Story(Story().prepare()), new Story(Story().soak()), new Story(Story().buildUp()),
          new Story(Story().inspect())}) {
        EXPECT_EQ(verdict(story->weld()).word, VerdictWord::Incomplete);
        EXPECT_EQ(verdict(story->weld()).findings.front().code, "not_closed");
        delete story;
    }
    Story stopped;
    stopped.soak().then(WeldAborted{"cut_out", ""});
    EXPECT_EQ(verdict(stopped.weld()).word, VerdictWord::Incomplete);
    EXPECT_NE(find(findings(stopped.weld()), "aborted"), nullptr);
}

TEST(Soak, IsWithinToTenPercentARemarkToAQuarterElseOut) {
    // target 80 s, within 80 to 88, remark from 78 to 100.
    for (const Step& row : std::vector<Step>{
             {Milliseconds{77'999}, "out"},
             {Milliseconds{78'000}, "remark"},
             {Milliseconds{79'999}, "remark"},
             {Milliseconds{80'000}, "within"},
             {Milliseconds{88'000}, "within"},
             {Milliseconds{88'001}, "remark"},
             {Milliseconds{100'000}, "remark"},
             {Milliseconds{100'001}, "out"}}) {
        Story story;
        story.align().wait(row.took).then(PlateOut{});
        EXPECT_EQ(gradeOf(story.weld(), "soak_time"), row.grade) << row.took.count();
    }
}

TEST(Changeover, HasHalfASecondForTwoTaps) {
    for (const Step& row : std::vector<Step>{
             {Milliseconds{6'400}, "within"},
             {Milliseconds{6'401}, "remark"},
             {Milliseconds{6'900}, "remark"},
             {Milliseconds{6'901}, "out"}}) {
        Story story;
        story.soak().wait(row.took).then(FacesMet{});
        EXPECT_EQ(gradeOf(story.weld(), "changeover"), row.grade) << row.took.count();
    }
}

TEST(Changeover, SaysLimitAndActual) {
    Story story;
    story.soak().wait(Milliseconds{9'200}).then(FacesMet{});
    const auto all = findings(story.weld());
    const Finding* finding = find(all, "changeover");
    ASSERT_NE(finding, nullptr);
    EXPECT_EQ(finding->limit, 6'400);
    EXPECT_EQ(finding->actual, 9'200);
    EXPECT_EQ(finding->unit, "ms");
    EXPECT_EQ(finding->text, "Changeover took 9.200 s; at most 6.400 s is allowed.");
}

TEST(BuildUp, IsWithinFromSixtyToHundredAndThirtyPercent) {
    // target 6.5 s: within 3.9 to 8.45, remark 2.6 to 11.05.
    for (const Step& row : std::vector<Step>{
             {Milliseconds{2'599}, "out"},
             {Milliseconds{2'600}, "remark"},
             {Milliseconds{3'899}, "remark"},
             {Milliseconds{3'900}, "within"},
             {Milliseconds{8'450}, "within"},
             {Milliseconds{8'451}, "remark"},
             {Milliseconds{11'050}, "remark"},
             {Milliseconds{11'051}, "out"}}) {
        Story byReading;
        byReading.changeOver().wait(row.took).then(ReadingTaken{ReadingPhase::Joining, 15'500});
        byReading.wait(seconds{60}).then(PressureLocked{});
        EXPECT_EQ(gradeOf(byReading.weld(), "build_up"), row.grade) << row.took.count();
        Story byLock;
        byLock.changeOver().wait(row.took).then(PressureLocked{});
        EXPECT_EQ(gradeOf(byLock.weld(), "build_up"), row.grade) << row.took.count();
    }
}

TEST(BuildUp, ForceAboveItsBandIsOutEvenIfLetBack) {
    for (const auto& [reading, grade] :
         std::vector<std::pair<std::int64_t, const char*>>{{16'900, "within"}, {16'901, "out"}}) {
        Story story;
        story.changeOver().wait(seconds{6}).then(ReadingTaken{ReadingPhase::Joining, reading});
        story.wait(seconds{1}).then(ReadingTaken{ReadingPhase::Joining, 15'500});
        story.wait(seconds{1}).then(PressureLocked{});
        EXPECT_EQ(gradeOf(story.weld(), "build_up"), grade) << reading;
    }
}

TEST(Cooling, IsAMinimumWithoutAnUpperLimit) {
    for (const Step& row : std::vector<Step>{
             {Milliseconds{689'999}, "out"},
             {Milliseconds{690'000}, "within"},
             {minutes{600}, "within"}}) {
        Story story;
        story.buildUp().wait(row.took).then(ReleaseStep{"clamps_eased"});
        EXPECT_EQ(gradeOf(story.weld(), "cooling"), row.grade) << row.took.count();
    }
}

TEST(Cooling, OverABridgeCountsOnlyWhatSurelyPassed) {
    // 100 s before the cut, then 590 s after it are needed whatever the wall clock says.
    for (const Step& row :
         std::vector<Step>{{Milliseconds{589'999}, "out"}, {Milliseconds{590'000}, "within"}}) {
        Story story;
        story.buildUp().wait(seconds{100}).then(RemarkMade{"dark"}).reboot(minutes{50});
        story.then(ClockBridged{"boot-1", seconds{0}, minutes{50}, BridgeBasis::Unconfirmed});
        story.wait(row.took).then(ReleaseStep{"clamps_eased"});
        EXPECT_EQ(gradeOf(story.weld(), "cooling"), row.grade);
        EXPECT_EQ(gradeOf(story.weld(), "bridge_used"), "remark");
    }
}

TEST(Plate, OutsideItsWindowIsOutAndTheLatestValueOfAPlaceCounts) {
    struct Row {
        std::vector<std::int64_t> values;
        const char* grade;
        const char* differ;
    };
    for (const Row& row : std::vector<Row>{
             {{200'000}, "within", "within"},
             {{199'999}, "out", "within"},
             {{220'000}, "within", "within"},
             {{220'001}, "out", "within"},
             {{205'000, 215'000}, "within", "within"},
             {{205'000, 215'001}, "within", "remark"}}) {
        Story story;
        const std::vector<std::string> places{"front", "back"};
        story.then(CheckMade{"plate_temperature", false, 190'000, {}, {}, "front", {}, {}});
        for (std::size_t i = 0; i < row.values.size(); ++i) {
            story.then(
                CheckMade{"plate_temperature", true, row.values[i], {}, {}, places[i], {}, {}});
        }
        story.then(CheckMade{"film_off", true, {}, {}, {}, {}, {}, {}});
        story.then(CheckMade{"gap", true, {}, {}, {}, {}, {}, {}});
        EXPECT_EQ(
            gradeOf(story.weld(), "plate_temperature"),
            row.values[0] < 200'000 || row.values[0] > 220'000 ? "within" : row.grade)
            << "before alignment the plate can still be measured again";
        story.then(AlignmentStarted{});
        EXPECT_EQ(gradeOf(story.weld(), "plate_temperature"), row.grade) << row.values[0];
        EXPECT_EQ(gradeOf(story.weld(), "plate_faces_differ"), row.differ) << row.values[0];
    }
}

TEST(Plate, NeverGivenMakesTheWeldIncomplete) {
    WeldPlan plan = test::inventedPlan();
    plan.checks = {"film_off"};
    Story story(plan);
    story.then(CheckMade{"film_off", true, {}, {}, {}, {}, {}, {}}).then(AlignmentStarted{});
    EXPECT_EQ(gradeOf(story.weld(), "plate_temperature"), "incomplete");
}

TEST(AlignmentBead, IsWithinFromItsMinimumToAMillimetreAbove) {
    for (const auto& [bead, grade] : std::vector<std::pair<std::int64_t, const char*>>{
             {1'499, "out"}, {1'500, "within"}, {2'500, "within"}, {2'501, "remark"}}) {
        Story story;
        story.prepare().then(AlignmentStarted{}).wait(seconds{50});
        story.then(CheckMade{"alignment_bead", true, {}, bead, {}, {}, {}, {}});
        story.then(SoakStarted{});
        EXPECT_EQ(gradeOf(story.weld(), "alignment_bead"), grade) << bead;
    }
}

TEST(AlignmentBead, IsAttestedByTheStepWhereItWasNotTyped) {
    Story story;
    story.prepare().then(AlignmentStarted{}).wait(seconds{50}).then(SoakStarted{});
    EXPECT_EQ(gradeOf(story.weld(), "alignment_bead"), "within");
}

TEST(AlignmentTime, IsARemarkOverTwiceTheMedianOrUnderAQuarter) {
    for (const Step& row : std::vector<Step>{
             {Milliseconds{11'999}, "remark"},
             {Milliseconds{12'000}, "within"},
             {Milliseconds{96'000}, "within"},
             {Milliseconds{96'001}, "remark"}}) {
        Story story;
        story.prepare().then(AlignmentStarted{}).wait(row.took).then(SoakStarted{});
        EXPECT_EQ(gradeOf(story.weld(), "alignment_time"), row.grade) << row.took.count();
    }
    WeldPlan plan = test::inventedPlan();
    plan.alignMedian.reset();
    Story unjudged(plan);
    unjudged.prepare().then(AlignmentStarted{}).wait(minutes{50}).then(SoakStarted{});
    EXPECT_EQ(gradeOf(unjudged.weld(), "alignment_time"), "within");
}

TEST(SoakPressure, AboveItsLimitIsOutAndUnreadIsARemark) {
    for (const auto& [reading, grade] : std::vector<std::pair<std::int64_t, const char*>>{
             {500, "within"}, {2'200, "within"}, {2'201, "out"}}) {
        Story story;
        story.align().then(ReadingTaken{ReadingPhase::Soak, reading});
        story.wait(seconds{82}).then(PlateOut{});
        EXPECT_EQ(gradeOf(story.weld(), "soak_pressure"), grade) << reading;
    }
    Story unread;
    unread.align().wait(seconds{82}).then(PlateOut{});
    EXPECT_EQ(gradeOf(unread.weld(), "soak_pressure"), "remark");
}

// Cooling of 690 s, re-checks at 60 and 230 s, the first third ends at 230 s. Set 15.5 with zero at
// 0.5: half is 8.0.
std::string
joiningWith(const std::vector<std::pair<int, std::int64_t>>& rechecks, bool released = true) {
    Story story;
    const Milliseconds from = story.buildUp().time().lo;
    for (const auto& [at, reading] : rechecks) {
        story.waitUntil(from + seconds{at}).then(ReadingTaken{ReadingPhase::Recheck, reading});
    }
    if (released) {
        story.waitUntil(from + seconds{690}).then(ReleaseStep{"clamps_eased"});
    }
    return gradeOf(story.weld(), "joining_reading");
}

TEST(JoiningReading, MayBeToppedUpInTheFirstThirdAndIsNeverLeftLow) {
    EXPECT_EQ(joiningWith({{60, 15'000}, {240, 14'600}}), "within");
    EXPECT_EQ(joiningWith({{60, 14'599}, {70, 15'500}}), "remark");
    EXPECT_EQ(joiningWith({{60, 14'599}, {70, 14'600}}), "remark") << "to its band's end";
    EXPECT_EQ(joiningWith({{60, 14'599}, {70, 14'599}}), "out");
    EXPECT_EQ(joiningWith({{60, 14'599}, {230, 15'500}}), "remark") << "on the first third's end";
    EXPECT_EQ(joiningWith({{60, 14'599}, {231, 15'500}}), "out");
    EXPECT_EQ(joiningWith({{60, 14'599}}), "out");
    EXPECT_EQ(joiningWith({{60, 14'599}}, false), "within") << "it can still be topped up";
    EXPECT_EQ(joiningWith({{60, 15'000}, {240, 14'000}}), "out");
    EXPECT_EQ(joiningWith({{60, 8'000}, {65, 15'500}}), "remark") << "exactly half";
    EXPECT_EQ(joiningWith({{60, 7'999}, {65, 15'500}}), "out") << "below half";
    EXPECT_EQ(joiningWith({{60, 16'900}}), "within") << "its band's end";
    EXPECT_EQ(joiningWith({{60, 16'901}}), "out") << "above its band";
}

TEST(JoiningReading, EachRecheckThatIsOutIsListed) {
    Story story;
    const Milliseconds from = story.buildUp().time().lo;
    for (const auto& [at, reading] : std::vector<std::pair<int, std::int64_t>>{
             {60, 16'901}, {65, 14'000}, {70, 15'000}, {240, 7'999}, {250, 14'000}}) {
        story.waitUntil(from + seconds{at}).then(ReadingTaken{ReadingPhase::Recheck, reading});
    }
    story.waitUntil(from + seconds{690}).then(ReleaseStep{"clamps_eased"});
    std::vector<std::int64_t> out;
    for (const Finding& finding : findings(story.weld())) {
        if (finding.code == "joining_reading") {
            EXPECT_EQ(finding.grade, Grade::Out);
            out.push_back(finding.actual.value_or(0));
        }
    }
    EXPECT_EQ(out, (std::vector<std::int64_t>{16'901, 7'999, 14'000}))
        << "above, below half, left low; what was topped up in time makes no other word";
    EXPECT_EQ(reasonsOwed(story.weld()), (std::vector<std::string>{"joining_reading"}));
}

TEST(JoiningReading, WhatFollowsALowOneIsListedToo) {
    Story story;
    story.changeOver().wait(seconds{6}).then(PressureLocked{});
    story.wait(seconds{20}).then(ReadingTaken{ReadingPhase::Joining, 14'000});
    story.wait(seconds{60}).then(ReadingTaken{ReadingPhase::Recheck, 7'999});
    std::vector<std::int64_t> out;
    for (const Finding& finding : findings(story.weld())) {
        if (finding.code == "joining_reading") {
            out.push_back(finding.actual.value_or(0));
        }
    }
    EXPECT_EQ(out, (std::vector<std::int64_t>{14'000, 7'999}));
}

TEST(Plate, EachPlaceOutsideItsWindowIsListedTheFarthestFirst) {
    Story story; // the window is 200 to 220 °C
    for (const auto& [place, mc] :
         {std::pair{"front", std::int64_t{195'000}}, std::pair{"middle", std::int64_t{199'999}},
          std::pair{"back", std::int64_t{226'000}}}) {
        CheckMade read;
        read.check = "plate_temperature";
        read.place = place;
        read.valueMc = mc;
        read.passed = true;
        story.then(read);
    }
    story.align();
    std::vector<std::pair<std::int64_t, std::int64_t>> out;
    for (const Finding& finding : findings(story.weld())) {
        if (finding.code == "plate_temperature") {
            EXPECT_EQ(finding.grade, Grade::Out);
            out.emplace_back(finding.actual.value_or(0), finding.limit.value_or(0));
        }
    }
    EXPECT_EQ(
        out, (std::vector<std::pair<std::int64_t, std::int64_t>>{
                 {226'000, 220'000}, {195'000, 200'000}, {199'999, 200'000}}));
    EXPECT_EQ(reasonsOwed(story.weld()), (std::vector<std::string>{"plate_temperature"}));
}

TEST(Plate, PlacesThatAreEquallyFarOutKeepTheOrderOfTheirNames) {
    Story story; // the window is 200 to 220 °C
    for (const char* place : {"middle", "front", "back"}) {
        CheckMade read;
        read.check = "plate_temperature";
        read.place = place;
        read.valueMc = place == std::string("front") ? 222'000 : 198'000;
        read.passed = true;
        story.then(read);
    }
    story.align();
    std::string texts;
    for (const Finding& finding : findings(story.weld())) {
        texts += finding.code == "plate_temperature" ? finding.text + "\n" : "";
    }
    EXPECT_EQ(
        texts, "The plate's face (back) was 198.0 °C, below the allowed 200.0 °C.\n"
               "The plate's face (front) was 222.0 °C, above the allowed 220.0 °C.\n"
               "The plate's face (middle) was 198.0 °C, below the allowed 200.0 °C.\n");
}

TEST(JoiningReading, NeverGivenMakesTheWeldIncompleteUntilOneIs) {
    Story story;
    story.changeOver().wait(seconds{6}).then(PressureLocked{});
    EXPECT_EQ(gradeOf(story.weld(), "joining_reading"), "incomplete");
    Story low = story;
    story.wait(seconds{20}).then(ReadingTaken{ReadingPhase::Joining, 15'500});
    EXPECT_EQ(gradeOf(story.weld(), "joining_reading"), "within");
    Story least = low;
    least.wait(seconds{20}).then(ReadingTaken{ReadingPhase::Joining, 14'600});
    EXPECT_EQ(gradeOf(least.weld(), "joining_reading"), "within") << "its band's end";
    low.wait(seconds{20}).then(ReadingTaken{ReadingPhase::Joining, 14'599});
    EXPECT_EQ(gradeOf(low.weld(), "joining_reading"), "out");
}

TEST(Recheck, MissedIsARemarkNeverIncomplete) {
    const auto missed = [](const std::vector<int>& at) {
        Story story;
        const Milliseconds from = story.buildUp().time().lo;
        for (const int second : at) {
            story.waitUntil(from + seconds{second})
                .then(ReadingTaken{ReadingPhase::Recheck, 15'000});
        }
        story.waitUntil(from + seconds{690}).then(ReleaseStep{"clamps_eased"});
        const auto all = findings(story.weld());
        return std::count_if(all.begin(), all.end(), [](const Finding& finding) {
            EXPECT_NE(finding.grade, Grade::Incomplete);
            return finding.code == "recheck_missed";
        });
    };
    EXPECT_EQ(missed({60, 230}), 0);
    EXPECT_EQ(missed({229, 459}), 0);
    EXPECT_EQ(missed({59, 230}), 1) << "read before it was due";
    EXPECT_EQ(missed({60, 460}), 1) << "read when two thirds were over";
    EXPECT_EQ(missed({60}), 1);
    EXPECT_EQ(missed({}), 2);
}

TEST(Bead, KAboveZeroAndFacesInLine) {
    struct Row {
        std::int64_t k;
        std::int64_t step;
        const char* kGrade;
        const char* stepGrade;
    };
    for (const Row& row : std::vector<Row>{
             {1, 800, "within", "within"},
             {0, 800, "out", "within"},
             {-1, 0, "out", "within"},
             {1, 801, "within", "out"}}) {
        Story story;
        story.release().then(BeadMeasured{{}, 9'000, 4'000, 900, 100});
        story.then(BeadMeasured{{}, 9'000, 4'000, row.k, row.step});
        EXPECT_EQ(gradeOf(story.weld(), "bead_k"), row.kGrade) << row.k;
        EXPECT_EQ(gradeOf(story.weld(), "misalignment"), row.stepGrade) << row.step;
    }
    Story unmeasured;
    unmeasured.release();
    EXPECT_EQ(gradeOf(unmeasured.weld(), "bead_not_measured"), "remark");
}

TEST(Remarks, CapTheVerdict) {
    const auto wordAfter = [](const std::function<void(Story&)>& twist) {
        Story story;
        twist(story);
        const Verdict result = verdictAtClosing(story.weld());
        return std::string(toString(result.word));
    };
    EXPECT_EQ(wordAfter([](Story& story) { story.inspect(); }), "within limits");
    EXPECT_EQ(
        wordAfter([](Story& story) { story.inspect().then(RemarkMade{"draught from the door"}); }),
        "within limits with remarks");
    EXPECT_EQ(
        wordAfter([](Story& story) { story.inspect().then(ClockJumped{seconds{-3}}); }),
        "within limits with remarks");
    EXPECT_EQ(
        wordAfter([](Story& story) {
            story.then(CheckOverridden{"film_off", "none on this sheet", Authority::Operator});
            story.inspect();
        }),
        "within limits with remarks");
    WeldOpened opened = test::inventedOpening();
    opened.flags = {"calibration_overdue"};
    Story flagged(opened);
    EXPECT_EQ(
        toString(verdictAtClosing(flagged.inspect().weld()).word), "within limits with remarks");
}

TEST(Remarks, APhaseStepTakenBackNamesBothInstants) {
    Story story;
    story.align().wait(seconds{80}).then(PlateOut{});
    const std::string first = toIsoUtc(story.now().utc);
    const auto target = static_cast<std::int64_t>(story.weld().events.size());
    story.wait(seconds{1}).then(StepTakenBack{target});
    const std::string second = toIsoUtc(story.now().utc);
    const auto all = findings(story.weld());
    const Finding* finding = find(all, "step_taken_back");
    ASSERT_NE(finding, nullptr);
    EXPECT_NE(finding->text.find(first), std::string::npos);
    EXPECT_NE(finding->text.find(second), std::string::npos);
}

TEST(Remarks, ABackdatedPhaseStepNamesBothInstants) {
    Story story;
    story.align().wait(seconds{84}).then(PlateOut{});
    const std::string pressed = toIsoUtc(story.now().utc);
    const std::string meant = toIsoUtc(story.now().utc - seconds{4});
    story.then(StepBackdated{static_cast<std::int64_t>(story.weld().events.size()), seconds{4}});
    const auto all = findings(story.weld());
    const Finding* finding = find(all, "step_backdated");
    ASSERT_NE(finding, nullptr);
    EXPECT_NE(finding->text.find(pressed), std::string::npos);
    EXPECT_NE(finding->text.find(meant), std::string::npos);
}

TEST(Remarks, AReadingTakenBackIsNoRemark) {
    Story story;
    story.align().then(ReadingTaken{ReadingPhase::Soak, 1'000});
    story.then(StepTakenBack{static_cast<std::int64_t>(story.weld().events.size())});
    EXPECT_EQ(gradeOf(story.weld(), "step_taken_back"), "within");
}

TEST(Verdict, ListsTheWorstFirstAndItsWordFollows) {
    Story story;
    story.soak().wait(seconds{9}).then(FacesMet{}).wait(seconds{6});
    story.then(RemarkMade{"plate stuck"}).then(PressureLocked{});
    const auto all = findings(story.weld());
    ASSERT_GE(all.size(), 3U);
    EXPECT_TRUE(std::is_sorted(all.begin(), all.end(), [](const Finding& a, const Finding& b) {
        return a.grade < b.grade;
    }));
    EXPECT_EQ(all.front().code, "joining_reading");
    EXPECT_EQ(verdictAtClosing(story.weld()).word, VerdictWord::Incomplete);
    story.then(ReadingTaken{ReadingPhase::Joining, 15'500});
    EXPECT_EQ(verdictAtClosing(story.weld()).word, VerdictWord::OutOfLimits);
}

TEST(Verdict, IsWorkedOutWithCorrectedValues) {
    Story story;
    story.close();
    std::int64_t n = 0;
    for (const Event& event : story.weld().events) {
        if (std::holds_alternative<BeadMeasured>(event.d)) {
            n = event.n;
        }
    }
    story.then(ValueCorrected{n, "misalignment_um", "200", "900", "measured again"});
    EXPECT_EQ(verdict(story.weld()).word, VerdictWord::OutOfLimits);
}

TEST(Verdict, SaysByWhichRulesItWasMade) {
    // stored with every closed weld: another set of rules is another number
    EXPECT_EQ(kVerdictRules, 1);
}

} // namespace
} // namespace seamclock
