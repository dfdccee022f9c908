// The heat estimate in plain English, for a terminal and a record.
#pragma once

#include "core/estimate/heat_estimate.h"

#include <string>
#include <vector>

namespace seamclock {

struct HeatLine {
    std::string what;
    std::string value; // "2.37 mm (2.05 to 2.69)"

    bool operator==(const HeatLine&) const = default;
};

/// What the course came to, in the order in which it happens; `unit`: the scale's, "" without one.
std::vector<HeatLine> heatLines(const HeatEstimate& estimate, const std::string& unit);

/// What the numbers are worth: one sentence each.
std::vector<std::string> heatCautions(const HeatEstimate& estimate);

} // namespace seamclock
