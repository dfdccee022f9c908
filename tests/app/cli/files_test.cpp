// Every argument that is a file, with everything that a file should not be.
#include "tests/app/cli/run_cli.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using test::Cli;
using test::Ran;

struct FileArgument {
    const char* before;
    const char* after;
    bool isCheck; // answers "no" with 1 on what it can read
};

constexpr FileArgument kArguments[] = {
    {"procedures check ", "", true},
    {"procedures show ./", "", false},
    {"plan --thickness 10 --length 900 --procedure ./", "", false},
    {"plan --procedure pp-dvs2207-11 --thickness 10 --length 900 --bench ", "", false},
    {"bench show ", "", false},
    {"bench fit ", "", false},
    {"rehearse --bench ", "", false},
    {"log list --log ", "", false},
    {"log show --log ", "", false},
    {"log verify --log ", "", false},
    {"log export --log ", "", false},
    {"log recover --log ", "", false},
    {"rehearse --resume --log ", "", false},
};

void expectOneLine(const Ran& ran, const std::string& words, int status) {
    EXPECT_EQ(ran.status, status) << words << "\n" << ran.err;
    if (status == 2) {
        EXPECT_EQ(ran.out, "") << words;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << words << "\n" << ran.err;
        EXPECT_NE(ran.err.find("thing"), std::string::npos) << "the file is not named: " << ran.err;
    } else {
        EXPECT_EQ(ran.err, "") << words;
        EXPECT_NE(ran.out, "") << words;
    }
}

/// `thing` lies in the test's own folder, from which the program is run.
Ran runBeside(const Cli& cli, const FileArgument& argument) {
    return cli.run(
        std::string(argument.before) + "thing" + argument.after,
        "; cd " + test::inShell(cli.folder().path()) + " && XDG_DATA_HOME=data");
}

void expectRefusedBytes(const std::string& bytes) {
    for (const FileArgument& argument : kArguments) {
        const Cli cli;
        cli.file("thing", bytes);
        expectOneLine(runBeside(cli, argument), argument.before, argument.isCheck ? 1 : 2);
        EXPECT_EQ(test::fileText(cli.folder().file("thing")), bytes)
            << argument.before << "changed a file that isn't ours";
    }
}

TEST(CliFiles, OfZeroBytes) {
    expectRefusedBytes("");
}

TEST(CliFiles, OfTextThatIsNothing) {
    expectRefusedBytes("Dear reader, this is a letter.\n");
}

TEST(CliFiles, OfJsonThatIsSomethingElse) {
    expectRefusedBytes("{\"a\": [1, 2, {\"b\": null}]}\n");
}

TEST(CliFiles, OfBinaryJunk) {
    std::string junk;
    std::uint32_t seed = 12345;
    for (int i = 0; i < 20'000; ++i) {
        seed = seed * 1664525U + 1013904223U;
        junk += static_cast<char>(seed >> 24U);
    }
    expectRefusedBytes(junk);
    expectRefusedBytes(std::string("SQLite format 3\0", 16) + junk);
}

TEST(CliFiles, ThatAreNotThere) {
    for (const FileArgument& argument : kArguments) {
        const Cli cli;
        expectOneLine(runBeside(cli, argument), argument.before, 2);
    }
}

TEST(CliFiles, ThatAreFolders) {
    for (const FileArgument& argument : kArguments) {
        const Cli cli;
        std::filesystem::create_directory(cli.folder().file("thing"));
        expectOneLine(runBeside(cli, argument), argument.before, 2);
    }
}

TEST(CliFiles, ThatAreLargerThanAnyOfOurs) {
    for (const FileArgument& argument : kArguments) {
        const Cli cli;
        const std::string path = cli.folder().file("thing");
        cli.file("thing", "{");
        std::filesystem::resize_file(path, 20 * 1024 * 1024);
        const Ran ran = runBeside(cli, argument);
        EXPECT_EQ(ran.status, 2) << argument.before << ran.out.substr(0, 300) << ran.err;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
    }
}

TEST(CliFiles, OfACalibrationNameLineAndValue) {
    const Cli cli;
    const struct {
        const char* csv;
        const char* named;
    } rows[] = {
        {"reading_mm,force_N\n1,90\n2,lots\n3,270\n", "lots"},
        {"reading_mm,force_N\n1,90\n2,nan\n3,270\n", "nan"},
        {"reading_mm,force_N\n1,90\n2,180\n", "3"},
        {"reading_mm,force_N\n5,90\n5,180\n5,270\n", ""},
        {"mm,N\n1,90\n2,180\n3,270\n", "reading"}};
    for (const auto& row : rows) {
        const Ran ran = cli.run("bench fit " + cli.file("thing.csv", row.csv));
        expectOneLine(ran, row.csv, 2);
        EXPECT_NE(ran.err.find(row.named), std::string::npos) << ran.err;
    }
}

TEST(CliFiles, ThatCannotBeWrittenAreTold) {
    const Cli cli;
    cli.json("rehearse --log " + cli.path("good.log"));
    for (const std::string& out :
         {cli.path("no/such/folder.csv"), test::inShell(cli.folder().path())}) {
        const Ran ran = cli.run("log export --log " + cli.path("good.log") + " --out " + out);
        EXPECT_EQ(ran.status, 2) << out;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
        EXPECT_NE(ran.err.find("can't be written"), std::string::npos) << ran.err;
    }
    const Ran full = cli.run("log export --log " + cli.path("good.log") + " --out /dev/full");
    EXPECT_EQ(full.status, 2) << full.err;
    EXPECT_TRUE(std::filesystem::is_character_file("/dev/full"));
}

TEST(CliFiles, ALogIsNotMadeWhereNoneCanBe) {
    const Cli cli;
    cli.file("thing", "a file, not a folder");
    const Ran ran = cli.run("rehearse --log " + cli.path("thing") + "/x.log");
    expectOneLine(ran, "rehearse", 2);
}

} // namespace
} // namespace seamclock
