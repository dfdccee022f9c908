// What a foreman holds against the printed standard: a procedure's values one by one, each with a
// name that stays the same when something else in the file changes, and what it says. An
// attestation names cells of the document that lay before the foreman. Whether a cell of another
// document is attested is worked out from that and stored nowhere: it is while it says the same, so
// that a change withdraws what changed and nothing else, and changing it back restores it.
#pragma once

#include "core/procedure/procedure.h"

#include <string>
#include <vector>

namespace seamclock {

/// "cooling_min[15..25].table[7..12]", "12 to 18", and where it comes from.
struct Cell {
    std::string name;
    std::string content; // with its unit; equal only if the values are
    Source source;

    bool operator==(const Cell&) const = default;
};

/// In the order in which a card is read: ambient, pressures, plate, columns, cooling.
std::vector<Cell> cellsOf(const Procedure& procedure);

/// What some foreman said of some cells, with the content that they had in the document he held.
struct AttestedCells {
    std::string by;      // name
    std::string date;    // local, 2030-01-07
    std::string edition; // of the shop's copy of the standard, in the foreman's words
    std::vector<Cell> cells;

    bool operator==(const AttestedCells&) const = default;
};

/// The same procedure with standing attested, and who, when and against what in the source, for
/// every value whose cell says what one of these said; of several the last one holds.
Procedure attested(Procedure procedure, const std::vector<AttestedCells>& said);

} // namespace seamclock
