// The questions that a page of large answers asks, as values: why, what to change, which procedure.
// What an answer is called and which code it stores is decided here; what it does is the window's.
#pragma once

#include "app/operate/preferences.h"
#include "app/operate/weld_view.h"
#include "app/pages/choice_page.h"
#include "core/procedure/procedure_codec.h"

#include <string>
#include <utility>
#include <vector>

namespace seamclock {

struct Reasons {
    ChoiceView page;
    std::vector<std::pair<std::string, QString>> answers; // the stored code, and its words
};

/// `coolingShort`: what cooling still lacks, for a joint that is taken out early. `foremanHere`:
/// one could prove himself, where only he may go on.
/// No reason to go on without the draught's check, but a number to type: the air is not as planned.
inline constexpr const char* kOtherAmbient = "other_ambient";

Reasons reasonsFor(const AskReason& asked, const QString& coolingShort, bool foremanHere = false);

enum class MenuItem {
    Day,
    Card,
    Heat,
    People,
    Setup,
    Shop,
    Practice,
    FirstSteps,
    LeaveDemo,
    RemoveDemo,
    Help,
    Theme,
    Hand,
    Pedal,
    Motion,
    Words,
    Speech, // the language
    Units
};

struct Menu {
    ChoiceView page;
    std::vector<MenuItem> items; // of the page's choices, in their order
};

/// `atBench`: the name of who is there; empty: nobody said. Ending the program is in the slot that
/// stops. In the demo shop it leads out of it.
Menu menuFor(const Preferences& now, const QString& atBench = {}, bool demo = false);
/// The preferences once that item was pressed; as they were for one that is none.
Preferences changedBy(MenuItem item, Preferences now);

/// A person's own grade of the bead, or a photo: what is judged by eye and never by the program.
struct Closer {
    ChoiceView page;
    std::vector<std::pair<std::string, std::string>> grades; // scheme and level; the photo is last
};
Closer closerQuestion(const Weld& weld);

ChoiceView procedureQuestion(const std::vector<ProcedureDocument>& procedures);

} // namespace seamclock
