// What the log is given to keep: event bodies, and the documents that events name by their SHA-256.
#pragma once

#include <cstdint>
#include <string>

namespace seamclock {

/// One event. `body` is the canonical JSON that is stored and hashed; subject and n stand in it
/// too.
struct LogRow {
    std::string subject;
    std::int64_t n = 0;
    std::string body;

    bool operator==(const LogRow&) const = default;
};

/// The last row of a chain, and what its hash says of all before it.
struct LogHead {
    std::int64_t seq = 0;
    std::string hash;

    bool operator==(const LogHead&) const = default;
};

/// The very bytes of a procedure, bench, material or seam.
struct LogDocument {
    std::string sha256;
    std::string kind; // "procedure", "bench", "material", "seam"
    std::string bytes;

    bool operator==(const LogDocument&) const = default;
};

/// Pending: in memory only. Spilled: safe in the file beside the log, not yet in the chain. Saved:
/// in the chain, on disk. Refused: it never will be, as the log holds another body under that
/// subject and n, or the body is no event's; its bytes are kept in the file "LOG.refused".
enum class RowStatus { Pending, Spilled, Saved, Refused };

} // namespace seamclock
