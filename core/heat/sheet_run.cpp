#include "core/heat/sheet_run.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr double kPi = 3.14159265358979323846;
/// Heat goes in no further than this many diffusion lengths in an hour; clamps and the rest of the
/// sheet beyond are taken as cold [m].
constexpr double kDepthThin = 0.06;

/// What is pressed out in one step [m]: the film of melt is some ten times as deep, and the squeeze
/// is worked out from what it was when the step began.
constexpr double kMostFlow = 0.03e-3;

Length depthFor(Length thickness) {
    // Cooling is about proportional to thickness (1.2 min/mm), and heat's reach to the root of
    // time.
    return Length::si(std::max(kDepthThin, 3.0 * thickness.si()));
}

} // namespace

SheetRun::SheetRun(const Material& material, const HeatInputs& inputs, const HeatGrid& grid)
    : m_material(std::make_shared<const Material>(material)), m_inputs(inputs), m_grid(grid),
      m_table(std::make_shared<const ThermalTable>(material, inputs.factors)) {
    m_field.emplace(
        *m_table,
        sheetGrid(
            inputs.thickness, depthFor(inputs.thickness), grid.finest, grid.growth, grid.rows,
            grid.rowGrowth),
        inputs.ambientC);
}

SheetSurroundings SheetRun::around() const {
    SheetSurroundings around;
    around.airCelsius = m_inputs.ambientC;
    around.sideConductance = m_inputs.sideAir;
    switch (m_at) {
    case HeatStage::At::Plate:
        around.faceCelsius = m_inputs.plateC;
        around.faceConductance = m_inputs.contact;
        break;
    case HeatStage::At::Air:
        around.faceCelsius = m_inputs.ambientC;
        around.faceConductance = m_inputs.faceAir;
        break;
    case HeatStage::At::Sheet:
        break; // the other half is as warm: nothing passes
    }
    return around;
}

SheetFlow SheetRun::film(HeatStage::At at, double pressure) const {
    const auto layers = fluidity(*m_field, *m_material, m_inputs.consistency);
    return squeezeFilm(
        layers, m_field->grid().inward, m_field->halfThickness(), pressure, m_material->flow.index,
        at == HeatStage::At::Plate ? FilmWall::Plate : FilmWall::Sheet);
}

double SheetRun::closingUnderOnePascal(HeatStage::At at) const {
    return at == HeatStage::At::Air ? 0 : film(at, 1).rate;
}

void SheetRun::surround(double plateC, double contact, double faceAir) {
    m_inputs.plateC = plateC;
    m_inputs.contact = contact;
    m_inputs.faceAir = faceAir;
}

void SheetRun::go(const HeatStage& stage, const std::function<void()>& each) {
    if (!m_begun || stage.at != m_at) {
        m_since = 0;
    }
    m_begun = true;
    m_at = stage.at;
    const bool locks = stage.springPaPerMetre.has_value();
    if (locks && !m_locked) {
        m_lockedAt = m_closing - swelling();
        m_lockedPressure = stage.pressureFrom;
    }
    m_locked = locks;
    double done = 0;
    while (done < stage.seconds) {
        const double wanted = std::clamp(
            m_grid.step * m_since, std::min(m_grid.firstStep, stage.seconds), m_grid.longestStep);
        const double left = stage.seconds - done;
        // the last two are alike, so that none is left over
        double step = left <= wanted ? left : left < 2 * wanted ? left / 2 : wanted;
        if (m_at == HeatStage::At::Air) {
            m_pressure = 0;
        } else if (locks) {
            const double gone = 2 * (m_closing - swelling() - m_lockedAt);
            m_pressure = std::max(0.0, m_lockedPressure - *stage.springPaPerMetre * gone);
        } else {
            m_pressure = stage.pressureFrom + (stage.pressureTo - stage.pressureFrom) *
                                                  (done + step / 2) / stage.seconds;
        }
        if (m_pressure > 0) {
            const SheetFlow flow = film(m_at, m_pressure);
            if (flow.rate * step > kMostFlow) {
                step = std::max(kMostFlow / flow.rate, std::min(m_grid.firstStep, step));
            }
            m_field->flow(flow, step);
            m_closing += flow.rate * step;
        }
        m_field->conduct(around(), step);
        done += step;
        m_since += step;
        m_seconds += step;
        if (each) {
            each();
        }
    }
}

double SheetRun::faceC() const {
    return m_field->faceCelsius(around(), 0);
}

double SheetRun::faceMeanC() const {
    double sum = 0;
    for (std::size_t row = 0; row < m_field->rows(); ++row) {
        sum += m_field->faceCelsius(around(), row) * m_field->grid().across[row];
    }
    return sum / m_field->halfThickness();
}

double SheetRun::meltDepth() const {
    const double melting = m_material->meltingPoint();
    if (m_field->celsius(0, 0) < melting) {
        return 0;
    }
    for (std::size_t i = 1; i < m_field->columns(); ++i) {
        const double here = m_field->celsius(i, 0);
        if (here < melting) {
            const double before = m_field->celsius(i - 1, 0);
            const double share = (before - melting) / (before - here);
            return m_field->depthOf(i - 1) +
                   share * (m_field->depthOf(i) - m_field->depthOf(i - 1));
        }
    }
    return m_field->depthOf(m_field->columns() - 1);
}

double SheetRun::beadHeight() const {
    const double area = m_closing * m_field->halfThickness();
    return std::sqrt(2 * area / kPi);
}

// What is solid spreads evenly in all directions; melt that is held between cold sides has only the
// way out of the face (our judgement).
double SheetRun::swelling() const {
    const double melted = m_material->density / m_material->meltDensity - 1;
    double sum = 0;
    for (std::size_t row = 0; row < m_field->rows(); ++row) {
        for (std::size_t i = 0; i < m_field->columns(); ++i) {
            const double crystalline = m_field->crystalline(i, row);
            const double solid = m_material->expansion * (m_field->celsius(i, row) - 20);
            sum += (crystalline * solid + (1 - crystalline) * melted) * m_field->grid().inward[i] *
                   m_field->grid().across[row];
        }
    }
    return sum / m_field->halfThickness();
}

} // namespace seamclock
