// How this room meets SQLite: whether a file is a log at all, connections with everything that must
// be set and checked on them, and SQLite's complaints in one sentence. Functions marked "throws"
// throw SQLite::Exception; the public functions of the room catch it (guarded) so that none crosses
// the room's border.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

namespace SQLite {
class Database;
class Exception;
} // namespace SQLite

namespace seamclock {

/// How to reach a log file, as far as its first bytes tell.
struct LogFile {
    std::string path;       // absolute
    std::string world;      // "production" or "practice", by the application id
    bool published = false; // a finished copy that nobody writes to: it may lie anywhere
};

/// Unreadable or Foreign, as LogReader::open says; no connection is opened yet. A live log tells
/// itself from a published copy by the header of its file, which says that it keeps a write-ahead
/// log, or by such a log beside it.
Result<LogFile> inspectLogFile(const std::string& path);

/// Absolute, so that a name that means something to SQLite does not.
std::string absolutePath(const std::string& path);

/// The path as SQLite takes it with parameters: "immutable=1".
std::string fileUri(const std::string& path, std::string_view parameters);

/// In the complaint about a log whose head was forged or cut off while no program ran.
inline constexpr std::string_view kNotSigned = "is not what the station signed";

/// Unreadable if the file or folder lies on a network file system.
Result<void> refuseNetwork(const std::string& path);

/// Read-only. Immutable for a published copy, and where even reading needs a file that can't be
/// made (a read-only medium). Throws.
std::unique_ptr<SQLite::Database> openForReading(const std::string& path);

/// Read and write, busy timeout in ms, WAL and synchronous FULL (both checked), recursive triggers
/// and foreign keys on, the chain's function known. NotWritten if one of them is not as it must be,
/// or the file can only be read; otherwise throws.
Result<std::unique_ptr<SQLite::Database>> openForWriting(const std::string& path, int busyMs);

/// Whether the write-ahead log stays as it is when the connection is closed, instead of being
/// brought into the file.
void keepWalAtClose(SQLite::Database& database, bool keep);

/// The function seamclock_chain(prev, body), which the guarding triggers call. Throws.
void teachChain(SQLite::Database& database);

/// One sentence that names the file. `otherwise` is the code for what SQLite gives no better one
/// for.
Error errorOf(const SQLite::Exception& thrown, const std::string& path, ErrorCode otherwise);

/// Throws.
bool hasTable(SQLite::Database& database, const char* name);

std::int64_t integerOf(SQLite::Database& database, const char* sql);
std::string textOf(SQLite::Database& database, const char* sql);

} // namespace seamclock
