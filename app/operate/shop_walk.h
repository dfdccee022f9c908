// The pages of how the shop is doing, walked through by presses and typed numbers as a foreman
// makes them, for pictures and tests. After the walk through the people, when there is a foreman
// with a PIN. Nothing here is shown to a person at work.
#pragma once

#include "app/operate/people_walk.h"

namespace seamclock {

class ShopWalk {
public:
    using Picture = Walk::Picture;
    /// `scratch`: where the walk puts tables of its own.
    ShopWalk(Window& window, LogWriterBase& writer, PeopleWalk& people, QString scratch);

    /// Every page. Refused: a press that led nowhere, with the sentence.
    Result<void> all(const Picture& picture);

    /// From any page to the first.
    Result<void> open();
    Result<void> jobs(const Picture& picture = {});
    /// A table that is wrong, then one that is kept.
    Result<void> table(const Picture& picture = {});
    Result<void> seamByHand(const Picture& picture = {});
    Result<void> plan(const Picture& picture = {});
    /// Pulled coupons of that joint, strengths in N/mm²: entered, and put right by forces.
    Result<void> pulled(const char* joint, const Picture& picture = {});
    Result<void> bent(const Picture& picture = {});
    Result<void> charts(const Picture& picture = {});
    Result<void> due(const Picture& picture = {});
    Result<void> batches(const QString& batch, const char* joint, const Picture& picture = {});

    /// The answer or the row that begins so, of the page that stands.
    Result<void> choose(const QString& words);
    Result<void> press(SlotPlace place);
    Result<void> number(const char* digits);
    /// Everything that was asked for is there.
    void settle();

private:
    ShopFlow& flow() { return *m_window.shop(); }
    void take(const Picture& picture, const QString& name);
    Result<void> expect(const Page* page, const std::string& what) const;
    Result<void> written(const QString& name, const QByteArray& bytes) const;

    Window& m_window;
    LogWriterBase& m_writer;
    PeopleWalk& m_people;
    QString m_scratch;
};

} // namespace seamclock
