// The same as set_aside_test's last, 400 damaged logs long.
#include "tests/core/rescue/damage.h"

#include <gtest/gtest.h>

using namespace seamclock::test;

TEST(SetAsideEndure, FourHundredDamagedLogs) {
    DamageCount count;
    for (std::uint64_t seed = 2; seed <= 5 && !HasFailure(); ++seed) {
        const DamageCount some = damageLogs(100, seed);
        count.mended += some.mended;
        count.newChain += some.newChain;
        count.openNamed += some.openNamed;
    }
    EXPECT_GE(count.mended, 40);
    EXPECT_GE(count.newChain, 40);
    EXPECT_GE(count.openNamed, 10);
}
