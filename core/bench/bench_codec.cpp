#include "core/bench/bench_codec.h"

#include "core/base/json_reader.h"
#include "core/base/plain_number.h"
#include "core/base/uuid.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>

namespace seamclock {

namespace {

constexpr const char* kFormat = "seamclock-bench/1";

/// In the order in which they are most often done; a bench has its own, but the sheet always comes
/// out last.
constexpr std::array<const char*, 4> kReleaseSteps{
    "clamps_eased", "bars_opened", "spring_off", "sheet_out"};

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

std::string allowedSteps() {
    std::string out;
    for (const char* step : kReleaseSteps) {
        out += (out.empty() ? "" : ", ") + std::string(step);
    }
    return out;
}

bool isDate(const std::string& text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
        return false;
    }
    for (const std::size_t i : {0U, 1U, 2U, 3U, 5U, 6U, 8U, 9U}) {
        if (text[i] < '0' || text[i] > '9') {
            return false;
        }
    }
    const std::chrono::year_month_day date{
        std::chrono::year{std::stoi(text.substr(0, 4))},
        std::chrono::month{static_cast<unsigned>(std::stoi(text.substr(5, 2)))},
        std::chrono::day{static_cast<unsigned>(std::stoi(text.substr(8, 2)))}};
    return date.ok();
}

// Readings are stored in thousandths, so what the file says must be whole thousandths.
std::int64_t thousandths(JsonReader& reader, const char* key, double low, double high) {
    constexpr double kNoise = 1e-6; // of a thousandth: what binary fractions leave of a decimal
    const double milli = reader.number(key, low, high) * 1e3;
    const double whole = std::round(milli);
    if (std::fabs(milli - whole) > kNoise) {
        reader.complain(key, plainNumber(milli / 1e3) + " is finer than a thousandth of the unit");
    }
    return static_cast<std::int64_t>(whole);
}

void readSprings(JsonReader& reader, SpringScale& scale) {
    auto springs = reader.objects("springs");
    for (JsonReader& spring : springs) {
        scale.ratePerUnit.push_back(newtons(spring.number("rate_N_per_unit", 0.1, 100000)));
        spring.refuseUnknown();
    }
    constexpr std::size_t kMostSprings = 4;
    if (reader.has("springs") && (springs.empty() || springs.size() > kMostSprings)) {
        reader.complain(
            "springs", std::to_string(springs.size()) + " springs are outside 1 to " +
                           std::to_string(kMostSprings));
    }
    scale.preload = newtons(reader.number("preload_N", 0, 10000));
}

// Zero and rate of a calibrated scale have one home, its points.
void refuseSprings(JsonReader& reader) {
    for (const char* key : {"zero", "springs"}) {
        if (reader.has(key)) {
            reader.ignore(key);
            reader.complain(key, "comes from the calibration's points; leave it out");
        }
    }
    if (const auto preload = reader.numberIf("preload_N", 0, 10000); preload && *preload != 0) {
        reader.complain(
            "preload_N", plainNumber(*preload) +
                             " N is lost before the load cell shows anything: with calibration "
                             "points it is 0 or left out");
    }
}

void checkEnd(JsonReader& scale, const SpringScale& read) {
    if (read.maxMilli < read.zeroMilli + read.divisionMilli) {
        scale.complain(
            "end", plainNumber(static_cast<double>(read.maxMilli) / 1e3) +
                       " is not a division above zero " +
                       plainNumber(static_cast<double>(read.zeroMilli) / 1e3));
    }
}

std::vector<CalibrationPoint> readPoints(JsonReader& calibration) {
    std::vector<CalibrationPoint> points;
    auto readers = calibration.objects("points");
    if (readers.size() > kMostCalibrationPoints) {
        calibration.complain(
            "points", std::to_string(readers.size()) + " points are more than " +
                          std::to_string(kMostCalibrationPoints));
        return points;
    }
    for (JsonReader& reader : readers) {
        CalibrationPoint point;
        point.reading = reader.number("reading", kLeastReading, kGreatestReading);
        point.force = reader.number("force_N", kLeastCellForce, kGreatestCellForce);
        reader.refuseUnknown();
        points.push_back(point);
    }
    return points;
}

// A fit that can't be had, or that isn't straight, is a finding on the points.
std::optional<ScaleFit>
fitOf(JsonReader& calibration, const std::vector<CalibrationPoint>& points, int farthestZero) {
    auto fit = fitPoints(points);
    if (!fit) {
        calibration.complain("points", fit.error().detail);
        return std::nullopt;
    }
    if (const auto straight = straightEnough(*fit); !straight) {
        calibration.complain("points", straight.error().detail);
        return std::nullopt;
    }
    if (!(std::fabs(fit->zero) <= farthestZero)) {
        calibration.complain(
            "points", "the line has no force at a reading of " + plainNumber(fit->zero) +
                          ", which is outside -" + std::to_string(farthestZero) + " to " +
                          std::to_string(farthestZero));
        return std::nullopt;
    }
    return std::move(*fit);
}

void readDates(JsonReader& reader, CalibrationNote& note) {
    bool dated = true;
    for (const auto& [key, value] :
         {std::pair{"done_on", note.doneOn}, std::pair{"due_on", note.dueOn}}) {
        if (!isDate(value)) {
            dated = false;
            if (!value.empty()) {
                reader.complain(key, "\"" + value + "\" is not a date like 2030-01-07");
            }
        }
    }
    if (dated && note.dueOn < note.doneOn) {
        reader.complain("due_on", note.dueOn + " is before done_on " + note.doneOn);
    }
}

// Scale and calibration are read together, as either may hold the rate.
void readScaleAndCalibration(JsonReader& root, Bench& bench) {
    constexpr int kFarthestZero = 1000;
    SpringScale& scale = bench.scale;
    JsonReader reader = root.object("scale");
    const Untroubled untroubled(reader);
    scale.unit = reader.text("unit");
    if (const auto count = reader.integerIf("count", 1, 2)) {
        scale.count = static_cast<int>(*count);
    }
    scale.divisionMilli = thousandths(reader, "division", 0.001, 1000);
    scale.maxMilli = thousandths(reader, "end", 0.001, 100000);
    if (const auto rate = reader.numberIf("rate_N_per_mm", 0.1, 100000)) {
        scale.ratePerMm = newtons(*rate);
        if (scale.unit == "mm") {
            reader.complain(
                "rate_N_per_mm", "is the rate itself where the unit is mm; leave it out");
        }
    }
    auto calibration = root.objectIf("calibration");
    const bool hasPoints = calibration && calibration->has("points");
    if (hasPoints) {
        refuseSprings(reader);
    } else {
        scale.zeroMilli = thousandths(reader, "zero", -kFarthestZero, kFarthestZero);
        readSprings(reader, scale);
    }
    reader.refuseUnknown();
    if (calibration) {
        CalibrationNote note;
        note.doneOn = calibration->text("done_on");
        note.dueOn = calibration->text("due_on");
        if (hasPoints) {
            note.loadCell = calibration->text("load_cell");
            const Untroubled sound(*calibration);
            note.points = readPoints(*calibration);
            if (sound) {
                note.fit = fitOf(*calibration, note.points, kFarthestZero);
            }
            if (note.fit) {
                note.rateUncertaintyPercent = note.fit->rateUncertaintyPercent;
                scale.ratePerUnit = {newtons(note.fit->rate)};
                scale.zeroMilli = std::llround(note.fit->zero * 1e3);
            }
        } else {
            note.rateUncertaintyPercent = calibration->number("rate_uncertainty_percent", 0, 100);
        }
        calibration->refuseUnknown();
        readDates(*calibration, note);
        bench.calibration = std::move(note);
    }
    if (untroubled) {
        checkEnd(reader, scale);
    }
}

void readForceLimits(JsonReader& root, ForceLimits& limits) {
    auto reader = root.objectIf("force_N");
    if (!reader) {
        return;
    }
    constexpr double kGreatest = 1'000'000;
    const auto min = reader->numberIf("min", 0, kGreatest);
    const auto max = reader->numberIf("max", 1, kGreatest);
    reader->refuseUnknown();
    if (min && max && *max < *min) {
        reader->complain("max", plainNumber(*max) + " is below min " + plainNumber(*min));
    }
    limits.min = min ? std::optional(newtons(*min)) : std::nullopt;
    limits.max = max ? std::optional(newtons(*max)) : std::nullopt;
}

std::optional<Drive> readDrive(JsonReader& root) {
    const auto text = root.textIf("drive");
    if (!text) {
        return std::nullopt;
    }
    for (const Drive each : {Drive::Handwheel, Drive::FootLever}) {
        if (*text == toString(each)) {
            return each;
        }
    }
    root.complain("drive", "\"" + *text + "\" is not one of handwheel, foot_lever");
    return std::nullopt;
}

PlateRead readPlateRead(JsonReader& root) {
    const auto text = root.textIf("plate_read");
    if (!text) {
        return PlateRead::Three;
    }
    for (const PlateRead each :
         {PlateRead::Middle, PlateRead::Ends, PlateRead::Three, PlateRead::EachFace}) {
        if (*text == toString(each)) {
            return each;
        }
    }
    root.complain("plate_read", "\"" + *text + "\" is not one of middle, ends, three, each_face");
    return PlateRead::Three;
}

GapRule readGapRule(JsonReader& root) {
    JsonReader reader = root.object("gap");
    const Untroubled untroubled(reader);
    GapRule rule;
    rule.factor = reader.number("factor", 0.1, 5);
    rule.floor = millimetres(reader.number("floor_mm", 0, 100));
    const auto cap = reader.numberIf("cap_mm", 0.1, 300);
    rule.clampingFactor = reader.number("clamping_factor", 1, 5);
    reader.refuseUnknown();
    if (cap) {
        rule.cap = millimetres(*cap);
        if (untroubled && *rule.cap < rule.floor) {
            reader.complain(
                "cap_mm",
                plainNumber(*cap) + " is below floor_mm " + plainNumber(inMillimetres(rule.floor)));
        }
    }
    return rule;
}

std::vector<std::string> readReleaseOrder(JsonReader& root) {
    const char* const key = "release_order";
    auto order = root.texts(key);
    for (auto step = order.begin(); step != order.end(); ++step) {
        if (std::find(kReleaseSteps.begin(), kReleaseSteps.end(), *step) == kReleaseSteps.end()) {
            root.complain(key, "\"" + *step + "\" is not one of " + allowedSteps());
        } else if (std::find(order.begin(), step, *step) != step) {
            root.complain(key, "\"" + *step + "\" stands twice");
        }
    }
    if (root.has(key) && (order.empty() || order.back() != kReleaseSteps.back())) {
        root.complain(key, "does not end with \"" + std::string(kReleaseSteps.back()) + "\"");
    }
    return order;
}

Bench readAll(JsonReader& root) {
    Bench bench;
    if (!root.findings().empty()) {
        return bench; // not even an object
    }
    const std::string format = root.text("format");
    if (!format.empty() && format != kFormat) {
        root.complain("format", "\"" + format + "\" is not " + kFormat);
    }
    bench.id = root.text("id");
    bench.name = root.text("name");
    const Untroubled untroubled(root);
    bench.longestSeam = millimetres(root.number("longest_seam_mm", 10, 20000));
    bench.thinnestSheet = millimetres(root.number("thinnest_sheet_mm", 0.1, 300));
    bench.thickestSheet = millimetres(root.number("thickest_sheet_mm", 0.1, 300));
    if (untroubled && bench.thickestSheet < bench.thinnestSheet) {
        root.complain(
            "thickest_sheet_mm", plainNumber(inMillimetres(bench.thickestSheet)) +
                                     " is below thinnest_sheet_mm " +
                                     plainNumber(inMillimetres(bench.thinnestSheet)));
    }
    bench.drive = readDrive(root);
    // Which plate hangs there plans nothing; but another one is another document, and so another
    // set-up, of which every check and the trial joint are asked for anew.
    root.textIf("plate");
    bench.plateRead = readPlateRead(root);
    readForceLimits(root, bench.forceLimits);
    readScaleAndCalibration(root, bench);
    bench.gapRule = readGapRule(root);
    bench.edgeGapMax = millimetres(root.number("edge_gap_max_mm", 0.05, 5));
    bench.releaseOrder = readReleaseOrder(root);
    root.ignore("explained");
    root.refuseUnknown();
    return bench;
}

using OrderedJson = nlohmann::ordered_json; // in the template's order, for people

OrderedJson whole(double value) {
    constexpr double kExact = 9e15;
    if (std::fabs(value) < kExact && value == std::floor(value)) {
        return static_cast<std::int64_t>(value);
    }
    return value;
}

/// The number that reads back as exactly this length: the decimal that was typed, if there was one.
OrderedJson inMm(Length length) {
    constexpr double kDecimals = 1e9;
    const double raw = inMillimetres(length);
    const double typed = std::round(raw * kDecimals) / kDecimals;
    for (const double each :
         {typed, raw, std::nextafter(raw, HUGE_VAL), std::nextafter(raw, -HUGE_VAL)}) {
        if (millimetres(each) == length) {
            return whole(each);
        }
    }
    return whole(raw);
}

OrderedJson inUnits(std::int64_t milli) {
    return whole(static_cast<double>(milli) / 1e3);
}

OrderedJson scaleToJson(const SpringScale& scale, bool calibrated) {
    OrderedJson json{
        {"unit", scale.unit},
        {"count", scale.count},
        {"division", inUnits(scale.divisionMilli)},
        {"end", inUnits(scale.maxMilli)}};
    if (scale.ratePerMm) {
        json["rate_N_per_mm"] = whole(inNewtons(*scale.ratePerMm));
    }
    if (calibrated) {
        return json;
    }
    json["zero"] = inUnits(scale.zeroMilli);
    json["springs"] = OrderedJson::array();
    for (const Force& rate : scale.ratePerUnit) {
        json["springs"].push_back({{"rate_N_per_unit", whole(inNewtons(rate))}});
    }
    json["preload_N"] = whole(inNewtons(scale.preload));
    return json;
}

OrderedJson calibrationToJson(const CalibrationNote& note) {
    OrderedJson json{{"done_on", note.doneOn}, {"due_on", note.dueOn}};
    if (note.points.empty()) {
        json["rate_uncertainty_percent"] = whole(note.rateUncertaintyPercent);
        return json;
    }
    json["load_cell"] = note.loadCell;
    json["points"] = OrderedJson::array();
    for (const CalibrationPoint& point : note.points) {
        json["points"].push_back(
            {{"reading", whole(point.reading)}, {"force_N", whole(point.force)}});
    }
    return json;
}

Result<BenchDocument> document(const JsonText& text) {
    JsonReader root(text);
    Bench bench = readAll(root);
    if (const auto verdict = root.verdict(); !verdict) {
        return tl::unexpected<Error>(verdict.error());
    }
    return BenchDocument{std::move(bench), text.text, sha256Hex(text.text)};
}

} // namespace

std::vector<BenchFinding> checkBench(std::string_view name, std::string_view text) {
    const auto scanned = scanJson(name, text);
    if (!scanned) {
        return {{scanned.error().line, "", scanned.error().reason}};
    }
    JsonReader root(*scanned);
    readAll(root);
    std::vector<BenchFinding> findings;
    for (const JsonReader::Finding& finding : root.findings()) {
        findings.push_back({finding.line, finding.field, finding.reason});
    }
    return findings;
}

std::vector<std::string> releaseSteps() {
    return {kReleaseSteps.begin(), kReleaseSteps.end()};
}

Result<BenchDocument> readBench(std::string_view name, std::string_view text) {
    return parseJson(name, text).and_then(document);
}

Result<BenchDocument> readBenchFile(const std::string& path) {
    return parseJsonFile(path).and_then(document);
}

std::string benchText(const Bench& bench) {
    OrderedJson json{
        {"format", kFormat},
        {"id", bench.id},
        {"name", bench.name},
        {"longest_seam_mm", inMm(bench.longestSeam)},
        {"thinnest_sheet_mm", inMm(bench.thinnestSheet)},
        {"thickest_sheet_mm", inMm(bench.thickestSheet)}};
    if (bench.drive) {
        json["drive"] = toString(*bench.drive);
    }
    if (bench.plateRead != PlateRead::Three) {
        json["plate_read"] = toString(bench.plateRead);
    }
    if (bench.forceLimits.min) {
        json["force_N"]["min"] = whole(inNewtons(*bench.forceLimits.min));
    }
    if (bench.forceLimits.max) {
        json["force_N"]["max"] = whole(inNewtons(*bench.forceLimits.max));
    }
    const bool calibrated = bench.calibration && !bench.calibration->points.empty();
    json["scale"] = scaleToJson(bench.scale, calibrated);
    json["gap"] = {
        {"factor", whole(bench.gapRule.factor)}, {"floor_mm", inMm(bench.gapRule.floor)}};
    if (bench.gapRule.cap) {
        json["gap"]["cap_mm"] = inMm(*bench.gapRule.cap);
    }
    json["gap"]["clamping_factor"] = whole(bench.gapRule.clampingFactor);
    json["edge_gap_max_mm"] = inMm(bench.edgeGapMax);
    json["release_order"] = bench.releaseOrder;
    if (bench.calibration) {
        json["calibration"] = calibrationToJson(*bench.calibration);
    }
    return json.dump(2, ' ', false, OrderedJson::error_handler_t::replace) + "\n";
}

std::string benchTemplate() {
    // Left empty on purpose: a bench with values that nobody measured must not pass for a real one.
    return R"({
  "format": "seamclock-bench/1",
  "id": "",
  "name": "",
  "longest_seam_mm": null,
  "thinnest_sheet_mm": null,
  "thickest_sheet_mm": null,
  "drive": "",
  "plate": "",
  "plate_read": "three",
  "force_N": {"min": null, "max": null},
  "scale": {
    "unit": "mm",
    "count": 1,
    "division": null,
    "zero": null,
    "end": null,
    "springs": [{"rate_N_per_unit": null}],
    "preload_N": null
  },
  "gap": {
    "factor": 1,
    "floor_mm": null,
    "cap_mm": null,
    "clamping_factor": 2
  },
  "edge_gap_max_mm": 0.5,
  "release_order": [],
  "calibration": {
    "done_on": "",
    "due_on": "",
    "rate_uncertainty_percent": null
  },
  "explained": {
    "id": "short name that stays the same for the life of the bench; it stands in every record",
    "name": "what people call the bench",
    "longest_seam_mm": "the longest seam that fits, in mm; several short seams in one clamping add up",
    "thinnest_sheet_mm": "the thinnest sheet it can clamp, in mm",
    "thickest_sheet_mm": "the thickest sheet it can clamp, in mm",
    "drive": "handwheel or foot_lever; leave the line out if it is neither",
    "plate": "what people call the heated plate that hangs on this bench; with another one all checks and the trial joint are asked for anew; leave the line out if there is only one",
    "plate_read": "where the plate's faces are read at the start of a shift: middle, ends (front and back), three (front, middle and back) or each_face; each_face reads those three on both faces",
    "force_N": "what the drive can hold, as the springs feel it (the seam's force, drag and preload); leave out what isn't known",
    "force_N.min": "the smallest force it can hold steadily, in N; a weld with less is warned of",
    "force_N.max": "the greatest force it can hold, in N; a weld with more is refused",
    "scale.unit": "the unit printed on the spring scale; division, zero and end are in it",
    "scale.count": "1 or 2 scales beside the springs; with two, both show the same reading or the seam is off centre",
    "scale.division": "the smallest step a person can set, a multiple of 0.001",
    "scale.zero": "the reading without any force",
    "scale.end": "the last reading on the scale",
    "scale.springs": "one entry for each spring; two springs that are pressed together add",
    "scale.springs.rate_N_per_unit": "the spring's force for one unit of the scale, in N, from its calibration",
    "scale.preload_N": "force lost before the faces press at all, in N; 0 if there is none",
    "scale.rate_N_per_mm": "only where the unit isn't mm: what all springs together lose for each mm that the tables close, in N; without it no fall of the reading is estimated",
    "gap.factor": "the gap before the first sheet, as a multiple of the sheet's thickness",
    "gap.floor_mm": "that gap is never less than this, in mm; 0 for no floor",
    "gap.cap_mm": "that gap is never more than this, in mm; leave the line out for no cap",
    "gap.clamping_factor": "the gap before the second sheet, as a multiple of the first gap",
    "edge_gap_max_mm": "the widest gap between the edges when they meet, in mm",
    "release_order": "what is done when cooling is over, in this bench's own order, from: clamps_eased, bars_opened, spring_off, sheet_out; sheet_out comes last; the machine's instructions decide",
    "calibration": "leave the whole out if the scale was never calibrated",
    "calibration.done_on": "the day of the calibration, like 2030-01-07",
    "calibration.due_on": "the day on which the next is due",
    "calibration.rate_uncertainty_percent": "one standard deviation of the rate, in percent; not beside points",
    "calibration.load_cell": "with points: which load cell showed the forces",
    "calibration.points": "instead of scale.zero, scale.springs and rate_uncertainty_percent: [{\"reading\": 5, \"force_N\": 310}, ...], 3 or more readings with the force that pressed; zero and rate come from the straight line through them"
  }
}
)";
}

} // namespace seamclock
