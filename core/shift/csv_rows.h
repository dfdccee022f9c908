// Comma-separated values by RFC 4180: cells in quotes may hold commas, line ends and doubled
// quotes. Two leniences: a line may end with LF alone, and empty lines are no rows. A byte order
// mark is dropped. It knows nothing of what the cells mean.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

struct CsvRow {
    std::size_t line = 0; // where it begins, from 1
    std::vector<std::string> cells;
};

struct CsvTrouble {
    std::size_t line = 0;
    std::string text; // "a quote is opened and never closed"

    bool operator==(const CsvTrouble&) const = default;
};

struct CsvRows {
    std::vector<CsvRow> rows;
    std::optional<CsvTrouble> trouble; // reading ended there
};

CsvRows csvRows(std::string_view text);

} // namespace seamclock
