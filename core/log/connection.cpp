#include "core/log/connection.h"

#include "core/base/posix.h"
#include "core/log/chain.h"
#include "core/log/world.h"
#include "core/machine/machine.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <array>
#include <cerrno>
#include <cstddef>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <sqlite3.h>
#include <sys/stat.h>
#include <system_error>
#include <vector>

namespace seamclock {

namespace {

// SQLite's file format: the first 16 bytes, where the file format's write and read versions stand
// (1: rollback journal, 2: write-ahead log), and the application id
// (https://www.sqlite.org/fileformat2.html, "The Database Header").
constexpr std::string_view kMagic("SQLite format 3\0", 16);
constexpr std::size_t kHeaderBytes = 100;
constexpr std::size_t kWriteVersionAt = 18;
constexpr std::size_t kReadVersionAt = 19;
constexpr std::size_t kApplicationIdAt = 68;
using Header = std::array<char, kHeaderBytes>;

enum class HeaderRead { Done, Short, NotReadable };

/// Through SQLite's own layer for files: the kernel lets go of every lock that a process has on a
/// file as soon as it closes any handle of it, and that layer alone waits with closing where a
/// connection of this process has locks (https://www.sqlite.org/howtocorrupt.html, 2.2).
HeaderRead readHeader(const std::string& path, Header& header) {
    sqlite3_vfs* layer = sqlite3_vfs_find(nullptr);
    if (layer == nullptr) {
        return HeaderRead::NotReadable;
    }
    std::string real(static_cast<std::size_t>(layer->mxPathname) + 1, '\0'); // behind all links
    const int named =
        layer->xFullPathname(layer, path.c_str(), static_cast<int>(real.size()), real.data());
    if (named != SQLITE_OK && named != SQLITE_OK_SYMLINK) {
        return HeaderRead::NotReadable;
    }
    const auto name = sqlite3_create_filename(real.c_str(), "", "", 0, nullptr);
    if (name == nullptr) {
        return HeaderRead::NotReadable;
    }
    std::vector<std::max_align_t> memory(
        static_cast<std::size_t>(layer->szOsFile) / sizeof(std::max_align_t) + 1);
    auto* file = reinterpret_cast<sqlite3_file*>(memory.data());
    HeaderRead out = HeaderRead::NotReadable;
    if (layer->xOpen(layer, name, file, SQLITE_OPEN_READONLY | SQLITE_OPEN_MAIN_DB, nullptr) ==
        SQLITE_OK) {
        const int read =
            file->pMethods->xRead(file, header.data(), static_cast<int>(header.size()), 0);
        out = read == SQLITE_OK                 ? HeaderRead::Done
              : read == SQLITE_IOERR_SHORT_READ ? HeaderRead::Short
                                                : HeaderRead::NotReadable;
    }
    if (file->pMethods != nullptr) {
        file->pMethods->xClose(file);
    }
    sqlite3_free_filename(name);
    return out;
}

/// A live log of ours always keeps a write-ahead log, and its header says so even when it was
/// closed; a copy that was published says the other, and nothing that a writer needs is beside it.
bool isPublishedForm(const Header& header, const std::string& path) {
    std::error_code ignored;
    return header[kWriteVersionAt] == 1 && header[kReadVersionAt] == 1 &&
           !std::filesystem::exists(path + "-wal", ignored) &&
           !std::filesystem::exists(path + "-journal", ignored);
}

void chainFunction(sqlite3_context* context, int, sqlite3_value** values) {
    const auto text = [](sqlite3_value* value) {
        const auto* bytes = static_cast<const char*>(sqlite3_value_blob(value));
        const auto size = static_cast<std::size_t>(sqlite3_value_bytes(value));
        return bytes == nullptr ? std::string_view() : std::string_view(bytes, size);
    };
    const std::string hash = chainHash(text(values[0]), text(values[1]));
    sqlite3_result_text(context, hash.data(), static_cast<int>(hash.size()), SQLITE_TRANSIENT);
}

} // namespace

std::string absolutePath(const std::string& path) {
    std::error_code ignored;
    const auto absolute = std::filesystem::absolute(path, ignored);
    return absolute.empty() ? path : absolute.lexically_normal().string();
}

std::string fileUri(const std::string& path, std::string_view parameters) {
    std::string out = "file:";
    for (const char c : path) {
        const auto byte = static_cast<unsigned char>(c);
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                           (c >= '0' && c <= '9') || c == '/' || c == '.' || c == '-' || c == '_';
        if (plain) {
            out += c;
        } else {
            std::array<char, 4> code{};
            std::snprintf(code.data(), code.size(), "%%%02X", byte);
            out += code.data();
        }
    }
    out.append("?").append(parameters);
    return out;
}

Result<void> refuseNetwork(const std::string& path) {
    const auto far = liesOnNetwork(absolutePath(path));
    if (!far) {
        return tl::unexpected<Error>(far.error());
    }
    if (*far) {
        return fail(
            ErrorCode::Unreadable, path + ": lies on a network file system, where a live log can't "
                                          "be used safely; use a log on this machine, "
                                          "or a published copy of it");
    }
    return {};
}

Result<LogFile> inspectLogFile(const std::string& path) {
    const std::string absolute = absolutePath(path);
    struct stat facts {};
    if (stat(absolute.c_str(), &facts) != 0) {
        return fail(
            ErrorCode::Unreadable,
            path + ": " + (errno == ENOENT ? "no such file" : std::strerror(errno)));
    }
    if (S_ISDIR(facts.st_mode)) {
        return fail(ErrorCode::Unreadable, path + ": is a folder, expected a log file");
    }
    if (!S_ISREG(facts.st_mode)) {
        return fail(ErrorCode::Unreadable, path + ": is not a regular file, expected a log file");
    }
    if (facts.st_size == 0) {
        return fail(ErrorCode::Unreadable, path + ": has 0 bytes, so it is no log");
    }
    Header header{};
    const HeaderRead read = readHeader(absolute, header);
    if (read == HeaderRead::NotReadable) {
        return fail(ErrorCode::Unreadable, path + ": not readable");
    }
    if (read == HeaderRead::Short || std::string_view(header.data(), kMagic.size()) != kMagic) {
        return fail(ErrorCode::Unreadable, path + ": is not a database, so it is no log");
    }
    std::uint32_t id = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        id = (id << 8U) | static_cast<unsigned char>(header[kApplicationIdAt + i]);
    }
    LogFile out{absolute, "", isPublishedForm(header, absolute)};
    if (id == static_cast<std::uint32_t>(Production::kApplicationId)) {
        out.world = Production::kName;
    } else if (id == static_cast<std::uint32_t>(Practice::kApplicationId)) {
        out.world = Practice::kName;
    } else {
        return fail(
            ErrorCode::Foreign, path + ": is a database, but not a joint log (application id " +
                                    std::to_string(id) + ", expected " +
                                    std::to_string(Production::kApplicationId) + " or " +
                                    std::to_string(Practice::kApplicationId) + ")");
    }
    if (out.published) {
        return out; // nobody writes to it where it lies, so it may lie anywhere
    }
    if (auto local = refuseNetwork(absolute); !local) {
        return tl::unexpected<Error>(std::move(local.error()));
    }
    return out;
}

std::unique_ptr<SQLite::Database> openForReading(const std::string& path) {
    constexpr int kBusyMs = 2'000;
    const auto openStill = [&] {
        auto still = std::make_unique<SQLite::Database>(
            fileUri(path, "immutable=1"), SQLite::OPEN_READONLY | SQLite::OPEN_URI, kBusyMs);
        still->execAndGet("SELECT count(*) FROM sqlite_schema");
        return still;
    };
    Header header{};
    if (readHeader(path, header) == HeaderRead::Done && isPublishedForm(header, path)) {
        return openStill();
    }
    try {
        auto plain = std::make_unique<SQLite::Database>(path, SQLite::OPEN_READONLY, kBusyMs);
        plain->execAndGet("SELECT count(*) FROM sqlite_schema");
        return plain;
    } catch (const SQLite::Exception& thrown) {
        const int code = thrown.getErrorCode();
        std::error_code none;
        const auto walBytes = std::filesystem::file_size(path + "-wal", none);
        const bool walEmpty = none || walBytes == 0;
        if ((code != SQLITE_CANTOPEN && code != SQLITE_READONLY) || !walEmpty) {
            throw;
        }
    }
    return openStill();
}

void keepWalAtClose(SQLite::Database& database, bool keep) {
    sqlite3_db_config(
        database.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, keep ? 1 : 0, nullptr);
}

void teachChain(SQLite::Database& database) {
    database.createFunction("seamclock_chain", 2, true, nullptr, chainFunction);
}

Result<std::unique_ptr<SQLite::Database>> openForWriting(const std::string& path, int busyMs) {
    auto database = std::make_unique<SQLite::Database>(path, SQLite::OPEN_READWRITE, busyMs);
    keepWalAtClose(*database, true); // if it throws here the file may be damaged
    if (sqlite3_db_readonly(database->getHandle(), "main") != 0) {
        return fail(ErrorCode::NotWritten, path + ": can only be read, not written");
    }
    const std::string mode = textOf(*database, "PRAGMA journal_mode=WAL");
    if (mode != "wal") {
        return fail(
            ErrorCode::NotWritten,
            path + ": its folder can't hold a write-ahead log (journal mode \"" + mode +
                "\", expected \"wal\")");
    }
    constexpr int kFull = 2;
    database->exec("PRAGMA synchronous=FULL");
    if (integerOf(*database, "PRAGMA synchronous") != kFull) {
        return fail(ErrorCode::NotWritten, path + ": synchronous writing can't be turned on");
    }
    database->exec("PRAGMA recursive_triggers=ON");
    database->exec("PRAGMA foreign_keys=ON");
    if (integerOf(*database, "PRAGMA recursive_triggers") != 1) {
        return fail(ErrorCode::NotWritten, path + ": recursive triggers can't be turned on");
    }
    teachChain(*database);
    keepWalAtClose(*database, false);
    return database;
}

Error errorOf(const SQLite::Exception& thrown, const std::string& path, ErrorCode otherwise) {
    const std::string said = std::string(" (") + thrown.what() + ")";
    const auto is = [&](std::initializer_list<int> codes) {
        for (const int code : codes) {
            if ((thrown.getErrorCode() & 0xFF) == code) { // it may be an extended code
                return true;
            }
        }
        return false;
    };
    if (is({SQLITE_FULL})) {
        return {ErrorCode::NotWritten, path + ": the disk is full" + said};
    }
    if (is({SQLITE_READONLY})) {
        return {ErrorCode::NotWritten, path + ": can only be read, not written" + said};
    }
    if (is({SQLITE_BUSY, SQLITE_LOCKED})) {
        return {otherwise, path + ": another program holds it locked" + said};
    }
    if (is({SQLITE_IOERR})) {
        return {otherwise, path + ": the disk reports an error" + said};
    }
    if (is({SQLITE_CANTOPEN, SQLITE_PERM, SQLITE_AUTH})) {
        return {otherwise, path + ": can't be opened" + said};
    }
    if (is({SQLITE_CORRUPT, SQLITE_NOTADB})) {
        return {ErrorCode::Damaged, path + ": its structure is damaged" + said};
    }
    return {otherwise, path + ": " + thrown.what()};
}

bool hasTable(SQLite::Database& database, const char* name) {
    SQLite::Statement query(database, "SELECT 1 FROM sqlite_schema WHERE type='table' AND name=?");
    query.bind(1, name);
    return query.executeStep();
}

std::int64_t integerOf(SQLite::Database& database, const char* sql) {
    return database.execAndGet(sql).getInt64();
}

std::string textOf(SQLite::Database& database, const char* sql) {
    return database.execAndGet(sql).getString();
}

} // namespace seamclock
