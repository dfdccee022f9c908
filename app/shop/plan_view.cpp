#include "app/shop/plan_view.h"

#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <algorithm>
#include <map>
#include <utility>

namespace seamclock {
namespace {

struct Plan {
    Q_DECLARE_TR_FUNCTIONS(Plan)
};

QString tr(const char* text) {
    return Plan::tr(text);
}

constexpr std::int64_t kMinute = 60'000;

/// All of one seam, or of its trial joint, on one bench.
struct Visit {
    std::string label;
    bool trial = false;
    std::size_t bench = 0;
    std::optional<Milliseconds> begins; // absent: only cooling and release are left
    Milliseconds locked{0};
    std::optional<std::size_t> welder;
    std::optional<DayStretch> release;
    std::optional<DayStretch> plate;
    std::optional<DayStretch> decision;
};

std::vector<Visit> visitsOf(const DayPlan& plan) {
    std::vector<Visit> out;
    for (const DayStretch& one : plan.stretches) {
        auto visit = std::find_if(out.begin(), out.end(), [&one](const Visit& known) {
            return known.label == one.label && known.bench == one.bench && known.trial == one.trial;
        });
        if (visit == out.end()) {
            out.emplace_back();
            visit = out.end() - 1;
            visit->label = one.label;
            visit->bench = one.bench;
            visit->trial = one.trial;
        }
        if (one.kind == DayKind::PlateWait) {
            visit->plate = one;
        } else if (one.kind == DayKind::Release) {
            visit->release = one;
        } else if (one.kind == DayKind::Decision) {
            visit->decision = one;
        } else if (needsPerson(one.kind)) {
            visit->begins = visit->begins ? std::min(*visit->begins, one.from) : one.from;
            visit->locked = std::max(visit->locked, one.to);
            visit->welder = one.person;
        }
    }
    return out;
}

class Viewer {
public:
    Viewer(const JobDay& day, const Instant& at, const DayNames& names)
        : m_day(day), m_at(at), m_names(names), m_visits(visitsOf(day.plan)) {}

    PlanView made() {
        m_out.at = m_at;
        m_out.finish = m_day.plan.finish;
        m_out.bound = m_day.plan.bound.atLeast;
        say();
        addLanes();
        addSteps();
        return std::move(m_out);
    }

private:
    QString bench(std::size_t place) const { return m_names.bench(m_day.work.benches[place].id); }
    QString person(std::size_t place) const { return m_names.person(m_day.work.people[place]); }

    void say() {
        if (m_day.plan.stretches.empty()) {
            const std::size_t open =
                m_day.plan.impossible.size() + m_day.progress.count(JobSeamState::ToDecide);
            m_out.title = open == 0   ? tr("Nothing is to weld.")
                          : open == 1 ? tr("One seam is open, and can't be planned.")
                                      : tr("%1 seams are open, and none can be planned.").arg(open);
            m_out.under = left();
            return;
        }
        // The plan's end up, the bound down: but what is equal is told as equal.
        const bool best = m_out.finish <= m_out.bound;
        const QString end = planClock(m_at, m_out.finish, true);
        const QString least = planClock(m_at, m_out.bound, best);
        m_out.finishText = tr("this plan %1").arg(end);
        m_out.boundText = tr("earliest possible %1").arg(least);
        m_out.title = best ? tr("All are out at %1. It can't be earlier.").arg(end)
                           : tr("Earliest possible %1, this plan %2.").arg(least, end);
        m_out.under = why() + left();
    }

    QString why() const {
        QStringList which;
        for (const std::string& one : m_day.plan.bound.which) {
            which
                << (m_day.plan.bound.by == DayLimit::Benches  ? m_names.bench(one)
                    : m_day.plan.bound.by == DayLimit::People ? m_names.person(one)
                                                              : fromUtf8(one));
        }
        switch (m_day.plan.bound.by) {
        case DayLimit::Nothing:
            return {};
        case DayLimit::People:
            return which.empty() ? tr("All hands are full so long. ")
                                 : tr("What only %1 may weld takes so long. ")
                                       .arg(which.join(QStringLiteral(", ")));
        case DayLimit::Benches:
            return which.size() == 1
                       ? tr("Bench %1 is taken so long. ").arg(which.front())
                       : tr("Benches %1 are taken so long. ").arg(which.join(QStringLiteral(", ")));
        case DayLimit::OneSeam:
            return tr("Seam %1 alone takes so long. ").arg(which.join(QStringLiteral(", ")));
        }
        return {};
    }

    QString left() const {
        const std::size_t done = m_day.progress.count(JobSeamState::Done);
        return tr("Seams made: %1 of %2.").arg(done).arg(m_day.progress.seams.size());
    }

    void addLanes() {
        std::vector<PlanLane> people(m_day.work.people.size());
        for (std::size_t i = 0; i < people.size(); ++i) {
            people[i].name = person(i);
        }
        for (std::size_t i = 0; i < m_day.work.benches.size(); ++i) {
            m_out.lanes.push_back({tr("Bench %1").arg(bench(i)), {}});
        }
        for (const DayStretch& one : m_day.plan.stretches) {
            BarKind kind = BarKind::Hands;
            switch (one.kind) {
            case DayKind::PlateWait:
                kind = BarKind::WarmUp;
                break;
            case DayKind::Cooling:
                kind = BarKind::Cooling;
                break;
            case DayKind::Cooled:
                kind = BarKind::Waiting;
                break;
            case DayKind::Release:
                kind = BarKind::Release;
                break;
            case DayKind::Decision:
                kind = BarKind::Decision;
                break;
            case DayKind::Preparation:
            case DayKind::Alignment:
            case DayKind::Soak:
            case DayKind::Changeover:
            case DayKind::BuildUp:
                break;
            }
            const QString seam = fromUtf8(one.label);
            const QString label = one.trial ? tr("trial %1").arg(seam) : seam;
            add(m_out.lanes[one.bench].bars, {kind, label, label, one.from, one.to});
            if (one.person) {
                add(people[*one.person].bars,
                    {kind, tr("%1 · %2").arg(label, bench(one.bench)), label, one.from, one.to});
            }
        }
        for (PlanLane& lane : people) {
            m_out.lanes.push_back(std::move(lane));
        }
        for (PlanLane& lane : m_out.lanes) {
            std::stable_sort(
                lane.bars.begin(), lane.bars.end(),
                [](const PlanBar& a, const PlanBar& b) { return a.from < b.from; });
        }
    }

    /// The phases from preparation to the lock are one bar.
    static void add(std::vector<PlanBar>& bars, PlanBar bar) {
        const auto goesOn = std::find_if(bars.begin(), bars.end(), [&bar](const PlanBar& before) {
            return bar.kind == BarKind::Hands && before.kind == bar.kind &&
                   before.text == bar.text && before.to == bar.from;
        });
        if (goesOn != bars.end()) {
            goesOn->to = bar.to;
        } else {
            bars.push_back(std::move(bar));
        }
    }

    void addSteps() {
        for (const Visit& visit : m_visits) {
            const QString seam = fromUtf8(visit.label);
            const QString at = bench(visit.bench);
            if (visit.plate) {
                step(visit.plate->from, Mark::Wait, Tone::Normal, plateText(visit, at));
            }
            if (visit.begins && visit.welder) {
                const QString locked = planClock(m_at, visit.locked, true);
                const auto& running = m_day.work.benches[visit.bench].running;
                const bool runs =
                    running && running->label == visit.label && running->trial == visit.trial;
                step(
                    *visit.begins, Mark::Act, Tone::Act,
                    beginText(visit.trial, runs).arg(person(*visit.welder), seam, at, locked));
            }
            if (visit.release && visit.release->person) {
                step(
                    visit.release->from, Mark::Act, Tone::Act,
                    (visit.trial ? tr("%1 takes the trial joint of %2 off bench %3.")
                                 : tr("%1 releases seam %2 on bench %3."))
                        .arg(person(*visit.release->person), seam, at));
            }
            if (visit.decision) {
                step(
                    visit.decision->from, Mark::Act, Tone::Act,
                    tr("The foreman tests the trial joint of %1 and releases the series by %2.")
                        .arg(seam, planClock(m_at, visit.decision->to, true)));
            }
        }
        std::stable_sort(
            m_out.steps.begin(), m_out.steps.end(),
            [](const PlanStep& a, const PlanStep& b) { return a.from < b.from; });
        addWhatIsLeftOut();
    }

    static QString beginText(bool trial, bool runs) {
        if (trial) {
            return runs ? tr("%1 stays at the trial joint of %2 on bench %3, to the lock at %4.")
                        : tr("%1 prepares a trial joint for %2 on bench %3, and locks it by %4.");
        }
        return runs ? tr("%1 stays at seam %2 on bench %3, to the lock at %4.")
                    : tr("%1 prepares seam %2 on bench %3, and locks it by %4.");
    }

    QString plateText(const Visit& visit, const QString& at) const {
        const auto seam = std::find_if(
            m_day.work.seams.begin(), m_day.work.seams.end(),
            [&visit](const DaySeam& one) { return one.label == visit.label; });
        const QString ready = planClock(m_at, visit.plate->to, true);
        if (seam == m_day.work.seams.end() || !seam->on[visit.bench]) {
            return tr("The plate of bench %1 settles until %2.").arg(at, ready);
        }
        const PlateUse& plate = seam->on[visit.bench]->plate;
        return tr("Set the plate of bench %1 to %2 °C for %3. It settles until %4.")
            .arg(at, celsiusText(plate.targetMc), fromUtf8(plate.material), ready)
            .replace(QStringLiteral(" °C"), QStringLiteral("\u00A0°C")); // stays on one line
    }

    void step(Milliseconds from, Mark mark, Tone tone, const QString& text) {
        m_out.steps.push_back({from, planClock(m_at, from, false), text, mark, tone});
    }

    void addWhatIsLeftOut() {
        for (const SeamProgress& seam : m_day.progress.seams) {
            if (seam.state != JobSeamState::ToDecide) {
                continue;
            }
            const auto joint =
                std::find_if(seam.joints.begin(), seam.joints.end(), [&seam](const auto& one) {
                    return one.line.weld == seam.weld;
                });
            const QString number = joint == seam.joints.end() ? QStringLiteral("?")
                                                              : QString::number(joint->line.number);
            note(tr("Seam %1 waits for the foreman's word on joint %2.")
                     .arg(fromUtf8(seam.label), number));
        }
        for (const UnreadWeld& one : m_day.unread) {
            note(unreadText(one));
        }
        for (const DayImpossible& one : m_day.plan.impossible) {
            note(tr("Seam %1 is not planned: %2.").arg(fromUtf8(one.label), inWords(one.why)));
        }
        if (m_day.later == 1) {
            note(tr("One further seam is not in this plan: it holds %1.").arg(kMostDaySeams));
        } else if (m_day.later > 1) {
            note(tr("%1 further seams are not in this plan: it holds %2.")
                     .arg(QString::number(m_day.later), QString::number(kMostDaySeams)));
        }
        const bool chosen =
            std::any_of(m_day.times.begin(), m_day.times.end(), [](const auto& one) {
                return one.second.preparation == TimeFrom::Chosen ||
                       one.second.alignment == TimeFrom::Chosen ||
                       one.second.release == TimeFrom::Chosen;
            });
        if (chosen) {
            PlanStep last;
            last.from = m_out.finish;
            last.text = tr("Some times are chosen, not measured: fewer than five such joints.");
            m_out.steps.push_back(std::move(last));
        }
        const bool trials = std::any_of(m_visits.begin(), m_visits.end(), [](const Visit& one) {
            return one.decision.has_value();
        });
        if (trials) {
            PlanStep last;
            last.from = m_out.finish;
            last.text = tr("The test of a trial joint is counted with %1 min: chosen.")
                            .arg((m_day.work.decision.count() + kMinute - 1) / kMinute);
            m_out.steps.push_back(std::move(last));
        }
    }

    QString unreadText(const UnreadWeld& one) const {
        if (one.number == 0) {
            return tr("A joint whose number can't be read is not in this plan.");
        }
        return one.bench.empty()
                   ? tr("Joint %1 can't be read and is not in this plan.").arg(one.number)
                   : tr("Joint %1 on bench %2 can't be read and is not in this plan.")
                         .arg(QString::number(one.number), m_names.bench(one.bench));
    }

    void note(const QString& text) {
        m_out.steps.push_back({m_out.finish, {}, text, Mark::Trouble, Tone::Soon});
    }

    const JobDay& m_day;
    const Instant& m_at;
    const DayNames& m_names;
    std::vector<Visit> m_visits;
    PlanView m_out;
};

} // namespace

QString barWord(BarKind kind) {
    switch (kind) {
    case BarKind::Hands:
        return tr("hands on");
    case BarKind::Cooling:
        return tr("cools");
    case BarKind::WarmUp:
        return tr("plate warms up");
    case BarKind::Waiting:
        return tr("waits for release");
    case BarKind::Release:
        return tr("release");
    case BarKind::Decision:
        return tr("trial is tested");
    }
    return {};
}

QString planClock(const Instant& at, Milliseconds ahead, bool up) {
    std::int64_t utc = at.utc.count() + ahead.count() + (up ? kMinute - 1 : 0);
    utc -= ((utc % kMinute) + kMinute) % kMinute;
    const Milliseconds whole{utc};
    const QString time = wallClockText(at, whole - at.utc);
    if (toIsoDate(whole, at.offset) == toIsoDate(at.utc, at.offset)) {
        return time;
    }
    const QDate date = QDate::fromString(fromUtf8(toIsoDate(whole, at.offset)), Qt::ISODate);
    return QLocale().toString(date, QStringLiteral("ddd ")) + time;
}

PlanView planView(const JobDay& day, const Instant& at, const DayNames& names) {
    return Viewer(day, at, names).made();
}

} // namespace seamclock
