#include "core/report/plain_text.h"
#include "core/report/weld_card.h"
#include "core/report/wording.h"
#include "tests/core/report/lines.h"
#include "tests/support/materials.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using test::holds;
using test::lineWith;

/// 90 N for a millimetre of one spring, whole divisions: the bench of the check values
/// (common practice, no source).
Bench practiceBench() {
    Bench bench;
    bench.id = "bench-a";
    bench.name = "Bench A";
    bench.longestSeam = millimetres(2000);
    bench.thinnestSheet = millimetres(2);
    bench.thickestSheet = millimetres(40);
    bench.scale = {"mm", 1'000, 0, 60'000, 1, {newtons(90)}, Force(), {}};
    bench.gapRule.floor = millimetres(2);
    bench.edgeGapMax = millimetres(0.5);
    bench.releaseOrder = {"clamps_eased", "bars_opened", "spring_off", "sheet_out"};
    return bench;
}

WeldPlan planOf(
    const std::string& procedure, double thickness, double length, const Bench* bench,
    double drag = 0) {
    PlanRequest request;
    request.thickness = millimetres(thickness);
    request.lengths = {millimetres(length)};
    request.drag = newtons(drag);
    const auto plan = makePlan(request, test::shippedProcedure(procedure), bench);
    EXPECT_TRUE(plan.has_value()) << plan.error().detail;
    return plan.value_or(WeldPlan{});
}

TEST(WeldCard, ShowsTheArithmeticOfEachReadingInOneLine) {
    // 1000 x 10 mm PE-HD at 0.15 N/mm² is 1500 N; over 90 N/mm 16.7, set 17; soak at most 2.2, set
    // 2 (common practice, no source).
    const Bench bench = practiceBench();
    const std::string card = weldCard(planOf("pe-hd-dvs2207-1-2005", 10, 1000, &bench), &bench);
    EXPECT_EQ(
        lineWith(card, "Align and join"),
        "  Align and join  0.15 N/mm² × 10 mm × 1000 mm = 1500 N, ÷ 90 N/mm = 16.67 mm, set 17");
    EXPECT_EQ(
        lineWith(card, "Soak, at most"),
        "  Soak, at most   0.02 N/mm² × 10 mm × 1000 mm = 200 N, ÷ 90 N/mm = 2.22 mm, set 2");
}

TEST(WeldCard, AddsDragWhilePushingAndTakesItOffInSoak) {
    const Bench bench = practiceBench();
    const std::string card = weldCard(planOf("pe-hd-dvs2207-1-2005", 10, 1000, &bench, 45), &bench);
    EXPECT_TRUE(
        holds(lineWith(card, "Align and join"), "= 1500 N, + drag 45 N, ÷ 90 N/mm = 17.17 mm"))
        << "(1500 + 45) / 90";
    EXPECT_TRUE(holds(lineWith(card, "Soak, at most"), "= 200 N, − drag 45 N, ÷ 90 N/mm = 1.72 mm"))
        << "(200 − 45) / 90";
}

TEST(WeldCard, ShowsZeroAndPreloadWhereTheBenchHasThem) {
    const Bench west = test::demoBench("west");
    const std::string card = weldCard(planOf("pe-hd-dvs2207-1-2005", 8, 1380, &west, 70), &west);
    const std::string line = lineWith(card, "0.15 N/mm²");
    EXPECT_TRUE(holds(line, "1656 N")) << "0.15 x 8 x 1380; " << line;
    EXPECT_TRUE(holds(line, "+ preload 40 N")) << line;
    EXPECT_TRUE(holds(card, "zero at 2")) << card;
}

TEST(WeldCard, GivesTheTimesAsTheTradeReadsThem) {
    const Bench bench = practiceBench();
    const std::string card = weldCard(planOf("pe-hd-dvs2207-1-2005", 10, 1000, &bench), &bench);
    // DVS 2207-1 (2005) for 10 mm on the straight line: 100 s, 7.2 s, 7.2 s, 13.6 min (from
    // memory).
    EXPECT_TRUE(holds(lineWith(card, "Soak  "), "1:40 (1:40 to 1:50)"));
    EXPECT_TRUE(holds(lineWith(card, "Changeover"), "at most 7.2 s"));
    EXPECT_TRUE(holds(lineWith(card, "Build-up"), "7.2 s (4.32 s to 9.36 s)"));
    EXPECT_TRUE(holds(lineWith(card, "from the lock"), "at least 13:36"));
    EXPECT_TRUE(holds(card, "until a 1.5 mm bead stands all along"));
    EXPECT_TRUE(holds(lineWith(card, "Plate  "), "210 °C (200 °C to 220 °C), read on its face"));
}

TEST(WeldCard, NamesEverySourceWithItsStanding) {
    const WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 10, 1000, nullptr);
    const std::string card = weldCard(plan, nullptr);
    ASSERT_FALSE(plan.sources.empty());
    for (const PlanSource& source : plan.sources) {
        EXPECT_TRUE(holds(card, codeInWords(source.value))) << source.value;
        EXPECT_EQ(codeInWords(source.value).find('_'), std::string::npos) << source.value;
    }
    EXPECT_TRUE(holds(card, "[from memory: not attested]"));
    EXPECT_TRUE(holds(card, "common practice, no source"));
    EXPECT_FALSE(holds(card, "common practice, no source [common practice, no source]"));
}

TEST(WeldCard, ShowsEachWarning) {
    PlanRequest request;
    request.thickness = millimetres(10);
    request.lengths = {millimetres(1000)};
    const Bench bench = practiceBench();
    const auto plan = makePlan(request, test::shippedProcedure("pe-hd-dvs2207-1-2005"), &bench);
    ASSERT_TRUE(plan.has_value());
    ASSERT_FALSE(plan->warnings.empty()) << "drag was not given";
    const std::string card = weldCard(*plan, &bench);
    EXPECT_EQ(card.find("extraction"), std::string::npos) << "of its plastic nothing is known";
    const std::size_t from = card.find("Know before you start");
    ASSERT_NE(from, std::string::npos);
    for (const PlanWarning& warning : plan->warnings) {
        const std::string first = warning.text.substr(0, warning.text.find(' '));
        EXPECT_NE(card.find(first, from), std::string::npos) << warning.text;
    }
}

TEST(WeldCard, SaysPlainlyWhenItIsNotReadyToWeld) {
    // PE-HD 2015 above 50 mm has no other columns than cooling, so the plan has gaps.
    const WeldPlan plan = planOf("pe-hd-dvs2207-1-2015", 55, 1000, nullptr);
    ASSERT_FALSE(plan.isComplete());
    const std::string card = weldCard(plan, nullptr);
    const std::string line = lineWith(card, "Not ready to weld. No value for: ");
    EXPECT_TRUE(holds(line, codeInWords(plan.missing.front()))) << card;
    EXPECT_TRUE(holds(card, "no value"));
}

TEST(WeldCard, SaysWhatThePlanWillDoAndNothingOfTheWeldPlane) {
    const Bench west = test::demoBench("west");
    const WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 10, 1000, &west);
    const auto course = courseOf(plan, &west);
    ASSERT_TRUE(course);
    const auto heat = estimateHeat(*course, test::materials());
    ASSERT_TRUE(heat);
    const std::string card = weldCard(plan, &west, UnitSystem::Metric, &*heat);
    EXPECT_TRUE(holds(card, "Estimate: what this plan will do"));
    for (const char* what :
         {"melt on each sheet after soak", "skin when the faces meet", "reading falls by that",
          "to about", "re-checks", "cut allowance", "judges none"}) {
        EXPECT_TRUE(holds(card, what)) << what << "\n" << card;
    }
    EXPECT_FALSE(holds(card, "weld plane")) << "it would argue for an early release";
    // the closing of a scale in mm is its fall, from the reading that is set
    const double left = static_cast<double>(plan.scale->joining.setMilli) / 1e3 -
                        heat->numbers.readingFallUnits->likely;
    EXPECT_NEAR(std::stod(lineWith(card, "to about").substr(11)), left, 0.051) << card;
    EXPECT_FALSE(holds(weldCard(plan, &west), "Estimate"));
}

TEST(WeldCard, NamesBothReadingsWhereTheTableAlignsWithAnotherPressure) {
    const Bench bench = practiceBench();
    WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 10, 1000, &bench);
    *plan.alignmentPa *= 2;
    *plan.alignmentMn *= 2;
    plan.scale->alignment.setMilli = 33'000;
    const std::string card = weldCard(plan, &bench);
    EXPECT_TRUE(holds(lineWith(card, "  Align "), "0.3 N/mm² × 10 mm × 1000 mm = 3000 N")) << card;
    EXPECT_TRUE(holds(lineWith(card, "  Align "), "set 33"));
    EXPECT_TRUE(holds(lineWith(card, "  Join "), "0.15 N/mm² × 10 mm × 1000 mm = 1500 N"));
    EXPECT_TRUE(holds(lineWith(card, "  Join "), "set 17"));
    EXPECT_FALSE(holds(card, "Align and join"));
}

TEST(WeldCard, SaysThatCoolingCutToHalfBearsNoLoadYet) {
    const Bench bench = practiceBench();
    WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 10, 1000, &bench);
    EXPECT_FALSE(holds(weldCard(plan, &bench), "cut to half"));
    plan.halfCooling = true;
    EXPECT_TRUE(holds(weldCard(plan, &bench), "cut to half: full load only after the whole time"));
}

// PVC gives off hydrogen chloride, PVDF acid gas of fluorine (trade knowledge, common practice).
TEST(WeldCard, CautionsOfTheGasThatAPlasticGivesOffAndSaysWhatNobodyAttested) {
    const Bench bench = practiceBench();
    WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 10, 1000, &bench);
    const auto cardOf = [&](const char* material) {
        plan.material = material;
        return weldCard(plan, &bench);
    };
    EXPECT_FALSE(holds(cardOf("PE-HD"), "Too hot, it gives off"));
    EXPECT_TRUE(holds(cardOf("PVC-U"), "Too hot, it gives off hydrogen chloride: extraction on."));
    EXPECT_TRUE(holds(cardOf("PVDF"), "it gives off toxic acid gas: extraction on, do not smoke."));
    EXPECT_FALSE(holds(cardOf("PE-HD"), "nobody has attested"));
    plan.unattested = {"soak", "cooling"};
    EXPECT_TRUE(holds(
        cardOf("PE-HD"), "Not ready to weld: nobody has attested " + codeInWords("soak") + ", " +
                             codeInWords("cooling") + ", filled in by the shop."));
}

TEST(WeldCard, WithoutABenchEndsAtTheForce) {
    const std::string card = weldCard(planOf("pe-hd-dvs2207-1-2005", 10, 1000, nullptr), nullptr);
    EXPECT_TRUE(holds(card, "0.15 N/mm² × 10 mm × 1000 mm = 1500 N\n"));
    EXPECT_FALSE(holds(card, "÷"));
    EXPECT_TRUE(holds(card, "none given: no readings"));
}

TEST(WeldCard, KeepsToAHundredColumns) {
    const Bench west = test::demoBench("west");
    for (const char* procedure :
         {"pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015", "pp-dvs2207-11"}) {
        for (const std::string& line :
             test::linesOf(weldCard(planOf(procedure, 8, 1380, &west, 70), &west))) {
            EXPECT_LE(columnsOf(line), kTextColumns) << line;
        }
    }
    WeldPlan wordy = test::inventedPlan();
    wordy.sources = {{"soak_s", {std::string(300, 'x') + "\x1b[31m\n", Standing::Attested}}};
    wordy.warnings = {{"w", "a sentence\nof two lines " + std::string(200, 'y'), {}, {}, ""}};
    for (const std::string& line : test::linesOf(weldCard(wordy, nullptr))) {
        EXPECT_LE(columnsOf(line), kTextColumns) << line;
        EXPECT_EQ(line.find('\x1b'), std::string::npos);
    }
}

} // namespace
} // namespace seamclock
