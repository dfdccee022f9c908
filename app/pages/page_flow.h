// What every room with pages of its own shares: which of them stands, and what a press does there.
// The window shows page() while it is open; the slots of a page that stands do what turnTo() said,
// the answers of one that asks what choose() said. A step kept for later is dropped with the page.
#pragma once

#include "app/pages/choice_page.h"
#include "app/pages/list_page.h"
#include "app/pages/name_page.h"
#include "app/pages/page.h"
#include "core/base/result.h"

#include <QObject>
#include <cstdint>
#include <functional>
#include <utility>
#include <vector>

namespace seamclock {

/// What the slots of a page do; an empty one does nothing.
struct Presses {
    using Press = std::function<void()>;
    Press step;
    Press stop;
    Press back;

    /// A press may turn the page, and what it did goes with that: a copy is called.
    void press(SlotPlace place) const;
};

class PageFlow : public QObject {
    Q_OBJECT

public:
    Page* page() const { return m_page; } // null: closed

signals:
    /// Another of its pages stands.
    void turned();
    void said(const QString& text); // what went wrong
    void kept(const QString& text); // what went well

protected:
    using Press = Presses::Press;
    using Chosen = std::function<void(int)>;
    struct WordsTask {
        QString title;
        QString under;
        QString line; // what the line is for
        int most = 0; // signs
    };

    using QObject::QObject;

    /// They hide until they stand, and their slots' presses come here.
    void take(const std::vector<Page*>& pages);
    /// The pages that choose() and list() put up.
    void takeAnswers(ChoicePage* page);
    void takeAnswers(ListPage* page);

    void turnTo(Page* page, Press step = {}, Press stop = {}, Press back = {});
    void choose(const ChoiceView& view, Chosen chosen, Press step, Press stop, Press back = {});
    void list(const ListView& view, Chosen chosen, Press step, Press stop, Press back = {});
    /// A word or two by the keyboard; none is refused in a sentence, and the page stays.
    void askWords(
        NamePage* page, const WordsTask& task, std::function<void(const QString&)> then,
        Press stop);
    /// No page stands, and nothing waits for a press.
    void shut();
    void tell(const Error& error);
    /// Of the page that stands.
    Presses& presses() { return m_presses; }

    /// Counts pages, so that a late answer knows it is late.
    std::uint64_t turn() const { return m_turn; }
    /// Answers that were asked for until now are late.
    void dropAnswers() { ++m_turn; }
    /// `use` is called only if the page that stands now was not left meanwhile.
    template <class T>
    std::function<void(const T&)> here(std::function<void(const T&)> use) {
        return [this, turn = m_turn, use = std::move(use)](const T& result) {
            if (turn == m_turn) {
                use(result);
            }
        };
    }

    /// Before that page stands.
    virtual void turning(Page*) {}
    /// Before a press does what turnTo() said; true: it is done already.
    virtual bool takesPress(SlotPlace) { return false; }

private:
    void answer(int index);

    ChoicePage* m_choices = nullptr;
    ListPage* m_lists = nullptr;
    Page* m_page = nullptr;
    Presses m_presses;
    Chosen m_onChosen;
    std::uint64_t m_turn = 0;
};

} // namespace seamclock
