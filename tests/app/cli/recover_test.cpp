// What the terminal says of welds that a cut interrupted: killed on this boot, and in logs of
// another boot.
#include "core/log/log_writer.h"
#include "core/weld/event_codec.h"
#include "tests/app/cli/run_cli.h"
#include "tests/support/fake_clock.h"
#include "tests/support/story.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <sys/wait.h>

namespace seamclock {
namespace {

using nlohmann::json;
using std::chrono::seconds;
using test::Cli;
using test::Story;

TEST(CliRecover, FindsAKilledRehearsalInItsPhase) {
    // Killed as soon as the program says that its first check is on disk. At a hundredth of the
    // hand's time the checks take about three seconds, so that alignment is far away.
    const Cli cli;
    const std::string script =
        "cd " + test::inShell(cli.folder().path()) + " && mkfifo told && { " + Cli::program() +
        " rehearse --true-time --hand 1 --saved --seam S2 --log open.log >told & "
        "grep -m1 -q 'saved 2$' <told; found=$?; kill -9 $!; wait $! 2>/dev/null; exit $found; }";
    const int status = std::system(script.c_str());
    ASSERT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0);
    const std::string open = cli.path("open.log");
    const json j = cli.json("log recover --log " + open);
    ASSERT_EQ(j["open"].size(), 1U) << j;
    const json& weld = j["open"][0];
    EXPECT_EQ(weld["phase"], "preparing");
    EXPECT_GE(weld["events"], 2);
    EXPECT_EQ(weld["clock"], "same boot");
    EXPECT_EQ(weld["next"], "goes_on");
    EXPECT_NE(cli.run("log recover --log " + open).out.find("being prepared"), std::string::npos);
    EXPECT_EQ(cli.run("log verify --log " + open).status, 0);
}

/// A production log with the events of a weld made on "boot-1", which is not this machine's boot.
void writeLog(const Cli& cli, const std::string& name, const Weld& weld) {
    const test::FakeClock clock;
    auto writer = LogWriter<Production>::open(cli.folder().file(name), clock);
    ASSERT_TRUE(writer.has_value()) << writer.error().detail;
    for (const Event& event : weld.events) {
        const auto body = toBody(event);
        ASSERT_TRUE(body.has_value());
        writer->submit({{event.subject, event.n, *body}});
    }
    const auto flushed = writer->flush();
    ASSERT_TRUE(flushed.has_value()) << flushed.error().detail;
}

TEST(CliRecover, LetsCoolingGoOnAfterAReboot) {
    const Cli cli;
    Story story;
    story.buildUp().wait(seconds(30)).then(RemarkMade{"last words"});
    writeLog(cli, "rebooted.log", story.weld());
    const json j = cli.json("log recover --log " + cli.path("rebooted.log"));
    ASSERT_EQ(j["open"].size(), 1U) << j;
    const json& weld = j["open"][0];
    EXPECT_EQ(weld["phase"], "cooling");
    EXPECT_EQ(weld["clock"], "rebooted");
    EXPECT_EQ(weld["next"], "bridge");
    EXPECT_EQ(weld["number"], 7);
    EXPECT_EQ(weld["seam"], "S3");
    // Unconfirmed, the time that passed counts as none at least: 690 s of cooling less 30.
    EXPECT_EQ(weld["in_phase_s"]["low"], 30.0);
    EXPECT_EQ(weld["left_s"]["high"], 660.0);
    EXPECT_GE(weld["in_phase_s"]["high"], 30.0);
    const std::string text = cli.run("log recover --log " + cli.path("rebooted.log")).out;
    EXPECT_NE(text.find("cooling has gone on"), std::string::npos) << text;
}

TEST(CliRecover, StopsByDefaultWhatWasNotLockedBeforeAReboot) {
    const Cli cli;
    for (const bool soaking : {true, false}) {
        Story story;
        soaking ? story.align() : story.changeOver();
        const std::string name = soaking ? "soaking.log" : "building.log";
        writeLog(cli, name, story.weld());
        const json j = cli.json("log recover --log " + cli.path(name));
        ASSERT_EQ(j["open"].size(), 1U) << j;
        EXPECT_EQ(j["open"][0]["phase"], soaking ? "soaking" : "building_up");
        EXPECT_EQ(j["open"][0]["next"], "abort_by_default");
        const std::string text = cli.run("log recover --log " + cli.path(name)).out;
        EXPECT_NE(text.find("cut back and plane"), std::string::npos) << text;
    }
}

TEST(CliRecover, ChangesNothing) {
    const Cli cli;
    writeLog(cli, "still.log", Story().buildUp().weld());
    const std::string before = test::fileText(cli.folder().file("still.log"));
    cli.json("log recover --log " + cli.path("still.log"));
    EXPECT_EQ(test::fileText(cli.folder().file("still.log")), before);
}

TEST(CliRecover, FindsNothingInALogOfClosedWelds) {
    const Cli cli;
    const std::string log = cli.path("closed.log");
    cli.json("rehearse --log " + log);
    EXPECT_EQ(cli.json("log recover --log " + log)["open"], json::array());
    EXPECT_EQ(cli.run("log recover --log " + log).out, "no open weld\n");
}

} // namespace
} // namespace seamclock
