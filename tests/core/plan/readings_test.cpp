// Forces to readings, worked by hand on invented benches. Each expectation has its arithmetic
// beside it.
#include "core/plan/plan.h"

#include "tests/core/plan/try_bench.h"
#include "tests/support/shipped.h"

#include <algorithm>

namespace seamclock {
namespace {

using test::tryBench;

PlanRequest seam(double thickness, double length, double drag = 0) {
    PlanRequest request;
    request.thickness = millimetres(thickness);
    request.lengths = {millimetres(length)};
    request.drag = newtons(drag);
    return request;
}

WeldPlan planned(const PlanRequest& request, const std::string& procedure, const Bench& bench) {
    const auto plan = makePlan(request, test::shippedProcedure(procedure), &bench);
    EXPECT_TRUE(plan) << plan.error().detail;
    return plan ? *plan : WeldPlan{};
}

const PlanWarning* warningOf(const WeldPlan& plan, const std::string& code) {
    const auto found =
        std::find_if(plan.warnings.begin(), plan.warnings.end(), [&code](const PlanWarning& each) {
            return each.code == code;
        });
    return found == plan.warnings.end() ? nullptr : &*found;
}

void expectBand(const ReadingBand& band, std::int64_t low, std::int64_t set, std::int64_t high) {
    EXPECT_EQ(band.lowMilli, low);
    EXPECT_EQ(band.setMilli, set);
    EXPECT_EQ(band.highMilli, high);
}

constexpr const char* kPe05 = "pe-hd-dvs2207-1-2005";
constexpr const char* kPe15 = "pe-hd-dvs2207-1-2015";
constexpr const char* kPp = "pp-dvs2207-11";

TEST(Reading, IsZeroPlusForceAndDragAndPreloadByTheRate) {
    Bench two = tryBench(71.2, 500);
    two.scale.ratePerUnit.push_back(newtons(72.6)); // 143.8 N/mm together
    two.scale.zeroMilli = 2000;
    two.scale.preload = newtons(40);
    const WeldPlan plan = planned(seam(8, 1380, 70), kPe05, two);
    // 0.15 · 8 · 1380 = 1656 N; 2 + (1656 + 70 + 40) / 143.8 = 14.2809; ± 0.01 · 8 · 1380 = 110.4 N
    // or 0.76773
    ASSERT_TRUE(plan.scale);
    EXPECT_EQ(plan.joiningMn, 1'656'000);
    EXPECT_EQ(plan.dragMn, 70'000);
    expectBand(plan.scale->joining, 13'514, 14'500, 15'048);
    expectBand(plan.scale->alignment, 13'514, 14'500, 15'048);
    // most: 0.02 · 8 · 1380 = 220.8 N; 2 + (220.8 − 70 + 40) / 143.8 = 3.32684; aim 165.6
    // N: 2.94298
    expectBand(plan.scale->soak, 2000, 3000, 3326);
    EXPECT_TRUE(plan.isReady());
}

TEST(Reading, RoundsTheBandInwardButKeepsExactDecimals) {
    // 0.15 · 10 · 500 = 750 N at 50 N/mm is 15; ± 50 N is 1: 14 and 16 exactly. Soak 100 N: 2
    // exactly.
    const WeldPlan exact = planned(seam(10, 500), kPe05, tryBench(50, 100));
    expectBand(exact.scale->joining, 14'000, 15'000, 16'000);
    expectBand(exact.scale->soak, 0, 1500, 2000);
    // 0.02 · 11 · 600 = 132 N at 60 N/mm: 2.2, which binary fractions miss from below or above.
    EXPECT_EQ(planned(seam(11, 600), kPe05, tryBench(60, 100)).scale->soak.highMilli, 2200);
    // at 70 N/mm: joining 750 / 70 = 10.714286; 700 / 70 = 10 exactly, 800 / 70 = 11.428571
    expectBand(
        planned(seam(10, 500), kPe05, tryBench(70, 100)).scale->joining, 10'000, 10'700, 11'428);
    // at 30 N/mm: 25; 23.3333 up to 23334, 26.6667 down to 26666
    expectBand(
        planned(seam(10, 500), kPe05, tryBench(30, 100)).scale->joining, 23'334, 25'000, 26'666);
}

// Whatever the rate, length and thickness: the exact decimal limit is kept, and never passed by a
// thousandth.
TEST(Reading, HasASoakLimitThatIsTheLargestLegalThousandth) {
    const Procedure procedure = test::shippedProcedure(kPe05);
    int seams = 0;
    for (std::int64_t rate = 40; rate <= 120; rate += 7) {
        Bench scale = tryBench(static_cast<double>(rate), 50);
        scale.scale.maxMilli = 1'000'000;
        for (std::int64_t s = 3; s <= 40; s += 3) {
            for (std::int64_t length = 300; length <= 1900; length += 130) {
                const auto plan = makePlan(
                    seam(static_cast<double>(s), static_cast<double>(length)), procedure, &scale);
                ASSERT_TRUE(plan) << plan.error().detail;
                // 0.02 s L / rate in thousandths is 20 s L / rate: whole numbers, exact division.
                EXPECT_EQ(plan->scale->soak.highMilli, 20 * s * length / rate);
                EXPECT_EQ(plan->scale->joining.highMilli, 160 * s * length / rate);
                EXPECT_EQ(plan->scale->joining.lowMilli, (140 * s * length + rate - 1) / rate);
                ++seams;
            }
        }
    }
    EXPECT_EQ(seams, 12 * 13 * 13);
}

TEST(Reading, TakesTheLowerOfTwoDivisionsThatAreAsNear) {
    // 0.15 · 10 · 310 = 465 N at 30 N/mm: 15.5, between 15 and 16
    EXPECT_EQ(planned(seam(10, 310), kPe05, tryBench(30, 1000)).scale->joining.setMilli, 15'000);
    // a little more goes up: 0.15 · 10 · 311 = 466.5 N: 15.55
    EXPECT_EQ(planned(seam(10, 311), kPe05, tryBench(30, 1000)).scale->joining.setMilli, 16'000);
    // soak's aim 0.015 · 10 · 500 = 75 N at 50 N/mm: 1.5, and 2 would still be legal
    EXPECT_EQ(planned(seam(10, 500), kPe05, tryBench(50, 1000)).scale->soak.setMilli, 1000);
}

TEST(Reading, CountsDivisionsFromTheScalesMarksNotFromZerosReading) {
    Bench shifted = tryBench(50, 500);
    shifted.scale.zeroMilli = 300; // 750 N: 0.3 + 15 = 15.3, nearest mark 15.5
    const WeldPlan plan = planned(seam(10, 500), kPe05, shifted);
    expectBand(plan.scale->joining, 14'300, 15'500, 16'300);
    expectBand(plan.scale->soak, 300, 2000, 2300); // aim 0.3 + 1.5 = 1.8, nearest 2.0
    shifted.scale.zeroMilli = -300;                // 14.7, nearest 14.5
    expectBand(planned(seam(10, 500), kPe05, shifted).scale->joining, 13'700, 14'500, 15'700);
}

TEST(Reading, ExtendsTheBandToASetThatLiesOutside) {
    // 0.10 · 6 · 400 = 240 N at 100 N/mm: 2.4 ± 0.24
    const WeldPlan below = planned(seam(6, 400), kPp, tryBench(100, 900));
    // marks 1.8 and 2.7: 2.7 is nearer to 2.4
    expectBand(below.scale->joining, 2160, 2700, 2700);
    const PlanWarning* warning = warningOf(below, "set_outside_band");
    ASSERT_NE(warning, nullptr);
    EXPECT_EQ(warning->limit, 2640);
    EXPECT_EQ(warning->actual, 2700);
    EXPECT_EQ(warning->unit, "milli");
    EXPECT_EQ(
        warning->text, "alignment: the nearest division, 2.7 mm, lies outside 2.16 to 2.64 mm; the "
                       "band is extended to it");
    const WeldPlan above = planned(seam(6, 400), kPp, tryBench(100, 700)); // marks 2.1 and 2.8
    expectBand(above.scale->joining, 2100, 2100, 2640);
    EXPECT_EQ(
        std::count_if(
            above.warnings.begin(), above.warnings.end(),
            [](const PlanWarning& each) { return each.code == "set_outside_band"; }),
        1); // alignment and joining are the same reading: one warning
}

// Arithmetic of the trade: PP, 400 × 6 mm, 240 ± 24 N, ± 0.28 mm at 85 N/mm. [derived]
TEST(Reading, WarnsWhereTheScaleCanHardlyShowTheTolerance) {
    const WeldPlan coarse = planned(seam(6, 400), kPp, tryBench(85, 1000));
    const PlanWarning* warning = warningOf(coarse, "scale_coarse");
    ASSERT_NE(warning, nullptr);
    EXPECT_EQ(warning->limit, 1000);
    EXPECT_EQ(warning->actual, 282);
    EXPECT_EQ(coarse.joiningMn, 240'000);
    // A tolerance of exactly a division has marks on both ends of the band: 0.01 · 10 · 500 = 50 N
    // at 50 N/mm is 1.
    EXPECT_EQ(
        warningOf(planned(seam(10, 500), kPe05, tryBench(50, 1000)), "scale_coarse"), nullptr);
    EXPECT_NE(
        warningOf(planned(seam(10, 499), kPe05, tryBench(50, 1000)), "scale_coarse"), nullptr);
}

TEST(Reading, IsRefusedWhereHalfADivisionIsMoreThanTwiceTheTolerance) {
    // 0.01 · 6 · 400 = 24 N at 96 N/mm: ± 0.25, so divisions up to 4 · 0.25 = 1 are allowed
    const Procedure pp = test::shippedProcedure(kPp);
    const Bench just = tryBench(96, 1000);
    EXPECT_TRUE(makePlan(seam(6, 400), pp, &just));
    const Bench tooCoarse = tryBench(96, 1001);
    const auto refused = makePlan(seam(6, 400), pp, &tooCoarse);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(
        refused.error().detail,
        "half a division, 0.501 mm, is more than twice the tolerance of 0.25 mm (24 N): bench try "
        "can't show this seam's 240 N; allowed divisions up to 1 mm");
    PlanRequest foremans = seam(6, 400);
    foremans.scaleIsForemans = true;
    const auto left = makePlan(foremans, pp, &tooCoarse);
    ASSERT_TRUE(left) << left.error().detail;
    EXPECT_EQ(left->checks.front(), kForemansScale);
    const PlanWarning* warning = warningOf(*left, "scale_too_coarse");
    ASSERT_NE(warning, nullptr);
    EXPECT_NE(warning->text.find("only a foreman can allow this weld"), std::string::npos);
    EXPECT_EQ(warning->actual, 1001);
    EXPECT_EQ(warning->limit, 1000);
    EXPECT_EQ(warningOf(*left, "scale_coarse"), nullptr) << "one warning is enough";
    const auto same = makePlan(foremans, pp, &just);
    ASSERT_TRUE(same);
    EXPECT_EQ(same->checks, weldChecks()) << "nothing is his where the scale shows it";
}

TEST(Reading, OfSoakIsNeverAboveTheMaximumThoughAHigherDivisionIsNearer) {
    // 2015: aim and maximum 0.01 · 10 · 900 = 90 N at 50 N/mm: 1.8; the nearest whole is 2, the
    // highest legal 1
    const WeldPlan plan = planned(seam(10, 900), kPe15, tryBench(50, 1000));
    expectBand(plan.scale->soak, 0, 1000, 1800);
    EXPECT_EQ(warningOf(plan, "just_in_contact"), nullptr);
}

TEST(Reading, OfSoakIsJustInContactWhereTheScaleCannotShowIt) {
    // 0.01 · 10 · 400 = 40 N at 50 N/mm: 0.8, under the first whole division
    const WeldPlan plan = planned(seam(10, 400), kPe15, tryBench(50, 1000));
    expectBand(plan.scale->soak, 0, 0, 800);
    const PlanWarning* warning = warningOf(plan, "just_in_contact");
    ASSERT_NE(warning, nullptr);
    EXPECT_EQ(warning->limit, 1000);
    EXPECT_EQ(warning->actual, 800);
    EXPECT_EQ(
        warning->text,
        "soak: just in contact; the most allowed, 0.8 mm, is under the scale's first division");
    // 0.02 · 10 · 500 = 100 N most and 75 N to aim at; with 50 N of drag 1 and half a division
    const WeldPlan nearest = planned(seam(10, 500, 50), kPe05, tryBench(50, 1000));
    expectBand(nearest.scale->soak, 0, 0, 1000);
    ASSERT_NE(warningOf(nearest, "just_in_contact"), nullptr);
    EXPECT_EQ(
        warningOf(nearest, "just_in_contact")->text,
        "soak: just in contact; zero is the division nearest to the aim");
    // on the first division it can be shown: 0.01 · 10 · 500 = 50 N
    expectBand(planned(seam(10, 500), kPe15, tryBench(50, 1000)).scale->soak, 0, 1000, 1000);
    // a zero between the marks: 0.4 + 0.8 = 1.2 reaches the mark at 1
    Bench shifted = tryBench(50, 1000);
    shifted.scale.zeroMilli = 400;
    expectBand(planned(seam(10, 400), kPe15, shifted).scale->soak, 400, 1000, 1200);
}

TEST(Reading, OfSoakFallsWithDragUntilNothingIsLeft) {
    const Bench scale = tryBench(50, 500);
    // 0.02 · 10 · 500 = 100 N most, 75 N aim; drag 20: 1.6 and 1.1
    expectBand(planned(seam(10, 500, 20), kPe05, scale).scale->soak, 0, 1000, 1600);
    const WeldPlan none = planned(seam(10, 500, 100), kPe05, scale);
    expectBand(none.scale->soak, 0, 0, 0);
    EXPECT_NE(warningOf(none, "just_in_contact"), nullptr);
    EXPECT_EQ(warningOf(none, "drag_above_soak"), nullptr);
    const WeldPlan below = planned(seam(10, 500, 130), kPe05, scale); // −0.6
    expectBand(below.scale->soak, 0, 0, 0);
    const PlanWarning* warning = warningOf(below, "drag_above_soak");
    ASSERT_NE(warning, nullptr);
    EXPECT_EQ(warning->limit, 0);
    EXPECT_EQ(warning->actual, -600);
    EXPECT_NE(warningOf(below, "just_in_contact"), nullptr);
    EXPECT_TRUE(below.isReady());
    // while joining is pushed against the drag: 15 + 2.6
    expectBand(below.scale->joining, 16'600, 17'500, 18'600);
}

TEST(Reading, AboveTheScalesEndIsRefusedWithReadingEndAndForces) {
    Bench small = tryBench(50, 500);
    small.scale.maxMilli = 15'000;
    const Procedure pe = test::shippedProcedure(kPe05);
    EXPECT_TRUE(makePlan(seam(10, 500), pe, &small)); // 15.0 on the end
    const auto refused = makePlan(seam(10, 500, 25), pe, &small);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(
        refused.error().detail,
        "alignment reading 15.5 mm is above 15 mm, the end of the scale of bench try: the seam "
        "needs 750 N, with a drag of 25 N the scale shows up to 725 N");
}

TEST(Reading, IsNeverSetPastTheScalesLastMark) {
    Bench small = tryBench(50, 1000);
    small.scale.maxMilli = 15'800;
    // 0.15 · 10 · 522 = 783 N: 15.66, nearest mark 16, which is not on the scale
    const WeldPlan plan = planned(seam(10, 522), kPe05, small);
    EXPECT_EQ(plan.scale->joining.setMilli, 15'000);
}

TEST(Reading, WorksOnAScaleInNewtons) {
    Bench newtonScale = tryBench(1, 20'000); // 1 N per N, divisions of 20 N
    newtonScale.scale.unit = "N";
    newtonScale.scale.maxMilli = 3'000'000;
    const WeldPlan plan = planned(seam(8, 860, 30), kPe05, newtonScale);
    // 0.15 · 8 · 860 + 30 = 1062 N ± 68.8; soak most 137.6 − 30 = 107.6, aim 103.2 − 30 = 73.2
    expectBand(plan.scale->joining, 993'200, 1'060'000, 1'130'800);
    expectBand(plan.scale->soak, 0, 80'000, 107'600);
}

} // namespace
} // namespace seamclock
