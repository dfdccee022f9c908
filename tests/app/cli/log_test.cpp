// The log through the terminal: list, record, verification (also by hand, with a shell), export and
// recovery.
#include "core/log/log_reader.h"
#include "core/log/log_writer.h"
#include "core/weld/event_codec.h"
#include "tests/app/cli/run_cli.h"
#include "tests/support/fake_clock.h"

#include <algorithm>
#include <cstdlib>
#include <gtest/gtest.h>
#include <sstream>
#include <sys/wait.h>

namespace seamclock {
namespace {

using nlohmann::json;
using test::Cli;
using test::Ran;

/// What a shell makes of a script: its status, and its output in the folder's file "answer".
int shell(const Cli& cli, const std::string& script) {
    const std::string command =
        "cd " + test::inShell(cli.folder().path()) + " && { " + script + "\n} >answer 2>&1";
    const int status = std::system(command.c_str());
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

std::string answer(const Cli& cli) {
    return test::fileText(cli.folder().file("answer"));
}

/// A table's text without its line ends and columns.
std::string unwrapped(const std::string& text) {
    std::istringstream in(text);
    std::string out;
    for (std::string word; in >> word;) {
        out += (out.empty() ? "" : " ") + word;
    }
    return out;
}

class CliLog : public ::testing::Test {
protected:
    /// Three welds: one good, one out of limits, one stopped.
    void SetUp() override {
        log = cli.path("three.log");
        cli.json("rehearse --seam S1 --log " + log);
        cli.json("rehearse --seam S2 --late-changeover 3 --log " + log);
        cli.json("rehearse --seam S5 --abort-in soaking --log " + log);
    }
    Cli cli;
    std::string log;
};

TEST_F(CliLog, ListsItsJointsNewestFirst) {
    // All three begin at the virtual clock's start: the number tells which is the newest.
    const json j = cli.json("log list --log " + log);
    EXPECT_EQ(j["world"], "practice");
    std::vector<std::pair<int, std::string>> verdicts;
    for (const json& joint : j["joints"]) {
        verdicts.emplace_back(joint["number"], joint["verdict"]);
    }
    EXPECT_EQ(
        verdicts, (std::vector<std::pair<int, std::string>>{
                      {3, "incomplete"}, {2, "out of limits"}, {1, "within limits"}}));
    const Ran text = cli.run("log list --log " + log);
    EXPECT_EQ(text.status, 0);
    EXPECT_NE(text.out.find("out of limits"), std::string::npos);
}

TEST_F(CliLog, Filters) {
    const auto count = [this](const std::string& filter) {
        return cli.json("log list --log " + log + " " + filter)["joints"].size();
    };
    EXPECT_EQ(count("--verdict 'out of limits'"), 1U);
    EXPECT_EQ(count("--material PP"), 1U);
    EXPECT_EQ(count("--bench east"), 2U);
    EXPECT_EQ(count("--bench nowhere"), 0U);
    EXPECT_EQ(count("--limit 2"), 2U);
    EXPECT_EQ(count("--from 2030-01-07"), 3U);
    EXPECT_EQ(count("--to 2030-01-06"), 0U);
    EXPECT_EQ(count("--text S2"), 1U);
    EXPECT_EQ(cli.run("log list --to 2030-01-06 --log " + log).out, "no joints\n");
}

TEST_F(CliLog, ShowsARecord) {
    const json newest = cli.json("log show --log " + log);
    EXPECT_EQ(newest["number"], 3);
    const json second = cli.json("log show --joint 2 --log " + log);
    EXPECT_EQ(second["verdict"], "out of limits");
    EXPECT_EQ(second["stored"]["verdict"], "out of limits");
    EXPECT_FALSE(second["differs_from_stored"]);
    const json same =
        cli.json("log show --weld " + second["weld"].get<std::string>() + " --log " + log);
    EXPECT_EQ(same, second);
    bool force = false;
    for (const json& row : second["set_and_actual"]) {
        force = force || (row["item"] == "joining_force" && row.contains("actual"));
    }
    EXPECT_TRUE(force) << "the bench comes from the log's own documents";
    const Ran text = cli.run("log show --cues --joint 2 --log " + log);
    EXPECT_NE(text.out.find("late: changeover is over its limit"), std::string::npos) << text.out;
}

TEST_F(CliLog, RefusesAJointThatIsNotThere) {
    for (const char* which : {"--joint 4", "--joint 0", "--joint two", "--weld weld:none"}) {
        const Ran ran = cli.run(std::string("log show ") + which + " --log " + log);
        EXPECT_EQ(ran.status, 2) << which;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
        EXPECT_NE(ran.err.find("allowed: "), std::string::npos) << ran.err;
    }
}

TEST_F(CliLog, IsFoundToBeWhatWasWritten) {
    const json j = cli.json("log verify --log " + log);
    for (const char* key :
         {"sound", "world", "log_id", "rows", "head", "signed_to", "welds", "documents", "covered",
          "notes"}) {
        EXPECT_TRUE(j.contains(key)) << key;
    }
    EXPECT_TRUE(j["sound"]);
    EXPECT_EQ(j["welds"], 3);
    EXPECT_FALSE(j.contains("finding"));
}

TEST_F(CliLog, VerifiesByHandWithPrintfAndSha256sum) {
    // The user guide's own lines: nothing of this program is in the loop.
    ASSERT_EQ(
        cli.run("log export --what chain --log " + log + " --out " + cli.path("chain.txt")).status,
        0);
    const std::string script = R"sh(
{
    read -r _ id world
    prev=$(printf 'seamclock-log/1\n%s\n%s' "$id" "$world" | sha256sum | cut -d' ' -f1)
    rows=0
    while read -r hash body; do
        [ "$(printf '%s\n%s' "$prev" "$body" | sha256sum | cut -d' ' -f1)" = "$hash" ] ||
            echo "row $((rows + 1)) is not what was written"
        prev=$hash rows=$((rows + 1))
    done
    echo "$rows rows, head $prev"
} < chain.txt)sh";
    ASSERT_EQ(shell(cli, script), 0) << answer(cli);
    const json j = cli.json("log verify --log " + log);
    EXPECT_EQ(
        answer(cli), std::to_string(j["rows"].get<int>()) + " rows, head " +
                         j["head"].get<std::string>() + "\n");
    EXPECT_EQ(shell(cli, "sed -i '5s/person/Person/' chain.txt; " + script.substr(1)), 0);
    EXPECT_NE(answer(cli).find("row 4 is not what was written"), std::string::npos) << answer(cli);
}

TEST_F(CliLog, IsFoundDamagedWhenOneByteOfARowChanged) {
    std::string bytes = test::fileText(cli.folder().file("three.log"));
    const std::size_t at = bytes.find("\"reading_milli\":");
    if (at == std::string::npos) {
        // The rows may still stand in the write-ahead file; a checkpoint brings them in.
        FAIL() << "the log's file holds no reading";
    }
    char& digit = bytes[at + 16];
    digit = digit == '1' ? '2' : '1';
    const std::string damaged = cli.file("damaged.log", bytes);
    const Ran ran = cli.run("log verify --json --log " + damaged);
    EXPECT_EQ(ran.status, 1) << ran.err;
    EXPECT_EQ(ran.err, "");
    const json j = json::parse(ran.out);
    EXPECT_FALSE(j["sound"]);
    EXPECT_GT(j["finding"]["seq"], 0);
    const Ran text = cli.run("log verify --log " + damaged);
    EXPECT_EQ(text.status, 1);
    EXPECT_NE(text.out.find("damaged"), std::string::npos);
}

// The picture is a real file under the SHA-256 that sha256sum gives it.
TEST_F(CliLog, VerifyTellsOfAPhotoThatIsMissingOrWasChanged) {
    EXPECT_EQ(cli.json("log verify --log " + log)["photos"]["named"], 0);
    ASSERT_EQ(
        shell(
            cli, "mkdir three.log.photos && printf 'a bead' > bead.jpg && "
                 "sum=$(sha256sum < bead.jpg | cut -d' ' -f1) && "
                 "cp bead.jpg three.log.photos/$sum.jpg && printf %s $sum"),
        0);
    const std::string sum = answer(cli);
    ASSERT_EQ(sum.size(), 64U);
    {
        auto reader = LogReader::open(cli.folder().file("three.log"));
        ASSERT_TRUE(reader) << reader.error().detail;
        const std::string weld = reader->weldsNumbered(1).value().at(0);
        Event event = reader->weldEvents(weld).value().back();
        ++event.n;
        event.d = PhotoAdded{sum, 6, "crack at the end.jpg"};
        const test::FakeClock clock;
        auto writer = LogWriter<Practice>::open(cli.folder().file("three.log"), clock);
        ASSERT_TRUE(writer) << writer.error().detail;
        writer->submit({{weld, event.n, toBody(event).value()}});
        ASSERT_TRUE(writer->flush());
    }
    json j = cli.json("log verify --log " + log);
    EXPECT_TRUE(j["sound"]);
    EXPECT_EQ(j["photos"]["named"], 1);
    EXPECT_TRUE(j["photos"]["findings"].empty());
    EXPECT_NE(
        cli.run("log verify --log " + log).out.find("1 named, all as they were kept"),
        std::string::npos);

    ASSERT_EQ(
        shell(
            cli, "printf 'a bean' > three.log.photos/" + sum +
                     ".jpg && "
                     "printf 'a bean' | sha256sum | cut -d' ' -f1 | tr -d '\\n'"),
        0);
    const std::string other = answer(cli);
    Ran ran = cli.run("log verify --json --log " + log);
    EXPECT_EQ(ran.status, 1) << ran.err;
    j = json::parse(ran.out);
    EXPECT_TRUE(j["sound"]) << "the log itself is what was written";
    ASSERT_EQ(j["photos"]["findings"].size(), 1U);
    EXPECT_EQ(j["photos"]["findings"][0]["joint"], 1);
    EXPECT_EQ(j["photos"]["findings"][0]["expected"], sum);
    EXPECT_EQ(j["photos"]["findings"][0]["found"], other);
    ran = cli.run("log verify --log " + log);
    EXPECT_EQ(ran.status, 1);
    EXPECT_NE(
        unwrapped(ran.out).find("was changed; expected SHA-256 " + sum + ", found " + other),
        std::string::npos)
        << ran.out;

    ASSERT_EQ(shell(cli, "rm three.log.photos/*.jpg"), 0);
    ran = cli.run("log verify --log " + log);
    EXPECT_EQ(ran.status, 1);
    EXPECT_NE(unwrapped(ran.out).find("photo \"crack at the end.jpg\": "), std::string::npos)
        << ran.out;
    EXPECT_NE(unwrapped(ran.out).find(" is missing; expected SHA-256 " + sum), std::string::npos)
        << ran.out;
}

// A weld whose events make none: nobody can say that it is still open.
TEST_F(CliLog, ListsADamagedJointButNotAmongTheOpenOnes) {
    {
        auto reader = LogReader::open(cli.folder().file("three.log"));
        ASSERT_TRUE(reader) << reader.error().detail;
        std::vector<Event> events =
            reader->weldEvents(reader->weldsNumbered(1).value().at(0)).value();
        events.resize(8);
        const std::string weld = "weld:00000000-0000-4000-8000-000000000009";
        std::vector<LogRow> rows;
        for (Event& event : events) {
            event.subject = weld;
            if (event.n != 5) {
                rows.push_back({weld, event.n, toBody(event).value()});
            }
        }
        const test::FakeClock clock;
        auto writer = LogWriter<Practice>::open(cli.folder().file("three.log"), clock);
        ASSERT_TRUE(writer) << writer.error().detail;
        writer->submit(rows);
        ASSERT_TRUE(writer->flush());
    }
    const json all = cli.json("log list --log " + log)["joints"];
    EXPECT_EQ(all.size(), 4U);
    EXPECT_EQ(
        std::count_if(
            all.begin(), all.end(), [](const json& joint) { return joint["state"] == "damaged"; }),
        1);
    EXPECT_TRUE(cli.json("log list --verdict open --log " + log)["joints"].empty());
}

TEST_F(CliLog, ExportsCsvThatAnIndependentReaderReadsBack) {
    ASSERT_EQ(cli.run("log export --log " + log + " --out " + cli.path("joints.csv")).status, 0);
    ASSERT_EQ(
        cli.run("log export --what events --log " + log + " --out " + cli.path("events.csv"))
            .status,
        0);
    // python3's csv module is the judge of the form, and its json module of the events' own values.
    const std::string script = R"py(python3 - <<'END'
import csv, json
def rows(name):
    raw = open(name, 'rb').read()
    assert raw.count(b'\n') == raw.count(b'\r\n'), name + ': lines end with CRLF'
    with open(name, encoding='utf-8', newline='') as file:
        read = list(csv.DictReader(file, strict=True))
    assert all(None not in row and None not in row.values() for row in read), name + ': cells'
    return read
joints = rows('joints.csv')
print(*sorted((j['number'], j['verdict'], j['thickness_mm'], j['opened_utc'][:10]) for j in joints))
events = rows('events.csv')
assert [int(e['seq']) for e in events] == list(range(1, len(events) + 1))
for e in events:
    json.loads(e['d'])
    assert len(e['hash']) == 64
print(sum(e['kind'] == 'faces_met' for e in events), sum(e['kind'] == 'weld_opened' for e in events))
END)py";
    ASSERT_EQ(shell(cli, script), 0) << answer(cli);
    EXPECT_EQ(
        answer(cli),
        "('1', 'within limits', '15', '2030-01-07') ('2', 'out of limits', '8', '2030-01-07') "
        "('3', 'incomplete', '6', '2030-01-07')\n2 3\n");
}

TEST_F(CliLog, ExportsTheSameToAFileAsToTheTerminal) {
    for (const char* what : {"joints", "records", "events", "chain"}) {
        const std::string words = std::string("log export --json --what ") + what + " --log " + log;
        const Ran shown = cli.run(words);
        ASSERT_EQ(shown.status, 0) << what;
        ASSERT_EQ(cli.run(words + " --out " + cli.path("out")).status, 0);
        EXPECT_EQ(test::fileText(cli.folder().file("out")), shown.out) << what;
    }
    const json records = cli.json("log export --what records --log " + log);
    ASSERT_EQ(records.size(), 3U);
    EXPECT_EQ(
        std::count_if(
            records.begin(), records.end(),
            [](const json& one) { return one["verdict"] == "out of limits"; }),
        1);
}

} // namespace
} // namespace seamclock
