// What a press does, by the page that stands: slots, answers, numbers, reasons and the menu.
#include "app/operate/series.h"
#include "app/operate/window.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"

#include <cmath>
#include <utility>

namespace seamclock {
namespace {

// A hand that was on its way when the screen changed by itself meant another bench: as long as the
// contract takes a second press for a bounce.
constexpr Milliseconds kJustCame{600};

// Fingers and pedals that tremble do it within this, and nobody reads a check that fast: our
// judgement, no source.
constexpr Milliseconds kSecondContact{300};

} // namespace

void Window::stepPressed() {
    const SlotView& step = m_page->stepView();
    if (step.look != SlotView::Look::Hidden && step.look != SlotView::Look::Gone) {
        emit m_page->slotPressed(SlotPlace::Step);
    }
}

/// Keys 1 to 4, wherever they are no digits of something that is typed, nor the foot switch's own.
void Window::benchKey(int place) {
    const bool typed = m_kind == PageKind::Pedal || m_page->takesDigits();
    if (!typed && place <= static_cast<int>(m_floor.posts().size())) {
        goToBench(place - 1);
    }
}

void Window::escaped() {
    if (m_kind == PageKind::Day) {
        m_dayLog->escaped();
    }
}

void Window::slotPressed(SlotPlace place) {
    switch (m_kind) {
    case PageKind::Weld: {
        if (m_cameAt && m_floor.now().boot - *m_cameAt < kJustCame) {
            sayCalmly(tr("The screen has just come to this bench. Press again."));
            return;
        }
        const WeldView& view = m_weld->view();
        const Slot& slot = place == SlotPlace::Back      ? view.back
                           : place == SlotPlace::Earlier ? view.earlier
                           : place == SlotPlace::Stop    ? view.stop
                                                         : view.step;
        if (place == SlotPlace::Step) {
            pressStep(slot, view.onto);
        } else {
            weldSlot(slot, view.onto);
        }
        return;
    }
    case PageKind::Seams:
        if (place == SlotPlace::Step && !m_offered.empty()) {
            chooseSeam(0);
        } else if (place == SlotPlace::Stop) {
            turnTo(PageKind::Entry);
        }
        return;
    case PageKind::Entry:
        m_entry->takeLines(m_draft);
        if (place == SlotPlace::Back) {
            turnTo(PageKind::Seams);
        } else if (place == SlotPlace::Stop) {
            askEntryNumber(NumberFor::SeamLength, true);
        } else if (place == SlotPlace::Step) {
            entryToCard();
        }
        return;
    case PageKind::Card:
        if (place == SlotPlace::Stop) {
            printCard();
        } else if (m_floor.weld(m_floor.selected()) != nullptr) {
            turnTo(PageKind::Weld);
        } else if (place == SlotPlace::Back) {
            turnTo(PageKind::Seams);
        } else if (place == SlotPlace::Step) {
            prepare();
        }
        return;
    case PageKind::Pad:
        if (place == SlotPlace::Back) {
            m_pad->pad()->setText({});
            m_pad->ask(m_pad->task());
        } else if (place == SlotPlace::Stop) {
            turnTo(m_before);
        } else if (place == SlotPlace::Step) {
            keepNumber();
        }
        return;
    case PageKind::Reasons:
        if (place == SlotPlace::Back) {
            reasonsBack();
        } else if (place == SlotPlace::Step && m_floor.handsAt()) {
            turnTo(PageKind::Weld);
            weldSlot(m_weld->view().step, m_weld->view().onto);
        } else {
            turnTo(PageKind::Weld);
        }
        return;
    case PageKind::Menu:
        if (place == SlotPlace::Stop) {
            emit quitAsked();
        } else {
            turnTo(PageKind::Weld);
        }
        return;
    case PageKind::Heat:
        if (place == SlotPlace::Back) {
            m_heat->reset();
        } else {
            turnTo(PageKind::Weld);
        }
        return;
    case PageKind::People:
    case PageKind::Setup:
    case PageKind::Shop:
    case PageKind::Day:
    case PageKind::Guide:
        return; // its pages tell it themselves
    case PageKind::Procedures:
        turnTo(PageKind::Entry);
        return;
    case PageKind::Pedal:
        turnTo(PageKind::Menu);
        return;
    case PageKind::Trial:
        if (place == SlotPlace::Step && m_order) {
            WeldOrder trial = *m_order;
            trial.type = WeldType::Trial;
            openNow(std::move(trial), TrialState::Released);
        } else {
            turnTo(m_floor.weld(m_floor.selected()) != nullptr ? PageKind::Weld : PageKind::Card);
        }
        return;
    case PageKind::Closer:
    case PageKind::Photos:
        turnTo(PageKind::Weld);
        return;
    }
}

// A second contact of the same press meets the next screen already, and its step: an attested check
// that nobody looked at, a wheel that is not locked. Between two steps of a clock core asks for
// longer; what only opens a page is no step.
void Window::pressStep(const Slot& slot, std::int64_t onto) {
    const Milliseconds now = m_floor.now().boot;
    const bool stores = !std::holds_alternative<AskNumber>(slot.offer) &&
                        !std::holds_alternative<AskReason>(slot.offer);
    if (stores && m_steppedAt && now >= *m_steppedAt && now - *m_steppedAt < kSecondContact) {
        return;
    }
    const int post = m_floor.selected();
    const auto events = [this, post] {
        const Weld* weld = m_floor.weld(post);
        return weld == nullptr ? std::size_t{0} : weld->events.size();
    };
    const std::size_t before = events();
    weldSlot(slot, onto);
    if (events() != before) {
        m_steppedAt = now;
    }
}

// No reason: it goes on, or it is stopped.
void Window::reasonsBack() {
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    if (m_asked.what != ReasonFor::Stop) {
        askReason({ReasonFor::Stop, m_asked.code});
    } else if (weld != nullptr && std::holds_alternative<Aligning>(weld->state)) {
        m_before = PageKind::Weld;
        askNumber(m_floor.numberTask(post, NumberFor::Overshoot));
    } else {
        turnTo(PageKind::Weld); // it went on meanwhile
    }
}

void Window::weldSlot(const Slot& slot, std::int64_t onto) {
    const int post = m_floor.selected();
    const Weld* weld = m_floor.weld(post);
    if (weld == nullptr) {
        return;
    }
    const bool stops = std::holds_alternative<AskReason>(slot.offer) ||
                       std::holds_alternative<TakeBackLast>(slot.offer);
    if (!stops && !mayGoOn(*weld)) {
        return;
    }
    if (const auto* number = std::get_if<AskNumber>(&slot.offer)) {
        m_before = PageKind::Weld;
        m_cutOut.reset();
        askNumber(m_floor.numberTask(post, number->what));
        return;
    }
    if (const auto* reason = std::get_if<AskReason>(&slot.offer)) {
        askReason(*reason);
        return;
    }
    if (std::holds_alternative<NextJoint>(slot.offer)) {
        nextJoint();
        return;
    }
    if (std::holds_alternative<LookCloser>(slot.offer)) {
        lookCloser();
        return;
    }
    told(m_floor.press(post, slot.offer, onto));
}

void Window::choose(int index) {
    switch (m_kind) {
    case PageKind::Seams:
        chooseSeam(index);
        return;
    case PageKind::Menu:
        chooseMenu(m_menu.items.at(static_cast<std::size_t>(index)));
        return;
    case PageKind::Procedures:
        chooseProcedure(index);
        return;
    case PageKind::Reasons: {
        if (m_asked.what == ReasonFor::EarlyRelease &&
            coolingLeft().value_or(Milliseconds(1)) <= Milliseconds(0)) {
            refresh(); // nothing is early any more, and no reason owed
            return;
        }
        const auto& [choice, text] = m_reasons.answers.at(static_cast<std::size_t>(index));
        if (choice == kOtherAmbient) {
            askNumber(m_floor.numberTask(m_floor.selected(), NumberFor::Ambient));
            return;
        }
        ReasonAnswer answer;
        answer.asked = m_asked;
        answer.choice = choice;
        answer.text = text.toStdString();
        if (m_asked.what == ReasonFor::CheckLeftOut &&
            (isForemansCheck(m_asked.code) || choice == kOtherMaterial)) {
            askForeman(answer);
            return;
        }
        if (m_asked.what == ReasonFor::Trial) {
            askTrialDecision(answer);
            return;
        }
        turnTo(PageKind::Weld);
        told(m_floor.answer(m_floor.selected(), answer));
        return;
    }
    case PageKind::Trial:
        chooseTrial(index);
        return;
    case PageKind::Closer:
        chooseCloser(index);
        return;
    case PageKind::Photos:
        keepPhotoOf(index);
        return;
    case PageKind::Entry:
    case PageKind::Card:
    case PageKind::Weld:
    case PageKind::Pad:
    case PageKind::Day:
    case PageKind::Pedal:
    case PageKind::People:
    case PageKind::Setup:
    case PageKind::Shop:
    case PageKind::Heat:
    case PageKind::Guide:
        return;
    }
}

void Window::askNumber(const NumberTask& task) {
    m_pad->ask(task);
    turnTo(PageKind::Pad);
}

void Window::keepNumber() {
    const NumberShown number = m_pad->now();
    if (number.outcome == NumberOutcome::None) {
        return;
    }
    const NumberFor what = m_pad->task().what;
    const int post = m_floor.selected();
    switch (what) {
    case NumberFor::SheetThickness:
        m_draft.thicknessMm = number.value;
        turnTo(PageKind::Entry);
        return;
    case NumberFor::SeamLength:
        if (!m_addsLength) {
            m_draft.lengthsMm.clear();
        }
        m_draft.lengthsMm.push_back(number.value);
        turnTo(PageKind::Entry);
        return;
    case NumberFor::ShopTemperature:
        m_draft.ambientC = number.value;
        turnTo(PageKind::Entry);
        return;
    case NumberFor::LengthLost:
        if (m_cutOut) {
            cutOutToCard(number.value);
        } else {
            weldAgain(number.value);
        }
        return;
    case NumberFor::PlateTemperature:
    case NumberFor::Drag:
    case NumberFor::Recheck:
    case NumberFor::Overshoot:
    case NumberFor::BeadHeight:
    case NumberFor::BeadWidth:
    case NumberFor::BeadK:
    case NumberFor::Misalignment:
    case NumberFor::Ambient:
    case NumberFor::BenchValue:
        break;
    }
    Result<void> kept;
    if (number.outcome == NumberOutcome::StopPlate) {
        kept = m_floor.failPlate(post, number.value);
        if (kept) {
            say(tr("The plate is outside its window. Wait, then read it again."));
        }
    } else {
        kept = m_floor.answer(post, NumberAnswer{what, number.value});
    }
    told(kept);
    // The next value of the same kind is asked at once.
    const Weld* weld = m_floor.weld(post);
    const auto view = m_floor.view(post, m_floor.now(), false, false);
    if (kept && weld != nullptr && view && number.outcome == NumberOutcome::Keep) {
        if (const auto* more = std::get_if<AskNumber>(&view->step.offer);
            more != nullptr && what != NumberFor::Recheck && what != NumberFor::Ambient) {
            askNumber(m_floor.numberTask(post, more->what));
            return;
        }
    }
    turnTo(PageKind::Weld);
}

/// What cooling still lacks, of the weld on the bench that stands; absent: it does not cool, or how
/// long it has is not known.
std::optional<Milliseconds> Window::coolingLeft() const {
    const Weld* weld = m_floor.weld(m_floor.selected());
    const auto* cooling = weld != nullptr ? std::get_if<Cooling>(&weld->state) : nullptr;
    if (cooling == nullptr) {
        return std::nullopt;
    }
    const auto t = weldTimeAt(*weld, m_floor.now());
    return t ? std::optional(cooling->due.lo - t->lo) : std::nullopt;
}

void Window::askReason(const AskReason& asked) {
    m_asked = asked;
    const bool foreman = !foremenWithPin(m_people->people()).empty();
    m_reasons = reasonsFor(asked, leftText(coolingLeft().value_or(Milliseconds(0))), foreman);
    if (asked.what == ReasonFor::Stop && m_floor.handsAt()) {
        // The hands are still where they were: what they do next counts from here, too.
        m_reasons.page.step = m_weld->view().step.view;
        m_reasons.page.step.onField = false;
        m_reasons.page.step.look = SlotView::Look::Act;
    }
    m_choice->show(m_reasons.page);
    turnTo(PageKind::Reasons);
}

void Window::openMenu() {
    if (!isFirst(kStatusCell)) {
        return;
    }
    turnTo(PageKind::Menu);
}

void Window::showMenu() {
    const std::string& at = m_people->atBench();
    m_menu = menuFor(
        m_parts.preferences, at.empty() ? QString() : nameFor(m_people->people(), at), isDemo());
    m_menu.page.under = awakeText();
    m_choice->show(m_menu.page);
}

void Window::chooseMenu(MenuItem item) {
    const bool shops = item == MenuItem::People || item == MenuItem::Setup ||
                       item == MenuItem::Shop || item == MenuItem::Practice ||
                       item == MenuItem::FirstSteps;
    if (shops && m_floor.practises() && !isDemo()) {
        say(tr("This is practice already: people and set-up belong to the shop."));
        return;
    }
    switch (item) {
    case MenuItem::Day:
        openDay();
        return;
    case MenuItem::Card:
        turnTo(m_floor.weld(m_floor.selected()) != nullptr ? PageKind::Card : PageKind::Seams);
        return;
    case MenuItem::Heat:
        openHeat();
        return;
    case MenuItem::Pedal:
        turnTo(PageKind::Pedal);
        return;
    case MenuItem::People:
        m_people->openWho();
        return;
    case MenuItem::Setup:
        m_setup->open();
        return;
    case MenuItem::Shop:
        m_shop->open();
        return;
    case MenuItem::Practice:
        openPractice();
        return;
    case MenuItem::FirstSteps:
        openFirstSteps();
        return;
    case MenuItem::LeaveDemo:
        emit demoLeft(false);
        return;
    case MenuItem::RemoveDemo:
        emit demoLeft(true);
        return;
    case MenuItem::Help:
        openHelp();
        return;
    case MenuItem::Theme:
    case MenuItem::Hand:
    case MenuItem::Motion:
    case MenuItem::Words:
    case MenuItem::Speech:
    case MenuItem::Units:
        setPreferences(changedBy(item, m_parts.preferences));
        showMenu();
        return;
    }
}

} // namespace seamclock
