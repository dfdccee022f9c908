// Heat in one sheet beside the weld: in the direction of its edge, from the face inward, and across
// half its thickness, from the middle to the surface, by symmetry. Cells keep heat (J/m³), so that
// none is lost or made whatever melts or freezes. The seam is long: nothing varies along it, and
// everything is for one metre of it.
//
// Conduction: finite volumes; one direction after the other, in alternating order (locally
// one-dimensional splitting, Strang, SIAM J. Numer. Anal. 5, 1968; from memory), each line implicit
// in its new temperatures and solved by Newton's method on the cells' heat.
#pragma once

#include "core/heat/thermal_table.h"

#include <cstddef>
#include <vector>

namespace seamclock {

struct SheetGrid {
    std::vector<double> inward; // widths [m], from the face
    std::vector<double> across; // widths [m], from the middle to the surface
};

/// Cells that begin at `finest` and grow by `growth` until `depth` is reached; `rows` even ones
/// across.
SheetGrid sheetGrid(Length thickness, Length depth, Length finest, double growth, int rows);

/// What stands at the face, and the air at the surface.
struct SheetSurroundings {
    double faceCelsius = 20;
    double faceConductance = 0; // [W/m²K]; 0: nothing passes, as between two like halves
    double airCelsius = 20;
    double sideConductance = 0; // [W/m²K]

    bool operator==(const SheetSurroundings&) const = default;
};

/// How melt is pressed out: the face of solid comes nearer at `rate`, and of what flows out across
/// the thickness that share comes from each depth.
struct SheetFlow {
    double rate = 0;           // [m/s]
    std::vector<double> share; // for each cell inward [1/m]; shares times widths add up to 1
};

class SheetField {
public:
    /// The table must outlive the field.
    SheetField(const ThermalTable& table, SheetGrid grid, double celsius);

    /// One step of conduction. `forward`: the share of the new temperatures in it, 0.5 to 1.
    void conduct(const SheetSurroundings& around, double seconds, double forward = 1);
    /// Takes melt out and draws the sheet after it.
    void flow(const SheetFlow& flow, double seconds);

    std::size_t columns() const { return m_grid.inward.size(); }
    std::size_t rows() const { return m_grid.across.size(); }
    const SheetGrid& grid() const { return m_grid; }
    double depthOf(std::size_t column) const { return m_depth[column]; } // of its middle [m]
    double heightOf(std::size_t row) const { return m_height[row]; }     // of its middle [m]
    double halfThickness() const { return m_half; }
    double celsius(std::size_t column, std::size_t row) const { return m_celsius[at(column, row)]; }
    double crystalline(std::size_t column, std::size_t row) const {
        return m_crystalline[at(column, row)];
    }
    double heat(std::size_t column, std::size_t row) const { return m_heat[at(column, row)]; }
    /// Of the face itself, at that row, when it meets those surroundings.
    double faceCelsius(const SheetSurroundings& around, std::size_t row) const;

    /// For one metre of seam and half the thickness [J/m].
    double heatInside() const;
    double heatThroughFace() const { return m_throughFace; } // in
    double heatThroughSide() const { return m_throughSide; } // out
    double heatCarriedOut() const { return m_carriedOut; }   // with the melt
    double heatDrawnIn() const { return m_drawnIn; }         // with the sheet that follows

private:
    struct Line;

    std::size_t at(std::size_t column, std::size_t row) const { return row * columns() + column; }
    void readAll();
    void inward(const SheetSurroundings& around, double seconds, double forward);
    void across(const SheetSurroundings& around, double seconds, double forward);
    double conductivity(std::size_t cell) const;
    void solve(Line& line, double seconds, double forward);

    const ThermalTable& m_table;
    SheetGrid m_grid;
    std::vector<double> m_depth;
    std::vector<double> m_height;
    double m_half = 0;
    std::vector<double> m_heat;
    std::vector<double> m_crystalline; // as it was at the end of the last step
    std::vector<double> m_celsius;
    std::vector<double> m_conductivity;
    std::vector<int> m_place; // in the table
    double m_throughFace = 0;
    double m_throughSide = 0;
    double m_carriedOut = 0;
    double m_drawnIn = 0;
    bool m_acrossFirst = false;
    std::vector<double> m_work; // a line's numbers
};

} // namespace seamclock
