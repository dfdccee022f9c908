// What no plan of the day can beat. Each of the three is a necessary condition, so that the
// greatest of them is a bound:
//   filled    work W that is shared by some hands, each free from a_k on, is not done before the
//             least C with the sum of max(0, C - a_k) at least W: up to C nobody gives more.
//   people    of any set of seams, the last to be locked was locked when all their hands-on work
//             was done, and then its cooling and release follow: filled(hands) + the least tail.
//             Taken for the seams with the longest tails, 1, 2, … of them. Releases are work, too:
//             all of it at once, and the releases alone, which begin at the earliest when the first
//             of them has cooled.
//   benches   of seams that only a group of benches makes, each takes one of them from preparation
//             to release: filled(whole times) over that group.
//   one seam  its bench is free and its plate ready at the earliest then, and then all follows. A
//             wait for the plate by way of another seam is never shorter (plateWait obeys the
//             triangle inequality).
#include "core/shift/day_plan.h"

#include <algorithm>
#include <numeric>
#include <set>

namespace seamclock {

namespace {

Milliseconds filled(Milliseconds work, std::vector<Milliseconds> freeFrom) {
    if (work.count() <= 0 || freeFrom.empty()) {
        return Milliseconds{0};
    }
    std::sort(freeFrom.begin(), freeFrom.end());
    Milliseconds sum{0};
    for (std::size_t k = 0; k < freeFrom.size(); ++k) {
        sum += freeFrom[k];
        const auto hands = static_cast<std::int64_t>(k) + 1;
        // With the first k + 1 of them: rounded up, since times are whole milliseconds.
        const Milliseconds until{(sum + work + Milliseconds{hands - 1}).count() / hands};
        if (k + 1 == freeFrom.size() || until <= freeFrom[k + 1]) {
            return until;
        }
    }
    return Milliseconds{0}; // not reached: the last of them always ends it
}

/// The least that a seam asks for, whatever the bench.
struct Least {
    std::size_t seam = 0;
    Milliseconds hands{0};
    Milliseconds tail{0}; // cooling and release
    Milliseconds release{0};
    Milliseconds cooled{0}; // the earliest end of its cooling
    Milliseconds done{0};   // the earliest end of all
};

class Bounds {
public:
    explicit Bounds(const DayWork& work) : m_work(work) {
        m_peopleFree.assign(work.people.size(), Milliseconds{0});
        for (const DayBench& bench : work.benches) {
            Milliseconds plateFree{0};
            Milliseconds free{0};
            if (bench.running) {
                const SeamTimes& left = bench.running->left;
                plateFree = left.hands();
                free = left.whole();
                m_releases += left.release;
                if (left.release.count() > 0) {
                    m_cooled.push_back({left.hands() + left.cooling, left.release});
                }
                if (plateFree.count() > 0) {
                    m_peopleFree[bench.running->person] =
                        std::max(m_peopleFree[bench.running->person], plateFree);
                }
            }
            m_plateFree.push_back(plateFree);
            m_benchFree.push_back(free);
        }
        for (std::size_t seam = 0; seam < work.seams.size(); ++seam) {
            addSeam(seam);
        }
    }

    DayBound greatest() {
        // Of equal ones the first, which says most.
        bySeams();
        byBenches();
        consider(byPeople(), DayLimit::People, {});
        return m_out;
    }

private:
    void consider(Milliseconds atLeast, DayLimit by, std::vector<std::string> which) {
        if (atLeast > m_out.atLeast) {
            m_out = {atLeast, by, std::move(which)};
        }
    }

    void addSeam(std::size_t seam) {
        std::optional<Least> least;
        const DaySeam& one = m_work.seams[seam];
        if (!one.welders.empty() &&
            std::find(one.welders.begin(), one.welders.end(), true) == one.welders.end()) {
            return; // left out of every plan
        }
        for (std::size_t bench = 0; bench < one.on.size(); ++bench) {
            if (!one.on[bench]) {
                continue;
            }
            const SeamTimes& times = *one.on[bench];
            const Milliseconds plate =
                m_plateFree[bench] + plateWait(m_work.benches[bench].plate, times.plate);
            const Milliseconds begins = std::max(m_benchFree[bench], plate - times.preparation);
            const Least here{
                seam,
                times.hands(),
                times.cooling + times.release,
                times.release,
                begins + times.hands() + times.cooling,
                begins + times.whole()};
            if (!least) {
                least = here;
            } else {
                least->hands = std::min(least->hands, here.hands);
                least->tail = std::min(least->tail, here.tail);
                least->release = std::min(least->release, here.release);
                least->cooled = std::min(least->cooled, here.cooled);
                least->done = std::min(least->done, here.done);
            }
        }
        if (least) {
            m_seams.push_back(*least);
            m_releases += least->release;
            m_hands += least->hands;
            m_cooled.push_back({least->cooled, least->release});
        }
    }

    Milliseconds byPeople() {
        Milliseconds most = filled(m_hands + m_releases, m_peopleFree);
        std::vector<Least> seams = m_seams;
        std::stable_sort(seams.begin(), seams.end(), [](const Least& a, const Least& b) {
            return a.tail > b.tail;
        });
        Milliseconds hands{0};
        for (const Least& one : seams) {
            hands += one.hands;
            most = std::max(most, filled(hands, m_peopleFree) + one.tail);
        }
        // The releases from the one that has cooled last back.
        std::vector<Cooled> cooled = m_cooled;
        std::stable_sort(cooled.begin(), cooled.end(), [](const Cooled& a, const Cooled& b) {
            return a.at > b.at;
        });
        Milliseconds releases{0};
        for (const Cooled& one : cooled) {
            releases += one.release;
            std::vector<Milliseconds> free = m_peopleFree;
            for (Milliseconds& from : free) {
                from = std::max(from, one.at);
            }
            most = std::max(most, filled(releases, std::move(free)));
        }
        return most;
    }

    void byBenches() {
        std::set<std::vector<std::size_t>> groups;
        std::vector<std::size_t> all(m_work.benches.size());
        std::iota(all.begin(), all.end(), std::size_t{0});
        groups.insert(all);
        for (const Least& one : m_seams) {
            groups.insert(benchesOf(one.seam));
        }
        for (const auto& group : groups) {
            Milliseconds work{0};
            for (const Least& one : m_seams) {
                const auto own = benchesOf(one.seam);
                if (std::includes(group.begin(), group.end(), own.begin(), own.end())) {
                    work += leastWhole(one.seam);
                }
            }
            std::vector<Milliseconds> free;
            std::vector<std::string> names;
            for (const std::size_t bench : group) {
                free.push_back(m_benchFree[bench]);
                names.push_back(m_work.benches[bench].id);
            }
            consider(filled(work, std::move(free)), DayLimit::Benches, std::move(names));
        }
    }

    void bySeams() {
        for (const Least& one : m_seams) {
            consider(one.done, DayLimit::OneSeam, {m_work.seams[one.seam].label});
        }
        for (const DayBench& bench : m_work.benches) {
            if (bench.running) {
                consider(bench.running->left.whole(), DayLimit::OneSeam, {bench.running->label});
            }
        }
    }

    std::vector<std::size_t> benchesOf(std::size_t seam) const {
        std::vector<std::size_t> out;
        for (std::size_t bench = 0; bench < m_work.seams[seam].on.size(); ++bench) {
            if (m_work.seams[seam].on[bench]) {
                out.push_back(bench);
            }
        }
        return out;
    }

    Milliseconds leastWhole(std::size_t seam) const {
        std::optional<Milliseconds> least;
        for (const auto& times : m_work.seams[seam].on) {
            if (times && (!least || times->whole() < *least)) {
                least = times->whole();
            }
        }
        return least.value_or(Milliseconds{0});
    }

    struct Cooled {
        Milliseconds at{0};
        Milliseconds release{0};
    };

    const DayWork& m_work;
    std::vector<Milliseconds> m_peopleFree;
    std::vector<Milliseconds> m_plateFree;
    std::vector<Milliseconds> m_benchFree;
    std::vector<Least> m_seams;
    std::vector<Cooled> m_cooled;
    Milliseconds m_hands{0};
    Milliseconds m_releases{0};
    DayBound m_out;
};

} // namespace

DayBound boundOf(const DayWork& work) {
    return Bounds(work).greatest();
}

} // namespace seamclock
