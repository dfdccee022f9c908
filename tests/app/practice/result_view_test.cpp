// What is said of a score: the rows for each kind of finding, in the words that people read.
#include "app/practice/practice_text.h"
#include "app/practice/result_view.h"
#include "core/practice/practice_words.h"
#include "tests/support/practice_weld.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace seamclock::test {
namespace {

const ResultView::Row& rowOf(const ResultView& view, const QString& item) {
    static const ResultView::Row kNone;
    for (const ResultView::Row& row : view.rows) {
        if (row.item == item) {
            return row;
        }
    }
    ADD_FAILURE() << "no row \"" << item.toStdString() << "\"";
    return kNone;
}

ResultView viewOf(const PracticeScore& score) {
    const BenchSetup setup = setupFor(kPe10);
    Lesson lesson;
    lesson.after = "The same again.";
    return resultView(lesson, setup, setup.plan, score);
}

TEST(ResultView, AGoodWeldHasNothingOff) {
    PracticeScore score;
    score.verdict.word = VerdictWord::WithinLimits;
    score.judged = 12;
    score.inLimits = 12;
    score.readings = {{"plate_temperature", Milliseconds(0), 210, 210.4, 2, "C"}};
    const ResultView view = viewOf(score);
    EXPECT_EQ(view.verdict, "Within limits");
    EXPECT_EQ(view.mark, Mark::Done);
    for (const ResultView::Row& row : view.rows) {
        EXPECT_FALSE(row.off) << row.item.toStdString();
    }
    EXPECT_EQ(rowOf(view, "In limits").value, "12 of 12 values");
    EXPECT_EQ(rowOf(view, "Readings").value, "the one was right");
    EXPECT_EQ(view.after, "The same again.");
}

TEST(ResultView, SaysWhatWasOff) {
    PracticeScore score;
    score.verdict.word = VerdictWord::OutOfLimits;
    score.judged = 10;
    score.inLimits = 8;
    score.reactions = {
        {CueKind::ActNow, Milliseconds(0), Milliseconds(840)},
        {CueKind::RecheckDue, Milliseconds(0), Milliseconds(-2'000)}};
    score.readings = {{"recheck", Milliseconds(0), 20, 18.5, 0.5, "mm"}};
    score.order = {{"told_not_done:plate_out", Milliseconds(0), 0}};
    score.notice = {{Wrong::PlateCold, {}}, {Wrong::Draught, Milliseconds(65'000)}};
    score.falseAlarms = {Wrong::ZeroOff};
    const ResultView view = viewOf(score);
    EXPECT_EQ(view.mark, Mark::Late);
    EXPECT_TRUE(rowOf(view, "In limits").off);
    EXPECT_EQ(
        rowOf(view, "Answer to a signal").value, "act now: after 0.8 s; reading due: 2.0 s before");
    EXPECT_EQ(rowOf(view, "Readings").value, "scale again: told 20.0 mm, it was 18.5 mm");
    EXPECT_TRUE(rowOf(view, "Readings").off);
    EXPECT_EQ(rowOf(view, "Order of steps").value, "told, not done: plate out");
    EXPECT_EQ(rowOf(view, "Plate too cold").value, "was not noticed");
    EXPECT_EQ(rowOf(view, "Draught at the seam").value, "noticed at 1:05");
    EXPECT_EQ(rowOf(view, "Nothing wrong there").value, "Scale is not on zero");
}

TEST(ResultView, NamesTwoOfManyAndCountsTheRest) {
    PracticeScore score;
    score.order = {
        {"plate_dragged", Milliseconds(0), 0},
        {"parted", Milliseconds(1), 0},
        {"let_go_hot", Milliseconds(2), 0},
        {"scale_end", Milliseconds(3), 0}};
    EXPECT_EQ(
        rowOf(viewOf(score), "Order of steps").value,
        "plate drawn out while pressed; hot faces pulled apart; and 2 more");
}

TEST(ResultView, ListsEachByItselfWithItsTimeAndWhatIsOffFirst) {
    PracticeScore score;
    score.reactions = {{CueKind::ActNow, Milliseconds(62'000), Milliseconds(840)}};
    score.readings = {
        {"alignment", Milliseconds(5'000), 20, 20.2, 0.5, "mm"},
        {"recheck", Milliseconds(90'000), 20, 18.5, 0.5, "mm"}};
    score.order = {
        {"plate_dragged", Milliseconds(61'000), 0},
        {"scale_end", Milliseconds(70'000), 0},
        {"scale_end", Milliseconds(75'000), 0}};
    score.notice = {{Wrong::Draught, Milliseconds(65'000)}};
    const ResultView view = viewOf(score);
    QStringList off;
    QStringList rest;
    for (const ResultView::Row& row : view.all) {
        EXPECT_FALSE(row.off && row.right) << row.value.toStdString();
        EXPECT_TRUE(row.off || rest.size() + off.size() >= 4) << "what is off stands first";
        (row.off ? off : rest) << row.value;
    }
    EXPECT_EQ(
        off,
        (QStringList{
            "scale again: told 20.0 mm, it was 18.5 mm, at 1:30",
            "plate drawn out while pressed, at 1:01", "turned against the scale's end, at 1:10",
            "turned against the scale's end, at 1:15"}));
    EXPECT_EQ(
        rest, (QStringList{
                  "act now: after 0.8 s, at 1:02",
                  "alignment reading: told 20.0 mm, it was 20.2 mm, at 0:05", "noticed at 1:05"}));
}

TEST(ResultView, ShowsTheJointAtItsWorstPlaceBesideThePlannedOne) {
    const BenchSetup setup = setupFor(kPe10);
    const WeldStory good = welded(setup);
    HandFaults faults;
    faults.leftUm = 1'500;
    faults.alignFor = Milliseconds(45'000);
    const WeldStory bad = welded(setup, faults);
    PracticeScore score;
    score.made = {bad.locked, bad.lifted, bad.lifted, bad.bend};
    score.planned = {good.locked, good.lifted, good.lifted, good.bend};
    const ResultView view = viewOf(score);
    ASSERT_EQ(view.bend.size(), 5U);
    int worst = -1;
    for (int i = 0; i < 5; ++i) {
        const auto at = static_cast<std::size_t>(i);
        EXPECT_EQ(view.bend[at].ductile, bad.bend.stations[at].ductile);
        EXPECT_EQ(view.bend[at].reason.isEmpty(), bad.bend.stations[at].reasons.empty());
        worst = worst < 0 && !bad.bend.stations[at].ductile ? i : worst;
    }
    ASSERT_GE(worst, 0) << "the weld must be bad somewhere";
    EXPECT_EQ(view.made.place, worst);
    EXPECT_EQ(view.planned.place, worst);
    EXPECT_TRUE(view.planned.joined);
    const auto place = static_cast<std::size_t>(worst);
    const StationView& worstStation = bad.lifted.stations[place];
    ASSERT_TRUE(worstStation.joined);
    EXPECT_NEAR(view.made.meltLeftMm, worstStation.joined->leftMm(), 0.0051);
    EXPECT_NEAR(view.planned.meltLeftMm, good.lifted.stations[place].joined->leftMm(), 0.0051);
    EXPECT_GT(view.planned.meltLeftMm, 0);
    EXPECT_EQ(view.made.kinkDeg, bad.lifted.kinkDeg);
    EXPECT_EQ(view.made.beadMm, view.planned.beadMm) << "both in one scale";
    EXPECT_GE(
        view.made.beadMm, std::max({view.made.topMm, view.planned.topMm, view.planned.bottomMm}));
    EXPECT_EQ(view.bendText, "Bend test, front to back: the joint breaks.");
    EXPECT_EQ(
        rowOf(view, "Weld plane at release").value, QString("%1 °C, planned %2 °C")
                                                        .arg(qRound(weldPlaneC(bad.lifted)))
                                                        .arg(qRound(weldPlaneC(good.lifted))));
    EXPECT_EQ(
        rowOf(view, "Melt left").value, QString("%1 mm, planned %2 mm")
                                            .arg(meltLeftMm(bad.lifted), 0, 'f', 1)
                                            .arg(meltLeftMm(good.lifted), 0, 'f', 1));
}

TEST(ResultView, EveryCodeHasWordsOfItsOwn) {
    std::set<QString> words;
    for (const Lapse lapse : allLapses()) {
        const QString word = lapseWord(lapse);
        EXPECT_FALSE(word.isEmpty());
        EXPECT_TRUE(words.insert(word).second) << word.toStdString();
    }
    words.clear();
    for (const Wrong wrong : allWrong()) {
        EXPECT_TRUE(words.insert(wrongWord(wrong)).second);
    }
}

TEST(ResultView, WhatIsOutOfLimitsDidNotGoWellThoughNoMistakeOfTheHandsIsNamed) {
    PracticeScore score;
    score.verdict.word = VerdictWord::OutOfLimits;
    score.made.bend.ductile = true;
    EXPECT_FALSE(viewOf(score).good);
    score.verdict.word = VerdictWord::WithRemarks;
    EXPECT_TRUE(viewOf(score).good);
    score.made.bend.ductile = false;
    EXPECT_FALSE(viewOf(score).good) << "a good bead does not prove a good joint";
}

TEST(ResultView, HistorySaysHowTheHandsWere) {
    PracticeLine line;
    line.verdict = VerdictWord::Incomplete;
    line.reaction = Milliseconds(1'240);
    line.readingErrors = 2;
    line.orderErrors = 1;
    line.noticed = line.toNotice = 1;
    const HistoryWords words = historyWords(line);
    EXPECT_EQ(words.hands, "answered in 1.2 s, readings off: 2, out of order: 1, noticed 1 of 1");
    EXPECT_TRUE(words.how.endsWith("stopped")) << words.how.toStdString();
    EXPECT_TRUE(historyWords(PracticeLine()).hands.isEmpty());
}

// The right answer to a wrong card or a plate that can't be set is to say so and to stop.
TEST(ResultView, WhoFindsWhatIsWrongAndStopsHasDoneTheLesson) {
    PracticeLine line;
    line.lesson = "a";
    line.verdict = VerdictWord::Incomplete;
    line.toNotice = 2;
    line.noticed = 1;
    EXPECT_FALSE(soFar({line}, "a").isDone()) << "half of it";
    line.noticed = 2;
    EXPECT_TRUE(soFar({line}, "a").isDone());
    EXPECT_EQ(soFarText(soFar({line}, "a")), "What was wrong was found, and the weld stopped.");
    line.verdict = VerdictWord::OutOfLimits;
    EXPECT_FALSE(soFar({line}, "a").isDone()) << "noticed, and welded all the same";
    line.toNotice = line.noticed = 0;
    line.verdict = VerdictWord::Incomplete;
    EXPECT_FALSE(soFar({line}, "a").isDone()) << "there was nothing to find";
}

TEST(ResultView, SoFarPrefersAJointThatBends) {
    std::vector<PracticeLine> lines(3);
    lines[0].lesson = lines[1].lesson = "a";
    lines[2].lesson = "b";
    lines[0].verdict = VerdictWord::WithinLimits;
    lines[1].verdict = VerdictWord::WithRemarks;
    lines[1].ductile = true;
    const LessonSoFar so = soFar(lines, "a");
    EXPECT_EQ(so.takes, 2);
    EXPECT_EQ(so.best, VerdictWord::WithRemarks);
    EXPECT_EQ(soFarText(so), "Made 2 times, best: within limits with remarks, bends.");
    EXPECT_EQ(soFarText(soFar(lines, "c")), "Not made yet.");
}

} // namespace
} // namespace seamclock::test
