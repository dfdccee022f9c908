// A weld that is looked at every quarter of a second is as warm as one that is worked out in one
// go.
#include "core/estimate/live_heat.h"
#include "tests/support/materials.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::seconds;
using test::Story;

class LiveHeatTest : public testing::Test {
protected:
    const SheetRun* at(LiveHeat& live, const Story& story) {
        return live.follow(story.weld(), story.time().lo, nullptr);
    }

    const std::vector<Material>& materials = test::materials();
};

TEST_F(LiveHeatTest, LookedAtOftenIsAsWarmAsInOneGo) {
    LiveHeat often(materials);
    Story story;
    EXPECT_EQ(at(often, story), nullptr) << "alignment has not begun";
    story.align();
    const int looks = 40;
    for (int i = 0; i < looks; ++i) {
        story.wait(Milliseconds{2'000 / 10});
        ASSERT_NE(at(often, story), nullptr);
    }
    LiveHeat once(materials);
    const SheetRun* seen = at(often, story);
    const SheetRun* worked = at(once, story);
    ASSERT_TRUE(seen != nullptr && worked != nullptr);
    EXPECT_NEAR(seen->seconds(), worked->seconds(), 1e-9);
    EXPECT_NEAR(seen->faceC(), worked->faceC(), 0.5);
    EXPECT_NEAR(seen->meltDepth(), worked->meltDepth(), 0.05e-3);
    EXPECT_NEAR(seen->closing(), worked->closing(), 0.02e-3);
}

TEST_F(LiveHeatTest, BeginsAnewWhenAStepIsTakenBackAndFollowsAnotherWeld) {
    LiveHeat live(materials);
    Story story;
    story.soak().wait(seconds{2});
    const SheetRun* run = at(live, story);
    ASSERT_NE(run, nullptr);
    const double inAir = run->faceC();
    const std::int64_t plateOut = lastTakeable(story.weld());
    story.then(StepTakenBack{plateOut}).wait(seconds{1});
    run = at(live, story);
    ASSERT_NE(run, nullptr);
    EXPECT_GT(run->faceC(), inAir + 10) << "it is on the plate after all";
    LiveHeat fresh(materials);
    EXPECT_NEAR(run->faceC(), at(fresh, story)->faceC(), 0.5);
}

// A countdown is painted once a second; a step taken meanwhile shows at once.
TEST_F(LiveHeatTest, BySecondGoesOnWithTheSecondAndWithEachEvent) {
    LiveHeat live(materials);
    Story story;
    story.align();
    const auto gone = [&] {
        const SheetRun* run = live.followBySecond(story.weld(), story.time().lo, nullptr);
        return run == nullptr ? -1.0 : run->seconds();
    };
    const double begun = gone();
    ASSERT_GE(begun, 0);
    story.wait(Milliseconds{999});
    EXPECT_EQ(gone(), begun);
    story.wait(Milliseconds{1});
    EXPECT_NEAR(gone(), begun + 1, 1e-9);
    story.wait(Milliseconds{400}).then(RemarkMade{"a draught"});
    EXPECT_NEAR(gone(), begun + 1.4, 1e-9);
}

TEST_F(LiveHeatTest, HasNothingToSayOfAnUnknownPlastic) {
    WeldPlan plan = test::inventedPlan();
    plan.material = "ABS";
    Story story(plan);
    story.align();
    LiveHeat live(materials);
    EXPECT_EQ(at(live, story), nullptr);
}

} // namespace
} // namespace seamclock
