#include "core/base/json.h"

#include <cstdio>
#include <fstream>
#include <gtest/gtest.h>
#include <limits>
#include <unistd.h>

namespace seamclock {
namespace {

std::string refusalOf(std::string_view text) {
    const auto read = parseJson("f.json", text);
    EXPECT_FALSE(read.has_value());
    if (read) {
        return "accepted";
    }
    EXPECT_EQ(read.error().code, ErrorCode::Malformed);
    return read.error().detail;
}

std::string nested(int levels) {
    const auto count = static_cast<std::size_t>(levels);
    return std::string(count, '[') + std::string(count, ']');
}

TEST(JsonText, IsRefusedWhenEmpty) {
    const char* const kSentence = "f.json: the file is empty; expected a JSON object";
    EXPECT_EQ(refusalOf(""), kSentence);
    EXPECT_EQ(refusalOf(" \n\t\r\n"), kSentence);
}

TEST(JsonText, IsRefusedForAZeroByteWhereverItStands) {
    EXPECT_EQ(
        refusalOf(std::string_view("\0\0\0", 3)),
        "f.json, line 1: a zero byte; expected JSON text");
    // The library would take what stands before the zero byte for the whole.
    EXPECT_EQ(
        refusalOf(std::string_view("{\"a\":1}\n\0garbage", 16)),
        "f.json, line 2: a zero byte; expected JSON text");
}

TEST(JsonText, NamesTheLineOfASyntaxError) {
    EXPECT_EQ(refusalOf("{\n  \"a\": 1,\n  \"b\": oops\n}"), "f.json, line 3: not valid JSON");
    EXPECT_EQ(refusalOf("{\"a\": 1,}"), "f.json, line 1: not valid JSON");
    EXPECT_EQ(refusalOf("{\"a\": NaN}"), "f.json, line 1: not valid JSON");
    EXPECT_EQ(refusalOf("{\"a\": 1} x"), "f.json, line 1: not valid JSON");
    EXPECT_EQ(refusalOf("{\n\"a\": 1"), "f.json, line 2: not valid JSON");
}

TEST(JsonText, IsRefusedForAFieldThatStandsTwice) {
    EXPECT_EQ(
        refusalOf("{\n \"a\": 1,\n \"b\": 2,\n \"a\": 3\n}"),
        "f.json, line 4: the field \"a\" stands twice");
    EXPECT_EQ(
        refusalOf("{\"x\": [1, {\"k\": \"}\\\"\",\n \"k\": 2}]}"),
        "f.json, line 2: the field \"k\" stands twice");
    // The same key, once written with an escape.
    EXPECT_EQ(
        refusalOf("{\"a\": 1, \"\\u0061\": 2}"), "f.json, line 1: the field \"a\" stands twice");
    // After a byte order mark, which is passed over.
    EXPECT_EQ(
        refusalOf("\xEF\xBB\xBF{\"a\": 1, \"a\": 2}"),
        "f.json, line 1: the field \"a\" stands twice");
}

TEST(JsonText, MayRepeatAFieldInDifferentObjects) {
    EXPECT_TRUE(parseJson("f", R"({"a": {"k": 1}, "b": {"k": 2}, "c": [{"k": 3}, {"k": 4}]})"));
}

TEST(JsonText, MayBeSixtyFourLevelsDeepAndNoDeeper) {
    EXPECT_TRUE(parseJson("f", nested(64)));
    EXPECT_EQ(refusalOf(nested(65)), "f.json: nested deeper than 64 levels, the most allowed");
    EXPECT_EQ(
        refusalOf(std::string(2'000'000, '[')),
        "f.json: nested deeper than 64 levels, the most allowed");
    EXPECT_TRUE(
        parseJson("f", "[\"" + std::string(100, '[') + "\"]")); // inside a text they don't count
}

TEST(JsonText, IsRefusedForANumberThatNothingCanHold) {
    EXPECT_EQ(refusalOf("{\"a\": 1e999}"), "f.json: number overflow parsing '1e999'");
}

TEST(JsonText, IsRefusedForInvalidUtf8) {
    EXPECT_EQ(refusalOf("{\n\"a\": \"\xC3\x28\"}"), "f.json, line 2: not valid JSON");
    EXPECT_EQ(refusalOf("{\"a\": \"\xED\xA0\x80\"}"), "f.json, line 1: not valid JSON");
    EXPECT_EQ(refusalOf("\xFF\xFE{}"), "f.json, line 1: not valid JSON");
}

TEST(JsonText, KnowsTheLineOfEveryValue) {
    const std::map<std::string, int> expected{
        {"", 1},     {"/a", 2},        {"/a/0", 2},     {"/a/1", 3},
        {"/a/2", 4}, {"/a/2/deep", 5}, {"/x~1y~0z", 6}, // RFC 6901 writes / as ~1 and ~ as ~0
        {"/", 7}};
    EXPECT_EQ(
        linesOf(
            "{\n  \"a\": [1,\n    2,\n    {\"deep\":\n      true}],\n  \"x/y~z\": \"\\\"{\",\n  "
            "\"\": 0\n}"),
        expected);
}

TEST(JsonFile, ThatIsNotThereOrAFolderIsUnreadable) {
    const auto absent = parseJsonFile("no/such/file.json");
    ASSERT_FALSE(absent);
    EXPECT_EQ(absent.error().code, ErrorCode::Unreadable);
    EXPECT_EQ(absent.error().detail, "no/such/file.json: no such file, or not readable");
    const auto folder = parseJsonFile(SEAMCLOCK_SOURCE_DIR);
    ASSERT_FALSE(folder);
    EXPECT_EQ(folder.error().code, ErrorCode::Unreadable);
}

TEST(JsonFile, ThatNeverEndsIsUnreadable) {
    const auto endless = parseJsonFile("/dev/zero");
    ASSERT_FALSE(endless);
    EXPECT_EQ(endless.error().code, ErrorCode::Unreadable);
    EXPECT_EQ(endless.error().detail, "/dev/zero: larger than 16777216 bytes, the most allowed");
}

TEST(JsonFile, OfNoBytesIsMalformedLikeAnEmptyText) {
    const std::string path =
        testing::TempDir() + "seamclock_empty_" + std::to_string(getpid()) + ".json";
    std::ofstream(path).close();
    const auto read = parseJsonFile(path);
    std::remove(path.c_str());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::Malformed);
    EXPECT_EQ(read.error().detail, path + ": the file is empty; expected a JSON object");
}

TEST(CanonicalJson, SortsKeysBytewiseWithoutSpaces) {
    const Json value = Json::parse(R"({"b": [1, true, "x"], "Z": {"n": -5}, "a": "", "é": 0})");
    const auto body = canonicalJson(value);
    ASSERT_TRUE(body);
    EXPECT_EQ(*body, R"({"Z":{"n":-5},"a":"","b":[1,true,"x"],"é":0})");
    // U+FFFF is EF BF BF and sorts before U+10000, F0 90 80 80; by UTF-16 units it would be the
    // other way round.
    const auto high = canonicalJson(Json{{"\xF0\x90\x80\x80", 1}, {"\xEF\xBF\xBF", 2}});
    ASSERT_TRUE(high);
    EXPECT_EQ(*high, "{\"\xEF\xBF\xBF\":2,\"\xF0\x90\x80\x80\":1}");
}

TEST(CanonicalJson, HoldsNoFloatNoNullAndNothingBeyondInt64) {
    constexpr auto kMost = std::numeric_limits<std::int64_t>::max();
    EXPECT_TRUE(canonicalJson(Json{{"a", kMost}}));
    EXPECT_TRUE(canonicalJson(Json{{"a", std::numeric_limits<std::int64_t>::min()}}));
    for (const Json& bad :
         {Json{{"a", 1.0}}, Json{{"a", nullptr}}, Json{{"a", Json::array({1, nullptr})}},
          Json{{"a", static_cast<std::uint64_t>(kMost) + 1}}, Json{{"a", {{"b", 0.5}}}}}) {
        const auto body = canonicalJson(bad);
        ASSERT_FALSE(body) << bad;
        EXPECT_EQ(body.error().code, ErrorCode::Malformed);
    }
}

TEST(CanonicalJson, HoldsNoInvalidUtf8) {
    EXPECT_FALSE(canonicalJson(Json{{"a", "\xFF"}}));
}

TEST(CanonicalJson, WritesOnlyWhatItCanReadAgain) {
    Json deep = 1;
    for (int i = 0; i < 64; ++i) {
        deep = Json::array({deep});
    }
    const auto body = canonicalJson(deep);
    ASSERT_TRUE(body);
    EXPECT_TRUE(parseCanonical(*body));
    EXPECT_FALSE(canonicalJson(Json::array({deep})));
}

TEST(CanonicalJson, ReadsBackOnlyItsOwnForm) {
    const auto good = parseCanonical(R"({"a":1,"b":"\u001f"})");
    ASSERT_TRUE(good);
    EXPECT_EQ((*good)["a"], 1);
    for (const std::string_view bad :
         {std::string_view(R"({"a": 1})"), std::string_view(R"({"b":1,"a":2})"),
          std::string_view(R"({"a":1,"a":1})"), std::string_view(R"({"a":1.0})"),
          std::string_view(R"({"a":null})"), std::string_view(R"({"a":1e2})"),
          std::string_view(R"({"a":-0})"), std::string_view(R"({"a":"\u0041"})"),
          std::string_view(R"({"a":9223372036854775808})"), std::string_view("{\"a\":\"\xFF\"}"),
          std::string_view("{\"a\":1}\0", 8), std::string_view("{\"a\":1}\n"), std::string_view(""),
          std::string_view("{")}) {
        const auto read = parseCanonical(bad);
        EXPECT_FALSE(read) << bad;
    }
    EXPECT_FALSE(parseCanonical(std::string(100'000, '[')));
}

} // namespace
} // namespace seamclock
