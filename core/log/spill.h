// The file beside a log that takes rows while the log can't be written. It was written full of
// zeros in advance, so that a full disk does not matter; each line is "sha256 SP text LF" and
// counts only if its hash is right, so a torn last line is simply none. A text is an event body;
// two more begin with a word, since a body begins with "{": "log ID" (whose rows these are, always
// first) and "document KIND HEX".
#pragma once

#include "core/base/result.h"
#include "core/log/log_row.h"

#include <cstdint>
#include <string>
#include <vector>

namespace seamclock {

struct SpillContent {
    std::string logId; // "" if the file holds nothing
    std::vector<LogDocument> documents;
    std::vector<LogRow> rows;
    std::vector<std::string> damaged; // whole lines with a wrong hash, or that are none of ours

    bool empty() const { return rows.empty() && documents.empty() && damaged.empty(); }
    bool operator==(const SpillContent&) const = default;
};

/// What the spill file beside a log holds; nothing if there is none. Unreadable: it can't be read.
Result<SpillContent> readSpill(const std::string& path);

class SpillFile {
public:
    /// Makes the file, or opens the one that is there, and makes it `bytes` long at least.
    /// NotWritten or Unreadable: it can't be. Conflict: it holds rows of another log.
    static Result<SpillFile>
    open(const std::string& path, const std::string& logId, std::int64_t bytes);

    SpillFile(SpillFile&& other) noexcept;
    SpillFile& operator=(SpillFile&& other) noexcept;
    SpillFile(const SpillFile&) = delete;
    SpillFile& operator=(const SpillFile&) = delete;
    ~SpillFile();

    /// What was in it when it was opened.
    const SpillContent& found() const { return m_found; }

    /// On disk when it returns. NotWritten: none of it counts (it is full, or the disk refused).
    Result<void> append(const std::vector<LogRow>& rows, const std::vector<LogDocument>& documents);

    /// Zeros again, on disk when it returns.
    Result<void> clear();

private:
    SpillFile(int file, std::string path, std::string logId)
        : m_file(file), m_path(std::move(path)), m_logId(std::move(logId)) {}
    Result<void> zero(std::int64_t from, std::int64_t to);

    int m_file = -1;
    std::string m_path;
    std::string m_logId;
    std::int64_t m_end = 0; // behind the last line
    std::int64_t m_size = 0;
    SpillContent m_found;
};

} // namespace seamclock
