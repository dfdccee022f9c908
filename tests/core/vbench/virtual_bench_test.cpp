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

TEST(VirtualBench, AShimSetsTheEdgeRightWhereTheTablesStand) {
    VirtualBench even = prepared(setupFor(kPe10));
    VirtualBench bench = benchFor(setupFor(kPe10));
    HandFaults faults;
    faults.leftUm = -800;
    faults.leanUm = 1'000;
    ASSERT_TRUE(SteadyHand(bench, faults).prepare());
    turned(bench, -5'000, Milliseconds(2'000));
    turned(even, -5'000, Milliseconds(2'000));
    const BenchView before = bench.view();
    EXPECT_NEAR(before.stations[0].gapMm - before.stations[4].gapMm, 0.8 * 4 / 5, 1e-9);
    EXPECT_NEAR(before.leanMm[1], 1.0, 1e-9);
    ASSERT_TRUE(bench.act(ShimSheet{1, 800, 0, 1'000}));
    const BenchView after = bench.view();
    EXPECT_NEAR(after.gapLeftMm, before.gapLeftMm, 1e-9) << "no table moved";
    EXPECT_NEAR(after.scale.reading, before.scale.reading, 1e-9);
    EXPECT_NEAR(after.leanMm[1], 0, 1e-9);
    for (const StationView& station : after.stations) {
        EXPECT_NEAR(station.gapMm, even.view().stations[0].gapMm, 1e-9);
        EXPECT_EQ(station.behindMm, 0);
    }
}

TEST(VirtualBench, AShimIsForColdEdgesOfTwoClampedSheets) {
    const BenchSetup setup = setupFor(kPe10);
    VirtualBench loose = benchFor(setup);
    EXPECT_TRUE(refused(loose.act(ShimSheet{1, 0, 0, 200})));
    VirtualBench bench = benchFor(setup);
    SteadyHand hand(bench, {});
    ASSERT_TRUE(hand.prepare());
    EXPECT_EQ(bench.act(ShimSheet{2, 0, 0, 0}).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(bench.act(ShimSheet{1, 10'001, 0, 0}).error().code, ErrorCode::OutOfRange);
    EXPECT_TRUE(refused(bench.act(ShimSheet{1, -10'000, 0, 0}))) << "out of its clamps";
    EXPECT_TRUE(bench.act(ShimSheet{1, 200, 0, 0}));
    ASSERT_TRUE(hand.align());
    EXPECT_TRUE(refused(bench.act(ShimSheet{1, 0, 0, 200}))) << "the plate is in";
    ASSERT_TRUE(hand.soak());
    ASSERT_TRUE(hand.changeOver());
    EXPECT_TRUE(refused(bench.act(ShimSheet{1, 0, 0, 200}))) << "hot";
}

TEST(VirtualBench, ASheetThatLeansDoesSoHoweverItIsClampedUntilItIsShimmed) {
    BenchSetup setup = setupFor(kPe10);
    setup.faults.leanMm = 1.5;
    HandFaults top;
    top.topBeadOnly = true;
    const auto beads = [&](bool shims) {
        VirtualBench bench = benchFor(setup);
        SteadyHand hand(bench, top);
        EXPECT_TRUE(hand.prepare());
        EXPECT_NEAR(bench.view().leanMm[1], 1.5, 1e-9);
        if (shims) {
            EXPECT_TRUE(bench.act(ShimSheet{1, 0, 0, 1'500}));
        }
        EXPECT_TRUE(hand.align());
        const StationView middle = bench.view().stations[2]; // of a view that is gone
        return std::pair(middle.beadTopMm, middle.beadBottomMm);
    };
    const auto [top1, below1] = beads(false);
    EXPECT_LT(below1, 0.5 * top1) << "the lower bead is short";
    const auto [top2, below2] = beads(true);
    EXPECT_NEAR(below2, top2, 1e-9);
    setup.faults.leanMm = 5.1;
    EXPECT_EQ(VirtualBench::set(setup).error().code, ErrorCode::OutOfRange);
}

TEST(VirtualBench, MeltStringsWhereTheBendTestCallsItOverheated) {
    const BenchSetup common = setupFor(kPe10);
    for (const double offset : {5.0, 19.0, 25.0, 35.0}) {
        BenchSetup setup = common;
        setup.faults.plateOffsetK = offset;
        VirtualBench bench = benchFor(setup);
        SteadyHand hand(bench, {});
        ASSERT_TRUE(hand.prepare());
        ASSERT_TRUE(hand.align());
        ASSERT_TRUE(hand.soak());
        EXPECT_EQ(bench.view().stations[2].threadMm, 0);
        ASSERT_TRUE(HandMoves(bench).apart(0.5));
        const double thread = bench.view().stations[2].threadMm;
        ASSERT_TRUE(HandMoves(bench).apart(1.5));
        ASSERT_TRUE(bench.act(TakePlateOut{}));
        bench.advance(Milliseconds(800));
        const double hair = bench.view().stations[2].hairMm;
        ASSERT_TRUE(HandMoves(bench).approach());
        bench.advance(Milliseconds(500));
        EXPECT_EQ(bench.view().stations[2].hairMm, 0) << "in the joint";
        const bool hot = with(bendTest(bench.view(), setup.plan), BendReason::Overheated) > 0;
        EXPECT_EQ(thread > 0, hot) << offset;
        EXPECT_EQ(hair > 0, hot) << offset;
        EXPECT_EQ(hot, offset > 20) << offset; // window to 220 °C, target 210, forgiven 10 K
    }
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
    bench.advance(std::chrono::hours(2));
    EXPECT_NEAR(bench.view().plateShownC, 20, 0.1) << "no colder than the air";
}

} // namespace
} // namespace seamclock::test
