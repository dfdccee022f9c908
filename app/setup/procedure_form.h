// A procedure's document as a form: what it is, pressures, plate, one section for each column, each
// class of cooling, gaps and notes. Rows of tables are drawn as they are typed, also while
// something in them is wrong, since a slip is seen soonest on a plot.
#pragma once

#include "app/setup/form.h"
#include "core/procedure/procedure_codec.h"

namespace seamclock {

std::vector<FormSection> procedureForm(const JsonDraft& draft);

/// Of a table, a formula or both below that pointer, as far as they can be drawn: a line for each.
std::vector<PlotView::Line> linesOf(const JsonDraft& draft, const std::string& column);

/// The columns of a plan in words: "Soak", with the axis' words.
struct ColumnWords {
    QString title;
    QString axis;
};
ColumnWords columnWords(const std::string& column);

/// "to 15 °C", "15 to 25 °C", "from 25 °C"; empty for a class without limits.
QString classWords(const JsonDraft& draft, const std::string& each);

} // namespace seamclock
