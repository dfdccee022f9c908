// Lessons and a practice log through the terminal.
#include "tests/app/cli/run_cli.h"

#include "tests/support/trainee.h"

#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

using nlohmann::json;

TEST(CliLessons, AreListedAndSound) {
    const Cli cli;
    const Ran listed = cli.run("lessons");
    EXPECT_EQ(listed.status, 0);
    EXPECT_NE(listed.out.find("pe10-first"), std::string::npos);
    EXPECT_NE(listed.out.find("A first good weld"), std::string::npos);
    const json all = cli.json("lessons --json");
    EXPECT_GE(all.size(), 14U);
    EXPECT_EQ(all.front()["id"], "pe10-first");
    const Ran checked = cli.run(
        "lessons check " + inShell(std::string(SEAMCLOCK_SOURCE_DIR)) +
        "/resources/lessons/*.json");
    EXPECT_EQ(checked.status, 0) << checked.out;
}

TEST(CliLessons, OfTheShopsOwnStandBehindTheProgramsAndAWrongFileIsNamed) {
    const Cli cli;
    const std::string text =
        fileText(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/lessons/01-pe10-first.json");
    const auto with = [&text](const std::string& from, const std::string& to) {
        std::string other = text;
        return other.replace(other.find(from), from.size(), to);
    };
    cli.file("own-lid.json", with("\"pe10-first\"", "\"lid-of-ours\""));
    const std::string folder = cli.path("");
    const json all = cli.json("lessons --json --own " + folder);
    EXPECT_EQ(all.back()["id"], "lid-of-ours");
    EXPECT_EQ(all.back()["place"], static_cast<int>(all.size())) << "it counts on";
    cli.file("taken.json", text);
    cli.file("wrong.json", with("\"drag_N\": 30", "\"drag_N\": -4"));
    const Ran listed = cli.run("lessons --own " + folder);
    EXPECT_EQ(listed.status, 1);
    EXPECT_NE(listed.out.find("lid-of-ours"), std::string::npos);
    EXPECT_NE(listed.err.find("\"pe10-first\" is another file's too"), std::string::npos);
    EXPECT_NE(listed.err.find("/drag_N: -4 is outside 0 to 2000"), std::string::npos) << listed.err;
    EXPECT_EQ(cli.run("lessons --own /nowhere").status, 0) << "there need be none";
}

TEST(CliLessons, CheckNamesEverythingThatIsWrongAndEndsWithOne) {
    const Cli cli;
    const std::string text =
        fileText(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/lessons/01-pe10-first.json");
    std::string bad = text;
    bad.replace(bad.find("\"drag_N\": 30"), 12, "\"drag_N\": -4, \"colour\": \"red\"");
    const std::string file = cli.file("bad.json", bad);
    const Ran checked = cli.run("lessons check " + file + " " + cli.file("good.json", text));
    EXPECT_EQ(checked.status, 1);
    EXPECT_NE(checked.out.find("/drag_N: -4 is outside 0 to 2000"), std::string::npos)
        << checked.out;
    EXPECT_NE(checked.out.find("/colour: "), std::string::npos) << checked.out;
    EXPECT_NE(checked.out.find("good.json: sound"), std::string::npos) << checked.out;
    const Ran asJson = cli.run("lessons check --json " + file);
    EXPECT_EQ(asJson.status, 1);
    EXPECT_EQ(json::parse(asJson.out).front()["findings"].size(), 2U);
    EXPECT_EQ(cli.run("lessons check " + cli.path("none.json")).status, 2);
}

TEST(CliPractice, ShowsTheHistoryAndTheScoreOfATake) {
    const Cli cli;
    const std::string path = cli.folder().file("practice.db");
    {
        VirtualClock clock = practiceClock();
        auto log = LogWriter<Practice>::open(path, clock);
        ASSERT_TRUE(log) << log.error().detail;
        const SetLesson set = setFor(shippedLesson("pe10-first"));
        HandFaults faults;
        faults.filmLeft = true;
        const MadeWeld made = practised(set, faults, *log, clock);
        ASSERT_TRUE(
            keepTake(*log, made.take, set, scoreOf(set, made), "person:tilda", clock.now()));
        ASSERT_TRUE(log->flush());
    }
    const std::string log = inShell(path);
    const Ran history = cli.run("practice " + log);
    EXPECT_EQ(history.status, 0) << history.err;
    EXPECT_NE(history.out.find("film_left"), std::string::npos) << history.out;
    EXPECT_NE(history.out.find("breaks"), std::string::npos) << history.out;
    EXPECT_EQ(cli.json("practice --json " + log).size(), 1U);
    EXPECT_EQ(cli.json("practice --json --by person:other " + log).size(), 0U);
    const Ran shown = cli.run("practice --take 1 " + log);
    EXPECT_EQ(shown.status, 0) << shown.err;
    EXPECT_NE(shown.out.find("The film was still on the edge"), std::string::npos) << shown.out;
    EXPECT_NE(shown.out.find("can't teach the feel of a wheel"), std::string::npos);
    const json score = cli.json("practice --take 1 --json " + log);
    EXPECT_EQ(score["made"]["bend"]["ductile"], false);
    EXPECT_EQ(score["planned"]["bend"]["ductile"], true);
    EXPECT_EQ(score["lapses"].front()["code"], "film_left");
    const Ran none = cli.run("practice --take 2 " + log);
    EXPECT_EQ(none.status, 2);
    EXPECT_NE(none.err.find("keeps no practice weld of that number"), std::string::npos);
    EXPECT_EQ(cli.run("practice " + cli.path("none.db")).status, 2);
}

} // namespace
} // namespace seamclock::test
