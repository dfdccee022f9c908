// What no plan of the day can beat. Each of these is a necessary condition, so that the greatest of
// them is a bound:
//   filled    work W that is shared by some hands, each free from a_k on, is not done before the
//             least C with the sum of max(0, C - a_k) at least W: up to C nobody gives more.
//   people    of any set of seams, the last to be locked was locked when all their hands-on work
//             was done, and then its cooling and release follow: filled(hands) + the least tail.
//             Taken for the seams with the longest tails, 1, 2, … of them. Releases are work, too:
//             all of it at once, and the releases alone, which begin at the earliest when the first
//             of them has cooled.
//   welders   the same of the seams that only a group of people may weld, with that group's hands
//             alone: nobody else may do this work, whatever else the group does besides. Anybody
//             releases, so their releases are no work of the group. The groups are those that the
//             seams name. (The load bound of machines that may do only some jobs, of textbooks on
//             scheduling; from memory.)
//   benches   of seams that only a group of benches makes, each takes one of them from preparation
//             to release: filled(whole times) over that group. A bench is free from when the
//             first of all seams can be begun there: its plate may have to warm up.
//   trials    where no bench that makes a seam of a set-up has its trial joint, the first such seam
//             to be begun has one made before it, on its bench, of this seam or another of the
//             set-up: at least the least that any of them asks for is done besides, by people, on
//             the bench, and before that seam is begun. It is locked before it, so it counts among
//             the work before the last lock of every set of seams that has one of the set-up; among
//             a group's people only where the whole set-up is theirs. Of a group's benches it is
//             made on one, as soon as one seam of the set-up can be made nowhere else.
//   one seam  its bench and one who may weld it are free and its plate is ready at the earliest
//             then, and then all follows. A
//             wait for the plate by way of another seam is never shorter (plateWait obeys the
//             triangle inequality).
#include "core/shift/day_plan.h"

#include <algorithm>
#include <iterator>
#include <map>
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
    Milliseconds until{0};
    for (std::size_t k = 0; k < freeFrom.size(); ++k) {
        sum += freeFrom[k];
        const auto hands = static_cast<std::int64_t>(k) + 1;
        // With the first k + 1 of them: rounded up, since times are whole milliseconds.
        until = Milliseconds{(sum + work + Milliseconds{hands - 1}).count() / hands};
        if (k + 1 < freeFrom.size() && until <= freeFrom[k + 1]) {
            break;
        }
    }
    return until;
}

/// The least that a trial joint of a set-up takes, where one is surely made.
struct LeastTrial {
    Milliseconds hands{0};
    Milliseconds release{0};
    bool isDue = true;
    std::vector<std::size_t> seams; // of the set-up
};

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
            const bool waits = bench.tried && (!bench.running || bench.running->trial);
            m_benchFree.push_back(free + (waits ? bench.tried->decision : Milliseconds{0}));
        }
        for (std::size_t seam = 0; seam < work.seams.size(); ++seam) {
            addToSetUp(seam);
        }
        for (std::size_t seam = 0; seam < work.seams.size(); ++seam) {
            addSeam(seam);
        }
        for (const auto& [setUp, trial] : m_trials) {
            if (trial.isDue) {
                m_hands += trial.hands;
                m_releases += trial.release;
            }
        }
    }

    DayBound greatest() {
        // Of equal ones the first, which says most.
        bySeams();
        byBenches();
        byWelders();
        consider(byPeople(), DayLimit::People, {});
        return m_out;
    }

private:
    void consider(Milliseconds atLeast, DayLimit by, std::vector<std::string> which) {
        if (atLeast > m_out.atLeast) {
            m_out = {atLeast, by, std::move(which)};
        }
    }

    /// Else it is left out of every plan.
    bool isPossible(const DaySeam& seam) const {
        return (seam.welders.empty() ||
                std::find(seam.welders.begin(), seam.welders.end(), true) != seam.welders.end()) &&
               std::any_of(seam.on.begin(), seam.on.end(), [](const auto& on) { return on; });
    }

    bool isTriedOn(std::size_t bench, const std::string& setUp) const {
        const auto& tried = m_work.benches[bench].tried;
        return tried && tried->setUp == setUp;
    }

    void addToSetUp(std::size_t seam) {
        const DaySeam& one = m_work.seams[seam];
        if (one.setUp.empty() || !isPossible(one)) {
            return;
        }
        LeastTrial& trial = m_trials[one.setUp];
        const auto lower = [&trial](Milliseconds LeastTrial::*of, Milliseconds to) {
            trial.*of = trial.seams.empty() ? to : std::min(trial.*of, to);
        };
        for (std::size_t bench = 0; bench < one.on.size(); ++bench) {
            if (one.on[bench]) {
                const SeamTimes& times = *one.on[bench];
                lower(&LeastTrial::hands, times.hands());
                lower(&LeastTrial::release, times.release);
                trial.isDue = trial.isDue && !isTriedOn(bench, one.setUp);
                trial.seams.push_back(seam);
            }
        }
    }

    Milliseconds welderFree(const DaySeam& seam) const {
        const std::vector<Milliseconds> free = freeOf(seam.welders);
        return free.empty() ? Milliseconds{0} : *std::min_element(free.begin(), free.end());
    }

    /// The earliest that one who may weld it is at that bench with the plate ready.
    Milliseconds beginsOn(std::size_t bench, const DaySeam& seam) const {
        const SeamTimes& times = *seam.on[bench];
        const Milliseconds plate =
            m_plateFree[bench] + plateWait(m_work.benches[bench].plate, times.plate);
        return std::max({m_benchFree[bench], plate - times.preparation, welderFree(seam)});
    }

    /// The earliest that a trial joint for that seam can be decided on there.
    Milliseconds triedOn(std::size_t bench, const DaySeam& seam) const {
        if (seam.setUp.empty() || isTriedOn(bench, seam.setUp)) {
            return Milliseconds{0};
        }
        std::optional<Milliseconds> least;
        for (const std::size_t other : m_trials.at(seam.setUp).seams) {
            const DaySeam& like = m_work.seams[other];
            if (like.on[bench]) {
                const Milliseconds here =
                    beginsOn(bench, like) + like.on[bench]->whole() + m_work.decision;
                least = least ? std::min(*least, here) : here;
            }
        }
        return least.value_or(Milliseconds{0});
    }

    void addSeam(std::size_t seam) {
        std::optional<Least> least;
        const DaySeam& one = m_work.seams[seam];
        if (!isPossible(one)) {
            return;
        }
        for (std::size_t bench = 0; bench < one.on.size(); ++bench) {
            if (!one.on[bench]) {
                continue;
            }
            const SeamTimes& times = *one.on[bench];
            const Milliseconds begins = std::max(beginsOn(bench, one), triedOn(bench, one));
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

    /// Of these people, in their order; none named: of all.
    std::vector<Milliseconds> freeOf(const std::vector<bool>& group) const {
        std::vector<Milliseconds> out;
        for (std::size_t person = 0; person < m_peopleFree.size(); ++person) {
            if (group.empty() || group[person]) {
                out.push_back(m_peopleFree[person]);
            }
        }
        return out;
    }

    /// Of seams that these hands alone weld. `counts`: whether a set-up's trial joint is theirs,
    /// too.
    template <class Counts>
    Milliseconds lastLock(
        std::vector<Least> seams, const std::vector<Milliseconds>& freeFrom,
        const Counts& counts) const {
        std::stable_sort(seams.begin(), seams.end(), [](const Least& a, const Least& b) {
            return a.tail > b.tail;
        });
        Milliseconds most{0};
        Milliseconds hands{0};
        std::set<std::string> tried;
        for (const Least& one : seams) {
            hands += one.hands;
            const LeastTrial* trial = trialOf(one.seam);
            if (trial != nullptr && counts(*trial) &&
                tried.insert(m_work.seams[one.seam].setUp).second) {
                hands += trial->hands;
            }
            most = std::max(most, filled(hands, freeFrom) + one.tail);
        }
        return most;
    }

    /// That is surely made before the first of its set-up; null: none.
    const LeastTrial* trialOf(std::size_t seam) const {
        const auto found = m_trials.find(m_work.seams[seam].setUp);
        return found == m_trials.end() || !found->second.isDue ? nullptr : &found->second;
    }

    /// Whether nobody but the group may weld it.
    bool isOnlyFor(const std::vector<bool>& group, std::size_t seam) const {
        const std::vector<bool>& welders = m_work.seams[seam].welders;
        for (std::size_t person = 0; person < group.size(); ++person) {
            if ((welders.empty() || welders[person]) && !group[person]) {
                return false;
            }
        }
        return true;
    }

    void byWelders() {
        std::set<std::vector<bool>> groups;
        for (const Least& one : m_seams) {
            groups.insert(m_work.seams[one.seam].welders);
        }
        for (const std::vector<bool>& group : groups) {
            if (std::find(group.begin(), group.end(), false) == group.end()) {
                continue; // all of them
            }
            std::vector<Least> seams;
            std::copy_if(
                m_seams.begin(), m_seams.end(), std::back_inserter(seams),
                [&](const Least& one) { return isOnlyFor(group, one.seam); });
            std::vector<std::string> names;
            for (std::size_t person = 0; person < group.size(); ++person) {
                if (group[person]) {
                    names.push_back(m_work.people[person]);
                }
            }
            const auto isTheirs = [&](const LeastTrial& trial) {
                return std::all_of(trial.seams.begin(), trial.seams.end(), [&](std::size_t seam) {
                    return isOnlyFor(group, seam);
                });
            };
            consider(
                lastLock(std::move(seams), freeOf(group), isTheirs), DayLimit::People,
                std::move(names));
        }
    }

    Milliseconds byPeople() {
        Milliseconds most = std::max(
            filled(m_hands + m_releases, m_peopleFree),
            lastLock(m_seams, m_peopleFree, [](const LeastTrial&) { return true; }));
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
            const auto isTheirs = [&](std::size_t seam) {
                const auto own = benchesOf(seam);
                return std::includes(group.begin(), group.end(), own.begin(), own.end());
            };
            Milliseconds work{0};
            for (const Least& one : m_seams) {
                work += isTheirs(one.seam) ? leastWhole(one.seam) : Milliseconds{0};
            }
            for (const auto& [setUp, trial] : m_trials) {
                if (std::any_of(trial.seams.begin(), trial.seams.end(), isTheirs)) {
                    work += leastTrialOn(group, setUp, trial);
                }
            }
            std::vector<Milliseconds> free;
            std::vector<std::string> names;
            for (const std::size_t bench : group) {
                free.push_back(firstOn(bench));
                names.push_back(m_work.benches[bench].id);
            }
            consider(filled(work, std::move(free)), DayLimit::Benches, std::move(names));
        }
    }

    /// That is made on one of these benches before the first seam of the set-up there; 0 where one
    /// of them has it.
    Milliseconds leastTrialOn(
        const std::vector<std::size_t>& group, const std::string& setUp,
        const LeastTrial& trial) const {
        std::optional<Milliseconds> least;
        for (const std::size_t bench : group) {
            if (isTriedOn(bench, setUp)) {
                return Milliseconds{0};
            }
            for (const std::size_t seam : trial.seams) {
                if (const auto& times = m_work.seams[seam].on[bench]) {
                    const Milliseconds here = times->whole() + m_work.decision;
                    least = least ? std::min(*least, here) : here;
                }
            }
        }
        return least.value_or(Milliseconds{0});
    }

    /// The earliest that anything at all can be begun on that bench.
    Milliseconds firstOn(std::size_t bench) const {
        std::optional<Milliseconds> first;
        for (const Least& one : m_seams) {
            if (m_work.seams[one.seam].on[bench]) {
                const Milliseconds here = beginsOn(bench, m_work.seams[one.seam]);
                first = first ? std::min(*first, here) : here;
            }
        }
        return first ? std::max(m_benchFree[bench], *first) : m_benchFree[bench];
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
    std::map<std::string, LeastTrial> m_trials; // by set-up
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
