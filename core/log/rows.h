// A prepared statement whose rows are read where they stand. SQLiteCpp's Column costs more than the
// value it holds, and a page of the list has two thousand values, a log ten million rows.
// Throws SQLite::Exception.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

struct sqlite3_stmt;
namespace SQLite {
class Database;
} // namespace SQLite

namespace seamclock {

class Rows {
public:
    /// The connection must outlive it.
    Rows(SQLite::Database& database, const std::string& sql);
    Rows(const Rows&) = delete;
    Rows& operator=(const Rows&) = delete;
    ~Rows();

    // Places are counted from 1.
    void bind(int place, const std::string& value);
    void bind(int place, std::int64_t value);
    /// False at the end.
    bool step();
    void reset();

    // Columns are counted from 0.
    bool isInteger(int column) const;
    bool isText(int column) const;
    std::int64_t number(int column) const;
    /// Until the next step.
    std::string_view text(int column) const;

private:
    void check(int said) const;

    SQLite::Database& m_database;
    sqlite3_stmt* m_rows = nullptr;
};

} // namespace seamclock
