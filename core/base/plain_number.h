// Numbers in sentences: "80", "0.15", never "80.000000".
#pragma once

#include <string>

namespace seamclock {

/// As a person would write it: up to 6 decimals, no trailing zeros; with an exponent from 1e15 up
/// and below 1e-6.
std::string plainNumber(double value);

} // namespace seamclock
