// Control charts in words and shapes. The limits themselves are core's, held there against
// NIST/SEMATECH's worked example (tests/core/quality/control_chart_test.cpp).
#include "app/shop/chart_view.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

ShopChart chartOf(JointMeasure measure, const std::vector<double>& values) {
    ShopChart chart;
    chart.measure = measure;
    chart.joints = {"east", "person:ilva", "pe-hd", 15'000};
    chart.values = values;
    for (std::size_t i = 0; i < values.size(); ++i) {
        chart.numbers.push_back(static_cast<std::int64_t>(i) + 101);
        chart.openedUtcMs.push_back(0);
    }
    chart.limits = limitsOf(values);
    if (chart.limits) {
        chart.findings = findingsOf(values, *chart.limits);
    }
    return chart;
}

DayNames names() {
    DayNames out;
    out.benches["east"] = "A";
    out.people["person:ilva"] = "Ilva";
    return out;
}

TEST(ChartView, APointBeyondALimitHasAnotherShapeAndASentence) {
    std::vector<double> values;
    for (int i = 0; i < 24; ++i) {
        values.push_back(i % 2 == 0 ? 50 : 70);
    }
    values.push_back(150);
    const ShopChart chart = chartOf(JointMeasure::Changeover, values);
    const ChartView view = chartView(chart, values.size(), names());
    EXPECT_EQ(view.title, "Changeover time, 25 joints");
    EXPECT_EQ(view.under, "bench A · Ilva · pe-hd · 15 mm");
    EXPECT_EQ(view.shapes.back(), PointShape::Beyond);
    EXPECT_EQ(view.shapes.front(), PointShape::Dot);
    EXPECT_TRUE(view.rangeBeyond.back());
    EXPECT_TRUE(view.words.contains("Joint 125 is above the upper limit: 150.0 s."))
        << view.words.join('\n').toStdString();
    EXPECT_TRUE(view.isUrgent);
    EXPECT_EQ(chartRow(chart, names()).mark, Mark::Trouble);
}

TEST(ChartView, ARisingAlignmentIsNamedForThePlate) {
    ShopChart chart = chartOf(JointMeasure::Alignment, {50, 53, 51, 52, 53, 54, 55, 56});
    chart.plateColdOrDirty = true; // as core found it
    const ChartView view = chartView(chart, chart.values.size(), names());
    EXPECT_TRUE(view.words.front().startsWith("Alignment takes longer than it did: often a cold"));
    EXPECT_EQ(chartRow(chart, names()).third, "Rising: is the plate cold or dirty?");
    EXPECT_EQ(view.shapes[6], PointShape::Run);
    // A step up is no rise: eight above the mean, none of them higher than the one before.
    ShopChart step = chartOf(
        JointMeasure::Alignment, {50, 51, 50, 51, 50, 51, 50, 51, 56, 55, 56, 55, 56, 55, 56, 55});
    step.plateColdOrDirty = true;
    EXPECT_EQ(chartRow(step, names()).third, "Longer than it was: is the plate cold or dirty?");
}

TEST(ChartView, FewJointsAndOneAreToldAsWhatTheyAre) {
    const ChartView few = chartView(chartOf(JointMeasure::Plate, {210, 211, 210}), 3, names());
    EXPECT_TRUE(few.words.contains("Nothing stands out among these joints."));
    EXPECT_TRUE(few.words.contains("Fewer than 20 joints: the limits are provisional."));
    const ShopChart alone = chartOf(JointMeasure::Plate, {210});
    EXPECT_EQ(
        chartView(alone, 1, names()).words, QStringList{"One joint alone gives no limits yet."});
    EXPECT_EQ(chartRow(alone, names()).mark, Mark::Open);
}

TEST(ChartView, NoTimeHasALimitBelowNone) {
    const ChartView times =
        chartView(chartOf(JointMeasure::Changeover, {2, 9, 2, 9, 2}), 5, names());
    EXPECT_EQ(times.lowerText, "no lower limit");
    const ChartView drift = chartView(chartOf(JointMeasure::Drift, {2, 9, 2, 9, 2}), 5, names());
    EXPECT_TRUE(drift.lowerText.startsWith("lower limit \u2212")) << drift.lowerText.toStdString();
}

TEST(ChartView, ShowsFortyPointsAndTheirPlaceInTheWhole) {
    std::vector<double> values(100, 5);
    values[3] = 9;
    const ShopChart chart = chartOf(JointMeasure::Drift, values);
    const ChartView newest = chartView(chart, 100, names());
    EXPECT_EQ(newest.first, 60U);
    EXPECT_EQ(newest.values.size(), kShownPoints);
    EXPECT_EQ(newest.numbers.back(), 200);
    const ChartView oldest = chartView(chart, kShownPoints, names());
    EXPECT_EQ(oldest.first, 0U);
    EXPECT_EQ(oldest.shapes[3], PointShape::Beyond);
    EXPECT_EQ(oldest.count, 100U);
}

TEST(ChartView, ChartsWithNewsComeFirst) {
    const ShopChart calm = chartOf(JointMeasure::Plate, {210, 211, 210});
    ShopChart rising = calm;
    rising.plateColdOrDirty = true;
    EXPECT_EQ(chartOrder({calm, rising, calm}), (std::vector<std::size_t>{1, 0, 2}));
}

} // namespace
} // namespace seamclock
