#include "core/weld/back_off.h"

#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::seconds;

ReadingTaken alignmentAt(std::int64_t milli) {
    return {ReadingPhase::Alignment, milli};
}

/// Alignment's band is 14.6 to 16.9 mm there (tests/support/story.cpp).
std::optional<BackOff> after(const std::vector<std::int64_t>& readings) {
    test::Story story;
    story.prepare().then(AlignmentStarted{});
    for (const std::int64_t milli : readings) {
        story.wait(seconds(1)).then(alignmentAt(milli));
    }
    return backOffIn(retained(story.weld().events), story.weld().plan);
}

TEST(BackOff, IsAReadingAboveTheBandThatWasBroughtBack) {
    EXPECT_EQ(after({15'500, 18'000, 15'500}), (BackOff{18'000, 15'500}));
    EXPECT_EQ(after({18'000, 19'500, 15'000}), (BackOff{19'500, 15'000}));
    EXPECT_EQ(after({16'901, 16'900}), (BackOff{16'901, 16'900}));
}

TEST(BackOff, IsNoneWithinTheBandNorWhileItIsStillAbove) {
    EXPECT_FALSE(after({}));
    EXPECT_FALSE(after({15'500, 16'900, 14'600}));
    EXPECT_FALSE(after({15'500, 18'000}));
    EXPECT_FALSE(after({18'000, 15'500, 18'000}));
}

TEST(BackOff, GoesWithTheReadingThatIsTakenBack) {
    test::Story story;
    story.prepare().then(AlignmentStarted{});
    story.wait(seconds(1)).then(alignmentAt(18'000)).then(alignmentAt(15'500));
    ASSERT_TRUE(backOffIn(retained(story.weld().events), story.weld().plan));
    story.then(StepTakenBack{lastTakeable(story.weld())});
    story.then(StepTakenBack{lastTakeable(story.weld())});
    EXPECT_FALSE(backOffIn(retained(story.weld().events), story.weld().plan));
}

TEST(BackOff, OfOtherPhasesIsNone) {
    test::Story story;
    story.align().then(ReadingTaken{ReadingPhase::Soak, 30'000});
    story.then(ReadingTaken{ReadingPhase::Soak, 1'500});
    EXPECT_FALSE(backOffIn(retained(story.weld().events), story.weld().plan));
}

} // namespace
} // namespace seamclock
