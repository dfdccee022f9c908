// Skill: a perfect hand never slips and is within limits with every shipped procedure, thickness
// and demo bench that there is a plan for; less skill means more that is out.
#include "core/practice/hand.h"

#include "tests/support/rehearsed_weld.h"
#include "tests/support/shipped.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

int findings(int skill, std::uint64_t seeds) {
    const WeldOrder order = *orderFor("pe-hd-dvs2207-1-2005", 10, "east", 40);
    int count = 0;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        Hand hand;
        hand.seed = seed;
        hand.skill = skill;
        const Weld weld = rehearsed(order, hand);
        EXPECT_EQ(phaseName(weld.state), "closed") << "seed " << seed;
        count += static_cast<int>(verdict(weld).findings.size());
    }
    return count;
}

} // namespace

TEST(Hand, OfPerfectSkillIsWithinLimitsWithEveryPlan) {
    int made = 0;
    const auto all = readProcedureFolder(resource("procedures"));
    ASSERT_TRUE(all);
    for (const ProcedureDocument& one : *all) {
        const double thinnest = inMillimetres(one.procedure.thinnest());
        const double thickest = inMillimetres(one.procedure.thickest());
        for (double thickness = thinnest; thickness <= thickest; thickness += 1) {
            for (const char* bench : {"east", "west"}) {
                const auto order = orderFor(one.procedure.id, thickness, bench, 30);
                if (!order) {
                    continue;
                }
                Hand hand;
                hand.seed = static_cast<std::uint64_t>(++made);
                const Weld weld = rehearsed(*order, hand);
                EXPECT_EQ(toString(verdict(weld).word), "within limits")
                    << one.procedure.id << " " << thickness << " mm " << bench;
            }
        }
    }
    EXPECT_GE(made, 150);
}

TEST(Hand, OfLessSkillIsOutMoreOften) {
    EXPECT_EQ(findings(kPerfect, 60), 0);
    const int practised = findings(kPractised, 60);
    const int trainee = findings(kTrainee, 60);
    // By the chances of slips: under one weld in ten, and nearly every weld.
    EXPECT_GT(practised, 0);
    EXPECT_LT(practised, 20);
    EXPECT_GT(trainee, 40);
}

TEST(Hand, SlipsTheSameFromTheSameSeedAndNeverOverWhatWasAsked) {
    const WeldOrder order = *orderFor("pe-hd-dvs2207-1-2005", 10, "east", 40);
    const auto plan = makePlan(order.request, order.procedure.procedure, &order.bench.bench);
    ASSERT_TRUE(plan);
    int slipped = 0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        Hand hand;
        hand.seed = seed;
        hand.skill = 0;
        hand.faults.lateChangeover = Milliseconds(777);
        const RehearseFaults faults = withSlips(hand, *plan, true);
        EXPECT_EQ(faults, withSlips(hand, *plan, true));
        EXPECT_EQ(faults.lateChangeover, Milliseconds(777));
        const auto fits = checkFaults(faults, *plan);
        EXPECT_TRUE(fits) << (fits ? "" : fits.error().detail);
        EXPECT_FALSE(withSlips(hand, *plan, false).needBench());
        slipped += faults.needBench() ? 1 : 0;
        hand.skill = kPerfect;
        EXPECT_EQ(withSlips(hand, *plan, true), hand.faults);
    }
    EXPECT_GT(slipped, 60);
}

} // namespace seamclock::test
