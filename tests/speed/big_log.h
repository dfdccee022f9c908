// Logs of any size, as a shop with four benches would have filled them in years, for measuring.
// Each joint is one of a few welds that were told event by event through the program's own fold and
// codec; what differs from joint to joint (names, numbers, instants, batches, a remark) is put into
// the places where it stands in those bodies. The bytes are the codec's to the last one
// (big_log_test.cpp), hashes and cache are right, and the same seed gives the same file.
//
// Ten events a joint: the plans are makePlan's, but for one check instead of all, one release step
// and no re-checks. The rows go to SQLite directly in large transactions with guards and indexes
// taken away until the end, since the writer would bring each to disk by itself.
#pragma once

#include "core/base/result.h"
#include "core/log/log_row.h"
#include "core/weld/event.h"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace seamclock::test {

struct BigLogOptions {
    std::int64_t joints = 2'000;
    std::uint64_t seed = 1;
    std::string resources; // the folder that ships with the program
    /// Told now and then how many joints are there.
    std::function<void(std::int64_t)> progress;
};

struct BigLogFacts {
    std::int64_t joints = 0;
    std::int64_t events = 0; // the station's two included
    std::int64_t bodyBytes = 0;
};

/// NotWritten: there is a file already, or it can't be made.
Result<BigLogFacts> makeBigLog(const std::string& path, const BigLogOptions& options);

/// Of every `every`th joint of that log: what the codec writes of its events, without any template.
Result<std::vector<LogRow>> sampleOfBigLog(const BigLogOptions& options, std::int64_t every);

/// Each of these finds seven joints (fewer in a log of fewer than 40), spread over all years.
inline constexpr const char* kRareBench = "spare";
inline constexpr const char* kRareBy = "person:guest";
inline constexpr const char* kRareMaterial = "PVDF";
inline constexpr const char* kRareVerdict = "out of limits";
inline constexpr const char* kRareWord = "hailstorm";

} // namespace seamclock::test
