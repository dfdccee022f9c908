#include "core/rescue/salvage.h"

#include "core/log/body_codec.h"
#include "core/log/chain.h"
#include "core/log/connection.h"
#include "core/log/raw_log.h"
#include "core/log/spill.h"
#include "core/weld/event_codec.h"
#include "core/weld/fold.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <algorithm>
#include <filesystem>
#include <map>
#include <set>
#include <string_view>
#include <system_error>
#include <utility>

namespace seamclock {

namespace {

constexpr std::int64_t kMostSteps = 100'000; // of one subject: an n beyond is no n

// Copies of a row that differ (one of them is damaged) stand side by side. Rows of the spill file
// have seq 0 and no hash.
constexpr const char* kScratch = R"(
PRAGMA journal_mode=OFF;
PRAGMA synchronous=OFF;
CREATE TABLE row(seq INTEGER NOT NULL, hash TEXT NOT NULL, body TEXT NOT NULL, subject TEXT NOT NULL, n INTEGER NOT NULL,
  kind TEXT NOT NULL);
CREATE INDEX row_seq ON row(seq);
CREATE INDEX row_subject ON row(subject, n);
CREATE TABLE key(subject TEXT NOT NULL, n INTEGER NOT NULL, seq INTEGER NOT NULL, PRIMARY KEY(subject, n, seq))
  WITHOUT ROWID;
CREATE TABLE joint(weld TEXT PRIMARY KEY, number INTEGER NOT NULL, ended INTEGER NOT NULL);
CREATE TABLE document(sha256 TEXT PRIMARY KEY, kind TEXT NOT NULL, body BLOB NOT NULL);
BEGIN;
)";

// A damaged entry names a weld that never was: its row stands elsewhere, or its number does.
constexpr const char* kNoPhantoms = R"(
DELETE FROM key WHERE subject NOT IN (SELECT subject FROM row) AND seq IN (SELECT seq FROM row);
DELETE FROM joint WHERE weld NOT IN (SELECT subject FROM row) AND weld NOT IN (SELECT subject FROM key)
  AND number IN (SELECT body->>'$.d.number' FROM row WHERE kind = 'weld_opened');
)";

/// No more rows than that can stand in files of this size: a seq beyond is no seq.
std::int64_t mostRows(const std::string& path) {
    constexpr std::uintmax_t kLeastRow = 150;
    std::uintmax_t bytes = 0;
    for (const char* tail : {"", "-wal"}) {
        std::error_code none;
        const auto size = std::filesystem::file_size(path + tail, none);
        bytes += none ? 0 : size;
    }
    return static_cast<std::int64_t>(bytes / kLeastRow) + 1;
}

bool ends(std::string_view kind) {
    return kind == "weld_closed" || kind == "weld_aborted";
}

enum class Proof { Right, None, Wrong };

struct Copy {
    std::string hash;
    std::string body;
};

} // namespace

struct Salvage::Inside {
    std::string scratch;
    std::unique_ptr<SQLite::Database> database;
    SalvageCount count;
    SpillContent spill;
    std::int64_t head = 0; // as the newest head row says
    std::string headHash;
    std::int64_t followed = 0; // rows from the first on that follow from each other
    std::int64_t last = 0;     // of which anything tells
    std::int64_t most = 0;
    bool chainIsWhole = false;

    ~Inside() {
        database.reset();
        std::error_code ignored;
        std::filesystem::remove(scratch, ignored);
    }

    bool isSeq(std::int64_t seq) const { return seq >= 1 && seq <= most; }

    void gather(const std::string& path, RawExtent& extent, std::optional<Error>& failed);
    void keepRow(
        SQLite::Statement& known, SQLite::Statement& add, std::int64_t seq, const std::string& hash,
        const std::string& body);
    void countUp();
    void followChain();
    std::int64_t highestNumber();
    std::vector<Copy> copiesOf(std::int64_t seq);
    std::vector<std::string> hashesOf(std::int64_t seq, bool deep);
    bool vouchedFor(std::int64_t seq);
    Proof proofOf(std::int64_t seq, const Copy& copy);
    bool isAnothers(const std::string& name, std::int64_t n, std::int64_t seq);
    SalvagedSubject subject(const std::string& name);
    void foldWeld(SalvagedSubject& out);
    void nameDocuments(SalvagedSubject& out);
};

void Salvage::Inside::keepRow(
    SQLite::Statement& known, SQLite::Statement& add, std::int64_t seq, const std::string& hash,
    const std::string& body) {
    const auto envelope = readEnvelope(body);
    if (!envelope || envelope->n > kMostSteps) {
        return;
    }
    known.reset();
    known.bind(1, seq);
    known.bind(2, hash);
    known.bind(3, body);
    if (known.executeStep()) {
        return;
    }
    add.reset();
    add.bind(1, seq);
    add.bind(2, hash);
    add.bind(3, body);
    add.bind(4, envelope->subject);
    add.bind(5, envelope->n);
    add.bind(6, envelope->kind);
    add.exec();
}

void Salvage::Inside::gather(
    const std::string& path, RawExtent& extent, std::optional<Error>& failed) {
    SQLite::Statement known(*database, "SELECT 1 FROM row WHERE seq = ? AND hash = ? AND body = ?");
    SQLite::Statement row(*database, "INSERT INTO row VALUES(?, ?, ?, ?, ?, ?)");
    SQLite::Statement key(*database, "INSERT OR IGNORE INTO key VALUES(?, ?, ?)");
    SQLite::Statement joint(
        *database, "INSERT INTO joint VALUES(?, ?, ?) ON CONFLICT(weld) DO UPDATE SET number = "
                   "max(number, excluded.number), ended = max(ended, excluded.ended)");
    SQLite::Statement document(*database, "INSERT OR IGNORE INTO document VALUES(?, ?, ?)");
    const auto keepDocument = [&](const LogDocument& one) {
        document.reset();
        document.bind(1, one.sha256);
        document.bind(2, one.kind);
        document.bind(3, one.bytes.data(), static_cast<int>(one.bytes.size()));
        document.exec();
    };
    RawUse use;
    use.event = [&](const RawEvent& event) {
        if (event.chain == 1 && isSeq(event.seq)) {
            keepRow(known, row, event.seq, event.hash, event.body);
        }
    };
    use.key = [&](const RawKey& one) {
        if (one.n >= 1 && one.n <= kMostSteps && isSeq(one.seq)) {
            key.reset();
            key.bind(1, one.subject);
            key.bind(2, one.n);
            key.bind(3, one.seq);
            key.exec();
        }
    };
    use.joint = [&](const RawJoint& one) {
        joint.reset();
        joint.bind(1, one.weld);
        joint.bind(2, one.number);
        joint.bind(3, one.ended ? 1 : 0);
        joint.exec();
    };
    use.chain = [&](const RawChain& chain) {
        if ((count.logId.empty() || chain.seq >= head) && chain.seq <= most) {
            count.logId = chain.logId;
            count.world = chain.world;
            head = chain.seq;
            headHash = chain.head;
        }
    };
    use.document = keepDocument;
    const auto read = readRawLog(path, use);
    if (!read) {
        failed = read.error();
        return;
    }
    extent = *read;
    for (const LogRow& one : spill.rows) {
        keepRow(known, row, 0, "", one.body);
    }
    for (const LogDocument& one : spill.documents) {
        keepDocument(one);
    }
}

void Salvage::Inside::countUp() {
    database->exec("COMMIT");
    followChain();
    // A row or index entry behind those may be a damaged number of one of them.
    SQLite::Statement behind(
        *database,
        "SELECT max(coalesce((SELECT max(seq) FROM row r WHERE seq > ?1 AND NOT EXISTS(SELECT 1 "
        "FROM row q WHERE q.subject = r.subject AND q.n = r.n AND q.seq BETWEEN 1 AND ?1)), 0), "
        "coalesce((SELECT max(seq) FROM key k WHERE seq > ?1 AND NOT EXISTS(SELECT 1 FROM row q "
        "WHERE q.subject = k.subject AND q.n = k.n AND q.seq BETWEEN 1 AND ?1)), 0))");
    behind.bind(1, followed);
    behind.executeStep();
    last = std::max({followed, head, behind.getColumn(0).getInt64()});
    chainIsWhole = chainIsWhole && last == head;
    SQLite::Statement rows(
        *database, "SELECT count(DISTINCT seq) FROM row WHERE seq BETWEEN 1 AND ?");
    rows.bind(1, last);
    rows.executeStep();
    count.rows = rows.getColumn(0).getInt64();
    count.lostRows = last - count.rows;
    count.spilled = static_cast<std::int64_t>(spill.rows.size());
    count.highestNumber = highestNumber();
    database->exec(kNoPhantoms);
}

/// Of the welds whose first row is believed; and what the list of joints, or a changed first row,
/// says of the others, as long as there can have been so many.
std::int64_t Salvage::Inside::highestNumber() {
    std::set<std::string> known;
    std::vector<std::int64_t> doubtful;
    std::int64_t believed = 0;
    SQLite::Statement opened(
        *database, "SELECT seq, hash, body, subject, body->>'$.d.number' FROM row WHERE kind = "
                   "'weld_opened'");
    while (opened.executeStep()) {
        const Copy copy{opened.getColumn(1).getString(), opened.getColumn(2).getString()};
        const std::int64_t number = opened.getColumn(4).getInt64();
        if (proofOf(opened.getColumn(0).getInt64(), copy) == Proof::Wrong) {
            doubtful.push_back(number);
            continue;
        }
        believed = std::max(believed, number);
        known.insert(opened.getColumn(3).getString());
    }
    SQLite::Statement listed(*database, "SELECT weld, number FROM joint");
    while (listed.executeStep()) {
        if (known.count(listed.getColumn(0).getString()) == 0) {
            doubtful.push_back(listed.getColumn(1).getInt64());
        }
    }
    const std::int64_t plausible =
        believed + static_cast<std::int64_t>(known.size() + doubtful.size());
    std::int64_t highest = believed;
    for (const std::int64_t number : doubtful) {
        highest = number <= plausible ? std::max(highest, number) : highest;
    }
    return highest;
}

std::vector<Copy> Salvage::Inside::copiesOf(std::int64_t seq) {
    std::vector<Copy> out;
    SQLite::Statement query(*database, "SELECT hash, body FROM row WHERE seq = ?");
    query.bind(1, seq);
    while (query.executeStep()) {
        out.push_back({query.getColumn(0).getString(), query.getColumn(1).getString()});
    }
    return out;
}

/// How far the rows follow from each other, and whether they lead to the head row: then their
/// bodies are right whatever became of their own hashes.
void Salvage::Inside::followChain() {
    if (count.logId.empty()) {
        return;
    }
    std::string hash = genesisHash(count.logId, count.world);
    bool borneOut = true; // by each row's own hash
    for (std::int64_t seq = 1;; ++seq) {
        std::string next;
        bool right = false;
        for (const Copy& copy : copiesOf(seq)) {
            std::string made = chainHash(hash, copy.body);
            right = right || made == copy.hash;
            if (made == copy.hash || next.empty()) {
                next = std::move(made);
            }
        }
        borneOut = borneOut && right;
        if (next.empty() || (seq > head && !right)) {
            return;
        }
        hash = std::move(next);
        if (borneOut) {
            followed = seq;
        }
        if (seq == head && hash == headHash) {
            chainIsWhole = true;
            borneOut = true;
            followed = seq;
        }
    }
}

/// The hashes that a row may have: as stored, and as its body and its predecessor make it, where
/// the stored one is what was damaged.
std::vector<std::string> Salvage::Inside::hashesOf(std::int64_t seq, bool deep) {
    std::vector<std::string> out;
    if (seq == 0) {
        if (!count.logId.empty()) {
            out.push_back(genesisHash(count.logId, count.world));
        }
        return out;
    }
    for (const Copy& copy : copiesOf(seq)) {
        out.push_back(copy.hash);
        if (deep) {
            for (const std::string& before : hashesOf(seq - 1, false)) {
                out.push_back(chainHash(before, copy.body));
            }
        }
    }
    return out;
}

/// Whether a row's stored hash is what its body and its predecessor make it.
bool Salvage::Inside::vouchedFor(std::int64_t seq) {
    if (seq == 0) {
        return true;
    }
    const auto before = hashesOf(seq - 1, false);
    const auto copies = copiesOf(seq);
    return std::any_of(copies.begin(), copies.end(), [&](const Copy& copy) {
        return std::any_of(before.begin(), before.end(), [&](const std::string& hash) {
            return chainHash(hash, copy.body) == copy.hash;
        });
    });
}

Proof Salvage::Inside::proofOf(std::int64_t seq, const Copy& copy) {
    if (seq == 0) {
        return Proof::Right; // each line of the spill file has a hash of its own
    }
    const auto before = hashesOf(seq - 1, true);
    if (before.empty()) {
        return Proof::None;
    }
    const auto after = copiesOf(seq + 1);
    for (const std::string& hash : before) {
        const std::string made = chainHash(hash, copy.body);
        // Where only the row's own hash was damaged, the next row still bears it out.
        const bool borneOut = std::any_of(after.begin(), after.end(), [&](const Copy& next) {
            return chainHash(made, next.body) == next.hash;
        });
        if (made == copy.hash || borneOut) {
            return Proof::Right;
        }
    }
    return vouchedFor(seq - 1) ? Proof::Wrong : Proof::None;
}

/// Whether that row is another event's beyond doubt: then the index entry was damaged.
bool Salvage::Inside::isAnothers(const std::string& name, std::int64_t n, std::int64_t seq) {
    SQLite::Statement query(*database, "SELECT hash, body, subject, n FROM row WHERE seq = ?");
    query.bind(1, seq);
    bool another = false;
    while (query.executeStep()) {
        if (query.getColumn(2).getString() == name && query.getColumn(3).getInt64() == n) {
            return false;
        }
        const Copy copy{query.getColumn(0).getString(), query.getColumn(1).getString()};
        another = another || proofOf(seq, copy) == Proof::Right;
    }
    return another;
}

SalvagedSubject Salvage::Inside::subject(const std::string& name) {
    struct Step {
        std::string body;
        bool proven = false;
    };
    SalvagedSubject out;
    out.subject = name;
    std::map<std::int64_t, Step> steps;
    std::set<std::int64_t> known; // n that there was
    {
        SQLite::Statement query(
            *database,
            "SELECT seq, hash, body, n, kind FROM row WHERE subject = ? ORDER BY n, seq");
        query.bind(1, name);
        while (query.executeStep()) {
            const std::int64_t seq = query.getColumn(0).getInt64();
            const Copy copy{query.getColumn(1).getString(), query.getColumn(2).getString()};
            const std::int64_t n = query.getColumn(3).getInt64();
            known.insert(n);
            const Proof proof = proofOf(seq, copy);
            if (proof == Proof::Wrong) {
                continue;
            }
            out.ended = out.ended || ends(query.getColumn(4).getString());
            Step& step = steps[n];
            if (step.body.empty() || (proof == Proof::Right && !step.proven)) {
                step = {copy.body, proof == Proof::Right};
            }
        }
        SQLite::Statement keys(*database, "SELECT n, seq FROM key WHERE subject = ?");
        keys.bind(1, name);
        while (keys.executeStep()) {
            const std::int64_t n = keys.getColumn(0).getInt64();
            if (!isAnothers(name, n, keys.getColumn(1).getInt64())) {
                known.insert(n);
                out.named = true;
            }
        }
        SQLite::Statement joint(*database, "SELECT number, ended FROM joint WHERE weld = ?");
        joint.bind(1, name);
        if (joint.executeStep()) {
            out.number = joint.getColumn(0).getInt64();
            out.named = true;
            // The list says that it ended, and no row does: that row is lost.
            if (!chainIsWhole && joint.getColumn(1).getInt64() != 0 && !out.ended) {
                out.ended = true;
                known.insert(steps.empty() ? 1 : steps.rbegin()->first + 1);
            }
        }
    }
    const std::int64_t end = known.empty() ? 0 : *known.rbegin();
    for (std::int64_t n = 1; n <= end; ++n) {
        const auto found = steps.find(n);
        if (found == steps.end()) {
            out.lost.push_back(n);
        } else if (!out.lost.empty()) {
            out.apart.push_back(n);
        } else {
            out.unproven += found->second.proven ? 0 : 1;
            out.rows.push_back({name, n, std::move(found->second.body)});
        }
    }
    if (isWeld(name)) {
        foldWeld(out);
    }
    nameDocuments(out);
    return out;
}

/// Takes away what does not make a weld: a changed body that no hash could tell of.
void Salvage::Inside::foldWeld(SalvagedSubject& out) {
    std::optional<Weld> weld;
    std::size_t good = 0;
    for (; good < out.rows.size(); ++good) {
        const auto event = eventFromBody(out.rows[good].body);
        if (!event) {
            break;
        }
        auto next = weld ? apply(*weld, *event) : open(*event);
        if (!next) {
            break;
        }
        weld = std::move(*next);
    }
    for (std::size_t i = good; i < out.rows.size(); ++i) {
        out.apart.push_back(out.rows[i].n);
    }
    std::sort(out.apart.begin(), out.apart.end());
    out.rows.resize(good);
    if (weld) {
        out.number = weld->opened().number;
    }
}

void Salvage::Inside::nameDocuments(SalvagedSubject& out) {
    std::set<std::string> named;
    for (const LogRow& row : out.rows) {
        if (const auto envelope = readEnvelope(row.body)) {
            named.insert(envelope->documents.begin(), envelope->documents.end());
        }
    }
    SQLite::Statement query(*database, "SELECT kind, body FROM document WHERE sha256 = ?");
    for (const std::string& sha256 : named) {
        query.reset();
        query.bind(1, sha256);
        if (query.executeStep()) {
            out.documents.push_back(
                {sha256, query.getColumn(0).getString(), query.getColumn(1).getString()});
        } else {
            out.lostDocuments.push_back(sha256);
        }
    }
}

// ---- The outside

Result<Salvage> Salvage::read(const std::string& path, const std::string& scratch) {
    auto inside = std::make_unique<Inside>();
    inside->scratch = scratch;
    inside->most = mostRows(path);
    if (auto spill = readSpill(path + ".spill")) {
        inside->spill = std::move(*spill); // one that can't be read holds nothing for us
    }
    try {
        inside->database = std::make_unique<SQLite::Database>(
            scratch, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        inside->database->exec(kScratch);
        RawExtent extent;
        std::optional<Error> failed;
        inside->gather(path, extent, failed);
        if (failed) {
            return tl::unexpected<Error>(std::move(*failed));
        }
        inside->countUp();
        SalvageCount& count = inside->count;
        count.ours = extent.ours || count.rows > 0 || !count.logId.empty();
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, scratch, ErrorCode::NotWritten));
    }
    return Salvage(std::move(inside));
}

Salvage::Salvage(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
Salvage::Salvage(Salvage&&) noexcept = default;
Salvage& Salvage::operator=(Salvage&&) noexcept = default;
Salvage::~Salvage() = default;

const SalvageCount& Salvage::count() const {
    return m_inside->count;
}

bool Salvage::chainIsWhole() const {
    return m_inside->chainIsWhole;
}

const std::vector<LogRow>& Salvage::spilledRows() const {
    return m_inside->spill.rows;
}

const std::vector<LogDocument>& Salvage::spilledDocuments() const {
    return m_inside->spill.documents;
}

Result<void>
Salvage::eachRow(const std::function<void(const std::string& hash, const std::string& body)>& use) {
    try {
        std::string hash = genesisHash(m_inside->count.logId, m_inside->count.world);
        for (std::int64_t seq = 1; seq <= m_inside->head; ++seq) {
            std::string next;
            std::string body;
            for (const Copy& copy : m_inside->copiesOf(seq)) {
                std::string made = chainHash(hash, copy.body);
                if (made == copy.hash || next.empty()) {
                    next = std::move(made);
                    body = copy.body;
                }
            }
            hash = std::move(next);
            use(hash, body);
        }
        return {};
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, m_inside->scratch, ErrorCode::NotWritten));
    }
}

Result<void> Salvage::eachDocument(const std::function<void(const LogDocument&)>& use) {
    try {
        SQLite::Statement query(
            *m_inside->database, "SELECT sha256, kind, body FROM document ORDER BY sha256");
        while (query.executeStep()) {
            use(
                {query.getColumn(0).getString(), query.getColumn(1).getString(),
                 query.getColumn(2).getString()});
        }
        return {};
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, m_inside->scratch, ErrorCode::NotWritten));
    }
}

Result<void> Salvage::eachSubject(const std::function<Result<void>(SalvagedSubject)>& use) {
    try {
        // Welds of which nothing but the index or the list tells come last.
        SQLite::Statement query(
            *m_inside->database,
            "SELECT subject FROM (SELECT subject, min(nullif(seq, 0)) AS began FROM row GROUP BY "
            "subject UNION ALL SELECT weld, NULL FROM joint WHERE weld NOT IN (SELECT subject FROM "
            "row) UNION SELECT subject, NULL FROM key WHERE subject NOT IN (SELECT subject FROM "
            "row) AND subject NOT IN (SELECT weld FROM joint)) WHERE subject <> 'station' AND "
            "subject NOT LIKE 'day:%' ORDER BY began IS NULL, began, subject");
        while (query.executeStep()) {
            SalvagedSubject next = m_inside->subject(query.getColumn(0).getString());
            if (next.rows.empty() && next.apart.empty() && !next.named) {
                continue; // a changed name that never was
            }
            if (auto used = use(std::move(next)); !used) {
                return used;
            }
        }
        return {};
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, m_inside->scratch, ErrorCode::NotWritten));
    }
}

} // namespace seamclock
