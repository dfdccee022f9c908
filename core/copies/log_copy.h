// A copy of a log, complete in itself: a backup, a log for another tablet, a snapshot to be read
// elsewhere. It is made beside its place under a name that begins with a dot and ends with ".part",
// brought to disk, looked at, and only then moved there, so that a half-made one never stands under
// the copy's name; what a power cut left of an earlier try is removed by the next. The log is only
// read, over a connection of its own, and its writer never waits for a copy.
//
// A copy says of itself that it is one: the header of its file is that of a database without a
// write-ahead log, which a live log of ours never has (connection.h).
#pragma once

#include "core/base/result.h"

#include <atomic>
#include <cstdint>
#include <string>

namespace seamclock {

/// Lets another thread end a copy that is being made.
class CopyStop {
public:
    void stop() { m_stopped = true; }
    bool stopped() const { return m_stopped.load(); }

private:
    std::atomic<bool> m_stopped{false};
};

enum class CopyWay {
    Vacuumed,  // VACUUM INTO: as small as it can be; needs an own file system's locks
    PageByPage // the backup interface, without locks on the copy: for a network share
};

struct CopyOptions {
    CopyWay way = CopyWay::Vacuumed;
    bool replace = false;          // an older copy of the same log may stand there
    bool verify = false;           // all that verifyLog looks at, not the head alone
    bool live = false;             // to be a log again, and no published copy
    std::int64_t reserveBytes = 0; // must stay free on the disk that the copy goes to
    CopyStop* stop = nullptr;
};

struct LogCopy {
    std::string file; // absolute
    std::string world;
    std::string logId;
    std::int64_t rows = 0; // of the log's own chain
    std::string head;
    std::int64_t bytes = 0;

    bool operator==(const LogCopy&) const = default;
};

/// Errors as LogReader::open for the log. Damaged: the log, or the copy, is not what was written.
/// Conflict: what stands at `target` is no older copy of this log, or may not be replaced; it is
/// left as it is. NotWritten: no such folder, no room, the disk refused, or it was stopped. Nothing
/// but a file that was there before is left after an error.
Result<LogCopy>
copyLog(const std::string& log, const std::string& target, const CopyOptions& options);

/// What the copy at `file` is a copy of. Foreign: it is a live log, or none of ours.
Result<LogCopy> readCopy(const std::string& file);

/// The id of the log at `path`, live or a copy. Errors as LogReader::open.
Result<std::string> logIdOf(const std::string& path);

} // namespace seamclock
