// After a power cut: the open welds as their events make them, by the same fold that the live
// program uses. Rows that wait in the spill file beside the log count too. Nothing is written; what
// to do about a reboot is core/weld's (bridgeTo) and the person's word.
#pragma once

#include "core/base/result.h"
#include "core/weld/fold.h"

#include <string>
#include <vector>

namespace seamclock {

struct RecoveredWeld {
    std::string subject; // "weld:UUID"
    Result<Weld> weld;   // Damaged: its events make no weld; the others are not concerned
};

/// In the order they were opened. As LogReader::open.
Result<std::vector<RecoveredWeld>> recoverOpenWelds(const std::string& path);

} // namespace seamclock
