#include "tests/core/log/log_kill.h"

#include "core/log/log_reader.h"
#include "core/log/log_writer.h"
#include "core/log/spill.h"
#include "core/log/verify.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <gtest/gtest.h>
#include <map>
#include <random>
#include <sched.h>
#include <set>
#include <sys/wait.h>
#include <tuple>
#include <unistd.h>

namespace seamclock::test {

namespace {

struct Row {
    std::int64_t number = 0;
    std::int64_t n = 0;
    bool operator<(const Row& other) const {
        return std::tie(number, n) < std::tie(other.number, other.n);
    }
};

struct Told {
    std::set<Row> saved;
    std::set<Row> spilled;
};

/// Runs the driver and kills it when it has told `lines` lines, or after `turns` turns of the
/// scheduler if that is 0.
void runAndKill(const std::string& path, std::int64_t first, int lines, int turns, Told& told) {
    int ends[2];
    ASSERT_EQ(pipe(ends), 0);
    const std::string program = std::string(SEAMCLOCK_BIN_DIR) + "/log_writer_driver";
    const std::string number = std::to_string(first);
    const pid_t child = fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        dup2(ends[1], STDOUT_FILENO);
        close(ends[0]);
        close(ends[1]);
        execl(program.c_str(), program.c_str(), path.c_str(), number.c_str(), nullptr);
        _exit(127);
    }
    close(ends[1]);
    std::FILE* from = fdopen(ends[0], "r");
    char word[16];
    long long weld = 0;
    long long n = 0;
    int seen = 0;
    // What was told before the kill may still be in the pipe after it.
    const auto listen = [&] {
        if (std::fscanf(from, "%15s %lld %lld", word, &weld, &n) != 3) {
            return false;
        }
        (word[1] == 'a' ? told.saved : told.spilled).insert({weld, n});
        return true;
    };
    while (seen < lines && listen()) {
        ++seen;
    }
    for (int i = 0; lines == 0 && i < turns; ++i) {
        sched_yield();
    }
    kill(child, SIGKILL);
    while (listen()) {
    }
    std::fclose(from);
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status)) << "the driver ended by itself with " << WEXITSTATUS(status);
}

} // namespace

void killWriters(int rounds, std::uint64_t seed) {
    const ScratchFolder folder;
    const std::string path = folder.file("killed.log");
    std::mt19937_64 random(seed);
    Told told;
    std::int64_t next = 1;
    std::map<std::int64_t, std::vector<LogRow>> expected;
    for (int round = 0; round < rounds; ++round) {
        SCOPED_TRACE("round " + std::to_string(round));
        const bool locked = round % 4 == 3 && LogReader::open(path).has_value();
        std::unique_ptr<SQLite::Database> other;
        if (locked) {
            other = std::make_unique<SQLite::Database>(path, SQLite::OPEN_READWRITE, 1000);
            other->exec("BEGIN IMMEDIATE");
        }
        const int lines = round % 5 == 0 ? 0 : static_cast<int>(random() % 60);
        runAndKill(path, next, lines, static_cast<int>(random() % 3000), told);
        other.reset();

        std::set<std::string> there;
        if (auto reader = LogReader::open(path)) {
            const auto report = verifyLog(path);
            ASSERT_TRUE(report.has_value()) << report.error().detail;
            ASSERT_TRUE(report->ok) << report->finding->reason;
            ASSERT_TRUE(reader->eachRow(
                [&](const StoredRow& row) { return there.insert(row.body).second; }));
        } else {
            ASSERT_EQ(reader.error().detail, path + ": no such file")
                << "killed before the log was made";
        }
        const auto inSpill = readSpill(path + ".spill").value();
        EXPECT_TRUE(inSpill.damaged.empty());
        std::set<std::string> safe = there;
        for (const LogRow& row : inSpill.rows) {
            safe.insert(row.body);
        }
        const auto bodyOf = [&](const Row& row) {
            auto& rows = expected[row.number];
            if (rows.empty()) {
                rows = rowsOf(closedWeld(row.number));
            }
            return rows[static_cast<std::size_t>(row.n - 1)].body;
        };
        for (const Row& row : told.saved) {
            next = std::max(next, row.number + 1);
            ASSERT_EQ(there.count(bodyOf(row)), 1U)
                << "saved, and lost: " << row.number << ", " << row.n;
        }
        for (const Row& row : told.spilled) {
            next = std::max(next, row.number + 1);
            ASSERT_EQ(safe.count(bodyOf(row)), 1U)
                << "spilled, and lost: " << row.number << ", " << row.n;
        }
        // Welds that were begun but never told of keep their numbers too.
        for (const LogRow& row : inSpill.rows) {
            if (row.subject.rfind("weld:", 0) == 0) {
                next = std::max<std::int64_t>(
                    next, std::stoll(row.subject.substr(row.subject.size() - 12)) + 1);
            }
        }
        if (auto reader = LogReader::open(path)) {
            next = std::max(next, reader->highestNumber().value() + 1);
        }
    }
    EXPECT_GT(told.saved.size(), static_cast<std::size_t>(rounds));
    EXPECT_FALSE(told.spilled.empty());
    // The last start joins what is left.
    {
        const FakeClock clock;
        auto writer = LogWriter<Production>::open(path, clock, quick());
        ASSERT_TRUE(writer.has_value()) << writer.error().detail;
        ASSERT_TRUE(writer->flush().has_value());
        EXPECT_TRUE(writer->state().refused.empty());
    }
    EXPECT_TRUE(readSpill(path + ".spill")->empty());
    EXPECT_TRUE(verifyLog(path)->ok);
    std::printf(
        "%d kills; %zu rows told saved, %zu told spilled, none lost\n", rounds, told.saved.size(),
        told.spilled.size());
}

} // namespace seamclock::test
