#include "core/log/rows.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <sqlite3.h>

namespace seamclock {

Rows::Rows(SQLite::Database& database, const std::string& sql) : m_database(database) {
    check(sqlite3_prepare_v2(
        database.getHandle(), sql.data(), static_cast<int>(sql.size()), &m_rows, nullptr));
}

Rows::~Rows() {
    sqlite3_finalize(m_rows);
}

void Rows::bind(int place, const std::string& value) {
    check(sqlite3_bind_text(
        m_rows, place, value.data(), static_cast<int>(value.size()), SQLITE_TRANSIENT));
}

void Rows::bind(int place, std::int64_t value) {
    check(sqlite3_bind_int64(m_rows, place, value));
}

bool Rows::step() {
    const int said = sqlite3_step(m_rows);
    if (said != SQLITE_ROW && said != SQLITE_DONE) {
        throw SQLite::Exception(m_database.getHandle(), said);
    }
    return said == SQLITE_ROW;
}

void Rows::reset() {
    sqlite3_reset(m_rows);
}

bool Rows::isInteger(int column) const {
    return sqlite3_column_type(m_rows, column) == SQLITE_INTEGER;
}

bool Rows::isText(int column) const {
    return sqlite3_column_type(m_rows, column) == SQLITE_TEXT;
}

std::int64_t Rows::number(int column) const {
    return sqlite3_column_int64(m_rows, column);
}

std::string_view Rows::text(int column) const {
    const auto* bytes = reinterpret_cast<const char*>(sqlite3_column_text(m_rows, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_rows, column));
    return bytes == nullptr ? std::string_view() : std::string_view(bytes, size);
}

void Rows::check(int said) const {
    if (said != SQLITE_OK) {
        throw SQLite::Exception(m_database.getHandle(), said);
    }
}

} // namespace seamclock
