// Whole cycles beside another program's: CVODE of SUNDIALS on nodes of its own (cvode_judge.h).
// What is compared is the weld plane, from when the faces meet until the published cooling is over.
#include "tests/core/heat/constant_material.h"
#include "tests/core/heat/cycle_story.h"

#include <cmath>
#include <gtest/gtest.h>
#include <tuple>

namespace seamclock::test {
namespace {

// The bound. The judge's own error, beside twice as many nodes and a hundredth of its
// tolerance, is under 0.1 K.
constexpr double kAgree = 0.5; // [K]

class BesideCvode : public ::testing::TestWithParam<std::tuple<const char*, double>> {};

TEST_P(BesideCvode, KeepsTheWeldPlaneWithinHalfAKelvin) {
    const auto [id, thicknessMm] = GetParam();
    const Material material = shippedMaterial(id);
    const Cycle cycle = cycleOf(procedureFor(id), millimetres(thicknessMm)).withoutPressure();
    const HeatInputs inputs = inputsFor(cycle, thicknessMm);
    JudgeGrid grid;
    grid.inward = 70;
    grid.across = 5;
    grid.tolerance = 1e-4;
    const Story ours = told(material, inputs, cycle, {});
    const auto theirs = judged(material, inputs, cycle, grid);
    ASSERT_TRUE(theirs) << "CVODE gave up";
    ASSERT_GT(ours.plane.size(), 20U);
    EXPECT_NEAR(ours.endOfSoak, theirs->endOfSoak, kAgree);
    EXPECT_NEAR(ours.facesMeet, theirs->facesMeet, kAgree);
    EXPECT_NEAR(ours.plane.back(), theirs->plane.back(), kAgree) << "when cooling is over";
    const double worst = farthest(*theirs, ours, kInstant);
    EXPECT_LT(worst, kAgree);
    RecordProperty("worst_K", std::to_string(worst));
    RecordProperty("worst_at_once_K", std::to_string(farthest(*theirs, ours, 0)));
    RecordProperty("end_of_soak_K", std::to_string(ours.endOfSoak - theirs->endOfSoak));
    RecordProperty("faces_meet_K", std::to_string(ours.facesMeet - theirs->facesMeet));
    RecordProperty("end_K", std::to_string(ours.plane.back() - theirs->plane.back()));
}

// C&J 2.7 (1), as closed_forms_test has it: the judge is judged as well, in a material without
// melting and a sheet without a side.
TEST(Judge, FindsTheFaceOfAHalfSpaceBehindAContact) {
    JudgeGrid grid;
    grid.inward = 70;
    grid.across = 2;
    grid.tolerance = 1e-6;
    CvodeJudge judge(constantMaterial(), 0.01, 20, 0, grid);
    ASSERT_TRUE(judge.go(215, 1500, 60));
    const double root = 1500 / kConductivity * std::sqrt(kDiffusivity * 60);
    const double face = 1 - std::exp(root * root) * std::erfc(root);
    EXPECT_NEAR(judge.faceC(), 20 + 195 * face, 0.05); // its cells, 0.05 mm at the face
}

INSTANTIATE_TEST_SUITE_P(
    Cycles, BesideCvode,
    ::testing::Combine(::testing::ValuesIn(kMaterials), ::testing::Values(3.0, 10.0, 25.0, 50.0)));

} // namespace
} // namespace seamclock::test
