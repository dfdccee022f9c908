// The pages of the trainee's window when a weld is over: its score worked out, result, replay,
// history and the record on paper.
#include "app/practice/practice_record.h"
#include "app/practice/practice_result.h"
#include "app/practice/practice_text.h"
#include "app/practice/practice_window.h"
#include "app/print/practice_pdf.h"
#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"

#include <QFileInfo>
#include <algorithm>

namespace seamclock {

void PracticeWindow::workOn(const PracticeWork& work, bool keep) {
    m_result.reset();
    m_keep = keep;
    m_progress = 0;
    m_worker->ask(work);
    turnTo(PracticePage::Working);
}

void PracticeWindow::showResult() {
    if (!m_result) {
        return;
    }
    m_resultPage->show(
        resultView(
            m_result->set.lesson, m_result->set.setup, m_result->record.plan, m_result->score),
        m_leaf);
    const bool more = m_keep && m_made < m_lesson.welds;
    m_resultPage->setSlots(
        m_leaf == 0 ? plainSlot(tr("Close")) : plainSlot(tr("What I did")),
        m_leaf == 0 ? plainSlot(tr("Each step")) : plainSlot(tr("See it again")),
        m_leaf == 0 ? stepSlot(tr("The joint"))
        : more      ? stepSlot(tr("Next weld"))
                    : stepSlot(tr("Close")));
}

// What one row of the result says of several, one by one.
void PracticeWindow::showDetails() {
    if (!m_result) {
        return;
    }
    const ResultView result = resultView(
        m_result->set.lesson, m_result->set.setup, m_result->record.plan, m_result->score);
    ListView view;
    view.title = tr("Each step of your hands");
    view.under = tr("With its process time.");
    view.columns = 2;
    for (const ResultView::Row& one : result.all) {
        ListRowView row;
        row.text = one.value;
        row.second = one.item;
        if (one.off || one.right) {
            row.mark = one.off ? Mark::Late : Mark::Done;
            row.tone = one.off ? Tone::Late : Tone::Normal;
        }
        row.enabled = false; // it is read
        view.rows.push_back(row);
    }
    view.back = hiddenSlot();
    view.stop = hiddenSlot();
    view.step = stepSlot(tr("Close"));
    m_list->show(view);
}

void PracticeWindow::openReplay() {
    if (!m_result) {
        return;
    }
    m_at = Milliseconds(0);
    m_plays = false;
    m_shown.reset();
    m_place = static_cast<int>(m_result->set.setup.stations) / 2;
    turnTo(PracticePage::Replay);
}

void PracticeWindow::showReplay() {
    m_shown = replayLook();
    m_bench->show(replayView(*m_result, *m_shown));
}

ReplayLook PracticeWindow::replayLook() const {
    return {m_at, m_place, m_plays, speedText()};
}

void PracticeWindow::replayStep(ReplayKey key) {
    const Milliseconds length = m_result->replay.length();
    if (key == ReplayKey::Close) {
        m_plays = false;
        turnTo(PracticePage::Result);
        return;
    }
    if (key == ReplayKey::Play) {
        m_plays = !m_plays && m_at < length;
    }
    m_at = std::clamp(m_at + stepOf(key), Milliseconds(0), length);
    refresh();
}

void PracticeWindow::openHistory() {
    auto lines = m_room.history();
    if (!lines) {
        say(sentenceOf(lines.error().detail));
        return;
    }
    m_history = std::move(*lines);
    m_result.reset();
    turnTo(PracticePage::History);
}

void PracticeWindow::showHistory() {
    ListView view;
    view.title = m_parts.who.isEmpty() ? tr("What was made") : tr("Made by %1").arg(m_parts.who);
    view.under = m_history.empty() ? tr("Nothing yet.")
                 : m_history.size() == 1
                     ? tr("One weld. Touch it to see it again.")
                     : tr("%1 welds. Touch one to see it again.").arg(m_history.size());
    for (const PracticeLine& line : m_history) {
        const HistoryWords words = historyWords(line);
        ListRowView row;
        row.text = words.made;
        row.second = words.when + QStringLiteral(" · ") + words.how;
        row.third = words.few.isEmpty() ? words.hands : words.few; // both are on the record
        const bool good = line.ductile && (line.verdict == VerdictWord::WithinLimits ||
                                           line.verdict == VerdictWord::WithRemarks);
        row.mark = good                                      ? Mark::Done
                   : line.verdict == VerdictWord::Incomplete ? Mark::Open
                                                             : Mark::Late;
        row.tone = good ? Tone::Normal : Tone::Rest;
        view.rows.push_back(row);
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"));
    view.step = m_history.empty() ? hiddenSlot() : stepSlot(tr("Save as PDF"));
    m_list->show(view);
}

void PracticeWindow::saveRecord() {
    const Instant now = m_parts.machine.now();
    const QString day = QString::fromStdString(toIsoDate(now.utc, now.offset));
    const auto saved = savePracticePdf(
        practiceSheet(
            m_history, m_parts.who, fullDayWords(day.toStdString()) + " " + wallClockText(now)),
        paperOfLocale(), m_parts.reports, "practice-" + day);
    say(saved ? tr("Saved: %1").arg(QFileInfo(*saved).fileName())
              : sentenceOf(saved.error().detail),
        saved.has_value());
}

} // namespace seamclock
