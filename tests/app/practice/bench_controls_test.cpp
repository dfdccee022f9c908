// The six controls: what each is and does for the bench as it stands, and that what they do is
// done by a bench.
#include "app/practice/bench_controls.h"
#include "tests/support/practice_weld.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

QStringList words(const std::vector<Control>& controls) {
    QStringList all;
    for (const Control& one : controls) {
        all << one.view.text;
    }
    return all;
}

const std::vector<BenchAct>& actsOf(const Control& control) {
    static const std::vector<BenchAct> kNone;
    const auto* acts = std::get_if<DoActs>(&control.does);
    return acts == nullptr ? kNone : acts->acts;
}

TEST(BenchControls, AreSixInEveryPanelAndOfThreeWordsAtMost) {
    const VirtualBench bench = benchFor(setupFor(kPe10));
    const BenchView view = bench.view();
    for (const ControlPanel panel :
         {ControlPanel::None, ControlPanel::Clamps, ControlPanel::Plate, ControlPanel::PlateFace,
          ControlPanel::PlateTarget, ControlPanel::Gap, ControlPanel::FirstSheet,
          ControlPanel::SecondSheet, ControlPanel::Shim}) {
        const auto controls = controlsOf({view, true, panel, {}, {}});
        ASSERT_EQ(controls.size(), 6U);
        for (const Control& one : controls) {
            EXPECT_LE(one.view.text.split(' ').size(), 3) << one.view.text.toStdString();
        }
        if (panel != ControlPanel::None) {
            EXPECT_EQ(controls.back().view.text, "Close");
            EXPECT_TRUE(std::holds_alternative<ShowPanel>(controls.back().does));
        }
    }
}

TEST(BenchControls, HaveTheDesignsOrder) {
    const VirtualBench bench = benchFor(setupFor(kPe10));
    const BenchView view = bench.view();
    EXPECT_EQ(
        words(controlsOf({view, true, ControlPanel::None, {}, {}})),
        (QStringList{"Wheel +", "Wheel −", "Lock", "Clamps", "Plate", "Take back"}));
}

TEST(BenchControls, UnlockPutsAHandOnTheWheelFirst) {
    VirtualBench bench = benchFor(setupFor(kPe10));
    SteadyHand hand(bench, {});
    ASSERT_TRUE(hand.prepare());
    ASSERT_TRUE(bench.act(LockWheel{}));
    const BenchView view = bench.view();
    const auto controls = controlsOf({view, false, ControlPanel::None, {}, {}});
    EXPECT_TRUE(controls[2].view.on);
    EXPECT_FALSE(controls[0].view.enabled) << "a locked wheel can't be turned";
    for (const BenchAct& act : actsOf(controls[2])) {
        ASSERT_TRUE(bench.act(act));
    }
    bench.advance(Milliseconds(3'000));
    EXPECT_EQ(bench.view().wheel, WheelHold::Held) << "it does not run back";
}

TEST(BenchControls, PlateGoesOutWithOnePressAndInWithOneOnceTheWeldHasBegun) {
    VirtualBench bench = benchFor(setupFor(kPe10));
    SteadyHand hand(bench, {});
    ASSERT_TRUE(hand.prepare());
    BenchView view = bench.view();
    EXPECT_TRUE(std::holds_alternative<ShowPanel>(
        controlsOf({view, true, ControlPanel::None, {}, {}})[4].does));
    EXPECT_EQ(
        actsOf(controlsOf({view, false, ControlPanel::None, {}, {}})[4]),
        (std::vector<BenchAct>{BringPlateIn{}}));
    ASSERT_TRUE(hand.align());
    view = bench.view();
    for (const bool preparing : {true, false}) {
        EXPECT_EQ(
            actsOf(controlsOf({view, preparing, ControlPanel::None, {}, {}})[4]),
            (std::vector<BenchAct>{TakePlateOut{}}));
    }
}

TEST(BenchControls, PlateIsSetHotterAndColderAndComesThereInItsTime) {
    VirtualBench bench = benchFor(setupFor(kPe10));
    BenchView view = bench.view();
    const double planned = view.plateTargetC;
    EXPECT_EQ(
        words(controlsOf({view, true, ControlPanel::Plate, {}, {}})),
        (QStringList{"Wipe plate", "Read plate", "Set plate", "", "Plate in", "Close"}));
    const auto set = controlsOf({view, true, ControlPanel::PlateTarget, {}, {}});
    EXPECT_EQ(words(set), (QStringList{"+5 °C", "+1 °C", "−1 °C", "−5 °C", "", "Close"}));
    for (const std::size_t press : {0U, 1U}) {
        view = bench.view();
        const auto now = controlsOf({view, true, ControlPanel::PlateTarget, {}, {}});
        for (const BenchAct& act : actsOf(now[press])) {
            ASSERT_TRUE(bench.act(act));
        }
    }
    EXPECT_DOUBLE_EQ(bench.view().plateTargetC, planned + 6);
    EXPECT_NEAR(bench.view().plateShownC, planned, 0.1) << "a plate takes its time";
    bench.advance(std::chrono::minutes(40));
    EXPECT_NEAR(bench.view().plateShownC, planned + 6, 0.1);
    EXPECT_NEAR(bench.view().stations[2].plateC, planned + 6, 0.1);
}

TEST(BenchControls, PlateIsSetNoHotterThanABenchTakesIt) {
    VirtualBench bench = benchFor(setupFor(kPe10));
    ASSERT_TRUE(bench.act(SetPlate{act_limits::kHottestMc - 1'000}));
    BenchView view = bench.view();
    auto set = controlsOf({view, true, ControlPanel::PlateTarget, {}, {}});
    EXPECT_FALSE(set[0].view.enabled);
    EXPECT_TRUE(set[1].view.enabled);
    ASSERT_TRUE(bench.act(SetPlate{1'000}));
    view = bench.view();
    set = controlsOf({view, true, ControlPanel::PlateTarget, {}, {}});
    EXPECT_TRUE(set[2].view.enabled);
    EXPECT_FALSE(set[3].view.enabled);
}

TEST(BenchControls, ClampsPanelIsForPreparingUntilBothSheetsAreInAndThenForRelease) {
    VirtualBench bench = benchFor(setupFor(kPe10));
    BenchView view = bench.view();
    EXPECT_EQ(
        words(controlsOf({view, true, ControlPanel::Clamps, {}, {}})),
        (QStringList{
            "Film off", "Plane edges", "Set gap", "First sheet", "Second sheet", "Close"}));
    ASSERT_TRUE(bench.act(SetGap{8'000, 8'000}));
    ASSERT_TRUE(bench.act(ClampSheet{0, 0, 0, 0}));
    view = bench.view();
    const auto one = controlsOf({view, true, ControlPanel::Clamps, {}, {}});
    EXPECT_EQ(one[3].view.text, "Open bars");
    EXPECT_EQ(actsOf(one[0]), (std::vector<BenchAct>{TakeFilmOff{1}})) << "the other is clamped";
    ASSERT_TRUE(bench.act(SetGap{16'000, 16'000}));
    ASSERT_TRUE(bench.act(ClampSheet{1, 0, 0, 0}));
    view = bench.view();
    EXPECT_EQ(
        words(controlsOf({view, true, ControlPanel::Clamps, {}, {}})),
        (QStringList{"Ease clamps", "Open bars", "Spring off", "Lift sheet", "Shim", "Close"}));
}

TEST(BenchControls, ShimSetsOneEndAndTheLowerSideOfTheSecondSheet) {
    VirtualBench bench = benchFor(setupFor(kPe10));
    HandFaults faults;
    faults.leftUm = -400;
    faults.leanUm = 600;
    SteadyHand hand(bench, faults);
    ASSERT_TRUE(hand.prepare());
    BenchView view = bench.view();
    auto controls = controlsOf({view, true, ControlPanel::Shim, {}, {}});
    EXPECT_EQ(
        words(controls), (QStringList{"Front +", "Front −", "Below +", "Below −", "", "Close"}));
    EXPECT_EQ(controls[0].view.under, "−0.4 mm");
    EXPECT_EQ(controls[2].view.under, "−0.6 mm");
    EXPECT_EQ(actsOf(controls[0]), (std::vector<BenchAct>{ShimSheet{1, 200, 0, 0}}));
    for (const std::size_t press : {0U, 0U, 2U, 2U, 2U}) {
        for (const BenchAct& act : actsOf(controls[press])) {
            ASSERT_TRUE(bench.act(act));
        }
    }
    view = bench.view();
    controls = controlsOf({view, true, ControlPanel::Shim, {}, {}});
    EXPECT_EQ(controls[0].view.under, "0.0 mm");
    EXPECT_EQ(controls[2].view.under, "0.0 mm");
    // Once the sheets are joined there is nothing to shim.
    ASSERT_TRUE(hand.align());
    ASSERT_TRUE(hand.soak());
    ASSERT_TRUE(hand.changeOver());
    view = bench.view();
    EXPECT_EQ(words(controlsOf({view, false, ControlPanel::Clamps, {}, {}}))[4], "");
}

TEST(BenchControls, SheetIsClampedAsItIsHeld) {
    const VirtualBench bench = benchFor(setupFor(kPe10));
    const BenchView view = bench.view();
    const auto controls = controlsOf({view, true, ControlPanel::SecondSheet, Push{400, -200}, {}});
    EXPECT_EQ(actsOf(controls[4]), (std::vector<BenchAct>{ClampSheet{1, 400, -200, 0}}));
    EXPECT_EQ(controls[0].view.under, "+0.4 mm");
    EXPECT_EQ(controls[2].view.under, "−0.2 mm");
}

TEST(BenchControls, AHandIsNotEvenAtFirstAndTheSameForTheSameSeed) {
    for (std::uint64_t seed = 1; seed < 40; ++seed) {
        const Push gap = firstGap(8'000, seed);
        EXPECT_EQ(gap, firstGap(8'000, seed));
        EXPECT_NE(gap.frontUm, gap.backUm);
        EXPECT_LE(std::abs(gap.frontUm - 8'000), 1'500);
        EXPECT_LE(std::abs(gap.backUm - 8'000), 1'500);
        EXPECT_EQ(gap.backUm % 500, 0) << "in the panel's own steps";
        const Push push = firstPush(1, seed);
        EXPECT_EQ(push, firstPush(1, seed));
        EXPECT_NE(push.frontUm, push.backUm);
        EXPECT_GE(std::min(push.frontUm, push.backUm), -600);
        EXPECT_EQ(std::max(push.frontUm, push.backUm), 0);
    }
}

TEST(BenchControls, TakeBackIsTheOperatorsOwnSlot) {
    const VirtualBench bench = benchFor(setupFor(kPe10));
    const BenchView view = bench.view();
    SlotView back;
    back.look = SlotView::Look::Gone;
    EXPECT_FALSE(controlsOf({view, true, ControlPanel::None, {}, back})[5].view.enabled);
    back.look = SlotView::Look::Plain;
    back.under = "for 9 s";
    const Control there = controlsOf({view, true, ControlPanel::None, {}, back})[5];
    EXPECT_TRUE(there.view.enabled);
    EXPECT_EQ(there.view.under, "for 9 s");
    EXPECT_TRUE(std::holds_alternative<PressBack>(there.does));
}

} // namespace
} // namespace seamclock::test
