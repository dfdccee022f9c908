// What a seam takes, against trade.md's tables.
#include "core/shift/seam_times.h"

#include "tests/support/shipped.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;

JobSeam seam() {
    JobSeam out;
    out.label = "S1";
    out.procedure = "pe-hd-dvs2207-1-2005";
    out.thicknessMm = 12;
    out.lengthsMm = {900};
    out.dragN = 40;
    out.sheets = {
        {"PE-HD", {}, "Velmorra Sheet", "V-1", 12'000, {}},
        {"PE-HD", {}, "Velmorra Sheet", "V-2", 12'000, {}}};
    return out;
}

TEST(SeamTimes, AreThePlansAndTheChosenOnes) {
    // PE-HD, DVS 2207-1 (2005), 12 mm, the band's end: soak 120 s, changeover 8 s, build-up 8 s,
    // cooling 16 min, plate 200 to 220 °C.
    const auto work = seamWork(
        seam(), test::shippedProcedure("pe-hd-dvs2207-1-2005"), test::demoBench("west"), {});
    ASSERT_TRUE(work) << work.error().detail;
    EXPECT_EQ(work->times.soak, seconds(120));
    EXPECT_EQ(work->times.changeover, seconds(8));
    EXPECT_EQ(work->times.buildUp, seconds(8));
    EXPECT_EQ(work->times.cooling, minutes(16));
    EXPECT_EQ(work->times.plate, (PlateUse{"PE-HD", 210'000}));
    EXPECT_EQ(work->times.preparation, minutes(10));
    EXPECT_EQ(work->times.alignment, seconds(78)); // 65 % of 120 s
    EXPECT_EQ(work->times.release, minutes(3));
    EXPECT_EQ(work->alignment, TimeFrom::Chosen);
}

TEST(SeamTimes, TheShopsOwnComeFirst) {
    const ShopTimes shop{minutes(7), seconds(66), {}};
    const auto work = seamWork(
        seam(), test::shippedProcedure("pe-hd-dvs2207-1-2005"), test::demoBench("west"), shop);
    ASSERT_TRUE(work);
    EXPECT_EQ(work->times.preparation, minutes(7));
    EXPECT_EQ(work->preparation, TimeFrom::Shop);
    EXPECT_EQ(work->times.alignment, seconds(66));
    EXPECT_EQ(work->alignment, TimeFrom::Shop);
    EXPECT_EQ(work->release, TimeFrom::Chosen);
}

TEST(SeamTimes, SayWhyABenchDoesNotMakeIt) {
    const Procedure procedure = test::shippedProcedure("pe-hd-dvs2207-1-2005");
    JobSeam longer = seam();
    longer.lengthsMm = {90'000};
    const auto tooLong = seamWork(longer, procedure, test::demoBench("west"), {});
    ASSERT_FALSE(tooLong);
    EXPECT_EQ(tooLong.error().code, ErrorCode::OutOfRange);
    JobSeam mixed = seam();
    mixed.sheets[1].material = "PP";
    EXPECT_FALSE(seamWork(mixed, procedure, test::demoBench("west"), {}));
    JobSeam thick = seam();
    thick.procedure = "pe-uni10520";
    const auto gaps =
        seamWork(thick, test::shippedProcedure("pe-uni10520"), test::demoBench("west"), {});
    ASSERT_FALSE(gaps);
    EXPECT_EQ(gaps.error().code, ErrorCode::Missing);
    EXPECT_NE(gaps.error().detail.find("pe-uni10520 says nothing of"), std::string::npos)
        << gaps.error().detail;
}

} // namespace
} // namespace seamclock
