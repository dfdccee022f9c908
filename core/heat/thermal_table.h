// What a cubic metre of a plastic holds and lets through, as tables of temperature. Heat is counted
// from 0 °C and is what the sheet's cells keep; temperature is read back from it. A cell remembers
// how much of it is crystalline, because melting and crystallising lie at different temperatures:
// between them it stays as it was. The volume is that of the cold solid throughout; that melt takes
// more room is counted in the closing, not here.
#pragma once

#include "core/heat/material.h"

#include <cstddef>
#include <vector>

namespace seamclock {

class ThermalTable {
public:
    /// The factors stand for the uncertainty of the material's own values.
    struct Factors {
        double conductivity = 1;
        double specificHeat = 1;
        double heat = 1; // of melting

        bool operator==(const Factors&) const = default;
    };

    explicit ThermalTable(const Material& material) : ThermalTable(material, Factors()) {}
    ThermalTable(const Material& material, Factors factors);

    static constexpr double kLowest = -60; // [°C]
    static constexpr double kHighest = 420;
    static constexpr double kStep = 0.25; // [K]

    struct Reading {
        double celsius;
        double perHeat;     // dT/dH [K·m³/J]
        double crystalline; // 0 to 1
    };
    /// Of a cell that holds `heat` [J/m³] and was `crystalline` before.
    Reading read(double heat, double crystalline) const;
    /// As `read`; begins to look at `guess`, a place in the table, and leaves its own there.
    Reading read(double heat, double crystalline, int& guess) const;

    /// The temperature alone, for those who ask often.
    struct Warmth {
        double celsius;
        double perHeat;
    };
    Warmth warmth(double heat, double crystalline, int& guess) const;

    /// [J/m³]
    double heatAt(double celsius, double crystalline) const;
    /// [W/mK]
    double conductivityAt(double celsius, double crystalline) const;
    /// What is crystalline when that temperature is reached from below, and from above.
    double onTheWayUp(double celsius) const;
    double onTheWayDown(double celsius) const;
    bool hasCrystals() const { return m_latent > 0; }

private:
    std::size_t placeOf(double celsius) const;
    double nodeHeat(std::size_t node, double crystalline) const;

    std::vector<double> m_sensible; // [J/m³] at the nodes
    std::vector<double> m_up;       // crystalline share, on the way up
    std::vector<double> m_down;
    std::vector<double> m_solid; // conductivity
    std::vector<double> m_melt;
    double m_latent = 0; // [J/m³]
};

} // namespace seamclock
