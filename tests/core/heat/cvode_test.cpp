// Whole cycles beside another program's: CVODE of SUNDIALS on nodes of its own (cvode_judge.h).
// What is compared is the weld plane, from when the faces meet until the published cooling is over.
#include "tests/core/heat/constant_material.h"
#include "tests/core/heat/cvode_judge.h"
#include "tests/core/heat/cycle.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <optional>
#include <tuple>

namespace seamclock::test {
namespace {

// The bound. The judge's own error, beside twice as many nodes and a hundredth of its
// tolerance, is under 0.1 K.
constexpr double kAgree = 0.5; // [K]
// At the end of its plateau the weld plane falls by some kelvins within a second or two, as the
// last of the melt crystallises; two answers that agree to a second would differ there by more than
// they do anywhere else. So an instant counts as known to a hundredth of the time since the faces
// met.
constexpr double kInstant = 0.01;
constexpr double kEvery = 0.25; // [s] how close the judge's instants lie

/// A cycle's figures, from either of the two.
struct Story {
    double endOfSoak = 0;
    double facesMeet = 0;
    std::vector<double> since; // [s] the faces met
    std::vector<double> plane;
};

Story told(const Material& material, const HeatInputs& inputs, const Cycle& cycle) {
    Story story;
    SheetRun run(material, inputs);
    run.go({HeatStage::At::Plate, cycle.alignS + cycle.soakS, 0, 0, {}});
    story.endOfSoak = run.faceC();
    run.go({HeatStage::At::Air, cycle.changeoverS, 0, 0, {}});
    story.facesMeet = run.faceC();
    const double met = run.seconds();
    run.go({HeatStage::At::Sheet, cycle.buildUpS + cycle.coolingS, 0, 0, {}}, [&] {
        story.since.push_back(run.seconds() - met);
        story.plane.push_back(run.faceC());
    });
    return story;
}

std::optional<Story>
judged(const Material& material, const HeatInputs& inputs, const Cycle& cycle) {
    JudgeGrid grid;
    grid.inward = 70;
    grid.across = 5;
    grid.tolerance = 1e-4;
    grid.depth = std::max(0.06, 3 * inputs.thickness.si());
    CvodeJudge judge(material, inputs.thickness.si(), inputs.ambientC, inputs.sideAir, grid);
    Story story;
    bool sound = judge.go(inputs.plateC, inputs.contact, cycle.alignS + cycle.soakS);
    story.endOfSoak = judge.faceC();
    sound = sound && judge.go(inputs.ambientC, inputs.faceAir, cycle.changeoverS);
    story.facesMeet = judge.faceC();
    const double met = judge.seconds();
    const double whole = cycle.buildUpS + cycle.coolingS;
    story.since.push_back(0);
    story.plane.push_back(story.facesMeet);
    std::vector<double> instants;
    for (int i = 1; i * kEvery <= whole; ++i) {
        story.since.push_back(i * kEvery);
        instants.push_back(met + i * kEvery);
    }
    // A little longer, so that the last instant is passed whatever the sums round to.
    sound = sound && judge.go(0, 0, whole + 1, instants, story.plane);
    return sound && story.plane.size() == story.since.size() ? std::optional(story) : std::nullopt;
}

/// How far outside what the judge has within an instant of then.
double off(const Story& judge, double since, double celsius, double instant) {
    const double slack = instant * since + kEvery;
    const auto place = [&](double when) {
        return std::lower_bound(judge.since.begin(), judge.since.end(), when) - judge.since.begin();
    };
    const auto last = static_cast<std::ptrdiff_t>(judge.since.size());
    const auto from = std::min(place(since - slack), last - 1);
    const auto to = std::max(from + 1, std::min(place(since + slack) + 1, last));
    const auto [coldest, warmest] =
        std::minmax_element(judge.plane.begin() + from, judge.plane.begin() + to);
    return std::max({0.0, celsius - *warmest, *coldest - celsius});
}

class BesideCvode : public ::testing::TestWithParam<std::tuple<const char*, double>> {};

TEST_P(BesideCvode, KeepsTheWeldPlaneWithinHalfAKelvin) {
    const auto [id, thicknessMm] = GetParam();
    const Material material = shippedMaterial(id);
    const Cycle cycle = cycleOf(procedureFor(id), millimetres(thicknessMm)).withoutPressure();
    const HeatInputs inputs = inputsFor(cycle, thicknessMm);
    const Story ours = told(material, inputs, cycle);
    const auto theirs = judged(material, inputs, cycle);
    ASSERT_TRUE(theirs) << "CVODE gave up";
    ASSERT_GT(ours.plane.size(), 20U);
    EXPECT_NEAR(ours.endOfSoak, theirs->endOfSoak, kAgree);
    EXPECT_NEAR(ours.facesMeet, theirs->facesMeet, kAgree);
    EXPECT_NEAR(ours.plane.back(), theirs->plane.back(), kAgree) << "when cooling is over";
    double worst = 0;
    double worstAtOnce = 0;
    std::size_t at = 0;
    for (std::size_t i = 0; i < ours.plane.size(); ++i) {
        const double wrong = off(*theirs, ours.since[i], ours.plane[i], kInstant);
        if (wrong > worst) {
            worst = wrong;
            at = i;
        }
        worstAtOnce = std::max(worstAtOnce, off(*theirs, ours.since[i], ours.plane[i], 0));
    }
    EXPECT_LT(worst, kAgree) << ours.since[at] << " s after the faces met, at " << ours.plane[at];
    RecordProperty("worst_K", std::to_string(worst));
    RecordProperty("worst_at_once_K", std::to_string(worstAtOnce));
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
