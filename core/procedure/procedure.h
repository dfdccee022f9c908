// A welding procedure is data: what a published table or a shop's own trial says for one material.
// This header holds its shape; procedure_codec reads it from JSON. It decides nothing: core/plan
// turns it into a weld's numbers, and names what it lacks. No value is filled by guess.
#pragma once

#include "core/procedure/column.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// Cooling by ambient temperature: the class whose closed interval holds the ambient; on a boundary
/// the longer time.
struct CoolingClass {
    std::optional<Temperature> from; // absent: no lower limit is printed
    std::optional<Temperature> to;
    Column minutes;

    bool operator==(const CoolingClass&) const = default;
};

/// Cooling outside the classes' range of ambient: so many percent for each kelvin from the
/// reference ambient, longer on one side of it and shorter on the other, as the source says.
struct PerKelvin {
    double percent = 0;
    bool longerWhenWarmer = true;
    Temperature from; // the ambients for which it holds, both ends included
    Temperature to;
    Source source;

    bool operator==(const PerKelvin&) const = default;
};

/// The source allows cooling to be cut by half in workshop conditions, with hardly any load on the
/// joint at removal and storage, from this wall up.
struct HalfCoolingRule {
    Length from;
    Source source;

    bool operator==(const HalfCoolingRule&) const = default;
};

struct PressureRule {
    std::optional<Pressure> alignment;
    std::optional<Pressure> joining;
    std::optional<Pressure> tolerance; // ±, of alignment and joining
    std::optional<Pressure> soakAim;
    std::optional<Pressure> soakMax;
    /// Instead of the two before: soak's pressure is anything from zero to the drag, and this is
    /// where that stands.
    std::optional<Source> soakToDrag;
    Source alignmentSource;
    Source joiningSource;
    Source toleranceSource;
    Source soakAimSource;
    Source soakMaxSource;

    bool operator==(const PressureRule&) const = default;
};

struct PlateWindow {
    Temperature min;
    Temperature max;
    std::optional<Temperature> target; // absent: the middle
    Source source;

    bool operator==(const PlateWindow&) const = default;
};

/// The plan's names of the values that a procedure may lack.
inline constexpr std::array<const char*, 12> kProcedureValues{
    "pressure_N_mm2.alignment",
    "pressure_N_mm2.joining",
    "pressure_N_mm2.tolerance",
    "pressure_N_mm2.soak_aim",
    "pressure_N_mm2.soak_max",
    "heated_tool_C",
    "bead_min_mm",
    "soak_s",
    "changeover_max_s",
    "build_up_s",
    "cooling_min",
    "cooling_min.per_kelvin"};

/// A value that the source lacks for a range of thickness, and what it says instead.
/// It stays declared when a shop fills it: a value inside it is the shop's own.
struct KnownGap {
    std::string value; // one of them
    Length from;
    Length to;
    std::string says;

    bool operator==(const KnownGap&) const = default;
};

struct Procedure {
    std::string id; // e.g. "pe-hd-dvs2207-1-2005"
    std::string title;
    std::string material; // trade's short name: "PE-HD", "PP", "PVDF"
    std::string standard;
    std::string edition;
    Temperature referenceAmbient = Temperature::celsius(20);
    Source referenceAmbientSource;

    PressureRule pressure;
    std::optional<PlateWindow> plate;
    std::optional<Column> bead; // [mm], at least
    std::optional<Column> soak; // [s], target
    double soakLowPercent = 0;  // a soak's tolerance about its target
    double soakHighPercent = 10;
    Source soakTolerance;
    std::optional<Column> changeover;  // [s], at most
    std::optional<Column> buildUp;     // [s], target
    std::vector<CoolingClass> cooling; // [min], at least
    BandRule coolingRule = BandRule::Line;
    std::optional<PerKelvin> perKelvin;
    std::optional<HalfCoolingRule> halfCooling;
    std::vector<KnownGap> gaps;
    std::vector<std::string> notes;

    /// The range of thickness for which any column has a value. Outside it the procedure refuses.
    Length thinnest() const;
    Length thickest() const;
    /// Only where every cooling class has a table can cooling be read at the band's end.
    bool coolingHasBands() const;
    /// The gap that names this value for this thickness; null if the procedure declares none.
    const KnownGap* gapOf(const std::string& value, Length thickness) const;
    /// Whether the value that a column has there comes from a row or formula inside a declared gap
    /// of its source: the shop filled it in.
    bool isFill(const std::string& value, const Column& column, Length thickness) const;

    bool operator==(const Procedure&) const = default;
};

} // namespace seamclock
