// What is looked at when a log is opened for writing, beyond its file's structure: whether its
// write-ahead log was damaged, so that SQLite would pass over rows that had been reported as saved;
// and whether the rows of the open welds are what was written, since the next steps build on them.
// (The rest of the chain is verify's: it takes too long for a start.)
#pragma once

#include "core/base/result.h"
#include "core/log/log_row.h"
#include "core/log/raw_log.h"

#include <atomic>
#include <optional>
#include <string>
#include <vector>

namespace SQLite {
class Database;
} // namespace SQLite

namespace seamclock {

/// What a torn last transaction left: it was never reported as saved, but it was really given.
struct TornRows {
    std::vector<LogRow> rows;
    std::vector<LogDocument> documents;
    std::vector<LogRow> doubtful; // that the chain does not bear out: for a person to look at
};

/// `tail` was read before SQLite opened the log. Damaged: a write-ahead log that was damaged in
/// the midst; what stands behind had been reported as saved. (One that was cut off between two
/// transactions can't be told from one that ends there.) Throws SQLite::Exception.
Result<TornRows>
tornRowsOf(SQLite::Database& database, const std::string& path, const WalTail& tail);

/// Damaged: a row of an open weld whose hash does not follow from its own body and the row before.
/// Throws SQLite::Exception.
Result<void> checkOpenWelds(SQLite::Database& database, const std::string& path);

/// What SQLite finds wrong with the structure of that log's file, in one sentence; empty: nothing,
/// or `stop` was set meanwhile. Over a connection that only reads: a second or more for each 500
/// MB. Unreadable and the rest as LogReader::open.
Result<std::optional<std::string>>
structureTrouble(const std::string& path, const std::atomic<bool>& stop);

/// Leaves word beside the log that its structure is doubtful, so that the next LogWriter::open
/// looks through all of it, however large it is. NotWritten.
Result<void> leaveDoubt(const std::string& path);
bool isDoubtful(const std::string& path);
void forgetDoubt(const std::string& path);

} // namespace seamclock
