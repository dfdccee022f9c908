#include "core/bench/bench.h"

#include "tests/support/shipped.h"

namespace seamclock {
namespace {

TEST(SpringScale, AddsTheRatesOfItsSprings) {
    SpringScale scale;
    scale.ratePerUnit = {newtons(71.2), newtons(72.6)};
    EXPECT_DOUBLE_EQ(inNewtons(scale.rate()), 143.8);
    scale.ratePerUnit = {newtons(62.5)};
    EXPECT_DOUBLE_EQ(inNewtons(scale.rate()), 62.5);
}

// reading = zero + (F + drag + preload) / rate, with F = 0: 2.0 + (85 + 100) / 85 by hand.
TEST(Drag, IsReadBesideThePreload) {
    SpringScale scale;
    scale.unit = "mm";
    scale.zeroMilli = 2'000;
    scale.ratePerUnit = {newtons(85)};
    scale.preload = newtons(100);
    EXPECT_NEAR(dragReading(scale, newtons(85)), 4.17647, 1e-5);
    EXPECT_NEAR(inNewtons(dragOf(scale, 4.17647)), 85, 1e-3);
    EXPECT_NEAR(dragReading(scale, Force()), 2.0 + 100.0 / 85, 1e-12);
    EXPECT_LT(dragOf(scale, 3.0), Force()) << "less than the preload alone takes";
}

TEST(GapRule, IsTheThicknessBetweenAFloorAndACap) {
    GapRule rule;
    EXPECT_DOUBLE_EQ(inMillimetres(rule.gap(millimetres(8))), 8);
    rule.floor = millimetres(5);
    rule.cap = millimetres(25);
    EXPECT_DOUBLE_EQ(inMillimetres(rule.gap(millimetres(4))), 5);
    EXPECT_DOUBLE_EQ(inMillimetres(rule.gap(millimetres(5))), 5);
    EXPECT_DOUBLE_EQ(inMillimetres(rule.gap(millimetres(15))), 15);
    EXPECT_DOUBLE_EQ(inMillimetres(rule.gap(millimetres(40))), 25);
    rule.factor = 1.5;
    EXPECT_DOUBLE_EQ(inMillimetres(rule.gap(millimetres(8))), 12);
}

TEST(DemoBenches, DifferInAllThatBenchesDifferIn) {
    const Bench east = test::demoBench("east");
    const Bench west = test::demoBench("west");
    EXPECT_EQ(east.scale.ratePerUnit.size(), 1U);
    EXPECT_EQ(west.scale.ratePerUnit.size(), 2U);
    EXPECT_NE(east.scale.divisionMilli, west.scale.divisionMilli);
    EXPECT_NE(east.scale.zeroMilli, west.scale.zeroMilli);
    EXPECT_NE(inNewtons(east.scale.preload), inNewtons(west.scale.preload));
    EXPECT_NE(east.releaseOrder, west.releaseOrder);
    EXPECT_EQ(east.scale.divisionMilli, 500);
    EXPECT_EQ(west.scale.zeroMilli, 2000);
    EXPECT_EQ(west.scale.maxMilli, 45'000);
    ASSERT_TRUE(west.calibration);
    EXPECT_EQ(west.calibration->dueOn, "2030-05-20");
}

} // namespace
} // namespace seamclock
