// Numbers as a person types them after an option: the whole text or nothing, finite, decimals with
// a dot, and inside what is allowed. The sentence of a refusal names the option, the value and the
// range.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace seamclock {

struct Allowed {
    double low = 0;
    double high = 0;
    std::string unit; // "mm", "" for a bare number

    std::string inWords() const; // "1 to 70 mm"
};

/// Malformed: not a number. OutOfRange: outside `allowed`.
Result<double> parseNumber(std::string_view option, std::string_view text, const Allowed& allowed);

Result<std::int64_t>
parseInteger(std::string_view option, std::string_view text, std::int64_t low, std::int64_t high);

/// Any 64 bits, written in decimal.
Result<std::uint64_t> parseSeed(std::string_view option, std::string_view text);

/// A value in a sentence: in quotes, on one line, cut after 60 columns.
std::string inQuotes(std::string_view value);

} // namespace seamclock
