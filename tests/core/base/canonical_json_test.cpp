// The quick reader of event bodies beside the slow one: parseCanonical, which is nlohmann's parser
// and writer. Whatever one accepts the other must, with the same content.
#include "core/base/canonical_json.h"
#include "core/base/json.h"
#include "tests/support/sanitized.h"

#include <gtest/gtest.h>
#include <random>

namespace seamclock {
namespace {

/// Whether both accept it; a test fails if they disagree.
bool accepted(std::string_view text) {
    const auto quick = CanonicalText::parse(text);
    const auto slow = parseCanonical(text);
    EXPECT_EQ(quick.has_value(), slow.has_value()) << text;
    if (quick && slow) {
        EXPECT_EQ(quick->root().written(), slow->dump());
        EXPECT_EQ(slow->dump(), text);
    } else if (!quick && !slow) {
        EXPECT_EQ(quick.error().detail, slow.error().detail) << text;
    }
    return quick.has_value() && slow.has_value();
}

const std::string kBody =
    R"({"at":{"boot":"b-1","boot_ms":-5,"offset_min":60,"utc_ms":1894514400000},"by":"person:ö",)"
    R"("d":{"flags":[],"list":[1,-2,[3,{"a":true}],false,"x\"\\\n\u001f"],"text":"Straße 溶接 😀"},)"
    R"("kind":"remark_made","n":9223372036854775807,"subject":"weld:1","v":-9223372036854775808})";

TEST(CanonicalText, ReadsWhatTheWriterWrites) {
    EXPECT_TRUE(accepted(kBody));
    for (const std::string_view good :
         {R"({})", R"([])", R"(0)", R"("")",
          R"("\b\f\n\r\t\u0000\u001f/)"
          "\x7F\"",
          R"({"":1,"A":2,"a":3,"é":4})", R"([true,false])", R"({"a":"\"","b":1})"}) {
        EXPECT_TRUE(accepted(good)) << good;
    }
}

TEST(CanonicalText, RefusesAllElseInTheWordsOfTheOther) {
    for (const std::string_view bad :
         {std::string_view(""),
          std::string_view(" {}"),
          std::string_view("{} "),
          std::string_view(R"({"a": 1})"),
          std::string_view(R"({"b":1,"a":2})"),
          std::string_view(R"({"a":1,"a":1})"),
          std::string_view(R"({"a":1.0})"),
          std::string_view(R"({"a":null})"),
          std::string_view(R"({"a":1e2})"),
          std::string_view(R"({"a":-0})"),
          std::string_view(R"({"a":01})"),
          std::string_view(R"({"a":-})"),
          std::string_view(R"({"a":+1})"),
          std::string_view(R"({"a":9223372036854775808})"),
          std::string_view(R"({"a":-9223372036854775809})"),
          std::string_view(R"(["\u0041"])"),
          std::string_view(R"(["\u001F"])"),
          std::string_view(R"(["\u000a"])"),
          std::string_view(R"(["\/"])"),
          std::string_view(R"(["\ud83d\ude00"])"),
          std::string_view("[\"\n\"]"),
          std::string_view("[\"\xFF\"]"),
          std::string_view("[\"\xC0\x80\"]"),
          std::string_view("[\"\xED\xA0\x80\"]"),
          std::string_view("[\"\xF4\x90\x80\x80\"]"),
          std::string_view("[\"\xE2\x82\"]"),
          std::string_view("\xEF\xBB\xBF{}"),
          std::string_view("{}\0", 3),
          std::string_view("[1,]"),
          std::string_view("[,1]"),
          std::string_view("{\"a\"}"),
          std::string_view("{\"a\":}"),
          std::string_view("{a:1}"),
          std::string_view("[1"),
          std::string_view("{\"a\":1"),
          std::string_view("\"a"),
          std::string_view("tru"),
          std::string_view("nul"),
          std::string_view("[1]]"),
          std::string_view("{}{}"),
          std::string_view("\"\\"),
          std::string_view("\"\\u00"),
          std::string_view("-")}) {
        EXPECT_FALSE(accepted(bad)) << bad;
    }
}

TEST(CanonicalText, GoesAsDeepAsTheOther) {
    const auto nested = [](std::size_t levels) {
        return std::string(levels, '[') + std::string(levels, ']');
    };
    EXPECT_TRUE(accepted(nested(64)));
    EXPECT_FALSE(accepted(nested(65)));
    EXPECT_FALSE(accepted(nested(100'000)));
}

TEST(CanonicalText, FindsMembersByTheirKeys) {
    const auto text = CanonicalText::parse(kBody);
    ASSERT_TRUE(text);
    const CanonicalValue root = text->root();
    const auto kind = root.find("kind");
    ASSERT_TRUE(kind);
    EXPECT_EQ(kind->place, 3U);
    EXPECT_EQ(root.size(), 7U);
    const CanonicalValue details = root.at(*root.find("d"));
    EXPECT_EQ(details.at(*details.find("flags")).size(), 0U);
    EXPECT_EQ(details.at(*details.find("list")).size(), 5U);
    EXPECT_EQ(root.at(*kind).text(), "remark_made");
    EXPECT_EQ(root.at(*root.find("at")).written().substr(0, 9), R"({"boot":")");
    EXPECT_FALSE(root.find("kin"));
    EXPECT_FALSE(root.at(*kind).find("a"));
}

TEST(CanonicalText, KeepsItsContentWhileOthersAreRead) {
    auto first = CanonicalText::parse(kBody);
    ASSERT_TRUE(first);
    {
        const auto second = CanonicalText::parse(R"({"a":"another","b":[1,2]})");
        ASSERT_TRUE(second);
        EXPECT_EQ(first->root().written(), kBody);
        EXPECT_EQ(second->root().written(), R"({"a":"another","b":[1,2]})");
    }
    CanonicalText moved = std::move(*first);
    first = CanonicalText::parse("[]");
    EXPECT_EQ(moved.root().written(), kBody);
    EXPECT_EQ(first->root().written(), "[]");
}

TEST(CanonicalText, AgreesWithTheOtherOnTwentyThousandSpoiledBodies) {
    std::mt19937_64 chance(7);
    const std::string_view pieces = "\"\\{}[]:,0-19.eE tfn\x01\xC3\xA9u/a";
    int accepts = 0;
    const int bodies = test::rounds(20'000);
    for (int i = 0; i < bodies; ++i) {
        std::string body = kBody;
        for (std::uint64_t change = chance() % 3 + 1; change > 0; --change) {
            const std::size_t at = chance() % body.size();
            const char piece = pieces[chance() % pieces.size()];
            switch (chance() % 4) {
            case 0:
                body[at] = piece;
                break;
            case 1:
                body.insert(at, 1, piece);
                break;
            case 2:
                body.erase(at, 1);
                break;
            default:
                body[at] = body[chance() % body.size()];
                break;
            }
        }
        accepts += accepted(body) ? 1 : 0;
    }
    EXPECT_GT(accepts, bodies / 10); // enough of both
    EXPECT_LT(accepts, bodies / 10 * 9);
}

} // namespace
} // namespace seamclock
