// What leaves a log by the terminal: any selection as CSV and JSON, read back by python3's csv and
// json modules; and reading where nobody may write.
#include "tests/app/cli/run_cli.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <gtest/gtest.h>
#include <set>
#include <sys/wait.h>

namespace seamclock {
namespace {

using nlohmann::json;
using test::Cli;
using test::Ran;

class CliExport : public ::testing::Test {
protected:
    /// Three welds: one good, one out of limits, one stopped.
    void SetUp() override {
        log = cli.path("three.log");
        cli.json("rehearse --seam S1 --log " + log);
        cli.json("rehearse --seam S2 --late-changeover 3 --log " + log);
        cli.json("rehearse --seam S5 --abort-in soaking --log " + log);
    }
    Ran exported(const std::string& words) const {
        return cli.run("log export --log " + log + " " + words);
    }
    /// What python3 makes of the CSV: a list of rows by the header's names.
    json rows(const std::string& words) const {
        const std::string file = cli.path("out.csv");
        const Ran ran = exported(words + " --out " + file);
        EXPECT_EQ(ran.status, 0) << ran.err;
        const std::string command =
            "python3 -c 'import csv,json,sys\n"
            "print(json.dumps(list(csv.DictReader(open(sys.argv[1],encoding=\"utf-8\","
            "newline=\"\"),strict=True))))' " +
            file + " > " + cli.path("out.json");
        EXPECT_EQ(std::system(command.c_str()), 0);
        return json::parse(test::fileText(cli.folder().file("out.json")), nullptr, false);
    }

    Cli cli;
    std::string log;
};

TEST_F(CliExport, ValuesAreThoseOfTheRecords) {
    const json values = rows("--what values");
    const Ran ran = exported("--what records");
    ASSERT_EQ(ran.status, 0) << ran.err;
    const json records = json::parse(ran.out);
    ASSERT_EQ(records.size(), 3U);
    std::size_t expected = 0;
    for (const json& record : records) {
        expected += record["set_and_actual"].size() + record["phases"].size();
        for (const json& one : record["set_and_actual"]) {
            const bool found = std::any_of(values.begin(), values.end(), [&](const json& row) {
                const auto same = [&](const char* key) {
                    const std::string cell = row[key].get<std::string>();
                    return one.contains(key)
                               ? !cell.empty() &&
                                     std::abs(std::stod(cell) - one[key].get<double>()) < 1e-9
                               : cell.empty();
                };
                return row["number"] == std::to_string(record["number"].get<int>()) &&
                       row["item"] == one["item"] && row["unit"] == one["unit"] &&
                       row["event"] ==
                           (one.contains("n") ? std::to_string(one["n"].get<int>()) : "") &&
                       same("set") && same("low") && same("high") && same("actual");
            });
            EXPECT_TRUE(found) << one;
        }
    }
    EXPECT_EQ(values.size(), expected);
}

TEST_F(CliExport, ADamagedJointStandsInTheValuesWithWhyAndTheOthersAreThere) {
    const json whole = rows("--what values");
    const std::string weld = whole.front()["weld"];
    // As a stranger with a tool would do it: guards away, one word changed, guards back.
    const std::string tool = cli.file(
        "damage.py",
        "import sqlite3, sys\n"
        "log = sqlite3.connect(sys.argv[1])\n"
        "guards = log.execute(\"SELECT name, sql FROM sqlite_master WHERE type = 'trigger' AND \"\n"
        "                     \"tbl_name = 'event'\").fetchall()\n"
        "for name, sql in guards:\n"
        "    log.execute(f'DROP TRIGGER {name}')\n"
        "log.execute(\"UPDATE event SET body = replace(body, 'soak_started', 'soak_startled') \"\n"
        "            \"WHERE subject = ?\", (sys.argv[2],))\n"
        "for name, sql in guards:\n"
        "    log.execute(sql)\n"
        "log.commit()\n");
    ASSERT_EQ(std::system(("python3 " + tool + " " + log + " " + weld).c_str()), 0);
    const json damaged = rows("--what values");
    std::vector<json> of;
    std::size_t others = 0;
    for (const json& row : damaged) {
        if (row["weld"] == weld) {
            of.push_back(row);
        } else {
            ++others;
        }
    }
    ASSERT_EQ(of.size(), 1U);
    EXPECT_NE(of[0]["trouble"].get<std::string>().find("soak_startled"), std::string::npos)
        << of[0];
    EXPECT_EQ(of[0]["number"], whole.front()["number"]);
    const json records = json::parse(exported("--what records").out);
    std::size_t made = 0;
    for (const json& record : records) {
        if (record["weld"] == weld) {
            EXPECT_NE(record["trouble"].get<std::string>().find("soak_startled"), std::string::npos)
                << record;
            EXPECT_FALSE(record.contains("set_and_actual"));
        } else {
            EXPECT_TRUE(record.contains("set_and_actual")) << record["weld"];
            ++made;
        }
    }
    EXPECT_GT(made, 0U);
    EXPECT_EQ(records.size(), made + 1);
    EXPECT_EQ(others, std::count_if(whole.begin(), whole.end(), [&](const json& row) {
                  return row["weld"] != weld;
              }));
}

TEST_F(CliExport, EveryKindTakesTheListsFilters) {
    const auto numbers = [](const json& rows) {
        std::set<std::string> all;
        for (const json& row : rows) {
            all.insert(row["number"].get<std::string>());
        }
        return all;
    };
    EXPECT_EQ(numbers(rows("--verdict 'out of limits'")), std::set<std::string>{"2"});
    EXPECT_EQ(numbers(rows("--what values --material PP")), std::set<std::string>{"3"});
    EXPECT_EQ(numbers(rows("--what values --bench nowhere")), std::set<std::string>{});
    const json listed = cli.json("log list --log " + log + " --verdict 'out of limits'");
    const std::string weld = listed["joints"][0]["weld"];
    const json events = rows("--what events --verdict 'out of limits'");
    ASSERT_FALSE(events.empty());
    for (const json& row : events) {
        EXPECT_EQ(row["subject"], weld);
    }
    EXPECT_EQ(static_cast<int>(events.size()), listed["joints"][0]["events"].get<int>())
        << "all events of that joint, and no other's";
    EXPECT_GT(rows("--what events").size(), events.size());
}

TEST_F(CliExport, AJobsJointsAreFoundByItsSeams) {
    const std::string demo = test::inShell(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo");
    EXPECT_EQ(rows("--job " + demo).size(), 3U);
    const std::string other = R"({"format": "seamclock-job/1", "people": [], "seams": [
        {"label": "S2", "what": "wall", "procedure": "pe-hd-dvs2207-1-2005", "bench": "b.json",
         "thickness_mm": 8, "lengths_mm": [1380], "drag_N": 70, "ambient_C": 19, "shielded": true,
         "sheets": [{"material": "PE-HD", "maker": "M", "batch": "1"},
                    {"material": "PE-HD", "maker": "M", "batch": "2"}]}]})";
    std::filesystem::create_directory(cli.folder().file("job"));
    cli.file("job/job-one.json", other);
    EXPECT_TRUE(rows("--job " + cli.path("job")).empty()) << "that S2 is of another job";
    cli.file(
        "job/job-one.json", R"({"order": "QV-118", )" + other.substr(other.find("\"format\"")));
    const json one = rows("--job " + cli.path("job"));
    ASSERT_EQ(one.size(), 1U);
    EXPECT_EQ(one[0]["seam"], "S2");
    const Ran none = exported("--job " + cli.path("nowhere"));
    EXPECT_EQ(none.status, 2);
    EXPECT_NE(none.err.find("allowed: a folder with job-*.json"), std::string::npos) << none.err;
}

TEST_F(CliExport, OpenJointsCanBeAskedFor) {
    EXPECT_TRUE(rows("--verdict open").empty());
    EXPECT_EQ(cli.json("log list --verdict open --log " + log)["joints"].size(), 0U);
    const Ran wrong = exported("--verdict fine");
    EXPECT_EQ(wrong.status, 2);
    EXPECT_NE(wrong.err.find("\"open\""), std::string::npos) << wrong.err;
}

TEST_F(CliExport, WhatWouldProveNothingIsRefused) {
    for (const char* words : {"--what chain --bench east", "--what values --json", "--what all"}) {
        const Ran ran = exported(words);
        EXPECT_EQ(ran.status, 2) << words;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
        EXPECT_NE(ran.err.find("allowed: "), std::string::npos) << ran.err;
    }
}

// A copy where nothing can be written: a read-only bind mount, since root ignores a file's mode.
TEST_F(CliExport, ACopyIsReadWhereNobodyMayWrite) {
    const std::string share = cli.folder().file("share");
    std::filesystem::create_directory(share);
    ASSERT_EQ(
        cli.run("log backup --log " + log + " --out " + test::inShell(share + "/copy.seamlog"))
            .status,
        0);
    const std::string in = test::inShell(share);
    const std::string script =
        "mount --bind " + in + " " + in + " && mount -o remount,ro,bind " + in +
        " || exit 77; touch " + in + "/mark 2>/dev/null && exit 78; before=$(ls -la " + in +
        "); for what in list 'show --joint 2' verify 'export --what records'; do " +
        Cli::program() + " log $what --log " + in + "/copy.seamlog >" + cli.path("read") +
        " || exit 79; done; [ \"$before\" = \"$(ls -la " + in + ")\" ] || exit 80";
    const int status = std::system(("unshare -m sh -c " + test::inShell(script)).c_str());
    ASSERT_TRUE(WIFEXITED(status));
    if (WEXITSTATUS(status) == 77 || WEXITSTATUS(status) == 1) {
        GTEST_SKIP() << "no mount of its own is allowed here";
    }
    EXPECT_EQ(WEXITSTATUS(status), 0) << "78: it could be written to, 79: a command failed, 80: "
                                         "something came to stand in the folder";
}

} // namespace
} // namespace seamclock
