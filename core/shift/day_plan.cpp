#include "core/shift/day_plan.h"

#include "core/shift/trial_series.h"

#include <algorithm>
#include <fmt/format.h>
#include <iterator>
#include <tuple>
#include <utility>
#include <variant>

namespace seamclock {

namespace {

constexpr std::size_t kNone = static_cast<std::size_t>(-1);
/// The place of a seam whose trial joint is made: it is no more in the list.
constexpr std::size_t kHeld = kNone - 1;

/// How the list is sorted at first: by what is longest, the longest first.
enum class SortedBy { AsGiven, Whole, Tail, Hands };
constexpr SortedBy kSorts[] = {SortedBy::Tail, SortedBy::Whole, SortedBy::Hands, SortedBy::AsGiven};

/// How a list is read.
struct DayOrder {
    bool releaseFirst; // before a seam that could be begun at the same time
    bool inTurn;       // no seam overtakes another of the list
};
constexpr DayOrder kDayOrders[] = {{true, false}, {false, false}, {true, true}, {false, true}};

/// A list is made into a plan by about seams² · benches looks; so many in all, a part of a second.
constexpr std::size_t kMostLooks = 30'000'000;

/// An entry of the list: a seam, and the bench that it is kept for.
struct Listed {
    std::size_t seam = 0;
    std::size_t bench = kNone; // any that can make it

    bool operator==(const Listed&) const = default;
};
using List = std::vector<Listed>;

/// What of the day is worked out once, since it is looked at a million times.
struct Once {
    // Set-ups as numbers below setUps; 0: no trial joint is asked for.
    std::size_t setUps = 0;
    std::vector<std::size_t> ofSeam;
    std::vector<std::size_t> tried;   // of each bench
    std::vector<std::size_t> mayWeld; // for each person, how many seams
    bool allAlike = true;             // everybody may weld every seam

    explicit Once(const DayWork& work) {
        std::vector<std::string> known{""};
        const auto number = [&known](const std::string& setUp) {
            const auto found = std::find(known.begin(), known.end(), setUp);
            const auto place = static_cast<std::size_t>(found - known.begin());
            if (found == known.end()) {
                known.push_back(setUp);
            }
            return place;
        };
        for (const DaySeam& seam : work.seams) {
            ofSeam.push_back(number(seam.setUp));
        }
        for (const DayBench& bench : work.benches) {
            tried.push_back(bench.tried ? number(bench.tried->setUp) : 0);
        }
        setUps = known.size();
        for (std::size_t person = 0; person < work.people.size(); ++person) {
            const auto may =
                std::count_if(work.seams.begin(), work.seams.end(), [person](const DaySeam& seam) {
                    return seam.welders.empty() || seam.welders[person];
                });
            mayWeld.push_back(static_cast<std::size_t>(may));
            allAlike = allAlike && mayWeld.back() == work.seams.size();
        }
    }
};

std::size_t mostTries(const DayWork& work, const Once& once) {
    const std::size_t seams = std::max<std::size_t>(work.seams.size(), 1);
    const std::size_t benches = std::max<std::size_t>(work.benches.size(), 1);
    const std::size_t people = once.allAlike ? 1 : work.people.size();
    return std::min(kMostDayTries, kMostLooks / (seams * seams * benches * people)) /
           std::size(kDayOrders);
}

/// Where a bench is in the plan as far as it is made.
struct BenchState {
    PlateUse plate;
    Milliseconds plateFree{0};
    Milliseconds free{0};   // while nothing cools on it and no trial joint is undecided
    Milliseconds cooled{0}; // when what is on it has cooled
    bool taken = false;
    bool trial = false; // what is on it
    Milliseconds release{0};
    Milliseconds decision{0};                        // that follows
    TrialSeries<std::size_t, std::monostate> series; // a trial joint counts from its beginning
    std::optional<Listed> held;                      // the seam of the trial joint
    std::string label;
};

/// One thing that somebody may do next.
struct Move {
    Milliseconds begins{0};
    std::size_t rank = 0; // the lower first, of what begins at the same time
    bool trial = false;   // a bench that needs none before one that does
    Milliseconds wait{0}; // for the plate; the bench with the least
    std::size_t bench = 0;
    std::size_t place = kNone; // in the list; a release has none, or kHeld

    auto key() const { return std::tie(begins, rank, trial, wait, bench); }
};

/// Whose stretches are shown.
struct Joint {
    const std::string& label;
    bool trial;
};

/// Makes the plan for one list. Only the finish is worked out, unless stretches are wanted.
class Maker {
public:
    Maker(
        const DayWork& work, const Once& once, const DayOrder& order,
        std::vector<DayStretch>* stretches)
        : m_work(work), m_once(once), m_order(order), m_stretches(stretches) {
        m_people.assign(work.people.size(), Milliseconds{0});
        for (std::size_t bench = 0; bench < work.benches.size(); ++bench) {
            begin(bench, work.benches[bench]);
        }
    }

    Milliseconds make(List left) {
        for (;;) {
            std::size_t person = 0;
            const auto move = nextMove(person, left);
            if (!move) {
                return m_finish;
            }
            if (move->place == kNone) {
                release(*move, person);
            } else if (move->place == kHeld) {
                const Listed held = *m_benches[move->bench].held;
                m_benches[move->bench].held.reset();
                weld(*move, held, person);
            } else {
                const Listed listed = left[move->place];
                left.erase(left.begin() + static_cast<std::ptrdiff_t>(move->place));
                weld(*move, listed, person);
            }
        }
    }

private:
    void begin(std::size_t place, const DayBench& bench) {
        BenchState state;
        state.plate = bench.plate;
        if (bench.tried) {
            state.series.begin(m_once.tried[place]);
            state.series.tried({});
            state.decision = bench.tried->decision;
        }
        if (bench.tried && !bench.running) {
            state.free = state.decision;
            show(
                DayKind::Decision, {bench.tried->label, true}, place, {}, Milliseconds{0},
                state.free);
        }
        if (bench.running) {
            const SeamTimes& times = bench.running->left;
            state.label = bench.running->label;
            state.trial = bench.running->trial;
            state.taken = true;
            state.plateFree = times.hands();
            state.cooled = times.hands() + times.cooling;
            state.release = times.release;
            if (times.hands().count() > 0) {
                Milliseconds& free = m_people[bench.running->person];
                free = std::max(free, times.hands());
            }
            m_finish = std::max(m_finish, state.cooled);
            show(
                DayKind::PlateWait, {state.label, state.trial}, place, {}, Milliseconds{0},
                bench.running->plateWait);
            showWeld(
                place, bench.running->person, {state.label, state.trial}, times, Milliseconds{0});
        }
        m_benches.push_back(std::move(state));
    }

    std::size_t firstFree() const {
        return static_cast<std::size_t>(
            std::min_element(m_people.begin(), m_people.end()) - m_people.begin());
    }

    bool mayWeld(std::size_t person, std::size_t seam) const {
        const std::vector<bool>& welders = m_work.seams[seam].welders;
        return welders.empty() || welders[person];
    }

    bool needsTrial(const BenchState& state, std::size_t seam) const {
        const std::size_t setUp = m_once.ofSeam[seam];
        return setUp != 0 && state.series.standingFor(setUp) == nullptr;
    }

    /// Whoever can begin something first; of those, one who may weld fewer seams, then who is free
    /// first. Where all may weld all that is whoever is free first.
    std::optional<Move> nextMove(std::size_t& person, const List& left) const {
        if (m_once.allAlike) {
            person = firstFree();
            return moveOf(person, left);
        }
        std::optional<Move> best;
        for (std::size_t who = 0; who < m_people.size(); ++who) {
            const auto move = moveOf(who, left);
            const auto order = [this](const Move& one, std::size_t by) {
                return std::tuple(one.key(), m_once.mayWeld[by], m_people[by]);
            };
            if (move && (!best || order(*move, who) < order(*best, person))) {
                best = move;
                person = who;
            }
        }
        return best;
    }

    std::optional<Move> moveOf(std::size_t person, const List& left) const {
        const Milliseconds free = m_people[person];
        std::optional<Move> best;
        const auto offer = [&best](const Move& move) {
            if (!best || move.key() < best->key()) {
                best = move;
            }
        };
        const std::size_t open =
            m_order.inTurn ? std::min<std::size_t>(left.size(), 1) : left.size();
        for (std::size_t bench = 0; bench < m_benches.size(); ++bench) {
            const BenchState& state = m_benches[bench];
            if (state.taken) {
                const std::size_t rank = m_order.releaseFirst ? 0 : left.size() + 1;
                offer({std::max(free, state.cooled), rank, false, Milliseconds{0}, bench, kNone});
                continue;
            }
            if (state.held) {
                if (mayWeld(person, state.held->seam)) {
                    offer({std::max(free, state.free), 1, false, Milliseconds{0}, bench, kHeld});
                }
                continue;
            }
            for (std::size_t place = 0; place < open; ++place) {
                const Listed& listed = left[place];
                const auto& times = m_work.seams[listed.seam].on[bench];
                if (!times || (listed.bench != kNone && listed.bench != bench) ||
                    !mayWeld(person, listed.seam)) {
                    continue;
                }
                const Milliseconds wait = plateWait(state.plate, times->plate);
                const Milliseconds plate = state.plateFree + wait - times->preparation;
                const bool trial = needsTrial(state, listed.seam);
                offer({std::max({free, state.free, plate}), place + 1, trial, wait, bench, place});
            }
        }
        return best;
    }

    void release(const Move& move, std::size_t person) {
        BenchState& state = m_benches[move.bench];
        const Milliseconds ends = move.begins + state.release;
        const Joint joint{state.label, state.trial};
        show(DayKind::Cooled, joint, move.bench, {}, state.cooled, move.begins);
        show(DayKind::Release, joint, move.bench, person, move.begins, ends);
        m_people[person] = ends;
        m_finish = std::max(m_finish, ends);
        state.free = ends;
        if (state.trial) {
            state.free += state.decision;
            show(DayKind::Decision, joint, move.bench, {}, ends, state.free);
        }
        state.taken = false;
    }

    /// The seam, or the trial joint that it asks for here.
    void weld(const Move& move, const Listed& listed, std::size_t person) {
        BenchState& state = m_benches[move.bench];
        const SeamTimes& times = *m_work.seams[listed.seam].on[move.bench];
        const std::string& label = m_work.seams[listed.seam].label;
        const std::size_t setUp = m_once.ofSeam[listed.seam];
        state.trial = needsTrial(state, listed.seam);
        state.series.begin(setUp);
        if (state.trial) {
            state.series.tried({});
            state.decision = m_work.decision;
            state.held = listed;
        }
        const Joint joint{label, state.trial};
        show(
            DayKind::PlateWait, joint, move.bench, {}, state.plateFree,
            state.plateFree + move.wait);
        showWeld(move.bench, person, joint, times, move.begins);
        state.plate = times.plate;
        state.plateFree = move.begins + times.hands();
        state.cooled = state.plateFree + times.cooling;
        state.release = times.release;
        state.taken = true;
        if (m_stretches != nullptr) {
            state.label = label;
        }
        m_people[person] = state.plateFree;
    }

    void showWeld(
        std::size_t bench, std::size_t person, const Joint& joint, const SeamTimes& times,
        Milliseconds from) {
        for (const auto& [kind, takes] :
             {std::pair(DayKind::Preparation, times.preparation),
              std::pair(DayKind::Alignment, times.alignment), std::pair(DayKind::Soak, times.soak),
              std::pair(DayKind::Changeover, times.changeover),
              std::pair(DayKind::BuildUp, times.buildUp),
              std::pair(DayKind::Cooling, times.cooling)}) {
            show(
                kind, joint, bench, needsPerson(kind) ? std::optional(person) : std::nullopt, from,
                from + takes);
            from += takes;
        }
    }

    void show(
        DayKind kind, const Joint& joint, std::size_t bench, std::optional<std::size_t> person,
        Milliseconds from, Milliseconds to) {
        if (m_stretches != nullptr && to > from) {
            m_stretches->push_back({kind, joint.label, bench, person, from, to, joint.trial});
        }
    }

    const DayWork& m_work;
    const Once& m_once;
    DayOrder m_order;
    std::vector<DayStretch>* m_stretches;
    std::vector<Milliseconds> m_people;
    std::vector<BenchState> m_benches;
    Milliseconds m_finish{0};
};

Milliseconds shortest(const DaySeam& seam, SortedBy by) {
    std::optional<Milliseconds> least;
    for (const auto& times : seam.on) {
        if (times) {
            const Milliseconds here = by == SortedBy::Whole  ? times->whole()
                                      : by == SortedBy::Tail ? times->cooling + times->release
                                                             : times->hands();
            least = least ? std::min(*least, here) : here;
        }
    }
    return least.value_or(Milliseconds{0});
}

List sorted(const DayWork& work, List list, SortedBy by) {
    if (by != SortedBy::AsGiven) {
        std::stable_sort(list.begin(), list.end(), [&](const Listed& a, const Listed& b) {
            return shortest(work.seams[a.seam], by) > shortest(work.seams[b.seam], by);
        });
    }
    return list;
}

struct Best {
    Milliseconds finish{0};
    List list;
    DayOrder order{};
};

/// Each seam at every place of the list, kept for each bench or for none, as long as that ends the
/// day earlier.
class PlaceChanges {
public:
    PlaceChanges(const DayWork& work, const Once& once, Milliseconds bound, Best best)
        : m_work(work), m_once(once), m_bound(bound), m_best(std::move(best)),
          m_most(mostTries(work, once)) {}

    Best made() {
        while (sweep()) {
        }
        return std::move(m_best);
    }

private:
    bool isOver() const { return m_tries >= m_most || m_best.finish <= m_bound; }

    bool sweep() {
        bool better = false;
        for (std::size_t setUp = 1; setUp < m_once.setUps; ++setUp) {
            for (std::size_t bench = 0; bench < m_work.benches.size(); ++bench) {
                if (isOver()) {
                    return false;
                }
                better = isBetter(together(setUp, bench)) || better;
            }
        }
        for (std::size_t from = 0; from < m_best.list.size(); ++from) {
            for (std::size_t to = 0; to < m_best.list.size(); ++to) {
                for (std::size_t kept = 0; kept <= m_work.benches.size(); ++kept) {
                    if (isOver()) {
                        return false;
                    }
                    better = isBetter(changed(from, to, kept)) || better;
                }
            }
        }
        return better;
    }

    /// `kept`: a bench; one past the last: none. Empty: it is what stands, or can't be.
    List changed(std::size_t from, std::size_t to, std::size_t kept) const {
        Listed moved = m_best.list[from];
        const std::size_t bench = kept < m_work.benches.size() ? kept : kNone;
        const bool same = to == from && bench == moved.bench;
        if (same || (bench != kNone && !m_work.seams[moved.seam].on[bench])) {
            return {};
        }
        moved.bench = bench;
        List list = m_best.list;
        list.erase(list.begin() + static_cast<std::ptrdiff_t>(from));
        list.insert(list.begin() + static_cast<std::ptrdiff_t>(to), moved);
        return list;
    }

    /// All of a set-up one after the other, kept for one bench, where the first of them stood: one
    /// trial joint for all. No single change leads there, since each alone costs another one.
    List together(std::size_t setUp, std::size_t bench) const {
        List list = m_best.list;
        const auto isOther = [&](const Listed& one) {
            return m_once.ofSeam[one.seam] != setUp || !m_work.seams[one.seam].on[bench];
        };
        const auto first = std::find_if_not(list.begin(), list.end(), isOther);
        std::stable_partition(first, list.end(), [&](const Listed& one) { return !isOther(one); });
        for (Listed& one : list) {
            one.bench = isOther(one) ? one.bench : bench;
        }
        return list == m_best.list ? List() : list;
    }

    bool isBetter(List list) {
        if (list.empty()) {
            return false;
        }
        ++m_tries;
        const Milliseconds finish = Maker(m_work, m_once, m_best.order, nullptr).make(list);
        if (finish >= m_best.finish) {
            return false;
        }
        m_best.finish = finish;
        m_best.list = std::move(list);
        return true;
    }

    const DayWork& m_work;
    const Once& m_once;
    Milliseconds m_bound;
    Best m_best;
    std::size_t m_most;
    std::size_t m_tries = 0;
};

Result<void> checkDecision(Milliseconds takes) {
    if (takes.count() < 0 || takes > kLongestDayTime) {
        return fail(
            ErrorCode::OutOfRange,
            fmt::format(
                "the decision on a trial joint takes {} ms; allowed: 0 to {}", takes.count(),
                kLongestDayTime.count()));
    }
    return {};
}

Result<void> checkTimes(const std::string& label, const SeamTimes& times) {
    const auto& [preparation, alignment, soak, changeover, buildUp, cooling, release, plate] =
        times;
    for (const Milliseconds one :
         {preparation, alignment, soak, changeover, buildUp, cooling, release}) {
        if (one.count() < 0 || one > kLongestDayTime) {
            return fail(
                ErrorCode::OutOfRange, fmt::format(
                                           "seam {} has a time of {} ms; allowed: 0 to {}", label,
                                           one.count(), kLongestDayTime.count()));
        }
    }
    if (plate.targetMc < -100'000 || plate.targetMc > 1'000'000) {
        return fail(
            ErrorCode::OutOfRange, fmt::format(
                                       "seam {} wants a plate of {} m°C; allowed: -100000 to "
                                       "1000000",
                                       label, plate.targetMc));
    }
    return {};
}

Result<void> checkCount(const char* what, std::size_t count, std::size_t least, std::size_t most) {
    if (count < least || count > most) {
        return fail(
            ErrorCode::OutOfRange,
            fmt::format("{} {}; allowed: {} to {}", count, what, least, most));
    }
    return {};
}

Result<void> check(const DayWork& work) {
    const bool anything =
        !work.seams.empty() ||
        std::any_of(work.benches.begin(), work.benches.end(), [](const DayBench& bench) {
            return bench.running.has_value();
        });
    const std::size_t least = anything ? 1 : 0;
    for (auto counted :
         {checkCount("benches", work.benches.size(), least, kMostDayBenches),
          checkCount("people", work.people.size(), least, kMostDayPeople),
          checkCount("seams", work.seams.size(), 0, kMostDaySeams)}) {
        if (!counted) {
            return counted;
        }
    }
    if (auto sound = checkDecision(work.decision); !sound) {
        return sound;
    }
    for (const DayBench& bench : work.benches) {
        if (auto sound = checkDecision(bench.tried ? bench.tried->decision : Milliseconds{0});
            !sound) {
            return sound;
        }
        if (!bench.running) {
            continue;
        }
        if (auto sound = checkTimes(bench.running->label, bench.running->left); !sound) {
            return sound;
        }
        const Milliseconds preparation = bench.running->left.preparation;
        if (bench.running->plateWait.count() < 0 || bench.running->plateWait > preparation) {
            return fail(
                ErrorCode::OutOfRange,
                fmt::format(
                    "the plate of {} waits {} ms; allowed: 0 to {}", bench.id,
                    bench.running->plateWait.count(), preparation.count()));
        }
        if (bench.running->person >= work.people.size()) {
            return fail(
                ErrorCode::OutOfRange,
                fmt::format(
                    "the weld on {} is in the hands of person {}; allowed: 0 to {}", bench.id,
                    bench.running->person, work.people.size() - 1));
        }
    }
    for (const DaySeam& seam : work.seams) {
        if (seam.on.size() != work.benches.size()) {
            return fail(
                ErrorCode::OutOfRange, fmt::format(
                                           "seam {} has times for {} benches; allowed: {}",
                                           seam.label, seam.on.size(), work.benches.size()));
        }
        if (!seam.welders.empty() && seam.welders.size() != work.people.size()) {
            return fail(
                ErrorCode::OutOfRange, fmt::format(
                                           "seam {} names welders out of {} people; allowed: {}",
                                           seam.label, seam.welders.size(), work.people.size()));
        }
        for (const auto& times : seam.on) {
            if (!times) {
                continue;
            }
            if (auto sound = checkTimes(seam.label, *times); !sound) {
                return sound;
            }
        }
    }
    return {};
}

} // namespace

Milliseconds plateWait(const PlateUse& from, const PlateUse& to) {
    if (from == to) {
        return Milliseconds{0};
    }
    const std::int64_t apart =
        from.targetMc > to.targetMc ? from.targetMc - to.targetMc : to.targetMc - from.targetMc;
    return kPlateHold + Milliseconds{apart * kPlatePerKelvin.count() / 1'000};
}

std::string_view toString(DayKind kind) {
    switch (kind) {
    case DayKind::PlateWait:
        return "plate_wait";
    case DayKind::Preparation:
        return "preparation";
    case DayKind::Alignment:
        return "alignment";
    case DayKind::Soak:
        return "soak";
    case DayKind::Changeover:
        return "changeover";
    case DayKind::BuildUp:
        return "build_up";
    case DayKind::Cooling:
        return "cooling";
    case DayKind::Cooled:
        return "cooled";
    case DayKind::Release:
        return "release";
    case DayKind::Decision:
        return "decision";
    }
    return "";
}

bool needsPerson(DayKind kind) {
    return kind != DayKind::PlateWait && kind != DayKind::Cooling && kind != DayKind::Cooled &&
           kind != DayKind::Decision;
}

std::string_view toString(DayLimit limit) {
    switch (limit) {
    case DayLimit::Nothing:
        return "nothing";
    case DayLimit::People:
        return "people";
    case DayLimit::Benches:
        return "benches";
    case DayLimit::OneSeam:
        return "one_seam";
    }
    return "";
}

Result<DayPlan> planDay(const DayWork& work) {
    if (const auto sound = check(work); !sound) {
        return tl::unexpected<Error>(sound.error());
    }
    DayPlan out;
    List possible;
    for (std::size_t seam = 0; seam < work.seams.size(); ++seam) {
        const DaySeam& one = work.seams[seam];
        const bool hasBench =
            std::any_of(one.on.begin(), one.on.end(), [](const auto& on) { return on; });
        const bool hasWelder =
            one.welders.empty() || std::count(one.welders.begin(), one.welders.end(), true) > 0;
        if (hasBench && hasWelder) {
            possible.push_back({seam, kNone});
        } else if (hasBench) {
            out.impossible.push_back(
                {one.label, one.whyNot.empty() ? "nobody who is here may weld it" : one.whyNot});
        } else {
            out.impossible.push_back(
                {one.label, one.whyNot.empty() ? "no bench that is here can make it" : one.whyNot});
        }
    }
    if (work.people.empty() || work.benches.empty()) {
        return out; // and nothing to do
    }
    out.bound = boundOf(work);
    const Once once(work);
    std::optional<Best> kept;
    for (const DayOrder& order : kDayOrders) {
        std::optional<Best> best;
        for (const SortedBy by : kSorts) {
            Best one{Milliseconds{0}, sorted(work, possible, by), order};
            one.finish = Maker(work, once, order, nullptr).make(one.list);
            if (!best || one.finish < best->finish) {
                best = std::move(one);
            }
        }
        Best changed = PlaceChanges(work, once, out.bound.atLeast, std::move(*best)).made();
        if (!kept || changed.finish < kept->finish) {
            kept = std::move(changed);
        }
    }
    out.finish = Maker(work, once, kept->order, &out.stretches).make(kept->list);
    std::stable_sort(
        out.stretches.begin(), out.stretches.end(), [](const DayStretch& a, const DayStretch& b) {
            return std::tie(a.from, a.bench) < std::tie(b.from, b.bench);
        });
    return out;
}

} // namespace seamclock
