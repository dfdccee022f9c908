#include "app/cli/numbers.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

namespace seamclock {
namespace {

const Allowed kAllowed{1, 70, "mm"};

TEST(Numbers, ReadTheWholeText) {
    const struct {
        const char* text;
        double value;
    } rows[] = {{"1", 1},    {"70", 70},    {"9.5", 9.5}, {"+12", 12}, {"1e1", 10},
                {"012", 12}, {"2.50", 2.5}, {"5.", 5},    {"7E0", 7}};
    for (const auto& row : rows) {
        const auto read = parseNumber("--thickness", row.text, kAllowed);
        ASSERT_TRUE(read.has_value()) << row.text << ": " << read.error().detail;
        EXPECT_EQ(*read, row.value);
    }
}

TEST(Numbers, RefuseWhatIsNoNumberWithValueAndRange) {
    for (const char* text :
         {"",       " ",   "ten",  "nan", "NaN", "inf",  "-inf", "infinity", "1e999",
          "-1e999", "1,5", "10mm", "10 ", " 10", "0x10", "1e",   "--1",      "+-1",
          "+",      "-",   ".",    "1_0", "١٠",  "1\n",  "1.2.3"}) {
        const auto read = parseNumber("--thickness", text, kAllowed);
        ASSERT_FALSE(read.has_value()) << text;
        EXPECT_EQ(read.error().code, ErrorCode::Malformed) << text;
        EXPECT_NE(read.error().detail.find("--thickness \""), std::string::npos);
        EXPECT_NE(
            read.error().detail.find("is not a number; allowed: 1 to 70 mm"), std::string::npos)
            << read.error().detail;
        EXPECT_EQ(read.error().detail.find('\n'), std::string::npos);
    }
}

TEST(Numbers, HoldTheEndsOfTheRangeAndNothingBeyond) {
    EXPECT_TRUE(parseNumber("--x", "1", kAllowed).has_value());
    EXPECT_TRUE(parseNumber("--x", "70", kAllowed).has_value());
    for (const char* text : {"0.999999", "70.000001", "-5", "0", "1e30", "-0"}) {
        const auto read = parseNumber("--x", text, kAllowed);
        ASSERT_FALSE(read.has_value()) << text;
        EXPECT_EQ(read.error().code, ErrorCode::OutOfRange);
        EXPECT_NE(
            read.error().detail.find("\"" + std::string(text) + "\" is out of range"),
            std::string::npos);
    }
}

TEST(Numbers, ReadWholeNumbersOnly) {
    EXPECT_EQ(parseInteger("--limit", "100", 1, 10'000).value_or(0), 100);
    for (const char* text : {"", "1.0", "1e2", "ten", "99999999999999999999", "0x5"}) {
        const auto read = parseInteger("--limit", text, 1, 10'000);
        ASSERT_FALSE(read.has_value()) << text;
        EXPECT_NE(read.error().detail.find("allowed: 1 to 10000"), std::string::npos);
    }
    EXPECT_EQ(parseInteger("--limit", "0", 1, 10'000).error().code, ErrorCode::OutOfRange);
}

TEST(Numbers, ReadEverySeedOf64Bits) {
    EXPECT_EQ(
        parseSeed("--seed", "18446744073709551615").value_or(0),
        std::numeric_limits<std::uint64_t>::max());
    for (const char* text : {"18446744073709551616", "-1", "1.5", ""}) {
        EXPECT_FALSE(parseSeed("--seed", text).has_value()) << text;
    }
}

TEST(Numbers, QuoteAValueOnOneShortLine) {
    EXPECT_EQ(inQuotes("10\n20"), "\"10 20\"");
    EXPECT_EQ(inQuotes("\x1b[31m"), "\" [31m\"");
    EXPECT_EQ(inQuotes(std::string(500, 'x')), "\"" + std::string(60, 'x') + "…\"");
}

} // namespace
} // namespace seamclock
