// What Set-up shows of procedures: the list with how much each is worth, one procedure with its
// columns, and the values that a foreman holds against the standard. Cells and their standing are
// core's (core/procedure/cells.h); here they get words.
#pragma once

#include "app/pages/list_page.h"
#include "app/setup/plot.h"
#include "core/procedure/cells.h"
#include "core/procedure/procedure_codec.h"

#include <set>
#include <string>
#include <vector>

namespace seamclock {

/// How much the values of a procedure are worth, all together.
struct StandingView {
    QString words; // "all 42 values attested by the shop"
    Sign sign = Sign::Note;
    std::optional<Mark> mark; // something is from memory and not attested
    Tone tone = Tone::Rest;
    int attested = 0;
    int count = 0;

    bool operator==(const StandingView&) const = default;
};
StandingView standingOf(const std::vector<Cell>& cells);

/// "Gaps: soak 1 to 4.5 mm"; empty: it lacks nothing.
QString gapsText(const Procedure& procedure);

ListRowView procedureRow(const ProcedureDocument& document);

/// Cells of one table or formula, or of everything that is none.
struct CellGroup {
    std::string name; // "soak_s", "cooling_min[..15]"; "" for what is no column
    QString title;
    std::vector<Cell> cells;

    bool operator==(const CellGroup&) const = default;
};
std::vector<CellGroup> cellGroups(const Procedure& procedure);

/// "12 to 19 mm", "plate".
QString cellWords(const Cell& cell);

struct ValueRow {
    QString what;
    QString value;
    QString standing;
    Sign sign = Sign::Note;

    bool operator==(const ValueRow&) const = default;
};

struct ProcedureView {
    QString title;
    QString about;
    QStringList tabs;
    int tab = 0;
    PlotView plot;
    std::vector<ValueRow> values;
    QString source; // where the values of this tab stand
    QString gaps;
    SlotView back;
    SlotView stop;
    SlotView step;

    bool operator==(const ProcedureView&) const = default;
};

ProcedureView procedureView(const ProcedureDocument& document, int tab);

/// Which group's values are to be attested or withdrawn: how many are ticked, how many are.
ListView
groupsPage(const Procedure& procedure, const std::set<std::string>& ticked, bool withdraws);
/// The cells of one group to tick; `names` gets their names in the rows' order.
ListView cellsPage(
    const CellGroup& group, const std::set<std::string>& ticked, bool withdraws,
    std::vector<std::string>& names);

} // namespace seamclock
