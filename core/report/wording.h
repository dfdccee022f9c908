// Codes to the plain words of the trade, in English, for text that is read on a terminal or on
// paper. Codes stay codes in JSON and CSV. A code that has no words here is shown with blanks for
// its underscores: data may bring release steps and checks of a shop's own.
#pragma once

#include "core/plan/plan.h"
#include "core/weld/cues.h"
#include "core/weld/event.h"

#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// "from memory: not attested"
std::string standingInWords(Standing standing);
/// The source's own text with its standing behind it, unless the text ends with it already.
std::string sourceInWords(const Source& source);
/// Where the values of a plan come from, a line for each source with the values that stand on it
/// before it.
std::vector<std::string> sourcesInWords(const WeldPlan& plan);
/// "along the table's straight line"
std::string ruleInWords(BandRule rule);
/// Checks, release steps, phases, reasons and every other code.
std::string codeInWords(std::string_view code);
/// "get ready", "count-in 3"
std::string cueInWords(const Cue& cue);
/// What happened, in one line and with its values: "scale reading, joining: 16.5 mm".
std::string eventInWords(const WeldDetail& detail, const WeldPlan& plan);
/// A limit or an actual value with its unit as people write it: (10500, "ms") is "10.5 s".
std::string valueInWords(std::int64_t value, std::string_view unit, const WeldPlan& plan);

} // namespace seamclock
