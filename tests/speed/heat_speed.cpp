// How long a whole weld's heat takes, beside CVODE on the same equations, both at the loosest of
// their settings that stays within half a kelvin of a converged answer, and with nothing pressed in
// either. In processor time. "ratio NAME VALUE" is ours over the reference, "value NAME VALUE UNIT"
// a plain measurement.
#include "tests/core/heat/cycle_story.h"

#include <algorithm>
#include <cstdio>
#include <ctime>

namespace seamclock::test {
namespace {

constexpr double kWithin = 0.5; // [K]
constexpr int kRounds = 15;

double processorMs() {
    timespec at{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &at);
    return static_cast<double>(at.tv_sec) * 1e3 + static_cast<double>(at.tv_nsec) / 1e6;
}

/// The median of some rounds after one that doesn't count.
template <class Work>
double took(Work work) {
    std::vector<double> rounds;
    work();
    for (int i = 0; i < kRounds; ++i) {
        const double from = processorMs();
        work();
        rounds.push_back(processorMs() - from);
    }
    std::sort(rounds.begin(), rounds.end());
    return rounds[rounds.size() / 2];
}

double apart(const Story& converged, const Story& story) {
    return std::max(
        {farthest(converged, story, kInstant), std::abs(story.endOfSoak - converged.endOfSoak),
         std::abs(story.facesMeet - converged.facesMeet),
         std::abs(story.plane.back() - converged.plane.back())});
}

HeatGrid ours(double finestMm, double growth, int rows, double rowGrowth, double step) {
    HeatGrid grid;
    grid.finest = millimetres(finestMm);
    grid.growth = growth;
    grid.rows = rows;
    grid.rowGrowth = rowGrowth;
    grid.step = step;
    grid.longestStep = 100;
    return grid;
}

JudgeGrid theirs(int inward, int across, double finestMm, double tolerance) {
    JudgeGrid grid;
    grid.inward = inward;
    grid.across = across;
    grid.finest = finestMm / 1e3;
    grid.tolerance = tolerance;
    return grid;
}

int run() {
    const Material material = shippedMaterial("pe-hd");
    const Cycle cycle = cycleOf(procedureFor("pe-hd"), millimetres(10)).withoutPressure();
    const HeatInputs inputs = inputsFor(cycle, 10);
    const auto converged = judged(material, inputs, cycle, theirs(110, 8, 0.05, 1e-5));
    if (!converged) {
        std::fprintf(stderr, "CVODE gave up on the converged cycle\n");
        return 1;
    }
    double best = 0;
    for (const double finestMm : {0.07, 0.1, 0.15}) {
        for (const double growth : {1.2, 1.3}) {
            for (const int rows : {2, 3, 4}) {
                for (const double step : {0.1, 0.15, 0.2, 0.3}) {
                    const HeatGrid grid = ours(finestMm, growth, rows, 1.5, step);
                    const double off = apart(*converged, told(material, inputs, cycle, grid));
                    if (off > kWithin) {
                        continue;
                    }
                    const double ms = took([&] { told(material, inputs, cycle, grid); });
                    if (best == 0 || ms < best) {
                        best = ms;
                        std::printf(
                            "ours: %.2f mm growing by %.1f, %d rows, steps of %.2f: %.2f K off, "
                            "%.3f ms\n",
                            finestMm, growth, rows, step, off, ms);
                    }
                }
            }
        }
    }
    double reference = 0;
    for (const int inward : {18, 22, 26, 30, 40}) {
        for (const int across : {1, 2, 3}) {
            for (const double finestMm : {0.1, 0.2, 0.3}) {
                for (const double tolerance : {1e-2, 3e-3, 1e-3, 3e-4}) {
                    const JudgeGrid grid = theirs(inward, across, finestMm, tolerance);
                    const auto story = judged(material, inputs, cycle, grid);
                    if (!story || apart(*converged, *story) > kWithin) {
                        continue;
                    }
                    const double ms = took([&] {
                        JudgeGrid same = grid;
                        same.depth = 0.06;
                        CvodeJudge judge(
                            material, inputs.thickness.si(), inputs.ambientC, inputs.sideAir, same);
                        judge.go(inputs.plateC, inputs.contact, cycle.alignS + cycle.soakS);
                        judge.go(inputs.ambientC, inputs.faceAir, cycle.changeoverS);
                        judge.go(0, 0, cycle.buildUpS + cycle.coolingS);
                    });
                    if (reference == 0 || ms < reference) {
                        reference = ms;
                        std::printf(
                            "CVODE: %d x %d intervals from %.1f mm, tolerance %g: %.2f K off, "
                            "%.3f ms\n",
                            inward, across, finestMm, tolerance, apart(*converged, *story), ms);
                    }
                }
            }
        }
    }
    if (best == 0 || reference == 0) {
        std::fprintf(stderr, "no setting stays within %.1f K\n", kWithin);
        return 1;
    }
    std::printf(
        "ratio heat-cycle-of-cvode %.3f   (%.3f / %.3f ms, 10 mm PE-HD, nothing pressed)\n",
        best / reference, best, reference);

    // As the program runs it: the default grid, with the melt pressed.
    const Cycle pressed = cycleOf(procedureFor("pe-hd"), millimetres(10));
    std::size_t cells = 0;
    const double whole = took([&] {
        SheetRun sheet(material, inputs);
        sheet.go({HeatStage::At::Plate, pressed.alignS, pressed.alignment, pressed.alignment, {}});
        lead(sheet, pressed);
        cells = sheet.field().columns() * sheet.field().rows();
    });
    std::printf("value heat-cycle-default %.2f ms   (%zu cells, with squeeze)\n", whole, cells);

    for (const int rows : {4, 8, 16, 32}) {
        HeatGrid grid;
        grid.rows = rows;
        grid.rowGrowth = 1;
        std::size_t steps = 0;
        std::size_t all = 0;
        const double ms = took([&] {
            SheetRun sheet(material, inputs, grid);
            steps = 0;
            sheet.go({HeatStage::At::Plate, cycle.soakS, 0, 0, {}}, [&] { ++steps; });
            all = sheet.field().columns() * sheet.field().rows();
        });
        std::printf(
            "value heat-cell-step-%zu %.0f ns   (%zu steps of %zu cells)\n", all,
            ms * 1e6 / static_cast<double>(all * steps), steps, all);
    }

    // Four benches, each a second further in its cooling.
    std::vector<SheetRun> benches;
    benches.reserve(4);
    for (int i = 0; i < 4; ++i) {
        benches.emplace_back(material, inputs);
        benches.back().go({HeatStage::At::Plate, pressed.soakS, 15e3, 15e3, {}});
        benches.back().go({HeatStage::At::Air, pressed.changeoverS, 0, 0, {}});
        benches.back().go({HeatStage::At::Sheet, 60, pressed.joining, pressed.joining, {}});
    }
    const double live = took([&] {
        for (SheetRun& bench : benches) {
            bench.go({HeatStage::At::Sheet, 1, pressed.joining, pressed.joining, {}});
        }
    });
    std::printf("value heat-live-step-four-benches %.3f ms\n", live);
    return 0;
}

} // namespace
} // namespace seamclock::test

int main() {
    return seamclock::test::run();
}
