// What a trainee reads about his weld: each mistake and each number in its own words.
#include "core/practice/practice_words.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <set>

namespace seamclock {
namespace {

TEST(PracticeWords, SayOfEachFaultAndEachBreakSomethingOfItsOwn) {
    std::set<std::string> said;
    for (const Wrong wrong : allWrong()) {
        const std::string sentence = wrongSentence(wrong);
        EXPECT_EQ(sentence.back(), '.') << sentence;
        EXPECT_TRUE(said.insert(sentence).second) << sentence;
    }
    for (int i = 0; i <= static_cast<int>(BendReason::Kinked); ++i) {
        const auto reason = static_cast<BendReason>(i);
        const std::string sentence = bendSentence(reason);
        ASSERT_FALSE(sentence.empty()) << toString(reason);
        EXPECT_EQ(sentence.back(), '.') << sentence;
        EXPECT_TRUE(said.insert(sentence).second) << sentence;
    }
    EXPECT_EQ(said.size(), allWrong().size() + 11);
}

TEST(PracticeWords, SetWhatWasSaidBesideWhatItWas) {
    const auto of = [](const char* what, double said, double was, const char* unit) {
        return readingSentence({what, Milliseconds(0), said, was, 1, unit});
    };
    EXPECT_EQ(
        of("plate_temperature", 215.4, 207.6, "C"),
        "The plate's temperature: you said 215 °C, it was 208 °C.");
    EXPECT_EQ(of("k", 0.86, 1.24, "mm"), "The valley K: you said 0.9 mm, it was 1.2 mm.");
    EXPECT_EQ(of("drag", 4, 5.5, "kgf"), "The drag: you said 4.0 kgf, it was 5.5 kgf.");
    EXPECT_EQ(
        of("recheck", 15, 12.5, "mm"), "The reading in cooling: you said 15.0 mm, it was 12.5 mm.");
    EXPECT_EQ(of("new_kind", 1, 2, "mm"), "new_kind: you said 1.0 mm, it was 2.0 mm.");
}

TEST(PracticeWords, SayOfEachStepAgainstTheOrderWhatHappened) {
    const std::map<std::string, std::pair<double, std::string>> told = {
        {"told_not_done:plate_out", {0, "\"plate out\" was told and not done at the bench."}},
        {"told_late:pressure_locked", {12.34, "the lock was told 12.3 s after it was done."}},
        {"told_late:sheet_out", {132, "\"sheet is out\" was told 2.2 min after it was done."}},
        {"refused:the clamps are open", {0, "This can't be done just then: the clamps are open."}},
        {"clock_from_contact", {0.4, "Soak's clock was started with a bead of 0.4 mm."}},
        {"call_taken", {41, "The call was taken in soak: nobody saw the bench for 41.0 s."}},
        {"plate_dragged",
         {0, "The plate was drawn out while it was pressed, and smeared the melt."}},
        {"spring_kick",
         {0, "The bars were opened with the spring loaded: they kick. Follow the machine's own "
             "instructions."}},
        {"parted", {0, "The hot faces were pulled apart again."}},
        {"let_go_hot", {118.6, "The joint was let go while its middle was at 119 °C."}},
        {"scale_end", {0, "The wheel was turned against the end of the scale."}},
        {"of_a_later_program", {0, "of_a_later_program"}},
    };
    for (const auto& [code, said] : told) {
        EXPECT_EQ(orderSentence({code, Milliseconds(0), said.first}), said.second);
    }
    for (int i = 0; i <= static_cast<int>(MishapKind::ScaleEnd); ++i) {
        const std::string code(toString(static_cast<MishapKind>(i)));
        EXPECT_EQ(told.count(code), 1U) << code << " is told by its code";
    }
}

TEST(PracticeWords, NameTheSignalThatWasAnswered) {
    const auto of = [](CueKind cue) {
        return reactionSentence({cue, Milliseconds(0), Milliseconds(2'340)});
    };
    EXPECT_EQ(of(CueKind::ActNow), "Plate out after the signal: 2.3 s.");
    EXPECT_EQ(of(CueKind::ChangeoverOverrun), "Faces together after the limit: 2.3 s.");
    EXPECT_EQ(of(CueKind::BuildUpLate), "The mark reached after its limit: 2.3 s.");
    EXPECT_EQ(of(CueKind::AlignmentLate), "Pressure off after the warning: 2.3 s.");
    EXPECT_EQ(of(CueKind::RecheckDue), "The scale read after it was due: 2.3 s.");
    EXPECT_EQ(of(CueKind::CoolingDone), "Released after the end of cooling: 2.3 s.");
    EXPECT_EQ(of(CueKind::ProgramLost), "Answered: 2.3 s.");
}

// The verdict and the bend test say it first; a good record over a bad joint is named as that.
TEST(PracticeWords, SayThatAGoodRecordDoesNotProveAGoodJoint) {
    PracticeScore score;
    score.verdict.word = VerdictWord::WithinLimits;
    score.judged = 9;
    score.inLimits = 9;
    StationBend sound;
    sound.ductile = true;
    StationBend flat;
    flat.ductile = false;
    flat.reasons = {BendReason::ColdSkin, BendReason::ThinMelt};
    score.made.bend.ductile = false;
    score.made.bend.stations = {sound, flat, flat};
    score.notice = {{Wrong::PlateCold, {}}, {Wrong::Draught, Milliseconds(5'000)}};
    score.falseAlarms = {Wrong::ZeroOff};
    score.readings = {
        {"bead", Milliseconds(0), 9, 8.5, 1, "mm"}, {"k", Milliseconds(0), 3, 0.5, 1, "mm"}};
    const auto words = practiceWords(score);
    const auto at = [&words](const std::string& sentence) {
        return std::find(words.begin(), words.end(), sentence) - words.begin();
    };
    EXPECT_EQ(words.front(), "The verdict: within limits. 9 of 9 values were in limits.");
    EXPECT_EQ(
        at("Bend test: it breaks at 2 of 3 places. The faces had a cold skin: a flat fracture. Too "
           "little melt was left in the joint."),
        1);
    EXPECT_EQ(
        at("Every number was in limits, and it breaks all the same: a good record and a good bead "
           "do not prove a good joint."),
        2);
    const auto end = static_cast<std::ptrdiff_t>(words.size());
    EXPECT_LT(at("The faces never met."), end);
    EXPECT_LT(at("Not noticed: The plate is too cold."), end);
    EXPECT_LT(at("Noticed after 5.0 s: There is a draught."), end);
    EXPECT_LT(at("Said, and it was not so: The scale does not stand on zero."), end);
    EXPECT_LT(at("The valley K: you said 3.0 mm, it was 0.5 mm."), end);
    EXPECT_EQ(at("The bead: you said 9.0 mm, it was 8.5 mm."), end) << "as near as an eye may be";
    EXPECT_EQ(words.back(), whatPracticeCantTeach());
}

} // namespace
} // namespace seamclock
