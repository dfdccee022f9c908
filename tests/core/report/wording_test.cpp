#include "core/report/wording.h"
#include "core/weld/force_check.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(Wording, NeverUsesTheWordsThatThisProgramAvoids) {
    // screens.md, "Words": never OK, Yes, Error or Warning.
    const WeldPlan plan = test::inventedPlan();
    std::vector<std::string> texts;
    for (const Standing standing :
         {Standing::Seen, Standing::Memory, Standing::CommonPractice, Standing::Derived,
          Standing::Attested}) {
        texts.push_back(standingInWords(standing));
    }
    for (int kind = 0; kind <= static_cast<int>(CueKind::CoolingDone); ++kind) {
        texts.push_back(cueInWords({static_cast<CueKind>(kind), {}, {}, 1}));
    }
    const Weld weld = test::Story().close().weld();
    for (const Event& event : weld.events) {
        texts.push_back(eventInWords(event.d, plan));
    }
    for (const std::string& text : texts) {
        EXPECT_FALSE(text.empty());
        for (const char* word : {"OK", "Yes", "rror", "arning"}) {
            EXPECT_EQ(text.find(word), std::string::npos) << text;
        }
    }
}

TEST(Wording, ShowsAShopsOwnCodeWithBlanks) {
    EXPECT_EQ(codeInWords("lift_with_two_people"), "lift with two people");
    EXPECT_EQ(codeInWords("plate_wiped"), "plate wiped");
}

TEST(Wording, GivesEveryValueItsUnit) {
    const WeldPlan plan = test::inventedPlan();
    EXPECT_EQ(valueInWords(8'813, "ms", plan), "8.813 s");
    EXPECT_EQ(valueInWords(1'500, "um", plan), "1.5 mm");
    EXPECT_EQ(valueInWords(-12'500, "mC", plan), "-12.5 °C");
    EXPECT_EQ(valueInWords(1'032'000, "mN", plan), "1032 N");
    EXPECT_EQ(valueInWords(147'674, "Pa", plan), "0.147674 N/mm²");
    EXPECT_EQ(valueInWords(15'500, "milli", plan), "15.5 mm");
    EXPECT_EQ(valueInWords(3, "", plan), "3");
}

TEST(Wording, TellsAnEventWithItsValues) {
    const WeldPlan plan = test::inventedPlan();
    EXPECT_EQ(
        eventInWords(ReadingTaken{ReadingPhase::Joining, 15'500}, plan),
        "scale reading, joining: 15.5 mm");
    CheckMade plate{"plate_temperature", true, 211'000, {}, {}, "middle", "left", {}};
    EXPECT_EQ(
        eventInWords(plate, plan),
        "checked, plate temperature, read on its face: 211 °C (middle, face left)");
    plate.passed = false;
    EXPECT_EQ(eventInWords(plate, plan).rfind("check failed, ", 0), 0U);
    EXPECT_EQ(eventInWords(WeldAborted{"cut_out", ""}, plan), "stopped: cut out");
    EXPECT_EQ(eventInWords(RemarkMade{"two\nlines"}, plan), "remark: two lines");
}

TEST(Wording, TellsWhoPassedOverACheckAndWhatWasMarkedOrTakenEarlier) {
    const WeldPlan plan = test::inventedPlan();
    EXPECT_EQ(
        eventInWords(forceMark(plan), plan),
        "checked, joining reading marked on the scale: " +
            valueInWords(plan.scale->joining.setMilli, "milli", plan));
    EXPECT_EQ(
        eventInWords(CheckOverridden{"film_off", "there\nis none", Authority::Foreman}, plan),
        "check passed over by the foreman, protective film off: there is none");
    CheckMade earlier{"edges_meet", true, {}, 400, {}, {}, {}, Milliseconds(0)};
    EXPECT_EQ(
        eventInWords(earlier, plan),
        "checked, " + codeInWords("edges_meet") + ": 0.4 mm, taken 1970-01-01T00:00:00.000Z");
}

TEST(Wording, TellsWhatWasPutRightDecidedAndAdded) {
    const WeldPlan plan = test::inventedPlan();
    const std::string hash(64, 'd');
    const std::vector<std::pair<WeldDetail, std::string>> told = {
        {PlanReplaced{plan, {}, "ambient"}, "plan replaced: ambient"},
        {StepTakenBack{12}, "step 12 taken back"},
        {StepBackdated{12, std::chrono::seconds(4)}, "step 12 was 4.000 s earlier"},
        {PhotoAdded{hash, 123'456, "front.jpg"}, "photo front.jpg, 123456 bytes, SHA-256 " + hash},
        {CueAcknowledged{"cooling_done"}, "signal seen: " + codeInWords("cooling_done")},
        {Graded{"EN 16296", "B"}, "graded by EN 16296: B"},
        {Decided{Decision::CutOut, "short cooling"}, "decided: cut out, short cooling"},
        {RemarkMade{"damp_sheet_left"}, "remark: damp_sheet_left"},
    };
    for (const auto& [detail, words] : told) {
        EXPECT_EQ(eventInWords(detail, plan), words);
    }
}

} // namespace
} // namespace seamclock
