// The plate against its own exponentials; the numbers are core/vbench/bench_numbers.h's.
#include "core/vbench/bench_numbers.h"
#include "core/vbench/virtual_plate.h"

#include <cmath>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(VirtualPlate, WarmsUpByItsExponential) {
    PlateSetup setup;
    setup.startC = 20;
    VirtualPlate once(setup, 5);
    VirtualPlate often(setup, 5);
    once.warm(600);
    for (int i = 0; i < 6000; ++i) {
        often.warm(0.1);
    }
    // First order: target − (target − start) · exp(−t/τ).
    const double told = 210 - 190 * std::exp(-600 / bench_numbers::kPlateWarmS);
    EXPECT_NEAR(once.shownC(), told, 1e-9);
    EXPECT_NEAR(often.shownC(), told, 1e-6); // rounding, 6,000 times
    EXPECT_NEAR(once.faceC(2), told, 1e-9);
}

TEST(VirtualPlate, WhatTheSheetsTookIsMissingThereAndComesBack) {
    VirtualPlate plate(PlateSetup{}, 5);
    plate.give(1, 10 * bench_numbers::kPlateHeat);
    EXPECT_NEAR(plate.faceC(1), 200, 1e-9); // heat over heat capacity: 10 K
    EXPECT_NEAR(plate.faceC(0), 210, 1e-9);
    plate.warm(bench_numbers::kPlateRecoverS);
    EXPECT_NEAR(plate.faceC(1), 210 - 10 * std::exp(-1), 1e-9);
    EXPECT_NEAR(plate.shownC(), 210, 1e-9); // its display knows nothing of it
}

TEST(VirtualPlate, OffsetAndColdSpotShowOnTheFacesOnly) {
    PlateSetup setup;
    setup.offsetK = -15;
    setup.coldK = 20;
    setup.coldAt = 0.5;
    setup.coldWidth = 0.1;
    const VirtualPlate plate(setup, 5);
    EXPECT_NEAR(plate.shownC(), 210, 1e-9);
    EXPECT_NEAR(plate.faceC(0), 195, 0.01); // four widths from the spot: exp(−16)
    EXPECT_NEAR(plate.faceC(2), 175, 1e-9);
    PlateSetup cold = setup;
    cold.startC = cold.ambientC;
    EXPECT_NEAR(VirtualPlate(cold, 5).faceC(2), 20, 1e-9); // a cold plate has no cold spot
}

} // namespace
} // namespace seamclock
