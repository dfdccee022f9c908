#include "core/base/json_reader.h"

#include "core/base/plain_number.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <utility>

namespace seamclock {

namespace {

constexpr std::size_t kMostFindings = 100; // more than a person reads
constexpr std::size_t kInWord = 64;        // fields of an object that a word can mark

bool isBeyondInt64(const Json& integer) {
    return integer.is_number_unsigned() &&
           integer.get<std::uint64_t>() > static_cast<std::uint64_t>(INT64_MAX);
}

} // namespace

bool JsonNode::isObject() const {
    if (const auto* json = std::get_if<const Json*>(&m_value)) {
        return (*json)->is_object();
    }
    const auto* body = std::get_if<CanonicalValue>(&m_value);
    return body == nullptr || body->isObject();
}

bool JsonNode::isList() const {
    if (const auto* json = std::get_if<const Json*>(&m_value)) {
        return (*json)->is_array();
    }
    const auto* body = std::get_if<CanonicalValue>(&m_value);
    return body != nullptr && body->isList();
}

std::size_t JsonNode::size() const {
    if (const auto* json = std::get_if<const Json*>(&m_value)) {
        return (*json)->size();
    }
    const auto* body = std::get_if<CanonicalValue>(&m_value);
    return body != nullptr ? body->size() : 0;
}

std::vector<JsonNode> JsonNode::items() const {
    std::vector<JsonNode> out;
    if (!isList()) {
        return out;
    }
    if (const auto* json = std::get_if<const Json*>(&m_value)) {
        for (const Json& item : **json) {
            out.emplace_back(item);
        }
    } else if (const auto* body = std::get_if<CanonicalValue>(&m_value)) {
        for (const CanonicalValue item : *body) {
            out.emplace_back(item);
        }
    }
    return out;
}

std::vector<std::string> JsonNode::keys() const {
    std::vector<std::string> out;
    if (!isObject()) {
        return out;
    }
    if (const auto* json = std::get_if<const Json*>(&m_value)) {
        for (auto item = (*json)->begin(); item != (*json)->end(); ++item) {
            out.push_back(item.key());
        }
    } else if (const auto* body = std::get_if<CanonicalValue>(&m_value)) {
        for (const CanonicalValue item : *body) {
            out.emplace_back(item.key());
        }
    }
    return out;
}

std::optional<JsonNode::Member> JsonNode::find(const char* key) const {
    if (const auto* json = std::get_if<const Json*>(&m_value)) {
        const auto item = (*json)->is_object() ? (*json)->find(key) : (*json)->end();
        if (item == (*json)->end()) {
            return std::nullopt;
        }
        const auto place = std::distance((*json)->begin(), item);
        return Member{static_cast<std::size_t>(place), JsonNode(*item)};
    }
    const auto* body = std::get_if<CanonicalValue>(&m_value);
    const auto member = body != nullptr ? body->find(key) : std::nullopt;
    if (!member) {
        return std::nullopt;
    }
    return Member{member->place, JsonNode(body->at(*member))};
}

std::optional<std::string> JsonNode::text() const {
    if (const auto* json = std::get_if<const Json*>(&m_value)) {
        return (*json)->is_string() ? std::optional((*json)->get<std::string>()) : std::nullopt;
    }
    const auto* body = std::get_if<CanonicalValue>(&m_value);
    return body != nullptr && body->isText() ? std::optional(std::string(body->text()))
                                             : std::nullopt;
}

std::optional<double> JsonNode::number() const {
    if (const auto* json = std::get_if<const Json*>(&m_value)) {
        const bool is = (*json)->is_number() && std::isfinite((*json)->get<double>());
        return is ? std::optional((*json)->get<double>()) : std::nullopt;
    }
    const auto whole = integer();
    return whole ? std::optional(static_cast<double>(*whole)) : std::nullopt;
}

std::optional<std::int64_t> JsonNode::integer() const {
    if (const auto* json = std::get_if<const Json*>(&m_value)) {
        const bool is = (*json)->is_number_integer() && !isBeyondInt64(**json);
        return is ? std::optional((*json)->get<std::int64_t>()) : std::nullopt;
    }
    const auto* body = std::get_if<CanonicalValue>(&m_value);
    return body != nullptr && body->isInteger() ? std::optional(body->integer()) : std::nullopt;
}

std::optional<bool> JsonNode::flag() const {
    if (const auto* json = std::get_if<const Json*>(&m_value)) {
        return (*json)->is_boolean() ? std::optional((*json)->get<bool>()) : std::nullopt;
    }
    const auto* body = std::get_if<CanonicalValue>(&m_value);
    return body != nullptr && body->isFlag() ? std::optional(body->flag()) : std::nullopt;
}

std::string JsonNode::described() const {
    constexpr std::size_t kLongest = 60;
    std::string text = "{}";
    if (const auto* json = std::get_if<const Json*>(&m_value)) {
        text = (*json)->dump(-1, ' ', false, Json::error_handler_t::replace);
    } else if (const auto* body = std::get_if<CanonicalValue>(&m_value)) {
        text = body->written();
    }
    if (text.size() > kLongest) {
        std::size_t end = kLongest; // never inside a UTF-8 character
        while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) {
            --end;
        }
        text = text.substr(0, end) + "...";
    }
    return text;
}

JsonReader::JsonReader(const JsonText& text)
    : JsonReader(JsonNode(text.root), 0, std::make_shared<Notes>()) {
    m_notes->name = text.name;
    m_notes->text = &text.text;
    if (!m_node.isObject()) {
        m_notes->findings.push_back({linesOf(text.text).at(""), "", "expected a JSON object"});
    }
}

JsonReader::JsonReader(std::string name, CanonicalValue value)
    : JsonReader(JsonNode(value), 0, std::make_shared<Notes>()) {
    m_notes->name = std::move(name);
    if (!m_node.isObject()) {
        m_notes->findings.push_back({1, "", "expected a JSON object"});
    }
}

JsonReader::JsonReader(JsonNode node, std::size_t step, std::shared_ptr<Notes> notes)
    : m_node(node), m_step(step), m_notes(std::move(notes)) {}

JsonReader
JsonReader::child(JsonNode node, const char* key, std::optional<std::size_t> item) const {
    m_notes->steps.push_back({m_step, key, item});
    return {node, m_notes->steps.size(), m_notes};
}

std::string JsonReader::pointer() const {
    std::string out;
    for (std::size_t at = m_step; at > 0; at = m_notes->steps[at - 1].from) {
        const Notes::Step& step = m_notes->steps[at - 1];
        const std::string item = step.item ? "/" + std::to_string(*step.item) : std::string();
        out = "/" + pointerPart(step.key) + item + out;
    }
    return out;
}

std::string JsonReader::at(const char* key) const {
    return pointer() + "/" + pointerPart(key);
}

void JsonReader::complain(const char* key, std::string reason) {
    if (m_notes->findings.size() >= kMostFindings) {
        return;
    }
    const std::string here = *key == '\0' ? pointer() : at(key);
    if (m_notes->text == nullptr) {
        m_notes->findings.push_back({1, here, std::move(reason)});
        return;
    }
    if (m_notes->lines.empty()) {
        m_notes->lines = linesOf(*m_notes->text);
    }
    auto line = m_notes->lines.find(here);
    if (line == m_notes->lines.end()) {
        line = m_notes->lines.find(pointer());
    }
    const int number = line == m_notes->lines.end() ? 0 : line->second;
    m_notes->findings.push_back({number, here, std::move(reason)});
}

bool JsonReader::has(const char* key) const {
    return m_node.find(key).has_value();
}

std::optional<JsonNode> JsonReader::find(const char* key, bool required) {
    const auto member = m_node.find(key);
    if (!member) {
        if (required) {
            complain(key, "is missing");
        }
        return std::nullopt;
    }
    if (member->place < kInWord) {
        m_read |= std::uint64_t{1} << member->place;
    } else {
        m_behind.resize(std::max(m_behind.size(), member->place - kInWord + 1));
        m_behind[member->place - kInWord] = true;
    }
    return member->value;
}

std::optional<std::string> JsonReader::textIf(const char* key) {
    const auto value = find(key, false);
    if (!value) {
        return std::nullopt;
    }
    auto text = value->text();
    if (!text || text->empty()) {
        complain(key, value->described() + " is not a text");
        return std::nullopt;
    }
    return text;
}

std::string JsonReader::text(const char* key) {
    return find(key, true) ? textIf(key).value_or("") : std::string();
}

std::optional<double> JsonReader::readNumber(
    const char* key, bool required, double low, double high, const Aside& aside) {
    const auto value = find(key, required);
    if (!value) {
        return std::nullopt;
    }
    const auto number = value->number();
    if (!number) {
        complain(
            key, value->described() + " is not a number; allowed " + plainNumber(low) + " to " +
                     plainNumber(high));
        return std::nullopt;
    }
    if (*number < low || *number > high) {
        complain(
            key, plainNumber(*number) + " is outside " + plainNumber(low) + " to " +
                     plainNumber(high) + (aside ? aside(*number) : ""));
        return std::nullopt;
    }
    return number;
}

double JsonReader::number(const char* key, double low, double high, const Aside& aside) {
    return readNumber(key, true, low, high, aside).value_or(low);
}

std::optional<double>
JsonReader::numberIf(const char* key, double low, double high, const Aside& aside) {
    return readNumber(key, false, low, high, aside);
}

std::optional<std::int64_t>
JsonReader::readInteger(const char* key, bool required, std::int64_t low, std::int64_t high) {
    const auto value = find(key, required);
    if (!value) {
        return std::nullopt;
    }
    const auto number = value->integer();
    if (!number) {
        complain(
            key, value->described() + " is not a whole number; allowed " + std::to_string(low) +
                     " to " + std::to_string(high));
        return std::nullopt;
    }
    if (*number < low || *number > high) {
        complain(
            key, std::to_string(*number) + " is outside " + std::to_string(low) + " to " +
                     std::to_string(high));
        return std::nullopt;
    }
    return number;
}

std::int64_t JsonReader::integer(const char* key, std::int64_t low, std::int64_t high) {
    return readInteger(key, true, low, high).value_or(low);
}

std::optional<std::int64_t>
JsonReader::integerIf(const char* key, std::int64_t low, std::int64_t high) {
    return readInteger(key, false, low, high);
}

std::optional<bool> JsonReader::flagIf(const char* key) {
    const auto value = find(key, false);
    const auto flag = value ? value->flag() : std::nullopt;
    if (value && !flag) {
        complain(key, value->described() + " is not true or false");
    }
    return flag;
}

bool JsonReader::flag(const char* key) {
    return find(key, true) && flagIf(key).value_or(false);
}

std::vector<JsonNode> JsonReader::list(const char* key, const char* otherwise) {
    const auto value = find(key, true);
    if (value && !value->isList()) {
        complain(key, value->described() + " " + otherwise);
    }
    return value ? value->items() : std::vector<JsonNode>();
}

std::vector<std::string> JsonReader::texts(const char* key) {
    std::vector<std::string> out;
    for (const JsonNode& item : list(key, "is not a list of texts")) {
        if (auto text = item.text()) {
            out.push_back(std::move(*text));
        } else {
            complain(key, item.described() + " in the list is not a text");
        }
    }
    return out;
}

std::vector<double> JsonReader::numbers(const char* key) {
    std::vector<double> out;
    for (const JsonNode& item : list(key, "is not a list of numbers")) {
        if (const auto number = item.number()) {
            out.push_back(*number);
        } else {
            complain(key, item.described() + " in the list is not a number");
        }
    }
    return out;
}

std::vector<std::int64_t>
JsonReader::integers(const char* key, std::int64_t low, std::int64_t high) {
    std::vector<std::int64_t> out;
    for (const JsonNode& item : list(key, "is not a list of whole numbers")) {
        const auto number = item.integer();
        if (number && *number >= low && *number <= high) {
            out.push_back(*number);
        } else {
            complain(
                key, item.described() + " in the list is not a whole number from " +
                         std::to_string(low) + " to " + std::to_string(high));
        }
    }
    return out;
}

std::optional<JsonReader> JsonReader::objectIf(const char* key) {
    const auto value = find(key, false);
    if (!value) {
        return std::nullopt;
    }
    if (!value->isObject()) {
        complain(key, value->described() + " is not an object");
        return std::nullopt;
    }
    return child(*value, key);
}

JsonReader JsonReader::object(const char* key) {
    if (find(key, true)) {
        if (auto reader = objectIf(key)) {
            return *reader;
        }
    }
    return child(JsonNode(), key);
}

std::vector<JsonReader> JsonReader::objects(const char* key) {
    std::vector<JsonReader> out;
    std::size_t place = 0;
    for (const JsonNode& item : list(key, "is not a list")) {
        if (item.isObject()) {
            out.push_back(child(item, key, place));
        } else {
            complain(key, item.described() + " in the list is not an object");
        }
        ++place;
    }
    return out;
}

std::vector<std::string> JsonReader::keys() const {
    return m_node.keys();
}

void JsonReader::ignore(const char* key) {
    find(key, false);
}

void JsonReader::refuseUnknown() {
    const auto behind = std::count(m_behind.begin(), m_behind.end(), true);
    if (static_cast<std::size_t>(std::popcount(m_read) + behind) == m_node.size()) {
        return;
    }
    std::size_t place = 0;
    for (const std::string& key : keys()) {
        const bool read = place < kInWord
                              ? (m_read >> place & 1U) != 0
                              : place - kInWord < m_behind.size() && m_behind[place - kInWord];
        if (!read) {
            complain(key.c_str(), "is not a field that is known here");
        }
        ++place;
    }
}

Result<void> JsonReader::verdict() const {
    if (m_notes->findings.empty()) {
        return {};
    }
    const Finding& first = m_notes->findings.front();
    return fail(
        ErrorCode::Malformed, m_notes->name + ", line " + std::to_string(first.line) + ", " +
                                  (first.field.empty() ? "the whole" : first.field) + ": " +
                                  first.reason);
}

} // namespace seamclock
