// What the list and the page of a procedure say of its standing and gaps.
#include "app/setup/procedure_view.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

ProcedureDocument shipped(const std::string& id) {
    auto document = readProcedureFile(
        std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/procedures/" + id + ".json");
    EXPECT_TRUE(document);
    return std::move(*document);
}

TEST(ProcedureView, ARowNamesMaterialStandardEditionIdGapsAndStanding) {
    const ListRowView row = procedureRow(shipped("pp-dvs2207-11"));
    EXPECT_TRUE(row.text.startsWith("PP · DVS 2207-11")) << row.text.toStdString();
    EXPECT_TRUE(row.second.contains("pp-dvs2207-11"));
    EXPECT_TRUE(row.second.contains("Gaps: soak 1 to 4.5 mm")) << row.second.toStdString();
    EXPECT_TRUE(row.third.contains("from memory: not attested"));
    EXPECT_EQ(row.mark, Mark::Trouble);
}

TEST(ProcedureView, ManyGapsAreCountedOnTheRowAndNamedOnThePage) {
    const ProcedureDocument document = shipped("pe-iso21307-slp");
    std::set<std::string> values;
    for (const KnownGap& gap : document.procedure.gaps) {
        values.insert(gap.value);
    }
    ASSERT_GT(values.size(), 1U);
    const ListRowView row = procedureRow(document);
    EXPECT_TRUE(row.text.endsWith("· not seen")) << row.text.toStdString(); // no card's name
    EXPECT_TRUE(row.second.endsWith(QString("Gaps: %1 values").arg(values.size())))
        << row.second.toStdString();
    const ProcedureView page = procedureView(document, 0);
    EXPECT_EQ(page.gaps, gapsText(document.procedure));
    EXPECT_TRUE(page.gaps.contains("changeover")) << page.gaps.toStdString();
}

TEST(ProcedureView, EveryCellStandsInOneGroupAndEveryTabHasItsValues) {
    for (const char* id :
         {"pp-dvs2207-11", "pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015", "pvdf-dvs2207-15"}) {
        const ProcedureDocument document = shipped(id);
        std::size_t count = 0;
        const auto groups = cellGroups(document.procedure);
        for (std::size_t i = 0; i < groups.size(); ++i) {
            count += groups[i].cells.size();
            const ProcedureView view = procedureView(document, static_cast<int>(i));
            EXPECT_EQ(view.values.size(), groups[i].cells.size()) << id;
            EXPECT_EQ(view.plot.isEmpty(), groups[i].name.empty()) << id << " " << groups[i].name;
            EXPECT_FALSE(view.source.isEmpty());
        }
        EXPECT_EQ(count, cellsOf(document.procedure).size()) << id;
        EXPECT_LE(groups.size(), 12U);
    }
}

TEST(ProcedureView, AttestedValuesGetTheShieldAndAreCounted) {
    ProcedureDocument document = shipped("pp-dvs2207-11");
    const auto cells = cellsOf(document.procedure);
    std::vector<Cell> two;
    for (const Cell& cell : cells) {
        if (cell.name.rfind("soak_s.table", 0) == 0 && two.size() < 2) {
            two.push_back(cell);
        }
    }
    ASSERT_EQ(two.size(), 2U);
    document.procedure =
        attested(document.procedure, {{"Oddo Quenley", "2030-01-07", "March 2029", two}});
    const StandingView standing = standingOf(cellsOf(document.procedure));
    EXPECT_EQ(standing.attested, 2);
    EXPECT_TRUE(standing.words.contains(QString("2 of %1 values attested").arg(cells.size())));
    const auto groups = cellGroups(document.procedure);
    const auto soak = std::find_if(groups.begin(), groups.end(), [](const CellGroup& group) {
        return group.name == "soak_s";
    });
    ASSERT_NE(soak, groups.end());
    const ProcedureView view = procedureView(document, static_cast<int>(soak - groups.begin()));
    EXPECT_EQ(
        std::count_if(
            view.values.begin(), view.values.end(),
            [](const ValueRow& row) { return row.sign == Sign::Shield; }),
        2);
    EXPECT_TRUE(view.source.contains("Oddo Quenley")) << view.source.toStdString();
    // Only those can be withdrawn.
    std::vector<std::string> names;
    EXPECT_EQ(cellsPage(*soak, {}, true, names).rows.size(), 2U);
    EXPECT_EQ(names, (std::vector<std::string>{two[0].name, two[1].name}));
    EXPECT_EQ(cellsPage(*soak, {two[0].name}, false, names).rows.size(), soak->cells.size());
}

TEST(ProcedureView, NothingIsAttestedWithoutATick) {
    const ProcedureDocument document = shipped("pp-dvs2207-11");
    const ListView none = groupsPage(document.procedure, {}, false);
    EXPECT_EQ(none.step.look, SlotView::Look::Gone);
    const ListView some = groupsPage(document.procedure, {"plate"}, false);
    EXPECT_EQ(some.step.text, "Go on: 1");
    const ListView withdraws = groupsPage(document.procedure, {}, true);
    EXPECT_TRUE(
        std::none_of(withdraws.rows.begin(), withdraws.rows.end(), [](const ListRowView& row) {
            return row.enabled;
        }));
}

TEST(ProcedureView, WordsOfCells) {
    EXPECT_EQ(cellWords({"soak_s.table[4.5..7]", "", {}}), "4.5 to 7 mm");
    EXPECT_EQ(cellWords({"cooling_min[15..25].formula[2..50]", "", {}}), "2 to 50 mm, formula");
    EXPECT_EQ(cellWords({"pressure.soak_max", "", {}}), "pressure, soak, at most");
}

} // namespace
} // namespace seamclock
