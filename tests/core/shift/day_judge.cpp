#include "tests/core/shift/day_judge.h"

#include <algorithm>
#include <map>
#include <unordered_map>
#include <utility>

namespace seamclock::test {

namespace {

using Ms = std::int64_t;

// By the words of day_plan.h: ten minutes and twelve seconds for a kelvin, unless nothing changes.
Ms wait(const PlateUse& from, const PlateUse& to) {
    const bool same = from.material == to.material && from.targetMc == to.targetMc;
    return same ? 0 : 600'000 + std::abs(from.targetMc - to.targetMc) * 12;
}

struct Seen {
    std::map<DayKind, std::pair<Ms, Ms>> at;
    std::map<DayKind, std::size_t> by;
    std::size_t bench = 0;
    std::size_t count = 0;
};

const DayKind kInOrder[] = {DayKind::Preparation, DayKind::Alignment, DayKind::Soak,
                            DayKind::Changeover,  DayKind::BuildUp,   DayKind::Cooling};

Ms lengthOf(const SeamTimes& times, DayKind kind) {
    switch (kind) {
    case DayKind::Preparation:
        return times.preparation.count();
    case DayKind::Alignment:
        return times.alignment.count();
    case DayKind::Soak:
        return times.soak.count();
    case DayKind::Changeover:
        return times.changeover.count();
    case DayKind::BuildUp:
        return times.buildUp.count();
    case DayKind::Cooling:
        return times.cooling.count();
    case DayKind::Release:
        return times.release.count();
    case DayKind::PlateWait:
    case DayKind::Cooled:
    case DayKind::Decision:
        return 0;
    }
    return 0;
}

std::string nameOf(const std::string& label, bool trial) {
    return trial ? "the trial of " + label : label;
}

class Rules {
public:
    Rules(const DayWork& work, const DayPlan& plan) : m_work(work), m_plan(plan) {}

    std::vector<std::string> broken() {
        gather();
        peopleAndBenches();
        for (const DaySeam& seam : m_work.seams) {
            const bool possible =
                std::any_of(seam.on.begin(), seam.on.end(), [](const auto& on) { return on; }) &&
                (seam.welders.empty() ||
                 std::find(seam.welders.begin(), seam.welders.end(), true) != seam.welders.end());
            if (possible) {
                wholeSeam(seam.label, nullptr, &seam);
                if (m_seen.count(nameOf(seam.label, true)) > 0) {
                    wholeSeam(nameOf(seam.label, true), nullptr, &seam);
                }
            } else if (m_seen.count(seam.label) > 0) {
                m_out.push_back(seam.label + " can't be made and is in the plan");
            }
        }
        for (std::size_t bench = 0; bench < m_work.benches.size(); ++bench) {
            if (m_work.benches[bench].running) {
                const DayRunning& running = *m_work.benches[bench].running;
                wholeSeam(nameOf(running.label, running.trial), &running, nullptr);
            }
        }
        for (std::size_t bench = 0; bench < m_work.benches.size(); ++bench) {
            course(bench);
        }
        return m_out;
    }

private:
    void gather() {
        Ms last = 0;
        for (const DayStretch& one : m_plan.stretches) {
            Seen& seen = m_seen[nameOf(one.label, one.trial)];
            if (seen.count++ > 0 && seen.bench != one.bench) {
                m_out.push_back(one.label + " changes its bench");
            }
            seen.bench = one.bench;
            if (!seen.at.emplace(one.kind, std::pair(one.from.count(), one.to.count())).second) {
                m_out.push_back(one.label + " has a stretch twice");
            }
            if (needsPerson(one.kind) != one.person.has_value()) {
                m_out.push_back(one.label + " has a stretch with nobody, or with somebody idle");
            }
            if (one.person) {
                seen.by[one.kind] = *one.person;
            }
            if (one.kind == DayKind::Release || one.kind == DayKind::Cooling) {
                last = std::max(last, one.to.count());
            }
        }
        if (last != m_plan.finish.count()) {
            m_out.push_back("the finish is not the last end");
        }
    }

    /// Nobody and no bench has two things at once.
    void peopleAndBenches() {
        const auto apart = [&](const DayStretch& a, const DayStretch& b) {
            return a.to <= b.from || b.to <= a.from;
        };
        for (std::size_t i = 0; i < m_plan.stretches.size(); ++i) {
            for (std::size_t k = i + 1; k < m_plan.stretches.size(); ++k) {
                const DayStretch& a = m_plan.stretches[i];
                const DayStretch& b = m_plan.stretches[k];
                if (a.person && b.person && *a.person == *b.person && !apart(a, b)) {
                    m_out.push_back("one person at " + a.label + " and " + b.label);
                }
                const bool plate = a.kind == DayKind::PlateWait || b.kind == DayKind::PlateWait;
                if (a.bench == b.bench && !plate && !apart(a, b)) {
                    m_out.push_back("one bench for " + a.label + " and " + b.label);
                }
            }
        }
    }

    void wholeSeam(const std::string& label, const DayRunning* running, const DaySeam* seam) {
        const auto found = m_seen.find(label);
        if (found == m_seen.end()) {
            m_out.push_back(label + " is not in the plan");
            return;
        }
        Seen& seen = found->second;
        if (seam != nullptr && !seam->on[seen.bench]) {
            m_out.push_back(label + " is on a bench that can't make it");
            return;
        }
        const SeamTimes& times = running != nullptr ? running->left : *seam->on[seen.bench];
        std::optional<Ms> ends;
        if (running != nullptr) {
            ends = 0;
        }
        std::optional<std::size_t> person;
        for (const DayKind kind : kInOrder) {
            const Ms takes = lengthOf(times, kind);
            const auto at = seen.at.find(kind);
            if (takes == 0) {
                continue;
            }
            if (at == seen.at.end() || at->second.second - at->second.first != takes ||
                (ends && at->second.first != *ends)) {
                m_out.push_back(label + " is not made in one go");
                return;
            }
            ends = at->second.second;
            if (needsPerson(kind)) {
                if (person && *person != seen.by[kind]) {
                    m_out.push_back(label + " changes hands");
                }
                person = seen.by[kind];
                if (seam != nullptr && !seam->welders.empty() && !seam->welders.at(*person)) {
                    m_out.push_back(label + " is welded by one who may not");
                }
            }
        }
        const Ms takes = lengthOf(times, DayKind::Release);
        const auto release = seen.at.find(DayKind::Release);
        const bool released =
            takes == 0 ||
            (release != seen.at.end() && release->second.second - release->second.first == takes &&
             release->second.first >= ends.value_or(0));
        if (!released) {
            m_out.push_back(label + " is released too early, too fast or never");
        }
    }

    struct Begun {
        Ms from = 0;
        const DaySeam* seam = nullptr;
        bool trial = false;
    };

    /// On that bench, by the beginning.
    std::vector<Begun> begunOn(std::size_t bench) const {
        std::vector<Begun> begun;
        for (const DaySeam& seam : m_work.seams) {
            for (const bool trial : {false, true}) {
                const auto seen = m_seen.find(nameOf(seam.label, trial));
                if (seen == m_seen.end() || seen->second.bench != bench) {
                    continue;
                }
                Ms from = INT64_MAX;
                for (const DayKind kind : kInOrder) {
                    const auto at = seen->second.at.find(kind);
                    from = at == seen->second.at.end() ? from : std::min(from, at->second.first);
                }
                begun.push_back({from, &seam, trial});
            }
        }
        std::sort(begun.begin(), begun.end(), [](const Begun& a, const Begun& b) {
            return a.from < b.from;
        });
        return begun;
    }

    /// Whether the plate is ready for each, each trial joint is made that must be and no other, and
    /// nothing is begun before it is decided on.
    void course(std::size_t bench) {
        PlateUse plate = m_work.benches[bench].plate;
        const auto& tried = m_work.benches[bench].tried;
        const auto& running = m_work.benches[bench].running;
        std::string setUp = tried ? tried->setUp : "";
        Ms free = running ? running->left.hands().count() : 0;
        Ms decided = tried && !running ? tried->decision.count() : 0;
        if (running && running->trial) {
            decided = decidedOn(nameOf(running->label, true), tried->decision.count());
        }
        const DaySeam* waits = nullptr; // its trial joint was the last
        for (const auto& [from, seam, trial] : begunOn(bench)) {
            const SeamTimes& times = *seam->on[bench];
            if (from + times.preparation.count() < free + wait(plate, times.plate)) {
                m_out.push_back(seam->label + " is aligned before the plate is ready");
            }
            if (from < decided) {
                m_out.push_back(seam->label + " is begun before the trial is decided on");
            }
            const bool due = !seam->setUp.empty() && seam->setUp != setUp;
            if (due != trial) {
                m_out.push_back(seam->label + (due ? " has no trial joint" : " has one too many"));
            }
            if (waits != nullptr && waits != seam) {
                m_out.push_back(waits->label + " does not follow its trial joint");
            }
            waits = trial ? seam : nullptr;
            if (trial) {
                decided = decidedOn(nameOf(seam->label, true), m_work.decision.count());
            }
            setUp = seam->setUp;
            plate = times.plate;
            free = from + times.hands().count();
        }
        if (waits != nullptr) {
            m_out.push_back(waits->label + " is tried and not made");
        }
    }

    /// Right after it has left the bench.
    Ms decidedOn(const std::string& trial, Ms takes) {
        const Seen& seen = m_seen[trial];
        const auto release = seen.at.find(DayKind::Release);
        const auto decision = seen.at.find(DayKind::Decision);
        if (takes == 0 || release == seen.at.end()) {
            return 0;
        }
        const bool sound = decision != seen.at.end() &&
                           decision->second.first == release->second.second &&
                           decision->second.second - decision->second.first == takes;
        if (!sound) {
            m_out.push_back(trial + " is not decided on when it is out");
            return 0;
        }
        return decision->second.second;
    }

    const DayWork& m_work;
    const DayPlan& m_plan;
    std::map<std::string, Seen> m_seen;
    std::vector<std::string> m_out;
};

struct Place {
    PlateUse plate;
    Ms plateFree = 0;
    Ms free = 0; // or cooled, while something is on it
    Ms release = 0;
    int seam = -1; // -1: nothing on it; -2: what was under way at first
    int held = -1; // the seam of the trial joint that is on it, or was last
    bool trial = false;
    Ms decision = 0; // that follows
    int tried = 0;   // the set-up of its trial joint, as a number; 0: of none
};

struct Moment {
    std::vector<Place> benches;
    std::vector<std::vector<Ms>> people; // of each class, sorted
    Ms last = 0;                         // the last beginning
    Ms finish = 0;
    unsigned left = 0; // seams, as bits
};

class Search {
public:
    Search(const DayWork& work, Ms notAfter, bool shortcuts)
        : m_work(work), m_best(notAfter + 1), m_shortcuts(shortcuts) {
        for (const DaySeam& seam : work.seams) {
            m_setUpOf.push_back(numberOf(seam.setUp));
        }
    }

    Optimum run() {
        Moment now;
        std::vector<Ms> people(m_work.people.size(), 0);
        for (const DayBench& bench : m_work.benches) {
            Place place;
            place.plate = bench.plate;
            if (bench.tried) {
                place.tried = numberOf(bench.tried->setUp);
                place.decision = bench.tried->decision.count();
                place.free = bench.running ? 0 : place.decision;
            }
            if (bench.running) {
                place.trial = bench.running->trial;
                const SeamTimes& left = bench.running->left;
                place.plateFree = left.hands().count();
                place.free = place.plateFree + left.cooling.count();
                place.release = left.release.count();
                place.seam = -2;
                Ms& person = people[bench.running->person];
                person = std::max(person, place.plateFree);
                now.finish = std::max(now.finish, place.free);
            }
            now.benches.push_back(place);
        }
        classify(people, now);
        for (std::size_t seam = 0; seam < m_work.seams.size(); ++seam) {
            const auto& on = m_work.seams[seam].on;
            const bool hasWelder = std::any_of(
                m_mayWeld.begin(), m_mayWeld.end(), [&](auto& may) { return may[seam]; });
            if (hasWelder &&
                std::any_of(on.begin(), on.end(), [](const auto& one) { return one; })) {
                now.left |= 1U << seam;
            }
        }
        go(now);
        m_out.finish = Milliseconds(m_best);
        return m_out;
    }

private:
    int numberOf(const std::string& setUp) {
        const auto found = std::find(m_setUps.begin(), m_setUps.end(), setUp);
        const auto place = static_cast<int>(found - m_setUps.begin());
        if (found == m_setUps.end()) {
            m_setUps.push_back(setUp);
        }
        return place;
    }

    /// Those who may weld the same seams are alike: of them whoever is free first is as good as
    /// any.
    void classify(const std::vector<Ms>& people, Moment& now) {
        for (std::size_t person = 0; person < people.size(); ++person) {
            std::vector<bool> may;
            for (const DaySeam& seam : m_work.seams) {
                may.push_back(seam.welders.empty() || seam.welders[person]);
            }
            const auto known = std::find(m_mayWeld.begin(), m_mayWeld.end(), may);
            const auto place = static_cast<std::size_t>(known - m_mayWeld.begin());
            if (known == m_mayWeld.end()) {
                m_mayWeld.push_back(may);
                now.people.emplace_back();
            }
            now.people[place].push_back(people[person]);
        }
        for (auto& alike : now.people) {
            std::sort(alike.begin(), alike.end());
        }
    }

    void go(const Moment& now) {
        ++m_out.looked;
        const bool over =
            now.left == 0 && std::all_of(now.benches.begin(), now.benches.end(), [](const auto& b) {
                return b.seam == -1 && b.held == -1;
            });
        if (over) {
            if (now.finish < m_best) {
                m_best = now.finish;
                m_out.found = true;
            }
            return;
        }
        if (m_shortcuts && (leastFinish(now) >= m_best || isBeaten(now))) {
            return;
        }
        for (std::size_t bench = 0; bench < now.benches.size(); ++bench) {
            for (std::size_t who = 0; who < now.people.size(); ++who) {
                byOne(now, bench, who);
            }
        }
    }

    void byOne(const Moment& now, std::size_t bench, std::size_t who) {
        if (now.benches[bench].seam != -1) {
            go(released(now, bench, who));
            return;
        }
        const int held = now.benches[bench].held;
        for (unsigned seam = 0; seam < m_work.seams.size(); ++seam) {
            const bool next =
                held == -1 ? (now.left & (1U << seam)) != 0 : held == static_cast<int>(seam);
            if (next && m_work.seams[seam].on[bench] && m_mayWeld[who][seam]) {
                go(begun(now, bench, seam, who));
            }
        }
    }

    static void take(Moment& then, std::size_t who, Ms from, Ms takes) {
        then.last = from;
        auto& alike = then.people[who];
        alike.front() = from + takes; // any of those free by then is as good
        std::sort(alike.begin(), alike.end());
    }

    static Moment released(const Moment& now, std::size_t bench, std::size_t who) {
        Moment then = now;
        Place& place = then.benches[bench];
        const Ms from = std::max({now.last, now.people[who].front(), place.free});
        take(then, who, from, place.release);
        place.free = from + place.release + (place.trial ? place.decision : 0);
        place.seam = -1;
        then.finish = std::max(then.finish, from + place.release);
        return then;
    }

    Moment begun(const Moment& now, std::size_t bench, unsigned seam, std::size_t who) const {
        Moment then = now;
        Place& place = then.benches[bench];
        const SeamTimes& times = *m_work.seams[seam].on[bench];
        const Ms plate =
            place.plateFree + wait(place.plate, times.plate) - times.preparation.count();
        const Ms from = std::max({now.last, now.people[who].front(), place.free, plate});
        take(then, who, from, times.hands().count());
        place.plate = times.plate;
        place.plateFree = from + times.hands().count();
        place.free = place.plateFree + times.cooling.count();
        place.release = times.release.count();
        place.seam = static_cast<int>(seam);
        const int setUp = m_setUpOf[seam];
        place.trial = setUp != 0 && setUp != place.tried;
        place.tried = setUp;
        place.held = place.trial ? static_cast<int>(seam) : -1;
        place.decision = m_work.decision.count();
        then.left &= ~(1U << seam);
        return then;
    }

    Ms leastFinish(const Moment& now) const {
        Ms first = INT64_MAX;
        Ms last = 0;
        Ms count = 0;
        Ms all = 0;
        for (const auto& alike : now.people) {
            first = std::min(first, alike.front());
            last = std::max(last, alike.back());
            for (const Ms person : alike) {
                all += std::max(person, now.last);
                ++count;
            }
        }
        const Ms next = std::max(now.last, first);
        std::map<int, Ms> trials; // by set-up that has none, the least work
        Ms least = now.finish;
        Ms work = 0;
        for (const Place& place : now.benches) {
            Ms out = std::max(next, place.free);
            if (place.seam != -1) {
                out += place.release;
                work += place.release;
                least = std::max(least, out);
                out += place.trial ? place.decision : 0;
            }
            if (place.held != -1) {
                const auto bench = static_cast<std::size_t>(&place - now.benches.data());
                const SeamTimes& times =
                    *m_work.seams[static_cast<std::size_t>(place.held)].on[bench];
                least = std::max(least, out + times.whole().count());
                work += times.hands().count() + times.release.count();
            }
        }
        for (unsigned seam = 0; seam < m_work.seams.size(); ++seam) {
            if ((now.left & (1U << seam)) == 0) {
                continue;
            }
            Ms whole = INT64_MAX;
            Ms hands = INT64_MAX;
            for (const auto& on : m_work.seams[seam].on) {
                if (on) {
                    whole = std::min(whole, on->whole().count());
                    hands = std::min(hands, on->hands().count() + on->release.count());
                }
            }
            least = std::max(least, next + whole);
            work += hands;
            const int setUp = m_setUpOf[seam];
            if (setUp != 0 &&
                std::none_of(now.benches.begin(), now.benches.end(), [setUp](const Place& place) {
                    return place.tried == setUp;
                })) {
                Ms& trial = trials.emplace(setUp, hands).first->second;
                trial = std::min(trial, hands);
            }
        }
        for (const auto& [setUp, hands] : trials) { // one of each at least
            work += hands;
        }
        // Only a bound where everybody is needed until the end: else the sum is too high.
        if ((all + work) / count >= last) {
            least = std::max(least, (all + work) / count);
        }
        return least;
    }

    /// The same is left on the same benches, and nothing is later than it is here.
    bool isBeaten(const Moment& now) {
        std::string key(reinterpret_cast<const char*>(&now.left), sizeof now.left);
        std::vector<Ms> times{now.last, now.finish};
        for (const auto& alike : now.people) {
            for (const Ms person : alike) {
                times.push_back(std::max(person, now.last));
            }
        }
        for (const Place& place : now.benches) {
            key += std::to_string(place.seam) + place.plate.material + ";" +
                   std::to_string(place.tried) + ";" + std::to_string(place.held) +
                   (place.trial ? "t;" : ";");
            times.push_back(std::max(place.free, now.last));
            times.push_back(place.plateFree);
        }
        auto& known = m_known[key];
        for (const auto& one : known) {
            if (std::equal(one.begin(), one.end(), times.begin(), std::less_equal<>())) {
                return true;
            }
        }
        known.erase(
            std::remove_if(
                known.begin(), known.end(),
                [&](const auto& one) {
                    return std::equal(times.begin(), times.end(), one.begin(), std::less_equal<>());
                }),
            known.end());
        known.push_back(std::move(times));
        return false;
    }

    const DayWork& m_work;
    std::vector<std::string> m_setUps{""};
    std::vector<int> m_setUpOf;               // of each seam
    std::vector<std::vector<bool>> m_mayWeld; // of each class of people, each seam
    Ms m_best;
    bool m_shortcuts;
    Optimum m_out;
    std::unordered_map<std::string, std::vector<std::vector<Ms>>> m_known;
};

} // namespace

std::vector<std::string> brokenRules(const DayWork& work, const DayPlan& plan) {
    return Rules(work, plan).broken();
}

Optimum earliestFinish(const DayWork& work, Milliseconds notAfter, bool shortcuts) {
    return Search(work, notAfter.count(), shortcuts).run();
}

namespace {

const std::string& materialOf(const DaySeam& seam) {
    const auto on = std::find_if(
        seam.on.begin(), seam.on.end(), [](const auto& one) { return one.has_value(); });
    return (*on)->plate.material;
}

/// By plastic, as certificates are: one person has both, of each other either may be missing.
void certify(std::mt19937_64& chance, DayWork& work) {
    const std::size_t both = chance() % work.people.size();
    for (const char* material : {"PE-HD", "PVDF"}) {
        std::vector<bool> welders;
        for (std::size_t person = 0; person < work.people.size(); ++person) {
            welders.push_back(person == both || chance() % 2 == 0);
        }
        for (DaySeam& seam : work.seams) {
            if (materialOf(seam) == material) {
                seam.welders = welders;
            }
        }
    }
    // Sometimes one alone may weld this seam, or nobody.
    for (DaySeam& seam : work.seams) {
        if (chance() % 8 == 0) {
            seam.welders.assign(work.people.size(), false);
            if (chance() % 4 != 0) {
                seam.welders[chance() % work.people.size()] = true;
            }
        }
    }
}

/// Two thicknesses of each plastic; on a bench whose plate is warm some trial joint may be made,
/// and wait for its word or not, or be under way.
void askForTrials(std::mt19937_64& chance, DayWork& work) {
    for (DaySeam& seam : work.seams) {
        seam.setUp = materialOf(seam) + (chance() % 3 == 0 ? " 5 mm" : " 10 mm");
    }
    work.decision = Milliseconds(static_cast<std::int64_t>(chance() % 1'200) * 1'000);
    for (DayBench& bench : work.benches) {
        if (bench.plate.material.empty() || chance() % 2 == 0) {
            continue;
        }
        DayTried tried{bench.plate.material + " 10 mm", Milliseconds{0}, "joint on " + bench.id};
        if (bench.running) {
            bench.running->trial = chance() % 2 == 0;
            tried.decision = bench.running->trial ? work.decision : Milliseconds{0};
        } else if (chance() % 3 == 0) {
            tried.decision = work.decision / 2;
        }
        bench.tried = tried;
    }
}

} // namespace

DayWork randomDay(std::mt19937_64& chance, std::size_t seams, const DayKinds& kinds) {
    const auto upTo = [&](std::uint64_t low, std::uint64_t high) {
        return static_cast<std::int64_t>(low + chance() % (high - low + 1));
    };
    const auto seconds = [&](std::uint64_t low, std::uint64_t high) {
        return Milliseconds(upTo(low, high) * 1'000);
    };
    const PlateUse plastics[] = {{"PE-HD", 210'000}, {"PVDF", 240'000}};
    const auto timesOf = [&](const PlateUse& plate) {
        SeamTimes times;
        times.preparation = seconds(180, 900);
        times.alignment = seconds(20, 130);
        times.soak = seconds(40, 300);
        times.changeover = seconds(3, 12);
        times.buildUp = seconds(4, 20);
        times.cooling = seconds(300, 2'400);
        times.release = seconds(60, 400);
        times.plate = plate;
        return times;
    };
    DayWork work;
    const auto benches = static_cast<std::size_t>(upTo(1, 3));
    const std::uint64_t more = kinds.certificates ? 1 : 0;
    const auto people = static_cast<std::size_t>(upTo(1 + more, 2 + more));
    for (std::size_t i = 0; i < people; ++i) {
        work.people.push_back("person " + std::to_string(i + 1));
    }
    for (std::size_t i = 0; i < benches; ++i) {
        DayBench bench;
        bench.id = "bench " + std::to_string(i + 1);
        if (upTo(0, 2) > 0) {
            bench.plate = plastics[upTo(0, 1)];
        }
        if (upTo(0, 4) == 0) {
            bench.plate = plastics[upTo(0, 1)];
            DayRunning running{"running " + bench.id, timesOf(bench.plate), i % people};
            running.left.preparation = Milliseconds{0};
            const bool cools =
                upTo(0, 1) == 0 ||
                std::any_of(work.benches.begin(), work.benches.end(), [&](const DayBench& other) {
                    return other.running && other.running->person == running.person;
                });
            if (cools) {
                running.left.alignment = running.left.soak = Milliseconds{0};
                running.left.changeover = running.left.buildUp = Milliseconds{0};
            }
            bench.running = running;
        }
        work.benches.push_back(std::move(bench));
    }
    for (std::size_t i = 0; i < seams; ++i) {
        DaySeam seam;
        seam.label = "S" + std::to_string(i + 1);
        const PlateUse& plate = plastics[upTo(0, 3) == 0 ? 1 : 0];
        const auto wish = upTo(0, 2) == 0 ? upTo(0, benches - 1) : -1;
        const SeamTimes times = timesOf(plate);
        for (std::size_t bench = 0; bench < benches; ++bench) {
            std::optional<SeamTimes> here;
            if (wish < 0 || static_cast<std::size_t>(wish) == bench) {
                here = times;
                here->preparation += seconds(0, 60); // every bench has its own pace
            }
            seam.on.push_back(here);
        }
        work.seams.push_back(std::move(seam));
    }
    if (kinds.certificates) {
        certify(chance, work);
    }
    if (kinds.trials) {
        askForTrials(chance, work);
    }
    return work;
}

} // namespace seamclock::test
