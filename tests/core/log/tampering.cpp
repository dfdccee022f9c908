#include "tests/core/log/tampering.h"

#include "core/log/verify.h"
#include "tests/support/scratch_folder.h"

#include <filesystem>
#include <gtest/gtest.h>

namespace seamclock::test {

std::int64_t pick(Random& random, std::int64_t low, std::int64_t high) {
    return low + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(high - low + 1));
}

Row rowAt(BehindTheBack& stranger, std::int64_t seq) {
    const std::string where = " FROM event WHERE seq = " + std::to_string(seq);
    return {stranger.text("SELECT hash" + where), stranger.text("SELECT body" + where)};
}

void put(BehindTheBack& stranger, std::int64_t seq, const Row& row) {
    SQLite::Statement insert(
        stranger.database(), "INSERT INTO event(chain, seq, hash, body) VALUES(1, ?, ?, ?)");
    insert.bind(1, seq);
    insert.bind(2, row.hash);
    insert.bind(3, row.body);
    insert.exec();
}

void drop(BehindTheBack& stranger, std::int64_t seq) {
    stranger.database().exec("DELETE FROM event WHERE seq = " + std::to_string(seq));
}

void change(BehindTheBack& stranger, std::int64_t seq, const Row& row) {
    drop(stranger, seq);
    put(stranger, seq, row);
}

void shift(BehindTheBack& stranger, std::int64_t from, std::int64_t by) {
    const std::string far = std::to_string(1'000'000);
    stranger.database().exec(
        "UPDATE event SET seq = seq + " + far + " WHERE seq >= " + std::to_string(from));
    stranger.database().exec(
        "UPDATE event SET seq = seq - " + far + " + " + std::to_string(by) +
        " WHERE seq >= " + far);
}

std::string touched(std::string body, Random& random) {
    for (;;) {
        const auto at =
            static_cast<std::size_t>(pick(random, 0, static_cast<std::int64_t>(body.size()) - 1));
        if (body[at] >= '1' && body[at] <= '8') {
            ++body[at];
            return body;
        }
    }
}

int tamper(
    const std::string& sound, const std::vector<Mutation>& kinds, int rounds, std::uint64_t seed) {
    const ScratchFolder folder;
    const std::int64_t rows = verifyLog(sound)->rows;
    Random random(seed);
    int made = 0;
    for (int round = 0; round < rounds; ++round) {
        for (const Mutation& mutation : kinds) {
            const std::string path = folder.file("mutated.log");
            for (const char* tail : {"", "-wal", "-shm"}) {
                std::filesystem::remove(path + tail);
            }
            std::filesystem::copy_file(sound, path);
            std::int64_t bad = 0;
            {
                BehindTheBack stranger(path);
                const std::string index =
                    stranger.text("SELECT sql FROM sqlite_schema WHERE name = 'event_once'");
                bad = mutation.make(stranger, random, rows);
                if (stranger.number(
                        "SELECT count(*) FROM sqlite_schema WHERE name = 'event_once'") == 0) {
                    stranger.database().tryExec(index);
                }
            }
            ++made;
            const auto report = verifyLog(path);
            if (!report || report->ok || !report->finding || report->finding->reason.empty()) {
                ADD_FAILURE() << mutation.name << ", round " << round << ": not found; "
                              << (report ? "" : report.error().detail);
                continue;
            }
            if (bad == kAnyRow) {
                EXPECT_GE(report->finding->seq, 1)
                    << mutation.name << ": " << report->finding->reason;
            } else {
                EXPECT_EQ(report->finding->seq, bad)
                    << mutation.name << ": " << report->finding->reason;
            }
        }
    }
    return made;
}

} // namespace seamclock::test
