// A document edited field by field: what isn't touched stays as it was, in its order.
#include "core/base/json_draft.h"

#include "core/base/json.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

constexpr const char* kText = R"({
  "zeta": 1,
  "alpha": {"value_C": 20, "mine": "stays", "deep": {"list": [1, 2.5, 0.1]}},
  "table": [
    {"from_mm": 1.0, "to_mm": 4.5, "value": 5},
    {"from_mm": 4.5, "to_mm": 7, "lower": 5, "upper": 6}
  ],
  "nothing": null
}
)";

JsonDraft draft() {
    auto read = JsonDraft::read("a test", kText);
    EXPECT_TRUE(read);
    return std::move(*read);
}

TEST(JsonDraft, ShowsWhatAPersonWouldType) {
    const JsonDraft doc = draft();
    EXPECT_EQ(doc.shown("/zeta"), "1");
    EXPECT_EQ(doc.shown("/alpha/mine"), "stays");
    EXPECT_EQ(doc.shown("/alpha/deep/list"), "1 2.5 0.1");
    EXPECT_EQ(doc.shown("/table/1/from_mm"), "4.5");
    EXPECT_EQ(doc.shown("/nothing"), "");
    EXPECT_EQ(doc.shown("/alpha"), "");
    EXPECT_EQ(doc.shown("/table/7/from_mm"), "");
    EXPECT_EQ(doc.shown("/zeta/deeper"), "");
    EXPECT_TRUE(doc.has("/alpha"));
    EXPECT_FALSE(doc.has("/nothing"));
    EXPECT_EQ(doc.size("/table"), 2U);
    EXPECT_EQ(doc.size("/alpha"), 0U);
    EXPECT_EQ(doc.number("/table/0/value"), 5.0);
    EXPECT_FALSE(doc.number("/alpha/mine"));
}

TEST(JsonDraft, AnUntouchedTextIsTheSameDocumentInTheSameOrder) {
    EXPECT_EQ(draft().text(), kText);
    const auto again = JsonDraft::read("again", draft().text());
    ASSERT_TRUE(again);
    EXPECT_EQ(again->text(), draft().text());
    EXPECT_EQ(Json::parse(draft().text()), Json::parse(kText));
    EXPECT_LT(draft().text().find("zeta"), draft().text().find("alpha"));
}

TEST(JsonDraft, WhatWasTypedStandsAsANumberOrElseAsAText) {
    JsonDraft doc = draft();
    doc.setNumber("/alpha/value_C", " 410 ");
    doc.setNumber("/table/0/from_mm", "0.25");
    doc.setNumber("/table/1/lower", "5 s");
    doc.setNumber("/table/1/upper", "-3");
    doc.setNumbers("/alpha/deep/list", "20 -0.47  x");
    const Json json = Json::parse(doc.text());
    EXPECT_EQ(json["alpha"]["value_C"], 410);
    EXPECT_EQ(json["table"][0]["from_mm"], 0.25);
    EXPECT_EQ(json["table"][1]["lower"], "5 s");
    EXPECT_EQ(json["table"][1]["upper"], -3);
    EXPECT_EQ(json["alpha"]["deep"]["list"], Json::parse(R"([20, -0.47, "x"])"));
    for (const char* odd : {"nan", "inf", "0x10", "1e999", "--1", "1.5.2"}) {
        doc.setNumber("/zeta", odd);
        EXPECT_EQ(Json::parse(doc.text())["zeta"], odd) << odd;
    }
}

TEST(JsonDraft, AnEmptyLineTakesTheFieldAway) {
    JsonDraft doc = draft();
    doc.setNumber("/alpha/value_C", "  ");
    doc.setText("/alpha/mine", "");
    doc.setNumbers("/alpha/deep/list", " ");
    const Json json = Json::parse(doc.text());
    EXPECT_FALSE(json["alpha"].contains("value_C"));
    EXPECT_FALSE(json["alpha"].contains("mine"));
    EXPECT_TRUE(json["alpha"]["deep"].empty());
}

TEST(JsonDraft, RowsComeAndGoWhereTheyStand) {
    JsonDraft doc = draft();
    doc.insert("/table/1", R"({"from_mm": 4.5})");
    doc.insert("/table/9", R"({"from_mm": 99})"); // behind the last
    ASSERT_EQ(doc.size("/table"), 4U);
    EXPECT_EQ(doc.shown("/table/1/from_mm"), "4.5");
    EXPECT_EQ(doc.shown("/table/2/to_mm"), "7");
    EXPECT_EQ(doc.shown("/table/3/from_mm"), "99");
    doc.remove("/table/0");
    EXPECT_EQ(doc.size("/table"), 3U);
    EXPECT_EQ(doc.shown("/table/0/to_mm"), "");
    doc.remove("/table/8");
    doc.remove("/nowhere/at/all");
    doc.remove("");
    EXPECT_EQ(doc.size("/table"), 3U);
    doc.insert("/gaps/0", R"({"value": "soak_s"})"); // a list that wasn't there
    EXPECT_EQ(doc.size("/gaps"), 1U);
    EXPECT_EQ(doc.shown("/gaps/0/value"), "soak_s");
}

TEST(JsonDraft, WhatLeadsToAFieldIsMadeButNoValueIsWalkedThrough) {
    JsonDraft doc = draft();
    doc.setNumber("/pressure/tolerance/value_N_mm2", "0.01");
    EXPECT_EQ(doc.shown("/pressure/tolerance/value_N_mm2"), "0.01");
    doc.put("/plate", R"({"min_C": 200})");
    EXPECT_EQ(doc.number("/plate/min_C"), 200.0);
    const std::string before = doc.text();
    doc.setNumber("/zeta/below", "1");
    doc.setText("/table/x/value", "1");
    EXPECT_EQ(doc.text(), before);
}

TEST(JsonDraft, ACopyIsOfItsOwn) {
    const JsonDraft first = draft();
    JsonDraft second = first;
    second.setNumber("/zeta", "2");
    EXPECT_EQ(first.shown("/zeta"), "1");
    JsonDraft third;
    third = second;
    second.setNumber("/zeta", "3");
    EXPECT_EQ(third.shown("/zeta"), "2");
}

TEST(JsonDraft, RefusesWhatTheCheckersRefuse) {
    for (const char* text : {"", "[1, 2]", "{\"a\": 1, \"a\": 2}", "{\"a\": }", "7"}) {
        const auto read = JsonDraft::read("mine.json", text);
        ASSERT_FALSE(read) << text;
        EXPECT_EQ(read.error().code, ErrorCode::Malformed);
        EXPECT_NE(read.error().detail.find("mine.json"), std::string::npos);
    }
}

} // namespace
} // namespace seamclock
