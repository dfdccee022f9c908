#include "core/procedure/column_codec.h"

#include "core/base/plain_number.h"

#include <cmath>
#include <string>
#include <vector>

namespace seamclock {

namespace {

/// Another unit for the same kind of value: ours = (theirs − zero) · factor.
struct OtherUnit {
    const char* name;
    double factor;
    double zero = 0;
};

/// `usual`: what such a value is as a rule; a number that would be one in another unit was surely
/// meant so.
Plausible plausibleIn(
    const char* unit, double low, double high, double usualLow, double usualHigh,
    const std::vector<OtherUnit>& others) {
    const std::string ours = unit;
    return {low, high, [=](double value) {
                for (const OtherUnit& other : others) {
                    const double meant = (value - other.zero) * other.factor;
                    if (meant >= usualLow && meant <= usualHigh) {
                        return " " + ours + "; " + plainNumber(value) + " " + other.name +
                               " would be " + plainNumber(std::round(meant * 1e3) / 1e3) + " " +
                               ours;
                    }
                }
                return " " + ours;
            }};
}

constexpr double kKelvinPerFahrenheit = 1 / 1.8;
constexpr double kFreezingF = 32;
constexpr double kFreezingK = 273.15;

constexpr double kSameMm = 1e-6;    // two thicknesses a nanometre apart are one
constexpr double kSameValue = 1e-9; // of a value of order 1 to 1000: far below any printed digit

std::optional<Standing> standingOf(const std::string& text) {
    for (const Standing each :
         {Standing::Seen, Standing::Memory, Standing::CommonPractice, Standing::Derived}) {
        if (toString(each) == text) {
            return each;
        }
    }
    return std::nullopt;
}

} // namespace

const Plausible& plausibleThickness() {
    static const Plausible kMm = plausibleIn("mm", 0.1, 300, 0.5, 150, {{"µm", 1e-3}});
    return kMm;
}
const Plausible& plausiblePressure() {
    static const Plausible kNMm2 = plausibleIn(
        "N/mm²", 0.001, 2, 0.005, 1, {{"psi", 0.006894757}, {"kPa", 1e-3}, {"Pa", 1e-6}});
    return kNMm2;
}
const Plausible& plausiblePlate() {
    static const Plausible kCelsius =
        plausibleIn("°C", 100, 320, 150, 300, {{"°F", kKelvinPerFahrenheit, kFreezingF}});
    return kCelsius;
}
const Plausible& plausibleAmbient() {
    static const Plausible kCelsius = plausibleIn(
        "°C", -40, 60, -20, 50, {{"°F", kKelvinPerFahrenheit, kFreezingF}, {"K", 1, kFreezingK}});
    return kCelsius;
}
const Plausible& plausibleBead() {
    static const Plausible kMm = plausibleIn("mm", 0.1, 20, 0.3, 6, {{"in", 25.4}, {"µm", 1e-3}});
    return kMm;
}
const Plausible& plausibleSoak() {
    static const Plausible kSeconds =
        plausibleIn("s", 5, 7200, 15, 1200, {{"min", 60}, {"ms", 1e-3}});
    return kSeconds;
}
const Plausible& plausibleChangeover() {
    static const Plausible kSeconds = plausibleIn("s", 1, 120, 2, 60, {{"min", 60}, {"ms", 1e-3}});
    return kSeconds;
}
const Plausible& plausibleBuildUp() {
    static const Plausible kSeconds = plausibleIn("s", 1, 600, 2, 120, {{"min", 60}, {"ms", 1e-3}});
    return kSeconds;
}
const Plausible& plausibleCooling() {
    static const Plausible kMinutes =
        plausibleIn("min", 0.5, 300, 2, 200, {{"s", 1 / 60.0}, {"h", 60}});
    return kMinutes;
}

double readNumber(JsonReader& reader, const char* key, const Plausible& plausible) {
    return reader.number(key, plausible.low, plausible.high, plausible.aside);
}

std::optional<double>
readNumberIf(JsonReader& reader, const char* key, const Plausible& plausible) {
    return reader.numberIf(key, plausible.low, plausible.high, plausible.aside);
}

Source readSource(JsonReader& reader) {
    Source source;
    source.text = reader.text("source");
    const std::string standing = reader.text("standing");
    if (const auto known = standingOf(standing)) {
        source.standing = *known;
    } else if (standing == toString(Standing::Attested)) {
        reader.complain(
            "standing", "\"attested\" is what a foreman says in a log, with his PIN; a file says "
                        "seen, memory, common_practice or derived");
    } else if (!standing.empty()) {
        reader.complain(
            "standing",
            "\"" + standing + "\" is not one of seen, memory, common_practice, derived");
    }
    return source;
}

Range readRange(JsonReader& reader) {
    const Untroubled untroubled(reader);
    const double from = readNumber(reader, "from_mm", plausibleThickness());
    const double to = readNumber(reader, "to_mm", plausibleThickness());
    if (untroubled && to - from < kSameMm) {
        reader.complain("to_mm", plainNumber(to) + " is not above from_mm " + plainNumber(from));
    }
    return {from, to};
}

namespace {

Piece readRow(JsonReader& reader, const Plausible& plausible) {
    const Range range = readRange(reader);
    double lower = 0;
    double upper = 0;
    if (reader.has("value")) {
        lower = upper = readNumber(reader, "value", plausible);
    } else {
        lower = readNumber(reader, "lower", plausible);
        upper = readNumber(reader, "upper", plausible);
    }
    reader.refuseUnknown();
    Piece piece{millimetres(range.from), millimetres(range.to), {lower}};
    if (lower != upper && range.to > range.from) {
        const double slope = (upper - lower) / (range.to - range.from);
        piece.coefficients = {lower - slope * range.from, slope};
    }
    return piece;
}

Piece readFormulaPiece(JsonReader& reader, const Plausible& plausible) {
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
                                    plainNumber(plausible.high) + plausible.aside(value));
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
    JsonReader& reader, const char* key, bool isTable, const Plausible& plausible, bool mayFall) {
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

} // namespace

Column readColumn(JsonReader& reader, const Plausible& plausible) {
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

std::optional<Column>
readColumnIf(JsonReader& reader, const char* key, const Plausible& plausible) {
    auto child = reader.objectIf(key);
    if (!child) {
        return std::nullopt;
    }
    Column column = readColumn(*child, plausible);
    child->refuseUnknown();
    return column;
}

} // namespace seamclock
