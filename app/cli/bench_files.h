// The benches that a command speaks of: those whose files are named, and those of a log.
#pragma once

#include "core/base/result.h"
#include "core/bench/bench_codec.h"

#include <string>
#include <vector>

namespace seamclock {

class LogReader;

/// Each id once: the one that is named first, and what is named before what the log has in force.
/// `log` may be null. Errors as readBenchFile and readShelf.
Result<std::vector<BenchDocument>> benchesOf(const std::vector<std::string>& files, LogReader* log);

} // namespace seamclock
