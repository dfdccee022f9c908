// Tampering with a log behind the program's back, in named kinds, and a judge that must find each.
#pragma once

#include "tests/support/log_samples.h"

#include <cstdint>
#include <functional>
#include <random>
#include <string>
#include <vector>

namespace seamclock::test {

using Random = std::mt19937_64;

std::int64_t pick(Random& random, std::int64_t low, std::int64_t high);

struct Row {
    std::string hash;
    std::string body;
};

Row rowAt(BehindTheBack& stranger, std::int64_t seq);
void put(BehindTheBack& stranger, std::int64_t seq, const Row& row);
void drop(BehindTheBack& stranger, std::int64_t seq);
void change(BehindTheBack& stranger, std::int64_t seq, const Row& row);
/// Every row from that one on is counted `by` further.
void shift(BehindTheBack& stranger, std::int64_t from, std::int64_t by);
/// Another digit in the place of one in a body; still canonical JSON, mostly.
std::string touched(std::string body, Random& random);

/// One kind of tampering. `make` answers the first bad row, or 0 where it is no row that is bad;
/// kAnyRow: whichever.
struct Mutation {
    const char* name;
    std::function<std::int64_t(BehindTheBack&, Random&, std::int64_t rows)> make;
};

inline constexpr std::int64_t kAnyRow = INT64_MIN;

/// Makes each kind `rounds` times, each in a copy of that log of its own, and expects verifyLog to
/// name the first bad row. How many that were.
int tamper(
    const std::string& sound, const std::vector<Mutation>& kinds, int rounds, std::uint64_t seed);

} // namespace seamclock::test
