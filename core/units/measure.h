// A plan's integers as numbers with a unit, in the system that a person reads: millimetres,
// newtons, N/mm² and °C, or inches, pounds-force, psi and °F. This is the only place that turns one
// into the other for a card, on screen and on paper, so that both systems show the same values:
// each is rounded once, from the plan's integer, to its nearest last digit. Times and a scale's
// readings are not here: minutes are minutes, and a reading stays as it is printed on the scale.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace seamclock {

enum class UnitSystem { Metric, Imperial };

/// "metric", "imperial".
std::string_view toString(UnitSystem system);

/// The decimal point is a dot, no thousands are separated.
struct Measure {
    std::string number;
    std::string unit;

    /// "0.394 in"
    std::string text() const { return number + " " + unit; }
    bool operator==(const Measure&) const = default;
};

/// Metric: to the micrometre, zeros at the end left away. Imperial: to a thousandth of an inch, to
/// a hundredth from 10 in on, finer where the metric number has more than one decimal.
Measure lengthIn(UnitSystem system, std::int64_t um);
/// Metric: to a tenth of a newton. Imperial: a decimal more than the metric number has.
Measure forceIn(UnitSystem system, std::int64_t mN);
/// For a scale that is marked so.
Measure kilogramsForceOf(std::int64_t mN);
/// Metric: to 0.0001 N/mm². Imperial: to a hundredth of a psi.
Measure pressureIn(UnitSystem system, std::int64_t pa);
/// Both exact.
Measure temperatureIn(UnitSystem system, std::int64_t mC);
/// A spring's rate: force for one unit of its scale, which keeps its own name.
Measure rateIn(UnitSystem system, std::int64_t mNPerUnit, std::string_view scaleUnit);

/// What a sentence of the program's own tells, so that its units can be turned.
struct SentenceAbout {
    std::string_view scaleUnit = ""; // of the bench's scale; "" without one
    bool readings = false; // it speaks of readings: where the scale is in mm, so is its mm
};

/// A sentence of the program's own with its "12.3 °C", "45 N", "0.15 N/mm²", "8 mm" and, for that
/// scale, "85 N/mm" turned into the system. Metric text is returned as it is, and what is not a
/// number before such a unit is left alone.
std::string sentenceIn(UnitSystem system, std::string_view metric, const SentenceAbout& about = {});

} // namespace seamclock
