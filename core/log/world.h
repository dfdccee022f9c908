// Two worlds that never meet: production, where joints count, and practice. Each has its own kind
// of log file, so that a practice weld can't appear among the joints of a shop, not even by a
// copied file. core/weld knows neither.
#pragma once

#include <cstdint>
#include <string_view>

namespace seamclock {

/// `kApplicationId` stands in the log file's header (SQLite's application_id).
struct Production {
    static constexpr std::string_view kName = "production";
    static constexpr std::int32_t kApplicationId = 0x53434C50; // "SCLP"
};

struct Practice {
    static constexpr std::string_view kName = "practice";
    static constexpr std::int32_t kApplicationId = 0x53434C54; // "SCLT"
};

} // namespace seamclock
