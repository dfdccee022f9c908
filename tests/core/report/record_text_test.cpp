#include "core/base/uuid.h"
#include "core/report/plain_text.h"
#include "core/report/record_text.h"
#include "core/report/wording.h"
#include "core/weld/intent.h"
#include "tests/core/report/lines.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>
#include <sstream>

namespace seamclock {
namespace {

using std::chrono::seconds;
using test::holds;
using test::lineWith;
using test::Story;

Bench benchOfTheStory() {
    // The invented plan's force of 1032 N and drag of 20 N at 15.5 mm over a zero of 0.5 mm: about
    // 70 N/mm.
    Bench bench;
    bench.id = "bench-a";
    bench.scale = {"mm", 500, 500, 40'000, 1, {newtons(70)}, Force(), {}};
    return bench;
}

std::string textOf(const Weld& weld, RecordExtras extras = {}) {
    return recordText(record(weld), extras);
}

// Evidence files hold the text and say which words it is in: whoever changes it counts on.
TEST(RecordText, SaysAWeldInTheWordsThatItIsKnownBy) {
    const std::string text = textOf(Story().close().weld());
    EXPECT_EQ(kRecordWords, 2);
    EXPECT_EQ(sha256Hex(text), "9cfb847bd8d8b00a02332498b44dc0844860d0ff951c89b155ef164a03b24612")
        << "other words: raise kRecordWords, then say so here\n"
        << text;
}

TEST(RecordText, HoldsWhatTheTradeWritesDown) {
    // DVS 2207-1's annex, seen and from memory: order, part, both sheets, bench, welder, date,
    // size, ambient, weather guard, plate, drag, pressures and forces, bead, the five times,
    // remarks, both signatures.
    Story story;
    story.inspect().then(RemarkMade{"edge gap 0.3 mm at the back"});
    story.then(closing(story.weld()));
    const std::string text = textOf(story.weld());
    for (const char* words :
         {"Joint 7",
          "Date",
          "2030-01-13T06:00:00.000Z",
          "Order",
          "Part or seam",
          "S3",
          "Welder",
          "person:op-1",
          "bench-a",
          "Sheet 1",
          "Maker One, batch batch 11",
          "Sheet 2",
          "PE-HD natural",
          "melt flow 0.3",
          "8 × 860 mm",
          "20 °C, weather guard asked for, not looked at",
          "plate temperature",
          "drag",
          "alignment",
          "soak",
          "changeover",
          "build-up",
          "cooling",
          "edge gap 0.3 mm at the back",
          "Signed, welder",
          "Signed, supervisor"}) {
        EXPECT_TRUE(holds(text, words)) << words << "\n" << text;
    }
}

// As the day log writes it: the foreman signs on the supervisor's line.
TEST(RecordText, NamesWhoSignedOffOnTheLineOfTheTrade) {
    Story story;
    story.close();
    EXPECT_TRUE(holds(lineWith(textOf(story.weld()), "Signed, supervisor"), "not yet"));
    story.then(SignedOff{"foreman"});
    const std::string text = textOf(story.weld());
    const std::string line = lineWith(text, "Signed, supervisor");
    EXPECT_TRUE(holds(line, "person:op-1")) << line;
    EXPECT_TRUE(holds(line, "(event " + std::to_string(story.weld().events.size()) + ")")) << line;
    EXPECT_TRUE(holds(lineWith(text, "Signed, welder"), "not yet")) << text;
}

/// Its words, however they were broken into lines.
std::string inOneLine(const std::string& text) {
    std::istringstream words(text);
    std::string line;
    for (std::string word; words >> word;) {
        line += (line.empty() ? "" : " ") + word;
    }
    return line;
}

TEST(RecordText, SaysWhatStoodThereAndThatASignatureCameBefore) {
    Story story;
    story.close();
    story.then(SignedOff{"foreman"});
    const std::int64_t target = test::lastReading(story.weld(), ReadingPhase::Joining);
    story.then(ValueCorrected{target, "reading_milli", "15500", "15000", "misread"});
    const std::string n = std::to_string(story.weld().events.size());
    const std::string text = textOf(story.weld());
    EXPECT_TRUE(holds(text, "15 mm, was 15.5 mm [" + n + "]")) << text;
    EXPECT_TRUE(holds(inOneLine(text), ", before the change of event " + n)) << text;
    story.then(SignedOff{"foreman"});
    EXPECT_FALSE(holds(inOneLine(textOf(story.weld())), "before the change")) << "signed anew";
}

TEST(RecordText, NamesTheOrderOfItsJob) {
    Story story;
    EXPECT_TRUE(holds(lineWith(textOf(story.weld()), "Order"), "not given"));
    WeldRecord made = record(story.weld());
    made.opened.job = "QV-118";
    EXPECT_TRUE(holds(lineWith(recordText(made, {}), "Order"), "QV-118"));
}

TEST(RecordText, SaysWhatTheJointWeldsAgainAndOfWhatItIsMade) {
    WeldOpened opened = test::inventedOpening();
    opened.reweldOf = "99999999-0000-4000-8000-000000000000";
    opened.lostUm = 24'500;
    opened.lengthsUm = {500'000, 360'000};
    opened.flags = {"calibration_overdue"};
    const std::string text = textOf(Story(opened).weld());
    EXPECT_TRUE(holds(
        lineWith(text, "Welds again"), "99999999-0000-4000-8000-000000000000, 24.5 mm cut away"))
        << text;
    EXPECT_TRUE(holds(lineWith(text, "Size"), "8 × 860 mm (500 + 360)")) << text;
    EXPECT_TRUE(holds(lineWith(text, "Sheet 2"), "PE-HD natural, 8.05 mm, maker Maker One"));
    EXPECT_TRUE(holds(lineWith(text, "Sheet 2"), "melt flow 0.3"));
    EXPECT_TRUE(holds(lineWith(text, "Note"), codeInWords("calibration_overdue"))) << text;
    opened.lostUm.reset();
    EXPECT_FALSE(holds(textOf(Story(opened).weld()), "cut away")) << "nobody said how much";
}

// DVS 2207-1 asks for a screen where the place is cold or draughty: the paper says how that stood.
TEST(RecordText, SaysHowTheWeatherGuardStood) {
    const auto shop = [](const Story& story) { return lineWith(textOf(story.weld()), "Shop"); };
    WeldOpened opened = test::inventedOpening();
    opened.shielded = false;
    EXPECT_TRUE(holds(shop(Story(opened)), "20 °C, no weather guard noted"));
    opened.shielded = true;
    EXPECT_TRUE(holds(shop(Story(opened)), "20 °C, weather guard asked for, not looked at"));
    opened.plan.checks.emplace_back("shielded");
    Story seen(opened);
    CheckMade made;
    made.check = "shielded";
    made.passed = true;
    made.valueMc = 17'500;
    seen.then(made);
    EXPECT_TRUE(holds(shop(seen), "17.5 °C, seam shielded")) << "as it was read";
    Story left(opened);
    left.then(CheckOverridden{"shielded", "indoors", Authority::Operator});
    EXPECT_TRUE(holds(shop(left), "the check of the weather guard passed over"));
}

TEST(RecordText, NamesAnOvershootThatWasBackedOff) {
    Story story;
    story.prepare().then(AlignmentStarted{});
    story.wait(seconds(1)).then(ReadingTaken{ReadingPhase::Alignment, 18'000});
    EXPECT_FALSE(holds(textOf(story.weld()), "backed off")) << "not yet";
    story.wait(seconds(1)).then(ReadingTaken{ReadingPhase::Alignment, 15'500});
    EXPECT_TRUE(holds(
        textOf(story.weld()), "Alignment: backed off after overshoot, from 18 mm to 15.5 mm\n"));
}

TEST(RecordText, SetsActualBesideSet) {
    const std::string text = textOf(Story().close().weld());
    const std::string plate = lineWith(text, "plate on its face");
    EXPECT_TRUE(holds(plate, "210 °C, 200 to 220 °C")) << plate;
    EXPECT_TRUE(holds(plate, "211 °C (middle, face left)")) << plate;
    const std::string changeover = lineWith(text, "  changeover");
    EXPECT_TRUE(holds(changeover, "at most 6.4 s")) << changeover;
    EXPECT_TRUE(holds(changeover, "4.000 s")) << changeover;
    const std::string cooling = lineWith(text, "  cooling");
    EXPECT_TRUE(holds(cooling, "at least 11:30")) << cooling;
    EXPECT_TRUE(holds(cooling, "11:30.000")) << cooling;
}

TEST(RecordText, ListsEveryEventWithItsNumberAndInstant) {
    const Weld weld = Story().close().weld();
    const std::vector<std::string> lines = test::linesOf(textOf(weld));
    std::size_t found = 0;
    for (const Event& event : weld.events) {
        const std::string start = std::to_string(event.n) + "  " + utcTimeOfDay(event.at.utc);
        for (const std::string& line : lines) {
            const std::size_t at = line.find_first_not_of(' ');
            found += at != std::string::npos && line.compare(at, start.size(), start) == 0 ? 1 : 0;
        }
    }
    EXPECT_EQ(found, weld.events.size());
}

TEST(RecordText, ShowsTheCuesBetweenTheEventsOnlyWhenAsked) {
    const Weld weld = Story().close().weld();
    RecordExtras extras;
    EXPECT_FALSE(holds(textOf(weld, extras), ">>"));
    extras.cues = true;
    const std::string text = textOf(weld, extras);
    EXPECT_TRUE(holds(text, ">>  get ready")) << text;
    EXPECT_TRUE(holds(text, ">>  count-in 3"));
    EXPECT_TRUE(holds(text, ">>  act now"));
    EXPECT_LT(text.find("get ready"), text.find("plate out\n"));
}

TEST(RecordText, ShowsTheCouponsThatWereCutFromIt) {
    CouponSeries series;
    series.id = "coupon:7";
    CouponTested tested;
    tested.test = "tensile";
    tested.standard = "EN 12814-2";
    tested.material = "PE-HD";
    tested.thicknessUm = 8'000;
    tested.weldedPa = {27'000'000, 27'400'000};
    tested.parentPa = {29'500'000, 30'500'000};
    series.versions = {{{}, "person:ines", tested, 3}};
    series.factor = weldingFactor({27, 27.4}, {29.5, 30.5}).value(); // 27.2 over 30
    series.required = 0.9;
    const std::vector<CouponSeries> coupons{series};
    RecordExtras extras;
    extras.coupons = &coupons;
    const std::string text = textOf(Story().close().weld(), extras);
    EXPECT_TRUE(holds(text, "coupon:7")) << text;
    EXPECT_TRUE(holds(lineWith(text, "Factor"), "0.907")) << text;
    EXPECT_TRUE(holds(text, "2 coupons, mean 27.2 MPa")) << text;
    EXPECT_TRUE(holds(lineWith(text, "  Event "), "3")) << text;
}

TEST(RecordText, GivesTheVerdictWithEveryReason) {
    Story story;
    story.soak().wait(Milliseconds(8'800)).then(FacesMet{});
    story.wait(seconds(6)).then(ReadingTaken{ReadingPhase::Joining, 15'500});
    const WeldRecord now = record(story.weld());
    const std::string text = verdictText(now);
    EXPECT_TRUE(holds(text, "Verdict: incomplete\n")) << text;
    ASSERT_GE(now.verdict.findings.size(), 2U);
    for (const Finding& finding : now.verdict.findings) {
        EXPECT_TRUE(holds(text, std::string(toString(finding.grade)))) << finding.text;
        EXPECT_TRUE(holds(text, finding.text.substr(0, 40))) << text;
    }
}

TEST(RecordText, ShowsAStoredVerdictBesideADifferentNewOne) {
    WeldRecord changed = record(Story().close().weld());
    EXPECT_FALSE(holds(verdictText(changed), "Stored at closing")) << "they are the same";
    changed.verdict.word = VerdictWord::OutOfLimits;
    changed.verdict.findings = {
        {"changeover", Grade::Out, 6'400, 8'800, "ms", "Changeover took 8.8 s."}};
    const std::string text = verdictText(changed);
    EXPECT_TRUE(holds(text, "Verdict: out of limits\n"));
    EXPECT_TRUE(holds(text, "Stored at closing, by rules 1: within limits\n")) << text;
}

TEST(RecordText, WorksOutForcesOnlyWithTheBench) {
    const WeldRecord now = record(Story().close().weld());
    const Bench bench = benchOfTheStory();
    RecordExtras extras;
    EXPECT_TRUE(holds(lineWith(recordText(now, extras), "joining force"), "1032 N"));
    extras.bench = &bench;
    // (15.5 − 0.5) mm · 70 N/mm − 20 N drag = 1030 N
    EXPECT_TRUE(holds(lineWith(recordText(now, extras), "joining force"), "1030 N"));
}

TEST(RecordText, SaysHowAnAbortedWeldEnded) {
    Story story;
    story.soak().then(WeldAborted{"cut_out", "bead missing at the back"});
    const std::string text = textOf(story.weld());
    EXPECT_TRUE(holds(text, "stopped: cut out, bead missing at the back")) << text;
    EXPECT_TRUE(holds(text, "Verdict: incomplete"));
}

TEST(RecordText, KeepsToAHundredColumnsWhateverPeopleType) {
    Story story;
    story.inspect().then(RemarkMade{"\x1b[2J" + std::string(250, 'w') + " \n\xFF end"});
    RecordExtras extras;
    extras.cues = true;
    story.then(closing(story.weld()));
    for (const std::string& line : test::linesOf(textOf(story.weld(), extras))) {
        EXPECT_LE(columnsOf(line), kTextColumns) << line;
        EXPECT_EQ(line.find('\x1b'), std::string::npos) << line;
    }
}

TEST(RecordText, SaysWhereThePlansValuesComeFromAndWhoAttestedThem) {
    Story story;
    Weld weld = story.close().weld();
    auto& opened = std::get<WeldOpened>(weld.events.front().d);
    opened.plan.sources = {
        {"soak_s",
         {"a table; attested by Ines Falk, 2030-01-07, against edition 2016-03",
          Standing::Attested}},
        {"heated_tool_C", {"a table", Standing::Memory}},
        {"bead_min_mm", {"a table", Standing::Memory}}};
    const auto again = fold(weld.events);
    ASSERT_TRUE(again) << again.error().detail;
    const std::string text = textOf(*again);
    EXPECT_TRUE(holds(text, "Where the plan's values come from\n")) << text;
    EXPECT_TRUE(holds(text, "  - plate; bead in alignment: a table [from memory: not attested]"));
    EXPECT_TRUE(holds(
        text, "  - soak: a table; attested by Ines Falk, 2030-01-07, against edition 2016-03"))
        << text;
}

TEST(RecordText, MayLeaveTheEventsToWhoeverShowedThemAlready) {
    RecordExtras extras;
    extras.events = false;
    EXPECT_FALSE(holds(textOf(Story().close().weld(), extras), "\nEvents"));
}

} // namespace
} // namespace seamclock
