// What happened, in a line of a person's own language with its values: an event of a weld as the
// day log lists it. Codes that have no words are shown with blanks for their underscores.
#pragma once

#include "core/weld/event.h"

#include <QString>

namespace seamclock {

/// "scale reading, joining: 20.0 mm"
QString eventWords(const WeldDetail& detail, const WeldPlan& plan);

/// A code that a person chose as a reason, or what was typed.
QString reasonWord(const std::string& reason);

/// "13:21:04.318", the wall clock at that place; the log keeps the milliseconds.
QString clockTextToMs(const Instant& at);

} // namespace seamclock
