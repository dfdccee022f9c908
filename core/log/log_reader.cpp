#include "core/log/log_reader.h"

#include "core/log/body_codec.h"
#include "core/log/connection.h"
#include "core/log/joint_cache.h"
#include "core/log/schema.h"
#include "core/weld/event_codec.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <set>
#include <unordered_set>
#include <utility>

namespace seamclock {

namespace {

/// Whether a weld was closed or aborted. A chain at a time, see bodiesOf; and without the order by
/// n SQLite would again read the whole chain instead of the index.
class Ended {
public:
    explicit Ended(SQLite::Database& database)
        : m_chains(chainsOf(database)),
          m_query(
              database, "SELECT 1 FROM event WHERE chain = ? AND subject = ? AND kind IN "
                        "('weld_closed', 'weld_aborted') ORDER BY n DESC LIMIT 1") {}

    bool operator()(const std::string& weld) {
        return std::any_of(m_chains.begin(), m_chains.end(), [&](std::int64_t chain) {
            m_query.reset();
            m_query.bind(1, chain);
            m_query.bind(2, weld);
            return m_query.executeStep();
        });
    }

private:
    std::vector<std::int64_t> m_chains;
    SQLite::Statement m_query;
};

} // namespace

struct LogReader::Inside {
    LogFile file;
    std::string logId;
    std::unique_ptr<SQLite::Database> database;
    std::optional<CacheWatch> watch; // goes before the connection that it asks
    struct Unlisted {                // welds with rows that the cache does not know
        std::int64_t version = -1;   // of the file; -1: not looked yet
        std::unordered_set<std::string> welds;
        std::unique_ptr<SQLite::Database> lines; // null: none
    } unlisted;

    /// Calls `use()` in one read transaction, so that all it asks comes from one moment.
    template <class T, class F>
    Result<T> reading(F use) {
        try {
            SQLite::Transaction moment(*database);
            return use();
        } catch (const SQLite::Exception& thrown) {
            return tl::unexpected<Error>(errorOf(thrown, file.path, ErrorCode::Unreadable));
        } catch (const std::exception& thrown) {
            return fail(ErrorCode::Unreadable, file.path + ": " + thrown.what());
        }
    }

    bool isCacheComplete();
    void lookWhatIsUnlisted();
    void eachLine(const JointFilter& filter, const std::function<bool(const JointLine&)>& use);
    void eachMeasured(
        const std::vector<JointMeasure>& measures, const MeasureFilter& filter,
        const std::function<void(const MeasuredJoint&)>& use);
};

/// Worked out once for all questions that are asked of the file as it is.
void LogReader::Inside::lookWhatIsUnlisted() {
    const std::int64_t now = integerOf(*database, "PRAGMA data_version");
    if (now == unlisted.version) {
        return;
    }
    const auto stale = staleWelds(*database);
    unlisted.welds = {stale.begin(), stale.end()};
    unlisted.lines.reset();
    if (!stale.empty()) {
        unlisted.lines = std::make_unique<SQLite::Database>(
            ":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        remakeJointCache(*unlisted.lines);
        cacheJoints(*database, *unlisted.lines, stale);
    }
    unlisted.version = now;
}

bool LogReader::Inside::isCacheComplete() {
    if (!watch) {
        watch.emplace(*database);
    }
    return watch->isComplete();
}

/// The cache's lines, but for welds with rows that it does not know yet: theirs are worked out here
/// and merged in.
void LogReader::Inside::eachLine(
    const JointFilter& filter, const std::function<bool(const JointLine&)>& use) {
    if (isCacheComplete()) {
        JointCursor lines(*database, filter);
        JointLine line;
        while (lines.next(line) && use(line)) {
        }
        return;
    }
    lookWhatIsUnlisted();
    const std::unordered_set<std::string>& passed = unlisted.welds;
    std::optional<JointCursor> freshLines;
    if (unlisted.lines) {
        freshLines.emplace(*unlisted.lines, filter);
    }
    std::optional<JointCursor> cachedLines;
    if (hasJointCache(*database)) {
        cachedLines.emplace(*database, filter);
    }
    std::optional<JointLine> a;
    std::optional<JointLine> b;
    const auto advance = [&](std::optional<JointCursor>& lines, std::optional<JointLine>& line,
                             bool cached) {
        JointLine next;
        while (lines && lines->next(next)) {
            if (!cached || passed.count(next.weld) == 0) {
                line = std::move(next);
                return;
            }
        }
        lines.reset();
        line.reset();
    };
    advance(cachedLines, a, true);
    advance(freshLines, b, false);
    while (a || b) {
        const bool first = a && (!b || isNewer(*a, *b));
        if (!use(first ? *a : *b)) {
            return;
        }
        if (first) {
            advance(cachedLines, a, true);
        } else {
            advance(freshLines, b, false);
        }
    }
}

/// As the lines.
void LogReader::Inside::eachMeasured(
    const std::vector<JointMeasure>& measures, const MeasureFilter& filter,
    const std::function<void(const MeasuredJoint&)>& use) {
    std::unordered_set<std::int64_t> passed; // the cache's lines of welds that went on
    const bool complete = isCacheComplete();
    const bool here = complete || hasJointCache(*database);
    if (!complete) {
        lookWhatIsUnlisted();
        if (here) {
            SQLite::Statement place(*database, "SELECT id FROM joint WHERE weld = ?");
            for (const std::string& weld : unlisted.welds) {
                place.reset();
                place.bind(1, weld);
                if (place.executeStep()) {
                    passed.insert(place.getColumn(0).getInt64());
                }
            }
        }
    }
    std::optional<MeasureCursor> cached;
    std::optional<MeasureCursor> added;
    if (here) {
        cached.emplace(*database, measures, filter);
    }
    if (!complete && unlisted.lines) {
        added.emplace(*unlisted.lines, measures, filter);
    }
    MeasuredJoint a;
    MeasuredJoint b;
    const auto nextOf =
        [&passed](std::optional<MeasureCursor>& from, MeasuredJoint& joint, bool skips) {
            while (from && from->next(joint)) {
                if (!skips || passed.count(joint.place) == 0) {
                    return true;
                }
            }
            return false;
        };
    bool hasA = nextOf(cached, a, true);
    bool hasB = nextOf(added, b, false);
    while (hasA || hasB) {
        const bool first = hasA && (!hasB || a.openedUtcMs <= b.openedUtcMs);
        use(first ? a : b);
        if (first) {
            hasA = nextOf(cached, a, true);
        } else {
            hasB = nextOf(added, b, false);
        }
    }
}

LogReader::LogReader(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
LogReader::LogReader(LogReader&&) noexcept = default;
LogReader& LogReader::operator=(LogReader&&) noexcept = default;
LogReader::~LogReader() = default;

Result<LogReader> LogReader::open(const std::string& path) {
    auto file = inspectLogFile(path);
    if (!file) {
        return tl::unexpected<Error>(std::move(file.error()));
    }
    auto inside = std::make_unique<Inside>();
    inside->file = std::move(*file);
    try {
        inside->database = openForReading(inside->file.path);
        SQLite::Database& database = *inside->database;
        const auto version = integerOf(database, "PRAGMA user_version");
        const int newest = migrations().back().version;
        if (version > newest) {
            return fail(
                ErrorCode::Foreign, path + ": was written by a newer program (version " +
                                        std::to_string(version) + ", this program reads 1 to " +
                                        std::to_string(newest) + ")");
        }
        for (const char* table : {"chain", "event", "document"}) {
            if (!hasTable(database, table)) {
                return fail(ErrorCode::Damaged, path + ": the table \"" + table + "\" is gone");
            }
        }
        SQLite::Statement chain(database, "SELECT log_id, world FROM chain WHERE no = 1");
        if (!chain.executeStep()) {
            return fail(ErrorCode::Damaged, path + ": the log has no chain");
        }
        inside->logId = chain.getColumn(0).getString();
        if (chain.getColumn(1).getString() != inside->file.world) {
            return fail(
                ErrorCode::Damaged, path + ": the chain is of the world \"" +
                                        chain.getColumn(1).getString() + "\", and the file of \"" +
                                        inside->file.world + "\"");
        }
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, path, ErrorCode::Unreadable));
    }
    return LogReader(std::move(inside));
}

const std::string& LogReader::path() const {
    return m_inside->file.path;
}

const std::string& LogReader::world() const {
    return m_inside->file.world;
}

const std::string& LogReader::logId() const {
    return m_inside->logId;
}

Result<LogHead> LogReader::head() {
    return m_inside->reading<LogHead>([&]() -> Result<LogHead> {
        SQLite::Statement query(*m_inside->database, "SELECT seq, head FROM chain WHERE no = 1");
        if (!query.executeStep()) {
            return fail(ErrorCode::Damaged, path() + ": the log has no chain");
        }
        return LogHead{query.getColumn(0).getInt64(), query.getColumn(1).getString()};
    });
}

Result<std::vector<std::string>> LogReader::bodies(const std::string& subject) {
    return m_inside->reading<std::vector<std::string>>([&]() -> Result<std::vector<std::string>> {
        return bodiesOf(*m_inside->database, subject);
    });
}

Result<std::vector<std::string>>
LogReader::bodiesBeside(const std::string& weld, const std::string& subject) {
    using Bodies = std::vector<std::string>;
    return m_inside->reading<Bodies>([&]() -> Result<Bodies> {
        SQLite::Database& database = *m_inside->database;
        SQLite::Statement opened(
            database, "SELECT 1 FROM event WHERE chain = ? AND subject = ? AND n = 1");
        Bodies out;
        for (const std::int64_t chain : chainsOf(database)) {
            opened.reset();
            opened.bind(1, chain);
            opened.bind(2, weld);
            if (!opened.executeStep()) {
                continue;
            }
            SQLite::Statement query(
                database, "SELECT body FROM event WHERE chain = ? AND subject = ? ORDER BY n");
            query.bind(1, chain);
            query.bind(2, subject);
            while (query.executeStep()) {
                out.push_back(query.getColumn(0).getString());
            }
            break;
        }
        return out;
    });
}

Result<std::vector<std::string>> LogReader::bodiesFrom(const std::string& family) {
    auto named = namedBodiesFrom(family);
    if (!named) {
        return tl::unexpected<Error>(std::move(named.error()));
    }
    std::vector<std::string> out;
    out.reserve(named->size());
    for (NamedBody& one : *named) {
        out.push_back(std::move(one.body));
    }
    return out;
}

Result<std::vector<NamedBody>> LogReader::namedBodiesFrom(const std::string& family) {
    using Bodies = std::vector<NamedBody>;
    return m_inside->reading<Bodies>([&]() -> Result<Bodies> {
        std::string behind = family;
        ++behind.back();
        // "+": few rows are asked for, so they are found by their subject and then sorted; SQLite
        // would rather read all rows of the log in their order.
        SQLite::Statement query(
            *m_inside->database, "SELECT subject, n, body FROM event WHERE chain = 1 AND "
                                 "subject >= ? AND subject < ? ORDER BY +seq");
        query.bind(1, family);
        query.bind(2, behind);
        Bodies out;
        while (query.executeStep()) {
            out.push_back(
                {query.getColumn(0).getString(), query.getColumn(1).getInt64(),
                 query.getColumn(2).getString()});
        }
        return out;
    });
}

Result<std::optional<RowSpan>> LogReader::span(const std::string& subject) {
    using Found = std::optional<RowSpan>;
    return m_inside->reading<Found>([&]() -> Result<Found> {
        SQLite::Statement query(
            *m_inside->database,
            "SELECT min(seq), max(seq) FROM event INDEXED BY event_once "
            "WHERE chain = 1 AND subject = ?"); // else every row is read
        query.bind(1, subject);
        if (!query.executeStep() || query.getColumn(0).isNull()) {
            return Found{};
        }
        return Found{RowSpan{query.getColumn(0).getInt64(), query.getColumn(1).getInt64()}};
    });
}

Result<std::vector<std::int64_t>> LogReader::rowsOf(const std::string& subject) {
    using Seqs = std::vector<std::int64_t>;
    return m_inside->reading<Seqs>([&]() -> Result<Seqs> {
        SQLite::Statement query(
            *m_inside->database, "SELECT seq FROM event INDEXED BY event_once "
                                 "WHERE chain = 1 AND subject = ? ORDER BY n");
        query.bind(1, subject);
        Seqs out;
        while (query.executeStep()) {
            out.push_back(query.getColumn(0).getInt64());
        }
        return out;
    });
}

Result<std::string> LogReader::dispute(const std::string& weld) {
    return m_inside->reading<std::string>([&]() -> Result<std::string> {
        std::string said;
        bodiesOf(*m_inside->database, weld, &said);
        return said;
    });
}

Result<std::vector<Event>> LogReader::weldEvents(const std::string& subject) {
    const auto stored = bodies(subject);
    if (!stored) {
        return tl::unexpected<Error>(stored.error());
    }
    std::vector<Event> out;
    out.reserve(stored->size());
    for (const std::string& body : *stored) {
        auto event = eventFromBody(body);
        if (!event) {
            return fail(
                ErrorCode::Damaged, path() + ": " + subject + ", event " +
                                        std::to_string(out.size() + 1) + ": " +
                                        event.error().detail);
        }
        out.push_back(std::move(*event));
    }
    return out;
}

Result<std::optional<std::string>> LogReader::body(const std::string& subject, std::int64_t n) {
    using Found = std::optional<std::string>;
    return m_inside->reading<Found>([&]() -> Result<Found> {
        SQLite::Statement query(
            *m_inside->database,
            "SELECT body FROM event WHERE chain = ? AND subject = ? AND n = ?");
        for (const std::int64_t chain : chainsOf(*m_inside->database)) {
            query.reset();
            query.bind(1, chain);
            query.bind(2, subject);
            query.bind(3, n);
            if (query.executeStep()) {
                return Found(query.getColumn(0).getString());
            }
        }
        return Found();
    });
}

Result<std::int64_t> LogReader::lastN(const std::string& subject) {
    return m_inside->reading<std::int64_t>([&]() -> Result<std::int64_t> {
        std::int64_t last = 0;
        SQLite::Statement query(
            *m_inside->database,
            "SELECT coalesce(max(n), 0) FROM event WHERE chain = ? AND subject = ?");
        for (const std::int64_t chain : chainsOf(*m_inside->database)) {
            if (chain > 1 && !isWeld(subject)) {
                break; // numbered by each log for itself
            }
            query.reset();
            query.bind(1, chain);
            query.bind(2, subject);
            query.executeStep();
            last = std::max(last, query.getColumn(0).getInt64());
        }
        return last;
    });
}

Result<std::int64_t> LogReader::highestNumber() {
    return m_inside->reading<std::int64_t>([&]() -> Result<std::int64_t> {
        SQLite::Database& database = *m_inside->database;
        std::int64_t highest = 0;
        if (hasJointCache(database)) {
            highest = integerOf(database, "SELECT coalesce(max(number), 0) FROM joint");
        }
        SQLite::Statement since(
            database, "SELECT coalesce(max(body->>'$.d.number'), 0) FROM event "
                      "WHERE chain = ? AND seq > ? AND kind = 'weld_opened'");
        for (const std::int64_t chain : chainsOf(database)) {
            since.reset();
            since.bind(1, chain);
            since.bind(2, cachedTo(database, chain));
            since.executeStep();
            highest = std::max(highest, since.getColumn(0).getInt64());
        }
        return highest;
    });
}

Result<std::vector<std::string>> LogReader::openWelds() {
    using Subjects = std::vector<std::string>;
    return m_inside->reading<Subjects>([&]() -> Result<Subjects> {
        SQLite::Database& database = *m_inside->database;
        Ended ended(database);
        SQLite::Statement own(
            database, "SELECT 1 FROM event WHERE chain = 1 AND subject = ? AND n = 1");
        const bool others = chainsOf(database).size() > 1;
        const auto isOpenHere = [&](const std::string& subject) {
            if (!others) {
                return !ended(subject);
            }
            own.reset();
            own.bind(1, subject);
            return own.executeStep() && foldedJoint(database, subject).line.open;
        };
        std::vector<std::pair<std::int64_t, std::string>> found;
        std::unordered_set<std::string> seen;
        const auto take = [&](SQLite::Statement& query) {
            while (query.executeStep()) {
                std::string subject = query.getColumn(0).getString();
                if (seen.insert(subject).second && isOpenHere(subject)) {
                    found.emplace_back(query.getColumn(1).getInt64(), std::move(subject));
                }
            }
        };
        SQLite::Statement since(
            database, "SELECT subject, body->>'$.at.utc_ms' FROM event "
                      "WHERE chain = ? AND seq > ? AND kind = 'weld_opened'");
        for (const std::int64_t chain : chainsOf(database)) {
            since.reset();
            since.bind(1, chain);
            since.bind(2, cachedTo(database, chain));
            take(since);
        }
        if (hasJointCache(database)) {
            SQLite::Statement cached(database, "SELECT weld, opened_ms FROM joint WHERE open = 1");
            take(cached);
        }
        std::sort(found.begin(), found.end());
        Subjects out;
        for (auto& [opened, subject] : found) {
            out.push_back(std::move(subject));
        }
        return out;
    });
}

Result<std::vector<std::string>> LogReader::weldsNumbered(std::int64_t number) {
    using Subjects = std::vector<std::string>;
    return m_inside->reading<Subjects>([&]() -> Result<Subjects> {
        SQLite::Database& database = *m_inside->database;
        std::vector<std::string> out;
        const auto stale = staleWelds(database);
        const std::unordered_set<std::string> passed(stale.begin(), stale.end());
        if (hasJointCache(database)) {
            SQLite::Statement query(
                database, "SELECT weld FROM joint WHERE number = ? ORDER BY weld");
            query.bind(1, number);
            while (query.executeStep()) {
                std::string weld = query.getColumn(0).getString();
                if (passed.count(weld) == 0) {
                    out.push_back(std::move(weld));
                }
            }
        }
        for (const std::string& weld : stale) {
            if (foldedJoint(database, weld).line.number == number) {
                out.push_back(weld);
            }
        }
        std::sort(out.begin(), out.end());
        return out;
    });
}

Result<std::vector<JointLine>> LogReader::joints(const JointFilter& filter) {
    using Lines = std::vector<JointLine>;
    if (auto sound = checkFilter(filter); !sound) {
        return tl::unexpected<Error>(std::move(sound.error()));
    }
    return m_inside->reading<Lines>([&]() -> Result<Lines> {
        Lines out;
        m_inside->eachLine(filter, [&](const JointLine& line) {
            out.push_back(line);
            return out.size() < filter.limit;
        });
        return out;
    });
}

Result<std::vector<std::string>> LogReader::values(JointField field) {
    using Values = std::vector<std::string>;
    return m_inside->reading<Values>([&]() -> Result<Values> {
        SQLite::Database& database = *m_inside->database;
        Values cached;
        if (hasJointCache(database)) {
            cached = cachedValues(database, field);
        }
        if (m_inside->isCacheComplete()) {
            return cached;
        }
        std::set<std::string> found(cached.begin(), cached.end());
        m_inside->lookWhatIsUnlisted();
        if (m_inside->unlisted.lines) {
            const auto fresh = cachedValues(*m_inside->unlisted.lines, field);
            found.insert(fresh.begin(), fresh.end());
        }
        return Values(found.begin(), found.end());
    });
}

Result<std::vector<std::string>>
LogReader::days(std::size_t most, const std::optional<std::string>& before) {
    using Days = std::vector<std::string>;
    JointFilter filter;
    filter.toDay = before;
    if (auto sound = checkFilter(filter); !sound) {
        return tl::unexpected<Error>(std::move(sound.error()));
    }
    return m_inside->reading<Days>([&]() -> Result<Days> {
        SQLite::Database& database = *m_inside->database;
        Days cached;
        if (hasJointCache(database)) {
            cached = cachedDays(database, most, before);
        }
        if (m_inside->isCacheComplete()) {
            return cached;
        }
        std::set<std::string, std::greater<>> found(cached.begin(), cached.end());
        m_inside->lookWhatIsUnlisted();
        if (m_inside->unlisted.lines) {
            const auto fresh = cachedDays(*m_inside->unlisted.lines, most, before);
            found.insert(fresh.begin(), fresh.end());
        }
        found.erase(""); // of a weld whose opening can't be read
        Days out(found.begin(), found.end());
        out.resize(std::min(out.size(), most));
        return out;
    });
}

Result<void>
LogReader::eachJoint(const JointFilter& filter, const std::function<bool(const JointLine&)>& use) {
    JointFilter all = filter;
    all.after.reset();
    all.limit = 1;
    if (auto sound = checkFilter(all); !sound) {
        return sound;
    }
    return m_inside->reading<void>([&]() -> Result<void> {
        m_inside->eachLine(all, use);
        return {};
    });
}

Result<std::int64_t> LogReader::unlistedRows() {
    return m_inside->reading<std::int64_t>([&]() -> Result<std::int64_t> {
        std::int64_t rows = 0;
        SQLite::Statement head(*m_inside->database, "SELECT seq FROM chain WHERE no = ?");
        for (const std::int64_t chain : chainsOf(*m_inside->database)) {
            head.reset();
            head.bind(1, chain);
            if (head.executeStep()) {
                rows += head.getColumn(0).getInt64() - cachedTo(*m_inside->database, chain);
            }
        }
        return rows;
    });
}

Result<void> LogReader::eachMeasured(
    const std::vector<JointMeasure>& measures, const MeasureFilter& filter,
    const std::function<void(const MeasuredJoint&)>& use) {
    JointFilter days;
    days.fromDay = filter.fromDay;
    days.toDay = filter.toDay;
    if (auto sound = checkFilter(days); !sound) {
        return sound;
    }
    return m_inside->reading<void>([&]() -> Result<void> {
        m_inside->eachMeasured(measures, filter, use);
        return {};
    });
}

Result<void>
LogReader::eachRow(const std::function<bool(const StoredRow&)>& use, std::int64_t fromSeq) {
    return m_inside->reading<void>([&]() -> Result<void> {
        SQLite::Statement query(
            *m_inside->database,
            "SELECT seq, hash, body FROM event WHERE chain = 1 AND seq >= ? ORDER BY seq");
        query.bind(1, fromSeq);
        while (query.executeStep()) {
            const StoredRow row{
                query.getColumn(0).getInt64(), query.getColumn(1).getString(),
                query.getColumn(2).getString()};
            if (!use(row)) {
                break;
            }
        }
        return {};
    });
}

Result<void> LogReader::eachImportedRow(const std::function<bool(const StoredRow&)>& use) {
    return m_inside->reading<void>([&]() -> Result<void> {
        SQLite::Statement query(
            *m_inside->database,
            "SELECT event.seq, hash, body, log_id FROM event JOIN chain ON chain.no = event.chain "
            "WHERE event.chain > 1 ORDER BY event.chain, event.seq");
        while (query.executeStep()) {
            const StoredRow row{
                query.getColumn(0).getInt64(), query.getColumn(1).getString(),
                query.getColumn(2).getString(), query.getColumn(3).getString()};
            if (!use(row)) {
                break;
            }
        }
        return {};
    });
}

Result<std::optional<LogDocument>> LogReader::document(const std::string& sha256) {
    using Found = std::optional<LogDocument>;
    return m_inside->reading<Found>([&]() -> Result<Found> {
        SQLite::Statement query(
            *m_inside->database, "SELECT kind, body FROM document WHERE sha256 = ?");
        query.bind(1, sha256);
        if (!query.executeStep()) {
            return Found{};
        }
        return Found{
            LogDocument{sha256, query.getColumn(0).getString(), query.getColumn(1).getString()}};
    });
}

} // namespace seamclock
