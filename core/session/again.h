// The next joint from the last one: the same again (sheets, batch, procedure, drag), or the joint
// that was cut out once more. A seam that is welded again keeps its name with a count: S3, then
// S3/R1, S3/R2.
#pragma once

#include "core/session/order.h"
#include "core/shift/seam_label.h"
#include "core/weld/fold.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace seamclock {

/// The order of one more joint like this one, with the procedure and the bench as they hold now. It
/// has no seam: the caller names the next one. Nothing of its plan is older than now but what was
/// measured or decided for that weld: drag, the air's temperature, the cooling rule, a plate's
/// target that a foreman set.
WeldOrder
sameAgain(const Weld& weld, const ProcedureDocument& procedure, const BenchDocument& bench);

/// The order of the same seam once more, linked to this weld. `lostUm`: what was cut away of both
/// sheets together.
WeldOrder weldAgain(
    const Weld& weld, const ProcedureDocument& procedure, const BenchDocument& bench,
    std::int64_t lostUm);

} // namespace seamclock
