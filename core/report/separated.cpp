#include "core/report/separated.h"

#include <algorithm>

namespace seamclock {
namespace {

/// -12, +0.5, 1: digits with at most one dot and a sign.
bool isPlainNumber(std::string_view text) {
    if (!text.empty() && (text.front() == '-' || text.front() == '+')) {
        text.remove_prefix(1);
    }
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    const bool ends = !text.empty() && isDigit(text.front()) && isDigit(text.back());
    return ends && std::count(text.begin(), text.end(), '.') <= 1 &&
           std::all_of(text.begin(), text.end(), [&](char c) { return isDigit(c) || c == '.'; });
}

bool wantsQuotes(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](char c) {
        return c == ',' || c == '"' || c == '\r' || c == '\n' || c == ';' || c == '\t';
    });
}

/// U+FF1D, U+FF0B, U+FF0D and U+FF20, which a spreadsheet may take for their narrow forms.
bool beginsWide(std::string_view text) {
    for (const std::string_view sign :
         {"\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0"}) {
        if (text.substr(0, sign.size()) == sign) {
            return true;
        }
    }
    return false;
}

bool wouldRun(std::string_view text) {
    if (text.empty() || isPlainNumber(text)) {
        return false;
    }
    return std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos ||
           beginsWide(text);
}

/// What a spreadsheet that takes another sign for the end of a cell would begin the next one with.
bool endsCell(char c) {
    return c == ';' || c == '\t' || c == '\r' || c == '\n';
}

bool beginsToRun(std::string_view rest) {
    const std::size_t quotes = rest.find_first_not_of('"');
    rest.remove_prefix(quotes == std::string_view::npos ? rest.size() : quotes);
    return !rest.empty() &&
           (std::string_view("=+-@").find(rest.front()) != std::string_view::npos ||
            beginsWide(rest));
}

void addCell(std::string& row, std::string_view value) {
    const bool quotes = wantsQuotes(value);
    row += quotes ? "\"" : "";
    row += wouldRun(value) ? "'" : "";
    if (!quotes) {
        row += value;
        return;
    }
    for (std::size_t i = 0; i < value.size(); ++i) {
        const char c = value[i];
        row.append(c == '"' ? 2 : 1, c);
        if (endsCell(c) && beginsToRun(value.substr(i + 1))) {
            row += '\'';
        }
    }
    row += '"';
}

} // namespace

std::string separatedCell(std::string_view value) {
    std::string cell;
    addCell(cell, value);
    return cell;
}

namespace {

template <class Cells>
std::string rowOf(const Cells& cells) {
    std::string row;
    row.reserve(256);
    const char* between = "";
    for (const auto& cell : cells) {
        row += between;
        addCell(row, cell);
        between = ",";
    }
    row += "\r\n";
    return row;
}

} // namespace

std::string separatedRow(const std::vector<std::string>& cells) {
    return rowOf(cells);
}

std::string separatedRow(std::initializer_list<std::string_view> cells) {
    return rowOf(cells);
}

} // namespace seamclock
