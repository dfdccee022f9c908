// The day's plan against the best that there is, in a seeded family of days of up to eight seams:
// the plan can be kept, the bound is never above the optimum, and how far the plan is from it is
// reported. What it may be off at most is what was measured here, not what anybody promised.
#include "tests/core/shift/day_judge.h"
#include "tests/support/sanitized.h"

#include <algorithm>
#include <cstdio>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using test::brokenRules;
using test::DayKinds;
using test::earliestFinish;
using test::randomDay;

/// A kind of day, and how far plan and bound are from the optimum at most: as measured.
struct Family {
    const char* name;
    DayKinds kinds;
    int days = 0;          // of each count of seams
    std::size_t seams = 8; // at most
    double plan = 0;
    double bound = 0;
};

class DayOptimum : public testing::TestWithParam<Family> {};

TEST_P(DayOptimum, TheSearchWithShortcutsFindsWhatEveryOrderGives) {
    std::mt19937_64 chance(20260701);
    // A trial joint doubles what is to be done, and whoever may do it counts again each time.
    const std::size_t most = GetParam().kinds.certificates && GetParam().kinds.trials ? 2 : 3;
    for (std::size_t seams = 0; seams <= most; ++seams) {
        for (int day = 0; day < 40; ++day) {
            const DayWork work = randomDay(chance, seams, GetParam().kinds);
            const auto plan = planDay(work);
            ASSERT_TRUE(plan) << plan.error().detail;
            const auto all = earliestFinish(work, plan->finish, false);
            const auto some = earliestFinish(work, plan->finish, true);
            EXPECT_TRUE(all.found && some.found);
            EXPECT_EQ(all.finish, some.finish) << "day " << day << " of " << seams << " seams";
            EXPECT_LE(some.looked, all.looked);
        }
    }
}

TEST_P(DayOptimum, ThePlanCanBeKeptAndTheBoundIsNeverAboveTheOptimum) {
    const Family& family = GetParam();
    const int judged = test::rounds(family.days);
    std::mt19937_64 chance(20260702);
    double allPlans = 0;
    double allBounds = 0;
    double worstPlan = 0;
    double worstBound = 0;
    for (std::size_t seams = 1; seams <= family.seams; ++seams) {
        double plans = 0;
        double bounds = 0;
        double worst = 0;
        int best = 0;
        for (int day = 0; day < family.days; ++day) {
            const DayWork work = randomDay(chance, seams, family.kinds);
            if (day >= judged) {
                continue; // so that those after it are the same days in every build
            }
            const auto plan = planDay(work);
            ASSERT_TRUE(plan) << plan.error().detail;
            for (const std::string& rule : brokenRules(work, *plan)) {
                ADD_FAILURE() << "day " << day << " of " << seams << " seams: " << rule;
            }
            const auto optimum = earliestFinish(work, plan->finish, true);
            ASSERT_TRUE(optimum.found) << "the plan ends before anything that can be kept";
            EXPECT_LE(plan->bound.atLeast, optimum.finish) << "day " << day << " of " << seams;
            // A day on which nobody may weld the only seam has no length.
            const auto least =
                static_cast<double>(std::max<std::int64_t>(optimum.finish.count(), 1));
            const double over =
                static_cast<double>((plan->finish - optimum.finish).count()) / least;
            const double under =
                static_cast<double>((optimum.finish - plan->bound.atLeast).count()) / least;
            plans += over / judged;
            bounds += under / judged;
            worst = std::max(worst, over);
            worstBound = std::max(worstBound, under);
            best += over == 0 ? 1 : 0;
        }
        worstPlan = std::max(worstPlan, worst);
        allPlans += plans / static_cast<double>(family.seams);
        allBounds += bounds / static_cast<double>(family.seams);
        std::printf(
            "%zu seams, %d days: best %d times, else later by %.2f %% in the mean of all, %.2f %% "
            "at most; the bound is %.1f %% below the best in the mean\n",
            seams, judged, best, plans * 100, worst * 100, bounds * 100);
    }
    std::printf(
        "%s: the plan %.2f %% above the best in the mean, %.2f %% at most; the bound %.1f %% below "
        "in the mean, %.1f %% at most\n",
        family.name, allPlans * 100, worstPlan * 100, allBounds * 100, worstBound * 100);
    EXPECT_LE(worstPlan, family.plan);
    EXPECT_LE(worstBound, family.bound);
}

INSTANTIATE_TEST_SUITE_P(
    Days, DayOptimum,
    testing::Values(
        Family{"Plain", {}, SEAMCLOCK_DAYS, 8, 0.06, 0.35},
        Family{"WithCertificates", {true, false}, SEAMCLOCK_DAYS / 4, 8, 0.04, 0.31},
        // Each trial joint is one more to be placed: every order of more seams takes minutes.
        Family{"WithTrialJoints", {false, true}, SEAMCLOCK_DAYS / 4, 7, 0.12, 0.33},
        Family{"WithBoth", {true, true}, SEAMCLOCK_DAYS / 10, 6, 0.09, 0.35}),
    [](const auto& family) { return std::string(family.param.name); });

} // namespace
} // namespace seamclock
