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

SpringScale readScale(JsonReader& root) {
    JsonReader reader = root.object("scale");
    const Untroubled untroubled(reader);
    SpringScale scale;
    scale.unit = reader.text("unit");
    scale.divisionMilli = thousandths(reader, "division", 0.001, 1000);
    scale.zeroMilli = thousandths(reader, "zero", -1000, 1000);
    scale.maxMilli = thousandths(reader, "end", 0.001, 100000);
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
    reader.refuseUnknown();
    if (untroubled && scale.maxMilli < scale.zeroMilli + scale.divisionMilli) {
        reader.complain(
            "end", plainNumber(static_cast<double>(scale.maxMilli) / 1e3) +
                       " is not a division above zero " +
                       plainNumber(static_cast<double>(scale.zeroMilli) / 1e3));
    }
    return scale;
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

std::optional<CalibrationNote> readCalibration(JsonReader& root) {
    auto reader = root.objectIf("calibration");
    if (!reader) {
        return std::nullopt;
    }
    CalibrationNote note;
    note.doneOn = reader->text("done_on");
    note.dueOn = reader->text("due_on");
    note.rateUncertaintyPercent = reader->number("rate_uncertainty_percent", 0, 100);
    reader->refuseUnknown();
    bool dated = true;
    for (const auto& [key, value] :
         {std::pair{"done_on", note.doneOn}, std::pair{"due_on", note.dueOn}}) {
        if (!isDate(value)) {
            dated = false;
            if (!value.empty()) {
                reader->complain(key, "\"" + value + "\" is not a date like 2030-01-07");
            }
        }
    }
    if (dated && note.dueOn < note.doneOn) {
        reader->complain("due_on", note.dueOn + " is before done_on " + note.doneOn);
    }
    return note;
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
    bench.scale = readScale(root);
    bench.gapRule = readGapRule(root);
    bench.edgeGapMax = millimetres(root.number("edge_gap_max_mm", 0.05, 5));
    bench.releaseOrder = readReleaseOrder(root);
    bench.calibration = readCalibration(root);
    root.ignore("explained");
    root.refuseUnknown();
    return bench;
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

Result<BenchDocument> readBench(std::string_view name, std::string_view text) {
    return parseJson(name, text).and_then(document);
}

Result<BenchDocument> readBenchFile(const std::string& path) {
    return parseJsonFile(path).and_then(document);
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
  "scale": {
    "unit": "mm",
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
    "scale.unit": "the unit printed on the spring scale; division, zero and end are in it",
    "scale.division": "the smallest step a person can set, a multiple of 0.001",
    "scale.zero": "the reading without any force",
    "scale.end": "the last reading on the scale",
    "scale.springs": "one entry for each spring; two springs that are pressed together add",
    "scale.springs.rate_N_per_unit": "the spring's force for one unit of the scale, in N, from its calibration",
    "scale.preload_N": "force lost before the faces press at all, in N; 0 if there is none",
    "gap.factor": "the gap before the first sheet, as a multiple of the sheet's thickness",
    "gap.floor_mm": "that gap is never less than this, in mm; 0 for no floor",
    "gap.cap_mm": "that gap is never more than this, in mm; leave the line out for no cap",
    "gap.clamping_factor": "the gap before the second sheet, as a multiple of the first gap",
    "edge_gap_max_mm": "the widest gap between the edges when they meet, in mm",
    "release_order": "what is done when cooling is over, in this bench's own order, from: clamps_eased, bars_opened, spring_off, sheet_out; sheet_out comes last; the machine's instructions decide",
    "calibration": "leave the whole out if the scale was never calibrated",
    "calibration.done_on": "the day of the calibration, like 2030-01-07",
    "calibration.due_on": "the day on which the next is due",
    "calibration.rate_uncertainty_percent": "one standard deviation of the rate, in percent"
  }
}
)";
}

} // namespace seamclock
