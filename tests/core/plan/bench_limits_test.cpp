// What a bench can hold, what its calibration covers, and the way out where its scale is too
// coarse; worked by hand, with the arithmetic beside each.
#include "core/plan/plan.h"

#include "tests/core/plan/try_bench.h"
#include "tests/support/shipped.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <regex>
#include <string_view>

namespace seamclock {
namespace {

using test::tryBench;

constexpr const char* kPe05 = "pe-hd-dvs2207-1-2005";
constexpr const char* kPp = "pp-dvs2207-11";

/// Force = 50 (reading − 2), with the points' own scatter of ± `off` N about it.
Bench calibrated(double lowest, double highest, double off) {
    Bench made = tryBench(50, 500);
    CalibrationNote note;
    note.doneOn = "2030-01-01";
    note.dueOn = "2031-01-01";
    note.loadCell = "a cell";
    constexpr int kPoints = 8;
    for (int i = 0; i < kPoints; ++i) {
        const double reading = lowest + (highest - lowest) * i / (kPoints - 1);
        // + − − + + − − +: neither slope nor zero moves
        note.points.push_back(
            {reading, 50 * (reading - 2) + (i % 4 == 0 || i % 4 == 3 ? off : -off)});
    }
    note.fit = *fitPoints(note.points);
    made.scale.ratePerUnit = {newtons(note.fit->rate)};
    made.scale.zeroMilli = std::llround(note.fit->zero * 1e3);
    made.calibration = std::move(note);
    return made;
}

PlanRequest seam(double thickness, double length, double drag = 0) {
    PlanRequest request;
    request.thickness = millimetres(thickness);
    request.lengths = {millimetres(length)};
    request.drag = newtons(drag);
    return request;
}

Result<WeldPlan> plan(const PlanRequest& request, const char* procedure, const Bench& bench) {
    // Read once: hundreds of benches are tried.
    static const Procedure kPe = test::shippedProcedure(kPe05);
    static const Procedure kPolypropylene = test::shippedProcedure(kPp);
    return makePlan(request, std::string_view(procedure) == kPe05 ? kPe : kPolypropylene, &bench);
}

const PlanWarning* warningOf(const Result<WeldPlan>& plan, const std::string& code) {
    if (!plan) {
        ADD_FAILURE() << plan.error().detail;
        return nullptr;
    }
    const auto found = std::find_if(
        plan->warnings.begin(), plan->warnings.end(),
        [&code](const PlanWarning& each) { return each.code == code; });
    return found == plan->warnings.end() ? nullptr : &*found;
}

// 0.15 · 10 · 500 = 750 N, drag 25 N and preload 40 N: 815 N at the spring.
TEST(ForceLimit, AboveTheMostIsRefusedAndOnItAllowed) {
    Bench weak = tryBench(50, 500);
    weak.scale.preload = newtons(40);
    weak.forceLimits.max = newtons(815);
    EXPECT_TRUE(plan(seam(10, 500, 25), kPe05, weak));
    weak.forceLimits.max = newtons(814.9);
    const auto refused = plan(seam(10, 500, 25), kPe05, weak);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(
        refused.error().detail,
        "alignment needs 815 N at the spring, with drag and preload, above 814.9 N, the most that "
        "bench try can hold");
}

TEST(ForceLimit, BelowTheLeastIsWarnedOfOnce) {
    Bench heavy = tryBench(50, 500);
    heavy.forceLimits.min = newtons(775);
    EXPECT_EQ(warningOf(plan(seam(10, 500, 25), kPe05, heavy), "force_below_bench"), nullptr);
    heavy.forceLimits.min = newtons(800);
    const auto made = plan(seam(10, 500, 25), kPe05, heavy);
    const PlanWarning* warning = warningOf(made, "force_below_bench");
    ASSERT_NE(warning, nullptr);
    EXPECT_EQ(warning->limit, 800'000);
    EXPECT_EQ(warning->actual, 775'000);
    EXPECT_EQ(warning->unit, "mN");
    EXPECT_EQ(
        warning->text,
        "alignment needs 775 N at the spring, with drag and preload, below 800 N, the least that "
        "bench try holds steadily: weld an offcut beside it, or pair seams");
    EXPECT_EQ(
        std::count_if(
            made->warnings.begin(), made->warnings.end(),
            [](const PlanWarning& each) { return each.code == "force_below_bench"; }),
        1);
}

// 750 N at 50 N/mm above 2: 17.0.
TEST(CalibratedRange, HoldsTheReadingsOfAlignmentAndJoining) {
    const auto inside = plan(seam(10, 500), kPe05, calibrated(4, 17, 0));
    ASSERT_TRUE(inside) << inside.error().detail;
    EXPECT_EQ(inside->scale->joining.setMilli, 17'000);
    EXPECT_EQ(inside->scale->zeroMilli, 2000);
    const auto above = plan(seam(10, 500), kPe05, calibrated(4, 16.9, 0));
    ASSERT_FALSE(above);
    EXPECT_EQ(above.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(
        above.error().detail, "alignment reading 17 mm is outside 4 to 16.9 mm, the readings that "
                              "the calibration of bench try covers");
    const auto below = plan(seam(10, 500), kPe05, calibrated(17.1, 40, 0));
    ASSERT_FALSE(below);
    EXPECT_EQ(
        below.error().detail, "alignment reading 17 mm is outside 17.1 to 40 mm, the readings that "
                              "the calibration of bench try covers");
    // 0.15 · 10 · 496 = 744 N: 16.88 is covered, the nearest division of 17 is not
    EXPECT_FALSE(plan(seam(10, 496), kPe05, calibrated(4, 16.9, 0)));
    EXPECT_TRUE(plan(seam(10, 491), kPe05, calibrated(4, 16.9, 0))); // 16.73 and 16.5
}

// Soak at 0.02 · 10 · 500 = 100 N: 2 + 2 = 4 at most; the aim of 75 N is 3.5.
TEST(CalibratedRange, MayHaveSoakBelowItWithAWarning) {
    EXPECT_EQ(
        warningOf(plan(seam(10, 500), kPe05, calibrated(3.5, 40, 0)), "soak_below_calibration"),
        nullptr);
    const auto made = plan(seam(10, 500), kPe05, calibrated(5, 40, 0));
    const PlanWarning* warning = warningOf(made, "soak_below_calibration");
    ASSERT_NE(warning, nullptr);
    EXPECT_EQ(warning->limit, 5000);
    EXPECT_EQ(warning->actual, 3500);
    EXPECT_EQ(
        warning->text, "soak: the reading 3.5 mm is below 5 mm, the lowest that the calibration "
                       "covers: its force is worked out, not measured");
    EXPECT_TRUE(made->isReady());
}

// Eight points about their own line: s = off √(8/6), t(6) = 2.447 (the published table). PE 500 ×
// 10 tolerates 50 N: at 17 of 4 to 32 (mean 18, squares about it 8 · 84 = 672) the band is 2.447
// · 1.1547 · off · √(1/8 + 1/672) = 1.0050 · off, so 25 N are passed beyond off = 24.9.
TEST(CalibrationBand, OfMoreThanHalfTheToleranceIsWarnedOf) {
    EXPECT_EQ(
        warningOf(plan(seam(10, 500), kPe05, calibrated(4, 32, 24.6)), "calibration_uncertain"),
        nullptr);
    const auto made = plan(seam(10, 500), kPe05, calibrated(4, 32, 25.2));
    const PlanWarning* warning = warningOf(made, "calibration_uncertain");
    ASSERT_NE(warning, nullptr);
    EXPECT_EQ(warning->limit, 25'000);
    EXPECT_NEAR(static_cast<double>(*warning->actual), 25.2 * 1005.0, 20); // t has three decimals
    EXPECT_EQ(warning->unit, "mN");
}

// A rate that was only written down: 750 N at 4 % and 1.96 are 58.8 N, at 1.5 % 22.05.
TEST(CalibrationBand, OfARateWithItsDeviationIsJudgedAsWell) {
    Bench noted = tryBench(50, 500);
    noted.calibration = CalibrationNote{"2030-01-01", "2031-01-01", 1.5, "", {}, {}};
    EXPECT_EQ(warningOf(plan(seam(10, 500), kPe05, noted), "calibration_uncertain"), nullptr);
    noted.calibration->rateUncertaintyPercent = 4;
    const auto made = plan(seam(10, 500), kPe05, noted);
    const PlanWarning* warning = warningOf(made, "calibration_uncertain");
    ASSERT_NE(warning, nullptr);
    EXPECT_EQ(warning->limit, 25'000);
    EXPECT_EQ(warning->actual, 58'799); // 1.959964 · 0.04 · 750 N, up
}

// PP, 400 × 6 mm: 240 ± 24 N; at 85 N/mm ± 0.28235 mm on whole divisions. Whole millimetres need
// 1 / 0.28235 = 3.5417 times the length: 1416.7 mm, an offcut of 1017 mm; or four seams; or a
// spring of 85 / 3.5417 = 24 N/mm.
TEST(WayOut, SaysInNumbersWhatWouldMakeTheSeamReadable) {
    const Bench coarse = tryBench(85, 1000);
    const auto made = plan(seam(6, 400), kPp, coarse);
    const PlanWarning* warning = warningOf(made, "scale_coarse");
    ASSERT_NE(warning, nullptr);
    EXPECT_EQ(
        warning->text,
        "the scale's divisions of 1 mm can hardly show the tolerance of 0.282 mm: weld an offcut "
        "of "
        "1017 mm beside it, or 4 such seams in one clamping, or take a spring of at most 24 N for "
        "one mm");
    EXPECT_EQ(warningOf(plan(seam(6, 1417), kPp, coarse), "scale_coarse"), nullptr);
    EXPECT_NE(warningOf(plan(seam(6, 1416), kPp, coarse), "scale_coarse"), nullptr);
    EXPECT_EQ(warningOf(plan(seam(6, 1600), kPp, coarse), "scale_coarse"), nullptr);
    EXPECT_EQ(warningOf(plan(seam(6, 400), kPp, tryBench(24, 1000)), "scale_coarse"), nullptr);
    EXPECT_NE(warningOf(plan(seam(6, 400), kPp, tryBench(24.1, 1000)), "scale_coarse"), nullptr);
}

TEST(WayOut, OffersNothingThatTheBenchCannotTake) {
    Bench coarse = tryBench(85, 1000);
    coarse.longestSeam = millimetres(1500); // the offcut fits, four seams don't
    auto made = plan(seam(6, 400), kPp, coarse);
    const PlanWarning* two = warningOf(made, "scale_coarse");
    ASSERT_NE(two, nullptr);
    EXPECT_NE(
        two->text.find(
            ": weld an offcut of 1017 mm beside it, or take a spring of at most 24 N for one mm"),
        std::string::npos)
        << two->text;
    const std::string none = "no offcut that this bench can take would help; take a spring of at "
                             "most 24 N for one mm";
    const auto endsWithNone = [&none](const PlanWarning* warning) {
        return warning != nullptr && warning->text.size() > none.size() &&
               warning->text.substr(warning->text.size() - none.size()) == none;
    };
    coarse.longestSeam = millimetres(1400);
    made = plan(seam(6, 400), kPp, coarse);
    EXPECT_TRUE(endsWithNone(warningOf(made, "scale_coarse")));
    coarse = tryBench(85, 1000);
    coarse.scale.maxMilli = 9000; // 765 N, and 1417 mm need 850
    made = plan(seam(6, 400), kPp, coarse);
    EXPECT_TRUE(endsWithNone(warningOf(made, "scale_coarse")));
    coarse = tryBench(85, 1000);
    coarse.scale.maxMilli = 10'003; // 850.2 N at 85 N/mm: 10.0024
    made = plan(seam(6, 400), kPp, coarse);
    EXPECT_FALSE(endsWithNone(warningOf(made, "scale_coarse")));
    coarse.scale.maxMilli = 10'002;
    made = plan(seam(6, 400), kPp, coarse);
    EXPECT_TRUE(endsWithNone(warningOf(made, "scale_coarse")));
    coarse = tryBench(85, 1000);
    coarse.forceLimits.max = newtons(800);
    made = plan(seam(6, 400), kPp, coarse);
    EXPECT_TRUE(endsWithNone(warningOf(made, "scale_coarse")));
    // 240 N · 1417 / 400 = 850.2 N: its own limit is what a bench can take, as it is for a seam.
    coarse.forceLimits.max = newtons(850.2);
    made = plan(seam(6, 400), kPp, coarse);
    EXPECT_FALSE(endsWithNone(warningOf(made, "scale_coarse")));
    coarse.forceLimits.max = newtons(850.1);
    made = plan(seam(6, 400), kPp, coarse);
    EXPECT_TRUE(endsWithNone(warningOf(made, "scale_coarse")));
}

// Whatever the bench: force grows in proportion to the length, the set lies in its band or a
// warning says why not, and soak is never set above its maximum. A way out that is offered is one.
TEST(AnyBench, KeepsWhatAPlanPromises) {
    std::mt19937 chance(20300107); // a specified generator: the same benches everywhere
    const auto between = [&chance](double low, double high) {
        return low + (high - low) * static_cast<double>(chance()) / 4294967296.0;
    };
    const std::regex offcut("offcut of ([0-9]+) mm");
    int made = 0;
    int offered = 0;
    for (int i = 0; i < 600; ++i) {
        const char* procedure = i % 2 == 0 ? kPe05 : kPp;
        Bench any = tryBench(
            std::round(between(20, 200) * 10) / 10,
            static_cast<std::int64_t>(between(1, 20)) * 100);
        any.scale.zeroMilli = static_cast<std::int64_t>(between(-3000, 5000));
        any.scale.preload = newtons(std::floor(between(0, 80)));
        any.scale.maxMilli = 200'000;
        const double thickness = std::floor(between(5, 30));
        const double length = std::floor(between(200, 1400));
        const double drag = std::floor(between(0, 90));
        const auto once = plan(seam(thickness, length, drag), procedure, any);
        const auto twice = plan(seam(thickness, 2 * length, drag), procedure, any);
        if (!once || !twice) {
            continue; // too coarse
        }
        ++made;
        EXPECT_NEAR(
            static_cast<double>(*twice->joiningMn), 2 * static_cast<double>(*once->joiningMn), 1);
        EXPECT_EQ(once->dragMn, twice->dragMn);
        const WeldPlan::ScalePlan& scale = *once->scale;
        EXPECT_TRUE(scale.joining.holds(scale.joining.setMilli));
        const double rate = inNewtons(any.scale.rate());
        const double exact =
            static_cast<double>(any.scale.zeroMilli) +
            (static_cast<double>(*once->joiningMn) / 1e3 + drag + inNewtons(any.scale.preload)) /
                rate * 1e3;
        const double width =
            static_cast<double>(*once->tolerancePa) * thickness * length / 1e6 / rate * 1e3;
        const bool inside =
            std::fabs(static_cast<double>(scale.joining.setMilli) - exact) <= width + 1;
        EXPECT_TRUE(inside || warningOf(once, "set_outside_band") != nullptr);
        const double most =
            static_cast<double>(any.scale.zeroMilli) +
            (static_cast<double>(*once->soakMaxMn) / 1e3 - drag + inNewtons(any.scale.preload)) /
                rate * 1e3;
        EXPECT_TRUE(
            static_cast<double>(scale.soak.setMilli) <= most + 1e-3 ||
            scale.soak.setMilli == any.scale.zeroMilli);
        const PlanWarning* coarse = warningOf(once, "scale_coarse");
        std::smatch found;
        if (coarse != nullptr && std::regex_search(coarse->text, found, offcut)) {
            const auto longer =
                plan(seam(thickness, length + std::stod(found[1]), drag), procedure, any);
            EXPECT_EQ(warningOf(longer, "scale_coarse"), nullptr) << coarse->text;
            ++offered;
        }
    }
    EXPECT_GT(made, 300);
    EXPECT_GT(offered, 50);
}

} // namespace
} // namespace seamclock
