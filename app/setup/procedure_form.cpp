#include "app/setup/procedure_form.h"

#include "app/text/words.h"

#include <QCoreApplication>
#include <array>

namespace seamclock {
namespace {

struct ProcedureForm {
    Q_DECLARE_TR_FUNCTIONS(ProcedureForm)
};

QString tr(const char* text) {
    return ProcedureForm::tr(text);
}

constexpr std::array<const char*, 4> kColumns{"bead_mm", "soak_s", "changeover_s", "build_up_s"};
constexpr int kFormulaSteps = 40;

/// Attested is not among them: only a foreman's PIN makes that of a value.
FormRow sourceRow(const JsonDraft& draft, const std::string& of) {
    FormField source = textField(draft, of + "/source", tr("where it stands"));
    source.share = 2;
    return rowOf(
        {std::move(source), choiceField(
                                draft, of + "/standing", tr("what that is worth"),
                                {{"seen", standingText(Standing::Seen)},
                                 {"memory", standingText(Standing::Memory)},
                                 {"common_practice", standingText(Standing::CommonPractice)},
                                 {"derived", standingText(Standing::Derived)}})});
}

/// Beside a plot: the source has a row of its own, its worth stands beside `others`.
std::vector<FormRow> sourceRows(const JsonDraft& draft, const std::string& of, FormRow others) {
    FormRow both = sourceRow(draft, of);
    others.fields.push_back(std::move(both.fields.back()));
    both.fields.pop_back();
    return {std::move(both), std::move(others)};
}

void add(FormSection& section, std::vector<FormRow> rows) {
    for (FormRow& row : rows) {
        section.rows.push_back(std::move(row));
    }
}

FormAction actionOf(
    const QString& text, FormAction::Kind kind, const std::string& pointer,
    const std::string& json = {}) {
    FormAction action;
    action.text = text;
    action.kind = kind;
    action.pointer = pointer;
    action.json = json;
    return action;
}

FormAction takeOut(const std::string& pointer) {
    return actionOf(tr("Take out"), FormAction::Kind::Remove, pointer);
}

FormRow onlyAction(FormAction action) {
    FormRow row;
    row.actions.push_back(std::move(action));
    return row;
}

std::string numbered(const std::string& list, std::size_t index) {
    return list + "/" + std::to_string(index);
}

/// A row that begins where this one ends, with the value it ends with.
std::string rowBehind(const JsonDraft& draft, const std::string& row) {
    const std::string to = draft.shown(row + "/to_mm");
    const auto begins = draft.number(row + "/to_mm");
    return begins ? "{\"from_mm\": " + to + "}" : std::string("{}");
}

void addTable(
    FormSection& section, const JsonDraft& draft, const std::string& column, const QString& unit) {
    const std::string table = column + "/table";
    const std::size_t rows = draft.size(table);
    for (std::size_t i = 0; i < rows; ++i) {
        const std::string item = numbered(table, i);
        const bool flat = draft.has(item + "/value");
        FormField lower = numberField(draft, item + "/lower", tr("lower %1").arg(unit));
        FormField upper = numberField(draft, item + "/upper", tr("upper %1").arg(unit));
        if (flat) {
            lower.value = upper.value = fromUtf8(draft.shown(item + "/value"));
        }
        FormRow row = rowOf(
            {numberField(draft, item + "/from_mm", tr("above mm")),
             numberField(draft, item + "/to_mm", tr("to mm")), std::move(lower), std::move(upper)});
        row.item = item;
        row.actions = {
            actionOf(
                tr("Row below"), FormAction::Kind::Insert, numbered(table, i + 1),
                rowBehind(draft, item)),
            takeOut(item)};
        section.rows.push_back(std::move(row));
    }
    if (rows == 0) {
        section.rows.push_back(onlyAction(
            draft.has(table)
                ? actionOf(tr("A first row"), FormAction::Kind::Insert, numbered(table, 0), "{}")
                : actionOf(tr("Add a table"), FormAction::Kind::Put, table, "[{}]")));
    }
}

void addFormula(FormSection& section, const JsonDraft& draft, const std::string& column) {
    const std::string formula = column + "/formula";
    const std::size_t rows = draft.size(formula);
    for (std::size_t i = 0; i < rows; ++i) {
        const std::string item = numbered(formula, i);
        FormField numbers =
            textField(draft, item + "/coefficients", tr("factors of 1, s, s² and so on"));
        numbers.kind = FormField::Kind::Numbers;
        numbers.share = 2;
        FormRow row = rowOf(
            {numberField(draft, item + "/from_mm", tr("above mm")),
             numberField(draft, item + "/to_mm", tr("to mm")), std::move(numbers)});
        row.item = item;
        row.actions = {
            actionOf(
                tr("Row below"), FormAction::Kind::Insert, numbered(formula, i + 1),
                rowBehind(draft, item)),
            takeOut(rows == 1 ? formula : item)};
        section.rows.push_back(std::move(row));
    }
    if (rows == 0) {
        section.rows.push_back(
            onlyAction(actionOf(tr("Add a formula"), FormAction::Kind::Put, formula, "[{}]")));
    }
}

FormSection columnSection(const JsonDraft& draft, const std::string& column) {
    FormSection section;
    const ColumnWords words = columnWords(column);
    section.title = words.title;
    section.roots = {"/" + column};
    const std::string at = "/" + column;
    if (!draft.has(at)) {
        section.under = tr("not there");
        section.rows.push_back(onlyAction(actionOf(
            tr("Add this column"), FormAction::Kind::Put, at,
            R"({"source": "", "standing": "common_practice", "table": [{}]})")));
        return section;
    }
    const QString unit = words.axis.section(' ', -1);
    FormRow falls = rowOf(
        {choiceField(draft, at + "/falls_by_declaration", tr("may fall with thickness"), {})});
    FormField& shown = falls.fields.front();
    shown.kind = FormField::Kind::Shown;
    shown.value =
        shown.value == QLatin1String("true") ? tr("yes: the source itself says so") : tr("no");
    falls.actions = {
        draft.has(at + "/falls_by_declaration")
            ? actionOf(tr("May not fall"), FormAction::Kind::Remove, at + "/falls_by_declaration")
            : actionOf(
                  tr("May fall"), FormAction::Kind::Put, at + "/falls_by_declaration", "true")};
    add(section, sourceRows(draft, at, std::move(falls)));
    addTable(section, draft, at, unit);
    addFormula(section, draft, at);
    PlotView plot;
    plot.x = tr("thickness mm");
    plot.y = words.axis;
    plot.lines = linesOf(draft, at);
    section.plot = std::move(plot);
    const std::size_t rows = draft.size(at + "/table") + draft.size(at + "/formula");
    section.under = rows == 1 ? tr("1 row") : tr("%1 rows").arg(rows);
    return section;
}

void addValueWithSource(
    FormSection& section, const JsonDraft& draft, const std::string& at, const char* key,
    const QString& caption, const QString& add) {
    if (!draft.has(at)) {
        section.rows.push_back(onlyAction(actionOf(
            add, FormAction::Kind::Put, at, R"({"source": "", "standing": "common_practice"})")));
        return;
    }
    FormRow row = rowOf({numberField(draft, at + "/" + key, caption)});
    row.item = at;
    FormRow source = sourceRow(draft, at);
    for (FormField& field : source.fields) {
        row.fields.push_back(std::move(field));
    }
    row.actions = {takeOut(at)};
    section.rows.push_back(std::move(row));
}

FormSection whatItIs(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("What it is");
    section.under = fromUtf8(draft.shown("/id"));
    section.roots = {"", "/id", "/title", "/material", "/standard", "/edition"};
    section.rows = {
        rowOf(
            {textField(draft, "/id", tr("short name: stays the same for ever")),
             textField(draft, "/material", tr("material"))}),
        rowOf({textField(draft, "/title", tr("title"))}),
        rowOf(
            {textField(draft, "/standard", tr("standard, or the shop's own")),
             textField(draft, "/edition", tr("edition"))})};
    return section;
}

FormSection pressures(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("Pressures");
    section.roots = {"/pressure"};
    section.under = tr("N/mm²: alignment, soak, joining");
    section.rows = {
        rowOf(
            {numberField(draft, "/pressure/alignment_N_mm2", tr("alignment N/mm²")),
             numberField(draft, "/pressure/joining_N_mm2", tr("joining N/mm²"))}),
        sourceRow(draft, "/pressure")};
    addValueWithSource(
        section, draft, "/pressure/tolerance", "value_N_mm2", tr("tolerance ± N/mm²"),
        tr("Add a tolerance"));
    addValueWithSource(
        section, draft, "/pressure/soak_aim", "value_N_mm2", tr("soak, aim N/mm²"),
        tr("Add an aim of soak"));
    addValueWithSource(
        section, draft, "/pressure/soak_max", "value_N_mm2", tr("soak, at most N/mm²"),
        tr("Add a most of soak"));
    if (draft.has("/pressure/soak_to_drag")) {
        FormRow toDrag = sourceRow(draft, "/pressure/soak_to_drag");
        toDrag.item = "/pressure/soak_to_drag";
        toDrag.fields.front().caption = tr("soak from zero to drag: where it stands");
        toDrag.actions = {takeOut("/pressure/soak_to_drag")};
        section.rows.push_back(std::move(toDrag));
    } else if (!draft.has("/pressure/soak_aim") && !draft.has("/pressure/soak_max")) {
        section.rows.push_back(onlyAction(actionOf(
            tr("Soak from zero to drag"), FormAction::Kind::Put, "/pressure/soak_to_drag",
            R"({"source": "", "standing": "common_practice"})")));
    }
    return section;
}

FormSection plateAndAir(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("Plate and air");
    section.roots = {"/plate", "/reference_ambient", "/soak_tolerance"};
    section.under = tr("°C of the plate, reference air, soak's tolerance");
    if (draft.has("/plate")) {
        FormRow row = rowOf(
            {numberField(draft, "/plate/min_C", tr("plate, lowest °C")),
             numberField(draft, "/plate/max_C", tr("plate, highest °C")),
             numberField(draft, "/plate/target_C", tr("aim °C, else the middle"))});
        row.item = "/plate";
        row.actions = {takeOut("/plate")};
        section.rows = {std::move(row), sourceRow(draft, "/plate")};
    } else {
        section.rows.push_back(onlyAction(actionOf(
            tr("Add the plate's window"), FormAction::Kind::Put, "/plate",
            R"({"source": "", "standing": "common_practice"})")));
    }
    FormRow air = rowOf({numberField(draft, "/reference_ambient/value_C", tr("reference air °C"))});
    FormRow airSource = sourceRow(draft, "/reference_ambient");
    air.fields.insert(air.fields.end(), airSource.fields.begin(), airSource.fields.end());
    section.rows.push_back(std::move(air));
    section.rows.push_back(rowOf(
        {numberField(
             draft, "/soak_tolerance/low_percent", tr("soak, shorter by at most % (0 or less)")),
         numberField(draft, "/soak_tolerance/high_percent", tr("soak, longer by at most %"))}));
    section.rows.push_back(sourceRow(draft, "/soak_tolerance"));
    return section;
}

FormSection coolingRule(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("Cooling");
    section.roots = {"/cooling_min", "/half_cooling"};
    const std::string classes = "/cooling_min/classes";
    const std::size_t count = draft.size(classes);
    section.under = count == 1 ? tr("1 class of air temperature")
                               : tr("%1 classes of air temperature").arg(count);
    section.rows.push_back(rowOf({choiceField(
        draft, "/cooling_min/default_rule", tr("between a band's ends"),
        {{"line", tr("along the straight line")}, {"band-end", tr("at the band's end")}})}));
    PlotView plot;
    plot.x = tr("thickness mm");
    plot.y = tr("cooling min");
    for (std::size_t i = 0; i < count; ++i) {
        const std::string each = numbered(classes, i);
        FormRow row = rowOf(
            {numberField(draft, each + "/from_C", tr("class %1: air from °C").arg(i + 1)),
             numberField(draft, each + "/to_C", tr("to °C"))});
        row.item = each;
        row.actions = {takeOut(each)};
        section.rows.push_back(std::move(row));
        for (PlotView::Line& line : linesOf(draft, each)) {
            line.name = classWords(draft, each);
            line.style = static_cast<int>(i);
            plot.lines.push_back(std::move(line));
        }
    }
    FormRow more = onlyAction(actionOf(
        tr("Another class"), FormAction::Kind::Insert, numbered(classes, count),
        R"({"source": "", "standing": "common_practice", "table": [{}]})"));
    if (!draft.has("/cooling_min")) {
        more.actions.front() = actionOf(
            tr("Add cooling"), FormAction::Kind::Put, "/cooling_min",
            R"({"default_rule": "line", "classes": [{"source": "", "standing": "common_practice", "table": [{}]}]})");
    }
    section.rows.push_back(std::move(more));
    section.plot = std::move(plot);
    return section;
}

void addPerKelvin(FormSection& section, const JsonDraft& draft) {
    const std::string at = "/cooling_min/per_kelvin";
    if (!draft.has(at)) {
        section.rows.push_back(onlyAction(actionOf(
            tr("Add a correction for each kelvin of air"), FormAction::Kind::Put, at,
            R"({"source": "", "standing": "common_practice"})")));
    } else {
        FormRow row = rowOf(
            {numberField(draft, at + "/percent", tr("% for each kelvin")),
             choiceField(
                 draft, at + "/longer_when", tr("longer when"),
                 {{"warmer", tr("warmer")}, {"colder", tr("colder")}}),
             numberField(draft, at + "/from_C", tr("air from °C")),
             numberField(draft, at + "/to_C", tr("to °C"))});
        row.item = at;
        row.actions = {takeOut(at)};
        section.rows.push_back(std::move(row));
        add(section, sourceRows(draft, at, {}));
    }
    if (draft.has("/half_cooling")) {
        FormRow row =
            rowOf({numberField(draft, "/half_cooling/from_mm", tr("half cooling from mm"))});
        row.item = "/half_cooling";
        row.actions = {takeOut("/half_cooling")};
        add(section, sourceRows(draft, "/half_cooling", std::move(row)));
    } else {
        section.rows.push_back(onlyAction(actionOf(
            tr("Add the relief of half cooling"), FormAction::Kind::Put, "/half_cooling",
            R"({"source": "", "standing": "common_practice"})")));
    }
}

FormSection coolingClass(const JsonDraft& draft, std::size_t index) {
    const std::string column = "cooling_min/classes/" + std::to_string(index);
    FormSection section = columnSection(draft, column);
    const QString words = classWords(draft, "/" + column);
    section.title = words.isEmpty() ? tr("Cooling time") : tr("Cooling, air %1").arg(words);
    return section;
}

FormSection gaps(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("Gaps");
    section.roots = {"/gaps"};
    const std::size_t count = draft.size("/gaps");
    section.under = count == 0
                        ? tr("none: the source lacks nothing")
                        : tr("%1: what the source lacks, and what it says instead").arg(count);
    std::vector<std::pair<std::string, QString>> values;
    for (const char* value : kProcedureValues) {
        values.emplace_back(value, QString::fromLatin1(value));
    }
    for (std::size_t i = 0; i < count; ++i) {
        const std::string item = numbered("/gaps", i);
        FormField value = choiceField(draft, item + "/value", tr("which value"), values);
        value.share = 2;
        FormRow row = rowOf(
            {std::move(value), numberField(draft, item + "/from_mm", tr("from mm")),
             numberField(draft, item + "/to_mm", tr("to mm"))});
        row.item = item;
        row.actions = {takeOut(count == 1 ? "/gaps" : item)};
        section.rows.push_back(std::move(row));
        section.rows.push_back(
            rowOf({textField(draft, item + "/says", tr("what the source says instead"))}));
    }
    section.rows.push_back(onlyAction(
        actionOf(tr("Another gap"), FormAction::Kind::Insert, numbered("/gaps", count), "{}")));
    return section;
}

FormSection notes(const JsonDraft& draft) {
    FormSection section;
    section.title = tr("Notes");
    section.roots = {"/notes"};
    const std::size_t count = draft.size("/notes");
    section.under = count == 0 ? tr("none") : tr("%1 for people").arg(count);
    for (std::size_t i = 0; i < count; ++i) {
        const std::string item = numbered("/notes", i);
        FormRow row = rowOf({textField(draft, item, tr("note %1").arg(i + 1))});
        row.item = item;
        row.actions = {takeOut(item)};
        section.rows.push_back(std::move(row));
    }
    section.rows.push_back(onlyAction(actionOf(
        tr("Another note"), FormAction::Kind::Insert, numbered("/notes", count), "\" \"")));
    return section;
}

std::optional<PlotView::Line> tableLine(const JsonDraft& draft, const std::string& table) {
    PlotView::Line line;
    for (std::size_t i = 0; i < draft.size(table); ++i) {
        const std::string row = numbered(table, i);
        const auto from = draft.number(row + "/from_mm");
        const auto to = draft.number(row + "/to_mm");
        const auto value = draft.number(row + "/value");
        const auto lower = value ? value : draft.number(row + "/lower");
        const auto upper = value ? value : draft.number(row + "/upper");
        if (from && to && lower && upper) {
            line.points.emplace_back(*from, *lower);
            line.points.emplace_back(*to, *upper);
        }
    }
    return line.points.empty() ? std::nullopt : std::optional(std::move(line));
}

std::vector<double> numbersIn(const std::string& text) {
    std::vector<double> out;
    for (const QString& word : fromUtf8(text).split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        bool ok = false;
        const double value = word.toDouble(&ok);
        if (!ok) {
            return {};
        }
        out.push_back(value);
    }
    return out;
}

std::optional<PlotView::Line> formulaLine(const JsonDraft& draft, const std::string& formula) {
    PlotView::Line line;
    line.style = 1;
    for (std::size_t i = 0; i < draft.size(formula); ++i) {
        const std::string row = numbered(formula, i);
        const auto from = draft.number(row + "/from_mm");
        const auto to = draft.number(row + "/to_mm");
        Piece piece;
        piece.coefficients = numbersIn(draft.shown(row + "/coefficients"));
        if (!from || !to || piece.coefficients.empty()) {
            continue;
        }
        for (int step = 0; step <= kFormulaSteps; ++step) {
            const double s = *from + (*to - *from) * step / kFormulaSteps;
            line.points.emplace_back(s, piece.at(millimetres(s)));
        }
    }
    return line.points.empty() ? std::nullopt : std::optional(std::move(line));
}

} // namespace

ColumnWords columnWords(const std::string& column) {
    if (column == "bead_mm") {
        return {tr("Alignment bead"), tr("bead mm")};
    }
    if (column == "soak_s") {
        return {tr("Soak"), tr("soak s")};
    }
    if (column == "changeover_s") {
        return {tr("Changeover"), tr("changeover s")};
    }
    if (column == "build_up_s") {
        return {tr("Build-up"), tr("build-up s")};
    }
    return {tr("Cooling time"), tr("cooling min")};
}

QString classWords(const JsonDraft& draft, const std::string& each) {
    const QString from = fromUtf8(draft.shown(each + "/from_C"));
    const QString to = fromUtf8(draft.shown(each + "/to_C"));
    if (from.isEmpty() && to.isEmpty()) {
        return {};
    }
    return from.isEmpty() ? tr("to %1 °C").arg(to)
           : to.isEmpty() ? tr("from %1 °C").arg(from)
                          : tr("%1 to %2 °C").arg(from, to);
}

std::vector<PlotView::Line> linesOf(const JsonDraft& draft, const std::string& column) {
    std::vector<PlotView::Line> lines;
    auto table = tableLine(draft, column + "/table");
    auto formula = formulaLine(draft, column + "/formula");
    const bool both = table && formula;
    if (table) {
        table->name = both ? tr("table") : QString();
        lines.push_back(std::move(*table));
    }
    if (formula) {
        formula->name = both ? tr("formula") : QString();
        formula->style = both ? 1 : 0;
        lines.push_back(std::move(*formula));
    }
    return lines;
}

std::vector<FormSection> procedureForm(const JsonDraft& draft) {
    std::vector<FormSection> sections{whatItIs(draft), pressures(draft), plateAndAir(draft)};
    for (const char* column : kColumns) {
        sections.push_back(columnSection(draft, column));
    }
    FormSection rule = coolingRule(draft);
    addPerKelvin(rule, draft);
    sections.push_back(std::move(rule));
    for (std::size_t i = 0; i < draft.size("/cooling_min/classes"); ++i) {
        sections.push_back(coolingClass(draft, i));
    }
    sections.push_back(gaps(draft));
    sections.push_back(notes(draft));
    return sections;
}

} // namespace seamclock
