// Copies of a whole log through the terminal: backup, restore, and the import of another tablet's.
#include "tests/app/cli/run_cli.h"

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <map>
#include <sstream>
#include <string>
#include <vector>

namespace seamclock {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;
using test::Cli;
using test::Ran;

/// Without those of the coverage's library, for which there is no room either.
std::vector<std::string> linesOfOurs(const std::string& text) {
    std::vector<std::string> out;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        if (line.rfind("libgcov", 0) != 0) {
            out.push_back(line);
        }
    }
    return out;
}

class CliLogCopies : public ::testing::Test {
protected:
    /// Two tablets' logs with one joint each, both with the number 1.
    void SetUp() override {
        east = cli.path("east.seamlog");
        west = cli.path("west.seamlog");
        cli.json("rehearse --seam S1 --log " + east);
        cli.json("rehearse --seam S2 --log " + west);
    }
    void expectRefused(const std::string& words, const std::vector<std::string>& named) const {
        const Ran ran = cli.run(words);
        EXPECT_EQ(ran.status, 2) << words << "\n" << ran.out << ran.err;
        EXPECT_EQ(ran.out, "") << words;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
        for (const std::string& part : named) {
            EXPECT_NE(ran.err.find(part), std::string::npos) << part << " is not in " << ran.err;
        }
    }
    std::string chain(const std::string& log) const {
        return cli.run("log export --what chain --log " + log).out;
    }

    Cli cli;
    std::string east;
    std::string west;
};

TEST_F(CliLogCopies, ABackupIsRestoredAsItWas) {
    const std::string copy = cli.path("copy.seamlog");
    const json made = cli.json("log backup --log " + east + " --out " + copy);
    for (const char* key :
         {"file", "world", "log_id", "rows", "head", "bytes", "removed", "rows_waiting"}) {
        EXPECT_TRUE(made.contains(key)) << key;
    }
    const json verified = cli.json("log verify --log " + copy);
    EXPECT_TRUE(verified["sound"]);
    EXPECT_EQ(verified["head"], made["head"]);
    const std::string again = cli.path("again.seamlog");
    const json restored = cli.json("log restore --from " + copy + " --log " + again);
    EXPECT_EQ(restored["newest_joint"], 1);
    EXPECT_EQ(restored["next_number"], 2);
    EXPECT_EQ(chain(again), chain(east));
    EXPECT_TRUE(cli.json("log verify --log " + again)["sound"]);
    // It goes on, and with the next number.
    cli.json("rehearse --seam S5 --log " + again);
    EXPECT_EQ(cli.json("log list --log " + again)["joints"][0]["number"], 2);
    const Ran text = cli.run("log restore --from " + copy + " --log " + cli.path("third"));
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_NE(text.out.find("joints made since the backup are not in it"), std::string::npos)
        << text.out;
    EXPECT_NE(text.out.find("the next joint gets number 2"), std::string::npos) << text.out;
}

TEST_F(CliLogCopies, TheDaysBackupGoesIntoTheFolderBesideTheLog) {
    const json first = cli.json("log backup --log " + east);
    const json second = cli.json("log backup --log " + east);
    EXPECT_EQ(first["file"], second["file"]) << "the day's is made anew";
    const fs::path file(first["file"].get<std::string>());
    EXPECT_EQ(file.parent_path(), cli.folder().file("east.seamlog.backups"));
    EXPECT_EQ(
        file.filename().string().substr(10),
        "-" + first["log_id"].get<std::string>().substr(0, 8) + ".seamlog");
    EXPECT_TRUE(cli.json("log verify --log '" + file.string() + "'")["sound"]);
    const Ran text = cli.run("log backup --log " + east);
    EXPECT_EQ(text.status, 0);
    std::string words = text.out; // a long path is wrapped
    words.erase(std::remove_if(words.begin(), words.end(), ::isspace), words.end());
    EXPECT_NE(words.find(file.string()), std::string::npos) << text.out;
}

TEST_F(CliLogCopies, RefusesToOverwriteOrToRestoreWhatIsDamaged) {
    const std::string copy = cli.path("copy.seamlog");
    cli.json("log backup --log " + east + " --out " + copy);
    expectRefused(
        "log backup --log " + east + " --out " + copy, {"copy.seamlog", "is there already"});
    expectRefused("log backup --log " + east + " --out " + east, {"is the log itself"});
    expectRefused("log backup --log " + east + " --out " + cli.path("no/folder"), {"is not there"});
    expectRefused(
        "log restore --from " + copy + " --log " + east,
        {"east.seamlog", "a log is never overwritten", "Put the old log aside"});
    expectRefused(
        "log restore --from " + cli.path("gone") + " --log " + cli.path("new"), {"no such file"});
    expectRefused("log restore --log " + cli.path("new"), {"--from is required"});
    std::string bytes = test::fileText(cli.folder().file("copy.seamlog"));
    const std::size_t at = bytes.find("\"reading_milli\":");
    ASSERT_NE(at, std::string::npos);
    bytes[at + 16] = bytes[at + 16] == '1' ? '2' : '1';
    const std::string damaged = cli.file("damaged", bytes);
    expectRefused(
        "log restore --from " + damaged + " --log " + cli.path("new"),
        {"damaged", "nothing is restored from it", "row "});
    EXPECT_FALSE(fs::exists(cli.folder().file("new")));
    expectRefused(
        "log import --from " + damaged + " --log " + west, {"nothing is taken from it", "row "});
}

// As large a file as the system lets a program write, 128 blocks of 512 bytes: the copy is larger.
TEST_F(CliLogCopies, LeavesNothingBehindWhereThereIsNoRoom) {
    const std::string before = chain(east);
    // What a build that counts lines writes at the end would be torn, too: here, and nowhere else.
    const Ran ran = cli.run(
        "log backup --log " + east + " --out " + cli.path("copy"),
        "export GCOV_PREFIX=" + cli.folder().path() + "; trap '' XFSZ; ulimit -f 128;");
    EXPECT_EQ(ran.status, 2) << ran.out;
    const std::vector<std::string> said = linesOfOurs(ran.err);
    ASSERT_EQ(said.size(), 1U) << ran.err;
    EXPECT_NE(said[0].find("copy: the disk"), std::string::npos) << ran.err;
    for (const auto& one : fs::directory_iterator(cli.folder().path())) {
        EXPECT_EQ(one.path().filename().string().find("copy"), std::string::npos) << one.path();
    }
    EXPECT_EQ(chain(east), before);
}

TEST_F(CliLogCopies, ImportsAnotherTabletsJointsOnce) {
    const json first = cli.json("log import --from " + west + " --log " + east);
    EXPECT_EQ(first["joints"], 1);
    EXPECT_EQ(first["chains"][0]["chain"], 2);
    EXPECT_TRUE(first["conflicts"].empty());
    EXPECT_EQ(cli.json("log list --log " + east)["joints"].size(), 2U);
    EXPECT_TRUE(cli.json("log verify --log " + east)["sound"]);
    // Its events go out with this log's own, named by the log that they came with.
    const json events = cli.json("log export --what events --log " + east);
    const std::string other = cli.json("log list --log " + west)["log_id"];
    std::map<std::string, int> opened;
    for (const json& row : events) {
        if (row["event"]["kind"] == "weld_opened") {
            ++opened[row.value("log", "")];
        }
    }
    EXPECT_EQ(opened, (std::map<std::string, int>{{"", 1}, {other, 1}}));
    const std::string csv = cli.run("log export --what events --log " + east).out;
    EXPECT_NE(csv.find(",log\r\n"), std::string::npos);
    EXPECT_NE(csv.find("," + other + "\r\n"), std::string::npos) << csv.substr(0, 300);
    EXPECT_EQ(cli.json("log import --from " + west + " --log " + east)["rows"], 0);
    EXPECT_EQ(
        cli.run("log import --from " + west + " --log " + east).out,
        "nothing new: this log holds all of it already\n");
    cli.json("rehearse --seam S5 --log " + west);
    const std::string copy = cli.path("copy");
    cli.json("log backup --log " + west + " --out " + copy);
    const Ran text = cli.run("log import --from " + copy + " --log " + east);
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_NE(text.out.find("New joints"), std::string::npos) << text.out;
    const json list = cli.json("log list --log " + east);
    EXPECT_EQ(list["joints"].size(), 3U);
    // Two joints have the number 1 by now; each can still be shown.
    expectRefused("log show --joint 1 --log " + east, {"--joint \"1\"", "2 joints", "--weld"});
    for (const json& joint : list["joints"]) {
        const std::string weld = joint["weld"];
        EXPECT_EQ(cli.json("log show --weld " + weld + " --log " + east)["weld"], weld);
    }
    EXPECT_EQ(cli.json("log show --joint 2 --log " + east)["number"], 2);
}

TEST_F(CliLogCopies, ReadsAPublishedCopyWithoutLeavingATrace) {
    const fs::path place = cli.folder().file("share");
    fs::create_directory(place);
    cli.json("log backup --log " + east + " --out '" + (place / "copy").string() + "'");
    for (const char* words : {"log list", "log show", "log verify", "log export", "log recover"}) {
        EXPECT_EQ(
            cli.run(std::string(words) + " --log '" + (place / "copy").string() + "'").status, 0)
            << words;
    }
    EXPECT_EQ(std::distance(fs::directory_iterator(place), fs::directory_iterator()), 1);
}

} // namespace
} // namespace seamclock
