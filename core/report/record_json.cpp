#include "core/report/record_json.h"

#include "core/base/json.h"
#include "core/estimate/heat_estimate_json.h"
#include "core/plan/plan_codec.h"
#include "core/report/coupon_text.h"
#include "core/report/record_reasons.h"
#include "core/report/set_actual.h"
#include "core/weld/back_off.h"
#include "core/weld/event_codec.h"

#include <cmath>
#include <set>

namespace seamclock {
namespace {

double milli(std::int64_t value) {
    return static_cast<double>(value) / 1e3;
}

double seconds(Milliseconds value) {
    return milli(value.count());
}

template <class Value>
void addIf(Json& json, const char* key, const std::optional<Value>& value) {
    if (value) {
        json[key] = *value;
    }
}

void addSecondsIf(Json& json, const char* key, const std::optional<Milliseconds>& value) {
    if (value) {
        json[key] = seconds(*value);
    }
}

Json sheetJson(const Sheet& sheet) {
    Json json = {
        {"material", sheet.material},
        {"maker", sheet.maker},
        {"batch", sheet.batch},
        {"thickness_mm", milli(sheet.thicknessUm)}};
    addIf(json, "grade", sheet.grade);
    addIf(json, "mfr", sheet.mfr);
    return json;
}

Json setActualJson(const WeldRecord& record, const Bench* bench) {
    Json rows = Json::array();
    for (const SetActual& row : setAndActual(record, bench)) {
        const ShownUnit unit = shownUnit(row.unit, record.plan);
        Json json = {{"item", row.item}, {"unit", unit.name}};
        const auto add = [&](const char* key, std::optional<std::int64_t> value) {
            if (value) {
                json[key] = static_cast<double>(*value) / std::pow(10, unit.decimals);
            }
        };
        add("set", row.set);
        add("low", row.low);
        add("high", row.high);
        add("actual", row.actual);
        add("was", row.was);
        if (row.n != 0) {
            json["n"] = row.n;
        }
        if (row.correctedBy != 0) {
            json["corrected_by"] = row.correctedBy;
        }
        if (const std::string place = placeInWords(row); !place.empty()) {
            json["place"] = place;
        }
        rows.push_back(std::move(json));
    }
    return rows;
}

Json phaseJson(const PhaseRecord& phase) {
    Json json = {
        {"phase", phase.phase}, {"from_n", phase.fromN}, {"from_utc", toIsoUtc(phase.from.utc)}};
    if (phase.toN != 0) {
        json["to_n"] = phase.toN;
    }
    if (phase.took) {
        json["took_s"] = {{"low", seconds(phase.took->lo)}, {"high", seconds(phase.took->hi)}};
    }
    addSecondsIf(json, "low_s", phase.low);
    addSecondsIf(json, "target_s", phase.target);
    addSecondsIf(json, "high_s", phase.high);
    return json;
}

/// The event's own values, as they are stored.
Json detailOf(const Event& event) {
    const auto body = toBody(event);
    const Json parsed = body ? Json::parse(*body, nullptr, false) : Json();
    return parsed.is_object() && parsed.contains("d") ? parsed["d"] : Json::object();
}

Json entryJson(const Retained& entry) {
    return {
        {"n", entry.n},
        {"utc", toIsoUtc(entry.at.utc)},
        {"by", entry.by},
        {"kind", kindOf(entry.d)},
        {"d", detailOf({entry.at, entry.by, "", entry.n, entry.d})}};
}

Json listJson(const std::vector<Retained>& list) {
    Json json = Json::array();
    for (const Retained& entry : list) {
        json.push_back(entryJson(entry));
    }
    return json;
}

template <class Reason>
Json reasonJson(const Reason& reason, std::string_view grade) {
    Json json = {{"code", reason.code}, {"grade", grade}, {"text", reason.text}};
    addIf(json, "limit", reason.limit);
    addIf(json, "actual", reason.actual);
    if (!reason.unit.empty()) {
        json["unit"] = reason.unit;
    }
    return json;
}

Json verdictReasons(const WeldRecord& record) {
    Json reasons = Json::array();
    for (const Finding& finding : record.verdict.findings) {
        Json json = reasonJson(finding, toString(finding.grade));
        json["events"] = eventsBehind(finding, record);
        reasons.push_back(std::move(json));
    }
    return reasons;
}

Json storedJson(const WeldClosed& stored) {
    Json reasons = Json::array();
    for (const StoredReason& reason : stored.reasons) {
        reasons.push_back(reasonJson(reason, reason.grade));
    }
    return {{"verdict", stored.verdict}, {"rules", stored.rules}, {"reasons", reasons}};
}

Json eventsJson(const std::vector<Event>& events) {
    std::set<std::int64_t> standing;
    for (const Retained& one : retained(events)) {
        standing.insert(one.n);
    }
    Json json = Json::array();
    for (const Event& event : events) {
        const bool answer = std::holds_alternative<StepTakenBack>(event.d) ||
                            std::holds_alternative<StepBackdated>(event.d) ||
                            std::holds_alternative<ValueCorrected>(event.d);
        json.push_back(
            {{"n", event.n},
             {"kind", kindOf(event.d)},
             {"utc", toIsoUtc(event.at.utc)},
             {"offset_min", event.at.offset.count()},
             {"boot", event.at.bootId},
             {"boot_ms", event.at.boot.count()},
             {"by", event.by},
             {"stands", answer || standing.count(event.n) > 0},
             {"d", detailOf(event)}});
    }
    return json;
}

Json cuesJson(const std::vector<Event>& events) {
    Json json = Json::array();
    for (const CueDue& due : cueHistory(events)) {
        Json one = {
            {"cue", toString(due.cue.kind)}, {"utc", toIsoUtc(due.utc)}, {"after_n", due.afterN}};
        if (due.cue.count != 0) {
            one["count"] = due.cue.count;
        }
        json.push_back(std::move(one));
    }
    return json;
}

} // namespace

std::string recordJson(const WeldRecord& record, const RecordExtras& extras) {
    const WeldOpened& opened = record.opened;
    const Surroundings air = surroundings(record);
    Json json = {
        {"weld", record.weld},
        {"number", opened.number},
        {"type", toString(opened.type)},
        {"state", record.phaseNow},
        {"opened", {{"n", 1}, {"utc", toIsoUtc(record.openedAt.utc)}, {"by", record.openedBy}}},
        {"bench", opened.bench},
        {"procedure", record.plan.procedure},
        {"edition", record.plan.edition},
        {"material", record.plan.material},
        {"thickness_mm", milli(record.plan.thicknessUm)},
        {"length_mm", milli(record.plan.lengthUm)},
        {"ambient_C", milli(air.ambientMc)},
        {"ambient_n", air.ambientN},
        {"shielded", opened.shielded},
        {"shielded_seen", air.guard == Surroundings::Guard::Seen},
        {"flags", opened.flags},
        {"docs", {{"procedure", opened.docs.procedure}, {"bench", opened.docs.bench}}},
        {"plan", Json::parse(planReportJson(record.plan), nullptr, false)},
        {"set_and_actual", setActualJson(record, extras.bench)},
        {"checks", listJson(record.checks)},
        {"readings", listJson(record.readings)},
        {"beads", listJson(record.beads)},
        {"releases", listJson(record.releases)},
        {"reasons_given", listJson(record.reasons)},
        {"remarks", listJson(record.remarks)},
        {"photos", listJson(record.photos)},
        {"decisions", listJson(record.decisions)},
        {"verdict", toString(record.verdict.word)},
        {"rules", kVerdictRules},
        {"reasons", verdictReasons(record)},
        {"events", eventsJson(record.events)}};
    if (extras.heat != nullptr) {
        json["estimate"] = Json::parse(heatReportJson(*extras.heat), nullptr, false);
    }
    if (const auto backOff = backOffIn(record.readings, record.plan)) {
        json["alignment_backed_off"] = {
            {"over", milli(backOff->overMilli)},
            {"back", milli(backOff->backMilli)},
            {"unit", record.plan.scale->unit}};
    }
    addIf(json, "seam", opened.seam);
    addIf(json, "job", opened.job);
    addIf(json, "part", opened.part);
    addIf(json, "reweld_of", opened.reweldOf);
    addIf(json, "bead_places", opened.beadPlaces);
    if (opened.lostUm) {
        json["lost_mm"] = milli(*opened.lostUm);
    }
    addIf(json["docs"], "material", opened.docs.material);
    for (const Sheet& sheet : opened.sheets) {
        json["sheets"].push_back(sheetJson(sheet));
    }
    for (const std::int64_t length : opened.lengthsUm) {
        json["lengths_mm"].push_back(milli(length));
    }
    json["phases"] = Json::array();
    for (const PhaseRecord& phase : record.phases) {
        json["phases"].push_back(phaseJson(phase));
    }
    if (record.numberedAt) {
        json["numbered_utc"] = toIsoUtc(record.numberedAt->utc);
    }
    if (record.aborted) {
        json["aborted"] = {{"reason", record.aborted->reason}, {"text", record.aborted->text}};
    }
    if (record.stored) {
        json["stored"] = storedJson(*record.stored);
        json["differs_from_stored"] = differsFromStored(record);
    }
    if (extras.coupons != nullptr) {
        json["coupons"] = Json::array();
        for (const CouponSeries& one : *extras.coupons) {
            json["coupons"].push_back(Json::parse(couponJson(one), nullptr, false));
        }
    }
    if (extras.cues) {
        json["cues"] = cuesJson(record.events);
    }
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace seamclock
