#include "tests/core/vbench/practice_weld.h"

#include "core/heat/material_codec.h"
#include "tests/support/shipped.h"

#include <algorithm>

namespace seamclock::test {

BenchSetup setupFor(const PracticeWeld& weld) {
    BenchSetup setup;
    const auto material = readMaterialFile(resource("materials/" + weld.material + ".json"));
    EXPECT_TRUE(material) << material.error().detail;
    setup.bench = demoBench(weld.bench);
    PlanRequest request;
    request.thickness = millimetres(weld.thicknessMm);
    request.lengths = {millimetres(1000)};
    request.drag = newtons(weld.dragN);
    const auto plan = makePlan(request, shippedProcedure(weld.procedure), &setup.bench);
    EXPECT_TRUE(plan) << plan.error().detail;
    if (material && plan) {
        setup.material = *material;
        setup.plan = *plan;
    }
    setup.dragN = weld.dragN;
    return setup;
}

VirtualBench benchFor(const BenchSetup& setup) {
    auto bench = VirtualBench::set(setup);
    EXPECT_TRUE(bench) << bench.error().detail;
    return std::move(bench.value());
}

WeldStory welded(const BenchSetup& setup, const HandFaults& faults) {
    WeldStory story{benchFor(setup), {}, {}, {}, {}, {}};
    SteadyHand hand(story.bench, faults);
    const auto did = [](const Result<void>& done) { EXPECT_TRUE(done) << done.error().detail; };
    did(hand.prepare());
    did(hand.align());
    did(hand.soak());
    story.soaked = story.bench.view();
    did(hand.changeOver());
    did(hand.buildUp());
    story.locked = story.bench.view();
    did(hand.cool());
    did(hand.release());
    story.times = hand.times();
    story.lifted = story.bench.view();
    story.bend = bendTest(story.lifted, setup.plan);
    return story;
}

int with(const BendTest& bend, BendReason reason) {
    return static_cast<int>(std::count_if(
        bend.stations.begin(), bend.stations.end(), [reason](const StationBend& station) {
            return std::find(station.reasons.begin(), station.reasons.end(), reason) !=
                   station.reasons.end();
        }));
}

} // namespace seamclock::test
