#include "core/plan/plan.h"

#include "tests/support/shipped.h"

#include <algorithm>
#include <set>

namespace seamclock {
namespace {

using std::chrono::seconds;
constexpr const char* kPe05 = "pe-hd-dvs2207-1-2005";
constexpr const char* kPe15 = "pe-hd-dvs2207-1-2015";
constexpr const char* kPp = "pp-dvs2207-11";
constexpr const char* kPvdf = "pvdf-dvs2207-15";

PlanRequest sheet(double mm) {
    PlanRequest request;
    request.thickness = millimetres(mm);
    request.lengths = {millimetres(900)};
    request.drag = newtons(40);
    return request;
}

WeldPlan
planned(const PlanRequest& request, const std::string& procedure, const Bench* bench = nullptr) {
    const auto plan = makePlan(request, test::shippedProcedure(procedure), bench);
    EXPECT_TRUE(plan) << plan.error().detail;
    return plan ? *plan : WeldPlan{};
}

std::vector<std::string> codesOf(const WeldPlan& plan) {
    std::vector<std::string> codes;
    for (const PlanWarning& each : plan.warnings) {
        codes.push_back(each.code);
    }
    return codes;
}

const Source* sourceOf(const WeldPlan& plan, const std::string& value) {
    const auto found =
        std::find_if(plan.sources.begin(), plan.sources.end(), [&value](const PlanSource& each) {
            return each.value == value;
        });
    return found == plan.sources.end() ? nullptr : &found->source;
}

using Names = std::vector<std::string>;

TEST(Plan, WithoutABenchIsACardToReadAndNeverReady) {
    const WeldPlan plan = planned(sheet(8), kPe05);
    EXPECT_TRUE(plan.isComplete());
    EXPECT_FALSE(plan.isReady());
    EXPECT_FALSE(plan.scale);
    EXPECT_EQ(plan.bench, "");
    EXPECT_TRUE(plan.releaseOrder.empty());
    EXPECT_EQ(plan.gapUm, 8000);
    EXPECT_EQ(plan.clampingGapUm, 16'000);
    EXPECT_EQ(plan.edgeGapMaxUm, 500);
    EXPECT_EQ(plan.misalignmentMaxUm, 800);
    EXPECT_EQ(plan.missing, Names{});
    EXPECT_EQ(codesOf(plan), Names{});
}

TEST(Plan, WithABenchCarriesItsGapRuleAndItsReleaseOrder) {
    const Bench west = test::demoBench("west"); // floor 5, cap 25
    const WeldPlan plan = planned(sheet(8), kPe05, &west);
    EXPECT_TRUE(plan.isReady());
    EXPECT_EQ(plan.bench, "west");
    EXPECT_EQ(plan.gapUm, 8000);
    EXPECT_EQ(plan.clampingGapUm, 16'000);
    EXPECT_EQ(plan.releaseOrder, (Names{"spring_off", "clamps_eased", "bars_opened", "sheet_out"}));
    const WeldPlan thick = planned(sheet(30), kPe05, &west);
    EXPECT_EQ(thick.gapUm, 25'000);
    EXPECT_EQ(thick.clampingGapUm, 50'000);
    Bench wide = west;
    wide.edgeGapMax = millimetres(0.4);
    EXPECT_EQ(planned(sheet(8), kPe05, &wide).edgeGapMaxUm, 400);
}

TEST(Plan, AsksForTheChecksInTheirOrder) {
    EXPECT_EQ(
        planned(sheet(8), kPe05).checks,
        (Names{
            "plate_warm", "plate_temperature", "scale_zero", "sound_heard", "drag", "film_off",
            "edges_planed", "plate_wiped", "gap", "first_sheet", "clamping_gap", "second_sheet",
            "edges_meet", "shielded"}));
}

TEST(Plan, TakesDragForZeroWithAWarningWhereItWasNotMeasured) {
    PlanRequest request = sheet(8);
    request.drag.reset();
    const WeldPlan plan = planned(request, kPe05);
    EXPECT_EQ(plan.dragMn, 0);
    EXPECT_EQ(codesOf(plan), Names{"drag_not_measured"});
    request.drag = newtons(0);
    EXPECT_EQ(codesOf(planned(request, kPe05)), Names{});
}

TEST(Plan, WarnsOfAnAmbientOutsideFiveToFortyFive) {
    PlanRequest request = sheet(8);
    const auto warnings = [&request](double celsius) {
        request.ambient = Temperature::celsius(celsius);
        return planned(request, kPe05).warnings;
    };
    EXPECT_TRUE(warnings(5).empty());
    EXPECT_TRUE(warnings(45).empty());
    ASSERT_EQ(warnings(4.9).size(), 1U);
    EXPECT_EQ(
        warnings(4.9)[0],
        (PlanWarning{
            "ambient_outside_range", "ambient 4.9 °C is outside 5 to 45 °C", 5000, 4900, "mC"}));
    ASSERT_EQ(warnings(45.1).size(), 1U);
    EXPECT_EQ(warnings(45.1)[0].limit, 45'000);
}

TEST(Plan, AddsTheSeamsOfOneClamping) {
    PlanRequest request = sheet(6);
    request.lengths = {millimetres(430), millimetres(430), millimetres(40.5)};
    const WeldPlan plan = planned(request, kPp);
    EXPECT_EQ(plan.lengthUm, 900'500);
    EXPECT_EQ(plan.joiningMn, 540'300); // 0.10 · 6 · 900.5
    EXPECT_EQ(plan.soakMaxMn, 54'030);
}

TEST(Plan, OfPeEdition2015AboveFiftyMillimetresHasOnlyItsCooling) {
    const WeldPlan plan = planned(sheet(60), kPe15);
    EXPECT_EQ(plan.missing, (Names{"bead_min_mm", "soak_s", "changeover_max_s", "build_up_s"}));
    EXPECT_EQ(codesOf(plan), (Names{"known_gap", "known_gap", "known_gap", "known_gap"}));
    EXPECT_FALSE(plan.soak);
    EXPECT_FALSE(plan.alignLate);
    ASSERT_TRUE(plan.cooling);
    EXPECT_EQ(plan.cooling->atLeast, seconds(55 * 60)); // 46 to 64 over 50 to 70 mm, at 60
    EXPECT_EQ(plan.joiningPa, 150'000);
    Bench bench = test::demoBench("west");
    bench.thickestSheet = millimetres(70);
    bench.scale.maxMilli = 1'000'000;
    const WeldPlan onBench = planned(sheet(60), kPe15, &bench);
    EXPECT_TRUE(onBench.scale);
    EXPECT_FALSE(onBench.isReady());
    EXPECT_TRUE(planned(sheet(50), kPe15).isComplete());
}

TEST(Plan, OfThinPpHasNoSoakAndSaysWhatTheTableSays) {
    const WeldPlan plan = planned(sheet(4), kPp);
    EXPECT_EQ(plan.missing, Names{"soak_s"});
    ASSERT_EQ(plan.warnings.size(), 1U);
    EXPECT_EQ(plan.warnings[0].code, "known_gap");
    EXPECT_NE(plan.warnings[0].text.find("up to 135 s"), std::string::npos);
    EXPECT_TRUE(plan.cooling);
    EXPECT_EQ(planned(sheet(4.5), kPp).soak->target, seconds(135));
}

TEST(Plan, NamesEveryValueThatAProcedureLacks) {
    Procedure bare = test::shippedProcedure(kPe05);
    bare.pressure = {};
    bare.plate.reset();
    bare.bead.reset();
    bare.soak.reset();
    bare.changeover.reset();
    bare.cooling.clear();
    const Bench west = test::demoBench("west");
    const auto plan = makePlan(sheet(8), bare, &west);
    ASSERT_TRUE(plan) << plan.error().detail;
    EXPECT_EQ(
        plan->missing,
        (Names{
            "heated_tool_C", "pressure_N_mm2.alignment", "pressure_N_mm2.soak_aim",
            "pressure_N_mm2.soak_max", "pressure_N_mm2.joining", "pressure_N_mm2.tolerance",
            "bead_min_mm", "soak_s", "changeover_max_s", "cooling_min"}));
    EXPECT_FALSE(plan->isComplete());
    EXPECT_FALSE(plan->scale);
    EXPECT_TRUE(plan->buildUp);
}

TEST(Plan, WithoutAToleranceStillRefusesWhatTheScaleCannotReach) {
    Procedure procedure = test::shippedProcedure(kPe05);
    procedure.pressure.tolerance.reset();
    Bench west = test::demoBench("west");
    const auto plan = makePlan(sheet(8), procedure, &west);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->missing, Names{"pressure_N_mm2.tolerance"});
    EXPECT_EQ(plan->joiningMn, 1'080'000);
    west.scale.maxMilli = 5000;
    EXPECT_FALSE(makePlan(sheet(8), procedure, &west));
}

// 2015, 10 mm: 9.5 − 2/5 · 3.5 ... the line of 7 to 12 mm at 10 is three fifths: 8.1, 10.2, 13.1
// min.
TEST(Plan, TakesTheCoolingClassOfTheAmbientAndTheLongerOnABoundary) {
    const auto cooling = [](double celsius) {
        PlanRequest request = sheet(10);
        request.ambient = Temperature::celsius(celsius);
        return planned(request, kPe15).cooling->atLeast;
    };
    EXPECT_EQ(cooling(-20), seconds(486));
    EXPECT_EQ(cooling(14.999), seconds(486));
    EXPECT_EQ(cooling(15), seconds(612));
    EXPECT_EQ(cooling(25), seconds(786));
    EXPECT_EQ(cooling(24.999), seconds(612));
    EXPECT_EQ(cooling(25.001), seconds(786));
    EXPECT_EQ(cooling(40), seconds(786));
}

TEST(Plan, HasNoCoolingAboveTheWarmestClass) {
    PlanRequest request = sheet(10);
    request.ambient = Temperature::celsius(40.001);
    const WeldPlan plan = planned(request, kPe15);
    EXPECT_FALSE(plan.cooling);
    EXPECT_EQ(plan.missing, Names{"cooling_min"});
    ASSERT_EQ(plan.warnings.size(), 1U);
    EXPECT_EQ(plan.warnings[0].code, "ambient_outside_classes");
    EXPECT_EQ(plan.warnings[0].limit, 40'000);
    EXPECT_EQ(plan.warnings[0].actual, 40'001);
}

TEST(Plan, HasTheTimesOfItsBands) {
    const WeldPlan plan = planned(sheet(9.5), kPe05); // middle of 7 to 12 mm
    EXPECT_EQ(*plan.soak, (TimeBand{seconds(95), seconds(95), Milliseconds(104'500)}));
    EXPECT_EQ(plan.changeoverMax, seconds(7));
    // 7 s: 60, 100 and 130 %
    EXPECT_EQ(*plan.buildUp, (TimeBand{Milliseconds(4200), seconds(7), Milliseconds(9100)}));
    EXPECT_EQ(plan.cooling->atLeast, seconds(13 * 60));
    EXPECT_EQ(plan.beadMinUm, 1500);
}

TEST(Plan, RoundsMinimaUpAndMaximaDown) {
    // 7.123 mm: changeover 6 + 2 · 0.123 / 5 = 6.0492 s; build-up the same; cooling 10 + 6 · 0.123
    // / 5 = 10.1476 min
    const WeldPlan exact = planned(sheet(7.123), kPe05);
    EXPECT_EQ(exact.changeoverMax, Milliseconds(6049));       // 6049.2 down
    EXPECT_EQ(exact.buildUp->target, Milliseconds(6049));     // nearest
    EXPECT_EQ(exact.cooling->atLeast, Milliseconds(608'856)); // exact
    // 5.001 mm: changeover 5 + 0.501 / 2.5 = 5.2004 s; cooling 6 + 4 · 0.501 / 2.5 = 6.8016 min =
    // 408.096 s
    EXPECT_EQ(planned(sheet(5.001), kPe05).cooling->atLeast, Milliseconds(408'096));
    // PVDF's bead at 7.001 mm: 0.5 + 0.5 · 1.501 / 4.5 = 0.666778 mm, up
    EXPECT_EQ(planned(sheet(7.001), kPvdf).beadMinUm, 667);
    // 13.001 mm: cooling 16 + 8 · 1.001 / 7 = 17.144 min = 1028.64 s; PP 13.001: 20 + 10 · 1.001 /
    // 7 = 1285.8 s
    EXPECT_EQ(planned(sheet(13.001), kPe05).cooling->atLeast, Milliseconds(1'028'640));
    // 19.5 mm of 2015 at 20 °C: 18 + 6 · 0.5 / 7 = 18.428571 min = 1105714.29 ms, up
    EXPECT_EQ(planned(sheet(19.5), kPe15).cooling->atLeast, Milliseconds(1'105'715));
    // misalignment: a tenth of 7.129 mm is 712.9, down
    EXPECT_EQ(planned(sheet(7.129), kPe05).misalignmentMaxUm, 712);
}

TEST(Plan, LooksAtTheReadingAgainAtOneMinuteAndForLongCoolingAtAThird) {
    const auto rechecks = [](double mm) { return planned(sheet(mm), kPe05).cooling->rechecks; };
    EXPECT_EQ(rechecks(4.5), (std::vector<Milliseconds>{seconds(60)})); // 6 min
    // 4.501 mm: 6.0016 min = 360.096 s, a third of it is 120.032 s
    EXPECT_EQ(rechecks(4.501), (std::vector<Milliseconds>{seconds(60), Milliseconds(120'032)}));
    EXPECT_EQ(rechecks(12), (std::vector<Milliseconds>{seconds(60), seconds(320)}));
}

TEST(Plan, CallsAlignmentLateAtTwiceTheMedianElseAtTheSoakTime) {
    PlanRequest request = sheet(8);
    const WeldPlan without = planned(request, kPe05);
    EXPECT_FALSE(without.alignMedian);
    EXPECT_EQ(without.alignLate, seconds(80));
    request.alignMedian = seconds(47);
    const WeldPlan with = planned(request, kPe05);
    EXPECT_EQ(with.alignMedian, seconds(47));
    EXPECT_EQ(with.alignLate, seconds(94));
}

TEST(Plan, TakesTheMiddleOfThePlateWindowUnlessTheForemanSetsIt) {
    PlanRequest request = sheet(8);
    EXPECT_EQ(*planned(request, kPe05).plate, (WeldPlan::Plate{200'000, 210'000, 220'000}));
    EXPECT_EQ(*planned(request, kPvdf).plate, (WeldPlan::Plate{232'000, 240'000, 248'000}));
    request.plateTarget = Temperature::celsius(217.5);
    EXPECT_EQ(planned(request, kPe05).plate->targetMc, 217'500);
    Procedure own = test::shippedProcedure(kPe05);
    own.plate->target = Temperature::celsius(205);
    request.plateTarget.reset();
    const auto plan = makePlan(request, own, nullptr);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->plate->targetMc, 205'000);
}

TEST(Plan, TakesItsCoolingRuleFromTheRequestElseFromTheProcedure) {
    PlanRequest request = sheet(9.5);
    EXPECT_EQ(planned(request, kPe05).coolingRule, BandRule::Line);
    request.coolingRule = BandRule::BandEnd;
    const WeldPlan bandEnd = planned(request, kPe05);
    EXPECT_EQ(bandEnd.coolingRule, BandRule::BandEnd);
    EXPECT_EQ(bandEnd.cooling->atLeast, seconds(16 * 60));
    // and nothing but the cooling is read at the band's end
    EXPECT_EQ(bandEnd.soak, planned(sheet(9.5), kPe05).soak);
    EXPECT_EQ(bandEnd.changeoverMax, planned(sheet(9.5), kPe05).changeoverMax);
    Procedure own = test::shippedProcedure(kPe05);
    own.coolingRule = BandRule::BandEnd;
    EXPECT_EQ(makePlan(sheet(9.5), own, nullptr)->cooling->atLeast, seconds(16 * 60));
}

// PVDF 20 to 25 mm: band end 32 min, formula at 25 mm 1.2 · 25 + 2 = 32; 15 to 20: line at 15.5
// is 19.6, formula 20.6.
TEST(Plan, TakesTheLongerOfCellAndFormulaForPvdf) {
    EXPECT_EQ(planned(sheet(15.5), kPvdf).cooling->atLeast, Milliseconds(1'236'000));
    PlanRequest request = sheet(15.5);
    request.coolingRule = BandRule::BandEnd;
    EXPECT_EQ(planned(request, kPvdf).cooling->atLeast, seconds(25 * 60));
    request = sheet(20); // the band's end is 25, the formula's 26
    request.coolingRule = BandRule::BandEnd;
    EXPECT_EQ(planned(request, kPvdf).cooling->atLeast, seconds(26 * 60));
}

TEST(Plan, SaysWhereEachOfItsValuesComesFrom) {
    const Bench west = test::demoBench("west");
    for (const char* id : {kPe05, kPe15, kPp, kPvdf}) {
        const WeldPlan plan = planned(sheet(8), id, &west);
        for (const char* value :
             {"heated_tool_C",
              "heated_tool_C.target",
              "pressure_N_mm2.alignment",
              "pressure_N_mm2.soak_aim",
              "pressure_N_mm2.soak_max",
              "pressure_N_mm2.joining",
              "pressure_N_mm2.tolerance",
              "force_N",
              "gap_mm",
              "clamping_gap_mm",
              "edge_gap_max_mm",
              "misalignment_max_mm",
              "scale",
              "bead_min_mm",
              "soak_s",
              "soak_s.tolerance",
              "changeover_max_s",
              "build_up_s",
              "build_up_s.tolerance",
              "cooling_min",
              "rechecks_min",
              "align_late_s"}) {
            const Source* source = sourceOf(plan, value);
            ASSERT_NE(source, nullptr) << id << " " << value;
            EXPECT_FALSE(source->text.empty()) << id << " " << value;
        }
        std::set<std::string> once;
        for (const PlanSource& each : plan.sources) {
            EXPECT_TRUE(once.insert(each.value).second) << each.value;
        }
    }
}

TEST(Plan, ABandHoldsItsEndsAndNothingBeyond) {
    ReadingBand band;
    band.lowMilli = 38'900;
    band.highMilli = 44'200;
    EXPECT_FALSE(band.holds(38'899));
    EXPECT_TRUE(band.holds(38'900));
    EXPECT_TRUE(band.holds(44'200));
    EXPECT_FALSE(band.holds(44'201));
}

TEST(Plan, WhoIsNotToldTheShopsTemperatureTakesTwentyDegrees) {
    EXPECT_EQ(PlanRequest{}.ambient, Temperature::celsius(20));
    EXPECT_EQ(Procedure{}.referenceAmbient, Temperature::celsius(20));
}

TEST(Plan, IsReadyOnlyWholeAndWithAScale) {
    WeldPlan plan = planned(sheet(10), kPe05);
    EXPECT_TRUE(plan.isComplete());
    EXPECT_FALSE(plan.isReady()) << "no bench, so no scale";
    plan.scale = WeldPlan::ScalePlan{};
    EXPECT_TRUE(plan.isReady());
    plan.missing.push_back("soak");
    EXPECT_FALSE(plan.isComplete());
    EXPECT_FALSE(plan.isReady());
}

} // namespace
} // namespace seamclock
