// How fast the virtual operator is: welds a minute into one practice log, without physics, by the
// clock, as the disk counts too; and welds on the virtual bench against true time, in processor
// time.
#include "core/practice/virtual_operator.h"
#include "tests/support/rehearsed_weld.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <vector>

namespace seamclock::test {
namespace {

constexpr int kRounds = 7;
constexpr std::int64_t kWelds = 1000;

double msOf(clockid_t clock) {
    timespec at{};
    clock_gettime(clock, &at);
    return static_cast<double>(at.tv_sec) * 1e3 + static_cast<double>(at.tv_nsec) / 1e6;
}

int intoOneLog(const WeldOrder& order) {
    const ScratchFolder folder;
    RehearseOptions options;
    options.order = order;
    const double from = msOf(CLOCK_MONOTONIC);
    const double worked = msOf(CLOCK_PROCESS_CPUTIME_ID);
    const auto done = rehearseSeries(
        folder.file("speed.seamlog"),
        [&](std::int64_t i) -> std::optional<SeriesStep> {
            if (i >= kWelds) {
                return {};
            }
            SeriesStep step{options, Milliseconds(0)};
            step.options.seed = static_cast<std::uint64_t>(i) + 1;
            return step;
        },
        {});
    if (!done || !done->notSaved.empty()) {
        std::fprintf(stderr, "%s\n", done ? done->notSaved.c_str() : done.error().detail.c_str());
        return 1;
    }
    const double took = msOf(CLOCK_MONOTONIC) - from;
    std::printf(
        "value rehearse-welds-per-minute %.0f   (%lld welds into one log in %.1f s, %.1f s of "
        "processors)\n",
        static_cast<double>(kWelds) * 6e4 / took, static_cast<long long>(kWelds), took / 1e3,
        (msOf(CLOCK_PROCESS_CPUTIME_ID) - worked) / 1e3);
    return 0;
}

void withPhysics(const char* procedure, double thicknessMm, const char* name) {
    const auto order = orderFor(procedure, thicknessMm, "east", 40);
    if (!order) {
        std::fprintf(stderr, "no plan for %s\n", name);
        return;
    }
    const Material material = materialOf(*order);
    std::vector<double> took;
    double lasted = 0;
    for (int i = 0; i <= kRounds; ++i) {
        Hand hand;
        hand.seed = static_cast<std::uint64_t>(i) + 1;
        const double from = msOf(CLOCK_THREAD_CPUTIME_ID);
        const RehearsedWeld weld = onBench(*order, hand, material);
        if (i > 0) { // the first doesn't count
            took.push_back(msOf(CLOCK_THREAD_CPUTIME_ID) - from);
            lasted += static_cast<double>(weld.bench->end.at.count()) / kRounds;
        }
    }
    std::sort(took.begin(), took.end());
    const double ms = took[took.size() / 2];
    std::printf(
        "value rehearse-physics-%s %.0f times   (%.0f ms for %.0f s, events and verdict "
        "included)\n",
        name, lasted / ms, ms, lasted / 1e3);
}

int run() {
    const auto order = orderFor("pe-hd-dvs2207-1-2005", 10, "east", 40);
    if (!order || intoOneLog(*order) != 0) {
        return 1;
    }
    withPhysics("pe-hd-dvs2207-1-2005", 10, "pe-hd-10");
    withPhysics("pp-dvs2207-11", 12, "pp-12");
    withPhysics("pvdf-dvs2207-15", 8, "pvdf-8");
    return 0;
}

} // namespace
} // namespace seamclock::test

int main() {
    return seamclock::test::run();
}
