#include "core/shift/day_plan.h"

#include <algorithm>
#include <fmt/format.h>
#include <iterator>
#include <tuple>
#include <utility>

namespace seamclock {

namespace {

constexpr std::size_t kNone = static_cast<std::size_t>(-1);

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

std::size_t mostTries(const DayWork& work) {
    const std::size_t seams = std::max<std::size_t>(work.seams.size(), 1);
    const std::size_t benches = std::max<std::size_t>(work.benches.size(), 1);
    return std::min(kMostDayTries, kMostLooks / (seams * seams * benches)) / std::size(kDayOrders);
}

/// An entry of the list: a seam, and the bench that it is kept for.
struct Listed {
    std::size_t seam = 0;
    std::size_t bench = kNone; // any that can make it
};
using List = std::vector<Listed>;

/// Where a bench is in the plan as far as it is made.
struct BenchState {
    PlateUse plate;
    Milliseconds plateFree{0};
    Milliseconds free{0};   // while nothing cools on it
    Milliseconds cooled{0}; // when what is on it has cooled
    bool taken = false;
    Milliseconds release{0};
    std::string label;
};

/// One thing that somebody may do next.
struct Move {
    Milliseconds begins{0};
    std::size_t rank = 0; // the lower first, of what begins at the same time
    Milliseconds wait{0}; // for the plate; the bench with the least
    std::size_t bench = 0;
    std::size_t place = kNone; // in the list; a release has none

    auto key() const { return std::tie(begins, rank, wait, bench); }
};

/// Makes the plan for one list. Only the finish is worked out, unless stretches are wanted.
class Maker {
public:
    Maker(const DayWork& work, const DayOrder& order, std::vector<DayStretch>* stretches)
        : m_work(work), m_order(order), m_stretches(stretches) {
        m_people.assign(work.people.size(), Milliseconds{0});
        for (std::size_t bench = 0; bench < work.benches.size(); ++bench) {
            begin(bench, work.benches[bench]);
        }
    }

    Milliseconds make(List left) {
        for (;;) {
            std::size_t person = firstFree();
            auto move = nextMove(person, left);
            if (!move && !left.empty()) {
                move = moveOfAnother(person, left);
            }
            if (!move) {
                return m_finish;
            }
            if (move->place == kNone) {
                release(*move, person);
            } else {
                weld(*move, left[move->place].seam, person);
                left.erase(left.begin() + static_cast<std::ptrdiff_t>(move->place));
            }
        }
    }

private:
    void begin(std::size_t place, const DayBench& bench) {
        BenchState state;
        state.plate = bench.plate;
        if (bench.running) {
            const SeamTimes& times = bench.running->left;
            state.label = bench.running->label;
            state.taken = true;
            state.plateFree = times.hands();
            state.cooled = times.hands() + times.cooling;
            state.release = times.release;
            if (times.hands().count() > 0) {
                Milliseconds& free = m_people[bench.running->person];
                free = std::max(free, times.hands());
            }
            m_finish = std::max(m_finish, state.cooled);
            showWeld(place, bench.running->person, state.label, times, Milliseconds{0});
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

    /// Where who is free first may weld none of what is left: whoever is free next, and may.
    std::optional<Move> moveOfAnother(std::size_t& person, const List& left) const {
        std::vector<std::size_t> others;
        for (std::size_t i = 0; i < m_people.size(); ++i) {
            others.push_back(i);
        }
        std::stable_sort(others.begin(), others.end(), [this](std::size_t a, std::size_t b) {
            return m_people[a] < m_people[b];
        });
        for (const std::size_t other : others) {
            if (auto move = nextMove(other, left)) {
                person = other;
                return move;
            }
        }
        return std::nullopt;
    }

    std::optional<Move> nextMove(std::size_t person, const List& left) const {
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
                offer({std::max(free, state.cooled), rank, Milliseconds{0}, bench, kNone});
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
                offer({std::max({free, state.free, plate}), place + 1, wait, bench, place});
            }
        }
        return best;
    }

    void release(const Move& move, std::size_t person) {
        BenchState& state = m_benches[move.bench];
        const Milliseconds ends = move.begins + state.release;
        show(DayKind::Cooled, state.label, move.bench, {}, state.cooled, move.begins);
        show(DayKind::Release, state.label, move.bench, person, move.begins, ends);
        m_people[person] = ends;
        m_finish = std::max(m_finish, ends);
        state.free = ends;
        state.taken = false;
    }

    void weld(const Move& move, std::size_t seam, std::size_t person) {
        BenchState& state = m_benches[move.bench];
        const SeamTimes& times = *m_work.seams[seam].on[move.bench];
        const std::string& label = m_work.seams[seam].label;
        show(
            DayKind::PlateWait, label, move.bench, {}, state.plateFree,
            state.plateFree + move.wait);
        showWeld(move.bench, person, label, times, move.begins);
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
        std::size_t bench, std::size_t person, const std::string& label, const SeamTimes& times,
        Milliseconds from) {
        for (const auto& [kind, takes] :
             {std::pair(DayKind::Preparation, times.preparation),
              std::pair(DayKind::Alignment, times.alignment), std::pair(DayKind::Soak, times.soak),
              std::pair(DayKind::Changeover, times.changeover),
              std::pair(DayKind::BuildUp, times.buildUp),
              std::pair(DayKind::Cooling, times.cooling)}) {
            show(
                kind, label, bench, needsPerson(kind) ? std::optional(person) : std::nullopt, from,
                from + takes);
            from += takes;
        }
    }

    void show(
        DayKind kind, const std::string& label, std::size_t bench,
        std::optional<std::size_t> person, Milliseconds from, Milliseconds to) {
        if (m_stretches != nullptr && to > from) {
            m_stretches->push_back({kind, label, bench, person, from, to});
        }
    }

    const DayWork& m_work;
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
    PlaceChanges(const DayWork& work, Milliseconds bound, Best best)
        : m_work(work), m_bound(bound), m_best(std::move(best)), m_most(mostTries(work)) {}

    Best made() {
        while (sweep()) {
        }
        return std::move(m_best);
    }

private:
    bool isOver() const { return m_tries >= m_most || m_best.finish <= m_bound; }

    bool sweep() {
        bool better = false;
        for (std::size_t from = 0; from < m_best.list.size(); ++from) {
            for (std::size_t to = 0; to < m_best.list.size(); ++to) {
                for (std::size_t kept = 0; kept <= m_work.benches.size(); ++kept) {
                    if (isOver()) {
                        return false;
                    }
                    better = isBetter(from, to, kept) || better;
                }
            }
        }
        return better;
    }

    /// `kept`: a bench; one past the last: none.
    bool isBetter(std::size_t from, std::size_t to, std::size_t kept) {
        List list = m_best.list;
        Listed moved = list[from];
        const std::size_t bench = kept < m_work.benches.size() ? kept : kNone;
        const bool same = to == from && bench == moved.bench;
        if (same || (bench != kNone && !m_work.seams[moved.seam].on[bench])) {
            return false;
        }
        moved.bench = bench;
        list.erase(list.begin() + static_cast<std::ptrdiff_t>(from));
        list.insert(list.begin() + static_cast<std::ptrdiff_t>(to), moved);
        ++m_tries;
        const Milliseconds finish = Maker(m_work, m_best.order, nullptr).make(list);
        if (finish >= m_best.finish) {
            return false;
        }
        m_best.finish = finish;
        m_best.list = std::move(list);
        return true;
    }

    const DayWork& m_work;
    Milliseconds m_bound;
    Best m_best;
    std::size_t m_most;
    std::size_t m_tries = 0;
};

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
    for (const DayBench& bench : work.benches) {
        if (!bench.running) {
            continue;
        }
        if (auto sound = checkTimes(bench.running->label, bench.running->left); !sound) {
            return sound;
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
    }
    return "";
}

bool needsPerson(DayKind kind) {
    return kind != DayKind::PlateWait && kind != DayKind::Cooling && kind != DayKind::Cooled;
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
    std::optional<Best> kept;
    for (const DayOrder& order : kDayOrders) {
        std::optional<Best> best;
        for (const SortedBy by : kSorts) {
            Best one{Milliseconds{0}, sorted(work, possible, by), order};
            one.finish = Maker(work, order, nullptr).make(one.list);
            if (!best || one.finish < best->finish) {
                best = std::move(one);
            }
        }
        Best changed = PlaceChanges(work, out.bound.atLeast, std::move(*best)).made();
        if (!kept || changed.finish < kept->finish) {
            kept = std::move(changed);
        }
    }
    out.finish = Maker(work, kept->order, &out.stretches).make(kept->list);
    std::stable_sort(
        out.stretches.begin(), out.stretches.end(), [](const DayStretch& a, const DayStretch& b) {
            return std::tie(a.from, a.bench) < std::tie(b.from, b.bench);
        });
    return out;
}

} // namespace seamclock
