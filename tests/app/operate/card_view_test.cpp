// The card on the screen: what it says of a plan in either system of units, whom it names for a
// value, and the page that "Print" leaves behind.
#include "app/operate/card_view.h"
#include "tests/app/operate/demo_shop.h"
#include "tests/support/materials.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <gtest/gtest.h>
#include <set>
#include <string>

namespace seamclock {
namespace {

WeldPlan planOf(const char* procedure, double thickness, double length, const Bench& bench) {
    PlanRequest request;
    request.thickness = millimetres(thickness);
    request.lengths = {millimetres(length)};
    request.drag = newtons(70);
    const auto plan = makePlan(request, test::shippedProcedure(procedure), &bench);
    EXPECT_TRUE(plan.has_value()) << plan.error().detail;
    return plan.value_or(WeldPlan{});
}

CardView viewOf(const WeldPlan& plan, UnitSystem units = UnitSystem::Metric) {
    return cardView(plan, test::demoBench("west"), "B", "Seam S2", units);
}

TEST(CardView, WarnsFirstOfThePlasticThatGivesOffAcidGas) {
    const CardView fluorine = viewOf(planOf("pvdf-dvs2207-15", 10, 1000, test::demoBench("west")));
    EXPECT_TRUE(fluorine.warning.startsWith("Too hot, it gives off toxic acid gas: extraction on"))
        << fluorine.warning.toStdString();
    WeldPlan chlorine = planOf("pe-hd-dvs2207-1-2005", 8, 1380, test::demoBench("west"));
    EXPECT_FALSE(viewOf(chlorine).warning.contains("extraction"));
    chlorine.material = "PVC-U";
    EXPECT_TRUE(viewOf(chlorine).warning.contains("hydrogen chloride: extraction on"));
}

TEST(CardView, SaysTheSameInMillimetresAndInInches) {
    // 8 mm × 1380 mm at 0.15 N/mm² is 1656 N; with 70 N of drag and 40 N of preload over 143.8 N/mm
    // from 2 on the scale: 2 + 1766 / 143.8 = 14.28.
    const WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 8, 1380, test::demoBench("west"));
    const CardView metric = viewOf(plan);
    EXPECT_EQ(metric.under, "Seam S2. PE-HD, 8 mm thick, 1380 mm long. Shop 20 °C.");
    EXPECT_EQ(metric.force, "0.15 N/mm² × 8 mm × 1380 mm = 1656 N");
    EXPECT_EQ(
        metric.reading,
        "with drag 70 N, preload 40 N, zero at 2.0: ÷ 143.8 N/mm = 14.28 mm, set to 14.0 mm");
    const CardView imperial = viewOf(plan, UnitSystem::Imperial);
    EXPECT_EQ(imperial.under, "Seam S2. PE-HD, 0.315 in thick, 54.33 in long. Shop 68 °F.");
    EXPECT_EQ(imperial.force, "21.76 psi × 0.315 in × 54.33 in = 372.3 lbf");
    EXPECT_EQ(
        imperial.reading, "with drag 15.7 lbf, preload 9.0 lbf, zero at 2.0: ÷ 32.33 lbf/mm = "
                          "14.28 mm, set to 14.0 mm");
    ASSERT_EQ(metric.columns.size(), 6U);
    EXPECT_EQ(metric.columns[0].big, "210");
    EXPECT_EQ(imperial.columns[0].big, "410");
    EXPECT_EQ(imperial.columns[0].under, "392 to 428");
    EXPECT_EQ(imperial.columns[1].big, "0.059"); // 1.5 mm
    for (std::size_t i = 2; i < 6; ++i) {
        EXPECT_EQ(metric.columns[i], imperial.columns[i]) << "times and readings are one";
    }
}

TEST(CardView, TellsTheReadingsFallAndTheLossInEitherSystem) {
    const Bench west = test::demoBench("west");
    const WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 8, 1380, west);
    const auto course = courseOf(plan, &west);
    ASSERT_TRUE(course);
    const auto heat = estimateHeat(*course, test::materials());
    ASSERT_TRUE(heat);
    const auto shown = [&](UnitSystem units) {
        return cardView(plan, west, "B", "Seam S2", units, &*heat).estimate.toStdString();
    };
    const double loss = heat->numbers.sheetLossMm->likely;
    char metric[16];
    std::snprintf(metric, sizeof metric, "%.1f mm", loss);
    EXPECT_NE(
        shown(UnitSystem::Metric).find(std::string("sheet loses ") + metric), std::string::npos)
        << shown(UnitSystem::Metric);
    EXPECT_NE(
        shown(UnitSystem::Metric).find("Estimate: it will fall by about "), std::string::npos);
    EXPECT_NE(shown(UnitSystem::Imperial).find(" in."), std::string::npos)
        << shown(UnitSystem::Imperial);
    EXPECT_EQ(viewOf(plan).estimate, QString()) << "none was given";
}

TEST(CardView, NeverShowsAMinimumShorterThanItIs) {
    WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 8, 1380, test::demoBench("west"));
    ASSERT_TRUE(plan.cooling && plan.changeoverMax);
    plan.cooling->atLeast = Milliseconds(600'001);
    plan.changeoverMax = Milliseconds(6'699);
    const CardView view = viewOf(plan);
    EXPECT_EQ(view.columns[5].big, "10:01");
    EXPECT_EQ(view.columns[3].big, "6.6") << "nor a maximum longer";
}

TEST(CardView, NamesWhoAttestedAndMarksWhatIsFromMemory) {
    WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 8, 1380, test::demoBench("west"));
    CardView view = viewOf(plan);
    ASSERT_FALSE(view.sources.empty());
    EXPECT_TRUE(view.sources.front().memory);
    EXPECT_EQ(view.sources.front().standing, "from memory: not attested");
    const auto attest = [&plan](const std::set<std::string>& values) {
        for (PlanSource& source : plan.sources) {
            if (values.count(source.value) > 0) {
                source.source = {
                    "DVS 2207-1, table 2; attested by Oddo Quenley, 2030-01-07, against edition "
                    "2005",
                    Standing::Attested};
            }
        }
    };
    attest({"soak_s"});
    EXPECT_TRUE(viewOf(plan).sources.front().memory) << "the bead's and the times' are not";
    attest({"bead_min_mm", "changeover_max_s", "build_up_s", "cooling_min"});
    view = viewOf(plan);
    EXPECT_FALSE(view.sources.front().memory);
    EXPECT_EQ(view.sources.front().sign, Sign::Shield);
    EXPECT_EQ(
        view.sources.front().standing,
        "attested by Oddo Quenley, 7 Jan 2030, against edition 2005");
}

TEST(CardView, NamesWhatIsMissingAndWhatNobodyAttested) {
    WeldPlan plan = planOf("pe-hd-dvs2207-1-2015", 39, 1000, test::demoBench("west"));
    EXPECT_TRUE(viewOf(plan).ready);
    plan.missing = {"changeover_max_s"};
    plan.unattested = {"build_up_s"};
    const CardView view = viewOf(plan);
    EXPECT_FALSE(view.ready);
    EXPECT_EQ(
        view.warning, "Not ready to weld. The procedure lacks: changeover. Nobody has attested: "
                      "build-up.");
}

TEST(CardView, SaysThatASheetHasNoBatchAndWhereItIsEntered) {
    Sheet told;
    told.batch = "VP-40688";
    Sheet blank = told;
    blank.batch = " ";
    EXPECT_TRUE(batchMissing({told, told}, BatchPlace::Job).isEmpty());
    for (const auto& sheets : {std::vector<Sheet>{told, blank}, std::vector<Sheet>{}}) {
        EXPECT_TRUE(batchMissing(sheets, BatchPlace::Entry).endsWith("thickness is typed."));
        EXPECT_TRUE(batchMissing(sheets, BatchPlace::Job).contains("with the job"));
        EXPECT_TRUE(batchMissing(sheets, BatchPlace::DayLog).endsWith("in the day log."));
    }
    const QString missing = batchMissing({}, BatchPlace::Job);
    const Bench west = test::demoBench("west");
    const auto warning = [&](const char* procedure) {
        return cardView(
                   planOf(procedure, 10, 1000, west), west, "B", "Seam S2", UnitSystem::Metric,
                   nullptr, missing)
            .warning;
    };
    EXPECT_TRUE(warning("pe-hd-dvs2207-1-2005").startsWith(missing));
    // A caution comes before it; it is one of the others then.
    EXPECT_TRUE(warning("pvdf-dvs2207-15").startsWith("Too hot"));
}

TEST(CardPage, PrintLeavesAPageInTheDocumentsAndSaysWhere) {
    Shop shop;
    shop.window().openNextCard();
    ASSERT_EQ(shop.window().page(), PageKind::Card);
    for (int i = 0; i < 2; ++i) {
        emit shop.window().currentPage()->slotPressed(SlotPlace::Stop);
        while (shop.desk().isBusy()) {
            QCoreApplication::processEvents();
        }
    }
    const QDir documents(QString::fromStdString(shop.documents()));
    EXPECT_EQ(
        documents.entryList(QDir::Files),
        (QStringList{"seamclock-card-2030-01-07-2.pdf", "seamclock-card-2030-01-07.pdf"}));
    EXPECT_EQ(shop.window().page(), PageKind::Card) << "the card stays";
    QFile page(documents.filePath("seamclock-card-2030-01-07.pdf"));
    ASSERT_TRUE(page.open(QIODevice::ReadOnly));
    EXPECT_TRUE(page.readAll().startsWith("%PDF-"));
}

} // namespace
} // namespace seamclock
