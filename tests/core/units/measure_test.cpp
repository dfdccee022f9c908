#include "core/units/measure.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>
#include <string>

namespace seamclock {
namespace {

constexpr auto kMetric = UnitSystem::Metric;
constexpr auto kImperial = UnitSystem::Imperial;

// NIST Special Publication 811, appendix B.8; psi has the seven digits that are printed there.
constexpr double kMmPerInch = 25.4;
constexpr double kNewtonsPerPound = 4.4482216152605;
constexpr double kNewtonsPerKgf = 9.80665;
constexpr double kPascalsPerPsiPrinted = 6894.757;

double valueOf(const Measure& measure) {
    return std::stod(measure.number);
}

/// Half a unit of the last digit that is printed, and the noise of a double.
double halfDigit(const Measure& measure) {
    const auto dot = measure.number.find('.');
    const auto decimals =
        dot == std::string::npos ? 0 : static_cast<double>(measure.number.size() - dot - 1);
    return 0.5 * std::pow(10.0, -decimals) * (1 + 1e-9);
}

TEST(Measure, WritesMetricNumbersAsThePlanHoldsThem) {
    EXPECT_EQ(lengthIn(kMetric, 10'000).text(), "10 mm");
    EXPECT_EQ(lengthIn(kMetric, 1'234).text(), "1.234 mm");
    EXPECT_EQ(lengthIn(kMetric, 0).text(), "0 mm");
    EXPECT_EQ(forceIn(kMetric, 1'656'040).text(), "1656 N");
    EXPECT_EQ(forceIn(kMetric, 1'656'050).text(), "1656.1 N");
    EXPECT_EQ(pressureIn(kMetric, 150'000).text(), "0.15 N/mm²");
    EXPECT_EQ(temperatureIn(kMetric, -2'500).text(), "-2.5 °C");
    EXPECT_EQ(rateIn(kMetric, 90'000, "mm").text(), "90 N/mm");
}

// 10 mm / 25.4, 1500 N / 4.4482216…, 0.15 MPa / 6894.757 Pa: worked out with bc from the factors of
// NIST SP 811.
TEST(Measure, TurnsThemWithThePublishedFactors) {
    EXPECT_EQ(lengthIn(kImperial, 10'000).text(), "0.394 in");
    EXPECT_EQ(lengthIn(kImperial, 1'450'000).text(), "57.09 in");
    EXPECT_EQ(lengthIn(kImperial, 850).text(), "0.0335 in") << "0.85 mm has two decimals";
    EXPECT_EQ(lengthIn(kImperial, 0).text(), "0.000 in");
    EXPECT_EQ(forceIn(kImperial, 1'500'000).text(), "337.2 lbf");
    EXPECT_EQ(forceIn(kImperial, 0).text(), "0.0 lbf");
    EXPECT_EQ(kilogramsForceOf(1'500'000).text(), "153.0 kgf");
    EXPECT_EQ(pressureIn(kImperial, 150'000).text(), "21.76 psi");
    EXPECT_EQ(rateIn(kImperial, 90'000, "mm").text(), "20.23 lbf/mm");
}

// Water freezes at 32 °F and boils at 212 °F; the scales cross at -40.
TEST(Measure, TurnsDegreesExactly) {
    EXPECT_EQ(temperatureIn(kImperial, 0).text(), "32 °F");
    EXPECT_EQ(temperatureIn(kImperial, 100'000).text(), "212 °F");
    EXPECT_EQ(temperatureIn(kImperial, -40'000).text(), "-40 °F");
    EXPECT_EQ(temperatureIn(kImperial, 212'500).text(), "414.5 °F");
    EXPECT_EQ(temperatureIn(kImperial, -17'777).text(), "0.0014 °F");
}

TEST(Measure, IsNeverFurtherOffThanHalfItsLastDigit) {
    std::mt19937_64 random(5); // the same numbers on every machine
    for (int i = 0; i < 100'000; ++i) {
        const auto whole = static_cast<std::int64_t>(random() % 3'000'000);
        const double milli = static_cast<double>(whole) / 1e3;
        const auto near = [&](const Measure& shown, double factor, double offset = 0) {
            EXPECT_NEAR(valueOf(shown), milli / factor + offset, halfDigit(shown))
                << whole << " is shown as " << shown.text();
        };
        near(lengthIn(kMetric, whole), 1);
        near(lengthIn(kImperial, whole), kMmPerInch);
        near(forceIn(kImperial, whole), kNewtonsPerPound);
        near(kilogramsForceOf(whole), kNewtonsPerKgf);
        near(rateIn(kImperial, whole, "mm"), kNewtonsPerPound);
        near(temperatureIn(kImperial, whole), 5.0 / 9, 32);
        const Measure psi = pressureIn(kImperial, whole);
        // The published factor itself is good to half its seventh digit.
        EXPECT_NEAR(
            valueOf(psi), milli * 1e3 / kPascalsPerPsiPrinted,
            halfDigit(psi) + milli * 1e3 / kPascalsPerPsiPrinted * 1e-7);
    }
}

TEST(Measure, KeepsWhatItsOwnSystemPrinted) {
    // An imperial number says at least as much as a metric one: turned back and rounded to the
    // metric number's tenth it is the same.
    for (std::int64_t um = 0; um < 2'000'000; um += 1'300) {
        const double back = valueOf(lengthIn(kImperial, um)) * kMmPerInch;
        EXPECT_NEAR(back, static_cast<double>(um) / 1e3, um < 254'000 ? 0.013 : 0.13);
    }
}

struct Sentence {
    const char* metric;
    SentenceAbout about;
    const char* imperial;
};

TEST(Measure, TurnsTheNumbersInASentence) {
    const Sentence kSentences[] = {
        {"ambient 3 °C is outside +5 to +45 °C", {}, "ambient 37.4 °F is outside +41 to +113 °F"},
        {"ambient -3.5 °C", {}, "ambient 25.7 °F"},
        {"the drag of 45 N holds", {}, "the drag of 10.1 lbf holds"},
        {"0.15 N/mm² on 10 mm", {"mm", false}, "21.76 psi on 0.394 in"},
        {"the table says 0 to 4.5 mm.", {}, "the table says 0.000 to 0.177 in."},
        // A scale in mm keeps its readings; one in other marks has no mm.
        {"divisions of 1 mm show 0.28 mm (24 N)",
         {"mm", true},
         "divisions of 1 mm show 0.28 mm (5.4 lbf)"},
        {"divisions of 1 marks: an offcut of 254 mm, or 85 N/marks",
         {"marks", true},
         "divisions of 1 marks: an offcut of 10.00 in, or 19.11 lbf/marks"},
        // No values, or no units of ours
        {"as DVS 2207-1 N says, 85 N/mm, 12 Nm, 3 mm² and 200 K",
         {},
         "as DVS 2207-1 N says, 85 N/mm, 12 Nm, 3 mm² and 200 K"},
        {"1 to 2", {}, "1 to 2"},
        {"12.", {}, "12."},
        {"", {}, ""}};
    for (const Sentence& each : kSentences) {
        EXPECT_EQ(sentenceIn(kImperial, each.metric, each.about), each.imperial);
        EXPECT_EQ(sentenceIn(kMetric, each.metric, each.about), each.metric);
    }
}

} // namespace
} // namespace seamclock
