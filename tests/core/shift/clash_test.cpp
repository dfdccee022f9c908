// Two hands: a soak that would end while another bench wants them is told of before it begins. The
// rule is common practice, no source; the answer is held against trying every tenth of a second.
#include "core/shift/clash.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>
#include <vector>

namespace seamclock {
namespace {

using std::chrono::seconds;
using test::Story;

constexpr Milliseconds kTenth{100};

Weld named(Weld weld, int place) {
    for (Event& event : weld.events) {
        event.subject = "weld:" + std::to_string(place);
    }
    return weld;
}

ShiftBench benchAt(int place, const Weld& weld) {
    return {"bench-" + std::to_string(place), place, named(weld, place)};
}

Story aligning() {
    Story story;
    story.prepare();
    story.then(AlignmentStarted{});
    return story;
}

struct Span {
    Milliseconds from{0};
    Milliseconds to{0};
};

/// By the story's plan, told in the words of the rule.
Milliseconds handsFor(const Weld& weld) {
    return *weld.plan.changeoverMax + weld.plan.buildUp->high;
}

/// A bench whose soak has so long to go at that instant, and when it wants its hands.
std::pair<ShiftBench, Span> soakingFor(int place, Milliseconds left, const Instant& now) {
    Story story;
    story.align();
    ShiftBench bench = benchAt(place, story.weld());
    auto& soak = std::get<Soaking>(bench.weld.state);
    const Milliseconds move = weldTimeAt(bench.weld, now)->lo + left - soak.due.lo;
    soak.due = soak.due + move;
    return {bench, {left, left + handsFor(bench.weld)}};
}

TEST(Clash, ThereIsNoneWithoutAnotherBench) {
    const Story story = aligning();
    EXPECT_EQ(
        clashOfSoak({{benchAt(1, story.weld())}, {}, true, {}}, 1, story.now()), std::nullopt);
    EXPECT_EQ(clashOfSoak({}, 1, story.now()), std::nullopt);
}

TEST(Clash, OnlyABenchInAlignmentIsAsked) {
    Story story;
    story.align();
    const Shift shift{
        {benchAt(1, story.weld()), soakingFor(2, seconds{80}, story.now()).first}, {}, true, {}};
    EXPECT_EQ(clashOfSoak(shift, 1, story.now()), std::nullopt) << "it soaks already";
}

TEST(Clash, NamesTheOtherBenchAndHowLongToWait) {
    const Story story = aligning();
    const Milliseconds soak = story.weld().plan.soak->target;
    const Milliseconds hands = handsFor(story.weld());
    const auto clash = [&](Milliseconds left) {
        const Shift shift{
            {benchAt(1, story.weld()), soakingFor(2, left, story.now()).first}, {}, true, {}};
        return clashOfSoak(shift, 1, story.now());
    };
    EXPECT_EQ(clash(soak), (Clash{"bench-2", 2, hands})) << "both at once: one after the other";
    EXPECT_EQ(clash(soak - hands), std::nullopt) << "the other has just been locked";
    EXPECT_EQ(clash(soak - hands + kTenth), (Clash{"bench-2", 2, kTenth}));
    EXPECT_EQ(clash(soak + hands), std::nullopt) << "the other begins when this one is locked";
    EXPECT_EQ(clash(soak + hands - kTenth), (Clash{"bench-2", 2, 2 * hands - kTenth}));
}

TEST(Clash, AChangeoverAndABuildUpThatRunWantTheirHandsToTheirEnd) {
    Story story = aligning();
    Weld own = story.weld();
    own.plan.soak->target = Milliseconds{0}; // so that only what runs now can be in the way
    const auto waitFor = [&](const Story& other) {
        Shift shift{{benchAt(1, own), benchAt(2, other.weld())}, {}, true, {}};
        shift.benches[0].weld.clock = shift.benches[1].weld.clock;
        const auto clash = clashOfSoak(shift, 1, other.now());
        return clash ? clash->wait : Milliseconds{-1};
    };
    Story other;
    other.soak();
    const WeldPlan plan = other.weld().plan;
    EXPECT_EQ(waitFor(other), *plan.changeoverMax + plan.buildUp->high);
    other.wait(seconds{1});
    EXPECT_EQ(waitFor(other), *plan.changeoverMax + plan.buildUp->high - seconds{1});
    other.wait(*plan.changeoverMax);
    EXPECT_EQ(waitFor(other), plan.buildUp->high) << "late: the build-up is still to come";
    Story rising;
    rising.changeOver();
    EXPECT_EQ(waitFor(rising), plan.buildUp->high);
    rising.wait(seconds{1});
    EXPECT_EQ(waitFor(rising), plan.buildUp->high - seconds{1});
    rising.wait(plan.buildUp->high);
    EXPECT_EQ(waitFor(rising), plan.buildUp->high) << "late: nobody knows, but it isn't over";
    Story cold;
    cold.buildUp();
    EXPECT_EQ(waitFor(cold), Milliseconds{-1}) << "who cools needs nobody";
}

// Three other benches at any times: after the wait this bench's hands are wanted while no other's
// are, and no tenth of a second before it would do.
TEST(Clash, TheWaitIsTheLeastThatIsClearOfAllBenches) {
    const Story story = aligning();
    const Milliseconds soak = story.weld().plan.soak->target;
    const Milliseconds hands = handsFor(story.weld());
    std::mt19937_64 chance(20260);
    int waits = 0;
    for (int round = 0; round < 2'000; ++round) {
        Shift shift{{benchAt(4, story.weld())}, {}, true, {}};
        std::vector<Span> spans;
        for (int place = 1; place <= 3; ++place) {
            const Milliseconds left = kTenth * static_cast<std::int64_t>(chance() % 2'000);
            const auto [bench, span] = soakingFor(place, left, story.now());
            shift.benches.push_back(bench);
            spans.push_back(span);
        }
        const auto isClear = [&](Milliseconds wait) {
            return std::none_of(spans.begin(), spans.end(), [&](const Span& span) {
                return soak + wait < span.to && span.from < soak + wait + hands;
            });
        };
        const auto clash = clashOfSoak(shift, 4, story.now());
        const Milliseconds wait = clash ? clash->wait : Milliseconds{0};
        ASSERT_TRUE(isClear(wait)) << round;
        for (Milliseconds sooner{0}; sooner < wait; sooner += kTenth) {
            ASSERT_FALSE(isClear(sooner)) << round << ": " << sooner.count() << " ms";
        }
        waits += clash ? 1 : 0;
    }
    EXPECT_GT(waits, 200);
    EXPECT_LT(waits, 1'990);
}

// Alignment can't wait for a soak that clashes, so a bench that is prepared is asked as if its
// alignment took the median.
TEST(Clash, ABenchThatIsReadyToAlignIsAskedByItsMedian) {
    Story story;
    story.prepare();
    const WeldPlan& plan = story.weld().plan;
    const Milliseconds ends = *plan.alignMedian + plan.soak->target;
    const Milliseconds hands = handsFor(story.weld());
    const auto shiftWith = [&](Milliseconds left) {
        return Shift{
            {benchAt(1, story.weld()), soakingFor(2, left, story.now()).first}, {}, true, {}};
    };
    EXPECT_EQ(clashOfAlignment(shiftWith(ends), 1, story.now()), (Clash{"bench-2", 2, hands}));
    EXPECT_EQ(clashOfAlignment(shiftWith(ends - hands), 1, story.now()), std::nullopt);
    EXPECT_EQ(clashOfAlignment(shiftWith(ends + hands), 1, story.now()), std::nullopt);
    EXPECT_EQ(clashOfSoak(shiftWith(ends), 1, story.now()), std::nullopt) << "no soak is near";
    EXPECT_EQ(clashOfAlignment(shiftWith(ends), 3, story.now()), std::nullopt) << "no bench there";
    Shift unknown = shiftWith(ends);
    unknown.benches[0].weld.plan.alignMedian.reset();
    EXPECT_EQ(clashOfAlignment(unknown, 1, story.now()), std::nullopt);
    Shift open = shiftWith(ends);
    std::get<Preparing>(open.benches[0].weld.state).openChecks = {"gap"};
    EXPECT_EQ(clashOfAlignment(open, 1, story.now()), std::nullopt) << "a check is to be made yet";
    Shift begun = shiftWith(ends);
    begun.benches[0] = benchAt(1, aligning().weld());
    EXPECT_EQ(clashOfAlignment(begun, 1, story.now()), std::nullopt) << "asked as a soak by now";
}

TEST(Clash, APlanWithoutTheseTimesSaysNothing) {
    const Story story = aligning();
    Shift shift{
        {benchAt(1, story.weld()),
         soakingFor(2, story.weld().plan.soak->target, story.now()).first},
        {},
        true,
        {}};
    ASSERT_TRUE(clashOfSoak(shift, 1, story.now()));
    Shift without = shift;
    without.benches[0].weld.plan.changeoverMax.reset();
    EXPECT_FALSE(clashOfSoak(without, 1, story.now()));
    without = shift;
    without.benches[1].weld.plan.buildUp.reset();
    EXPECT_FALSE(clashOfSoak(without, 1, story.now()));
    without = shift;
    without.benches[0].weld.plan.soak.reset();
    EXPECT_FALSE(clashOfSoak(without, 1, story.now()));
}

} // namespace
} // namespace seamclock
