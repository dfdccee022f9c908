// The questions that a page of large answers asks, as values: why, what to change, which procedure.
// What an answer is called and which code it stores is decided here; what it does is the window's.
#pragma once

#include "app/operate/choice_page.h"
#include "app/operate/preferences.h"
#include "app/operate/weld_view.h"
#include "core/procedure/procedure_codec.h"

#include <string>
#include <utility>
#include <vector>

namespace seamclock {

struct Reasons {
    ChoiceView page;
    std::vector<std::pair<std::string, QString>> answers; // the stored code, and its words
};

/// `coolingShort`: what cooling still lacks, for a joint that is taken out early.
Reasons reasonsFor(const AskReason& asked, const QString& coolingShort);

enum class MenuItem { Day, Card, Theme, Hand, Pedal, Motion, Words, End };

struct Menu {
    ChoiceView page;
    std::vector<MenuItem> items; // of the page's choices, in their order
};

Menu menuFor(const Preferences& now);
/// The preferences once that item was pressed; as they were for one that is none.
Preferences changedBy(MenuItem item, Preferences now);

ChoiceView procedureQuestion(const std::vector<ProcedureDocument>& procedures);

} // namespace seamclock
