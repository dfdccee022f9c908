#include "core/log/start_check.h"

#include "core/base/posix.h"
#include "core/log/body_codec.h"
#include "core/log/chain.h"
#include "core/log/connection.h"
#include "core/log/joint_cache.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <algorithm>
#include <fcntl.h>
#include <filesystem>
#include <set>
#include <sqlite3.h>
#include <unistd.h>

namespace seamclock {

namespace {

// Rows that no list of joints knows yet are few; where the list has to be made anew, only the
// newest are looked through.
constexpr std::int64_t kMostUnlisted = 5'000;

std::set<std::string> maybeOpen(SQLite::Database& database) {
    std::set<std::string> out;
    if (hasJointCache(database)) {
        SQLite::Statement listed(database, "SELECT weld FROM joint WHERE open = 1");
        while (listed.executeStep()) {
            out.insert(listed.getColumn(0).getString());
        }
    }
    const std::int64_t last = integerOf(database, "SELECT seq FROM chain WHERE no = 1");
    SQLite::Statement since(
        database, "SELECT DISTINCT subject FROM event WHERE chain = 1 AND seq > ?");
    since.bind(1, std::max(cachedTo(database, 1), last - kMostUnlisted));
    while (since.executeStep()) {
        std::string subject = since.getColumn(0).getString();
        if (isWeld(subject)) {
            out.insert(std::move(subject));
        }
    }
    return out;
}

} // namespace

Result<TornRows>
tornRowsOf(SQLite::Database& database, const std::string& path, const WalTail& tail) {
    if (tail.commits > 1) {
        return fail(
            ErrorCode::Damaged,
            path + "-wal: is damaged, and whole transactions stand behind that");
    }
    TornRows out;
    SQLite::Statement held(
        database, "SELECT 1 FROM event WHERE chain = 1 AND subject = ? AND n = ?");
    SQLite::Statement stored(database, "SELECT hash FROM event WHERE chain = 1 AND seq = ?");
    const auto borneOut = [&](const RawEvent& event) {
        stored.reset();
        stored.bind(1, event.seq - 1);
        if (stored.executeStep() &&
            chainHash(stored.getColumn(0).getString(), event.body) == event.hash) {
            return true;
        }
        return std::any_of(tail.events.begin(), tail.events.end(), [&](const RawEvent& before) {
            return before.seq == event.seq - 1 && chainHash(before.hash, event.body) == event.hash;
        });
    };
    for (const RawEvent& event : tail.events) {
        const auto envelope = readEnvelope(event.body);
        if (!envelope || event.chain != 1) {
            continue;
        }
        held.reset();
        held.bind(1, envelope->subject);
        held.bind(2, envelope->n);
        LogRow row{envelope->subject, envelope->n, event.body};
        auto& rows = borneOut(event) ? out.rows : out.doubtful;
        if (!held.executeStep() && std::find(rows.begin(), rows.end(), row) == rows.end()) {
            rows.push_back(std::move(row));
        }
    }
    if (!out.rows.empty()) {
        out.documents = tail.documents;
    }
    return out;
}

Result<void> checkOpenWelds(SQLite::Database& database, const std::string& path) {
    SQLite::Statement rows(
        database, "SELECT seq, hash, body FROM event WHERE chain = 1 AND subject = ? ORDER BY n");
    SQLite::Statement before(database, "SELECT hash FROM event WHERE chain = 1 AND seq = ?");
    const std::string genesis = textOf(database, "SELECT genesis FROM chain WHERE no = 1");
    for (const std::string& weld : maybeOpen(database)) {
        rows.reset();
        rows.bind(1, weld);
        while (rows.executeStep()) {
            const std::int64_t seq = rows.getColumn(0).getInt64();
            before.reset();
            before.bind(1, seq - 1);
            const bool found = before.executeStep();
            const std::string hash = found      ? before.getColumn(0).getString()
                                     : seq == 1 ? genesis
                                                : std::string();
            if (chainHash(hash, rows.getColumn(2).getString()) != rows.getColumn(1).getString()) {
                return fail(
                    ErrorCode::Damaged, path + ": row " + std::to_string(seq) + ", an event of " +
                                            weld + ", is not what was written");
            }
        }
    }
    return {};
}

Result<std::optional<std::string>>
structureTrouble(const std::string& path, const std::atomic<bool>& stop) {
    using Found = std::optional<std::string>;
    const auto file = inspectLogFile(path);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    const auto told = [&path](const std::string& what) {
        return Found(path + ": its structure is damaged (" + what + ")");
    };
    try {
        const auto database = openForReading(file->path);
        const auto halt = [](void* asked) {
            return static_cast<const std::atomic<bool>*>(asked)->load() ? 1 : 0;
        };
        sqlite3_progress_handler(
            database->getHandle(), 1'000, halt, const_cast<std::atomic<bool>*>(&stop));
        const std::string answer = textOf(*database, "PRAGMA quick_check(1)");
        return answer == "ok" || stop.load() ? Found{} : told(answer);
    } catch (const SQLite::Exception& thrown) {
        if (stop.load()) {
            return Found{};
        }
        if (thrown.getErrorCode() == SQLITE_CORRUPT || thrown.getErrorCode() == SQLITE_NOTADB) {
            return told(thrown.what());
        }
        return tl::unexpected<Error>(errorOf(thrown, path, ErrorCode::Unreadable));
    }
}

namespace {

std::string doubtOf(const std::string& path) {
    std::error_code unknown;
    const auto real = std::filesystem::weakly_canonical(absolutePath(path), unknown);
    return (unknown ? absolutePath(path) : real.string()) + ".doubtful";
}

} // namespace

Result<void> leaveDoubt(const std::string& path) {
    const std::string doubt = doubtOf(path);
    const int file = ::open(doubt.c_str(), O_WRONLY | O_CREAT | O_CLOEXEC, 0644);
    const bool written = file >= 0 && ::fsync(file) == 0;
    if (file >= 0) {
        ::close(file);
    }
    if (!written) {
        return fail(ErrorCode::NotWritten, doubt + ": can't be written");
    }
    return {};
}

bool isDoubtful(const std::string& path) {
    std::error_code unknown;
    return std::filesystem::exists(doubtOf(path), unknown);
}

void forgetDoubt(const std::string& path) {
    std::error_code ignored;
    std::filesystem::remove(doubtOf(path), ignored);
}

} // namespace seamclock
