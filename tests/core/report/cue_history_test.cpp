#include "core/report/cue_history.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::seconds;
using test::Story;

std::vector<CueDue> only(const std::vector<CueDue>& all, CueKind kind) {
    std::vector<CueDue> some;
    std::copy_if(all.begin(), all.end(), std::back_inserter(some), [kind](const CueDue& due) {
        return due.cue.kind == kind;
    });
    return some;
}

Instant instantOf(const Weld& weld, std::string_view kind) {
    for (const Event& event : weld.events) {
        if (kindOf(event.d) == kind) {
            return event.at;
        }
    }
    ADD_FAILURE() << kind;
    return {};
}

TEST(CueHistory, CountsTheSoakInAtTheInstantsOfTheContract) {
    // Contract, cues: get ready 10 s before, count-in 3, 2, 1, act now at zero.
    const Weld weld = Story().close().weld();
    const Milliseconds due = instantOf(weld, "soak_started").boot + seconds(80);
    const auto history = cueHistory(weld.events);
    const auto ready = only(history, CueKind::GetReady);
    ASSERT_GE(ready.size(), 1U);
    EXPECT_EQ(ready.front().boot, due - seconds(10));
    const auto counts = only(history, CueKind::CountIn);
    ASSERT_EQ(counts.size(), 3U);
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(counts[static_cast<std::size_t>(i)].cue.count, 3 - i);
        EXPECT_EQ(counts[static_cast<std::size_t>(i)].boot, due - seconds(3 - i));
    }
    const auto now = only(history, CueKind::ActNow);
    ASSERT_EQ(now.size(), 1U);
    EXPECT_EQ(now.front().boot, due);
}

TEST(CueHistory, KeepsOrderAndNamesTheEventBefore) {
    const Weld weld = Story().close().weld();
    const auto history = cueHistory(weld.events);
    ASSERT_FALSE(history.empty());
    EXPECT_TRUE(
        std::is_sorted(history.begin(), history.end(), [](const CueDue& a, const CueDue& b) {
            return a.boot < b.boot;
        }));
    for (const CueDue& due : history) {
        ASSERT_GE(due.afterN, 1);
        const Event& before = weld.events.at(static_cast<std::size_t>(due.afterN - 1));
        const Event& after = weld.events.at(static_cast<std::size_t>(due.afterN));
        EXPECT_LE(before.at.boot, due.boot);
        EXPECT_LE(due.boot, after.at.boot);
        EXPECT_EQ(due.utc - before.at.utc, due.boot - before.at.boot);
    }
}

TEST(CueHistory, TellsEachCueOnce) {
    const auto history = cueHistory(Story().close().weld().events);
    for (std::size_t i = 0; i < history.size(); ++i) {
        for (std::size_t j = i + 1; j < history.size(); ++j) {
            EXPECT_FALSE(
                history[i].cue.kind == history[j].cue.kind &&
                history[i].cue.count == history[j].cue.count && history[i].boot == history[j].boot);
        }
    }
}

TEST(CueHistory, HoldsTheOverrunOfALateChangeover) {
    Story story;
    story.soak().wait(Milliseconds(8'800)).then(FacesMet{});
    const auto late = only(cueHistory(story.weld().events), CueKind::ChangeoverOverrun);
    ASSERT_EQ(late.size(), 1U);
    EXPECT_EQ(late.front().boot, instantOf(story.weld(), "plate_out").boot + Milliseconds(6'401))
        << "a value on the limit is within (contract, verdict)";
}

TEST(CueHistory, LeavesTheTimeOfAPowerCutOut) {
    Story story;
    story.buildUp().wait(seconds(30)).then(RemarkMade{"still here"});
    const std::size_t before = cueHistory(story.weld().events).size();
    story.reboot(seconds(2'000));
    story.then(ClockBridged{"boot-1", Milliseconds(0), seconds(2'000), BridgeBasis::Unconfirmed});
    EXPECT_EQ(cueHistory(story.weld().events).size(), before)
        << "nothing can have sounded while the power was off";
}

TEST(CueHistory, OfNoEventsIsEmpty) {
    EXPECT_TRUE(cueHistory({}).empty());
    const Weld weld = Story().weld();
    EXPECT_TRUE(cueHistory(weld.events).empty()) << "one event has no time after it";
}

} // namespace
} // namespace seamclock
