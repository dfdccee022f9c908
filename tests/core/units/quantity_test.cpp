#include "core/units/quantity.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

template <class A, class B>
concept Addable = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept Comparable = requires(A a, B b) {
    a < b;
};
template <class A, class B>
concept Multipliable = requires(A a, B b) {
    a* b;
};

static_assert(Addable<Length, Length> && !Addable<Length, Force>);
static_assert(!Addable<Pressure, Force> && !Addable<Length, double>);
static_assert(!Comparable<Pressure, Force> && !Comparable<Length, double>);
static_assert(!Addable<Temperature, Temperature> && Addable<Temperature, TemperatureDifference>);
static_assert(!Multipliable<Force, Force> && Multipliable<Length, Length>);

// NIST Special Publication 811, appendix B.8; all but the last digits follow from exact
// definitions. The tolerance of a part in 10^6 is that of the printed seven digits.
TEST(Units, AgreeWithThePublishedFactors) {
    EXPECT_DOUBLE_EQ(inMillimetres(inches(1)), 25.4);
    EXPECT_DOUBLE_EQ(inNewtons(kilogramsForce(1)), 9.80665);
    EXPECT_NEAR(inNewtons(poundsForce(1)), 4.448222, 4.5e-6);
    EXPECT_DOUBLE_EQ(inNewtons(poundsForce(1)), 4.4482216152605); // exact, in SP 811's footnotes
    EXPECT_NEAR(inPascals(poundsPerSquareInch(1)), 6894.757, 7e-3);
    EXPECT_DOUBLE_EQ(inPascals(bars(1)), 100000);
    EXPECT_DOUBLE_EQ(inPascals(newtonsPerSquareMillimetre(1)), 1e6);
}

TEST(Units, ComeBackAsTheyWent) {
    EXPECT_DOUBLE_EQ(inInches(inches(0.3125)), 0.3125);
    EXPECT_DOUBLE_EQ(inMicrometres(micrometres(12'345)), 12'345);
    EXPECT_DOUBLE_EQ(inPoundsForce(poundsForce(337.2)), 337.2);
    EXPECT_DOUBLE_EQ(inKilogramsForce(kilogramsForce(153)), 153);
    EXPECT_DOUBLE_EQ(inBars(bars(1.5)), 1.5);
    EXPECT_DOUBLE_EQ(inPoundsPerSquareInch(poundsPerSquareInch(21.8)), 21.8);
    EXPECT_DOUBLE_EQ(inNewtonsPerSquareMillimetre(newtonsPerSquareMillimetre(0.15)), 0.15);
}

// Fixed points: water freezes at 32 °F and boils at 212 °F, the scales cross at -40, absolute zero
// is -273.15 °C.
TEST(Units, TurnFahrenheitIntoCelsius) {
    EXPECT_NEAR(Temperature::fahrenheit(32).inCelsius(), 0, 1e-9);
    EXPECT_NEAR(Temperature::fahrenheit(212).inCelsius(), 100, 1e-9);
    EXPECT_NEAR(Temperature::fahrenheit(-40).inCelsius(), -40, 1e-9);
    EXPECT_NEAR(Temperature::celsius(200).inFahrenheit(), 392, 1e-9);
    EXPECT_NEAR(Temperature::celsius(-273.15).inKelvin(), 0, 1e-9);
}

TEST(Units, KeepATemperatureApartFromADifference) {
    EXPECT_NEAR(inKelvins(Temperature::celsius(220) - Temperature::celsius(200)), 20, 1e-9);
    EXPECT_NEAR((Temperature::celsius(200) + kelvins(10)).inCelsius(), 210, 1e-9);
}

TEST(Units, MultiplyPressureByAreaToForce) {
    const Force force = bars(2) * (metres(0.5) * millimetres(20)); // 200 kPa on 0.01 m²
    EXPECT_DOUBLE_EQ(inNewtons(force), 2000);
    EXPECT_DOUBLE_EQ(inBars(force / (metres(0.5) * millimetres(20))), 2);
    EXPECT_DOUBLE_EQ(newtons(900) / newtons(300), 3);
    EXPECT_LT(newtons(1), kilogramsForce(1));
    EXPECT_DOUBLE_EQ(inNewtons(-newtons(3) + newtons(5) - newtons(1)), 1);
}

} // namespace
} // namespace seamclock
