// JSON as this project reads and writes it. nlohmann-json does the work; what it leaves open is
// closed here: duplicate keys are refused, a complaint names the line and the field, and event
// bodies have one canonical form (keys sorted bytewise, no spaces, no floats, no null). Costly to
// compile: only files named *codec* or *json* may include it.
#pragma once

#include "core/base/canonical_json.h"
#include "core/base/plain_number.h"
#include "core/base/result.h"

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace seamclock {

using Json = nlohmann::json;

/// A parsed text that still knows its lines.
struct JsonText {
    std::string name; // what to call it in a complaint: usually the file's name
    std::string text;
    Json root;

    /// The line (from 1) on which the value at a JSON pointer (RFC 6901) begins; 0 if there is
    /// none.
    int lineOf(const std::string& pointer) const;
};

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

/// A value of a text that a person wrote, or of an event body; valid as long as that.
class JsonNode {
public:
    JsonNode() = default; // an object without fields
    explicit JsonNode(const Json& value) : m_value(&value) {}
    explicit JsonNode(CanonicalValue value) : m_value(value) {}

    bool isObject() const;
    bool isList() const;
    std::size_t size() const;            // members or items
    std::vector<JsonNode> items() const; // of a list
    std::vector<std::string> keys() const;
    struct Member;
    std::optional<Member> find(const char* key) const;

    // Absent if it is something else, or a number that is not finite or beyond int64.
    std::optional<std::string> text() const;
    std::optional<double> number() const;
    std::optional<std::int64_t> integer() const;
    std::optional<bool> flag() const;

    /// As it stands in the text, cut to a length that fits a sentence.
    std::string described() const;

private:
    std::variant<std::monostate, const Json*, CanonicalValue> m_value;
};

struct JsonNode::Member {
    std::size_t place; // among keys()
    JsonNode value;
};

/// Reads one object field by field and remembers everything that is wrong with it, so that a person
/// who checks a file sees all of it at once (the first hundred). A reader of a child shares the
/// parent's list.
class JsonReader {
public:
    struct Finding {
        int line;
        std::string field; // JSON pointer, "" for the whole
        std::string reason;
    };

    /// The text must outlive its readers.
    explicit JsonReader(const JsonText& text);
    explicit JsonReader(const JsonText&& text) = delete;
    /// Of an event body, which is one line.
    JsonReader(std::string name, CanonicalValue value);

    bool has(const char* key) const;
    std::string text(const char* key); // "" and a finding if absent or not a string
    std::optional<std::string> textIf(const char* key);
    /// What to say behind the range of a number that is outside it: its unit, or what it would be
    /// in another.
    using Aside = std::function<std::string(double)>;
    double number(const char* key, double low, double high, const Aside& aside = {});
    std::optional<double>
    numberIf(const char* key, double low, double high, const Aside& aside = {});
    std::int64_t integer(const char* key, std::int64_t low, std::int64_t high);
    std::optional<std::int64_t> integerIf(const char* key, std::int64_t low, std::int64_t high);
    bool flag(const char* key);
    std::optional<bool> flagIf(const char* key);
    std::vector<std::string> texts(const char* key);
    JsonReader object(const char* key); // reads as an empty object, with a finding, if absent
    std::optional<JsonReader> objectIf(const char* key);
    std::vector<JsonReader> objects(const char* key);
    std::vector<double> numbers(const char* key);
    std::vector<std::int64_t> integers(const char* key, std::int64_t low, std::int64_t high);
    std::vector<std::string> keys() const;

    /// The value is used, whatever it is (explanations and the like).
    void ignore(const char* key);
    /// Everything not read by now is unknown: a finding for each.
    void refuseUnknown();
    void complain(const char* key, std::string reason);
    std::string pointer() const; // RFC 6901; "" of the whole

    const std::vector<Finding>& findings() const { return m_notes->findings; }
    /// "name, line 12, /plate/min_C: 410 is outside 0 to 400" for the first finding; Malformed.
    Result<void> verdict() const;

private:
    struct Notes {
        std::string name;
        const std::string* text = nullptr; // of several lines
        std::vector<Finding> findings;
        std::map<std::string, int> lines; // by pointer; filled at the first complaint
        struct Step {
            std::size_t from; // another step; 0: the whole
            std::string key;
            std::optional<std::size_t> item; // of a list
        };
        std::vector<Step> steps; // to each child that was read, from 1
    };

    JsonReader(JsonNode node, std::size_t step, std::shared_ptr<Notes> notes);
    JsonReader child(JsonNode node, const char* key, std::optional<std::size_t> item = {}) const;
    std::optional<JsonNode> find(const char* key, bool required);
    std::optional<double>
    readNumber(const char* key, bool required, double low, double high, const Aside& aside);
    std::optional<std::int64_t>
    readInteger(const char* key, bool required, std::int64_t low, std::int64_t high);
    /// The items of a list; none, with a complaint, if it is no list.
    std::vector<JsonNode> list(const char* key, const char* otherwise);
    std::string at(const char* key) const;

    JsonNode m_node;
    std::size_t m_step;         // to here; a pointer is written only for a complaint
    std::uint64_t m_read = 0;   // by place
    std::vector<bool> m_behind; // those behind that
    std::shared_ptr<Notes> m_notes;
};

} // namespace seamclock
