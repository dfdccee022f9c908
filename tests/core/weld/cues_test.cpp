// Every deadline one millisecond before, on and after it.
#include "core/weld/cues.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using test::Story;

std::vector<std::string> namesAt(const Weld& weld, Milliseconds t) {
    std::vector<std::string> names;
    for (const Cue& cue : cuesAt(weld, {t, t})) {
        std::string name(toString(cue.kind));
        if (cue.count > 0) {
            name += " " + std::to_string(cue.count);
        }
        names.push_back(name);
    }
    return names;
}

using Names = std::vector<std::string>;

// Checks that `name` stands from `on` and that it did not one millisecond before.
void expectBegins(const Weld& weld, const std::string& name, Milliseconds on) {
    const Milliseconds one{1};
    const auto before = namesAt(weld, on - one);
    const auto at = namesAt(weld, on);
    const auto after = namesAt(weld, on + one);
    EXPECT_EQ(std::count(before.begin(), before.end(), name), 0) << name;
    EXPECT_EQ(std::count(at.begin(), at.end(), name), 1) << name;
    EXPECT_EQ(std::count(after.begin(), after.end(), name), 1) << name;
}

void expectEnds(const Weld& weld, const std::string& name, Milliseconds on) {
    const auto before = namesAt(weld, on - Milliseconds{1});
    const auto at = namesAt(weld, on);
    EXPECT_EQ(std::count(before.begin(), before.end(), name), 1) << name;
    EXPECT_EQ(std::count(at.begin(), at.end(), name), 0) << name;
}

TEST(Alignment, IsLateOneMillisecondPastTwiceItsMedian) {
    Story story;
    const Milliseconds from = story.prepare().time().lo;
    story.then(AlignmentStarted{});
    expectBegins(story.weld(), "alignment_late", from + seconds{96} + Milliseconds{1});
}

TEST(Alignment, IsNeverLateWhenItsTimeIsNotJudged) {
    WeldPlan plan = test::inventedPlan();
    plan.alignLate.reset();
    plan.alignMedian.reset();
    Story story(plan);
    story.prepare().then(AlignmentStarted{});
    EXPECT_EQ(namesAt(story.weld(), story.time().lo + minutes{60}), Names{});
    EXPECT_EQ(nextChange(story.weld(), story.time()), std::nullopt);
}

TEST(Alignment, IsQuietOnceItsCueIsAcknowledged) {
    Story story;
    story.prepare().then(AlignmentStarted{});
    story.wait(seconds{100}).then(CueAcknowledged{"alignment_late"});
    EXPECT_EQ(namesAt(story.weld(), story.time().lo), Names{});
}

TEST(Soak, GetsReadyTenSecondsBeforeCountsInAndActsAtZero) {
    Story story;
    story.align();
    const Milliseconds due = story.time().lo + seconds{80};
    expectBegins(story.weld(), "get_ready", due - seconds{10});
    expectEnds(story.weld(), "get_ready", due);
    expectBegins(story.weld(), "count_in 3", due - seconds{3});
    expectEnds(story.weld(), "count_in 3", due - seconds{2});
    expectBegins(story.weld(), "count_in 2", due - seconds{2});
    expectBegins(story.weld(), "count_in 1", due - seconds{1});
    expectEnds(story.weld(), "count_in 1", due);
    expectBegins(story.weld(), "act_now", due);
    EXPECT_EQ(namesAt(story.weld(), due + minutes{5}), Names{"act_now"});
}

TEST(Soak, ShorterThanItsNoticeGetsReadyAtOnceAndSkipsNoBeatThatFits) {
    WeldPlan plan = test::inventedPlan();
    plan.soak = TimeBand{seconds{2}, seconds{2}, seconds{3}};
    Story story(plan);
    const Milliseconds from = story.align().time().lo;
    EXPECT_EQ(namesAt(story.weld(), from), (Names{"count_in 2", "get_ready"}));
}

TEST(Changeover, AlarmsOneMillisecondPastItsLimit) {
    Story story;
    const Milliseconds from = story.soak().time().lo;
    expectBegins(story.weld(), "changeover_overrun", from + Milliseconds{6'400} + Milliseconds{1});
}

TEST(BuildUp, IsLateOneMillisecondPastItsBand) {
    Story story;
    const Milliseconds from = story.changeOver().time().lo;
    expectBegins(story.weld(), "build_up_late", from + Milliseconds{8'450} + Milliseconds{1});
}

TEST(BuildUp, IsNotLateOnceAReadingStandsInBand) {
    Story story;
    story.changeOver().wait(seconds{6}).then(ReadingTaken{ReadingPhase::Joining, 15'500});
    EXPECT_EQ(namesAt(story.weld(), story.time().lo + minutes{1}), Names{});
}

TEST(Cooling, AsksForEachReadingGetsReadyAMinuteBeforeAndIsDoneOnTime) {
    Story story;
    const Milliseconds from = story.buildUp().time().lo;
    expectBegins(story.weld(), "recheck_due 1", from + seconds{60});
    expectEnds(story.weld(), "recheck_due 1", from + seconds{230});
    expectBegins(story.weld(), "recheck_due 2", from + seconds{230});
    expectEnds(story.weld(), "recheck_due 2", from + seconds{460});
    expectBegins(story.weld(), "get_ready", from + seconds{630});
    expectEnds(story.weld(), "get_ready", from + seconds{690});
    expectBegins(story.weld(), "cooling_done", from + seconds{690});
    EXPECT_EQ(namesAt(story.weld(), from + minutes{60}), Names{"cooling_done"});
}

TEST(Cooling, AReadingSettlesTheRecheckThatIsDue) {
    Story story;
    const Milliseconds from = story.buildUp().time().lo;
    story.waitUntil(from + seconds{61}).then(ReadingTaken{ReadingPhase::Recheck, 15'000});
    EXPECT_EQ(namesAt(story.weld(), from + seconds{100}), Names{});
    expectBegins(story.weld(), "recheck_due 2", from + seconds{230});
}

TEST(Cooling, AReadingBeforeItIsDueDoesNotSettleIt) {
    Story story;
    const Milliseconds from = story.buildUp().time().lo;
    story.waitUntil(from + seconds{59}).then(ReadingTaken{ReadingPhase::Recheck, 15'000});
    expectBegins(story.weld(), "recheck_due 1", from + seconds{60});
}

TEST(Cooling, IsQuietOnceDoneIsAcknowledged) {
    Story story;
    story.cool().then(CueAcknowledged{"cooling_done"});
    EXPECT_EQ(namesAt(story.weld(), story.time().lo + minutes{5}), Names{});
}

TEST(Cooling, CountsWhatHasSurelyPassedAfterABridge) {
    Story story;
    story.buildUp().wait(seconds{100});
    story.then(RemarkMade{"lights flicker"});
    story.reboot(minutes{30});
    story.then(ClockBridged{"boot-1", Milliseconds{0}, minutes{30}, BridgeBasis::Unconfirmed});
    // 100 s have surely passed, 1900 s may have: it is done only when 690 s surely have.
    const WeldTime t = story.time();
    const auto cues = cuesUntil(story.weld(), t, minutes{60});
    const auto done = std::find_if(
        cues.begin(), cues.end(), [](const Cue& cue) { return cue.kind == CueKind::CoolingDone; });
    ASSERT_NE(done, cues.end());
    EXPECT_EQ(done->onset, seconds{590});
}

TEST(Changeover, CountsWhatMayHavePassedAfterABridge) {
    Story story;
    story.soak().wait(seconds{1}).then(RemarkMade{"dark"});
    story.reboot(seconds{20});
    story.then(ClockBridged{"boot-1", Milliseconds{0}, seconds{20}, BridgeBasis::Unconfirmed});
    const auto cues = cuesAt(story.weld(), story.time());
    ASSERT_EQ(cues.size(), 1U);
    EXPECT_EQ(cues[0].kind, CueKind::ChangeoverOverrun);
}

TEST(Cues, AnEndedWeldIsSilent) {
    Story closed;
    closed.close();
    EXPECT_TRUE(cuesAt(closed.weld(), closed.time()).empty());
    Story aborted;
    aborted.soak().then(WeldAborted{"cut_out", ""});
    EXPECT_TRUE(cuesUntil(aborted.weld(), aborted.time(), minutes{60}).empty());
}

TEST(Cues, HaveTheContractsRanksAndCodes) {
    // cue → rank, stale after [ms, −1 never], typed from the contract.
    struct Row {
        const char* code;
        int rank;
        int stale;
    };
    for (const Row& row : std::vector<Row>{
             {"program_lost", 1, -1},
             {"changeover_overrun", 2, -1},
             {"act_now", 3, -1},
             {"build_up_late", 4, -1},
             {"count_in", 5, 150},
             {"get_ready", 6, 3000},
             {"row_not_saved", 7, -1},
             {"clock_jumped", 7, -1},
             {"battery_low", 7, -1},
             {"no_sound", 7, -1},
             {"alignment_late", 8, -1},
             {"recheck_due", 8, -1},
             {"cooling_done", 9, -1}}) {
        const auto kind = cueFromString(row.code);
        ASSERT_TRUE(kind) << row.code;
        EXPECT_EQ(rank(*kind), row.rank) << row.code;
        EXPECT_EQ(toString(*kind), row.code);
        const auto stale = staleAfter(*kind);
        EXPECT_EQ(stale ? stale->count() : -1, row.stale) << row.code;
    }
    EXPECT_FALSE(cueFromString("bell"));
}

// nextChange is the first time at which cuesAt differs: checked against brute force over a whole
// soak.
TEST(Cues, NextChangeIsTheFirstInstantAtWhichTheyDiffer) {
    for (const bool cooling : {false, true}) {
        Story story;
        const Weld weld = cooling ? story.buildUp().weld() : story.align().weld();
        const Milliseconds from = story.time().lo;
        const Milliseconds end = from + (cooling ? minutes{12} : minutes{2});
        Milliseconds t = from;
        int changes = 0;
        while (const auto next = nextChange(weld, {t, t})) {
            const Milliseconds at = t + *next;
            EXPECT_EQ(namesAt(weld, t), namesAt(weld, at - Milliseconds{1}));
            EXPECT_NE(namesAt(weld, at - Milliseconds{1}), namesAt(weld, at));
            t = at;
            ++changes;
            ASSERT_LT(t, end);
        }
        EXPECT_EQ(changes, 5);
    }
}

TEST(Cues, UntilAHorizonListsWhatBeginsByThenInOrder) {
    Story story;
    story.align();
    const auto cues = cuesUntil(story.weld(), story.time(), seconds{78});
    Names names;
    for (const Cue& cue : cues) {
        names.push_back(std::string(toString(cue.kind)) + " " + std::to_string(cue.onset.count()));
    }
    EXPECT_EQ(names, (Names{"get_ready 70000", "count_in 77000", "count_in 78000"}));
}

// Only its own cue is acknowledged by its word: another's leaves it standing.
TEST(Acknowledging, SilencesTheCueThatItNamesAndNoOther) {
    struct Row {
        const char* cue;
        bool alignment;
        bool overrun;
        bool done;
    };
    const Row rows[] = {
        {"alignment_late", true, false, false}, {"changeover_overrun", false, true, false},
        {"cooling_done", false, false, true},   {"get_ready", false, false, false},
        {"recheck_due", false, false, false},
    };
    for (const Row& row : rows) {
        Story aligning;
        aligning.prepare().then(AlignmentStarted{});
        aligning.wait(seconds{100}).then(CueAcknowledged{row.cue});
        EXPECT_EQ(std::get<Aligning>(aligning.weld().state).lateAcknowledged, row.alignment)
            << row.cue;
        Story changing;
        changing.soak().wait(seconds{20}).then(CueAcknowledged{row.cue});
        EXPECT_EQ(std::get<ChangingOver>(changing.weld().state).lateAcknowledged, row.overrun)
            << row.cue;
        Story cooling;
        cooling.cool().then(CueAcknowledged{row.cue});
        EXPECT_EQ(std::get<Cooling>(cooling.weld().state).doneAcknowledged, row.done) << row.cue;
    }
}

TEST(Acknowledging, StandsThoughAnotherCueIsAcknowledgedAfterIt) {
    Story aligning;
    aligning.prepare().then(AlignmentStarted{});
    aligning.wait(seconds{100}).then(CueAcknowledged{"alignment_late"});
    aligning.wait(seconds{1}).then(CueAcknowledged{"get_ready"});
    EXPECT_TRUE(std::get<Aligning>(aligning.weld().state).lateAcknowledged);
    Story changing;
    changing.soak().wait(seconds{20}).then(CueAcknowledged{"changeover_overrun"});
    changing.wait(seconds{1}).then(CueAcknowledged{"get_ready"});
    EXPECT_TRUE(std::get<ChangingOver>(changing.weld().state).lateAcknowledged);
    Story cooling;
    cooling.cool().then(CueAcknowledged{"cooling_done"});
    cooling.wait(seconds{1}).then(CueAcknowledged{"recheck_due"});
    EXPECT_TRUE(std::get<Cooling>(cooling.weld().state).doneAcknowledged);
}

} // namespace
} // namespace seamclock
