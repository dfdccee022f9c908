#include "app/daylog/course_view.h"

#include "app/text/numbers.h"
#include "core/report/cue_history.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace seamclock {
namespace {

struct Course {
    Q_DECLARE_TR_FUNCTIONS(Course)
};

constexpr std::size_t kPhases = 5;
constexpr std::size_t kMostPoints = 80; // of a phase; the drawing is some hundred pixels wide
constexpr double kColdest = 20;         // where the drawing begins [°C]

struct PhaseNames {
    const char* code;
    const char* finding; // of its time
    const char* words;
};
constexpr std::array<PhaseNames, kPhases> kNames{{
    {"alignment", "alignment_time", QT_TRANSLATE_NOOP("Course", "align")},
    {"soak", "soak_time", QT_TRANSLATE_NOOP("Course", "soak")},
    {"changeover", "changeover", QT_TRANSLATE_NOOP("Course", "changeover")},
    {"build_up", "build_up", QT_TRANSLATE_NOOP("Course", "build-up")},
    {"cooling", "cooling", QT_TRANSLATE_NOOP("Course", "cooling")},
}};

double inUnits(std::int64_t milli) {
    return static_cast<double>(milli) / 1000.0;
}

double inSeconds(Milliseconds time) {
    return static_cast<double>(time.count()) / 1000.0;
}

QString tookText(const WeldTime& took) {
    const QString low = timeText(took.lo);
    return took.lo == took.hi ? low : Course::tr("%1 to %2").arg(low, timeText(took.hi));
}

/// What the plan says about the length of each phase.
std::optional<Milliseconds> plannedOf(const WeldPlan& plan, std::size_t phase) {
    switch (phase) {
    case 1:
        return plan.soak ? std::optional(plan.soak->target) : std::nullopt;
    case 2:
        return plan.changeoverMax;
    case 3:
        return plan.buildUp ? std::optional(plan.buildUp->target) : std::nullopt;
    case 4:
        return plan.cooling ? std::optional(plan.cooling->atLeast) : std::nullopt;
    default:
        return std::nullopt;
    }
}

class Drawing {
public:
    explicit Drawing(const WeldRecord& record)
        : m_record(record), m_standing(retained(record.events)) {}

    CourseView made() {
        for (std::size_t i = 0; i < kPhases; ++i) {
            addPhase(i);
        }
        if (m_record.plan.scale) {
            addScale(*m_record.plan.scale);
        }
        addHappenings();
        return std::move(m_view);
    }

private:
    CourseView::Phase& phase(std::size_t i) { return m_view.phases[i]; }

    const PhaseRecord* recordOf(const char* code) const {
        const auto& phases = m_record.phases;
        // The last of that name: one that was taken back and made again went so.
        const auto found = std::find_if(
            phases.rbegin(), phases.rend(), [&](const PhaseRecord& p) { return p.phase == code; });
        return found == phases.rend() ? nullptr : &*found;
    }

    std::optional<WeldTime> timeOf(std::int64_t n) const {
        const auto found = std::find_if(
            m_standing.begin(), m_standing.end(), [n](const Retained& one) { return one.n == n; });
        return found == m_standing.end() ? std::nullopt : std::optional(found->t);
    }

    void addPhase(std::size_t i) {
        const PhaseNames& names = kNames[i];
        CourseView::Phase out;
        out.name = Course::tr(names.words);
        const auto planned = plannedOf(m_record.plan, i);
        out.timed = planned && planned->count() > 0;
        out.plan = out.timed ? timeText(*planned) : i == 0 ? Course::tr("by bead") : QString();
        std::optional<double> length;
        if (out.timed) {
            length = inSeconds(*planned);
        }
        if (const PhaseRecord* went = recordOf(names.code)) {
            out.fromN = went->fromN;
            out.toN = went->toN;
            m_from[i] = timeOf(went->fromN);
            if (went->took) {
                out.done = tookText(*went->took);
                if (!length) {
                    length = std::max(inSeconds(went->took->lo), 1.0);
                }
                out.share = inSeconds(went->took->hi) / *length;
                m_took[i] = inSeconds(went->took->lo);
            }
            if (went->high && out.timed) {
                out.limit = inSeconds(*went->high) / *length;
            } else if (went->low && out.timed) {
                out.limit = inSeconds(*went->low) / *length;
            }
        }
        for (const Finding& finding : m_record.verdict.findings) {
            if (finding.code == names.finding && finding.grade != Grade::Incomplete) {
                out.grade = finding.grade;
            }
        }
        m_length[i] = length;
        m_view.phases.push_back(std::move(out));
    }

    /// In the phase that stood then, in lengths of its plan; absent: before alignment, or in one
    /// that has no length.
    std::optional<std::pair<std::size_t, double>> placeOf(const WeldTime& t) const {
        for (std::size_t i = kPhases; i-- > 0;) {
            if (m_from[i] && t.lo >= m_from[i]->lo && m_length[i]) {
                const double at = inSeconds(t.lo - m_from[i]->lo) / *m_length[i];
                return std::pair{i, std::min(at, m_view.phases[i].length())};
            }
        }
        return std::nullopt;
    }

    void addScale(const WeldPlan::ScalePlan& scale) {
        m_view.scaleUnit = QString::fromStdString(scale.unit);
        const auto bandOf = [](const ReadingBand& band) {
            return CourseView::Band{inUnits(band.lowMilli), inUnits(band.highMilli)};
        };
        phase(0).band = bandOf(scale.alignment);
        phase(1).band = bandOf(scale.soak);
        phase(3).climb =
            CourseView::Band{inUnits(scale.zeroMilli), inUnits(scale.joining.setMilli)};
        phase(4).band = bandOf(scale.joining);
        std::int64_t top =
            std::max({scale.alignment.highMilli, scale.joining.highMilli, scale.soak.highMilli});
        for (const Retained& one : m_record.readings) {
            const auto& reading = std::get<ReadingTaken>(one.d);
            const ReadingBand& band = reading.phase == ReadingPhase::Alignment ? scale.alignment
                                      : reading.phase == ReadingPhase::Soak    ? scale.soak
                                                                               : scale.joining;
            top = std::max(top, reading.readingMilli);
            if (const auto place = placeOf(one.t)) {
                phase(place->first)
                    .readings.push_back(
                        {place->second, inUnits(reading.readingMilli),
                         !band.holds(reading.readingMilli), one.n});
            }
        }
        m_view.scaleTop = std::max(inUnits(top), 1e-3);
        m_view.scaleTopText = readingText(top, scale.divisionMilli);
    }

    void addHappenings() {
        for (const Retained& one : m_record.remarks) {
            if (const auto place = placeOf(one.t)) {
                phase(place->first).happenings.push_back({place->second, Sign::Remark, one.n});
            }
        }
        for (const CueDue& due : cueHistory(m_record.events)) {
            const bool told =
                due.cue.kind == CueKind::GetReady || due.cue.kind == CueKind::ActNow ||
                due.cue.kind == CueKind::ChangeoverOverrun ||
                due.cue.kind == CueKind::BuildUpLate || due.cue.kind == CueKind::AlignmentLate ||
                due.cue.kind == CueKind::RecheckDue || due.cue.kind == CueKind::CoolingDone;
            const auto before = told ? timeOf(due.afterN) : std::nullopt;
            if (!before) {
                continue;
            }
            const Instant& from = m_record.events[static_cast<std::size_t>(due.afterN - 1)].at;
            if (const auto place = placeOf(*before + (due.boot - from.boot))) {
                phase(place->first).happenings.push_back({place->second, Sign::Sound, due.afterN});
            }
        }
        for (CourseView::Phase& one : m_view.phases) {
            std::stable_sort(
                one.happenings.begin(), one.happenings.end(),
                [](const auto& a, const auto& b) { return a.at < b.at; });
        }
    }

    const WeldRecord& m_record;
    std::vector<Retained> m_standing;
    CourseView m_view;
    std::array<std::optional<WeldTime>, kPhases> m_from;
    std::array<std::optional<double>, kPhases> m_length; // [s]
    std::array<std::optional<double>, kPhases> m_took;   // [s]
};

/// How far the likely value may be off, up and down.
struct Off {
    double down = 0;
    double up = 0;
};

Off offOf(const std::optional<HeatRange>& range) {
    return range ? Off{range->likely - range->low, range->high - range->likely} : Off{};
}

/// Between the instants whose spread was worked out it goes straight.
void addPlane(CourseView& view, const HeatEstimate& estimate) {
    const HeatCourse& course = estimate.course;
    const std::array<std::optional<double>, kPhases> took{
        course.alignSeconds       ? course.alignSeconds
        : estimate.numbers.alignS ? std::optional(estimate.numbers.alignS->likely)
                                  : std::nullopt,
        course.soak, course.changeover, course.buildUp, course.cooling};
    const Off start{};
    const Off endOfSoak = offOf(estimate.numbers.skinEndOfSoakC);
    const Off met = offOf(estimate.numbers.skinFacesMeetC);
    const Off release = offOf(estimate.numbers.weldPlaneAtReleaseC);
    const std::array<std::pair<Off, Off>, kPhases> ends{
        {{start, endOfSoak}, {endOfSoak, endOfSoak}, {endOfSoak, met}, {met, met}, {met, release}}};
    double from = 0;
    std::size_t next = 0;
    double hottest = 0;
    for (std::size_t i = 0; i < kPhases && took[i]; ++i) {
        const double length = std::max(*took[i], 1e-3);
        CourseView::Phase& phase = view.phases[i];
        const double share = phase.share > 0 ? phase.share : 1;
        const auto& curve = estimate.curve;
        std::size_t behind = next;
        while (behind < curve.size() && curve[behind].seconds <= from + length + 1e-9) {
            ++behind;
        }
        const std::size_t step = (behind - next) / kMostPoints + 1;
        const auto add = [&](const HeatPoint& point) {
            const double part = std::clamp((point.seconds - from) / length, 0.0, 1.0);
            const auto& [a, b] = ends[i];
            phase.plane.push_back(
                {part * share, point.faceC - (a.down + (b.down - a.down) * part), point.faceC,
                 point.faceC + (a.up + (b.up - a.up) * part)});
            hottest = std::max(hottest, phase.plane.back().high);
        };
        for (std::size_t k = next; k < behind; k += step) {
            add(curve[k]);
        }
        if (behind > next && (behind - next - 1) % step != 0) {
            add(curve[behind - 1]);
        }
        next = behind;
        from += length;
    }
    view.estimated = std::any_of(view.phases.begin(), view.phases.end(), [](const auto& phase) {
        return !phase.plane.empty();
    });
    view.hottest = std::max(hottest, kColdest + 1);
    if (estimate.numbers.skinFacesMeetC) {
        view.phases[2].figure =
            numberText(estimate.numbers.skinFacesMeetC->likely, 0) + QStringLiteral(" °C");
    }
    if (estimate.numbers.weldPlaneAtReleaseC) {
        view.releaseFigure = numberText(estimate.numbers.weldPlaneAtReleaseC->likely, 0);
    }
}

} // namespace

CourseView courseView(const WeldRecord& record, const HeatEstimate* estimate) {
    CourseView view = Drawing(record).made();
    if (estimate != nullptr && (record.stored || record.aborted)) {
        addPlane(view, *estimate);
    }
    return view;
}

std::vector<double> spreadOut(std::vector<double> wanted, double side, double left, double right) {
    if (wanted.empty()) {
        return wanted;
    }
    const auto count = static_cast<double>(wanted.size());
    const double last = std::max(right - side, left);
    const double pitch = count > 1 ? std::min(side, (last - left) / (count - 1)) : side;
    double free = left;
    for (double& at : wanted) {
        at = std::max(at, free);
        free = at + pitch;
    }
    double most = last;
    for (auto at = wanted.rbegin(); at != wanted.rend(); ++at) {
        *at = std::max(std::min(*at, most), left);
        most = *at - pitch;
    }
    return wanted;
}

} // namespace seamclock
