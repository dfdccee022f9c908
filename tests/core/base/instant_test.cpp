#include "core/base/instant.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::minutes;

// Instants whose calendar dates are published with POSIX time: 0, a billion seconds, 1234567890,
// the leap day of 2000.
TEST(IsoTime, NamesKnownInstants) {
    EXPECT_EQ(toIsoUtc(Milliseconds(0)), "1970-01-01T00:00:00.000Z");
    EXPECT_EQ(toIsoUtc(Milliseconds(1'000'000'000'000)), "2001-09-09T01:46:40.000Z");
    EXPECT_EQ(toIsoUtc(Milliseconds(1'234'567'890'123)), "2009-02-13T23:31:30.123Z");
    EXPECT_EQ(toIsoUtc(Milliseconds(951'782'400'000)), "2000-02-29T00:00:00.000Z");
}

TEST(IsoTime, CountsBackwardsBeforeItsEpoch) {
    EXPECT_EQ(toIsoUtc(Milliseconds(-1)), "1969-12-31T23:59:59.999Z");
}

TEST(IsoTime, CarriesTheOffsetWithItsSign) {
    EXPECT_EQ(toIsoLocal(Milliseconds(0), minutes(60)), "1970-01-01T01:00:00+01:00");
    EXPECT_EQ(toIsoLocal(Milliseconds(0), minutes(0)), "1970-01-01T00:00:00+00:00");
    EXPECT_EQ(toIsoLocal(Milliseconds(0), minutes(-210)), "1969-12-31T20:30:00-03:30");
    EXPECT_EQ(toIsoLocal(Milliseconds(0), minutes(-30)), "1969-12-31T23:30:00-00:30");
    EXPECT_EQ(toIsoLocal(Milliseconds(0), minutes(345)), "1970-01-01T05:45:00+05:45");
}

TEST(IsoTime, TakesTheDateOfTheLocalDay) {
    const Milliseconds lateEvening(1'000'000'000'000 - 2 * 3'600'000); // 2001-09-08T23:46:40Z
    EXPECT_EQ(toIsoDate(lateEvening, minutes(0)), "2001-09-08");
    EXPECT_EQ(toIsoDate(lateEvening, minutes(60)), "2001-09-09");
    EXPECT_EQ(toIsoDate(Milliseconds(0), minutes(-1)), "1969-12-31");
}

TEST(IsoTime, KeepsAbsurdInstantsInsideTheYearsThatCanBeWritten) {
    EXPECT_EQ(toIsoUtc(Milliseconds::max()), "9999-12-30T00:00:00.000Z");
    EXPECT_EQ(toIsoUtc(Milliseconds::min()), "0000-01-02T00:00:00.000Z");
    EXPECT_EQ(toIsoDate(Milliseconds::max(), minutes::max()), "9999-12-31");
    EXPECT_EQ(toIsoDate(Milliseconds::min(), minutes::min()), "0000-01-01");
}

} // namespace
} // namespace seamclock
