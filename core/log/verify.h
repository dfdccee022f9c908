// Whether a log is what was written: every row's form, the chain over the stored bytes, the head,
// the signatures, the documents, each weld's fold, and last the caches. It says which row is the
// first bad one and why, and honestly what its answer covers. A bare chain can't see a tail cut off
// together with its head row, or a row forged behind it: so it says which rows a foreman's seal
// covers, which the station's signature, and which the head row only. No answer from the file alone
// can tell an older copy of the whole log from the log: for that its seals are compared with paper.
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

/// A day's seal that stands in the log and fits it.
struct FoundSeal {
    std::int64_t seq = 0; // the row that holds it
    std::string day;
    std::string person; // "person:…"
    std::string name;
    std::int64_t toSeq = 0;     // the last row that it covers
    std::string fingerprint;    // as on the day's report
    std::string keyFingerprint; // of the foreman's public key

    bool operator==(const FoundSeal&) const = default;
};

struct VerifyReport {
    bool ok = false;
    std::string world;
    std::string logId;
    std::int64_t rows = 0; // of this log's own chain, as its head row has it
    std::string head;
    std::int64_t signedTo = 0;    // the last row that any signature covers; 0: none
    std::int64_t sealedTo = 0;    // the last row that a foreman's seal covers; 0: none
    std::vector<FoundSeal> seals; // of this log's own chain, by their rows
    std::int64_t welds = 0;
    std::int64_t documents = 0;
    /// "rows 1..120 are covered by the seal of Ines Falk, 2030-01-07; rows 121..128 by the
    /// station's signature"; "no signature: rows 1..128 are covered by the head row only"
    std::string covered;
    std::vector<std::string>
        notes; // true of a sound log too: "the list of joints is behind and will be made again"
    std::optional<VerifyFinding> finding; // the first; absent if ok

    bool operator==(const VerifyReport&) const = default;
};

/// An Error is a file that is not a log of ours or can't be read (Unreadable, Foreign); a damaged
/// log of ours is a report with ok == false.
Result<VerifyReport> verifyLog(const std::string& path);

/// The chains alone: contiguity, hashes and heads, without a look into the bodies. Much quicker,
/// and enough to know that no row was changed, taken out or added since its head was.
Result<VerifyReport> verifyChain(const std::string& path);

} // namespace seamclock
