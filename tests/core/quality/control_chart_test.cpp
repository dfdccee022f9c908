// The individuals chart against the handbook's worked example, and its rules by hand.
#include "core/quality/control_chart.h"

#include "tests/support/shipped.h"

#include <gtest/gtest.h>
#include <sstream>

namespace seamclock {
namespace {

std::vector<double> flowRates() {
    std::istringstream lines(
        test::textOf(std::string(SEAMCLOCK_SOURCE_DIR) + "/tests/data/individuals-chart.csv"));
    std::vector<double> out;
    std::string line;
    while (std::getline(lines, line)) {
        if (line.empty() || line[0] == '#' || line.rfind("batch", 0) == 0) {
            continue;
        }
        out.push_back(std::stod(line.substr(line.find(',') + 1)));
    }
    return out;
}

// 210.3 and the like have no end in binary: a sum of them misses n times the value by a last bit.
TEST(ControlChart, FindsNothingInValuesThatAreAllEqual) {
    for (const double value : {6.016, 210.3, 0.2, 61.7}) {
        for (std::size_t count = 2; count < 40; ++count) {
            const std::vector<double> equal(count, value);
            const auto limits = limitsOf(equal);
            ASSERT_TRUE(limits);
            EXPECT_EQ(limits->mean, value);
            EXPECT_TRUE(findingsOf(equal, *limits).empty()) << count << " times " << value;
        }
    }
}

TEST(ControlChart, HasTheHandbooksLimits) {
    // NIST/SEMATECH e-Handbook 6.3.2.2, the figures in the file's own head.
    const auto values = flowRates();
    ASSERT_EQ(values.size(), 10U);
    const auto limits = limitsOf(values);
    ASSERT_TRUE(limits);
    EXPECT_NEAR(limits->mean, 50.81, 1e-9);
    EXPECT_NEAR(limits->meanRange, 1.8778, 5e-5); // as printed
    EXPECT_NEAR(limits->upper, 55.8041, 2e-4);    // worked out from the rounded range
    EXPECT_NEAR(limits->lower, 45.8159, 2e-4);
    EXPECT_NEAR(limits->upperRange, 3.267 * limits->meanRange, 1e-12);
    EXPECT_NEAR(kIndividualsFactor, 2.66, 5e-4);
    // The handbook finds the process in control.
    EXPECT_TRUE(findingsOf(values, *limits).empty());
}

TEST(ControlChart, NeedsTwoValues) {
    EXPECT_FALSE(limitsOf({}));
    EXPECT_FALSE(limitsOf({3}));
    const auto limits = limitsOf({3, 5});
    ASSERT_TRUE(limits);
    EXPECT_DOUBLE_EQ(limits->mean, 4);
    EXPECT_DOUBLE_EQ(limits->meanRange, 2);
}

constexpr ControlLimits kLimits{10, 4, 16, 2, 6.5};

TEST(ControlChart, NamesWhatLiesOutsideAndNotWhatLiesOnALimit) {
    EXPECT_TRUE(findingsOf({16, 10, 4}, kLimits).empty());
    const auto found = findingsOf({16.01, 10, 3.99}, kLimits);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0], (ChartFinding{ChartSign::AboveLimit, 0, 0}));
    EXPECT_EQ(found[1], (ChartFinding{ChartSign::BelowLimit, 2, 2}));
    const auto apart = findingsOf({7, 13.6}, kLimits);
    ASSERT_EQ(apart.size(), 1U);
    EXPECT_EQ(apart[0], (ChartFinding{ChartSign::RangeAboveLimit, 0, 1}));
}

TEST(ControlChart, NamesEightOnOneSideAndNotSeven) {
    const std::vector<double> seven{11, 12, 11, 12, 11, 12, 11, 9};
    EXPECT_TRUE(findingsOf(seven, kLimits).empty());
    const std::vector<double> nine{9, 11, 12, 11, 12, 11, 12, 11, 12, 11, 9};
    const auto found = findingsOf(nine, kLimits);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0], (ChartFinding{ChartSign::AboveMean, 1, 9}));
    // On the mean is on neither side.
    const std::vector<double> broken{9, 8, 9, 8, 10, 9, 8, 9, 8};
    EXPECT_TRUE(findingsOf(broken, kLimits).empty());
    const std::vector<double> below{9, 8, 9, 8, 9, 8, 9, 8};
    ASSERT_EQ(findingsOf(below, kLimits).size(), 1U);
    EXPECT_EQ(findingsOf(below, kLimits)[0], (ChartFinding{ChartSign::BelowMean, 0, 7}));
}

TEST(ControlChart, NamesSixThatRiseAndNotFive) {
    EXPECT_TRUE(findingsOf({8, 9, 10, 11, 12}, kLimits).empty());
    const auto found = findingsOf({9, 8, 9, 10, 11, 12, 13, 12}, kLimits);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0], (ChartFinding{ChartSign::Rising, 1, 6}));
    EXPECT_TRUE(findingsOf({8, 9, 10, 10, 11, 12}, kLimits).empty()); // level is no rise
    const auto falls = findingsOf({8, 13, 12, 11, 10, 9, 8}, kLimits);
    ASSERT_EQ(falls.size(), 1U);
    EXPECT_EQ(falls[0], (ChartFinding{ChartSign::Falling, 1, 6}));
}

} // namespace
} // namespace seamclock
