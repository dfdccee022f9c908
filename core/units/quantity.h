// Physical quantities as types, so that a force can't be given where a pressure is asked for and no
// number stands without its unit. Inside they are SI doubles; they enter and leave through named
// functions. Temperatures are affine: a difference is another type. Times are std::chrono
// durations.
//
// Factors: inch 25.4 mm and pound 0.45359237 kg exact (international yard and pound agreement,
// 1959), standard gravity 9.80665 m/s² exact (3rd CGPM, 1901); the others follow from these.
#pragma once

#include <compare>

namespace seamclock {

/// One dimension each; arithmetic stays inside it, products between dimensions are named below.
template <class Dimension>
class Quantity {
public:
    constexpr Quantity() = default;
    static constexpr Quantity si(double value) { return Quantity(value); }
    constexpr double si() const { return m_si; }

    constexpr auto operator<=>(const Quantity&) const = default;
    constexpr Quantity operator-() const { return Quantity(-m_si); }
    constexpr Quantity operator+(Quantity other) const { return Quantity(m_si + other.m_si); }
    constexpr Quantity operator-(Quantity other) const { return Quantity(m_si - other.m_si); }
    constexpr Quantity operator*(double factor) const { return Quantity(m_si * factor); }
    constexpr Quantity operator/(double divisor) const { return Quantity(m_si / divisor); }
    constexpr double operator/(Quantity other) const { return m_si / other.m_si; }

private:
    explicit constexpr Quantity(double value) : m_si(value) {}
    double m_si = 0;
};

using Length = Quantity<struct LengthDimension>;                               // [m]
using Area = Quantity<struct AreaDimension>;                                   // [m²]
using Force = Quantity<struct ForceDimension>;                                 // [N]
using Pressure = Quantity<struct PressureDimension>;                           // [Pa]
using TemperatureDifference = Quantity<struct TemperatureDifferenceDimension>; // [K]

inline constexpr double kMetresPerInch = 0.0254;
inline constexpr double kNewtonsPerKgf = 9.80665;
inline constexpr double kNewtonsPerLbf = 0.45359237 * 9.80665;
inline constexpr double kPascalsPerPsi = kNewtonsPerLbf / (kMetresPerInch * kMetresPerInch);

constexpr Length metres(double value) {
    return Length::si(value);
}
constexpr Length millimetres(double value) {
    return Length::si(value / 1e3);
}
constexpr Length micrometres(double value) {
    return Length::si(value / 1e6);
}
constexpr Length inches(double value) {
    return Length::si(value * kMetresPerInch);
}
constexpr double inMillimetres(Length value) {
    return value.si() * 1e3;
}
constexpr double inMicrometres(Length value) {
    return value.si() * 1e6;
}
constexpr double inInches(Length value) {
    return value.si() / kMetresPerInch;
}

constexpr Force newtons(double value) {
    return Force::si(value);
}
constexpr Force kilogramsForce(double value) {
    return Force::si(value * kNewtonsPerKgf);
}
constexpr Force poundsForce(double value) {
    return Force::si(value * kNewtonsPerLbf);
}
constexpr double inNewtons(Force value) {
    return value.si();
}
constexpr double inKilogramsForce(Force value) {
    return value.si() / kNewtonsPerKgf;
}
constexpr double inPoundsForce(Force value) {
    return value.si() / kNewtonsPerLbf;
}

constexpr Pressure pascals(double value) {
    return Pressure::si(value);
}
constexpr Pressure newtonsPerSquareMillimetre(double value) {
    return Pressure::si(value * 1e6);
}
constexpr Pressure bars(double value) {
    return Pressure::si(value * 1e5);
}
constexpr Pressure poundsPerSquareInch(double value) {
    return Pressure::si(value * kPascalsPerPsi);
}
constexpr double inPascals(Pressure value) {
    return value.si();
}
constexpr double inNewtonsPerSquareMillimetre(Pressure value) {
    return value.si() / 1e6;
}
constexpr double inBars(Pressure value) {
    return value.si() / 1e5;
}
constexpr double inPoundsPerSquareInch(Pressure value) {
    return value.si() / kPascalsPerPsi;
}

constexpr TemperatureDifference kelvins(double value) {
    return TemperatureDifference::si(value);
}
constexpr double inKelvins(TemperatureDifference value) {
    return value.si();
}

/// A point on the temperature scale. Two of them can be compared and subtracted, not added.
class Temperature {
public:
    constexpr Temperature() = default;
    static constexpr Temperature kelvin(double value) { return Temperature(value); }
    static constexpr Temperature celsius(double value) { return Temperature(value + 273.15); }
    static constexpr Temperature fahrenheit(double value) {
        return Temperature((value - 32.0) / 1.8 + 273.15);
    }
    constexpr double inKelvin() const { return m_kelvin; }
    constexpr double inCelsius() const { return m_kelvin - 273.15; }
    constexpr double inFahrenheit() const { return (m_kelvin - 273.15) * 1.8 + 32.0; }

    constexpr auto operator<=>(const Temperature&) const = default;
    constexpr TemperatureDifference operator-(Temperature other) const {
        return kelvins(m_kelvin - other.m_kelvin);
    }
    constexpr Temperature operator+(TemperatureDifference step) const {
        return Temperature(m_kelvin + inKelvins(step));
    }

private:
    explicit constexpr Temperature(double value) : m_kelvin(value) {}
    double m_kelvin = 273.15;
};

constexpr Area operator*(Length a, Length b) {
    return Area::si(a.si() * b.si());
}
constexpr Force operator*(Pressure p, Area a) {
    return Force::si(p.si() * a.si());
}
constexpr Pressure operator/(Force f, Area a) {
    return Pressure::si(f.si() / a.si());
}

} // namespace seamclock
