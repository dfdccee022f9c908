#include "core/practice/practice_take_codec.h"

#include "core/base/json_reader.h"
#include "core/vbench/bench_act_codec.h"

#include <limits>
#include <utility>

namespace seamclock {
namespace {

constexpr const char* kFormat = "seamclock-take/1";
constexpr std::int64_t kLongestMs = 24LL * 3600 * 1000;
constexpr std::int64_t kFarthestMs = std::numeric_limits<std::int64_t>::max() / 4;
constexpr std::int64_t kDayMin = 24 * 60;

Json actsJson(const std::vector<TimedAct>& acts) {
    Json json = Json::array();
    for (const TimedAct& act : acts) {
        Json one = benchActJson(act.act);
        one["at_ms"] = act.at.count();
        json.push_back(std::move(one));
    }
    return json;
}

/// Times of a list may not fall, nor lie behind the take's end.
class Times {
public:
    explicit Times(std::int64_t length) : m_length(length) {}

    Milliseconds read(JsonReader& reader) {
        const std::int64_t at = reader.integer("at_ms", 0, m_length);
        if (at < m_last) {
            reader.complain(
                "at_ms", std::to_string(at) + " is before the " + std::to_string(m_last) +
                             " of the one above it");
        }
        m_last = at;
        return Milliseconds(at);
    }

private:
    std::int64_t m_length;
    std::int64_t m_last = 0;
};

std::vector<TimedAct> readActs(JsonReader& root, const char* key, std::int64_t length) {
    std::vector<TimedAct> acts;
    Times times(length);
    for (JsonReader& reader : root.objects(key)) {
        const Milliseconds at = times.read(reader);
        if (auto act = readBenchActFrom(reader)) {
            acts.push_back({at, *act});
        }
        reader.refuseUnknown();
    }
    return acts;
}

std::vector<Noticed> readNoticed(JsonReader& root, std::int64_t length) {
    std::vector<Noticed> noticed;
    Times times(length);
    for (JsonReader& reader : root.objects("noticed")) {
        const Milliseconds at = times.read(reader);
        const std::string code = reader.text("what");
        if (const auto what = wrongFromString(code)) {
            noticed.push_back({at, *what});
        } else if (!code.empty()) {
            reader.complain("what", "\"" + code + "\" is nothing that can be noticed");
        }
        reader.refuseUnknown();
    }
    return noticed;
}

Instant readBegan(JsonReader& root) {
    JsonReader reader = root.object("began");
    Instant began;
    began.bootId = reader.text("boot");
    began.boot = Milliseconds(reader.integer("boot_ms", 0, kFarthestMs));
    began.offset = std::chrono::minutes(reader.integer("offset_min", -kDayMin, kDayMin));
    began.utc = Milliseconds(reader.integer("utc_ms", -kFarthestMs, kFarthestMs));
    reader.refuseUnknown();
    return began;
}

} // namespace

Result<std::string> takeText(const PracticeTake& take) {
    Json noticed = Json::array();
    for (const Noticed& each : take.noticed) {
        noticed.push_back({{"at_ms", each.at.count()}, {"what", toString(each.what)}});
    }
    Json json{
        {"format", kFormat},
        {"lesson", take.lesson},
        {"weld", take.weld},
        {"began",
         {{"boot", take.began.bootId},
          {"boot_ms", take.began.boot.count()},
          {"offset_min", take.began.offset.count()},
          {"utc_ms", take.began.utc.count()}}},
        {"length_ms", take.length.count()},
        {"acts", actsJson(take.acts)},
        {"tries", actsJson(take.tries)},
        {"noticed", std::move(noticed)},
        {"call_taken", take.callTaken}};
    if (take.callAt) {
        json["call_at_ms"] = take.callAt->count();
    }
    for (const auto& [key, sha256] :
         {std::pair("procedure", &take.procedureSha256), std::pair("bench", &take.benchSha256)}) {
        if (!sha256->empty()) {
            json[key] = *sha256;
        }
    }
    return canonicalJson(json);
}

Result<PracticeTake> readTake(std::string_view name, std::string_view text) {
    const auto json = parseJson(name, text);
    if (!json) {
        return tl::unexpected<Error>(json.error());
    }
    JsonReader root(*json);
    if (const std::string format = root.text("format"); !format.empty() && format != kFormat) {
        root.complain("format", "\"" + format + "\" is not \"" + kFormat + "\"");
    }
    PracticeTake take;
    take.lesson = root.text("lesson");
    take.weld = root.text("weld");
    take.began = readBegan(root);
    const std::int64_t length = root.integer("length_ms", 0, kLongestMs);
    take.length = Milliseconds(length);
    take.acts = readActs(root, "acts", length);
    take.tries = readActs(root, "tries", length);
    take.noticed = readNoticed(root, length);
    take.callTaken = root.flag("call_taken");
    if (const auto at = root.integerIf("call_at_ms", 0, length)) {
        take.callAt = Milliseconds(*at);
    }
    take.procedureSha256 = root.textIf("procedure").value_or("");
    take.benchSha256 = root.textIf("bench").value_or("");
    root.refuseUnknown();
    if (const auto sound = root.verdict(); !sound) {
        return tl::unexpected<Error>(sound.error());
    }
    return take;
}

} // namespace seamclock
