// What every event body has around its details, whatever its kind: enough to file it, and to refuse
// what is no body. Kinds are a closed list of names here; whether the details make sense is for the
// codec of that kind to say.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

struct Envelope {
    Instant at;
    std::string by;
    std::string subject;
    std::int64_t n = 0;
    std::string kind;
    std::vector<std::string> documents; // SHA-256 of every document that it names
    bool practice = false;              // it speaks of practice: no other log may hold it

    bool operator==(const Envelope&) const = default;
};

/// Malformed, in one sentence: not canonical, a part missing, unknown or of the wrong type, another
/// version, an unknown kind, or a subject that this kind can't have.
Result<Envelope> readEnvelope(std::string_view body);

/// Whether the details of this kind have a form in fact_codec.h.
bool isFactWithForm(std::string_view kind);

/// "weld:…"
bool isWeld(std::string_view subject);

/// Why a log of this world can't hold it, in one sentence; absent: it can.
std::optional<std::string> wrongWorld(const Envelope& envelope, std::string_view world);

/// Whether that kind may stand under that subject ("station", "bench:ID", …). Unknown kinds may
/// not.
bool fits(std::string_view kind, std::string_view subject);

} // namespace seamclock
