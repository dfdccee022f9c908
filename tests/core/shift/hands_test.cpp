// Which weld wants both hands, and how soon; and that a joint which can wait does not sound
// meanwhile.
#include "core/shift/hands.h"
#include "core/shift/shift.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;
using test::Story;

HandsCall callOf(const Story& story) {
    return handsCall(story.weld(), story.now());
}

TEST(Hands, AreWantedFromGetReadyToTheLock) {
    Story story;
    EXPECT_EQ(callOf(story), HandsCall::None);
    story.align();
    const Milliseconds soak = story.weld().plan.soak->target;
    EXPECT_EQ(callOf(story), HandsCall::None);
    story.wait(soak - seconds(10) - milliseconds(1));
    EXPECT_EQ(callOf(story), HandsCall::None);
    story.wait(milliseconds(1));
    EXPECT_EQ(callOf(story), HandsCall::Soon);
    story.wait(seconds(10) - milliseconds(1));
    EXPECT_EQ(callOf(story), HandsCall::Soon);
    story.wait(milliseconds(1));
    EXPECT_EQ(callOf(story), HandsCall::Now);
    story.wait(seconds(40));
    EXPECT_EQ(callOf(story), HandsCall::Now) << "and it stays so";
    story.then(PlateOut{});
    EXPECT_EQ(callOf(story), HandsCall::Taken);
    EXPECT_EQ(callOf(Story().changeOver()), HandsCall::Taken);
    EXPECT_EQ(callOf(Story().buildUp()), HandsCall::None);
    EXPECT_EQ(callOf(Story().cool()), HandsCall::None);
    EXPECT_EQ(callOf(Story().close()), HandsCall::None);
}

TEST(Hands, AreNotCalledForByAWeldThatWaitsForItsBridge) {
    Story story;
    story.align().wait(seconds(80)).reboot(seconds(3));
    EXPECT_EQ(callOf(story), HandsCall::None);
}

Weld named(Weld weld, const std::string& id) {
    for (Event& event : weld.events) {
        event.subject = "weld:" + id;
    }
    return weld;
}

// Waiting harms no joint that has cooled; a chime in a changeover harms the changeover.
TEST(Hands, OfOneBenchKeepAnothersDoneSilentUntilTheLock) {
    Story cooled;
    cooled.cool();
    const auto dones = [&cooled](const Weld& other) {
        Shift shift{
            {{"bench-1", 1, named(cooled.weld(), "1")}, {"bench-2", 2, named(other, "2")}},
            {},
            true,
            {}};
        const Instant now = cooled.now();
        for (ShiftBench& bench : shift.benches) {
            bench.weld.clock.bootId = now.bootId;
        }
        const auto all = requests(shift, now, seconds(5)).requests;
        return std::count_if(all.begin(), all.end(), [](const Request& one) {
            return one.code == "cooling_done" && one.place == 1;
        });
    };
    EXPECT_EQ(dones(Story().align().weld()), 1);
    EXPECT_EQ(dones(Story().soak().weld()), 0);
    EXPECT_EQ(dones(Story().changeOver().weld()), 0);
    EXPECT_EQ(dones(Story().buildUp().weld()), 1) << "told after the lock: nothing is lost";
}

} // namespace
} // namespace seamclock
