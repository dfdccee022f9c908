#include "core/copies/log_copy.h"

#include "core/base/posix.h"
#include "core/log/connection.h"
#include "core/log/log_lock.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "core/machine/machine.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <array>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <sqlite3.h>
#include <sys/stat.h>
#include <sys/statvfs.h>
#include <system_error>
#include <unistd.h>

namespace seamclock {

namespace {

namespace fs = std::filesystem;

constexpr int kPagesAtOnce = 256; // between two looks at whether it shall stop
constexpr int kStepsAtOnce = 10'000;
constexpr char kCopyForm = 1; // in the header: a rollback journal, a write-ahead log
constexpr char kLogForm = 2;

tl::unexpected<Error> notWritten(const std::string& path, const std::string& why) {
    return fail(ErrorCode::NotWritten, path + ": " + why);
}

std::string folderOf(const std::string& place) {
    return fs::path(place).parent_path().string();
}

std::string lastSystemWord() {
    return std::strerror(errno);
}

/// Takes away what an earlier try left, and in the end what this one did.
class Part {
public:
    explicit Part(const std::string& target) {
        const fs::path place(target);
        m_path = (place.parent_path() / ("." + place.filename().string() + ".part")).string();
        clear();
    }
    Part(const Part&) = delete;
    Part& operator=(const Part&) = delete;
    ~Part() { clear(); }
    const std::string& path() const { return m_path; }

private:
    void clear() const {
        for (const char* tail : {"", "-wal", "-shm", "-journal"}) {
            std::error_code ignored;
            fs::remove(m_path + tail, ignored);
        }
    }

    std::string m_path;
};

bool isStopped(const CopyOptions& options) {
    return options.stop != nullptr && options.stop->stopped();
}

/// What SQLite asks every now and then while it works: not 0 ends it.
int askStop(void* stop) {
    return static_cast<const CopyStop*>(stop)->stopped() ? 1 : 0;
}

tl::unexpected<Error> stopped(const std::string& place) {
    return notWritten(place, "the copy was stopped before it was complete");
}

std::string inMegabytes(std::uint64_t bytes) {
    return std::to_string((bytes + 999'999) / 1'000'000) + " MB";
}

Result<void> checkRoom(const std::string& folder, std::uint64_t bytes, std::uint64_t reserve) {
    struct statvfs facts {};
    if (statvfs(folder.c_str(), &facts) != 0) {
        return notWritten(folder, lastSystemWord());
    }
    const std::uint64_t room = static_cast<std::uint64_t>(facts.f_bavail) * facts.f_frsize;
    if (room >= bytes + reserve) {
        return {};
    }
    return notWritten(
        folder, "has " + inMegabytes(room) + " free, and a copy of this log takes up to " +
                    inMegabytes(bytes) +
                    (reserve > 0 ? " and must leave " + inMegabytes(reserve) + " free" : ""));
}

/// Sets the header's two format versions, as SQLite's own
/// documentation does it (https://www.sqlite.org/c3ref/deserialize.html); on disk when it returns.
Result<void> finishFile(const std::string& path, char form) {
    const FileHandle file(::open(path.c_str(), O_RDWR | O_CLOEXEC));
    const std::array<char, 2> versions{form, form};
    if (file.get() < 0 ||
        pwrite(file.get(), versions.data(), versions.size(), 18) !=
            static_cast<ssize_t>(versions.size()) ||
        fsync(file.get()) != 0) {
        return notWritten(path, "can't be brought to disk (" + lastSystemWord() + ")");
    }
    return {};
}

Result<void> syncFolder(const std::string& folder) {
    const FileHandle file(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    // A network share may know no such thing.
    if (file.get() < 0 || (fsync(file.get()) != 0 && errno != EINVAL && errno != ENOTSUP)) {
        return notWritten(folder, "can't be brought to disk (" + lastSystemWord() + ")");
    }
    return {};
}

/// Throws.
void copyPages(SQLite::Database& source, const std::string& path, const CopyOptions& options) {
    const SQLite::Transaction moment(source); // so that a busy writer never makes it begin anew
    source.execAndGet("SELECT count(*) FROM chain");
    SQLite::Database copy(
        fileUri(path, "nolock=1"), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | SQLite::OPEN_URI);
    copy.exec("PRAGMA journal_mode=OFF");
    copy.exec("PRAGMA synchronous=OFF");
    SQLite::Backup backup(copy, source);
    while (backup.executeStep(kPagesAtOnce) != SQLITE_DONE) {
        if (isStopped(options)) {
            throw SQLite::Exception("it was stopped", SQLITE_INTERRUPT);
        }
    }
}

/// Throws.
void vacuumInto(SQLite::Database& source, const std::string& path) {
    SQLite::Statement into(source, "VACUUM INTO ?");
    into.bind(1, path);
    into.exec();
}

/// What stands in a copy, whose head row must be its last row's. Throws.
Result<LogCopy> contentOf(SQLite::Database& database, const std::string& file) {
    LogCopy out;
    out.file = file;
    SQLite::Statement chain(
        database, "SELECT log_id, world, seq, head, genesis FROM chain WHERE no = 1");
    if (!chain.executeStep()) {
        return fail(ErrorCode::Damaged, file + ": the log has no chain");
    }
    out.logId = chain.getColumn(0).getString();
    out.world = chain.getColumn(1).getString();
    out.rows = chain.getColumn(2).getInt64();
    out.head = chain.getColumn(3).getString();
    SQLite::Statement last(
        database, "SELECT seq, hash FROM event WHERE chain = 1 ORDER BY seq DESC LIMIT 1");
    const bool any = last.executeStep();
    const std::int64_t seq = any ? last.getColumn(0).getInt64() : 0;
    const std::string hash = any ? last.getColumn(1).getString() : chain.getColumn(4).getString();
    if (seq != out.rows || hash != out.head) {
        return fail(
            ErrorCode::Damaged, file + ": its head row says " + std::to_string(out.rows) +
                                    " rows, and the last row is " + std::to_string(seq));
    }
    struct stat facts {};
    out.bytes = stat(file.c_str(), &facts) == 0 ? facts.st_size : 0;
    return out;
}

Result<void> looksLikeALog(const std::string& path, const CopyOptions& options) {
    if (!options.verify) {
        return {};
    }
    const auto report = verifyLog(path);
    if (!report) {
        return tl::unexpected<Error>(report.error());
    }
    if (!report->ok) {
        return fail(ErrorCode::Damaged, report->finding->reason);
    }
    return {};
}

/// Whether the copy may come to its place.
Result<void>
checkPlace(const std::string& place, const std::string& logId, const CopyOptions& options) {
    std::error_code unknown;
    if (!fs::exists(fs::symlink_status(place, unknown))) {
        return {};
    }
    if (!options.replace) {
        return fail(ErrorCode::Conflict, place + ": is there already; it is never overwritten");
    }
    const auto there = readCopy(place);
    if (!there || there->logId != logId) {
        return fail(
            ErrorCode::Conflict, place + ": is there already and is no copy of this log" +
                                     (there ? " but of another" : "") + "; it is left as it is");
    }
    return {};
}

/// Reads the log and writes its copy, as far as SQLite does it.
Result<void> fill(
    const LogFile& source, const std::string& place, const std::string& part,
    const CopyOptions& options) {
    std::string at = source.path; // what a complaint is about
    try {
        const auto database = openForReading(source.path);
        const auto original = contentOf(*database, source.path);
        if (!original) {
            return tl::unexpected<Error>(original.error());
        }
        if (auto free = checkPlace(place, original->logId, options); !free) {
            return free;
        }
        const auto bytes = static_cast<std::uint64_t>(
            integerOf(*database, "PRAGMA page_count") * integerOf(*database, "PRAGMA page_size"));
        if (auto room =
                checkRoom(folderOf(place), bytes, static_cast<std::uint64_t>(options.reserveBytes));
            !room) {
            return room;
        }
        at = place;
        if (isStopped(options)) {
            return stopped(place);
        }
        if (options.stop != nullptr) {
            sqlite3_progress_handler(database->getHandle(), kStepsAtOnce, askStop, options.stop);
        }
        switch (options.way) {
        case CopyWay::Vacuumed:
            vacuumInto(*database, part);
            break;
        case CopyWay::PageByPage:
            copyPages(*database, part, options);
            break;
        }
        return {};
    } catch (const SQLite::Exception& thrown) {
        if (isStopped(options)) {
            return stopped(place);
        }
        // Damage is the log's; what can't be written is the copy.
        Error error = errorOf(thrown, at, ErrorCode::NotWritten);
        return tl::unexpected<Error>(
            error.code == ErrorCode::Damaged ? errorOf(thrown, source.path, ErrorCode::NotWritten)
                                             : std::move(error));
    }
}

/// The finished copy, on disk, and found to be what it should be.
Result<LogCopy>
finish(const std::string& place, const std::string& part, const CopyOptions& options) {
    if (auto done = finishFile(part, kCopyForm); !done) {
        return tl::unexpected<Error>(std::move(done.error()));
    }
    Result<LogCopy> copy;
    try {
        const auto database = openForReading(part);
        copy = contentOf(*database, part);
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, place, ErrorCode::NotWritten));
    }
    if (!copy) {
        return copy;
    }
    if (auto sound = looksLikeALog(part, options); !sound) {
        return tl::unexpected<Error>(std::move(sound.error()));
    }
    if (options.live) {
        if (auto done = finishFile(part, kLogForm); !done) {
            return tl::unexpected<Error>(std::move(done.error()));
        }
    }
    copy->file = place;
    return copy;
}

Result<void> move(const std::string& part, const std::string& place, bool replace) {
    int why = 0;
    if (!replace) {
        why = renameWithoutReplacing(part, place);
    } else if (std::rename(part.c_str(), place.c_str()) != 0) {
        why = errno;
    }
    if (why != 0) {
        return fail(
            why == EEXIST ? ErrorCode::Conflict : ErrorCode::NotWritten,
            place + ": can't be made (" + std::strerror(why) + ")");
    }
    return syncFolder(folderOf(place));
}

} // namespace

Result<std::string> logIdOf(const std::string& path) {
    const auto reader = LogReader::open(path);
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    return reader->logId();
}

Result<LogCopy> readCopy(const std::string& file) {
    const auto found = inspectLogFile(file);
    if (!found) {
        return tl::unexpected<Error>(found.error());
    }
    if (!found->published) {
        return fail(ErrorCode::Foreign, file + ": is a live log and no copy of one");
    }
    try {
        const auto database = openForReading(found->path);
        return contentOf(*database, found->path);
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, file, ErrorCode::Unreadable));
    }
}

Result<LogCopy>
copyLog(const std::string& log, const std::string& target, const CopyOptions& options) {
    const auto source = inspectLogFile(log);
    if (!source) {
        return tl::unexpected<Error>(source.error());
    }
    const std::string place = absolutePath(target);
    std::error_code unknown;
    if (fs::path(place).filename().empty() || fs::is_directory(place, unknown)) {
        return notWritten(target, "is a folder; allowed: the name of a file");
    }
    if (!fs::is_directory(folderOf(place), unknown)) {
        return notWritten(target, "the folder " + folderOf(place) + " is not there");
    }
    if (fs::equivalent(place, source->path, unknown)) {
        return fail(ErrorCode::Conflict, target + ": is the log itself");
    }
    const Part part(place);
    if (auto filled = fill(*source, place, part.path(), options); !filled) {
        return tl::unexpected<Error>(std::move(filled.error()));
    }
    auto copy = finish(place, part.path(), options);
    if (!copy) {
        return copy;
    }
    if (auto moved = move(part.path(), place, options.replace); !moved) {
        return tl::unexpected<Error>(std::move(moved.error()));
    }
    return copy;
}

} // namespace seamclock
