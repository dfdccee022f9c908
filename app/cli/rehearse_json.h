// What rehearse prints with --json beside a record: the virtual bench's account of a joint, the
// table of faults, and the lines of a series. Each text is one JSON value and ends with a line
// feed.
#pragma once

#include "core/practice/virtual_operator.h"

#include <string>
#include <vector>

namespace seamclock {

std::string faultsJson(const std::vector<FaultAccount>& accounts);

/// A finished record with what the bench knows under "physics".
std::string withPhysics(const std::string& record, const BenchStory& story);

/// One weld of a series, without its events.
struct SeriesLine {
    std::int64_t number = 0;
    std::string weld;
    std::string openedUtc;
    std::string by;
    std::string seam;
    std::string verdict;
    std::vector<std::string> reasons; // codes
    std::optional<bool> ductile;      // with physics
};
SeriesLine seriesLine(const SeriesWeld& weld);
std::string seriesJson(const SeriesResult& result, const std::vector<SeriesLine>& lines);

} // namespace seamclock
