// The model against the trade, with nominal inputs: each figure is one that a published table or
// common practice gives, and each was set before the model was run. Then one part of the model is
// taken out at a time, and a figure that held must no longer.
#include "tests/core/heat/trade_figures.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

constexpr std::array kWalls2015{5.0, 10.0, 26.0, 50.0}; // [mm]

// The published cooling of 2005 is close to a rule of one temperature: the issue on heat asks for
// ±6 K over all walls; an earlier trial of the project's, by another program, had ±4 K.
bool planesOf2005AreOneTemperature(LeftOut leftOut, double sideAir = 8) {
    return spreadOf(table2005(leftOut, sideAir)) < 6;
}

bool planesOf2015LieBetween30And60(LeftOut leftOut) {
    return std::all_of(kWalls2015.begin(), kWalls2015.end(), [&](double wall) {
        const auto classes = classes2015(wall, leftOut);
        return std::all_of(classes.begin(), classes.end(), [](const WeldFigures& weld) {
            return weld.planeC > 30 && weld.planeC < 60;
        });
    });
}

/// 10 mm have their 1.5 mm in 35 to 95 s; common practice, without a source, is 50 to 60.
bool beadComesInTime(LeftOut leftOut) {
    for (const double consistency : {10000.0, 25000.0, 50000.0}) { // our range, no source
        const double seconds = bead10(consistency, leftOut);
        if (seconds < 35 || seconds > 95) {
            return false;
        }
    }
    return true;
}

TEST(Trade, WeldPlaneAtTheEndOfThe2005CoolingIsOneTemperatureForAllWalls) {
    for (const double sideAir : {7.0, 10.0}) {
        const auto welds = table2005(LeftOut::Nothing, sideAir);
        EXPECT_LT(spreadOf(welds), 6) << sideAir;
        for (const WeldFigures& weld : welds) {
            // 36 to 47 °C in the earlier trial, and 3 K for what it took of the melt's flow
            EXPECT_GT(weld.planeC, 33) << weld.thicknessMm;
            EXPECT_LT(weld.planeC, 50) << weld.thicknessMm;
        }
        RecordProperty(
            "spread_K_" + std::to_string(static_cast<int>(sideAir)),
            std::to_string(spreadOf(welds)));
    }
}

TEST(Trade, WeldPlaneAtTheEndOfThe2015CoolingIsAlikeInColdAndWarmShops) {
    for (const double wall : kWalls2015) {
        const auto classes = classes2015(wall);
        EXPECT_LT(2 * spreadOf(classes), 12) << wall; // the issue's
        for (const WeldFigures& weld : classes) {
            EXPECT_GT(weld.planeC, 30) << wall << ' ' << weld.ambientC;
            EXPECT_LT(weld.planeC, 60) << wall << ' ' << weld.ambientC;
            EXPECT_LE(weld.planeC, classes.back().planeC) << "the warm class is the warmest";
        }
    }
}

TEST(Trade, BeadOfTenMillimetresComesInThirtyFiveToNinetyFiveSeconds) {
    EXPECT_TRUE(beadComesInTime(LeftOut::Nothing));
    const double nominal = bead10(25000);
    EXPECT_NEAR(nominal, 60, 8) << "common practice: 50 to 60, and an earlier trial's 63";
    EXPECT_LT(bead10(10000), nominal);
    EXPECT_LT(nominal, bead10(50000));
}

// Plastic Pipes XVI, 2012: about 90 °C as what a joint has to cool to, at 15 °C.
TEST(Trade, NinetyDegreesArePassedBeforeThePublishedCoolingEnds) {
    const Procedure procedure = procedureFor("pe-hd");
    for (const double wall : {5.0, 10.0, 26.0, 50.0}) {
        const Cycle cycle = cycleOf(procedure, millimetres(wall), 15);
        HeatInputs inputs = inputsFor(cycle, wall);
        inputs.ambientC = 15;
        const WeldFigures weld = weldFigures(shippedMaterial("pe-hd"), cycle, inputs);
        EXPECT_GT(weld.below90S, 0) << wall;
        EXPECT_LT(weld.below90S, weld.coolingS) << wall;
    }
}

/// Above which all of it is molten, or flows.
double moltenFrom(const std::string& material) {
    const Material one = shippedMaterial(material);
    return one.crystals ? one.crystals->meltsTo : one.flow.flowsFrom;
}

// PP has a soak from 4.5 mm on only, and PE-HD under 2.5 mm is left out: there the skin falls below
// the melting range before the 5 s are over, which the last of these tests names.
struct Wall {
    const char* material;
    double thicknessMm;
};

TEST(Trade, SkinIsStillMoltenWhenTheFacesMeetAtTheLongestChangeover) {
    for (const Wall& wall :
         {Wall{"pe-hd", 2.5}, Wall{"pe-hd", 5}, Wall{"pe-hd", 10}, Wall{"pe-hd", 25},
          Wall{"pe-hd", 50}, Wall{"pp-h", 5}, Wall{"pp-h", 10}, Wall{"pp-h", 25}, Wall{"pp-h", 50},
          Wall{"pvdf", 2}, Wall{"pvdf", 10}, Wall{"pvdf", 25}, Wall{"pvc-u", 2}, Wall{"pvc-u", 10},
          Wall{"pvc-u", 20}}) {
        EXPECT_GT(skinAfter(1, wall.material, wall.thicknessMm), moltenFrom(wall.material))
            << wall.material << ' ' << wall.thicknessMm;
    }
}

TEST(Trade, SkinIsNoLongerMoltenAfterAMultipleOfTheLongestChangeoverThatCanBeNamed) {
    // At 10 mm, to a tenth of a changeover; another value is another model.
    struct Row {
        const char* material;
        double least;
        double most;
    };
    for (const Row& row :
         {Row{"pe-hd", 3, 4}, Row{"pp-h", 1.5, 2.5}, Row{"pvdf", 4.5, 6}, Row{"pvc-u", 5.5, 7}}) {
        double low = 1;
        double high = 30;
        while (high - low > 0.1) {
            const double middle = (low + high) / 2;
            (skinAfter(middle, row.material, 10) > moltenFrom(row.material) ? low : high) = middle;
        }
        EXPECT_GT(low, row.least) << row.material;
        EXPECT_LT(high, row.most) << row.material;
        RecordProperty(std::string("multiple_") + row.material, std::to_string(high));
    }
}

TEST(Trade, SkinOfTheThinnestSheetDoesNotLastUntilTheLimit) {
    // A finding, not a wish: the table's 5 s are long for a sheet of 1 mm.
    EXPECT_LT(skinAfter(1, "pe-hd", 1), moltenFrom("pe-hd"));
}

TEST(Without, SideLossTheWarmShopsPlanesAreAboveSixty) {
    ASSERT_TRUE(planesOf2015LieBetween30And60(LeftOut::Nothing));
    EXPECT_FALSE(planesOf2015LieBetween30And60(LeftOut::SideLoss));
}

TEST(Without, SqueezeThePublishedCoolingIsNoLongerOneTemperatureAndThickWallsStayHot) {
    ASSERT_TRUE(planesOf2005AreOneTemperature(LeftOut::Nothing));
    EXPECT_FALSE(planesOf2005AreOneTemperature(LeftOut::Squeeze));
    EXPECT_FALSE(planesOf2015LieBetween30And60(LeftOut::Squeeze));
    const auto thick = classes2015(50, LeftOut::Squeeze);
    EXPECT_GT(thick.front().planeC, thick.back().planeC) << "nor is the warm class the warmest";
}

TEST(Without, HeatOfMeltingTheBeadComesTooSoon) {
    ASSERT_TRUE(beadComesInTime(LeftOut::Nothing));
    EXPECT_FALSE(beadComesInTime(LeftOut::HeatOfMelting));
    EXPECT_LT(bead10(10000, LeftOut::HeatOfMelting), 35);
}

} // namespace
} // namespace seamclock::test
