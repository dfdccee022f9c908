// What the commands about jobs, coupons, charts and due lists print with --json. Times in seconds,
// strengths in MPa, as the key says. Each text is one JSON value and ends with a line feed.
#pragma once

#include "core/log/batches.h"
#include "core/quality/coupons.h"
#include "core/quality/due.h"
#include "core/quality/shop_charts.h"
#include "core/session/job_day.h"

#include <cstdint>
#include <string>
#include <vector>

namespace seamclock {

std::string jobDayJson(const std::string& file, const JobDay& day, const Instant& now);
std::string
jobProgressJson(const std::string& file, const std::string& log, const JobProgress& progress);

std::string batchJson(const std::string& log, const std::string& batch, const BatchFound& found);
/// One joint's sheets, each with the other joints that hold its batch.
struct SheetTrace {
    SheetBatch sheet;
    std::vector<JointLine> others;
};
std::string traceJson(
    const std::string& log, std::int64_t joint, const std::string& weld,
    const std::vector<SheetTrace>& sheets);

std::string couponsJson(const std::string& log, const CouponsRead& read);

/// `mostFindings` of a chart, the newest; `points`: whether its values come too.
std::string chartsJson(
    const std::string& log, const std::vector<ShopChart>& charts, std::size_t mostFindings,
    bool points);

std::string dueJson(const std::string& today, std::int64_t days, const std::vector<DueItem>& items);

} // namespace seamclock
