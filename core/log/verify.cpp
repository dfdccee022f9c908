#include "core/log/verify.h"

#include "core/base/overloaded.h"
#include "core/base/uuid.h"
#include "core/log/body_codec.h"
#include "core/log/chain.h"
#include "core/log/connection.h"
#include "core/log/fact_codec.h"
#include "core/log/joint_cache.h"
#include "core/log/roster.h"
#include "core/log/rows.h"
#include "core/log/schema.h"
#include "core/log/seal.h"
#include "core/log/weld_rows.h"
#include "core/log/world.h"
#include "core/people/signing.h"
#include "core/weld/event_codec.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <exception>
#include <functional>
#include <future>
#include <map>
#include <memory>
#include <set>
#include <sqlite3.h>
#include <string_view>
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

// Bytes of rows that change threads together: few at first, so that a small log is read side by
// side as well, and many later, as each change costs a wait on a busy machine.
constexpr std::size_t kFirstBatch = std::size_t{64} << 10U;
constexpr std::size_t kLargestBatch = std::size_t{2} << 20U;

/// The rows of one chain, as far as they were read.
struct Reading {
    Rows rows;
    std::string previous; // the last row's hash
    WeldRows welds;
    std::int64_t last = 0;
    std::size_t batch = kFirstBatch;
    bool more = true;
    std::optional<VerifyFinding> wrong = std::nullopt; // with the row that ended it
    std::exception_ptr thrown = nullptr;
};

/// What "PRAGMA integrity_check(1)" says, in a transaction of the same moment.
using Structure = std::future<std::string>;

class Verifier {
public:
    /// The connection is in a transaction, so that all that is read comes from one moment. Without
    /// the structure, the chains alone are followed.
    Verifier(SQLite::Database& database, const LogFile& file, std::optional<Structure> structure)
        : m_database(database), m_file(file), m_structure(std::move(structure)) {
        m_report.world = file.world;
    }

    VerifyReport run() {
        try {
            m_version = static_cast<int>(integerOf(m_database, "PRAGMA user_version"));
            bool ok = tables() && chains();
            if (m_structure) {
                ok = ok && index();
                m_seq = 0;
                ok = ok && schema() && documents() && folds() && cache();
            }
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

    bool tables() {
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
        m_oneChain = all.size() == 1;
        if (m_structure) {
            lookAtCache();
        }
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
        return imports(all);
    }

    /// What the own chain says of imported logs is what is here: so an imported chain can't lose
    /// its end with its head row and signature, as long as the own chain is sound.
    bool imports(const std::vector<Chain>& all) {
        for (const auto& [row, import] : m_imports) {
            const LogImported& told = import; // clang 14 captures no binding
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
        if (!m_structure) {
            return "the chain alone was followed; no signature was looked at";
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
        Reading reading{
            {m_database, "SELECT seq, hash, body FROM event WHERE chain = ? ORDER BY seq"},
            chain.genesis,
            WeldRows(linesWanted())};
        reading.rows.bind(1, chain.no);
        m_signers = {};
        if (!readAll(reading, chain)) {
            return false;
        }
        const std::int64_t last = reading.last;
        if (last < chain.seq) {
            return find(
                chain.no, last + 1,
                (last + 1 == chain.seq ? rowName(chain.seq) + " is"
                                       : "rows " + std::to_string(last + 1) + ".." +
                                             std::to_string(chain.seq) + " are") +
                    " missing at the end: the head row says " + std::to_string(chain.seq) +
                    " rows");
        }
        const bool fits =
            !m_structure || (headSignature(chain) && judge(reading.welds.end(), chain));
        const bool foundBefore =
            !fits && m_report.finding->seq >= 1 && m_report.finding->seq < last;
        if (reading.previous != chain.head && !foundBefore) {
            return find(
                chain.no, last,
                rowName(last) + ": the head row has another hash than this, the last row; one of "
                                "the two was changed");
        }
        return fits;
    }

    /// What the rows hold is made out beside the reading of those that follow them, and judged in
    /// their order, so that what ends the reading comes after what was wrong before.
    bool readAll(Reading& reading, const Chain& chain) {
        std::future<std::vector<RowNews>> beside;
        while (reading.more) {
            RowBatch batch = readOn(reading, chain);
            std::vector<RowNews> news;
            if (beside.valid()) {
                news = beside.get();
            }
            if (!batch.rows().empty()) {
                beside = std::async(
                    [&welds = reading.welds, rows = std::move(batch)] { return welds.take(rows); });
            }
            if (!judge(std::move(news), chain)) {
                return false;
            }
        }
        if (beside.valid() && !judge(beside.get(), chain)) {
            return false;
        }
        m_seq = reading.last + 1;
        if (reading.thrown) {
            std::rethrow_exception(reading.thrown);
        }
        m_report.finding = std::move(reading.wrong);
        return !m_report.finding;
    }

    RowBatch readOn(Reading& reading, const Chain& chain) const {
        RowBatch out(m_structure ? reading.batch + reading.batch / 8 : 0);
        try {
            while (reading.more && out.bytes() < reading.batch) {
                reading.more = reading.rows.step() && isNext(reading, chain);
                if (reading.more && m_structure) {
                    out.add(reading.last, reading.rows.text(2));
                }
            }
        } catch (const SQLite::Exception&) {
            reading.thrown = std::current_exception();
            reading.more = false;
        }
        reading.batch = std::min(reading.batch * 2, kLargestBatch);
        return out;
    }

    /// Whether the row is the one that follows.
    bool isNext(Reading& reading, const Chain& chain) const {
        const Rows& rows = reading.rows;
        const std::int64_t seq = rows.number(0);
        const std::int64_t last = reading.last;
        const auto bad = [&](const std::string& reason) {
            reading.wrong = VerifyFinding{chain.no, seq, rowName(seq) + ": " + reason};
            return false;
        };
        if (!rows.isInteger(0) || !rows.isText(1) || !rows.isText(2)) {
            return bad("its columns are not of the types that were written");
        }
        if (seq < 1) {
            return bad("was added; rows count from 1");
        }
        if (seq > chain.seq) {
            return bad(
                "stands behind the head row, which says " + std::to_string(chain.seq) + " rows");
        }
        if (seq != last + 1) {
            reading.wrong = VerifyFinding{
                chain.no, last + 1,
                rowName(last + 1) + " is missing: after row " + std::to_string(last) +
                    " comes row " + std::to_string(seq)};
            return false;
        }
        std::string hash = chainHash(reading.previous, rows.text(2));
        if (hash != rows.text(1)) {
            return bad(
                "its hash does not follow from " +
                (last == 0 ? std::string("the genesis") : rowName(last)) +
                " and its own body: one of the two was changed, or they were not neighbours");
        }
        reading.previous = std::move(hash);
        reading.last = seq;
        return true;
    }

    bool judge(std::vector<RowNews> all, const Chain& chain) {
        return std::all_of(all.begin(), all.end(), [&](RowNews& news) {
            return std::visit(
                Overloaded{
                    [&](const OtherRow& row) {
                        m_seq = row.seq;
                        const auto wrong = wrongForm(row.body, row.seq, chain);
                        return !wrong || find(chain.no, row.seq, rowName(row.seq) + ": " + *wrong);
                    },
                    [&](const WeldBegun& begun) {
                        const bool counts = m_oneChain || m_counted.insert(begun.weld).second;
                        m_report.welds += counts ? 1 : 0;
                        return true;
                    },
                    [&](const DocumentsNamed& named) {
                        nameDocuments(named.documents, named.seq);
                        return !named.practice || chain.world == Practice::kName ||
                               find(
                                   chain.no, named.seq,
                                   rowName(named.seq) + ": it is a weld of practice, in a log of " +
                                       chain.world);
                    },
                    [&](WeldLate& late) {
                        m_late.emplace(chain.no, std::move(late.weld));
                        return true;
                    },
                    [&](const WeldFolded& folded) { return judgeFold(folded, chain.no); }},
                news);
        });
    }

    bool judgeFold(const WeldFolded& folded, std::int64_t chain) {
        if (const auto* refused = std::get_if<WeldRefused>(&folded)) {
            return find(
                chain, refused->seq,
                rowName(refused->seq) + ": it does not fit into " + refused->weld + ": " +
                    refused->reason);
        }
        compareCache(chain, std::get<WeldMade>(folded));
        return true;
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

    /// What is wrong with a body that is no event of a weld; remembers the documents it names.
    std::optional<std::string>
    wrongForm(std::string_view body, std::int64_t seq, const Chain& chain) {
        const auto envelope = readEnvelope(body);
        if (!envelope) {
            return envelope.error().detail;
        }
        if (auto wrong = wrongWorld(*envelope, chain.world)) {
            return wrong;
        }
        if (isWeld(envelope->subject)) {
            const auto event = eventFromBody(body);
            return event ? "is not an event of a weld" : event.error().detail;
        }
        if (isFactWithForm(envelope->kind)) {
            const auto fact = factFromBody(body);
            if (!fact) {
                return fact.error().detail;
            }
            if (auto wrong = signedFact(*fact, seq, chain)) {
                return wrong;
            }
        }
        if (envelope->n != ++m_factN[{chain.no, envelope->subject}]) {
            m_late.emplace(chain.no, envelope->subject);
        }
        for (const std::string& document : envelope->documents) {
            m_named.emplace(document, seq);
        }
        return std::nullopt;
    }

    /// The file's own structure, the index over (subject, n) included.
    bool index() {
        m_seq = 0;
        const std::string said = m_structure->get();
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

    void nameDocuments(const PlanDocuments& documents, std::int64_t seq) {
        m_named.try_emplace(documents.procedure, seq);
        m_named.try_emplace(documents.bench, seq);
        if (documents.material) {
            m_named.try_emplace(*documents.material, seq);
        }
    }

    /// What was not folded when its last row came.
    bool folds() {
        SQLite::Statement query(
            m_database,
            "SELECT n, seq, body FROM event WHERE chain = ? AND subject = ? ORDER BY n");
        for (const auto& [chain, subject] : m_late) {
            if (!foldsLate(query, chain, subject)) {
                return false;
            }
        }
        return true;
    }

    bool foldsLate(SQLite::Statement& query, std::int64_t chain, const std::string& subject) {
        query.reset();
        query.bind(1, chain);
        query.bind(2, subject);
        HeldWeld held;
        std::int64_t expected = 1;
        while (query.executeStep()) {
            const std::int64_t n = query.getColumn(0).getInt64();
            const std::int64_t seq = query.getColumn(1).getInt64();
            if (n != expected) {
                return find(
                    chain, seq,
                    rowName(seq) + ": it is event " + std::to_string(n) + " of " + subject +
                        ", and event " + std::to_string(expected) + " is missing");
            }
            ++expected;
            if (!isWeld(subject)) {
                continue;
            }
            auto event = eventFromBody(query.getColumn(2).getString());
            if (!event) {
                return find(chain, seq, rowName(seq) + ": " + event.error().detail);
            }
            held.seqs.push_back(seq);
            held.events.push_back(std::move(*event));
        }
        return held.events.empty() ||
               judgeFold(foldHeld(subject, std::move(held), false, linesWanted()), chain);
    }

    /// Of a weld that went on in another log, or is told differently there, one chain alone does
    /// not make the line.
    bool linesWanted() const { return m_oneChain && m_cached; }

    /// Before the rows are followed, as their folds are compared with it; what is wrong with it is
    /// said after all else.
    void lookAtCache() {
        try {
            m_cacheHere = hasJointCache(m_database);
            for (std::string& weld : staleWelds(m_database)) {
                m_stale.insert(std::move(weld));
            }
            if (m_cacheHere) {
                m_cached.emplace(m_database);
            }
        } catch (const SQLite::Exception& thrown) {
            cantReadCache(thrown);
        }
    }

    void cantReadCache(const SQLite::Exception& thrown) {
        m_cached.reset();
        m_cacheFinding = "the list of joints can't be read (" + std::string(thrown.what()) + ")";
    }

    void compareCache(std::int64_t chain, const WeldMade& made) {
        if (!m_cached || m_cacheFinding || m_stale.count(made.weld) != 0) {
            return;
        }
        try {
            const auto cached = m_cached->of(made.weld);
            if (made.soFar && cached && cached->line.events > made.events) {
                m_late.emplace(chain, made.weld); // its line knows of later rows
                return;
            }
            m_linesMet += cached ? 1 : 0;
            if (made.joint ? cached != made.joint : cached != foldedJoint(m_database, made.weld)) {
                m_cacheFinding = "the list's line of " + made.weld + " is not what its events make";
            }
        } catch (const SQLite::Exception& thrown) {
            cantReadCache(thrown);
        }
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
        auto expected = objectsOf(fresh, m_cacheHere);
        for (auto& [name, sql] : objectsOf(m_database, m_cacheHere)) {
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
        if (!expected.empty() || !m_cacheHere) {
            m_report.notes.emplace_back("the list of joints is not there and will be made again");
        }
        return true;
    }

    /// A list of joints that another program made otherwise is not used, and so not looked at.
    static std::map<std::string, std::string> objectsOf(SQLite::Database& database, bool cache) {
        std::map<std::string, std::string> out;
        SQLite::Statement query(
            database,
            "SELECT type || ' ' || name, coalesce(sql, '') FROM sqlite_schema "
            "WHERE name NOT LIKE 'sqlite\\_stat%' ESCAPE '\\' AND "
            "(? OR tbl_name NOT IN ('joint', 'joint_measure', 'joint_state', 'joint_text', "
            "'joint_text_config', 'joint_text_content', 'joint_text_data', "
            "'joint_text_docsize', 'joint_text_idx'))");
        query.bind(1, cache ? 1 : 0);
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
        if (!everyLineWasMet() && !everyLineHasEvents()) {
            return false;
        }
        if (!m_stale.empty()) {
            return true;
        }
        SQLite::Statement texts(
            m_database, "SELECT rowid FROM joint_text WHERE rowid NOT IN (SELECT id FROM joint)");
        if (texts.executeStep()) {
            return find(0, 0, "the list's texts hold one that belongs to no weld");
        }
        SQLite::Statement measures(
            m_database,
            "SELECT joint FROM joint_measure WHERE joint NOT IN (SELECT id FROM joint)");
        if (measures.executeStep()) {
            return find(0, 0, "the list's measures hold one that belongs to no weld");
        }
        return true;
    }

    /// With one chain each weld is compared with its line once, so it is enough to count the lines.
    bool everyLineWasMet() {
        return m_oneChain && m_linesMet == integerOf(m_database, "SELECT count(*) FROM joint");
    }

    bool everyLineHasEvents() {
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
        return true;
    }

    SQLite::Database& m_database;
    const LogFile& m_file;
    std::optional<Structure> m_structure;
    VerifyReport m_report;
    int m_version = 0;
    std::vector<std::pair<std::int64_t, LogImported>> m_imports; // with their rows
    std::unordered_set<std::string> m_counted; // welds, where one can be in two chains
    Signers m_signers;
    std::int64_t m_chain = 0; // where it is now, for a file that can't be read further
    std::int64_t m_seq = 0;
    std::map<std::string, std::int64_t> m_named; // document, first row that names it
    bool m_oneChain = true;                      // a weld's line may be made of its rows in several
    bool m_cacheHere = false;
    std::unordered_set<std::string> m_stale; // welds whose line the cache says is behind
    std::optional<CachedJoints> m_cached;
    std::optional<std::string> m_cacheFinding;
    std::int64_t m_linesMet = 0;                                          // that were compared
    std::map<std::pair<std::int64_t, std::string>, std::int64_t> m_factN; // met so far
    std::set<std::pair<std::int64_t, std::string>> m_late;
};

/// Brings two connections into transactions of one and the same moment; false if that can't be.
bool meet(SQLite::Database& one, SQLite::Database& other) {
    constexpr int kTries = 50; // a writer brings a row now and then
    const auto heads = [](SQLite::Database& database) {
        database.exec("BEGIN");
        return textOf(
            database,
            "SELECT coalesce(group_concat(no || ' ' || seq || ' ' || head), '') FROM chain");
    };
    for (int tries = 0; tries < kTries; ++tries) {
        if (heads(one) == heads(other)) {
            return true;
        }
        one.exec("ROLLBACK");
        other.exec("ROLLBACK");
    }
    return false;
}

/// A second connection at the same moment; none where one connection has to do.
std::unique_ptr<SQLite::Database> secondFor(SQLite::Database& first, const LogFile& file) {
    try {
        auto second = openForReading(file.path);
        if (meet(first, *second)) {
            return second;
        }
    } catch (const SQLite::Exception&) {
        // Whatever it is, the first connection will meet it and say it.
    }
    return nullptr;
}

/// The file's structure takes long and needs nothing of the rest, so they are looked at side by
/// side.
VerifyReport verifyEverything(SQLite::Database& database, const LogFile& file) {
    const auto second = secondFor(database, file);
    if (sqlite3_get_autocommit(database.getHandle()) != 0) {
        database.exec("BEGIN");
    }
    const auto check = [](SQLite::Database& of) { return textOf(of, "PRAGMA integrity_check(1)"); };
    Structure structure = second ? std::async(check, std::ref(*second))
                                 : std::async(std::launch::deferred, check, std::ref(database));
    return Verifier(database, file, std::move(structure)).run();
}

Result<VerifyReport> verifyAs(const std::string& path, bool everything) {
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
        if (everything) {
            return verifyEverything(*database, *file);
        }
        database->exec("BEGIN");
        return Verifier(*database, *file, std::nullopt).run();
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

} // namespace

Result<VerifyReport> verifyLog(const std::string& path) {
    return verifyAs(path, true);
}

Result<VerifyReport> verifyChain(const std::string& path) {
    return verifyAs(path, false);
}

} // namespace seamclock
