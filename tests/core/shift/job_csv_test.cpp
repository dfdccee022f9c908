// A job's table. The rules of quoting are RFC 4180's, section 2, with the numbers of its clauses;
// the rest is what core/shift/job_csv.h promises.
#include "core/base/plain_number.h"
#include "core/procedure/procedure_codec.h"
#include "core/shift/csv_rows.h"
#include "core/shift/job_csv.h"
#include "tests/support/shipped.h"

#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

namespace seamclock {
namespace {

using Cells = std::vector<std::string>;

std::vector<Cells> cellsOf(std::string_view text) {
    const CsvRows rows = csvRows(text);
    EXPECT_FALSE(rows.trouble) << rows.trouble->text;
    std::vector<Cells> cells;
    for (const CsvRow& row : rows.rows) {
        cells.push_back(row.cells);
    }
    return cells;
}

TEST(CsvRows, AreReadAsTheRfcWritesThem) {
    // 1 and 2: the last line may lack its end
    EXPECT_EQ(
        cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"),
        (std::vector<Cells>{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    EXPECT_EQ(
        cellsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx"),
        (std::vector<Cells>{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    // 4: blanks belong to the cell
    EXPECT_EQ(cellsOf("a , b"), (std::vector<Cells>{{"a ", " b"}}));
    // 5 and 6: quotes, and a line end inside them
    EXPECT_EQ(
        cellsOf("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"),
        (std::vector<Cells>{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    // 7: a quote inside is doubled
    EXPECT_EQ(
        cellsOf("\"aaa\",\"b\"\"bb\",\"ccc\""), (std::vector<Cells>{{"aaa", "b\"bb", "ccc"}}));
    EXPECT_EQ(cellsOf("\"\",,\"\"\"\""), (std::vector<Cells>{{"", "", "\""}}));
}

TEST(CsvRows, AreLenientOnlyAsTheirHeaderSays) {
    EXPECT_EQ(cellsOf("a,b\nc,d\n"), (std::vector<Cells>{{"a", "b"}, {"c", "d"}}));
    EXPECT_EQ(
        cellsOf("\xEF\xBB\xBF"
                "a\r\n\r\n\nb"),
        (std::vector<Cells>{{"a"}, {"b"}}));
    EXPECT_TRUE(cellsOf("").empty());
}

TEST(CsvRows, CountLinesThroughQuotedLineEnds) {
    const CsvRows rows = csvRows("a\r\n\"b\r\nb\"\r\nc");
    ASSERT_EQ(rows.rows.size(), 3U);
    EXPECT_EQ(rows.rows[1].line, 2U);
    EXPECT_EQ(rows.rows[2].line, 4U);
}

TEST(CsvRows, SayWhereTheyCantBeRead) {
    struct Row {
        const char* text;
        std::size_t line;
        const char* words;
    };
    const Row rows[] = {
        {"a\r\n\"b,c\r\nd\r\n", 2, "a quote is opened and never closed"},
        {"a\r\nb\"c\r\n", 2, "a quote stands inside a cell"},
        {"\"a\"b", 1, "something stands behind a cell's closing quote"},
        {"a\rb", 1, "a line ends with CR alone"},
        {"a\r", 1, "a line ends with CR alone"}};
    for (const Row& row : rows) {
        const CsvRows read = csvRows(row.text);
        ASSERT_TRUE(read.trouble) << row.text;
        EXPECT_EQ(read.trouble->line, row.line) << row.text;
        EXPECT_NE(read.trouble->text.find(row.words), std::string::npos) << read.trouble->text;
    }
}

const std::string kHeader = "label,material,procedure,thickness_mm,length_mm";

std::string table(const std::string& row, const std::string& columns = "") {
    return kHeader + columns + "\r\n" + row + "\r\n";
}

TEST(JobCsv, GivesEachSeamWithBothSheets) {
    const JobCsv job = readJobCsv(
        "length_mm,label,material,procedure,thickness_mm,what,bench,drag_N,ambient_C,shielded,"
        "sheet_1_thickness_mm,sheet_1_grade,sheet_1_maker,sheet_1_batch,sheet_1_mfr_g_10min,"
        "sheet_1_mfr_condition,sheet_2_mfr_g_10min,sheet_2_batch\r\n"
        "620 + 580.5,S1,PE-HD,pe-x,8,\"floor, \"\"two\"\" halves\",west,70,19.5,yes,8.05,VP 8,"
        "Velmorra Sheet,VP-1,0.5,190/5,0.6,VP-2\r\n"
        "1000,S2,PP,pp-x,6,,,,,,,,,,,,,\r\n");
    ASSERT_TRUE(job.isSound()) << job.problems.front().inWords();
    ASSERT_EQ(job.seams.size(), 2U);
    const JobSeam& first = job.seams[0];
    EXPECT_EQ(first.label, "S1");
    EXPECT_EQ(first.what, "floor, \"two\" halves");
    EXPECT_EQ(first.procedure, "pe-x");
    EXPECT_EQ(first.bench, "west");
    EXPECT_EQ(first.thicknessMm, 8);
    EXPECT_EQ(first.lengthsMm, (std::vector<double>{620, 580.5}));
    EXPECT_EQ(first.dragN, 70);
    EXPECT_EQ(first.ambientC, 19.5);
    EXPECT_TRUE(first.shielded);
    ASSERT_EQ(first.sheets.size(), 2U);
    EXPECT_EQ(first.sheets[0].material, "PE-HD");
    EXPECT_EQ(first.sheets[0].grade, "VP 8");
    EXPECT_EQ(first.sheets[0].maker, "Velmorra Sheet");
    EXPECT_EQ(first.sheets[0].batch, "VP-1");
    EXPECT_EQ(first.sheets[0].thicknessUm, 8'050);
    EXPECT_EQ(first.sheets[0].mfr, "0.5 g/10 min (190/5)");
    EXPECT_EQ(first.sheets[1].mfr, "0.6 g/10 min") << "what its paper does not say is not added";
    EXPECT_EQ(first.sheets[1].thicknessUm, 8'000);
    EXPECT_EQ(first.sheets[1].batch, "VP-2");
    EXPECT_FALSE(first.sheets[1].grade);
    const JobSeam& second = job.seams[1];
    EXPECT_FALSE(second.dragN) << "not measured is not nothing";
    EXPECT_FALSE(second.ambientC);
    EXPECT_FALSE(second.shielded);
    EXPECT_TRUE(second.bench.empty());
}

TEST(JobCsv, RefusesEachBadValueByLineColumnValueAndRange) {
    struct Row {
        const char* row;
        const char* columns;
        const char* told;
    };
    const Row rows[] = {
        {"S1,PE,p,\"12,5\",1000", "",
         "line 2, thickness_mm: \"12,5\" is not a number; allowed: 0.1 to 1000 mm, decimals "
         "after a dot"},
        {"S1,PE,p,0,1000", "", "line 2, thickness_mm: \"0\" is out of range; allowed: 0.1 to "},
        {"S1,PE,p,0.0001,1000", "", "\"0.0001\" is out of range; allowed: 0.1 to 1000 mm"},
        {"S3/R1,PE,p,8,1000", "",
         "line 2, label: \"S3/R1\" is what S3 is called once it is welded again; allowed: "},
        {"S1,PE,p,nan,1000", "", "line 2, thickness_mm: \"nan\" is not a number"},
        {"S1,PE,p,1e400,1000", "", "line 2, thickness_mm: \"1e400\" is not a number"},
        {"S1,PE,p,,1000", "", "line 2, thickness_mm: is empty; allowed: 0.1 to"},
        {"S1,PE,p,8,", "", "line 2, length_mm: is empty; allowed: 1 to 100000 mm"},
        {"S1,PE,p,8,0.5", "",
         "line 2, length_mm: \"0.5\" is out of range; allowed: 1 to 100000 mm"},
        {"S1,PE,p,8,500+", "", "line 2, length_mm: \"\" is not a number"},
        {"S1,PE,p,8,1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1+1", "", "allowed: up to 20"},
        {",PE,p,8,1000", "", "line 2, label: is empty; allowed: 1 to 40 signs on one line"},
        {"S1,,p,8,1000", "", "line 2, material: is empty"},
        {"S1,PE,,8,1000", "", "line 2, procedure: is empty"},
        {"S1234567890123456789012345678901234567890,PE,p,8,1000", "",
         "has 41 signs; allowed: 1 to"},
        {"\"S\n1\",PE,p,8,1000", "", "line 2, label: \"S 1\" holds a line end"},
        {"\xFFS,PE,p,8,1000", "", "line 2, label: \"?S\" is not UTF-8"},
        {"S1,PE,p,8,1000,-1", ",drag_N", "line 2, drag_N: \"-1\" is out of range; allowed: 0 to "},
        {"S1,PE,p,8,1000,61", ",ambient_C",
         "line 2, ambient_C: \"61\" is out of range; allowed: -40 to 60 °C"},
        {"S1,PE,p,8,1000,21", ",bead_places",
         "line 2, bead_places: \"21\" is out of range; allowed: 1 to 20"},
        {"S1,PE,p,8,1000,1.5", ",rewelds_allowed",
         "line 2, rewelds_allowed: 1.5 is not a whole number; allowed: 0 to 9"},
        {"S1,PE,p,8,1000,maybe", ",shielded",
         "line 2, shielded: \"maybe\" is neither; allowed: yes"},
        {"S1,PE,p,8,1000,1001", ",sheet_2_mfr_g_10min", "sheet_2_mfr_g_10min: \"1001\" is out of"},
        {"S1,PE,p,8", "", "line 2: 4 cells under 5 columns"},
        {"S1,PE,p,8,1000\r\nS2,PE,p,8,1000\r\nS1,PE,p,8,1000", "",
         "line 4, label: \"S1\" is line 2's seam already; allowed: each label once"},
        {"S1,PE,p,8,1000", ",thickness", "line 1: there is no column \"thickness\"; allowed: "},
        {"S1,PE,p,8,1000,", ",label", "line 1, label: the column stands there twice"},
        {"S1,PE,p,8,\"1000", "", "line 2: a quote is opened and never closed"},
    };
    for (const Row& row : rows) {
        const JobCsv job = readJobCsv(table(row.row, row.columns));
        ASSERT_FALSE(job.isSound()) << row.row;
        EXPECT_TRUE(job.seams.empty()) << row.row;
        EXPECT_NE(job.problems.front().inWords().find(row.told), std::string::npos)
            << job.problems.front().inWords() << " is not " << row.told;
    }
}

TEST(JobCsv, RefusesAFileThatIsNoTableOfSeams) {
    const std::pair<std::string, const char*> files[] = {
        {"", "there is no header line"},
        {"\r\n\r\n", "there is no header line"},
        {kHeader + "\r\n", "there is no seam under the header"},
        {"label;material;thickness_mm\r\nS1;PE;8\r\n", "parted by \";\"; allowed: commas"},
        {"label,material\r\nS1,PE\r\n", "line 1, procedure: the column is missing"},
        {std::string(kLargestJobCsv + 1, ','), "bytes are no job; allowed: up to 4000000"}};
    for (const auto& [text, told] : files) {
        const JobCsv job = readJobCsv(text);
        ASSERT_FALSE(job.isSound()) << told;
        EXPECT_NE(job.problems.front().inWords().find(told), std::string::npos)
            << job.problems.front().inWords();
    }
}

TEST(JobCsv, TakesFiveThousandSeamsAndNotOneMore) {
    std::string most = kHeader + "\n";
    for (int i = 1; i <= 5'000; ++i) { // as the user guide says
        most += "S" + std::to_string(i) + ",PE,p,8,1000\n";
    }
    const JobCsv job = readJobCsv(most);
    ASSERT_TRUE(job.isSound()) << job.problems.front().inWords();
    EXPECT_EQ(job.seams.size(), 5'000U);
    const JobCsv more = readJobCsv(most + "S5001,PE,p,8,1000\n");
    ASSERT_EQ(more.problems.size(), 1U);
    EXPECT_EQ(more.problems[0].inWords(), "line 5002: 5001 seams; allowed: up to 5000");
    EXPECT_TRUE(more.seams.empty());
}

TEST(JobCsv, ListsEverythingThatIsWrongAndTakesNothing) {
    const JobCsv job = readJobCsv(table("S1,PE,p,x,1000\r\nS2,PE,p,8,1000\r\n,PE,p,8,-1"));
    ASSERT_EQ(job.problems.size(), 3U);
    EXPECT_EQ(job.problems[0].line, 2U);
    EXPECT_EQ(job.problems[1].column, "label");
    EXPECT_EQ(job.problems[2].line, 4U);
    EXPECT_TRUE(job.seams.empty()) << "the good seam between them, too";
    std::string many = kHeader + "\n";
    for (int i = 0; i < 130; ++i) {
        many += "S" + std::to_string(i) + ",PE,p,0,1000\n";
    }
    const JobCsv tooLong = readJobCsv(many);
    EXPECT_EQ(tooLong.problems.size(), kMostJobCsvProblems);
    EXPECT_EQ(tooLong.more, 30U);
}

TEST(JobCsv, HoldsNamesAgainstWhatThereIs) {
    const JobCsvKnown known{{{"pe-x", {}}, {"pp-x", {}}}, {"west"}};
    EXPECT_TRUE(readJobCsv(table("S1,PE,pe-x,8,1000,west", ",bench"), known).isSound());
    EXPECT_TRUE(readJobCsv(table("S1,PE,pe-x,8,1000,", ",bench"), known).isSound());
    const JobCsv wrong = readJobCsv(table("S1,PE,pe-y,8,1000,east", ",bench"), known);
    ASSERT_EQ(wrong.problems.size(), 2U);
    EXPECT_EQ(
        wrong.problems[0].inWords(),
        "line 2, procedure: \"pe-y\" is not there; allowed: pe-x, pp-x");
    EXPECT_EQ(wrong.problems[1].inWords(), "line 2, bench: \"east\" is not there; allowed: west");
}

// The shipped tables' own range (tests/standards holds their rows); that PP and PE-HD are not
// welded to each other is the trade's.
TEST(JobCsv, RefusesWhatItsProcedureCantWeld) {
    const auto shipped = readProcedureFolder(test::resource("procedures"));
    ASSERT_TRUE(shipped) << shipped.error().detail;
    JobCsvKnown known;
    for (const ProcedureDocument& one : *shipped) {
        known.procedures.emplace(one.procedure.id, weldedBy(one.procedure));
    }
    const auto told = [&](const std::string& row, const std::string& columns = "") {
        const JobCsv job = readJobCsv(table(row, columns), known);
        EXPECT_LE(job.problems.size(), 1U) << row;
        return job.isSound() ? std::string() : job.problems.front().inWords();
    };
    const std::string pe = "pe-hd-dvs2207-1-2005";
    EXPECT_EQ(told("S1,PE-HD," + pe + ",8,1000"), "");
    EXPECT_EQ(told("S1,PE 100," + pe + ",8,1000"), "") << "a PE-HD by another name";
    EXPECT_EQ(
        told("S1,PP," + pe + ",8,1000"),
        "line 2, material: \"PP\" is not the plastic that " + pe + " is for; allowed: PE-HD");
    const JobCsvProcedure& by = known.procedures.at(pe);
    const auto mm = [](std::int64_t um) { return plainNumber(static_cast<double>(um) / 1e3); };
    const std::string range = mm(by.thinnestUm) + " to " + mm(by.thickestUm) + " mm";
    for (const std::int64_t um : {by.thinnestUm, by.thickestUm}) {
        EXPECT_EQ(told("S1,PE-HD," + pe + "," + mm(um) + ",1000"), "") << mm(um);
    }
    for (const std::int64_t um : {by.thinnestUm - 1, by.thickestUm + 1}) {
        EXPECT_EQ(
            told("S1,PE-HD," + pe + "," + mm(um) + ",1000"), "line 2, thickness_mm: " + mm(um) +
                                                                 " mm is outside what " + pe +
                                                                 " is for; allowed: " + range);
    }
    // DVS 2207-1: misaligned by a tenth of the wall at most; sheets that differ by more are not set
    // up (core/plan/sheets.h).
    EXPECT_EQ(
        told("S1,PE-HD," + pe + ",8,1000,7.6,8.5", ",sheet_1_thickness_mm,sheet_2_thickness_mm"),
        "line 2, sheet_2_thickness_mm: the sheets are 7.6 and 8.5 mm thick, 0.9 mm apart; allowed "
        "a tenth of the thinner, 0.76 mm");
    // And each is of the seam's nominal thickness by the same tenth, on its limits allowed.
    for (const char* is : {"7.273", "8.8"}) {
        EXPECT_EQ(
            told(std::string("S1,PE-HD,") + pe + ",8,1000," + is, ",sheet_1_thickness_mm"), "")
            << is;
    }
    for (const char* is : {"7.272", "8.801"}) {
        for (const char* sheet : {"sheet_1_thickness_mm", "sheet_2_thickness_mm"}) {
            EXPECT_EQ(
                told("S1,PE-HD," + pe + ",8,1000," + is, std::string(",") + sheet),
                std::string("line 2, ") + sheet + ": " + is +
                    " mm is not the seam's 8 mm; allowed a tenth apart, 7.273 to 8.8 mm");
        }
    }
    // Without the procedures nothing is held against them.
    EXPECT_TRUE(readJobCsv(table("S1,PP," + pe + ",80,1000")).isSound());
}

TEST(JobCsv, ItsTemplateIsSound) {
    const JobCsv job = readJobCsv(jobCsvTemplate());
    ASSERT_TRUE(job.isSound()) << job.problems.front().inWords();
    ASSERT_EQ(job.seams.size(), 1U);
    EXPECT_EQ(job.seams[0].what, "floor, two halves");
    EXPECT_EQ(job.seams[0].part, "Brine settling tank");
    std::string header;
    for (const std::string& column : jobCsvColumns()) {
        header += (header.empty() ? "" : ",") + column;
    }
    EXPECT_EQ(jobCsvTemplate().rfind(header + "\r\n", 0), 0U);
}

} // namespace
} // namespace seamclock
