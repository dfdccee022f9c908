// What the files of ShopFlow share: a choice of a page, and how something is written: on the
// desk's thread, in a foreman's name, and on disk before the log is looked at again.
#pragma once

#include "app/shop/shop_flow.h"

#include <utility>

namespace seamclock {

inline ChoiceView::Choice choiceOf(const QString& text, const QString& under, Sign sign) {
    ChoiceView::Choice choice;
    choice.text = text;
    choice.under = under;
    choice.sign = sign;
    return choice;
}

/// `then` is called when it is done and on disk, also if a bench has taken the screen meanwhile: it
/// lets go of what was typed, and turns the page only where one stands. What went wrong is told,
/// and what was typed stays.
template <class T>
void ShopFlow::errand(
    std::function<Result<T>(Office&)> work, const QString& done, std::function<void()> then) {
    m_desk.run<Result<T>>(
        this,
        [work = std::move(work), &writer = m_desk.writer()](Office& office) -> Result<T> {
            auto made = work(office);
            if (!made) {
                return made;
            }
            if (const auto flushed = writer.flush(); !flushed) {
                return tl::unexpected<Error>(flushed.error());
            }
            return made;
        },
        [this, done, then = std::move(then)](const Result<T>& made) {
            if (!made) {
                tell(made.error());
                return;
            }
            emit kept(done);
            then();
        });
}

} // namespace seamclock
