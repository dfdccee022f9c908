#include "core/log/log_writer.h"

#include "core/base/posix.h"
#include "core/base/uuid.h"
#include "core/log/body_codec.h"
#include "core/log/chain.h"
#include "core/log/connection.h"
#include "core/log/fact_codec.h"
#include "core/log/joint_cache.h"
#include "core/log/log_lock.h"
#include "core/log/schema.h"
#include "core/log/seal.h"
#include "core/log/spill.h"
#include "core/log/start_check.h"
#include "core/people/credentials.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <cerrno>
#include <condition_variable>
#include <cstring>
#include <deque>
#include <fcntl.h>
#include <filesystem>
#include <iterator>
#include <map>
#include <mutex>
#include <set>
#include <sqlite3.h>
#include <sys/stat.h>
#include <thread>
#include <unistd.h>

namespace seamclock {

namespace {

constexpr std::int64_t kListStep = 100;     // rows between two looks at whether new rows wait
constexpr std::size_t kMostGathered = 2000; // rows of one transaction
constexpr Milliseconds kListPause(20);      // without rows before the list is brought up to date

struct Batch {
    std::vector<LogRow> rows;
    std::vector<LogDocument> documents;
    bool sifted = false;
    bool endsWeld = false; // known once sifted
};

struct Outcome {
    std::int64_t added = 0;
    std::vector<RefusedRow> refused;
    LogHead head;
};

/// A connection with its statements, and one transaction over it.
class Store {
public:
    explicit Store(std::unique_ptr<SQLite::Database> database)
        : m_database(std::move(database)),
          m_head(*m_database, "SELECT seq, head FROM chain WHERE no = 1"),
          m_held(*m_database, "SELECT body FROM event WHERE chain = 1 AND subject = ? AND n = ?"),
          m_add(*m_database, "INSERT INTO event(chain, seq, hash, body) VALUES(1, ?, ?, ?)"),
          m_heldDocument(*m_database, "SELECT 1 FROM document WHERE sha256 = ?"),
          m_addDocument(*m_database, "INSERT INTO document(sha256, kind, body) VALUES(?, ?, ?)"),
          m_sign(
              *m_database, "INSERT INTO head_signature(chain, seq, public_key, signature) "
                           "VALUES(1, ?1, ?2, ?3) ON CONFLICT(chain) DO UPDATE SET seq = ?1, "
                           "public_key = ?2, signature = ?3") {}

    SQLite::Database& database() { return *m_database; }

    /// All or nothing; throws SQLite::Exception. With a key the new head is signed along.
    Outcome write(
        const std::vector<LogRow>& rows, const std::vector<LogDocument>& documents,
        const std::string& logId, const SigningKey* key) {
        Outcome out;
        SQLite::Transaction whole(*m_database, SQLite::TransactionBehavior::IMMEDIATE);
        for (const LogDocument& document : documents) {
            addDocument(document);
        }
        m_head.reset();
        if (!m_head.executeStep()) {
            throw SQLite::Exception("the log has no chain", SQLITE_CORRUPT);
        }
        std::int64_t seq = m_head.getColumn(0).getInt64();
        std::string head = m_head.getColumn(1).getString();
        m_head.reset();
        for (const LogRow& row : rows) {
            m_held.reset();
            m_held.bind(1, row.subject);
            m_held.bind(2, row.n);
            if (m_held.executeStep()) {
                if (m_held.getColumn(0).getString() != row.body) {
                    out.refused.push_back(
                        {row, row.subject + ", n " + std::to_string(row.n) +
                                  ": the log holds another event there"});
                }
                m_held.reset();
                continue;
            }
            m_held.reset();
            head = chainHash(head, row.body);
            m_add.reset();
            m_add.bind(1, ++seq);
            m_add.bind(2, head);
            m_add.bind(3, row.body);
            m_add.exec();
            ++out.added;
        }
        m_add.reset();
        out.head = {seq, head};
        if (key != nullptr && out.added > 0) {
            m_sign.reset();
            m_sign.bind(1, seq);
            m_sign.bind(2, key->publicKey());
            m_sign.bind(3, key->sign(headMessage(logId, out.head)));
            m_sign.exec();
            m_sign.reset();
        }
        whole.commit();
        return out;
    }

private:
    void addDocument(const LogDocument& document) {
        m_heldDocument.reset();
        m_heldDocument.bind(1, document.sha256);
        const bool held = m_heldDocument.executeStep();
        m_heldDocument.reset();
        if (held) {
            return;
        }
        m_addDocument.reset();
        m_addDocument.bind(1, document.sha256);
        m_addDocument.bind(2, document.kind);
        m_addDocument.bind(3, document.bytes.data(), static_cast<int>(document.bytes.size()));
        m_addDocument.exec();
        m_addDocument.reset();
    }

    std::unique_ptr<SQLite::Database> m_database;
    SQLite::Statement m_head;
    SQLite::Statement m_held;
    SQLite::Statement m_add;
    SQLite::Statement m_heldDocument;
    SQLite::Statement m_addDocument;
    SQLite::Statement m_sign;
};

/// What the chain says of who signs its head.
struct StatedKeys {
    bool signs = false; // the head has a signature, so every new one must have
    std::set<std::string> stated;
    bool all = false; // else only those up to the one that signed the head
};

/// The station says as much as there are joints, since it signs at each closing. Its key it states
/// before the first, so unless `all` are asked for the search ends with the key of the head.
StatedKeys statedKeys(SQLite::Database& database, bool all = false) {
    StatedKeys out;
    SQLite::Statement head(database, "SELECT public_key FROM head_signature WHERE chain = 1");
    out.signs = head.executeStep();
    const std::string headKey = out.signs ? head.getColumn(0).getString() : std::string();
    SQLite::Statement query(
        database,
        "SELECT body->>'$.d.public_key' FROM event INDEXED BY event_once WHERE chain = 1 AND "
        "subject = 'station' AND kind = 'key_set' ORDER BY n"); // else every row is read
    while (query.executeStep()) {
        const std::string key = query.getColumn(0).getString();
        out.stated.insert(key);
        if (!all && (!out.signs || key == headKey)) {
            return out;
        }
    }
    out.all = true;
    return out;
}

/// The last n of every subject that is no weld. The index is skipped through, not read.
std::map<std::string, std::int64_t> factNumbers(SQLite::Database& database) {
    std::map<std::string, std::int64_t> out;
    SQLite::Statement next(
        database, "SELECT min(subject) FROM event WHERE chain = 1 AND subject > ?");
    SQLite::Statement last(database, "SELECT max(n) FROM event WHERE chain = 1 AND subject = ?");
    std::string at;
    for (;;) {
        next.reset();
        next.bind(1, at);
        if (!next.executeStep() || next.getColumn(0).isNull()) {
            return out;
        }
        at = next.getColumn(0).getString();
        if (isWeld(at)) {
            at = "weld;"; // the character behind the colon: past all welds
            continue;
        }
        last.reset();
        last.bind(1, at);
        if (last.executeStep()) {
            out[at] = last.getColumn(0).getInt64();
        }
    }
}

/// Damaged if the head row is not the last row's.
Result<void>
checkHead(SQLite::Database& database, const std::string& path, std::string_view world) {
    SQLite::Statement chain(
        database, "SELECT log_id, world, genesis, seq, head FROM chain WHERE no = 1");
    if (!chain.executeStep()) {
        return fail(ErrorCode::Damaged, path + ": the log has no chain");
    }
    const std::string id = chain.getColumn(0).getString();
    if (chain.getColumn(1).getString() != world) {
        return fail(
            ErrorCode::Damaged, path + ": the chain is of the world \"" +
                                    chain.getColumn(1).getString() + "\", expected \"" +
                                    std::string(world) + "\"");
    }
    std::int64_t seq = 0;
    std::string hash = genesisHash(id, world);
    if (chain.getColumn(2).getString() != hash) {
        return fail(ErrorCode::Damaged, path + ": the beginning of the chain was changed");
    }
    SQLite::Statement last(
        database, "SELECT seq, hash FROM event WHERE chain = 1 ORDER BY seq DESC LIMIT 1");
    if (last.executeStep()) {
        seq = last.getColumn(0).getInt64();
        hash = last.getColumn(1).getString();
    }
    if (chain.getColumn(3).getInt64() != seq || chain.getColumn(4).getString() != hash) {
        return fail(
            ErrorCode::Damaged, path + ": its head row says " +
                                    std::to_string(chain.getColumn(3).getInt64()) +
                                    " rows, and the last row is " + std::to_string(seq) +
                                    "; \"log verify\" tells more");
    }
    return {};
}

/// Damaged: the head is not the one that the station signed, though it signs. Without this the next
/// row would be signed over a tail that was forged or cut off while no program ran.
Result<void> checkSigned(
    SQLite::Database& database, const std::string& path, const StatedKeys& keys, bool resign) {
    if (!keys.signs && (keys.stated.empty() || resign)) {
        return {};
    }
    SQLite::Statement query(
        database, "SELECT log_id, chain.seq, head, head_signature.seq, public_key, signature "
                  "FROM chain LEFT JOIN head_signature ON chain = no WHERE no = 1");
    query.executeStep();
    const LogHead head{query.getColumn(1).getInt64(), query.getColumn(2).getString()};
    const std::string key = query.getColumn(4).getString();
    const bool fits =
        !query.getColumn(3).isNull() && query.getColumn(3).getInt64() == head.seq &&
        keys.stated.count(key) > 0 &&
        signatureFits(
            key, headMessage(query.getColumn(0).getString(), head), query.getColumn(5).getString());
    if (!fits) {
        return fail(
            ErrorCode::Damaged, path + ": its head, row " + std::to_string(head.seq) + ", " +
                                    std::string(kNotSigned) + "; \"log verify\" tells more");
    }
    return {};
}

using Key = std::pair<std::string, std::int64_t>;

} // namespace

struct LogWriterBase::Inside {
    std::string path;
    std::string logId;
    std::string world;
    LogOrigin origin = LogOrigin::Known;
    const Clock* clock = nullptr;
    LogWriterOptions options;
    FileHandle lockFile;
    dev_t device = 0;
    ino_t inode = 0;

    // The worker's own.
    std::unique_ptr<Store> store;
    std::optional<SigningKey> key;
    std::optional<LogRow> keyRow; // states the key, unless the chain did before
    StatedKeys stated;
    bool signDue = false;
    Instant signedAt;
    std::unique_ptr<SQLite::Database> list;
    std::optional<SpillFile> spill;
    std::vector<RefusedRow> aside; // not yet in LOG.refused

    // Everybody's, under the mutex. Only the worker takes from the queue.
    mutable std::mutex mutex;
    std::condition_variable wake;
    std::condition_variable finished;
    std::deque<Batch> queue;
    std::vector<Batch> spilled;
    std::map<Key, RowStatus> unsaved;
    std::map<std::string, std::int64_t> factN;
    std::int64_t saved = 0;
    LogHead head;
    std::optional<Trouble> trouble;
    std::vector<RefusedRow> refused;
    std::optional<std::string> listTrouble;
    bool listMore = true;
    bool listWaits = false; // rows came just now, and more may come
    bool stop = false;
    bool tryNow = false;
    std::uint64_t attemptsBegun = 0;
    std::uint64_t attemptsEnded = 0;

    std::thread worker;

    ~Inside();
    void run();
    bool attempt(std::unique_lock<std::mutex>& lock, bool all);
    Result<void> joinSpilled(std::unique_lock<std::mutex>& lock);
    Result<void> writeQueue(std::unique_lock<std::mutex>& lock);
    void spillQueue(std::unique_lock<std::mutex>& lock);
    void sift(Batch& batch);
    void refreshList(std::unique_lock<std::mutex>& lock);
    std::optional<LogRow> tellStationLocked(FactDetail detail);
    void takeKey(std::unique_lock<std::mutex>& lock);
    bool signingHourOver() const;
    void signHead(std::unique_lock<std::mutex>& lock);
    void enqueueLocked(Batch batch);
    void settleLocked(const std::vector<LogRow>& rows);
    void refuseLocked(std::vector<RefusedRow> rows);
    Result<Outcome>
    write(const std::vector<LogRow>& rows, const std::vector<LogDocument>& documents);
    Result<void> connect();
    Result<void> keepAside();
    void tellChanged(std::unique_lock<std::mutex>& lock);
    Result<void> takeLeftover();
    void takeTorn(TornRows torn); // under the mutex
};

LogWriterBase::Inside::~Inside() {
    if (worker.joinable()) {
        {
            const std::lock_guard<std::mutex> lock(mutex);
            stop = true;
        }
        wake.notify_all();
        worker.join();
    }
}

// ---- Handing over

void LogWriterBase::Inside::enqueueLocked(Batch batch) {
    for (const LogRow& row : batch.rows) {
        unsaved[{row.subject, row.n}] = RowStatus::Pending;
        if (!isWeld(row.subject)) {
            auto& last = factN[row.subject];
            last = std::max(last, row.n);
        }
    }
    // The front may be in the writer's hands; what is behind it is not.
    if (options.gather && queue.size() > 1 && queue.back().rows.size() < kMostGathered) {
        Batch& waits = queue.back();
        waits.sifted = false;
        std::move(batch.rows.begin(), batch.rows.end(), std::back_inserter(waits.rows));
        std::move(
            batch.documents.begin(), batch.documents.end(), std::back_inserter(waits.documents));
        return;
    }
    queue.push_back(std::move(batch));
}

std::optional<LogRow> LogWriterBase::Inside::tellStationLocked(FactDetail detail) {
    Fact fact{clock->now(), "station", "station", factN["station"] + 1, std::move(detail)};
    auto body = toBody(fact);
    if (!body) {
        return std::nullopt;
    }
    LogRow row{fact.subject, fact.n, std::move(*body)};
    Batch batch;
    batch.rows.push_back(row);
    batch.sifted = true;
    enqueueLocked(std::move(batch));
    return row;
}

/// The station's key, and the row that states it where the chain does not know it yet. A key that
/// can't be stored holds until the program ends, and the next run states another.
void LogWriterBase::Inside::takeKey(std::unique_lock<std::mutex>& lock) {
    if (key) {
        return;
    }
    lock.unlock();
    Credentials credentials(
        options.credentials.empty() ? path + ".credentials" : options.credentials);
    auto found = credentials.stationKey();
    if (found && !stated.all && stated.stated.count(found->key.publicKey()) == 0) {
        try { // another than the head's; perhaps an older one that is back
            stated.stated = statedKeys(*openForReading(path), true).stated;
            stated.all = true;
        } catch (const SQLite::Exception&) { // it is stated once more, which does no harm
        }
    }
    lock.lock();
    const char* reason = stated.stated.empty() ? "first" : "lost";
    if (!found) {
        reason = "not_stored";
    }
    key = found ? std::move(found->key) : SigningKey::make();
    if (stated.stated.count(key->publicKey()) == 0) {
        keyRow = tellStationLocked(KeySet{key->publicKey(), reason});
    }
}

bool LogWriterBase::Inside::signingHourOver() const {
    const Instant now = clock->now();
    return now.bootId != signedAt.bootId || now.boot - signedAt.boot >= options.signEvery;
}

/// Signs what is on disk now, as a row like any other.
void LogWriterBase::Inside::signHead(std::unique_lock<std::mutex>& lock) {
    takeKey(lock);
    tellStationLocked(
        HeadSigned{head.seq, head.hash, key->publicKey(), key->sign(headMessage(logId, head))});
    signDue = false;
    signedAt = clock->now();
}

void LogWriterBase::Inside::settleLocked(const std::vector<LogRow>& rows) {
    for (const LogRow& row : rows) {
        unsaved.erase({row.subject, row.n});
    }
    saved += static_cast<std::int64_t>(rows.size());
}

void LogWriterBase::Inside::refuseLocked(std::vector<RefusedRow> rows) {
    for (RefusedRow& row : rows) {
        unsaved[{row.row.subject, row.row.n}] = RowStatus::Refused;
        --saved; // settled with its batch
        aside.push_back(row);
        refused.push_back(std::move(row));
    }
}

// ---- The worker

void LogWriterBase::Inside::tellChanged(std::unique_lock<std::mutex>& lock) {
    if (options.changed) {
        lock.unlock();
        options.changed();
        lock.lock();
    }
}

void LogWriterBase::Inside::run() {
    std::unique_lock<std::mutex> lock(mutex);
    Milliseconds pause = options.retryFirst;
    for (;;) {
        const auto called = [&] { return stop || tryNow || !queue.empty(); };
        if (trouble) {
            // Rows that can't even be spilled call at once only when new ones come with them.
            const std::size_t before = trouble->spillFailed ? queue.size() : 0;
            wake.wait_for(lock, pause, [&] { return stop || tryNow || queue.size() > before; });
        } else if (!listMore) {
            wake.wait(lock, called);
        } else if (listWaits) { // its own write would stand in the way of more rows
            wake.wait_for(lock, kListPause, called);
        }
        const bool last = stop;
        const bool all = stop || tryNow;
        tryNow = false;
        ++attemptsBegun;
        const bool done = attempt(lock, all);
        pause = done ? options.retryFirst : std::min(pause * 2, options.retryLongest);
        ++attemptsEnded;
        finished.notify_all();
        if (last) {
            return;
        }
    }
}

/// One try to bring everything to disk; `all`: the list of joints as well. In trouble, rows are
/// made safe first and the log is tried after.
bool LogWriterBase::Inside::attempt(std::unique_lock<std::mutex>& lock, bool all) {
    const bool hadWork = !queue.empty() || !spilled.empty() || trouble;
    if (trouble) {
        spillQueue(lock);
    }
    auto done = joinSpilled(lock);
    if (done) {
        done = writeQueue(lock);
    }
    if (done) {
        lock.unlock();
        done = keepAside();
        lock.lock();
    }
    if (!done) {
        Trouble now = trouble.value_or(Trouble{});
        now.detail = done.error().detail;
        ++now.attempts;
        trouble = std::move(now);
        store.reset(); // opened anew at the next try
        spillQueue(lock);
        tellChanged(lock);
        return false;
    }
    trouble.reset();
    if (hadWork) {
        listMore = true;
        tellChanged(lock);
    }
    listWaits = hadWork && !all;
    if (!listWaits) {
        refreshList(lock);
    }
    return true;
}

Result<void> LogWriterBase::Inside::connect() {
    if (store) {
        struct stat facts {};
        if (stat(path.c_str(), &facts) == 0 && facts.st_dev == device && facts.st_ino == inode) {
            return {};
        }
        store.reset();
        list.reset();
        return fail(
            ErrorCode::NotWritten, path + ": the log was moved or deleted while it was in use");
    }
    auto opened = openForWriting(path, static_cast<int>(options.busyTimeout.count()));
    if (!opened) {
        return tl::unexpected<Error>(std::move(opened.error()));
    }
    auto fresh = std::make_unique<Store>(std::move(*opened));
    if (textOf(fresh->database(), "SELECT log_id FROM chain WHERE no = 1") != logId) {
        return fail(ErrorCode::NotWritten, path + ": another log stands there now");
    }
    struct stat facts {};
    if (stat(path.c_str(), &facts) != 0) {
        return fail(
            ErrorCode::NotWritten, path + ": the log was moved or deleted while it was in use");
    }
    device = facts.st_dev;
    inode = facts.st_ino;
    store = std::move(fresh);
    return {};
}

Result<Outcome> LogWriterBase::Inside::write(
    const std::vector<LogRow>& rows, const std::vector<LogDocument>& documents) {
    try {
        if (auto ready = connect(); !ready) {
            return tl::unexpected<Error>(std::move(ready.error()));
        }
        const auto bring = [&](const std::vector<LogRow>& some,
                               const std::vector<LogDocument>& named) {
            const bool states =
                keyRow && std::find(some.begin(), some.end(), *keyRow) != some.end();
            const bool signs = key && (states || stated.stated.count(key->publicKey()) > 0);
            Outcome out = store->write(some, named, logId, signs ? &*key : nullptr);
            if (states) {
                stated.stated.insert(key->publicKey());
                keyRow.reset();
            }
            const std::lock_guard<std::mutex> lock(mutex);
            head = out.head;
            return out;
        };
        if (keyRow && stated.signs) {
            bring({*keyRow}, {}); // no row may stand behind a signed head without a signature
        }
        Outcome out = bring(rows, documents);
        stated.signs = stated.signs || (key && !keyRow);
        return out;
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, path, ErrorCode::NotWritten));
    } catch (const std::exception& thrown) {
        return fail(ErrorCode::NotWritten, path + ": " + thrown.what());
    }
}

/// Takes out what is no event, so that it can't stand in the way of the others.
void LogWriterBase::Inside::sift(Batch& batch) {
    if (batch.sifted) {
        return;
    }
    // Others may be reading the batch (waiting()), so it is changed under the mutex only.
    std::vector<RefusedRow> bad;
    std::vector<LogRow> good;
    for (const LogRow& row : batch.rows) {
        const auto envelope = readEnvelope(row.body);
        if (!envelope) {
            bad.push_back({row, envelope.error().detail});
        } else if (auto wrong = wrongWorld(*envelope, world)) {
            bad.push_back({row, *wrong});
        } else if (envelope->subject != row.subject || envelope->n != row.n) {
            bad.push_back(
                {row, "an event body of " + envelope->subject + ", n " +
                          std::to_string(envelope->n) + " was handed over as " + row.subject +
                          ", n " + std::to_string(row.n)});
        } else {
            batch.endsWeld = batch.endsWeld || envelope->kind == "weld_closed" ||
                             envelope->kind == "weld_aborted";
            good.push_back(row);
        }
    }
    std::vector<LogDocument> documents;
    for (const LogDocument& document : batch.documents) {
        if (sha256Hex(document.bytes) == document.sha256) {
            documents.push_back(document);
        } else {
            bad.push_back(
                {{"document:" + document.sha256, 0, document.bytes},
                 "a document does not have its SHA-256"});
        }
    }
    batch.sifted = true;
    if (bad.empty()) {
        return;
    }
    const std::lock_guard<std::mutex> lock(mutex);
    batch.rows = std::move(good);
    batch.documents = std::move(documents);
    saved += static_cast<std::int64_t>(bad.size()); // refuseLocked takes it off again
    refuseLocked(std::move(bad));
}

Result<void> LogWriterBase::Inside::writeQueue(std::unique_lock<std::mutex>& lock) {
    while (!queue.empty()) {
        Batch& batch = queue.front(); // stays where it is while others are added behind it
        lock.unlock();
        sift(batch);
        auto outcome = write(batch.rows, batch.documents);
        lock.lock();
        if (!outcome) {
            return tl::unexpected<Error>(std::move(outcome.error()));
        }
        settleLocked(batch.rows);
        refuseLocked(std::move(outcome->refused));
        signDue = signDue || batch.endsWeld;
        const bool rowsCame = outcome->added > 0;
        queue.pop_front();
        if ((options.sign || stated.signs) && (signDue || (rowsCame && signingHourOver()))) {
            signHead(lock);
        }
        finished.notify_all();
        if (!queue.empty()) {
            tellChanged(lock);
        }
    }
    return {};
}

/// All spilled rows in one transaction, in the order of (subject, n); then the spill file is zeros
/// again. A crash in between does no harm: rows that the log holds are not written twice.
Result<void> LogWriterBase::Inside::joinSpilled(std::unique_lock<std::mutex>& lock) {
    std::vector<LogRow> rows;
    std::vector<LogDocument> documents;
    for (const Batch& batch : spilled) {
        rows.insert(rows.end(), batch.rows.begin(), batch.rows.end());
        documents.insert(documents.end(), batch.documents.begin(), batch.documents.end());
    }
    lock.unlock();
    std::stable_sort(rows.begin(), rows.end(), [](const LogRow& a, const LogRow& b) {
        return std::tie(a.subject, a.n) < std::tie(b.subject, b.n);
    });
    Result<Outcome> outcome = Outcome{};
    if (!rows.empty() || !documents.empty()) {
        outcome = write(rows, documents);
    }
    lock.lock();
    if (!outcome) {
        return tl::unexpected<Error>(std::move(outcome.error()));
    }
    if (!spilled.empty()) {
        spilled.clear();
        settleLocked(rows);
        refuseLocked(std::move(outcome->refused));
        if (outcome->added > 0) {
            tellStationLocked(RowsJoined{outcome->added});
            signDue = true;
        }
    }
    lock.unlock();
    Result<void> kept = keepAside();
    if (kept && spill) {
        // If this fails the rows stay there as well, and it is tried again each time.
        static_cast<void>(spill->clear());
    }
    lock.lock();
    return kept;
}

void LogWriterBase::Inside::spillQueue(std::unique_lock<std::mutex>& lock) {
    std::int64_t count = 0;
    bool failed = false;
    const auto spillFront = [&] {
        Batch& batch = queue.front();
        lock.unlock();
        sift(batch);
        const auto done = spill->append(batch.rows, batch.documents);
        lock.lock();
        if (!done) {
            failed = true;
            return;
        }
        for (const LogRow& row : batch.rows) {
            unsaved[{row.subject, row.n}] = RowStatus::Spilled;
        }
        count += static_cast<std::int64_t>(batch.rows.size());
        spilled.push_back(std::move(batch));
        queue.pop_front();
    };
    while (!queue.empty() && !failed) {
        spillFront();
    }
    if (count > 0) {
        tellStationLocked(RowsSpilled{count});
        if (!failed && queue.size() == 1) {
            spillFront();
        }
    }
    if (trouble) {
        trouble->spillFailed = failed;
    }
}

/// Appends to LOG.refused what this log will never hold, with the reason; a person must look at it.
Result<void> LogWriterBase::Inside::keepAside() {
    if (aside.empty()) {
        return {};
    }
    std::string bytes;
    for (const RefusedRow& row : aside) {
        bytes +=
            "reason: " + row.reason + "\n" + sha256Hex(row.row.body) + " " + row.row.body + "\n";
    }
    const std::string name = path + ".refused";
    const std::string place = std::filesystem::path(path).parent_path().string();
    const FileHandle file(::open(name.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0644));
    // Its name is only there for good once the folder was synced too.
    const FileHandle folder(::open(place.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (file.get() < 0 || folder.get() < 0 ||
        ::write(file.get(), bytes.data(), bytes.size()) != static_cast<ssize_t>(bytes.size()) ||
        fsync(file.get()) != 0 || fsync(folder.get()) != 0) {
        return fail(
            ErrorCode::NotWritten, name + ": can't be written (" + std::strerror(errno) + ")");
    }
    aside.clear();
    return {};
}

void LogWriterBase::Inside::refreshList(std::unique_lock<std::mutex>& lock) {
    if (!listMore) {
        return;
    }
    lock.unlock();
    bool more = false;
    std::optional<std::string> failed;
    for (int tries = 0; tries < 2; ++tries) {
        failed.reset();
        try {
            if (!list) {
                // Durable as the rows are: with a transaction that is not, a power cut could leave
                // a hole before rows, and that is what damage looks like (start_check.h).
                auto opened = openForWriting(path, static_cast<int>(options.busyTimeout.count()));
                if (!opened) {
                    failed = opened.error().detail;
                    break;
                }
                list = std::move(*opened);
                if (hasJointCache(*list)) {
                    addMissingIndexes(*list);
                }
            }
            if (tries > 0 || !hasJointCache(*list)) {
                remakeJointCache(*list);
            }
            more = refreshJointCache(*list, kListStep);
            break;
        } catch (const SQLite::Exception& thrown) {
            failed = errorOf(thrown, path, ErrorCode::NotWritten).detail;
            const int code = thrown.getErrorCode();
            if (code == SQLITE_BUSY || code == SQLITE_FULL || code == SQLITE_IOERR ||
                code == SQLITE_READONLY) {
                break;
            }
        } catch (const std::exception& thrown) {
            failed = path + ": " + thrown.what();
        }
    }
    if (failed) {
        list.reset();
    }
    lock.lock();
    listMore = more;
    const bool news = failed != listTrouble;
    listTrouble = std::move(failed);
    if (news) {
        tellChanged(lock);
    }
}

/// What the last run could not bring into the chain.
Result<void> LogWriterBase::Inside::takeLeftover() {
    const SpillContent& found = spill->found();
    for (const std::string& line : found.damaged) {
        aside.push_back({{"", 0, line}, "a damaged line of the spill file"});
        refused.push_back(aside.back());
    }
    if (!found.rows.empty() || !found.documents.empty()) {
        for (const LogRow& row : found.rows) {
            unsaved[{row.subject, row.n}] = RowStatus::Spilled;
            if (!isWeld(row.subject)) {
                auto& last = factN[row.subject];
                last = std::max(last, row.n);
            }
        }
        Batch batch;
        batch.rows = found.rows;
        batch.documents = found.documents;
        batch.sifted = true;
        spilled.push_back(std::move(batch));
    }
    return {};
}

/// What a power cut tore from the write-ahead log is written again before all else, or spilled.
void LogWriterBase::Inside::takeTorn(TornRows torn) {
    // Never reported as saved: kept for whoever wants to look, but nothing to alarm a person with.
    for (LogRow& row : torn.doubtful) {
        aside.push_back(
            {std::move(row), "from the torn end of the write-ahead log; its hash is "
                             "not that of its body"});
    }
    if (!torn.rows.empty()) {
        Batch batch;
        batch.rows = std::move(torn.rows);
        batch.documents = std::move(torn.documents);
        enqueueLocked(std::move(batch));
    }
}

// ---- The outside

Result<LogWriterBase> LogWriterBase::openBase(
    const std::string& path, std::string_view world, std::int32_t applicationId, const Clock& clock,
    LogWriterOptions options) {
    auto inside = std::make_unique<Inside>();
    inside->path = absolutePath(path);
    inside->world = world;
    inside->clock = &clock;
    inside->options = std::move(options);
    const std::string& place = inside->path;
    const auto refuse = [](Error error) { return tl::unexpected<Error>(std::move(error)); };

    std::error_code unknown;
    const auto folder = std::filesystem::path(place).parent_path();
    if (!std::filesystem::is_directory(folder, unknown)) {
        return fail(
            ErrorCode::NotWritten, path + ": the folder " + folder.string() + " is not there");
    }
    const auto inspect = [&]() -> Result<bool> {
        struct stat facts {};
        if (stat(place.c_str(), &facts) != 0 && errno == ENOENT) {
            return false;
        }
        const auto file = inspectLogFile(place);
        if (!file) {
            return tl::unexpected<Error>(file.error());
        }
        if (file->world != world) {
            return fail(
                ErrorCode::Foreign,
                path + ": is a " + file->world + " log, expected a " + std::string(world) + " log");
        }
        return true;
    };
    if (auto known = inspect(); !known) {
        return refuse(std::move(known.error()));
    }
    if (auto local = refuseNetwork(folder.string()); !local) {
        return refuse(std::move(local.error()));
    }
    auto locked = lockFor(place);
    if (!locked) {
        return refuse(std::move(locked.error()));
    }
    inside->lockFile = std::move(*locked);
    const auto known = inspect(); // again, as nobody but us makes it from here on
    if (!known) {
        return refuse(known.error());
    }
    inside->origin = *known ? LogOrigin::Known : LogOrigin::New;
    std::error_code noWal;
    if (!*known && std::filesystem::file_size(place + "-wal", noWal) > 0 && !noWal) {
        return fail(
            ErrorCode::Damaged,
            path + ": is gone, and its write-ahead log stands there without it");
    }
    const auto tail = readWalTail(place); // before SQLite reads it and passes over its end
    TornRows torn;
    if (!*known) {
        if (auto made = makeLog(place, world, applicationId); !made) {
            return refuse(std::move(made.error()));
        }
    }
    try {
        auto opened = openForWriting(place, static_cast<int>(inside->options.busyTimeout.count()));
        if (!opened) {
            return refuse(std::move(opened.error()));
        }
        SQLite::Database& database = **opened;
        keepWalAtClose(database, true); // a damaged log is left as it is
        std::error_code unsized;
        const bool doubtful = isDoubtful(place);
        const bool asked =
            inside->options.quickCheck &&
            (doubtful || static_cast<std::int64_t>(std::filesystem::file_size(place, unsized)) <=
                             inside->options.quickCheckUpTo);
        if (asked && textOf(database, "PRAGMA quick_check(1)") != "ok") {
            return fail(
                ErrorCode::Damaged, path + ": its structure is damaged (" +
                                        textOf(database, "PRAGMA quick_check(1)") + ")");
        }
        if (asked && doubtful) {
            forgetDoubt(place);
        }
        if (auto migrated = migrate(database, place, migrations()); !migrated) {
            return refuse(std::move(migrated.error()));
        }
        if (auto sound = checkHead(database, path, world); !sound) {
            return refuse(std::move(sound.error()));
        }
        if (tail) {
            auto found = tornRowsOf(database, path, *tail);
            if (!found) {
                return refuse(std::move(found.error()));
            }
            torn = std::move(*found);
        }
        if (auto sound = checkOpenWelds(database, path); !sound) {
            return refuse(std::move(sound.error()));
        }
        inside->logId = textOf(database, "SELECT log_id FROM chain WHERE no = 1");
        inside->factN = factNumbers(database);
        inside->stated = statedKeys(database);
        if (auto fits = checkSigned(database, path, inside->stated, inside->options.resign);
            !fits) {
            return refuse(std::move(fits.error()));
        }
        inside->stated.signs = inside->stated.signs || !inside->stated.stated.empty();
        inside->head = {
            integerOf(database, "SELECT seq FROM chain WHERE no = 1"),
            textOf(database, "SELECT head FROM chain WHERE no = 1")};
        inside->signedAt = clock.now();
        keepWalAtClose(database, false);
    } catch (const SQLite::Exception& thrown) {
        // Our own words are right SQL; what they meet in the file is not what was written.
        const bool damaged = thrown.getErrorCode() == SQLITE_ERROR;
        return refuse(errorOf(thrown, path, damaged ? ErrorCode::Damaged : ErrorCode::NotWritten));
    }
    auto spill = SpillFile::open(place + ".spill", inside->logId, inside->options.spillBytes);
    if (!spill) {
        return refuse(std::move(spill.error()));
    }
    inside->spill = std::move(*spill);
    if (auto taken = inside->takeLeftover(); !taken) {
        return refuse(std::move(taken.error()));
    }
    {
        std::unique_lock<std::mutex> lock(inside->mutex);
        inside->takeTorn(std::move(torn));
        if (inside->stated.signs) {
            inside->takeKey(lock);
            if (inside->options.resign) {
                inside->signHead(lock);
            }
        }
        auto quiet = std::exchange(inside->options.changed, nullptr);
        inside->attempt(lock, true);
        inside->options.changed = std::move(quiet);
    }
    Inside* self = inside.get();
    inside->worker = std::thread([self] { self->run(); });
    return LogWriterBase(std::move(inside));
}

LogWriterBase::LogWriterBase(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
LogWriterBase::LogWriterBase(LogWriterBase&&) noexcept = default;
LogWriterBase& LogWriterBase::operator=(LogWriterBase&&) noexcept = default;
LogWriterBase::~LogWriterBase() = default;

LogOrigin LogWriterBase::origin() const {
    return m_inside->origin;
}

const std::string& LogWriterBase::path() const {
    return m_inside->path;
}

const std::string& LogWriterBase::logId() const {
    return m_inside->logId;
}

void LogWriterBase::submit(std::vector<LogRow> rows, std::vector<LogDocument> documents) {
    if (rows.empty() && documents.empty()) {
        return;
    }
    Batch batch;
    batch.rows = std::move(rows);
    batch.documents = std::move(documents);
    {
        const std::lock_guard<std::mutex> lock(m_inside->mutex);
        m_inside->enqueueLocked(std::move(batch));
    }
    m_inside->wake.notify_all();
}

Result<Fact> LogWriterBase::note(
    const Instant& at, std::string by, std::string subject, FactDetail detail,
    std::vector<LogDocument> documents) {
    Fact fact{at, std::move(by), std::move(subject), 0, std::move(detail)};
    if (!fits(kindOf(fact.d), fact.subject) || isWeld(fact.subject)) {
        return fail(
            ErrorCode::Malformed, "a fact of kind \"" + std::string(kindOf(fact.d)) +
                                      "\" can't have the subject \"" + fact.subject + "\"");
    }
    if (std::holds_alternative<PracticeMade>(fact.d) && m_inside->world != Practice::kName) {
        return fail(
            ErrorCode::Refused,
            "what was made at the practice bench can't be kept in a log of " + m_inside->world);
    }
    {
        const std::lock_guard<std::mutex> lock(m_inside->mutex);
        const auto last = m_inside->factN.find(fact.subject);
        fact.n = last == m_inside->factN.end() ? 1 : last->second + 1;
        auto body = toBody(fact);
        if (!body) {
            return tl::unexpected<Error>(std::move(body.error()));
        }
        Batch batch;
        batch.rows.push_back({fact.subject, fact.n, std::move(*body)});
        batch.documents = std::move(documents);
        m_inside->enqueueLocked(std::move(batch));
    }
    m_inside->wake.notify_all();
    return fact;
}

RowStatus LogWriterBase::status(const std::string& subject, std::int64_t n) const {
    const std::lock_guard<std::mutex> lock(m_inside->mutex);
    const auto found = m_inside->unsaved.find({subject, n});
    return found == m_inside->unsaved.end() ? RowStatus::Saved : found->second;
}

WriterState LogWriterBase::state() const {
    const std::lock_guard<std::mutex> lock(m_inside->mutex);
    WriterState out;
    for (const auto& [key, status] : m_inside->unsaved) {
        out.pending += status == RowStatus::Pending ? 1 : 0;
        out.spilled += status == RowStatus::Spilled ? 1 : 0;
    }
    out.saved = m_inside->saved;
    out.trouble = m_inside->trouble;
    out.refused = m_inside->refused;
    out.listTrouble = m_inside->listTrouble;
    return out;
}

std::vector<LogRow> LogWriterBase::waiting() const {
    const std::lock_guard<std::mutex> lock(m_inside->mutex);
    std::vector<LogRow> out;
    for (const Batch& batch : m_inside->spilled) {
        out.insert(out.end(), batch.rows.begin(), batch.rows.end());
    }
    for (const Batch& batch : m_inside->queue) {
        out.insert(out.end(), batch.rows.begin(), batch.rows.end());
    }
    return out;
}

LogHead LogWriterBase::head() const {
    const std::lock_guard<std::mutex> lock(m_inside->mutex);
    return m_inside->head;
}

Result<void> LogWriterBase::flush() {
    std::unique_lock<std::mutex> lock(m_inside->mutex);
    // An attempt that has begun already may have passed the newest rows by.
    const std::uint64_t enough = m_inside->attemptsBegun + 1;
    m_inside->tryNow = true;
    m_inside->wake.notify_all();
    m_inside->finished.wait(lock, [&] { return m_inside->attemptsEnded >= enough; });
    if (!m_inside->trouble) {
        return {};
    }
    const Trouble trouble = *m_inside->trouble;
    lock.unlock();
    const WriterState now = state();
    return fail(
        ErrorCode::NotWritten, std::to_string(now.spilled) + " rows stand in the spill file and " +
                                   std::to_string(now.pending) +
                                   " in memory only: " + trouble.detail);
}

} // namespace seamclock
