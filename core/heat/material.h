// A plastic as the heat estimate needs it: how well it conducts, how much heat it holds, where it
// melts and where, on the way down, it crystallises again, and how it flows. Every number has its
// source in the material's file; none of them decides about a weld.
#pragma once

#include "core/units/quantity.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// A value at temperatures in °C, straight lines between them and level beyond the ends.
struct TemperatureCurve {
    struct Point {
        double celsius;
        double value;

        bool operator==(const Point&) const = default;
    };
    std::vector<Point> points; // at least one, temperatures rising

    double at(double celsius) const;
    bool operator==(const TemperatureCurve&) const = default;
};

/// Melting on the way up between the first two temperatures, crystallising on the way down between
/// the last two; both run evenly between their ends.
struct Crystallinity {
    double meltsFrom = 0;        // [°C]
    double meltsTo = 0;          // [°C]
    double crystallisesTo = 0;   // [°C] all of it
    double crystallisesFrom = 0; // [°C] the first of it, on the way down
    double heat = 0;             // [J/kg]

    bool operator==(const Crystallinity&) const = default;
};

/// Shear stress = consistency · rate^index; the consistency falls with temperature as
/// exp(E/R · (1/T − 1/T_reference)) (power law with Arrhenius shift; Bird, Armstrong & Hassager,
/// Dynamics of Polymeric Liquids, vol. 1, ch. 4; from memory).
struct PowerLawFlow {
    double consistency = 0; // [Pa·sⁿ] at the reference temperature
    double index = 1;       // n
    double activation = 0;  // [J/mol]
    double reference = 190; // [°C]
    double flowsFrom = 0;   // [°C] a glassy plastic's; a crystalline one flows once it is molten

    bool operator==(const PowerLawFlow&) const = default;
};

struct MaterialSource {
    std::string text;
    std::string standing; // "seen", "memory", "common_practice", "derived"

    bool operator==(const MaterialSource&) const = default;
};

struct Material {
    std::string id;
    std::string name;
    std::vector<std::string> plastics;     // as procedures and sheets name them: "PP", "PP-H"
    double density = 0;                    // [kg/m³] solid, at 20 °C
    double meltDensity = 0;                // [kg/m³]
    double expansion = 0;                  // [1/K] of a length of the solid
    TemperatureCurve conductivity;         // [W/mK] solid
    TemperatureCurve meltConductivity;     // [W/mK]
    TemperatureCurve specificHeat;         // [J/kgK] without the heat of melting
    std::optional<Crystallinity> crystals; // absent: it has none, as PVC
    PowerLawFlow flow;
    double gasFrom = 0; // [°C] above which it gives off harmful gas; 0: not known
    // Both by the field's name in the file. A spread is how far a value may be off, as a share of
    // it.
    std::map<std::string, double> spread;
    std::map<std::string, MaterialSource> sources;

    /// Where the melt's depth is measured: the middle of melting, or where it begins to flow.
    double meltingPoint() const;
    bool operator==(const Material&) const = default;
};

} // namespace seamclock
