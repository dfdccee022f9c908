#include "core/procedure/procedure_codec.h"

#include "core/base/json_reader.h"
#include "core/base/plain_number.h"
#include "core/base/uuid.h"
#include "core/procedure/column_codec.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>
#include <functional>
#include <set>

namespace seamclock {

namespace {

constexpr const char* kFormat = "seamclock-procedure/1";

std::optional<Pressure> readPressureValue(JsonReader& reader, const char* key, Source& source) {
    auto child = reader.objectIf(key);
    if (!child) {
        return std::nullopt;
    }
    const double value = readNumber(*child, "value_N_mm2", plausiblePressure());
    source = readSource(*child);
    child->refuseUnknown();
    return newtonsPerSquareMillimetre(value);
}

PressureRule readPressure(JsonReader& root) {
    PressureRule rule;
    auto child = root.objectIf("pressure");
    if (!child) {
        return rule;
    }
    JsonReader& reader = *child;
    const auto optional = [&reader](const char* key) -> std::optional<Pressure> {
        const auto value = readNumberIf(reader, key, plausiblePressure());
        return value ? std::optional(newtonsPerSquareMillimetre(*value)) : std::nullopt;
    };
    rule.alignment = optional("alignment_N_mm2");
    rule.joining = optional("joining_N_mm2");
    rule.alignmentSource = readSource(reader);
    rule.joiningSource = rule.alignmentSource;
    rule.tolerance = readPressureValue(reader, "tolerance", rule.toleranceSource);
    rule.soakAim = readPressureValue(reader, "soak_aim", rule.soakAimSource);
    rule.soakMax = readPressureValue(reader, "soak_max", rule.soakMaxSource);
    if (auto toDrag = reader.objectIf("soak_to_drag")) {
        rule.soakToDrag = readSource(*toDrag);
        toDrag->refuseUnknown();
        if (rule.soakAim || rule.soakMax) {
            reader.complain(
                "soak_to_drag", "stands beside soak_aim or soak_max; only one can hold");
        }
    }
    reader.refuseUnknown();
    const auto inUnit = [](const std::optional<Pressure>& pressure) {
        return plainNumber(inNewtonsPerSquareMillimetre(*pressure));
    };
    if (rule.soakAim && rule.soakMax && *rule.soakAim > *rule.soakMax) {
        reader.complain(
            "soak_aim", inUnit(rule.soakAim) + " is above soak_max " + inUnit(rule.soakMax));
    }
    if (rule.soakMax && rule.joining && *rule.soakMax > *rule.joining) {
        reader.complain(
            "soak_max", inUnit(rule.soakMax) + " is above joining " + inUnit(rule.joining));
    }
    for (const auto& full : {rule.alignment, rule.joining}) {
        if (rule.tolerance && full && *rule.tolerance >= *full) {
            reader.complain(
                "tolerance", inUnit(rule.tolerance) + " is not below the pressure " + inUnit(full) +
                                 " it belongs to");
            break;
        }
    }
    return rule;
}

std::optional<PlateWindow> readPlate(JsonReader& root) {
    auto reader = root.objectIf("plate");
    if (!reader) {
        return std::nullopt;
    }
    PlateWindow plate;
    const Untroubled untroubled(*reader);
    const double min = readNumber(*reader, "min_C", plausiblePlate());
    const double max = readNumber(*reader, "max_C", plausiblePlate());
    const auto target = readNumberIf(*reader, "target_C", plausiblePlate());
    plate.source = readSource(*reader);
    reader->refuseUnknown();
    if (untroubled && min > max) {
        reader->complain("max_C", plainNumber(max) + " is below min_C " + plainNumber(min));
    }
    if (untroubled && target && (*target < min || *target > max)) {
        reader->complain(
            "target_C",
            plainNumber(*target) + " is outside " + plainNumber(min) + " to " + plainNumber(max));
    }
    plate.min = Temperature::celsius(min);
    plate.max = Temperature::celsius(max);
    if (target) {
        plate.target = Temperature::celsius(*target);
    }
    return plate;
}

void readSoakTolerance(JsonReader& root, Procedure& procedure) {
    JsonReader reader = root.object("soak_tolerance");
    procedure.soakLowPercent = reader.number("low_percent", -50, 0);
    procedure.soakHighPercent = reader.number("high_percent", 0, 100);
    procedure.soakTolerance = readSource(reader);
    reader.refuseUnknown();
}

// A correction that made a cooling time vanish would be no correction.
constexpr double kLeastFactor = 0.5;

void readPerKelvin(JsonReader& cooling, Procedure& procedure) {
    auto reader = cooling.objectIf("per_kelvin");
    if (!reader) {
        return;
    }
    PerKelvin rule;
    const Untroubled untroubled(*reader);
    rule.percent = reader->number("percent", 0.1, 10);
    const std::string when = reader->text("longer_when");
    rule.longerWhenWarmer = when == "warmer";
    if (!when.empty() && when != "warmer" && when != "colder") {
        reader->complain("longer_when", "\"" + when + "\" is not one of warmer, colder");
    }
    const double from = readNumber(*reader, "from_C", plausibleAmbient());
    const double to = readNumber(*reader, "to_C", plausibleAmbient());
    rule.from = Temperature::celsius(from);
    rule.to = Temperature::celsius(to);
    rule.source = readSource(*reader);
    reader->refuseUnknown();
    if (procedure.cooling.size() != 1 || !(procedure.cooling[0].from || procedure.cooling[0].to)) {
        reader->complain("", "needs one class with from_C or to_C, beyond which it corrects");
    } else if (untroubled) {
        const double reference = procedure.referenceAmbient.inCelsius();
        const double shorter = rule.longerWhenWarmer ? reference - from : to - reference;
        const double factor = 1 - rule.percent / 100 * shorter;
        if (from >= to) {
            reader->complain("to_C", plainNumber(to) + " is not above from_C " + plainNumber(from));
        } else if (factor < kLeastFactor) {
            reader->complain(
                "percent", plainNumber(rule.percent) + " would leave " +
                               plainNumber(std::round(factor * 1e3) / 10) +
                               " % of the cooling time; allowed at least " +
                               plainNumber(kLeastFactor * 100) + " %");
        }
    }
    procedure.perKelvin = std::move(rule);
}

void readHalfCooling(JsonReader& root, Procedure& procedure) {
    if (auto reader = root.objectIf("half_cooling")) {
        HalfCoolingRule rule;
        rule.from = millimetres(readNumber(*reader, "from_mm", plausibleThickness()));
        rule.source = readSource(*reader);
        reader->refuseUnknown();
        procedure.halfCooling = std::move(rule);
    }
}

void readCooling(JsonReader& root, Procedure& procedure) {
    auto cooling = root.objectIf("cooling_min");
    if (!cooling) {
        return;
    }
    const std::string rule = cooling->text("default_rule");
    if (rule == toString(BandRule::BandEnd)) {
        procedure.coolingRule = BandRule::BandEnd;
    } else if (rule != toString(BandRule::Line) && !rule.empty()) {
        cooling->complain("default_rule", "\"" + rule + "\" is not one of line, band-end");
    }
    auto classes = cooling->objects("classes");
    for (JsonReader& reader : classes) {
        CoolingClass each;
        const auto from = readNumberIf(reader, "from_C", plausibleAmbient());
        const auto to = readNumberIf(reader, "to_C", plausibleAmbient());
        each.minutes = readColumn(reader, plausibleCooling());
        reader.refuseUnknown();
        if (from && to && *from >= *to) {
            reader.complain(
                "to_C", plainNumber(*to) + " is not above from_C " + plainNumber(*from));
        }
        if (from) {
            each.from = Temperature::celsius(*from);
        }
        if (to) {
            each.to = Temperature::celsius(*to);
        }
        if (!procedure.cooling.empty() && procedure.cooling.back().to != each.from) {
            reader.complain("from_C", "does not begin where the class before it ends");
        } else if (!procedure.cooling.empty() && !each.from) {
            reader.complain("from_C", "is missing: only the first class may have no lower limit");
        }
        procedure.cooling.push_back(std::move(each));
    }
    if (classes.empty()) {
        cooling->complain("classes", "holds no class");
    }
    readPerKelvin(*cooling, procedure);
    cooling->refuseUnknown();
    if (procedure.coolingRule == BandRule::BandEnd && !procedure.coolingHasBands()) {
        cooling->complain("default_rule", "is band-end, but a class has no table");
    }
}

void readGaps(JsonReader& root, Procedure& procedure) {
    if (!root.has("gaps")) {
        return;
    }
    auto gaps = root.objects("gaps");
    for (JsonReader& reader : gaps) {
        KnownGap gap;
        gap.value = reader.text("value");
        const Range range = readRange(reader);
        gap.from = millimetres(range.from);
        gap.to = millimetres(range.to);
        gap.says = reader.text("says");
        reader.refuseUnknown();
        if (!gap.value.empty() &&
            std::find(kProcedureValues.begin(), kProcedureValues.end(), gap.value) ==
                kProcedureValues.end()) {
            std::string allowed;
            for (const char* name : kProcedureValues) {
                allowed += (allowed.empty() ? "" : ", ") + std::string(name);
            }
            reader.complain("value", "\"" + gap.value + "\" is not one of " + allowed);
        }
        procedure.gaps.push_back(std::move(gap));
    }
}

// A value that is not there must be declared as a gap, so that nothing is forgotten in silence.
class Coverage {
public:
    Coverage(JsonReader& root, const Procedure& procedure)
        : m_root(root), m_procedure(procedure), m_from(procedure.thinnest()),
          m_to(procedure.thickest()) {}

    void expect(bool present, const char* field, const char* name) {
        if (!present) {
            declared(field, name, m_from, m_to);
        }
    }

    void expect(const Column& column, const char* field, const char* name) {
        if (column.curves.empty() || column.curves.front().pieces.empty()) {
            return; // a finding already
        }
        const Length from = column.curves.front().pieces.front().from;
        const Length to = column.curves.front().pieces.back().to;
        if (from > m_from + micrometres(0.5)) {
            declared(field, name, m_from, from);
        }
        if (to < m_to - micrometres(0.5)) {
            declared(field, name, to, m_to);
        }
    }

    void expect(const std::optional<Column>& column, const char* field, const char* name) {
        if (column) {
            expect(*column, field, name);
        } else {
            expect(false, field, name);
        }
    }

private:
    void declared(const char* field, const char* name, Length from, Length to) {
        for (const KnownGap& gap : m_procedure.gaps) {
            if (gap.value == name && gap.from <= from + micrometres(0.5) &&
                gap.to >= to - micrometres(0.5)) {
                return;
            }
        }
        m_root.complain(
            field, "has no value from " + plainNumber(inMillimetres(from)) + " to " +
                       plainNumber(inMillimetres(to)) + " mm, and gaps does not declare " + name +
                       " there");
    }

    JsonReader& m_root;
    const Procedure& m_procedure;
    Length m_from;
    Length m_to;
};

void checkCoverage(JsonReader& root, const Procedure& procedure) {
    if (!(procedure.thickest() > procedure.thinnest())) {
        root.complain("", "no column has a value for any thickness");
        return;
    }
    Coverage coverage(root, procedure);
    const PressureRule& pressure = procedure.pressure;
    coverage.expect(pressure.alignment.has_value(), "pressure", "pressure_N_mm2.alignment");
    coverage.expect(pressure.joining.has_value(), "pressure", "pressure_N_mm2.joining");
    coverage.expect(pressure.tolerance.has_value(), "pressure", "pressure_N_mm2.tolerance");
    if (!pressure.soakToDrag) {
        coverage.expect(pressure.soakAim.has_value(), "pressure", "pressure_N_mm2.soak_aim");
        coverage.expect(pressure.soakMax.has_value(), "pressure", "pressure_N_mm2.soak_max");
    }
    coverage.expect(procedure.plate.has_value(), "plate", "heated_tool_C");
    coverage.expect(procedure.bead, "bead_mm", "bead_min_mm");
    coverage.expect(procedure.soak, "soak_s", "soak_s");
    coverage.expect(procedure.changeover, "changeover_s", "changeover_max_s");
    coverage.expect(procedure.buildUp, "build_up_s", "build_up_s");
    coverage.expect(!procedure.cooling.empty(), "cooling_min", "cooling_min");
    for (const CoolingClass& each : procedure.cooling) {
        coverage.expect(each.minutes, "cooling_min", "cooling_min");
    }
}

bool isIdentifier(const std::string& id) {
    return !id.empty() && std::all_of(id.begin(), id.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    });
}

Procedure readAll(JsonReader& root) {
    Procedure procedure;
    if (!root.findings().empty()) {
        return procedure; // not even an object
    }
    const std::string format = root.text("format");
    if (!format.empty() && format != kFormat) {
        root.complain("format", "\"" + format + "\" is not " + kFormat);
    }
    procedure.id = root.text("id");
    if (!procedure.id.empty() && !isIdentifier(procedure.id)) {
        root.complain(
            "id", "\"" + procedure.id + "\" holds more than small letters, digits and hyphens");
    }
    procedure.title = root.text("title");
    procedure.material = root.text("material");
    procedure.standard = root.text("standard");
    procedure.edition = root.text("edition");
    JsonReader ambient = root.object("reference_ambient");
    procedure.referenceAmbient =
        Temperature::celsius(readNumber(ambient, "value_C", plausibleAmbient()));
    procedure.referenceAmbientSource = readSource(ambient);
    ambient.refuseUnknown();
    procedure.pressure = readPressure(root);
    procedure.plate = readPlate(root);
    procedure.bead = readColumnIf(root, "bead_mm", plausibleBead());
    procedure.soak = readColumnIf(root, "soak_s", plausibleSoak());
    readSoakTolerance(root, procedure);
    procedure.changeover = readColumnIf(root, "changeover_s", plausibleChangeover());
    procedure.buildUp = readColumnIf(root, "build_up_s", plausibleBuildUp());
    readCooling(root, procedure);
    readHalfCooling(root, procedure);
    readGaps(root, procedure);
    if (root.has("notes")) {
        procedure.notes = root.texts("notes");
    }
    root.refuseUnknown();
    checkCoverage(root, procedure);
    return procedure;
}

} // namespace

std::vector<ProcedureFinding> checkProcedure(std::string_view name, std::string_view text) {
    const auto scanned = scanJson(name, text);
    if (!scanned) {
        return {ProcedureFinding{scanned.error().line, "", scanned.error().reason}};
    }
    JsonReader root(*scanned);
    readAll(root);
    std::vector<ProcedureFinding> findings;
    for (const JsonReader::Finding& each : root.findings()) {
        findings.push_back(ProcedureFinding{each.line, each.field, each.reason});
    }
    std::stable_sort(
        findings.begin(), findings.end(),
        [](const ProcedureFinding& a, const ProcedureFinding& b) { return a.line < b.line; });
    return findings;
}

namespace {

Result<ProcedureDocument> document(const JsonText& text) {
    JsonReader root(text);
    Procedure procedure = readAll(root);
    if (const auto verdict = root.verdict(); !verdict) {
        return tl::unexpected<Error>(verdict.error());
    }
    return ProcedureDocument{std::move(procedure), text.text, sha256Hex(text.text)};
}

} // namespace

Result<ProcedureDocument> readProcedure(std::string_view name, std::string_view text) {
    return parseJson(name, text).and_then(document);
}

Result<ProcedureDocument> readProcedureFile(const std::string& path) {
    return parseJsonFile(path).and_then(document);
}

Result<std::vector<ProcedureDocument>> readProcedureFolder(const std::string& folder) {
    std::error_code trouble;
    std::vector<std::string> paths;
    for (std::filesystem::directory_iterator file(folder, trouble), end; !trouble && file != end;
         file.increment(trouble)) {
        // The fields' own description lies beside the procedures.
        const std::string name = file->path().filename().string();
        const bool isSchema = name.find(".schema.") != std::string::npos;
        if (file->path().extension() == ".json" && !isSchema) {
            paths.push_back(file->path().string());
        }
    }
    if (trouble) {
        return fail(ErrorCode::Unreadable, folder + ": no such folder, or not readable");
    }
    if (paths.empty()) {
        return fail(ErrorCode::Missing, folder + ": holds no procedure (*.json)");
    }
    std::sort(paths.begin(), paths.end());
    std::vector<ProcedureDocument> documents;
    std::set<std::string> ids;
    for (const std::string& path : paths) {
        auto read = readProcedureFile(path);
        if (!read) {
            return tl::unexpected<Error>(read.error());
        }
        if (!ids.insert(read->procedure.id).second) {
            return fail(
                ErrorCode::Conflict,
                path + ": the id \"" + read->procedure.id + "\" is another file's too");
        }
        documents.push_back(std::move(*read));
    }
    std::sort(
        documents.begin(), documents.end(),
        [](const ProcedureDocument& a, const ProcedureDocument& b) {
            return a.procedure.id < b.procedure.id;
        });
    return documents;
}

} // namespace seamclock
