#include "tests/support/log_content.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <algorithm>
#include <filesystem>

namespace seamclock::test {

namespace {

std::vector<std::string> linesOf(const std::string& path, const std::string& sql) {
    SQLite::Database database(path, SQLite::OPEN_READONLY, 5'000);
    SQLite::Statement query(database, sql);
    std::vector<std::string> out;
    while (query.executeStep()) {
        out.push_back(query.getColumn(0).getString());
    }
    return out;
}

} // namespace

std::vector<std::string> contentRows(const std::string& path, std::int64_t chain) {
    const std::string which = chain == 0 ? "" : " WHERE chain = " + std::to_string(chain);
    const std::string heads = chain == 0 ? "" : " WHERE no = " + std::to_string(chain);
    std::vector<std::string> out;
    for (const std::string& sql :
         {"SELECT no || ' ' || log_id || ' ' || world || ' ' || genesis || ' ' || seq || ' ' || "
          "head "
          "FROM chain" +
              heads + " ORDER BY no",
          "SELECT chain || ' ' || seq || ' ' || hash || ' ' || body FROM event" + which +
              " ORDER BY chain, seq",
          "SELECT chain || ' ' || seq || ' ' || public_key || ' ' || signature FROM "
          "head_signature" +
              which + " ORDER BY chain",
          std::string("SELECT sha256 || ' ' || kind || ' ' || hex(body) FROM document ORDER BY "
                      "sha256")}) {
        const auto lines = linesOf(path, sql);
        out.insert(out.end(), lines.begin(), lines.end());
    }
    return out;
}

std::vector<std::string> chainRows(const std::string& path, std::int64_t chain) {
    return linesOf(
        path, "SELECT hash || ' ' || body FROM event WHERE chain = " + std::to_string(chain) +
                  " ORDER BY seq");
}

std::vector<std::string> namesIn(const std::string& folder) {
    std::vector<std::string> out;
    for (const auto& one : std::filesystem::directory_iterator(folder)) {
        out.push_back(one.path().filename().string());
    }
    std::sort(out.begin(), out.end());
    return out;
}

} // namespace seamclock::test
