#include "tests/support/practice_weld.h"

#include "core/heat/material_codec.h"
#include "tests/support/shipped.h"

#include <algorithm>

namespace seamclock::test {

namespace {

Result<WeldPlan> planOf(const PracticeWeld& weld, const Bench& bench) {
    PlanRequest request;
    request.thickness = millimetres(weld.thicknessMm);
    request.lengths = {millimetres(1000)};
    request.drag = newtons(weld.dragN);
    return makePlan(request, shippedProcedure(weld.procedure), &bench);
}

} // namespace

std::optional<BenchSetup> setupIfPlanned(const PracticeWeld& weld) {
    const Bench bench = demoBench(weld.bench);
    const auto plan = planOf(weld, bench);
    return plan && plan->isReady() ? std::optional(setupFor(weld)) : std::nullopt;
}

WeldPlan rowOf(const BenchSetup& setup, double times) {
    PracticeWeld weld;
    weld.procedure = setup.plan.procedure;
    weld.thicknessMm = static_cast<double>(setup.plan.thicknessUm) / 1e3 * times;
    weld.dragN = setup.dragN;
    // PP's table gives no soak below 4.5 mm.
    std::optional<WeldPlan> found;
    for (; !found; weld.thicknessMm += 0.5) {
        const auto plan = planOf(weld, setup.bench);
        if (plan && plan->isReady()) {
            found = *plan;
        } else if (weld.thicknessMm > 100) {
            ADD_FAILURE() << "no row near " << times << " times the thickness";
            return setup.plan;
        }
    }
    return *found;
}

WeldPlan kgfForN(const BenchSetup& setup) {
    WeldPlan card = setup.plan;
    const std::int64_t zero = setup.bench.scale.zeroMilli;
    for (ReadingBand* band : {&card.scale->alignment, &card.scale->soak, &card.scale->joining}) {
        for (std::int64_t* milli : {&band->setMilli, &band->lowMilli, &band->highMilli}) {
            *milli = zero + static_cast<std::int64_t>(
                                static_cast<double>(*milli - zero) / 9.80665); // m/s², exact (SI)
        }
    }
    return card;
}

BenchSetup setupFor(const PracticeWeld& weld) {
    BenchSetup setup;
    const auto material = readMaterialFile(resource("materials/" + weld.material + ".json"));
    EXPECT_TRUE(material) << material.error().detail;
    setup.bench = demoBench(weld.bench);
    const auto plan = planOf(weld, setup.bench);
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
