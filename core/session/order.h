// What is to be welded, before it is a weld: the seam, its sheets, the bench and the procedure with
// their very bytes. Session makes the plan and the opening event from it; the bytes go into the log
// as documents, so that a record can be read and recalculated years later without the files that
// were on the disk on that day.
#pragma once

#include "core/bench/bench_codec.h"
#include "core/plan/plan.h"
#include "core/procedure/procedure_codec.h"
#include "core/weld/event.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

struct WeldOrder {
    ProcedureDocument procedure;
    BenchDocument bench;
    PlanRequest request; // thickness, lengths, ambient, drag, rules
    WeldType type = WeldType::Production;
    std::optional<std::string> reweldOf;    // a weld's UUID
    std::optional<std::int64_t> lostUm;     // of a re-weld: cut away of both sheets together
    std::optional<std::int64_t> beadPlaces; // to measure along the seam; absent: the worst place
    std::optional<std::string> seam;        // the seam's label
    std::optional<std::string> job;         // that it is of
    std::optional<std::string> part;        // as the job says it
    std::vector<Sheet> sheets;              // two
    bool shielded = false;
    std::vector<std::string> flags; // findings on calibration and certificate
    bool carriesChecks = false;     // what still stands from earlier welds is not asked again
};

} // namespace seamclock
