// The one place that writes a log. A step on the floor counts at its instant whatever the disk
// does, so rows are handed over and a thread of this writer's own carries them to disk: each submit
// is one transaction, and a row is Saved when that is on disk. What can't be written is kept, tried
// again, and spilled to a file beside the log that was written full of zeros in advance, so that it
// works on a full disk; spilled rows join the chain later, also at the next start. Nothing here
// knows what the events mean, but that the station signs the head when a weld has ended, and hourly
// (seal.h); the list of joints is refreshed after the rows are safe and can never hold them up.
//
// Beside LOG stand LOG.lock, LOG.spill, from the first signature on LOG.credentials, and, if ever
// needed, LOG.refused and LOG.before-N (a copy from before a migration). Every function may be
// called from any thread.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/log/fact.h"
#include "core/log/log_row.h"
#include "core/log/world.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace seamclock {

/// So large a file is looked through in a good tenth of a second.
inline constexpr std::int64_t kCheckedAtStart = 24 * 1024 * 1024;

struct LogWriterOptions {
    Milliseconds retryFirst{250}; // then doubled each time
    Milliseconds retryLongest{10'000};
    Milliseconds busyTimeout{1'000};           // for a log that another program has locked
    std::int64_t spillBytes = 4 * 1024 * 1024; // a weld of 30 events takes about 20 kB
    bool quickCheck = true; // look through the file's structure before anything is written
    // A larger file is not looked through at once, unless word was left that it is doubtful
    // (leaveDoubt): a LogKeeper does it while the program runs.
    std::int64_t quickCheckUpTo = INT64_MAX;
    bool sign = true;    // the head (seal.h); a log that was signed once always is
    bool resign = false; // the head at once: for a chain that was copied into a new file
    Milliseconds signEvery{3'600'000}; // besides after each closed or aborted weld
    // What is submitted while the disk is busy waits as one transaction: for whoever makes so many
    // rows that a transaction each would be the slowest part, and is not asked meanwhile what of
    // them is saved.
    bool gather = false;
    std::string credentials; // the file with the station's key; "": LOG.credentials
    /// Called from the writer's thread after any status changed or a write failed. It must be quick
    /// and must not throw; it may call every function of the writer but flush.
    std::function<void()> changed;
};

/// A write that failed, until one succeeds.
struct Trouble {
    std::string detail;        // one sentence
    std::int64_t attempts = 0; // failed so far, at least 1
    bool spillFailed = false;  // rows stand in memory only

    bool operator==(const Trouble&) const = default;
};

/// A row that this log will never hold (RowStatus::Refused).
struct RefusedRow {
    LogRow row;
    std::string reason;

    bool operator==(const RefusedRow&) const = default;
};

struct WriterState {
    std::int64_t pending = 0;
    std::int64_t spilled = 0;
    std::int64_t saved = 0; // rows of this run that are in the chain, joined ones included
    std::optional<Trouble> trouble;
    std::vector<RefusedRow> refused;
    std::optional<std::string>
        listTrouble; // the list of joints could not be refreshed; no event is concerned

    bool operator==(const WriterState&) const = default;
};

enum class LogOrigin { New, Known };

/// What both worlds share. Made by LogWriter<World>::open.
class LogWriterBase {
public:
    LogWriterBase(LogWriterBase&&) noexcept;
    LogWriterBase& operator=(LogWriterBase&&) noexcept;
    /// Tries once more to write what waits, then spills it; flush() first to know.
    ~LogWriterBase();

    LogOrigin origin() const;
    const std::string& path() const;
    const std::string& logId() const;

    /// Takes the rows over and returns at once; they are Pending from here. All rows and documents
    /// of one call become saved together. A row that the log already holds with the same body is
    /// Saved without being written again.
    void submit(std::vector<LogRow> rows, std::vector<LogDocument> documents = {});

    /// Numbers a fact, submits it and returns it. Facts are numbered by the writer, as it writes
    /// some of the station's itself. Malformed: a text that is not UTF-8, or a subject that this
    /// kind can't have; nothing is submitted. Refused: a fact of practice in another log.
    Result<Fact> note(
        const Instant& at, std::string by, std::string subject, FactDetail detail,
        std::vector<LogDocument> documents = {});

    /// Ask only for rows that were submitted here or read from the log: what is neither pending,
    /// spilled nor refused is saved.
    RowStatus status(const std::string& subject, std::int64_t n) const;
    WriterState state() const;
    /// The rows that are pending or spilled, those left over from the last run included: no
    /// LogReader sees them yet.
    std::vector<LogRow> waiting() const;

    /// The last row that is on disk.
    LogHead head() const;

    /// Blocks until every row submitted before is saved, or one more try has failed. NotWritten:
    /// rows are only spilled or pending; the detail says how many of each, and why.
    Result<void> flush();

protected:
    static Result<LogWriterBase> openBase(
        const std::string& path, std::string_view world, std::int32_t applicationId,
        const Clock& clock, LogWriterOptions options);

private:
    struct Inside;
    explicit LogWriterBase(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

template <class World>
class LogWriter : public LogWriterBase {
public:
    /// Opens the log, or makes one where there is no file (origin() tells). Leftover spilled rows
    /// are joined before it returns, if the log can be written. `clock` gives the instants of the
    /// writer's own facts (rows spilled, rows joined); it must outlive the writer, and now() is
    /// called from the writer's thread. Unreadable: a folder, zero bytes, not a database, a network
    /// file system; never taken for a new log. Foreign: not a log of this world, or of a newer
    /// program. Damaged: its structure or its head is not what was written; the file is left as it
    /// is. Conflict: another program writes this log. NotWritten: the folder can't be written to.
    static Result<LogWriter>
    // NOLINTNEXTLINE(performance-unnecessary-value-param): moved from, which a template hides
    open(const std::string& path, const Clock& clock, LogWriterOptions options = {}) {
        auto base = openBase(path, World::kName, World::kApplicationId, clock, std::move(options));
        if (!base) {
            return tl::unexpected<Error>(std::move(base.error()));
        }
        return LogWriter(std::move(*base));
    }

private:
    explicit LogWriter(LogWriterBase&& base) : LogWriterBase(std::move(base)) {}
};

} // namespace seamclock
