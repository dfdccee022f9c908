// "What if": what is moved is what is worked out anew, and it says when it is late.
#include "app/setup/heat_page.h"
#include "tests/support/materials.h"

#include <QApplication>
#include <QMouseEvent>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using test::materials;

HeatCourse ten() {
    PlanRequest request;
    request.thickness = millimetres(10);
    request.lengths = {millimetres(1000)};
    const auto plan = makePlan(request, test::shippedProcedure("pe-hd-dvs2207-1-2005"), nullptr);
    EXPECT_TRUE(plan);
    const auto course = courseOf(*plan, nullptr);
    EXPECT_TRUE(course);
    return *course;
}

void waitForSpread(HeatPage& page) {
    while (!page.hasSpread()) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
}

TEST(HeatView, MovesWhatWasMovedAndNothingElse) {
    const HeatCourse plan = ten();
    EXPECT_EQ(changedCourse(plan, WhatIf::Plate, 230).inputs.plateC, 230);
    EXPECT_EQ(changedCourse(plan, WhatIf::Air, 5).inputs.ambientC, 5);
    EXPECT_EQ(changedCourse(plan, WhatIf::Changeover, 15).changeover, 15);
    EXPECT_EQ(changedCourse(plan, WhatIf::Cooling, 60).cooling, 60);
    HeatCourse back = changedCourse(changedCourse(plan, WhatIf::Air, 5), WhatIf::Air, 20);
    EXPECT_EQ(back, plan);
}

TEST(HeatPage, SlidersMoveTheNumbersAndGoBackToThePlan) {
    HeatPage page;
    page.resize(1280, 800);
    ASSERT_TRUE(page.open(ten(), materials()));
    EXPECT_EQ(page.view().sliders[0].value, "210 °C");
    EXPECT_EQ(page.view().sliders[2].value, "7.2 s");
    EXPECT_EQ(page.view().sliders[3].value, "13.6 min");
    EXPECT_TRUE(page.view().caution.isEmpty()) << page.view().caution.toStdString();
    const QString skin = page.view().rows[4].value;
    waitForSpread(page);
    EXPECT_TRUE(page.view().rows[4].value.startsWith(skin));
    EXPECT_TRUE(page.view().rows[4].value.contains(" to ")) << "with its spread";
    // pressed on the end with the plus: one step
    ValueSlider* change = page.slider(WhatIf::Changeover);
    const QPointF plus(change->width() - 10, change->height() / 2.0);
    QMouseEvent press(
        QEvent::MouseButtonPress, plus, change->mapToGlobal(plus), Qt::LeftButton, Qt::LeftButton,
        Qt::NoModifier);
    QApplication::sendEvent(change, &press);
    EXPECT_EQ(page.view().sliders[2].value, "7.5 s");
    EXPECT_EQ(page.view().sliders[2].plan, 7.2);
    emit change->moved(40);
    EXPECT_TRUE(page.view().rows[4].late);
    waitForSpread(page);
    EXPECT_TRUE(page.view().caution.contains("no longer be molten"));
    page.reset();
    EXPECT_EQ(page.view().rows[4].value, skin);
}

TEST(HeatPage, WarnsOfHarmfulGas) {
    HeatCourse course = ten();
    course.material = "PVC-U";
    HeatPage page;
    ASSERT_TRUE(page.open(course, materials()));
    emit page.slider(WhatIf::Plate)->moved(290);
    EXPECT_TRUE(page.view().caution.contains("harmful gas")) << page.view().caution.toStdString();
}

TEST(HeatPage, DoesNotOpenForAnUnknownPlastic) {
    HeatCourse course = ten();
    course.material = "ABS";
    HeatPage page;
    const auto opened = page.open(course, materials());
    ASSERT_FALSE(opened);
    EXPECT_NE(opened.error().detail.find("\"ABS\""), std::string::npos);
}

} // namespace
} // namespace seamclock
