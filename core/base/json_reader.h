// Reading the fields of a JSON object one by one, whether it stands in a file that a person wrote
// (json.h) or in an event body (canonical_json.h): absent, of another kind or out of range is a
// finding with its line and field, and whoever reads goes on. Costly to compile, as json.h is.
#pragma once

#include "core/base/canonical_json.h"
#include "core/base/json.h"
#include "core/base/result.h"

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace seamclock {

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
