#include "core/practice/chance.h"

#include <cassert>

namespace seamclock {

namespace {

/// Without the modulus' bias: draws above the last whole multiple of the span are thrown away.
std::int64_t evenFrom(std::mt19937_64& generator, std::int64_t low, std::int64_t high) {
    assert(low <= high);
    const std::uint64_t span = static_cast<std::uint64_t>(high - low) + 1;
    const std::uint64_t limit = std::mt19937_64::max() - std::mt19937_64::max() % span;
    std::uint64_t drawn = generator();
    while (drawn >= limit)
        drawn = generator();
    return low + static_cast<std::int64_t>(drawn % span);
}

} // namespace

std::mt19937_64 Chance::generator(std::string_view name) const {
    // FNV-1a, 64 bit, over the name, starting from the seed.
    std::uint64_t hash = 14695981039346656037ULL ^ m_seed;
    for (const char c : name) {
        hash ^= static_cast<unsigned char>(c);
        hash *= 1099511628211ULL;
    }
    return std::mt19937_64(hash);
}

std::int64_t Chance::even(std::string_view name, std::int64_t low, std::int64_t high) const {
    std::mt19937_64 drawing = generator(name);
    return evenFrom(drawing, low, high);
}

std::int64_t Chance::around(std::string_view name, std::int64_t low, std::int64_t high) const {
    std::mt19937_64 drawing = generator(name);
    std::int64_t sum = 0;
    for (int i = 0; i < 3; ++i)
        sum += evenFrom(drawing, 0, high - low);
    return low + sum / 3;
}

} // namespace seamclock
