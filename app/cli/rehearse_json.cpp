#include "app/cli/rehearse_json.h"

#include "core/base/json.h"

#include <cmath>
#include <map>

namespace seamclock {
namespace {

std::string printed(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

double rounded(double value, double steps) {
    return std::round(value * steps) / steps;
}
double hundredths(double value) {
    return rounded(value, 100);
}

Json stationJson(const StationView& joining, const StationView& end, const StationBend& bend) {
    Json json = {
        {"place_mm", rounded(end.placeMm, 10)},
        {"melt_at_joining_mm", hundredths(joining.meltMm)},
        {"skin_at_joining_C", rounded(joining.skinC, 10)},
        {"bead_top_mm", hundredths(end.beadTopMm)},
        {"bead_bottom_mm", hundredths(end.beadBottomMm)},
        {"ductile", bend.ductile},
        {"reasons", Json::array()}};
    if (end.joined) {
        json["melt_pressed_out_mm"] = hundredths(end.joined->squeezedMm);
        json["k_top_mm"] = hundredths(end.valleyTopMm);
        json["k_bottom_mm"] = hundredths(end.valleyBottomMm);
        if (end.joined->letGoC) {
            json["weld_plane_at_release_C"] = rounded(*end.joined->letGoC, 10);
        }
    }
    for (const BendReason reason : bend.reasons) {
        json["reasons"].push_back(toString(reason));
    }
    return json;
}

} // namespace

std::string faultsJson(const std::vector<FaultAccount>& accounts) {
    Json list = Json::array();
    for (const FaultAccount& one : accounts) {
        Json json = {
            {"fault", one.code},
            {"option", one.option},
            {"needs_physics", one.needsBench},
            {"found", !one.finding.empty()},
            {"why", one.why},
            {"bend_test", toString(one.bend)}};
        if (!one.finding.empty()) {
            json["reason"] = one.finding;
            json["grade"] = one.grade;
            if (!one.also.empty()) {
                json["also"] = one.also;
            }
        }
        list.push_back(std::move(json));
    }
    return printed({{"faults", std::move(list)}});
}

std::string withPhysics(const std::string& record, const BenchStory& story) {
    Json json = Json::parse(record, nullptr, false);
    Json stations = Json::array();
    for (std::size_t i = 0; i < story.bend.stations.size(); ++i) {
        const bool met = i < story.joining.stations.size();
        stations.push_back(stationJson(
            met ? story.joining.stations[i] : story.end.stations[i], story.end.stations[i],
            story.bend.stations[i]));
    }
    json["physics"] = {
        {"ductile", story.bend.ductile},
        {"kink_deg", rounded(story.end.kinkDeg, 10)},
        {"melt_at_joining_by_plan_mm", hundredths(story.end.planMeltMm)},
        {"stations", std::move(stations)}};
    return printed(json);
}

SeriesLine seriesLine(const SeriesWeld& weld) {
    const WeldRecord& record = weld.record;
    SeriesLine line;
    line.number = record.opened.number;
    line.weld = record.weld;
    line.openedUtc = toIsoUtc(record.openedAt.utc);
    line.by = record.openedBy;
    line.seam = record.opened.seam.value_or("");
    line.verdict = toString(record.verdict.word);
    for (const Finding& finding : record.verdict.findings) {
        line.reasons.push_back(finding.code);
    }
    if (weld.bench) {
        line.ductile = weld.bench->bend.ductile;
    }
    return line;
}

std::string seriesJson(const SeriesResult& result, const std::vector<SeriesLine>& lines) {
    Json welds = Json::array();
    std::map<std::string, int> verdicts;
    for (const SeriesLine& line : lines) {
        Json json = {{"number", line.number},        {"weld", line.weld},
                     {"opened_utc", line.openedUtc}, {"by", line.by},
                     {"verdict", line.verdict},      {"reasons", line.reasons}};
        if (!line.seam.empty()) {
            json["seam"] = line.seam;
        }
        if (line.ductile) {
            json["ductile"] = *line.ductile;
        }
        welds.push_back(std::move(json));
        ++verdicts[line.verdict];
    }
    Json json = {
        {"log", result.logPath},
        {"count", result.welds},
        {"verdicts", verdicts},
        {"welds", std::move(welds)}};
    if (result.aside) {
        json["set_aside"] = result.aside->note;
    }
    return printed(json);
}

} // namespace seamclock
