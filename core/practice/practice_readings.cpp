// Numbers that were typed in, beside what the bench showed.
#include "core/practice/practice_course.h"

#include "core/base/overloaded.h"
#include "core/weld/force_check.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

// As far off a careful eye may be, all [practice].
constexpr double kProbeC = 2;
constexpr double kBeadMm = 0.4; // with a rule, on a round bead
constexpr double kValleyMm = 0.3;
constexpr double kGapMm = 0.3;
constexpr double kDivisions = 1;

/// A number is typed after it was read: what the bench showed in that time counts as seen.
constexpr Milliseconds kTypedWithin{4'000};
/// "At 20.0 mm" is pressed while the reading rises: what it shows then is what counts.
constexpr Milliseconds kPressedWithin{100};
constexpr Milliseconds kLook{100};

double inThousands(std::int64_t value) {
    return static_cast<double>(value) / 1e3;
}

/// The nearest to what was said of all that was shown.
class Nearest {
public:
    explicit Nearest(double said) : m_said(said) {}

    void show(double value) {
        if (!m_any || std::fabs(value - m_said) < std::fabs(m_was - m_said)) {
            m_was = value;
            m_any = true;
        }
    }
    /// Anything between is shown too.
    void showRange(double low, double high) { show(std::clamp(m_said, low, high)); }
    double was() const { return m_was; }

private:
    double m_said;
    double m_was = 0;
    bool m_any = false;
};

class Readings {
public:
    explicit Readings(const PracticeCourse& course) : m_course(course) {}

    std::vector<ReadingError> all() {
        for (const Retained& one : m_course.told) {
            m_at = m_course.timeOf(one.at);
            if (const auto* check = std::get_if<CheckMade>(&one.d); check && !check->takenUtc) {
                checked(*check);
            } else if (const auto* reading = std::get_if<ReadingTaken>(&one.d)) {
                scale(std::string(toString(reading->phase)), inThousands(reading->readingMilli));
            } else if (const auto* bead = std::get_if<BeadMeasured>(&one.d)) {
                measured(*bead);
            }
        }
        return std::move(m_all);
    }

private:
    template <class Show>
    void
    add(const std::string& what, double said, double allowed, const std::string& unit, Show show,
        Milliseconds within = kTypedWithin) {
        Nearest nearest(said);
        m_course.walk(
            std::max(m_at - within, Milliseconds(0)), m_at, kLook, [&](const BenchView& view) {
                show(view, nearest);
                return true;
            });
        m_all.push_back({what, m_at, said, nearest.was(), allowed, unit});
    }

    void scale(const std::string& what, double said) {
        const SpringScale& scale = m_course.set.setup.bench.scale;
        add(
            what, said, kDivisions * m_course.divisionUnits(), scale.unit,
            [](const BenchView& view, Nearest& nearest) { nearest.show(view.scale.reading); },
            what == toString(ReadingPhase::Joining) ? kPressedWithin : kTypedWithin);
    }

    void checked(const CheckMade& check) {
        if (check.valueMc && check.check == "plate_temperature") {
            plate(inThousands(*check.valueMc), check.place.value_or("middle"));
        } else if (isForceMark(check)) {
            return; // the plan's own number, marked
        } else if (check.valueMilli && check.check == kDrag) {
            drag(inThousands(*check.valueMilli));
        } else if (check.valueMilli && check.check == "scale_zero") {
            scale("scale_zero", inThousands(*check.valueMilli));
        } else if (check.valueUm && check.check == "alignment_bead") {
            add("alignment_bead", inThousands(*check.valueUm), kBeadMm, "mm",
                [](const BenchView& view, Nearest& nearest) { nearest.show(smallestBead(view)); });
        } else if (check.valueUm && (check.check == "gap" || check.check == "clamping_gap")) {
            add(check.check, inThousands(*check.valueUm), kGapMm, "mm",
                [](const BenchView& view, Nearest& nearest) {
                    nearest.show(view.gapLeftMm);
                    nearest.show(view.gapRightMm);
                });
        }
    }

    void plate(double said, const std::string& place) {
        add("plate_temperature", said, kProbeC, "C",
            [&place](const BenchView& view, Nearest& nearest) {
                const std::size_t last = view.stations.size() - 1;
                const std::size_t station = place == "front"  ? 0
                                            : place == "back" ? last
                                                              : last / 2;
                nearest.show(view.stations[station].plateC);
            });
    }

    /// The scale while the table moves with nothing pressing: known, however it was found out.
    void drag(double said) {
        const BenchSetup& setup = m_course.set.setup;
        const SpringScale& scale = setup.bench.scale;
        const double was = dragReading(scale, newtons(setup.dragN)) + setup.faults.zeroOff;
        m_all.push_back(
            {"drag", m_at, said, was, kDivisions * m_course.divisionUnits(), scale.unit});
    }

    void measured(const BeadMeasured& bead) {
        add("bead", inThousands(bead.heightUm), kBeadMm, "mm",
            [&](const BenchView& view, Nearest& nearest) {
                each(view, bead.placeUm, [&](const StationView& station) {
                    nearest.showRange(
                        std::min(station.beadTopMm, station.beadBottomMm),
                        std::max(station.beadTopMm, station.beadBottomMm));
                });
            });
        // The valley counts where it is deepest, on either side.
        add("k", inThousands(bead.kUm), kValleyMm, "mm",
            [&](const BenchView& view, Nearest& nearest) {
                std::optional<double> deepest;
                each(view, bead.placeUm, [&](const StationView& station) {
                    const double here = std::min(station.valleyTopMm, station.valleyBottomMm);
                    deepest = std::min(deepest.value_or(here), here);
                });
                nearest.show(deepest.value_or(0));
            });
    }

    /// The station at that place; without a place all of them.
    template <class Use>
    static void each(const BenchView& view, const std::optional<std::int64_t>& placeUm, Use use) {
        if (!placeUm) {
            std::for_each(view.stations.begin(), view.stations.end(), use);
            return;
        }
        const double mm = inThousands(*placeUm);
        const auto nearest = std::min_element(
            view.stations.begin(), view.stations.end(),
            [mm](const StationView& a, const StationView& b) {
                return std::fabs(a.placeMm - mm) < std::fabs(b.placeMm - mm);
            });
        if (nearest != view.stations.end()) {
            use(*nearest);
        }
    }

    const PracticeCourse& m_course;
    Milliseconds m_at{0};
    std::vector<ReadingError> m_all;
};

} // namespace

std::vector<ReadingError> readingErrors(const PracticeCourse& course) {
    return Readings(course).all();
}

} // namespace seamclock
