// What becomes of a weld over a power cut: the whole table of state, word and wall clock. The
// rules, fixed before the code was: "a bridge over a reboot is an interval … lo = 0, hi = max(Δutc,
// 0)"; confirmed 0 to 12 h; "only cooling goes on after a reboot; before the lock the default is
// abort".
#include "core/session/after_cut.h"

#include "core/weld/cues.h"
#include "tests/support/story.h"

#include <functional>
#include <gtest/gtest.h>

using namespace seamclock;
using namespace seamclock::test;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

namespace {

struct Stage {
    const char* name;
    std::function<void(Story&)> tell;
    bool goesOn; // by itself, after a reboot
};

std::vector<Stage> stages() {
    return {
        {"preparing", [](Story& s) { s.wait(seconds(5)); }, false},
        {"aligning", [](Story& s) { s.prepare().then(AlignmentStarted{}); }, false},
        {"soaking", [](Story& s) { s.align().wait(seconds(10)); }, false},
        {"changing_over", [](Story& s) { s.soak(); }, false},
        {"building_up", [](Story& s) { s.changeOver(); }, false},
        {"cooling", [](Story& s) { s.buildUp().wait(seconds(30)).then(RemarkMade{"warm"}); }, true},
        {"releasing",
         [](Story& s) {
             s.cool();
             s.then(ReleaseStep{s.weld().plan.releaseOrder.front()});
         },
         true},
        {"inspecting", [](Story& s) { s.release(); }, true},
    };
}

Instant later(const Weld& weld, Milliseconds deltaUtc, const std::string& bootId) {
    Instant at = weld.events.back().at;
    at.boot = Milliseconds(15'000);
    at.bootId = bootId;
    at.utc += deltaUtc;
    return at;
}

Weld after(const Weld& weld, const std::vector<WeldDetail>& said, const Instant& at) {
    Weld next = weld;
    for (const WeldDetail& detail : said) {
        const auto stepped = accept(next, Intent{{}, "person:ilva", detail}, at);
        if (!stepped) {
            ADD_FAILURE() << stepped.error().detail;
            return next;
        }
        next = *stepped;
    }
    return next;
}

} // namespace

TEST(AfterACut, OnTheSameBootNothingNeedsToBeSaid) {
    for (const Stage& stage : stages()) {
        Story story;
        stage.tell(story);
        ASSERT_EQ(phaseName(story.state()), stage.name);
        Instant at = story.weld().events.back().at;
        at.boot += minutes(3);
        EXPECT_EQ(afterCut(story.weld(), at), AfterCut::GoesOn);
        for (const RebootWord word :
             {RebootWord::None, RebootWord::GoOnConfirmed, RebootWord::GoOnUnconfirmed}) {
            const auto said = settle(story.weld(), at, word);
            ASSERT_TRUE(said);
            EXPECT_TRUE(said->empty()) << stage.name;
        }
    }
}

TEST(AfterACut, EveryStateWordAndWallClockGivesWhatTheRulesSay) {
    struct Passed {
        Milliseconds deltaUtc;
        bool canBeConfirmed;
        const char* value = ""; // in the sentence that refuses
    };
    const std::vector<Passed> cuts{
        {hours(-1), false, "of -3600.000 s"},
        {Milliseconds(-1), false, "of -0.001 s"},
        {Milliseconds(0), true},
        {minutes(5), true},
        {hours(12), true},
        {hours(12) + Milliseconds(1), false, "of 43200.001 s"},
        {hours(24 * 400), false, "of 34560000.000 s"}};
    for (const Stage& stage : stages()) {
        Story story;
        stage.tell(story);
        const Weld& weld = story.weld();
        for (const Passed& cut : cuts) {
            const Instant at = later(weld, cut.deltaUtc, "boot-2");
            const std::string row = std::string(stage.name) + ", wall clock " +
                                    std::to_string(cut.deltaUtc.count()) + " ms on";
            EXPECT_EQ(
                afterCut(weld, at), stage.goesOn ? AfterCut::Bridge : AfterCut::AbortByDefault);
            const Milliseconds high = std::max(cut.deltaUtc, Milliseconds(0));
            const BridgeBasis unsure =
                cut.deltaUtc < Milliseconds(0) ? BridgeBasis::Backwards : BridgeBasis::Unconfirmed;
            const WeldDetail open = ClockBridged{"boot-1", Milliseconds(0), high, unsure};

            const auto byDefault = settle(weld, at, RebootWord::None);
            ASSERT_TRUE(byDefault) << row;
            ASSERT_EQ(byDefault->size(), stage.goesOn ? 1U : 2U) << row;
            EXPECT_EQ(byDefault->front(), open) << row;
            EXPECT_EQ(
                phaseName(after(weld, *byDefault, at).state), stage.goesOn ? stage.name : "aborted")
                << row;
            if (!stage.goesOn) {
                EXPECT_EQ(std::get<WeldAborted>(byDefault->back()).reason, "power_cut") << row;
            }

            const auto goOn = settle(weld, at, RebootWord::GoOnUnconfirmed);
            ASSERT_TRUE(goOn) << row;
            ASSERT_EQ(goOn->size(), 1U) << row;
            EXPECT_EQ(goOn->front(), open) << row;
            EXPECT_EQ(phaseName(after(weld, *goOn, at).state), stage.name) << row;

            const auto confirmed = settle(weld, at, RebootWord::GoOnConfirmed);
            ASSERT_EQ(confirmed.has_value(), cut.canBeConfirmed) << row;
            if (confirmed) {
                const WeldDetail sure =
                    ClockBridged{"boot-1", cut.deltaUtc, cut.deltaUtc, BridgeBasis::Confirmed};
                EXPECT_EQ(*confirmed, std::vector<WeldDetail>{sure}) << row;
                EXPECT_EQ(phaseName(after(weld, *confirmed, at).state), stage.name) << row;
            } else {
                EXPECT_NE(confirmed.error().detail.find("0 to 43200 s"), std::string::npos);
                EXPECT_NE(confirmed.error().detail.find(cut.value), std::string::npos)
                    << confirmed.error().detail;
            }

            const auto stopped = settle(weld, at, RebootWord::Abort);
            ASSERT_TRUE(stopped) << row;
            EXPECT_EQ(phaseName(after(weld, *stopped, at).state), "aborted") << row;
        }
    }
}

TEST(AfterACut, AWallClockThatRunsAheadDoesNotShortenCooling) {
    Story story;
    story.buildUp().wait(seconds(30)).then(RemarkMade{"seen"});
    const Weld& weld = story.weld();
    const auto& cooling = std::get<Cooling>(weld.state);
    const Milliseconds left = cooling.due.lo - story.time().lo;
    ASSERT_GT(left, Milliseconds(0));
    const Instant at = later(weld, hours(10), "boot-2");
    const auto said = settle(weld, at, RebootWord::None);
    ASSERT_TRUE(said);
    const Weld bridged = after(weld, *said, at);
    const auto t = weldTimeAt(bridged, at);
    ASSERT_TRUE(t);
    // Not one millisecond of the ten hours counts for the minimum, all of them count for a maximum.
    EXPECT_EQ(std::get<Cooling>(bridged.state).due.lo - t->lo, left);
    EXPECT_EQ(t->hi - t->lo, hours(10));
    for (const Cue& cue : cuesAt(bridged, *t)) {
        EXPECT_NE(cue.kind, CueKind::CoolingDone);
    }
}

TEST(AfterACut, AConfirmedTenMinutesCountAsTenMinutes) {
    Story story;
    story.buildUp().wait(seconds(30)).then(RemarkMade{"seen"});
    const Weld& weld = story.weld();
    const Instant at = later(weld, minutes(10), "boot-2");
    const auto said = settle(weld, at, RebootWord::GoOnConfirmed);
    ASSERT_TRUE(said);
    const auto t = weldTimeAt(after(weld, *said, at), at);
    ASSERT_TRUE(t);
    EXPECT_EQ(t->lo, story.time().lo + minutes(10));
    EXPECT_EQ(t->hi, t->lo);
}

TEST(AfterACut, TwoCutsInOneCoolingAddUp) {
    Story story;
    story.buildUp().wait(seconds(20)).then(RemarkMade{"seen"});
    Weld weld = story.weld();
    const WeldTime before = story.time();
    const Instant first = later(weld, minutes(2), "boot-2");
    weld = after(weld, *settle(weld, first, RebootWord::None), first);
    Instant working = first;
    working.boot += seconds(40);
    working.utc += seconds(40);
    weld = after(weld, {RemarkMade{"again"}}, working);
    const Instant second = later(weld, minutes(3), "boot-3");
    weld = after(weld, *settle(weld, second, RebootWord::None), second);
    const auto t = weldTimeAt(weld, second);
    ASSERT_TRUE(t);
    EXPECT_EQ(t->lo, before.lo + seconds(40));
    EXPECT_EQ(t->hi, before.hi + seconds(40) + minutes(5));
}
