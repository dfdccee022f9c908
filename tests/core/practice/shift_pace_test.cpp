// Several benches by one clock: time hurries only while each of them may, and not past the instant
// at which one of them needs true time again.
#include "core/practice/shift_pace.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::seconds;
using test::Story;

constexpr int kPace = 8;
constexpr Milliseconds kAhead{8'000};

Shift shiftOfBoth(const Weld& one, Weld other) {
    for (Event& event : other.events) {
        event.subject = "weld:other";
    }
    return {{{"bench-1", 1, one}, {"bench-2", 2, other}}, {}, true, {}};
}

TEST(ShiftPace, IsTrueTimeWithoutABenchAndWithoutAPace) {
    const Story story = Story().align();
    const Instant now = story.now();
    EXPECT_EQ(paceOf({}, now, kAhead, kPace).factor, 1);
    EXPECT_EQ(paceOf(shiftOf(story.weld()), now, kAhead, 1).factor, 1);
    EXPECT_EQ(
        paceOf(shiftOf(story.weld()), now, kAhead, kPace), (ShiftPace{kPace, now.boot + kAhead}));
}

TEST(ShiftPace, EndsWhereTheFirstBenchIsToGetReady) {
    Story story;
    story.align();
    const Milliseconds soak = story.weld().plan.soak->target;
    story.wait(soak - seconds(13));
    const Instant now = story.now();
    EXPECT_EQ(
        paceOf(shiftOf(story.weld()), now, kAhead, kPace),
        (ShiftPace{kPace, now.boot + seconds(3)}));
    story.wait(seconds(3));
    EXPECT_EQ(paceOf(shiftOf(story.weld()), story.now(), kAhead, kPace).factor, 1);
}

TEST(ShiftPace, ABenchThatNeedsTrueTimeHoldsTheOther) {
    Story cooling;
    cooling.buildUp();
    const Instant now = cooling.now();
    ASSERT_EQ(paceOf(shiftOf(cooling.weld()), now, kAhead, kPace).factor, kPace);
    const auto beside = [&](const Story& other) {
        return paceOf(shiftOfBoth(cooling.weld(), other.weld()), now, kAhead, kPace).factor;
    };
    EXPECT_EQ(beside(Story()), 1) << "its checks are made by hand";
    EXPECT_EQ(beside(Story().soak()), 1);
    EXPECT_EQ(beside(Story().changeOver()), 1);
    EXPECT_EQ(beside(Story().release()), 1);
    EXPECT_EQ(beside(Story().buildUp()), kPace);
}

} // namespace
} // namespace seamclock
