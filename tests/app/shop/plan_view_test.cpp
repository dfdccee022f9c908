// The day's plan in words and lanes, on days that can be followed by hand.
#include "app/shop/plan_view.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::minutes;

Instant sixOClock() {
    Instant at;
    at.utc = Milliseconds{1'894'514'400'000}; // 2030-01-13T06:00:00Z
    at.bootId = "boot-1";
    return at;
}

const PlateUse kPe{"PE-HD", 210'000};

SeamTimes times() {
    SeamTimes out;
    out.preparation = minutes(5);
    out.alignment = minutes(1);
    out.soak = minutes(2);
    out.changeover = minutes(1);
    out.buildUp = minutes(1);
    out.cooling = minutes(20);
    out.release = minutes(2);
    out.plate = kPe;
    return out;
}

/// Two seams on one warm bench by one person: 10 min, 20 min, 2 min, and the same again.
JobDay day(std::size_t seams = 2) {
    JobDay out;
    out.work.benches = {{"east", kPe, {}}};
    out.work.people = {"person:ilva"};
    for (std::size_t i = 1; i <= seams; ++i) {
        const std::string label = "S" + std::to_string(i);
        out.work.seams.push_back({label, {times()}, "", {}});
        out.progress.seams.push_back({"", label, JobSeamState::Open, "", "", {}});
    }
    out.plan = planDay(out.work).value();
    return out;
}

DayNames names() {
    DayNames out;
    out.benches["east"] = "A";
    out.people["person:ilva"] = "Ilva";
    return out;
}

QStringList textsOf(const PlanView& view) {
    QStringList out;
    for (const PlanStep& step : view.steps) {
        out << step.time + " " + step.text;
    }
    return out;
}

TEST(PlanView, SaysTheEndBesideTheEarliestThatIsPossible) {
    JobDay plain = day();
    PlanView view = planView(plain, sixOClock(), names());
    EXPECT_EQ(view.finish, minutes(64));
    EXPECT_EQ(view.bound, minutes(64)); // one bench is taken so long
    EXPECT_EQ(view.title, "All are out at 7:04. It can't be earlier.");
    EXPECT_EQ(view.under, "Bench A is taken so long. Seams made: 0 of 2.");
    plain.plan.bound.atLeast = minutes(53) + Milliseconds{900};
    plain.plan.finish += Milliseconds{100};
    view = planView(plain, sixOClock(), names());
    // The end up to the minute, the bound down to it.
    EXPECT_EQ(view.title, "Earliest possible 6:53, this plan 7:05.");
    EXPECT_EQ(view.boundText, "earliest possible 6:53");
    EXPECT_EQ(view.finishText, "this plan 7:05");
}

TEST(PlanView, HasALaneForEachBenchAndEachPerson) {
    const PlanView view = planView(day(1), sixOClock(), names());
    ASSERT_EQ(view.lanes.size(), 2U);
    EXPECT_EQ(view.lanes[0].name, "Bench A");
    EXPECT_EQ(
        view.lanes[0].bars, (std::vector<PlanBar>{
                                {BarKind::Hands, "S1", "S1", minutes(0), minutes(10)},
                                {BarKind::Cooling, "S1", "S1", minutes(10), minutes(30)},
                                {BarKind::Release, "S1", "S1", minutes(30), minutes(32)}}));
    EXPECT_EQ(view.lanes[1].name, "Ilva");
    EXPECT_EQ(
        view.lanes[1].bars, (std::vector<PlanBar>{
                                {BarKind::Hands, "S1 · A", "S1", minutes(0), minutes(10)},
                                {BarKind::Release, "S1 · A", "S1", minutes(30), minutes(32)}}));
}

TEST(PlanView, AJointThatCantBeReadIsNamed) {
    JobDay plain = day(1);
    plain.unread = {
        {"weld:1", 12, "east", "event 3: not canonical"},
        {"weld:2", 13, "", "event 3: not canonical"},
        {"weld:3", 0, "", "event 1: not canonical"}};
    const QStringList texts = textsOf(planView(plain, sixOClock(), names()));
    EXPECT_TRUE(texts.contains(" Joint 12 on bench A can't be read and is not in this plan."))
        << texts.join('\n').toStdString();
    EXPECT_TRUE(texts.contains(" Joint 13 can't be read and is not in this plan."));
    EXPECT_TRUE(texts.contains(" A joint whose number can't be read is not in this plan."));
}

TEST(PlanView, ThePlateUnderAWeldThatIsPreparedSettles) {
    JobDay warming = day(1);
    DayRunning running{"S7", times(), 0, false, minutes(3)};
    warming.work.benches[0].running = running;
    warming.plan = planDay(warming.work).value();
    const PlanView view = planView(warming, sixOClock(), names());
    const auto& bars = view.lanes[0].bars;
    EXPECT_NE(
        std::find(
            bars.begin(), bars.end(), PlanBar{BarKind::WarmUp, "S7", "S7", minutes(0), minutes(3)}),
        bars.end());
    EXPECT_TRUE(textsOf(view).contains("6:00 The plate of bench A settles until 6:03."))
        << textsOf(view).join('\n').toStdString();
}

TEST(PlanView, AColdPlateAndAJointThatWaitsAreLanesOfTheirOwn) {
    JobDay cold = day(1);
    cold.work.benches[0].plate = {"", kColdPlateMc};
    cold.plan = planDay(cold.work).value();
    const PlanView view = planView(cold, sixOClock(), names());
    const auto& bars = view.lanes[0].bars;
    const auto wait = std::find_if(
        bars.begin(), bars.end(), [](const PlanBar& bar) { return bar.kind == BarKind::WarmUp; });
    ASSERT_NE(wait, bars.end());
    EXPECT_EQ(wait->to - wait->from, plateWait({"", kColdPlateMc}, kPe));
    EXPECT_TRUE(textsOf(view).front().startsWith(
        "6:00 Set the plate of bench A to 210\u00A0°C for PE-HD. It settles until "))
        << textsOf(view).front().toStdString();
    // Two benches, one pair of hands: somebody's joint waits when it has cooled.
    JobDay busy = day(3);
    busy.work.benches.push_back({"west", kPe, {}});
    for (DaySeam& seam : busy.work.seams) {
        seam.on.emplace_back(times());
        seam.on[0]->preparation = seam.on[1]->preparation = minutes(25);
    }
    busy.plan = planDay(busy.work).value();
    bool waits = false;
    for (const PlanLane& lane : planView(busy, sixOClock(), names()).lanes) {
        for (const PlanBar& bar : lane.bars) {
            waits = waits || bar.kind == BarKind::Waiting;
        }
    }
    EXPECT_TRUE(waits);
}

TEST(PlanView, SaysEachStepInASentence) {
    const QStringList texts = textsOf(planView(day(), sixOClock(), names()));
    EXPECT_EQ(
        texts, (QStringList{
                   "6:00 Ilva prepares seam S1 on bench A, and locks it by 6:10.",
                   "6:30 Ilva releases seam S1 on bench A.",
                   "6:32 Ilva prepares seam S2 on bench A, and locks it by 6:42.",
                   "7:02 Ilva releases seam S2 on bench A."}));
}

TEST(PlanView, LaysOutTheTrialJointOfASeries) {
    JobDay series = day();
    for (DaySeam& seam : series.work.seams) {
        seam.setUp = "PE-HD 10 mm";
    }
    series.plan = planDay(series.work).value();
    const PlanView view = planView(series, sixOClock(), names());
    EXPECT_EQ(
        textsOf(view), (QStringList{
                           "6:00 Ilva prepares a trial joint for S1 on bench A, and locks it by "
                           "6:10.",
                           "6:30 Ilva takes the trial joint of S1 off bench A.",
                           "6:32 The foreman tests the trial joint of S1 and releases the series "
                           "by 6:47.",
                           "6:47 Ilva prepares seam S1 on bench A, and locks it by 6:57.",
                           "7:17 Ilva releases seam S1 on bench A.",
                           "7:19 Ilva prepares seam S2 on bench A, and locks it by 7:29.",
                           "7:49 Ilva releases seam S2 on bench A.",
                           " The test of a trial joint is counted with 15 min: chosen."}));
    const auto& bars = view.lanes[0].bars;
    ASSERT_EQ(bars.size(), 10U);
    EXPECT_EQ(bars[0], (PlanBar{BarKind::Hands, "trial S1", "trial S1", minutes(0), minutes(10)}));
    EXPECT_EQ(
        bars[3], (PlanBar{BarKind::Decision, "trial S1", "trial S1", minutes(32), minutes(47)}));
    EXPECT_EQ(bars[4], (PlanBar{BarKind::Hands, "S1", "S1", minutes(47), minutes(57)}));
    EXPECT_EQ(view.lanes[1].bars[0].text, "trial S1 · A");
}

TEST(PlanView, NamesThoseWhoAloneMayWeldSoMuch) {
    JobDay some = day();
    some.plan.bound = {minutes(64), DayLimit::People, {"person:ilva"}};
    EXPECT_EQ(
        planView(some, sixOClock(), names()).under,
        "What only Ilva may weld takes so long. Seams made: 0 of 2.");
}

TEST(PlanView, NamesWhatItLeavesOut) {
    JobDay some = day(1);
    some.plan.impossible.push_back({"S5", "it is too thick"});
    SeamProgress waits{"", "S3", JobSeamState::ToDecide, "", "weld:1", {}};
    SeamJoint joint;
    joint.line.weld = "weld:1";
    joint.line.number = 12;
    waits.joints.push_back(joint);
    some.progress.seams.push_back(waits);
    some.times[{"S1", "east"}].alignment = TimeFrom::Chosen;
    const PlanView view = planView(some, sixOClock(), names());
    const QStringList texts = textsOf(view);
    EXPECT_TRUE(texts.contains(" Seam S3 waits for the foreman's word on joint 12."));
    EXPECT_TRUE(texts.contains(" Seam S5 is not planned: it is too thick."));
    EXPECT_TRUE(
        texts.contains(" Some times are chosen, not measured: fewer than five such joints."));
}

TEST(PlanView, ADayThatCantBePlannedIsNoDayWithoutWork) {
    JobDay none = day(0);
    none.plan.impossible = {{"S1", "nobody who is here has a certificate"}};
    EXPECT_EQ(
        planView(none, sixOClock(), names()).title, "One seam is open, and can't be planned.");
    none.progress.seams.push_back({"", "S3", JobSeamState::ToDecide, "", "weld:1", {}});
    EXPECT_EQ(
        planView(none, sixOClock(), names()).title, "2 seams are open, and none can be planned.");
}

TEST(PlanView, AnEmptyDayHasNothingToPaint) {
    const PlanView view = planView(day(0), sixOClock(), names());
    EXPECT_EQ(view.title, "Nothing is to weld.");
    EXPECT_TRUE(view.finishText.isEmpty());
}

TEST(PlanView, ATimeOfAnotherDayHasItsName) {
    Instant late = sixOClock();
    late.offset = minutes(60);
    EXPECT_EQ(planClock(late, minutes(5), true), "7:05");
    EXPECT_EQ(planClock(late, std::chrono::hours(20), true), "Mon 3:00"); // 2030-01-14
    EXPECT_EQ(planClock(late, Milliseconds{59'999}, false), "7:00");
    EXPECT_EQ(planClock(late, Milliseconds{1}, true), "7:01");
}

} // namespace
} // namespace seamclock
