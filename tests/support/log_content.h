// What is in a log's file, row by row and byte by byte, asked of SQLite itself.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace seamclock::test {

/// One text for each chain, row, signature of a head and document, in order; `chain` 0: of all
/// chains. For logs of this program's version.
std::vector<std::string> contentRows(const std::string& path, std::int64_t chain = 0);

/// The hash and body of each row of a chain.
std::vector<std::string> chainRows(const std::string& path, std::int64_t chain);

/// The names of the files in a folder, sorted.
std::vector<std::string> namesIn(const std::string& folder);

} // namespace seamclock::test
