#include "core/practice/practice_replay.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace seamclock {
namespace {

/// How far apart the bench is kept; further in a take so long that it would fill the memory.
constexpr Milliseconds kKeptEvery{5'000};
constexpr std::int64_t kMostKept = 2'000;

Milliseconds keptEvery(const PracticeTake& take) {
    return std::max(kKeptEvery, take.length / kMostKept);
}

} // namespace

Result<PracticeReplay> PracticeReplay::make(
    const BenchSetup& setup, const PracticeTake& take,
    const std::function<bool(double share)>& each) {
    auto bench = VirtualBench::set(setup);
    if (!bench) {
        return tl::unexpected<Error>(bench.error());
    }
    PracticeReplay replay;
    replay.m_take = take;
    replay.m_kept.push_back(*bench);
    const Milliseconds every = keptEvery(take);
    std::size_t next = 0;
    for (Milliseconds until{0}; bench->now() < take.length || next < take.acts.size();) {
        until = std::min(until + every, take.length);
        for (; next < take.acts.size() && take.acts[next].at <= until; ++next) {
            const TimedAct& act = take.acts[next];
            bench->advance(act.at - bench->now());
            if (const auto done = bench->act(act.act); !done) {
                return fail(
                    ErrorCode::Malformed,
                    "act " + std::to_string(next + 1) + " of the take, at " +
                        std::to_string(act.at.count()) +
                        " ms, can't be done at this bench: " + done.error().detail);
            }
        }
        if (until == take.length && next < take.acts.size()) {
            return fail(
                ErrorCode::Malformed, "act " + std::to_string(next + 1) + " of the take is at " +
                                          std::to_string(take.acts[next].at.count()) +
                                          " ms, behind its end at " +
                                          std::to_string(take.length.count()) + " ms");
        }
        bench->advance(until - bench->now());
        replay.m_kept.push_back(*bench);
        const double share = static_cast<double>(until.count()) /
                             static_cast<double>(std::max<std::int64_t>(take.length.count(), 1));
        if (each && !each(share)) {
            return fail(ErrorCode::Refused, "the replay was stopped");
        }
    }
    return replay;
}

VirtualBench PracticeReplay::at(Milliseconds time) const {
    const Milliseconds wanted = std::clamp(time, Milliseconds(0), m_take.length);
    const auto behind = std::upper_bound(
        m_kept.begin(), m_kept.end(), wanted,
        [](Milliseconds at, const VirtualBench& bench) { return at < bench.now(); });
    VirtualBench bench = *std::prev(behind);
    // A kept bench has all acts up to its own time, that time included; the first has none.
    auto next = m_take.acts.begin();
    if (std::prev(behind) != m_kept.begin()) {
        next = std::upper_bound(
            m_take.acts.begin(), m_take.acts.end(), bench.now(),
            [](Milliseconds at, const TimedAct& act) { return at < act.at; });
    }
    for (; next != m_take.acts.end() && next->at <= wanted; ++next) {
        bench.advance(next->at - bench.now());
        // It was done when the replay was made.
        const auto done = bench.act(next->act);
        assert(done);
        static_cast<void>(done);
    }
    bench.advance(wanted - bench.now());
    return bench;
}

} // namespace seamclock
