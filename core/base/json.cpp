#include "core/base/json.h"

#include "core/base/posix.h"

#include <algorithm>
#include <cstdint>
#include <fstream>
#include <set>
#include <sys/stat.h>
#include <utility>

namespace seamclock {

namespace {

constexpr int kDeepest = 64;
constexpr std::size_t kMostBytes = 16 * 1024 * 1024; // of a file: a procedure is 10 kB
constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

int lineAt(std::string_view text, std::size_t position) {
    const auto end = text.begin() + static_cast<std::ptrdiff_t>(std::min(position, text.size()));
    return 1 + static_cast<int>(std::count(text.begin(), end, '\n'));
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
            value(pointer + "/" + pointerPart(key), visit, duplicate);
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

} // namespace

std::string pointerPart(const std::string& key) {
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

std::map<std::string, int> linesOf(std::string_view text) {
    std::map<std::string, int> lines;
    std::size_t counted = 0; // in one walk: positions only ever rise
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

} // namespace seamclock
