#include "core/plan/plan_codec.h"

#include "core/base/json_reader.h"

#include <array>
#include <cmath>
#include <cstdlib>
#include <utility>

namespace seamclock {

namespace {

constexpr int kVersion = 1;
constexpr std::int64_t kMost = 1'000'000'000'000'000; // any quantity of a weld in its smallest unit

template <class T>
void put(Json& json, const char* key, const std::optional<T>& value) {
    if (value) {
        json[key] = *value;
    }
}

void put(Json& json, const char* key, const std::optional<Milliseconds>& value) {
    if (value) {
        json[key] = value->count();
    }
}

Json bandToJson(const ReadingBand& band) {
    return {
        {"set_milli", band.setMilli}, {"low_milli", band.lowMilli}, {"high_milli", band.highMilli}};
}

std::optional<std::int64_t> integerIf(JsonReader& reader, const char* key) {
    return reader.integerIf(key, 0, kMost);
}

std::optional<Milliseconds> millisecondsIf(JsonReader& reader, const char* key) {
    const auto value = integerIf(reader, key);
    return value ? std::optional(Milliseconds(*value)) : std::nullopt;
}

Milliseconds milliseconds(JsonReader& reader, const char* key) {
    return Milliseconds(reader.integer(key, 0, kMost));
}

ReadingBand bandFromJson(JsonReader& scale, const char* key) {
    JsonReader reader = scale.object(key);
    ReadingBand band;
    band.setMilli = reader.integer("set_milli", -kMost, kMost);
    band.lowMilli = reader.integer("low_milli", -kMost, kMost);
    band.highMilli = reader.integer("high_milli", -kMost, kMost);
    reader.refuseUnknown();
    if (!band.holds(band.setMilli)) {
        scale.complain(key, "is a band that does not hold its set reading");
    }
    return band;
}

WeldPlan::ScalePlan scaleFromJson(JsonReader& reader) {
    WeldPlan::ScalePlan scale;
    scale.unit = reader.text("unit");
    scale.divisionMilli = reader.integer("division_milli", 1, kMost);
    scale.zeroMilli = reader.integer("zero_milli", -kMost, kMost);
    scale.alignment = bandFromJson(reader, "alignment");
    scale.soak = bandFromJson(reader, "soak");
    scale.joining = bandFromJson(reader, "joining");
    reader.refuseUnknown();
    return scale;
}

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

void readWarnings(JsonReader& root, WeldPlan& plan) {
    for (JsonReader& reader : root.objects("warnings")) {
        PlanWarning warning;
        warning.code = reader.text("code");
        warning.text = reader.text("text");
        warning.limit = reader.integerIf("limit", -kMost, kMost);
        warning.actual = reader.integerIf("actual", -kMost, kMost);
        warning.unit = reader.textIf("unit").value_or("");
        reader.refuseUnknown();
        plan.warnings.push_back(std::move(warning));
    }
}

void readSources(JsonReader& root, WeldPlan& plan) {
    for (JsonReader& reader : root.objects("sources")) {
        PlanSource source;
        source.value = reader.text("value");
        source.source.text = reader.text("source");
        const std::string standing = reader.text("standing");
        if (const auto known = standingOf(standing)) {
            source.source.standing = *known;
        } else if (!standing.empty()) {
            reader.complain("standing", "\"" + standing + "\" is not a known standing");
        }
        reader.refuseUnknown();
        plan.sources.push_back(std::move(source));
    }
}

void readPressures(JsonReader& root, WeldPlan& plan) {
    JsonReader pressure = root.object("pressure_Pa");
    plan.alignmentPa = integerIf(pressure, "alignment");
    plan.soakAimPa = integerIf(pressure, "soak_aim");
    plan.soakMaxPa = integerIf(pressure, "soak_max");
    plan.joiningPa = integerIf(pressure, "joining");
    plan.tolerancePa = integerIf(pressure, "tolerance");
    pressure.refuseUnknown();
    JsonReader force = root.object("force_mN");
    plan.alignmentMn = integerIf(force, "alignment");
    plan.soakMaxMn = integerIf(force, "soak_max");
    plan.joiningMn = integerIf(force, "joining");
    plan.dragMn = force.integer("drag", 0, kMost);
    force.refuseUnknown();
}

void readPlate(JsonReader& root, WeldPlan& plan) {
    if (auto reader = root.objectIf("plate_mC")) {
        WeldPlan::Plate plate;
        plate.minMc = reader->integer("min", 0, kMost);
        plate.targetMc = reader->integer("target", 0, kMost);
        plate.maxMc = reader->integer("max", 0, kMost);
        reader->refuseUnknown();
        plan.plate = plate;
    }
}

void readTimes(JsonReader& root, WeldPlan& plan) {
    plan.alignMedian = millisecondsIf(root, "align_median_ms");
    plan.alignLate = millisecondsIf(root, "align_late_ms");
    // Three keys of one value: all or none.
    if (root.has("soak_ms") || root.has("soak_low_ms") || root.has("soak_high_ms")) {
        TimeBand soak;
        soak.low = milliseconds(root, "soak_low_ms");
        soak.target = milliseconds(root, "soak_ms");
        soak.high = milliseconds(root, "soak_high_ms");
        plan.soak = soak;
    }
    plan.changeoverMax = millisecondsIf(root, "changeover_max_ms");
    if (auto reader = root.objectIf("build_up_ms")) {
        TimeBand buildUp;
        buildUp.low = milliseconds(*reader, "low");
        buildUp.target = milliseconds(*reader, "target");
        buildUp.high = milliseconds(*reader, "high");
        reader->refuseUnknown();
        plan.buildUp = buildUp;
    }
    if (root.has("cooling_ms") || root.has("rechecks_ms")) {
        WeldPlan::Cooling cooling;
        cooling.atLeast = milliseconds(root, "cooling_ms");
        for (const std::int64_t each : root.integers("rechecks_ms", 0, kMost)) {
            cooling.rechecks.emplace_back(each);
        }
        plan.cooling = std::move(cooling);
    }
}

/// One of the trade's numbers from an integer in a smaller unit: 816000 ms by 60000 is 13.6. Six
/// decimals are more than any reading has, and keep 1/3 from printing 16 digits.
double scaled(std::int64_t value, std::int64_t per) {
    constexpr std::int64_t kMillion = 1'000'000;
    const std::int64_t whole = value / per;
    const auto part = static_cast<double>(value % per) / static_cast<double>(per);
    return static_cast<double>(whole * kMillion + std::llround(part * 1e6)) / 1e6;
}

void putScaled(
    Json& json, const char* key, const std::optional<std::int64_t>& value, std::int64_t per) {
    if (value) {
        json[key] = scaled(*value, per);
    }
}

constexpr std::int64_t kPerThousand = 1000;
constexpr std::int64_t kMsPerMinute = 60000;

Json reportBand(const ReadingBand& band) {
    return {
        {"set", scaled(band.setMilli, kPerThousand)},
        {"low", scaled(band.lowMilli, kPerThousand)},
        {"high", scaled(band.highMilli, kPerThousand)}};
}

Json reportScale(const WeldPlan::ScalePlan& scale) {
    return {
        {"unit", scale.unit},
        {"division", scaled(scale.divisionMilli, kPerThousand)},
        {"zero", scaled(scale.zeroMilli, kPerThousand)},
        {"alignment", reportBand(scale.alignment)},
        {"soak", reportBand(scale.soak)},
        {"joining", reportBand(scale.joining)}};
}

Json reportWarnings(const WeldPlan& plan) {
    Json warnings = Json::array();
    for (const PlanWarning& warning : plan.warnings) {
        Json each{{"code", warning.code}, {"text", warning.text}};
        const bool isTime = warning.unit == "ms";
        putScaled(each, "limit", warning.limit, isTime ? kMsPerMinute : kPerThousand);
        putScaled(each, "actual", warning.actual, isTime ? kMsPerMinute : kPerThousand);
        if (warning.unit == "mC") {
            each["unit"] = "°C";
        } else if (isTime) {
            each["unit"] = "min";
        } else if (warning.unit == "mN") {
            each["unit"] = "N";
        } else if (warning.unit == "milli" && plan.scale) {
            each["unit"] = plan.scale->unit;
        }
        warnings.push_back(std::move(each));
    }
    return warnings;
}

Json sourcesToJson(const WeldPlan& plan) {
    Json sources = Json::array();
    for (const PlanSource& each : plan.sources) {
        sources.push_back(
            {{"value", each.value},
             {"source", each.source.text},
             {"standing", toString(each.source.standing)}});
    }
    return sources;
}

void reportTimes(Json& json, const WeldPlan& plan) {
    const auto put = [&json](const char* key, Milliseconds value, std::int64_t per) {
        json[key] = scaled(value.count(), per);
    };
    if (plan.alignMedian) {
        put("align_median_s", *plan.alignMedian, kPerThousand);
    }
    if (plan.alignLate) {
        put("align_late_s", *plan.alignLate, kPerThousand);
    }
    if (plan.soak) {
        put("soak_s", plan.soak->target, kPerThousand);
        put("soak_low_s", plan.soak->low, kPerThousand);
        put("soak_high_s", plan.soak->high, kPerThousand);
    }
    if (plan.changeoverMax) {
        put("changeover_max_s", *plan.changeoverMax, kPerThousand);
    }
    if (plan.buildUp) {
        put("build_up_s", plan.buildUp->target, kPerThousand);
        put("build_up_low_s", plan.buildUp->low, kPerThousand);
        put("build_up_high_s", plan.buildUp->high, kPerThousand);
    }
    if (plan.cooling) {
        put("cooling_min", plan.cooling->atLeast, kMsPerMinute);
        json["rechecks_min"] = Json::array();
        for (const Milliseconds each : plan.cooling->rechecks) {
            json["rechecks_min"].push_back(scaled(each.count(), kMsPerMinute));
        }
    }
}

} // namespace

Json planToJson(const WeldPlan& plan) {
    Json json{
        {"v", kVersion},
        {"procedure", plan.procedure},
        {"edition", plan.edition},
        {"material", plan.material},
        {"thickness_um", plan.thicknessUm},
        {"length_um", plan.lengthUm},
        {"ambient_mC", plan.ambientMc},
        {"cooling_rule", toString(plan.coolingRule)},
        {"half_cooling", plan.halfCooling},
        {"gap_um", plan.gapUm},
        {"clamping_gap_um", plan.clampingGapUm},
        {"edge_gap_max_um", plan.edgeGapMaxUm},
        {"misalignment_max_um", plan.misalignmentMaxUm},
        {"checks", plan.checks},
        {"release_order", plan.releaseOrder},
        {"missing", plan.missing},
        {"sources", sourcesToJson(plan)}};
    if (!plan.unattested.empty()) { // plans of older logs were written without it
        json["unattested"] = plan.unattested;
    }
    if (!plan.bench.empty()) {
        json["bench"] = plan.bench;
    }
    Json pressure = Json::object();
    put(pressure, "alignment", plan.alignmentPa);
    put(pressure, "soak_aim", plan.soakAimPa);
    put(pressure, "soak_max", plan.soakMaxPa);
    put(pressure, "joining", plan.joiningPa);
    put(pressure, "tolerance", plan.tolerancePa);
    json["pressure_Pa"] = std::move(pressure);
    Json force{{"drag", plan.dragMn}};
    put(force, "alignment", plan.alignmentMn);
    put(force, "soak_max", plan.soakMaxMn);
    put(force, "joining", plan.joiningMn);
    json["force_mN"] = std::move(force);
    if (plan.scale) {
        json["scale"] = {
            {"unit", plan.scale->unit},
            {"division_milli", plan.scale->divisionMilli},
            {"zero_milli", plan.scale->zeroMilli},
            {"alignment", bandToJson(plan.scale->alignment)},
            {"soak", bandToJson(plan.scale->soak)},
            {"joining", bandToJson(plan.scale->joining)}};
    }
    if (plan.plate) {
        json["plate_mC"] = {
            {"min", plan.plate->minMc},
            {"target", plan.plate->targetMc},
            {"max", plan.plate->maxMc}};
    }
    put(json, "bead_min_um", plan.beadMinUm);
    put(json, "align_median_ms", plan.alignMedian);
    put(json, "align_late_ms", plan.alignLate);
    if (plan.soak) {
        json["soak_ms"] = plan.soak->target.count();
        json["soak_low_ms"] = plan.soak->low.count();
        json["soak_high_ms"] = plan.soak->high.count();
    }
    put(json, "changeover_max_ms", plan.changeoverMax);
    if (plan.buildUp) {
        json["build_up_ms"] = {
            {"low", plan.buildUp->low.count()},
            {"target", plan.buildUp->target.count()},
            {"high", plan.buildUp->high.count()}};
    }
    if (plan.cooling) {
        json["cooling_ms"] = plan.cooling->atLeast.count();
        json["rechecks_ms"] = Json::array();
        for (const Milliseconds each : plan.cooling->rechecks) {
            json["rechecks_ms"].push_back(each.count());
        }
    }
    json["warnings"] = Json::array();
    for (const PlanWarning& warning : plan.warnings) {
        Json each{{"code", warning.code}, {"text", warning.text}};
        put(each, "limit", warning.limit);
        put(each, "actual", warning.actual);
        if (!warning.unit.empty()) {
            each["unit"] = warning.unit;
        }
        json["warnings"].push_back(std::move(each));
    }
    return json;
}

Result<WeldPlan> planFromJson(CanonicalValue json) {
    JsonReader root("plan", json);
    WeldPlan plan;
    root.integer("v", kVersion, kVersion);
    plan.procedure = root.text("procedure");
    plan.edition = root.text("edition");
    plan.material = root.text("material");
    plan.bench = root.textIf("bench").value_or("");
    plan.thicknessUm = root.integer("thickness_um", 1, kMost);
    plan.lengthUm = root.integer("length_um", 1, kMost);
    plan.ambientMc = root.integer("ambient_mC", -273150, kMost);
    const std::string rule = root.text("cooling_rule");
    if (rule == toString(BandRule::BandEnd)) {
        plan.coolingRule = BandRule::BandEnd;
    } else if (rule != toString(BandRule::Line)) {
        root.complain("cooling_rule", "\"" + rule + "\" is not one of line, band-end");
    }
    plan.halfCooling = root.flag("half_cooling");
    readPressures(root, plan);
    if (auto scale = root.objectIf("scale")) {
        plan.scale = scaleFromJson(*scale);
    }
    readPlate(root, plan);
    plan.gapUm = root.integer("gap_um", 0, kMost);
    plan.clampingGapUm = root.integer("clamping_gap_um", 0, kMost);
    plan.edgeGapMaxUm = root.integer("edge_gap_max_um", 0, kMost);
    plan.misalignmentMaxUm = root.integer("misalignment_max_um", 0, kMost);
    plan.beadMinUm = integerIf(root, "bead_min_um");
    readTimes(root, plan);
    plan.checks = root.texts("checks");
    plan.releaseOrder = root.texts("release_order");
    plan.missing = root.texts("missing");
    if (root.has("unattested")) {
        plan.unattested = root.texts("unattested");
    }
    readWarnings(root, plan);
    readSources(root, plan);
    root.refuseUnknown();
    if (const auto verdict = root.verdict(); !verdict) {
        return tl::unexpected<Error>(verdict.error());
    }
    return plan;
}

namespace {

/// Half the width of the calibration's 95 % band at each set reading.
void reportCalibration(Json& json, const WeldPlan& plan, const Bench& bench) {
    if (!bench.calibration || !plan.scale) {
        return;
    }
    Json calibration{{"due_on", bench.calibration->dueOn}, {"band_95_N", Json::object()}};
    for (const auto& [key, band] :
         {std::pair{"alignment", &plan.scale->alignment}, std::pair{"soak", &plan.scale->soak},
          std::pair{"joining", &plan.scale->joining}}) {
        if (const auto half = calibrationBand(bench, static_cast<double>(band->setMilli))) {
            calibration["band_95_N"][key] = std::round(inNewtons(*half) * 1e3) / 1e3;
        }
    }
    if (bench.calibration->fit) {
        calibration["range"] = {
            {"min", bench.calibration->fit->lowestReading},
            {"max", bench.calibration->fit->highestReading}};
    }
    json["calibration"] = std::move(calibration);
}

} // namespace

std::string planReportJson(const WeldPlan& plan, const Bench* bench) {
    Json json{{"procedure", plan.procedure},     {"edition", plan.edition},
              {"material", plan.material},       {"cooling_rule", toString(plan.coolingRule)},
              {"ready", plan.isComplete()},      {"missing", plan.missing},
              {"checks", plan.checks},           {"sources", sourcesToJson(plan)},
              {"warnings", reportWarnings(plan)}};
    if (!plan.unattested.empty()) {
        json["unattested"] = plan.unattested;
    }
    json["half_cooling"] = plan.halfCooling;
    constexpr std::int64_t kPaPerNMm2 = 1'000'000;
    json["thickness_mm"] = scaled(plan.thicknessUm, kPerThousand);
    json["length_mm"] = scaled(plan.lengthUm, kPerThousand);
    json["ambient_C"] = scaled(plan.ambientMc, kPerThousand);
    if (!plan.bench.empty()) {
        json["bench"] = plan.bench;
        json["release_order"] = plan.releaseOrder;
    }
    if (plan.plate) {
        json["heated_tool_C"] = {
            {"min", scaled(plan.plate->minMc, kPerThousand)},
            {"target", scaled(plan.plate->targetMc, kPerThousand)},
            {"max", scaled(plan.plate->maxMc, kPerThousand)}};
    }
    Json pressure = Json::object();
    putScaled(pressure, "alignment", plan.alignmentPa, kPaPerNMm2);
    putScaled(pressure, "soak_aim", plan.soakAimPa, kPaPerNMm2);
    putScaled(pressure, "soak_max", plan.soakMaxPa, kPaPerNMm2);
    putScaled(pressure, "joining", plan.joiningPa, kPaPerNMm2);
    putScaled(pressure, "tolerance", plan.tolerancePa, kPaPerNMm2);
    json["pressure_N_mm2"] = std::move(pressure);
    Json force{{"drag", scaled(plan.dragMn, kPerThousand)}};
    putScaled(force, "alignment", plan.alignmentMn, kPerThousand);
    putScaled(force, "soak_max", plan.soakMaxMn, kPerThousand);
    putScaled(force, "joining", plan.joiningMn, kPerThousand);
    json["force_N"] = std::move(force);
    if (plan.scale) {
        json["scale"] = reportScale(*plan.scale);
    }
    json["gap_mm"] = scaled(plan.gapUm, kPerThousand);
    json["clamping_gap_mm"] = scaled(plan.clampingGapUm, kPerThousand);
    json["edge_gap_max_mm"] = scaled(plan.edgeGapMaxUm, kPerThousand);
    json["misalignment_max_mm"] = scaled(plan.misalignmentMaxUm, kPerThousand);
    putScaled(json, "bead_min_mm", plan.beadMinUm, kPerThousand);
    reportTimes(json, plan);
    if (bench != nullptr) {
        reportCalibration(json, plan, *bench);
    }
    return json.dump(2, ' ', false, Json::error_handler_t::replace);
}

} // namespace seamclock
