#include "app/pages/page_flow.h"

#include "app/text/phrase_book.h"

namespace seamclock {

void Presses::press(SlotPlace place) const {
    const Press press = place == SlotPlace::Step   ? step
                        : place == SlotPlace::Stop ? stop
                        : place == SlotPlace::Back ? back
                                                   : Press();
    if (press) {
        press();
    }
}

void PageFlow::take(const std::vector<Page*>& pages) {
    for (Page* page : pages) {
        page->hide();
        connect(page, &Page::slotPressed, this, [this](SlotPlace place) {
            if (!takesPress(place)) {
                m_presses.press(place);
            }
        });
    }
}

void PageFlow::takeAnswers(ChoicePage* page) {
    m_choices = page;
    connect(page, &ChoicePage::chosen, this, &PageFlow::answer);
}

void PageFlow::takeAnswers(ListPage* page) {
    m_lists = page;
    connect(page, &ListPage::chosen, this, &PageFlow::answer);
}

void PageFlow::answer(int index) {
    if (const auto use = m_onChosen) { // it may ask the next question, and goes with that
        use(index);
    }
}

void PageFlow::choose(const ChoiceView& view, Chosen chosen, Press step, Press stop, Press back) {
    m_onChosen = std::move(chosen);
    m_choices->show(view);
    turnTo(m_choices, std::move(step), std::move(stop), std::move(back));
}

void PageFlow::list(const ListView& view, Chosen chosen, Press step, Press stop, Press back) {
    m_onChosen = std::move(chosen);
    m_lists->show(view);
    turnTo(m_lists, std::move(step), std::move(stop), std::move(back));
}

void PageFlow::turnTo(Page* page, Press step, Press stop, Press back) {
    turning(page);
    ++m_turn;
    m_page = page;
    m_presses = {std::move(step), std::move(stop), std::move(back)};
    emit turned();
}

void PageFlow::askWords(
    NamePage* page, const WordsTask& task, std::function<void(const QString&)> then, Press stop) {
    NameView view;
    view.title = task.title;
    view.under = task.under;
    view.line = task.line;
    view.most = task.most;
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    view.step = stepSlot(tr("Go on"));
    page->setName({});
    page->show(view);
    turnTo(
        page,
        [this, page, then = std::move(then)] {
            const QString typed = page->name();
            if (typed.isEmpty()) {
                emit said(tr("Type a word or two first: the record keeps them."));
                return;
            }
            const auto use = then; // the page may turn, and this with it
            use(typed);
        },
        std::move(stop));
}

void PageFlow::shut() {
    ++m_turn;
    m_page = nullptr;
    m_presses = {};
    m_onChosen = {};
}

void PageFlow::tell(const Error& error) {
    emit said(inWords(error.detail));
}

} // namespace seamclock
