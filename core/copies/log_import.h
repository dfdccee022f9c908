// Joints of another tablet's log in this one's list. Every chain of the other log becomes a chain
// of its own here, row by row and hash by hash as it was written there, so it is verified here as
// there and can be continued by a later import; nothing is mixed into this log's own chain but the
// fact that it was done. A joint that is in both stands in the list once, since its events are the
// same.
//
// What can't be: a chain that is known here must continue as it is known, else one of the two was
// changed, or the same log went on in two places. Where two chains hold different events of one
// weld, both are kept, this log's own counts, and the difference is reported.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <vector>

namespace seamclock {

struct ImportedChain {
    std::string logId;
    std::int64_t chain = 0; // its number here; 1: this log's own, of which nothing is taken
    std::int64_t added = 0; // rows
    std::int64_t toSeq = 0; // rows that are here now
    std::string head;

    bool operator==(const ImportedChain&) const = default;
};

/// Two chains hold different events there.
struct ImportConflict {
    std::string subject;
    std::int64_t n = 0;
    std::int64_t chain = 0; // the one that was added to
    std::int64_t other = 0;

    bool operator==(const ImportConflict&) const = default;
};

struct ImportReport {
    std::string world;
    std::vector<ImportedChain> chains;     // as they stand in the other log
    std::int64_t rows = 0;                 // added, of all chains
    std::int64_t joints = 0;               // new in the list
    std::int64_t documents = 0;            // added
    std::vector<ImportConflict> conflicts; // the first of each weld

    bool operator==(const ImportReport&) const = default;
};

/// Adds what is new in the log at `from` (a copy of it, or the log itself) to the log at `path`:
/// all or nothing. If nothing is new, nothing is written. `clock` gives the instant of the fact
/// that tells of it.
///
/// As LogReader::open for `from`, and as LogWriter::open for `path`, which must be there. Foreign:
/// the two are of different worlds. Damaged: `from` is not what was written. Conflict: a chain is
/// known here with other rows, or a program is writing the log. NotWritten: the disk refused.
Result<ImportReport>
importLog(const std::string& from, const std::string& path, const Clock& clock);

} // namespace seamclock
