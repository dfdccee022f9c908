// Procedures with gaps, as a shop fills and attests them: the filled values are invented.
#pragma once

#include "core/procedure/cells.h"
#include "tests/support/shipped.h"

#include <string>

namespace seamclock::test {

/// Every cell whose name begins so, attested as the procedure has it.
inline Procedure attestedWhere(const Procedure& procedure, const std::string& begin) {
    AttestedCells said{"Ines", "2030-01-07", "2016", {}};
    for (const Cell& cell : cellsOf(procedure)) {
        if (cell.name.rfind(begin, 0) == 0) {
            said.cells.push_back(cell);
        }
    }
    EXPECT_FALSE(said.cells.empty()) << begin;
    return attested(procedure, {said});
}

/// UNI 10520 with its gaps filled by a shop; the values are invented.
inline std::string filledUni() {
    std::string text = textOf(resource("procedures/pe-uni10520.json"));
    text = replaced(
        text, "    \"soak_aim\": {",
        "    \"tolerance\": {\"value_N_mm2\": 0.01, \"source\": \"the shop\", \"standing\": "
        "\"derived\"},\n    \"soak_aim\": {");
    return replaced(
        text, "  \"soak_s\": {",
        "  \"plate\": {\"min_C\": 205, \"max_C\": 215, \"source\": \"the shop\", \"standing\": "
        "\"derived\"},\n  \"bead_mm\": {\"source\": \"the shop\", \"standing\": \"derived\", "
        "\"table\": [{\"from_mm\": 1.0, \"to_mm\": 12, \"value\": 1.5}, {\"from_mm\": 12, "
        "\"to_mm\": 70, \"lower\": 2, \"upper\": 4}]},\n  \"soak_s\": {");
}

inline Procedure wholeUni() {
    const auto read = readProcedure("test", filledUni());
    EXPECT_TRUE(read) << read.error().detail;
    Procedure procedure = read ? read->procedure : Procedure{};
    for (const char* cell : {"plate", "pressure.tolerance", "bead_mm"}) {
        procedure = attestedWhere(procedure, cell);
    }
    return procedure;
}

/// ISO 21307's card, filled and attested; the filled values are invented.
inline Procedure wholeIso() {
    std::string text = replaced(
        textOf(resource("procedures/pe-iso21307-slp.json")), "    \"soak_to_drag\"",
        "    \"tolerance\": {\"value_N_mm2\": 0.02, \"source\": \"the shop\", \"standing\": "
        "\"derived\"},\n    \"soak_to_drag\"");
    text = replaced(
        text, "  \"cooling_min\": {",
        "  \"changeover_s\": {\"source\": \"the shop\", \"standing\": \"derived\", \"formula\": "
        "[{\"from_mm\": 1, \"to_mm\": 70, \"coefficients\": [5, 0.2]}]},\n  \"build_up_s\": "
        "{\"source\": \"the shop\", \"standing\": \"derived\", \"formula\": [{\"from_mm\": 1, "
        "\"to_mm\": 70, \"coefficients\": [4, 0.4]}]},\n  \"cooling_min\": {");
    const auto read = readProcedure("test", text);
    EXPECT_TRUE(read) << read.error().detail;
    Procedure procedure = read ? read->procedure : Procedure{};
    for (const char* cell : {"pressure.tolerance", "changeover_s", "build_up_s"}) {
        procedure = attestedWhere(procedure, cell);
    }
    return procedure;
}

} // namespace seamclock::test
