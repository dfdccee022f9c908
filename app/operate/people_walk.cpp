#include "app/operate/people_walk.h"

#include "app/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

using std::chrono::seconds;

constexpr const char* kForeman = "Oddo Quenley";
constexpr const char* kOperator = "Ilva Borrick";
constexpr const char* kOperatorsPin = "508316";

Result<void> stopped(const std::string& why) {
    return fail(ErrorCode::Refused, "the walk through the people stopped: " + why);
}

} // namespace

Result<void> inOrder(std::initializer_list<std::function<Result<void>()>> steps) {
    for (const auto& step : steps) {
        if (auto done = step(); !done) {
            return done;
        }
    }
    return {};
}

PeopleWalk::PeopleWalk(Window& window, Desk& desk, VirtualClock& clock)
    : m_window(window), m_desk(desk), m_clock(clock) {}

void PeopleWalk::take(const Picture& picture, const QString& name) {
    m_window.refresh();
    if (picture) {
        picture(name);
    }
}

void PeopleWalk::settle() {
    while (m_desk.isBusy()) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    m_window.refresh();
}

void PeopleWalk::type(const char* digits) {
    for (const char* digit = digits; *digit != '\0'; ++digit) {
        m_window.people()->typed(QLatin1Char(*digit));
    }
}

Result<void> PeopleWalk::press(SlotPlace place) {
    emit m_window.currentPage()->slotPressed(place);
    settle();
    return {};
}

Result<void> PeopleWalk::givePin(const char* digits) {
    settle(); // whether one must wait
    if (const auto there = expect(m_window.people()->pinPage(), "no PIN is asked for"); !there) {
        return there;
    }
    type(digits);
    return press(SlotPlace::Step);
}

Result<void> PeopleWalk::expect(const Page* page, const std::string& what) const {
    return m_window.currentPage() == page ? Result<void>() : stopped(what);
}

Result<void> PeopleWalk::choose(const QString& words) {
    auto* page = qobject_cast<ChoicePage*>(m_window.currentPage());
    if (page == nullptr) {
        return stopped("no question stands that \"" + words.toStdString() + "\" answers");
    }
    const auto& choices = page->view().choices;
    const QString shown = asShown(words.toUtf8()); // a name is shown as it is
    const auto found = std::find_if(choices.begin(), choices.end(), [&](const auto& choice) {
        return (choice.text == words || choice.text == shown) && choice.enabled;
    });
    if (found == choices.end()) {
        return stopped("\"" + words.toStdString() + "\" is no answer");
    }
    emit page->chosen(static_cast<int>(found - choices.begin()));
    settle();
    return {};
}

Result<void> PeopleWalk::openWho() {
    m_window.openMenu();
    const std::string& at = m_window.people()->atBench();
    return choose(
        at.empty() ? QCoreApplication::translate("PeopleView", "Who is it?")
                   : nameFor(m_desk.people(), at));
}

Result<void>
PeopleWalk::firstForeman(const QString& name, const char* pin, const Picture& picture) {
    PeopleFlow& people = *m_window.people();
    return inOrder(
        {[&] { return press(SlotPlace::Stop); },
         [&] { return expect(people.namePage(), "no name is asked for"); },
         [&] {
             people.namePage()->setName(name);
             take(picture, "people-name");
             return press(SlotPlace::Step);
         },
         [&] {
             type(QByteArray(pin).left(4).constData());
             take(picture, "pin-new");
             return press(SlotPlace::Back);
         },
         [&] { return givePin(pin); },
         [&] {
             if (!picture) {
                 return givePin(pin);
             }
             const auto other = givePin("118811");
             take(picture, "pin-not-the-same");
             return other ? inOrder({[&] { return givePin(pin); }, [&] { return givePin(pin); }})
                          : other;
         },
         [&] { return people.isDeskOpen() ? Result<void>() : stopped("the desk did not open"); }});
}

Result<void> PeopleWalk::openDesk(const char* pin) {
    return inOrder({[&] { return press(SlotPlace::Stop); }, [&] { return givePin(pin); }});
}

Result<void>
PeopleWalk::add(const QString& name, Role role, const char* pin, const Picture& picture) {
    PeopleFlow& people = *m_window.people();
    QString roleTile = roleWord(role);
    roleTile[0] = roleTile[0].toUpper();
    return inOrder(
        {[&] { return choose("Somebody new"); },
         [&] {
             people.namePage()->setName(name);
             return press(SlotPlace::Step);
         },
         [&] {
             take(picture, "people-role");
             return choose(roleTile);
         },
         [&] {
             if (role == Role::Foreman) {
                 return Result<void>();
             }
             take(picture, "people-with-pin");
             return choose(pin == nullptr ? "Without a PIN" : "With a PIN");
         },
         [&] { return pin == nullptr ? Result<void>() : givePin(pin); },
         [&] {
             if (pin == nullptr) {
                 return Result<void>();
             }
             type(pin);
             take(picture, "pin-again");
             return press(SlotPlace::Step);
         }});
}

Result<void> PeopleWalk::entries(const Picture& picture) {
    return inOrder(
        {[&] { return choose("Change an entry"); },
         [&] {
             take(picture, "people-change");
             return choose(kOperator);
         },
         [&] {
             take(picture, "people-entry");
             return press(SlotPlace::Stop);
         },
         [&] { return press(SlotPlace::Stop); }});
}

Result<void> PeopleWalk::seal(const Picture& picture) {
    const SealPage* page = m_window.people()->sealPage();
    return inOrder(
        {[&] { return choose("Seal the day"); },
         [&] { return expect(page, "the day's page did not come"); },
         [&] {
             take(picture, "seal-before");
             return press(SlotPlace::Step);
         },
         [&] {
             take(picture, "seal-done");
             return page->view().groups.size() == 8 ? Result<void>()
                                                    : stopped(page->view().sentence.toStdString());
         },
         [&] { return press(SlotPlace::Step); },
         [&] {
             take(picture, "seal-report");
             return Result<void>();
         }});
}

Result<void> PeopleWalk::signIn(const QString& name, const char* pin) {
    return inOrder(
        {[&] { return choose(name); },
         [&] { return pin == nullptr ? Result<void>() : givePin(pin); },
         [&] {
             const std::string& at = m_window.people()->atBench();
             return nameFor(m_desk.people(), at) == name
                        ? Result<void>()
                        : stopped(m_window.people()->pinPage()->view().sentence.toStdString());
         }});
}

Result<void> PeopleWalk::wrongPins(const Picture& picture) {
    return inOrder(
        {[&] { return choose(kOperator); }, [&] { return givePin("119911"); },
         [&] {
             take(picture, "pin-wrong");
             return givePin("228822");
         },
         [&] {
             type("337733");
             emit m_window.currentPage()->slotPressed(SlotPlace::Step);
             take(picture, "pin-checking");
             settle();
             m_clock.advance(seconds(4));
             take(picture, "pin-wait");
             m_clock.advance(seconds(27));
             m_window.refresh();
             return press(SlotPlace::Stop);
         }});
}

Result<void> PeopleWalk::toPlate() {
    m_window.openNextCard();
    for (int i = 0; i < 5; ++i) {
        m_window.passTrial();
        m_window.refresh();
        if (m_window.page() == PageKind::Weld &&
            std::holds_alternative<CheckAnew>(m_window.weldPage()->view().back.offer)) {
            emit m_window.currentPage()->slotPressed(SlotPlace::Back);
            m_window.refresh();
        }
        if (m_window.page() == PageKind::Weld &&
            m_window.weldPage()->view().drawing.check == QLatin1String("plate_temperature")) {
            return {};
        }
        m_clock.advance(seconds(9));
        if (const auto pressed = press(SlotPlace::Step); !pressed) {
            return pressed;
        }
    }
    return stopped("the plate is not asked for");
}

Result<void> PeopleWalk::allowPlate(const char* pin, const Picture& picture) {
    return inOrder(
        {[&] { return press(SlotPlace::Stop); },
         [&] {
             take(picture, "foreman-why");
             return choose("The plate can't be set so");
         },
         [&] {
             settle();
             type(pin);
             take(picture, "foreman-allows");
             return press(SlotPlace::Step);
         },
         [&] {
             take(picture, "foreman-allowed");
             return m_window.page() == PageKind::Weld
                        ? Result<void>()
                        : stopped(m_window.people()->pinPage()->view().sentence.toStdString());
         }});
}

Result<void> PeopleWalk::all(const Picture& picture) {
    return inOrder(
        {[&] { return openWho(); },
         [&] {
             take(picture, "people-none");
             return firstForeman(kForeman, PeopleWalk::kForemansPin, picture);
         },
         [&] {
             take(picture, "desk");
             return add(kOperator, Role::Operator, kOperatorsPin, picture);
         },
         [&] { return add("Tamsin Wrey", Role::Trainee, nullptr); },
         [&] { return entries(picture); }, [&] { return seal(picture); },
         [&] { return press(SlotPlace::Step); }, // and who it is, is asked at once
         [&] {
             take(picture, "people-who");
             return wrongPins(picture);
         },
         [&] { return signIn(kOperator, kOperatorsPin); },
         [&] {
             take(picture, "seams-by-name");
             return toPlate();
         },
         [&] { return allowPlate(PeopleWalk::kForemansPin, picture); }});
}

} // namespace seamclock
