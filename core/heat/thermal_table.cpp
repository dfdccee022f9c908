#include "core/heat/thermal_table.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr auto kNodes =
    static_cast<std::size_t>(
        (ThermalTable::kHighest - ThermalTable::kLowest) / ThermalTable::kStep) +
    1;

double celsiusOf(std::size_t node) {
    return ThermalTable::kLowest + ThermalTable::kStep * static_cast<double>(node);
}

/// 1 below `low`, 0 above `high`.
double share(double celsius, double low, double high) {
    if (celsius <= low) {
        return 1;
    }
    return celsius >= high ? 0 : (high - celsius) / (high - low);
}

} // namespace

ThermalTable::ThermalTable(const Material& material, Factors factors)
    : m_sensible(kNodes), m_up(kNodes, 1), m_down(kNodes, 1), m_solid(kNodes), m_melt(kNodes) {
    if (material.crystals) {
        m_latent = material.crystals->heat * factors.heat * material.density;
    }
    for (std::size_t i = 0; i < kNodes; ++i) {
        const double celsius = celsiusOf(i);
        m_solid[i] = material.conductivity.at(celsius) * factors.conductivity;
        m_melt[i] = material.meltConductivity.at(celsius) * factors.conductivity;
        if (material.crystals) {
            m_up[i] = share(celsius, material.crystals->meltsFrom, material.crystals->meltsTo);
            m_down[i] = share(
                celsius, material.crystals->crystallisesTo, material.crystals->crystallisesFrom);
        }
        if (i > 0) {
            const double middle = celsius - kStep / 2;
            m_sensible[i] = m_sensible[i - 1] + material.density * factors.specificHeat *
                                                    material.specificHeat.at(middle) * kStep;
        }
    }
    const double zero = m_sensible[placeOf(0)];
    for (double& heat : m_sensible) {
        heat -= zero;
    }
}

std::size_t ThermalTable::placeOf(double celsius) const {
    const double place = std::floor((celsius - kLowest) / kStep);
    return static_cast<std::size_t>(std::clamp(place, 0.0, static_cast<double>(kNodes - 2)));
}

double ThermalTable::nodeHeat(std::size_t node, double crystalline) const {
    return m_sensible[node] + (1 - std::clamp(crystalline, m_down[node], m_up[node])) * m_latent;
}

ThermalTable::Reading ThermalTable::read(double heat, double crystalline) const {
    int guess = static_cast<int>(kNodes / 4);
    return read(heat, crystalline, guess);
}

ThermalTable::Warmth ThermalTable::warmth(double heat, double crystalline, int& guess) const {
    // Few cells move further than some nodes in a step, so the search goes out from the guess, with
    // strides that double; heat rises with temperature, whatever the crystalline share was.
    const int last = static_cast<int>(kNodes) - 2;
    int low = std::clamp(guess, 0, last);
    int high = low + 1;
    const auto heatOf = [&](int node) {
        return nodeHeat(static_cast<std::size_t>(node), crystalline);
    };
    double below = heatOf(low);
    double above = heatOf(high);
    for (int stride = 1; heat >= above && high <= last; stride *= 2) {
        low = high;
        below = above;
        high = std::min(high + stride, last + 1);
        above = heatOf(high);
    }
    for (int stride = 1; heat < below && low > 0; stride *= 2) {
        high = low;
        above = below;
        low = std::max(low - stride, 0);
        below = heatOf(low);
    }
    while (high - low > 1) {
        const int middle = (low + high) / 2;
        const double between = heatOf(middle);
        if (heat >= between) {
            low = middle;
            below = between;
        } else {
            high = middle;
            above = between;
        }
    }
    guess = low;
    const double perHeat = kStep / (above - below);
    return {celsiusOf(static_cast<std::size_t>(low)) + (heat - below) * perHeat, perHeat};
}

ThermalTable::Reading ThermalTable::read(double heat, double crystalline, int& guess) const {
    const Warmth warmth = this->warmth(heat, crystalline, guess);
    const auto node = static_cast<std::size_t>(guess);
    const double share = std::clamp((warmth.celsius - celsiusOf(node)) / kStep, 0.0, 1.0);
    const auto between = [&](const std::vector<double>& table) {
        return table[node] + (table[node + 1] - table[node]) * share;
    };
    return {
        warmth.celsius, warmth.perHeat, std::clamp(crystalline, between(m_down), between(m_up))};
}

double ThermalTable::heatAt(double celsius, double crystalline) const {
    const std::size_t node = placeOf(celsius);
    const double share = (celsius - celsiusOf(node)) / kStep;
    const double low = nodeHeat(node, crystalline);
    return low + (nodeHeat(node + 1, crystalline) - low) * share;
}

double ThermalTable::conductivityAt(double celsius, double crystalline) const {
    const std::size_t node = placeOf(celsius);
    const double share = std::clamp((celsius - celsiusOf(node)) / kStep, 0.0, 1.0);
    const double solid = m_solid[node] + (m_solid[node + 1] - m_solid[node]) * share;
    const double melt = m_melt[node] + (m_melt[node + 1] - m_melt[node]) * share;
    return crystalline * solid + (1 - crystalline) * melt;
}

double ThermalTable::onTheWayUp(double celsius) const {
    const std::size_t node = placeOf(celsius);
    const double share = std::clamp((celsius - celsiusOf(node)) / kStep, 0.0, 1.0);
    return m_up[node] + (m_up[node + 1] - m_up[node]) * share;
}

double ThermalTable::onTheWayDown(double celsius) const {
    const std::size_t node = placeOf(celsius);
    const double share = std::clamp((celsius - celsiusOf(node)) / kStep, 0.0, 1.0);
    return m_down[node] + (m_down[node + 1] - m_down[node]) * share;
}

} // namespace seamclock
