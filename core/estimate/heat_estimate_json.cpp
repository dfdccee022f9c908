#include "core/estimate/heat_estimate_json.h"

#include "core/base/json.h"

#include <cmath>
#include <fmt/format.h>

namespace seamclock {
namespace {

struct Field {
    const char* name;
    std::optional<HeatRange> HeatNumbers::*value;
    double unit;      // what the number is rounded to
    double scale = 1; // to the unit of its name
};
constexpr std::array kFields{
    Field{"alignment_s", &HeatNumbers::alignS, 0.1},
    Field{"bead_mm", &HeatNumbers::beadMm, 0.01},
    Field{"melt_depth_mm", &HeatNumbers::meltDepthMm, 0.01},
    Field{"skin_end_of_soak_C", &HeatNumbers::skinEndOfSoakC, 0.1},
    Field{"skin_molten_in_air_s", &HeatNumbers::moltenInAirS, 0.1},
    Field{"skin_faces_meet_C", &HeatNumbers::skinFacesMeetC, 0.1},
    Field{"weld_plane_at_release_C", &HeatNumbers::weldPlaneAtReleaseC, 0.1},
    Field{"weld_plane_at_chosen_s", &HeatNumbers::chosenReachedS, 1},
    Field{"sheet_loss_mm", &HeatNumbers::sheetLossMm, 0.01},
    Field{"closing_after_lock_mm", &HeatNumbers::closingMm, 0.01},
    Field{"pressure_fall_N_mm2", &HeatNumbers::pressureFallPa, 0.0001, 1e-6},
    Field{"reading_fall", &HeatNumbers::readingFallUnits, 0.01}};

double rounded(double value, double unit) {
    const double perUnit = std::round(1 / unit);
    return std::round(value * perUnit) / perUnit;
}

} // namespace

std::string_view toString(HeatStage::At at) {
    switch (at) {
    case HeatStage::At::Plate:
        return "plate";
    case HeatStage::At::Air:
        return "air";
    case HeatStage::At::Sheet:
        return "sheet";
    }
    return "";
}

std::string heatReportJson(const HeatEstimate& estimate) {
    Json out = Json::object();
    const HeatCourse& course = estimate.course;
    out["estimate"] = "explains a weld and judges none; the procedure's limits and a person do";
    out["material"] = estimate.material.name;
    out["thickness_mm"] = rounded(inMillimetres(course.inputs.thickness), 0.001);
    out["ambient_C"] = rounded(course.inputs.ambientC, 0.001);
    out["plate_C"] = rounded(course.inputs.plateC, 0.001);
    out["melting_C"] = rounded(estimate.meltingC, 0.1);
    out["chosen_C"] = rounded(estimate.chosenC, 0.1);
    const auto time = [&out](const char* name, const std::optional<double>& seconds) {
        if (seconds) {
            out["times_s"][name] = rounded(*seconds, 0.001);
        }
    };
    time("alignment", course.alignSeconds);
    time("soak", course.soak);
    time("changeover", course.changeover);
    time("build_up", course.buildUp);
    time("cooling", course.cooling);
    Json spread = Json::object();
    for (const Field& field : kFields) {
        if (const auto& value = estimate.numbers.*field.value) {
            const auto shown = [&field](double number) {
                return rounded(number * field.scale, field.unit);
            };
            out[field.name] = shown(value->likely);
            spread[field.name] = {{"low", shown(value->low)}, {"high", shown(value->high)}};
        }
    }
    out["spread"] = std::move(spread);
    for (const HeatFactor& factor : heatFactors(estimate.material)) {
        out["spread_from"].push_back({{"input", factor.name}, {"range", factor.range}});
    }
    for (const auto& [name, source] : estimate.material.sources) {
        out["sources"].push_back(
            {{"value", name}, {"source", source.text}, {"standing", source.standing}});
    }
    return out.dump(2);
}

std::string withEstimate(const std::string& object, const HeatEstimate& estimate) {
    Json out = Json::parse(object);
    out["estimate"] = Json::parse(heatReportJson(estimate));
    return out.dump(2, ' ', false, Json::error_handler_t::replace);
}

std::string heatCurvesCsv(const HeatEstimate& estimate) {
    std::string out =
        "seconds,against,skin_C,melt_depth_mm,bead_mm,sheet_loss_mm,pressure_N_mm2\r\n";
    for (const HeatPoint& point : estimate.curve) {
        out += fmt::format(
            "{:.3f},{},{:.2f},{:.3f},{:.3f},{:.3f},{:.5f}\r\n", point.seconds, toString(point.at),
            point.faceC, point.meltDepthMm, point.beadMm, point.sheetLossMm,
            point.pressurePa / 1e6);
    }
    return out;
}

} // namespace seamclock
