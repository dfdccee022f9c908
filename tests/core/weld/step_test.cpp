// The whole matrix states × kinds of event, against the table of states in the contracts, typed
// here once more.
#include "core/weld/step.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>
#include <map>

namespace seamclock {
namespace {

using std::chrono::seconds;
using test::inventedPlan;

const WeldTime kNow{seconds{500}, seconds{500}};

// One state of each kind, all of whose own events would be in order.
std::map<std::string, State> states() {
    Cooling cooling{{}, {seconds{690}, seconds{690}}, {}, {}, false};
    BuildingUp building{{}, {seconds{6}, seconds{6}}, {seconds{8}, seconds{8}}, {}, {}};
    Preparing ready;
    ready.settled = {"plate_temperature", "film_off", "gap"};
    return {
        {"preparing", ready},        {"aligning", Aligning{}},
        {"soaking", Soaking{}},      {"changing_over", ChangingOver{}},
        {"building_up", building},   {"cooling", cooling},
        {"releasing", Releasing{1}}, {"inspecting", Inspecting{}},
        {"closed", Closed{}},        {"aborted", Aborted{}},
    };
}

std::vector<WeldDetail> ordinary() {
    const WeldPlan plan = inventedPlan();
    return {
        PlanReplaced{plan, {"a", "b", {}}, "drag measured again"},
        CheckMade{"film_off", true, {}, {}, {}, {}, {}, {}},
        CheckMade{"alignment_bead", true, {}, 2'000, {}, {}, {}, {}},
        CheckOverridden{"film_off", "no film on this sheet", Authority::Operator},
        AlignmentStarted{},
        SoakStarted{},
        PlateOut{},
        FacesMet{},
        PressureLocked{},
        ReadingTaken{ReadingPhase::Alignment, 15'500},
        ReadingTaken{ReadingPhase::Soak, 1'500},
        ReadingTaken{ReadingPhase::Joining, 15'500},
        ReadingTaken{ReadingPhase::Recheck, 15'500},
        ReasonGiven{"changeover", "let it cool", {}},
        ReleaseStep{"clamps_eased"},
        ReleaseStep{"bars_opened"},
        JointNumbered{},
        BeadMeasured{{}, 9'000, 4'000, 800, 200},
        PhotoAdded{"00", 10, "bead.jpg"},
        RemarkMade{"text"},
        CueAcknowledged{"get_ready"},
        ClockJumped{seconds{3}},
        WeldClosed{"within limits", {}, 1},
        WeldAborted{"cut_out", ""},
        Graded{"EN 16296", "B"},
        Decided{Decision::Accept, "fine"},
        SignedOff{"foreman"},
    };
}

std::string nameOf(const WeldDetail& detail) {
    std::string name(kindOf(detail));
    if (const auto* reading = std::get_if<ReadingTaken>(&detail)) {
        name += " " + std::string(toString(reading->phase));
    } else if (const auto* release = std::get_if<ReleaseStep>(&detail)) {
        name += " " + release->step;
    } else if (const auto* check = std::get_if<CheckMade>(&detail)) {
        name += " " + check->check;
    }
    return name;
}

// state → event → the state that follows. What is not here is refused.
const std::map<std::string, std::map<std::string, std::string>> kAccepted{
    {"preparing",
     {{"plan_replaced", "preparing"},
      {"check_made film_off", "preparing"},
      {"check_overridden", "preparing"},
      {"alignment_started", "aligning"}}},
    {"aligning",
     {{"soak_started", "soaking"},
      {"reading_taken alignment", "aligning"},
      {"check_made alignment_bead", "aligning"}}},
    {"soaking",
     {{"plate_out", "changing_over"},
      {"reading_taken alignment", "soaking"},
      {"reading_taken soak", "soaking"},
      {"check_made alignment_bead", "soaking"}}},
    {"changing_over",
     {{"faces_met", "building_up"},
      {"reading_taken alignment", "changing_over"},
      {"reading_taken soak", "changing_over"}}},
    {"building_up",
     {{"pressure_locked", "cooling"},
      {"reading_taken alignment", "building_up"},
      {"reading_taken soak", "building_up"},
      {"reading_taken joining", "building_up"}}},
    {"cooling",
     {{"release_step clamps_eased", "releasing"},
      {"joint_numbered", "cooling"},
      {"reading_taken alignment", "cooling"},
      {"reading_taken soak", "cooling"},
      {"reading_taken joining", "cooling"},
      {"reading_taken recheck", "cooling"}}},
    {"releasing", {{"release_step bars_opened", "releasing"}, {"joint_numbered", "releasing"}}},
    {"inspecting",
     {{"bead_measured", "inspecting"},
      {"graded", "inspecting"},
      {"joint_numbered", "inspecting"},
      {"weld_closed", "closed"}}},
    {"closed", {{"decided", "closed"}, {"signed_off", "closed"}}},
    {"aborted", {{"decided", "aborted"}, {"signed_off", "aborted"}}},
};

std::string expected(const std::string& state, const std::string& event) {
    if (event == "remark_made" || event == "photo_added") {
        return state;
    }
    const bool isOver = state == "closed" || state == "aborted";
    if (!isOver &&
        (event == "cue_acknowledged" || event == "clock_jumped" || event == "reason_given")) {
        return state;
    }
    if (!isOver && event == "weld_aborted") {
        return "aborted";
    }
    const auto& row = kAccepted.at(state);
    const auto found = row.find(event);
    return found == row.end() ? "refused" : found->second;
}

TEST(Step, FollowsTheTableForEveryStateAndEvent) {
    int cells = 0;
    for (const auto& [name, state] : states()) {
        for (const WeldDetail& detail : ordinary()) {
            const auto next = step(inventedPlan(), state, detail, kNow);
            const std::string got = next ? std::string(phaseName(*next)) : "refused";
            EXPECT_EQ(got, expected(name, nameOf(detail))) << name << " × " << nameOf(detail);
            ++cells;
        }
    }
    EXPECT_EQ(cells, 10 * 27);
}

TEST(Step, ARefusalNamesTheEventAndTheState) {
    const auto next = step(inventedPlan(), Soaking{}, FacesMet{}, kNow);
    ASSERT_FALSE(next);
    EXPECT_EQ(next.error().code, ErrorCode::Refused);
    EXPECT_EQ(next.error().detail, "faces_met does not fit while soaking");
}

TEST(Preparing, OpensWithEveryCheckOfThePlan) {
    EXPECT_EQ(
        preparing(inventedPlan()).openChecks,
        (std::vector<std::string>{"plate_temperature", "film_off", "gap"}));
}

TEST(Preparing, RefusesAlignmentWhileACheckIsOpenAndNamesIt) {
    test::Story story;
    story.then(CheckMade{"plate_temperature", true, 211'000, {}, {}, {}, {}, {}});
    const auto next = story.attempt(AlignmentStarted{});
    ASSERT_FALSE(next);
    EXPECT_NE(next.error().detail.find("film_off"), std::string::npos) << next.error().detail;
}

TEST(Preparing, AFailedCheckStaysOpenAndOneThatFailsLaterOpensAgain) {
    test::Story story;
    story.prepare().then(CheckMade{"gap", false, {}, {}, {}, {}, {}, {}});
    EXPECT_EQ(std::get<Preparing>(story.state()).openChecks, (std::vector<std::string>{"gap"}));
    story.then(CheckMade{"gap", true, {}, {}, {}, {}, {}, {}});
    EXPECT_TRUE(std::get<Preparing>(story.state()).openChecks.empty());
}

TEST(Preparing, RefusesACheckThatThisWeldDoesNotHave) {
    EXPECT_FALSE(test::Story().attempt(CheckMade{"moon_phase", true, {}, {}, {}, {}, {}, {}}));
}

TEST(Preparing, AReplacedPlanKeepsWhatWasCheckedAndOpensWhatItAdds) {
    test::Story story;
    story.prepare();
    WeldPlan plan = inventedPlan();
    plan.checks.push_back("drag");
    plan.dragMn = 30'000;
    story.then(PlanReplaced{plan, {std::string(64, 'a'), std::string(64, 'b'), {}}, "drag"});
    EXPECT_EQ(std::get<Preparing>(story.state()).openChecks, (std::vector<std::string>{"drag"}));
    EXPECT_EQ(story.weld().plan.dragMn, 30'000);
}

TEST(Soaking, IsDueAfterThePlannedTimeFromWhenItsReadingIsReached) {
    test::Story story;
    story.align();
    const auto& soaking = std::get<Soaking>(story.state());
    EXPECT_EQ(soaking.due.lo - soaking.from.lo, *&inventedPlan().soak->target);
}

TEST(BuildingUp, StartsCoolingOnlyWhenTheLastReadingIsInBand) {
    struct Row {
        std::vector<std::int64_t> readings;
        bool cools;
    };
    // The band is 14.6 to 16.9; a value on its end is in it.
    const std::vector<Row> rows{
        {{}, true},
        {{15'500}, true},
        {{14'600}, true},
        {{16'900}, true},
        {{14'599}, false},
        {{16'901}, false},
        {{15'500, 14'000}, false},
        {{0}, false},
        {{14'000, 15'000}, true},
    };
    for (const Row& row : rows) {
        test::Story story;
        story.changeOver();
        for (const std::int64_t reading : row.readings) {
            story.wait(seconds{1}).then(ReadingTaken{ReadingPhase::Joining, reading});
        }
        story.wait(seconds{1}).then(PressureLocked{});
        EXPECT_EQ(std::holds_alternative<Cooling>(story.state()), row.cools)
            << ::testing::PrintToString(row.readings);
    }
}

TEST(BuildingUp, CoolsFromTheSecondLockWhenTheFirstWasOutOfBand) {
    test::Story story;
    story.changeOver().wait(seconds{3}).then(ReadingTaken{ReadingPhase::Joining, 12'000});
    story.then(PressureLocked{}).wait(seconds{3});
    story.then(ReadingTaken{ReadingPhase::Joining, 15'500}).wait(seconds{1});
    const WeldTime second = story.time();
    story.then(PressureLocked{});
    ASSERT_TRUE(std::holds_alternative<Cooling>(story.state()));
    EXPECT_EQ(std::get<Cooling>(story.state()).from, second);
}

TEST(Releasing, FollowsTheBenchsOwnOrderAndFreesItAtTheLastStep) {
    test::Story story;
    story.cool();
    EXPECT_FALSE(story.attempt(ReleaseStep{"sheet_out"}));
    story.then(ReleaseStep{"clamps_eased"});
    EXPECT_FALSE(story.attempt(ReleaseStep{"clamps_eased"}));
    story.then(ReleaseStep{"bars_opened"});
    EXPECT_TRUE(std::holds_alternative<Releasing>(story.state()));
    story.then(ReleaseStep{"sheet_out"});
    EXPECT_TRUE(std::holds_alternative<Inspecting>(story.state()));
}

TEST(Releasing, IsTakenAsAFactBeforeCoolingIsOver) {
    test::Story story;
    story.buildUp().wait(seconds{30}).then(ReleaseStep{"clamps_eased"});
    EXPECT_TRUE(std::holds_alternative<Releasing>(story.state()));
}

} // namespace
} // namespace seamclock
