// What of a damaged log can still be read and believed. Its records are gathered from the bytes of
// the file, its write-ahead log and its spill file (raw_log.h) into a scratch database, since a log
// of many years does not fit into memory; then each subject is told in the order of n, as far as
// nothing of it is lost. A body is believed unless the chain speaks against it: one whose hash is
// wrong was changed, and counts as lost. What is lost is named as far as anything left tells of it:
// gaps in the chain, the index, the list of joints. Nothing is decided here about a new log.
#pragma once

#include "core/base/result.h"
#include "core/log/log_row.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// A weld, or a bench, procedure, seam or person with what was set about it.
struct SalvagedSubject {
    std::string subject;
    std::int64_t number = 0;  // of a joint; 0: nothing tells it
    bool ended = false;       // a weld that was closed or aborted
    std::vector<LogRow> rows; // from n = 1 on without a gap; of a weld as far as they make one
    std::vector<std::int64_t> lost;     // n of events that there were, and that can't be read
    std::vector<std::int64_t> apart;    // n of events that can be read, but stand behind a lost one
    bool named = false;                 // the index or the list of joints tells of it too
    std::int64_t unproven = 0;          // of `rows`: those whose predecessor in the chain is lost
    std::vector<LogDocument> documents; // that the rows name
    std::vector<std::string> lostDocuments; // SHA-256 of those that can't be read

    bool whole() const { return lost.empty() && apart.empty(); }
};

struct SalvageCount {
    std::string logId; // "" if no head row can be read
    std::string world;
    bool ours = false;              // it is a joint log, or was one
    std::int64_t rows = 0;          // of its own chain that can be read
    std::int64_t lostRows = 0;      // known to have stood there
    std::int64_t spilled = 0;       // rows of the spill file
    std::int64_t highestNumber = 0; // of any joint that anything tells of
};

class Salvage {
public:
    /// Reads all there is. `scratch` names a file that is made, and removed at the end. Unreadable:
    /// the log can't be opened. NotWritten: the scratch file can't be.
    static Result<Salvage> read(const std::string& path, const std::string& scratch);

    Salvage(Salvage&&) noexcept;
    Salvage& operator=(Salvage&&) noexcept;
    ~Salvage();

    const SalvageCount& count() const;

    /// Whether every row of the chain is there: their bodies make the hash of the head row. Then
    /// `use` may be called with each by seq (chained anew, which mends a damaged hash).
    bool chainIsWhole() const;
    Result<void>
    eachRow(const std::function<void(const std::string& hash, const std::string& body)>& use);
    Result<void> eachDocument(const std::function<void(const LogDocument&)>& use);

    /// In the order in which they began. Not the station's and the days' own facts: they are about
    /// the old log.
    Result<void> eachSubject(const std::function<Result<void>(SalvagedSubject)>& use);

    /// What waited in the spill file.
    const std::vector<LogRow>& spilledRows() const;
    const std::vector<LogDocument>& spilledDocuments() const;

private:
    struct Inside;
    explicit Salvage(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

} // namespace seamclock
