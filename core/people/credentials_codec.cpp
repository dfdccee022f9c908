#include "core/people/credentials_codec.h"

#include "core/base/json_reader.h"

#include <utility>

namespace seamclock {

namespace {

// As libsodium's bounds, with a ceiling that no file may push a shop's tablet over.
constexpr std::int64_t kMostOperations = 16;
constexpr std::int64_t kMostMemory = std::int64_t{1} << 30;
constexpr std::int64_t kLeastMemory = 8192;

bool isHex(const std::string& text, std::size_t digits) {
    return text.size() == digits && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

std::string hexOf(JsonReader& reader, const char* key, std::size_t digits) {
    std::string text = reader.text(key);
    if (!isHex(text, digits)) {
        reader.complain(key, "is not " + std::to_string(digits) + " hexadecimal digits");
    }
    return text;
}

PinBox readBox(JsonReader& reader) {
    PinBox out;
    out.salt = hexOf(reader, "salt", 32);
    out.nonce = hexOf(reader, "nonce", 48);
    out.box = reader.text("box");
    if (!isHex(out.box, 32) && !isHex(out.box, 96)) { // without and with a key of 32 bytes
        reader.complain("box", "is not 32 or 96 hexadecimal digits");
    }
    out.operations = reader.integer("operations", 1, kMostOperations);
    out.memory = reader.integer("memory_bytes", kLeastMemory, kMostMemory);
    if (auto wrong = reader.objectIf("wrong")) {
        out.wrong.count = static_cast<int>(wrong->integer("count", 1, 1'000'000));
        out.wrong.bootId = wrong->text("boot");
        out.wrong.boot = Milliseconds(wrong->integer("boot_ms", 0, INT64_MAX));
        wrong->refuseUnknown();
    }
    reader.refuseUnknown();
    return out;
}

} // namespace

Result<CredentialsContent> readCredentials(std::string_view name, std::string_view text) {
    const auto damaged = [](const Error& error) { return fail(ErrorCode::Damaged, error.detail); };
    const auto parsed = parseJson(name, text);
    if (!parsed) {
        return damaged(parsed.error());
    }
    JsonReader root(*parsed);
    root.integer("v", 1, 1);
    CredentialsContent out;
    if (root.has("station_seed")) {
        out.stationSeed = hexOf(root, "station_seed", 64);
    }
    JsonReader people = root.object("people");
    for (const std::string& person : people.keys()) {
        JsonReader one = people.object(person.c_str());
        out.people.emplace(person, readBox(one));
    }
    people.refuseUnknown();
    root.refuseUnknown();
    if (const auto sound = root.verdict(); !sound) {
        return damaged(sound.error());
    }
    return out;
}

std::string credentialsText(const CredentialsContent& content) {
    Json people = Json::object();
    for (const auto& [person, box] : content.people) {
        Json one = {
            {"salt", box.salt},
            {"nonce", box.nonce},
            {"box", box.box},
            {"operations", box.operations},
            {"memory_bytes", box.memory}};
        if (box.wrong.count > 0) {
            one["wrong"] = {
                {"count", box.wrong.count},
                {"boot", box.wrong.bootId},
                {"boot_ms", box.wrong.boot.count()}};
        }
        people[person] = std::move(one);
    }
    Json root = {{"v", 1}, {"people", std::move(people)}};
    if (!content.stationSeed.empty()) {
        root["station_seed"] = content.stationSeed;
    }
    return root.dump(1) + "\n";
}

} // namespace seamclock
