// How long the virtual bench takes: one frame of 50 ms (20 a second) in the phases that work it
// hardest, and whole welds with their physics against true time. In processor time; all of PE-HD,
// PP and PVDF by shipped procedures on the demo's bench, five stations. Stations that are alike are
// worked out once; off-parallel, each for itself.
#include "tests/support/practice_weld.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <vector>

namespace seamclock::test {
namespace {

constexpr int kRounds = 7;
constexpr Milliseconds kFrame{50};

double processorMs() {
    timespec at{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &at);
    return static_cast<double>(at.tv_sec) * 1e3 + static_cast<double>(at.tv_nsec) / 1e6;
}

/// Frames as a screen asks for them: time goes on, and all is looked at.
void frames(VirtualBench bench, const char* name, int count) {
    std::vector<double> took;
    double seen = 0; // so that nothing is left out
    for (int i = 0; i < count; ++i) {
        const double from = processorMs();
        bench.advance(kFrame);
        seen += bench.view().scale.reading;
        took.push_back(processorMs() - from);
    }
    std::sort(took.begin(), took.end());
    double sum = 0;
    for (const double each : took) {
        sum += each;
    }
    std::printf(
        "value vbench-frame-%s %.3f ms   (the longest of %d frames of 50 ms; mean %.3f ms; %.1f)\n",
        name, took.back(), count, sum / count, seen / count);
}

void whole(const PracticeWeld& weld, const char* name, const HandFaults& faults = {}) {
    const BenchSetup setup = setupFor(weld);
    std::vector<double> took;
    double lasted = 0;
    bool ductile = false;
    for (int i = 0; i <= kRounds; ++i) {
        const double from = processorMs();
        const WeldStory story = welded(setup, faults);
        if (i > 0) { // the first doesn't count
            took.push_back(processorMs() - from);
        }
        lasted = static_cast<double>(story.bench.now().count());
        ductile = story.bend.ductile;
    }
    std::sort(took.begin(), took.end());
    const double ms = took[took.size() / 2];
    std::printf(
        "value vbench-weld-%s %.0f times   (%.0f ms for %.0f s, set-up and hand included; %s)\n",
        name, lasted / ms, ms, lasted / 1e3, ductile ? "ductile" : "brittle");
}

int run() {
    const BenchSetup setup = setupFor(kPe10);
    VirtualBench bench = benchFor(setup);
    HandFaults skew; // within what is allowed
    skew.rightUm = -500;
    SteadyHand hand(bench, skew);
    bool well = hand.prepare().has_value() && hand.align().has_value();
    bench.advance(Milliseconds(1));
    frames(bench, "on-the-plate", 600);
    well = well && hand.soak().has_value() && hand.changeOver().has_value();
    VirtualBench turning = bench;
    well = well && turning.act(TurnWheel{2000}).has_value();
    frames(turning, "turning", 300);
    well = well && hand.buildUp().has_value();
    frames(bench, "cooling", 600);
    if (!well) {
        std::fprintf(stderr, "the hand could not go on\n");
        return 1;
    }
    whole(kPe10, "pe-hd-10");
    whole(kPe10, "pe-hd-10-off-parallel", skew);
    whole(kPp12, "pp-12");
    whole(kPvdf8, "pvdf-8");
    return 0;
}

} // namespace
} // namespace seamclock::test

int main() {
    return seamclock::test::run();
}
