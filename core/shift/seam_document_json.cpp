#include "core/base/json_reader.h"
#include "core/shift/seam_document.h"

#include <nlohmann/json.hpp>

namespace seamclock {
namespace {

constexpr const char* kFormat = "seamclock-seam/1";
constexpr double kLongestMm = 100'000;
constexpr double kThickestMm = 1'000;
constexpr double kGreatestDragN = 100'000;

/// What is not said is absent.
void putText(Json& out, const char* key, const std::string& text) {
    if (!text.empty()) {
        out[key] = text;
    }
}

Json sheetJson(const Sheet& sheet) {
    Json out{{"material", sheet.material}, {"thickness_um", sheet.thicknessUm}};
    putText(out, "maker", sheet.maker);
    putText(out, "batch", sheet.batch);
    putText(out, "grade", sheet.grade.value_or(""));
    putText(out, "mfr", sheet.mfr.value_or(""));
    return out;
}

Sheet sheetFrom(JsonReader reader) {
    Sheet sheet;
    sheet.material = reader.text("material");
    sheet.maker = reader.textIf("maker").value_or("");
    sheet.batch = reader.textIf("batch").value_or("");
    sheet.thicknessUm = reader.integer("thickness_um", 1, 1'000'000);
    sheet.grade = reader.textIf("grade");
    sheet.mfr = reader.textIf("mfr");
    reader.refuseUnknown();
    return sheet;
}

std::optional<int> smallNumber(JsonReader& reader, const char* key, int low, int high) {
    const auto value = reader.integerIf(key, low, high);
    return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
}

} // namespace

std::string seamDocumentBytes(const SeamDocument& document) {
    const JobSeam& seam = document.seam;
    Json out{
        {"format", kFormat},
        {"job", seam.job},
        {"label", seam.label},
        {"procedure", seam.procedure},
        {"thickness_mm", seam.thicknessMm},
        {"lengths_mm", seam.lengthsMm},
        {"shielded", seam.shielded},
        {"withdrawn", document.withdrawn}};
    putText(out, "what", seam.what);
    putText(out, "part", seam.part);
    putText(out, "bench", seam.bench);
    const auto putIf = [&out](const char* key, const auto& value) {
        if (value) {
            out[key] = *value;
        }
    };
    putIf("drag_N", seam.dragN);
    putIf("ambient_C", seam.ambientC);
    putIf("bead_places", seam.beadPlaces);
    putIf("rewelds_allowed", seam.rewelds);
    out["sheets"] = Json::array();
    for (const Sheet& sheet : seam.sheets) {
        out["sheets"].push_back(sheetJson(sheet));
    }
    return out.dump();
}

Result<SeamDocument> readSeamDocument(std::string_view bytes) {
    const auto text = parseJson("seam of the log", bytes);
    if (!text) {
        return tl::unexpected<Error>(text.error());
    }
    JsonReader reader(*text);
    SeamDocument out;
    JobSeam& seam = out.seam;
    if (reader.text("format") != kFormat) {
        reader.complain("format", std::string("is not ") + kFormat);
    }
    seam.job = reader.text("job");
    seam.label = reader.text("label");
    seam.what = reader.textIf("what").value_or("");
    seam.part = reader.textIf("part").value_or("");
    seam.procedure = reader.text("procedure");
    seam.bench = reader.textIf("bench").value_or("");
    seam.thicknessMm = reader.number("thickness_mm", 0, kThickestMm);
    seam.lengthsMm = reader.numbers("lengths_mm");
    for (const double length : seam.lengthsMm) {
        if (!(length > 0 && length <= kLongestMm)) {
            reader.complain("lengths_mm", "a length is outside 0 to 100000");
        }
    }
    seam.shielded = reader.flag("shielded");
    out.withdrawn = reader.flag("withdrawn");
    seam.dragN = reader.numberIf("drag_N", 0, kGreatestDragN);
    seam.ambientC = reader.numberIf("ambient_C", -40, 60);
    seam.beadPlaces = smallNumber(reader, "bead_places", 1, kMostBeadPlaces);
    seam.rewelds = smallNumber(reader, "rewelds_allowed", 0, kMostRewelds);
    for (const JsonReader& sheet : reader.objects("sheets")) {
        seam.sheets.push_back(sheetFrom(sheet));
    }
    if (seam.sheets.size() != 2) {
        reader.complain("sheets", std::to_string(seam.sheets.size()) + " sheets instead of 2");
    }
    reader.refuseUnknown();
    if (const auto sound = reader.verdict(); !sound) {
        return tl::unexpected<Error>(sound.error());
    }
    return out;
}

} // namespace seamclock
