// Coupons typed one after the other: what is asked next, and what the numbers make.
#include "app/shop/coupon_draft.h"

#include "core/quality/coupons.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

CouponTested about(const char* test) {
    CouponTested out;
    out.test = test;
    out.material = "PE-HD";
    out.thicknessUm = 8'000;
    return out;
}

TEST(CouponDraft, StrengthsAreKeptAsTheyAreTyped) {
    CouponDraft draft(about("tensile"), CouponBy::Strength);
    EXPECT_TRUE(draft.isEmpty());
    EXPECT_FALSE(draft.isWhole());
    EXPECT_EQ(draft.task().unit, "N/mm²");
    EXPECT_EQ(draft.task().title, "Welded coupon 1");
    EXPECT_TRUE(draft.take(22.4));
    EXPECT_TRUE(draft.take(22.915));
    EXPECT_EQ(draft.tested().weldedPa, (std::vector<std::int64_t>{22'400'000, 22'915'000}));
    EXPECT_TRUE(draft.isWhole());
    EXPECT_EQ(draft.task().title, "Welded coupon 3");
    EXPECT_EQ(draft.task().before.size(), 2);
    EXPECT_TRUE(draft.next());
    EXPECT_EQ(draft.task().title, "Coupon 1 of the parent sheet");
    draft.take(23.1);
    EXPECT_FALSE(draft.next());
    EXPECT_TRUE(checkCoupon(draft.tested()));
}

// Force over section, by definition: 3810 N over 12 mm × 14.2 mm is 22.3592 N/mm².
TEST(CouponDraft, AForceIsDividedByTheCouponsSection) {
    CouponDraft draft(about("tensile"), CouponBy::Load);
    EXPECT_EQ(draft.task().unit, "N");
    EXPECT_FALSE(draft.take(3'810));
    EXPECT_EQ(draft.task().unit, "mm");
    EXPECT_TRUE(draft.typed().isEmpty());
    EXPECT_FALSE(draft.take(12));
    EXPECT_TRUE(draft.take(14.2));
    EXPECT_EQ(draft.tested().weldedPa, (std::vector<std::int64_t>{22'359'000}));
    draft.take(3'900);
    EXPECT_EQ(draft.typed(), "12") << "as the coupon before";
    draft.take(12.05);
    EXPECT_EQ(draft.typed(), "14.2");
}

TEST(CouponDraft, WhatWasTypedLastCanBeTakenBack) {
    CouponDraft draft(about("tensile"), CouponBy::Load);
    draft.take(3'810);
    draft.take(12);
    draft.takeBack();
    EXPECT_EQ(draft.task().where, "Its width where it is narrowest.");
    draft.takeBack();
    EXPECT_EQ(draft.task().unit, "N");
    draft.takeBack(); // there is nothing
    EXPECT_TRUE(draft.isEmpty());
    CouponDraft other(about("tensile"), CouponBy::Strength);
    other.take(20);
    other.next();
    other.takeBack();
    EXPECT_EQ(other.step(), CouponStep::Welded);
    other.takeBack();
    EXPECT_TRUE(other.isEmpty());
}

TEST(CouponDraft, ABendCouponIsAnAngleAndWhetherItCracked) {
    CouponDraft draft(about("bend"), CouponBy::Angle);
    EXPECT_EQ(draft.task().unit, "°");
    EXPECT_EQ(draft.task().most, 180);
    EXPECT_FALSE(draft.take(160));
    EXPECT_EQ(draft.step(), CouponStep::Cracked);
    EXPECT_FALSE(draft.isWhole());
    draft.takeBack();
    EXPECT_TRUE(draft.isEmpty());
    draft.take(160);
    draft.takeCracked(false);
    draft.take(95.5);
    draft.takeCracked(true);
    EXPECT_EQ(draft.tested().angleMilli, (std::vector<std::int64_t>{160'000, 95'500}));
    EXPECT_EQ(draft.tested().cracked, (std::vector<std::int64_t>{0, 1}));
    EXPECT_FALSE(draft.next());
    EXPECT_TRUE(checkCoupon(draft.tested()));
    draft.takeBack();
    EXPECT_EQ(draft.tested().angleMilli.size(), 1U);
    EXPECT_EQ(draft.tested().cracked.size(), 1U);
}

TEST(CouponDraft, ABendCouponMayBeToldByTheRamsTravel) {
    CouponTested was = about("bend");
    was.ramUm = {23'000, 31'500};
    was.cracked = {1, 0};
    CouponDraft draft(was, CouponBy::Ram, "coupon:1");
    EXPECT_TRUE(draft.isEmpty());
    EXPECT_EQ(draft.task().unit, "mm");
    EXPECT_EQ(draft.task().most, 500);
    EXPECT_FALSE(draft.take(23.4));
    EXPECT_EQ(draft.count(), 1U);
    draft.takeBack();
    EXPECT_TRUE(draft.isEmpty());
    draft.take(23.4);
    draft.takeCracked(true);
    EXPECT_TRUE(draft.isWhole());
    draft.take(31.5);
    draft.takeCracked(false);
    EXPECT_EQ(draft.tested().ramUm, (std::vector<std::int64_t>{23'400, 31'500}));
    EXPECT_TRUE(draft.tested().angleMilli.empty());
    EXPECT_TRUE(checkCoupon(draft.tested()));
}

TEST(CouponDraft, PuttingRightBeginsAnewAndKeepsWhatItIsAbout) {
    CouponTested was = about("tensile");
    was.weldedPa = {1};
    was.weld = "weld:1";
    const CouponDraft draft(was, CouponBy::Strength, "coupon:1");
    EXPECT_TRUE(draft.isEmpty());
    EXPECT_EQ(draft.series(), "coupon:1");
    EXPECT_EQ(draft.tested().weld, "weld:1");
}

TEST(CouponDraft, ANumberOfASeriesIsReplacedInItsPlace) {
    CouponTested was = about("tensile");
    was.weldedPa = {22'400'000, 29'000'000};
    was.parentPa = {23'100'000};
    CouponDraft draft = CouponDraft::of(was, "coupon:1");
    const auto all = draft.entered();
    ASSERT_EQ(all.size(), 3U);
    EXPECT_EQ(all[1].text, "Welded coupon 2: 29.00 N/mm²");
    EXPECT_EQ(all[2].text, "Coupon 1 of the parent sheet: 23.10 N/mm²");
    EXPECT_EQ(draft.taskOf(all[1]).title, "Welded coupon 2");
    EXPECT_TRUE(draft.isWhole());
    draft.replace(all[1], 22.9);
    EXPECT_EQ(draft.tested().weldedPa, (std::vector<std::int64_t>{22'400'000, 22'900'000}));
    EXPECT_EQ(draft.tested().parentPa, was.parentPa);
    CouponTested bent = about("bend");
    bent.ramUm = {23'400, 31'500};
    bent.cracked = {0, 0};
    CouponDraft ram = CouponDraft::of(bent, "coupon:2");
    ASSERT_EQ(ram.entered().size(), 2U);
    EXPECT_EQ(ram.entered()[1].text, "Bend coupon 2: 31.5 mm");
    ram.replace(ram.entered()[1], 13.5);
    ram.replaceCracked(ram.entered()[1], true);
    EXPECT_EQ(ram.tested().ramUm, (std::vector<std::int64_t>{23'400, 13'500}));
    EXPECT_EQ(ram.tested().cracked, (std::vector<std::int64_t>{0, 1}));
    EXPECT_TRUE(ram.isWhole());
}

} // namespace
} // namespace seamclock
