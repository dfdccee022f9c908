#include "core/base/json_reader.h"
#include "core/base/plain_number.h"
#include "core/plan/sheets.h"
#include "core/shift/job.h"
#include "core/shift/job_limits.h"
#include "core/shift/seam_label.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <set>
#include <system_error>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

Sheet readSheet(JsonReader reader, double thicknessMm) {
    Sheet sheet;
    sheet.material = reader.text("material");
    sheet.grade = reader.textIf("grade");
    sheet.maker = reader.text("maker");
    sheet.batch = reader.text("batch");
    sheet.thicknessUm = std::llround(thicknessMm * 1e3);
    const auto condition = reader.textIf("mfr_condition");
    if (const auto flow = reader.numberIf("mfr_g_10min", 0, 1000)) {
        sheet.mfr = meltFlowText(*flow, condition.value_or(""));
    }
    reader.refuseUnknown();
    return sheet;
}

std::optional<int> wholeIf(JsonReader& reader, const char* key, int low, int high) {
    const auto value = reader.numberIf(key, low, high);
    if (value && *value != std::floor(*value)) {
        reader.complain(
            key, plainNumber(*value) + " is not a whole number; allowed " + std::to_string(low) +
                     " to " + std::to_string(high));
    }
    return value ? std::optional<int>(static_cast<int>(*value)) : std::nullopt;
}

JobSeam readSeam(JsonReader reader, const std::string& folder) {
    JobSeam seam;
    reader.ignore("id");
    seam.label = reader.text("label");
    if (const std::string why = whyNoLabel(seam.label); !why.empty()) {
        reader.complain("label", why);
    }
    seam.what = reader.text("what");
    seam.procedure = reader.text("procedure");
    seam.benchFile = folder + "/" + reader.text("bench");
    seam.thicknessMm = reader.number("thickness_mm", kThinnestMm, kThickestMm);
    seam.lengthsMm = reader.numbers("lengths_mm");
    for (const double length : seam.lengthsMm) {
        if (!(length > 0 && length <= kLongestMm)) {
            reader.complain("lengths_mm", plainNumber(length) + " is outside 0 to 100000");
        }
    }
    seam.dragN = reader.number("drag_N", 0, kGreatestDragN);
    seam.ambientC = reader.number("ambient_C", -40, 60);
    seam.shielded = reader.flag("shielded");
    seam.beadPlaces = wholeIf(reader, "bead_places", 1, kMostBeadPlaces);
    seam.rewelds = wholeIf(reader, "rewelds_allowed", 0, kMostRewelds);
    for (const JsonReader& sheet : reader.objects("sheets")) {
        seam.sheets.push_back(readSheet(sheet, seam.thicknessMm));
    }
    if (seam.sheets.size() != 2) {
        reader.complain("sheets", std::to_string(seam.sheets.size()) + " sheets instead of 2");
    }
    reader.refuseUnknown();
    return seam;
}

Result<std::string> firstJobFile(const std::string& folder) {
    std::vector<std::string> files;
    std::error_code trouble;
    for (fs::directory_iterator file(folder, trouble), end; !trouble && file != end;
         file.increment(trouble)) {
        const std::string name = file->path().filename().string();
        if (name.rfind("job-", 0) == 0 && file->path().extension() == ".json") {
            files.push_back(file->path().string());
        }
    }
    if (trouble || files.empty()) {
        return fail(
            ErrorCode::Missing,
            "the job folder \"" + folder + "\" has no job; allowed: a folder with job-*.json");
    }
    return *std::min_element(files.begin(), files.end());
}

} // namespace

Result<Job> readFirstJob(const std::string& folder) {
    const auto file = firstJobFile(folder);
    if (!file) {
        return tl::unexpected(file.error());
    }
    return readJobFile(*file);
}

Result<Job> readJobFile(const std::string& file) {
    const std::string folder = fs::path(file).parent_path().string();
    const auto text = parseJsonFile(file);
    if (!text) {
        return tl::unexpected(text.error());
    }
    JsonReader reader(*text);
    Job job;
    if (reader.text("format") != "seamclock-job/1") {
        reader.complain("format", "is not seamclock-job/1");
    }
    job.name = reader.textIf("id").value_or("");
    job.order = reader.textIf("order").value_or("");
    job.shop = reader.textIf("shop").value_or("");
    job.part = reader.textIf("part").value_or("");
    for (JsonReader person : reader.objects("people")) {
        const std::string id = person.text("id");
        person.ignore("name");
        if (person.text("role") == "operator" && job.operatorId.empty()) {
            job.operatorId = "person:" + id;
        }
        person.refuseUnknown();
    }
    for (const JsonReader& seam : reader.objects("seams")) {
        job.seams.push_back(readSeam(seam, folder.empty() ? "." : folder));
    }
    std::set<std::string> labels;
    for (const JobSeam& seam : job.seams) {
        if (!labels.insert(seam.label).second) {
            reader.complain(
                "seams", "\"" + seam.label + "\" is there twice; allowed: each label once");
        }
    }
    job.name = job.order.empty() ? job.name : job.order;
    for (JobSeam& seam : job.seams) {
        seam.job = job.name;
        seam.part = job.part;
    }
    if (job.seams.empty()) {
        reader.complain("seams", "there is no seam");
    }
    reader.refuseUnknown();
    const auto sound = reader.verdict();
    if (!sound) {
        return tl::unexpected(sound.error());
    }
    return job;
}

} // namespace seamclock
