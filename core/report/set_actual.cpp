#include "core/report/set_actual.h"

#include "core/weld/force_check.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <iterator>

namespace seamclock {
namespace {

using SetActuals = std::vector<SetActual>;

/// The row once for each such check with a value, or once without.
void addChecks(SetActuals& rows, const WeldRecord& record, const char* check, SetActual row) {
    const std::size_t before = rows.size();
    for (const Retained& made : record.checks) {
        const auto* d = std::get_if<CheckMade>(&made.d);
        if (d == nullptr || d->check != check || isForceMark(*d)) {
            continue;
        }
        const auto value = row.unit == "mC"   ? d->valueMc
                           : row.unit == "um" ? d->valueUm
                                              : d->valueMilli;
        if (!value) {
            continue;
        }
        row.actual = value;
        row.n = made.n;
        row.place = d->place.value_or("");
        row.face = d->face.value_or("");
        rows.push_back(row);
    }
    if (rows.size() == before) {
        rows.push_back(row);
    }
}

struct Phase {
    ReadingPhase reading;
    std::string name;
    ReadingBand WeldPlan::ScalePlan::*band;
    std::optional<std::int64_t> setMn;
    std::optional<std::int64_t> setPa;
    bool atMost;
    int dragSign;
};

/// The force that presses the faces [mN], from a reading.
std::int64_t
faceForce(const WeldPlan& plan, const Bench& bench, const Phase& phase, std::int64_t milli) {
    const double spring =
        inNewtons(bench.scale.rate()) * static_cast<double>(milli - bench.scale.zeroMilli);
    const double lost =
        inNewtons(bench.scale.preload) * 1000 + static_cast<double>(phase.dragSign * plan.dragMn);
    return std::llround(spring - lost);
}

/// What was marked on the scale in a new set-up; nothing where the set-up stood.
void addForceMark(SetActuals& rows, const WeldRecord& record) {
    for (const Retained& made : record.checks) {
        const auto* d = std::get_if<CheckMade>(&made.d);
        if (d != nullptr && isForceMark(*d) && d->valueMilli && record.plan.scale) {
            const ReadingBand& band = record.plan.scale->joining;
            rows.push_back(
                {"marked_reading",
                 "milli",
                 band.setMilli,
                 band.lowMilli,
                 band.highMilli,
                 d->valueMilli,
                 made.n,
                 {}});
        }
    }
}

std::int64_t facePressure(const WeldPlan& plan, std::int64_t mn) {
    const double area =
        static_cast<double>(plan.thicknessUm) * 1e-6 * static_cast<double>(plan.lengthUm) * 1e-6;
    return std::llround(static_cast<double>(mn) * 1e-3 / area);
}

SetActual limitRow(
    const Phase& phase, const char* what, const char* unit, std::optional<std::int64_t> value) {
    SetActual row{phase.name + what, unit, {}, {}, {}, {}, 0, {}};
    (phase.atMost ? row.high : row.set) = value;
    return row;
}

void addReadings(
    SetActuals& rows, const WeldRecord& record, const Bench* bench, const Phase& phase) {
    const WeldPlan& plan = record.plan;
    SetActual reading{phase.name + "_reading", "milli", {}, {}, {}, {}, 0, {}};
    if (plan.scale) {
        const ReadingBand& band = (*plan.scale).*phase.band;
        reading.set = band.setMilli;
        reading.low = band.lowMilli;
        reading.high = band.highMilli;
    }
    SetActual force = limitRow(phase, "_force", "mN", phase.setMn);
    SetActual pressure = limitRow(phase, "_pressure", "Pa", phase.setPa);
    if (!phase.atMost && plan.tolerancePa && phase.setPa) {
        pressure.low = *phase.setPa - *plan.tolerancePa;
        pressure.high = *phase.setPa + *plan.tolerancePa;
    }
    bool any = false;
    for (const Retained& taken : record.readings) {
        const auto& d = std::get<ReadingTaken>(taken.d);
        if (d.phase != phase.reading) {
            continue;
        }
        any = true;
        reading.actual = d.readingMilli;
        reading.n = force.n = pressure.n = taken.n;
        rows.push_back(reading);
        if (bench != nullptr) {
            force.actual = faceForce(plan, *bench, phase, d.readingMilli);
            pressure.actual = facePressure(plan, *force.actual);
        } else {
            force.n = pressure.n = 0;
        }
        rows.push_back(force);
        rows.push_back(pressure);
    }
    if (!any && phase.reading != ReadingPhase::Recheck) {
        rows.push_back(reading);
        rows.push_back(force);
        rows.push_back(pressure);
    }
}

void addBeads(SetActuals& rows, const WeldRecord& record) {
    if (record.beads.empty()) {
        rows.push_back({"bead_k", "um", {}, {}, {}, {}, 0, {}});
        rows.push_back({"misalignment", "um", {}, {}, record.plan.misalignmentMaxUm, {}, 0, {}});
    }
    for (const Retained& measured : record.beads) {
        const auto& d = std::get<BeadMeasured>(measured.d);
        const auto add = [&](const char* item, std::optional<std::int64_t> high,
                             std::int64_t actual) {
            SetActual row{item, "um", {}, {}, high, actual, measured.n, {}};
            row.placeUm = d.placeUm;
            rows.push_back(std::move(row));
        };
        add("bead_width", {}, d.widthUm);
        add("bead_height", {}, d.heightUm);
        add("bead_k", {}, d.kUm);
        add("misalignment", record.plan.misalignmentMaxUm, d.misalignmentUm);
    }
}

/// Of a correction's text; absent: it is no whole number.
std::optional<std::int64_t> wholeNumber(const std::string& text) {
    std::int64_t value = 0;
    const char* const end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, value);
    return read.ec == std::errc() && read.ptr == end ? std::optional(value) : std::nullopt;
}

void addCorrections(std::vector<SetActual>& rows, const WeldRecord& record) {
    for (const Event& event : record.events) {
        const auto* made = std::get_if<ValueCorrected>(&event.d);
        if (made == nullptr) {
            continue;
        }
        for (SetActual& row : rows) {
            const std::string_view field = fieldOfItem(row.item);
            if (row.n == 0 || row.n != made->targetN ||
                made->field != (field.empty() ? "reading_milli" : field)) {
                continue;
            }
            row.correctedBy = event.n;
            row.was = field.empty() || row.was ? row.was : wholeNumber(made->was);
        }
    }
}

} // namespace

std::string placeInWords(const SetActual& row) {
    std::string text = row.place;
    const auto add = [&text](const std::string& words) {
        text += (text.empty() ? "" : ", ") + words;
    };
    if (!row.face.empty()) {
        add("face " + row.face);
    }
    if (row.placeUm) {
        add("at " + std::to_string(*row.placeUm / 1000) + " mm");
    }
    return text;
}

ShownUnit shownUnit(const std::string& code, const WeldPlan& plan) {
    if (code == "mC") {
        return {"°C", 3};
    }
    if (code == "um") {
        return {"mm", 3};
    }
    if (code == "mN") {
        return {"N", 3};
    }
    if (code == "ms") {
        return {"s", 3};
    }
    if (code == "Pa") {
        return {"N/mm²", 6};
    }
    if (code == "milli") {
        return {plan.scale ? plan.scale->unit : "scale", 3};
    }
    return {code, 0};
}

std::vector<SetActual> setAndActual(const WeldRecord& record, const Bench* bench) {
    const WeldPlan& plan = record.plan;
    SetActuals rows;
    SetActual plate{"plate_temperature", "mC", {}, {}, {}, {}, 0, {}};
    if (plan.plate) {
        plate.set = plan.plate->targetMc;
        plate.low = plan.plate->minMc;
        plate.high = plan.plate->maxMc;
    }
    addChecks(rows, record, "plate_temperature", plate);
    if (plan.scale) {
        addChecks(
            rows, record, "scale_zero",
            {"scale_zero", "milli", plan.scale->zeroMilli, {}, {}, {}, 0, {}});
    }
    rows.push_back({"drag_force", "mN", plan.dragMn, {}, {}, {}, 0, {}});
    addChecks(rows, record, "drag", {"drag_reading", "milli", {}, {}, {}, {}, 0, {}});
    addForceMark(rows, record);
    addChecks(rows, record, "gap", {"gap", "um", plan.gapUm, {}, {}, {}, 0, {}});
    addChecks(
        rows, record, "clamping_gap",
        {"clamping_gap", "um", plan.clampingGapUm, {}, {}, {}, 0, {}});
    addChecks(rows, record, "edges_meet", {"edge_gap", "um", {}, {}, plan.edgeGapMaxUm, {}, 0, {}});
    addReadings(
        rows, record, bench,
        {ReadingPhase::Alignment, "alignment", &WeldPlan::ScalePlan::alignment, plan.alignmentMn,
         plan.alignmentPa, false, 1});
    addChecks(
        rows, record, "alignment_bead",
        {"alignment_bead", "um", {}, plan.beadMinUm, {}, {}, 0, {}});
    addReadings(
        rows, record, bench,
        {ReadingPhase::Soak, "soak", &WeldPlan::ScalePlan::soak, plan.soakMaxMn, plan.soakMaxPa,
         true, -1});
    const Phase joining{
        ReadingPhase::Joining,
        "joining",
        &WeldPlan::ScalePlan::joining,
        plan.joiningMn,
        plan.joiningPa,
        false,
        1};
    addReadings(rows, record, bench, joining);
    Phase recheck = joining;
    recheck.reading = ReadingPhase::Recheck;
    recheck.name = "recheck";
    addReadings(rows, record, bench, recheck);
    addBeads(rows, record);
    addCorrections(rows, record);
    return rows;
}

std::string_view fieldOfItem(std::string_view item) {
    struct Item {
        std::string_view item;
        std::string_view field;
    };
    static constexpr Item kItems[] = {
        {"plate_temperature", "value_mC"},    {"scale_zero", "value_milli"},
        {"drag_reading", "value_milli"},      {"gap", "value_um"},
        {"clamping_gap", "value_um"},         {"edge_gap", "value_um"},
        {"alignment_bead", "value_um"},       {"alignment_reading", "reading_milli"},
        {"soak_reading", "reading_milli"},    {"joining_reading", "reading_milli"},
        {"recheck_reading", "reading_milli"}, {"bead_height", "height_um"},
        {"bead_width", "width_um"},           {"bead_k", "k_um"},
        {"misalignment", "misalignment_um"}};
    const auto* const found = std::find_if(
        std::begin(kItems), std::end(kItems), [&](const Item& one) { return one.item == item; });
    return found == std::end(kItems) ? std::string_view() : found->field;
}

} // namespace seamclock
