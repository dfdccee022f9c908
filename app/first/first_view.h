// The first start as values: which steps there are, which of them is next, what each means if it is
// left for later, and the pages that ask. A step that is left for later stays to be done; which are
// is kept in the settings' file, what they made where it belongs: the log, its secrets, the
// settings. So a start that was cut off goes on where it was.
#pragma once

#include "app/operate/preferences.h"
#include "app/pages/choice_page.h"
#include "core/practice/demo_folder.h"

#include <QString>
#include <optional>
#include <set>
#include <vector>

namespace seamclock {

enum class FirstStep { Screen, Shop, Foreman, Bench, Operator };
inline constexpr FirstStep kFirstSteps[] = {
    FirstStep::Screen, FirstStep::Shop, FirstStep::Foreman, FirstStep::Bench, FirstStep::Operator};

struct FirstState {
    bool screen = false; // language and units were chosen
    bool begun = false;  // what the program is was told, and its shop is being set up
    bool done = false;   // the first weld card was asked for
    std::set<FirstStep> later;
    QString shop; // these four: names; empty: not there yet
    QString foreman;
    QString bench;
    QString welder;
    DemoFolder demo = DemoFolder::None;

    bool operator==(const FirstState&) const = default;
};

bool isKept(const FirstState& state, FirstStep step);
/// Neither kept nor left for later; absent: none.
std::optional<FirstStep> nextStep(const FirstState& state);
/// In one sentence or two: what it is for, and what later means.
QString meaningOf(FirstStep step);

enum class FirstItem { Screen, Shop, Foreman, Bench, Operator, Demo, RemoveDemo };
/// A page whose answers are these, in the order of its choices.
struct FirstQuestion {
    ChoiceView page;
    std::vector<FirstItem> items;
};

/// Languages first, then the two systems of units.
ChoiceView screenQuestion(const Preferences& now);
/// Says once what the program is, and who decides.
FirstQuestion guideQuestion(const FirstState& state);
FirstQuestion overviewQuestion(const FirstState& state);
/// Where only a foreman can go on and there is none.
ChoiceView foremanFirst(FirstStep step);

/// Without what is read elsewhere: names and the demo. `file`: the settings'.
FirstState readFirst(const QString& file);
void writeFirst(const FirstState& state, const QString& file);

} // namespace seamclock
