// Chance that is the same on every machine: integers from a specified generator (std::mt19937_64,
// whose output the standard fixes), by transforms of our own. Each draw has a name and depends on
// nothing but it and the seed, so a rehearsal that was interrupted draws the same again.
#pragma once

#include <cstdint>
#include <random>
#include <string_view>

namespace seamclock {

class Chance {
public:
    explicit Chance(std::uint64_t seed) : m_seed(seed) {}

    /// Evenly from low to high, both included.
    std::int64_t even(std::string_view name, std::int64_t low, std::int64_t high) const;
    /// From low to high, the middle more often: the mean of three even draws, rounded down.
    std::int64_t around(std::string_view name, std::int64_t low, std::int64_t high) const;

private:
    std::mt19937_64 generator(std::string_view name) const;
    std::uint64_t m_seed;
};

} // namespace seamclock
