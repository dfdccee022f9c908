#include "core/base/json_reader.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

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
