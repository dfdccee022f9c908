#include "core/report/wording.h"
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

} // namespace
} // namespace seamclock
