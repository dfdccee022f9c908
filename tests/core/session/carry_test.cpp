// How often a check means something is the shop's practice (common practice, no source), but that
// a plate is read at the start of a shift, after a change and when it stood idle for over an hour.
#include "core/session/carry.h"

#include "core/log/log_writer.h"
#include "core/log/world.h"
#include "core/session/bench_past.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;
using test::inventedOpening;
using test::inventedPlan;
using test::Story;

WeldPlan planWithAll() {
    WeldPlan plan = inventedPlan();
    plan.checks = weldChecks();
    return plan;
}

CheckMade passed(const char* check) {
    CheckMade made;
    made.check = check;
    made.passed = true;
    return made;
}

CheckMade plateAt(const char* place, std::int64_t mc) {
    CheckMade made = passed("plate_temperature");
    made.place = place;
    made.valueMc = mc;
    return made;
}

/// A weld that is prepared: every check is made.
Story prepared(const WeldOpened& opened = inventedOpening(planWithAll())) {
    Story story(opened);
    for (const std::string& check : opened.plan.checks) {
        story.wait(seconds(5));
        if (check == "plate_temperature") {
            story.then(plateAt("front", 209'000));
            story.then(plateAt("middle", 211'000));
            story.then(plateAt("back", 212'000));
        } else {
            story.then(passed(check.c_str()));
        }
    }
    return story;
}

std::vector<std::string> names(const std::vector<CheckMade>& made) {
    std::vector<std::string> all;
    for (const CheckMade& one : made) {
        all.push_back(one.check);
    }
    return all;
}

const std::vector<std::string> kAll{
    "plate_warm",
    "plate_temperature",
    "plate_temperature",
    "plate_temperature",
    "scale_zero",
    "sound_heard",
    "gap",
    "first_sheet",
    "clamping_gap",
    "second_sheet",
    "shielded"};
const std::vector<std::string> kOfTheShift{"plate_warm",        "plate_temperature",
                                           "plate_temperature", "plate_temperature",
                                           "scale_zero",        "sound_heard"};

std::vector<std::string>
standing(const WeldOpened& next, const std::vector<Weld>& earlier, const Instant& now) {
    return names(checksThatStand(next, earlier, now));
}

TEST(Carry, NamesEveryCheckOfAWeld) {
    int ofTheWeld = 0;
    for (const std::string& check : weldChecks()) {
        ofTheWeld += holdsFor(check) == CheckHolds::Weld ? 1 : 0;
    }
    EXPECT_EQ(ofTheWeld, 5) << "drag, film, edges, plate wiped, edges meet";
    EXPECT_EQ(holdsFor(kForemansScale), CheckHolds::Weld) << "only a foreman's word settles it";
}

TEST(Carry, TheSecondOfASeriesTakesOverWhatStands) {
    const Story first = prepared();
    const WeldOpened next = inventedOpening(planWithAll());
    const auto stand = checksThatStand(next, {first.weld()}, first.now());
    auto sorted = names(stand);
    auto wanted = kAll;
    std::sort(sorted.begin(), sorted.end());
    std::sort(wanted.begin(), wanted.end());
    EXPECT_EQ(sorted, wanted);
    for (const CheckMade& made : stand) {
        EXPECT_TRUE(made.passed);
        ASSERT_TRUE(made.takenUtc) << made.check;
        EXPECT_GT(*made.takenUtc, first.weld().events.front().at.utc);
        EXPECT_LE(*made.takenUtc, first.now().utc);
        if (made.check == "plate_temperature" && made.place == "middle") {
            EXPECT_EQ(made.valueMc, 211'000);
        }
    }
}

// Else nobody could open a joint on that bench any more.
TEST(BenchPast, AWeldThatCantBeReadHidesWhatCameBeforeItAndStopsNobody) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    {
        const test::FakeClock clock;
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        for (std::int64_t joint = 1; joint <= 6; ++joint) {
            writer->submit(test::rowsOf(test::closedWeld(joint)), test::sampleDocuments());
        }
        ASSERT_TRUE(writer->flush());
    }
    {
        test::BehindTheBack tool(path);
        tool.database().exec(
            "UPDATE event SET body = replace(body, '\"v\":', '\"w\":') WHERE subject = '" +
            test::weldName(4) + "' AND n = 3");
    }
    BenchPast past(path);
    const auto before = past.before(
        "bench-a", test::closedWeld(6).back().at, [](const std::string&) { return false; });
    ASSERT_TRUE(before) << before.error().detail;
    ASSERT_EQ(before->size(), 2U);
    EXPECT_EQ((*before)[0].opened().number, 6);
    EXPECT_EQ((*before)[1].opened().number, 5);
    const auto usual = past.usualAlignment("bench-a", "invented", 8'000);
    ASSERT_TRUE(usual) << usual.error().detail;
    ASSERT_TRUE(*usual) << "the five others";
    EXPECT_EQ((*usual)->median, seconds(50));
}

TEST(Carry, NothingStandsBeforeTheFirst) {
    EXPECT_TRUE(checksThatStand(inventedOpening(planWithAll()), {}, Story().now()).empty());
}

TEST(Carry, KeepsTheTimeAtWhichACheckWasMadeThroughManyWelds) {
    const Story first = prepared();
    const auto stand = checksThatStand(inventedOpening(planWithAll()), {first.weld()}, first.now());
    Story second(inventedOpening(planWithAll()));
    second.wait(minutes(30));
    for (const CheckMade& made : stand) {
        second.then(made);
    }
    const auto again = checksThatStand(
        inventedOpening(planWithAll()), {second.weld(), first.weld()}, second.now());
    EXPECT_EQ(again, stand);
}

struct Change {
    const char* name;
    void (*make)(WeldOpened& next);
    bool shiftStands;
    bool plateStands;
};

class CarryOverChange : public ::testing::TestWithParam<Change> {};

TEST_P(CarryOverChange, AsksForTheSetUpAnew) {
    const Story first = prepared();
    WeldOpened next = inventedOpening(planWithAll());
    GetParam().make(next);
    std::vector<std::string> wanted;
    for (const std::string& check : kOfTheShift) {
        const bool ofThePlate = check.rfind("plate", 0) == 0;
        if (GetParam().shiftStands && (GetParam().plateStands || !ofThePlate)) {
            wanted.push_back(check);
        }
    }
    EXPECT_EQ(standing(next, {first.weld()}, first.now()), wanted);
}

INSTANTIATE_TEST_SUITE_P(
    Of, CarryOverChange,
    ::testing::Values(
        Change{"material", [](WeldOpened& next) { next.sheets[1].material = "PP"; }, true, true},
        Change{"thickness", [](WeldOpened& next) { next.plan.thicknessUm = 10'000; }, true, true},
        Change{
            "thickness_with_another_plate_temperature",
            [](WeldOpened& next) {
                next.plan.thicknessUm = 10'000;
                next.plan.plate->targetMc += 5'000;
            },
            true, false},
        Change{
            "bench_as_set_up", [](WeldOpened& next) { next.docs.bench = std::string(64, 'c'); },
            false, false}),
    [](const ::testing::TestParamInfo<Change>& change) { return std::string(change.param.name); });

TEST(Carry, AnotherPlateTemperatureAloneAsksForThePlateAnew) {
    const Story first = prepared();
    WeldOpened next = inventedOpening(planWithAll());
    next.plan.plate->targetMc += 5'000;
    for (const std::string& check : standing(next, {first.weld()}, first.now())) {
        EXPECT_NE(check.rfind("plate", 0), 0U) << check;
    }
}

TEST(Carry, APlateIdleForOverAnHourIsReadAgain) {
    Story first = prepared();
    const WeldOpened next = inventedOpening(planWithAll());
    const Instant before = [&first] {
        Instant at;
        for (const Event& event : first.weld().events) {
            const auto* made = std::get_if<CheckMade>(&event.d);
            at = made != nullptr && made->check == "plate_temperature" ? event.at : at;
        }
        at.boot += hours(1);
        at.utc += hours(1);
        return at;
    }();
    EXPECT_EQ(standing(next, {first.weld()}, before).size(), kAll.size());
    Instant over = before;
    over.boot += Milliseconds(1);
    over.utc += Milliseconds(1);
    EXPECT_EQ(standing(next, {first.weld()}, over).size(), kAll.size() - 4);
}

// It is idle from where it left the sheets, however long these cool, and whatever a foreman says of
// their joint later.
TEST(Carry, APlateIsIdleFromWhereItLeftTheSheets) {
    Story first(inventedOpening(planWithAll()));
    first.close();
    const Instant out =
        std::find_if(
            first.weld().events.begin(), first.weld().events.end(),
            [](const Event& event) { return std::holds_alternative<PlateOut>(event.d); })
            ->at;
    first.wait(minutes(20)).then(Decided{Decision::Accept, "trial_held"});
    const WeldOpened next = inventedOpening(planWithAll());
    const auto plateChecks = [&](Milliseconds idle) {
        Instant at = out;
        at.boot += idle;
        at.utc += idle;
        const auto all = standing(next, {first.weld()}, at);
        return std::count_if(all.begin(), all.end(), [](const std::string& check) {
            return check.rfind("plate", 0) == 0;
        });
    };
    EXPECT_GE(plateChecks(hours(1)), 2);
    EXPECT_EQ(plateChecks(hours(1) + Milliseconds(1)), 0);
}

// One that is opened and stopped over and over uses no plate.
TEST(Carry, AWeldThatReadNoPlateKeepsNoneFromBeingRead) {
    const Story first = prepared();
    const auto read = plateLastUsed({first.weld()});
    ASSERT_TRUE(read);
    Story second(inventedOpening(planWithAll()));
    second.wait(minutes(50));
    for (CheckMade made : checksThatStand(second.weld().opened(), {first.weld()}, second.now())) {
        second.then(made);
    }
    second.then(WeldAborted{"wrong_sheet", ""});
    EXPECT_EQ(plateLastUsed({second.weld(), first.weld()}), read);
    EXPECT_FALSE(plateLastUsed({second.weld()}));
}

// Only how warm it is was said for a weld that was the wrong one: its face was not read.
TEST(Carry, AnAttestedWaitIsNoReadingOfThePlate) {
    const Story first = prepared();
    Story second(inventedOpening(planWithAll()));
    second.wait(hours(2)).then(passed("plate_warm"));
    second.wait(seconds(30)).then(WeldAborted{"wrong_sheet", ""});
    EXPECT_EQ(plateLastUsed({second.weld(), first.weld()}), plateLastUsed({first.weld()}));
    const WeldOpened next = inventedOpening(planWithAll());
    const auto stand = standing(next, {second.weld(), first.weld()}, second.now());
    EXPECT_TRUE(std::none_of(stand.begin(), stand.end(), [](const std::string& check) {
        return check.rfind("plate", 0) == 0;
    }));
    // And in its own weld that answer stands, though no plate was read for hours.
    Story warm(inventedOpening(planWithAll()));
    warm.wait(hours(2)).then(passed("plate_warm"));
    EXPECT_TRUE(checksOutlived(warm.weld(), plateLastUsed({first.weld()}), warm.now()).empty());
}

TEST(Carry, WhatAWeldOutlivesWhileItIsPreparedStandsNoMore) {
    const Story story = prepared();
    const auto read = plateLastUsed({story.weld()});
    const auto outlived = [&](Milliseconds later, const Weld& weld) {
        Instant at = *read;
        at.boot += later;
        at.utc += later;
        return checksOutlived(weld, {}, at);
    };
    const std::vector<std::string> plate{"plate_warm", "plate_temperature"};
    EXPECT_TRUE(outlived(hours(1), story.weld()).empty());
    EXPECT_EQ(outlived(hours(1) + Milliseconds(1), story.weld()), plate);
    EXPECT_EQ(outlived(hours(9), story.weld()).size(), 4U) << "zero and sound, too";
    Story left = story;
    left.then(CheckOverridden{"plate_warm", "no_tool", Authority::Operator});
    EXPECT_EQ(outlived(hours(2), left.weld()), std::vector<std::string>{"plate_temperature"})
        << "who goes on without it was not told by a plate";
    Instant other = *read;
    other.bootId = "boot-2";
    EXPECT_EQ(checksOutlived(story.weld(), {}, other).size(), 4U) << "the machine was off";
    Story begun = story;
    begun.then(AlignmentStarted{});
    EXPECT_TRUE(outlived(hours(2), begun.weld()).empty()) << "the plate is at work";
    // What was carried over goes by the bench's welds before.
    Story carried(inventedOpening(planWithAll()));
    carried.wait(minutes(5));
    for (CheckMade made : checksThatStand(carried.weld().opened(), {story.weld()}, carried.now())) {
        carried.then(made);
    }
    Instant at = *read;
    at.boot += minutes(30);
    at.utc += minutes(30);
    EXPECT_TRUE(checksOutlived(carried.weld(), read, at).empty());
    EXPECT_EQ(checksOutlived(carried.weld(), {}, at), plate);
}

TEST(Carry, AShiftIsOverAfterEightHours) {
    Story first = prepared();
    const WeldOpened next = inventedOpening(planWithAll());
    Instant at = first.weld().events[1].at; // plate_warm, the first
    at.boot += kShift;
    at.utc += kShift;
    // The plate has long stood idle by then; what else was checked later still stands.
    EXPECT_EQ(standing(next, {first.weld()}, at).size(), kAll.size() - 4);
    at.utc += minutes(5);
    at.boot += minutes(5);
    EXPECT_TRUE(standing(next, {first.weld()}, at).empty());
}

TEST(Carry, NothingStandsAfterARebootOrAJumpOfTheClock) {
    Story first = prepared();
    const WeldOpened next = inventedOpening(planWithAll());
    Instant other = first.now();
    other.bootId = "boot-2";
    EXPECT_TRUE(standing(next, {first.weld()}, other).empty());
    first.then(ClockJumped{seconds(-90)});
    EXPECT_TRUE(standing(next, {first.weld()}, first.now()).empty());
}

TEST(Carry, AWallClockThatWentBackCarriesNothing) {
    const Story first = prepared();
    Instant back = first.now();
    back.utc -= hours(2);
    EXPECT_TRUE(standing(inventedOpening(planWithAll()), {first.weld()}, back).empty());
}

TEST(Carry, WhatFailedOrWasPassedOverIsAskedAgain) {
    Story first = prepared();
    first.then(CheckMade{"plate_temperature", false, 230'000, {}, {}, "front", {}, {}});
    first.then(CheckOverridden{"gap", "no_tool", Authority::Operator});
    const auto stand = standing(inventedOpening(planWithAll()), {first.weld()}, first.now());
    EXPECT_EQ(std::count(stand.begin(), stand.end(), "plate_temperature"), 0);
    EXPECT_EQ(std::count(stand.begin(), stand.end(), "gap"), 0);
    EXPECT_EQ(std::count(stand.begin(), stand.end(), "clamping_gap"), 1);
}

TEST(Carry, AWeldStoppedBeforeItsChecksHidesNoneOfTheOneBefore) {
    const Story first = prepared();
    Story stopped(inventedOpening(planWithAll()));
    stopped.wait(minutes(2)).then(WeldAborted{"wrong_sheet", ""});
    EXPECT_EQ(
        standing(inventedOpening(planWithAll()), {stopped.weld(), first.weld()}, stopped.now())
            .size(),
        kAll.size());
    WeldOpened other = inventedOpening(planWithAll());
    other.sheets[0].material = "PP";
    Story between(other);
    between.wait(minutes(2)).then(WeldAborted{"wrong_sheet", ""});
    EXPECT_EQ(
        standing(inventedOpening(planWithAll()), {between.weld(), first.weld()}, between.now()),
        kOfTheShift)
        << "another set-up came between";
}

Weld trialJoint(const std::vector<WeldDetail>& after = {}) {
    WeldOpened opened = inventedOpening();
    opened.type = WeldType::Trial;
    Story story(opened);
    story.close();
    for (const WeldDetail& detail : after) {
        story.then(detail);
    }
    return story.weld();
}

Instant later(const Weld& weld, Milliseconds by) {
    Instant at = weld.events.back().at;
    at.boot += by;
    at.utc += by;
    return at;
}

TEST(TrialJoint, IsDueFirstInTheDayAndReleasedByAForeman) {
    const WeldOpened next = inventedOpening();
    EXPECT_EQ(trialFor(next, {}, Story().now()).state, TrialState::Due);
    const Weld made = trialJoint();
    const TrialFinding waiting = trialFor(next, {made}, later(made, minutes(1)));
    EXPECT_EQ(waiting, (TrialFinding{TrialState::Waiting, made.id(), 7}));
    const Weld good = trialJoint({Decided{Decision::Accept, "held"}});
    EXPECT_EQ(trialFor(next, {good}, later(good, minutes(1))).state, TrialState::Released);
    const Weld bad = trialJoint({Decided{Decision::CutOut, "broke"}});
    EXPECT_EQ(trialFor(next, {bad}, later(bad, minutes(1))).state, TrialState::Refused);
    const Weld revised =
        trialJoint({Decided{Decision::CutOut, "misread"}, Decided{Decision::Accept, "held"}});
    EXPECT_EQ(trialFor(next, {revised}, later(revised, minutes(1))).state, TrialState::Released);
}

TEST(TrialJoint, HoldsForTheSeriesAndNotForAnotherSetUpOrDay) {
    const Weld good = trialJoint({Decided{Decision::Accept, "held"}});
    const WeldOpened next = inventedOpening();
    Story production(inventedOpening());
    production.wait(minutes(30)).close();
    const std::vector<Weld> series{production.weld(), good};
    EXPECT_EQ(trialFor(next, series, production.now()).state, TrialState::Released);

    WeldOpened thicker = next;
    thicker.plan.thicknessUm = 10'000;
    EXPECT_EQ(trialFor(thicker, series, production.now()).state, TrialState::Due);
    WeldOpened other = next;
    other.sheets[0].material = "PP";
    EXPECT_EQ(trialFor(other, series, production.now()).state, TrialState::Due);
    WeldOpened bench = next;
    bench.docs.bench = std::string(64, 'c');
    EXPECT_EQ(trialFor(bench, series, production.now()).state, TrialState::Due);
    EXPECT_EQ(trialFor(next, series, later(production.weld(), hours(24))).state, TrialState::Due);

    Story between(thicker);
    between.wait(hours(1)).then(WeldAborted{"wrong_sheet", ""});
    EXPECT_EQ(trialFor(next, {between.weld(), good}, between.now()).state, TrialState::Due)
        << "the bench was set up for another sheet meanwhile";
}

TEST(TrialJoint, OneThatWasStoppedIsNone) {
    WeldOpened opened = inventedOpening();
    opened.type = WeldType::Trial;
    Story story(opened);
    story.soak().then(WeldAborted{"sheet_slipped", ""});
    EXPECT_EQ(trialFor(inventedOpening(), {story.weld()}, story.now()).state, TrialState::Due);
}

} // namespace
} // namespace seamclock
