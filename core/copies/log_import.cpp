#include "core/copies/log_import.h"

#include "core/log/body_codec.h"
#include "core/log/connection.h"
#include "core/log/fact_codec.h"
#include "core/log/joint_cache.h"
#include "core/log/log_reader.h"
#include "core/log/log_writer.h"
#include "core/log/verify.h"
#include "core/log/world.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <filesystem>
#include <map>
#include <optional>
#include <set>
#include <system_error>
#include <utility>

namespace seamclock {

namespace {

constexpr int kBusyMs = 5'000;
constexpr std::int64_t kListStep = 1'000;

struct ChainRow {
    std::int64_t no = 0;
    std::string logId;
    std::string genesis;
    std::int64_t seq = 0;
    std::string head;
};

std::vector<ChainRow> chainRowsOf(SQLite::Database& database) {
    std::vector<ChainRow> out;
    SQLite::Statement query(
        database, "SELECT no, log_id, genesis, seq, head FROM chain ORDER BY no");
    while (query.executeStep()) {
        out.push_back(
            {query.getColumn(0).getInt64(), query.getColumn(1).getString(),
             query.getColumn(2).getString(), query.getColumn(3).getInt64(),
             query.getColumn(4).getString()});
    }
    return out;
}

/// The hash of a row; a chain's genesis for the row before its first.
std::string hashAt(SQLite::Database& database, const ChainRow& chain, std::int64_t seq) {
    if (seq == 0) {
        return chain.genesis;
    }
    SQLite::Statement query(database, "SELECT hash FROM event WHERE chain = ? AND seq = ?");
    query.bind(1, chain.no);
    query.bind(2, seq);
    return query.executeStep() ? query.getColumn(0).getString() : std::string();
}

Result<void> checkBoth(const std::string& from, const std::string& path, std::string& world) {
    const auto other = inspectLogFile(from);
    if (!other) {
        return tl::unexpected<Error>(other.error());
    }
    const auto own = inspectLogFile(path);
    if (!own) {
        return tl::unexpected<Error>(own.error());
    }
    if (other->world != own->world) {
        return fail(
            ErrorCode::Foreign, from + ": is a " + other->world + " log, and " + path + " a " +
                                    own->world + " log; joints never come from one into the other");
    }
    world = own->world;
    const auto report = verifyLog(from);
    if (!report) {
        return tl::unexpected<Error>(report.error());
    }
    if (!report->ok) {
        return fail(
            ErrorCode::Damaged,
            from + ": is damaged, and nothing is taken from it: " + report->finding->reason);
    }
    return {};
}

class Import {
public:
    Import(SQLite::Database& own, SQLite::Database& other, const std::string& from)
        : m_own(own), m_other(other), m_from(from),
          m_add(own, "INSERT INTO event(chain, seq, hash, body) VALUES(?, ?, ?, ?)"),
          m_differs(own, "SELECT body FROM event WHERE chain = ? AND subject = ? AND n = ?") {}

    /// Within a transaction of the caller's on each. Throws SQLite::Exception.
    Result<void> run(ImportReport& report) {
        for (const ChainRow& chain : chainRowsOf(m_other)) {
            if (auto taken = take(chain, report); !taken) {
                return taken;
            }
        }
        if (report.rows > 0) {
            report.documents = takeDocuments();
        }
        report.joints = static_cast<std::int64_t>(m_new.size());
        return {};
    }

private:
    Result<void> take(const ChainRow& theirs, ImportReport& report) {
        const auto known = chainRowsOf(m_own);
        const auto found = std::find_if(known.begin(), known.end(), [&](const ChainRow& one) {
            return one.logId == theirs.logId;
        });
        if (found == known.end()) {
            if (theirs.seq == 0) {
                return {}; // nothing was ever written to it
            }
            return add(begin(theirs, known.back().no + 1), theirs, report);
        }
        const std::int64_t common = std::min(found->seq, theirs.seq);
        if (hashAt(m_own, *found, common) != hashAt(m_other, theirs, common)) {
            return fail(
                ErrorCode::Conflict,
                m_from + ": its rows of the log " + theirs.logId +
                    " are not those that are here: "
                    "that log was changed, or went on in two places after it was copied; "
                    "nothing is taken");
        }
        if (found->no == 1 && theirs.seq > found->seq) {
            return fail(
                ErrorCode::Conflict, m_from + ": holds " + std::to_string(theirs.seq) +
                                         " rows of this very log, which has " +
                                         std::to_string(found->seq) +
                                         ": it is the newer one; go on with it instead");
        }
        return add(*found, theirs, report);
    }

    ChainRow begin(const ChainRow& theirs, std::int64_t no) {
        SQLite::Statement insert(
            m_own, "INSERT INTO chain(no, log_id, world, genesis, seq, head) "
                   "SELECT ?, ?, world, ?, 0, ? FROM chain WHERE no = 1");
        insert.bind(1, no);
        insert.bind(2, theirs.logId);
        insert.bind(3, theirs.genesis);
        insert.bind(4, theirs.genesis);
        insert.exec();
        return {no, theirs.logId, theirs.genesis, 0, theirs.genesis};
    }

    /// The rows behind the last that is here. That each has the hash of its place is looked at by
    /// the log's own guard.
    Result<void> add(const ChainRow& ours, const ChainRow& theirs, ImportReport& report) {
        ImportedChain out{theirs.logId, ours.no, 0, ours.seq, ours.head};
        const auto others = chainsOf(m_own);
        SQLite::Statement rows(
            m_other, "SELECT seq, hash, body, subject, n FROM event WHERE chain = ? AND seq > ? "
                     "ORDER BY seq");
        rows.bind(1, theirs.no);
        rows.bind(2, ours.seq);
        while (rows.executeStep()) {
            out.toSeq = rows.getColumn(0).getInt64();
            out.head = rows.getColumn(1).getString();
            const std::string body = rows.getColumn(2).getString();
            m_add.reset();
            m_add.bind(1, ours.no);
            m_add.bind(2, out.toSeq);
            m_add.bind(3, out.head);
            m_add.bind(4, body);
            m_add.exec();
            ++out.added;
            const std::string subject = rows.getColumn(3).getString();
            if (isWeld(subject)) { // facts are numbered by each log for itself
                compare(others, ours.no, {subject, rows.getColumn(4).getInt64(), body}, report);
            }
        }
        if (out.added > 0) {
            takeSignature(ours, theirs);
        }
        report.rows += out.added;
        report.chains.push_back(std::move(out));
        return {};
    }

    void compare(
        const std::vector<std::int64_t>& chains, std::int64_t own, const LogRow& row,
        ImportReport& report) {
        bool first = row.n == 1;
        for (const std::int64_t chain : chains) {
            if (chain == own) {
                continue;
            }
            m_differs.reset();
            m_differs.bind(1, chain);
            m_differs.bind(2, row.subject);
            m_differs.bind(3, row.n);
            if (!m_differs.executeStep()) {
                continue;
            }
            first = false;
            if (m_differs.getColumn(0).getString() != row.body &&
                m_disputed.insert(row.subject).second) {
                report.conflicts.push_back({row.subject, row.n, own, chain});
            }
        }
        m_differs.reset();
        if (first) {
            m_new.insert(row.subject);
        }
    }

    std::int64_t takeDocuments() {
        SQLite::Statement here(m_own, "SELECT 1 FROM document WHERE sha256 = ?");
        SQLite::Statement insert(m_own, "INSERT INTO document(sha256, kind, body) VALUES(?, ?, ?)");
        SQLite::Statement all(m_other, "SELECT sha256, kind, body FROM document ORDER BY sha256");
        std::int64_t count = 0;
        while (all.executeStep()) {
            const std::string name = all.getColumn(0).getString();
            here.reset();
            here.bind(1, name);
            if (here.executeStep()) {
                continue;
            }
            const std::string body = all.getColumn(2).getString();
            insert.reset();
            insert.bind(1, name);
            insert.bind(2, all.getColumn(1).getString());
            insert.bind(3, body.data(), static_cast<int>(body.size()));
            insert.exec();
            ++count;
        }
        return count;
    }

    /// The other station's signature of the head, which goes with it.
    void takeSignature(const ChainRow& ours, const ChainRow& theirs) {
        constexpr const char* kTable = "head_signature";
        if (!hasTable(m_own, kTable) || !hasTable(m_other, kTable)) {
            return; // a log of an older version has none
        }
        SQLite::Statement found(
            m_other, "SELECT seq, public_key, signature FROM head_signature WHERE chain = ?");
        found.bind(1, theirs.no);
        if (!found.executeStep()) {
            return;
        }
        SQLite::Statement store(
            m_own, "INSERT OR REPLACE INTO head_signature(chain, seq, public_key, signature) "
                   "VALUES(?, ?, ?, ?)");
        store.bind(1, ours.no);
        store.bind(2, found.getColumn(0).getInt64());
        store.bind(3, found.getColumn(1).getString());
        store.bind(4, found.getColumn(2).getString());
        store.exec();
    }

    SQLite::Database& m_own;
    SQLite::Database& m_other;
    const std::string& m_from;
    SQLite::Statement m_add;
    SQLite::Statement m_differs;
    std::set<std::string> m_disputed;
    std::set<std::string> m_new;
};

/// So that the first list afterwards need not fold all that came. It can be made at any time later
/// and is no part of what was asked for.
void refreshList(SQLite::Database& database) {
    try {
        if (!hasJointCache(database)) {
            return;
        }
        while (refreshJointCache(database, kListStep)) {
        }
    } catch (const SQLite::Exception&) {
        return;
    }
}

/// All or nothing.
Result<void> takeRows(const std::string& from, const std::string& place, ImportReport& report) {
    try {
        auto own = openForWriting(place, kBusyMs);
        if (!own) {
            return tl::unexpected<Error>(std::move(own.error()));
        }
        {
            const auto other = openForReading(absolutePath(from));
            const SQLite::Transaction moment(*other);
            SQLite::Transaction whole(**own, SQLite::TransactionBehavior::IMMEDIATE);
            if (auto done = Import(**own, *other, from).run(report); !done) {
                return done;
            }
            whole.commit();
        }
        if (report.rows > 0) {
            refreshList(**own);
        }
        return {};
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, place, ErrorCode::NotWritten));
    } catch (const std::exception& thrown) {
        return fail(ErrorCode::NotWritten, place + ": " + thrown.what());
    }
}

/// The newest fact of each imported log in the own chain.
Result<std::map<std::string, LogImported>> toldBefore(const std::string& path) {
    auto reader = LogReader::open(path);
    if (!reader) {
        return tl::unexpected<Error>(std::move(reader.error()));
    }
    const auto station = reader->bodies("station");
    if (!station) {
        return tl::unexpected<Error>(station.error());
    }
    std::map<std::string, LogImported> out;
    for (const std::string& body : *station) {
        const auto fact = factFromBody(body);
        const auto* told = fact ? std::get_if<LogImported>(&fact->d) : nullptr;
        if (told != nullptr) {
            out[told->log] = *told;
        }
    }
    return out;
}

/// Through the writer, which signs the own chain's head. What is there and was not told yet is
/// told, also where an earlier import ended between the two.
Result<void>
tell(LogWriterBase& writer, const Clock& clock, const std::vector<ImportedChain>& chains) {
    const auto before = toldBefore(writer.path());
    if (!before) {
        return tl::unexpected<Error>(before.error());
    }
    for (const ImportedChain& chain : chains) {
        LogImported fact{chain.logId, chain.toSeq, chain.head};
        const auto known = before->find(chain.logId);
        if (chain.chain == 1 || (known != before->end() && known->second == fact)) {
            continue;
        }
        const auto noted = writer.note(clock.now(), "station", "station", std::move(fact));
        if (!noted) {
            return tl::unexpected<Error>(noted.error());
        }
    }
    return writer.flush();
}

/// The writer holds the log's lock the while, and has brought the log to this version and joined
/// what waited beside it.
template <class World>
Result<void> importInto(
    const std::string& from, const std::string& place, const Clock& clock, ImportReport& report) {
    auto writer = LogWriter<World>::open(place, clock);
    if (!writer) {
        return tl::unexpected<Error>(std::move(writer.error()));
    }
    if (auto ready = writer->flush(); !ready) {
        return ready;
    }
    if (auto taken = takeRows(from, place, report); !taken) {
        return taken;
    }
    return tell(*writer, clock, report.chains);
}

} // namespace

Result<ImportReport>
importLog(const std::string& from, const std::string& path, const Clock& clock) {
    ImportReport report;
    if (auto fit = checkBoth(from, path, report.world); !fit) {
        return tl::unexpected<Error>(std::move(fit.error()));
    }
    const std::string place = absolutePath(path);
    std::error_code unknown;
    if (std::filesystem::equivalent(absolutePath(from), place, unknown)) {
        return report;
    }
    const auto done = report.world == Production::kName
                          ? importInto<Production>(from, place, clock, report)
                          : importInto<Practice>(from, place, clock, report);
    if (!done) {
        return tl::unexpected<Error>(done.error());
    }
    return report;
}

} // namespace seamclock
