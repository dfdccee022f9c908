#include "core/practice/practice_course.h"

#include <algorithm>

namespace seamclock {

PracticeCourse::PracticeCourse(
    const SetLesson& setLesson, const WeldRecord& weld, const PracticeReplay& takeSeen,
    const JointPhysics& plannedJoint)
    : set(setLesson), record(weld), replay(takeSeen), planned(plannedJoint),
      told(retained(weld.events)), end(takeSeen.at(takeSeen.length()).view()) {
    if (const auto soak = when<SoakStarted>()) {
        soakBegan = view(*soak);
    }
}

std::optional<Milliseconds> PracticeCourse::plateLeft() const {
    constexpr Milliseconds kOpening{3'000}; // from the plate's faces to where it can go out
    const auto& left = end.instants.plateLeft;
    const auto& acts = take().acts;
    const auto out = std::find_if(acts.rbegin(), acts.rend(), [](const TimedAct& act) {
        return std::holds_alternative<TakePlateOut>(act.act);
    });
    return left && out != acts.rend() && *left + kOpening < out->at ? out->at : left;
}

void PracticeCourse::walk(
    Milliseconds from, Milliseconds to, Milliseconds step,
    const std::function<bool(const BenchView&)>& see) const {
    if (from > to) {
        return;
    }
    const std::vector<TimedAct>& acts = take().acts;
    VirtualBench bench = replay.at(from);
    auto next = std::upper_bound(
        acts.begin(), acts.end(), bench.now(),
        [](Milliseconds at, const TimedAct& act) { return at < act.at; });
    while (see(bench.view()) && bench.now() < to) {
        const Milliseconds until = std::min(bench.now() + step, to);
        for (; next != acts.end() && next->at <= until; ++next) {
            bench.advance(next->at - bench.now());
            static_cast<void>(bench.act(next->act)); // done when the replay was made
        }
        bench.advance(until - bench.now());
    }
}

double largestBead(const BenchView& view) {
    double largest = 0;
    for (const StationView& station : view.stations) {
        largest = std::max({largest, station.beadTopMm, station.beadBottomMm});
    }
    return largest;
}

double smallestBead(const BenchView& view) {
    double smallest = largestBead(view);
    for (const StationView& station : view.stations) {
        smallest = std::min({smallest, station.beadTopMm, station.beadBottomMm});
    }
    return smallest;
}

double leanMm(const BenchView& view) {
    const double below = std::max(view.leanMm[0], 0.0) + std::max(view.leanMm[1], 0.0);
    const double above = std::max(-view.leanMm[0], 0.0) + std::max(-view.leanMm[1], 0.0);
    return std::max(below, above);
}

double offParallelMm(const BenchView& view) {
    if (view.stations.empty()) {
        return 0;
    }
    const auto nearer = [](const StationView& a, const StationView& b) {
        return a.gapMm < b.gapMm;
    };
    const auto [least, most] =
        std::minmax_element(view.stations.begin(), view.stations.end(), nearer);
    // Stations are seen in their middle; the seam's ends lie half a station further out.
    const auto count = static_cast<double>(view.stations.size());
    return (most->gapMm - least->gapMm) * count / (count - 1);
}

} // namespace seamclock
