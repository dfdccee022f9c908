// The day log, walked through by presses as a hand makes them, for pictures and tests: what it is
// narrowed to, one joint, its whole record, and what a foreman says of it. After the walk through
// the people, when there is a foreman with a PIN. Nothing here is shown to a person at work.
#pragma once

#include "app/operate/people_walk.h"

namespace seamclock {

class DayWalk {
public:
    using Picture = Walk::Picture;
    DayWalk(Window& window, LogWriterBase& writer, PeopleWalk& people, VirtualClock& clock);

    /// Every page of the day log. Refused: a press that led nowhere, with the sentence.
    Result<void> all(const Picture& picture);

    /// From any page to the day log, all of it read.
    Result<void> open();
    /// The newest line whose mark is that one becomes the chosen joint.
    Result<void> chooseMarked(Mark mark);
    Result<void> press(DayPress what);
    /// The answer with these words on the page of answers that stands.
    Result<void> answer(const QString& words);
    /// A foreman's word on the chosen joint, up to the log.
    Result<void> decide(DayPress what, const QString& reason, const char* pin);
    /// Everything is on disk, read and worked out.
    void settle();

private:
    void take(const Picture& picture, const QString& name);
    Result<void> record(const Picture& picture);
    Result<void> decisions(const Picture& picture);
    Result<void> narrowed(const Picture& picture);
    DayLogFlow& flow() { return *m_window.dayLog(); }

    Window& m_window;
    LogWriterBase& m_writer;
    PeopleWalk& m_people;
    VirtualClock& m_clock;
};

} // namespace seamclock
