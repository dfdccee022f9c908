#include "core/procedure/column.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

Piece piece(double from, double to, std::vector<double> coefficients) {
    return {millimetres(from), millimetres(to), std::move(coefficients)};
}

std::optional<double> line(const Curve& curve, double mm) {
    return curve.at(millimetres(mm), BandRule::Line);
}

// An invented table: 3 up to 4 mm, then 5 rising to 9 at 8 mm.
Curve table() {
    return Curve{true, {piece(2, 4, {3}), piece(4, 8, {1, 1})}};
}

TEST(Column, GivesABoundaryToTheBandThatEndsThere) {
    EXPECT_EQ(line(table(), 4), 3);
    EXPECT_EQ(line(table(), 8), 9);
}

TEST(Column, BeginsAtItsFirstThicknessWhereNoBandEnds) {
    EXPECT_EQ(line(table(), 2), 3);
}

TEST(Column, TakesTheNextBandOneMicrometreAboveABoundary) {
    EXPECT_NEAR(*line(table(), 4.001), 5.001, 1e-9); // of 1e-9: binary noise, far below a digit
}

TEST(Column, NeverExtrapolates) {
    EXPECT_FALSE(line(table(), 1.999));
    EXPECT_FALSE(line(table(), 8.001));
    EXPECT_FALSE(line(Curve{true, {}}, 4));
    EXPECT_FALSE(line(Curve{true, {piece(2, 3, {1}), piece(5, 6, {1})}}, 4)); // in a hole
}

TEST(Column, IsNotMovedAcrossABoundaryByBinaryNoise) {
    const Curve curve{true, {piece(0.3, 1.9, {1}), piece(1.9, 4, {2})}};
    EXPECT_EQ(curve.at(micrometres(1900), BandRule::Line), 1);
    EXPECT_EQ(curve.at(metres(0.0019), BandRule::Line), 1);
    EXPECT_EQ(curve.at(millimetres(0.6 + 0.6 + 0.7), BandRule::Line), 1);
    EXPECT_EQ(curve.at(millimetres(0.1 + 0.2), BandRule::Line), 1);
}

TEST(Column, ReadsATableAtTheBandsEndButAFormulaOnlyByItsLine) {
    EXPECT_EQ(table().at(millimetres(5), BandRule::BandEnd), 9);
    EXPECT_EQ(table().at(millimetres(4), BandRule::BandEnd), 3);
    Curve formula = table();
    formula.isTable = false;
    EXPECT_EQ(formula.at(millimetres(5), BandRule::BandEnd), 6);
}

TEST(Column, NeverTakesABandsEndForLessThanTheLine) {
    const Curve falling{true, {piece(0, 10, {20, -1})}};
    EXPECT_EQ(falling.at(millimetres(4), BandRule::BandEnd), 16);
}

// The form of ISO 21307's cooling as printed on a parameter card: e + 3 below 18 mm, 0.015 e² −
// 0.47 e + 20 from 18 mm up; at 18 mm 21.0 against 16.4. [seen]
TEST(Column, HoldsAParabolaAndAJump) {
    const Curve curve{false, {piece(1, 18, {3, 1}), piece(18, 60, {20, -0.47, 0.015})}};
    EXPECT_NEAR(*line(curve, 18), 21.0, 1e-9);
    EXPECT_NEAR(*line(curve, 18.001), 16.4, 1e-3); // the curve's own slope over a micrometre
    EXPECT_NEAR(*line(curve, 40), 0.015 * 1600 - 0.47 * 40 + 20, 1e-9);
}

TEST(Column, IsTheLongestOfItsCurvesAndNothingWhereOneHasNone) {
    Column column;
    column.curves = {table(), Curve{false, {piece(3, 9, {6})}}};
    EXPECT_EQ(column.at(millimetres(4), BandRule::Line), 6);
    EXPECT_EQ(column.at(millimetres(8), BandRule::Line), 9);
    EXPECT_EQ(column.at(millimetres(5), BandRule::BandEnd), 9);
    EXPECT_FALSE(column.at(millimetres(2.5), BandRule::Line));
    EXPECT_FALSE(column.at(millimetres(8.5), BandRule::Line));
    EXPECT_FALSE(Column{}.at(millimetres(4), BandRule::Line));
    EXPECT_TRUE(column.hasBands());
    column.curves.erase(column.curves.begin());
    EXPECT_FALSE(column.hasBands());
}

} // namespace
} // namespace seamclock
