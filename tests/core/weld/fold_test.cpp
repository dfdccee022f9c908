#include "core/weld/fold.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;
using test::Story;

TEST(Open, RefusesWhatNoWeldCanStartWith) {
    const Weld weld = Story().weld();
    const auto attempt = [&](auto change) {
        Event event = weld.events.front();
        change(event, std::get<WeldOpened>(event.d));
        return open(event).has_value();
    };
    EXPECT_TRUE(attempt([](Event&, WeldOpened&) {}));
    EXPECT_FALSE(attempt([](Event& event, WeldOpened&) { event.n = 2; }));
    EXPECT_FALSE(attempt([](Event& event, WeldOpened&) { event.subject = "seam:1"; }));
    EXPECT_FALSE(attempt([](Event& event, WeldOpened&) { event.subject = "weld:"; }));
    EXPECT_FALSE(attempt([](Event&, WeldOpened& opened) { opened.sheets.pop_back(); }));
    EXPECT_FALSE(attempt([](Event&, WeldOpened& opened) { opened.plan.missing = {"soak_s"}; }));
    EXPECT_FALSE(attempt([](Event&, WeldOpened& opened) { opened.plan.scale.reset(); }));
    EXPECT_FALSE(attempt([](Event&, WeldOpened& opened) { opened.plan.releaseOrder.clear(); }));
    Event other = weld.events.front();
    other.d = SoakStarted{};
    EXPECT_FALSE(open(other));
}

TEST(Apply, RefusesAnEventOutOfTurn) {
    Story story;
    const Event good{story.now(), "person:op-1", story.weld().id(), 2, RemarkMade{"x"}};
    EXPECT_TRUE(apply(story.weld(), good));
    Event wrong = good;
    wrong.n = 3;
    EXPECT_FALSE(apply(story.weld(), wrong));
    wrong = good;
    wrong.subject = "weld:other";
    EXPECT_FALSE(apply(story.weld(), wrong));
    wrong = good;
    wrong.at.boot -= Milliseconds{1};
    EXPECT_FALSE(apply(story.weld(), wrong));
    wrong = good;
    wrong.d = story.weld().events.front().d;
    EXPECT_FALSE(apply(story.weld(), wrong));
}

TEST(Fold, TakesTheEventsOverOnlyWhereTheyMakeAWeld) {
    Story story;
    story.align();
    const auto events = story.weld().events;
    auto given = events;
    const auto weld = foldTaking(given);
    ASSERT_TRUE(weld.has_value()) << weld.error().detail;
    EXPECT_EQ(*weld, story.weld());
    EXPECT_EQ(*weld, fold(events).value());

    for (const WeldDetail& wrong : {WeldDetail(FacesMet{}), WeldDetail(StepTakenBack{1})}) {
        auto bad = events;
        bad.back().d = wrong;
        const auto before = bad;
        EXPECT_FALSE(foldTaking(bad).has_value());
        EXPECT_EQ(bad, before);
    }
}

TEST(TakeBack, RestoresTheStateAndItsDeadlines) {
    Story story;
    story.align();
    const State soaking = story.state();
    story.wait(seconds{30}).then(PlateOut{});
    const auto target = static_cast<std::int64_t>(story.weld().events.size());
    story.wait(seconds{3}).then(StepTakenBack{target});
    EXPECT_EQ(story.state(), soaking);
    EXPECT_EQ(story.weld().events.size(), static_cast<std::size_t>(target) + 1);
}

TEST(TakeBack, IsPossibleForTenSecondsAndNotAMillisecondLonger) {
    for (const auto& [passed, possible] : std::vector<std::pair<Milliseconds, bool>>{
             {Milliseconds{0}, true}, {seconds{10}, true}, {Milliseconds{10'001}, false}}) {
        Story story;
        story.align();
        const auto target = static_cast<std::int64_t>(story.weld().events.size());
        story.wait(passed);
        EXPECT_EQ(story.attempt(StepTakenBack{target}).has_value(), possible) << passed.count();
    }
}

TEST(TakeBack, ReachesOnlyTheLastStepThatCanBeTakenBack) {
    Story story;
    story.align();
    const auto soak = static_cast<std::int64_t>(story.weld().events.size());
    EXPECT_FALSE(story.attempt(StepTakenBack{soak - 1}));
    EXPECT_FALSE(story.attempt(StepTakenBack{0}));
    EXPECT_FALSE(story.attempt(StepTakenBack{99}));
    story.then(RemarkMade{"not a step"});
    EXPECT_TRUE(story.attempt(StepTakenBack{soak}));
    story.then(StepTakenBack{soak});
    EXPECT_FALSE(story.attempt(StepTakenBack{soak})) << "it is gone already";
    EXPECT_FALSE(story.attempt(StepTakenBack{soak + 2})) << "a take-back can't be taken back";
    EXPECT_EQ(lastTakeable(story.weld()), soak - 1);
}

TEST(TakeBack, IsRefusedAcrossAReboot) {
    Story story;
    story.buildUp();
    const auto target = static_cast<std::int64_t>(story.weld().events.size());
    story.reboot(seconds{5});
    EXPECT_FALSE(story.attempt(StepTakenBack{target}));
}

TEST(TakeBack, IsRefusedWhereALaterFactRestsOnTheStep) {
    Story story;
    story.release().then(Graded{"EN 16296", "B"});
    const auto target = static_cast<std::int64_t>(story.weld().events.size()) - 1;
    EXPECT_FALSE(story.attempt(StepTakenBack{target}));
}

TEST(TakeBack, IsRefusedOnceTheWeldIsOver) {
    Story story;
    story.soak();
    const auto target = static_cast<std::int64_t>(story.weld().events.size());
    story.then(WeldAborted{"cut_out", ""});
    EXPECT_FALSE(story.attempt(StepTakenBack{target}));
}

TEST(Backdating, MovesTheLastStepAndItsDeadlines) {
    Story story;
    story.align();
    const WeldTime due = std::get<Soaking>(story.state()).due;
    const auto target = static_cast<std::int64_t>(story.weld().events.size());
    // The bead was seen one second before the soak began; a step can't come before the one it
    // follows.
    story.wait(seconds{2}).then(StepBackdated{target, Milliseconds{900}});
    EXPECT_EQ(std::get<Soaking>(story.state()).due, due + Milliseconds{-900});
    EXPECT_FALSE(story.attempt(StepBackdated{target, Milliseconds{101}}));
    EXPECT_TRUE(story.attempt(StepBackdated{target, Milliseconds{100}}));
}

TEST(Backdating, ReachesBackToTheStepBeforeAndNotBeyondIt) {
    Story story;
    story.align().wait(seconds{4}).then(PlateOut{});
    const auto target = static_cast<std::int64_t>(story.weld().events.size());
    EXPECT_TRUE(story.attempt(StepBackdated{target, seconds{4}}));
    EXPECT_FALSE(story.attempt(StepBackdated{target, Milliseconds{4'001}}));
}

TEST(Backdating, IsFourSecondsAgoAtMostTenInAll) {
    Story story;
    story.align().wait(seconds{70}).then(PlateOut{});
    const auto target = static_cast<std::int64_t>(story.weld().events.size());
    for (const auto& [earlier, possible] : std::vector<std::pair<Milliseconds, bool>>{
             {Milliseconds{-1}, false},
             {Milliseconds{0}, false},
             {Milliseconds{1}, true},
             {seconds{10}, true},
             {Milliseconds{10'001}, false}}) {
        EXPECT_EQ(story.attempt(StepBackdated{target, earlier}).has_value(), possible)
            << earlier.count();
    }
    story.then(StepBackdated{target, seconds{6}});
    EXPECT_TRUE(story.attempt(StepBackdated{target, seconds{4}}));
    EXPECT_FALSE(story.attempt(StepBackdated{target, Milliseconds{4'001}}));
    story.wait(Milliseconds{10'001});
    EXPECT_FALSE(story.attempt(StepBackdated{target, seconds{1}}));
}

TEST(Bridge, IsNeededAfterARebootAndOnlyThen) {
    Story story;
    story.buildUp();
    EXPECT_FALSE(
        story.attempt(ClockBridged{"boot-1", seconds{0}, seconds{0}, BridgeBasis::Unconfirmed}));
    story.reboot(minutes{3});
    const auto refused = story.attempt(ReadingTaken{ReadingPhase::Recheck, 15'000});
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.error().detail.find("bridged"), std::string::npos);
    story.then(ClockBridged{"boot-1", minutes{3}, minutes{3}, BridgeBasis::Confirmed});
    story.then(ReadingTaken{ReadingPhase::Recheck, 15'000});
    EXPECT_EQ(
        story.time() - std::get<Cooling>(story.state()).from, (WeldTime{minutes{3}, minutes{3}}));
}

TEST(Bridge, HasAnIntervalOfTheContractsForm) {
    struct Row {
        ClockBridged bridge;
        bool fits;
    };
    const std::string from = "boot-1";
    const Milliseconds none{0};
    for (const Row& row : std::vector<Row>{
             {{from, hours{12}, hours{12}, BridgeBasis::Confirmed}, true},
             {{from, none, none, BridgeBasis::Confirmed}, true},
             {{from, hours{12} + Milliseconds{1}, hours{12} + Milliseconds{1},
               BridgeBasis::Confirmed},
              false},
             {{from, seconds{1}, seconds{2}, BridgeBasis::Confirmed}, false},
             {{from, none, hours{900}, BridgeBasis::Unconfirmed}, true},
             {{from, seconds{1}, seconds{2}, BridgeBasis::Unconfirmed}, false},
             {{from, none, seconds{-1}, BridgeBasis::Unconfirmed}, false},
             {{from, none, none, BridgeBasis::Backwards}, true},
             {{"boot-0", none, seconds{2}, BridgeBasis::Unconfirmed}, false}}) {
        Story story;
        story.buildUp().reboot(seconds{2});
        EXPECT_EQ(story.attempt(row.bridge).has_value(), row.fits)
            << row.bridge.from << " " << row.bridge.lo.count() << " " << row.bridge.hi.count();
    }
}

TEST(Bridge, AddsUpOverSeveralReboots) {
    Story story;
    story.buildUp().wait(seconds{10}).then(RemarkMade{"a"}).reboot(seconds{20}, "boot-2");
    story.then(ClockBridged{"boot-1", seconds{0}, seconds{20}, BridgeBasis::Unconfirmed});
    story.wait(seconds{5}).then(RemarkMade{"b"}).reboot(seconds{7}, "boot-3");
    story.then(ClockBridged{"boot-2", seconds{7}, seconds{7}, BridgeBasis::Confirmed});
    EXPECT_EQ(
        story.time() - std::get<Cooling>(story.state()).from, (WeldTime{seconds{22}, seconds{42}}));
}

TEST(Correction, IsTakenOnlyAfterTheEndAndNeverChangesTheState) {
    Story story;
    story.close();
    const State before = story.state();
    std::int64_t reading = 0;
    for (const Event& event : story.weld().events) {
        const auto* taken = std::get_if<ReadingTaken>(&event.d);
        if (taken != nullptr && taken->phase == ReadingPhase::Joining) {
            reading = event.n;
        }
    }
    const ValueCorrected good{reading, "reading_milli", "15500", "15000", "misread"};
    story.then(good);
    EXPECT_EQ(story.state(), before);
    for (const Retained& one : retained(story.weld().events)) {
        if (one.n == reading) {
            EXPECT_EQ(std::get<ReadingTaken>(one.d).readingMilli, 15'000);
        }
    }
    EXPECT_FALSE(story.attempt(good)) << "it is no longer 15500";
    EXPECT_FALSE(story.attempt(ValueCorrected{reading, "reading_milli", "15000", "fifteen", ""}));
    EXPECT_FALSE(story.attempt(ValueCorrected{reading, "at", "15000", "1", ""}));
    EXPECT_FALSE(story.attempt(ValueCorrected{400, "reading_milli", "15000", "1", ""}));
    EXPECT_TRUE(
        story.attempt(ValueCorrected{1, "sheets.1.batch", "batch 12", "batch 21", "swapped"}));
    Story early;
    early.buildUp();
    EXPECT_FALSE(early.attempt(ValueCorrected{reading, "reading_milli", "15500", "15000", ""}));
}

TEST(Closed, TakesWhatPeopleSayOfItOnALaterBoot) {
    Story story;
    story.close().reboot(hours{20});
    EXPECT_TRUE(story.attempt(Decided{Decision::Accept, "looked at it again"}));
    EXPECT_TRUE(story.attempt(SignedOff{"foreman"}));
    EXPECT_TRUE(story.attempt(RemarkMade{"photo on paper"}));
}

TEST(Fold, NamesTheEventAtWhichAStoredLogDoesNotFit) {
    const Weld weld = Story().close().weld();
    ASSERT_TRUE(fold(weld.events));
    EXPECT_EQ(*fold(weld.events), weld);
    EXPECT_FALSE(fold({}));
    for (std::size_t gone = 1; gone + 1 < weld.events.size(); ++gone) {
        std::vector<Event> events = weld.events;
        events.erase(events.begin() + static_cast<std::ptrdiff_t>(gone));
        const auto damaged = fold(events);
        ASSERT_FALSE(damaged);
        EXPECT_EQ(damaged.error().code, ErrorCode::Damaged);
        EXPECT_NE(damaged.error().detail.find("n " + std::to_string(gone + 1)), std::string::npos)
            << damaged.error().detail;
    }
}

TEST(Fold, RefusesAStoredInstantThatNoBridgeLeadsTo) {
    const Weld weld = Story().buildUp().wait(seconds{5}).then(RemarkMade{"a"}).weld();
    std::vector<Event> other = weld.events;
    other.back().at.bootId = "boot-2";
    std::vector<Event> before = weld.events;
    before.back().at.boot -= seconds{6};
    for (const auto& [events, words] :
         {std::pair{other, "must be bridged"}, std::pair{before, "before the last event's"}}) {
        const auto damaged = fold(events);
        ASSERT_FALSE(damaged);
        EXPECT_EQ(damaged.error().code, ErrorCode::Damaged);
        EXPECT_NE(damaged.error().detail.find(words), std::string::npos) << damaged.error().detail;
        const std::string n = "n " + std::to_string(events.size());
        EXPECT_NE(damaged.error().detail.find(n), std::string::npos) << damaged.error().detail;
    }
}

} // namespace
} // namespace seamclock
