// Procedures from and to JSON files (resources/procedures/README.md describes the fields).
#pragma once

#include "core/base/result.h"
#include "core/procedure/procedure.h"

#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// One thing that is wrong with a procedure file.
struct ProcedureFinding {
    int line = 0;      // from 1
    std::string field; // JSON pointer
    std::string reason;

    bool operator==(const ProcedureFinding&) const = default;
};

/// A procedure with the very bytes it was read from: they are what a weld's record names by
/// SHA-256.
struct ProcedureDocument {
    Procedure procedure;
    std::string bytes;
    std::string sha256;
};

/// All findings of a file's text: unknown field, gap or overlap in thickness, falling column
/// without a declared jump, missing source, a value in the wrong unit. Empty: the procedure is
/// sound. Syntax errors are findings too.
std::vector<ProcedureFinding> checkProcedure(std::string_view name, std::string_view text);

/// Malformed with the first finding.
Result<ProcedureDocument> readProcedure(std::string_view name, std::string_view text);
/// Also Unreadable.
Result<ProcedureDocument> readProcedureFile(const std::string& path);

/// All *.json of a folder, by id. Unreadable if the folder is not there; Missing if it holds none.
Result<std::vector<ProcedureDocument>> readProcedureFolder(const std::string& folder);

} // namespace seamclock
