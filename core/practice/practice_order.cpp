// What was told and not done, or done long before it was told, or done in a wrong order.
#include "core/practice/practice_course.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr Milliseconds kDoneWithin{1'000};   // of telling it
constexpr Milliseconds kMuchEarlier{3'000};  // than it was told
constexpr Milliseconds kSpringTakes{15'000}; // to be let off

double seconds(Milliseconds time) {
    return static_cast<double>(time.count()) / 1e3;
}

class Order {
public:
    explicit Order(const PracticeCourse& course) : m_course(course) {}

    std::vector<OrderError> all() {
        for (const Mishap& mishap : m_course.end.mishaps) {
            m_all.push_back({std::string(toString(mishap.kind)), mishap.at, mishap.size});
        }
        for (const TimedAct& tried : m_course.take().tries) {
            m_all.push_back({"refused:" + std::string(codeOf(tried.act)), tried.at, 0});
        }
        calledAway();
        for (const Retained& one : m_course.told) {
            m_at = m_course.timeOf(one.at);
            step(one.d);
        }
        std::stable_sort(m_all.begin(), m_all.end(), [](const OrderError& a, const OrderError& b) {
            return a.at < b.at;
        });
        return std::move(m_all);
    }

private:
    void step(const WeldDetail& detail) {
        const BenchInstants& bench = m_course.end.instants;
        if (const auto* check = std::get_if<CheckMade>(&detail)) {
            if (check->passed && !isDone(check->check)) {
                notDone(check->check, 0);
            }
        } else if (std::holds_alternative<AlignmentStarted>(detail)) {
            against("alignment_started", bench.plateTouched);
        } else if (std::holds_alternative<SoakStarted>(detail)) {
            soakStarted();
        } else if (std::holds_alternative<PlateOut>(detail)) {
            against("plate_out", m_course.plateLeft());
        } else if (std::holds_alternative<FacesMet>(detail)) {
            against("faces_met", bench.facesMet);
        } else if (std::holds_alternative<PressureLocked>(detail)) {
            locked();
        } else if (const auto* release = std::get_if<ReleaseStep>(&detail)) {
            released(release->step);
        }
    }

    /// Nobody at the bench while it soaks: the clock is not seen, and what it asks for comes late.
    void calledAway() {
        const auto& call = m_course.set.lesson.call;
        const auto soak = m_course.when<SoakStarted>();
        if (m_course.take().callTaken && call && soak) {
            const Milliseconds at = m_course.take().callAt.value_or(*soak + call->intoSoak);
            m_all.push_back({"call_taken", at, seconds(call->lasts)});
        }
    }

    void notDone(const std::string& what, double size) {
        m_all.push_back({"told_not_done:" + what, m_at, size});
    }

    void against(const std::string& what, const std::optional<Milliseconds>& done) {
        if (!done) {
            notDone(what, 0);
        } else if (*done > m_at + kDoneWithin) {
            notDone(what, seconds(*done - m_at));
        } else if (*done + kMuchEarlier < m_at) {
            m_all.push_back({"told_late:" + what, m_at, seconds(m_at - *done)});
        }
    }

    void soakStarted() {
        const BenchView then = m_course.view(m_at + kDoneWithin);
        const double high = static_cast<double>(m_course.card().scale->soak.highMilli) / 1e3;
        if (then.scale.reading > high + m_course.divisionUnits()) {
            notDone("soak_started", then.scale.reading - high);
        }
        if (isClockFromContact(m_course)) {
            m_all.push_back({"clock_from_contact", m_at, largestBead(*m_course.soakBegan)});
        }
    }

    /// The wheel may be locked some seconds before it is told, as the reading is typed between.
    void locked() {
        const BenchView then = m_course.view(m_at + kDoneWithin);
        if (then.wheel != WheelHold::Locked) {
            notDone("pressure_locked", 0);
        } else if (const auto first = m_course.end.instants.locked;
                   first && *first + kTypedIn < m_at && !m_lockTold) {
            m_all.push_back({"told_late:pressure_locked", m_at, seconds(m_at - *first)});
        }
        m_lockTold = true;
    }

    template <class Kind>
    bool acted(Milliseconds until, int sheet = -1) const {
        const auto& acts = m_course.take().acts;
        return std::any_of(acts.begin(), acts.end(), [&](const TimedAct& one) {
            const auto* act = std::get_if<Kind>(&one.act);
            if (act == nullptr || one.at > until) {
                return false;
            }
            if constexpr (requires { act->sheet; }) {
                return sheet < 0 || act->sheet == sheet;
            } else {
                return true;
            }
        });
    }

    /// Whether what a check says of the bench is so, a second later at most. Checks of which the
    /// bench knows nothing are believed.
    bool isDone(const std::string& check) const {
        const Milliseconds by = m_at + kDoneWithin;
        const BenchFaults& faults = m_course.set.setup.faults;
        if (check == "film_off") {
            return (!faults.filmOn[0] || acted<TakeFilmOff>(by, 0)) &&
                   (!faults.filmOn[1] || acted<TakeFilmOff>(by, 1));
        }
        if (check == "edges_planed") {
            return (faults.planed[0] || acted<PlaneEdge>(by, 0)) &&
                   (faults.planed[1] || acted<PlaneEdge>(by, 1));
        }
        if (check == "plate_wiped") {
            return acted<WipePlate>(by);
        }
        if (check == "first_sheet" || check == "second_sheet") {
            const BenchView then = m_course.view(by);
            const int clamped = (then.clamped[0] ? 1 : 0) + (then.clamped[1] ? 1 : 0);
            return clamped >= (check == "first_sheet" ? 1 : 2);
        }
        if (check == "gap" || check == "clamping_gap") {
            return acted<SetGap>(by);
        }
        if (check == "edges_meet") {
            const BenchView then = m_course.view(m_at);
            const double allowed =
                static_cast<double>(m_course.set.setup.plan.edgeGapMaxUm) / 1e3 + kEdgeGrace;
            return std::max(offParallelMm(then), leanMm(then)) <= allowed;
        }
        return true;
    }

    void released(const std::string& what) {
        const BenchView soon = m_course.view(m_at + kDoneWithin);
        const bool undone = (what == "clamps_eased" && !soon.clampsEased) ||
                            (what == "bars_opened" && !soon.barsOpen) ||
                            (what == "sheet_out" && !soon.lifted);
        if (undone) {
            notDone(what, 0);
        } else if (what == "spring_off") {
            const BenchView then = m_course.view(m_at + kSpringTakes);
            const double zero = static_cast<double>(m_course.set.setup.bench.scale.zeroMilli) / 1e3;
            if (then.scale.reading > zero + 2 * m_course.divisionUnits()) {
                notDone(what, then.scale.reading);
            }
        }
    }

    static constexpr Milliseconds kTypedIn{6'000};
    static constexpr double kEdgeGrace = 0.05; // [mm] less is not seen beside a gauge [practice]

    const PracticeCourse& m_course;
    Milliseconds m_at{0};
    bool m_lockTold = false;
    std::vector<OrderError> m_all;
};

} // namespace

bool isClockFromContact(const PracticeCourse& course) {
    constexpr double kBeadStands = 0.7; // of what the plan asks: less is no bead [practice]
    return course.soakBegan && largestBead(*course.soakBegan) < kBeadStands * course.beadMinMm();
}

std::vector<OrderError> orderErrors(const PracticeCourse& course) {
    return Order(course).all();
}

} // namespace seamclock
