#include "core/log/schema.h"

#include "core/base/posix.h"
#include "core/base/uuid.h"
#include "core/log/chain.h"
#include "core/log/connection.h"
#include "core/machine/machine.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <system_error>
#include <unistd.h>

namespace seamclock {

namespace {

// The chain is the proof; the triggers guard against our own bugs. The head moves by a trigger too,
// so no row is ever inserted without it.
constexpr const char* kTables = R"(
CREATE TABLE chain(no INTEGER PRIMARY KEY, log_id TEXT UNIQUE NOT NULL, world TEXT NOT NULL, genesis TEXT NOT NULL,
  seq INTEGER NOT NULL, head TEXT NOT NULL) STRICT;
CREATE TABLE event(chain INTEGER NOT NULL REFERENCES chain, seq INTEGER NOT NULL, hash TEXT NOT NULL, body TEXT NOT NULL,
  subject TEXT AS (body->>'$.subject') VIRTUAL, n INTEGER AS (body->>'$.n') VIRTUAL, kind TEXT AS (body->>'$.kind') VIRTUAL,
  PRIMARY KEY(chain, seq)) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX event_once ON event(chain, subject, n);
CREATE TABLE document(sha256 TEXT PRIMARY KEY, kind TEXT NOT NULL, body BLOB NOT NULL) STRICT;

CREATE TRIGGER event_append BEFORE INSERT ON event BEGIN
  SELECT RAISE(ABORT, 'a row is added at the head of its chain only')
    WHERE NEW.seq IS NOT (SELECT seq + 1 FROM chain WHERE no = NEW.chain);
  SELECT RAISE(ABORT, 'a row has the hash of its body after the head')
    WHERE NEW.hash IS NOT seamclock_chain((SELECT head FROM chain WHERE no = NEW.chain), NEW.body);
END;
CREATE TRIGGER event_head AFTER INSERT ON event BEGIN
  UPDATE chain SET seq = NEW.seq, head = NEW.hash WHERE no = NEW.chain;
END;
CREATE TRIGGER event_no_update BEFORE UPDATE ON event BEGIN
  SELECT RAISE(ABORT, 'a row of the log is never changed');
END;
CREATE TRIGGER event_no_delete BEFORE DELETE ON event BEGIN
  SELECT RAISE(ABORT, 'a row of the log is never deleted');
END;
CREATE TRIGGER document_once BEFORE INSERT ON document BEGIN
  SELECT RAISE(ABORT, 'a document of the log is never replaced')
    WHERE EXISTS(SELECT 1 FROM document WHERE sha256 = NEW.sha256);
END;
CREATE TRIGGER document_no_update BEFORE UPDATE ON document BEGIN
  SELECT RAISE(ABORT, 'a document of the log is never changed');
END;
CREATE TRIGGER document_no_delete BEFORE DELETE ON document BEGIN
  SELECT RAISE(ABORT, 'a document of the log is never deleted');
END;
CREATE TRIGGER chain_begin BEFORE INSERT ON chain BEGIN
  SELECT RAISE(ABORT, 'a chain begins once, with its genesis and no rows, in the world of its log')
    WHERE NEW.seq <> 0 OR NEW.head <> NEW.genesis
       OR EXISTS(SELECT 1 FROM chain WHERE no = NEW.no OR log_id = NEW.log_id OR world <> NEW.world);
END;
CREATE TRIGGER chain_step BEFORE UPDATE ON chain BEGIN
  SELECT RAISE(ABORT, 'a head moves by one row, and with it')
    WHERE NEW.no <> OLD.no OR NEW.log_id <> OLD.log_id OR NEW.world <> OLD.world OR NEW.genesis <> OLD.genesis
       OR NEW.seq <> OLD.seq + 1
       OR NOT EXISTS(SELECT 1 FROM event WHERE chain = NEW.no AND seq = NEW.seq AND hash = NEW.head);
END;
CREATE TRIGGER chain_no_delete BEFORE DELETE ON chain BEGIN
  SELECT RAISE(ABORT, 'a chain is never deleted');
END;
)";

// Version 2: the station's signature of each chain's head, renewed in the transaction that moves
// it.
constexpr const char* kHeadSignature = R"(
CREATE TABLE head_signature(chain INTEGER PRIMARY KEY REFERENCES chain, seq INTEGER NOT NULL, public_key TEXT NOT NULL,
  signature TEXT NOT NULL) STRICT;
)";

// The cache: what the events make of each weld. joint_state says up to which row of a chain it is
// complete, and by which rules and kind of lines (kJointLines); a line deleted by whomever makes
// all of it stale, and it is made again.
constexpr const char* kCache = R"(
CREATE TABLE joint(id INTEGER PRIMARY KEY, weld TEXT NOT NULL UNIQUE, number INTEGER NOT NULL, type TEXT NOT NULL,
  opened_ms INTEGER NOT NULL, offset_min INTEGER NOT NULL, day TEXT NOT NULL, bench TEXT NOT NULL, opened_by TEXT NOT NULL,
  seam TEXT NOT NULL, job TEXT NOT NULL, material TEXT NOT NULL, thickness_um INTEGER NOT NULL, length_um INTEGER NOT NULL,
  procedure TEXT NOT NULL, phase TEXT NOT NULL, open INTEGER NOT NULL, verdict TEXT NOT NULL, verdict_now TEXT NOT NULL,
  findings INTEGER NOT NULL, events INTEGER NOT NULL, trouble TEXT NOT NULL) STRICT;
CREATE INDEX joint_number ON joint(number);
CREATE INDEX joint_open ON joint(opened_ms, number, weld) WHERE open = 1;
CREATE INDEX joint_bench ON joint(bench);
CREATE INDEX joint_by ON joint(opened_by);
CREATE INDEX joint_material ON joint(material);
CREATE INDEX joint_seam ON joint(seam);
CREATE INDEX joint_job ON joint(job, seam);
CREATE INDEX joint_day ON joint(day);
CREATE VIRTUAL TABLE joint_text USING fts5(text, prefix='1 2');
CREATE TABLE joint_measure(joint INTEGER PRIMARY KEY, number INTEGER NOT NULL, type TEXT NOT NULL, opened_ms INTEGER NOT NULL,
  day TEXT NOT NULL, bench TEXT NOT NULL, opened_by TEXT NOT NULL, procedure TEXT NOT NULL, thickness_um INTEGER NOT NULL,
  preparation INTEGER, alignment INTEGER, changeover INTEGER, release INTEGER, plate INTEGER, drift INTEGER) STRICT;
CREATE TABLE joint_state(chain INTEGER PRIMARY KEY, seq INTEGER NOT NULL, rules INTEGER NOT NULL, lines INTEGER NOT NULL)
  STRICT;
CREATE TRIGGER joint_gone AFTER DELETE ON joint BEGIN UPDATE joint_state SET seq = 0; END;
CREATE TRIGGER joint_unmeasured AFTER DELETE ON joint_measure BEGIN UPDATE joint_state SET seq = 0; END;
)";

std::string cacheSql() {
    return std::string(kCache) + "CREATE INDEX joint_judged ON joint(" + kJudged + ");";
}

constexpr const char* kNoCache = R"(
DROP TABLE IF EXISTS joint;
DROP TABLE IF EXISTS joint_text;
DROP TABLE IF EXISTS joint_measure;
DROP TABLE IF EXISTS joint_state;
)";

// On any way out but a success nothing may be left behind.
class Unfinished {
public:
    explicit Unfinished(std::string path) : m_path(std::move(path)) {}
    Unfinished(const Unfinished&) = delete;
    Unfinished& operator=(const Unfinished&) = delete;
    ~Unfinished() {
        for (const char* tail : {"", "-wal", "-shm", "-journal"}) {
            std::error_code ignored;
            std::filesystem::remove(m_path + tail, ignored);
        }
    }

private:
    std::string m_path;
};

bool syncPath(const std::string& path, int flags) {
    const int file = ::open(path.c_str(), flags | O_CLOEXEC);
    if (file < 0) {
        return false;
    }
    const bool done = fsync(file) == 0;
    close(file);
    return done;
}

bool syncFolderOf(const std::string& path) {
    return syncPath(std::filesystem::path(path).parent_path().string(), O_RDONLY | O_DIRECTORY);
}

/// A copy as it stands, complete with what is still in the write-ahead log.
void copyAside(SQLite::Database& database, const std::string& copy) {
    const Unfinished begun(copy + ".part");
    std::error_code ignored;
    std::filesystem::remove(copy + ".part", ignored);
    SQLite::Statement into(database, "VACUUM INTO ?");
    into.bind(1, copy + ".part");
    into.exec();
    if (!syncPath(copy + ".part", O_RDONLY)) {
        throw SQLite::Exception("the copy can't be brought to disk");
    }
    std::filesystem::rename(copy + ".part", copy);
    if (!syncFolderOf(copy)) {
        throw SQLite::Exception("the copy's folder can't be brought to disk");
    }
}

/// Of a log that stands there; 0: there is none, or it can't be read.
std::int64_t versionAt(const std::string& path) {
    if (!std::filesystem::exists(path)) {
        return 0;
    }
    try {
        SQLite::Database database(path, SQLite::OPEN_READONLY);
        return integerOf(database, "PRAGMA user_version");
    } catch (const SQLite::Exception&) {
        return 0;
    }
}

} // namespace

const std::vector<Migration>& migrations() {
    static const std::vector<Migration> all = {
        {1, std::string(kTables) + cacheSql()}, {2, kHeadSignature}};
    return all;
}

Result<void>
migrate(SQLite::Database& database, const std::string& path, const std::vector<Migration>& steps) {
    try {
        auto version = integerOf(database, "PRAGMA user_version");
        const int newest = steps.back().version;
        if (version > newest) {
            return fail(
                ErrorCode::Foreign, path + ": was written by a newer program (version " +
                                        std::to_string(version) + ", this program reads 1 to " +
                                        std::to_string(newest) + ")");
        }
        bool copied = version == 0;
        for (const Migration& step : steps) {
            if (step.version <= version) {
                continue;
            }
            if (!copied) {
                const std::string copy = path + ".before-" + std::to_string(newest);
                // One of an older version is from before a step that was cut off after it: it is
                // the copy of the log as it was.
                const std::int64_t there = versionAt(copy);
                if (there == 0 || there >= version) {
                    copyAside(database, copy);
                }
                copied = true;
            }
            SQLite::Transaction whole(database, SQLite::TransactionBehavior::IMMEDIATE);
            database.exec(step.sql);
            database.exec("PRAGMA user_version=" + std::to_string(step.version));
            whole.commit();
            version = step.version;
        }
        return {};
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, path, ErrorCode::NotWritten));
    } catch (const std::exception& thrown) {
        return fail(ErrorCode::NotWritten, path + ": " + thrown.what());
    }
}

Result<void> makeLog(const std::string& path, std::string_view world, std::int32_t applicationId) {
    const std::string begun = path + ".new";
    const Unfinished unfinished(begun);
    try {
        {
            std::error_code ignored;
            std::filesystem::remove(begun, ignored);
            SQLite::Database database(begun, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
            database.exec("PRAGMA application_id=" + std::to_string(applicationId));
            if (auto made = migrate(database, begun, migrations()); !made) {
                return fail(made.error().code, path + ": can't be made; " + made.error().detail);
            }
            const std::string id = newUuid();
            const std::string genesis = genesisHash(id, world);
            SQLite::Statement insert(
                database, "INSERT INTO chain(no, log_id, world, genesis, seq, head) VALUES(1, ?, "
                          "?, ?, 0, ?)");
            insert.bind(1, id);
            insert.bind(2, std::string(world));
            insert.bind(3, genesis);
            insert.bind(4, genesis);
            insert.exec();
        }
        // A file that came meanwhile is not replaced.
        if (!syncPath(begun, O_RDONLY)) {
            return fail(ErrorCode::NotWritten, path + ": can't be brought to disk");
        }
        if (const int why = renameWithoutReplacing(begun, path); why != 0) {
            return fail(
                why == EEXIST ? ErrorCode::Conflict : ErrorCode::NotWritten,
                path + ": can't be made (" + std::strerror(why) + ")");
        }
        if (!syncFolderOf(path)) {
            return fail(ErrorCode::NotWritten, path + ": its folder can't be brought to disk");
        }
        return {};
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, path, ErrorCode::NotWritten));
    }
}

void remakeJointCache(SQLite::Database& database) {
    SQLite::Transaction whole(database, SQLite::TransactionBehavior::IMMEDIATE);
    database.exec(kNoCache);
    database.exec(cacheSql());
    whole.commit();
}

} // namespace seamclock
