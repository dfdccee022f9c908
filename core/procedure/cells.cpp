#include "core/procedure/cells.h"

#include "core/base/plain_number.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <functional>

namespace seamclock {

namespace {

/// One value of a procedure, and where an attestation of it goes.
struct Place {
    Cell cell;
    std::function<void(Source)> attest;
};
using Places = std::vector<Place>;

std::string celsius(Temperature temperature) {
    return plainNumber(temperature.inCelsius());
}

std::string millimetre(Length length) {
    return plainNumber(inMillimetres(length));
}

/// Every digit that tells two apart; a table's values are short, a parabola's factors need not be.
std::string exactNumber(double value) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value);
    return std::string(text.data(), end.ptr);
}

std::string contentOf(const Piece& piece, bool isTable, const std::string& unit) {
    if (isTable) {
        const std::string lower = plainNumber(piece.at(piece.from));
        const std::string upper = plainNumber(piece.at(piece.to));
        return (lower == upper ? lower : lower + " to " + upper) + " " + unit;
    }
    std::string text;
    for (std::size_t i = 0; i < piece.coefficients.size(); ++i) {
        const std::string power = i == 0 ? "" : i == 1 ? " s" : " s^" + std::to_string(i);
        text += (i == 0 ? "" : " + ") + exactNumber(piece.coefficients[i]) + power;
    }
    return text + " " + unit;
}

void placesOf(Column& column, const std::string& name, const std::string& unit, Places& out) {
    for (Curve& curve : column.curves) {
        for (Piece& piece : curve.pieces) {
            out.push_back(
                {{name + (curve.isTable ? ".table[" : ".formula[") + millimetre(piece.from) + ".." +
                      millimetre(piece.to) + "]",
                  contentOf(piece, curve.isTable, unit), piece.attested.value_or(column.source)},
                 [&piece](Source source) { piece.attested = std::move(source); }});
        }
    }
}

void placesOf(PressureRule& rule, Places& out) {
    const auto add =
        [&out](const char* name, const std::optional<Pressure>& pressure, Source& source) {
            if (pressure) {
                out.push_back(
                    {{std::string("pressure.") + name,
                      plainNumber(inNewtonsPerSquareMillimetre(*pressure)) + " N/mm²", source},
                     [&source](Source attested) { source = std::move(attested); }});
            }
        };
    add("alignment", rule.alignment, rule.alignmentSource);
    add("joining", rule.joining, rule.joiningSource);
    add("tolerance", rule.tolerance, rule.toleranceSource);
    add("soak_aim", rule.soakAim, rule.soakAimSource);
    add("soak_max", rule.soakMax, rule.soakMaxSource);
    if (rule.soakToDrag) {
        Source& source = *rule.soakToDrag;
        out.push_back(
            {{"pressure.soak_to_drag", "from zero to drag", source},
             [&source](Source attested) { source = std::move(attested); }});
    }
}

/// "15..25", "..15", "25.."; "" for a class without limits.
std::string rangeOf(const CoolingClass& one) {
    if (!one.from && !one.to) {
        return "";
    }
    return "[" + (one.from ? celsius(*one.from) : "") + ".." + (one.to ? celsius(*one.to) : "") +
           "]";
}

/// They point into the procedure.
Places placesOf(Procedure& procedure) {
    Places out;
    const auto add = [&out](const char* name, std::string content, Source& source) {
        out.push_back({{name, std::move(content), source}, [&source](Source attested) {
                           source = std::move(attested);
                       }});
    };
    add("reference_ambient", celsius(procedure.referenceAmbient) + " °C",
        procedure.referenceAmbientSource);
    placesOf(procedure.pressure, out);
    if (procedure.plate) {
        PlateWindow& plate = *procedure.plate;
        add("plate",
            celsius(plate.min) + " to " + celsius(plate.max) + " °C" +
                (plate.target ? ", aim " + celsius(*plate.target) + " °C" : ""),
            plate.source);
    }
    const auto addColumn =
        [&out](std::optional<Column>& column, const char* name, const char* unit) {
            if (column) {
                placesOf(*column, name, unit, out);
            }
        };
    addColumn(procedure.bead, "bead_mm", "mm");
    addColumn(procedure.soak, "soak_s", "s");
    add("soak_tolerance",
        plainNumber(procedure.soakLowPercent) + " to " + plainNumber(procedure.soakHighPercent) +
            " %",
        procedure.soakTolerance);
    addColumn(procedure.changeover, "changeover_s", "s");
    addColumn(procedure.buildUp, "build_up_s", "s");
    for (CoolingClass& each : procedure.cooling) {
        placesOf(each.minutes, "cooling_min" + rangeOf(each), "min", out);
    }
    if (procedure.perKelvin) {
        PerKelvin& rule = *procedure.perKelvin;
        add("cooling_min.per_kelvin",
            plainNumber(rule.percent) + " % a kelvin, longer when " +
                (rule.longerWhenWarmer ? "warmer" : "colder") + ", " + celsius(rule.from) + " to " +
                celsius(rule.to) + " °C",
            rule.source);
    }
    if (procedure.halfCooling) {
        add("half_cooling", "from " + millimetre(procedure.halfCooling->from) + " mm",
            procedure.halfCooling->source);
    }
    return out;
}

} // namespace

std::vector<Cell> cellsOf(const Procedure& procedure) {
    Procedure copy = procedure;
    std::vector<Cell> cells;
    for (Place& place : placesOf(copy)) {
        cells.push_back(std::move(place.cell));
    }
    return cells;
}

Procedure attested(Procedure procedure, const std::vector<AttestedCells>& said) {
    for (const Place& place : placesOf(procedure)) {
        const AttestedCells* by = nullptr;
        for (const AttestedCells& each : said) {
            const bool same =
                std::any_of(each.cells.begin(), each.cells.end(), [&place](const Cell& cell) {
                    return cell.name == place.cell.name && cell.content == place.cell.content;
                });
            by = same ? &each : by;
        }
        if (by != nullptr) {
            place.attest(
                {place.cell.source.text + "; attested by " + by->by + ", " + by->date +
                     ", against edition " + by->edition,
                 Standing::Attested});
        }
    }
    return procedure;
}

} // namespace seamclock
