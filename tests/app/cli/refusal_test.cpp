// Bad input: exit status 2 and exactly one line on standard error that names the input, the value
// and what is allowed; nothing on standard output.
#include "tests/app/cli/run_cli.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using test::Cli;
using test::Ran;

struct Refusal {
    std::string words;
    std::vector<std::string> named;
};

void expectRefused(const Cli& cli, const Refusal& row) {
    const Ran ran = cli.run(row.words);
    EXPECT_EQ(ran.status, 2) << row.words << "\n" << ran.out << ran.err;
    EXPECT_EQ(ran.out, "") << row.words;
    EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << row.words << "\n" << ran.err;
    EXPECT_EQ(ran.err.rfind("seamclock-cli: ", 0), 0U) << ran.err;
    EXPECT_EQ(ran.err.back(), '\n');
    for (const std::string& part : row.named) {
        EXPECT_NE(ran.err.find(part), std::string::npos)
            << "\"" << part << "\" is not in: " << ran.err << "(" << row.words << ")";
    }
    for (const char* word : {"rror", "arning", "OK", "terminate", "what()"}) {
        EXPECT_EQ(ran.err.find(word), std::string::npos) << ran.err;
    }
}

const std::string kPlan = "plan --procedure pe-hd-dvs2207-1-2005 --length 1000 ";
const std::string kSheet = "plan --procedure pe-hd-dvs2207-1-2005 --thickness 10 ";

TEST(CliRefusal, OfNumbersNamesOptionValueAndRange) {
    const Cli cli;
    const Refusal rows[] = {
        // outside the procedure: PE-HD 2005 covers 1 to 70 mm (contract, "Tables")
        {kPlan + "--thickness 80", {"--thickness", "80", "1 to 70 mm", "pe-hd-dvs2207-1-2005"}},
        {kPlan + "--thickness 0.5", {"--thickness", "0.5", "1 to 70 mm"}},
        {kPlan + "--thickness ten", {"--thickness", "ten", "not a number", "1 to 70 mm"}},
        {kPlan + "--thickness nan", {"nan", "1 to 70 mm"}},
        {kPlan + "--thickness inf", {"inf", "1 to 70 mm"}},
        {kPlan + "--thickness 1e999", {"1e999", "1 to 70 mm"}},
        {kPlan + "--thickness -10", {"-10", "1 to 70 mm"}},
        {kPlan + "--thickness=-10", {"-10", "1 to 70 mm"}},
        {kPlan + "--thickness ''", {"--thickness"}},
        {kPlan + "--thickness 10,5", {"10,5", "1 to 70 mm"}},
        {kPlan + "--thickness 10mm", {"10mm", "1 to 70 mm"}},
        {kPlan + "--thickness '10\n20'", {"10 20", "1 to 70 mm"}},
        {kSheet + "--length 0", {"--length", "\"0\"", "1 to 100000 mm"}},
        {kSheet + "--length -1000", {"--length", "-1000", "1 to 100000 mm"}},
        {kSheet + "--length long", {"--length", "long", "1 to 100000 mm"}},
        {kSheet + "--length 1000 --length nan", {"--length", "nan"}},
        {kSheet + "--length 1000 --drag -5", {"--drag", "-5", "0 to 100000 N"}},
        {kSheet + "--length 1000 --drag much", {"--drag", "much", "0 to 100000 N"}},
        {kSheet + "--length 1000 --ambient 90", {"--ambient", "90", "-40 to 60 °C"}},
        {kSheet + "--length 1000 --ambient warm", {"--ambient", "warm", "-40 to 60 °C"}},
        {kSheet + "--length 1000 --plate 225", {"--plate", "225", "200 to 220 °C"}},
        {kSheet + "--length 1000 --cooling half", {"--cooling", "half", "line, band-end"}},
        {"heat --thickness 10", {"--procedure", "--thickness", "--log"}},
        {kSheet + "--length 1000 --units feet", {"--units", "feet", "metric, imperial"}},
        {"rehearse --seed -1", {"--seed", "-1", "0 to 18446744073709551615"}},
        {"rehearse --seed 1.5", {"--seed", "1.5"}},
        {"rehearse --speed 0", {"--speed", "\"0\"", "0.01 to 1000000"}},
        {"rehearse --speed fast", {"--speed", "fast", "0.01 to 1000000"}},
        {"rehearse --late-changeover -1", {"--late-changeover", "-1", "0 to 86400 s"}},
        {"rehearse --late-changeover soon", {"--late-changeover", "soon"}},
        {"rehearse --early-release 9999", {"--early-release", "9999", "0 to 1440 min"}},
        {"rehearse --hand 1001", {"--hand", "1001", "0 to 1000"}},
        {"rehearse --true-time --speed 5", {"--speed", "5", "true time"}},
        {"rehearse --low-reading sometimes", {"--low-reading", "sometimes", "corrected, left"}},
        {"rehearse --after-reboot perhaps", {"--after-reboot", "perhaps", "confirmed"}},
        {"rehearse --seam S9", {"--seam", "S9", "S1, S2, S3, S4, S5, S6"}},
        {"rehearse --skip-check luck", {"luck"}},
        {"rehearse --abort-in dreaming", {"dreaming"}},
        {"rehearse --skill 101", {"--skill", "101", "perfect, practised, trainee", "0 to 100"}},
        {"rehearse --skill poor", {"--skill", "poor", "perfect, practised, trainee"}},
        {"rehearse --count 0", {"--count", "\"0\"", "1 to 100000"}},
        {"rehearse --count 2 --true-time", {"--true-time", "--count"}},
        {"rehearse --count 2 --demo-days 1", {"--demo-days", "--count"}},
        {"rehearse --demo-days 61", {"--demo-days", "61", "1 to 60"}},
        {"rehearse --demo-days 1 --resume", {"--resume", "--demo-days"}},
        {"rehearse --film-left", {"--physics"}},
        {"rehearse --physics --resume --log " + cli.path("none.log"), {"--physics", "--resume"}},
        {"rehearse --physics --draught 11", {"--draught", "11", "0.1 to 10 times"}},
        {"rehearse --physics --plate-off -101", {"--plate-off", "-101", "-100 to 60 K"}},
        {"rehearse --physics --soak-pressed --backed-off 1", {"pressed", "backed off"}},
        {"rehearse --physics --wrong-row 80", {"80", "1 to 70 mm"}},
        {"rehearse --thickness 80", {"--thickness", "80", "1 to 70 mm"}},
        {"rehearse --resume --log " + cli.path("none.log"), {"none.log"}},
    };
    for (const Refusal& row : rows) {
        expectRefused(cli, row);
    }
}

TEST(CliRefusal, OfWordsSaysWhatIsAllowed) {
    const Cli cli;
    const Refusal rows[] = {
        {"", {"no command", "procedures", "plan", "bench", "rehearse", "log"}},
        {"cook", {"\"cook\"", "procedures", "rehearse"}},
        {"cook --procedure x", {"\"cook\"", "plan"}},
        {"--frobnicate", {"--frobnicate", "procedures"}},
        {"plan", {"--procedure", "required"}},
        {"plan --procedure pp-dvs2207-11", {"required"}},
        {kSheet, {"--length", "required"}},
        {kSheet + "--length", {"--length"}},
        {kSheet + "--length 1000 --lenght 5", {"--lenght", "--length"}},
        {kSheet + "--length 1000 stray", {"stray"}},
        {kSheet + "--length 1000 --thickness 11", {"--thickness"}},
        {"bench", {"no command", "fit", "show", "template"}},
        {"bench bend", {"\"bend\"", "fit"}},
        {"bench fit", {"FILE"}},
        {"log", {"no command", "list", "verify", "recover"}},
        {"log list", {"--log"}},
        {"log burn --log x", {"\"burn\"", "list"}},
        {"log list --log x --from yesterday", {"--from", "yesterday", "0000-01-01 to 9999-12-31"}},
        {"log list --log x --to 2030-13-01", {"--to", "2030-13-01"}},
        {"log list --log x --limit 0", {"--limit", "\"0\"", "1 to 10000"}},
        {"log list --log x --verdict fine", {"--verdict", "fine", "out of limits"}},
        {"log export --log x --what all",
         {"--what", "all", "joints, records, values, events, chain"}},
        {"procedures show", {"ID"}},
        {"procedures sing", {"\"sing\"", "show", "check"}},
        {"plan --thickness= --length 900 --procedure pp-dvs2207-11",
         {"--thickness \"\" is not a number"}},
        {"plan --length --procedure pp-dvs2207-11 --thickness 10", {"--length", "needs a value"}},
        {kSheet + "--length 1000 --drag", {"--drag", "needs a value", "0 to 100000"}},
        {kSheet + "--length 1000 --thickness 12", {"--thickness", "more than once"}},
        {"plan --json=maybe " + kSheet.substr(5) + "--length 1000", {"--json takes no value"}},
    };
    for (const Refusal& row : rows) {
        expectRefused(cli, row);
    }
}

TEST(CliRefusal, OfAnUnknownProcedureListsThoseThereAre) {
    const Cli cli;
    for (const char* words :
         {"procedures show pe-hd", "plan --procedure pe-hd --thickness 10 --length 900",
          "rehearse --procedure pe-hd"}) {
        expectRefused(
            cli, {words,
                  {"\"pe-hd\"", "pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015", "pp-dvs2207-11",
                   "pvdf-dvs2207-15"}});
    }
}

TEST(CliRefusal, OfBandEndWhereThereAreNoBands) {
    // A rule that is a formula has no bands (contract): UNI 10520's cooling of 3 + e minutes, as a
    // file of our own.
    const Cli cli;
    std::string text = test::fileText(
        std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/procedures/pe-hd-dvs2207-1-2005.json");
    auto j = nlohmann::json::parse(text);
    auto& cooling = j.at("cooling_min").at("classes").at(0);
    cooling.erase("table");
    cooling["formula"] = {{{"from_mm", 1}, {"to_mm", 70}, {"coefficients", {3, 1}}}};
    const std::string file = cli.file("formula.json", j.dump());
    const Ran plain = cli.run("plan --json --thickness 10 --length 900 --procedure " + file);
    ASSERT_EQ(plain.status, 0) << plain.err;
    EXPECT_EQ(nlohmann::json::parse(plain.out)["cooling_min"], 13.0);
    expectRefused(
        cli, {"plan --thickness 10 --length 900 --cooling band-end --procedure " + file, {"band"}});
}

TEST(CliRefusal, OfWhatTheBenchCannotTake) {
    const Cli cli;
    const std::string east = " --bench " + Cli::demoBench("east");
    const std::string west = " --bench " + Cli::demoBench("west");
    // East: seams up to 2600 mm, sheet of 3 to 30 mm, a scale of 48 mm at 62.5 N/mm = 3000 N.
    expectRefused(
        cli, {kSheet + "--length 2601" + east, {"--length", "2601", "1 to 2600 mm", "east"}});
    expectRefused(cli, {kSheet + "--length 1500 --length 1200" + east, {"2700", "2600"}});
    expectRefused(
        cli,
        {"plan --procedure pe-hd-dvs2207-1-2005 --thickness 40 --length 300" + east, {"40", "30"}});
    // 0.15 x 20 x 2000 = 6000 N: more than the scale's end.
    expectRefused(
        cli, {"plan --procedure pe-hd-dvs2207-1-2005 --thickness 20 --length 2000" + east,
              {"6000", "N"}});
    // 0.10 ± 0.01 N/mm² on 3 x 60 mm is 18 ± 1.8 N: half a division of a scale with two springs
    // hides more.
    expectRefused(
        cli, {"plan --procedure pp-dvs2207-11 --thickness 5 --length 60" + west, {"division"}});
}

TEST(CliRefusal, KeepsALongValueShort) {
    const Cli cli;
    const Ran ran = cli.run(kPlan + "--thickness " + std::string(100'000, '7') + "x");
    EXPECT_EQ(ran.status, 2);
    EXPECT_LT(ran.err.size(), 400U);
    EXPECT_NE(ran.err.find("1 to 70 mm"), std::string::npos);
    const Ran odd = cli.run(std::string(20'000, 'z'));
    EXPECT_EQ(odd.status, 2);
    EXPECT_LT(odd.err.size(), 1'200U);
    EXPECT_EQ(std::count(odd.err.begin(), odd.err.end(), '\n'), 1);
}

} // namespace
} // namespace seamclock
