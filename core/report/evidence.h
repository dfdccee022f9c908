// One joint as evidence, for somebody who has neither the tablet nor its log: the rows of the chain
// from the joint's first event to the first signature behind its last one, the documents that it
// names, and its record. A chain can only be followed row by row, so the rows of other joints that
// lie between go along. What a check proves is that the holder of the signing key vouched for these
// very rows; that the key is the foreman's, its fingerprint on paper tells. The file is JSON, and
// everything in it can be checked by hand with sha256sum and openssl, as the user guide shows.
#pragma once

#include "core/log/log_reader.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// Pretty-printed, ending with a line feed. Missing: no such weld in the log's own chain. Refused:
/// no signature covers all of its rows yet. Damaged: its rows can't be read, or fit no weld.
Result<std::string> evidenceJson(LogReader& reader, const std::string& weld);

struct EvidenceReport {
    bool ok = false;
    std::string logId;
    std::string world;
    std::string weld;
    std::int64_t number = 0;
    std::string verdict;        // as stored at closing, or "incomplete"
    std::int64_t rows = 0;      // that were followed
    bool sealed = false;        // by a foreman; else signed by the station
    std::string by;             // "person:…" or "station"
    std::string day;            // of the seal; "" if signed by the station
    std::string fingerprint;    // of the seal, as on the day's report; "" if signed by the station
    std::string keyFingerprint; // of the key that signed
    std::string publicKey;
    std::string record;      // worked out anew from the rows, as text
    bool otherWords = false; // the file's own text is of another version, and proves nothing
    std::string finding;     // the first; "" if ok

    bool operator==(const EvidenceReport&) const = default;
};

/// Malformed: no evidence file. A file whose content does not hold together is a report with
/// ok == false.
Result<EvidenceReport> checkEvidence(std::string_view name, std::string_view text);

} // namespace seamclock
