#include "app/setup/procedure_view.h"

#include "app/setup/procedure_form.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <set>
#include <string>
#include <utility>

namespace seamclock {
namespace {

struct ProcedureWords {
    Q_DECLARE_TR_FUNCTIONS(ProcedureWords)
};

QString tr(const char* text) {
    return ProcedureWords::tr(text);
}

/// "soak_s" of "soak_s.table[7..12]"; "" of what is no column.
std::string groupOf(const std::string& cell) {
    const auto table = cell.find("].table[") != std::string::npos ? cell.find("].table[") + 1
                                                                  : cell.find(".table[");
    const auto formula = cell.find("].formula[") != std::string::npos ? cell.find("].formula[") + 1
                                                                      : cell.find(".formula[");
    const auto at = std::min(table, formula);
    return at == std::string::npos ? std::string() : cell.substr(0, at);
}

/// "7..12" in "[7..12]" to "7 to 12".
QString rangeWords(QString range) {
    const QStringList ends = range.split(QStringLiteral(".."));
    if (ends.size() != 2) {
        return range;
    }
    return ends[0].isEmpty()   ? tr("to %1").arg(ends[1])
           : ends[1].isEmpty() ? tr("from %1").arg(ends[0])
                               : tr("%1 to %2").arg(ends[0], ends[1]);
}

QString groupTitle(const std::string& name) {
    if (name.empty()) {
        return tr("Pressures, plate");
    }
    const auto bracket = name.find('[');
    const QString title = columnWords(name.substr(0, bracket)).title;
    if (bracket == std::string::npos) {
        return title;
    }
    const QString range = fromUtf8(name.substr(bracket + 1, name.size() - bracket - 2));
    return tr("Cooling %1 °C").arg(rangeWords(range));
}

QString otherWords(const std::string& name) {
    static const std::pair<const char*, const char*> kWords[] = {
        {"reference_ambient", QT_TRANSLATE_NOOP("ProcedureWords", "reference air")},
        {"pressure.alignment", QT_TRANSLATE_NOOP("ProcedureWords", "pressure, alignment")},
        {"pressure.joining", QT_TRANSLATE_NOOP("ProcedureWords", "pressure, joining")},
        {"pressure.tolerance", QT_TRANSLATE_NOOP("ProcedureWords", "pressure, tolerance")},
        {"pressure.soak_aim", QT_TRANSLATE_NOOP("ProcedureWords", "pressure, soak, aim")},
        {"pressure.soak_max", QT_TRANSLATE_NOOP("ProcedureWords", "pressure, soak, at most")},
        {"pressure.soak_to_drag", QT_TRANSLATE_NOOP("ProcedureWords", "pressure, soak")},
        {"plate", QT_TRANSLATE_NOOP("ProcedureWords", "plate")},
        {"soak_tolerance", QT_TRANSLATE_NOOP("ProcedureWords", "soak's tolerance")},
        {"cooling_min.per_kelvin", QT_TRANSLATE_NOOP("ProcedureWords", "cooling for each kelvin")},
        {"half_cooling", QT_TRANSLATE_NOOP("ProcedureWords", "half cooling")}};
    for (const auto& [code, words] : kWords) {
        if (name == code) {
            return tr(words);
        }
    }
    QString words = fromUtf8(name);
    return words.replace(QLatin1Char('_'), QLatin1Char(' '))
        .replace(QLatin1Char('.'), QLatin1Char(' '));
}

QString gapWord(const std::string& value) {
    static const std::pair<const char*, const char*> kWords[] = {
        {"pressure_N_mm2.alignment", QT_TRANSLATE_NOOP("ProcedureWords", "alignment pressure")},
        {"pressure_N_mm2.joining", QT_TRANSLATE_NOOP("ProcedureWords", "joining pressure")},
        {"pressure_N_mm2.tolerance", QT_TRANSLATE_NOOP("ProcedureWords", "pressure's tolerance")},
        {"pressure_N_mm2.soak_aim", QT_TRANSLATE_NOOP("ProcedureWords", "aim of soak's pressure")},
        {"pressure_N_mm2.soak_max", QT_TRANSLATE_NOOP("ProcedureWords", "most of soak's pressure")},
        {"heated_tool_C", QT_TRANSLATE_NOOP("ProcedureWords", "plate")},
        {"bead_min_mm", QT_TRANSLATE_NOOP("ProcedureWords", "bead")},
        {"soak_s", QT_TRANSLATE_NOOP("ProcedureWords", "soak")},
        {"changeover_max_s", QT_TRANSLATE_NOOP("ProcedureWords", "changeover")},
        {"build_up_s", QT_TRANSLATE_NOOP("ProcedureWords", "build-up")},
        {"cooling_min", QT_TRANSLATE_NOOP("ProcedureWords", "cooling")},
        {"cooling_min.per_kelvin", QT_TRANSLATE_NOOP("ProcedureWords", "cooling for each kelvin")}};
    for (const auto& [code, words] : kWords) {
        if (value == code) {
            return tr(words);
        }
    }
    return fromUtf8(value);
}

Sign signOf(Standing standing) {
    return standing == Standing::Attested ? Sign::Shield : Sign::Note;
}

PlotView plotOf(const ProcedureDocument& document, const CellGroup& group) {
    PlotView plot;
    const auto draft = JsonDraft::read(document.procedure.id, document.bytes);
    if (group.name.empty() || !draft) {
        return plot;
    }
    const std::string column = group.name.substr(0, group.name.find('['));
    plot.x = tr("thickness mm");
    plot.y = columnWords(column).axis;
    if (column != "cooling_min") {
        plot.lines = linesOf(*draft, "/" + column);
        return plot;
    }
    const std::string classes = "/cooling_min/classes";
    for (std::size_t i = 0; i < draft->size(classes); ++i) {
        const std::string each = classes + "/" + std::to_string(i);
        int part = 0;
        for (PlotView::Line& line : linesOf(*draft, each)) {
            const QString air = classWords(*draft, each);
            line.name = air.isEmpty() ? line.name : air;
            line.style = static_cast<int>(i) + part++;
            plot.lines.push_back(std::move(line));
        }
    }
    return plot;
}

} // namespace

StandingView standingOf(const std::vector<Cell>& cells) {
    StandingView view;
    view.count = static_cast<int>(cells.size());
    int memory = 0;
    for (const Cell& cell : cells) {
        view.attested += cell.source.standing == Standing::Attested ? 1 : 0;
        memory += cell.source.standing == Standing::Memory ? 1 : 0;
    }
    if (view.count > 0 && view.attested == view.count) {
        view.sign = Sign::Shield;
        view.tone = Tone::Normal;
        view.words = tr("all %1 values attested").arg(view.count);
        return view;
    }
    QStringList parts;
    if (memory > 0) {
        view.mark = Mark::Trouble;
        view.tone = Tone::Soon;
        parts << tr("%1 from memory: not attested").arg(memory);
    }
    parts << tr("%1 of %2 values attested").arg(view.attested).arg(view.count);
    view.words = parts.join(QStringLiteral("; "));
    return view;
}

QString gapsText(const Procedure& procedure) {
    std::vector<std::pair<QString, QStringList>> ranges; // values that lack the same thicknesses
    for (const KnownGap& gap : procedure.gaps) {
        const QString range = tr("%1 to %2 mm")
                                  .arg(
                                      millimetresText(std::llround(inMillimetres(gap.from) * 1000)),
                                      millimetresText(std::llround(inMillimetres(gap.to) * 1000)));
        const auto found = std::find_if(
            ranges.begin(), ranges.end(), [&range](const auto& one) { return one.first == range; });
        if (found == ranges.end()) {
            ranges.emplace_back(range, QStringList{gapWord(gap.value)});
        } else {
            found->second << gapWord(gap.value);
        }
    }
    QStringList texts;
    for (const auto& [range, values] : ranges) {
        texts << values.join(QStringLiteral(", ")) + QStringLiteral(" ") + range;
    }
    return texts.isEmpty() ? QString() : tr("Gaps: %1").arg(texts.join(QStringLiteral("; ")));
}

namespace {

/// On a row there is no room for more than one; the procedure's own page names them all.
QString gapsInBrief(const Procedure& procedure) {
    std::set<std::string> values;
    for (const KnownGap& gap : procedure.gaps) {
        values.insert(gap.value);
    }
    return values.size() < 2 ? gapsText(procedure)
                             : tr("Gaps: %1 values").arg(static_cast<int>(values.size()));
}

} // namespace

ListRowView procedureRow(const ProcedureDocument& document) {
    const Procedure& procedure = document.procedure;
    const StandingView standing = standingOf(cellsOf(procedure));
    ListRowView row;
    row.text = tr("%1 · %2 · %3")
                   .arg(
                       fromUtf8(procedure.material), fromUtf8(procedure.standard),
                       fromUtf8(procedure.edition).section(QLatin1Char(';'), 0, 0));
    const QString gaps = gapsInBrief(procedure);
    row.second =
        fromUtf8(procedure.id) + (gaps.isEmpty() ? QString() : QStringLiteral(" · ") + gaps);
    row.third = standing.words;
    row.sign = standing.sign;
    row.mark = standing.mark;
    row.tone = standing.tone;
    return row;
}

std::vector<CellGroup> cellGroups(const Procedure& procedure) {
    std::vector<CellGroup> groups{{"", groupTitle(""), {}}};
    for (Cell& cell : cellsOf(procedure)) {
        const std::string name = groupOf(cell.name);
        auto found = std::find_if(groups.begin(), groups.end(), [&name](const CellGroup& group) {
            return group.name == name;
        });
        if (found == groups.end()) {
            groups.push_back({name, groupTitle(name), {}});
            found = groups.end() - 1;
        }
        found->cells.push_back(std::move(cell));
    }
    // the columns first, as they are what a card is read for
    std::rotate(groups.begin(), groups.begin() + 1, groups.end());
    if (groups.back().cells.empty()) {
        groups.pop_back();
    }
    return groups;
}

QString cellWords(const Cell& cell) {
    const std::string group = groupOf(cell.name);
    if (group.empty()) {
        return otherWords(cell.name);
    }
    const auto bracket = cell.name.find('[', group.size());
    const QString range =
        rangeWords(fromUtf8(cell.name.substr(bracket + 1, cell.name.size() - bracket - 2)));
    const bool formula = cell.name.find(".formula[", group.size()) != std::string::npos;
    return formula ? tr("%1 mm, formula").arg(range) : tr("%1 mm").arg(range);
}

ProcedureView procedureView(const ProcedureDocument& document, int tab) {
    const Procedure& procedure = document.procedure;
    const std::vector<CellGroup> groups = cellGroups(procedure);
    ProcedureView view;
    view.title = fromUtf8(procedure.title);
    view.about = tr("%1, edition %2. %3")
                     .arg(
                         fromUtf8(procedure.standard), fromUtf8(procedure.edition),
                         standingOf(cellsOf(procedure)).words);
    for (const CellGroup& group : groups) {
        view.tabs << group.title;
    }
    view.gaps = gapsText(procedure);
    view.back = plainSlot(tr("To the list"));
    view.stop = plainSlot(tr("Attest"), tr("against the standard"));
    view.step = stepSlot(tr("Edit in a form"), false);
    if (groups.empty()) {
        return view;
    }
    view.tab = std::clamp(tab, 0, static_cast<int>(groups.size()) - 1);
    const CellGroup& group = groups[static_cast<std::size_t>(view.tab)];
    view.plot = plotOf(document, group);
    for (const Cell& cell : group.cells) {
        view.values.push_back(
            {cellWords(cell), inWords(cell.content), standingText(cell.source.standing),
             signOf(cell.source.standing)});
    }
    view.source = group.cells.empty() ? QString() : storedWords(group.cells.front().source.text);
    return view;
}

ListView
groupsPage(const Procedure& procedure, const std::set<std::string>& ticked, bool withdraws) {
    ListView page;
    page.title = withdraws ? tr("Which attested values hold no more?")
                           : tr("Which values agree with the shop's copy?");
    page.under = withdraws ? tr("Choose a table, then its rows. They lose their standing.")
                           : tr("Choose a table, then the rows that were compared.");
    for (const CellGroup& group : cellGroups(procedure)) {
        ListRowView row;
        row.text = group.title;
        int attested = 0;
        int chosen = 0;
        for (const Cell& cell : group.cells) {
            attested += cell.source.standing == Standing::Attested ? 1 : 0;
            chosen += ticked.count(cell.name) > 0 ? 1 : 0;
        }
        row.second = tr("%1 of %2 attested").arg(attested).arg(group.cells.size());
        if (chosen > 0) {
            row.second += tr(" · %1 ticked").arg(chosen);
        }
        row.sign = attested == static_cast<int>(group.cells.size()) ? Sign::Shield : Sign::Note;
        row.enabled = !withdraws || attested > 0;
        page.rows.push_back(std::move(row));
    }
    page.columns = 2;
    page.back = plainSlot(
        withdraws ? tr("Attest instead") : tr("Withdraw"),
        withdraws ? QString() : tr("an attestation"));
    page.stop = plainSlot(tr("Close"), tr("nothing is kept"));
    page.step = ticked.empty() ? stepSlot(tr("Tick values"), false)
                               : stepSlot(tr("Go on: %1").arg(ticked.size()));
    if (ticked.empty()) {
        page.step.look = SlotView::Look::Gone;
    }
    return page;
}

ListView cellsPage(
    const CellGroup& group, const std::set<std::string>& ticked, bool withdraws,
    std::vector<std::string>& names) {
    ListView page;
    page.title = group.title;
    page.under = group.cells.empty() ? QString() : storedWords(group.cells.front().source.text);
    names.clear();
    for (const Cell& cell : group.cells) {
        const bool attested = cell.source.standing == Standing::Attested;
        if (withdraws && !attested) {
            continue;
        }
        ListRowView row;
        row.text = cellWords(cell) + QStringLiteral(": ") + inWords(cell.content);
        row.second = standingText(cell.source.standing);
        row.ticked = ticked.count(cell.name) > 0;
        page.rows.push_back(std::move(row));
        names.push_back(cell.name);
    }
    page.columns = 2;
    page.back = plainSlot(tr("Tick all"), tr("of this table"));
    page.stop = plainSlot(tr("Tick none"));
    page.step = stepSlot(tr("To the tables"), false);
    return page;
}

} // namespace seamclock
