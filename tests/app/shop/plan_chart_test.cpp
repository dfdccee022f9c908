// The chart of the day's plan, looked at: what a stretch is can be told in grey, the line of now
// moves, and a tap asks for a new plan.
#include "app/shop/plan_chart.h"

#include <QImage>
#include <QSignalSpy>
#include <QTest>
#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <map>

namespace seamclock {
namespace {

using std::chrono::minutes;

PlanView viewOf(const std::vector<PlanBar>& bars) {
    PlanView view;
    view.finish = minutes(100);
    view.bound = minutes(90);
    view.finishText = "this plan 7:40";
    view.boundText = "earliest possible 7:30";
    view.lanes = {{"Bench A", bars}};
    return view;
}

QImage painted(PlanChart& chart) {
    QImage image(chart.size(), QImage::Format_RGB32);
    chart.render(&image);
    return image.convertToFormat(QImage::Format_Grayscale8);
}

/// How light a stretch's field is, and how often its rows and columns change: what a pattern is
/// without its colour.
std::array<double, 3> looksLike(BarKind kind, ThemeKind theme) {
    PlanChart chart;
    chart.setLook(Theme::of(theme), Metrics::forDpi(kUnitsPerInch));
    chart.resize(1200, 300);
    const PlanBar bar{kind, "", "", minutes(10), minutes(80)};
    chart.show(viewOf({bar}));
    const QImage image = painted(chart);
    const QRect box = chart.boxOf(0, bar).toRect();
    const QRect field(box.center() - QPoint(48, 6), QSize(96, 12)); // within its frame
    double sum = 0;
    double across = 0;
    double down = 0;
    for (int y = field.top(); y < field.bottom(); ++y) {
        for (int x = field.left(); x < field.right(); ++x) {
            const int here = qGray(image.pixel(x, y));
            sum += here;
            across += std::abs(here - qGray(image.pixel(x + 1, y))) > 25 ? 1 : 0;
            down += std::abs(here - qGray(image.pixel(x, y + 1))) > 25 ? 1 : 0;
        }
    }
    const double area = static_cast<double>(field.width()) * field.height();
    return {sum / area / 255, across / area, down / area};
}

// Chosen: a twentieth of the pixels, or of the way from black to white, is seen at a glance.
constexpr double kSeen = 0.05;

class PlanChartLooks : public testing::TestWithParam<ThemeKind> {};

TEST_P(PlanChartLooks, StretchesAreToldApartWithoutColour) {
    const std::array kinds{BarKind::Hands,   BarKind::Cooling, BarKind::WarmUp,
                           BarKind::Waiting, BarKind::Release, BarKind::Decision};
    std::map<BarKind, std::array<double, 3>> looks;
    for (const BarKind kind : kinds) {
        looks[kind] = looksLike(kind, GetParam());
    }
    for (const auto& [one, a] : looks) {
        for (const auto& [other, b] : looks) {
            if (one < other) {
                const double apart =
                    std::max({std::abs(a[0] - b[0]), std::abs(a[1] - b[1]), std::abs(a[2] - b[2])});
                EXPECT_GE(apart, kSeen)
                    << barWord(one).toStdString() << " and " << barWord(other).toStdString();
            }
        }
    }
}

std::string themeName(const testing::TestParamInfo<ThemeKind>& info) {
    switch (info.param) {
    case ThemeKind::Dark:
        return "Dark";
    case ThemeKind::Light:
        return "Light";
    case ThemeKind::Contrast:
        break;
    }
    return "Contrast";
}

INSTANTIATE_TEST_SUITE_P(
    Themes, PlanChartLooks, testing::Values(ThemeKind::Dark, ThemeKind::Light, ThemeKind::Contrast),
    themeName);

TEST(PlanChart, TheLineOfNowMovesByItself) {
    PlanChart chart;
    chart.setLook(Theme::of(ThemeKind::Dark), Metrics::forDpi(kUnitsPerInch));
    chart.resize(1200, 300);
    chart.show(viewOf({{BarKind::Hands, "S1", "S1", minutes(0), minutes(50)}}));
    chart.setNow(minutes(10));
    const QImage before = painted(chart);
    chart.setNow(minutes(40));
    const QImage after = painted(chart);
    const auto differs = [&](Milliseconds at) {
        const int x = qRound(chart.placeOf(at));
        int count = 0;
        for (int y = 60; y < 220; ++y) {
            count += before.pixel(x, y) != after.pixel(x, y) ? 1 : 0;
        }
        return count > 50;
    };
    EXPECT_TRUE(differs(minutes(10)));
    EXPECT_TRUE(differs(minutes(40)));
    EXPECT_FALSE(differs(minutes(25)));
    EXPECT_LT(chart.placeOf(minutes(10)), chart.placeOf(minutes(40)));
}

TEST(PlanChart, ATapAsksForANewPlan) {
    PlanChart chart;
    chart.setLook(Theme::of(ThemeKind::Dark), Metrics::forDpi(kUnitsPerInch));
    chart.resize(1200, 300);
    chart.show(viewOf({}));
    QSignalSpy pressed(&chart, &PlanChart::pressed);
    QTest::mousePress(&chart, Qt::LeftButton, {}, QPoint(400, 100));
    EXPECT_EQ(pressed.count(), 1);
}

} // namespace
} // namespace seamclock
