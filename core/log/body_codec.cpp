#include "core/log/body_codec.h"

#include "core/base/json.h"
#include "core/log/fact.h"
#include "core/log/world.h"
#include "core/weld/event.h"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

namespace seamclock {

namespace {

// The first word of a subject, its colon included; "station" stands alone.
using Kinds = std::multimap<std::string_view, std::string_view>;

template <class Variant, std::size_t... I>
std::array<std::string_view, sizeof...(I)> kindsOf(std::index_sequence<I...>) {
    return {kindOf(Variant(std::in_place_index<I>))...};
}

template <class Variant>
auto kindsOf() {
    return kindsOf<Variant>(std::make_index_sequence<std::variant_size_v<Variant>>{});
}

const Kinds& kinds() {
    static const Kinds all = [] {
        Kinds out = {
            {"program_started", "station"},
            {"program_stopped", "station"},
            {"sound_lost", "station"},
            {"sound_back", "station"},
            {"clock_jumped", "station"},
            {"rows_spilled", "station"},
            {"rows_joined", "station"},
            {"log_imported", "station"},
            {"head_signed", "station"},
            {"key_set", "station"},
            {"key_set", "person:"},
            {"person_set", "person:"},
            {"pin_changed", "person:"},
            {"certificate_noted", "person:"},
            {"bench_set", "bench:"},
            {"calibration_set", "bench:"},
            {"procedure_set", "procedure:"},
            {"procedure_attested", "procedure:"},
            {"attestation_withdrawn", "procedure:"},
            {"seam_set", "seam:"},
            {"coupon_tested", "seam:"},
            {"coupon_tested", "coupon:"},
            {"day_sealed", "day:"},
            {"practice_made", "practice:"},
        };
        for (const std::string_view kind : kindsOf<WeldDetail>()) {
            out.emplace(kind, "weld:");
        }
        return out;
    }();
    return all;
}

tl::unexpected<Error> wrong(std::string reason) {
    return fail(ErrorCode::Malformed, "an event body " + std::move(reason));
}

bool hasExactly(const Json& object, std::initializer_list<const char*> keys) {
    return object.is_object() && object.size() == keys.size() &&
           std::all_of(
               keys.begin(), keys.end(), [&](const char* key) { return object.contains(key); });
}

void addDocument(const Json& object, const char* key, std::vector<std::string>& out) {
    const auto found = object.find(key);
    if (found != object.end() && found->is_string()) {
        out.push_back(found->get<std::string>());
    }
}

} // namespace

bool isWeld(std::string_view subject) {
    return subject.substr(0, 5) == "weld:";
}

bool isFactWithForm(std::string_view kind) {
    static const auto all = kindsOf<FactDetail>();
    return std::find(all.begin(), all.end(), kind) != all.end();
}

std::optional<std::string> wrongWorld(const Envelope& envelope, std::string_view world) {
    if (!envelope.practice || world == Practice::kName) {
        return std::nullopt;
    }
    return "it is of the practice bench, and the log of " + std::string(world);
}

bool fits(std::string_view kind, std::string_view subject) {
    const auto [from, to] = kinds().equal_range(kind);
    return std::any_of(from, to, [&](const auto& entry) {
        const std::string_view family = entry.second;
        return family.back() == ':'
                   ? subject.size() > family.size() && subject.substr(0, family.size()) == family
                   : subject == family;
    });
}

Result<Envelope> readEnvelope(std::string_view body) {
    const auto parsed = parseCanonical(body);
    if (!parsed) {
        return tl::unexpected<Error>(parsed.error());
    }
    const Json& root = *parsed;
    if (!hasExactly(root, {"at", "by", "d", "kind", "n", "subject", "v"})) {
        return wrong("does not consist of at, by, d, kind, n, subject and v");
    }
    const Json& at = root["at"];
    if (!hasExactly(at, {"boot", "boot_ms", "offset_min", "utc_ms"}) || !at["boot"].is_string() ||
        !at["boot_ms"].is_number_integer() || !at["offset_min"].is_number_integer() ||
        !at["utc_ms"].is_number_integer()) {
        return wrong(
            "has an instant that does not consist of boot, boot_ms, offset_min and utc_ms");
    }
    if (!root["v"].is_number_integer() || root["v"] != 1) {
        return wrong("has version " + root["v"].dump() + ", and this program knows 1");
    }
    if (!root["by"].is_string() || !root["kind"].is_string() || !root["subject"].is_string() ||
        !root["n"].is_number_integer() || !root["d"].is_object()) {
        return wrong("has a part of the wrong type");
    }
    Envelope out;
    out.at.bootId = at["boot"].get<std::string>();
    out.at.boot = Milliseconds(at["boot_ms"].get<std::int64_t>());
    out.at.utc = Milliseconds(at["utc_ms"].get<std::int64_t>());
    const auto offset = at["offset_min"].get<std::int64_t>();
    if (offset < -24 * 60 || offset > 24 * 60) {
        return wrong("has an offset of " + std::to_string(offset) + " min; allowed -1440 to 1440");
    }
    out.at.offset = std::chrono::minutes(offset);
    out.by = root["by"].get<std::string>();
    out.subject = root["subject"].get<std::string>();
    out.kind = root["kind"].get<std::string>();
    out.n = root["n"].get<std::int64_t>();
    if (out.n < 1) {
        return wrong("has n " + std::to_string(out.n) + "; it counts from 1");
    }
    if (kinds().find(out.kind) == kinds().end()) {
        return wrong("has the unknown kind \"" + out.kind + "\"");
    }
    if (!fits(out.kind, out.subject)) {
        return wrong("of kind \"" + out.kind + "\" has the subject \"" + out.subject + "\"");
    }
    const Json& detail = root["d"];
    if (isWeld(out.subject)) {
        const auto docs = detail.find("docs");
        if (docs != detail.end() && docs->is_object()) {
            addDocument(*docs, "procedure", out.documents);
            addDocument(*docs, "bench", out.documents);
            addDocument(*docs, "material", out.documents);
        }
    } else {
        addDocument(detail, "doc", out.documents);
        addDocument(detail, "lesson_doc", out.documents);
    }
    const auto type = detail.find("type");
    out.practice = out.kind == "practice_made" ||
                   (out.kind == "weld_opened" && type != detail.end() && *type == "practice");
    return out;
}

} // namespace seamclock
