#include "app/daylog/decision.h"

#include "app/text/record_words.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(Decision, EachQuestionOffersReasonsAndWordsOfOnesOwn) {
    for (const bool trial : {false, true}) {
        for (const Decision decision : {Decision::Accept, Decision::Repair, Decision::CutOut}) {
            JointView joint;
            joint.trial = trial;
            const DecisionQuestion question = decisionQuestion(joint, 1043, decision);
            EXPECT_TRUE(question.page.title.contains("1043"));
            ASSERT_EQ(question.page.choices.size(), question.reasons.size() + 1);
            EXPECT_EQ(question.page.choices.back().text, "Something else");
            for (std::size_t i = 0; i < question.reasons.size(); ++i) {
                EXPECT_EQ(
                    question.page.choices[i].text.toLower(),
                    choiceWord(question.reasons[i]).toLower());
                EXPECT_FALSE(question.page.choices[i].text.contains('_')) << "no code is shown";
            }
        }
    }
}

TEST(Decision, ATrialJointIsReleased) {
    EXPECT_EQ(
        decisionForWhat(4, true, Decision::Accept, "it held"),
        "Trial joint 4 is released: it held.");
    EXPECT_EQ(
        decisionForWhat(4, false, Decision::Accept, "it held"), "Joint 4 is accepted: it held.");
}

Correctable plate() {
    Correctable value;
    value.n = 3;
    value.field = "value_mC";
    value.value = "211000";
    value.item = "plate, front";
    value.text = "211 °C";
    value.scale = 1000;
    value.unit = "°C";
    return value;
}

TEST(Decision, ACorrectedValueIsWrittenAsTheEventHasIt) {
    EXPECT_EQ(corrected(plate(), "209"), "209000");
    EXPECT_EQ(corrected(plate(), " 209.5 "), "209500");
    Correctable batch;
    batch.item = "sheet 1, batch";
    batch.scale = 0;
    EXPECT_EQ(corrected(batch, " K-7 "), "K-7");
}

TEST(Decision, WhatIsNoValueIsRefusedInOneSentence) {
    const auto none = corrected(plate(), "warm");
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::Malformed);
    EXPECT_EQ(none.error().detail, "\"warm\" is no value for plate, front; allowed: 0 to 400 °C.");
    const auto hot = corrected(plate(), "401");
    ASSERT_FALSE(hot);
    EXPECT_EQ(hot.error().code, ErrorCode::OutOfRange);
    EXPECT_TRUE(corrected(plate(), "400"));
    EXPECT_FALSE(corrected(plate(), "nan"));
    EXPECT_FALSE(corrected(plate(), "1e999"));
    Correctable batch;
    batch.scale = 0;
    EXPECT_FALSE(corrected(batch, "  "));
    EXPECT_TRUE(corrected(batch, QString(60, 'x')));
    EXPECT_FALSE(corrected(batch, QString(61, 'x')));
}

} // namespace
} // namespace seamclock
