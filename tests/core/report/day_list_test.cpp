#include "core/report/day_list.h"
#include "core/report/plain_text.h"
#include "core/weld/intent.h"
#include "tests/core/report/lines.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace seamclock {
namespace {

using nlohmann::json;
using test::holds;
using test::Story;

JointLine line() {
    return lineOf(record(Story().close().weld()));
}

TEST(DayList, HasALineForEachJointUnderItsDay) {
    JointLine older = line();
    older.number = 6;
    older.day = "2030-01-12";
    older.verdict = "out of limits";
    older.findings = 2;
    const std::string text = dayListText({line(), older});
    EXPECT_TRUE(holds(text, "2030-01-13\n----------\n")) << text;
    EXPECT_TRUE(holds(text, "2030-01-12\n----------\n"));
    const std::string first = test::lineWith(text, "S3");
    EXPECT_TRUE(holds(first, "7  ") && holds(first, "PE-HD 8 × 860 mm")) << first;
    EXPECT_TRUE(holds(first, "within limits")) << first;
    EXPECT_TRUE(holds(text, "out of limits (2 reasons)"));
    EXPECT_EQ(dayListText({}), "");
}

TEST(DayList, SaysWhereAnOpenJointIs) {
    const JointLine open = lineOf(record(Story().buildUp().weld()));
    EXPECT_TRUE(holds(dayListText({open}), "cooling"));
}

TEST(DayList, PrintsADifferingVerdictBesideTheStoredOne) {
    JointLine changed = line();
    changed.verdictNow = "out of limits";
    std::istringstream words(dayListText({changed}));
    std::string text;
    for (std::string word; words >> word;) {
        text += word + " ";
    }
    EXPECT_TRUE(holds(text, "within limits; by this program's rules: out of limits")) << text;
}

TEST(DayList, KeepsToAHundredColumns) {
    JointLine wordy = line();
    wordy.trouble = std::string(300, 'x') + "\x1b[1m";
    for (const std::string& one : test::linesOf(dayListText({wordy}))) {
        EXPECT_LE(columnsOf(one), kTextColumns) << one;
    }
}

TEST(DayList, HasAsManyCellsInARowAsInItsHeader) {
    const auto commas = [](const std::string& row) {
        return std::count(row.begin(), row.end(), ',');
    };
    EXPECT_EQ(commas(dayListHeader()), commas(dayListRow(line(), {})));
    EXPECT_EQ(dayListHeader().substr(dayListHeader().size() - 2), "\r\n");
    EXPECT_TRUE(holds(dayListHeader(), "thickness_mm,length_mm"));
    EXPECT_TRUE(holds(dayListRow(line(), {}), "2030-01-13T06:00:00.000Z"));
    JointLine ofJob = line();
    ofJob.job = "QV-118";
    EXPECT_TRUE(holds(dayListHeader(), ",seam,job,bench,"));
    EXPECT_TRUE(holds(dayListRow(ofJob, {}), ",S3,QV-118,bench-a,"));
}

TEST(DayList, HasWhatWasFoundDecidedAndSigned) {
    WeldOpened opened = test::inventedOpening();
    opened.part = "Salt tank";
    Story story(opened);
    story.inspect().then(RemarkMade{"draught"});
    EXPECT_EQ(saidOf(record(story.weld())).firstReason, "") << "no verdict yet";
    story.then(closing(story.weld()));
    story.then(Decided{Decision::Repair, "notch"}).then(Decided{Decision::Accept, "as agreed"});
    story.then(SignedOff{"foreman"});
    const LineSaid said = saidOf(record(story.weld()));
    const std::string by = story.weld().events.back().by;
    EXPECT_EQ(said, (LineSaid{"Salt tank", "draught", "accept", by, by + " as foreman"}));
    EXPECT_TRUE(holds(
        dayListRow(line(), said), ",Salt tank,draught,accept," + by + "," + by + " as foreman\r\n"))
        << dayListRow(line(), said);
    EXPECT_TRUE(holds(dayListHeader(), ",part,first_reason,decision,decided_by,signed_off_by\r\n"));
    const json j = json::parse(jointLineJson(line(), said));
    EXPECT_EQ(j["first_reason"], "draught");
    EXPECT_EQ(j["decision"], "accept");
    EXPECT_EQ(j["signed_off_by"], by + " as foreman");
}

TEST(DayList, TellsTheWorstOfWhatWasFoundFirst) {
    Story story;
    story.inspect().then(RemarkMade{"draught"});
    story.then(closing(story.weld()));
    WeldRecord made = record(story.weld());
    made.verdict.findings.push_back({"cooling", Grade::Out, {}, {}, "", "Cooling was short."});
    EXPECT_EQ(saidOf(made).firstReason, "Cooling was short.");
}

TEST(DayList, DefusesAFormulaInASeamsName) {
    JointLine nasty = line();
    nasty.seam = "=HYPERLINK(1)";
    EXPECT_TRUE(holds(dayListRow(nasty, {}), ",'=HYPERLINK(1),"));
}

TEST(DayList, IsJsonWithStableKeys) {
    const json j = json::parse(jointLineJson(line(), {}));
    for (const char* key :
         {"weld", "number", "type", "opened_utc", "day_local", "bench", "opened_by", "material",
          "thickness_mm", "length_mm", "procedure", "state", "open", "verdict", "reasons", "events",
          "seam"}) {
        EXPECT_TRUE(j.contains(key)) << key;
    }
    EXPECT_EQ(j["length_mm"], 860.0);
    EXPECT_FALSE(j["open"]);
    EXPECT_FALSE(j.contains("trouble"));
}

} // namespace
} // namespace seamclock
