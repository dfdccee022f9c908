// What the bytes of a log file and its write-ahead log still hold, read without SQLite: for a file
// that SQLite can't read any more, or only in part. Records are found by their form (SQLite's
// record header before a hash of 64 characters, before "weld:"), wherever in a page they stand, so
// that a damaged header, root or inner page hides nothing. Whether a record is true is not decided
// here: an event has its chain's hash for that, a document its own.
// Format: https://www.sqlite.org/fileformat2.html
#pragma once

#include "core/base/result.h"
#include "core/log/log_row.h"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace seamclock {

/// A row of the chain as its page has it.
struct RawEvent {
    std::int64_t chain = 0;
    std::int64_t seq = 0;
    std::string hash;
    std::string body;
};

/// An entry of the index over (subject, n), of a weld: it tells whose a lost row was.
struct RawKey {
    std::string subject;
    std::int64_t n = 0;
    std::int64_t seq = 0;
};

/// A line of the list of joints, as far as it is of use here.
struct RawJoint {
    std::string weld;
    std::int64_t number = 0;
    bool ended = false; // closed or aborted
};

/// The head row of a chain.
struct RawChain {
    std::string logId;
    std::string world;
    std::int64_t seq = 0;
    std::string head;
};

/// What to do with each; one that is empty is passed over. The same record comes again where an
/// older copy of its page stands, and out of order.
struct RawUse {
    std::function<void(RawEvent)> event;
    std::function<void(RawKey)> key;
    std::function<void(RawJoint)> joint;
    std::function<void(RawChain)> chain;
    std::function<void(LogDocument)> document; // its bytes have its SHA-256
};

struct RawExtent {
    bool ours = false; // the text of our tables stands in it
};

/// Through the whole file and its write-ahead log; neither is changed. Unreadable: the file can't
/// be opened.
Result<RawExtent> readRawLog(const std::string& path, const RawUse& use);

/// Rows that stand in the write-ahead log behind the place up to which SQLite will read it.
struct WalTail {
    std::vector<RawEvent> events;
    std::vector<LogDocument> documents;
    /// Whole transactions behind that place. More than one: it is damaged, since each is on disk
    /// before the next begins. One may be what a power cut left of the last.
    int commits = 0;
};

/// Nothing where there is no write-ahead log, or one that ends as it should.
Result<WalTail> readWalTail(const std::string& path);

} // namespace seamclock
