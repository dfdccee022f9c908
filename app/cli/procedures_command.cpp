// procedures: what there is, what is in one, and whether a file is sound.
#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/numbers.h"
#include "app/cli/output_json.h"
#include "core/base/plain_number.h"
#include "core/procedure/cells.h"
#include "core/report/plain_text.h"
#include "core/report/wording.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <memory>

namespace seamclock {
namespace {

using Rows = std::vector<std::vector<std::string>>;

struct ProceduresCall {
    std::string subject;
    std::optional<std::string> log;
    bool cells = false;
    bool json = false;
};

std::string rounded(double value) {
    return plainNumber(std::round(value * 1e6) / 1e6);
}

std::string range(Length from, Length to) {
    return rounded(inMillimetres(from)) + " to " + rounded(inMillimetres(to)) + " mm";
}

/// "70 to 120 s" for a straight piece of a table, else the formula in s.
std::string pieceText(const Piece& piece, const char* unit) {
    const auto& c = piece.coefficients;
    if (c.size() <= 2) {
        const std::string low = rounded(piece.at(piece.from));
        const std::string high = rounded(piece.at(piece.to));
        return range(piece.from, piece.to) + ": " + low + (low == high ? "" : " to " + high) + " " +
               unit;
    }
    std::string formula;
    for (std::size_t i = c.size(); i-- > 0;) {
        if (c[i] == 0) {
            continue;
        }
        formula +=
            formula.empty() ? rounded(c[i]) : (c[i] < 0 ? " − " : " + ") + rounded(std::abs(c[i]));
        formula += i == 0 ? "" : i == 1 ? " s" : " s^" + std::to_string(i);
    }
    return range(piece.from, piece.to) + ": " + formula + " " + unit;
}

std::string columnText(const std::string& name, const Column& column, const char* unit) {
    std::string text = name + "\n";
    for (std::size_t i = 0; i < column.curves.size(); ++i) {
        if (column.curves.size() > 1) {
            text += i == 0 ? "  the longest of\n" : "  and\n";
        }
        for (const Piece& piece : column.curves[i].pieces) {
            text += "  " + pieceText(piece, unit) + "\n";
            if (piece.attested) {
                text += "    " + wrapped(sourceInWords(*piece.attested), 4) + "\n";
            }
        }
    }
    return text + "  " + wrapped(sourceInWords(column.source), 2) + "\n";
}

std::string pressureText(const PressureRule& rule) {
    Rows rows;
    const auto add = [&rows](
                         const char* name, const std::optional<Pressure>& value,
                         const Source& source) {
        rows.push_back(
            {name, value ? rounded(inNewtonsPerSquareMillimetre(*value)) + " N/mm²" : "no value",
             value ? sourceInWords(source) : ""});
    };
    add("alignment", rule.alignment, rule.alignmentSource);
    add("joining", rule.joining, rule.joiningSource);
    add("tolerance, ±", rule.tolerance, rule.toleranceSource);
    if (rule.soakToDrag) {
        rows.push_back({"soak", "from zero to drag", sourceInWords(*rule.soakToDrag)});
    } else {
        add("soak, aim", rule.soakAim, rule.soakAimSource);
        add("soak, at most", rule.soakMax, rule.soakMaxSource);
    }
    return "Pressure\n" + aligned(rows);
}

std::string classText(const CoolingClass& one) {
    std::string name = "Cooling, at least";
    if (one.from || one.to) {
        name += one.from ? ", from " + rounded(one.from->inCelsius()) : ", up";
        name += one.to ? " to " + rounded(one.to->inCelsius()) : "";
        name += " °C in the shop";
    }
    return columnText(name, one.minutes, "min");
}

std::string procedureText(const Procedure& p) {
    std::string text = headline(onOneLine(p.title));
    text += aligned(
        {{"Id", onOneLine(p.id)},
         {"Material", onOneLine(p.material)},
         {"Standard", onOneLine(p.standard)},
         {"Edition", onOneLine(p.edition)},
         {"Sheet", range(p.thinnest(), p.thickest())},
         {"Shop", rounded(p.referenceAmbient.inCelsius()) + " °C where nobody says another; " +
                      sourceInWords(p.referenceAmbientSource)}});
    text += "\n" + pressureText(p.pressure);
    if (p.plate) {
        text += fmt::format(
            "Plate\n  {} to {} °C{}\n  {}\n", rounded(p.plate->min.inCelsius()),
            rounded(p.plate->max.inCelsius()),
            p.plate->target ? ", aim " + rounded(p.plate->target->inCelsius()) + " °C" : "",
            wrapped(sourceInWords(p.plate->source), 2));
    }
    const auto add =
        [&text](const char* name, const std::optional<Column>& column, const char* unit) {
            text += column ? columnText(name, *column, unit) : std::string(name) + "\n  no value\n";
        };
    add("Bead in alignment, at least", p.bead, "mm");
    add("Soak", p.soak, "s");
    text += "  " +
            wrapped(
                fmt::format(
                    "from {} to +{} % of it: {}", rounded(p.soakLowPercent),
                    rounded(p.soakHighPercent), sourceInWords(p.soakTolerance)),
                2) +
            "\n";
    add("Changeover, at most", p.changeover, "s");
    add("Build-up", p.buildUp, "s");
    for (const CoolingClass& one : p.cooling) {
        text += classText(one);
    }
    if (p.perKelvin) {
        text += "  " +
                wrapped(
                    fmt::format(
                        "{} % a kelvin from the {} °C above, longer when {}, {} to {} °C: {}",
                        rounded(p.perKelvin->percent), rounded(p.referenceAmbient.inCelsius()),
                        p.perKelvin->longerWhenWarmer ? "warmer" : "colder",
                        rounded(p.perKelvin->from.inCelsius()),
                        rounded(p.perKelvin->to.inCelsius()), sourceInWords(p.perKelvin->source)),
                    2) +
                "\n";
    }
    if (p.halfCooling) {
        text += "Half cooling, from " + rounded(inMillimetres(p.halfCooling->from)) + " mm\n  " +
                wrapped(sourceInWords(p.halfCooling->source), 2) + "\n";
    }
    for (const KnownGap& gap : p.gaps) {
        text +=
            "Gap\n  " +
            wrapped(
                onOneLine(gap.value) + ", " + range(gap.from, gap.to) + ": " + onOneLine(gap.says),
                2) +
            "\n";
    }
    for (const std::string& note : p.notes) {
        text += "Note\n  " + wrapped(onOneLine(note), 2) + "\n";
    }
    return text;
}

/// How much of it a foreman held against the standard: "3 of 62 cells".
std::string attestedText(const Procedure& procedure) {
    const auto cells = cellsOf(procedure);
    const auto held = std::count_if(cells.begin(), cells.end(), [](const Cell& cell) {
        return cell.source.standing == Standing::Attested;
    });
    return held == 0 ? "nothing" : fmt::format("{} of {} cells", held, cells.size());
}

std::string cellsText(const Procedure& procedure) {
    Rows rows = {{"cell", "says", "standing"}};
    for (const Cell& cell : cellsOf(procedure)) {
        rows.push_back({cell.name, cell.content, sourceInWords(cell.source)});
    }
    return aligned(rows, 0);
}

Result<int> listProcedures(const ProceduresCall& call, Terminal& terminal) {
    const auto all = proceduresOf(call.log);
    if (!all) {
        return tl::unexpected(all.error());
    }
    if (call.json) {
        terminal.write(proceduresJson(*all));
        return 0;
    }
    Rows rows = {{"id", "material", "sheet", "standard and edition"}};
    if (call.log) {
        rows.front().push_back("attested");
    }
    for (const ProcedureDocument& one : *all) {
        const Procedure& p = one.procedure;
        rows.push_back(
            {onOneLine(p.id), onOneLine(p.material), range(p.thinnest(), p.thickest()),
             onOneLine(p.standard + ", edition " + p.edition)});
        if (call.log) {
            rows.back().push_back(attestedText(p));
        }
    }
    terminal.write(aligned(rows, 0));
    return 0;
}

Result<int> showProcedure(const ProceduresCall& call, Terminal& terminal) {
    const auto found = findProcedure(call.subject, call.log);
    if (!found) {
        return tl::unexpected(found.error());
    }
    terminal.write(
        call.json    ? procedureJson(*found)
        : call.cells ? cellsText(found->procedure)
                     : procedureText(found->procedure));
    return 0;
}

Result<int> checkProcedureFile(const ProceduresCall& call, Terminal& terminal) {
    const auto text = readText(call.subject);
    if (!text) {
        return tl::unexpected(text.error());
    }
    const auto findings = checkProcedure(call.subject, *text);
    if (call.json) {
        terminal.write(findingsJson(call.subject, findings));
    } else if (findings.empty()) {
        terminal.write(onOneLine(call.subject) + ": sound\n");
    } else {
        for (const ProcedureFinding& finding : findings) {
            terminal.write(
                onOneLine(fmt::format(
                    "{}:{}: {}{}", call.subject, finding.line,
                    finding.field.empty() ? "" : finding.field + ": ", finding.reason)) +
                "\n");
        }
    }
    return findings.empty() ? 0 : 1;
}

} // namespace

void addProcedures(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<ProceduresCall>();
    CLI::App* list = root.add_subcommand("procedures", "The welding procedures that there are.");
    list->require_subcommand(0, 1);
    CLI::App* named = list->add_subcommand("list", "The same as without it.");
    CLI::App* show = list->add_subcommand("show", "One procedure, with the source of each value.");
    show->add_option("ID", call->subject, "a procedure's id, or a file")->required();
    show->add_flag("--cells", call->cells, "its values one by one, by the names to attest them by");
    for (CLI::App* words : {list, named, show}) {
        words->add_option("--log", call->log, "as they hold in this log's FILE");
    }
    CLI::App* check = list->add_subcommand("check", "Whether a procedure's file is sound.");
    check->add_option("FILE", call->subject, "a procedure's JSON file")->required();
    for (CLI::App* words : {list, named, show, check}) {
        words->add_flag("--json", call->json, "as JSON");
    }
    commands.push_back({list, [call, &terminal] { return listProcedures(*call, terminal); }});
    commands.push_back({named, [call, &terminal] { return listProcedures(*call, terminal); }});
    commands.push_back({show, [call, &terminal] { return showProcedure(*call, terminal); }});
    commands.push_back({check, [call, &terminal] { return checkProcedureFile(*call, terminal); }});
    addProcedureFacts(*list, commands, terminal);
}

} // namespace seamclock
