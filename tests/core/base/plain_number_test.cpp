#include "core/base/plain_number.h"

#include <gtest/gtest.h>
#include <limits>

namespace seamclock {
namespace {

TEST(PlainNumber, LooksAsAPersonWouldWriteIt) {
    EXPECT_EQ(plainNumber(80), "80");
    EXPECT_EQ(plainNumber(0.15), "0.15");
    EXPECT_EQ(plainNumber(0.1 + 0.2), "0.3");
    EXPECT_EQ(plainNumber(-13.6), "-13.6");
    EXPECT_EQ(plainNumber(1200), "1200");
    EXPECT_EQ(plainNumber(0), "0");
    EXPECT_EQ(plainNumber(-0.0), "0");
}

TEST(PlainNumber, NeverShowsANumberThatItIsNot) {
    EXPECT_EQ(plainNumber(1e300), "1e+300");
    EXPECT_EQ(plainNumber(1e-9), "1e-09");
    EXPECT_EQ(plainNumber(std::numeric_limits<double>::quiet_NaN()).substr(0, 3), "nan");
    EXPECT_EQ(plainNumber(std::numeric_limits<double>::infinity()), "inf");
    EXPECT_EQ(plainNumber(-std::numeric_limits<double>::infinity()), "-inf");
}

} // namespace
} // namespace seamclock
