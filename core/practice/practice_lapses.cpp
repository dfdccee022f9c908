// Which of the mistakes that practice must teach were made: decided from what was done at the bench
// and what the physics made of it. What counts as one is a threshold of our own throughout
// [practice]: the trade names the mistakes, not where they begin. A good weld has none of them.
#include "core/practice/practice_course.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr double kPressedOfMax = 2; // soak's mean pressure, of the most that is allowed
constexpr double kPressedOfAlignment = 0.2;
constexpr double kOffMm = 0.1; // an air gap in soak
constexpr Milliseconds kOffFor{3'000};
constexpr double kSlammedOfTarget = 0.3; // of build-up, by when four fifths of the force stand
constexpr double kMostOfForce = 0.8;
constexpr double kOvershoot = 0.25; // of the joining force
constexpr double kHalf = 0.5;
constexpr Milliseconds kLetBackFor{3'000};
constexpr Milliseconds kBeforeRelease{2'000};
constexpr Milliseconds kFollowGrace{30'000}; // behind a reading that is due
constexpr Milliseconds kEarlyGrace{5'000};
constexpr double kPlateOffK = 0.5;
constexpr double kBeadMissing = 0.7; // of what the plan asks
constexpr double kBeadThere = 0.9;
constexpr double kOtherForce = 0.5;
constexpr Milliseconds kLook{1'000};
constexpr Milliseconds kShortLook{40};

double seconds(Milliseconds time) {
    return static_cast<double>(time.count()) / 1e3;
}
double inThousands(std::int64_t value) {
    return static_cast<double>(value) / 1e3;
}

/// How long something has been so, without a break.
class Lasting {
public:
    explicit Lasting(Milliseconds atLeast) : m_atLeast(atLeast) {}

    bool see(bool so, Milliseconds at) {
        if (!so) {
            m_since.reset();
        } else if (!m_since) {
            m_since = at;
        }
        return m_since && at - *m_since >= m_atLeast;
    }

private:
    Milliseconds m_atLeast;
    std::optional<Milliseconds> m_since;
};

class Lapses {
public:
    explicit Lapses(const PracticeCourse& course)
        : m_course(course), m_card(course.card()), m_right(course.right()),
          m_bench(course.end.instants) {}

    std::vector<LapseFinding> all() {
        const bool welded = m_course.when<AlignmentStarted>().has_value();
        if (welded) {
            theCard();
        }
        marks();
        clamping();
        plate();
        bead();
        soak();
        changeover();
        buildUp();
        cooling();
        release();
        return std::move(m_found);
    }

private:
    void find(LapseFinding finding) { m_found.push_back(std::move(finding)); }
    bool has(Lapse lapse) const {
        return std::any_of(m_found.begin(), m_found.end(), [lapse](const LapseFinding& finding) {
            return finding.lapse == lapse;
        });
    }
    std::string unit() const { return m_course.set.setup.bench.scale.unit; }

    /// Stations of which it holds, as a finding says them: none if it is all.
    template <class Holds>
    std::optional<std::vector<int>> where(const BenchView& view, Holds holds) const {
        std::vector<int> places;
        for (std::size_t i = 0; i < view.stations.size(); ++i) {
            if (holds(view.stations[i])) {
                places.push_back(static_cast<int>(i));
            }
        }
        if (places.empty()) {
            return std::nullopt;
        }
        return places.size() == view.stations.size() ? std::vector<int>() : places;
    }

    double joiningUnits() const { // above zero, by the card
        return inThousands(m_card.scale->joining.setMilli - m_card.scale->zeroMilli);
    }
    double zeroUnits() const { return inThousands(m_card.scale->zeroMilli); }

    void theCard() {
        if (m_card.thicknessUm != m_right.thicknessUm) {
            find(
                {Lapse::WrongRow,
                 inThousands(m_card.thicknessUm),
                 inThousands(m_right.thicknessUm),
                 "mm",
                 {}});
        }
        // Beside what another thickness would explain.
        const double force =
            static_cast<double>(m_card.joiningMn.value_or(0)) /
            static_cast<double>(std::max<std::int64_t>(m_right.joiningMn.value_or(0), 1));
        const double right =
            inThousands(m_right.scale->joining.setMilli - m_right.scale->zeroMilli);
        if (joiningUnits() < kOtherForce * force * right) {
            find(
                {Lapse::WrongUnit,
                 inThousands(m_card.scale->joining.setMilli),
                 inThousands(m_right.scale->joining.setMilli),
                 unit(),
                 {}});
        }
    }

    void marks() {
        const struct {
            Lapse lapse;
            bool SeamMarks::*mark;
        } kRows[] = {
            {Lapse::FilmLeft, &SeamMarks::filmLeft},
            {Lapse::EdgeTouched, &SeamMarks::handTouched},
            {Lapse::PlateDirty, &SeamMarks::dirtyPlate},
        };
        for (const auto& row : kRows) {
            const auto places = where(m_course.end, [&row](const StationView& station) {
                return station.marks.*row.mark;
            });
            if (places) {
                find({row.lapse, {}, {}, "", *places});
            }
        }
    }

    /// Seen as "edges meet" is seen: cold, before the plate comes in.
    void clamping() {
        const auto& acts = m_course.take().acts;
        const auto in = std::find_if(acts.begin(), acts.end(), [](const TimedAct& act) {
            return std::holds_alternative<BringPlateIn>(act.act);
        });
        if (in == acts.end()) {
            return;
        }
        const BenchView view = m_course.view(std::max(in->at - Milliseconds(1), Milliseconds(0)));
        const double off = offParallelMm(view);
        const double allowed = inThousands(m_right.edgeGapMaxUm);
        if (!view.clamped[0] || !view.clamped[1] || off <= allowed) {
            return;
        }
        const double nearest =
            std::min_element(
                view.stations.begin(), view.stations.end(),
                [](const StationView& a, const StationView& b) { return a.gapMm < b.gapMm; })
                ->gapMm;
        const auto places = where(view, [&](const StationView& station) {
            return station.gapMm - nearest > allowed / 2;
        });
        find({Lapse::OffParallel, off, allowed, "mm", places.value_or(std::vector<int>())});
    }

    void plate() {
        const double least = inThousands(m_right.plate->minMc) - kPlateOffK;
        const double most = inThousands(m_right.plate->maxMc) + kPlateOffK;
        double coldest = least;
        double hottest = most;
        for (const StationView& station : m_course.end.stations) {
            if (station.hottestPlateC > 0) {
                coldest = std::min(coldest, station.hottestPlateC);
                hottest = std::max(hottest, station.hottestPlateC);
            }
        }
        if (const auto cold = where(m_course.end, [least](const StationView& station) {
                return station.hottestPlateC > 0 && station.hottestPlateC < least;
            })) {
            find({Lapse::PlateCold, coldest, inThousands(m_right.plate->minMc), "C", *cold});
        }
        if (const auto hot = where(m_course.end, [most](const StationView& station) {
                return station.hottestPlateC > most;
            })) {
            find({Lapse::PlateHot, hottest, inThousands(m_right.plate->maxMc), "C", *hot});
        }
    }

    void bead() {
        if (!m_course.soakBegan || m_course.beadMinMm() <= 0) {
            return;
        }
        const BenchView& view = *m_course.soakBegan;
        const double least = m_course.beadMinMm();
        if (isClockFromContact(m_course)) {
            find({Lapse::ClockFromContact, largestBead(view), least, "mm", {}});
            return;
        }
        const auto oneSided = where(view, [least](const StationView& station) {
            const auto [small, large] = std::minmax(station.beadTopMm, station.beadBottomMm);
            return small < kBeadMissing * least && large >= kBeadThere * least;
        });
        if (oneSided) {
            find({Lapse::TopBeadOnly, smallestBead(view), least, "mm", *oneSided});
        }
        if (has(Lapse::OffParallel) || has(Lapse::PlateCold)) {
            return;
        }
        const auto missing = where(view, [least](const StationView& station) {
            return std::max(station.beadTopMm, station.beadBottomMm) < kBeadMissing * least;
        });
        if (missing && !missing->empty() && largestBead(view) >= kBeadThere * least) {
            find({Lapse::OffParallel, smallestBead(view), least, "mm", *missing});
        }
    }

    /// From when soak was told to when the plate left.
    void soak() {
        const auto from = m_course.when<SoakStarted>();
        if (!from) {
            return;
        }
        const Milliseconds to =
            m_course.plateLeft().value_or(m_course.when<PlateOut>().value_or(m_course.end.at));
        // The tables come apart for the plate in the last second or two.
        const Milliseconds last = to - Milliseconds(3'000);
        double pascals = 0;
        int looks = 0;
        double widest = 0;
        bool off = false;
        Lasting lasting(kOffFor);
        m_course.walk(*from + Milliseconds(5'000), last, kLook, [&](const BenchView& view) {
            pascals += view.scale.facesN / area();
            ++looks;
            double nearest = view.stations.front().gapMm;
            for (const StationView& station : view.stations) {
                nearest = std::min(nearest, station.gapMm);
            }
            widest = std::max(widest, nearest);
            off = lasting.see(nearest > kOffMm, view.at) || off;
            return true;
        });
        if (looks == 0) {
            return;
        }
        const auto alignment = static_cast<double>(m_right.alignmentPa.value_or(0));
        const auto most = static_cast<double>(m_right.soakMaxPa.value_or(0));
        const double mean = pascals / looks;
        if (mean > std::max(kPressedOfMax * most, kPressedOfAlignment * alignment)) {
            find({Lapse::SoakPressed, mean, most, "Pa", {}});
        }
        if (off) {
            find({Lapse::BackedOff, widest, 0.0, "mm", {}});
        }
    }

    void changeover() {
        const auto left = m_course.plateLeft();
        if (!left || !m_bench.facesMet || !m_card.changeoverMax) {
            return;
        }
        const Milliseconds took = *m_bench.facesMet - *left;
        if (took > *m_card.changeoverMax) {
            find({Lapse::SlowChangeover, seconds(took), seconds(*m_card.changeoverMax), "s", {}});
            return;
        }
        if (m_course.set.setup.faults.draught <= 1) {
            return;
        }
        // Quick enough by the clock, and a skin all the same.
        const auto& planned = m_course.planned.joining.stations;
        std::optional<double> coldest;
        double beside = 0;
        std::vector<int> places;
        for (std::size_t i = 0; i < m_course.end.stations.size() && i < planned.size(); ++i) {
            const StationView& station = m_course.end.stations[i];
            if (!station.joined || station.joined->skinC >= station.joined->leastSkinC) {
                continue;
            }
            places.push_back(static_cast<int>(i));
            if (!coldest || station.joined->skinC < *coldest) {
                coldest = station.joined->skinC;
                beside = planned[i].skinC;
            }
        }
        if (coldest) {
            if (places.size() == m_course.end.stations.size()) {
                places.clear();
            }
            find({Lapse::SlowChangeover, coldest, beside, "C", places});
        }
    }

    void buildUp() {
        if (!m_bench.facesMet || !m_card.buildUp) {
            return;
        }
        const Milliseconds from = *m_bench.facesMet;
        const Milliseconds to =
            std::min(m_bench.locked.value_or(m_course.end.at), from + 3 * m_card.buildUp->high);
        const double most = zeroUnits() + kMostOfForce * joiningUnits();
        double highest = 0;
        std::optional<Milliseconds> stood;
        m_course.walk(from, to, kShortLook, [&](const BenchView& view) {
            highest = std::max(highest, view.scale.reading);
            if (!stood && view.scale.reading >= most) {
                stood = view.at - from;
            }
            return true;
        });
        const double over =
            inThousands(m_card.scale->joining.highMilli) + kOvershoot * joiningUnits();
        const auto target = static_cast<double>(m_card.buildUp->target.count());
        if (highest > over) {
            find(
                {Lapse::Slammed, highest, inThousands(m_card.scale->joining.setMilli), unit(), {}});
        } else if (stood && static_cast<double>(stood->count()) < kSlammedOfTarget * target) {
            find({Lapse::Slammed, seconds(*stood), seconds(m_card.buildUp->target), "s", {}});
        }
    }

    /// From the lock to the first release, as it was told, or to what let the joint go.
    Milliseconds heldUntil() const {
        const auto told = m_course.when<ReleaseStep>();
        const Milliseconds go = m_bench.letGo.value_or(m_course.end.at);
        return (told ? std::min(*told, go) : go) - kBeforeRelease;
    }

    void cooling() {
        if (!m_bench.locked || !m_card.cooling) {
            return;
        }
        const Milliseconds from = *m_bench.locked;
        const Milliseconds until = heldUntil();
        const double low = inThousands(m_card.scale->joining.lowMilli);
        const double half = zeroUnits() + kHalf * joiningUnits();
        Lasting lasting(kLetBackFor);
        std::optional<double> letBack;
        m_course.walk(from, until, kLook, [&](const BenchView& view) {
            const bool soft =
                std::any_of(view.stations.begin(), view.stations.end(), [](const auto& station) {
                    return station.joined && !station.joined->frozen;
                });
            const double reading = view.scale.reading;
            if (lasting.see(view.wheel != WheelHold::Locked && reading < half, view.at)) {
                letBack = std::min(letBack.value_or(reading), reading);
            }
            return soft;
        });
        if (letBack) {
            find({Lapse::LetBack, letBack, low, unit(), {}});
        } else if (const auto fallen = notFollowed(from, until)) {
            find({Lapse::NotFollowed, fallen, low, unit(), {}});
        }
    }

    /// Seen low when it was last due to be read, and not turned up after that.
    std::optional<double> notFollowed(Milliseconds from, Milliseconds until) const {
        std::optional<Milliseconds> due;
        for (const Milliseconds recheck : m_card.cooling->rechecks) {
            if (from + recheck + kFollowGrace <= until) {
                due = from + recheck;
            }
        }
        if (!due) {
            return std::nullopt;
        }
        const BenchScale then = m_course.view(*due).scale;
        const double later = m_course.view(*due + kFollowGrace).scale.reading;
        const bool low = then.seenMilli < m_card.scale->joining.lowMilli;
        return low && later <= then.reading + m_course.divisionUnits() / 2 ? std::optional(later)
                                                                           : std::nullopt;
    }

    void release() {
        if (!m_bench.locked || !m_card.cooling ||
            (!m_bench.letGo && !m_course.when<ReleaseStep>())) {
            return;
        }
        const Milliseconds took = heldUntil() + kBeforeRelease - *m_bench.locked;
        if (took + kEarlyGrace < m_card.cooling->atLeast) {
            find({Lapse::EarlyRelease, seconds(took), seconds(m_card.cooling->atLeast), "s", {}});
        }
    }

    double area() const { // [m²]
        return static_cast<double>(m_right.thicknessUm) / 1e6 *
               static_cast<double>(m_right.lengthUm) / 1e6;
    }

    const PracticeCourse& m_course;
    const WeldPlan& m_card;
    const WeldPlan& m_right;
    const BenchInstants& m_bench;
    std::vector<LapseFinding> m_found;
};

} // namespace

std::vector<LapseFinding> lapsesIn(const PracticeCourse& course) {
    return Lapses(course).all();
}

} // namespace seamclock
