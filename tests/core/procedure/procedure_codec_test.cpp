#include "core/procedure/procedure_codec.h"

#include "tests/support/shipped.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <regex>
#include <unistd.h>

namespace seamclock {
namespace {

using test::replaced;
using test::resource;
using test::textOf;

// A formula-only procedure of an invented shop, in the form of the single-pressure pipe rules: no
// bead, no plate window and no tolerance printed, and the gaps say so.
const std::string kFormulaOnly = R"({
  "format": "seamclock-procedure/1",
  "id": "pe-shop-formula",
  "title": "PE, a shop's formulas",
  "material": "PE-HD",
  "standard": "none",
  "edition": "1",
  "reference_ambient": {"value_C": 23, "source": "invented", "standing": "common_practice"},
  "pressure": {
    "alignment_N_mm2": 0.15, "joining_N_mm2": 0.15, "source": "invented", "standing": "seen",
    "soak_aim": {"value_N_mm2": 0.015, "source": "invented", "standing": "common_practice"},
    "soak_max": {"value_N_mm2": 0.02, "source": "invented", "standing": "seen"}
  },
  "soak_s": {"source": "invented", "standing": "seen",
    "formula": [{"from_mm": 2, "to_mm": 60, "coefficients": [0, 12]}]},
  "soak_tolerance": {"low_percent": -11, "high_percent": 8, "source": "invented", "standing": "seen"},
  "changeover_s": {"source": "invented", "standing": "seen",
    "formula": [{"from_mm": 2, "to_mm": 60, "coefficients": [4, 0.3]}]},
  "build_up_s": {"source": "invented", "standing": "seen",
    "formula": [{"from_mm": 2, "to_mm": 60, "coefficients": [4, 0.4]}]},
  "cooling_min": {"default_rule": "line", "classes": [{"source": "invented", "standing": "seen",
    "falls_by_declaration": true,
    "formula": [{"from_mm": 2, "to_mm": 18, "coefficients": [3, 1]},
                {"from_mm": 18, "to_mm": 60, "coefficients": [20, -0.47, 0.015]}]}]},
  "gaps": [
    {"value": "pressure_N_mm2.tolerance", "from_mm": 2, "to_mm": 60, "says": "not printed"},
    {"value": "heated_tool_C", "from_mm": 2, "to_mm": 60, "says": "not printed"},
    {"value": "bead_min_mm", "from_mm": 2, "to_mm": 60, "says": "not printed"}
  ]
})";

std::string shipped(const std::string& id) {
    return textOf(resource("procedures/" + id + ".json"));
}

std::string listed(const std::vector<ProcedureFinding>& findings) {
    std::string out;
    for (const ProcedureFinding& each : findings) {
        out += std::to_string(each.line) + " " + each.field + ": " + each.reason + "\n";
    }
    return out;
}

TEST(ShippedProcedures, AreSoundAndNamedByTheirFiles) {
    const auto all = readProcedureFolder(resource("procedures"));
    ASSERT_TRUE(all) << all.error().detail;
    std::vector<std::string> ids;
    for (const ProcedureDocument& each : *all) {
        ids.push_back(each.procedure.id);
        EXPECT_EQ(each.bytes, shipped(each.procedure.id));
        EXPECT_EQ(each.sha256.size(), 64U);
        EXPECT_EQ(listed(checkProcedure(each.procedure.id, each.bytes)), "");
    }
    EXPECT_EQ(
        ids, (std::vector<std::string>{
                 "pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015", "pe-iso21307-slp", "pe-uni10520",
                 "pp-dvs2207-11", "pvdf-dvs2207-15"}));
}

TEST(ShippedProcedures, CoverTheirTablesThicknesses) {
    const auto range = [](const std::string& id, double thinnest, double thickest,
                          bool bands = true) {
        const Procedure procedure = test::shippedProcedure(id);
        EXPECT_DOUBLE_EQ(inMillimetres(procedure.thinnest()), thinnest) << id;
        EXPECT_DOUBLE_EQ(inMillimetres(procedure.thickest()), thickest) << id;
        EXPECT_EQ(procedure.coolingHasBands(), bands) << id;
    };
    range("pe-hd-dvs2207-1-2005", 1, 70);
    range("pe-hd-dvs2207-1-2015", 1, 70);
    range("pp-dvs2207-11", 1, 50);
    range("pvdf-dvs2207-15", 1.9, 25);
    range("pe-uni10520", 1, 70, false);
    range("pe-iso21307-slp", 1, 70, false);
}

TEST(Procedure, MayConsistOfFormulasWithDeclaredGapsAndAJump) {
    EXPECT_EQ(listed(checkProcedure("f", kFormulaOnly)), "");
    const auto read = readProcedure("f", kFormulaOnly);
    ASSERT_TRUE(read) << read.error().detail;
    EXPECT_FALSE(read->procedure.coolingHasBands());
    EXPECT_FALSE(read->procedure.plate);
    EXPECT_EQ(read->procedure.soakLowPercent, -11);
    ASSERT_NE(read->procedure.gapOf("heated_tool_C", millimetres(2)), nullptr);
    EXPECT_EQ(read->procedure.gapOf("heated_tool_C", millimetres(2))->says, "not printed");
    EXPECT_EQ(read->procedure.gapOf("heated_tool_C", millimetres(60.001)), nullptr);
    EXPECT_EQ(read->procedure.gapOf("soak_s", millimetres(10)), nullptr);
}

struct Spoiled {
    const char* what;
    const std::string& text;
    std::string was;
    std::string now;
    std::string field;
    std::string reason;
};

TEST(ProcedureCheck, FindsWhatIsWrongWithLineAndField) {
    const std::string pe = shipped("pe-hd-dvs2207-1-2005");
    const std::string classes = shipped("pe-hd-dvs2207-1-2015");
    const std::string pvdf = shipped("pvdf-dvs2207-15");
    const std::string pp = shipped("pp-dvs2207-11");
    const std::string iso = shipped("pe-iso21307-slp");
    const std::string kWarmer =
        "\"default_rule\": \"line\", \"per_kelvin\": {\"percent\": 1, \"longer_when\": \"warmer\", "
        "\"from_C\": 5, \"to_C\": 40, \"source\": \"invented\", \"standing\": \"derived\"},";
    const std::vector<Spoiled> kRows{
        {"unknown field", pe, "\"title\"", "\"colour\": \"black\",\n  \"title\"", "/colour",
         "is not a field that is known here"},
        {"other format", pe, "procedure/1", "procedure/9", "/format",
         "\"seamclock-procedure/9\" is not seamclock-procedure/1"},
        {"id with a space", pe, "\"pe-hd-dvs2207-1-2005\"", "\"PE 2005\"", "/id",
         "\"PE 2005\" holds more than small letters, digits and hyphens"},
        {"missing title", pe, "\"title\": \"PE-HD sheet, heated-tool butt welding, edition 2005\",",
         "", "/title", "is missing"},
        {"missing source", pe, "\"max_C\": 220,\n    \"source\"", "\"max_C\": 220,\n    \"sauce\"",
         "/plate/source", "is missing"},
        {"unknown standing", pe, "\"standing\": \"memory\"", "\"standing\": \"sure\"",
         "/plate/standing", "\"sure\" is not one of seen, memory, common_practice, derived"},
        {"a file that attests itself", pe, "\"standing\": \"memory\"", "\"standing\": \"attested\"",
         "/plate/standing",
         "\"attested\" is what a foreman says in a log, with his PIN; a file says seen, memory, "
         "common_practice or derived"},
        {"gap between rows", pe, "{\"from_mm\": 7, \"to_mm\": 12, \"value\": 1.5}",
         "{\"from_mm\": 7.5, \"to_mm\": 12, \"value\": 1.5}", "/bead_mm/table/2/from_mm",
         "7.5 leaves a gap after 7"},
        {"overlap of rows", pe, "{\"from_mm\": 7, \"to_mm\": 12, \"value\": 1.5}",
         "{\"from_mm\": 6, \"to_mm\": 12, \"value\": 1.5}", "/bead_mm/table/2/from_mm",
         "6 overlaps the row that ends at 7"},
        {"reversed row", pe, "{\"from_mm\": 7, \"to_mm\": 12, \"value\": 1.5}",
         "{\"from_mm\": 7, \"to_mm\": 7, \"value\": 1.5}", "/bead_mm/table/2/to_mm",
         "7 is not above from_mm 7"},
        {"a jump down", pe, "\"value\": 2.0", "\"value\": 1.2", "/bead_mm/table/3",
         "the value jumps down from 1.5 to 1.2 at 12 mm; a source that says so needs "
         "\"falls_by_declaration\": true"},
        {"a fall in a band", pe, "\"lower\": 16, \"upper\": 24", "\"lower\": 16, \"upper\": 15",
         "/cooling_min/classes/0/table/3",
         "the value falls before 12.07 mm; a source that says so needs "
         "\"falls_by_declaration\": true"},
        {"a parabola that falls inside", kFormulaOnly, "\"coefficients\": [0, 12]",
         "\"coefficients\": [200, -5, 0.1]", "/soak_s/formula/0",
         "the value falls before 2.58 mm; a source that says so needs "
         "\"falls_by_declaration\": true"},
        {"cooling in seconds", pe, "\"to_mm\": 4.5, \"value\": 6}",
         "\"to_mm\": 4.5, \"value\": 360}", "/cooling_min/classes/0/table/0/value",
         "360 is outside 0.5 to 300 min; 360 s would be 6 min"},
        {"soak by the millisecond", kFormulaOnly, "[0, 12]", "[0, 12000]",
         "/soak_s/formula/0/coefficients",
         "give 24000 at 2 mm, outside 5 to 7200 s; 24000 ms would be 24 s"},
        {"plate in degrees Fahrenheit", pe, "\"max_C\": 220", "\"max_C\": 428", "/plate/max_C",
         "428 is outside 100 to 320 °C; 428 °F would be 220 °C"},
        {"plate upside down", pe, "\"min_C\": 200", "\"min_C\": 230", "/plate/max_C",
         "220 is below min_C 230"},
        {"plate target outside", pe, "\"max_C\": 220,", "\"max_C\": 220, \"target_C\": 225,",
         "/plate/target_C", "225 is outside 200 to 220"},
        {"pressure in pascal", pe, "\"joining_N_mm2\": 0.15", "\"joining_N_mm2\": 150000",
         "/pressure/joining_N_mm2",
         "150000 is outside 0.001 to 2 N/mm²; 150000 Pa would be 0.15 N/mm²"},
        {"pressure in psi", pe, "\"joining_N_mm2\": 0.15", "\"joining_N_mm2\": 21.76",
         "/pressure/joining_N_mm2",
         "21.76 is outside 0.001 to 2 N/mm²; 21.76 psi would be 0.15 N/mm²"},
        {"ambient in kelvin", pe, "\"value_C\": 20", "\"value_C\": 293.15",
         "/reference_ambient/value_C", "293.15 is outside -40 to 60 °C; 293.15 K would be 20 °C"},
        {"plate of no unit at all", pe, "\"max_C\": 220", "\"max_C\": 90000", "/plate/max_C",
         "90000 is outside 100 to 320 °C"},
        {"ambient in degrees Fahrenheit", pe, "\"value_C\": 20", "\"value_C\": 68",
         "/reference_ambient/value_C", "68 is outside -40 to 60 °C; 68 °F would be 20 °C"},
        {"bead in inches", pe, "\"to_mm\": 4.5, \"value\": 0.5", "\"to_mm\": 4.5, \"value\": 0.02",
         "/bead_mm/table/0/value", "0.02 is outside 0.1 to 20 mm; 0.02 in would be 0.508 mm"},
        {"soak in minutes", kFormulaOnly, "[0, 12]", "[0.1, 0.2]", "/soak_s/formula/0/coefficients",
         "give 0.5 at 2 mm, outside 5 to 7200 s; 0.5 min would be 30 s"},
        {"soak to drag beside a pressure", pe, "\"soak_max\": {",
         "\"soak_to_drag\": {\"source\": \"s\", \"standing\": \"seen\"},\n    \"soak_max\": {",
         "/pressure/soak_to_drag", "stands beside soak_aim or soak_max; only one can hold"},
        {"half cooling from no wall", pp, "\"from_mm\": 15", "\"from_mm\": 1500",
         "/half_cooling/from_mm", "1500 is outside 0.1 to 300 mm; 1500 µm would be 1.5 mm"},
        {"half cooling without a source", pp, "\"from_mm\": 15,\n    \"source\"",
         "\"from_mm\": 15,\n    \"note\"", "/half_cooling/source", "is missing"},
        {"a correction without a class", pp, "\"default_rule\": \"line\",", kWarmer,
         "/cooling_min/per_kelvin",
         "needs one class with from_C or to_C, beyond which it corrects"},
        {"a correction of no direction", iso, "\"default_rule\": \"line\",",
         replaced(kWarmer, "warmer", "hotter"), "/cooling_min/per_kelvin/longer_when",
         "\"hotter\" is not one of warmer, colder"},
        {"a correction the wrong way round", iso, "\"default_rule\": \"line\",",
         replaced(kWarmer, "\"to_C\": 40", "\"to_C\": 4"), "/cooling_min/per_kelvin/to_C",
         "4 is not above from_C 5"},
        {"a correction that leaves little", iso, "\"default_rule\": \"line\",",
         replaced(kWarmer, "\"percent\": 1", "\"percent\": 4"), "/cooling_min/per_kelvin/percent",
         "4 would leave 28 % of the cooling time; allowed at least 50 %"},
        {"a correction above any", iso, "\"default_rule\": \"line\",",
         replaced(kWarmer, "\"percent\": 1", "\"percent\": 100"), "/cooling_min/per_kelvin/percent",
         "100 is outside 0.1 to 10"},
        {"unit of another name", pe, "\"joining_N_mm2\"", "\"joining_bar\"",
         "/pressure/joining_bar", "is not a field that is known here"},
        {"aim above the maximum", pe, "\"value_N_mm2\": 0.015", "\"value_N_mm2\": 0.025",
         "/pressure/soak_aim", "0.025 is above soak_max 0.02"},
        {"tolerance as large as the pressure", pe, "\"value_N_mm2\": 0.01,",
         "\"value_N_mm2\": 0.15,", "/pressure/tolerance",
         "0.15 is not below the pressure 0.15 it belongs to"},
        {"a column that isn't declared missing", pe, "\"bead_mm\"", "\"gone\"", "/bead_mm",
         "has no value from 1 to 70 mm, and gaps does not declare bead_min_mm there"},
        {"a gap that is too short", classes,
         "\"value\": \"soak_s\",\n      \"from_mm\": 50,\n      \"to_mm\": 70",
         "\"value\": \"soak_s\",\n      \"from_mm\": 50,\n      \"to_mm\": 60", "/soak_s",
         "has no value from 50 to 70 mm, and gaps does not declare soak_s there"},
        {"a gap that begins a micrometre late", classes,
         "\"value\": \"soak_s\",\n      \"from_mm\": 50,\n      \"to_mm\": 70",
         "\"value\": \"soak_s\",\n      \"from_mm\": 50.001,\n      \"to_mm\": 70", "/soak_s",
         "has no value from 50 to 70 mm, and gaps does not declare soak_s there"},
        {"a gap that ends a micrometre early", classes,
         "\"value\": \"soak_s\",\n      \"from_mm\": 50,\n      \"to_mm\": 70",
         "\"value\": \"soak_s\",\n      \"from_mm\": 50,\n      \"to_mm\": 69.999", "/soak_s",
         "has no value from 50 to 70 mm, and gaps does not declare soak_s there"},
        {"a gap of an unknown value", kFormulaOnly, "\"value\": \"heated_tool_C\"",
         "\"value\": \"plate\"", "/gaps/1/value",
         "\"plate\" is not one of pressure_N_mm2.alignment, pressure_N_mm2.joining, "
         "pressure_N_mm2.tolerance, pressure_N_mm2.soak_aim, pressure_N_mm2.soak_max, "
         "heated_tool_C, bead_min_mm, soak_s, changeover_max_s, build_up_s, cooling_min, "
         "cooling_min.per_kelvin"},
        {"classes apart", classes, "\"from_C\": 15", "\"from_C\": 16",
         "/cooling_min/classes/1/from_C", "does not begin where the class before it ends"},
        {"unknown rule", pe, "\"default_rule\": \"line\"", "\"default_rule\": \"middle\"",
         "/cooling_min/default_rule", "\"middle\" is not one of line, band-end"},
        {"band end without bands", kFormulaOnly, "\"default_rule\": \"line\"",
         "\"default_rule\": \"band-end\"", "/cooling_min/default_rule",
         "is band-end, but a class has no table"},
        {"a jump without its declaration", kFormulaOnly, "\"falls_by_declaration\": true",
         "\"falls_by_declaration\": false", "/cooling_min/classes/0/formula/1",
         "the value jumps down from 21 to 16.4 at 18 mm; a source that says so needs "
         "\"falls_by_declaration\": true"},
        {"table and formula of different range", pvdf,
         "{\"from_mm\": 1.9, \"to_mm\": 25, \"coefficients\": [2, 1.2]}",
         "{\"from_mm\": 2, \"to_mm\": 25, \"coefficients\": [2, 1.2]}",
         "/cooling_min/classes/0/formula", "does not cover the same thicknesses as the table"},
        {"no coefficients", kFormulaOnly, "[0, 12]", "[]", "/soak_s/formula/0/coefficients",
         "0 coefficients are outside 1 to 6"},
        {"not a number", pe, "\"value\": 0.5", "\"value\": \"half\"", "/bead_mm/table/0/value",
         "\"half\" is not a number; allowed 0.1 to 20"},
    };
    for (const Spoiled& row : kRows) {
        SCOPED_TRACE(row.what);
        const std::string text = replaced(row.text, row.was, row.now);
        const auto findings = checkProcedure("f", text);
        const auto found =
            std::find_if(findings.begin(), findings.end(), [&row](const ProcedureFinding& each) {
                return each.field == row.field && each.reason == row.reason;
            });
        ASSERT_NE(found, findings.end()) << listed(findings);
        EXPECT_GE(found->line, 1);
        const auto read = readProcedure("f", text);
        ASSERT_FALSE(read);
        EXPECT_EQ(read.error().code, ErrorCode::Malformed);
    }
}

TEST(ProcedureCheck, NamesTheLineOfTheFinding) {
    const std::string pe = shipped("pe-hd-dvs2207-1-2005");
    const std::string spoiled = replaced(pe, "\"max_C\": 220", "\"max_C\": 428");
    const auto at = spoiled.find("\"max_C\"");
    const auto line =
        1 + std::count(spoiled.begin(), spoiled.begin() + static_cast<std::ptrdiff_t>(at), '\n');
    const auto findings = checkProcedure("f", spoiled);
    ASSERT_EQ(findings.size(), 1U) << listed(findings);
    EXPECT_EQ(findings[0].line, line);
    const auto read = readProcedure("shop.json", spoiled);
    ASSERT_FALSE(read);
    EXPECT_EQ(
        read.error().detail,
        "shop.json, line " + std::to_string(line) +
            ", /plate/max_C: 428 is outside 100 to 320 °C; 428 °F would be 220 °C");
}

TEST(ProcedureCheck, ListsAllFindingsByLine) {
    std::string text = shipped("pe-hd-dvs2207-1-2005");
    text = replaced(text, "\"max_C\": 220", "\"max_C\": 428");
    text = replaced(text, "\"value\": 2.0", "\"value\": 1.2");
    text = replaced(text, "\"edition\": \"2005-09\",", "");
    const auto findings = checkProcedure("f", text);
    EXPECT_EQ(findings.size(), 3U) << listed(findings);
    EXPECT_TRUE(std::is_sorted(findings.begin(), findings.end(), [](const auto& a, const auto& b) {
        return a.line < b.line;
    }));
}

TEST(ProcedureCheck, CountsSyntaxAsAFinding) {
    const auto syntax = checkProcedure("f", "{\n\"id\": }");
    ASSERT_EQ(syntax.size(), 1U);
    EXPECT_EQ(syntax[0], (ProcedureFinding{2, "", "not valid JSON"}));
    EXPECT_EQ(checkProcedure("f", "").size(), 1U);
    EXPECT_EQ(checkProcedure("f", std::string(200, '\0')).size(), 1U);
    const auto list = checkProcedure("f", "[]");
    ASSERT_FALSE(list.empty());
    EXPECT_EQ(list[0].reason, "expected a JSON object");
    EXPECT_FALSE(checkProcedure("f", "{}").empty());
}

// Every cut of a sound file is refused without a crash, and so is every file with one byte turned
// over that then isn't JSON; what still is JSON is either sound or has findings.
TEST(ProcedureCheck, SurvivesATornFile) {
    const std::string text = shipped("pp-dvs2207-11");
    const auto end = text.find_last_of('}');
    for (std::size_t size = 0; size < end; size += 41) {
        EXPECT_FALSE(checkProcedure("f", text.substr(0, size)).empty()) << size;
    }
    for (std::size_t at = 0; at < text.size(); at += 37) {
        std::string flipped = text;
        flipped[at] = static_cast<char>(flipped[at] ^ 0x15);
        EXPECT_EQ(checkProcedure("f", flipped).empty(), readProcedure("f", flipped).has_value());
    }
}

class Folder {
public:
    Folder() : m_path(testing::TempDir() + "seamclock_procedures_" + std::to_string(getpid())) {
        std::filesystem::create_directories(m_path);
    }
    ~Folder() { std::filesystem::remove_all(m_path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    void put(const std::string& name, const std::string& text) const {
        std::ofstream(m_path + "/" + name) << text;
    }
    const std::string& path() const { return m_path; }

private:
    std::string m_path;
};

TEST(ProcedureFolder, IsUnreadableIfAbsentAndMissingItsProceduresIfEmpty) {
    const auto absent = readProcedureFolder("no/such/folder");
    ASSERT_FALSE(absent);
    EXPECT_EQ(absent.error().code, ErrorCode::Unreadable);
    const Folder folder;
    folder.put("README.md", "no procedure");
    const auto empty = readProcedureFolder(folder.path());
    ASSERT_FALSE(empty);
    EXPECT_EQ(empty.error().code, ErrorCode::Missing);
}

TEST(ProcedureFolder, RefusesTwoFilesOfOneId) {
    const Folder folder;
    folder.put("a.json", kFormulaOnly);
    folder.put("b.json", kFormulaOnly);
    const auto read = readProcedureFolder(folder.path());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::Conflict);
    EXPECT_EQ(
        read.error().detail,
        folder.path() + "/b.json: the id \"pe-shop-formula\" is another file's too");
}

TEST(ProcedureFolder, NamesTheBrokenFile) {
    const Folder folder;
    folder.put("a.json", kFormulaOnly);
    folder.put("broken.json", "");
    const auto read = readProcedureFolder(folder.path());
    ASSERT_FALSE(read);
    EXPECT_EQ(
        read.error().detail,
        folder.path() + "/broken.json: the file is empty; expected a JSON object");
}

// What a number of a procedure can plausibly be [practice], as the reader says it for each field.
TEST(ProcedureCheck, SaysTheAllowedRangeOfEveryNumber) {
    struct Row {
        const char* key;
        const char* from; // begins the part of the file that is spoiled
        const char* range;
    };
    const Row rows[] = {
        {"from_mm", "bead_mm", "0.1 to 300"},
        {"to_mm", "bead_mm", "0.1 to 300"},
        {"value", "bead_mm", "0.1 to 20"},
        {"lower", "changeover_s", "1 to 120"},
        {"upper", "build_up_s", "1 to 600"},
        {"lower", "cooling_min", "0.5 to 300"},
        {"value_N_mm2", "soak_max", "0.001 to 2"},
        {"min_C", "plate", "100 to 320"},
        {"max_C", "plate", "100 to 320"},
        {"low_percent", "soak_tolerance", "-50 to 0"},
        {"high_percent", "soak_tolerance", "0 to 100"},
        {"from_C", "cooling_min", "-40 to 60"},
        {"to_C", "cooling_min", "-40 to 60"},
        {"value_C", "reference_ambient", "-40 to 60"},
    };
    const std::string whole = shipped("pe-hd-dvs2207-1-2015");
    for (const Row& row : rows) {
        const auto part = whole.find("\"" + std::string(row.from));
        ASSERT_NE(part, std::string::npos) << row.from;
        const std::regex number("\"" + std::string(row.key) + "\": [-0-9.]+");
        const std::string spoiled =
            whole.substr(0, part) + std::regex_replace(
                                        whole.substr(part), number,
                                        "\"" + std::string(row.key) + "\": \"x\"",
                                        std::regex_constants::format_first_only);
        const std::string said = listed(checkProcedure("p", spoiled));
        const std::string wanted =
            std::string(row.key) + ": \"x\" is not a number; allowed " + row.range + "\n";
        EXPECT_NE(said.find(wanted), std::string::npos) << row.from << "\n" << said;
    }
    const std::string formula = listed(checkProcedure(
        "p",
        std::regex_replace(
            whole, std::regex("\"coefficients\": \\[0, 10\\]"), "\"coefficients\": [0, 200]")));
    EXPECT_NE(formula.find("mm, outside 5 to 7200 s\n"), std::string::npos) << formula;
}

} // namespace
} // namespace seamclock
