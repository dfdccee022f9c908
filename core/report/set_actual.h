// What was to be set beside what was read, one line each, for every reading and measure of a joint.
// Forces and pressures follow from the scale reading and the bench it was read on; the event that a
// number comes from is named.
#pragma once

#include "core/bench/bench.h"
#include "core/weld/record.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

struct SetActual {
    std::string item; // "plate_temperature", "joining_reading", "joining_force", …
    std::string unit; // "mC", "um", "mN", "Pa", "milli"
    std::optional<std::int64_t> set;
    std::optional<std::int64_t> low;
    std::optional<std::int64_t> high;
    std::optional<std::int64_t> actual;
    std::int64_t n = 0;                // of the event that holds the actual value; 0 without one
    std::string place;                 // on the plate or the scale, as the event has it
    std::optional<std::int64_t> was{}; // the actual value before it was corrected first
    /// Of the last event that corrected it, or the reading that it follows from; 0: none did.
    std::int64_t correctedBy = 0;
    std::string face{};                    // of the plate
    std::optional<std::int64_t> placeUm{}; // along the seam

    bool operator==(const SetActual&) const = default;
};

/// "middle, face fixed"; "at 850 mm"; "": it has none.
std::string placeInWords(const SetActual& row);

/// How a unit code's numbers are shown; of the scale, its own unit.
struct ShownUnit {
    std::string name;
    int decimals = 0; // of the shown unit are in one of the code's: 3 thousandths, 6 millionths
};
ShownUnit shownUnit(const std::string& code, const WeldPlan& plan);

/// In the order of the work. What was to be set and never read stands there without an actual
/// value. Without a bench there are no actual forces and pressures.
std::vector<SetActual> setAndActual(const WeldRecord& record, const Bench* bench);

/// The field of its event that an item's actual value stands in, as core/weld/correction names it;
/// "": none, as of a force, which follows from a reading.
std::string_view fieldOfItem(std::string_view item);

} // namespace seamclock
