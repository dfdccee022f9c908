#include "core/weld/intent.h"
#include "core/weld/verdict.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;
using test::Story;

TEST(Bounce, ASecondPressWithinABlinkIsOnePress) {
    for (const auto& [passed, taken] : std::vector<std::pair<Milliseconds, bool>>{
             {Milliseconds{0}, false}, {Milliseconds{599}, false}, {Milliseconds{600}, true}}) {
        Story story;
        story.prepare().then(AlignmentStarted{}).wait(passed);
        EXPECT_EQ(story.attemptIntent(SoakStarted{}).has_value(), taken) << passed.count();
    }
}

TEST(Bounce, FacesTogetherNeedsAWholeSecondAfterPlateOut) {
    for (const auto& [passed, taken] : std::vector<std::pair<Milliseconds, bool>>{
             {Milliseconds{999}, false}, {Milliseconds{1000}, true}}) {
        Story story;
        story.soak().wait(passed);
        EXPECT_EQ(story.attemptIntent(FacesMet{}).has_value(), taken) << passed.count();
    }
}

TEST(Bounce, TheFirstReleaseStepIsAPhaseStepTooTheOthersAreNot) {
    Story story;
    story.buildUp().wait(Milliseconds{300});
    EXPECT_FALSE(story.attemptIntent(ReleaseStep{"clamps_eased"}));
    story.wait(seconds{700}).then(ReleaseStep{"clamps_eased"}).wait(Milliseconds{100});
    EXPECT_TRUE(story.attemptIntent(ReleaseStep{"bars_opened"}));
}

TEST(Onto, AStaleScreenIsRefused) {
    Story story;
    story.align().wait(seconds{80});
    const std::int64_t last = lastTakeable(story.weld());
    EXPECT_TRUE(story.attemptIntent(PlateOut{}, last));
    EXPECT_FALSE(story.attemptIntent(PlateOut{}, last - 1));
    EXPECT_FALSE(story.attemptIntent(PlateOut{}, last + 1));
    EXPECT_TRUE(story.attemptIntent(PlateOut{}));
}

TEST(Override, AForemansNeedsProof) {
    const Story story;
    const auto taken = [&](const WeldDetail& detail, bool foreman) {
        Intent intent{{}, "person:ines", detail};
        intent.foreman = foreman;
        return accept(story.weld(), intent, story.now()).has_value();
    };
    const CheckOverridden foremans{"plate_temperature", "it is warm", Authority::Foreman};
    EXPECT_TRUE(taken(CheckOverridden{"film_off", "no film", Authority::Operator}, false));
    EXPECT_FALSE(taken(CheckOverridden{"film_off", "", Authority::Operator}, false));
    EXPECT_FALSE(taken(CheckOverridden{"film_off", "no film", Authority::Foreman}, false));
    EXPECT_FALSE(
        taken(CheckOverridden{"plate_temperature", "it is warm", Authority::Operator}, false));
    EXPECT_FALSE(
        taken(CheckOverridden{"plate_temperature", "it is warm", Authority::Operator}, true))
        << "a foreman says that he is one";
    EXPECT_FALSE(taken(foremans, false));
    EXPECT_TRUE(taken(foremans, true));
    EXPECT_FALSE(taken(CheckOverridden{"plate_temperature", "", Authority::Foreman}, true));
}

TEST(Remark, OfASheetOfAnotherMaterialIsTheForemansAloneAndPassesOverNoCheck) {
    const Story story;
    Intent intent{{}, "person:ines", RemarkMade{kOtherMaterial}};
    const auto refused = accept(story.weld(), intent, story.now());
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Refused);
    EXPECT_EQ(refused.error().detail, "only a foreman may go on with a sheet of another material");
    intent.foreman = true;
    const auto taken = accept(story.weld(), intent, story.now());
    ASSERT_TRUE(taken) << taken.error().detail;
    EXPECT_EQ(taken->state, story.state()) << "every check is open as before";
    intent.foreman = false;
    intent.d = RemarkMade{"draught"};
    EXPECT_TRUE(accept(story.weld(), intent, story.now())) << "others are anybody's";
}

// What the scale can't show nobody has read.
TEST(Override, OfAScaleThatIsTooCoarseIsTheForemansAloneAndOpensAlignment) {
    WeldPlan plan = test::inventedPlan();
    plan.checks.insert(plan.checks.begin(), kForemansScale);
    const Story story(plan);
    const auto given = [](const Weld& weld, const WeldDetail& detail, bool foreman,
                          const Instant& at) {
        Intent intent{{}, "person:ines", detail};
        intent.foreman = foreman;
        return accept(weld, intent, at);
    };
    CheckMade made;
    made.check = kForemansScale;
    made.passed = true;
    for (const bool foreman : {false, true}) {
        const auto refused = given(story.weld(), made, foreman, story.now());
        ASSERT_FALSE(refused);
        EXPECT_NE(
            refused.error().detail.find("only be overridden by a foreman"), std::string::npos);
    }
    const CheckOverridden operators{kForemansScale, "another", Authority::Operator};
    EXPECT_FALSE(given(story.weld(), operators, false, story.now()));
    const CheckOverridden foremans{kForemansScale, "another", Authority::Foreman};
    EXPECT_FALSE(given(story.weld(), foremans, false, story.now()));
    Story allowed(plan);
    for (const std::string& check : plan.checks) {
        if (check != kForemansScale) {
            made.check = check;
            allowed.wait(seconds{5}).then(made);
        }
    }
    EXPECT_FALSE(allowed.attempt(AlignmentStarted{})) << "it is still open";
    const auto weld = given(allowed.weld(), foremans, true, allowed.now());
    ASSERT_TRUE(weld) << weld.error().detail;
    EXPECT_TRUE(std::get<Preparing>(weld->state).openChecks.empty());
}

TEST(SignOff, NeedsAForemansProof) {
    Story story;
    story.inspect();
    story.then(closing(story.weld()));
    Intent intent{{}, "person:ines", SignedOff{"foreman"}};
    EXPECT_EQ(
        accept(story.weld(), intent, story.now()).error().detail,
        "signing off needs a foreman's PIN");
    intent.foreman = true;
    EXPECT_TRUE(accept(story.weld(), intent, story.now()).has_value());
}

TEST(Reason, IsTakenOnlyWhenOwedAndBlocksOnlyTheClosing) {
    Story story;
    story.soak();
    EXPECT_FALSE(story.attemptIntent(ReasonGiven{"changeover", "let it cool", {}}));
    story.wait(seconds{9}).then(FacesMet{});
    EXPECT_EQ(reasonsOwed(story.weld()), (std::vector<std::string>{"changeover"}));
    EXPECT_FALSE(story.attemptIntent(ReasonGiven{"changeover", "", {}}));
    EXPECT_FALSE(story.attemptIntent(ReasonGiven{"cooling", "in a hurry", {}}));
    EXPECT_TRUE(story.attemptIntent(ReasonGiven{"changeover", "let it cool", {}}));
    story.wait(seconds{6}).then(ReadingTaken{ReadingPhase::Joining, 15'500});
    story.wait(seconds{1}).then(PressureLocked{}).wait(seconds{700});
    for (const char* step : {"clamps_eased", "bars_opened", "sheet_out"}) {
        story.then(ReleaseStep{step});
    }
    EXPECT_FALSE(story.attemptIntent(closing(story.weld()))) << "a reason is owed";
    story.then(ReasonGiven{"changeover", "let it cool", {}});
    EXPECT_TRUE(story.attemptIntent(closing(story.weld())));
}

// Taken out early for one reason, taken back, and taken out early again for another.
TEST(Reason, GoesWithTheStepThatWasTakenBack) {
    Story story;
    story.changeOver().wait(seconds{6}).then(ReadingTaken{ReadingPhase::Joining, 15'500});
    story.wait(seconds{1}).then(PressureLocked{}).wait(seconds{400});
    story.then(ReleaseStep{"clamps_eased"}).then(ReasonGiven{"cooling", "bench_needed", {}});
    EXPECT_TRUE(reasonsOwed(story.weld()).empty());
    const auto release = static_cast<std::int64_t>(story.weld().events.size()) - 1;
    story.wait(seconds{3}).then(StepTakenBack{release});
    EXPECT_TRUE(reasonsOwed(story.weld()).empty()) << "nothing is out";
    story.wait(seconds{30}).then(ReleaseStep{"clamps_eased"});
    EXPECT_EQ(reasonsOwed(story.weld()), (std::vector<std::string>{"cooling"}));
    EXPECT_TRUE(story.attemptIntent(ReasonGiven{"cooling", "foreman_decided", {}}));
}

TEST(Reason, StaysWhereAnotherStepWasTakenBack) {
    Story story;
    story.soak().wait(seconds{9}).then(FacesMet{});
    story.wait(seconds{6}).then(ReadingTaken{ReadingPhase::Joining, 15'500});
    story.wait(seconds{1}).then(PressureLocked{});
    story.then(ReasonGiven{"changeover", "let_it_cool", {}});
    const auto lock = static_cast<std::int64_t>(story.weld().events.size()) - 1;
    story.wait(seconds{2}).then(StepTakenBack{lock});
    EXPECT_TRUE(reasonsOwed(story.weld()).empty()) << "the changeover was late all the same";
}

TEST(BridgeTo, IsAnIntervalThatNeverShortensCooling) {
    struct Row {
        Milliseconds off;
        bool confirmed;
        Milliseconds lo;
        Milliseconds hi;
        BridgeBasis basis;
    };
    const Milliseconds none{0};
    for (const Row& row : std::vector<Row>{
             {seconds{42}, false, none, seconds{42}, BridgeBasis::Unconfirmed},
             {seconds{42}, true, seconds{42}, seconds{42}, BridgeBasis::Confirmed},
             // A wall clock that runs ahead after the reboot: at least nothing has passed.
             {hours{24 * 365}, false, none, hours{24 * 365}, BridgeBasis::Unconfirmed},
             {seconds{-5}, false, none, none, BridgeBasis::Backwards},
             {none, false, none, none, BridgeBasis::Unconfirmed},
             {none, true, none, none, BridgeBasis::Confirmed},
             {hours{12}, true, hours{12}, hours{12}, BridgeBasis::Confirmed}}) {
        Story story;
        story.buildUp().reboot(row.off);
        const auto bridge = bridgeTo(story.weld(), story.now(), row.confirmed);
        ASSERT_TRUE(bridge && *bridge);
        EXPECT_EQ(**bridge, (ClockBridged{"boot-1", row.lo, row.hi, row.basis}));
        EXPECT_TRUE(story.attempt(**bridge));
    }
}

TEST(BridgeTo, RefusesToConfirmWhatCantBeTrue) {
    Story story;
    story.buildUp().reboot(hours{12} + Milliseconds{1});
    EXPECT_FALSE(bridgeTo(story.weld(), story.now(), true));
    Story backwards;
    backwards.buildUp().reboot(Milliseconds{-1});
    EXPECT_FALSE(bridgeTo(backwards.weld(), backwards.now(), true));
}

TEST(BridgeTo, IsNothingOnTheSameBoot) {
    Story story;
    story.buildUp().wait(minutes{3});
    const auto bridge = bridgeTo(story.weld(), story.now(), false);
    ASSERT_TRUE(bridge);
    EXPECT_FALSE(*bridge);
}

TEST(Reboot, OnlyCoolingAndWhatFollowsGoesOnByItself) {
    EXPECT_FALSE(goesOnAfterReboot(Story().state()));
    EXPECT_FALSE(goesOnAfterReboot(Story().align().state()));
    EXPECT_FALSE(goesOnAfterReboot(Story().soak().state()));
    EXPECT_FALSE(goesOnAfterReboot(Story().changeOver().state()));
    EXPECT_TRUE(goesOnAfterReboot(Story().buildUp().state()));
    EXPECT_TRUE(goesOnAfterReboot(Story().release().state()));
}

} // namespace
} // namespace seamclock
