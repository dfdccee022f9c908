#include "core/report/plain_text.h"

#include <algorithm>
#include <cwchar>
#include <fmt/format.h>
#include <optional>

namespace seamclock {
namespace {

struct CodePoint {
    std::uint32_t value;
    std::size_t bytes;
};

std::optional<CodePoint> decode(std::string_view text, std::size_t at) {
    const auto byte = [&](std::size_t i) -> std::uint32_t {
        return static_cast<unsigned char>(text[i]);
    };
    const std::uint32_t first = byte(at);
    if (first < 0x80) {
        return CodePoint{first, 1};
    }
    const std::size_t length = first >= 0xF0 && first < 0xF5   ? 4
                               : first >= 0xE0 && first < 0xF0 ? 3
                               : first >= 0xC2 && first < 0xE0 ? 2
                                                               : 0;
    if (length == 0 || at + length > text.size()) {
        return std::nullopt;
    }
    std::uint32_t value = first & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(at + i) & 0xC0U) != 0x80U) {
            return std::nullopt;
        }
        value = (value << 6U) | (byte(at + i) & 0x3FU);
    }
    const bool tooLong = (length == 3 && value < 0x800) || (length == 4 && value < 0x10000);
    const bool surrogate = value >= 0xD800 && value <= 0xDFFF;
    if (tooLong || surrogate || value > 0x10FFFF) {
        return std::nullopt;
    }
    return CodePoint{value, length};
}

struct Range {
    std::uint32_t from;
    std::uint32_t to;
};

// Unicode Standard Annex 11 (East Asian Width), the blocks that are wide; and the common blocks of
// combining and invisible signs. From memory: a name in a script left out here only shifts a
// column.
constexpr Range kWide[] = {{0x1100, 0x115F},   {0x2E80, 0x303E},   {0x3041, 0xA4CF},
                           {0xA960, 0xA97C},   {0xAC00, 0xD7A3},   {0xF900, 0xFAFF},
                           {0xFE30, 0xFE6F},   {0xFF00, 0xFF60},   {0xFFE0, 0xFFE6},
                           {0x1F300, 0x1F64F}, {0x1F900, 0x1F9FF}, {0x20000, 0x3FFFD}};
constexpr Range kNarrowless[] = {{0x0300, 0x036F}, {0x0483, 0x0489}, {0x0591, 0x05BD},
                                 {0x0610, 0x061A}, {0x064B, 0x065F}, {0x200B, 0x200F},
                                 {0x202A, 0x202E}, {0x2060, 0x2064}, {0x20D0, 0x20F0},
                                 {0xFE00, 0xFE0F}, {0xFE20, 0xFE2F}, {0xFEFF, 0xFEFF}};

template <std::size_t size>
bool isIn(const Range (&ranges)[size], std::uint32_t value) {
    return std::any_of(std::begin(ranges), std::end(ranges), [value](const Range& range) {
        return range.from <= value && value <= range.to;
    });
}

std::size_t widthOf(std::uint32_t value) {
    return isIn(kNarrowless, value) ? 0 : isIn(kWide, value) ? 2 : 1;
}

/// How many bytes of the text fit into so many columns; at least one sign.
std::size_t bytesThatFit(std::string_view text, std::size_t columns) {
    std::size_t at = 0;
    std::size_t used = 0;
    while (at < text.size()) {
        const auto sign = decode(text, at);
        used += sign ? widthOf(sign->value) : 1;
        if (used > columns && at > 0) {
            break;
        }
        at += sign ? sign->bytes : 1;
    }
    return at;
}

std::string padded(std::string text, std::size_t columns) {
    const std::size_t has = columnsOf(text);
    text.append(columns > has ? columns - has : 0, ' ');
    return text;
}

constexpr std::size_t kBetween = 2;
constexpr std::size_t kNarrowest = 12;

/// As wide as their widest cells; where that is too much for the line, the widest columns give way.
std::vector<std::size_t>
fittingWidths(const std::vector<std::vector<std::string>>& rows, std::size_t indent) {
    std::vector<std::size_t> widths;
    for (const auto& row : rows) {
        widths.resize(std::max(widths.size(), row.size()));
        for (std::size_t i = 0; i < row.size(); ++i) {
            widths[i] = std::max(widths[i], columnsOf(row[i]));
        }
    }
    std::size_t total = indent;
    for (const std::size_t width : widths) {
        total += width + kBetween;
    }
    while (total > kTextColumns + kBetween) {
        const auto widest = std::max_element(widths.begin(), widths.end());
        if (*widest <= kNarrowest) {
            break;
        }
        --*widest;
        --total;
    }
    return widths;
}

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    std::size_t from = 0;
    for (std::size_t end = text.find('\n'); end != std::string::npos; end = text.find('\n', from)) {
        lines.push_back(text.substr(from, end - from));
        from = end + 1;
    }
    lines.push_back(text.substr(from));
    return lines;
}

std::string fromParts(std::int64_t parts, int digits, int decimals) {
    std::uint64_t size =
        parts < 0 ? 0 - static_cast<std::uint64_t>(parts) : static_cast<std::uint64_t>(parts);
    for (int i = decimals; i < digits; ++i) {
        size = size / 10 + (i + 1 == digits && size % 10 >= 5 ? 1 : 0);
    }
    std::uint64_t unit = 1;
    for (int i = 0; i < std::min(decimals, digits); ++i) {
        unit *= 10;
    }
    std::string text = std::to_string(size / unit);
    if (unit > 1) {
        std::string fraction = fmt::format("{:0{}}", size % unit, std::min(decimals, digits));
        fraction.erase(fraction.find_last_not_of('0') + 1);
        text += fraction.empty() ? "" : "." + fraction;
    }
    return parts < 0 && size != 0 ? "-" + text : text;
}

} // namespace

std::size_t columnsOf(std::string_view utf8) {
    std::size_t columns = 0;
    for (std::size_t at = 0; at < utf8.size();) {
        const auto sign = decode(utf8, at);
        columns += sign ? widthOf(sign->value) : 1;
        at += sign ? sign->bytes : 1;
    }
    return columns;
}

std::string onOneLine(std::string_view text) {
    std::string line;
    line.reserve(text.size());
    for (std::size_t at = 0; at < text.size();) {
        const auto sign = decode(text, at);
        if (!sign) {
            line += '?';
            ++at;
            continue;
        }
        const bool control = sign->value < 0x20 || (sign->value >= 0x7F && sign->value < 0xA0) ||
                             sign->value == 0x2028 || sign->value == 0x2029 ||
                             (sign->value >= 0x202A && sign->value <= 0x202E) ||
                             (sign->value >= 0x2066 && sign->value <= 0x2069);
        line += control ? std::string_view(" ") : text.substr(at, sign->bytes);
        at += sign->bytes;
    }
    return line;
}

std::string wrapped(std::string_view text, std::size_t indent, std::size_t columns) {
    const std::size_t room = columns > indent + 10 ? columns - indent : 10;
    std::string result;
    std::size_t used = 0;
    while (!text.empty()) {
        const std::size_t gap = std::min(text.find_first_not_of(' '), text.size());
        std::string_view rest = text.substr(gap);
        std::string_view word = rest.substr(0, std::min(rest.find(' '), rest.size()));
        if (word.empty()) {
            break;
        }
        const std::size_t needed = columnsOf(word);
        if (used > 0 && used + gap + needed > room) {
            result += "\n" + std::string(indent, ' ');
            used = 0;
        } else if (used > 0) {
            result.append(gap, ' ');
            used += gap;
        }
        word = word.substr(0, bytesThatFit(word, room - used));
        result += word;
        used += columnsOf(word);
        text = rest.substr(word.size());
    }
    return result;
}

std::string aligned(const std::vector<std::vector<std::string>>& rows, std::size_t indent) {
    const std::vector<std::size_t> widths = fittingWidths(rows, indent);
    std::string text;
    for (const auto& row : rows) {
        std::vector<std::vector<std::string>> cells;
        std::size_t height = 1;
        for (std::size_t i = 0; i < row.size(); ++i) {
            cells.push_back(linesOf(wrapped(row[i], 0, widths[i])));
            height = std::max(height, cells.back().size());
        }
        for (std::size_t k = 0; k < height; ++k) {
            std::string line(indent, ' ');
            for (std::size_t i = 0; i < cells.size(); ++i) {
                line += padded(k < cells[i].size() ? cells[i][k] : "", widths[i] + kBetween);
            }
            line.erase(line.find_last_not_of(' ') + 1);
            text += line + "\n";
        }
    }
    return text;
}

std::string fromThousandths(std::int64_t thousandths, int decimals) {
    return fromParts(thousandths, 3, decimals);
}

std::string fromMillionths(std::int64_t millionths, int decimals) {
    return fromParts(millionths, 6, decimals);
}

std::string spokenTime(Milliseconds time, Seconds rounding) {
    if (time < Milliseconds(0)) {
        return "-" + spokenTime(-time, rounding);
    }
    if (time < Milliseconds(60'000)) {
        return fromThousandths(time.count()) + " s";
    }
    const std::int64_t seconds = (time.count() + (rounding == Seconds::Up ? 999 : 0)) / 1000;
    if (seconds < 3600) {
        return fmt::format("{}:{:02}", seconds / 60, seconds % 60);
    }
    return fmt::format("{}:{:02}:{:02}", seconds / 3600, seconds / 60 % 60, seconds % 60);
}

std::string exactTime(Milliseconds time) {
    if (time < Milliseconds(0)) {
        return "-" + exactTime(-time);
    }
    if (time < Milliseconds(60'000)) {
        return fmt::format("{}.{:03} s", time.count() / 1000, time.count() % 1000);
    }
    return fmt::format("{}.{:03}", spokenTime(time, Seconds::Down), time.count() % 1000);
}

std::string utcTimeOfDay(Milliseconds utc) {
    const std::string iso = toIsoUtc(utc);
    const std::size_t from = iso.find('T') + 1;
    return iso.substr(from, iso.size() - from - 1);
}

std::string headline(std::string_view text) {
    return std::string(text) + "\n" + std::string(columnsOf(text), '-') + "\n";
}

} // namespace seamclock
