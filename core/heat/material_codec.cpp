#include "core/heat/material_codec.h"

#include "core/base/json_reader.h"
#include "core/base/plain_number.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <tuple>
#include <utility>

namespace seamclock {
namespace {

constexpr const char* kFormat = "seamclock-material/1";
constexpr double kColdest = -60;
constexpr double kHottest = 420;
constexpr std::array<const char*, 4> kStandings{"seen", "memory", "common_practice", "derived"};

/// The fields of one value: where it is from, and how far it may be off.
class Values {
public:
    Values(JsonReader& reader, Material& material) : m_reader(reader), m_material(material) {}

    double number(const char* field, double low, double high) {
        JsonReader value = m_reader.object(field);
        const double read = value.number("value", low, high);
        finish(field, value);
        return read;
    }

    std::pair<double, double> range(const char* field) {
        JsonReader value = m_reader.object(field);
        const double from = value.number("from", kColdest, kHottest);
        const double to = value.number("to", kColdest, kHottest);
        if (value.has("from") && value.has("to") && !(from < to)) {
            value.complain("to", plainNumber(to) + " is not above " + plainNumber(from));
        }
        finish(field, value);
        return {from, to};
    }

    TemperatureCurve curve(const char* field, double low, double high) {
        JsonReader value = m_reader.object(field);
        TemperatureCurve curve;
        for (JsonReader& point : value.objects("points")) {
            const double celsius = point.number("C", kColdest, kHottest);
            if (!curve.points.empty() && !(curve.points.back().celsius < celsius)) {
                point.complain("C", plainNumber(celsius) + " is not above the one before");
            }
            curve.points.push_back({celsius, point.number("value", low, high)});
            point.refuseUnknown();
        }
        if (value.has("points") && curve.points.empty()) {
            value.complain("points", "is empty");
        }
        finish(field, value);
        return curve;
    }

private:
    void finish(const char* field, JsonReader& value) {
        MaterialSource source{value.text("source"), value.text("standing")};
        if (!source.standing.empty() &&
            std::find(kStandings.begin(), kStandings.end(), source.standing) == kStandings.end()) {
            value.complain(
                "standing",
                "\"" + source.standing + "\" is not one of seen, memory, common_practice, derived");
        }
        if (const auto spread = value.numberIf("spread_percent", 0, 90)) {
            m_material.spread[field] = *spread / 100;
        }
        m_material.sources[field] = std::move(source);
        value.refuseUnknown();
    }

    JsonReader& m_reader;
    Material& m_material;
};

void readCrystals(JsonReader& reader, Values& values, Material& material) {
    const bool any = reader.has("melting_C") || reader.has("crystallisation_C") ||
                     reader.has("heat_of_fusion_kJ_kg");
    if (!any) {
        return;
    }
    Crystallinity crystals;
    std::tie(crystals.meltsFrom, crystals.meltsTo) = values.range("melting_C");
    std::tie(crystals.crystallisesTo, crystals.crystallisesFrom) =
        values.range("crystallisation_C");
    crystals.heat = values.number("heat_of_fusion_kJ_kg", 1, 400) * 1e3;
    if (crystals.crystallisesTo > crystals.meltsFrom ||
        crystals.crystallisesFrom > crystals.meltsTo) {
        reader.complain("crystallisation_C", "lies above melting_C");
    }
    material.crystals = crystals;
}

} // namespace

Result<Material> readMaterial(std::string_view name, std::string_view text) {
    const auto json = parseJson(name, text);
    if (!json) {
        return tl::unexpected<Error>(json.error());
    }
    JsonReader reader(*json);
    if (const std::string format = reader.text("format"); !format.empty() && format != kFormat) {
        reader.complain("format", "\"" + format + "\" is not \"" + kFormat + "\"");
    }
    Material material;
    material.id = reader.text("id");
    material.name = reader.text("name");
    material.plastics = reader.texts("plastics");
    Values values(reader, material);
    material.density = values.number("density_kg_m3", 500, 3000);
    material.meltDensity = values.number("melt_density_kg_m3", 400, 3000);
    if (material.meltDensity > material.density) {
        reader.complain("melt_density_kg_m3", "is above the solid's density");
    }
    material.expansion = values.number("expansion_per_K", 0, 1e-3);
    material.conductivity = values.curve("conductivity_W_mK", 0.05, 2);
    material.meltConductivity = values.curve("melt_conductivity_W_mK", 0.05, 2);
    material.specificHeat = values.curve("specific_heat_J_kgK", 300, 6000);
    readCrystals(reader, values, material);
    material.flow.consistency = values.number("consistency_Pa_s_n", 1, 1e7);
    material.flow.index = values.number("flow_index", 0.1, 1);
    material.flow.activation = values.number("flow_activation_kJ_mol", 0, 300) * 1e3;
    material.flow.reference = values.number("flow_reference_C", 100, 300);
    if (!material.crystals) {
        material.flow.flowsFrom = values.number("flows_from_C", 50, 300);
    }
    if (reader.has("harmful_gas_from_C")) {
        material.gasFrom = values.number("harmful_gas_from_C", 100, 450);
    }
    reader.refuseUnknown();
    if (const auto sound = reader.verdict(); !sound) {
        return tl::unexpected<Error>(sound.error());
    }
    return material;
}

Result<Material> readMaterialFile(const std::string& path) {
    const auto json = parseJsonFile(path);
    if (!json) {
        return tl::unexpected<Error>(json.error());
    }
    return readMaterial(json->name, json->text);
}

Result<std::vector<Material>> readMaterialFolder(const std::string& folder) {
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
    std::sort(paths.begin(), paths.end());
    std::vector<Material> materials;
    for (const std::string& path : paths) {
        auto material = readMaterialFile(path);
        if (!material) {
            return tl::unexpected<Error>(material.error());
        }
        materials.push_back(std::move(*material));
    }
    return materials;
}

} // namespace seamclock
