// What a first start asks of people: the first foreman and somebody who welds, each by a name and a
// PIN, without the foreman's desk.
#include "app/operate/people_flow.h"
#include "app/text/words.h"

namespace seamclock {

/// On the page that asks for a name.
void PeopleFlow::meanLater(const QString& meaning) {
    NameView view = m_name->view();
    view.under = meaning;
    view.stop = plainSlot(tr("Later"));
    m_name->show(view);
}

void PeopleFlow::enterFirstForeman(
    const QString& meaning, const std::function<void(const ProvenPerson&)>& then,
    const std::function<void()>& later) {
    const Press again = [this, meaning, then, later] { enterFirstForeman(meaning, then, later); };
    askFirstForeman(again, [this, then](const Proof& proof) {
        close();
        then(proof->who);
    });
    presses().stop = [this, later] {
        close();
        later();
    };
    meanLater(meaning);
}

void PeopleFlow::enterOperator(
    const ProvenPerson& by, const QString& meaning, const std::function<void()>& then,
    const std::function<void()>& later) {
    const Press again = [this, by, meaning, then, later] {
        enterOperator(by, meaning, then, later);
    };
    askName(tr("Who welds here?"), {}, [this, later] {
        close();
        later();
    });
    meanLater(meaning);
    presses().step = [this, by, then, again] {
        const std::string name = m_name->name().toStdString();
        const Person sound{newPersonId(name, people().people), name, Role::Operator, true};
        if (const auto fits = checkPerson(sound); !fits) {
            tell(fits.error());
            return;
        }
        const PinThen with = [this, by, name, then, again](const HeldPin& pin) {
            add(by, fromUtf8(name), Role::Operator, pin,
                [this, then, again](const Result<Person>& added) {
                    if (!added) {
                        again();
                        tell(added.error());
                        return;
                    }
                    close();
                    then();
                });
        };
        choose(
            withPinQuestion(fromUtf8(name)),
            [this, name, with, again](int answer) {
                if (answer == 0) {
                    freshPin(fromUtf8(name), Role::Operator, with, again);
                } else {
                    with({});
                }
            },
            {}, again);
    };
}

} // namespace seamclock
