// The bench as a thing: springs, order of acts, steps of time.
#include "core/vbench/bench_numbers.h"
#include "tests/support/practice_weld.h"

#include <cmath>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

/// Edges clamped and together, nothing pressed.
VirtualBench prepared(const BenchSetup& setup) {
    VirtualBench bench = benchFor(setup);
    EXPECT_TRUE(SteadyHand(bench, {}).prepare());
    return bench;
}

void turned(VirtualBench& bench, std::int64_t umPerS, Milliseconds gap) {
    ASSERT_TRUE(bench.act(TurnWheel{umPerS}));
    bench.advance(gap);
    ASSERT_TRUE(bench.act(TurnWheel{0}));
}

bool refused(const Result<void>& done) {
    return !done && done.error().code == ErrorCode::Refused && !done.error().detail.empty();
}

TEST(VirtualBench, TheScaleShowsHookesForceAndTheFacesTheirShareOfIt) {
    PracticeWeld weld = kPe10;
    weld.dragN = 30;
    weld.bench = "west"; // two springs, 143.8 N/mm; zero at 2 mm; preload 40 N
    VirtualBench bench = prepared(setupFor(weld));
    turned(bench, 4000, Milliseconds(3000));
    const BenchView view = bench.view();
    // reading = zero + (F + drag + preload) / rate (contracts: "Reading and force")
    EXPECT_NEAR(view.scale.springN, (view.scale.reading - 2) * 143.8, 1e-6);
    EXPECT_NEAR(view.scale.facesN, view.scale.springN - 40 - 30, 1e-6);
    double faces = 0;
    for (const StationView& station : view.stations) {
        faces += station.pressurePa * 0.010 * 1.0 / 5;
    }
    EXPECT_NEAR(faces, view.scale.springN - 40 - view.scale.frictionN, 1e-6);
    EXPECT_NEAR(
        view.scale.storedJ, view.scale.springN * view.scale.springN / 2 / 143.8e3, 1e-9); // F²/2c
    EXPECT_NEAR(view.scale.reading, 14, 0.5);  // 12 mm turned, cold edges hardly give
    EXPECT_EQ(view.scale.seenMilli % 1000, 0); // a division is 1 mm
    EXPECT_NEAR(static_cast<double>(view.scale.seenMilli) / 1e3, view.scale.reading, 0.5 + 1e-9);
}

TEST(VirtualBench, UnlockedTheReadingFallsAndLockedItStays) {
    VirtualBench bench = prepared(setupFor(kPe10));
    turned(bench, 4000, Milliseconds(3000));
    ASSERT_TRUE(bench.act(LockWheel{}));
    const double locked = bench.view().scale.reading;
    bench.advance(Milliseconds(60'000));
    EXPECT_NEAR(bench.view().scale.reading, locked, 0.1); // cold edges creep a little
    EXPECT_TRUE(refused(bench.act(TurnWheel{1000})));
    ASSERT_TRUE(bench.act(UnlockWheel{}));
    bench.advance(Milliseconds(2000));
    EXPECT_LT(bench.view().scale.reading, locked / 4);
    EXPECT_EQ(bench.view().wheel, WheelHold::Loose);
}

TEST(VirtualBench, TheScaleEndsWhereItEnds) {
    VirtualBench bench = prepared(setupFor(kPe10));
    turned(bench, 40'000, Milliseconds(3000));
    const BenchView view = bench.view();
    EXPECT_LE(view.scale.reading, 48 + 1e-6); // the east bench's end
    ASSERT_EQ(view.mishaps.size(), 1U);
    EXPECT_EQ(view.mishaps[0].kind, MishapKind::ScaleEnd);
}

TEST(VirtualBench, WhatCanNotBeDoneIsRefusedAndChangesNothing) {
    const BenchSetup setup = setupFor(kPe10);
    VirtualBench bench = benchFor(setup);
    EXPECT_TRUE(refused(bench.act(ClampSheet{0, 0, 0, 0}))); // no gap yet
    EXPECT_TRUE(refused(bench.act(TakePlateOut{})));
    EXPECT_TRUE(refused(bench.act(UnlockWheel{})));
    EXPECT_TRUE(refused(bench.act(OpenBars{})));
    EXPECT_TRUE(refused(bench.act(LiftSheet{})));
    EXPECT_EQ(bench.act(SetGap{-1, 0}).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(bench.act(TurnWheel{41'000}).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(bench.act(TakeFilmOff{2}).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(bench.act(SetPlate{300'001}).error().code, ErrorCode::OutOfRange);

    VirtualBench other = prepared(setup);
    EXPECT_TRUE(refused(other.act(BringPlateIn{}))); // no room
    EXPECT_TRUE(refused(other.act(PlaneEdge{0})));
    EXPECT_TRUE(refused(other.act(SetGap{10'000, 10'000})));
    VirtualBench plain = other;
    other.advance(Milliseconds(15));
    plain.advance(Milliseconds(15));
    EXPECT_TRUE(refused(other.act(LiftSheet{})));
    other.advance(Milliseconds(1000));
    plain.advance(Milliseconds(1000));
    EXPECT_EQ(other.view(), plain.view());
}

TEST(VirtualBench, BadSetUpsAreRefusedWithValueAndRange) {
    BenchSetup setup = setupFor(kPe10);
    setup.stations = 2;
    auto bench = VirtualBench::set(setup);
    ASSERT_FALSE(bench);
    EXPECT_EQ(bench.error().detail, "the number of stations is 2.00; allowed: 3.00 to 7.00");
    setup.stations = 5;
    setup.faults.draught = std::nan("");
    EXPECT_EQ(VirtualBench::set(setup).error().code, ErrorCode::OutOfRange);
    setup.faults.draught = 1;
    setup.plan.scale.reset();
    EXPECT_EQ(VirtualBench::set(setup).error().code, ErrorCode::Missing);
}

TEST(VirtualBench, EdgesThatDoNotMeetShowAGap) {
    // As "edges meet" is checked: tables together, cold. 0.5 mm short at the right end.
    VirtualBench bench = benchFor(setupFor(kPe10));
    HandFaults faults;
    faults.rightUm = -500;
    ASSERT_TRUE(SteadyHand(bench, faults).prepare());
    const BenchView view = bench.view();
    for (std::size_t i = 0; i < 5; ++i) { // a line, from the first station's middle on
        EXPECT_NEAR(view.stations[i].gapMm - view.stations[0].gapMm, 0.1 * double(i), 1e-6);
    }
    // Loose again and clamped anew, it is even.
    ASSERT_TRUE(bench.act(OpenBars{}));
    ASSERT_TRUE(bench.act(SetGap{10'000, 10'000}));
    ASSERT_TRUE(bench.act(ClampSheet{0, 0, 0, 0}));
    ASSERT_TRUE(bench.act(SetGap{20'000, 20'000}));
    ASSERT_TRUE(bench.act(ClampSheet{1, 0, 0, 0}));
    EXPECT_NEAR(bench.view().stations[4].gapMm, 0, 1e-6);
}

TEST(VirtualBench, AGapThatIsNotParallelIsTheSameFault) {
    const BenchSetup setup = setupFor(kPe10);
    VirtualBench bench = benchFor(setup);
    ASSERT_TRUE(bench.act(PlaneEdge{0}));
    ASSERT_TRUE(bench.act(PlaneEdge{1}));
    ASSERT_TRUE(bench.act(SetGap{10'000, 10'000}));
    ASSERT_TRUE(bench.act(ClampSheet{0, 0, 0, 0}));
    ASSERT_TRUE(bench.act(SetGap{20'000, 19'000}));
    ASSERT_TRUE(bench.act(ClampSheet{1, 0, 0, 0}));
    const BenchView view = bench.view();
    EXPECT_NEAR(view.stations[4].gapMm - view.stations[0].gapMm, 0.8, 1e-6);
}

/// On the plate, turning, stopped, and a minute later; asked in frames of that length.
BenchView inFrames(Milliseconds frame) {
    VirtualBench bench = prepared(setupFor(kPe10));
    const auto wait = [&](Milliseconds gap) {
        for (Milliseconds left = gap; left.count() > 0; left -= frame) {
            bench.advance(std::min(frame, left));
        }
    };
    EXPECT_TRUE(bench.act(TurnWheel{-20'000}));
    wait(Milliseconds(1000));
    EXPECT_TRUE(bench.act(TurnWheel{0}));
    EXPECT_TRUE(bench.act(BringPlateIn{}));
    wait(Milliseconds(1000));
    EXPECT_TRUE(bench.act(TurnWheel{10'000}));
    wait(Milliseconds(3000));
    EXPECT_TRUE(bench.act(LockWheel{}));
    wait(Milliseconds(60'000));
    return bench.view();
}

TEST(VirtualBench, FramesOfAnyLengthGiveTheSameToTheLastBit) {
    const BenchView fine = inFrames(Milliseconds(16));
    EXPECT_GT(fine.stations[2].beadTopMm, 0.5);
    EXPECT_EQ(fine, inFrames(Milliseconds(250)));
    EXPECT_EQ(fine, inFrames(Milliseconds(7919)));
}

TEST(VirtualBench, WhatIsSeenBetweenStepsGoesEvenly) {
    VirtualBench bench = prepared(setupFor(kPe10));
    ASSERT_TRUE(bench.act(TurnWheel{8000}));
    double before = bench.view().scale.reading;
    for (int frame = 0; frame < 60; ++frame) {
        bench.advance(Milliseconds(16));
        const double now = bench.view().scale.reading;
        EXPECT_GE(now, before);
        EXPECT_LT(now - before, 3 * 8.0 * 0.016); // a third of a step ahead at most
        before = now;
    }
}

TEST(VirtualBench, AColdPlateIsNotReadyAtOnce) {
    BenchSetup setup = setupFor(kPe10);
    setup.plateWarm = false;
    VirtualBench bench = benchFor(setup);
    EXPECT_NEAR(bench.view().plateShownC, 20, 1e-9);
    bench.advance(Milliseconds(420'000));
    EXPECT_NEAR(
        bench.view().plateShownC, 210 - 190 * std::exp(-1), 0.1); // it is warmed on in steps
    ASSERT_TRUE(bench.act(SetPlate{0}));
    bench.advance(Milliseconds(60'000));
    EXPECT_LT(bench.view().plateShownC, 130);
}

} // namespace
} // namespace seamclock::test
