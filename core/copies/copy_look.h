// A copy of a log as whoever reads it elsewhere must know it: which log it is of, when it came to
// stand there, and up to when it tells. Only a finished copy is taken (log_copy.h): it is read as a
// file that never changes, so nothing is locked and nothing is written beside it, and it may lie
// where nobody may write, on a share of the network too. A live log is refused, since even reading
// one writes into its folder.
#pragma once

#include "core/base/instant.h"
#include "core/copies/log_copy.h"

#include <optional>
#include <string>

namespace seamclock {

struct CopySeen {
    LogCopy copy;
    Milliseconds madeUtc{0};        // its file's time
    std::optional<Instant> lastRow; // when its newest row was made; absent: it has none

    bool operator==(const CopySeen&) const = default;
};

/// Foreign: a live log, a log of a newer program, or none of ours. Damaged, Unreadable: as
/// LogReader::open.
Result<CopySeen> lookAtCopy(const std::string& file);

} // namespace seamclock
