// The questions about people, as values: who is at the bench, who opens the desk, what a foreman
// may change, and the page on which a PIN is typed. What an answer does is people_flow's.
#pragma once

#include "app/operate/pin_page.h"
#include "app/pages/choice_page.h"
#include "app/pages/desk.h"

#include <string>
#include <vector>

namespace seamclock {

/// A question whose answers are people; `ids` in the order of the page's choices.
struct PeopleQuestion {
    ChoiceView page;
    std::vector<std::string> ids;
};

QString roleWord(Role role);
/// The name of somebody whom the log knows, else the id itself.
QString nameFor(const DeskPeople& people, const std::string& id);
bool knowsSomebody(const DeskPeople& people); // somebody who has not left
/// Foremen who can prove it here.
std::vector<Person> foremenWithPin(const DeskPeople& people);

/// `atBench`: the id of who is there; empty: nobody yet.
PeopleQuestion whoQuestion(const DeskPeople& people, const std::string& atBench);
PeopleQuestion ownPinQuestion(const DeskPeople& people);
/// For the desk; `forWhat` is below the title. Nobody can answer it: it says why.
PeopleQuestion foremanQuestion(const DeskPeople& people, const QString& forWhat);
PeopleQuestion changeQuestion(const DeskPeople& people);

enum class DeskItem { Seal, Add, Change };
inline constexpr DeskItem kDeskItems[] = {DeskItem::Seal, DeskItem::Add, DeskItem::Change};
ChoiceView deskPage(const QString& foreman);

enum class PersonItem { Name, Role, Pin, Certificate, Leave };
inline constexpr PersonItem kPersonItems[] = {
    PersonItem::Name, PersonItem::Role, PersonItem::Pin, PersonItem::Certificate,
    PersonItem::Leave};
ChoiceView personPage(const DeskPeople& people, const Person& person);

inline constexpr Role kRoles[] = {Role::Operator, Role::Foreman, Role::Trainee};
ChoiceView roleQuestion(const QString& name, std::optional<Role> now);
/// The first answer is yes.
ChoiceView withPinQuestion(const QString& name);

/// What the PIN page asks, and how it stands.
struct PinStage {
    QString title;
    QString where;
    QString step; // what its button says when enough is typed
    int least = 1;
    int digits = 0;
    bool checking = false;
    bool wrong = false;   // the last PIN was
    QString refused;      // another sentence about the last PIN
    Milliseconds wait{0}; // until the next try counts
};

PinView pinView(const PinStage& stage);

} // namespace seamclock
