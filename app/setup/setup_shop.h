// The shop floor as Set-up sees it: what is in force, and where a change goes. A weld under way
// keeps the documents that it was opened with.
#pragma once

#include "core/bench/bench_codec.h"
#include "core/log/log_writer.h"
#include "core/procedure/procedure_codec.h"

#include <vector>

namespace seamclock {

class SetupShop {
public:
    virtual ~SetupShop() = default;

    /// As they came with the program.
    virtual const std::vector<ProcedureDocument>& shipped() const = 0;
    /// As new plans take them: the shop's own instead of and beside those, attested values marked.
    virtual const std::vector<ProcedureDocument>& procedures() const = 0;
    virtual void setProcedures(std::vector<ProcedureDocument> procedures) = 0;
    virtual std::vector<BenchDocument> benches() const = 0;
    /// Another document of a bench that is there, from when it is free; or one more bench.
    /// OutOfRange: a fifth.
    virtual Result<void> setBench(const BenchDocument& bench) = 0;
};

/// The procedures in force by that log, with all that was handed to its writer. NotWritten: not all
/// of it is on disk. Otherwise as proceduresInForce.
Result<std::vector<ProcedureDocument>>
readProceduresInForce(LogWriterBase& writer, std::vector<ProcedureDocument> shipped);

} // namespace seamclock
