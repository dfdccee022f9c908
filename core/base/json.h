// JSON as this project reads and writes it. nlohmann-json does the work; what it leaves open is
// closed here: duplicate keys are refused, a complaint names the line and the field, and event
// bodies have one canonical form (keys sorted bytewise, no spaces, no floats, no null). Costly to
// compile: only files named *codec* or *json* may include it.
#pragma once

#include "core/base/result.h"

#include <map>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

namespace seamclock {

using Json = nlohmann::json;

struct JsonText {
    std::string name; // what to call it in a complaint: usually the file's name
    std::string text;
    Json root;
};

/// The line (from 1) on which each value of an accepted text begins, by its JSON pointer.
std::map<std::string, int> linesOf(std::string_view text);
/// A key as it stands in a JSON pointer (RFC 6901).
std::string pointerPart(const std::string& key);

/// What is wrong with a text as a whole; line 0: it can't be told.
struct JsonProblem {
    int line = 0;
    std::string reason;
};
tl::expected<JsonText, JsonProblem> scanJson(std::string_view name, std::string_view text);

/// Malformed: not JSON, empty, a zero byte, a duplicate key, or deeper than 64 levels; the detail
/// names the line where there is one. A byte order mark at the start is passed over.
Result<JsonText> parseJson(std::string_view name, std::string_view text);

/// Unreadable: no such file, not readable, a directory, larger than 16 MB. Otherwise as parseJson.
Result<JsonText> parseJsonFile(const std::string& path);

/// The canonical bytes of an event body. Malformed: it holds a float, a null or invalid UTF-8.
Result<std::string> canonicalJson(const Json& value);

/// The reverse. Malformed: the bytes are not what canonicalJson would write.
Result<Json> parseCanonical(std::string_view body);

} // namespace seamclock
