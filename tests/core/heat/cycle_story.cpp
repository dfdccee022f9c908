#include "tests/core/heat/cycle_story.h"

#include <algorithm>

namespace seamclock::test {

Story told(
    const Material& material, const HeatInputs& inputs, const Cycle& cycle, const HeatGrid& grid) {
    Story story;
    SheetRun run(material, inputs, grid);
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
judged(const Material& material, const HeatInputs& inputs, const Cycle& cycle, JudgeGrid grid) {
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

double farthest(const Story& judge, const Story& story, double instant) {
    const auto place = [&](double when) {
        return std::lower_bound(judge.since.begin(), judge.since.end(), when) - judge.since.begin();
    };
    const auto last = static_cast<std::ptrdiff_t>(judge.since.size());
    double worst = 0;
    for (std::size_t i = 0; i < story.since.size(); ++i) {
        const double slack = instant * story.since[i] + kEvery;
        const auto from = std::min(place(story.since[i] - slack), last - 1);
        const auto to = std::max(from + 1, std::min(place(story.since[i] + slack) + 1, last));
        const auto [coldest, warmest] =
            std::minmax_element(judge.plane.begin() + from, judge.plane.begin() + to);
        worst = std::max({worst, story.plane[i] - *warmest, *coldest - story.plane[i]});
    }
    return worst;
}

} // namespace seamclock::test
