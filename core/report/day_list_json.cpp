#include "core/base/json.h"
#include "core/report/day_list.h"

namespace seamclock {

std::string jointLineJson(const JointLine& line, const LineSaid& said) {
    Json json = {
        {"weld", line.weld},
        {"number", line.number},
        {"type", line.type},
        {"opened_utc", toIsoUtc(line.openedUtc)},
        {"offset_min", line.offset.count()},
        {"day_local", line.day},
        {"bench", line.bench},
        {"opened_by", line.by},
        {"material", line.material},
        {"thickness_mm", static_cast<double>(line.thicknessUm) / 1000},
        {"length_mm", static_cast<double>(line.lengthUm) / 1000},
        {"procedure", line.procedure},
        {"state", line.phase},
        {"open", line.open},
        {"reasons", line.findings},
        {"events", line.events}};
    const auto addIf = [&json](const char* key, const std::string& value) {
        if (!value.empty()) {
            json[key] = value;
        }
    };
    addIf("seam", line.seam);
    addIf("job", line.job);
    addIf("verdict", line.verdict);
    addIf("verdict_now", line.verdictNow);
    addIf("trouble", line.trouble);
    addIf("part", said.part);
    addIf("first_reason", said.firstReason);
    addIf("decision", said.decision);
    addIf("decided_by", said.decidedBy);
    addIf("signed_off_by", said.signedOffBy);
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace seamclock
