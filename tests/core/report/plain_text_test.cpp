#include "core/report/plain_text.h"
#include "tests/core/report/lines.h"

#include <cstdint>
#include <gtest/gtest.h>
#include <limits>

namespace seamclock {
namespace {

using std::chrono::milliseconds;

TEST(PlainText, CountsColumnsAsATerminalShowsThem) {
    // Unicode Standard Annex 11: ideographs and kana are wide (W); U+0301 is a combining mark,
    // U+200B has no width.
    const struct {
        const char* text;
        std::size_t columns;
    } rows[] = {{"", 0},        {"abc", 3},      {"0.15 N/mm²", 10}, {"± µ °", 5}, {"溶接", 4},
                {"e\u0301", 1}, {"a\u200Bb", 2}, {"한글", 4},        {"Ａ", 2},    {"\xFF\xFE", 2}};
    for (const auto& row : rows) {
        EXPECT_EQ(columnsOf(row.text), row.columns) << row.text;
    }
}

TEST(PlainText, TakesWhatMovesTheCursorOutOfForeignText) {
    EXPECT_EQ(onOneLine("a\nb\tc\x1b[2Jd"), "a b c [2Jd");
    EXPECT_EQ(
        onOneLine("a\xC2\x9B"
                  "b"),
        "a b")
        << "a C1 control sign";
    EXPECT_EQ(onOneLine("a\u2028b\u202Ec"), "a b c") << "line separator, right-to-left override";
    EXPECT_EQ(onOneLine(std::string("a\0b", 3)), "a b");
    EXPECT_EQ(onOneLine("Straße ±"), "Straße ±");
}

TEST(PlainText, ReplacesWhatIsNotUtf8) {
    // RFC 3629: no lone continuation or lead bytes, no overlong forms, no surrogates, nothing past
    // U+10FFFF.
    const char* broken[] = {
        "\x80", "\xC3", "\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xFF"};
    for (const char* text : broken) {
        const std::string clean = onOneLine(text);
        EXPECT_EQ(clean, std::string(std::string(text).size(), '?'));
    }
    EXPECT_EQ(onOneLine("\xF0\x9F\x94\xA5"), "\xF0\x9F\x94\xA5");
}

TEST(PlainText, WrapsAtBlanksAndNeverPastTheColumns) {
    const std::string text = wrapped("one two three four five six seven", 4, 20);
    EXPECT_EQ(text, "one two three\n    four five six\n    seven");
    EXPECT_EQ(wrapped("", 4, 20), "");
    EXPECT_EQ(wrapped("   ", 4, 20), "");
    EXPECT_EQ(wrapped("a  b", 0, 20), "a  b");
}

TEST(PlainText, CutsAWordThatIsLongerThanTheLine) {
    const std::string text = wrapped(std::string(45, 'x') + " end", 0, 20);
    EXPECT_EQ(text, std::string(20, 'x') + "\n" + std::string(20, 'x') + "\nxxxxx end");
    std::string wide;
    for (int i = 0; i < 12; ++i) {
        wide += "溶";
    }
    for (const std::string& line : test::linesOf(wrapped(wide, 0, 15))) {
        EXPECT_LE(columnsOf(line), 15U);
        EXPECT_EQ(line.size() % 3, 0U) << "a sign was cut in two";
    }
}

TEST(PlainText, AlignsCellsByTheirColumnsNotTheirBytes) {
    EXPECT_EQ(
        aligned({{"°C", "x"}, {"abc", "y"}, {"溶接", "z"}}, 1), " °C    x\n abc   y\n 溶接  z\n");
    EXPECT_EQ(aligned({{"a", ""}, {"b"}}, 0), "a\nb\n") << "no blanks at the end of a line";
    EXPECT_EQ(aligned({}), "");
}

TEST(PlainText, WrapsTheWidestColumnsOfATableThatIsTooWide) {
    const std::string words(30, 'w');
    const std::string text =
        aligned({{"short", words + " " + words + " " + words, words + " " + words, "end"}}, 2);
    const auto lines = test::linesOf(text);
    EXPECT_GT(lines.size(), 1U);
    for (const std::string& line : lines) {
        EXPECT_LE(columnsOf(line), kTextColumns) << line;
    }
    EXPECT_TRUE(test::holds(lines[0], "short") && test::holds(lines[0], "end"));
}

TEST(PlainText, WritesNumbersFromTheirIntegers) {
    const struct {
        std::int64_t thousandths;
        int decimals;
        const char* text;
    } rows[] = {
        {0, 3, "0"},
        {17'000, 3, "17"},
        {16'667, 1, "16.7"},
        {16'667, 3, "16.667"},
        {1, 3, "0.001"},
        {-1'500, 3, "-1.5"},
        {-400, 0, "0"},
        {1'500'000, 1, "1500"},
        {999'950, 1, "1000"},
        {std::numeric_limits<std::int64_t>::max(), 3, "9223372036854775.807"},
        {std::numeric_limits<std::int64_t>::min(), 3, "-9223372036854775.808"}};
    for (const auto& row : rows) {
        EXPECT_EQ(fromThousandths(row.thousandths, row.decimals), row.text);
    }
    EXPECT_EQ(fromMillionths(150'000, 3), "0.15");
    EXPECT_EQ(fromMillionths(15'000, 4), "0.015");
    EXPECT_EQ(fromMillionths(1, 6), "0.000001");
}

TEST(PlainText, SaysTimesAsTheTradeDoes) {
    EXPECT_EQ(spokenTime(milliseconds(8'800)), "8.8 s");
    EXPECT_EQ(spokenTime(milliseconds(59'999)), "59.999 s");
    EXPECT_EQ(spokenTime(milliseconds(60'000)), "1:00");
    EXPECT_EQ(spokenTime(milliseconds(816'000)), "13:36");
    EXPECT_EQ(spokenTime(milliseconds(3'725'000)), "1:02:05");
    EXPECT_EQ(spokenTime(milliseconds(-5'000)), "-5 s");
}

TEST(PlainText, RoundsAMinimumUpAndAMaximumDown) {
    EXPECT_EQ(spokenTime(milliseconds(816'001), Seconds::Up), "13:37");
    EXPECT_EQ(spokenTime(milliseconds(816'999), Seconds::Down), "13:36");
}

TEST(PlainText, KeepsTheMillisecondsOfAnExactTime) {
    EXPECT_EQ(exactTime(milliseconds(8'813)), "8.813 s");
    EXPECT_EQ(exactTime(milliseconds(0)), "0.000 s");
    EXPECT_EQ(exactTime(milliseconds(816'040)), "13:36.040");
    EXPECT_EQ(exactTime(milliseconds(-1)), "-0.001 s");
}

TEST(PlainText, TakesTheTimeOfDayFromIso8601) {
    EXPECT_EQ(utcTimeOfDay(milliseconds(1'893'996'000'000) + milliseconds(3'250)), "06:00:03.250");
}

TEST(PlainText, UnderlinesAHeadlineAsWideAsItIs) {
    EXPECT_EQ(headline("8 × 5"), "8 × 5\n-----\n");
}

} // namespace
} // namespace seamclock
