// The heated plate of the virtual bench: one temperature that its controller holds, and at each
// station what is missing there: a cold spot that is always there, and what the sheets took and the
// heater has not yet put back. Its own display knows nothing of its faces.
#pragma once

#include <cstddef>
#include <vector>

namespace seamclock {

struct PlateSetup {
    double targetC = 210;
    double startC = 210;
    double ambientC = 20;
    // Both at the target's temperature; a plate that is as cold as the air has neither.
    double offsetK = 0;  // of the faces against the display; −15: 15 K cold
    double coldAt = 0.5; // of the seam's length
    double coldK = 0;    // there, downward
    double coldWidth = 0.1;
    bool dirty = false;
};

class VirtualPlate {
public:
    VirtualPlate(const PlateSetup& setup, std::size_t stations);

    void setTarget(double celsius) { m_targetC = celsius; }
    /// The heater's work for so long; the sheets take nothing meanwhile.
    void warm(double seconds);
    /// What the sheets took there, from both faces, of one metre of plate [J/m].
    void give(std::size_t station, double joulesPerMetre);
    void wipe() { m_dirty = false; }

    double shownC() const { return m_heldC; }
    double faceC(std::size_t station) const;
    double targetC() const { return m_targetC; }
    bool dirty() const { return m_dirty; }

private:
    double m_targetC;
    double m_heldC;
    double m_ambientC;
    bool m_dirty;
    std::vector<double> m_off;   // of what the plate is warmer than the air
    std::vector<double> m_taken; // [K]
};

} // namespace seamclock
