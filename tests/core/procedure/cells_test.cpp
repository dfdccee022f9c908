#include "core/procedure/cells.h"

#include "tests/support/shipped.h"

#include <algorithm>
#include <random>
#include <set>

namespace seamclock {
namespace {

using test::replaced;
using test::resource;
using test::textOf;

const std::vector<std::string> kAll{"pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015",
                                    "pe-iso21307-slp",      "pe-uni10520",
                                    "pp-dvs2207-11",        "pvdf-dvs2207-15"};

Procedure parsed(const std::string& text) {
    const auto read = readProcedure("test", text);
    EXPECT_TRUE(read) << read.error().detail;
    return read ? read->procedure : Procedure{};
}

std::string contentOf(const Procedure& procedure, const std::string& name) {
    for (const Cell& cell : cellsOf(procedure)) {
        if (cell.name == name) {
            return cell.content;
        }
    }
    return "no such cell";
}

std::set<std::string> attestedNames(const Procedure& procedure) {
    std::set<std::string> names;
    for (const Cell& cell : cellsOf(procedure)) {
        if (cell.source.standing == Standing::Attested) {
            names.insert(cell.name);
        }
    }
    return names;
}

AttestedCells saidOf(const Procedure& procedure, const std::set<std::string>& names) {
    AttestedCells said{"Ines", "2030-01-07", "2016-03", {}};
    for (const Cell& cell : cellsOf(procedure)) {
        if (names.count(cell.name) > 0) {
            said.cells.push_back(cell);
        }
    }
    return said;
}

TEST(Cells, NameEveryValueOnceAndSayIt) {
    for (const std::string& id : kAll) {
        std::set<std::string> names;
        for (const Cell& cell : cellsOf(test::shippedProcedure(id))) {
            EXPECT_TRUE(names.insert(cell.name).second) << id << " " << cell.name;
            EXPECT_FALSE(cell.content.empty()) << id << " " << cell.name;
            EXPECT_FALSE(cell.source.text.empty()) << id << " " << cell.name;
        }
    }
    const Procedure classes = test::shippedProcedure("pe-hd-dvs2207-1-2015");
    EXPECT_EQ(contentOf(classes, "cooling_min[15..25].table[7..12]"), "7.5 to 12 min");
    EXPECT_EQ(contentOf(classes, "cooling_min[..15].table[1..4.5]"), "4 min");
    EXPECT_EQ(contentOf(classes, "pressure.joining"), "0.15 N/mm²");
    EXPECT_EQ(contentOf(classes, "plate"), "210 to 230 °C");
    const Procedure iso = test::shippedProcedure("pe-iso21307-slp");
    EXPECT_EQ(
        contentOf(iso, "cooling_min[21..25].formula[18..70]"), "20 + -0.47 s + 0.015 s^2 min");
    EXPECT_EQ(contentOf(iso, "pressure.soak_to_drag"), "from zero to drag");
    EXPECT_EQ(contentOf(iso, "soak_tolerance"), "-11 to 11 %");
    EXPECT_EQ(contentOf(test::shippedProcedure("pp-dvs2207-11"), "half_cooling"), "from 15 mm");
}

TEST(Cells, SayWhoAttestedThemWhenAndAgainstWhat) {
    const Procedure pp = test::shippedProcedure("pp-dvs2207-11");
    const Procedure all = attested(pp, {saidOf(pp, {"soak_s.table[7..12]", "plate"})});
    EXPECT_EQ(attestedNames(all), (std::set<std::string>{"soak_s.table[7..12]", "plate"}));
    EXPECT_EQ(
        all.plate->source,
        (Source{
            "DVS 2207-11: 210 ± 10 °C; attested by Ines, 2030-01-07, against edition 2016-03",
            Standing::Attested}));
    EXPECT_EQ(all.soak->sourceAt(millimetres(8)).standing, Standing::Attested);
    EXPECT_EQ(all.soak->sourceAt(millimetres(12)).standing, Standing::Attested);
    EXPECT_EQ(all.soak->sourceAt(millimetres(7)).standing, Standing::Memory);
    EXPECT_EQ(all.soak->sourceAt(millimetres(12.001)).standing, Standing::Memory);
    EXPECT_EQ(all.soak->sourceAt(millimetres(2)).standing, Standing::Memory); // no value there
}

// Both the cell and the formula have a say in PVDF's cooling.
TEST(Cells, OfTwoCurvesCountOnlyTogether) {
    const Procedure pvdf = test::shippedProcedure("pvdf-dvs2207-15");
    const std::string cell = "cooling_min.table[5.5..10]";
    const std::string formula = "cooling_min.formula[1.9..25]";
    const auto standing = [&pvdf](const std::set<std::string>& names) {
        const Procedure held = attested(pvdf, {saidOf(pvdf, names)});
        return held.cooling[0].minutes.sourceAt(millimetres(8)).standing;
    };
    EXPECT_EQ(standing({cell}), Standing::Memory);
    EXPECT_EQ(standing({formula}), Standing::Memory);
    EXPECT_EQ(standing({cell, formula}), Standing::Attested);
}

TEST(Cells, OfSeveralAttestationsTheLastThatStillHoldsIsNamed) {
    const Procedure pp = test::shippedProcedure("pp-dvs2207-11");
    AttestedCells first = saidOf(pp, {"plate"});
    AttestedCells second = saidOf(pp, {"plate"});
    second.by = "Jonas";
    AttestedCells other = saidOf(pp, {"plate"});
    other.by = "Mara";
    other.cells[0].content = "205 to 220 °C"; // of another document
    const Procedure held = attested(pp, {first, second, other});
    EXPECT_NE(held.plate->source.text.find("attested by Jonas"), std::string::npos);
    EXPECT_EQ(held.plate->source.text.find("Ines"), std::string::npos);
}

// One number of the file after the other is changed, all cells having been attested before: the
// cell that says it loses its standing and no other, and changing it back restores it. Numbers that
// name a cell (a row's ends) make it another cell.
TEST(Cells, LoseTheirStandingOnlyWhereTheyChange) {
    const std::string text = textOf(resource("procedures/pp-dvs2207-11.json"));
    const Procedure before = parsed(text);
    std::set<std::string> all;
    for (const Cell& cell : cellsOf(before)) {
        all.insert(cell.name);
    }
    const AttestedCells said = saidOf(before, all);
    struct Change {
        const char* was;
        const char* now;
        const char* cell;
    };
    const Change changes[] = {
        {"{\"from_mm\": 7, \"to_mm\": 12, \"lower\": 175, \"upper\": 245}",
         "{\"from_mm\": 7, \"to_mm\": 12, \"lower\": 175, \"upper\": 244.5}",
         "soak_s.table[7..12]"},
        {"{\"from_mm\": 19, \"to_mm\": 26, \"value\": 1.5}",
         "{\"from_mm\": 19, \"to_mm\": 26, \"value\": 1.6}", "bead_mm.table[19..26]"},
        {"\"max_C\": 220", "\"max_C\": 221", "plate"},
        {"\"max_C\": 220,", "\"max_C\": 220, \"target_C\": 212,", "plate"},
        {"\"joining_N_mm2\": 0.1", "\"joining_N_mm2\": 0.11", "pressure.joining"},
        {"\"high_percent\": 10", "\"high_percent\": 9", "soak_tolerance"},
        {"\"value_C\": 20", "\"value_C\": 21", "reference_ambient"},
        {"\"from_mm\": 15,", "\"from_mm\": 16,", "half_cooling"},
        {"{\"from_mm\": 12, \"to_mm\": 19, \"lower\": 20, \"upper\": 30}",
         "{\"from_mm\": 12, \"to_mm\": 19, \"lower\": 20, \"upper\": 29}",
         "cooling_min.table[12..19]"},
    };
    EXPECT_EQ(attestedNames(attested(before, {said})), all);
    for (const Change& change : changes) {
        SCOPED_TRACE(change.now);
        const Procedure after = parsed(replaced(text, change.was, change.now));
        std::set<std::string> rest = all;
        ASSERT_EQ(rest.erase(change.cell), 1U);
        EXPECT_EQ(attestedNames(attested(after, {said})), rest);
    }
    // what is no cell changes nothing: titles, notes, sources in words, the foreman's choice of
    // rule
    for (const auto& [was, now] : std::vector<std::pair<std::string, std::string>>{
             {"PP sheet", "Sheet of PP"},
             {"\"default_rule\": \"line\"", "\"default_rule\": \"band-end\""},
             {"edition not seen: a newer", "a newer"}}) {
        EXPECT_EQ(attestedNames(attested(parsed(replaced(text, was, now)), {said})), all) << now;
    }
}

// The same, at random: any set of cells attested, any row of any column moved by any amount.
TEST(Cells, LoseNothingElseWhateverChanges) {
    std::mt19937 random(20300107);
    const auto chosen = [&random](std::size_t count) {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
    };
    for (int round = 0; round < 300; ++round) {
        const Procedure before = test::shippedProcedure(kAll[chosen(kAll.size())]);
        std::set<std::string> names;
        for (const Cell& cell : cellsOf(before)) {
            if (chosen(2) == 0) {
                names.insert(cell.name);
            }
        }
        const AttestedCells said = saidOf(before, names);
        Procedure after = before;
        Column& column = chosen(2) == 0 ? *after.soak : after.cooling[0].minutes;
        Curve& curve = column.curves[chosen(column.curves.size())];
        const std::size_t row = chosen(curve.pieces.size());
        curve.pieces[row].coefficients[0] += 0.25 * static_cast<double>(1 + chosen(40));
        const std::vector<Cell> was = cellsOf(before);
        const std::vector<Cell> is = cellsOf(after);
        ASSERT_EQ(was.size(), is.size());
        std::set<std::string> rest = names;
        int changed = 0;
        for (std::size_t i = 0; i < was.size(); ++i) {
            ASSERT_EQ(was[i].name, is[i].name);
            if (was[i].content != is[i].content) {
                rest.erase(is[i].name);
                ++changed;
            }
        }
        EXPECT_EQ(changed, 1);
        EXPECT_EQ(attestedNames(attested(after, {said})), rest);
        EXPECT_EQ(attestedNames(attested(before, {said})), names);
    }
}

} // namespace
} // namespace seamclock
