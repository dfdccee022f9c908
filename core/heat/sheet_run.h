// One sheet of a weld, led through what happens to its edge: on the plate, in air, against the
// other sheet. Both sheets are taken to be alike. What comes out explains a weld and judges none.
#pragma once

#include "core/heat/sheet_field.h"
#include "core/heat/squeeze.h"

#include <functional>
#include <memory>
#include <optional>

namespace seamclock {

/// What is around the sheet, and how far the material's own values are moved from the nominal.
struct HeatInputs {
    Length thickness;
    double ambientC = 20;
    double plateC = 210;
    double contact = 1500; // plate to sheet [W/m²K]
    double faceAir = 13;   // a hot face in air, radiation with it [W/m²K]
    double sideAir = 8;    // the sheet's surface [W/m²K]
    ThermalTable::Factors factors;
    double consistency = 1; // factor

    bool operator==(const HeatInputs&) const = default;
};

/// How fine the answer is asked for.
struct HeatGrid {
    Length finest = millimetres(0.08); // at the face
    double growth = 1.15;
    int rows = 6;            // across half the thickness
    double rowGrowth = 1.35; // from the middle outward: the weld plane is judged at the middle
    double step = 0.1;       // of the time since the edge met something else
    double firstStep = 0.02; // [s]
    double longestStep = 30; // [s]

    bool operator==(const HeatGrid&) const = default;
};

struct HeatStage {
    enum class At { Plate, Air, Sheet };
    At at = At::Plate;
    double seconds = 0;
    double pressureFrom = 0; // [Pa] on the face; it runs evenly to
    double pressureTo = 0;   // [Pa]
    /// A locked spring: the pressure that a metre of closing of both sheets together takes away.
    std::optional<double> springPaPerMetre;

    bool operator==(const HeatStage&) const = default;
};

/// A copy goes on by itself: what would be if.
class SheetRun {
public:
    SheetRun(const Material& material, const HeatInputs& inputs, const HeatGrid& grid = {});

    /// Goes on in that stage; `each` is called after each step, with the time since the run began.
    void go(const HeatStage& stage, const std::function<void()>& each = {});

    /// From now on the plate is as warm and touches as well as this, and so much the air takes from
    /// a bare face [°C, W/m²K].
    void surround(double plateC, double contact, double faceAir);

    double seconds() const { return m_seconds; }
    const SheetField& field() const { return *m_field; }
    const Material& material() const { return *m_material; }
    const HeatInputs& inputs() const { return m_inputs; }

    double faceC() const;                        // the skin's, at the middle of the thickness
    double faceMeanC() const;                    // over the thickness
    double meltDepth() const;                    // [m] at the middle of the thickness
    double closing() const { return m_closing; } // [m] what this sheet has lost by now
    /// How fast the sheet is lost under one pascal against that, as it is now [m/s]; the speed
    /// grows with the pressure as the melt's power law has it: by 1/n.
    double closingUnderOnePascal(HeatStage::At at) const;
    /// Of the beads at each surface; the melt that came out of one sheet stands there as half a
    /// disc (our judgement: it is the form of a bead that rolls back evenly) [m].
    double beadHeight() const;
    /// How much further than cold the sheet reaches, because what is warm takes more room [m].
    double swelling() const;
    double pressure() const { return m_pressure; } // [Pa] at the end of the last step

private:
    SheetSurroundings around() const;
    SheetFlow film(HeatStage::At at, double pressure) const;

    std::shared_ptr<const Material> m_material; // a copy of the run shares it
    HeatInputs m_inputs;
    HeatGrid m_grid;
    std::shared_ptr<const ThermalTable> m_table; // likewise
    std::optional<SheetField> m_field;           // always there, once constructed
    HeatStage::At m_at = HeatStage::At::Air;
    bool m_begun = false;
    double m_seconds = 0;
    double m_since = 0; // that the edge met something else
    double m_closing = 0;
    double m_pressure = 0;
    double m_lockedAt = 0; // closing and swelling when the spring was locked
    double m_lockedPressure = 0;
    bool m_locked = false;
};

} // namespace seamclock
