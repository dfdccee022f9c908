// Whether a log is what was written: every row's form, the chain over the stored bytes, the head,
// the documents, each weld's fold, and last the caches. It says which row is the first bad one and
// why, and honestly what its answer covers: a bare chain can't see a tail cut off together with its
// head row, so what no signature covers is said to be covered by the head row only.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

struct VerifyFinding {
    std::int64_t chain = 0;
    std::int64_t seq = 0; // the first bad row; 0: no row, but the head, a document or a cache
    std::string reason;   // one sentence, naming both

    bool operator==(const VerifyFinding&) const = default;
};

struct VerifyReport {
    bool ok = false;
    std::string world;
    std::string logId;
    std::int64_t rows = 0; // of this log's own chain, as its head row has it
    std::string head;
    std::int64_t signedTo = 0; // the last row that a signature covers; 0: none
    std::int64_t welds = 0;
    std::int64_t documents = 0;
    std::string covered; // "no signature: rows 1..128 are covered by the head row only"
    std::vector<std::string>
        notes; // true of a sound log too: "the list of joints is behind and will be made again"
    std::optional<VerifyFinding> finding; // the first; absent if ok

    bool operator==(const VerifyReport&) const = default;
};

/// An Error is a file that is not a log of ours or can't be read (Unreadable, Foreign); a damaged
/// log of ours is a report with ok == false.
Result<VerifyReport> verifyLog(const std::string& path);

} // namespace seamclock
