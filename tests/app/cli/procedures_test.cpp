// Procedures through the terminal: the two pipe rules' cards, half the cooling, and what a foreman
// says of a procedure into a log, his PIN on standard input.
#include "tests/app/cli/run_cli.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using nlohmann::json;
using test::Cli;
using test::Ran;

json cellOf(const json& procedure, const std::string& name) {
    for (const json& cell : procedure["cells"]) {
        if (cell["cell"] == name) {
            return cell;
        }
    }
    ADD_FAILURE() << "no cell " << name;
    return {};
}

std::string shipped(const std::string& id) {
    return test::fileText(
        std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/procedures/" + id + ".json");
}

std::string replaced(std::string text, const std::string& was, const std::string& now) {
    const auto at = text.find(was);
    EXPECT_NE(at, std::string::npos) << was;
    return at == std::string::npos ? text : text.replace(at, was.size(), now);
}

TEST(CliPlan, OfAPipeRuleNamesItsGapsAndIsNotReady) {
    const Cli cli;
    const std::string bench = " --bench " + Cli::demoBench("east");
    const json uni =
        cli.json("plan --procedure pe-uni10520 --thickness 10 --length 900 --drag 20" + bench);
    EXPECT_EQ(uni["ready"], false);
    EXPECT_EQ(uni["missing"], (json{"heated_tool_C", "pressure_N_mm2.tolerance", "bead_min_mm"}));
    EXPECT_EQ(uni["soak_s"], 120);
    EXPECT_EQ(uni["changeover_max_s"], 7);
    EXPECT_EQ(uni["build_up_s"], 8);
    EXPECT_EQ(uni["cooling_min"], 13);
    EXPECT_EQ(uni["half_cooling"], false);
    EXPECT_FALSE(uni.contains("unattested"));
    // ISO's own reference ambient is 23 °C
    const json iso =
        cli.json("plan --procedure pe-iso21307-slp --thickness 18 --length 900 --drag 20" + bench);
    EXPECT_EQ(iso["ambient_C"], 23);
    EXPECT_EQ(iso["ready"], false);
    EXPECT_EQ(iso["missing"], (json{"pressure_N_mm2.tolerance", "changeover_max_s", "build_up_s"}));
    EXPECT_EQ(iso["cooling_min"], 21);
    EXPECT_EQ(iso["pressure_N_mm2"]["joining"], 0.17);
    const Ran card =
        cli.run("plan --procedure pe-iso21307-slp --thickness 18 --length 900 --drag 20" + bench);
    EXPECT_EQ(card.status, 0) << card.err;
    EXPECT_NE(card.out.find("Not ready to weld"), std::string::npos) << card.out;
}

TEST(CliPlan, HalvesCoolingOnlyWithAllThreeConditions) {
    const Cli cli;
    const std::string pp = "plan --procedure pp-dvs2207-11 --length 600 --thickness ";
    EXPECT_EQ(cli.json(pp + "15.5")["cooling_min"], 25);
    const json half = cli.json(pp + "15.5 --half-cooling --workshop --hardly-loaded");
    EXPECT_EQ(half["half_cooling"], true);
    EXPECT_EQ(half["cooling_min"], 12.5);
    const auto warned =
        std::find_if(half["warnings"].begin(), half["warnings"].end(), [](const json& each) {
            return each["code"] == "half_cooling";
        });
    ASSERT_NE(warned, half["warnings"].end());
    EXPECT_EQ((*warned)["limit"], 25);
    EXPECT_EQ((*warned)["unit"], "min");
    for (const auto& [words, sentence] : std::vector<std::pair<std::string, std::string>>{
             {"15.5 --half-cooling --workshop", "half cooling of a joint that is loaded at once"},
             {"15.5 --half-cooling --hardly-loaded", "half cooling outside workshop conditions"},
             {"14 --half-cooling --workshop --hardly-loaded", "half cooling of 14 mm"},
             {"15.5 --workshop", "--workshop stands without --half-cooling"}}) {
        const Ran ran = cli.run(pp + words);
        EXPECT_EQ(ran.status, 2) << words;
        EXPECT_NE(ran.err.find(sentence), std::string::npos) << ran.err;
        EXPECT_NE(ran.err.find("allowed"), std::string::npos) << ran.err;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
    }
}

TEST(CliProcedures, CheckTellsAUnitMixUp) {
    const Cli cli;
    const Ran ran = cli.run(
        "procedures check " +
        cli.file("f.json", replaced(shipped("pp-dvs2207-11"), "\"min_C\": 200", "\"min_C\": 392")));
    EXPECT_EQ(ran.status, 1);
    EXPECT_NE(
        ran.out.find(": /plate/min_C: 392 is outside 100 to 320 °C; 392 °F would be 200 °C\n"),
        std::string::npos)
        << ran.out;
}

class CliAttest : public ::testing::Test {
protected:
    void SetUp() override {
        log = cli.path("a.log");
        cli.json("rehearse --seam S1 --log " + log);
        const Ran ran = with("people add --name 'Ines Falk' --role foreman");
        ASSERT_EQ(ran.status, 0) << ran.err;
    }
    Ran with(const std::string& words, const std::string& pin = "123456") {
        return cli.run(words + " --log " + log, "printf '" + pin + "\\n' |");
    }
    /// In the foreman's name; it must go well.
    std::string done(const std::string& words) {
        const Ran ran = with("procedures " + words + " --by person:ines-falk");
        EXPECT_EQ(ran.status, 0) << words << "\n" << ran.err;
        return ran.out;
    }
    json shown(const std::string& id = "pp-dvs2207-11") {
        return cli.json("procedures show " + id + " --log " + log);
    }
    std::string filled(const std::string& lower) {
        return cli.file(
            "filled.json",
            replaced(
                shipped("pp-dvs2207-11"),
                "{\"from_mm\": 4.5, \"to_mm\": 7, \"lower\": 135, \"upper\": 175}",
                "{\"from_mm\": 1.0, \"to_mm\": 4.5, \"lower\": " + lower +
                    ", \"upper\": 135}, {\"from_mm\": 4.5, \"to_mm\": 7, \"lower\": 135, "
                    "\"upper\": 175}"));
    }

    Cli cli;
    std::string log;
};

TEST_F(CliAttest, MakesAFilledGapReadyAndAChangeTakesItBack) {
    const std::string plan =
        "plan --procedure pp-dvs2207-11 --thickness 4 --length 700 --log " + log;
    EXPECT_EQ(cli.json(plan)["missing"], json{"soak_s"});
    EXPECT_EQ(done("set " + filled("60")), "pp-dvs2207-11: 0 of 44 cells are attested\n");
    EXPECT_EQ(cli.json(plan)["unattested"], json{"soak_s"});
    EXPECT_EQ(cli.json(plan)["ready"], false);
    EXPECT_EQ(
        done("attest pp-dvs2207-11 --edition 2016-03 --cell 'soak_s.table[1..4.5]' --cell plate"),
        "pp-dvs2207-11: 2 of 44 cells are attested\n");
    EXPECT_EQ(cli.json(plan)["ready"], true);
    const json cell = cellOf(shown(), "soak_s.table[1..4.5]");
    EXPECT_EQ(cell["standing"], "attested");
    EXPECT_EQ(cell["says"], "60 to 135 s");
    EXPECT_NE(
        cell["source"].get<std::string>().find("; attested by Ines Falk, "), std::string::npos);
    EXPECT_NE(
        cli.run("procedures show pp-dvs2207-11 --log " + log).out.find("against edition 2016-03"),
        std::string::npos);
    EXPECT_NE(cli.run("procedures --log " + log).out.find("2 of 44 cells"), std::string::npos);
    EXPECT_EQ(done("set " + filled("61")), "pp-dvs2207-11: 1 of 44 cells are attested\n");
    EXPECT_EQ(cli.json(plan)["unattested"], json{"soak_s"});
    EXPECT_EQ(done("set " + filled("60")), "pp-dvs2207-11: 2 of 44 cells are attested\n");
    done("withdraw pp-dvs2207-11 --reason 'wrong page' --cell 'soak_s.table[1..4.5]'");
    EXPECT_EQ(cli.json(plan)["unattested"], json{"soak_s"});
    EXPECT_EQ(cellOf(shown(), "plate")["standing"], "attested");
    EXPECT_EQ(
        done("attest pp-dvs2207-11 --edition 2016-03 --all"),
        "pp-dvs2207-11: 44 of 44 cells are attested\n");
    EXPECT_EQ(
        done("withdraw pp-dvs2207-11 --reason 'another edition' --all"),
        "pp-dvs2207-11: 0 of 44 cells are attested\n");
    const json verified = cli.json("log verify --log " + log);
    EXPECT_EQ(verified["sound"], true) << verified.dump(1);
    // without the log nothing of that holds
    EXPECT_EQ(cellOf(cli.json("procedures show pp-dvs2207-11"), "plate")["standing"], "seen");
}

TEST_F(CliAttest, TakesAProcedureOfTheShopsOwn) {
    const std::string own = replaced(
        replaced(shipped("pe-hd-dvs2207-1-2005"), "\"pe-hd-dvs2207-1-2005\"", "\"house-pe\""),
        "\"max_C\": 220", "\"max_C\": 218");
    const Ran none = cli.run("procedures show house-pe --log " + log);
    EXPECT_EQ(none.status, 2);
    done("set " + cli.file("own.json", own));
    EXPECT_EQ(shown("house-pe")["id"], "house-pe");
    const json plan = cli.json("plan --procedure house-pe --thickness 8 --length 700 --log " + log);
    EXPECT_EQ(plan["heated_tool_C"]["max"], 218);
    EXPECT_EQ(plan["ready"], true);
}

TEST_F(CliAttest, RefusesWithOneSentenceAndStoresNothing) {
    const std::string file = filled("60");
    const std::string attest = "procedures attest pp-dvs2207-11 --edition 1 ";
    const std::string by = " --by person:ines-falk";
    struct Row {
        std::string words;
        std::string pin;
        std::string part;
    };
    const Row rows[] = {
        {attest + "--cell plate", "123456", "--by is required"},
        {attest + "--cell plate" + by, "654321", "PIN"},
        {attest + "--cell hob" + by, "123456", "\"hob\" is no cell of pp-dvs2207-11; allowed: "},
        {attest + by, "123456", "neither of --cell and --all; allowed: --all, or --cell NAME"},
        {attest + "--all --cell plate" + by, "123456", "both of --cell and --all; allowed: "},
        {"procedures attest pp --edition 1 --all" + by, "123456", "\"pp\" is not a procedure"},
        {"procedures withdraw pp-dvs2207-11 --reason x --all" + by, "123456",
         "has no attested cell in this log"},
        {"procedures withdraw pp-dvs2207-11 --reason x --cell plate" + by, "123456",
         "nobody attested \"plate\""},
        {"procedures set " + cli.file("bad.json", "{}") + by, "123456", "bad.json"},
        {"procedures set " + cli.path("gone.json") + by, "123456", "gone.json"},
    };
    const auto before = cli.json("procedures --log " + log);
    for (const Row& row : rows) {
        const Ran ran = with(row.words, row.pin);
        EXPECT_EQ(ran.status, 2) << row.words;
        EXPECT_NE(ran.err.find(row.part), std::string::npos) << row.words << "\n" << ran.err;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
    }
    EXPECT_EQ(cli.json("procedures --log " + log), before);
    EXPECT_EQ(cellOf(shown(), "plate")["standing"], "seen");
}

TEST(CliProcedures, ShowsCellsByName) {
    const Cli cli;
    const Ran ran = cli.run("procedures show pe-hd-dvs2207-1-2015 --cells");
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_NE(ran.out.find("cooling_min[15..25].table[7..12]"), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("7.5 to 12 min"), std::string::npos);
}

} // namespace
} // namespace seamclock
