#include "core/base/json.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <fstream>
#include <set>
#include <sys/stat.h>
#include <utility>

namespace seamclock {

namespace {

constexpr int kDeepest = 64;
constexpr std::size_t kMostBytes = 16 * 1024 * 1024; // of a file: a procedure is 10 kB
constexpr std::size_t kMostFindings = 100;           // more than a person reads
constexpr std::size_t kInWord = 64;                  // fields of an object that a word can mark
constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

int lineAt(std::string_view text, std::size_t position) {
    const auto end = text.begin() + static_cast<std::ptrdiff_t>(std::min(position, text.size()));
    return 1 + static_cast<int>(std::count(text.begin(), end, '\n'));
}

std::string escaped(const std::string& key) {
    std::string out;
    for (const char c : key) {
        if (c == '~') {
            out += "~0";
        } else if (c == '/') {
            out += "~1";
        } else {
            out += c;
        }
    }
    return out;
}

// Walks a text that nlohmann has already accepted, and tells where each value begins. It is the one
// scanner of our own: the library keeps no line of a value and silently accepts duplicate keys.
class Scanner {
public:
    explicit Scanner(std::string_view text) : m_text(text) {
        if (text.substr(0, kByteOrderMark.size()) == kByteOrderMark) {
            m_at = kByteOrderMark.size(); // as the library does
        }
    }

    /// Calls visit(pointer, position) for each value; duplicate() for a key seen twice in one
    /// object.
    template <class Visit, class Duplicate>
    void walk(Visit visit, Duplicate duplicate) {
        value("", visit, duplicate);
    }

private:
    void space() {
        while (m_at < m_text.size() && (m_text[m_at] == ' ' || m_text[m_at] == '\n' ||
                                        m_text[m_at] == '\r' || m_text[m_at] == '\t')) {
            ++m_at;
        }
    }

    std::string string() {
        const std::size_t start = m_at++;
        while (m_text[m_at] != '"') {
            m_at += m_text[m_at] == '\\' ? 2 : 1;
        }
        ++m_at;
        return Json::parse(m_text.substr(start, m_at - start)).get<std::string>();
    }

    template <class Visit, class Duplicate>
    void value(const std::string& pointer, Visit& visit, Duplicate& duplicate) {
        space();
        visit(pointer, m_at);
        if (m_text[m_at] == '{') {
            members(pointer, visit, duplicate);
        } else if (m_text[m_at] == '[') {
            elements(pointer, visit, duplicate);
        } else if (m_text[m_at] == '"') {
            string();
        } else {
            while (m_at < m_text.size() &&
                   std::string_view(",]} \n\r\t").find(m_text[m_at]) == std::string_view::npos) {
                ++m_at;
            }
        }
        space();
    }

    template <class Visit, class Duplicate>
    void members(const std::string& pointer, Visit& visit, Duplicate& duplicate) {
        std::set<std::string> seen;
        ++m_at;
        space();
        while (m_text[m_at] != '}') {
            const std::size_t start = m_at;
            const std::string key = string();
            if (!seen.insert(key).second) {
                duplicate(key, start);
            }
            space();
            ++m_at; // the colon
            value(pointer + "/" + escaped(key), visit, duplicate);
            if (m_text[m_at] == ',') {
                ++m_at;
                space();
            }
        }
        ++m_at;
    }

    template <class Visit, class Duplicate>
    void elements(const std::string& pointer, Visit& visit, Duplicate& duplicate) {
        int index = 0;
        ++m_at;
        space();
        while (m_text[m_at] != ']') {
            value(pointer + "/" + std::to_string(index++), visit, duplicate);
            if (m_text[m_at] == ',') {
                ++m_at;
                space();
            }
        }
        ++m_at;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
};

// Depth is limited before the library's recursive destructor could meet a hostile file.
int deepestLevel(std::string_view text) {
    int level = 0;
    int deepest = 0;
    bool inString = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (inString) {
            if (c == '\\') {
                ++i;
            } else if (c == '"') {
                inString = false;
            }
        } else if (c == '"') {
            inString = true;
        } else if (c == '{' || c == '[') {
            deepest = std::max(deepest, ++level);
        } else if (c == '}' || c == ']') {
            --level;
        }
    }
    return deepest;
}

bool plain(const Json& value) {
    if (value.is_number_float() || value.is_null() || value.is_binary() || value.is_discarded()) {
        return false;
    }
    if (value.is_number_unsigned() &&
        value.get<std::uint64_t>() > static_cast<std::uint64_t>(INT64_MAX)) {
        return false;
    }
    return !value.is_structured() || std::all_of(value.begin(), value.end(), plain);
}

// "[json.exception.out_of_range.406] number overflow parsing '1e999'" without the library's prefix.
std::string withoutPrefix(const std::string& message) {
    const std::size_t end = message.find("] ");
    return end == std::string::npos ? message : message.substr(end + 2);
}

// The line of every value, in one walk: positions only ever rise.
std::map<std::string, int> linesOf(std::string_view text) {
    std::map<std::string, int> lines;
    std::size_t counted = 0;
    int line = 1;
    Scanner(text).walk(
        [&](const std::string& pointer, std::size_t position) {
            for (; counted < position; ++counted) {
                line += text[counted] == '\n' ? 1 : 0;
            }
            lines.emplace(pointer, line);
        },
        [](const std::string&, std::size_t) {});
    return lines;
}

} // namespace

int JsonText::lineOf(const std::string& pointer) const {
    const auto lines = linesOf(text);
    const auto line = lines.find(pointer);
    return line == lines.end() ? 0 : line->second;
}

tl::expected<JsonText, JsonProblem> scanJson(std::string_view name, std::string_view text) {
    const auto problem = [](int line, std::string reason) {
        return tl::unexpected<JsonProblem>(JsonProblem{line, std::move(reason)});
    };
    if (text.find_first_not_of(" \n\r\t") == std::string_view::npos) {
        return problem(0, "the file is empty; expected a JSON object");
    }
    // The library takes a zero byte for the end of the text and would not look at what follows.
    if (const auto zero = text.find('\0'); zero != std::string_view::npos) {
        return problem(lineAt(text, zero), "a zero byte; expected JSON text");
    }
    if (deepestLevel(text) > kDeepest) {
        return problem(
            0, "nested deeper than " + std::to_string(kDeepest) + " levels, the most allowed");
    }
    JsonText out{std::string(name), std::string(text), {}};
    try {
        out.root = Json::parse(out.text);
    } catch (const Json::parse_error& error) {
        const std::size_t position = error.byte > 0 ? error.byte - 1 : 0;
        return problem(lineAt(text, position), "not valid JSON");
    } catch (const Json::exception& error) {
        return problem(0, withoutPrefix(error.what())); // a number too large for any type
    }
    std::optional<JsonProblem> twice;
    Scanner(out.text).walk(
        [](const std::string&, std::size_t) {},
        [&](const std::string& key, std::size_t position) {
            if (!twice) {
                twice =
                    JsonProblem{lineAt(text, position), "the field \"" + key + "\" stands twice"};
            }
        });
    if (twice) {
        return tl::unexpected<JsonProblem>(*twice);
    }
    return out;
}

Result<JsonText> parseJson(std::string_view name, std::string_view text) {
    auto scanned = scanJson(name, text);
    if (scanned) {
        return std::move(*scanned);
    }
    const JsonProblem& problem = scanned.error();
    const std::string where =
        problem.line > 0 ? ", line " + std::to_string(problem.line) : std::string();
    return fail(ErrorCode::Malformed, std::string(name) + where + ": " + problem.reason);
}

Result<JsonText> parseJsonFile(const std::string& path) {
    struct stat facts {};
    if (stat(path.c_str(), &facts) != 0) {
        return fail(ErrorCode::Unreadable, path + ": no such file, or not readable");
    }
    if (S_ISDIR(facts.st_mode)) {
        return fail(ErrorCode::Unreadable, path + ": is a folder, expected a file");
    }
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        return fail(ErrorCode::Unreadable, path + ": not readable");
    }
    std::string content;
    char block[65536];
    while (content.size() <= kMostBytes && (file.read(block, sizeof block), file.gcount() > 0)) {
        content.append(block, static_cast<std::size_t>(file.gcount()));
    }
    if (file.bad()) {
        return fail(ErrorCode::Unreadable, path + ": can't be read");
    }
    if (content.size() > kMostBytes) {
        return fail(
            ErrorCode::Unreadable,
            path + ": larger than " + std::to_string(kMostBytes) + " bytes, the most allowed");
    }
    return parseJson(path, content);
}

Result<std::string> canonicalJson(const Json& value) {
    if (!plain(value)) {
        return fail(
            ErrorCode::Malformed, "an event body holds a float, a null or a number beyond int64");
    }
    try {
        std::string body = value.dump();
        if (deepestLevel(body) > kDeepest) {
            return fail(ErrorCode::Malformed, "an event body is nested too deep");
        }
        return body;
    } catch (const Json::exception&) {
        return fail(ErrorCode::Malformed, "an event body holds text that is not UTF-8");
    }
}

Result<Json> parseCanonical(std::string_view body) {
    if (deepestLevel(body) > kDeepest) {
        return fail(ErrorCode::Malformed, "an event body is nested too deep");
    }
    Json value = Json::parse(body, nullptr, false);
    if (value.is_discarded()) {
        return fail(ErrorCode::Malformed, "an event body is not JSON");
    }
    const auto again = canonicalJson(value);
    if (!again) {
        return tl::unexpected<Error>(again.error());
    }
    if (*again != body) {
        return fail(ErrorCode::Malformed, "an event body is not in canonical form");
    }
    return value;
}

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
        const bool is = (*json)->is_number_integer() && plain(**json);
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
        m_notes->findings.push_back({text.lineOf(""), "", "expected a JSON object"});
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
        out = "/" + escaped(step.key) + item + out;
    }
    return out;
}

std::string JsonReader::at(const char* key) const {
    return pointer() + "/" + escaped(key);
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
