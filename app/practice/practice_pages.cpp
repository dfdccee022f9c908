// The pages of the trainee's window before and beside a weld: lessons, card, what can be said and
// left, the call.
#include "app/operate/card_view.h"
#include "app/practice/practice_result.h"
#include "app/practice/practice_text.h"
#include "app/practice/practice_window.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"

#include <algorithm>

namespace seamclock {
namespace {

ChoiceView::Choice
choice(const QString& text, const QString& under = {}, std::optional<Sign> sign = {}) {
    ChoiceView::Choice one;
    one.text = text;
    one.under = under;
    one.sign = sign;
    return one;
}

} // namespace

// ---- lessons

int PracticeWindow::current() const {
    const auto& all = m_room.lessons();
    const auto same = std::find_if(
        all.begin(), all.end(), [this](const Lesson& lesson) { return lesson.id == m_lesson.id; });
    return same == all.end() ? 0 : static_cast<int>(same - all.begin());
}

Result<void> PracticeWindow::openLesson(const std::string& id) {
    const auto& all = m_room.lessons();
    const auto same = std::find_if(
        all.begin(), all.end(), [&id](const Lesson& lesson) { return lesson.id == id; });
    if (same == all.end()) {
        std::string allowed;
        for (const Lesson& lesson : all) {
            allowed += (allowed.empty() ? "" : ", ") + lesson.id;
        }
        return fail(ErrorCode::Missing, "there is no lesson \"" + id + "\"; allowed: " + allowed);
    }
    m_lesson = *same;
    m_made = 0;
    turnTo(PracticePage::Lesson);
    return {};
}

void PracticeWindow::openLessons() {
    m_room.end();
    m_result.reset();
    auto lines = m_room.history();
    if (lines) {
        m_history = std::move(*lines);
    }
    turnTo(PracticePage::Lessons);
    if (!lines) {
        say(sentenceOf(lines.error().detail));
    }
}

void PracticeWindow::showLessons() {
    ListView view;
    view.title = tr("Which lesson?");
    view.under = tr("No plastic, no heat, no harm: make your mistakes here.");
    view.columns = 2;
    for (const Lesson& lesson : m_room.lessons()) {
        const LessonSoFar so = soFar(m_history, lesson.id);
        ListRowView row;
        row.text = tr("%1. %2").arg(lesson.place).arg(inWords(lesson.title));
        row.second = lessonSheetText(lesson);
        row.third = soFarText(so);
        row.mark = so.takes == 0 ? Mark::Free : so.isDone() ? Mark::Done : Mark::Open;
        row.tone = row.mark == Mark::Done ? Tone::Normal : Tone::Rest;
        view.rows.push_back(row);
    }
    view.back = plainSlot(tr("History"), tr("what was made"));
    view.stop = plainSlot(tr("Leave practice"));
    view.step =
        view.rows.empty()
            ? hiddenSlot()
            : stepSlot(
                  tr("Lesson %1").arg(m_room.lessons()[static_cast<std::size_t>(current())].place));
    m_list->show(view);
}

void PracticeWindow::showLesson() {
    TellView view;
    view.back = hiddenSlot();
    if (m_kind == PracticePage::Working) {
        view.title = tr("Your weld is looked at.");
        view.sign = Sign::Search;
        view.lines << tr("Worked out: the bench once more, and the joint of a steady hand.");
        view.progress = m_progress;
        // What was just made is kept with its score: it takes seconds, and is waited for.
        view.stop = m_keep ? hiddenSlot() : plainSlot(tr("Close"));
        view.step = hiddenSlot();
    } else {
        view.title = tr("Lesson %1: %2").arg(m_lesson.place).arg(inWords(m_lesson.title));
        view.sign = Sign::Wheel;
        view.lines << inWords(m_lesson.teaches) << lessonSheetText(m_lesson)
                   << soFarText(soFar(m_history, m_lesson.id))
                   << tr("A screen can't teach the feel of a wheel. That comes at the bench.");
        view.stop = plainSlot(tr("Other lessons"));
        view.step = stepSlot(tr("Begin"));
    }
    m_tell->show(view);
}

void PracticeWindow::begin() {
    if (const auto begun = m_room.begin(m_lesson); !begun) {
        openLessons();
        say(sentenceOf(begun.error().detail));
        return;
    }
    m_result.reset();
    m_hand->begin(seed());
    m_call = Call::None;
    m_place = static_cast<int>(m_room.run().bench().view().stations.size()) / 2;
    m_lastTick = m_parts.machine.now().boot;
    turnTo(PracticePage::Card);
}

// The card as it was handed out, right or wrong.
void PracticeWindow::showCard() {
    const Weld* weld = m_room.weld();
    if (weld == nullptr) {
        return;
    }
    CardView view = cardView(
        weld->plan, m_room.floor().posts().front().bench.bench, QStringLiteral("P"),
        inWords(m_lesson.title), m_parts.preferences.units);
    m_card->setPrintable(false);
    m_card->show(view, true);
}

void PracticeWindow::over() {
    const Weld* weld = m_room.weld();
    PracticeWork work{m_lesson, m_room.shop(), m_room.take(), weld->events};
    ++m_made;
    m_backTo = PracticePage::Lessons;
    m_room.end();
    workOn(work, true);
}

// ---- beside the weld

void PracticeWindow::showSide() {
    ChoiceView view;
    view.title = tr("Beside the weld");
    view.under = tr("Time goes on.");
    m_side.clear();
    const auto add = [&](const ChoiceView::Choice& one, std::function<void()> what) {
        view.choices.push_back(one);
        m_side.push_back(std::move(what));
    };
    add(choice(tr("Something is wrong"), tr("say what you see"), Sign::Look),
        [this] { turnTo(PracticePage::Wrong); });
    for (const int pace : practicePaces()) {
        ChoiceView::Choice one = choice(
            pace == 1 ? tr("True time") : tr("Speed × %1").arg(pace),
            pace == 1 ? QString() : tr("where nothing is urgent"), Sign::Cooling);
        one.chosen = pace == m_pace;
        add(one, [this, pace] {
            setPace(pace);
            turnTo(PracticePage::Bench);
        });
    }
    add(choice(tr("Weld card"), tr("as it was handed out"), Sign::Note),
        [this] { turnTo(PracticePage::Card); });
    add(choice(tr("Help"), tr("the user guide"), Sign::Remark), [this] { openHelp(); });
    const auto weld = m_room.floor().view(0, m_room.now(), false, true);
    for (const Slot* slot : {weld ? &weld->earlier : nullptr, weld ? &weld->stop : nullptr}) {
        if (slot == nullptr || slot->view.look == SlotView::Look::Hidden ||
            slot->view.look == SlotView::Look::Gone || slot->view.text.isEmpty()) {
            continue;
        }
        add(choice(slot->view.text, slot->view.under, slot->view.sign),
            [this, pressed = *slot, onto = weld->onto] {
                turnTo(PracticePage::Bench);
                weldSlot(pressed, onto);
            });
    }
    add(choice(tr("Leave the lesson"), tr("this weld is stopped"), Sign::Back), [this] {
        const bool touched = m_room.isTouched();
        m_room.leave();
        if (touched) {
            over();
        } else {
            openLessons();
        }
    });
    view.narrow = true;
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("back to the bench"));
    view.step = hiddenSlot();
    m_choice->show(view);
}

void PracticeWindow::showWrong() {
    ChoiceView view;
    view.title = tr("What is wrong here?");
    view.under = tr("It is kept with its time, and told when the weld is over.");
    m_side.clear();
    for (const Wrong wrong : allWrong()) {
        view.choices.push_back(choice(wrongWord(wrong)));
        m_side.emplace_back([this, wrong] {
            m_room.run().notice(wrong);
            turnTo(PracticePage::Bench);
            say(tr("Noted: %1.").arg(wrongWord(wrong)), true);
        });
    }
    view.narrow = true;
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("back to the bench"));
    view.step = hiddenSlot();
    m_choice->show(view);
}

// ---- Help

/// Of the weld that runs.
HandsCall PracticeWindow::handsNow() const {
    const Weld* weld = m_room.weld();
    return weld != nullptr ? handsCall(*weld, m_room.now()) : HandsCall::None;
}

bool PracticeWindow::mayHelp() const {
    return m_kind != PracticePage::Call && m_kind != PracticePage::Working &&
           handsNow() != HandsCall::Taken;
}

void PracticeWindow::openHelp() {
    if (!mayHelp() || m_kind == PracticePage::Guide) {
        return;
    }
    m_beforeHelp = m_kind == PracticePage::Side ? PracticePage::Bench : m_kind;
    m_answered = handsNow();
    m_guide->open();
}

// A weld that calls for hands takes the screen from it, as at the operator's: once when it is time
// to get ready, once when the soak is over.
void PracticeWindow::lookAtHelp() {
    if (m_kind != PracticePage::Guide) {
        return;
    }
    const HandsCall call = handsNow();
    m_answered = std::min(m_answered, call);
    if (call > m_answered) {
        turnTo(PracticePage::Bench);
    }
}

// ---- the call

void PracticeWindow::lookAtCall() {
    const Weld* weld = m_room.weld();
    const auto* soaking = weld != nullptr ? std::get_if<Soaking>(&weld->state) : nullptr;
    if (m_call == Call::None && m_lesson.call && soaking != nullptr) {
        const auto t = weldTimeAt(*weld, m_room.now());
        if (t && t->lo - soaking->from.lo >= m_lesson.call->intoSoak) {
            m_call = Call::Rings;
            turnTo(PracticePage::Call);
        }
    } else if (m_call == Call::Talks && m_room.run().now() >= m_callUntil) {
        m_call = Call::Over;
        turnTo(PracticePage::Bench);
    }
}

void PracticeWindow::showCall() {
    if (m_call == Call::Talks) {
        TellView view;
        view.title = tr("You are on the phone.");
        view.sign = Sign::Sound;
        view.lines << tr("You can't see the bench. Both hands are off it.");
        view.back = hiddenSlot();
        view.stop = hiddenSlot();
        view.step = hiddenSlot();
        m_tell->show(view);
        return;
    }
    ChoiceView view;
    view.title = tr("The phone rings.");
    view.under = tr("The weld goes on meanwhile.");
    view.choices = {
        choice(tr("Take the call"), tr("away from the bench"), Sign::Sound),
        choice(tr("Let it ring"), tr("stay with the weld"), Sign::Mute)};
    m_side = {
        [this] {
            m_call = Call::Talks;
            m_callUntil = m_room.run().now() + m_lesson.call->lasts;
            m_room.run().takeCall();
            if (m_room.run().bench().view().wheel != WheelHold::Locked) {
                act(LetGoWheel{});
            }
            turnTo(PracticePage::Call);
        },
        [this] {
            m_call = Call::Over;
            turnTo(PracticePage::Bench);
        }};
    view.back = hiddenSlot();
    view.stop = hiddenSlot();
    view.step = hiddenSlot();
    m_choice->show(view);
}

} // namespace seamclock
