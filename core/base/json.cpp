#include "core/base/json.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <fstream>
#include <sys/stat.h>
#include <utility>

namespace seamclock {

namespace {

constexpr int kDeepest = 64;
constexpr std::size_t kMostBytes = 16 * 1024 * 1024; // of a file: a procedure is 10 kB
constexpr std::size_t kMostFindings = 100;           // more than a person reads
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

// The value as it stands in the file, cut to a length that fits a sentence (never inside a UTF-8
// character).
std::string described(const Json& value) {
    constexpr std::size_t kLongest = 60;
    std::string text = value.dump(-1, ' ', false, Json::error_handler_t::replace);
    if (text.size() > kLongest) {
        std::size_t end = kLongest;
        while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) {
            --end;
        }
        text = text.substr(0, end) + "...";
    }
    return text;
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

JsonReader::JsonReader(const JsonText& text)
    : JsonReader(text, text.root, "", std::make_shared<Notes>()) {
    if (!m_node->is_object()) {
        m_notes->findings.push_back({text.lineOf(""), "", "expected a JSON object"});
    }
}

JsonReader::JsonReader(
    const JsonText& text, const Json& node, std::string pointer, std::shared_ptr<Notes> notes)
    : m_text(&text), m_node(&node), m_pointer(std::move(pointer)), m_notes(std::move(notes)) {}

std::string JsonReader::at(const char* key) const {
    return m_pointer + "/" + escaped(key);
}

void JsonReader::complain(const char* key, std::string reason) {
    if (m_notes->findings.size() >= kMostFindings) {
        return;
    }
    const std::string here = *key == '\0' ? m_pointer : at(key);
    if (m_notes->lines.empty()) {
        m_notes->lines = linesOf(m_text->text);
    }
    auto line = m_notes->lines.find(here);
    if (line == m_notes->lines.end()) {
        line = m_notes->lines.find(m_pointer);
    }
    const int number = line == m_notes->lines.end() ? 0 : line->second;
    m_notes->findings.push_back({number, here, std::move(reason)});
}

bool JsonReader::has(const char* key) const {
    return m_node->is_object() && m_node->contains(key);
}

const Json* JsonReader::find(const char* key, bool required) {
    m_read.insert(key);
    if (has(key)) {
        return &(*m_node)[key];
    }
    if (required) {
        complain(key, "is missing");
    }
    return nullptr;
}

std::optional<std::string> JsonReader::textIf(const char* key) {
    const Json* value = find(key, false);
    if (value == nullptr) {
        return std::nullopt;
    }
    if (!value->is_string() || value->get_ref<const std::string&>().empty()) {
        complain(key, described(*value) + " is not a text");
        return std::nullopt;
    }
    return value->get<std::string>();
}

std::string JsonReader::text(const char* key) {
    if (find(key, true) == nullptr) {
        return {};
    }
    return textIf(key).value_or("");
}

std::optional<double>
JsonReader::readNumber(const char* key, bool required, double low, double high) {
    const Json* value = find(key, required);
    if (value == nullptr) {
        return std::nullopt;
    }
    const std::string range = plainNumber(low) + " to " + plainNumber(high);
    if (!value->is_number() || !std::isfinite(value->get<double>())) {
        complain(key, described(*value) + " is not a number; allowed " + range);
        return std::nullopt;
    }
    const double number = value->get<double>();
    if (number < low || number > high) {
        complain(key, plainNumber(number) + " is outside " + range);
        return std::nullopt;
    }
    return number;
}

double JsonReader::number(const char* key, double low, double high) {
    return readNumber(key, true, low, high).value_or(low);
}

std::optional<double> JsonReader::numberIf(const char* key, double low, double high) {
    return readNumber(key, false, low, high);
}

std::optional<std::int64_t>
JsonReader::readInteger(const char* key, bool required, std::int64_t low, std::int64_t high) {
    const Json* value = find(key, required);
    if (value == nullptr) {
        return std::nullopt;
    }
    const std::string range = std::to_string(low) + " to " + std::to_string(high);
    if (!value->is_number_integer() || !plain(*value)) {
        complain(key, described(*value) + " is not a whole number; allowed " + range);
        return std::nullopt;
    }
    const auto number = value->get<std::int64_t>();
    if (number < low || number > high) {
        complain(key, std::to_string(number) + " is outside " + range);
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
    const Json* value = find(key, false);
    if (value == nullptr) {
        return std::nullopt;
    }
    if (!value->is_boolean()) {
        complain(key, described(*value) + " is not true or false");
        return std::nullopt;
    }
    return value->get<bool>();
}

bool JsonReader::flag(const char* key) {
    return find(key, true) != nullptr && flagIf(key).value_or(false);
}

std::vector<std::string> JsonReader::texts(const char* key) {
    std::vector<std::string> out;
    const Json* value = find(key, true);
    if (value == nullptr) {
        return out;
    }
    if (!value->is_array()) {
        complain(key, described(*value) + " is not a list of texts");
        return out;
    }
    for (const Json& item : *value) {
        if (item.is_string()) {
            out.push_back(item.get<std::string>());
        } else {
            complain(key, described(item) + " in the list is not a text");
        }
    }
    return out;
}

std::vector<double> JsonReader::numbers(const char* key) {
    std::vector<double> out;
    const Json* value = find(key, true);
    if (value == nullptr) {
        return out;
    }
    if (!value->is_array()) {
        complain(key, described(*value) + " is not a list of numbers");
        return out;
    }
    for (const Json& item : *value) {
        if (item.is_number() && std::isfinite(item.get<double>())) {
            out.push_back(item.get<double>());
        } else {
            complain(key, described(item) + " in the list is not a number");
        }
    }
    return out;
}

std::vector<std::int64_t>
JsonReader::integers(const char* key, std::int64_t low, std::int64_t high) {
    std::vector<std::int64_t> out;
    const Json* value = find(key, true);
    if (value == nullptr) {
        return out;
    }
    if (!value->is_array()) {
        complain(key, described(*value) + " is not a list of whole numbers");
        return out;
    }
    for (const Json& item : *value) {
        if (item.is_number_integer() && plain(item) && item.get<std::int64_t>() >= low &&
            item.get<std::int64_t>() <= high) {
            out.push_back(item.get<std::int64_t>());
        } else {
            complain(
                key, described(item) + " in the list is not a whole number from " +
                         std::to_string(low) + " to " + std::to_string(high));
        }
    }
    return out;
}

std::optional<JsonReader> JsonReader::objectIf(const char* key) {
    const Json* value = find(key, false);
    if (value == nullptr) {
        return std::nullopt;
    }
    if (!value->is_object()) {
        complain(key, described(*value) + " is not an object");
        return std::nullopt;
    }
    return JsonReader(*m_text, *value, at(key), m_notes);
}

JsonReader JsonReader::object(const char* key) {
    static const Json kNothing = Json::object();
    if (find(key, true) != nullptr) {
        if (auto reader = objectIf(key)) {
            return *reader;
        }
    }
    return JsonReader(*m_text, kNothing, at(key), m_notes);
}

std::vector<JsonReader> JsonReader::objects(const char* key) {
    std::vector<JsonReader> out;
    const Json* value = find(key, true);
    if (value == nullptr) {
        return out;
    }
    if (!value->is_array()) {
        complain(key, described(*value) + " is not a list");
        return out;
    }
    for (std::size_t i = 0; i < value->size(); ++i) {
        const std::string pointer = at(key) + "/" + std::to_string(i);
        if ((*value)[i].is_object()) {
            out.push_back(JsonReader(*m_text, (*value)[i], pointer, m_notes));
        } else {
            complain(key, described((*value)[i]) + " in the list is not an object");
        }
    }
    return out;
}

std::vector<std::string> JsonReader::keys() const {
    std::vector<std::string> out;
    if (m_node->is_object()) {
        for (auto item = m_node->begin(); item != m_node->end(); ++item) {
            out.push_back(item.key());
        }
    }
    return out;
}

void JsonReader::ignore(const char* key) {
    m_read.insert(key);
}

void JsonReader::refuseUnknown() {
    for (const std::string& key : keys()) {
        if (m_read.count(key) == 0) {
            complain(key.c_str(), "is not a field that is known here");
        }
    }
}

Result<void> JsonReader::verdict() const {
    if (m_notes->findings.empty()) {
        return {};
    }
    const Finding& first = m_notes->findings.front();
    return fail(
        ErrorCode::Malformed, m_text->name + ", line " + std::to_string(first.line) + ", " +
                                  (first.field.empty() ? "the whole" : first.field) + ": " +
                                  first.reason);
}

} // namespace seamclock
