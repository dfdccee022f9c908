// A series of strength tests in words; the factor's own numbers are judged in core/quality.
#include "core/report/coupon_text.h"

#include <gtest/gtest.h>
#include <sstream>

namespace seamclock {
namespace {

CouponTested tensile() {
    CouponTested out;
    out.test = "tensile";
    out.standard = "EN 12814-2";
    out.material = "PE-HD";
    out.thicknessUm = 15'000;
    out.procedure = "pe-hd-15";
    out.weldedPa = {30'100'000, 30'500'000, 29'900'000, 30'300'000, 30'200'000};
    out.parentPa = {31'000'000, 31'200'000, 30'900'000, 31'100'000, 31'000'000};
    return out;
}

CouponTested bend() {
    CouponTested out;
    out.test = "bend";
    out.material = "PP";
    out.thicknessUm = 9'500;
    out.angleMilli = {160'000, 92'500};
    out.ramUm = {41'000, 18'200};
    out.cracked = {0, 1};
    return out;
}

CouponSeries seriesOf(const CouponTested& tested) {
    CouponSeries out;
    out.id = "coupon:1";
    out.versions.push_back({});
    out.versions.back().tested = tested;
    return out;
}

/// What stands behind the name.
std::string rowOf(const std::string& text, const std::string& name) {
    const std::string begins = "\n  " + name + " ";
    const auto found = text.find(begins);
    if (found == std::string::npos) {
        return "no row";
    }
    std::string row;
    std::istringstream stream(text.substr(found + begins.size()));
    for (std::string line; std::getline(stream, line) && (row.empty() || line[2] == ' ');) {
        row += (row.empty() ? "" : " ") + line.substr(line.find_first_not_of(' ')); // unwrapped
    }
    return row;
}

std::string factorOf(std::vector<double> welded, std::optional<double> required) {
    CouponSeries series = seriesOf(tensile());
    series.required = required;
    series.factor = weldingFactor(welded, {31.0, 31.2, 30.8, 31.1, 30.9}).value();
    return rowOf(couponText(series), "Factor");
}

TEST(CouponText, SaysHowTheFactorStandsToTheRequiredOne) {
    const auto says = [](const std::string& text, const std::string& words) {
        EXPECT_NE(text.find(words), std::string::npos) << text;
    };
    says(factorOf({30.9, 31.0, 30.8, 31.1, 30.9}, 0.9), "; above the required 0.9 with all its");
    const std::string scattered = factorOf({20.0, 38.0, 24.0, 36.0, 27.0}, 0.9);
    says(scattered, "; reaches the required 0.9 by its means, not with all its interval");
    const std::string alone = factorOf({30.9}, 0.9);
    says(alone, ", no interval: too few coupons");
    says(alone, "; reaches the required 0.9 by its means");
    EXPECT_EQ(alone.find("not with all"), std::string::npos) << "it has none: " << alone;
    says(factorOf({20.0, 20.1, 19.9, 20.2, 19.8}, 0.9), "; below the required 0.9");
    const std::string unknown = factorOf({30.9, 31.0, 30.8, 31.1, 30.9}, {});
    says(unknown, "; no requirement to hand");
    EXPECT_EQ(unknown.find('['), std::string::npos) << "no source is named for none: " << unknown;
}

TEST(CouponText, HoldsWhatABendTestMeasured) {
    const std::string text = couponText(seriesOf(bend()));
    EXPECT_EQ(rowOf(text, "Test"), "bend");
    EXPECT_EQ(rowOf(text, "Sheet"), "PP 9.5 mm");
    EXPECT_EQ(rowOf(text, "From"), "a procedure trial");
    EXPECT_EQ(rowOf(text, "Bend angle"), "160, 92.5°");
    EXPECT_EQ(rowOf(text, "Ram"), "41, 18.2 mm");
    EXPECT_EQ(rowOf(text, "Cracked"), "1 of 2");
    EXPECT_EQ(rowOf(text, "Factor"), "no row");
}

TEST(CouponText, WithoutParentCouponsHoldsTheStrengthsAlone) {
    CouponTested tested = tensile();
    tested.parentPa.clear();
    tested.weld = "weld:of-another-log";
    const std::string text = couponText(seriesOf(tested));
    EXPECT_EQ(rowOf(text, "Welded"), "30.1, 30.5, 29.9, 30.3, 30.2 MPa");
    EXPECT_EQ(rowOf(text, "From"), "weld:of-another-log");
    EXPECT_EQ(rowOf(text, "Parent"), "no row");
}

// Whoever reads the corrected series sees all that stood there before.
TEST(CouponText, OfACorrectionSaysAllThatStoodThereBefore) {
    CouponSeries series = seriesOf(bend());
    series.versions.resize(2);
    CouponVersion& was = series.versions.front();
    was.tested.weld = "weld:1";
    was.joint = 41;
    was.tested.welder = "person:jo";
    was.welderName = "Jo";
    was.tested.remark = "notch at the left";
    series.versions.back().tested = tensile();
    series.versions.back().tested.reason = "wrong sheet";
    std::string text = couponText(series);
    text = text.substr(text.find("before "));
    for (std::size_t at = 0; (at = text.find('\n', at)) != std::string::npos;) {
        text.replace(at, text.find_first_not_of("\n ", at) - at, " "); // as it was before wrapping
    }
    for (const char* words :
         {"of joint 41", ", bend", ", by no standard", ", welded by person:jo (Jo)", ", PP 9.5 mm",
          ", no procedure", ", bend angle 160, 92.5°, ram 41, 18.2 mm, cracked 0, 1",
          ", notch at the left"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << " in " << text;
    }
    was.joint = 0;
    EXPECT_NE(couponText(series).find("of weld:1"), std::string::npos);
    was.tested = tensile();
    was.tested.weldedPa.pop_back();
    text = couponText(series);
    EXPECT_NE(text.find("before welded 30.1, 30.5, 29.9, 30.3 MPa, parent"), std::string::npos)
        << text;
}

} // namespace
} // namespace seamclock
