#include "core/bench/calibration.h"

#include "tests/support/shipped.h"

#include <cmath>
#include <limits>

namespace seamclock {
namespace {

std::string norris() {
    return test::textOf(std::string(SEAMCLOCK_SOURCE_DIR) + "/tests/data/norris.csv");
}

// NIST StRD, linear regression, data set Norris: certified values as printed with it, to 15 digits.
// Double arithmetic about the means keeps 12 of them; another formula keeps far fewer.
constexpr double kPart = 1e-10; // of what is worked out from them
constexpr double kIntercept = -0.262323073774029;
constexpr double kInterceptSd = 0.232818234301152;
constexpr double kSlope = 1.00211681802045;
constexpr double kSlopeSd = 0.429796848199937e-03;
constexpr double kResidualSd = 0.884796396144373;

/// How many digits agree, as NIST counts them.
double digits(double value, double certified) {
    return value == certified ? 15
                              : -std::log10(std::fabs(value - certified) / std::fabs(certified));
}

TEST(LineFit, AgreesWithTheCertifiedNorrisData) {
    std::istringstream lines(norris());
    std::vector<double> x;
    std::vector<double> y;
    for (std::string line; std::getline(lines, line);) {
        double a = 0;
        double b = 0;
        if (std::sscanf(line.c_str(), "%lf,%lf", &a, &b) == 2) {
            x.push_back(a);
            y.push_back(b);
        }
    }
    ASSERT_EQ(x.size(), 36U);
    const auto fit = fitLine(x, y);
    ASSERT_TRUE(fit) << fit.error().detail;
    EXPECT_GE(digits(fit->intercept, kIntercept), 11);
    EXPECT_GE(digits(fit->interceptSd, kInterceptSd), 11);
    EXPECT_GE(digits(fit->slope, kSlope), 11);
    EXPECT_GE(digits(fit->slopeSd, kSlopeSd), 11);
    EXPECT_GE(digits(fit->residualSd, kResidualSd), 11);
    ASSERT_EQ(fit->residuals.size(), 36U);
    double sum = 0;
    for (const double residual : fit->residuals) {
        sum += residual;
    }
    EXPECT_NEAR(sum, 0, 1e-9); // least squares with an intercept; 36 roundings of 1e-13
}

TEST(ScaleFit, TurnsTheLineIntoRateAndZero) {
    const std::string csv = test::replaced(norris(), "x,y", "reading_mm,force_N");
    const auto fit = fitScale("norris.csv", csv);
    ASSERT_TRUE(fit) << fit.error().detail;
    EXPECT_EQ(fit->points.size(), 36U);
    EXPECT_NEAR(fit->rate, kSlope, kPart);
    EXPECT_NEAR(fit->zero, -kIntercept / kSlope, kPart);
    EXPECT_NEAR(fit->rateUncertaintyPercent, 100 * kSlopeSd / kSlope, kPart);
}

// By hand: force = 80 · (reading − 2), with the middle point off by +3 N: residuals −1, 2, −1.
TEST(ScaleFit, IsRightOnAnExampleByHand) {
    const auto fit =
        fitScale("c", "# a comment\r\nreading,force_N\r\n\n 4 , 160\r\n5,243\r\n6,320\n");
    ASSERT_TRUE(fit) << fit.error().detail;
    EXPECT_EQ(fit->points.size(), 3U);
    EXPECT_EQ(fit->worstPoint, 1U);
    EXPECT_EQ(fit->lowestReading, 4);
    EXPECT_EQ(fit->highestReading, 6);
    EXPECT_NEAR(fit->rate, 80, 1e-9);
    EXPECT_NEAR(fit->zero, 5 - 241.0 / 80, 1e-9);
    EXPECT_NEAR(fit->worstResidual, 2, 1e-9);
    EXPECT_NEAR(fit->line.residualSd, std::sqrt(6.0), 1e-9);
    EXPECT_NEAR(fit->line.slopeSd, std::sqrt(6.0) / std::sqrt(2.0), 1e-9);
    EXPECT_NEAR(fit->line.interceptSd, std::sqrt(6.0) * std::sqrt(1.0 / 3 + 25.0 / 2), 1e-9);
}

TEST(ScaleFit, ReadsAFileWithAByteOrderMark) {
    EXPECT_TRUE(fitScale("c", "\xEF\xBB\xBFreading,force_N\n1,80\n2,160\n3,241\n"));
}

struct Bad {
    const char* csv;
    ErrorCode code;
    const char* sentence;
};

TEST(ScaleFit, RefusesWithLineAndValue) {
    const std::vector<Bad> kRows{
        {"", ErrorCode::Malformed, "c: the file is empty; expected the header reading,force_N"},
        {"# only a comment\n", ErrorCode::Malformed,
         "c: the file is empty; expected the header reading,force_N"},
        {"1,2\n", ErrorCode::Malformed,
         "c, line 1: \"1,2\" is not the header; expected reading,force_N (or reading_mm)"},
        {"reading,force\n", ErrorCode::Malformed,
         "c, line 1: \"reading,force\" is not the header; expected reading,force_N (or "
         "reading_mm)"},
        {"reading,force_N\n1,80\n2,abc\n", ErrorCode::Malformed,
         "c, line 3: force_N \"abc\" is not a finite number with a decimal point"},
        {"reading,force_N\n1,80\n\n# x\n,80\n", ErrorCode::Malformed,
         "c, line 5: the reading \"\" is not a finite number with a decimal point"},
        {"reading,force_N\n1,5,80\n", ErrorCode::Malformed,
         "c, line 2: \"1,5,80\" holds 3 values; expected 2, with a decimal point (1.5, not 1,5)"},
        {"reading,force_N\n1,5,80,5\n", ErrorCode::Malformed,
         "c, line 2: \"1,5,80,5\" holds 4 values; expected 2, with a decimal point (1.5, not "
         "1,5)"},
        {"reading,force_N\n80\n", ErrorCode::Malformed,
         "c, line 2: \"80\" holds 1 value; expected 2, with a decimal point"},
        {"reading,force_N\n1;80\n", ErrorCode::Malformed,
         "c, line 2: \"1;80\" is separated by semicolons; expected a comma between the two values "
         "and a decimal point in each"},
        {"reading,force_N\n1,5;80,5\n", ErrorCode::Malformed,
         "c, line 2: \"1,5;80,5\" is separated by semicolons; expected a comma between the two "
         "values and a decimal point in each"},
        {"reading,force_N\n1\t80\n", ErrorCode::Malformed,
         "c, line 2: \"1?80\" is separated by tabs; expected a comma between the two values"},
        {"reading;force_N\n", ErrorCode::Malformed,
         "c, line 1: \"reading;force_N\" is not the header; expected reading,force_N (or "
         "reading_mm), with a comma, not a semicolon"},
        {"reading,force_N\n-1001,80\n", ErrorCode::OutOfRange,
         "c, line 2: the reading \"-1001\" is outside -1000 to 100000"},
        {"reading,force_N\n1,1000001\n", ErrorCode::OutOfRange,
         "c, line 2: force_N \"1000001\" is outside -1000 to 1000000 N"},
        {"reading,force_N\nnan,80\n", ErrorCode::Malformed,
         "c, line 2: the reading \"nan\" is not a finite number with a decimal point"},
        {"reading,force_N\n1,inf\n", ErrorCode::Malformed,
         "c, line 2: force_N \"inf\" is not a finite number with a decimal point"},
        {"reading,force_N\n1,1e999\n", ErrorCode::Malformed,
         "c, line 2: force_N \"1e999\" is not a finite number with a decimal point"},
        {"reading,force_N\n1,80N\n", ErrorCode::Malformed,
         "c, line 2: force_N \"80N\" is not a finite number with a decimal point"},
        {"reading,force_N\n1,80\n2,160\n", ErrorCode::OutOfRange,
         "c: 2 points; a line with its uncertainty needs 3 or more"},
        {"reading,force_N\n2,80\n2,160\n2,170\n", ErrorCode::OutOfRange,
         "c: all readings are the same; a line needs two or more"},
        {"reading,force_N\n1,160\n2,80\n3,0\n", ErrorCode::OutOfRange,
         "c: the rate -80 N per unit is not positive: a spring's force must rise with its "
         "reading"},
        {"reading,force_N\n1,5\n2,5\n3,5\n", ErrorCode::OutOfRange,
         "c: the rate 0 N per unit is not positive: a spring's force must rise with its reading"},
        {"reading,force_N\n1,80\n2,160\n3,240\n4,340\n", ErrorCode::OutOfRange,
         "c: not straight enough: point 3 (reading 3, 240 N) is 8 N off the line; allowed 6.8 N, 2 "
         "% of the largest force (our judgement)"},
    };
    for (const Bad& row : kRows) {
        SCOPED_TRACE(row.csv);
        const auto fit = fitScale("c", row.csv);
        ASSERT_FALSE(fit);
        EXPECT_EQ(fit.error().code, row.code);
        EXPECT_EQ(fit.error().detail, row.sentence);
    }
}

TEST(ScaleFit, TakesAThousandPointsAndNoMore) {
    std::string csv = "reading,force_N\n";
    for (int i = 1; i <= 1000; ++i) {
        csv += std::to_string(i) + "," + std::to_string(80 * i) + "\n";
    }
    EXPECT_TRUE(fitScale("c", csv));
    const auto refused = fitScale("c", csv + "1001,80080\n");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().detail, "c, line 1002: more points than the 1000 that are allowed");
}

// Our judgement's edge: points on 100 x, the third of five off by d. The line passes it by 0.8 d
// (x centred: 1 − 1/5 − 0), so 8 N are allowed at d = 10 beside a largest force of 400 N.
TEST(ScaleFit, MayBeOffByTwoPerCentOfTheLargestForceAndNoMore) {
    const auto withOff = [](const char* third) {
        return fitScale(
            "c", std::string("reading,force_N\n0,0\n1,100\n2,") + third + "\n3,300\n4,400\n");
    };
    const auto just = withOff("209.99");
    ASSERT_TRUE(just) << just.error().detail;
    EXPECT_NEAR(just->worstResidual, 7.992, 1e-9);
    EXPECT_NEAR(allowedResidual(*just), 8, 1e-12);
    EXPECT_FALSE(withOff("210.01"));
    EXPECT_TRUE(withOff("190.01"));
    EXPECT_FALSE(withOff("189.99"));
}

// NIST/SEMATECH e-Handbook, 1.3.6.7.2, critical values of Student's t, column 0.975; from memory.
// The table has three decimals.
TEST(LineFit, TakesStudentsTFromThePublishedTable) {
    const std::pair<int, double> kTable[] = {{1, 12.706}, {2, 4.303},  {3, 3.182},  {4, 2.776},
                                             {5, 2.571},  {8, 2.306},  {10, 2.228}, {20, 2.086},
                                             {30, 2.042}, {60, 2.000}, {100, 1.984}};
    for (const auto& [freedom, t] : kTable) {
        std::vector<double> x;
        std::vector<double> y;
        for (int i = 0; i < freedom + 2; ++i) {
            x.push_back(i);
            y.push_back(i % 2);
        }
        const auto fit = fitLine(x, y);
        ASSERT_TRUE(fit);
        EXPECT_NEAR(fit->t95, t, 0.0005) << freedom;
    }
}

// The example by hand again: x 4, 5, 6, s = √6, t(1) = 12.7062. In the middle the line is known to
// t s √(1/3) = t √2, a further point to t s √(4/3) = t √8; at 7 it is t s √(1/3 + 4/2) = t √14.
TEST(LineFit, HasABandAboutItThatWidensAwayFromTheMiddle) {
    const auto fit = fitLine({4, 5, 6}, {160, 243, 320});
    ASSERT_TRUE(fit);
    constexpr double kT = 12.7062047362; // tan(0.475 π), the closed form of one degree of freedom
    EXPECT_NEAR(fit->confidenceAt(5), kT * std::sqrt(2.0), 1e-6);
    EXPECT_NEAR(fit->predictionAt(5), kT * std::sqrt(8.0), 1e-6);
    EXPECT_NEAR(fit->confidenceAt(7), kT * std::sqrt(14.0), 1e-6);
    EXPECT_NEAR(fit->confidenceAt(3), fit->confidenceAt(7), 1e-6);
    EXPECT_NEAR(fit->predictionAt(7), kT * std::sqrt(20.0), 1e-6);
}

// At x = 0 the line is its intercept: NIST's certified standard deviation of it, times t.
TEST(LineFit, HasItsInterceptsCertifiedDeviationInItsBand) {
    const auto fit = fitScale("n", test::replaced(norris(), "x,y", "reading,force_N"));
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->line.confidenceAt(0) / fit->line.t95, kInterceptSd, kPart);
    EXPECT_NEAR(fit->line.t95, 2.032, 0.0005); // 34 degrees of freedom, the same table
    // zero = −a/b; to first order its deviation is that of the line there, over the slope
    EXPECT_NEAR(fit->zeroSd, fit->line.confidenceAt(fit->zero) / fit->line.t95 / kSlope, kPart);
}

TEST(ScaleFit, SurvivesZeroBytes) {
    const auto fit = fitScale("c", std::string_view("reading,force_N\n\0\0\0,1\n", 22));
    ASSERT_FALSE(fit);
    EXPECT_EQ(
        fit.error().detail,
        "c, line 2: the reading \"???\" is not a finite number with a decimal point");
}

TEST(LineFit, RefusesWhatIsNoSetOfPoints) {
    EXPECT_FALSE(fitLine({1, 2, 3}, {1, 2}));
    EXPECT_FALSE(fitLine({}, {}));
    EXPECT_FALSE(fitLine({1, 2, std::numeric_limits<double>::quiet_NaN()}, {1, 2, 3}));
    EXPECT_FALSE(fitLine({1, 2, 3}, {1, std::numeric_limits<double>::infinity(), 3}));
    EXPECT_TRUE(fitLine({1, 2, 3}, {3, 2, 1})); // a falling line is a line
    const auto tooLarge = fitLine({1e200, 2e200, 3e200}, {1e300, 1e308, 1});
    ASSERT_FALSE(tooLarge);
    EXPECT_EQ(tooLarge.error().detail, "the points are too large for a line to be fitted");
}

} // namespace
} // namespace seamclock
