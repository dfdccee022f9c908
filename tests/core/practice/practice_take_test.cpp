// Run, take and replay: the same weld to the last bit, however it was led and however it is asked.
#include "core/practice/practice_replay.h"
#include "core/practice/practice_run.h"
#include "core/practice/practice_take_codec.h"
#include "tests/support/story.h"
#include "tests/support/trainee.h"

#include <gtest/gtest.h>
#include <map>
#include <random>

namespace seamclock::test {
namespace {

using std::chrono::seconds;

/// Some acts, with the views that the run had every so often.
struct Led {
    PracticeTake take;
    std::map<Milliseconds, BenchView> seen;
};

/// Clamped, plate in, pressed for a while, apart; the frames as given.
Led led(const SetLesson& set, Milliseconds frame) {
    VirtualClock clock = practiceClock();
    const Instant began = clock.now();
    PracticeRun run = PracticeRun::begin(set, clock).value();
    Led out;
    const auto wait = [&](Milliseconds gap) {
        for (Milliseconds left = gap; left.count() > 0; left -= frame) {
            run.advance(std::min(frame, left));
            out.seen.insert_or_assign(run.now(), run.bench().view());
        }
    };
    const auto act = [&](const BenchAct& what, Milliseconds then) {
        const auto done = run.act(what);
        EXPECT_TRUE(done) << done.error().detail;
        wait(then);
    };
    EXPECT_FALSE(run.act(LiftSheet{})); // a try
    act(WipePlate{}, Milliseconds(713));
    for (int sheet = 0; sheet < 2; ++sheet) {
        act(TakeFilmOff{sheet}, Milliseconds(900));
        act(PlaneEdge{sheet}, Milliseconds(900));
    }
    act(SetGap{10'000, 10'000}, Milliseconds(100));
    act(ClampSheet{0, 0, 0, 0}, Milliseconds(100));
    act(SetGap{20'000, 20'000}, Milliseconds(100));
    act(ClampSheet{1, 0, 0, 0}, Milliseconds(100));
    act(TurnWheel{-20'000}, Milliseconds(1000));
    act(TurnWheel{0}, Milliseconds(10));
    act(BringPlateIn{}, Milliseconds(1000));
    act(TurnWheel{10'000}, Milliseconds(3000));
    act(LockWheel{}, Milliseconds(31'000));
    run.notice(Wrong::Draught);
    act(UnlockWheel{}, Milliseconds(1000));
    act(TurnWheel{-15'000}, Milliseconds(1000));
    act(TakePlateOut{}, Milliseconds(2000));
    out.take = run.take("weld:1");
    EXPECT_EQ(clock.now().boot - began.boot, run.now());
    EXPECT_EQ(clock.now().utc - began.utc, run.now());
    return out;
}

const SetLesson& firstLesson() {
    static const SetLesson kSet = setFor(shippedLesson("pe10-first"));
    return kSet;
}

TEST(PracticeRun, FramesOfAnyLengthMakeTheSameTakeAndTheSameBench) {
    const Led fine = led(firstLesson(), Milliseconds(16));
    Led coarse = led(firstLesson(), Milliseconds(4999));
    EXPECT_NE(fine.take.began.bootId, coarse.take.began.bootId); // each practice has its own
    coarse.take.began = fine.take.began;
    EXPECT_EQ(fine.take, coarse.take);
    EXPECT_EQ(fine.seen.rbegin()->second, coarse.seen.rbegin()->second);
}

TEST(PracticeRun, ARefusedActIsATryAndNothingElse) {
    const Led made = led(firstLesson(), Milliseconds(50));
    ASSERT_EQ(made.take.tries.size(), 1U);
    EXPECT_TRUE(std::holds_alternative<LiftSheet>(made.take.tries[0].act));
    ASSERT_EQ(made.take.noticed.size(), 1U);
    EXPECT_EQ(made.take.noticed[0].what, Wrong::Draught);
    EXPECT_EQ(made.take.acts.front().at, Milliseconds(0));
    EXPECT_EQ(made.take.lesson, "pe10-first");
}

TEST(PracticeRun, WithoutTimeNothingMoves) {
    VirtualClock clock = practiceClock();
    const Instant began = clock.now();
    PracticeRun run = PracticeRun::begin(firstLesson(), clock).value();
    run.advance(Milliseconds(-5));
    run.advance(Milliseconds(0));
    EXPECT_EQ(run.now(), Milliseconds(0));
    EXPECT_EQ(clock.now(), began);
}

TEST(PracticeReplay, ShowsAtEveryTimeWhatTheRunShowed) {
    const Led made = led(firstLesson(), Milliseconds(16));
    const auto replay = PracticeReplay::make(firstLesson().setup, made.take);
    ASSERT_TRUE(replay) << replay.error().detail;
    EXPECT_EQ(replay->length(), made.take.length);
    std::mt19937 drawing(7); // there and back again
    for (int i = 0; i < 300; ++i) {
        auto seen = made.seen.begin();
        std::advance(seen, static_cast<long>(drawing() % made.seen.size()));
        // Acts of that very time were done after the look.
        const auto& acts = made.take.acts;
        const bool actThen = std::any_of(
            acts.begin(), acts.end(), [&](const TimedAct& act) { return act.at == seen->first; });
        if (!actThen) {
            ASSERT_EQ(replay->at(seen->first).view(), seen->second) << seen->first.count();
        }
    }
    EXPECT_EQ(replay->at(made.take.length).view(), made.seen.rbegin()->second);
    EXPECT_EQ(replay->at(Milliseconds(1) + made.take.length).now(), made.take.length);
    EXPECT_EQ(replay->at(Milliseconds(-1)).now(), Milliseconds(0));
    EXPECT_FALSE(replay->at(Milliseconds(0)).view().plateDirty);
}

TEST(PracticeReplay, TellsHowFarItIsAndCanBeStopped) {
    const Led made = led(firstLesson(), Milliseconds(100));
    double last = 0;
    EXPECT_TRUE(PracticeReplay::make(firstLesson().setup, made.take, [&](double share) {
        EXPECT_GE(share, last);
        last = share;
        return true;
    }));
    EXPECT_EQ(last, 1);
    const auto stopped =
        PracticeReplay::make(firstLesson().setup, made.take, [](double) { return false; });
    EXPECT_EQ(stopped.error().code, ErrorCode::Refused);
}

TEST(PracticeReplay, ActsOfAnotherBenchAreNamed) {
    PracticeTake take;
    take.length = seconds(10);
    take.acts = {{seconds(2), LiftSheet{}}};
    const auto replay = PracticeReplay::make(firstLesson().setup, take);
    ASSERT_FALSE(replay);
    EXPECT_EQ(replay.error().code, ErrorCode::Malformed);
    EXPECT_EQ(
        replay.error().detail, "act 1 of the take, at 2000 ms, can't be done at this bench: the "
                               "bars are closed: the sheet can't be lifted out");
    take.acts = {{seconds(11), WipePlate{}}};
    EXPECT_EQ(PracticeReplay::make(firstLesson().setup, take).error().code, ErrorCode::Malformed);
}

TEST(PracticeReplay, ATakeWithoutTimeHasABeginning) {
    PracticeTake take;
    take.acts = {{Milliseconds(0), WipePlate{}}};
    const auto replay = PracticeReplay::make(firstLesson().setup, take);
    ASSERT_TRUE(replay) << replay.error().detail;
    EXPECT_EQ(replay->at(Milliseconds(0)).now(), Milliseconds(0));
}

TEST(TakeText, ReadsBackAsTheSameTakeAndTheSameBytes) {
    PracticeTake take = led(firstLesson(), Milliseconds(100)).take;
    take.callTaken = true;
    take.callAt = Milliseconds(5'000);
    take.procedureSha256 = std::string(64, 'a');
    take.benchSha256 = std::string(64, 'b');
    take.acts.push_back({take.length, TouchEdge{1, 400}});
    const std::string text = takeText(take).value();
    const auto read = readTake("take", text);
    ASSERT_TRUE(read) << read.error().detail;
    EXPECT_EQ(*read, take);
    EXPECT_EQ(takeText(*read).value(), text);
    EXPECT_EQ(text.find('\n'), std::string::npos);
}

TEST(TakeText, WhatIsNoTakeIsNamed) {
    PracticeTake take;
    take.lesson = "pe10-first";
    take.weld = "weld:1";
    take.began.bootId = "practice:1";
    take.length = Milliseconds(5000);
    take.acts = {{Milliseconds(3000), WipePlate{}}, {Milliseconds(4000), SetGap{10, 20}}};
    const std::string text = takeText(take).value();
    const auto refusal = [&text](const char* was, const char* now) {
        std::string changed = text;
        changed.replace(changed.find(was), std::string(was).size(), now);
        const auto read = readTake("take", changed);
        return read ? "read" : read.error().detail;
    };
    EXPECT_NE(
        refusal("\"at_ms\":4000", "\"at_ms\":2000")
            .find("2000 is before the 3000 of the one above it"),
        std::string::npos);
    EXPECT_NE(
        refusal("\"at_ms\":4000", "\"at_ms\":6000").find("6000 is outside 0 to 5000"),
        std::string::npos);
    EXPECT_NE(refusal("\"left_um\":10", "\"left_um\":-1").find("-1"), std::string::npos);
    EXPECT_NE(
        refusal("\"left_um\":10", "\"left_um\":10,\"more\":1").find("/acts/1/more"),
        std::string::npos);
    EXPECT_NE(refusal("wipe_plate", "kick_plate").find("kick_plate"), std::string::npos);
    EXPECT_NE(
        refusal("\"call_taken\":false", "\"call_taken\":0").find("call_taken"), std::string::npos);
    EXPECT_NE(refusal("take/1", "take/9").find("seamclock-take/9"), std::string::npos);
    EXPECT_NE(
        refusal("\"length_ms\":5000", "\"length_ms\":86400001").find("86400000"),
        std::string::npos);
}

TEST(Pace, HurriesInAlignmentSoakAndCoolingAndNowhereElse) {
    Story story;
    const auto may = [&story] { return mayHurry(story.weld(), story.now()); };
    EXPECT_FALSE(may()); // preparing
    story.prepare();
    EXPECT_FALSE(may());
    story.then(AlignmentStarted{});
    EXPECT_TRUE(may());
    story.wait(seconds(50)).then(SoakStarted{});
    const Milliseconds soak = story.weld().plan.soak->target;
    EXPECT_TRUE(may());
    story.wait(soak - seconds(10) - Milliseconds(1));
    EXPECT_TRUE(may());
    story.wait(Milliseconds(1)); // get ready
    EXPECT_FALSE(may());
    story.wait(seconds(10)).then(PlateOut{});
    EXPECT_FALSE(may());
    story.wait(seconds(4)).then(FacesMet{});
    EXPECT_FALSE(may());
}

TEST(Pace, WaitsForAReadingThatIsDueAndForTheEndOfCooling) {
    Story story;
    story.buildUp();
    const auto may = [&story] { return mayHurry(story.weld(), story.now()); };
    EXPECT_TRUE(may());
    const WeldPlan::Cooling cooling = *story.weld().plan.cooling;
    ASSERT_FALSE(cooling.rechecks.empty());
    const auto& state = std::get<Cooling>(story.state());
    story.waitUntil(state.rechecks.front().lo);
    EXPECT_FALSE(may());
    story.then(ReadingTaken{ReadingPhase::Recheck, story.weld().plan.scale->joining.setMilli});
    EXPECT_TRUE(may());
    story.waitUntil(std::get<Cooling>(story.state()).due.lo - seconds(30));
    EXPECT_TRUE(may() || cooling.rechecks.size() > 1); // get ready in cooling is no hurry's end
    story.waitUntil(std::get<Cooling>(story.state()).due.lo);
    EXPECT_FALSE(may());
    Instant other = story.now();
    other.bootId = "another";
    EXPECT_FALSE(mayHurry(story.weld(), other));
}

TEST(Pace, AFrameNeverReachesBeyondGetReady) {
    Story story;
    story.align();
    const Milliseconds soak = story.weld().plan.soak->target;
    const Milliseconds frame(16);
    EXPECT_EQ(paced(&story.weld(), story.now(), frame, 30), frame * 30);
    EXPECT_EQ(paced(&story.weld(), story.now(), frame, 1), frame);
    EXPECT_EQ(paced(nullptr, story.now(), frame, 30), frame);
    story.wait(soak - seconds(10) - Milliseconds(100));
    EXPECT_EQ(paced(&story.weld(), story.now(), frame, 30), Milliseconds(100));
    story.wait(Milliseconds(100));
    EXPECT_EQ(paced(&story.weld(), story.now(), frame, 30), frame);
    EXPECT_EQ(practicePaces(), (std::vector<int>{1, 2, 5, 10, 30}));
}

} // namespace
} // namespace seamclock::test
