#include "core/practice/chance.h"

#include <array>
#include <gtest/gtest.h>

using namespace seamclock;

// The published value that every conforming std::mt19937_64 gives: ISO/IEC 14882:2020,
// [rand.predef], "the 10000th consecutive invocation of a default-constructed object … shall
// produce the value 9981545732273789042".
TEST(Chance, RestsOnTheGeneratorThatTheStandardFixes) {
    std::mt19937_64 generator;
    generator.discard(9999);
    EXPECT_EQ(generator(), 9981545732273789042ULL);
}

// FNV-1a, 64 bit: the test vectors of the IETF draft draft-eastlake-fnv-17, appendix C ("", "a",
// "foobar"). A draw is the generator, started with the name's hash, modulo the span.
TEST(Chance, StartsTheGeneratorWithTheHashOfTheName) {
    struct Row {
        const char* name;
        std::uint64_t hash;
    };
    for (const Row& row :
         {Row{"", 0xcbf29ce484222325ULL}, Row{"a", 0xaf63dc4c8601ec8cULL},
          Row{"foobar", 0x85944171f73967e8ULL}}) {
        std::mt19937_64 generator(row.hash);
        EXPECT_EQ(Chance(0).even(row.name, 0, 999), static_cast<std::int64_t>(generator() % 1000))
            << row.name;
    }
}

TEST(Chance, ReachesBothEndsAndNothingBeyond) {
    std::array<int, 7> even{};
    std::array<int, 7> around{};
    for (std::uint64_t seed = 0; seed < 7000; ++seed) {
        ++even.at(static_cast<std::size_t>(Chance(seed).even("x", -3, 3) + 3));
        ++around.at(static_cast<std::size_t>(Chance(seed).around("x", -3, 3) + 3));
    }
    // 1000 are expected in each; the standard deviation is sqrt(7000 · 1/7 · 6/7) = 29, five of
    // them are 146.
    for (const int count : even) {
        EXPECT_NEAR(count, 1000, 146);
    }
    // Three draws of 0 to 6 and their mean rounded down: 6 needs the sum 18, one case of 343.
    EXPECT_GT(around.back(), 0);
    EXPECT_GT(around.front(), 0);
    EXPECT_GT(around[3], 2 * around[1]);
}

TEST(Chance, HoldsOneValueWhereThereIsOnlyOne) {
    EXPECT_EQ(Chance(5).even("x", 8, 8), 8);
    EXPECT_EQ(Chance(5).around("x", 8, 8), 8);
}
