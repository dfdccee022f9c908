// The same as set_aside_test's last, 4,000 damaged logs long.
#include "tests/core/log/damage.h"

#include <gtest/gtest.h>

using namespace seamclock::test;

TEST(SetAsideEndure, FourThousandDamagedLogs) {
    DamageCount count;
    for (std::uint64_t seed = 2; seed <= 9 && !HasFailure(); ++seed) {
        const DamageCount some = damageLogs(500, seed);
        count.mended += some.mended;
        count.newChain += some.newChain;
        count.openNamed += some.openNamed;
    }
    EXPECT_GE(count.mended, 400);
    EXPECT_GE(count.newChain, 400);
    EXPECT_GE(count.openNamed, 100);
}
