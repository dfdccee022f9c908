#include "core/procedure/procedure_codec.h"

#include "core/base/json_reader.h"
#include "core/base/plain_number.h"
#include "core/base/uuid.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>
#include <functional>
#include <set>

namespace seamclock {

namespace {

constexpr const char* kFormat = "seamclock-procedure/1";

// What a value can plausibly be in its unit: wide enough for any sheet and plastic, narrow enough
// to catch a value in another unit (a plate in degrees Fahrenheit, a cooling in seconds, a pressure
// in bar or pascal).
struct Plausible {
    double low;
    double high;
};
constexpr Plausible kThicknessMm{0.1, 300};
constexpr Plausible kPressure{0.001, 2}; // [N/mm²]
constexpr Plausible kPlateC{100, 320};
constexpr Plausible kAmbientC{-40, 60};
constexpr Plausible kBeadMm{0.1, 20};
constexpr Plausible kSoakS{5, 7200};
constexpr Plausible kChangeoverS{1, 120};
constexpr Plausible kBuildUpS{1, 600};
constexpr Plausible kCoolingMin{0.5, 300};

// The plan's names of the values that a procedure may lack.
constexpr std::array<const char*, 11> kValueNames{
    "pressure_N_mm2.alignment",
    "pressure_N_mm2.joining",
    "pressure_N_mm2.tolerance",
    "pressure_N_mm2.soak_aim",
    "pressure_N_mm2.soak_max",
    "heated_tool_C",
    "bead_min_mm",
    "soak_s",
    "changeover_max_s",
    "build_up_s",
    "cooling_min"};

constexpr double kSameMm = 1e-6;    // two thicknesses a nanometre apart are one
constexpr double kSameValue = 1e-9; // of a value of order 1 to 1000: far below any printed digit

std::optional<Standing> standingOf(const std::string& text) {
    for (const Standing each :
         {Standing::Seen, Standing::Memory, Standing::CommonPractice, Standing::Derived,
          Standing::Attested}) {
        if (toString(each) == text) {
            return each;
        }
    }
    return std::nullopt;
}

Source readSource(JsonReader& reader) {
    Source source;
    source.text = reader.text("source");
    const std::string standing = reader.text("standing");
    if (const auto known = standingOf(standing)) {
        source.standing = *known;
    } else if (!standing.empty()) {
        reader.complain(
            "standing",
            "\"" + standing + "\" is not one of seen, memory, common_practice, derived, attested");
    }
    return source;
}

// A value that was refused is replaced by the end of its range; nothing more is to be concluded
// from it.
class Untroubled {
public:
    explicit Untroubled(const JsonReader& reader)
        : m_reader(reader), m_before(reader.findings().size()) {}
    explicit operator bool() const { return m_reader.findings().size() == m_before; }

private:
    const JsonReader& m_reader;
    std::size_t m_before;
};

struct Range {
    double from;
    double to;
};

// Reads from_mm and to_mm; complains of an empty or reversed range.
Range readRange(JsonReader& reader) {
    const Untroubled untroubled(reader);
    const double from = reader.number("from_mm", kThicknessMm.low, kThicknessMm.high);
    const double to = reader.number("to_mm", kThicknessMm.low, kThicknessMm.high);
    if (untroubled && to - from < kSameMm) {
        reader.complain("to_mm", plainNumber(to) + " is not above from_mm " + plainNumber(from));
    }
    return {from, to};
}

Piece readRow(JsonReader& reader, Plausible plausible) {
    const Range range = readRange(reader);
    double lower = 0;
    double upper = 0;
    if (reader.has("value")) {
        lower = upper = reader.number("value", plausible.low, plausible.high);
    } else {
        lower = reader.number("lower", plausible.low, plausible.high);
        upper = reader.number("upper", plausible.low, plausible.high);
    }
    reader.refuseUnknown();
    Piece piece{millimetres(range.from), millimetres(range.to), {lower}};
    if (lower != upper && range.to > range.from) {
        const double slope = (upper - lower) / (range.to - range.from);
        piece.coefficients = {lower - slope * range.from, slope};
    }
    return piece;
}

Piece readFormulaPiece(JsonReader& reader, Plausible plausible) {
    constexpr std::size_t kMostCoefficients = 6;
    const Range range = readRange(reader);
    Piece piece{millimetres(range.from), millimetres(range.to), reader.numbers("coefficients")};
    reader.refuseUnknown();
    if (piece.coefficients.empty() || piece.coefficients.size() > kMostCoefficients) {
        reader.complain(
            "coefficients", std::to_string(piece.coefficients.size()) +
                                " coefficients are outside 1 to " +
                                std::to_string(kMostCoefficients));
        return piece;
    }
    for (const Length end : {piece.from, piece.to}) {
        const double value = piece.at(end);
        if (!(value >= plausible.low && value <= plausible.high)) {
            reader.complain(
                "coefficients", "give " + plainNumber(value) + " at " +
                                    plainNumber(inMillimetres(end)) + " mm, outside " +
                                    plainNumber(plausible.low) + " to " +
                                    plainNumber(plausible.high));
            return piece;
        }
    }
    return piece;
}

// Where a piece falls, looked at in a hundred steps: pieces are lines or gentle parabolas.
std::optional<double> fallsAt(const Piece& piece) {
    constexpr int kSteps = 100;
    const double from = inMillimetres(piece.from);
    const double step = (inMillimetres(piece.to) - from) / kSteps;
    double last = piece.at(piece.from);
    for (int i = 1; i <= kSteps; ++i) {
        const double s = from + step * i;
        const double value = piece.at(millimetres(s));
        if (value < last - kSameValue) {
            return s;
        }
        last = value;
    }
    return std::nullopt;
}

void checkOrder(std::vector<JsonReader>& readers, const std::vector<Piece>& pieces, bool mayFall) {
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (i > 0) {
            const double ended = inMillimetres(pieces[i - 1].to);
            const double begins = inMillimetres(pieces[i].from);
            if (begins > ended + kSameMm) {
                readers[i].complain(
                    "from_mm", plainNumber(begins) + " leaves a gap after " + plainNumber(ended));
            } else if (begins < ended - kSameMm) {
                readers[i].complain(
                    "from_mm",
                    plainNumber(begins) + " overlaps the row that ends at " + plainNumber(ended));
            }
        }
        if (mayFall || pieces[i].coefficients.empty()) {
            continue;
        }
        if (const auto where = fallsAt(pieces[i])) {
            readers[i].complain(
                "", "the value falls before " + plainNumber(*where) +
                        " mm; a source that says so needs \"falls_by_declaration\": true");
        } else if (
            // A row before it that was refused has no coefficients, is nought, and can't be fallen
            // from.
            i > 0 &&
            pieces[i].at(pieces[i].from) < pieces[i - 1].at(pieces[i - 1].to) - kSameValue) {
            readers[i].complain(
                "", "the value jumps down from " + plainNumber(pieces[i - 1].at(pieces[i - 1].to)) +
                        " to " + plainNumber(pieces[i].at(pieces[i].from)) + " at " +
                        plainNumber(inMillimetres(pieces[i].from)) +
                        " mm; a source that says so needs \"falls_by_declaration\": true");
        }
    }
}

Curve readCurve(
    JsonReader& reader, const char* key, bool isTable, Plausible plausible, bool mayFall) {
    Curve curve;
    curve.isTable = isTable;
    const Untroubled untroubled(reader);
    auto rows = reader.objects(key);
    for (JsonReader& row : rows) {
        curve.pieces.push_back(
            isTable ? readRow(row, plausible) : readFormulaPiece(row, plausible));
    }
    if (rows.empty()) {
        reader.complain(key, "holds no rows");
    }
    if (untroubled) {
        checkOrder(rows, curve.pieces, mayFall);
    }
    return curve;
}

// `reader` stands on an object with a table, a formula or both, and their source.
Column readColumn(JsonReader& reader, Plausible plausible) {
    Column column;
    column.fallsByDeclaration = reader.flagIf("falls_by_declaration").value_or(false);
    column.source = readSource(reader);
    if (reader.has("table")) {
        column.curves.push_back(
            readCurve(reader, "table", true, plausible, column.fallsByDeclaration));
    }
    if (reader.has("formula")) {
        column.curves.push_back(
            readCurve(reader, "formula", false, plausible, column.fallsByDeclaration));
    }
    if (column.curves.empty()) {
        reader.complain("", "holds neither a table nor a formula");
    }
    if (column.curves.size() == 2 && !column.curves[0].pieces.empty() &&
        !column.curves[1].pieces.empty()) {
        const auto& table = column.curves[0].pieces;
        const auto& formula = column.curves[1].pieces;
        if (std::fabs(inMillimetres(table.front().from - formula.front().from)) > kSameMm ||
            std::fabs(inMillimetres(table.back().to - formula.back().to)) > kSameMm) {
            reader.complain("formula", "does not cover the same thicknesses as the table");
        }
    }
    return column;
}

std::optional<Column> readColumnIf(JsonReader& reader, const char* key, Plausible plausible) {
    auto child = reader.objectIf(key);
    if (!child) {
        return std::nullopt;
    }
    Column column = readColumn(*child, plausible);
    child->refuseUnknown();
    return column;
}

std::optional<Pressure> readPressureValue(JsonReader& reader, const char* key, Source& source) {
    auto child = reader.objectIf(key);
    if (!child) {
        return std::nullopt;
    }
    const double value = child->number("value_N_mm2", kPressure.low, kPressure.high);
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
        const auto value = reader.numberIf(key, kPressure.low, kPressure.high);
        return value ? std::optional(newtonsPerSquareMillimetre(*value)) : std::nullopt;
    };
    rule.alignment = optional("alignment_N_mm2");
    rule.joining = optional("joining_N_mm2");
    rule.source = readSource(reader);
    rule.tolerance = readPressureValue(reader, "tolerance", rule.toleranceSource);
    rule.soakAim = readPressureValue(reader, "soak_aim", rule.soakAimSource);
    rule.soakMax = readPressureValue(reader, "soak_max", rule.soakMaxSource);
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
    const double min = reader->number("min_C", kPlateC.low, kPlateC.high);
    const double max = reader->number("max_C", kPlateC.low, kPlateC.high);
    const auto target = reader->numberIf("target_C", kPlateC.low, kPlateC.high);
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
        const auto from = reader.numberIf("from_C", kAmbientC.low, kAmbientC.high);
        const auto to = reader.numberIf("to_C", kAmbientC.low, kAmbientC.high);
        each.minutes = readColumn(reader, kCoolingMin);
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
            std::find(kValueNames.begin(), kValueNames.end(), gap.value) == kValueNames.end()) {
            std::string allowed;
            for (const char* name : kValueNames) {
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
    coverage.expect(pressure.soakAim.has_value(), "pressure", "pressure_N_mm2.soak_aim");
    coverage.expect(pressure.soakMax.has_value(), "pressure", "pressure_N_mm2.soak_max");
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
        Temperature::celsius(ambient.number("value_C", kAmbientC.low, kAmbientC.high));
    procedure.referenceAmbientSource = readSource(ambient);
    ambient.refuseUnknown();
    procedure.pressure = readPressure(root);
    procedure.plate = readPlate(root);
    procedure.bead = readColumnIf(root, "bead_mm", kBeadMm);
    procedure.soak = readColumnIf(root, "soak_s", kSoakS);
    readSoakTolerance(root, procedure);
    procedure.changeover = readColumnIf(root, "changeover_s", kChangeoverS);
    procedure.buildUp = readColumnIf(root, "build_up_s", kBuildUpS);
    readCooling(root, procedure);
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
        if (file->path().extension() == ".json") {
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
