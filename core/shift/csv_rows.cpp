#include "core/shift/csv_rows.h"

#include <algorithm>

namespace seamclock {
namespace {

class Scanner {
public:
    explicit Scanner(std::string_view text) : m_text(text) {
        constexpr std::string_view kMark = "\xEF\xBB\xBF";
        if (m_text.substr(0, kMark.size()) == kMark) {
            m_text.remove_prefix(kMark.size());
        }
    }

    CsvRows read() {
        CsvRows out;
        while (m_at < m_text.size()) {
            CsvRow row;
            row.line = m_line;
            if (!readRow(row)) {
                out.trouble = CsvTrouble{m_troubleLine, m_trouble};
                return out;
            }
            // Nothing at all, or only commas, as spreadsheets leave below a table.
            const bool empty =
                std::all_of(row.cells.begin(), row.cells.end(), [](const std::string& cell) {
                    return cell.empty();
                });
            if (!empty) {
                out.rows.push_back(std::move(row));
            }
        }
        return out;
    }

private:
    bool readRow(CsvRow& row) {
        for (;;) {
            std::string cell;
            if (m_at < m_text.size() && m_text[m_at] == '"') {
                if (!readQuoted(cell)) {
                    return false;
                }
            } else if (!readPlain(cell)) {
                return false;
            }
            row.cells.push_back(std::move(cell));
            if (m_at >= m_text.size()) {
                return true;
            }
            if (m_text[m_at] == ',') {
                ++m_at;
                continue;
            }
            return endOfLine();
        }
    }

    bool readPlain(std::string& cell) {
        const std::size_t end = m_text.find_first_of(",\"\r\n", m_at);
        cell = m_text.substr(m_at, end - m_at);
        m_at = end == std::string_view::npos ? m_text.size() : end;
        return m_at == m_text.size() || m_text[m_at] != '"' ||
               fails(m_line, "a quote stands inside a cell that does not begin with one");
    }

    bool readQuoted(std::string& cell) {
        const std::size_t began = m_line;
        ++m_at;
        for (; m_at < m_text.size(); ++m_at) {
            const char sign = m_text[m_at];
            if (sign == '\n') {
                ++m_line;
            }
            if (sign != '"') {
                cell += sign;
                continue;
            }
            if (m_at + 1 < m_text.size() && m_text[m_at + 1] == '"') {
                cell += '"';
                ++m_at;
                continue;
            }
            ++m_at;
            const bool ends = m_at == m_text.size() || m_text[m_at] == ',' ||
                              m_text[m_at] == '\r' || m_text[m_at] == '\n';
            return ends || fails(m_line, "something stands behind a cell's closing quote");
        }
        return fails(began, "a quote is opened and never closed");
    }

    /// At a CR or LF.
    bool endOfLine() {
        if (m_text[m_at] == '\r') {
            ++m_at;
            if (m_at == m_text.size() || m_text[m_at] != '\n') {
                return fails(m_line, "a line ends with CR alone");
            }
        }
        ++m_at;
        ++m_line;
        return true;
    }

    bool fails(std::size_t line, std::string text) {
        m_troubleLine = line;
        m_trouble = std::move(text);
        return false;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
    std::size_t m_troubleLine = 0;
    std::string m_trouble;
};

} // namespace

CsvRows csvRows(std::string_view text) {
    return Scanner(text).read();
}

} // namespace seamclock
