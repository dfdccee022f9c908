// Heat in one sheet beside the weld: in the direction of its edge, from the face inward, and across
// half its thickness, from the middle to the surface, by symmetry. Cells keep heat (J/m³), so that
// none is lost or made whatever melts or freezes. The seam is long: nothing varies along it, and
// everything is for one metre of it.
//
// Conduction: finite volumes. A step has two implicit stages, of the second order and without the
// ringing of a mean of old and new (Alexander, SIAM J. Numer. Anal. 14, 1977; from memory). A stage
// goes one way after the other: inward with what passed across before, then what passes across put
// right (Douglas, Numer. Math. 4, 1962; from memory), so that what stands still does so whatever
// the step is. Each line is solved by Newton's method on the cells' heat.
#pragma once

#include "core/heat/thermal_table.h"

#include <cstddef>
#include <vector>

namespace seamclock {

struct SheetGrid {
    std::vector<double> inward; // widths [m], from the face
    std::vector<double> across; // widths [m], from the middle to the surface
};

/// Cells that begin at `finest` and grow by `growth` until `depth` is reached; `rows` across, each
/// `rowGrowth` times as wide as the one nearer to the middle.
SheetGrid sheetGrid(
    Length thickness, Length depth, Length finest, double growth, int rows, double rowGrowth = 1);

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

    /// One step of conduction.
    void conduct(const SheetSurroundings& around, double seconds);
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
    void stage(const SheetSurroundings& around, double seconds, double counted);
    void solve(Line& line, double seconds);

    const ThermalTable* m_table; // never null
    SheetGrid m_grid;
    std::vector<double> m_depth;
    std::vector<double> m_height;
    double m_half = 0;
    std::vector<double> m_heat;
    std::vector<double> m_crystalline; // as it was at the end of the last step
    std::vector<double> m_celsius;
    std::vector<double> m_perHeat; // dT/dH [K·m³/J]
    std::vector<double> m_conductivity;
    std::vector<int> m_place; // in the table
    double m_throughFace = 0;
    double m_throughSide = 0;
    double m_carriedOut = 0;
    double m_drawnIn = 0;
    std::vector<double> m_base;   // what a stage adds to [J/m³]
    std::vector<double> m_inward; // into each cell from the cells before and behind it [W/m³]
    std::vector<double> m_across; // from those beside it
    std::vector<double> m_work;   // a line's numbers
};

} // namespace seamclock
