// From a plan and from a weld's steps to what the sheet's edge went through.
#include "core/estimate/heat_course.h"
#include "tests/support/shipped.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::seconds;
using test::Story;

WeldPlan planOf(const char* procedure, double thickness, const Bench* bench) {
    PlanRequest request;
    request.thickness = millimetres(thickness);
    request.lengths = {millimetres(1380)};
    const auto plan = makePlan(request, test::shippedProcedure(procedure), bench);
    EXPECT_TRUE(plan.has_value());
    return plan.value_or(WeldPlan{});
}

TEST(HeatCourse, OfAPlanHasItsTimesPressuresAndTheSpring) {
    const Bench west = test::demoBench("west");
    const auto course = courseOf(planOf("pe-hd-dvs2207-1-2005", 10, &west), &west);
    ASSERT_TRUE(course) << course.error().detail;
    EXPECT_EQ(course->material, "PE-HD");
    EXPECT_FALSE(course->alignSeconds);
    EXPECT_DOUBLE_EQ(course->beadM, 1.5e-3);
    EXPECT_DOUBLE_EQ(*course->soak, 100);
    EXPECT_DOUBLE_EQ(*course->changeover, 7.2);
    EXPECT_DOUBLE_EQ(*course->buildUp, 7.2);
    EXPECT_DOUBLE_EQ(*course->cooling, 13.6 * 60);
    EXPECT_DOUBLE_EQ(course->joiningPa, 150'000);
    EXPECT_DOUBLE_EQ(course->inputs.plateC, 210);
    // 71.2 + 72.6 = 143.8 N/mm over 10 mm × 1380 mm; the scale is in mm
    EXPECT_NEAR(*course->springPaPerMetre, 143.8e3 / (0.010 * 1.380), 1e-3);
    EXPECT_NEAR(*course->unitsPerMetre, 1000, 1e-9);
    const auto bare = courseOf(planOf("pe-hd-dvs2207-1-2005", 10, nullptr), nullptr);
    ASSERT_TRUE(bare);
    EXPECT_FALSE(bare->springPaPerMetre);
}

TEST(HeatCourse, OfAnIncompletePlanNamesWhatItLacks) {
    const auto course = courseOf(planOf("pe-uni10520", 10, nullptr), nullptr);
    ASSERT_FALSE(course);
    EXPECT_EQ(course.error().code, ErrorCode::Missing);
    EXPECT_NE(course.error().detail.find("plate temperature"), std::string::npos)
        << course.error().detail;
    EXPECT_NE(course.error().detail.find("alignment bead"), std::string::npos);
}

TEST(HeatCourse, OfAWeldHasTheTimesThatItsStepsTook) {
    Story story;
    EXPECT_FALSE(courseOf(story.weld(), story.time().lo, nullptr)) << "not aligned yet";
    const Weld whole = Story().close().weld();
    const auto course = courseOf(whole, nullptr);
    ASSERT_TRUE(course) << course.error().detail;
    EXPECT_DOUBLE_EQ(*course->alignSeconds, 50);
    EXPECT_TRUE(course->aligned);
    EXPECT_DOUBLE_EQ(*course->soak, 82);
    EXPECT_DOUBLE_EQ(*course->changeover, 4);
    EXPECT_DOUBLE_EQ(*course->cooling, 690);
    ASSERT_TRUE(course->buildUp);
    EXPECT_GE(*course->buildUp, 6);
}

TEST(HeatCourse, OfAWeldUnderWayEndsNow) {
    Story story;
    story.align().wait(seconds{30});
    auto course = courseOf(story.weld(), story.time().lo, nullptr);
    ASSERT_TRUE(course);
    EXPECT_DOUBLE_EQ(*course->alignSeconds, 50);
    EXPECT_DOUBLE_EQ(*course->soak, 30);
    EXPECT_FALSE(course->changeover);
    EXPECT_FALSE(course->cooling);
    // and what stops it, stops its clock
    story.then(WeldAborted{"test", ""}).wait(seconds{500});
    course = courseOf(story.weld(), story.time().lo, nullptr);
    ASSERT_TRUE(course);
    EXPECT_DOUBLE_EQ(*course->soak, 30);
}

TEST(HeatCourse, TakesThePlateAsItWasRead) {
    Story story;
    CheckMade read;
    read.check = "plate_temperature";
    read.passed = true;
    read.valueMc = 214'000;
    read.place = "top";
    read.face = "left";
    story.then(read);
    read.valueMc = 206'000;
    read.place = "bottom";
    story.then(read).align();
    const auto course = courseOf(story.weld(), story.time().lo, nullptr);
    ASSERT_TRUE(course) << course.error().detail;
    EXPECT_NEAR(course->inputs.plateC, 210, 6) << "the mean of what was read";
    EXPECT_NE(course->inputs.plateC, 206);
}

} // namespace
} // namespace seamclock
