// Whole practice welds by presses on the screens, on a clock that only the test moves: that a weld
// without a mistake is within limits and bends, that mistakes of the hand come out in verdict and
// bend test, and what is kept of it.
#include "app/practice/practice_result.h"
#include "core/log/log_reader.h"
#include "tests/app/practice/practice_shop.h"

#include <gtest/gtest.h>
#include <map>

namespace seamclock::test {
namespace {

bool has(const PracticeScore& score, Lapse lapse) {
    return std::any_of(
        score.lapses.begin(), score.lapses.end(),
        [lapse](const LapseFinding& finding) { return finding.lapse == lapse; });
}

TEST(PracticeWalk, AWeldWithoutAMistakeIsWithinLimitsAndBends) {
    Practising shop;
    std::map<QString, BenchPageView> views;
    std::map<QString, PracticePage> pages;
    const auto done = shop.walk().weld("pe10-first", {}, [&](const QString& name) {
        views[name] = shop.window().benchPage()->view();
        pages[name] = shop.window().page();
    });
    ASSERT_TRUE(done) << done.error().detail;
    const PracticeResult* result = shop.window().result();
    ASSERT_NE(result, nullptr);
    const PracticeScore& score = result->score;
    EXPECT_TRUE(
        score.verdict.word == VerdictWord::WithinLimits ||
        score.verdict.word == VerdictWord::WithRemarks)
        << shop.window().resultPage()->view().reason.toStdString();
    EXPECT_EQ(score.inLimits, score.judged);
    EXPECT_TRUE(score.made.bend.ductile);
    EXPECT_TRUE(score.lapses.empty())
        << shop.window().resultPage()->view().lapses.front().why.toStdString();

    // The operator's own screen stood beside the bench all the while.
    EXPECT_EQ(pages["act-now"], PracticePage::Bench);
    EXPECT_EQ(views["act-now"].weld.lamp.word, "Now");
    EXPECT_EQ(views["changeover"].weld.step.view.text, "Faces together");
    EXPECT_LT(views["changeover"].bench.plateInside, 1);
    EXPECT_TRUE(views["build-up"].bench.scale.follow);
    EXPECT_TRUE(views["build-up"].bench.joined);
    EXPECT_EQ(views["cooling"].bench.wheel, WheelHold::Locked);
    EXPECT_TRUE(views["released"].bench.lifted);
    EXPECT_EQ(views["soak"].weld.cell.letter, "P");

    // It is kept: a take whose replay is this weld, and a line of the history.
    const auto lines = shop.room().history();
    ASSERT_TRUE(lines) << lines.error().detail;
    ASSERT_EQ(lines->size(), 1U);
    EXPECT_EQ(lines->front().by, "person:ilva");
    EXPECT_EQ(lines->front().lesson, "pe10-first");
    EXPECT_TRUE(lines->front().ductile);
    const auto kept = shop.room().kept(lines->front());
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->take, result->replay.take());
    const LessonSoFar so = soFar(*lines, "pe10-first");
    EXPECT_EQ(so.takes, 1);
    EXPECT_TRUE(so.ductile);
}

TEST(PracticeWalk, SoakUnderPressureAndASlowChangeoverComeOutInTheBendTest) {
    Practising shop;
    WalkMistakes mistakes;
    mistakes.pressedSoak = true;
    mistakes.changeover = Milliseconds(12'000);
    const auto done = shop.walk().weld("pe10-first", mistakes);
    ASSERT_TRUE(done) << done.error().detail;
    const PracticeScore& score = shop.window().result()->score;
    EXPECT_EQ(score.verdict.word, VerdictWord::OutOfLimits);
    EXPECT_FALSE(score.made.bend.ductile);
    EXPECT_TRUE(has(score, Lapse::SoakPressed));
    EXPECT_TRUE(has(score, Lapse::SlowChangeover));
    EXPECT_TRUE(score.planned.bend.ductile) << "beside it stands what it ought to be";
}

TEST(PracticeWalk, MovingOneClampChangesTheBeadAndWhatIsSaid) {
    Practising shop;
    WalkMistakes mistakes;
    mistakes.offParallel = true;
    double front = 0;
    double back = 0;
    ASSERT_TRUE(shop.walk().toBench("pe10-first"));
    ASSERT_TRUE(shop.walk().prepare(mistakes));
    const auto done = shop.walk().align(mistakes, [&](const QString& name) {
        if (name == "align") {
            const BenchDrawing& drawing = shop.window().benchPage()->view().bench;
            front = drawing.places.front().topMm;
            back = drawing.places.back().topMm;
        }
    });
    ASSERT_TRUE(done) << done.error().detail;
    EXPECT_GT(front, back + 0.2);
}

TEST(PracticeWalk, TheLessonOfEdgesThatLeanIsWithinLimitsForWhoShims) {
    Practising shop;
    QStringList panel;
    const auto done = shop.walk().weld("pe10-parallel", {});
    ASSERT_TRUE(done) << done.error().detail;
    const PracticeScore& score = shop.window().result()->score;
    EXPECT_TRUE(
        score.verdict.word == VerdictWord::WithinLimits ||
        score.verdict.word == VerdictWord::WithRemarks);
    EXPECT_TRUE(score.made.bend.ductile);
    EXPECT_TRUE(score.order.empty()) << score.order.front().code;
    ASSERT_EQ(score.notice.size(), 1U);
    EXPECT_TRUE(score.notice[0].at) << "who shims it has seen it";
    const auto& acts = shop.window().result()->replay.take().acts;
    EXPECT_EQ(
        std::count_if(
            acts.begin(), acts.end(),
            [](const TimedAct& one) { return std::holds_alternative<ShimSheet>(one.act); }),
        6)
        << "1.2 mm in steps of 0.2";
}

TEST(PracticeWalk, ALeanThatIsLeftTakesTheLowerBeadAndIsSaid) {
    Practising shop;
    WalkMistakes mistakes;
    mistakes.leavesLean = true;
    mistakes.topBeadOnly = true;
    const auto done = shop.walk().weld("pe10-parallel", mistakes);
    ASSERT_TRUE(done) << done.error().detail;
    const PracticeScore& score = shop.window().result()->score;
    EXPECT_TRUE(has(score, Lapse::TopBeadOnly));
    ASSERT_FALSE(score.order.empty());
    EXPECT_EQ(score.order.front().code, "told_not_done:edges_meet");
    EXPECT_FALSE(score.notice[0].at);
    const StationView& middle = score.made.end.stations[2];
    EXPECT_LT(middle.beadBottomMm, middle.beadTopMm - 0.1);
    // 1.2 mm is less than both edges lose in all, so it bends; a thicker wedge would not.
    EXPECT_EQ(middle.behindMm, 0);
}

TEST(PracticeWalk, AnEndThatWasPushedTooFarIsSetRightByTouchAndTheBeadsAreEven) {
    Practising shop;
    WalkMistakes mistakes;
    mistakes.offParallel = true;
    ASSERT_TRUE(shop.walk().toBench("pe10-first"));
    ASSERT_TRUE(shop.walk().prepare(mistakes));
    const auto off = [&] {
        const BenchView seen = shop.room().run().bench().view();
        return seen.stations.back().gapMm - seen.stations.front().gapMm;
    };
    ASSERT_GT(off(), 0.5);
    ASSERT_TRUE(shop.walk().control("Clamps"));
    ASSERT_TRUE(shop.walk().control("Shim"));
    for (int presses = 0; presses < 30 && off() > 0.1; ++presses) {
        ASSERT_TRUE(shop.walk().control("Front −"));
    }
    EXPECT_LT(std::abs(off()), 0.1);
    ASSERT_TRUE(shop.walk().control("Close"));
    ASSERT_TRUE(shop.walk().control("Close"));
    shop.window().refresh();
    double front = 0;
    double back = 0;
    ASSERT_TRUE(shop.walk().align({}, [&](const QString& name) {
        if (name == "align") {
            const BenchDrawing& drawing = shop.window().benchPage()->view().bench;
            front = drawing.places.front().topMm;
            back = drawing.places.back().topMm;
        }
    }));
    EXPECT_GT(front, 0.5);
    EXPECT_NEAR(front, back, 0.1);
}

TEST(PracticeWalk, ACallCoversTheBenchUntilItIsOver) {
    Practising shop;
    WalkMistakes mistakes;
    mistakes.takesCall = true;
    bool covered = false;
    bool lamp = true;
    const auto done = shop.walk().weld("pe10-phone", mistakes, [&](const QString& name) {
        if (name == "on-the-phone") {
            covered = shop.window().page() == PracticePage::Call;
            lamp = shop.window().benchPage()->isVisible();
        }
    });
    ASSERT_TRUE(done) << done.error().detail;
    EXPECT_TRUE(covered);
    EXPECT_FALSE(lamp) << "who takes the call sees no lamp";
    EXPECT_TRUE(shop.window().result()->replay.take().callTaken);
    const auto& order = shop.window().result()->score.order;
    const auto away = std::find_if(
        order.begin(), order.end(), [](const OrderError& one) { return one.code == "call_taken"; });
    ASSERT_NE(away, order.end());
    EXPECT_EQ(away->size, 75) << "as the lesson has it";
    EXPECT_EQ(away->at, *shop.window().result()->replay.take().callAt);
}

TEST(PracticeWalk, WhoLeavesTheLessonInMidWeldIsToldHowItWasAndFindsItAgain) {
    Practising shop;
    ASSERT_TRUE(shop.walk().toBench("pe10-first"));
    ASSERT_TRUE(shop.walk().prepare({}));
    ASSERT_TRUE(shop.walk().align({}));
    const std::size_t acts = shop.room().take().acts.size();
    ASSERT_GT(acts, 0U);
    emit shop.window().strip()->linePressed();
    const int last = static_cast<int>(shop.window().choicePage()->view().choices.size()) - 1;
    emit shop.window().choicePage()->chosen(last);
    ASSERT_TRUE(shop.walk().waitForResult());
    ASSERT_NE(shop.window().result(), nullptr);
    EXPECT_EQ(shop.window().result()->score.verdict.word, VerdictWord::Incomplete);
    EXPECT_EQ(shop.window().result()->replay.take().acts.size(), acts);
    const auto lines = shop.room().history();
    ASSERT_TRUE(lines) << lines.error().detail;
    ASSERT_EQ(lines->size(), 1U) << "with its take, not as broken off besides";
    EXPECT_FALSE(lines->front().brokenOff);
    EXPECT_TRUE(shop.room().kept(lines->front()));
}

TEST(PracticeWalk, WhoLeavesTheLessonBeforeAnythingWasDoneIsAtTheLessons) {
    Practising shop;
    ASSERT_TRUE(shop.walk().toBench("pe10-first"));
    emit shop.window().strip()->linePressed();
    const int last = static_cast<int>(shop.window().choicePage()->view().choices.size()) - 1;
    emit shop.window().choicePage()->chosen(last);
    EXPECT_EQ(shop.window().page(), PracticePage::Lessons);
    const auto lines = shop.room().history();
    ASSERT_TRUE(lines) << lines.error().detail;
    EXPECT_TRUE(lines->empty()) << "nothing was made";
}

TEST(PracticeWalk, WhatWasOnlySaidIsScoredTooWhenTheLessonIsLeft) {
    Practising shop;
    ASSERT_TRUE(shop.walk().toBench("pe10-wrong-row"));
    EXPECT_FALSE(shop.room().isTouched());
    shop.room().run().notice(Wrong::WrongRow);
    EXPECT_TRUE(shop.room().isTouched());
    emit shop.window().strip()->linePressed();
    const int last = static_cast<int>(shop.window().choicePage()->view().choices.size()) - 1;
    emit shop.window().choicePage()->chosen(last);
    EXPECT_EQ(shop.window().page(), PracticePage::Working);
    EXPECT_FALSE(shop.window().close()) << "what is worked out is kept first";
    ASSERT_TRUE(shop.walk().waitForResult());
    const auto lines = shop.room().history();
    ASSERT_TRUE(lines) << lines.error().detail;
    ASSERT_EQ(lines->size(), 1U);
    EXPECT_EQ(lines->front().noticed, 1);
    EXPECT_EQ(soFar(*lines, "pe10-wrong-row").isDone(), true);
}

TEST(PracticeWalk, AColdPlateWarmsUpFasterWhereTheTraineeSaysSoAndHandsStayInTrueTime) {
    Practising shop;
    ASSERT_TRUE(shop.walk().toBench("pe10-cold-start"));
    const auto now = [&shop] { return shop.room().run().now(); };
    const auto seen = [&shop] { return shop.room().run().bench().view(); };
    shop.window().setPace(30);
    const Milliseconds before = now();
    shop.walk().go(Milliseconds(60'000));
    EXPECT_NEAR(static_cast<double>((now() - before).count()), 30 * 60'000, 5'000)
        << "the plate is cold";
    EXPECT_GT(seen().plateShownC, 200);
    // A panel is open: the hands are busy, however cold the plate is.
    ASSERT_TRUE(shop.walk().control("Clamps"));
    const Milliseconds busy = now();
    shop.walk().go(Milliseconds(2'000));
    EXPECT_EQ((now() - busy).count(), 2'000);
    ASSERT_TRUE(shop.walk().control("Close"));
    for (int minutes = 0; minutes < 10 && shop.room().mayHurryNow(); ++minutes) {
        shop.walk().go(Milliseconds(60'000));
    }
    EXPECT_NEAR(seen().plateShownC, seen().plateTargetC, 0.6);
    const Milliseconds warm = now();
    shop.walk().go(Milliseconds(10'000));
    EXPECT_NEAR(static_cast<double>((now() - warm).count()), 10'000, 100) << "true time again";
    ASSERT_TRUE(shop.walk().several({"Plate", "Set plate", "+5 °C", "Close", "Close"}));
    EXPECT_TRUE(shop.room().mayHurryNow()) << "on its way again";
    ASSERT_TRUE(shop.walk().several({"Plate", "Set plate", "−5 °C", "Close", "Close"}));
    EXPECT_FALSE(shop.room().mayHurryNow());
    EXPECT_TRUE(std::holds_alternative<SetPlate>(shop.room().take().acts.back().act));
}

TEST(PracticeWalk, WhatIsNoticedIsKeptWithItsTime) {
    Practising shop;
    WalkMistakes mistakes;
    mistakes.says = Wrong::Draught;
    ASSERT_TRUE(shop.walk().toBench("pe10-first"));
    ASSERT_TRUE(shop.walk().prepare(mistakes));
    const PracticeTake take = shop.room().take();
    ASSERT_EQ(take.noticed.size(), 1U);
    EXPECT_EQ(take.noticed.front().what, Wrong::Draught);
    EXPECT_GT(take.noticed.front().at.count(), 0);
}

TEST(PracticeWalk, AHandOnTheEdgeIsAnActAtThatPlace) {
    Practising shop;
    WalkMistakes mistakes;
    mistakes.touchesEdge = true;
    ASSERT_TRUE(shop.walk().toBench("pe10-first"));
    ASSERT_TRUE(shop.walk().prepare(mistakes));
    const PracticeTake take = shop.room().take();
    const auto* touch = std::get_if<TouchEdge>(&take.acts.back().act);
    ASSERT_NE(touch, nullptr);
    EXPECT_EQ(touch->sheet, 1);
    EXPECT_EQ(touch->permille, 500);
}

TEST(PracticeWalk, AReplayShowsTheBenchAndTheLampAsTheyStood) {
    Practising shop;
    Milliseconds soakAt{0};
    BenchPageView then;
    const auto done = shop.walk().weld("pe10-first", {}, [&](const QString& name) {
        if (name == "soak") {
            soakAt = shop.room().run().now();
            then = shop.window().benchPage()->view();
        }
    });
    ASSERT_TRUE(done) << done.error().detail;
    const PracticeResult& result = *shop.window().result();
    const BenchPageView again = replayView(result, {soakAt, then.bench.place, false, {}});
    EXPECT_EQ(again.bench.heat, then.bench.heat) << "to the last bit";
    EXPECT_EQ(again.bench.places, then.bench.places);
    EXPECT_EQ(again.bench.reading, then.bench.reading);
    EXPECT_EQ(again.weld.lamp.word, then.weld.lamp.word);
    EXPECT_EQ(again.weld.lamp.number, then.weld.lamp.number);
    EXPECT_TRUE(again.replay);
    QStringList events;
    for (const TimeSliderView::Event& event : again.time.events) {
        events << event.name;
        EXPECT_GE(event.share, 0);
        EXPECT_LE(event.share, 1);
    }
    EXPECT_EQ(events.mid(0, 5), (QStringList{"align", "soak", "plate out", "faces", "lock"}));
}

TEST(PracticeWalk, ReplayGoesBySecondsAndStopsAtItsEnds) {
    Practising shop;
    ASSERT_TRUE(shop.walk().weld("pe10-first", {}));
    emit shop.window().resultPage()->slotPressed(SlotPlace::Stop);
    ASSERT_EQ(shop.window().page(), PracticePage::Replay);
    BenchPage& page = *shop.window().benchPage();
    emit page.control(0)->pressed();
    EXPECT_EQ(page.view().time.now, "0:00");
    emit page.control(4)->pressed();
    emit page.control(3)->pressed();
    EXPECT_EQ(page.view().time.now, "0:11");
    emit page.control(2)->pressed();
    shop.walk().go(Milliseconds(4'000));
    EXPECT_EQ(page.view().time.now, "0:15") << "it plays in true time";
    emit page.timeChosen(1);
    EXPECT_EQ(page.view().time.share, 1);
    emit page.control(5)->pressed();
    EXPECT_EQ(shop.window().page(), PracticePage::Result);
}

TEST(PracticeWalk, TimeHurriesOnlyWhereNothingIsUrgent) {
    Practising shop;
    ASSERT_TRUE(shop.walk().toBench("pe10-first"));
    shop.window().setPace(30);
    Milliseconds before = shop.room().run().now();
    shop.walk().go(Milliseconds(2'000));
    EXPECT_EQ((shop.room().run().now() - before).count(), 2'000) << "hands are busy in preparation";
    shop.window().setPace(1);
    ASSERT_TRUE(shop.walk().prepare({}));
    ASSERT_TRUE(shop.walk().align({}));
    shop.window().setPace(30);
    before = shop.room().run().now();
    shop.walk().go(Milliseconds(1'000));
    EXPECT_EQ((shop.room().run().now() - before).count(), 30'000) << "soak";
    // From get ready on, true time: to the millisecond, whatever the frames are.
    const auto left = [&shop] {
        const auto& state = std::get<Soaking>(shop.room().weld()->state);
        return state.due.lo - weldTimeAt(*shop.room().weld(), shop.room().now())->lo;
    };
    for (int i = 0; i < 200 && left() > Milliseconds(10'000); ++i) {
        shop.walk().go(Milliseconds(200));
    }
    EXPECT_EQ(left().count(), 10'000) << "the hurry ends where get ready begins";
    before = shop.room().run().now();
    shop.walk().go(Milliseconds(5'000));
    EXPECT_EQ((shop.room().run().now() - before).count(), 5'000);
}

TEST(PracticeWalk, ALessonThatIsLeftIsStoppedInItsLog) {
    Practising shop;
    ASSERT_TRUE(shop.walk().toBench("pe10-first"));
    const std::string weld = shop.room().weld()->id();
    emit shop.window().strip()->linePressed();
    ASSERT_EQ(shop.window().page(), PracticePage::Side);
    const auto& choices = shop.window().choicePage()->view().choices;
    emit shop.window().choicePage()->chosen(static_cast<int>(choices.size()) - 1);
    EXPECT_EQ(shop.window().page(), PracticePage::Lessons);
    EXPECT_FALSE(shop.room().runs());
    const auto events = shop.room().eventsOf(weld);
    ASSERT_TRUE(events);
    EXPECT_TRUE(std::holds_alternative<WeldAborted>(events->back().d));
}

TEST(PracticeWalk, AnUnknownLessonIsNamedWithThoseThatThereAre) {
    Practising shop;
    const auto opened = shop.window().openLesson("pe99");
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().code, ErrorCode::Missing);
    EXPECT_NE(opened.error().detail.find("\"pe99\""), std::string::npos);
    EXPECT_NE(opened.error().detail.find("pe10-first"), std::string::npos);
}

} // namespace
} // namespace seamclock::test
