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
    const auto read = parseJson(
        "f", "{\n  \"a\": [1,\n    2,\n    {\"deep\":\n      true}],\n  \"x/y~z\": \"\\\"{\",\n  "
             "\"\": 0\n}");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->lineOf(""), 1);
    EXPECT_EQ(read->lineOf("/a"), 2);
    EXPECT_EQ(read->lineOf("/a/1"), 3);
    EXPECT_EQ(read->lineOf("/a/2/deep"), 5);
    EXPECT_EQ(read->lineOf("/x~1y~0z"), 6); // RFC 6901 writes / as ~1 and ~ as ~0
    EXPECT_EQ(read->lineOf("/"), 7);
    EXPECT_EQ(read->lineOf("/absent"), 0);
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

class ReaderOf {
public:
    explicit ReaderOf(std::string_view text) : m_text(*parseJson("f.json", text)) {}
    JsonReader reader() const { return JsonReader(m_text); }

private:
    JsonText m_text;
};

TEST(JsonReader, ReadsWhatIsThere) {
    const ReaderOf file(R"({"t": "x", "d": 2.5, "i": 7, "f": true, "n": [1, 2.5], "w": ["a", "b"],
                            "k": [1, 2], "o": {"in": 1}, "l": [{"v": 1}, {"v": 2}], "ex": {}})");
    JsonReader reader = file.reader();
    EXPECT_EQ(reader.text("t"), "x");
    EXPECT_EQ(reader.number("d", 0, 10), 2.5);
    EXPECT_EQ(reader.number("i", 7, 7), 7);
    EXPECT_EQ(reader.integer("i", 0, 10), 7);
    EXPECT_TRUE(reader.flag("f"));
    EXPECT_EQ(reader.numbers("n"), (std::vector<double>{1, 2.5}));
    EXPECT_EQ(reader.integers("k", 1, 2), (std::vector<std::int64_t>{1, 2}));
    EXPECT_EQ(reader.texts("w"), (std::vector<std::string>{"a", "b"}));
    EXPECT_EQ(reader.object("o").integer("in", 0, 1), 1);
    auto list = reader.objects("l");
    ASSERT_EQ(list.size(), 2U);
    EXPECT_EQ(list[1].integer("v", 0, 9), 2);
    EXPECT_FALSE(reader.textIf("absent"));
    EXPECT_FALSE(reader.numberIf("absent", 0, 1));
    EXPECT_FALSE(reader.objectIf("absent"));
    reader.ignore("ex");
    reader.refuseUnknown();
    EXPECT_TRUE(reader.verdict());
}

TEST(JsonReader, RemembersEverythingThatIsWrongWithLineFieldAndReason) {
    const ReaderOf file("{\n\"min_C\": 410,\n\"unit\": 5,\n\"steps\": [1],\n\"o\": {\n\"n\": "
                        "1.5},\n\"i\": 12345678901234567890,\n\"odd\": 1}");
    JsonReader reader = file.reader();
    reader.number("min_C", 0, 400);
    reader.text("unit");
    reader.texts("steps");
    reader.object("o").integer("n", 0, 9);
    reader.integer("i", 0, 9);
    reader.text("gone");
    reader.refuseUnknown();
    const auto& findings = reader.findings();
    ASSERT_EQ(findings.size(), 7U);
    const std::vector<JsonReader::Finding> kExpected{
        {2, "/min_C", "410 is outside 0 to 400"},
        {3, "/unit", "5 is not a text"},
        {4, "/steps", "1 in the list is not a text"},
        {6, "/o/n", "1.5 is not a whole number; allowed 0 to 9"},
        {7, "/i", "12345678901234567890 is not a whole number; allowed 0 to 9"},
        {1, "/gone", "is missing"},
        {8, "/odd", "is not a field that is known here"}};
    for (std::size_t i = 0; i < kExpected.size(); ++i) {
        EXPECT_EQ(findings[i].line, kExpected[i].line) << i;
        EXPECT_EQ(findings[i].field, kExpected[i].field) << i;
        EXPECT_EQ(findings[i].reason, kExpected[i].reason) << i;
    }
    const auto verdict = reader.verdict();
    ASSERT_FALSE(verdict);
    EXPECT_EQ(verdict.error().code, ErrorCode::Malformed);
    EXPECT_EQ(verdict.error().detail, "f.json, line 2, /min_C: 410 is outside 0 to 400");
}

TEST(JsonReader, WantsAnObjectAtTheTop) {
    const ReaderOf file("[1, 2]");
    const auto verdict = file.reader().verdict();
    ASSERT_FALSE(verdict);
    EXPECT_EQ(verdict.error().detail, "f.json, line 1, the whole: expected a JSON object");
}

TEST(JsonReader, TakesANullForAWrongValueNotForAnAbsentOne) {
    const ReaderOf file("{\"a\": null}");
    JsonReader reader = file.reader();
    EXPECT_FALSE(reader.numberIf("a", 0, 1));
    ASSERT_EQ(reader.findings().size(), 1U);
    EXPECT_EQ(reader.findings()[0].reason, "null is not a number; allowed 0 to 1");
}

TEST(JsonReader, CutsALongValueBetweenCharacters) {
    std::string text;
    for (int i = 0; i < 50; ++i) {
        text += "é";
    }
    const ReaderOf file("{\"a\": \"" + text + "\"}");
    JsonReader reader = file.reader();
    reader.number("a", 0, 1);
    ASSERT_EQ(reader.findings().size(), 1U);
    EXPECT_NO_THROW(Json(reader.findings()[0].reason).dump()); // throws on half a character
    EXPECT_LT(reader.findings()[0].reason.size(), 100U);
}

TEST(JsonReader, KnowsWhichOfManyFieldsWereRead) {
    std::string fields;
    for (int i = 100; i < 200; ++i) {
        fields += (i > 100 ? ",\n" : "") + ("\"f" + std::to_string(i)) + "\":1";
    }
    const auto text = parseJson("many.json", "{" + fields + "}");
    ASSERT_TRUE(text);
    JsonReader reader(*text);
    for (int i = 100; i < 200; ++i) {
        if (i != 163 && i != 164 && i != 190) {
            reader.integer(("f" + std::to_string(i)).c_str(), 0, 1);
        }
    }
    reader.refuseUnknown();
    std::vector<std::string> found;
    for (const auto& finding : reader.findings()) {
        found.push_back(finding.field + " " + std::to_string(finding.line));
    }
    EXPECT_EQ(found, (std::vector<std::string>{"/f163 64", "/f164 65", "/f190 91"}));
}

TEST(JsonReader, StopsCountingAtAHundredFindings) {
    std::string text = "{\"a0\": 0";
    for (int i = 1; i < 20'000; ++i) {
        text += ",\n\"a" + std::to_string(i) + "\": 0";
    }
    const ReaderOf file(text + "}");
    JsonReader reader = file.reader();
    reader.refuseUnknown();
    EXPECT_EQ(reader.findings().size(), 100U);
}

} // namespace
} // namespace seamclock
