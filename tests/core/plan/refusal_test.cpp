// What a plan refuses, each in one sentence that names the value and the allowed range.
#include "core/plan/plan.h"

#include "tests/support/shipped.h"

#include <functional>
#include <limits>

namespace seamclock {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();

PlanRequest good() {
    PlanRequest request;
    request.thickness = millimetres(8);
    request.lengths = {millimetres(1200)};
    request.drag = newtons(40);
    return request;
}

struct Row {
    std::function<void(PlanRequest&)> spoil;
    const char* sentence;
};

void expectRefusals(const std::vector<Row>& rows, const Procedure& procedure, const Bench* bench) {
    for (const Row& row : rows) {
        SCOPED_TRACE(row.sentence);
        PlanRequest request = good();
        row.spoil(request);
        const auto plan = makePlan(request, procedure, bench);
        ASSERT_FALSE(plan);
        EXPECT_EQ(plan.error().code, ErrorCode::OutOfRange);
        EXPECT_EQ(plan.error().detail, row.sentence);
    }
}

auto thickness(double mm) {
    return [mm](PlanRequest& request) { request.thickness = millimetres(mm); };
}
auto lengths(std::vector<double> mm) {
    return [mm](PlanRequest& request) {
        request.lengths.clear();
        for (const double each : mm) {
            request.lengths.push_back(millimetres(each));
        }
    };
}
auto drag(double force) {
    return [force](PlanRequest& request) { request.drag = newtons(force); };
}
auto ambient(double celsius) {
    return [celsius](PlanRequest& request) { request.ambient = Temperature::celsius(celsius); };
}
auto target(double celsius) {
    return [celsius](PlanRequest& request) { request.plateTarget = Temperature::celsius(celsius); };
}
auto median(std::int64_t ms) {
    return [ms](PlanRequest& request) { request.alignMedian = Milliseconds(ms); };
}

TEST(Refusal, NamesTheValueAndTheRangeWithoutABench) {
    expectRefusals(
        {
            {thickness(80), "thickness 80 mm is outside 1 to 70 mm of pe-hd-dvs2207-1-2005"},
            {thickness(0.999), "thickness 0.999 mm is outside 1 to 70 mm of pe-hd-dvs2207-1-2005"},
            {thickness(70.001),
             "thickness 70.001 mm is outside 1 to 70 mm of pe-hd-dvs2207-1-2005"},
            {thickness(0), "thickness 0 mm is outside 1 to 70 mm of pe-hd-dvs2207-1-2005"},
            {thickness(-8), "thickness -8 mm is outside 1 to 70 mm of pe-hd-dvs2207-1-2005"},
            {thickness(1e300), "thickness 1e+300 mm is outside 1 to 70 mm of pe-hd-dvs2207-1-2005"},
            {thickness(kNaN),
             "thickness nan is not a finite number; allowed 1 to 70 mm of pe-hd-dvs2207-1-2005"},
            {thickness(kInfinity),
             "thickness inf is not a finite number; allowed 1 to 70 mm of pe-hd-dvs2207-1-2005"},
            {lengths({}), "no seam length is given; allowed 1 to 100000 mm"},
            {lengths({0}), "length 0 mm is outside 1 to 100000 mm"},
            {lengths({500, -1}), "length -1 mm is outside 1 to 100000 mm"},
            {lengths({kNaN}), "length nan is not a finite number; allowed 1 to 100000 mm"},
            {lengths({1e300}), "length 1e+300 mm is outside 1 to 100000 mm"},
            {lengths({60000, 60000}), "total length 120000 mm is outside 1 to 100000 mm"},
            {drag(-1), "drag -1 N is outside 0 to 100000 N"},
            {drag(1e9), "drag 1000000000 N is outside 0 to 100000 N"},
            {drag(kNaN), "drag nan is not a number; allowed 0 to 100000 N"},
            {ambient(-41), "ambient -41 °C is outside -40 to 60 °C"},
            {ambient(60.5), "ambient 60.5 °C is outside -40 to 60 °C"},
            {ambient(kNaN), "ambient nan is not a finite number; allowed -40 to 60 °C"},
            {ambient(kInfinity), "ambient inf is not a finite number; allowed -40 to 60 °C"},
            {target(199), "plate target 199 °C is outside 200 to 220 °C of pe-hd-dvs2207-1-2005"},
            {target(221), "plate target 221 °C is outside 200 to 220 °C of pe-hd-dvs2207-1-2005"},
            {target(kNaN), "plate target nan °C is outside 200 to 220 °C of pe-hd-dvs2207-1-2005"},
            {median(0), "median of alignment 0 ms is outside 1 to 86400000 ms"},
            {median(86'400'001), "median of alignment 86400001 ms is outside 1 to 86400000 ms"},
        },
        test::shippedProcedure("pe-hd-dvs2207-1-2005"), nullptr);
}

TEST(Refusal, NamesTheBenchWhereTheBenchIsTheLimit) {
    const Bench east = test::demoBench("east");
    expectRefusals(
        {
            {thickness(2), "thickness 2 mm is outside 3 to 30 mm of bench east"},
            {thickness(31), "thickness 31 mm is outside 3 to 30 mm of bench east"},
            {lengths({2601}), "length 2601 mm is outside 1 to 2600 mm of bench east"},
            {lengths({1300, 1301}), "total length 2601 mm is outside 1 to 2600 mm of bench east"},
            {lengths({150000}), "length 150000 mm is outside 1 to 2600 mm of bench east"},
            // 0.15 · 8 · 2600 = 3120 N at 62.5 N/mm with 40 N of drag: 50.56; 48 · 62.5 − 40 = 2960
            {lengths({2600}), "alignment reading 50.56 mm is above 48 mm, the end of the scale of "
                              "bench east: the seam needs 3120 N, with a drag of 40 N the scale "
                              "shows up to 2960 N"},
            {drag(9000),
             "alignment reading 167.04 mm is above 48 mm, the end of the scale of bench "
             "east: the seam needs 1440 N, with a drag of 9000 N the scale shows up to "
             "0 N"},
        },
        test::shippedProcedure("pe-hd-dvs2207-1-2005"), &east);
}

TEST(Refusal, OfBandEndNeedsAProcedureWithoutBands) {
    Procedure procedure = test::shippedProcedure("pe-hd-dvs2207-1-2005");
    PlanRequest request = good();
    request.coolingRule = BandRule::BandEnd;
    EXPECT_TRUE(makePlan(request, procedure, nullptr));
    procedure.id = "formula";
    procedure.cooling[0].minutes.curves[0].isTable = false;
    const auto plan = makePlan(request, procedure, nullptr);
    ASSERT_FALSE(plan);
    EXPECT_EQ(
        plan.error().detail,
        "cooling rule band-end is not offered by formula, whose cooling has no bands; allowed "
        "line");
}

TEST(Refusal, OfAPlateTargetThatNothingCanJudge) {
    Procedure procedure = test::shippedProcedure("pe-hd-dvs2207-1-2005");
    procedure.plate.reset();
    PlanRequest request = good();
    EXPECT_TRUE(makePlan(request, procedure, nullptr));
    request.plateTarget = Temperature::celsius(210);
    EXPECT_FALSE(makePlan(request, procedure, nullptr));
}

TEST(Refusal, LetsTheEdgesOfTheRangesPass) {
    const Procedure procedure = test::shippedProcedure("pe-hd-dvs2207-1-2005");
    for (const auto& edge : std::vector<std::function<void(PlanRequest&)>>{
             thickness(1), thickness(70), lengths({1}), lengths({100000}), drag(0), drag(100000),
             ambient(-40), ambient(60), target(199.9995), target(200), target(220),
             target(220.0005), median(1), median(86'400'000)}) {
        PlanRequest request = good();
        edge(request);
        const auto plan = makePlan(request, procedure, nullptr);
        EXPECT_TRUE(plan) << plan.error().detail;
    }
}

} // namespace
} // namespace seamclock
