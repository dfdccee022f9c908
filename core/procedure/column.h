// A column of a welding procedure: a value over the sheet's thickness. Every column is a piecewise
// polynomial; the rows of a table are straight pieces, "12 e" and "0.015 e² − 0.47 e + 20" are the
// same mechanism. It never extrapolates: where no piece covers a thickness, there is no value.
// Thickness counts in whole micrometres, so that no binary noise moves a sheet across a boundary.
#pragma once

#include "core/units/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// How a value came to stand in the data. Attested: a foreman held it against the shop's
/// own copy.
enum class Standing { Seen, Memory, CommonPractice, Derived, Attested };
std::string toString(Standing standing);

/// Where a value comes from, in words, with how much that is worth.
struct Source {
    std::string text;
    Standing standing = Standing::Memory;

    bool operator==(const Source&) const = default;
};

/// Valid for from < s <= to, and at `from` itself where no piece ends there: a thickness on a
/// boundary belongs to the band that ends there. Value = sum of coefficients[i] · (s in mm)^i, in
/// the column's unit.
struct Piece {
    Length from;
    Length to;
    std::vector<double> coefficients;
    std::optional<Source> attested{}; // where a foreman held this very piece against the standard

    double at(Length thickness) const; // wherever it is: the caller minds the range
    bool operator==(const Piece&) const = default;
};

/// How a table's band is read between its ends: along the straight line, or at the band's upper
/// end. The band's end is never taken for less than the line (it would be in a band that falls).
enum class BandRule { Line, BandEnd };
std::string toString(BandRule rule); // "line", "band-end"

/// One printed table or formula. Only a table has bands, so only a table can be read at the band's
/// end.
struct Curve {
    bool isTable = true;
    std::vector<Piece> pieces; // ascending, without overlap

    std::optional<double> at(Length thickness, BandRule rule) const;
    const Piece* pieceAt(Length thickness) const; // null: none covers it
    bool operator==(const Curve&) const = default;
};

/// The longest of its curves (PVDF's cooling is the longer of cell and formula). No value if any
/// curve has none.
struct Column {
    std::vector<Curve> curves;
    Source source;
    bool fallsByDeclaration = false; // a falling value or a jump down, stated by the source itself

    std::optional<double> at(Length thickness, BandRule rule) const;
    /// Of the value at that thickness: attested where every piece that had a say in it is.
    const Source& sourceAt(Length thickness) const;
    bool hasBands() const;
    bool operator==(const Column&) const = default;
};

} // namespace seamclock
