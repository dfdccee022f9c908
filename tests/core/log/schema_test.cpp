#include "core/log/schema.h"

#include "core/base/uuid.h"
#include "core/log/chain.h"
#include "core/log/connection.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "core/log/world.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <filesystem>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

// A log with its guards on, and a connection that knows the chain's function, as our own program
// would have it.
class Guards : public ::testing::Test {
protected:
    Guards() {
        test::writeSampleLog(path, clock);
        database = std::make_unique<SQLite::Database>(path, SQLite::OPEN_READWRITE);
        teachChain(*database);
    }
    void refuses(const std::string& sql, const std::string& with) {
        try {
            database->exec(sql);
            ADD_FAILURE() << "was let through: " << sql;
        } catch (const SQLite::Exception& thrown) {
            EXPECT_NE(std::string(thrown.what()).find(with), std::string::npos)
                << sql << ": " << thrown.what();
        }
    }
    /// "seq, hash, body" of a row that would rightly come next.
    std::string nextRow(std::int64_t step) {
        const std::int64_t seq = database->execAndGet("SELECT seq FROM chain").getInt64();
        const std::string head = database->execAndGet("SELECT head FROM chain").getString();
        const std::string body = test::stationRow(900).body;
        return std::to_string(seq + step) + ", '" + chainHash(head, body) + "', '" + body + "'";
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    std::string path = folder.file("a.log");
    std::unique_ptr<SQLite::Database> database;
};

TEST_F(Guards, LetTheRightNextRowThroughAndMoveTheHeadWithIt) {
    const std::int64_t seq = database->execAndGet("SELECT seq FROM chain").getInt64();
    database->exec("INSERT INTO event(chain, seq, hash, body) VALUES(1, " + nextRow(1) + ")");
    EXPECT_EQ(database->execAndGet("SELECT seq FROM chain").getInt64(), seq + 1);
    EXPECT_EQ(
        database->execAndGet("SELECT head FROM chain").getString(),
        database->execAndGet("SELECT hash FROM event ORDER BY seq DESC LIMIT 1").getString());
}

TEST_F(Guards, RefuseEveryOtherChangeOfRowsDocumentsAndHeads) {
    refuses("UPDATE event SET body = body WHERE seq = 3", "never changed");
    refuses("UPDATE event SET hash = 'x' WHERE seq = 3", "never changed");
    refuses("DELETE FROM event WHERE seq = 3", "never deleted");
    refuses("DELETE FROM event", "never deleted");
    refuses(
        "INSERT INTO event(chain, seq, hash, body) VALUES(1, " + nextRow(2) + ")", "at the head");
    refuses(
        "INSERT INTO event(chain, seq, hash, body) VALUES(1, " + nextRow(0) + ")", "at the head");
    refuses(
        "INSERT INTO event(chain, seq, hash, body) VALUES(2, " + nextRow(1) + ")", "at the head");
    refuses(
        "INSERT INTO event(chain, seq, hash, body) SELECT 1, seq + 1, head, '{}' FROM chain",
        "the hash of its body");
    refuses("UPDATE document SET kind = 'x'", "never changed");
    refuses("DELETE FROM document", "never deleted");
    refuses("UPDATE chain SET seq = seq - 1", "moves by one row");
    refuses("UPDATE chain SET seq = seq + 1", "moves by one row");
    refuses("UPDATE chain SET head = genesis", "moves by one row");
    refuses("UPDATE chain SET log_id = 'x'", "moves by one row");
    refuses("DELETE FROM chain", "never deleted");
    refuses("INSERT INTO chain SELECT 2, 'x', 'practice', 'g', 0, 'g' FROM chain", "begins once");
    refuses("INSERT INTO chain SELECT 2, 'x', world, 'g', 7, 'g' FROM chain", "begins once");
}

TEST_F(Guards, RefuseReplacingWhetherTriggersRecurseOrNot) {
    for (const char* recursion :
         {"PRAGMA recursive_triggers=OFF", "PRAGMA recursive_triggers=ON"}) {
        database->exec(recursion);
        refuses(
            "INSERT OR REPLACE INTO event(chain, seq, hash, body) SELECT 1, 3, hash, body FROM "
            "event WHERE seq = 2",
            "at the head");
        refuses(
            "REPLACE INTO document SELECT sha256, 'x', body FROM document LIMIT 1",
            "never replaced");
        refuses(
            "REPLACE INTO chain SELECT 1, 'x', world, genesis, 0, genesis FROM chain",
            "begins once");
    }
    // The one that the DELETE trigger must catch: a right next row that replaces another of the
    // same subject and n. The connection of the writer has recursive triggers on.
    const auto guarded = openForWriting(path, 100);
    ASSERT_TRUE(guarded.has_value()) << guarded.error().detail;
    const std::string body =
        (*guarded)->execAndGet("SELECT body FROM event WHERE seq = 1").getString();
    const std::string head = (*guarded)->execAndGet("SELECT head FROM chain").getString();
    try {
        (*guarded)->exec(
            "INSERT OR REPLACE INTO event(chain, seq, hash, body) SELECT 1, seq + 1, '" +
            chainHash(head, body) + "', '" + body + "' FROM chain");
        ADD_FAILURE() << "was let through";
    } catch (const SQLite::Exception& thrown) {
        EXPECT_NE(std::string(thrown.what()).find("never deleted"), std::string::npos)
            << thrown.what();
    }
    EXPECT_TRUE(verifyLog(path)->ok);
}

TEST_F(Guards, StopAToolThatKnowsNothingOfTheChain) {
    const SQLite::Database stranger(path, SQLite::OPEN_READWRITE);
    EXPECT_THROW(
        SQLite::Database(path, SQLite::OPEN_READWRITE)
            .exec("INSERT INTO event(chain, seq, hash, body) VALUES(1, " + nextRow(1) + ")"),
        SQLite::Exception);
}

TEST_F(Guards, EveryRefusalLeavesTheLogSound) {
    refuses("DELETE FROM event", "never deleted");
    const auto report = verifyLog(path);
    ASSERT_TRUE(report.has_value());
    EXPECT_TRUE(report->ok) << report->finding->reason;
}

TEST(Migration, GoesStepByStepAndSetsACopyAsideFirst) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    const test::FakeClock clock;
    test::writeSampleLog(path, clock);
    auto steps = migrations();
    const int next = steps.back().version + 1;
    steps.push_back({next, "CREATE TABLE later(x INTEGER) STRICT;"});
    steps.push_back({next + 1, "INSERT INTO later VALUES(7);"});
    auto database = openForWriting(path, 100);
    ASSERT_TRUE(database.has_value());
    const auto done = migrate(**database, path, steps);
    ASSERT_TRUE(done.has_value()) << done.error().detail;
    EXPECT_EQ(integerOf(**database, "SELECT x FROM later"), 7);
    EXPECT_EQ(integerOf(**database, "PRAGMA user_version"), next + 1);
    const std::string copy = path + ".before-" + std::to_string(next + 1);
    const auto report = verifyLog(copy);
    ASSERT_TRUE(report.has_value()) << report.error().detail;
    EXPECT_TRUE(report->ok) << report->finding->reason;
    EXPECT_EQ(report->rows, integerOf(**database, "SELECT seq FROM chain"));
    EXPECT_FALSE(std::filesystem::exists(copy + ".part"));

    // Now this program's own list ends before the file's version.
    const auto newer = LogReader::open(path);
    ASSERT_FALSE(newer.has_value());
    EXPECT_EQ(newer.error().code, ErrorCode::Foreign);
    EXPECT_NE(newer.error().detail.find("newer program"), std::string::npos);
    EXPECT_EQ(verifyLog(path).error().code, ErrorCode::Foreign);
    const auto writer = LogWriter<Production>::open(path, clock, test::quick());
    ASSERT_FALSE(writer.has_value());
    EXPECT_EQ(writer.error().code, ErrorCode::Foreign);
}

TEST(Migration, AStepThatFailsLeavesTheStepBefore) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    const test::FakeClock clock;
    test::writeSampleLog(path, clock);
    auto steps = migrations();
    const int next = steps.back().version + 1;
    steps.push_back({next, "CREATE TABLE later(x INTEGER) STRICT;"});
    steps.push_back(
        {next + 1, "CREATE TABLE more(x INTEGER) STRICT; INSERT INTO nowhere VALUES(7);"});
    auto database = openForWriting(path, 100);
    ASSERT_TRUE(database.has_value());
    const auto done = migrate(**database, path, steps);
    ASSERT_FALSE(done.has_value());
    EXPECT_EQ(done.error().code, ErrorCode::NotWritten);
    EXPECT_EQ(integerOf(**database, "PRAGMA user_version"), next);
    EXPECT_TRUE(hasTable(**database, "later"));
    EXPECT_FALSE(hasTable(**database, "more"));
}

TEST(NewLog, NeverReplacesAFileThatIsThere) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    const test::FakeClock clock;
    test::writeSampleLog(path, clock);
    const std::string before = test::textOf(path);
    const auto made = makeLog(path, Production::kName, Production::kApplicationId);
    ASSERT_FALSE(made.has_value());
    EXPECT_EQ(made.error().code, ErrorCode::Conflict);
    EXPECT_EQ(test::textOf(path), before);
    EXPECT_FALSE(std::filesystem::exists(path + ".new"));
}

TEST(NewLog, BeginsWithTheGenesisOfItsIdAndWorld) {
    const test::ScratchFolder folder;
    for (const auto& [world, id] : std::vector<std::pair<std::string, std::int32_t>>{
             {"production", Production::kApplicationId}, {"practice", Practice::kApplicationId}}) {
        const std::string path = folder.file(world);
        ASSERT_TRUE(makeLog(path, world, id).has_value());
        SQLite::Database database(path);
        EXPECT_EQ(database.execAndGet("PRAGMA application_id").getInt(), id);
        const std::string logId = database.execAndGet("SELECT log_id FROM chain").getString();
        EXPECT_EQ(
            database.execAndGet("SELECT head FROM chain").getString(),
            sha256Hex("seamclock-log/1\n" + logId + "\n" + world));
        EXPECT_TRUE(verifyLog(path)->ok);
        EXPECT_EQ(verifyLog(path)->covered, "no rows yet");
    }
    EXPECT_NE(Production::kApplicationId, Practice::kApplicationId);
}

} // namespace
} // namespace seamclock
