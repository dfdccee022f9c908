// The joints that bear a number: one, unless another tablet's log was brought in, whose numbers
// begin at 1 as this one's do. What is kept of a joint, as a strength test, must be of the one that
// was meant.
#pragma once

#include "app/daylog/day_view.h"
#include "core/log/log_reader.h"
#include "core/weld/event.h"

#include <QString>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

struct NumberedJoint {
    std::string weld; // "weld:UUID"; "" if there is none
    Instant at;       // when it was begun
    std::string by;
    std::string byName; // as the log that it came with calls him; "": by this one's people
    std::optional<WeldOpened> opened; // absent: its first event can't be read
};

/// The newest first. Errors as the reader's.
Result<std::vector<NumberedJoint>> jointsNumbered(LogReader& log, std::int64_t number);

/// "Seam S1, bench A, Ilva Borrick"
QString jointText(const NumberedJoint& joint, const DayNames& names);

} // namespace seamclock
