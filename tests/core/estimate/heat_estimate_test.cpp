// The numbers and their spread: that each is where it belongs, that the sample of eight runs is the
// design that it claims to be, and that "what if" moves them as the trade says.
#include "core/base/json.h"
#include "core/estimate/heat_estimate_json.h"
#include "core/estimate/heat_words.h"
#include "tests/support/materials.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using test::materials;

HeatCourse courseOn(const Bench* bench, const char* procedure, double thickness) {
    PlanRequest request;
    request.thickness = millimetres(thickness);
    request.lengths = {millimetres(1380)};
    const auto plan = makePlan(request, test::shippedProcedure(procedure), bench);
    EXPECT_TRUE(plan) << plan.error().detail;
    const auto course =
        plan ? courseOf(*plan, bench) : tl::unexpected<Error>(Error{ErrorCode::Missing, "a plan"});
    EXPECT_TRUE(course) << course.error().detail;
    return course.value_or(HeatCourse{});
}

HeatCourse courseFor(const char* procedure, double thickness) {
    const Bench west = test::demoBench("west");
    return courseOn(&west, procedure, thickness);
}

HeatEstimate estimateOf(const HeatCourse& course, double chosen = 60) {
    const auto estimate = estimateHeat(course, materials(), chosen);
    EXPECT_TRUE(estimate) << estimate.error().detail;
    return estimate.value_or(HeatEstimate{});
}

/// 10 mm of PE-HD by the plan, worked out once.
const HeatEstimate& plainTen() {
    static const HeatEstimate kTen = estimateOf(courseFor("pe-hd-dvs2207-1-2005", 10));
    return kTen;
}

TEST(HeatEstimate, EveryNumberLiesInItsSpreadAndWhereItBelongs) {
    const HeatEstimate& estimate = plainTen();
    const HeatNumbers& n = estimate.numbers;
    for (const auto& range :
         {n.alignS, n.beadMm, n.meltDepthMm, n.skinEndOfSoakC, n.skinFacesMeetC,
          n.weldPlaneAtReleaseC, n.chosenReachedS, n.sheetLossMm, n.closingMm, n.pressureFallPa,
          n.readingFallUnits}) {
        ASSERT_TRUE(range);
        EXPECT_LE(range->low, range->likely);
        EXPECT_LE(range->likely, range->high);
    }
    EXPECT_NEAR(n.beadMm->likely, 1.5, 0.06) << "alignment ends with the bead";
    EXPECT_LT(n.skinEndOfSoakC->likely, estimate.course.inputs.plateC);
    EXPECT_LT(n.skinFacesMeetC->likely, n.skinEndOfSoakC->likely);
    EXPECT_GT(n.skinFacesMeetC->likely, estimate.meltingC);
    EXPECT_LT(n.weldPlaneAtReleaseC->likely, 60);
    EXPECT_LT(n.chosenReachedS->likely, *estimate.course.cooling);
    // the scale is in mm: its fall is the closing
    EXPECT_NEAR(n.readingFallUnits->likely, n.closingMm->likely, 1e-6);
    EXPECT_NEAR(
        n.pressureFallPa->likely, *estimate.course.springPaPerMetre * n.closingMm->likely / 1e3,
        0.02 * 150'000 * 0.1);
}

// 0.1 mm deeper melt, or the like, is no news; that the melt's consistency moves the bead's time
// and hardly the plane's temperature at release is what a spread is for.
TEST(HeatEstimate, WhatIsUncertainMovesWhatItShould) {
    const HeatEstimate& whole = plainTen();
    std::vector<Material> sure = materials();
    for (Material& material : sure) {
        material.spread["consistency_Pa_s_n"] = 0;
    }
    const auto runny = estimateHeat(courseFor("pe-hd-dvs2207-1-2005", 10), sure, 60);
    ASSERT_TRUE(runny);
    const auto width = [](const std::optional<HeatRange>& range) {
        return range ? range->high - range->low : 0;
    };
    EXPECT_LT(width(runny->numbers.alignS), 0.7 * width(whole.numbers.alignS));
    EXPECT_GT(
        width(runny->numbers.weldPlaneAtReleaseC), 0.6 * width(whole.numbers.weldPlaneAtReleaseC));
    for (Material& material : sure) {
        material.spread.clear();
    }
    const auto surest = estimateHeat(courseFor("pe-hd-dvs2207-1-2005", 10), sure, 60);
    ASSERT_TRUE(surest);
    EXPECT_LT(width(surest->numbers.weldPlaneAtReleaseC), width(whole.numbers.weldPlaneAtReleaseC));
    EXPECT_GT(width(surest->numbers.weldPlaneAtReleaseC), 0) << "air and plate are still uncertain";
}

TEST(HeatEstimate, WhatIfMovesAsTheTradeSays) {
    HeatCourse course = courseFor("pe-hd-dvs2207-1-2005", 10);
    const HeatEstimate& plain = plainTen();
    course.changeover = 3 * *course.changeover;
    const HeatEstimate late = estimateOf(course);
    EXPECT_LT(late.numbers.skinFacesMeetC->likely, plain.numbers.skinFacesMeetC->likely - 10);
    course = courseFor("pe-hd-dvs2207-1-2005", 10);
    course.cooling = *course.cooling / 2;
    EXPECT_GT(
        estimateOf(course).numbers.weldPlaneAtReleaseC->likely,
        plain.numbers.weldPlaneAtReleaseC->likely + 5);
    course = courseFor("pe-hd-dvs2207-1-2005", 10);
    course.inputs.ambientC = 35;
    EXPECT_GT(
        estimateOf(course).numbers.weldPlaneAtReleaseC->likely,
        plain.numbers.weldPlaneAtReleaseC->likely + 8);
}

// Of every wall and plastic: molten at the changeover's limit, and no longer at a multiple of it
// that the program names.
TEST(HeatEstimate, NamesTheChangeoverAfterWhichTheSkinIsNoLongerMolten) {
    for (const auto& [procedure, thickness] :
         {std::pair{"pe-hd-dvs2207-1-2005", 5.0}, std::pair{"pe-hd-dvs2207-1-2005", 10.0},
          std::pair{"pe-hd-dvs2207-1-2005", 50.0}, std::pair{"pp-dvs2207-11", 12.0},
          std::pair{"pvdf-dvs2207-15", 8.0}}) {
        SCOPED_TRACE(std::string(procedure) + ", " + std::to_string(thickness));
        HeatCourse course = courseOn(nullptr, procedure, thickness);
        const double limit = *course.changeover;
        const auto plain = likelyHeat(course, materials());
        ASSERT_TRUE(plain);
        const double longest = plain->numbers.moltenInAirS->likely;
        EXPECT_GT(longest, limit);
        EXPECT_LT(longest, 10 * limit);
        course.changeover = longest + 0.5;
        EXPECT_LT(likelyHeat(course, materials())->numbers.skinFacesMeetC->likely, plain->meltingC);
        course.changeover = longest - 0.5;
        EXPECT_GT(likelyHeat(course, materials())->numbers.skinFacesMeetC->likely, plain->meltingC);
    }
    EXPECT_LT(plainTen().numbers.moltenInAirS->low, plainTen().numbers.moltenInAirS->likely);
}

TEST(HeatEstimate, EndsWhereTheCourseEnds) {
    HeatCourse course = courseFor("pp-dvs2207-11", 12);
    course.alignSeconds = 70;
    course.changeover = course.buildUp = course.cooling = std::nullopt;
    const HeatEstimate estimate = estimateOf(course);
    EXPECT_FALSE(estimate.numbers.alignS) << "it was measured";
    EXPECT_TRUE(estimate.numbers.meltDepthMm);
    EXPECT_FALSE(estimate.numbers.skinFacesMeetC);
    EXPECT_FALSE(estimate.numbers.weldPlaneAtReleaseC);
    EXPECT_FALSE(estimate.numbers.chosenReachedS);
}

TEST(HeatEstimate, OfAnotherPlasticIsRefusedWithThoseThatThereAre) {
    HeatCourse course = courseFor("pe-hd-dvs2207-1-2005", 10);
    course.material = "ABS";
    const auto estimate = estimateHeat(course, materials(), 60);
    ASSERT_FALSE(estimate);
    EXPECT_EQ(estimate.error().code, ErrorCode::Missing);
    EXPECT_EQ(
        estimate.error().detail,
        "no heat values for the material \"ABS\"; allowed: PE-HD, PP-H, PVC-U, PVDF");
}

TEST(HeatEstimate, IsStoppedAtOnce) {
    const std::atomic<bool> stop{true};
    const auto estimate =
        estimateHeat(courseFor("pe-hd-dvs2207-1-2005", 26), materials(), 60, &stop);
    ASSERT_FALSE(estimate);
    EXPECT_EQ(estimate.error().code, ErrorCode::Refused);
}

TEST(HeatEstimate, AsJsonHasTheContractsNumbersEachWithItsSpread) {
    const auto json =
        parseJson("heat", heatReportJson(estimateOf(courseFor("pvdf-dvs2207-15", 8))));
    ASSERT_TRUE(json);
    for (const char* name :
         {"melt_depth_mm", "skin_end_of_soak_C", "skin_faces_meet_C", "weld_plane_at_release_C"}) {
        ASSERT_TRUE(json->root.contains(name)) << name;
        const double value = json->root[name];
        EXPECT_LE(json->root["spread"][name]["low"].get<double>(), value) << name;
        EXPECT_GE(json->root["spread"][name]["high"].get<double>(), value) << name;
    }
    EXPECT_EQ(json->root["material"], "PVDF");
    EXPECT_GE(json->root["sources"].size(), 10U);
}

TEST(HeatEstimate, CurvesBeginWithAlignmentAndEndWithTheRelease) {
    const HeatEstimate estimate = estimateOf(courseFor("pe-hd-dvs2207-1-2005", 5));
    ASSERT_GT(estimate.curve.size(), 100U);
    const HeatCourse& course = estimate.course;
    const double whole = *course.soak + *course.changeover + *course.buildUp + *course.cooling;
    EXPECT_NEAR(estimate.curve.back().seconds, estimate.numbers.alignS->likely + whole, 1.01);
    for (std::size_t i = 1; i < estimate.curve.size(); ++i) {
        EXPECT_GT(estimate.curve[i].seconds, estimate.curve[i - 1].seconds);
        EXPECT_GE(estimate.curve[i].sheetLossMm, estimate.curve[i - 1].sheetLossMm);
    }
    const std::string csv = heatCurvesCsv(estimate);
    EXPECT_EQ(csv.rfind("seconds,against,skin_C", 0), 0U);
    EXPECT_EQ(
        static_cast<std::size_t>(std::count(csv.begin(), csv.end(), '\n')),
        estimate.curve.size() + 1);
}

/// A bench whose scale counts in newtons, or in mm, by its rate in newtons for a millimetre.
Bench benchWith(double perMm, const char* unit) {
    Bench bench;
    bench.id = "try";
    bench.longestSeam = millimetres(3000);
    bench.thinnestSheet = millimetres(1);
    bench.thickestSheet = millimetres(70);
    bench.edgeGapMax = millimetres(0.5);
    bench.scale.unit = unit;
    bench.scale.divisionMilli = 500;
    bench.scale.maxMilli = 9'000'000;
    bench.scale.ratePerUnit = {newtons(unit == std::string("mm") ? perMm : 1)};
    bench.releaseOrder = {"sheet_out"};
    return bench;
}

HeatNumbers numbersOn(const Bench& bench) {
    PlanRequest request;
    request.thickness = millimetres(10);
    request.lengths = {millimetres(500)};
    const auto plan = makePlan(request, test::shippedProcedure("pe-hd-dvs2207-1-2005"), &bench);
    EXPECT_TRUE(plan) << plan.error().detail;
    const auto course = courseOf(*plan, &bench);
    EXPECT_TRUE(course) << course.error().detail;
    const auto likely = likelyHeat(*course, materials());
    EXPECT_TRUE(likely);
    return likely->numbers;
}

// Hooke's law: on 10 × 500 mm² of seam, 80 N/mm take 16 kPa off for each millimetre of closing.
TEST(HeatEstimate, TakesRateTimesClosingOffTheSpring) {
    const HeatNumbers numbers = numbersOn(benchWith(80, "mm"));
    ASSERT_TRUE(numbers.readingFallUnits && numbers.pressureFallPa);
    EXPECT_NEAR(numbers.readingFallUnits->likely, numbers.closingMm->likely, 1e-9);
    EXPECT_NEAR(numbers.pressureFallPa->likely, 16'000 * numbers.closingMm->likely, 200);
}

TEST(HeatEstimate, GivesNoFallWhereTheSpringsTravelIsNotKnown) {
    Bench newtonsOnly = benchWith(80, "N");
    EXPECT_FALSE(numbersOn(newtonsOnly).readingFallUnits);
    newtonsOnly.scale.ratePerMm = newtons(80);
    const HeatNumbers known = numbersOn(newtonsOnly);
    ASSERT_TRUE(known.readingFallUnits);
    EXPECT_NEAR(known.readingFallUnits->likely, 80 * known.closingMm->likely, 1e-6);
}

// 750 N on 2000 N/mm are gone after 0.375 mm; the sheets shrink by more.
TEST(HeatEstimate, NeverTakesMoreThanTheReadingItself) {
    Bench stiff = benchWith(2000, "mm");
    stiff.scale.divisionMilli = 10;
    const HeatNumbers numbers = numbersOn(stiff);
    ASSERT_TRUE(numbers.readingFallUnits);
    EXPECT_NEAR(numbers.readingFallUnits->likely, 0.375, 1e-9);
    EXPECT_GT(numbers.closingMm->likely, 0.375);
}

TEST(HeatWords, SayTheSameInBothSystemsOfUnits) {
    const HeatRange melt{2.08, 2.31, 2.54};
    EXPECT_EQ(heatRangeText(melt, HeatQuantity::Millimetres), "2.3 mm (2.1 to 2.5 mm)");
    // NIST SP 811: 1 in is 25.4 mm exactly; 2.3 mm are 0.0906 in
    EXPECT_EQ(
        heatRangeText(melt, HeatQuantity::Millimetres, UnitSystem::Imperial),
        "0.091 in (0.083 to 0.098 in)");
    EXPECT_EQ(heatRangeText({158.2, 163.4, 168}, HeatQuantity::Celsius), "163 °C (158 to 168 °C)");
    EXPECT_EQ(
        heatRangeText({158.2, 163.4, 168}, HeatQuantity::Celsius, UnitSystem::Imperial),
        "325.4 °F (316.4 to 334.4 °F)"); // 163 · 9/5 + 32
    EXPECT_EQ(
        heatRangeText({1.4, 1.8, 2.2}, HeatQuantity::ScaleUnits, UnitSystem::Imperial, "mm"),
        "1.8 mm (1.4 to 2.2 mm)")
        << "a reading stays as it is printed on the scale";
}

TEST(HeatWords, LeaveTheWeldPlaneOutOfWhatLiesBesideACoolingJoint) {
    const auto told = [](HeatShown shown) {
        std::string text;
        for (const HeatLine& line : heatLines(plainTen(), "mm", UnitSystem::Metric, shown)) {
            text += line.what + ": " + line.value + "\n";
        }
        return text;
    };
    EXPECT_NE(told(HeatShown::All).find("weld plane at release"), std::string::npos);
    EXPECT_NE(told(HeatShown::All).find("weld plane at 60 °C"), std::string::npos);
    EXPECT_EQ(told(HeatShown::WithoutWeldPlane).find("weld plane"), std::string::npos);
    EXPECT_NE(told(HeatShown::WithoutWeldPlane).find("skin when the faces"), std::string::npos);
}

TEST(HeatEstimate, StandsInAnotherJsonAsAPartOfIt) {
    const auto json = parseJson("plan", withEstimate("{\"plan\": 1}", plainTen()));
    ASSERT_TRUE(json);
    EXPECT_EQ(json->root["plan"], 1);
    EXPECT_EQ(json->root["estimate"]["material"], "PE-HD");
}

TEST(HeatWords, WarnOfASkinThatMayBeSolidAndOfGas) {
    HeatCourse course = courseFor("pe-hd-dvs2207-1-2005", 10);
    course.changeover = 60;
    const auto cautions = heatCautions(estimateOf(course));
    EXPECT_TRUE(std::any_of(cautions.begin(), cautions.end(), [](const std::string& text) {
        return text.find("no longer be molten") != std::string::npos;
    }));
    HeatCourse hot = courseFor("pvdf-dvs2207-15", 8);
    hot.inputs.plateC = 310;
    const auto gas = heatCautions(estimateOf(hot));
    EXPECT_TRUE(std::any_of(gas.begin(), gas.end(), [](const std::string& text) {
        return text.find("harmful gas from 300 °C") != std::string::npos;
    }));
}

} // namespace
} // namespace seamclock
