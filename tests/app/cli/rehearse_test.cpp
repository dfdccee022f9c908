// rehearse beyond one weld without physics: the virtual bench, the table of faults, many welds.
#include "tests/app/cli/run_cli.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

using nlohmann::json;
using test::Cli;
using test::Ran;

/// As a terminal counts it, of text without marks of two columns.
std::size_t widest(const std::string& text) {
    std::size_t most = 0;
    std::size_t now = 0;
    for (const char c : text) {
        const bool follows = (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
        now = c == '\n' ? 0 : now + (follows ? 0 : 1);
        most = std::max(most, now);
    }
    return most;
}

} // namespace

TEST(CliRehearseWithPhysics, TellsWhatTheBenchKnowsBesideTheRecord) {
    const Cli cli;
    const json j = cli.json("rehearse --physics");
    EXPECT_EQ(j["verdict"], "within limits") << j["reasons"];
    for (const char* key : {"events", "plan", "cues", "phases", "set_and_actual", "log"}) {
        EXPECT_TRUE(j.contains(key)) << key;
    }
    const json& bench = j["physics"];
    EXPECT_EQ(bench["ductile"], true) << bench;
    ASSERT_EQ(bench["stations"].size(), 5U);
    EXPECT_GT(bench["stations"][0]["melt_at_joining_mm"].get<double>(), 0.5);
    EXPECT_EQ(bench["stations"][0]["reasons"], json::array());
    const Ran ran = cli.run("rehearse --physics --film-left");
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_LE(widest(ran.out), 100U);
    for (const char* words :
         {"Verdict: within limits", "On the virtual bench", "contaminated", "breaks"}) {
        EXPECT_NE(ran.out.find(words), std::string::npos) << words << "\n" << ran.out;
    }
}

TEST(CliRehearseFaults, AreListedWithWhatBecomesOfThem) {
    const Cli cli;
    const json faults = cli.json("rehearse --list-faults")["faults"];
    std::set<std::string> options;
    const std::string help = cli.run("rehearse --help").out;
    for (const json& one : faults) {
        const std::string option = one["option"].get<std::string>();
        const std::string name = option.substr(0, option.find(' '));
        EXPECT_NE(help.find(name), std::string::npos) << name << " is not an option";
        options.insert(name);
        EXPECT_EQ(one["found"].get<bool>(), one.contains("reason")) << one;
        EXPECT_FALSE(one["why"].get<std::string>().empty());
    }
    EXPECT_GT(options.size(), 25U);
    const Ran ran = cli.run("rehearse --list-faults");
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_LE(widest(ran.out), 100U);
    EXPECT_NE(ran.out.find("A timer can't see it"), std::string::npos) << ran.out;
}

TEST(CliRehearseSeries, PutsManyWeldsIntoOneLog) {
    const Cli cli;
    const std::string log = cli.path("many.log");
    const json j = cli.json("rehearse --count 6 --skill trainee --seed 4 --log " + log);
    EXPECT_EQ(j["count"], 6);
    ASSERT_EQ(j["welds"].size(), 6U);
    int sum = 0;
    for (const auto& [verdict, count] : j["verdicts"].items()) {
        sum += count.get<int>();
    }
    EXPECT_EQ(sum, 6);
    EXPECT_EQ(j["welds"][5]["number"], 6);
    EXPECT_EQ(cli.json("log list --log " + log)["joints"].size(), 6U);
    EXPECT_EQ(cli.run("log verify --log " + log).status, 0);
    // Weld i has the seed + i, and begins where the one before ended.
    const json single = cli.json("rehearse --skill trainee --seed 6 --log " + cli.path("one.log"));
    EXPECT_EQ(single["verdict"], j["welds"][2]["verdict"]);
    EXPECT_LT(j["welds"][1]["opened_utc"], j["welds"][2]["opened_utc"]);
}

TEST(CliRehearseSeries, MakesTheDaysOfADemoShop) {
    const Cli cli;
    const auto days = [&cli](const std::string& words) {
        json j = cli.json("rehearse --demo-days 2 " + words);
        j.erase("log");
        for (json& weld : j["welds"]) {
            weld.erase("weld");
        }
        return j;
    };
    const json first = days("--seed 3 --log " + cli.path("a.log"));
    EXPECT_EQ(first, days("--seed 3 --log " + cli.path("b.log")));
    EXPECT_NE(first, days("--seed 4 --log " + cli.path("c.log")));
    std::set<std::string> people;
    for (const json& weld : first["welds"]) {
        people.insert(weld["by"].get<std::string>());
    }
    EXPECT_EQ(people.size(), 3U);
    const Ran ran = cli.run("rehearse --demo-days 1 --log " + cli.path("d.log"));
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_LE(widest(ran.out), 100U);
    EXPECT_NE(ran.out.find(" welds: "), std::string::npos) << ran.out;
    EXPECT_EQ(cli.run("log verify --log " + cli.path("d.log")).status, 0);
}

} // namespace seamclock
