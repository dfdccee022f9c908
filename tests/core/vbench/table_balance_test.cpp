// The table's balance of forces, against arithmetic: Hooke, Coulomb, a power law's damper.
#include "core/vbench/table_balance.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

constexpr double kStiff = 15e9;  // [Pa/m]
constexpr double kRate = 62.5e3; // [N/m]
constexpr double kForce = 1e-6;  // [N] what the solver may miss

std::vector<TablePoint> five(double softness = 0) {
    return std::vector<TablePoint>(5, TablePoint{0, 0.002, kStiff, softness, false});
}

double sum(const TableBalance& balance, const std::vector<TablePoint>& points) {
    double force = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        force += balance.pressures[i] * points[i].area;
    }
    return force;
}

TEST(TableBalance, AFreeTableFollowsTheWheelWithinItsDrag) {
    // Hooke and Coulomb: it moves once rate · travel is more than preload and drag.
    const TableSpring spring{kRate, 40, 55};
    EXPECT_EQ(balanceTable(spring, 0.0015, 0, {}, 0.45).travel, 0); // 93.75 N < 95 N
    EXPECT_NEAR(balanceTable(spring, 0.0020, 0, {}, 0.45).travel, 0.0020 - 95 / kRate, 1e-12);
    // Back: 40 − 55 = −15 N at the spring.
    EXPECT_NEAR(balanceTable(spring, -0.0020, 0, {}, 0.45).travel, -0.0020 + 15 / kRate, 1e-12);
}

TEST(TableBalance, ThePressedFacesTakeTheSpringLessPreloadAndDrag) {
    const TableSpring spring{kRate, 40, 55};
    for (const double softness : {0.0, 1e-15}) { // nothing flows; melt flows
        const auto points = five(softness);
        const auto balance = balanceTable(spring, 0.024, 0, points, 0.45);
        const double force = kRate * (0.024 - balance.travel);
        EXPECT_NEAR(sum(balance, points), force - 40 - 55, kForce);
        EXPECT_NEAR(balance.friction, 55, kForce);
        EXPECT_NEAR(balance.faces, sum(balance, points), kForce);
    }
}

TEST(TableBalance, ComingDownTheDragHoldsTheTableOn) {
    // The reading up and down again, as contracts.md's soak has it: −drag.
    const TableSpring spring{kRate, 0, 55};
    const auto points = five();
    const double up = balanceTable(spring, 0.024, 0, points, 0.45).travel;
    const auto down = balanceTable(spring, 0.002, up, points, 0.45);
    EXPECT_NEAR(down.faces, kRate * (0.002 - down.travel) + 55, kForce);
    EXPECT_NEAR(down.friction, -55, kForce);
}

TEST(TableBalance, WithinTheDragNothingMoves) {
    const TableSpring spring{kRate, 0, 55};
    const auto points = five();
    const auto up = balanceTable(spring, 0.024, 0, points, 0.45);
    const auto less = balanceTable(spring, 0.024 - 100 / kRate, up.travel, points, 0.45);
    EXPECT_EQ(less.travel, up.travel); // 100 N < 2 · 55 N
    EXPECT_NEAR(less.faces, up.faces, kForce);
}

TEST(TableBalance, TheOneThatTouchesFirstCarriesTheLoad) {
    auto points = five();
    for (std::size_t i = 1; i < points.size(); ++i) {
        points[i].touchesAt = 0.2e-3 * static_cast<double>(i);
    }
    const TableSpring spring{kRate, 0, 0};
    const auto balance = balanceTable(spring, 0.010, -0.001, points, 0.45);
    EXPECT_NEAR(balance.pressures[0] * 0.002, kRate * (0.010 - balance.travel), kForce);
    for (std::size_t i = 1; i < points.size(); ++i) {
        EXPECT_EQ(balance.pressures[i], 0);
    }
}

TEST(TableBalance, MeltGivesWayByItsPowerLaw) {
    // d = p/k + s · p^(1/n), put in by hand.
    auto points = five(1e-15);
    points[2].touchesAt = 0.05e-3;
    const auto balance = balanceTable({kRate, 0, 0}, 0.020, -0.001, points, 0.45);
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double p = balance.pressures[i];
        const double d = balance.travel - points[i].touchesAt;
        EXPECT_NEAR(p / kStiff + 1e-15 * std::pow(p, 1 / 0.45), std::max(d, 0.0), 1e-12);
    }
    EXPECT_GT(balance.pressures[0], balance.pressures[2]);
}

TEST(TableBalance, ABondTakesPullAndLooseFacesDoNot) {
    auto points = five();
    EXPECT_EQ(balanceTable({kRate, 0, 0}, -0.010, 0, points, 0.45).faces, 0);
    for (TablePoint& point : points) {
        point.bonded = true;
    }
    const auto held = balanceTable({kRate, 0, 0}, -0.010, 0, points, 0.45);
    EXPECT_NEAR(held.faces, kRate * (-0.010 - held.travel), kForce);
    EXPECT_NEAR(held.travel, 0, 0.01e-3);
}

} // namespace
} // namespace seamclock
