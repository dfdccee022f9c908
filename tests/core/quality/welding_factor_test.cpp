// The welding factor against arithmetic by hand, Student's table (NIST/SEMATECH e-Handbook
// 1.3.6.7.2), a published confidence interval, and what 95 % means.
#include "core/quality/welding_factor.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace seamclock {
namespace {

TEST(WeldingFactor, IsTheWorkedExamplesArithmetic) {
    // Welded 27, 28, 29, 28, 28: sum 140, mean 28; squares 1 + 0 + 1 + 0 + 0 = 2, variance 2 / 4 =
    // 0.5. Parent 30, 31, 29, 30, 30: mean 30, variance 0.5. Factor 28 / 30 = 0.93333.
    const auto made = weldingFactor({27, 28, 29, 28, 28}, {30, 31, 29, 30, 30});
    ASSERT_TRUE(made) << made.error().detail;
    EXPECT_EQ(made->welded.count, 5U);
    EXPECT_DOUBLE_EQ(made->welded.meanMpa, 28);
    EXPECT_NEAR(made->welded.sdMpa, std::sqrt(0.5), 1e-12);
    EXPECT_NEAR(made->parent.sdMpa, std::sqrt(0.5), 1e-12);
    EXPECT_NEAR(made->factor, 28.0 / 30, 1e-12);
    // Variances of the means: a = 0.5 / 5 = 0.1, and b = 0.93333² · 0.1 = 0.0871111. Welch:
    // 0.1871111² / (0.1² / 4 + 0.0871111² / 4) = 0.03501057 / 0.00439709 = 7.9622.
    ASSERT_TRUE(made->interval);
    EXPECT_NEAR(made->interval->freedom, 7.9622, 1e-4);
    // The table: 2.306 for 8, 2.365 for 7 degrees of freedom.
    EXPECT_GT(made->interval->t95, 2.306);
    EXPECT_LT(made->interval->t95, 2.365);
    // By a straight line between them 2.3082: g = 2.3082² · 0.1 / 30² = 0.000592; half
    // = 2.3082 / 30 · sqrt(0.1 · (1 - g) + 0.0871111) = 0.076940 · 0.432496 = 0.033276;
    // (0.933333 ± 0.033276) / (1 - 0.000592) = 0.90059 and 0.96718.
    EXPECT_NEAR(made->interval->low, 0.90059, 3e-5); // the straight line is off by 1e-3 of t
    EXPECT_NEAR(made->interval->high, 0.96718, 3e-5);
    EXPECT_EQ(answerOf(*made, requiredFactor("PE-HD")), FactorAnswer::Met);
}

TEST(WeldingFactor, TakesStudentsTFromTheTable) {
    // Equal scatter and a factor of 1: the degrees of freedom are n1 + n2 - 2.
    const struct {
        std::vector<double> strengths;
        double freedom;
        double t;
    } rows[] = {{{29, 31}, 2, 4.303}, {{29, 30, 31}, 4, 2.776}, {{29, 30, 30, 30, 31}, 8, 2.306}};
    for (const auto& row : rows) {
        const auto made = weldingFactor(row.strengths, row.strengths);
        ASSERT_TRUE(made && made->interval);
        EXPECT_NEAR(made->interval->freedom, row.freedom, 1e-9);
        EXPECT_NEAR(made->interval->t95, row.t, 5e-4); // as it is printed
    }
}

TEST(WeldingFactor, IsThePublishedIntervalOfAMeanWhereTheParentDoesNotScatter) {
    // NIST/SEMATECH e-Handbook 1.3.5.2, heat flow (ZARR13.DAT): 195 values of mean 9.261460 and
    // standard deviation 0.022789 have a 95 % interval from 9.258242 to 9.264679 (recalled). 97
    // values on either side of the mean and one on it have just that standard deviation.
    std::vector<double> values{9.261460};
    for (int i = 0; i < 97; ++i) {
        values.push_back(9.261460 + 0.022789);
        values.push_back(9.261460 - 0.022789);
    }
    const auto made = weldingFactor(values, {1, 1});
    ASSERT_TRUE(made && made->interval);
    EXPECT_NEAR(made->welded.sdMpa, 0.022789, 1e-9);
    EXPECT_NEAR(made->interval->freedom, 194, 1e-9);
    EXPECT_NEAR(made->interval->low, 9.258242, 1.5e-6); // as printed, from rounded figures
    EXPECT_NEAR(made->interval->high, 9.264679, 1.5e-6);
}

TEST(WeldingFactor, EndsWhereStudentsTSaysThatTheDifferenceIsNone) {
    // Fieller's definition, by itself: at either end t of (welded - r · parent) is t95.
    const auto made = weldingFactor({22, 27, 25, 29}, {30, 24, 33, 28, 31});
    ASSERT_TRUE(made && made->interval);
    const auto share = [](const StrengthMean& of) {
        return of.sdMpa * of.sdMpa / static_cast<double>(of.count);
    };
    for (const double r : {made->interval->low, made->interval->high}) {
        const double t = (made->welded.meanMpa - r * made->parent.meanMpa) /
                         std::sqrt(share(made->welded) + r * r * share(made->parent));
        EXPECT_NEAR(std::abs(t), made->interval->t95, 1e-9);
    }
}

TEST(WeldingFactor, HoldsTheTrueFactorNineteenTimesOfTwenty) {
    std::mt19937_64 chance(2203);
    std::normal_distribution<double> normal;
    constexpr int kSeries = 20'000;
    int held = 0;
    for (int i = 0; i < kSeries; ++i) {
        std::vector<double> welded;
        std::vector<double> parent;
        for (int k = 0; k < 5; ++k) {
            welded.push_back(27.9 + 1.5 * normal(chance));
            parent.push_back(30 + 0.6 * normal(chance));
        }
        const auto made = weldingFactor(welded, parent);
        ASSERT_TRUE(made && made->interval);
        held += made->interval->low <= 0.93 && 0.93 <= made->interval->high ? 1 : 0;
    }
    // The count scatters by sqrt(0.95 · 0.05 / 20,000) = 0.0015; Welch's degrees of freedom are
    // known to be off by a few thousandths for five values.
    EXPECT_NEAR(static_cast<double>(held) / kSeries, 0.95, 0.008);
}

TEST(WeldingFactor, HasNoIntervalWhereNothingFixesIt) {
    const auto one = weldingFactor({28}, {30, 31});
    ASSERT_TRUE(one);
    EXPECT_FALSE(one->interval);
    EXPECT_EQ(answerOf(*one, 0.9), FactorAnswer::MetByMean);
    const auto wild = weldingFactor({28, 28}, {1, 60}); // t² · s² / n / mean² = 161 · ... > 1
    ASSERT_TRUE(wild);
    EXPECT_FALSE(wild->interval);
    const auto same = weldingFactor({27, 27}, {30, 30});
    ASSERT_TRUE(same && same->interval);
    EXPECT_DOUBLE_EQ(same->interval->low, 0.9);
    EXPECT_DOUBLE_EQ(same->interval->high, 0.9);
}

TEST(WeldingFactor, AnswersByMeanAndByInterval) {
    EXPECT_EQ(requiredFactor("PP"), 0.9);
    for (const char* called : {"PP-H", "PE 100", "PE-HD", "PVDF"}) { // as a sheet is called
        EXPECT_EQ(requiredFactor(called), 0.9) << called;
    }
    EXPECT_EQ(requiredFactor("ECTFE"), std::nullopt);
    const auto loose = weldingFactor({25, 31, 27.5}, {30, 30, 30});
    ASSERT_TRUE(loose && loose->interval);
    EXPECT_LT(loose->interval->low, 0.9);
    EXPECT_EQ(answerOf(*loose, 0.9), FactorAnswer::MetByMean);
    EXPECT_EQ(answerOf(*loose, 0.95), FactorAnswer::NotMet);
    EXPECT_EQ(answerOf(*loose, std::nullopt), FactorAnswer::NoRequirement);
}

// 28.8 is nine tenths of 32, and so on: no sum of doubles may make it less.
TEST(WeldingFactor, ExactlyTheRequiredOneIsReached) {
    for (int tenths = 200; tenths < 400; ++tenths) {
        for (const std::size_t count : {1U, 3U, 5U, 7U}) {
            const double parent = tenths / 10.0;
            const double welded = tenths * 9 / 100.0;
            const auto factor =
                weldingFactor(std::vector<double>(count, welded), std::vector<double>(5, parent));
            ASSERT_TRUE(factor);
            EXPECT_NE(answerOf(*factor, 0.9), FactorAnswer::NotMet) << welded << " of " << parent;
        }
    }
    const auto less = weldingFactor({26.99, 26.99, 26.99}, {30, 30, 30});
    EXPECT_EQ(answerOf(*less, 0.9), FactorAnswer::NotMet);
}

TEST(WeldingFactor, RefusesWhatNoCouponBears) {
    EXPECT_EQ(
        weldingFactor({}, {30}).error().detail, "no welded coupon is given; allowed: 1 to 200");
    EXPECT_EQ(weldingFactor({28}, {}).error().code, ErrorCode::Missing);
    EXPECT_EQ(
        weldingFactor({28, 2'800}, {30}).error().detail,
        "a welded strength of 2800 MPa; allowed: 0.1 to 1000 MPa");
    EXPECT_FALSE(weldingFactor({28}, {std::nan("")}).has_value());
    EXPECT_EQ(
        weldingFactor(std::vector<double>(201, 28), {30}).error().detail,
        "201 welded coupons; allowed: 1 to 200");
}

} // namespace
} // namespace seamclock
