// The record of a joint as plain text: what the trade writes down on every joint, set beside
// actual, with every event and, if asked for, the cues between them. Instants are UTC.
#pragma once

#include "core/bench/bench.h"
#include "core/estimate/heat_estimate.h"
#include "core/quality/coupons.h"
#include "core/report/cue_history.h"
#include "core/weld/record.h"

#include <cstdint>
#include <string>
#include <vector>

namespace seamclock {

struct RecordExtras {
    const Bench* bench = nullptr;       // the one it was welded on: actual forces need its springs
    bool events = true;                 // every event, at the end of the text
    bool cues = false;                  // the cues between the events
    const HeatEstimate* heat = nullptr; // what the weld did in the sheet, where it was worked out
    const std::vector<CouponSeries>* coupons = nullptr; // that were cut from it
};

std::string recordText(const WeldRecord& record, const RecordExtras& extras);

/// Which words these are: one more whenever recordText says the same weld otherwise. An evidence
/// file holds both, and one of other words is told from one that was changed.
inline constexpr std::int64_t kRecordWords = 2;

/// The verdict with its reasons alone; and the stored one beside it where they differ.
std::string verdictText(const WeldRecord& record);

/// One event or cue as a line of the record: "  12  06:03:14.120   3:14.120  plate out".
std::string eventLine(const Event& event, const Event& opening, const WeldPlan& plan);
std::string cueLine(Milliseconds utc, const Cue& cue);

} // namespace seamclock
