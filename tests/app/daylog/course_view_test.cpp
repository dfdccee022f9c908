#include "app/daylog/course_panel.h"
#include "app/daylog/course_view.h"

#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::seconds;

/// A weld like the good one, but that its changeover takes so long; the limit is 6.4 s.
test::Story withChangeover(Milliseconds took) {
    test::Story story;
    story.soak();
    story.wait(took);
    story.then(FacesMet{});
    story.wait(Milliseconds(6'500));
    story.then(ReadingTaken{ReadingPhase::Joining, 15'500});
    story.then(PressureLocked{});
    return story;
}

/// A weld plane that cools evenly over what that weld took, as no sheet does.
HeatEstimate inventedHeat(double align, double soak, double change, double build, double cool) {
    HeatEstimate out;
    out.course.alignSeconds = align;
    out.course.soak = soak;
    out.course.changeover = change;
    out.course.buildUp = build;
    out.course.cooling = cool;
    const double whole = align + soak + change + build + cool;
    for (double t = 0; t <= whole; t += 0.5) {
        HeatPoint point{};
        point.seconds = t;
        point.faceC = 200 - 150 * t / whole;
        out.curve.push_back(point);
    }
    out.numbers.skinEndOfSoakC = HeatRange{195, 200, 206};
    out.numbers.skinFacesMeetC = HeatRange{150, 158, 166};
    out.numbers.weldPlaneAtReleaseC = HeatRange{40, 44, 49};
    return out;
}

TEST(CourseView, EachPhaseHasATimeScaleOfItsOwnInWhichThePlanIsOne) {
    test::Story story = withChangeover(Milliseconds(11'200));
    const CourseView view = courseView(record(story.weld()), nullptr);
    ASSERT_EQ(view.phases.size(), 5U);
    const CourseView::Phase& change = view.phases[2];
    EXPECT_EQ(change.name, "changeover");
    EXPECT_EQ(change.plan, "6.4 s");
    EXPECT_EQ(change.done, "11.2 s");
    EXPECT_DOUBLE_EQ(change.share, 11'200.0 / 6'400);
    EXPECT_DOUBLE_EQ(change.limit.value_or(0), 1);
    EXPECT_EQ(change.grade, Grade::Out);
    EXPECT_EQ(view.phases[1].plan, "1:20");
    EXPECT_DOUBLE_EQ(view.phases[1].share, 82.0 / 80) << "the story soaks 82 s";
    EXPECT_DOUBLE_EQ(view.phases[1].limit.value_or(0), 1.1);
    EXPECT_EQ(view.phases[1].grade, std::nullopt);
}

TEST(CourseView, TheBeadEndsAlignmentAndNoTimeDoes) {
    test::Story story;
    story.align();
    const CourseView view = courseView(record(story.weld()), nullptr);
    EXPECT_EQ(view.phases[0].plan, "by bead");
    EXPECT_FALSE(view.phases[0].timed);
    EXPECT_DOUBLE_EQ(view.phases[0].share, 1);
    EXPECT_TRUE(view.phases[1].done.isEmpty()) << "it is not over";
    EXPECT_TRUE(view.phases[2].done.isEmpty()) << "nor begun";
}

TEST(CourseView, ATimeWithinTwoTapsErrorIsARemarkAndNotOut) {
    test::Story story = withChangeover(Milliseconds(6'700));
    EXPECT_EQ(courseView(record(story.weld()), nullptr).phases[2].grade, Grade::Remark);
}

TEST(CourseView, ReadingsStandWhereAndWhenTheyWereTaken) {
    test::Story story;
    story.cool();
    const WeldRecord made = record(story.weld());
    const CourseView view = courseView(made, nullptr);
    EXPECT_EQ(view.scaleUnit, "mm");
    EXPECT_DOUBLE_EQ(view.scaleTop, 16.9);
    ASSERT_TRUE(view.phases[4].band.has_value());
    EXPECT_DOUBLE_EQ(view.phases[4].band->low, 14.6);
    std::size_t readings = 0;
    for (const CourseView::Phase& phase : view.phases) {
        for (const CourseView::Reading& reading : phase.readings) {
            ++readings;
            EXPECT_FALSE(reading.out) << "event " << reading.n;
            const auto& event = made.events.at(static_cast<std::size_t>(reading.n - 1));
            EXPECT_DOUBLE_EQ(
                reading.value,
                static_cast<double>(std::get<ReadingTaken>(event.d).readingMilli) / 1000);
            EXPECT_LE(reading.at, phase.length());
        }
    }
    EXPECT_EQ(readings, made.readings.size());
    EXPECT_EQ(view.phases[4].readings.size(), 2U) << "the two re-checks";
}

TEST(CourseView, AReadingOutsideItsBandIsMarked) {
    test::Story story;
    story.changeOver();
    story.wait(Milliseconds(6'500));
    story.then(ReadingTaken{ReadingPhase::Joining, 12'000});
    const CourseView view = courseView(record(story.weld()), nullptr);
    ASSERT_EQ(view.phases[3].readings.size(), 1U);
    EXPECT_TRUE(view.phases[3].readings.front().out);
}

TEST(CourseView, SignalsAndRemarksStandAtTheirInstants) {
    test::Story story;
    story.align();
    story.wait(seconds(20));
    story.then(RemarkMade{"the door stood open"});
    story.wait(seconds(63));
    story.then(PlateOut{});
    const CourseView view = courseView(record(story.weld()), nullptr);
    const auto& happenings = view.phases[1].happenings;
    const auto count = [&](Sign sign) {
        return std::count_if(happenings.begin(), happenings.end(), [&](const auto& one) {
            return one.sign == sign;
        });
    };
    ASSERT_EQ(count(Sign::Remark), 1);
    for (const auto& one : happenings) {
        if (one.sign == Sign::Remark) {
            EXPECT_DOUBLE_EQ(one.at, 20.0 / 80) << "20 of the 80 s of soak";
        }
    }
    EXPECT_GE(count(Sign::Sound), 2) << "get ready, and act now";
    EXPECT_TRUE(
        std::is_sorted(happenings.begin(), happenings.end(), [](const auto& a, const auto& b) {
            return a.at < b.at;
        }));
    const QString spoken = spokenCourse(view);
    EXPECT_TRUE(spoken.contains(QString("signals: %1").arg(count(Sign::Sound))))
        << spoken.toStdString();
    EXPECT_TRUE(spoken.contains("remarks: 1"));
}

TEST(CourseView, SignsStandAsideOfEachOtherAndNoneIsLeftOut) {
    using Places = std::vector<double>;
    EXPECT_EQ(spreadOut({}, 10, 0, 100), Places{});
    EXPECT_EQ(spreadOut({20, 60}, 10, 0, 100), (Places{20, 60}));
    EXPECT_EQ(spreadOut({20, 22, 24}, 10, 0, 100), (Places{20, 30, 40}));
    EXPECT_EQ(spreadOut({-5, 95, 97}, 10, 0, 100), (Places{0, 80, 90}));
    EXPECT_EQ(spreadOut({5, 5, 5}, 10, 0, 20), (Places{0, 5, 10})) << "closer where it is full";
    EXPECT_EQ(spreadOut({7}, 10, 0, 5), (Places{0})) << "narrower than a sign";
}

TEST(CourseView, TheWeldPlaneIsDrawnOnlyOfAJointThatHasEnded) {
    test::Story story;
    story.inspect();
    const HeatEstimate heat = inventedHeat(50, 80, 5, 6.5, 690);
    EXPECT_FALSE(courseView(record(story.weld()), &heat).estimated)
        << "a temperature would argue for an early release";
    story.then(closing(story.weld()));
    EXPECT_TRUE(courseView(record(story.weld()), &heat).estimated);
    EXPECT_FALSE(courseView(record(story.weld()), nullptr).estimated);
}

TEST(CourseView, TheSpreadIsTheEstimatesOwnWhereItWasWorkedOut) {
    test::Story story;
    story.close();
    const WeldRecord made = record(story.weld());
    const auto took = [&](std::size_t i) {
        return static_cast<double>(made.phases.at(i).took->lo.count()) / 1000;
    };
    const HeatEstimate heat = inventedHeat(took(0), took(1), took(2), took(3), took(4));
    const CourseView view = courseView(made, &heat);
    const CourseView::Point& release = view.phases[4].plane.back();
    EXPECT_NEAR(release.likely - release.low, 4, 1e-9);
    EXPECT_NEAR(release.high - release.likely, 5, 1e-9);
    EXPECT_NEAR(release.at, view.phases[4].share, 0.01);
    const CourseView::Point& met = view.phases[2].plane.back();
    // The curve has a point each half second, so that the last in a phase may lie before its end.
    EXPECT_NEAR(met.likely - met.low, 8, 0.5);
    EXPECT_EQ(view.phases[2].figure, "158 °C");
    EXPECT_EQ(view.releaseFigure, "44");
    for (const CourseView::Phase& phase : view.phases) {
        ASSERT_GE(phase.plane.size(), 2U) << phase.name.toStdString();
        EXPECT_LE(phase.plane.size(), 82U) << phase.name.toStdString();
        for (std::size_t i = 1; i < phase.plane.size(); ++i) {
            EXPECT_GT(phase.plane[i].at, phase.plane[i - 1].at);
        }
    }
}

} // namespace
} // namespace seamclock
