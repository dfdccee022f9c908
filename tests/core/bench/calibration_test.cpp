#include "core/bench/calibration.h"

#include "tests/support/shipped.h"

#include <cmath>
#include <limits>

namespace seamclock {
namespace {

std::string norris() {
    return test::textOf(std::string(SEAMCLOCK_SOURCE_DIR) + "/tests/data/norris.csv");
}

// NIST StRD, linear regression, data set Norris: certified values as printed with it. A part in
// 10^10 leaves room for double arithmetic and none for another formula.
constexpr double kPart = 1e-10;
constexpr double kIntercept = -0.262323073774029;
constexpr double kInterceptSd = 0.232818234301152;
constexpr double kSlope = 1.00211681802045;
constexpr double kSlopeSd = 0.429796848199937e-03;
constexpr double kResidualSd = 0.884796396144373;

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
    EXPECT_NEAR(fit->intercept, kIntercept, kPart);
    EXPECT_NEAR(fit->interceptSd, kInterceptSd, kPart);
    EXPECT_NEAR(fit->slope, kSlope, kPart);
    EXPECT_NEAR(fit->slopeSd, kSlopeSd, kPart * 1e-3);
    EXPECT_NEAR(fit->residualSd, kResidualSd, kPart);
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
    EXPECT_EQ(fit->points, 36);
    EXPECT_NEAR(fit->rate, kSlope, kPart);
    EXPECT_NEAR(fit->zero, -kIntercept / kSlope, kPart);
    EXPECT_NEAR(fit->rateUncertaintyPercent, 100 * kSlopeSd / kSlope, kPart);
}

// By hand: force = 80 · (reading − 2), with the middle point off by +3 N: residuals −1, 2, −1.
TEST(ScaleFit, IsRightOnAnExampleByHand) {
    const auto fit =
        fitScale("c", "# a comment\r\nreading,force_N\r\n\n 4 , 160\r\n5,243\r\n6,320\n");
    ASSERT_TRUE(fit) << fit.error().detail;
    EXPECT_EQ(fit->points, 3);
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
         "c, line 2: \"1,5,80\" holds 3 values; expected 2, with a decimal point"},
        {"reading,force_N\n1;80\n", ErrorCode::Malformed,
         "c, line 2: \"1;80\" holds 1 values; expected 2, with a decimal point"},
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
        {"reading,force_N\n1e200,1e300\n2e200,1e308\n3e200,1\n", ErrorCode::OutOfRange,
         "c: the points are too large for a line to be fitted"},
    };
    for (const Bad& row : kRows) {
        SCOPED_TRACE(row.csv);
        const auto fit = fitScale("c", row.csv);
        ASSERT_FALSE(fit);
        EXPECT_EQ(fit.error().code, row.code);
        EXPECT_EQ(fit.error().detail, row.sentence);
    }
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
}

} // namespace
} // namespace seamclock
