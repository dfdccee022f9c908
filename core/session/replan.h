// The plan of a weld that is open already, made anew for what was measured since: the drag with
// this sheet clamped, or the air. Everything else stays as it was decided when the weld was opened.
#pragma once

#include "core/base/result.h"
#include "core/bench/bench.h"
#include "core/procedure/procedure_codec.h"
#include "core/weld/fold.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// The procedure that the weld was planned by: of those in force, or as the log keeps it where
/// another holds by now. Missing: neither has it. Otherwise as LogReader::open and procedureOfLog.
Result<ProcedureDocument> procedureOf(
    const Weld& weld, const std::vector<ProcedureDocument>& inForce, const std::string& log);

struct Measured {
    std::optional<Force> drag;          // absent: as it is in the plan
    std::optional<Temperature> ambient; // likewise
};

/// What was asked for when the weld was planned.
PlanRequest requestOf(const Weld& weld);

/// As planWithSheets.
Result<WeldPlan> planAgain(
    const Weld& weld, const Procedure& procedure, const Bench& bench, const Measured& measured);

} // namespace seamclock
