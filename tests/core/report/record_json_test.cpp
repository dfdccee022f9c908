// The record's JSON as scripts see it: its keys are a contract.
#include "core/report/record_json.h"
#include "core/weld/intent.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace seamclock {
namespace {

using nlohmann::json;
using std::chrono::seconds;
using test::Story;

json jsonOf(const Weld& weld, const RecordExtras& extras = {}) {
    return json::parse(recordJson(record(weld), extras));
}

TEST(RecordJson, HasTheKeysThatScriptsDependOn) {
    const json j = jsonOf(Story().close().weld());
    for (const char* key :
         {"weld",          "number",     "type",      "state",     "opened",
          "bench",         "procedure",  "edition",   "material",  "thickness_mm",
          "length_mm",     "lengths_mm", "ambient_C", "shielded",  "flags",
          "docs",          "sheets",     "seam",      "plan",      "set_and_actual",
          "phases",        "checks",     "readings",  "beads",     "releases",
          "reasons_given", "remarks",    "photos",    "decisions", "numbered_utc",
          "verdict",       "rules",      "reasons",   "stored",    "differs_from_stored",
          "events"}) {
        EXPECT_TRUE(j.contains(key)) << key;
    }
    EXPECT_EQ(j["verdict"], "within limits");
    EXPECT_EQ(j["reasons"], json::array());
    EXPECT_EQ(j["number"], 7);
    EXPECT_EQ(j["thickness_mm"], 8.0);
    EXPECT_EQ(j["opened"]["utc"], "2030-01-13T06:00:00.000Z");
    EXPECT_EQ(j["sheets"][1]["batch"], "batch 12");
    EXPECT_FALSE(j.contains("reweld_of")) << "what has no value is absent";
    EXPECT_FALSE(j.contains("cues"));
}

TEST(RecordJson, TakesEachVerdictWordFromTheContract) {
    EXPECT_EQ(jsonOf(Story().close().weld())["verdict"], "within limits");
    Story remarked;
    remarked.inspect().then(RemarkMade{"dusty"});
    remarked.then(closing(remarked.weld()));
    EXPECT_EQ(jsonOf(remarked.weld())["verdict"], "within limits with remarks");
    EXPECT_EQ(jsonOf(Story().soak().weld())["verdict"], "incomplete");
}

TEST(RecordJson, KeepsTheValueThatWasCorrected) {
    Story story;
    story.close();
    const std::int64_t target = test::lastReading(story.weld(), ReadingPhase::Joining);
    story.then(ValueCorrected{target, "reading_milli", "15500", "15000", "misread"});
    const json j = jsonOf(story.weld());
    int found = 0;
    for (const json& row : j["set_and_actual"]) {
        if (row["item"] == "joining_reading") {
            EXPECT_EQ(row["actual"], 15.0);
            EXPECT_EQ(row["was"], 15.5);
            EXPECT_EQ(row["corrected_by"], story.weld().events.size());
            ++found;
        } else {
            EXPECT_FALSE(row.contains("was")) << row;
        }
    }
    EXPECT_EQ(found, 1);
}

TEST(RecordJson, LeadsFromEveryNumberToAnEvent) {
    const json j = jsonOf(Story().close().weld());
    std::map<std::int64_t, std::string> kinds;
    for (const json& event : j["events"]) {
        kinds[event["n"]] = event["kind"];
    }
    for (const json& phase : j["phases"]) {
        EXPECT_TRUE(kinds.count(phase["from_n"]) && kinds.count(phase["to_n"])) << phase;
    }
    int actual = 0;
    for (const json& row : j["set_and_actual"]) {
        if (row.contains("actual")) {
            ++actual;
            EXPECT_TRUE(kinds.count(row["n"])) << row;
        }
    }
    EXPECT_GE(actual, 6);
    for (const char* list : {"checks", "readings", "beads", "releases"}) {
        ASSERT_FALSE(j[list].empty()) << list;
        for (const json& entry : j[list]) {
            EXPECT_EQ(kinds[entry["n"]], entry["kind"]) << entry;
        }
    }
}

TEST(RecordJson, NamesTheEventsBehindAReason) {
    Story story;
    story.soak().wait(Milliseconds(8'800)).then(FacesMet{});
    const json j = jsonOf(story.weld());
    bool found = false;
    for (const json& reason : j["reasons"]) {
        if (reason["code"] != "changeover") {
            continue;
        }
        found = true;
        EXPECT_EQ(reason["grade"], "out");
        EXPECT_EQ(reason["limit"], 6'400);
        EXPECT_EQ(reason["actual"], 8'800);
        EXPECT_EQ(reason["unit"], "ms");
        ASSERT_EQ(reason["events"].size(), 2U);
        const auto kind = [&j](std::int64_t n) {
            return j["events"][static_cast<std::size_t>(n - 1)]["kind"];
        };
        EXPECT_EQ(kind(reason["events"][0]), "plate_out");
        EXPECT_EQ(kind(reason["events"][1]), "faces_met");
    }
    EXPECT_TRUE(found);
}

TEST(RecordJson, GivesATimeOverABridgeAsAnInterval) {
    Story story;
    story.buildUp().wait(seconds(30)).then(RemarkMade{"still here"});
    story.reboot(seconds(2'000));
    story.then(ClockBridged{"boot-1", Milliseconds(0), seconds(2'000), BridgeBasis::Unconfirmed});
    story.wait(seconds(700)).then(ReleaseStep{story.weld().plan.releaseOrder.front()});
    const json j = jsonOf(story.weld());
    const json& cooling = j["phases"].back();
    ASSERT_EQ(cooling["phase"], "cooling");
    EXPECT_EQ(cooling["took_s"]["low"], 730.0);
    EXPECT_EQ(cooling["took_s"]["high"], 2'730.0);
}

TEST(RecordJson, HoldsWhatWasWeldedAgainAndAnOvershootThatWasBackedOff) {
    WeldOpened opened = test::inventedOpening();
    opened.reweldOf = "99999999-0000-4000-8000-000000000000";
    opened.lostUm = 24'500;
    opened.part = "Brine settling tank";
    opened.beadPlaces = 3;
    Story story(opened);
    story.prepare().then(AlignmentStarted{});
    story.wait(std::chrono::seconds(1)).then(ReadingTaken{ReadingPhase::Alignment, 18'000});
    EXPECT_FALSE(jsonOf(story.weld()).contains("alignment_backed_off"));
    story.wait(std::chrono::seconds(1)).then(ReadingTaken{ReadingPhase::Alignment, 15'500});
    const json j = jsonOf(story.weld());
    EXPECT_EQ(j["reweld_of"], *opened.reweldOf);
    EXPECT_EQ(j["lost_mm"], 24.5);
    EXPECT_EQ(j["part"], "Brine settling tank");
    EXPECT_EQ(j["bead_places"], 3);
    EXPECT_EQ(j["alignment_backed_off"], (json{{"over", 18.0}, {"back", 15.5}, {"unit", "mm"}}));
}

TEST(RecordJson, SaysWhichEventsNoLongerStand) {
    Story story;
    story.align().then(ReadingTaken{ReadingPhase::Soak, 1'000});
    const auto n = static_cast<std::int64_t>(story.weld().events.size());
    story.then(StepTakenBack{n});
    const json j = jsonOf(story.weld());
    EXPECT_FALSE(j["events"][static_cast<std::size_t>(n - 1)]["stands"]);
    EXPECT_TRUE(j["events"][static_cast<std::size_t>(n)]["stands"]) << "the take-back itself";
    EXPECT_EQ(j["events"][static_cast<std::size_t>(n)]["d"]["target_n"], n);
}

TEST(RecordJson, KeepsTheStoredVerdictBesideANewOne) {
    WeldRecord changed = record(Story().close().weld());
    changed.verdict.word = VerdictWord::OutOfLimits;
    const json j = json::parse(recordJson(changed, {}));
    EXPECT_EQ(j["verdict"], "out of limits");
    EXPECT_EQ(j["stored"]["verdict"], "within limits");
    EXPECT_TRUE(j["differs_from_stored"]);
}

TEST(RecordJson, HasTheCuesWhenAsked) {
    RecordExtras extras;
    extras.cues = true;
    const json j = jsonOf(Story().close().weld(), extras);
    ASSERT_FALSE(j["cues"].empty());
    for (const json& cue : j["cues"]) {
        EXPECT_TRUE(cueFromString(cue["cue"].get<std::string>()).has_value()) << cue;
        EXPECT_TRUE(cue.contains("utc") && cue.contains("after_n"));
    }
}

TEST(RecordJson, HoldsAnAbort) {
    Story story;
    story.soak().then(WeldAborted{"cut_out", "bead missing"});
    const json j = jsonOf(story.weld());
    EXPECT_EQ(j["aborted"]["text"], "bead missing");
    EXPECT_EQ(j["state"], "aborted");
    EXPECT_FALSE(j.contains("stored"));
}

} // namespace
} // namespace seamclock
