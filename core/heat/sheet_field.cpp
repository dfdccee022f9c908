#include "core/heat/sheet_field.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr int kMostRounds = 30;
/// [K] A change so small leaves a thousandth of itself, as Newton's method squares what is wrong.
constexpr double kEnough = 0.02;
/// Of the step; with 1 − 1/√2 two stages are of the second order and L-stable.
constexpr double kStage = 0.29289321881345248;

std::vector<double> middles(const std::vector<double>& widths) {
    std::vector<double> out;
    double edge = 0;
    for (const double width : widths) {
        out.push_back(edge + width / 2);
        edge += width;
    }
    return out;
}

/// Of two layers, one behind the other [W/m²K]; nothing passes if one lets nothing through.
double inSeries(double one, double other) {
    return one > 0 && other > 0 ? one * other / (one + other) : 0;
}

} // namespace

SheetGrid sheetGrid(
    Length thickness, Length depth, Length finest, double growth, int rows, double rowGrowth) {
    SheetGrid grid;
    double reached = 0;
    for (double width = finest.si(); reached < depth.si(); width *= growth) {
        grid.inward.push_back(width);
        reached += width;
    }
    double all = 0;
    double width = 1;
    for (int row = 0; row < rows; ++row, width *= rowGrowth) {
        grid.across.push_back(width);
        all += width;
    }
    for (double& each : grid.across) {
        each *= thickness.si() / 2 / all;
    }
    return grid;
}

/// One line of cells: where its numbers stand, and what is at its ends.
struct SheetField::Line {
    std::size_t first = 0;
    std::size_t stride = 1;
    const std::vector<double>* widths = nullptr;
    const std::vector<double>* other = nullptr; // what passes the other way [W/m³]
    std::vector<double>* own = nullptr;         // to be found
    double lowCelsius = 0;
    double lowConductance = 0; // [W/m²K]
    double highCelsius = 0;
    double highConductance = 0;
    double throughLow = 0; // [W/m²] in
    double throughHigh = 0;
};

SheetField::SheetField(const ThermalTable& table, SheetGrid grid, double celsius)
    : m_table(&table), m_grid(std::move(grid)), m_depth(middles(m_grid.inward)),
      m_height(middles(m_grid.across)) {
    for (const double width : m_grid.across) {
        m_half += width;
    }
    const std::size_t cells = columns() * rows();
    const double crystalline = m_table->onTheWayUp(celsius);
    m_heat.assign(cells, m_table->heatAt(celsius, crystalline));
    m_crystalline.assign(cells, crystalline);
    m_celsius.assign(cells, celsius);
    m_perHeat.assign(cells, 0);
    m_conductivity.assign(cells, 0);
    m_place.assign(cells, 0);
    m_base.assign(cells, 0);
    m_inward.assign(cells, 0);
    m_across.assign(cells, 0);
    m_work.assign(8 * (std::max(columns(), rows()) + 1), 0);
    readAll();
}

void SheetField::readAll() {
    for (std::size_t i = 0; i < m_heat.size(); ++i) {
        const auto reading = m_table->read(m_heat[i], m_crystalline[i], m_place[i]);
        m_celsius[i] = reading.celsius;
        m_perHeat[i] = reading.perHeat;
        m_crystalline[i] = reading.crystalline;
        m_conductivity[i] = m_table->conductivityAt(reading.celsius, reading.crystalline);
    }
}

void SheetField::conduct(const SheetSurroundings& around, double seconds) {
    m_base = m_heat;
    stage(around, kStage * seconds, (1 - kStage) * seconds);
    for (std::size_t i = 0; i < m_base.size(); ++i) {
        m_base[i] += (1 - kStage) * seconds * (m_inward[i] + m_across[i]);
    }
    stage(around, kStage * seconds, kStage * seconds);
    // By what passed, so that what leaves one cell arrives in the next to the last bit.
    for (std::size_t i = 0; i < m_base.size(); ++i) {
        m_heat[i] = m_base[i] + kStage * seconds * (m_inward[i] + m_across[i]);
    }
    readAll();
}

/// Heat such that heat = base + seconds · (inward + across), all at the new temperatures; what
/// passes the ends counts for so many seconds.
void SheetField::stage(const SheetSurroundings& around, double seconds, double counted) {
    for (std::size_t row = 0; row < rows(); ++row) {
        Line line;
        line.first = at(0, row);
        line.widths = &m_grid.inward;
        line.other = &m_across;
        line.own = &m_inward;
        line.lowCelsius = around.faceCelsius;
        line.lowConductance = around.faceConductance;
        solve(line, seconds);
        m_throughFace += counted * line.throughLow * m_grid.across[row];
    }
    for (std::size_t column = 0; column < columns(); ++column) {
        Line line;
        line.first = at(column, 0);
        line.stride = columns();
        line.widths = &m_grid.across;
        line.other = &m_inward;
        line.own = &m_across;
        line.highCelsius = around.airCelsius;
        line.highConductance = around.sideConductance;
        solve(line, seconds);
        m_throughSide -= counted * line.throughHigh * m_grid.inward[column];
    }
}

// Unknown is each cell's heat H; with T(H) from the table and g between neighbours,
//   H = base + Δt · (other + Σ g (T_neighbour − T) / Δx).
void SheetField::solve(Line& line, double seconds) {
    const std::vector<double>& widths = *line.widths;
    const std::size_t n = widths.size();
    double* const work = m_work.data();
    double* const heat = work;            // n
    double* const base = work + (n + 1);  // n
    double* const g = work + 2 * (n + 1); // n + 1
    double* const celsius = work + 3 * (n + 1);
    double* const perHeat = work + 4 * (n + 1);
    double* const upper = work + 5 * (n + 1);
    double* const change = work + 6 * (n + 1);
    double* const scale = work + 7 * (n + 1);

    const auto cell = [&](std::size_t i) { return line.first + i * line.stride; };
    double before = 0; // half a cell's resistance
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t here = cell(i);
        heat[i] = m_heat[here];
        celsius[i] = m_celsius[here];
        perHeat[i] = m_perHeat[here];
        base[i] = m_base[here] + seconds * (*line.other)[here];
        scale[i] = seconds / widths[i];
        const double half = widths[i] / (2 * m_conductivity[here]);
        g[i] = i > 0                     ? 1 / (before + half)
               : line.lowConductance > 0 ? 1 / (1 / line.lowConductance + half)
                                         : 0;
        before = half;
    }
    g[n] = line.highConductance > 0 ? 1 / (before + 1 / line.highConductance) : 0;
    // Through the faces, in the direction of rising i [W/m²].
    const auto flux = [&](std::size_t i) {
        const double low = i == 0 ? line.lowCelsius : celsius[i - 1];
        const double high = i == n ? line.highCelsius : celsius[i];
        return g[i] * (low - high);
    };
    for (int round = 0; round < kMostRounds; ++round) {
        // Newton: a tridiagonal system for the change of heat (Thomas's algorithm).
        double largest = 0;
        double into = flux(0);
        for (std::size_t i = 0; i < n; ++i) {
            const double out = flux(i + 1);
            const double wrong = heat[i] - base[i] - scale[i] * (into - out);
            into = out;
            const double lower = i > 0 ? -scale[i] * g[i] * perHeat[i - 1] : 0;
            const double own = 1 + scale[i] * (g[i] + g[i + 1]) * perHeat[i];
            const double above = i + 1 < n ? -scale[i] * g[i + 1] * perHeat[i + 1] : 0;
            const double pivot = 1 / (own - (i > 0 ? lower * upper[i - 1] : 0));
            upper[i] = above * pivot;
            change[i] = (-wrong - (i > 0 ? lower * change[i - 1] : 0)) * pivot;
        }
        for (std::size_t i = n; i-- > 0;) {
            if (i + 1 < n) {
                change[i] -= upper[i] * change[i + 1];
            }
            heat[i] += change[i];
            largest = std::max(largest, std::fabs(change[i]) * perHeat[i]);
            const std::size_t here = cell(i);
            const auto warmth = m_table->warmth(heat[i], m_crystalline[here], m_place[here]);
            celsius[i] = warmth.celsius;
            perHeat[i] = warmth.perHeat;
        }
        if (largest < kEnough) {
            break;
        }
    }
    double into = flux(0);
    line.throughLow = into;
    for (std::size_t i = 0; i < n; ++i) {
        const double out = flux(i + 1);
        (*line.own)[cell(i)] = (into - out) / widths[i];
        m_heat[cell(i)] = heat[i];
        m_celsius[cell(i)] = celsius[i];
        m_perHeat[cell(i)] = perHeat[i];
        into = out;
    }
    line.throughHigh = -into;
}

void SheetField::flow(const SheetFlow& flow, double seconds) {
    if (flow.rate <= 0) {
        return;
    }
    // Upwind, in as many parts that nothing passes a whole cell in one.
    double most = 0;
    for (std::size_t i = 0; i < columns(); ++i) {
        most = std::max(most, 1 / m_grid.inward[i] + flow.share[i] * m_half / m_grid.across.back());
    }
    const int parts = std::max(1, static_cast<int>(std::ceil(flow.rate * seconds * most / 0.8)));
    const double part = seconds / parts;
    for (int n = 0; n < parts; ++n) {
        for (std::size_t row = rows();
             row-- > 0;) { // the outer rows first: they give before they get
            const double outer = m_height[row] + m_grid.across[row] / 2;
            const double inner = m_height[row] - m_grid.across[row] / 2;
            double passed = 0; // the share of the outflow that comes from nearer the face
            for (std::size_t i = 0; i < columns(); ++i) {
                const std::size_t here = at(i, row);
                const double width = m_grid.inward[i];
                const double own = flow.share[i] * width;
                const std::size_t next = i + 1 < columns() ? at(i + 1, row) : here;
                const double gets = (passed + own) * flow.rate * part / width;
                const double gives = passed * flow.rate * part / width;
                const double out = own * flow.rate * part * outer / width / m_grid.across[row];
                const double in = own * flow.rate * part * inner / width / m_grid.across[row];
                const double heat = m_heat[here];
                const double crystalline = m_crystalline[here];
                const std::size_t below = row > 0 ? at(i, row - 1) : here;
                m_heat[here] =
                    heat + gets * m_heat[next] - (gives + out) * heat + in * m_heat[below];
                m_crystalline[here] = crystalline + gets * m_crystalline[next] -
                                      (gives + out) * crystalline + in * m_crystalline[below];
                if (row + 1 == rows()) {
                    m_carriedOut += own * flow.rate * part * outer * heat;
                }
                if (i + 1 == columns()) {
                    m_drawnIn += (passed + own) * flow.rate * part * heat * m_grid.across[row];
                }
                passed += own;
            }
        }
    }
    readAll();
}

double SheetField::faceCelsius(const SheetSurroundings& around, std::size_t row) const {
    const std::size_t cell = at(0, row);
    const double own = 2 * m_conductivity[cell] / m_grid.inward[0];
    const double g = inSeries(around.faceConductance, own);
    return m_celsius[cell] + g * (around.faceCelsius - m_celsius[cell]) / own;
}

double SheetField::heatInside() const {
    double heat = 0;
    for (std::size_t row = 0; row < rows(); ++row) {
        for (std::size_t i = 0; i < columns(); ++i) {
            heat += m_heat[at(i, row)] * m_grid.inward[i] * m_grid.across[row];
        }
    }
    return heat;
}

} // namespace seamclock
