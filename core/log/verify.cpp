#include "core/log/verify.h"

#include "core/base/uuid.h"
#include "core/log/body_codec.h"
#include "core/log/chain.h"
#include "core/log/connection.h"
#include "core/log/fact_codec.h"
#include "core/log/joint_cache.h"
#include "core/log/roster.h"
#include "core/log/schema.h"
#include "core/log/seal.h"
#include "core/people/signing.h"
#include "core/weld/event_codec.h"
#include "core/weld/record.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <map>
#include <sqlite3.h>
#include <unordered_set>
#include <utility>

namespace seamclock {

namespace {

std::string rowName(std::int64_t seq) {
    return "row " + std::to_string(seq);
}

struct Chain {
    std::int64_t no = 0;
    std::string logId;
    std::string world;
    std::string genesis;
    std::int64_t seq = 0;
    std::string head;
};

/// Who may sign, by the rows of one chain so far.
struct Signers {
    std::unordered_set<std::string> station; // every key that it stated
    Roster roster;
};

/// One row of a subject, for its fold.
struct Numbered {
    std::int64_t seq = 0;
    std::int64_t n = 0;
    std::string body;
};

class Verifier {
public:
    Verifier(SQLite::Database& database, const LogFile& file) : m_database(database), m_file(file) {
        m_report.world = file.world;
    }

    VerifyReport run() {
        try {
            const SQLite::Transaction moment(m_database);
            m_version = static_cast<int>(integerOf(m_database, "PRAGMA user_version"));
            const bool ok =
                structure() && chains() && index() && schema() && documents() && folds() && cache();
            m_report.ok = ok;
        } catch (const SQLite::Exception& thrown) {
            const int code = thrown.getErrorCode();
            if (code != SQLITE_CORRUPT && code != SQLITE_NOTADB && code != SQLITE_ERROR) {
                throw; // not to be read at all
            }
            find(
                m_chain, m_seq,
                "from here on the file's structure is damaged (" + std::string(thrown.what()) +
                    ")");
        }
        return std::move(m_report);
    }

private:
    bool find(std::int64_t chain, std::int64_t seq, std::string reason) {
        m_report.ok = false;
        m_report.finding = VerifyFinding{chain, seq, std::move(reason)};
        return false;
    }

    bool structure() {
        for (const char* table : {"chain", "event", "document"}) {
            if (!hasTable(m_database, table)) {
                return find(0, 0, std::string("the table \"") + table + "\" is gone");
            }
        }
        return true;
    }

    bool chains() {
        SQLite::Statement query(
            m_database, "SELECT no, log_id, world, genesis, seq, head FROM chain ORDER BY no");
        std::vector<Chain> all;
        while (query.executeStep()) {
            all.push_back(
                {query.getColumn(0).getInt64(), query.getColumn(1).getString(),
                 query.getColumn(2).getString(), query.getColumn(3).getString(),
                 query.getColumn(4).getInt64(), query.getColumn(5).getString()});
        }
        if (all.empty() || all.front().no != 1) {
            return find(1, 0, "the head row of this log's own chain is gone");
        }
        m_report.logId = all.front().logId;
        m_report.rows = all.front().seq;
        m_report.head = all.front().head;
        std::int64_t counted = 0;
        for (const Chain& chain : all) {
            if (!follow(chain)) {
                return false;
            }
            counted += chain.seq;
        }
        if (integerOf(m_database, "SELECT count(*) FROM event") != counted) {
            return find(0, 0, "there are rows that belong to no chain");
        }
        m_report.covered = coverage();
        m_severalChains = all.size() > 1;
        return imports(all);
    }

    /// What the own chain says of imported logs is what is here: so an imported chain can't lose
    /// its end with its head row and signature, as long as the own chain is sound.
    bool imports(const std::vector<Chain>& all) {
        for (const auto& [row, told] : m_imports) {
            const auto chain = std::find_if(
                all.begin(), all.end(), [&](const Chain& one) { return one.logId == told.log; });
            if (chain == all.end()) {
                return find(
                    1, row,
                    rowName(row) + ": it tells of the import of the log " + told.log +
                        ", which is not here");
            }
            const std::string said = rowName(row) + " of this log says that the log " + told.log +
                                     " was imported up to row " + std::to_string(told.toSeq);
            if (told.toSeq > chain->seq) {
                return find(
                    chain->no, chain->seq + 1,
                    rowName(chain->seq + 1) + " is missing at the end: " + said);
            }
            SQLite::Statement query(
                m_database, "SELECT hash FROM event WHERE chain = ? AND seq = ?");
            query.bind(1, chain->no);
            query.bind(2, told.toSeq);
            if (!query.executeStep() || query.getColumn(0).getString() != told.head) {
                return find(
                    chain->no, told.toSeq,
                    rowName(told.toSeq) + ": it has another hash than when it came; " + said);
            }
        }
        return true;
    }

    static std::string rowsText(std::int64_t from, std::int64_t to) {
        return from == to ? rowName(from)
                          : "rows " + std::to_string(from) + ".." + std::to_string(to);
    }

    std::string coverage() const {
        const std::int64_t rows = m_report.rows;
        if (rows == 0) {
            return "no rows yet";
        }
        if (m_report.signedTo == 0) {
            return "no signature: " + rowsText(1, rows) + (rows == 1 ? " is" : " are") +
                   " covered by the head row only";
        }
        std::string out;
        const auto say = [&](std::int64_t from, std::int64_t to, const std::string& by) {
            if (from <= to) {
                out += (out.empty() ? "" : "; ") + rowsText(from, to) +
                       (from == to ? " is" : " are") + " covered by " + by;
            }
        };
        const auto last = std::max_element(
            m_report.seals.begin(), m_report.seals.end(),
            [](const FoundSeal& a, const FoundSeal& b) { return a.toSeq < b.toSeq; });
        if (last != m_report.seals.end()) {
            say(1, last->toSeq, "the seal of " + last->name + ", " + last->day);
        }
        say(m_report.sealedTo + 1, m_report.signedTo, "the station's signature");
        say(std::max(m_report.sealedTo, m_report.signedTo) + 1, rows, "the head row only");
        return out;
    }

    bool follow(const Chain& chain) {
        m_chain = chain.no;
        m_seq = 0;
        if (chain.world != m_file.world) {
            return find(
                chain.no, 0,
                "the chain is of the world \"" + chain.world + "\", and the file of \"" +
                    m_file.world + "\"");
        }
        if (chain.genesis != genesisHash(chain.logId, chain.world)) {
            return find(chain.no, 0, "the genesis is not that of the log id and world");
        }
        SQLite::Statement rows(
            m_database, "SELECT seq, hash, body, typeof(seq) = 'integer' AND typeof(hash) = 'text' "
                        "AND typeof(body) = 'text' FROM event WHERE chain = ? ORDER BY seq");
        rows.bind(1, chain.no);
        std::string previous = chain.genesis;
        std::int64_t last = 0;
        m_seq = 1;
        m_signers = {};
        while (rows.executeStep()) {
            const std::int64_t seq = rows.getColumn(0).getInt64();
            const auto bad = [&](const std::string& reason) {
                return find(chain.no, seq, rowName(seq) + ": " + reason);
            };
            if (rows.getColumn(3).getInt() == 0) {
                return bad("its columns are not of the types that were written");
            }
            if (seq < 1) {
                return bad("was added; rows count from 1");
            }
            if (seq > chain.seq) {
                return bad(
                    "stands behind the head row, which says " + std::to_string(chain.seq) +
                    " rows");
            }
            if (seq != last + 1) {
                return find(
                    chain.no, last + 1,
                    rowName(last + 1) + " is missing: after row " + std::to_string(last) +
                        " comes row " + std::to_string(seq));
            }
            const std::string hash = rows.getColumn(1).getString();
            const std::string body = rows.getColumn(2).getString();
            if (chainHash(previous, body) != hash) {
                return bad(
                    "its hash does not follow from " +
                    (last == 0 ? std::string("the genesis") : rowName(last)) +
                    " and its own body: one of the two was changed, or they were not neighbours");
            }
            if (auto wrong = formOf(body, seq, chain)) {
                return bad(*wrong);
            }
            previous = hash;
            last = seq;
            m_seq = seq + 1;
        }
        if (last < chain.seq) {
            return find(
                chain.no, last + 1,
                (last + 1 == chain.seq ? rowName(chain.seq) + " is"
                                       : "rows " + std::to_string(last + 1) + ".." +
                                             std::to_string(chain.seq) + " are") +
                    " missing at the end: the head row says " + std::to_string(chain.seq) +
                    " rows");
        }
        if (previous != chain.head) {
            return find(
                chain.no, last,
                rowName(last) + ": the head row has another hash than this, the last row; one of "
                                "the two was changed");
        }
        return headSignature(chain);
    }

    /// The signature beside the chain is of the head as it is, by a key that the station stated.
    bool headSignature(const Chain& chain) {
        if (!hasTable(m_database, "head_signature")) {
            return m_signers.station.empty() ||
                   find(chain.no, 0, "the signature of the head is gone");
        }
        SQLite::Statement query(
            m_database, "SELECT seq, public_key, signature FROM head_signature WHERE chain = ?");
        query.bind(1, chain.no);
        if (!query.executeStep()) {
            return m_signers.station.empty() ||
                   find(chain.no, 0, "the signature of the head is gone");
        }
        const std::int64_t seq = query.getColumn(0).getInt64();
        const std::string key = query.getColumn(1).getString();
        const std::string signature = query.getColumn(2).getString();
        const std::string said = "the head was signed at row " + std::to_string(seq);
        if (seq < chain.seq && seq >= 0) {
            return find(
                chain.no, seq + 1,
                rowName(seq + 1) + ": was added behind the program's back: " + said);
        }
        if (seq > chain.seq) {
            return find(
                chain.no, chain.seq + 1,
                rowName(chain.seq + 1) + " is missing at the end: " + said);
        }
        if (m_signers.station.count(key) == 0) {
            return find(
                chain.no, seq,
                rowName(seq) + ": the head is signed with a key that the station never stated");
        }
        if (!signatureFits(key, headMessage(chain.logId, {seq, chain.head}), signature)) {
            return find(
                chain.no, seq,
                rowName(seq) + ": the signature of the head is not that of this row's hash");
        }
        if (chain.no == 1) {
            m_report.signedTo = seq;
        }
        return true;
    }

    /// What is wrong with a signature over a row before this one.
    std::optional<std::string> signatureOf(
        const Chain& chain, std::int64_t seq, const LogHead& head, const std::string& key,
        const std::string& message, const std::string& signature) {
        if (head.seq < 1 || head.seq >= seq) {
            return "it signs row " + std::to_string(head.seq) + ", which doesn't stand before it";
        }
        SQLite::Statement query(m_database, "SELECT hash FROM event WHERE chain = ? AND seq = ?");
        query.bind(1, chain.no);
        query.bind(2, head.seq);
        if (!query.executeStep() || query.getColumn(0).getString() != head.hash) {
            return "it signs another hash than that of row " + std::to_string(head.seq);
        }
        if (!signatureFits(key, message, signature)) {
            return "its signature is not one of the key that it names";
        }
        return std::nullopt;
    }

    /// Keeps count of who may sign, and judges what was signed.
    std::optional<std::string> signedFact(const Fact& fact, std::int64_t seq, const Chain& chain) {
        if (const auto taken = take(m_signers.roster, fact); !taken) {
            return taken.error().detail;
        }
        if (const auto* set = std::get_if<KeySet>(&fact.d); set && fact.subject == "station") {
            if (!m_signers.station.empty() && chain.no == 1) {
                m_report.notes.push_back(
                    rowName(seq) + ": from here on the station signs with another key (" +
                    set->reason + "), fingerprint " + fingerprint(set->publicKey));
            }
            m_signers.station.insert(set->publicKey);
        } else if (const auto* head = std::get_if<HeadSigned>(&fact.d)) {
            if (m_signers.station.count(head->publicKey) == 0) {
                return "it is signed with a key that the station never stated before";
            }
            if (auto wrong = signatureOf(
                    chain, seq, {head->toSeq, head->head}, head->publicKey,
                    headMessage(chain.logId, {head->toSeq, head->head}), head->signature)) {
                return wrong;
            }
            if (chain.no == 1) {
                m_report.signedTo = std::max(m_report.signedTo, head->toSeq);
            }
        } else if (const auto* told = std::get_if<LogImported>(&fact.d); told && chain.no == 1) {
            m_imports.emplace_back(seq, *told);
        } else if (const auto* seal = std::get_if<DaySealed>(&fact.d)) {
            return sealOf(fact, *seal, seq, chain);
        }
        return std::nullopt;
    }

    std::optional<std::string>
    sealOf(const Fact& fact, const DaySealed& seal, std::int64_t seq, const Chain& chain) {
        const std::string day = fact.subject.substr(std::string_view("day:").size());
        const Person* foreman = findPerson(m_signers.roster.people, fact.by);
        if (foreman == nullptr || foreman->role != Role::Foreman || !foreman->active) {
            return "it is the seal of " + fact.by + ", who was no foreman then";
        }
        const auto key = m_signers.roster.key.find(fact.by);
        if (key == m_signers.roster.key.end() || key->second != seal.publicKey) {
            return "it is sealed with a key that was not " + foreman->name + "'s then";
        }
        if (seal.log != chain.logId) {
            return "it is the seal of the log " + seal.log;
        }
        const LogHead head{seal.toSeq, seal.head};
        if (auto wrong = signatureOf(
                chain, seq, head, seal.publicKey, sealMessage(seal.log, day, fact.by, head),
                seal.signature)) {
            return wrong;
        }
        if (chain.no == 1) {
            m_report.seals.push_back(
                {seq, day, fact.by, foreman->name, seal.toSeq, sealFingerprint(fact),
                 fingerprint(seal.publicKey)});
            m_report.sealedTo = std::max(m_report.sealedTo, seal.toSeq);
            m_report.signedTo = std::max(m_report.signedTo, seal.toSeq);
        }
        return std::nullopt;
    }

    /// What is wrong with a body by itself; remembers the documents it names.
    std::optional<std::string>
    formOf(const std::string& body, std::int64_t seq, const Chain& chain) {
        const auto envelope = readEnvelope(body);
        if (!envelope) {
            return envelope.error().detail;
        }
        if (isFactWithForm(envelope->kind) && !isWeld(envelope->subject)) {
            const auto fact = factFromBody(body);
            if (!fact) {
                return fact.error().detail;
            }
            if (auto wrong = signedFact(*fact, seq, chain)) {
                return wrong;
            }
        }
        for (const std::string& document : envelope->documents) {
            m_named.emplace(document, seq);
        }
        return std::nullopt;
    }

    /// The file's own structure, the index over (subject, n) included.
    bool index() {
        m_seq = 0;
        const std::string said = textOf(m_database, "PRAGMA integrity_check(1)");
        return said == "ok" || find(0, 0, "the file's structure is damaged: " + said);
    }

    bool documents() {
        SQLite::Statement query(
            m_database, "SELECT sha256, body, typeof(body) = 'blob' FROM document ORDER BY sha256");
        while (query.executeStep()) {
            const std::string name = query.getColumn(0).getString();
            if (query.getColumn(2).getInt() == 0 ||
                sha256Hex(query.getColumn(1).getString()) != name) {
                const auto named = m_named.find(name);
                return find(
                    1, named == m_named.end() ? 0 : named->second,
                    "the document " + name + " was changed" +
                        (named == m_named.end()
                             ? ""
                             : "; row " + std::to_string(named->second) + " names it"));
            }
            ++m_report.documents;
            m_named.erase(name);
        }
        const auto first =
            std::min_element(m_named.begin(), m_named.end(), [](const auto& a, const auto& b) {
                return a.second < b.second;
            });
        if (first != m_named.end()) {
            return find(
                1, first->second,
                rowName(first->second) + ": it names the document " + first->first +
                    ", which is not here");
        }
        return true;
    }

    bool folds() {
        m_cacheHere = hasJointCache(m_database);
        for (std::string& weld : staleWelds(m_database)) {
            m_stale.insert(std::move(weld));
        }
        SQLite::Statement chainList(m_database, "SELECT no FROM chain ORDER BY no");
        while (chainList.executeStep()) {
            const std::int64_t chain = chainList.getColumn(0).getInt64();
            SQLite::Statement query(
                m_database,
                "SELECT subject, n, seq, body FROM event WHERE chain = ? ORDER BY subject, n");
            query.bind(1, chain);
            std::string subject;
            std::vector<Numbered> rows;
            while (query.executeStep()) {
                std::string next = query.getColumn(0).getString();
                if (next != subject) {
                    if (!rows.empty() && !foldOne(chain, subject, rows)) {
                        return false;
                    }
                    rows.clear();
                    subject = std::move(next);
                }
                rows.push_back(
                    {query.getColumn(2).getInt64(), query.getColumn(1).getInt64(),
                     query.getColumn(3).getString()});
            }
            if (!rows.empty() && !foldOne(chain, subject, rows)) {
                return false;
            }
        }
        return true;
    }

    bool
    foldOne(std::int64_t chain, const std::string& subject, const std::vector<Numbered>& rows) {
        std::int64_t expected = 1;
        for (const Numbered& row : rows) {
            if (row.n != expected) {
                return find(
                    chain, row.seq,
                    rowName(row.seq) + ": it is event " + std::to_string(row.n) + " of " + subject +
                        ", and event " + std::to_string(expected) + " is missing");
            }
            ++expected;
        }
        if (!isWeld(subject)) {
            return true;
        }
        m_report.welds += !m_severalChains || m_counted.insert(subject).second ? 1 : 0;
        std::vector<Event> events;
        events.reserve(rows.size());
        for (const Numbered& row : rows) {
            auto event = eventFromBody(row.body);
            if (!event) {
                return find(chain, row.seq, rowName(row.seq) + ": " + event.error().detail);
            }
            events.push_back(std::move(*event));
        }
        const auto weld = fold(events);
        if (!weld) {
            const std::size_t at = refusedAt(events);
            return find(
                chain, rows[at].seq,
                rowName(rows[at].seq) + ": it does not fit into " + subject + ": " +
                    weld.error().detail);
        }
        if (m_cacheHere && !m_cacheFinding && m_stale.count(subject) == 0) {
            // Of a weld that went on in another log, or is told differently there, one chain alone
            // does not make the line.
            const WeldRecord made = record(*weld);
            const CachedJoint line = m_severalChains ? foldedJoint(m_database, subject)
                                                     : CachedJoint{lineOf(made), textOf(made)};
            if (cachedJoint(m_database, subject) != line) {
                m_cacheFinding = "the list's line of " + subject + " is not what its events make";
            }
        }
        return true;
    }

    /// The first event that a live weld would have refused.
    static std::size_t refusedAt(const std::vector<Event>& events) {
        auto weld = seamclock::open(events.front());
        for (std::size_t i = 1; weld && i < events.size(); ++i) {
            auto next = apply(*weld, events[i]);
            if (!next) {
                return i;
            }
            weld = std::move(next);
        }
        return weld ? events.size() - 1 : 0;
    }

    /// The tables and guards are those that this program makes; a cache may be missing.
    bool schema() {
        SQLite::Database fresh(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        std::vector<Migration> steps;
        for (const Migration& step : migrations()) {
            if (step.version <= m_version) {
                steps.push_back(step);
            }
        }
        if (steps.empty()) {
            return find(0, 0, "the file says it is of version 0, which no log is");
        }
        if (const auto made = migrate(fresh, ":memory:", steps); !made) {
            throw SQLite::Exception(made.error().detail, SQLITE_MISUSE);
        }
        auto expected = objectsOf(fresh);
        for (auto& [name, sql] : objectsOf(m_database)) {
            const auto ours = expected.find(name);
            if (ours == expected.end()) {
                return find(0, 0, name + " does not belong in a log");
            }
            if (ours->second != sql) {
                return find(0, 0, name + " is not as this program makes it");
            }
            expected.erase(ours);
        }
        for (const auto& [name, sql] : expected) {
            if (name.find("joint") == std::string::npos) {
                return find(0, 0, name + " is gone");
            }
        }
        if (!expected.empty()) {
            m_report.notes.emplace_back("the list of joints is not there and will be made again");
        }
        return true;
    }

    static std::map<std::string, std::string> objectsOf(SQLite::Database& database) {
        std::map<std::string, std::string> out;
        SQLite::Statement query(
            database, "SELECT type || ' ' || name, coalesce(sql, '') FROM sqlite_schema "
                      "WHERE name NOT LIKE 'sqlite\\_stat%' ESCAPE '\\'");
        while (query.executeStep()) {
            out.emplace(query.getColumn(0).getString(), query.getColumn(1).getString());
        }
        return out;
    }

    /// Its lines were compared with the folds already; a bad one counts only if nothing worse was
    /// found.
    bool cache() {
        if (!m_cacheHere) {
            return true;
        }
        if (m_cacheFinding) {
            return find(0, 0, *m_cacheFinding);
        }
        if (!m_stale.empty()) {
            m_report.notes.emplace_back(
                "the list of joints is " + std::to_string(m_stale.size()) +
                " welds behind; they are read from their events until it is made again");
        }
        SQLite::Statement first(
            m_database, "SELECT 1 FROM event WHERE chain = ? AND subject = ? AND n = 1");
        const auto chains = chainsOf(m_database);
        SQLite::Statement lines(m_database, "SELECT weld FROM joint");
        while (lines.executeStep()) {
            const std::string weld = lines.getColumn(0).getString();
            const bool there = std::any_of(chains.begin(), chains.end(), [&](std::int64_t chain) {
                first.reset();
                first.bind(1, chain);
                first.bind(2, weld);
                return first.executeStep();
            });
            if (!there) {
                return find(0, 0, "the list has a line of " + weld + ", which has no events");
            }
        }
        if (!m_stale.empty()) {
            return true;
        }
        SQLite::Statement texts(
            m_database, "SELECT rowid FROM joint_text WHERE rowid NOT IN (SELECT id FROM joint)");
        if (texts.executeStep()) {
            return find(0, 0, "the list's texts hold one that belongs to no weld");
        }
        return true;
    }

    SQLite::Database& m_database;
    const LogFile& m_file;
    VerifyReport m_report;
    int m_version = 0;
    std::vector<std::pair<std::int64_t, LogImported>> m_imports; // with their rows
    bool m_severalChains = false;
    std::unordered_set<std::string> m_counted; // welds, where one can be in two chains
    Signers m_signers;
    std::int64_t m_chain = 0; // where it is now, for a file that can't be read further
    std::int64_t m_seq = 0;
    std::map<std::string, std::int64_t> m_named; // document, first row that names it
    bool m_cacheHere = false;
    std::unordered_set<std::string> m_stale; // welds whose line the cache says is behind
    std::optional<std::string> m_cacheFinding;
};

} // namespace

Result<VerifyReport> verifyLog(const std::string& path) {
    const auto file = inspectLogFile(path);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    try {
        const auto database = openForReading(file->path);
        const auto version = integerOf(*database, "PRAGMA user_version");
        const int newest = migrations().back().version;
        if (version > newest) {
            return fail(
                ErrorCode::Foreign, path + ": was written by a newer program (version " +
                                        std::to_string(version) + ", this program reads 1 to " +
                                        std::to_string(newest) + ")");
        }
        return Verifier(*database, *file).run();
    } catch (const SQLite::Exception& thrown) {
        const Error error = errorOf(thrown, path, ErrorCode::Unreadable);
        if (error.code != ErrorCode::Damaged) {
            return tl::unexpected<Error>(error);
        }
        VerifyReport report;
        report.world = file->world;
        report.finding = VerifyFinding{0, 0, error.detail};
        return report;
    } catch (const std::exception& thrown) {
        return fail(ErrorCode::Unreadable, path + ": " + thrown.what());
    }
}

} // namespace seamclock
