// The clock of practice at the operator's screens: faster until it is told to be true, exact at the
// bend, and never back.
#include "app/platform/paced_clock.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;

class Machine : public Clock {
public:
    Instant now() const override {
        return {boot, "machine", Milliseconds(1'893'996'000'000) + boot, minutes(60)};
    }
    Milliseconds boot{5'000'000};
};

TEST(PacedClock, BeginsAtTheMachinesTimeOnABootOfPractice) {
    Machine machine;
    const PacedClock clock(machine);
    const Instant now = clock.now();
    EXPECT_EQ(now.boot, machine.boot);
    EXPECT_EQ(now.utc, machine.now().utc);
    EXPECT_EQ(now.offset, minutes(60));
    EXPECT_EQ(now.bootId.rfind("practice:", 0), 0U) << now.bootId;
    machine.boot += seconds(3);
    EXPECT_EQ(clock.now().boot, machine.boot) << "true time until it is told otherwise";
    EXPECT_EQ(clock.now().utc, machine.now().utc);
}

TEST(PacedClock, BeginsOnTheWallAtAnotherTimeIfItIsTold) {
    Machine machine;
    PacedClock clock(machine, Milliseconds(1'900'000'000'000));
    EXPECT_EQ(clock.now().boot, machine.boot);
    EXPECT_EQ(clock.now().utc, Milliseconds(1'900'000'000'000));
    clock.run(10, clock.now().boot + seconds(10));
    machine.boot += seconds(1);
    EXPECT_EQ(clock.now().utc, Milliseconds(1'900'000'010'000)) << "and goes on from there";
}

TEST(PacedClock, RunsFasterUntilItsInstantAndTrueAfterIt) {
    Machine machine;
    PacedClock clock(machine);
    const Instant start = clock.now();
    clock.run(8, start.boot + Milliseconds(2'001));
    machine.boot += Milliseconds(100);
    EXPECT_EQ(clock.now().boot - start.boot, Milliseconds(800));
    EXPECT_EQ(clock.now().utc - start.utc, Milliseconds(800));
    machine.boot += Milliseconds(151); // 250.125 ms are needed: whole ones from here
    EXPECT_EQ(clock.now().boot - start.boot, Milliseconds(2'001));
    machine.boot += Milliseconds(500);
    EXPECT_EQ(clock.now().boot - start.boot, Milliseconds(2'501));
}

TEST(PacedClock, NeverGoesBackWhateverItIsTold) {
    Machine machine;
    PacedClock clock(machine);
    Milliseconds last = clock.now().boot;
    for (int i = 0; i < 2'000; ++i) {
        if (i % 7 == 0) {
            clock.run(i % 5 * 7 - 3, last + Milliseconds(i % 11 * 100 - 300));
        }
        const Milliseconds now = clock.now().boot;
        ASSERT_GE(now, last) << i;
        last = now;
        machine.boot += Milliseconds(i % 13);
        ASSERT_GE(clock.now().boot, last) << i;
        last = clock.now().boot;
    }
}

} // namespace
} // namespace seamclock
