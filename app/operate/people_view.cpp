#include "app/operate/people_view.h"

#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

struct People {
    Q_DECLARE_TR_FUNCTIONS(People)
};

QString tr(const char* text) {
    return People::tr(text);
}

ChoiceView::Choice tile(const QString& text, const QString& under, Sign sign) {
    ChoiceView::Choice choice;
    choice.text = text;
    choice.under = under;
    choice.sign = sign;
    return choice;
}

void add(PeopleQuestion& question, const Person& person, const QString& under) {
    question.ids.push_back(person.id);
    question.page.choices.push_back(tile(fromUtf8(person.name), under, Sign::Person));
}

void close(ChoiceView& page, const QString& under) {
    page.back = hiddenSlot();
    page.stop = plainSlot(tr("Close"), under);
    page.step = hiddenSlot();
}

} // namespace

QString roleWord(Role role) {
    switch (role) {
    case Role::Trainee:
        return tr("trainee");
    case Role::Operator:
        return tr("operator");
    case Role::Foreman:
        return tr("foreman");
    }
    return {};
}

QString nameFor(const DeskPeople& people, const std::string& id) {
    const Person* person = findPerson(people.people, id);
    return fromUtf8(person == nullptr ? id : person->name);
}

bool knowsSomebody(const DeskPeople& people) {
    return std::any_of(people.people.begin(), people.people.end(), [](const Person& person) {
        return person.active;
    });
}

std::vector<Person> foremenWithPin(const DeskPeople& people) {
    std::vector<Person> foremen;
    for (const Person& person : people.people) {
        if (person.active && person.role == Role::Foreman && people.hasPin(person)) {
            foremen.push_back(person);
        }
    }
    return foremen;
}

PeopleQuestion whoQuestion(const DeskPeople& people, const std::string& atBench) {
    PeopleQuestion question;
    ChoiceView& page = question.page;
    const bool anybody = knowsSomebody(people);
    page.title = anybody ? tr("Who is it?") : tr("The log knows no people yet.");
    page.under = anybody ? tr("The steps are written in this name.")
                         : tr("A foreman comes first, enters the others and seals the day.");
    bool pins = false;
    for (const Person& person : people.people) {
        if (!person.active) {
            continue;
        }
        const bool pin = people.hasPin(person);
        pins = pins || pin;
        add(question, person,
            pin ? tr("%1, by PIN").arg(roleWord(person.role)) : roleWord(person.role));
        ChoiceView::Choice& choice = page.choices.back();
        choice.chosen = person.id == atBench;
        if (person.role == Role::Foreman && !pin) {
            choice.under = tr("foreman without a PIN here");
            choice.enabled = false;
        }
    }
    page.back = pins ? plainSlot(tr("My own PIN"), tr("change it")) : hiddenSlot();
    page.stop = hasForeman(people.people)
                    ? plainSlot(tr("Foreman's desk"), tr("people, day's seal"))
                    : plainSlot(tr("First foreman"), tr("enter a name"));
    page.step = stepSlot(
        anybody && atBench.empty() ? tr("Without a name") : tr("Back to the bench"), false);
    return question;
}

PeopleQuestion ownPinQuestion(const DeskPeople& people) {
    PeopleQuestion question;
    question.page.title = tr("Whose PIN changes?");
    question.page.under = tr("Who forgot it gets another at the foreman's desk.");
    for (const Person& person : people.people) {
        if (person.active && people.hasPin(person)) {
            add(question, person, roleWord(person.role));
        }
    }
    close(question.page, tr("it stays"));
    return question;
}

PeopleQuestion foremanQuestion(const DeskPeople& people, const QString& forWhat) {
    PeopleQuestion question;
    question.page.title = tr("Which foreman?");
    question.page.under = forWhat;
    for (const Person& person : foremenWithPin(people)) {
        add(question, person, tr("by PIN"));
    }
    if (question.ids.empty()) {
        question.page.title = tr("No foreman has a PIN on this tablet.");
        question.page.under =
            hasForeman(people.people)
                ? tr("With the program closed, seamclock-cli people pin --forgotten gives one.")
                : tr("The first one is entered under \"Who is it?\".");
    }
    close(question.page, tr("nothing is changed"));
    return question;
}

PeopleQuestion changeQuestion(const DeskPeople& people) {
    PeopleQuestion question;
    question.page.title = tr("Whose entry changes?");
    for (const Person& person : people.people) {
        QString under = roleWord(person.role);
        if (!person.active) {
            under = tr("%1, has left").arg(under);
        } else if (!people.hasPin(person)) {
            under = tr("%1, no PIN").arg(under);
        }
        add(question, person, under);
    }
    close(question.page, tr("back to the desk"));
    return question;
}

ChoiceView deskPage(const QString& foreman) {
    ChoiceView page;
    page.title = tr("Foreman's desk: %1").arg(foreman);
    page.under = tr("It closes by itself after two minutes.");
    for (const DeskItem item : kDeskItems) {
        switch (item) {
        case DeskItem::Seal:
            page.choices.push_back(tile(tr("Seal the day"), tr("and its report"), Sign::Shield));
            break;
        case DeskItem::Add:
            page.choices.push_back(tile(tr("Somebody new"), tr("name, role, PIN"), Sign::Person));
            break;
        case DeskItem::Change:
            page.choices.push_back(
                tile(tr("Change an entry"), tr("name, role, PIN, has left"), Sign::Note));
            break;
        }
    }
    page.back = hiddenSlot();
    page.stop = hiddenSlot();
    page.step = stepSlot(tr("Leave the desk"), false);
    return page;
}

ChoiceView personPage(const DeskPeople& people, const Person& person) {
    ChoiceView page;
    page.title = fromUtf8(person.name);
    page.under = tr("The log keeps what was, and who changed it.");
    for (const PersonItem item : kPersonItems) {
        switch (item) {
        case PersonItem::Name:
            page.choices.push_back(tile(tr("Another name"), {}, Sign::Note));
            break;
        case PersonItem::Role:
            page.choices.push_back(
                tile(tr("Another role"), tr("now: %1").arg(roleWord(person.role)), Sign::Person));
            break;
        case PersonItem::Pin:
            page.choices.push_back(tile(
                people.hasPin(person) ? tr("A new PIN") : tr("A PIN"),
                people.hasPin(person) ? tr("the old one is forgotten") : tr("has none here"),
                Sign::Lock));
            break;
        case PersonItem::Certificate: {
            const auto noted = people.certificate.find(person.id);
            QString held = tr("none noted");
            if (noted != people.certificate.end()) {
                const auto first = std::min_element(
                    noted->second.begin(), noted->second.end(),
                    [](const Certificate& one, const Certificate& other) {
                        return one.until < other.until;
                    });
                const QString until = fullDayWords(first->until);
                held = noted->second.size() == 1
                           ? tr("%1, until %2").arg(fromUtf8(scopeOf(*first)), until)
                           : tr("%1 noted; the first ends %2").arg(noted->second.size()).arg(until);
            }
            page.choices.push_back(tile(tr("Certificate"), held, Sign::Shield));
            break;
        }
        case PersonItem::Leave:
            page.choices.push_back(tile(
                person.active ? tr("Has left") : tr("Is back"),
                person.active ? tr("the name stays in the log") : tr("had left"), Sign::Back));
            break;
        }
    }
    close(page, tr("back to the list"));
    return page;
}

ChoiceView roleQuestion(const QString& name, std::optional<Role> now) {
    ChoiceView page;
    page.title = tr("What is %1 here?").arg(name);
    for (const Role role : kRoles) {
        QString under;
        switch (role) {
        case Role::Operator:
            under = tr("welds");
            break;
        case Role::Foreman:
            under = tr("enters people, seals, decides; has a PIN");
            break;
        case Role::Trainee:
            under = tr("learns to weld");
            break;
        }
        ChoiceView::Choice choice = tile(roleWord(role), under, Sign::Person);
        choice.text[0] = choice.text[0].toUpper();
        choice.chosen = now == role;
        page.choices.push_back(choice);
    }
    close(page, tr("nothing is kept"));
    return page;
}

ChoiceView withPinQuestion(const QString& name) {
    ChoiceView page;
    page.title = tr("A PIN for %1?").arg(name);
    page.under = tr("With one, nobody else can work in this name.");
    page.choices.push_back(tile(tr("With a PIN"), tr("type it twice"), Sign::Lock));
    page.choices.push_back(tile(tr("Without a PIN"), tr("a touch on the name"), Sign::Person));
    close(page, tr("nothing is kept"));
    return page;
}

PinView pinView(const PinStage& stage) {
    PinView view;
    view.title = stage.title;
    view.where = stage.where;
    view.digits = stage.digits;
    const bool waits = stage.wait > Milliseconds(0);
    const bool enough = stage.digits >= stage.least;
    view.takesKeys = !stage.checking && !waits;
    view.back = plainSlot(tr("Erase all"));
    view.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    if (stage.digits == 0 || !view.takesKeys) {
        view.back.look = SlotView::Look::Gone;
    }
    if (stage.checking) {
        view.sentence = tr("One moment: it is being checked.");
        view.step = stepSlot(tr("Checking"), false);
        return view;
    }
    if (waits) {
        view.late = true;
        view.sentence =
            tr("%1 Next try in %2.")
                .arg(stage.wrong ? tr("That PIN is wrong.") : tr("Too many wrong PINs."))
                .arg(leftText(stage.wait));
        view.step = stepSlot(tr("Wait %1").arg(leftText(stage.wait)), false);
        return view;
    }
    if (stage.digits == 0) {
        view.late = stage.wrong || !stage.refused.isEmpty();
        view.sentence = stage.wrong ? tr("That PIN is wrong.") : stage.refused;
    } else if (!enough) {
        view.sentence = tr("%1 of at least %2 digits.").arg(stage.digits).arg(stage.least);
    }
    view.step = stepSlot(enough ? stage.step : tr("Type it in"), enough);
    return view;
}

} // namespace seamclock
