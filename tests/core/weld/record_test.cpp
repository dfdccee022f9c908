#include "core/weld/record.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::seconds;
using test::Story;

const PhaseRecord& phase(const WeldRecord& record, const std::string& name) {
    for (const PhaseRecord& one : record.phases) {
        if (one.phase == name) {
            return one;
        }
    }
    static const PhaseRecord kNone;
    ADD_FAILURE() << name << " is not in the record";
    return kNone;
}

TEST(Record, HoldsEachPhaseSetAndActual) {
    const WeldRecord record = seamclock::record(Story().close().weld());
    ASSERT_EQ(record.phases.size(), 5U);
    EXPECT_EQ(phase(record, "alignment").took, (WeldTime{seconds{50}, seconds{50}}));
    EXPECT_EQ(phase(record, "soak").took, (WeldTime{seconds{82}, seconds{82}}));
    EXPECT_EQ(phase(record, "soak").target, seconds{80});
    EXPECT_EQ(phase(record, "changeover").took, (WeldTime{seconds{4}, seconds{4}}));
    EXPECT_EQ(phase(record, "changeover").high, Milliseconds{6'400});
    EXPECT_EQ(phase(record, "build_up").took, (WeldTime{seconds{6}, seconds{6}}))
        << "it ends with the reading in band, not with the lock";
    EXPECT_EQ(phase(record, "cooling").took, (WeldTime{seconds{690}, seconds{690}}));
    EXPECT_EQ(phase(record, "cooling").low, seconds{690});
    EXPECT_EQ(record.checks.size(), 4U);
    EXPECT_EQ(record.readings.size(), 4U);
    EXPECT_EQ(record.beads.size(), 1U);
    EXPECT_EQ(record.releases.size(), 3U);
    EXPECT_TRUE(record.numberedAt.has_value());
    ASSERT_TRUE(record.stored.has_value());
    EXPECT_EQ(record.stored->verdict, "within limits");
    EXPECT_EQ(record.verdict.word, VerdictWord::WithinLimits);
    EXPECT_EQ(record.phaseNow, "closed");
}

// Issue 9: what stands on the paper is what was, with the event that says it.
TEST(Surroundings, AreThoseThatTheJointWasMadeIn) {
    using Guard = Surroundings::Guard;
    WeldPlan plan = test::inventedPlan();
    plan.checks = {"shielded"};
    WeldOpened opened = test::inventedOpening(plan);
    Story told(opened);
    const auto air = [](const Story& story) { return surroundings(record(story.weld())); };
    EXPECT_EQ(air(told), (Surroundings{opened.ambientMc, 1, Guard::Asked, 1}));
    Story left = told;
    left.then(CheckOverridden{"shielded", "no_tool", Authority::Operator});
    EXPECT_EQ(air(left), (Surroundings{opened.ambientMc, 1, Guard::LeftOut, 2}));
    // Another temperature was read: the plan was made anew, and the check has its value.
    Story read = told;
    WeldPlan cold = plan;
    cold.ambientMc = 8'000;
    read.then(PlanReplaced{cold, opened.docs, "ambient measured"});
    EXPECT_EQ(air(read), (Surroundings{8'000, 2, Guard::Asked, 1}));
    CheckMade made;
    made.check = "shielded";
    made.passed = true;
    made.valueMc = 8'000;
    read.then(made);
    EXPECT_EQ(air(read), (Surroundings{8'000, 3, Guard::Seen, 3}));
    opened.shielded = false;
    EXPECT_EQ(air(Story(opened)).guard, Guard::None);
}

TEST(PlateWeldedWith, IsTheLatestOfEachPlaceAndNothingThatWasSetAside) {
    WeldPlan plan = test::inventedPlan();
    plan.checks = {"plate_temperature"};
    Story story(plan);
    const auto read = [](const char* place, std::int64_t mC, bool passed) {
        return CheckMade{"plate_temperature", passed, mC, {}, {}, place, {}, {}};
    };
    const auto values = [&] {
        std::vector<std::int64_t> all;
        for (const Retained& one : plateWeldedWith(retained(story.weld().events))) {
            all.push_back(*std::get<CheckMade>(one.d).valueMc);
        }
        return all;
    };
    story.then(read("front", 240'000, false)).then(read("middle", 211'000, true));
    story.then(read("front", 212'000, true));
    EXPECT_EQ(values(), (std::vector<std::int64_t>{211'000, 212'000}));
    CheckMade aside;
    aside.check = "plate_temperature";
    story.then(aside);
    EXPECT_TRUE(values().empty());
}

TEST(Record, EachPhaseHasThePlansLimitsAndNoOthers) {
    const WeldRecord record = seamclock::record(Story().close().weld());
    const WeldPlan& plan = record.plan;
    using Limit = std::optional<Milliseconds>;
    const auto expectLimits = [&record](const char* name, Limit low, Limit target, Limit high) {
        const PhaseRecord& one = phase(record, name);
        EXPECT_EQ(one.low, low) << name;
        EXPECT_EQ(one.target, target) << name;
        EXPECT_EQ(one.high, high) << name;
    };
    expectLimits("alignment", {}, plan.alignMedian, plan.alignLate);
    expectLimits("soak", plan.soak->low, plan.soak->target, plan.soak->high);
    expectLimits("changeover", {}, {}, plan.changeoverMax);
    expectLimits("build_up", plan.buildUp->low, plan.buildUp->target, plan.buildUp->high);
    expectLimits("cooling", plan.cooling->atLeast, {}, {});
}

TEST(Record, EachPhaseNamesTheEventsItRestsOn) {
    const Weld weld = Story().close().weld();
    const WeldRecord record = seamclock::record(weld);
    for (const PhaseRecord& one : record.phases) {
        const Event& from = weld.events.at(static_cast<std::size_t>(one.fromN - 1));
        EXPECT_TRUE(isPivotal(from.d)) << one.phase;
        EXPECT_EQ(from.at, one.from);
        EXPECT_GT(one.toN, one.fromN);
    }
}

TEST(Record, ALockOutOfBandStartsNoCooling) {
    Story story;
    story.changeOver().wait(seconds{3}).then(ReadingTaken{ReadingPhase::Joining, 12'000});
    story.then(PressureLocked{}).wait(seconds{3});
    EXPECT_EQ(seamclock::record(story.weld()).phases.back().phase, "build_up");
    EXPECT_FALSE(seamclock::record(story.weld()).phases.back().took);
    story.then(ReadingTaken{ReadingPhase::Joining, 15'500}).wait(seconds{2});
    story.then(PressureLocked{});
    const WeldRecord record = seamclock::record(story.weld());
    EXPECT_EQ(phase(record, "build_up").took, (WeldTime{seconds{6}, seconds{6}}));
    EXPECT_EQ(phase(record, "cooling").from, story.now());
}

TEST(Record, KeepsWhatWasTakenBackAmongTheEventsOnly) {
    Story story;
    story.align().then(ReadingTaken{ReadingPhase::Soak, 1'000});
    const auto n = static_cast<std::int64_t>(story.weld().events.size());
    story.then(StepTakenBack{n});
    const WeldRecord record = seamclock::record(story.weld());
    EXPECT_TRUE(record.readings.empty());
    EXPECT_EQ(record.events.size(), static_cast<std::size_t>(n) + 1);
}

TEST(Record, HoldsAnAbortWithItsReason) {
    Story story;
    story.soak().then(WeldAborted{"cut_out", "bead missing at the back"});
    const WeldRecord record = seamclock::record(story.weld());
    ASSERT_TRUE(record.aborted.has_value());
    EXPECT_EQ(record.aborted->text, "bead missing at the back");
    EXPECT_FALSE(record.stored);
}

} // namespace
} // namespace seamclock
