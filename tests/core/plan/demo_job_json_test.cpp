// The demo's seams are all weldable: each makes a plan that is ready, on its bench and with its
// procedure.
#include "core/base/json_reader.h"
#include "core/plan/plan.h"

#include "tests/support/shipped.h"

#include <algorithm>
#include <set>

namespace seamclock {
namespace {

TEST(DemoJob, HasSixSeamsThatItsBenchesCanMake) {
    const auto text = parseJsonFile(test::resource("demo/job-brine-tank.json"));
    ASSERT_TRUE(text) << text.error().detail;
    JsonReader job(*text);
    auto seams = job.objects("seams");
    ASSERT_EQ(seams.size(), 6U);
    std::set<std::string> materials;
    std::set<double> thicknesses;
    std::set<std::string> ids;
    int hardToShow = 0;
    for (JsonReader& seam : seams) {
        const std::string label = seam.text("label");
        const auto bench = readBenchFile(test::resource("demo/" + seam.text("bench")));
        ASSERT_TRUE(bench) << bench.error().detail;
        const Procedure procedure = test::shippedProcedure(seam.text("procedure"));
        PlanRequest request;
        request.thickness = millimetres(seam.number("thickness_mm", 1, 70));
        for (const double each : seam.numbers("lengths_mm")) {
            request.lengths.push_back(millimetres(each));
        }
        request.drag = newtons(seam.number("drag_N", 0, 1000));
        request.ambient = Temperature::celsius(seam.number("ambient_C", 5, 45));
        const auto plan = makePlan(request, procedure, &bench->bench);
        ASSERT_TRUE(plan) << label << ": " << plan.error().detail;
        EXPECT_TRUE(plan->isReady()) << label;
        hardToShow +=
            std::any_of(plan->warnings.begin(), plan->warnings.end(), [](const PlanWarning& each) {
                return each.code == "just_in_contact";
            });
        auto sheets = seam.objects("sheets");
        ASSERT_EQ(sheets.size(), 2U);
        for (JsonReader& sheet : sheets) {
            EXPECT_EQ(sheet.text("material"), procedure.material) << label;
        }
        materials.insert(procedure.material);
        thicknesses.insert(inMillimetres(request.thickness));
        EXPECT_TRUE(ids.insert(seam.text("id")).second);
        // None of the trade's own examples is demo data.
        EXPECT_FALSE(plan->thicknessUm == 10'000 && plan->lengthUm == 1'000'000) << label;
        EXPECT_NE(inNewtons(bench->bench.scale.rate()), 90) << label;
    }
    EXPECT_TRUE(job.verdict().has_value()) << job.verdict().error().detail;
    EXPECT_EQ(materials, (std::set<std::string>{"PE-HD", "PP"}));
    EXPECT_EQ(thicknesses.size(), 3U);
    EXPECT_EQ(hardToShow, 2);
}

} // namespace
} // namespace seamclock
