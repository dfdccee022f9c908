// The day's plan on days that can be worked out by hand. Minutes, so that the sums are short.
#include "core/shift/day_plan.h"

#include "tests/core/shift/day_judge.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::minutes;
using test::brokenRules;

const PlateUse kPe{"PE-HD", 210'000};
const PlateUse kPvdf{"PVDF", 240'000};

/// 10 min with somebody (5 of them preparation), then cooling, then 2 min of release.
SeamTimes times(int cooling, const PlateUse& plate = kPe) {
    SeamTimes out;
    out.preparation = minutes(5);
    out.alignment = minutes(1);
    out.soak = minutes(2);
    out.changeover = minutes(1);
    out.buildUp = minutes(1);
    out.cooling = minutes(cooling);
    out.release = minutes(2);
    out.plate = plate;
    return out;
}

DaySeam seam(const std::string& label, std::vector<std::optional<SeamTimes>> on) {
    return {label, std::move(on), ""};
}

DayWork shop(std::size_t benches, std::size_t people) {
    DayWork out;
    for (std::size_t i = 0; i < benches; ++i) {
        out.benches.push_back({"bench " + std::to_string(i + 1), kPe, {}});
    }
    for (std::size_t i = 0; i < people; ++i) {
        out.people.push_back("person " + std::to_string(i + 1));
    }
    return out;
}

DayPlan planned(const DayWork& work) {
    const auto plan = planDay(work);
    EXPECT_TRUE(plan) << (plan ? "" : plan.error().detail);
    if (!plan) {
        return {};
    }
    EXPECT_EQ(brokenRules(work, *plan), std::vector<std::string>());
    EXPECT_LE(plan->bound.atLeast, plan->finish);
    return *plan;
}

const DayStretch* stretch(const DayPlan& plan, const std::string& label, DayKind kind) {
    for (const DayStretch& one : plan.stretches) {
        if (one.label == label && one.kind == kind) {
            return &one;
        }
    }
    return nullptr;
}

TEST(DayPlan, OfNothingIsNothing) {
    const DayPlan nothing = planned({});
    EXPECT_TRUE(nothing.stretches.empty());
    EXPECT_EQ(nothing.finish, minutes(0));
    EXPECT_EQ(nothing.bound.by, DayLimit::Nothing);
    EXPECT_EQ(planned(shop(2, 1)).finish, minutes(0));
}

TEST(DayPlan, OneSeamTakesWhatItTakes) {
    DayWork work = shop(1, 1);
    work.seams = {seam("S1", {times(20)})};
    const DayPlan plan = planned(work);
    EXPECT_EQ(plan.finish, minutes(32)); // 10 + 20 + 2
    EXPECT_EQ(plan.bound, (DayBound{minutes(32), DayLimit::OneSeam, {"S1"}}));
    ASSERT_EQ(plan.stretches.size(), 7U);
    EXPECT_EQ(
        plan.stretches[3], (DayStretch{DayKind::Changeover, "S1", 0, 0, minutes(8), minutes(9)}));
    EXPECT_EQ(
        plan.stretches[5], (DayStretch{DayKind::Cooling, "S1", 0, {}, minutes(10), minutes(30)}));
}

TEST(DayPlan, OneBenchMakesOneSeamAfterTheOther) {
    DayWork work = shop(1, 2);
    work.seams = {seam("S1", {times(20)}), seam("S2", {times(6)})};
    const DayPlan plan = planned(work);
    EXPECT_EQ(plan.finish, minutes(32 + 18));
    EXPECT_EQ(plan.bound, (DayBound{minutes(50), DayLimit::Benches, {"bench 1"}}));
}

TEST(DayPlan, OnePersonWorksAtTwoBenchesWhileTheyCool) {
    DayWork work = shop(2, 1);
    work.seams = {seam("S1", {times(6), times(6)}), seam("S2", {times(20), times(20)})};
    const DayPlan plan = planned(work);
    // The long one first: locked at 10, cooled at 30. The short one from 10 to 20, cooled at 26,
    // out at 28; the long one out at 32, which no plan beats, since it alone takes so long.
    EXPECT_EQ(plan.finish, minutes(32));
    EXPECT_EQ(plan.bound.atLeast, minutes(32));
    EXPECT_EQ(stretch(plan, "S2", DayKind::Preparation)->from, minutes(0));
    EXPECT_EQ(stretch(plan, "S1", DayKind::Preparation)->from, minutes(10));
}

TEST(DayPlan, TwoTiesArePlannedTheSameWayEveryTime) {
    DayWork work = shop(2, 2);
    for (int i = 1; i <= 6; ++i) {
        work.seams.push_back(seam("S" + std::to_string(i), {times(10), times(10)}));
    }
    const DayPlan first = planned(work);
    EXPECT_EQ(first.finish, minutes(66)); // three on each bench, 22 min each
    EXPECT_EQ(first.bound.atLeast, minutes(66));
    for (int again = 0; again < 3; ++again) {
        EXPECT_EQ(planned(work), first);
    }
}

TEST(DayPlan, NobodyIsAtTwoChangeoversAtOnce) {
    // Two benches and one person: the second soak would end in the first's changeover if it were
    // begun 1 min after it. brokenRules sees that no stretch of the person lies in another.
    DayWork work = shop(2, 1);
    work.seams = {seam("S1", {times(10), times(10)}), seam("S2", {times(10), times(10)})};
    const DayPlan plan = planned(work);
    const DayStretch* one = stretch(plan, "S1", DayKind::Changeover);
    const DayStretch* two = stretch(plan, "S2", DayKind::Changeover);
    EXPECT_TRUE(one->to <= two->from || two->to <= one->from);
    // Two people may.
    work.people.push_back("person 2");
    const DayPlan both = planned(work);
    EXPECT_EQ(
        stretch(both, "S1", DayKind::Changeover)->from,
        stretch(both, "S2", DayKind::Changeover)->from);
}

TEST(DayPlan, APlateThatChangesIsWaitedForAndMeanwhileIsPrepared) {
    // 30 K at 12 s and ten minutes: 16 min, from 210 to 240 °C.
    EXPECT_EQ(plateWait(kPe, kPvdf), minutes(16));
    EXPECT_EQ(plateWait(kPvdf, kPe), minutes(16));
    EXPECT_EQ(plateWait(kPe, kPe), minutes(0));
    EXPECT_EQ(plateWait(kPe, {"PP", 210'000}), minutes(10)); // chosen
    DayWork work = shop(1, 1);
    work.seams = {seam("S1", {times(6, kPvdf)})};
    // Aligned when the plate is ready, at 16; so the 5 min of preparation begin at 11.
    const DayPlan plan = planned(work);
    EXPECT_EQ(stretch(plan, "S1", DayKind::PlateWait)->to, minutes(16));
    EXPECT_EQ(stretch(plan, "S1", DayKind::Preparation)->from, minutes(11));
    EXPECT_EQ(plan.finish, minutes(29)); // 16 + 5 + 6 + 2
    EXPECT_EQ(plan.bound, (DayBound{minutes(29), DayLimit::OneSeam, {"S1"}}));
}

TEST(DayPlan, SeamsOfOnePlateComeTogether) {
    DayWork work = shop(1, 1);
    work.seams = {
        seam("A", {times(6)}), seam("B", {times(6, kPvdf)}), seam("C", {times(6)}),
        seam("D", {times(6, kPvdf)})};
    const DayPlan plan = planned(work);
    // A and C first: 36 min. The plate is free at their last lock, at 28: warm at 44, when 3 of the
    // 5 min of preparation from 36 on have long passed: B begins at 39 and is out at 57, D at 75.
    EXPECT_EQ(plan.finish, minutes(75));
    EXPECT_LT(
        stretch(plan, "C", DayKind::Preparation)->from,
        stretch(plan, "B", DayKind::Preparation)->from);
}

TEST(DayPlan, ASeamStaysOnTheBenchThatMakesIt) {
    DayWork work = shop(2, 2);
    work.seams = {seam("S1", {{}, times(6)}), seam("S2", {{}, times(6)})};
    const DayPlan plan = planned(work);
    EXPECT_EQ(plan.finish, minutes(36));
    EXPECT_EQ(plan.bound, (DayBound{minutes(36), DayLimit::Benches, {"bench 2"}}));
}

TEST(DayPlan, NamesWhatNoBenchMakesAndPlansTheRest) {
    DayWork work = shop(1, 1);
    work.seams = {seam("S1", {times(6)}), {"S2", {std::nullopt}, "it is longer than the bench"}};
    work.seams.push_back({"S3", {std::nullopt}, ""});
    const DayPlan plan = planned(work);
    EXPECT_EQ(plan.finish, minutes(18));
    ASSERT_EQ(plan.impossible.size(), 2U);
    EXPECT_EQ(plan.impossible[0], (DayImpossible{"S2", "it is longer than the bench"}));
    EXPECT_EQ(plan.impossible[1].why, "no bench that is here can make it");
}

TEST(DayPlan, CountsWhatIsLeftOfAWeldThatRuns) {
    DayWork work = shop(2, 1);
    DayRunning running{"S0", times(20), 0};
    running.left.preparation = running.left.alignment = minutes(0);
    running.left.soak = minutes(1); // soak, changeover, build-up: 3 min, then 20, then 2
    work.benches[0].running = running;
    work.seams = {seam("S1", {times(6), times(6)})};
    const DayPlan plan = planned(work);
    // The person comes at 3: S1 is locked at 13, cooled at 19, out at 21; S0 is out at 25.
    EXPECT_EQ(stretch(plan, "S1", DayKind::Preparation)->from, minutes(3));
    EXPECT_EQ(stretch(plan, "S1", DayKind::Preparation)->bench, 1U);
    EXPECT_EQ(stretch(plan, "S0", DayKind::Release)->to, minutes(25));
    EXPECT_EQ(plan.finish, minutes(25));
    EXPECT_EQ(plan.bound.atLeast, minutes(25));
}

TEST(DayPlan, TheBoundKnowsThatAllHandsAreFull) {
    DayWork work = shop(4, 1);
    for (int i = 1; i <= 8; ++i) {
        std::vector<std::optional<SeamTimes>> on(4, times(10));
        work.seams.push_back(seam("S" + std::to_string(i), std::move(on)));
    }
    const DayPlan plan = planned(work);
    // One person: 8 · 10 min to the last lock, then 10 of cooling and 2 of release; and 96 min of
    // work in all.
    EXPECT_EQ(plan.bound, (DayBound{minutes(96), DayLimit::People, {}}));
    EXPECT_GE(plan.finish, minutes(96));
    EXPECT_LE(plan.finish, minutes(108)); // measured; 104 would be every release between others
}

TEST(DayPlan, RefusesWhatIsNoDay) {
    const auto refused = [](const DayWork& work) {
        const auto plan = planDay(work);
        EXPECT_FALSE(plan);
        return plan ? std::string() : plan.error().detail;
    };
    DayWork work = shop(1, 0);
    work.seams = {seam("S1", {times(6)})};
    EXPECT_EQ(refused(work), "0 people; allowed: 1 to 20");
    work = shop(0, 1);
    work.seams = {seam("S1", {})};
    EXPECT_EQ(refused(work), "0 benches; allowed: 1 to 20");
    work = shop(1, 1);
    work.seams = {seam("S1", {times(-1)})};
    EXPECT_EQ(refused(work), "seam S1 has a time of -60000 ms; allowed: 0 to 604800000");
    work.seams = {seam("S1", {})};
    EXPECT_EQ(refused(work), "seam S1 has times for 0 benches; allowed: 1");
    work.seams.assign(501, seam("S", {times(6)}));
    EXPECT_EQ(refused(work), "501 seams; allowed: 0 to 500");
    work.seams.clear();
    work.benches[0].running = DayRunning{"S0", times(6), 1};
    EXPECT_EQ(refused(work), "the weld on bench 1 is in the hands of person 1; allowed: 0 to 0");
    work.benches[0].running = DayRunning{"S0", times(6), 0, false, minutes(7)};
    EXPECT_EQ(refused(work), "the plate of bench 1 waits 420000 ms; allowed: 0 to 300000");
}

TEST(DayPlan, WhoMayNotWeldASeamOnlyReleasesIt) {
    DayWork work = shop(2, 2);
    for (int i = 1; i <= 4; ++i) {
        DaySeam one = seam("S" + std::to_string(i), {times(20), times(20)});
        one.welders = {false, true};
        work.seams.push_back(one);
    }
    const DayPlan alone = planned(work);
    for (const DayStretch& one : alone.stretches) {
        if (one.person && one.kind != DayKind::Release) {
            EXPECT_EQ(one.person, 1U) << one.label;
        }
    }
    EXPECT_EQ(alone.stretches.size(), [&] {
        DayWork both = work;
        for (DaySeam& one : both.seams) {
            one.welders.clear();
        }
        const DayPlan free = planned(both);
        EXPECT_LE(free.finish, alone.finish);
        std::size_t cooled = 0; // waits for a release differ
        for (const DayStretch& one : free.stretches) {
            cooled += one.kind == DayKind::Cooled ? 1U : 0U;
        }
        std::size_t own = 0;
        for (const DayStretch& one : alone.stretches) {
            own += one.kind == DayKind::Cooled ? 1U : 0U;
        }
        return free.stretches.size() - cooled + own;
    }()) << "every seam is made in either";
}

TEST(DayPlan, TheBoundKnowsWhatOnlySomeMayWeld) {
    DayWork work = shop(3, 3);
    for (int i = 1; i <= 6; ++i) {
        DaySeam one = seam("S" + std::to_string(i), {times(1), times(1), times(1)});
        one.welders = {false, i <= 4, false};
        one.welders[0] = i > 4;
        work.seams.push_back(one);
    }
    // Four of the six are person 2's alone: 4 · 10 min to the last lock, then 1 and 2 min. All
    // hands together would be done at 26 min, all benches at 26, one seam alone at 13.
    const DayPlan plan = planned(work);
    EXPECT_EQ(plan.bound, (DayBound{minutes(43), DayLimit::People, {"person 2"}}));
    EXPECT_GE(plan.finish, minutes(43));
    EXPECT_LE(plan.finish, minutes(47)); // measured
}

TEST(DayPlan, ATrialJointComesBeforeTheSeriesAndIsDecidedOnFirst) {
    DayWork work = shop(1, 1);
    work.decision = minutes(15);
    work.seams = {seam("S1", {times(20)}), seam("S2", {times(20)})};
    work.seams[0].setUp = work.seams[1].setUp = "PE-HD 10 mm";
    DayPlan plan = planned(work);
    EXPECT_EQ(plan.finish, minutes(3 * 32 + 15));
    EXPECT_EQ(plan.bound, (DayBound{minutes(111), DayLimit::Benches, {"bench 1"}}));
    EXPECT_EQ(
        plan.stretches.front(),
        (DayStretch{DayKind::Preparation, "S1", 0, 0, minutes(0), minutes(5), true}));
    EXPECT_EQ(
        *stretch(plan, "S1", DayKind::Decision),
        (DayStretch{DayKind::Decision, "S1", 0, {}, minutes(32), minutes(47), true}));
    // Another set-up between them wants one of its own, so it is put last.
    work.seams.insert(work.seams.begin() + 1, seam("T1", {times(20)}));
    work.seams[1].setUp = "PE-HD 5 mm";
    plan = planned(work);
    EXPECT_EQ(plan.finish, minutes(5 * 32 + 2 * 15));
    // Made already, or waiting for its word: then for what is left of it.
    work.seams.erase(work.seams.begin() + 1);
    work.benches[0].tried = DayTried{"PE-HD 10 mm", minutes(0), ""};
    EXPECT_EQ(planned(work).finish, minutes(64));
    work.benches[0].tried = DayTried{"PE-HD 10 mm", minutes(7), "S0"};
    plan = planned(work);
    EXPECT_EQ(plan.finish, minutes(71));
    EXPECT_EQ(
        plan.stretches.front(),
        (DayStretch{DayKind::Decision, "S0", 0, {}, minutes(0), minutes(7), true}));
    work.decision = minutes(-1);
    EXPECT_EQ(
        planDay(work).error().detail,
        "the decision on a trial joint takes -60000 ms; allowed: 0 to 604800000");
}

TEST(DayPlan, ATrialJointUnderWayCountsForItsSeries) {
    DayWork work = shop(1, 1);
    work.benches[0].running = DayRunning{"S0", times(20), 0, true};
    work.benches[0].tried = DayTried{"PE-HD 10 mm", minutes(15), "S0"};
    work.seams = {seam("S1", {times(20)})};
    work.seams[0].setUp = "PE-HD 10 mm";
    const DayPlan plan = planned(work);
    EXPECT_EQ(plan.finish, minutes(32 + 15 + 32));
    EXPECT_EQ(plan.bound.atLeast, minutes(79));
}

TEST(DayPlan, WhatNobodyMayWeldIsNotPlanned) {
    DayWork work = shop(1, 2);
    work.seams = {seam("S1", {times(20)}), seam("S2", {times(20)})};
    work.seams[0].welders = {false, false};
    const DayPlan plan = planned(work);
    ASSERT_EQ(plan.impossible.size(), 1U);
    EXPECT_EQ(plan.impossible[0], (DayImpossible{"S1", "nobody who is here may weld it"}));
    work.seams[0].welders = {true};
    EXPECT_EQ(planDay(work).error().detail, "seam S1 names welders out of 1 people; allowed: 2");
}

} // namespace
} // namespace seamclock
