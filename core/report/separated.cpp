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

} // namespace

std::string separatedCell(std::string_view value) {
    std::string cell(value);
    if (!cell.empty() &&
        std::string_view("=+-@\t\r").find(cell.front()) != std::string_view::npos &&
        !isPlainNumber(cell)) {
        cell.insert(cell.begin(), '\'');
    }
    if (cell.find_first_of(",\"\r\n") == std::string::npos) {
        return cell;
    }
    std::string quoted = "\"";
    for (const char c : cell) {
        quoted += c == '"' ? "\"\"" : std::string(1, c);
    }
    return quoted + "\"";
}

std::string separatedRow(const std::vector<std::string>& cells) {
    std::string row;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        row += (i == 0 ? "" : ",") + separatedCell(cells[i]);
    }
    return row + "\r\n";
}

} // namespace seamclock
