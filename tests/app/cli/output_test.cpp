// Output that does not arrive: a full disk, a reader that went away, a closed descriptor.
#include "tests/app/cli/run_cli.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using test::Cli;
using test::Ran;

constexpr const char* kCommands[] = {
    "procedures",     "procedures show pp-dvs2207-11 --json",
    "bench template", "--help",
    "--version",      "plan --procedure pp-dvs2207-11 --thickness 10 --length 900",
    "rehearse",       "rehearse --json"};

TEST(CliOutput, OnAFullDiskIsToldInOneLine) {
    const Cli cli;
    for (const char* words : kCommands) {
        const Ran ran = cli.run(words, "", ">/dev/full");
        EXPECT_EQ(ran.status, 2) << words;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << words << "\n" << ran.err;
        EXPECT_NE(ran.err.find("No space left on device"), std::string::npos) << ran.err;
    }
}

TEST(CliOutput, IntoAPipeThatNobodyReadsIsTold) {
    const Cli cli;
    // A fifo opened for both, then for writing, and the first closed again: its reader is gone for
    // certain.
    const std::string fifo = cli.path("fifo");
    const std::string open = "; mkfifo " + fifo + " && exec 3<>" + fifo + " 4>" + fifo +
                             " 3>&- && XDG_DATA_HOME=" + cli.path("data");
    for (const char* words : kCommands) {
        const Ran ran = cli.run(words, open, ">&4 4>&-");
        EXPECT_EQ(ran.status, 2) << words << "\n" << ran.err;
        std::filesystem::remove(cli.folder().file("fifo"));
    }
}

TEST(CliOutput, WithStandardOutputClosedIsTold) {
    const Cli cli;
    const Ran ran = cli.run("procedures", "", ">&-");
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
}

TEST(CliOutput, LostDoesNotLoseTheWeld) {
    // The rehearsal's rows belong to the log, whatever becomes of the screen.
    const Cli cli;
    const std::string log = cli.path("kept.log");
    EXPECT_EQ(cli.run("rehearse --log " + log, "", ">/dev/full").status, 2);
    const auto list = cli.json("log list --log " + log);
    ASSERT_EQ(list["joints"].size(), 1U);
    EXPECT_EQ(list["joints"][0]["verdict"], "within limits");
    EXPECT_EQ(cli.run("log verify --log " + log).status, 0);
}

} // namespace
} // namespace seamclock
