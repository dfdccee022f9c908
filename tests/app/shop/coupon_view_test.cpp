// A strength test in words: never a factor without its interval or why there is none, and nothing
// that was ever entered is hidden.
#include "app/shop/coupon_view.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

CouponSeries series(const std::vector<double>& welded, const std::vector<double>& parent) {
    CouponSeries out;
    out.id = "coupon:1";
    out.joint = 12;
    out.joinedBy = "person:ilva";
    CouponVersion version;
    version.by = "person:oddo";
    version.at.utc = Milliseconds{1'894'514'400'000};
    version.tested.test = "tensile";
    version.tested.material = "PE-HD";
    version.tested.thicknessUm = 8'000;
    for (const double one : welded) {
        version.tested.weldedPa.push_back(static_cast<std::int64_t>(one * 1e6));
    }
    for (const double one : parent) {
        version.tested.parentPa.push_back(static_cast<std::int64_t>(one * 1e6));
    }
    out.versions = {version};
    out.required = requiredFactor("PE-HD");
    if (!parent.empty()) {
        out.factor = weldingFactor(welded, parent).value();
    }
    return out;
}

DayNames names() {
    DayNames out;
    out.people["person:ilva"] = "Ilva";
    out.people["person:oddo"] = "Oddo";
    return out;
}

QStringList textsOf(const std::vector<ListRowView>& rows) {
    QStringList out;
    for (const ListRowView& row : rows) {
        out << row.text + "|" + row.second + "|" + row.third;
    }
    return out;
}

TEST(CouponView, TheFactorStandsWithItsIntervalAgainstTheRequiredOne) {
    // 22.4667 / 23.1 = 0.9726; the interval is core's and checked there (welding_factor_test).
    const CouponSeries good = series({22.4, 22.9, 22.1}, {23.1, 23.4, 22.8});
    const QString text = factorText(*good.factor);
    EXPECT_TRUE(text.startsWith("0.973, with 95 % between 0.9")) << text.toStdString();
    EXPECT_EQ(answerText(*good.factor, 0.9), "Above the required 0.90, with all its interval.");
    const ListRowView row = couponRow(good, names());
    EXPECT_EQ(row.text, "Tensile test, joint 12, PE-HD, 8 mm");
    EXPECT_EQ(row.mark, Mark::Done);
    EXPECT_TRUE(row.second.contains("welded by Ilva"));
    EXPECT_EQ(row.third, "Above the required 0.90, with all its interval.");
    const CouponSeries loose = series({22.4, 19.9, 23.1}, {23.1, 23.4, 22.8});
    EXPECT_EQ(couponRow(loose, names()).mark, Mark::Trouble);
    EXPECT_EQ(
        answerText(*loose.factor, 0.9),
        "Reaches the required 0.90 by its means, not with all its interval.");
    const CouponSeries weak = series({15, 15.2, 14.9}, {23.1, 23.4, 22.8});
    EXPECT_EQ(couponRow(weak, names()).mark, Mark::Late);
    EXPECT_EQ(answerText(*weak.factor, 0.9), "Below the required 0.90.");
    EXPECT_EQ(
        answerText(*weak.factor, std::nullopt), "No required factor is known for this material.");
}

TEST(CouponView, WithoutParentCouponsOrWithOneThereIsNoNumberThatPromisesMore) {
    EXPECT_EQ(couponRow(series({22.4}, {}), names()).mark, Mark::Open);
    EXPECT_TRUE(factorText(*series({22.4}, {23.1}).factor).contains("no interval"));
    // 20.7 / 23.1 = 0.8961: with two places it would be 0.90, and below 0.90.
    EXPECT_TRUE(factorText(*series({20.7}, {23.1}).factor).startsWith("0.896, "));
}

TEST(CouponView, EveryVersionStandsOnItsPage) {
    CouponSeries put = series({22.4, 22.9}, {23.1, 23.4});
    put.versions.push_back(put.versions.front());
    put.versions.back().tested.weldedPa = {22'359'000};
    put.versions.back().tested.reason = "typed from the wrong sheet";
    const QStringList texts = textsOf(couponPage(put, names()).rows);
    EXPECT_TRUE(texts.contains("Entered on 13 Jan 2030 by Oddo||Then: welded 22.40 · 22.90, parent "
                               "23.10 · 23.40"))
        << texts.join('\n').toStdString();
    EXPECT_TRUE(texts.contains("Put right on 13 Jan 2030 by Oddo|typed from the wrong sheet|"));
    EXPECT_TRUE(couponRow(put, names()).second.contains("put right"));
}

TEST(CouponView, AVersionThatWasOfAnotherJointSaysSo) {
    CouponSeries put = series({22.4, 22.9}, {23.1, 23.4});
    CouponVersion& was = put.versions.front();
    was.joint = 9;
    was.tested.weld = "weld:9";
    was.tested.standard = "EN 12814-2";
    put.versions.push_back(was);
    put.versions.back().tested.weld = "weld:12";
    put.versions.back().tested.standard = "EN 12814-6";
    put.versions.back().tested.reason = "the wrong joint";
    const QStringList texts = textsOf(couponPage(put, names()).rows);
    EXPECT_TRUE(texts.contains("Entered on 13 Jan 2030 by Oddo||Then: welded 22.40 · 22.90, parent "
                               "23.10 · 23.40 (joint 9, tensile test by EN 12814-2)"))
        << texts.join('\n').toStdString();
    put.versions.front().tested.weld.reset();
    put.versions.front().joint = 0;
    EXPECT_TRUE(textsOf(couponPage(put, names()).rows).join('\n').contains("(a procedure trial, "));
}

TEST(CouponView, AWelderOfAnotherLogIsCalledAsThatLogDoes) {
    CouponSeries put = series({22.4, 22.9}, {23.1, 23.4});
    put.joinedByName = "Jan Verrik";
    EXPECT_TRUE(couponRow(put, names()).second.contains("welded by Jan Verrik"))
        << couponRow(put, names()).second.toStdString();
}

TEST(CouponView, WhatCantBeReadIsSaidOfTheTestAndOnTheList) {
    CouponSeries half = series({22.4, 22.9}, {23.1, 23.4});
    half.joint = 0;
    half.versions.back().tested.weld = "weld:7";
    half.unread = {{"coupon:1", 2, "not canonical"}, {"weld:7", 1, "not canonical"}};
    const ListRowView row = couponRow(half, names());
    EXPECT_EQ(row.text, "Tensile test, a joint that can't be read, PE-HD, 8 mm");
    EXPECT_EQ(row.third, "Not all of it can be read.");
    EXPECT_EQ(row.mark, Mark::Trouble);
    const QStringList page = textsOf(couponPage(half, names()).rows);
    EXPECT_EQ(page.at(0), "Event 2 of this test can't be read.|coupon:1|");
    EXPECT_EQ(page.at(1), "Event 1 of its joint can't be read.|weld:7|");
    const CouponsRead all{{half}, {{"coupon:9", 1, "not canonical"}}};
    const ListView list = couponList(all, names());
    EXPECT_EQ(list.trouble, "A test that can't be read stands last.");
    ASSERT_EQ(list.rows.size(), 2U);
    EXPECT_EQ(textsOf(list.rows).at(1), "Event 1 of this test can't be read.|coupon:9|");
    EXPECT_FALSE(list.rows[1].enabled);
}

TEST(CouponView, WhatTheRamsTravelWasBeforeStaysReadable) {
    CouponSeries bent = series({}, {});
    CouponTested& tested = bent.versions.back().tested;
    tested.test = "bend";
    tested.ramUm = {23'000};
    tested.cracked = {1};
    bent.versions.push_back(bent.versions.front());
    bent.versions.back().tested.reason = "misread";
    const QStringList texts = textsOf(couponPage(bent, names()).rows);
    EXPECT_TRUE(texts.contains("Entered on 13 Jan 2030 by Oddo||Then: 23.0 mm, 1 of 1 cracked"))
        << texts.join('\n').toStdString();
}

TEST(CouponView, ABendTestSaysHowManyCracked) {
    CouponSeries bent = series({}, {});
    CouponTested& tested = bent.versions.back().tested;
    tested.test = "bend";
    tested.angleMilli = {160'000, 95'500};
    tested.cracked = {0, 1};
    const ListRowView row = couponRow(bent, names());
    EXPECT_EQ(row.text, "Bend test, joint 12, PE-HD, 8 mm");
    EXPECT_TRUE(row.second.startsWith("1 of 2 cracked"));
    EXPECT_EQ(row.mark, Mark::Trouble);
    EXPECT_EQ(draftRows(tested).front().text, "1 of 2 cracked");
}

} // namespace
} // namespace seamclock
