// From the job's seams, or one that is typed in, to the card: what is offered, the plan as it is
// seen and printed, the heat by it.
#include "app/operate/window.h"
#include "app/print/card_pdf.h"
#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"
#include "core/log/log_reader.h"
#include "core/session/again.h"
#include "core/session/job_book.h"
#include "core/session/sheet_plan.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace seamclock {
namespace {

constexpr Milliseconds kSeamsEvery{1'000};

} // namespace

// Where the log could not say it at the start yet.
void Window::readSeams(const Instant& now) {
    if (m_seams.isRead() || (m_seamsAsked && now.boot - *m_seamsAsked < kSeamsEvery)) {
        return;
    }
    m_seamsAsked = now.boot;
    m_seams.read(m_parts.writer.path());
    offerNext();
    if (m_seams.isRead() && m_kind == PageKind::Seams) {
        showSeams();
    }
}

// The job that lies in a file, and the seams that the log keeps.
void Window::takeUpSeams() {
    const auto sayAtStart = [this](const QString& words) { // no page stands yet: the next look does
        m_said = words;
        m_saidCalmly = false;
        m_saidAt = m_floor.now().boot;
    };
    m_job = m_parts.seams;
    if (auto reader = LogReader::open(m_parts.writer.path())) {
        if (const auto kept = readJobSeams(*reader)) {
            m_job.insert(m_job.end(), kept->seams.begin(), kept->seams.end());
            if (!kept->unread.empty()) {
                sayAtStart(inWords(kept->unread.front()));
            }
        } else {
            sayAtStart(inWords(kept.error().detail));
        }
    }
    std::vector<Bench> benches;
    for (const BenchDocument& one : m_floor.benches()) {
        benches.push_back(one.bench);
    }
    m_seams = JobSeams(m_job, benches);
    m_floor.eachWeld([this](const Weld& weld) { m_seams.take(weld); });
    m_seams.read(m_parts.writer.path());
    offerNext();
}

void Window::showSeams() {
    const Post& post = m_floor.posts()[static_cast<std::size_t>(m_floor.selected())];
    m_offered = m_seams.openOn(post.bench.bench.id);
    ChoiceView view;
    for (const JobSeam& seam : m_offered) {
        double length = 0;
        for (const double one : seam.lengthsMm) {
            length += one;
        }
        const SeamFinding found = m_seams.of(seam);
        ChoiceView::Choice choice;
        choice.sign = Sign::Prepare;
        choice.text = tr("%1: %2").arg(fromUtf8(m_seams.nextLabel(seam)), fromUtf8(seam.what));
        choice.under =
            found.state == SeamState::CutOut ? tr("again: joint %1 was cut out").arg(found.number)
            : found.state == SeamState::ToRepair
                ? tr("again: joint %1 is to be repaired").arg(found.number)
                : tr("%1 %2 mm, %3 mm long")
                      .arg(
                          fromUtf8(seam.sheets.empty() ? "" : seam.sheets.front().material),
                          millimetresText(std::llround(seam.thicknessMm * 1e3)),
                          numberText(length, 0));
        view.choices.push_back(choice);
    }
    view.title =
        !m_seams.isRead()
            ? tr("Bench %1 is free. Which seams are made is being read.").arg(post.letter())
        : m_offered.empty() ? tr("Bench %1 is free. No seam of the job is open.").arg(post.letter())
                            : tr("Bench %1 is free. Which seam?").arg(post.letter());
    view.under = fromUtf8(post.bench.bench.name);
    if (!m_people->atBench().empty()) {
        view.under = tr("%1 · at work: %2")
                         .arg(view.under, nameFor(m_people->people(), m_people->atBench()));
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Another seam"), tr("type it in"));
    view.step = m_offered.empty()
                    ? hiddenSlot()
                    : stepSlot(tr("Next: %1").arg(fromUtf8(m_seams.nextLabel(m_offered.front()))));
    m_choice->show(view);
}

void Window::openNextCard() {
    showSeams();
    if (!m_offered.empty()) {
        chooseSeam(0);
    }
}

void Window::chooseSeam(int index) {
    const JobSeam& seam = m_offered[static_cast<std::size_t>(index)];
    auto order = orderOf(seam, m_floor.procedures());
    if (!order) {
        say(inWords(order.error().detail));
        return;
    }
    order->bench = m_floor.posts()[static_cast<std::size_t>(m_floor.selected())].bench;
    order->request.scaleIsForemans =
        true; // the card warns, and his PIN is asked for before the weld
    // Else the card would stand with the numbers of the seam before it.
    if (const auto plan = planWithSheets(
            order->request, order->procedure.procedure, &order->bench.bench, order->sheets);
        !plan) {
        say(inWords(plan.error().detail));
        return;
    }
    const SeamFinding found = m_seams.of(seam);
    order->seam = m_seams.nextLabel(seam);
    m_orderName = tr("Seam %1, %2").arg(fromUtf8(*order->seam), fromUtf8(seam.what));
    if (found.state == SeamState::Open) {
        m_order = std::move(*order);
        turnTo(PageKind::Card);
        return;
    }
    order->reweldOf = found.weld;
    m_cutOut = std::move(*order);
    m_before = PageKind::Seams;
    askNumber(lostTask(found.number));
}

/// A seam of the job that was cut out, with what was lost of it: to its card.
void Window::cutOutToCard(double lostMm) {
    m_order = *std::exchange(m_cutOut, std::nullopt);
    m_order->lostUm = std::llround(lostMm * 1e3);
    flagRewelds(*m_order);
    turnTo(PageKind::Card);
}

void Window::flagRewelds(WeldOrder& order) {
    const std::string label = order.seam.value_or("");
    const auto allowed = reweldsAllowed(m_job, order.job.value_or(""), label);
    if (allowed && reweldsOf(label) > *allowed) {
        order.flags.emplace_back("rewelds_exceeded");
        say(*allowed == 1
                ? tr("The job lets this seam be welded again once. It is in the record.")
                : tr("The job lets this seam be welded again %1 times. It is in the record.")
                      .arg(*allowed));
    }
}

void Window::openHeat() {
    for (int post = 0; post < static_cast<int>(m_floor.posts().size()); ++post) {
        const Weld* weld = m_floor.weld(post);
        if (weld != nullptr && (std::holds_alternative<BuildingUp>(weld->state) ||
                                std::holds_alternative<Cooling>(weld->state))) {
            say(tr("While a joint cools its clock and its scale decide. Look at this later."));
            return;
        }
    }
    const Post& post = m_floor.posts()[static_cast<std::size_t>(m_floor.selected())];
    const Weld* weld = m_floor.weld(m_floor.selected());
    if (weld == nullptr && !m_order) {
        say(tr("Choose a seam first: its plan is what is looked at."));
        return;
    }
    const auto plan = weld != nullptr ? Result<WeldPlan>(weld->plan)
                                      : planWithSheets(
                                            m_order->request, m_order->procedure.procedure,
                                            &m_order->bench.bench, m_order->sheets);
    const auto course =
        plan ? courseOf(*plan, &post.bench.bench) : tl::unexpected<Error>(plan.error());
    const auto opened = course ? m_heat->open(*course, m_floor.materials())
                               : Result<void>(tl::unexpected<Error>(course.error()));
    if (!opened) {
        say(inWords(opened.error().detail));
        return;
    }
    turnTo(PageKind::Heat);
}

void Window::showCard() {
    const int selected = m_floor.selected();
    const Post& post = m_floor.posts()[static_cast<std::size_t>(selected)];
    const Weld* weld = m_floor.weld(selected);
    if (weld != nullptr) {
        m_shown.plan = weld->plan;
        m_shown.seam =
            weld->opened().seam ? tr("Seam %1").arg(fromUtf8(*weld->opened().seam)) : QString();
        m_shown.sheets = weld->opened().sheets;
    } else if (m_order) {
        auto plan = planWithSheets(
            m_order->request, m_order->procedure.procedure, &m_order->bench.bench, m_order->sheets);
        if (!plan) {
            say(inWords(plan.error().detail));
            return;
        }
        m_shown.plan = std::move(*plan);
        m_shown.seam = m_orderName;
        m_shown.sheets = m_order->sheets;
    } else {
        return;
    }
    m_shown.bench = post.bench.bench;
    m_shown.letter = post.letter();
    m_shown.opened = weld != nullptr;
    askCardHeat();
    drawCard();
}

// The estimate takes some tenths of a second, so the card stands first.
void Window::askCardHeat() {
    auto course = courseOf(m_shown.plan, &m_shown.bench);
    if (!course || !materialFor(m_floor.materials(), course->material)) {
        m_heatWorker->drop();
        m_shown.course.reset();
        m_shown.heat.reset();
        return;
    }
    if (m_shown.course == *course) {
        return; // it is there, or on its way
    }
    m_shown.course = std::move(*course);
    m_shown.heat.reset();
    m_heatWorker->ask(*m_shown.course, m_floor.materials());
}

void Window::drawCard() {
    const HeatEstimate* heat = m_shown.heat ? &*m_shown.heat : nullptr;
    const BatchPlace place = m_shown.opened             ? BatchPlace::DayLog
                             : m_order && m_order->seam ? BatchPlace::Job
                                                        : BatchPlace::Entry;
    CardView view = cardView(
        m_shown.plan, m_shown.bench, m_shown.letter, m_shown.seam, m_parts.preferences.units, heat,
        m_floor.practises() ? QString() : batchMissing(m_shown.sheets, place));
    if (heat == nullptr && m_shown.course) {
        view.estimate = tr("Estimate: it is being worked out.");
    }
    m_card->show(view, m_shown.opened);
}

void Window::printCard() {
    if (m_floor.practises() && !isDemo()) {
        say(tr("No page in practice: nothing on it would tell it from a real one."));
        return;
    }
    CardWork work;
    work.bench = tr("%1, %2").arg(m_shown.letter, fromUtf8(m_shown.bench.name));
    work.seam = m_shown.seam;
    work.sheets = m_shown.sheets;
    work.demo = isDemo();
    const Instant now = m_floor.now();
    const QString day = QString::fromStdString(toIsoDate(now.utc, now.offset));
    work.printed = fullDayWords(day.toStdString()) + " " + wallClockText(now);
    // Page and estimate take some tenths of a second and the disk as long as it likes: not on the
    // thread that shows the benches.
    m_parts.desk.run<Result<QString>>(
        this,
        [work, shown = m_shown, materials = m_floor.materials(), units = m_parts.preferences.units,
         folder = m_parts.reports, stem = "seamclock-card-" + day](Office&) {
            std::optional<HeatEstimate> heat = shown.heat;
            if (!heat && shown.course) {
                if (auto made = estimateHeat(*shown.course, materials)) {
                    heat = std::move(*made);
                }
            }
            return saveCardPdf(
                cardSheet(shown.plan, &shown.bench, work, units, heat ? &*heat : nullptr),
                paperOfLocale(), folder, stem);
        },
        [this](const Result<QString>& saved) {
            tell(
                saved ? tr("The card is saved: %1").arg(*saved) : inWords(saved.error().detail),
                saved.has_value());
        });
}

void Window::prepare() {
    if (!m_order) {
        return;
    }
    begin(*m_order);
}

void Window::showEntry() {
    QString procedure;
    if (m_draft.procedure >= 0) {
        procedure = fromUtf8(
            m_floor.procedures()[static_cast<std::size_t>(m_draft.procedure)].procedure.title);
    }
    m_entry->show(m_draft, procedure, {});
}

/// `another`: a length beside those that stand there.
void Window::askEntryNumber(NumberFor what, bool another) {
    std::optional<double> low;
    std::optional<double> high;
    const Bench& bench = m_floor.posts()[static_cast<std::size_t>(m_floor.selected())].bench.bench;
    if (what == NumberFor::SheetThickness) {
        low = inMillimetres(bench.thinnestSheet);
        high = inMillimetres(bench.thickestSheet);
        if (m_draft.procedure >= 0) {
            const Procedure& procedure =
                m_floor.procedures()[static_cast<std::size_t>(m_draft.procedure)].procedure;
            low = std::max(*low, inMillimetres(procedure.thinnest()));
            high = std::min(*high, inMillimetres(procedure.thickest()));
        }
    } else if (what == NumberFor::SeamLength) {
        low = 1;
        high = inMillimetres(bench.longestSeam);
        for (const double there : m_draft.lengthsMm) {
            *high -= another ? there : 0;
        }
        if (*high < *low) {
            say(tr("The bench is full: it holds %1 mm of seams.")
                    .arg(numberText(inMillimetres(bench.longestSeam), 0)));
            return;
        }
    } else {
        low = 5;
        high = 45;
    }
    m_addsLength = another;
    m_before = PageKind::Entry;
    askNumber(entryTask(what, low, high));
}

void Window::entryToCard() {
    const Post& post = m_floor.posts()[static_cast<std::size_t>(m_floor.selected())];
    WeldOrder order;
    order.procedure = m_floor.procedures()[static_cast<std::size_t>(m_draft.procedure)];
    order.bench = post.bench;
    order.request.thickness = millimetres(*m_draft.thicknessMm);
    for (const double length : m_draft.lengthsMm) {
        order.request.lengths.push_back(millimetres(length));
    }
    order.request.ambient = Temperature::celsius(*m_draft.ambientC);
    order.request.scaleIsForemans = true;
    for (const QString& batch : m_draft.batches) {
        Sheet sheet;
        sheet.material = order.procedure.procedure.material;
        sheet.maker = m_draft.maker.toStdString();
        sheet.batch = batch.toStdString();
        sheet.thicknessUm = std::llround(*m_draft.thicknessMm * 1000);
        order.sheets.push_back(sheet);
    }
    const auto plan =
        planWithSheets(order.request, order.procedure.procedure, &order.bench.bench, order.sheets);
    if (!plan) {
        say(inWords(plan.error().detail));
        return;
    }
    m_order = std::move(order);
    m_orderName.clear();
    turnTo(PageKind::Card);
}

void Window::chooseProcedure(int index) {
    m_entry->takeLines(m_draft);
    m_draft.procedure = index;
    if (!m_draft.ambientC) {
        m_draft.ambientC = m_floor.procedures()[static_cast<std::size_t>(index)]
                               .procedure.referenceAmbient.inCelsius();
    }
    turnTo(PageKind::Entry);
}

void Window::openEntry() {
    if (m_kind == PageKind::People) {
        m_afterWho = PageKind::Entry; // who it is, is asked first
    } else {
        turnTo(PageKind::Entry);
    }
}

} // namespace seamclock
