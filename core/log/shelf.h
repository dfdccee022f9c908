// What the shop works by, as a log's facts have it: which documents of benches and procedures hold,
// and which cells of procedures a foreman attested. It is a fold, as the roster is. The log holds
// the documents' bytes; what came with the program and was never changed is not in it.
#pragma once

#include "core/base/result.h"
#include "core/log/fact.h"
#include "core/log/roster.h"
#include "core/procedure/cells.h"
#include "core/procedure/procedure_codec.h"

#include <map>
#include <string>
#include <vector>

namespace seamclock {

class LogReader;

/// Of one `procedure_attested`, the cells that nobody withdrew since.
struct Attestation {
    std::string procedure; // id
    std::string doc;       // SHA-256 of the document that the foreman held against the standard
    std::string edition;
    std::vector<std::string> cells;
    std::string by;   // person:ID
    std::string date; // local, 2030-01-07

    bool operator==(const Attestation&) const = default;
};

struct Shelf {
    std::map<std::string, std::string> benches;    // id: SHA-256 of the document in force
    std::map<std::string, std::string> procedures; // likewise; only what was set in this log
    std::vector<Attestation> attestations;         // in the order in which they came

    bool operator==(const Shelf&) const = default;
};

/// Passes over facts about anything else.
void take(Shelf& shelf, const Fact& fact);

/// From the log's own chain. Errors as the reader's.
Result<Shelf> readShelf(LogReader& reader);

/// The shipped procedures, the shop's own documents from the log in place of those with the same
/// id and beside them, each with its attested values; by id. Damaged: a document that the log names
/// is not in it, or can't be read as a procedure.
Result<std::vector<ProcedureDocument>> proceduresInForce(
    const Shelf& shelf, const Roster& roster, LogReader& reader,
    std::vector<ProcedureDocument> shipped);
/// The same, with the log's own shelf and roster.
Result<std::vector<ProcedureDocument>>
proceduresInForce(LogReader& reader, std::vector<ProcedureDocument> shipped);

/// One document of the log, in force or not any more, with its attested values. Errors as above.
Result<ProcedureDocument> procedureOfLog(LogReader& reader, const std::string& sha256);

} // namespace seamclock
