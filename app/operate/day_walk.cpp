#include "app/operate/day_walk.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

using std::chrono::seconds;

Result<void> stopped(const std::string& why) {
    return fail(ErrorCode::Refused, "the walk through the day log stopped: " + why);
}

} // namespace

DayWalk::DayWalk(Window& window, LogWriterBase& writer, PeopleWalk& people, VirtualClock& clock)
    : m_window(window), m_writer(writer), m_people(people), m_clock(clock) {}

void DayWalk::settle() {
    static_cast<void>(m_writer.flush());
    // It looks twice whether the log has grown: one look may have begun before the rows were there.
    for (int look = 0; look < 2; ++look) {
        m_clock.advance(seconds(1));
        m_window.refresh();
        while (flow().isBusy()) {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
    }
    m_window.refresh();
}

void DayWalk::take(const Picture& picture, const QString& name) {
    settle();
    if (picture) {
        picture(name);
    }
}

Result<void> DayWalk::open() {
    m_window.openDay();
    settle();
    return m_window.page() == PageKind::Day ? Result<void>() : stopped("a bench came first");
}

Result<void> DayWalk::chooseMarked(Mark mark) {
    constexpr int kFurthest = 40; // lines; an upright screen shows four
    emit flow().dayPage()->scrolled(-kFurthest);
    for (int line = 0; line < kFurthest; ++line) {
        settle();
        for (JointRow* row : flow().dayPage()->rows()) {
            if (row->isVisible() && row->view().mark == mark) {
                emit row->pressed();
                settle();
                return {};
            }
        }
        emit flow().dayPage()->scrolled(1);
    }
    return stopped("no joint of that kind is in the list");
}

Result<void> DayWalk::press(DayPress what) {
    emit flow().dayPage()->pressed(what);
    settle();
    return {};
}

Result<void> DayWalk::answer(const QString& words) {
    const auto& choices = flow().choicePage()->view().choices;
    const auto found = std::find_if(choices.begin(), choices.end(), [&](const auto& choice) {
        return choice.text == words && choice.enabled;
    });
    if (m_window.currentPage() != flow().choicePage() || found == choices.end()) {
        return stopped("nothing says \"" + words.toStdString() + "\"");
    }
    emit flow().choicePage()->chosen(static_cast<int>(found - choices.begin()));
    settle();
    return {};
}

Result<void> DayWalk::decide(DayPress what, const QString& reason, const char* pin) {
    return inOrder(
        {[&] { return press(what); }, [&] { return answer(reason); },
         [&] { return m_people.givePin(pin); },
         [&] {
             settle();
             return m_window.page() == PageKind::Day
                        ? Result<void>()
                        : stopped(m_window.people()->pinPage()->view().sentence.toStdString());
         }});
}

Result<void> DayWalk::record(const Picture& picture) {
    return inOrder(
        {[&] { return press(DayPress::Record); },
         [&] {
             take(picture, "day-record");
             return answer(DayLogFlow::tr("Every value"));
         },
         [&] {
             take(picture, "day-values");
             emit flow().tablePage()->tabPressed(1);
             take(picture, "day-events");
             emit flow().tablePage()->slotPressed(SlotPlace::Stop); // more rows
             take(picture, "day-events-more");
             emit flow().tablePage()->tabPressed(2);
             take(picture, "day-looked-at");
             emit flow().tablePage()->slotPressed(SlotPlace::Step);
             return answer(DayLogFlow::tr("Correct a value"));
         },
         [&] {
             take(picture, "day-correct");
             emit flow().choicePage()->chosen(0);
             take(picture, "day-correct-value");
             flow().namePage()->setName(QStringLiteral("209"));
             emit flow().namePage()->slotPressed(SlotPlace::Step);
             take(picture, "day-correct-why");
             emit flow().choicePage()->chosen(0);
             return m_people.givePin(PeopleWalk::kForemansPin);
         },
         [&] {
             settle();
             return press(DayPress::Record);
         },
         [&] { return answer(DayLogFlow::tr("Every value")); },
         [&] {
             take(picture, "day-corrected");
             emit flow().tablePage()->slotPressed(SlotPlace::Step);
             emit flow().choicePage()->slotPressed(SlotPlace::Step);
             return m_window.currentPage() == flow().dayPage() ? Result<void>()
                                                               : stopped("no way back");
         }});
}

Result<void> DayWalk::decisions(const Picture& picture) {
    return inOrder(
        {[&] { return press(DayPress::Repair); },
         [&] {
             take(picture, "day-decide");
             emit flow().choicePage()->chosen(
                 static_cast<int>(flow().choicePage()->view().choices.size()) - 1);
             take(picture, "day-decide-words");
             flow().namePage()->setName(QStringLiteral("bead is thin at the back end"));
             emit flow().namePage()->slotPressed(SlotPlace::Step);
             take(picture, "day-decide-pin");
             return m_people.givePin(PeopleWalk::kForemansPin);
         },
         [&] {
             take(picture, "day-decided");
             return press(DayPress::Record);
         },
         [&] { return answer(DayLogFlow::tr("Sign it off")); },
         [&] { return m_people.givePin(PeopleWalk::kForemansPin); },
         [&] {
             take(picture, "day-signed-off");
             return m_window.currentPage() == flow().dayPage() ? Result<void>()
                                                               : stopped("no way back");
         }});
}

Result<void> DayWalk::narrowed(const Picture& picture) {
    return inOrder(
        {[&] { return press(DayPress::Verdict); },
         [&] {
             take(picture, "day-filter");
             emit flow().choicePage()->chosen(1);
             take(picture, "day-narrowed");
             return press(DayPress::Search);
         },
         [&] {
             take(picture, "day-search");
             flow().searchPage()->setWords(QStringLiteral("zirconium"));
             emit flow().searchPage()->slotPressed(SlotPlace::Step);
             take(picture, "day-nothing");
             return press(DayPress::Search);
         },
         [&] {
             emit flow().searchPage()->slotPressed(SlotPlace::Back); // clear
             settle();
             return m_window.currentPage() == flow().dayPage() ? Result<void>()
                                                               : stopped("no way back");
         }});
}

Result<void> DayWalk::all(const Picture& picture) {
    return inOrder(
        {[&] { return open(); },
         [&] {
             take(picture, "day-log");
             return chooseMarked(Mark::Done);
         },
         [&] {
             take(picture, "day-within-limits");
             return record(picture);
         },
         [&] { return decisions(picture); }, [&] { return narrowed(picture); },
         [&] {
             auto* ring = m_window.findChild<KeyRing*>("keyRing");
             ring->move(1);
             ring->move(1);
             take(picture, "day-by-keys");
             emit flow().dayPage()->pressed(DayPress::Running);
             m_window.refresh();
             return Result<void>();
         }});
}

} // namespace seamclock
