#include "core/vbench/virtual_plate.h"

#include "core/vbench/bench_numbers.h"

#include <algorithm>
#include <cmath>

namespace seamclock {

VirtualPlate::VirtualPlate(const PlateSetup& setup, std::size_t stations)
    : m_targetC(setup.targetC), m_heldC(setup.startC), m_ambientC(setup.ambientC),
      m_dirty(setup.dirty), m_taken(stations, 0) {
    for (std::size_t i = 0; i < stations; ++i) {
        const double place = (static_cast<double>(i) + 0.5) / static_cast<double>(stations);
        const double away = (place - setup.coldAt) / setup.coldWidth;
        const double off = setup.offsetK - setup.coldK * std::exp(-away * away);
        m_off.push_back(off / (setup.targetC - setup.ambientC));
    }
}

double VirtualPlate::faceC(std::size_t station) const {
    return m_heldC + m_off[station] * (m_heldC - m_ambientC) - m_taken[station];
}

void VirtualPlate::warm(double seconds) {
    const double towards = std::max(m_targetC, m_ambientC); // switched off it comes to the air's
    m_heldC = towards + (m_heldC - towards) * std::exp(-seconds / bench_numbers::kPlateWarmS);
    const double stays = std::exp(-seconds / bench_numbers::kPlateRecoverS);
    for (double& taken : m_taken) {
        taken *= stays;
    }
}

void VirtualPlate::give(std::size_t station, double joulesPerMetre) {
    m_taken[station] += joulesPerMetre / bench_numbers::kPlateHeat;
}

} // namespace seamclock
