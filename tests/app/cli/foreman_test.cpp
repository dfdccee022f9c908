// People, the day's seal and a joint's evidence through the terminal, PINs on standard input.
#include "tests/app/cli/run_cli.h"

#include <algorithm>
#include <cstdlib>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using nlohmann::json;
using test::Cli;
using test::Ran;

class CliForeman : public ::testing::Test {
protected:
    void SetUp() override {
        log = cli.path("a.log");
        cli.json("rehearse --seam S1 --log " + log);
    }
    /// A line of standard input for each PIN.
    Ran with(const std::string& pins, const std::string& words) {
        return cli.run(words + " --log " + log, "printf '" + pins + "' |");
    }
    json jsonWith(const std::string& pins, const std::string& words) {
        const Ran ran = with(pins, words + " --json");
        EXPECT_EQ(ran.status, 0) << ran.err;
        return json::parse(ran.out, nullptr, false);
    }
    void addInes() {
        const Ran ran = with("123456\\n", "people add --name 'Ines Falk' --role foreman");
        EXPECT_EQ(ran.status, 0) << ran.err;
        EXPECT_EQ(ran.out, "added: person:ines-falk\n");
    }

    Cli cli;
    std::string log;
};

TEST_F(CliForeman, ACertificateIsNotedAndListed) {
    addInes();
    const std::string words = "people certificate --person person:ines-falk --by person:ines-falk";
    const json people =
        jsonWith("123456\\n", words + " --scope 'PE-HD, PP 3-20 mm' --until 2031-06-30");
    EXPECT_EQ(people["people"][0]["certificate"]["scope"], "PE-HD, PP 3-20 mm");
    EXPECT_EQ(people["people"][0]["certificate"]["until"], "2031-06-30");
    const std::string list = with("", "people list").out;
    EXPECT_NE(list.find("PE-HD,"), std::string::npos) << list;
    EXPECT_NE(list.find("2031-06-30"), std::string::npos) << list;
    const Ran none = with("123456\\n", words + " --scope PE-HD --until 2031-06-30");
    EXPECT_EQ(none.status, 2);
    EXPECT_EQ(
        none.err, "seamclock-cli: people certificate: the scope \"PE-HD\" can't be read; allowed: "
                  "materials and a range, as in \"PE-HD, PP 3-20 mm\"\n");
}

TEST_F(CliForeman, PeopleComeByTheForeman) {
    EXPECT_EQ(with("", "people list").out, "nobody is entered yet\n");
    const Ran first = with("4711\\n", "people add --name Jo --role operator --pin");
    EXPECT_EQ(first.status, 2);
    EXPECT_EQ(
        first.err, "seamclock-cli: people add: --role \"operator\" can't come first; allowed: "
                   "foreman, who then "
                   "adds everybody else\n");
    addInes();
    const json people = jsonWith(
        "123456\\n4711\\n", "people add --name Jo --role operator --pin --by person:ines-falk");
    ASSERT_EQ(people["people"].size(), 2U);
    EXPECT_EQ(people["people"][0]["key_fingerprint"].get<std::string>().size(), 39U);
    EXPECT_EQ(people["people"][1]["id"], "person:jo");
    EXPECT_FALSE(people["people"][1].contains("public_key"));
    const Ran none = with("4711\\n", "people add --name Eve --role trainee --by person:jo");
    EXPECT_EQ(none.status, 2);
    EXPECT_EQ(
        none.err,
        "seamclock-cli: people add: person:jo is no foreman; only a foreman may do that\n");
    const Ran left = with(
        "123456\\n", "people change --person person:jo --left --by "
                     "person:ines-falk");
    EXPECT_EQ(left.status, 0) << left.err;
    EXPECT_NE(with("", "people list").out.find("operator, has left"), std::string::npos);
}

TEST_F(CliForeman, RefusesWithOneSentence) {
    addInes();
    const auto complaint = [&](const std::string& pins, const std::string& words) {
        const Ran ran = with(pins, words);
        EXPECT_EQ(ran.status, 2) << words;
        const std::string program = "seamclock-cli: ";
        EXPECT_EQ(ran.err.rfind(program, 0), 0U) << ran.err;
        return ran.err.substr(std::min(ran.err.size(), program.size()));
    };
    EXPECT_EQ(
        complaint("", "log seal"), "log seal: --by is required; allowed: the person:ID of a "
                                   "foreman\n");
    EXPECT_EQ(
        complaint("", "log seal --by person:ines-falk"),
        "log seal: PIN of person:ines-falk is missing on standard input; allowed: 1 to 12 digits "
        "on a line\n");
    EXPECT_EQ(
        complaint("12x4\\n", "log seal --by person:ines-falk"),
        "log seal: PIN of person:ines-falk: a PIN has 1 to 12 digits and nothing else; this one "
        "has 4 characters\n");
    EXPECT_EQ(
        complaint("1\\n", "log seal --by person:max"), "log seal: nobody here is \"person:max\"\n");
    EXPECT_EQ(
        complaint("123456\\n", "log seal --by person:ines-falk --day 2999-01-01")
            .rfind("log seal: the day 2999-01-01 has not come yet; allowed: up to ", 0),
        0U);
    EXPECT_EQ(
        complaint("12345\\n", "people pin --person person:ines-falk --forgotten"),
        "people pin: a foreman's PIN has 6 to 12 digits; this one has 5\n");
    EXPECT_EQ(
        complaint("000000\\n", "log seal --by person:ines-falk"), "log seal: the PIN is wrong\n");
    EXPECT_EQ(
        complaint("000000\\n", "log seal --by person:ines-falk"), "log seal: the PIN is wrong\n");
    EXPECT_EQ(
        complaint("000000\\n", "log seal --by person:ines-falk"),
        "log seal: the PIN is wrong; the next try in 30 s\n");
    EXPECT_EQ(
        complaint("123456\\n", "log seal --by person:ines-falk")
            .rfind("log seal: after 3 wrong PINs in a row: wait ", 0),
        0U);
}

TEST_F(CliForeman, NoPinStandsInTheLogOrBesideIt) {
    const Ran ran = with("271828182845\\n", "people add --name 'Ines Falk' --role foreman");
    ASSERT_EQ(ran.status, 0) << ran.err;
    ASSERT_EQ(with("271828182845\\n", "log seal --by person:ines-falk").status, 0);
    const std::string found = "grep -rl 271828182845 " + test::inShell(cli.folder().path()) + " >" +
                              cli.path("found") + " 2>/dev/null";
    EXPECT_NE(std::system(found.c_str()), 0) << test::fileText(cli.folder().file("found"));
}

TEST_F(CliForeman, ASealIsOnTheDaysReportAndVerifyKnowsThePaper) {
    addInes();
    const json before = cli.json("log verify --log " + log);
    EXPECT_EQ(before["sealed_to"], 0);
    const json seal = jsonWith("123456\\n", "log seal --by person:ines-falk");
    const std::string paper = seal["fingerprint"];
    EXPECT_EQ(paper.size(), 39U);
    const Ran report = cli.run("log day --day " + seal["day"].get<std::string>() + " --log " + log);
    EXPECT_NE(report.out.find(paper), std::string::npos) << report.out;
    EXPECT_NE(report.out.find("Ines Falk"), std::string::npos) << report.out;

    const json after = cli.json("log verify --log " + log);
    EXPECT_EQ(after["sealed_to"], seal["to_seq"]);
    ASSERT_EQ(after["seals"].size(), 1U);
    EXPECT_EQ(after["seals"][0]["fingerprint"], paper);
    const Ran known = cli.run("log verify --log " + log + " --seal '" + paper + "'");
    EXPECT_EQ(known.status, 0) << known.out;
    EXPECT_NE(known.out.find("the log has this seal"), std::string::npos);
    const Ran other =
        cli.run("log verify --log " + log + " --seal '0000 1111 2222 3333 4444 5555 6666 7777'");
    EXPECT_EQ(other.status, 1);
    EXPECT_NE(other.out.find("NO seal of this log has that fingerprint"), std::string::npos);
}

TEST_F(CliForeman, EvidenceGoesToAnotherComputerAndIsCheckedThere) {
    addInes();
    const std::string file = cli.path("joint-1.json");
    const json seal = jsonWith("123456\\n", "log seal --by person:ines-falk");
    const Ran out = cli.run("log evidence --log " + log + " --joint 1 --out " + file);
    ASSERT_EQ(out.status, 0) << out.err;
    // Without the log: only the file goes along.
    ASSERT_EQ(std::system(("rm -f " + log + "*").c_str()), 0);
    const json report = cli.json("evidence check " + file);
    EXPECT_EQ(report["sound"], true);
    EXPECT_EQ(report["fingerprint"], seal["fingerprint"]);
    EXPECT_EQ(report["key_fingerprint"], seal["key_fingerprint"]);
    EXPECT_EQ(report["number"], 1);
    const Ran text = cli.run("evidence check " + file);
    EXPECT_NE(text.out.find("Compare fingerprint and key with the paper"), std::string::npos);
    ASSERT_EQ(std::system(("sed -i 's/within limits/within limite/' " + file).c_str()), 0);
    const Ran broken = cli.run("evidence check " + file);
    EXPECT_EQ(broken.status, 1) << broken.out;
    EXPECT_NE(broken.out.find("it does not hold together"), std::string::npos);
}

TEST_F(CliForeman, AForgottenPinIsReplacedAndTheLogSaysByWhom) {
    addInes();
    ASSERT_EQ(with("123456\\n", "log seal --by person:ines-falk").status, 0);
    EXPECT_EQ(with("654321\\n", "people pin --person person:ines-falk --forgotten").status, 0);
    EXPECT_EQ(with("654321\\n", "log seal --by person:ines-falk").status, 0);
    EXPECT_EQ(with("654321\\n777777\\n", "people pin --person person:ines-falk").status, 0);
    EXPECT_EQ(with("777777\\n", "log seal --by person:ines-falk").status, 0);
    const Ran events = cli.run("log export --what events --log " + log);
    EXPECT_NE(events.out.find("\"\"reason\"\":\"\"forgotten\"\""), std::string::npos);
    const json report = cli.json("log verify --log " + log);
    EXPECT_EQ(report["sound"], true);
    EXPECT_EQ(report["seals"].size(), 3U);
}

} // namespace
} // namespace seamclock
