// Every command's output as scripts use it: keys and statuses are the contract of the terminal
// program.
#include "tests/app/cli/run_cli.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using nlohmann::json;
using test::Cli;
using test::Ran;

constexpr const char* kPlan = "plan --procedure pe-hd-dvs2207-1-2005 --thickness 10 --length 1000";

void expectKeys(const json& object, std::initializer_list<const char*> keys) {
    for (const char* key : keys) {
        EXPECT_TRUE(object.is_object() && object.contains(key))
            << key << " is not in " << object.dump();
    }
}

TEST(CliProcedures, ListsTheShippedOnes) {
    const Cli cli;
    const json j = cli.json("procedures");
    std::set<std::string> ids;
    for (const json& one : j["procedures"]) {
        expectKeys(
            one, {"id", "title", "material", "standard", "edition", "thickness_mm", "sha256"});
        ids.insert(one["id"].get<std::string>());
    }
    for (const char* id :
         {"pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015", "pe-iso21307-slp", "pe-uni10520",
          "pp-dvs2207-11", "pvdf-dvs2207-15"}) {
        EXPECT_TRUE(ids.count(id)) << id;
        EXPECT_NE(cli.run("procedures").out.find(id), std::string::npos);
    }
}

TEST(CliProcedures, ShowsOneWithItsSources) {
    const Cli cli;
    const json j = cli.json("procedures show pp-dvs2207-11");
    EXPECT_EQ(j["id"], "pp-dvs2207-11");
    EXPECT_EQ(j["document"]["id"], "pp-dvs2207-11");
    const Ran text = cli.run("procedures show pp-dvs2207-11");
    EXPECT_EQ(text.status, 0);
    EXPECT_NE(text.out.find("from memory: not attested"), std::string::npos);
    EXPECT_NE(text.out.find("7 to 12 mm: 175 to 245 s"), std::string::npos)
        << "DVS 2207-11, table 2 (from memory)\n"
        << text.out;
}

TEST(CliProcedures, ChecksAFile) {
    const Cli cli;
    const std::string shipped =
        std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/procedures/pp-dvs2207-11.json";
    const json sound = cli.json("procedures check " + test::inShell(shipped));
    EXPECT_TRUE(sound["sound"]);
    EXPECT_EQ(sound["findings"], json::array());
    std::string spoiled = test::fileText(shipped);
    spoiled.insert(spoiled.find("\"id\""), "\"colour\": \"grey\",\n  ");
    const Ran ran = cli.run("procedures check --json " + cli.file("spoiled.json", spoiled));
    EXPECT_EQ(ran.status, 1) << "the answer is no";
    EXPECT_EQ(ran.err, "");
    const json findings = json::parse(ran.out);
    EXPECT_FALSE(findings["sound"]);
    ASSERT_FALSE(findings["findings"].empty());
    expectKeys(findings["findings"][0], {"line", "field", "reason"});
    EXPECT_EQ(findings["findings"][0]["field"], "/colour");
}

TEST(CliPlan, HasEveryKeyOfTheContract) {
    const Cli cli;
    const json j = cli.json(std::string(kPlan) + " --drag 40 --bench " + Cli::demoBench("east"));
    expectKeys(
        j, {"procedure", "thickness_mm", "length_mm", "ambient_C", "heated_tool_C",
            "pressure_N_mm2", "force_N", "scale", "gap_mm", "clamping_gap_mm", "bead_min_mm",
            "soak_s", "changeover_max_s", "build_up_s", "cooling_min", "warnings", "sources"});
    expectKeys(j["heated_tool_C"], {"min", "target", "max"});
    expectKeys(j["pressure_N_mm2"], {"alignment", "soak_max", "joining", "tolerance"});
    expectKeys(j["force_N"], {"alignment", "soak_max", "joining"});
    expectKeys(j["scale"], {"unit", "alignment", "soak", "joining"});
    for (const char* reading : {"alignment", "soak", "joining"}) {
        expectKeys(j["scale"][reading], {"set", "low", "high"});
    }
    expectKeys(j["sources"][0], {"value", "source", "standing"});
    EXPECT_EQ(j["force_N"]["joining"], 1500.0)
        << "0.15 N/mm² x 10 x 1000 mm (common practice, no source)";
}

TEST(CliPlan, HasNoScaleWithoutABench) {
    const Cli cli;
    const json j = cli.json(kPlan);
    EXPECT_FALSE(j.contains("scale"));
    EXPECT_TRUE(j["ready"]);
    EXPECT_EQ(j["gap_mm"], 10.0);
    EXPECT_EQ(j["clamping_gap_mm"], 20.0);
    EXPECT_EQ(j["ambient_C"], 20.0) << "the procedure's reference ambient";
    bool drag = false;
    for (const json& warning : j["warnings"]) {
        expectKeys(warning, {"code", "text"});
        drag = drag || warning["text"].get<std::string>().find("rag") != std::string::npos;
    }
    EXPECT_TRUE(drag) << "drag was not given: a warning says so";
}

TEST(CliPlan, OffersBothRulesOfCooling) {
    // 10 mm PE-HD: 13.6 min on the straight line, 16 at the band's end (common practice, no
    // source).
    const Cli cli;
    EXPECT_DOUBLE_EQ(cli.json(std::string(kPlan) + " --cooling line")["cooling_min"], 13.6);
    EXPECT_DOUBLE_EQ(cli.json(std::string(kPlan) + " --cooling band-end")["cooling_min"], 16.0);
}

TEST(CliPlan, AddsTheLengthsOfOneClamping) {
    const Cli cli;
    const json j = cli.json(
        "plan --procedure pe-hd-dvs2207-1-2005 --thickness 10 --length 400 --length 350.5");
    EXPECT_EQ(j["length_mm"], 750.5);
}

TEST(CliPlan, IsReadyOnlyWithoutGaps) {
    const Cli cli;
    const json j = cli.json("plan --procedure pe-hd-dvs2207-1-2015 --thickness 60 --length 500");
    EXPECT_FALSE(j["ready"]);
    EXPECT_FALSE(j["missing"].empty());
    EXPECT_FALSE(j.contains("soak_s"));
}

TEST(CliPlan, PrintsACardForPeople) {
    const Cli cli;
    const Ran ran = cli.run(std::string(kPlan) + " --bench " + Cli::demoBench("east"));
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.err, "");
    EXPECT_NE(ran.out.find("Weld card: PE-HD 10 mm × 1000 mm"), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("= 1500 N, ÷ 62.5 N/mm = 24 mm, set 24"), std::string::npos) << ran.out;
}

TEST(CliPlan, PrintsTheSameCardInInchesAndPounds) {
    const Cli cli;
    const std::string words =
        std::string(kPlan) + " --units imperial --bench " + Cli::demoBench("east");
    const Ran ran = cli.run(words);
    EXPECT_EQ(ran.status, 0) << ran.err;
    EXPECT_NE(ran.out.find("Weld card: PE-HD 0.394 in × 39.37 in"), std::string::npos) << ran.out;
    // 1500 N is 337.2 lbf, 62.5 N/mm is 14.05 lbf/mm; the reading is the scale's own.
    EXPECT_NE(ran.out.find("= 337.2 lbf, ÷ 14.05 lbf/mm = 24 mm, set 24"), std::string::npos)
        << ran.out;
    EXPECT_EQ(cli.json(words), cli.json(std::string(kPlan) + " --bench " + Cli::demoBench("east")))
        << "JSON has its units in its keys";
}

TEST(CliJob, ATableIsSoundOrEveryFaultIsListed) {
    const Cli cli;
    const Ran blank = cli.run("job template");
    EXPECT_EQ(blank.status, 0);
    const std::string good = cli.file("seams.csv", blank.out);
    const Ran sound = cli.run("job check " + good);
    EXPECT_EQ(sound.status, 0) << sound.out << sound.err;
    EXPECT_NE(sound.out.find("sound, seams: 1"), std::string::npos) << sound.out;
    EXPECT_EQ(cli.json("job check " + good)["seams"][0]["label"], "S1");
    const std::string bad = cli.file(
        "bad.csv", "label,material,procedure,thickness_mm,length_mm\r\n"
                   "S1,PE-HD,no-such-one,\"12,5\",1000\r\nS2,PP,pp-dvs2207-11,8,0\r\n");
    const Ran wrong = cli.run("job check " + bad);
    EXPECT_EQ(wrong.status, 1);
    EXPECT_EQ(wrong.err, "");
    EXPECT_EQ(std::count(wrong.out.begin(), wrong.out.end(), '\n'), 3) << wrong.out;
    for (const char* told :
         {"line 2, procedure: \"no-such-one\" is not there; allowed: pe-hd-dvs2207-1-2005",
          "line 2, thickness_mm: \"12,5\" is not a number",
          "line 3, length_mm: \"0\" is out of range; allowed: 1 to 100000 mm"}) {
        EXPECT_NE(wrong.out.find(told), std::string::npos) << wrong.out;
    }
    const auto answer = json::parse(cli.run("job check --json " + bad).out);
    EXPECT_FALSE(answer["sound"]);
    EXPECT_EQ(answer["problems"].size(), 3U);
    EXPECT_TRUE(answer["seams"].empty()) << "the good seam is not taken either";
    EXPECT_EQ(cli.run("job check /no/such/file.csv").status, 2);
    EXPECT_EQ(cli.run("job").status, 2);
}

TEST(CliPlan, TakesAProcedureFromAFile) {
    const Cli cli;
    const std::string own = cli.file(
        "own.json",
        test::fileText(
            std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/procedures/pe-hd-dvs2207-1-2005.json"));
    EXPECT_EQ(
        cli.json("plan --thickness 10 --length 1000 --procedure " + own)["soak_s"],
        cli.json(kPlan)["soak_s"]);
}

TEST(CliBench, FitsASpringScale) {
    // NIST's certified Norris set stands in tests/core/bench; here a line that a person can check:
    // 90 N/mm from a zero of 2 mm, without scatter.
    const Cli cli;
    const json j = cli.json(
        "bench fit " +
        cli.file("s.csv", "reading_mm,force_N\n# cold\n2,0\n4,180\n7,450\n12,900\n"));
    expectKeys(
        j, {"points", "rate_N_per_unit", "rate_uncertainty_percent", "zero", "worst_residual_N",
            "residuals_N"});
    EXPECT_EQ(j["points"], 4);
    EXPECT_NEAR(j["rate_N_per_unit"].get<double>(), 90, 1e-9) << "rounding of doubles";
    EXPECT_NEAR(j["zero"].get<double>(), 2, 1e-9);
    EXPECT_EQ(cli.run("bench fit " + cli.path("s.csv")).status, 0);
}

TEST(CliBench, ItsTemplateCanBePlannedWith) {
    const Cli cli;
    const Ran ran = cli.run("bench template");
    ASSERT_EQ(ran.status, 0);
    const json j = json::parse(ran.out);
    EXPECT_TRUE(j.contains("explained"));
    EXPECT_EQ(cli.run("bench template --json").out, ran.out);
}

TEST(CliBench, ShowsAFile) {
    const Cli cli;
    const json j = cli.json("bench show " + Cli::demoBench("west"));
    EXPECT_EQ(j["id"], "west");
    EXPECT_GT(j["rate_N_per_unit"], 0);
    EXPECT_TRUE(j["document"].contains("scale"));
    EXPECT_EQ(cli.run("bench show " + Cli::demoBench("west")).status, 0);
}

TEST(CliRehearse, PrintsTheRecordOfAWholeWeld) {
    const Cli cli;
    const json j = cli.json("rehearse");
    expectKeys(
        j, {"verdict", "reasons", "log", "events", "plan", "cues", "phases", "set_and_actual"});
    EXPECT_EQ(j["verdict"], "within limits") << j["reasons"];
    EXPECT_EQ(j["type"], "practice");
    EXPECT_EQ(j["opened"]["utc"], "2030-01-07T06:00:00.000Z") << "the contract's virtual start";
    EXPECT_EQ(j["seam"], "S1") << "the first demo seam";
}

TEST(CliRehearse, HasTheVerdictOfItsFault) {
    const Cli cli;
    const struct {
        const char* words;
        const char* verdict;
        const char* code;
    } rows[] = {
        {"--late-changeover 0.3", "within limits with remarks", "changeover"},
        {"--late-changeover 3", "out of limits", "changeover"},
        {"--early-release 2", "out of limits", "cooling"},
        {"--cold-plate", "out of limits", "plate_temperature"},
        {"--thin-bead", "out of limits", "alignment_bead"},
        {"--misaligned", "out of limits", "misalignment"},
        {"--missed-recheck", "within limits with remarks", "recheck_missed"},
        {"--low-reading left", "out of limits", "joining_reading"},
        {"--take-back", "within limits with remarks", "step_taken_back"},
        {"--backdate 4", "within limits with remarks", "step_backdated"},
        {"--abort-in soaking", "incomplete", "aborted"}};
    for (const auto& row : rows) {
        const json j = cli.json(std::string("rehearse ") + row.words);
        EXPECT_EQ(j["verdict"], row.verdict) << row.words << " " << j["reasons"];
        bool named = false;
        for (const json& reason : j["reasons"]) {
            named = named || reason["code"] == row.code;
        }
        EXPECT_TRUE(named) << row.words << " " << j["reasons"];
    }
}

TEST(CliRehearse, ShowsCardEventsCuesRecordVerdictAndLog) {
    const Cli cli;
    const Ran ran = cli.run("rehearse --log " + cli.path("demo.log"));
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    std::size_t at = 0;
    for (const char* words :
         {"Weld card: PE-HD 15 mm × 1130 mm", "weld opened: joint 1", "soak reading reached",
          ">>  get ready", ">>  count-in 3", ">>  act now", "plate out", "faces together",
          "wheel locked", "Set and actual", "Times", "Verdict: within limits", "The log: "}) {
        const std::size_t found = ran.out.find(words, at);
        EXPECT_NE(found, std::string::npos) << words << "\n" << ran.out;
        at = found == std::string::npos ? at : found;
    }
    EXPECT_NE(ran.out.find(cli.folder().file("demo.log")), std::string::npos);
}

TEST(CliRehearse, MakesTheSameRecordFromTheSameSeedAtAnySpeed) {
    // UUIDs, hashes, log id and number are outside the compared record (contract).
    const Cli cli;
    const auto compared = [&cli](const std::string& words) {
        json j = cli.json("rehearse " + words);
        for (const char* key : {"weld", "number", "log"}) {
            j.erase(key);
        }
        for (json& event : j["events"]) {
            event.erase("boot");
            if (event["kind"] == "weld_opened") {
                event["d"].erase("number");
            }
        }
        return j;
    };
    const json first = compared("--seed 7 --log " + cli.path("a.log"));
    EXPECT_EQ(first, compared("--seed 7 --log " + cli.path("b.log")));
    EXPECT_EQ(first, compared("--seed 7 --speed 1000000 --log " + cli.path("c.log")));
    EXPECT_NE(first["events"], compared("--seed 8 --log " + cli.path("d.log"))["events"]);
}

TEST(CliRehearse, MakesEverySeamOfTheDemo) {
    const Cli cli;
    for (const char* seam : {"S1", "S2", "S3", "S4", "S5", "S6"}) {
        const json j = cli.json(std::string("rehearse --seam ") + seam);
        EXPECT_EQ(j["verdict"], "within limits") << seam << " " << j["reasons"];
        EXPECT_EQ(j["seam"], seam);
        EXPECT_EQ(j["log"], cli.folder().file("data") + "/seamclock/practice.seamlog");
    }
    const json list =
        cli.json("log list --log " + cli.path("data") + "/seamclock/practice.seamlog");
    EXPECT_EQ(list["joints"].size(), 6U);
}

TEST(CliHelp, IsThereForEveryCommand) {
    const Cli cli;
    for (const char* words :
         {"",
          "procedures",
          "procedures list",
          "procedures show",
          "procedures check",
          "procedures set",
          "procedures attest",
          "procedures withdraw",
          "plan",
          "bench",
          "bench fit",
          "bench show",
          "bench template",
          "rehearse",
          "log",
          "log list",
          "log show",
          "log verify",
          "log export",
          "log recover"}) {
        const Ran ran = cli.run(std::string(words) + " --help");
        EXPECT_EQ(ran.status, 0) << words;
        EXPECT_NE(ran.out.find("--help"), std::string::npos) << words;
        EXPECT_EQ(ran.err, "");
    }
    EXPECT_EQ(cli.run("--version").status, 0);
}

TEST(CliResources, AreTakenFromWhereTheVariableSays) {
    const Cli cli;
    const Ran ran = cli.run("procedures", "SEAMCLOCK_RESOURCES=" + cli.path("nowhere"));
    EXPECT_EQ(ran.status, 2);
    EXPECT_NE(ran.err.find("SEAMCLOCK_RESOURCES"), std::string::npos) << ran.err;
    const Ran same = cli.run(
        "procedures",
        "SEAMCLOCK_RESOURCES=" + test::inShell(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources"));
    EXPECT_EQ(same.status, 0);
}

} // namespace
} // namespace seamclock
