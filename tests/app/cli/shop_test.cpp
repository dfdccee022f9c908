// Jobs, batches, coupons, charts and due lists through the terminal: keys, statuses, and one
// sentence for what won't do.
#include "tests/app/cli/run_cli.h"
#include "tests/support/log_samples.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

using nlohmann::json;
using test::Cli;
using test::Ran;

std::string demoJob() {
    return test::inShell(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo/job-brine-tank.json");
}

std::string complaint(const Cli& cli, const std::string& words) {
    const Ran ran = cli.run(words);
    EXPECT_EQ(ran.status, 2) << words;
    EXPECT_EQ(ran.out, "");
    const std::string program = "seamclock-cli: ";
    EXPECT_EQ(ran.err.rfind(program, 0), 0U) << ran.err;
    return ran.err.substr(std::min(ran.err.size(), program.size()));
}

TEST(CliJobPlan, PlansTheDemoJobWithItsBound) {
    const Cli cli;
    const json j = cli.json("job plan " + demoJob() + " --people 2");
    EXPECT_EQ(j["people"], json({"operator 1", "operator 2"}));
    EXPECT_GT(j["finish_s"], 0);
    EXPECT_LE(j["bound_s"], j["finish_s"]);
    EXPECT_EQ(j["impossible"], json::array());
    std::set<std::string> released;
    for (const json& one : j["stretches"]) {
        EXPECT_LT(one["from_s"], one["to_s"]);
        if (one["kind"] == "release") {
            released.insert(one["seam"].get<std::string>());
            EXPECT_TRUE(one.contains("person"));
        }
        EXPECT_EQ(one["kind"] == "cooling" && one.contains("person"), false);
    }
    EXPECT_EQ(released, (std::set<std::string>{"S1", "S2", "S3", "S4", "S5", "S6"}));
    EXPECT_EQ(j["times"][0]["alignment_from"], "chosen");
    const auto isOf = [](const json& one, const char* kind) { return one["kind"] == kind; };
    std::size_t decisions = 0;
    for (const json& one : j["stretches"]) {
        decisions += isOf(one, "decision") ? 1 : 0;
        EXPECT_EQ(isOf(one, "decision") && !one.value("trial", false), false);
    }
    EXPECT_GT(decisions, 0U) << "the day begins with a trial joint";
    const Ran text = cli.run("job plan " + demoJob());
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_NE(text.out.find("trial S"), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("A trial joint is asked for first on a bench"), std::string::npos)
        << text.out;
    EXPECT_NE(text.out.find("no plan can be shorter than"), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("chosen, not measured"), std::string::npos) << text.out;
}

TEST(CliJobPlan, TakesATableAndNamesWhatNoBenchMakes) {
    const Cli cli;
    const std::string table = cli.file(
        "seams.csv", "label,material,procedure,thickness_mm,length_mm\n"
                     "A,PE-HD,pe-hd-dvs2207-1-2005,8,900\n"
                     "B,PE-HD,pe-hd-dvs2207-1-2005,8,90000\n");
    const json j = cli.json("job plan " + table + " --bench " + Cli::demoBench("west"));
    ASSERT_EQ(j["impossible"].size(), 1U);
    EXPECT_EQ(j["impossible"][0]["seam"], "B");
    EXPECT_EQ(j["impossible"][0]["reason"].get<std::string>().rfind("west: ", 0), 0U);
    const Ran text = cli.run("job plan " + table + " --bench " + Cli::demoBench("west"));
    EXPECT_NE(text.out.find("not planned: B: west: "), std::string::npos) << text.out;
}

TEST(CliJobPlan, RefusesWithOneSentence) {
    const Cli cli;
    const std::string table =
        cli.file("seams.csv", "label,material,procedure,thickness_mm,length_mm\nA,PE-HD,x,8,900\n");
    EXPECT_EQ(
        complaint(cli, "job plan " + table),
        "job plan: no bench is named; allowed: --bench FILE, once for each, or a --log that has "
        "benches\n");
    EXPECT_EQ(
        complaint(cli, "job plan " + table + " --people 21"),
        "job plan: --people \"21\" is out of range; allowed: 1 to 20\n");
    EXPECT_EQ(
        complaint(cli, "job plan " + table + " --from yesterday"),
        "job plan: --from \"yesterday\" is not a date; allowed: 0000-01-01 to 9999-12-31\n");
    const std::string bad =
        cli.file("bad.csv", "label,material,procedure,thickness_mm,length_mm\nA,PE-HD,x,thick,\n");
    const std::string said = complaint(cli, "job plan " + bad);
    EXPECT_NE(said.find("bad.csv: line 2, thickness_mm: "), std::string::npos) << said;
    EXPECT_NE(said.find("(and 1 more: job check lists them)"), std::string::npos) << said;
    EXPECT_EQ(cli.run("job plan").status, 2);
    EXPECT_EQ(cli.run("job plan " + cli.path("nothing.json")).status, 2);
}

class CliShop : public ::testing::Test {
protected:
    void SetUp() override {
        log = cli.path("a.log");
        cli.json("rehearse --seam S1 --log " + log);
    }
    Ran with(const std::string& pins, const std::string& words) {
        return cli.run(words + " --log " + log, "printf '" + pins + "' |");
    }
    json jsonWith(const std::string& pins, const std::string& words) {
        const Ran ran = with(pins, words + " --json");
        EXPECT_EQ(ran.status, 0) << ran.err;
        return json::parse(ran.out, nullptr, false);
    }
    void addInes() {
        EXPECT_EQ(with("123456\\n", "people add --name 'Ines Falk' --role foreman").status, 0);
    }

    Cli cli;
    std::string log;
};

TEST_F(CliShop, AJobsStateFollowsItsJoints) {
    const json j = cli.json("job state " + demoJob() + " --log " + log);
    EXPECT_EQ(j["counts"]["done"], 1);
    EXPECT_EQ(j["counts"]["open"], 5);
    EXPECT_EQ(j["seams"][0]["seam"], "S1");
    EXPECT_EQ(j["seams"][0]["state"], "done");
    EXPECT_EQ(j["seams"][0]["joints"][0]["joint"], 1);
    cli.json("rehearse --seam S2 --late-changeover 6 --log " + log);
    const json late = cli.json("job state " + demoJob() + " --log " + log);
    EXPECT_EQ(late["seams"][1]["state"], "to_decide");
    EXPECT_EQ(late["seams"][1]["reason"], "joint 2 is out of limits and not decided");
    const Ran text = cli.run("job state " + demoJob() + " --log " + log);
    EXPECT_NE(text.out.find("S2    to decide"), std::string::npos) << text.out;
    // What is done isn't planned again, and what a foreman has to decide isn't by itself.
    const json plan = cli.json("job plan " + demoJob() + " --log " + log);
    for (const json& one : plan["stretches"]) {
        EXPECT_NE(one["seam"], "S1");
        EXPECT_NE(one["seam"], "S2");
    }
    const Ran said = cli.run("job plan " + demoJob() + " --log " + log);
    EXPECT_NE(
        said.out.find("waits for the foreman: S2: joint 2 is out of limits"), std::string::npos)
        << said.out;
    EXPECT_EQ(plan["seams"][0]["state"], "done");
    EXPECT_EQ(
        cli.json("job state " + demoJob() + " --from 2031-01-01 --log " + log)["counts"]["open"],
        6);
}

TEST_F(CliShop, ATablesSeamsAreThoseOfTheJobThatIsNamed) {
    const std::string table = cli.file("seams.csv", cli.run("job template").out);
    const std::string state = "job state " + table + " --log " + log;
    const Ran unnamed = cli.run(state);
    EXPECT_NE(
        unnamed.out.find("not counted: the log has joints of the job QV-118, as seam S1; --job"),
        std::string::npos)
        << unnamed.out;
    EXPECT_EQ(cli.json(state)["counts"]["open"], 1);
    EXPECT_EQ(cli.json(state + " --job QV-118")["counts"]["done"], 1);
    EXPECT_EQ(cli.run(state + " --job QV-118").out.find("not counted"), std::string::npos);
    const Ran plan = cli.run(
        "job plan " + table + " --job QV-118 --bench " + Cli::demoBench("east") + " --log " + log);
    EXPECT_NE(plan.out.find("nothing is to weld"), std::string::npos) << plan.out;
    EXPECT_EQ(
        complaint(cli, "job state " + demoJob() + " --job QV-1 --log " + log)
            .rfind("job state: --job \"QV-1\" is for a table; ", 0),
        0U);
}

TEST_F(CliShop, APlanKnowsWhoHasACertificateByName) {
    addInes();
    EXPECT_EQ(
        with("123456\\n", "people add --name 'Ilva Borrick' --role operator --by person:ines-falk")
            .status,
        0);
    const std::string plan = "job plan " + demoJob() + " --log " + log;
    EXPECT_EQ(
        complaint(cli, plan + " --people 'Jan Verrik'"),
        "job plan: --people \"Jan Verrik\" is not in the log; allowed: a number, or Ines Falk, "
        "Ilva Borrick\n");
    const Ran counted = cli.run(plan + " --people 2");
    EXPECT_NE(counted.out.find("no certificate is asked"), std::string::npos) << counted.out;
    const Ran named = cli.run(plan + " --people 'Ilva Borrick'");
    EXPECT_EQ(named.status, 0) << named.err;
    EXPECT_NE(named.out.find("person:ilva"), std::string::npos) << named.out;
    EXPECT_EQ(named.out.find("no certificate is asked"), std::string::npos) << named.out;
}

TEST_F(CliShop, ABatchLeadsToItsJointsAndBack) {
    cli.json("rehearse --seam S2 --log " + log);
    const json j = cli.json("log batch VP-40713 --log " + log);
    ASSERT_EQ(j["joints"].size(), 1U);
    EXPECT_EQ(j["joints"][0]["joint"], 1);
    EXPECT_EQ(j["joints"][0]["seam"], "S1");
    EXPECT_EQ(j["joints"][0]["sheets"][0]["sheet"], 1);
    const json two = cli.json("log batch VP-40688 --log " + log);
    EXPECT_EQ(two["joints"][0]["sheets"].size(), 2U);
    const json trace = cli.json("log batch --joint 1 --log " + log);
    EXPECT_EQ(trace["sheets"][1]["batch"], "VP-40714");
    EXPECT_EQ(trace["sheets"][1]["other_joints"], json::array());
    EXPECT_EQ(cli.run("log batch nowhere --log " + log).out, "no joint holds it\n");
    EXPECT_NE(cli.run("log batch VP-40688 --log " + log).out.find("S2"), std::string::npos);
    EXPECT_EQ(
        complaint(cli, "log batch --log " + log), "log batch: asked for a batch and a joint, or "
                                                  "for neither; allowed: the name of a BATCH, or "
                                                  "--joint, or --weld\n");
    EXPECT_EQ(
        complaint(cli, "log batch ' ' --log " + log),
        "log batch: no batch is named; allowed: its name as it is on the sheet\n");
}

TEST_F(CliShop, CouponsAreEnteredPutRightAndListed) {
    EXPECT_EQ(cli.run("coupons list --log " + log).out, "no coupons are entered\n");
    addInes();
    const json added = jsonWith(
        "123456\\n", "coupons add --by person:ines-falk --joint 1 --welded 27,28,29,28,28 "
                     "--parent 30,31,29,30,30 --standard 'EN 12814-2'");
    const json one = added["coupons"][0];
    // The arithmetic is in tests/core/quality/welding_factor_test.cpp.
    EXPECT_DOUBLE_EQ(one["welding_factor"]["factor"], 0.9333);
    EXPECT_DOUBLE_EQ(one["welding_factor"]["interval_95"]["low"], 0.9006);
    EXPECT_DOUBLE_EQ(one["welding_factor"]["interval_95"]["high"], 0.9672);
    EXPECT_DOUBLE_EQ(one["welding_factor"]["required"], 0.9);
    EXPECT_EQ(one["welding_factor"]["answer"], "met");
    EXPECT_EQ(one["joint"], 1);
    EXPECT_EQ(one["material"], "PE-HD");
    EXPECT_EQ(one["procedure"], "pe-hd-dvs2207-1-2005");
    const std::string series = one["series"];
    const json right = jsonWith(
        "123456\\n", "coupons correct --by person:ines-falk --series " + series +
                         " --reason 'misread' --joint 1 --welded 17,28,29,28,28 --parent "
                         "30,31,29,30,30");
    EXPECT_EQ(right["coupons"][0]["versions"].size(), 2U);
    EXPECT_EQ(right["coupons"][0]["welding_factor"]["answer"], "not_met");
    // Only what is told is changed: joint, standard and the other numbers stay.
    const json again = jsonWith(
        "123456\\n", "coupons correct --by person:ines-falk --series " + series +
                         " --reason 'the laboratory says so' --parent 30,31,29,30,31");
    EXPECT_EQ(again["coupons"][0]["joint"], 1);
    EXPECT_EQ(again["coupons"][0]["standard"], "EN 12814-2");
    EXPECT_EQ(again["coupons"][0]["welded_MPa"], right["coupons"][0]["welded_MPa"]);
    EXPECT_NE(
        cli.run("coupons list --log " + log).out.find("before welded 17, 28"), std::string::npos)
        << cli.run("coupons list --log " + log).out;
    EXPECT_EQ(
        with("123456\\n", "coupons add --by person:ines-falk --joint 1 --material PP --welded 28")
            .err,
        "seamclock-cli: coupons add: \"PP\" is not the plastic of joint 1; allowed: PE-HD\n");
    jsonWith(
        "123456\\n", "coupons add --by person:ines-falk --test bend --material PP --thickness 6 "
                     "--angles 160,95.5 --cracked no,yes");
    EXPECT_EQ(cli.json("coupons list --log " + log)["coupons"].size(), 2U);
    EXPECT_EQ(cli.json("coupons list --joint 1 --log " + log)["coupons"].size(), 1U);
    const json records = cli.json("log export --what records --log " + log);
    ASSERT_EQ(records[0]["coupons"].size(), 1U);
    EXPECT_EQ(records[0]["coupons"][0]["series"], series);
    EXPECT_EQ(cli.json("log show --log " + log)["coupons"], records[0]["coupons"]);
    const std::string text = cli.run("coupons list --log " + log).out;
    EXPECT_NE(text.find("below the required 0.9"), std::string::npos) << text;
    EXPECT_NE(text.find("(memory)"), std::string::npos) << text;
    EXPECT_NE(text.find("put right on"), std::string::npos) << text;
    EXPECT_NE(text.find("1 of 2"), std::string::npos) << text;
    EXPECT_EQ(cli.run("log verify --log " + log).status, 0);
}

TEST_F(CliShop, WhatCantBeReadIsNamedAndTheRestIsTold) {
    addInes();
    const json added = jsonWith(
        "123456\\n", "coupons add --by person:ines-falk --joint 1 --welded 27,28 --parent 30,31");
    const std::string series = added["coupons"][0]["series"];
    const json right = jsonWith(
        "123456\\n", "coupons correct --by person:ines-falk --series " + series +
                         " --reason misread --joint 1 --welded 17,28 --parent 30,31");
    const std::string weld = right["coupons"][0]["weld"];
    const auto damage = [&](const std::string& subject, int n) {
        test::BehindTheBack tool(cli.folder().file("a.log"));
        tool.database().exec(
            "UPDATE event SET body = replace(body, '\"v\":', '\"w\":') WHERE subject = '" +
            subject + "' AND n = " + std::to_string(n));
    };
    damage(series, 2);
    damage(weld, 1);
    const json read = cli.json("coupons list --log " + log)["coupons"][0];
    EXPECT_EQ(read["versions"].size(), 1U);
    ASSERT_EQ(read["unread"].size(), 2U);
    EXPECT_EQ(read["unread"][0]["n"], 2);
    EXPECT_EQ(read["unread"][1]["subject"], weld);
    const Ran list = cli.run("coupons list --log " + log);
    EXPECT_EQ(list.status, 0) << list.err;
    for (const std::string& subject : {"event 2 of " + series, "event 1 of " + weld}) {
        EXPECT_NE(list.out.find(subject + " can't be read: "), std::string::npos) << list.out;
    }
    damage(series, 1);
    const json none = cli.json("coupons list --log " + log);
    EXPECT_TRUE(none["coupons"].empty());
    EXPECT_EQ(none["unread"].size(), 2U);
    const Ran plan = cli.run("job plan " + demoJob() + " --log " + log);
    EXPECT_EQ(plan.status, 0) << plan.err;
    EXPECT_NE(plan.out.find("joint 1 can't be read:"), std::string::npos) << plan.out;
    EXPECT_TRUE(cli.json("job plan " + demoJob() + " --log " + log)["unread"].is_array());
}

TEST_F(CliShop, CouponsRefuseWithOneSentence) {
    addInes();
    const auto refused = [&](const std::string& words) {
        return complaint(cli, words + " --log " + log);
    };
    EXPECT_EQ(
        refused("coupons add --welded 28"),
        "coupons add: --material is missing; allowed: as in PE-HD, or --joint to take it from\n");
    EXPECT_EQ(
        refused("coupons add --joint 1 --welded 28,x"),
        "coupons add: --welded: \"x\" is not a number; allowed: numbers with a dot, parted by "
        "commas\n");
    EXPECT_EQ(
        refused("coupons add --joint 1 --welded 2800"),
        "coupons add: a welded strength of 2800 MPa; allowed: 0.1 to 1000 MPa\n");
    EXPECT_EQ(
        refused("coupons add --joint 1"),
        "coupons add: no welded coupon is given; allowed: 1 to 200\n");
    EXPECT_EQ(
        refused("coupons add --joint 1 --test bend --angles 160 --cracked maybe"),
        "coupons add: --cracked \"maybe\" is neither; allowed: yes or no for each, parted by "
        "commas\n");
    EXPECT_EQ(
        refused("coupons add --joint 1 --welded 28"),
        "coupons add: --by is required; allowed: the person:ID of a foreman\n");
    const Ran none = with(
        "123456\\n", "coupons correct --by person:ines-falk --series coupon:7 --reason x --joint 1 "
                     "--welded 28");
    EXPECT_EQ(none.status, 2);
    EXPECT_EQ(
        none.err, "seamclock-cli: coupons correct: there is no series \"coupon:7\"; allowed: one "
                  "that coupons list shows\n");
}

TEST_F(CliShop, ChartsShowLimitsAndRefuseWhatTheyDoNotKnow) {
    for (const char* seed : {"2", "3", "4"}) {
        cli.json(std::string("rehearse --seam S1 --seed ") + seed + " --log " + log);
    }
    const json j = cli.json("charts --log " + log);
    std::set<std::string> measures;
    for (const json& one : j["charts"]) {
        measures.insert(one["measure"].get<std::string>());
        EXPECT_EQ(one["bench"], "east");
        EXPECT_EQ(one["procedure"], "pe-hd-dvs2207-1-2005");
        EXPECT_TRUE(one["provisional"].get<bool>() || one["points"] >= 20);
        EXPECT_LE(one["lower"], one["mean"]);
    }
    EXPECT_TRUE(measures.count("changeover") == 1 && measures.count("alignment") == 1) << j;
    const json only = cli.json("charts --measure changeover --points --log " + log);
    ASSERT_EQ(only["charts"].size(), 1U);
    EXPECT_EQ(only["charts"][0]["values"].size(), 4U);
    EXPECT_EQ(only["charts"][0]["unit"], "s");
    EXPECT_NE(
        cli.run("charts --log " + log).out.find("the limits are provisional"), std::string::npos);
    EXPECT_EQ(cli.run("charts --bench none --log " + log).out, "no joint to chart\n");
    EXPECT_EQ(
        complaint(cli, "charts --measure soak --log " + log),
        "charts: --measure \"soak\" is not charted; allowed: changeover, alignment, plate, "
        "drift\n");
    EXPECT_EQ(
        complaint(cli, "charts --from x --log " + log),
        "charts: --from \"x\" is not a date; allowed: 0000-01-01 to 9999-12-31\n");
}

TEST_F(CliShop, DueListsCalibrationsAndCertificates) {
    addInes();
    EXPECT_EQ(
        with(
            "123456\\n", "people certificate --person person:ines-falk --by person:ines-falk "
                         "--scope 'PE-HD 3-20 mm' --until 2031-06-30")
            .status,
        0);
    const json j = cli.json(
        "due --today 2031-06-01 --days 29 --log " + log + " --bench " + Cli::demoBench("west"));
    bool found = false;
    for (const json& one : j["due"]) {
        if (one["kind"] == "certificate") {
            found = true;
            EXPECT_EQ(one["until"], "2031-06-30");
            EXPECT_EQ(one["days"], 29);
            EXPECT_EQ(one["name"], "Ines Falk");
        } else {
            EXPECT_EQ(one["kind"], "calibration");
        }
    }
    EXPECT_TRUE(found) << j;
    const json before = cli.json("due --today 2031-06-01 --days 28 --log " + log);
    EXPECT_EQ(before["due"], json::array());
    EXPECT_EQ(
        cli.run("due --today 2031-06-01 --days 28 --log " + log).out,
        "nothing is due by 28 days from 2031-06-01\n");
    EXPECT_EQ(
        complaint(cli, "due"),
        "due: neither a log nor a bench is named; allowed: --log FILE, --bench FILE, or both\n");
    EXPECT_EQ(
        complaint(cli, "due --days 4000 --log " + log),
        "due: --days \"4000\" is out of range; allowed: 0 to 3650\n");
    EXPECT_EQ(
        complaint(cli, "due --today 2031-02-30 --log " + log),
        "due: --today \"2031-02-30\" is not a date; allowed: 0000-01-01 to 9999-12-31\n");
}

} // namespace
} // namespace seamclock
