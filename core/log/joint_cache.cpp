#include "core/log/joint_cache.h"

#include "core/log/body_codec.h"
#include "core/log/connection.h"
#include "core/log/rows.h"
#include "core/log/schema.h"
#include "core/weld/event_codec.h"
#include "core/weld/record.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <array>
#include <chrono>
#include <iterator>
#include <set>
#include <string_view>
#include <tuple>
#include <utility>
#include <variant>

namespace seamclock {

namespace {

constexpr const char* kColumns =
    "weld, number, type, opened_ms, offset_min, day, bench, opened_by, seam, job, "
    "material, thickness_um, length_um, procedure, phase, open, verdict, verdict_now, findings, "
    "events, trouble";
constexpr int kColumnCount = 21;

constexpr std::int64_t kDayMs = 24 * 60 * 60 * 1000;

/// UTC midnight of "2030-01-07"; absent if that is no date.
std::optional<std::int64_t> midnight(const std::string& day) {
    const auto digits = [&](std::size_t from, std::size_t count) {
        return std::all_of(
            day.begin() + static_cast<std::ptrdiff_t>(from),
            day.begin() + static_cast<std::ptrdiff_t>(from + count),
            [](char c) { return c >= '0' && c <= '9'; });
    };
    if (day.size() != 10 || day[4] != '-' || day[7] != '-' || !digits(0, 4) || !digits(5, 2) ||
        !digits(8, 2)) {
        return std::nullopt;
    }
    const std::chrono::year_month_day date(
        std::chrono::year(std::stoi(day.substr(0, 4))),
        std::chrono::month(static_cast<unsigned>(std::stoi(day.substr(5, 2)))),
        std::chrono::day(static_cast<unsigned>(std::stoi(day.substr(8, 2)))));
    if (!date.ok()) {
        return std::nullopt;
    }
    return std::chrono::sys_days(date).time_since_epoch().count() * kDayMs;
}

// The id of a line is the instant of its opening [ms] and, in the lowest bits, a place among those
// opened at the same: a list in the order of ids, which is that of the table and of every index, is
// in the order of time. So the first page is found without sorting, however many joints match.
// Instants from 1970 to 2109 have ids of their own; those outside share the first or the last.
constexpr int kPlaceBits = 21;
constexpr std::int64_t kPlaces = std::int64_t{1} << kPlaceBits;
constexpr std::int64_t kLastInstant = (std::int64_t{1} << 42) - 1;

std::pair<std::int64_t, std::int64_t> idsOpenedAt(std::int64_t openedMs) {
    const std::int64_t first = std::clamp<std::int64_t>(openedMs, 0, kLastInstant) * kPlaces;
    return {first, first + (kPlaces - 1)};
}

std::vector<std::string> wordsOf(const std::string& text) {
    std::vector<std::string> out;
    bool inside = false;
    for (const char c : text) {
        const bool space = c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\0';
        if (!space && !inside) {
            out.emplace_back();
        }
        inside = !space;
        if (inside) {
            out.back() += c;
        }
    }
    return out;
}

/// What the index of texts is asked for: each word as the beginning of a word, all of them. For
/// such a beginning SQLite first gathers whatever it fits, up to a million lines for one page; for
/// whole terms it goes on only as far as the page does. So the terms that begin so are looked up
/// and asked for, unless they are many: then each has few lines, or the beginning is so short that
/// it has an index of its own.
class Search {
public:
    Search(
        SQLite::Database& cache, const std::string& text,
        const std::map<std::string, std::string>& names) {
        for (const std::string& word : wordsOf(text)) {
            std::string asked = wordIn(cache, word);
            for (const std::string& id : idsCalled(word, names)) {
                asked += (asked.empty() ? "" : " OR ") + quoted(id);
            }
            m_nothing = m_nothing || asked.empty();
            m_asked += (m_asked.empty() ? "(" : " AND (") + asked + ")";
        }
    }

    bool asksNothing() const { return m_asked.empty(); }
    bool findsNothing() const { return m_nothing; } // a word that no text has
    const std::string& asked() const { return m_asked; }

private:
    static constexpr std::size_t kMostTerms = 24;

    static std::string quoted(const std::string& word) {
        std::string out = "\"";
        for (const char c : word) {
            out.append(c == '"' ? 2 : 1, c);
        }
        return out + "\"";
    }

    /// Those of whose names a part begins so; letters as ASCII has them count alike, large and
    /// small.
    static std::vector<std::string>
    idsCalled(const std::string& word, const std::map<std::string, std::string>& names) {
        const auto lower = [](std::string text) {
            std::transform(text.begin(), text.end(), text.begin(), [](char c) {
                return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
            });
            return text;
        };
        std::vector<std::string> out;
        for (const auto& [id, name] : names) {
            const auto parts = wordsOf(lower(name));
            if (std::any_of(parts.begin(), parts.end(), [&](const std::string& part) {
                    return part.rfind(lower(word), 0) == 0;
                })) {
                out.push_back(id);
            }
        }
        return out;
    }

    /// Empty: no text has it.
    std::string wordIn(SQLite::Database& cache, const std::string& word) {
        const auto isPlain = [](char c) {
            return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        };
        if (!std::all_of(word.begin(), word.end(), isPlain)) {
            return quoted(word) + "*"; // not the one term that it is, or in other letters
        }
        std::string terms;
        std::size_t count = 0;
        std::string from = word;
        std::transform(from.begin(), from.end(), from.begin(), [](char c) {
            return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        });
        const std::string end = from + "\xF4\x8F\xBF\xBF"; // the last character that there is
        if (!m_terms) {
            cache.exec("CREATE VIRTUAL TABLE IF NOT EXISTS temp.joint_term "
                       "USING fts5vocab('main', 'joint_text', 'instance')");
            m_terms.emplace(
                cache, "SELECT term FROM temp.joint_term WHERE term >= ? AND term <= ? LIMIT 1");
        }
        for (;;) {
            m_terms->reset();
            m_terms->bind(1, from);
            m_terms->bind(2, end);
            if (!m_terms->step()) {
                break;
            }
            if (++count > kMostTerms) {
                return quoted(word) + "*";
            }
            const std::string term(m_terms->text(0));
            terms += (terms.empty() ? "" : " OR ") + quoted(term);
            from = term + '\x01';
        }
        return terms;
    }

    std::optional<Rows> m_terms;
    std::string m_asked;
    bool m_nothing = false;
};

/// What can be asked for by name, each with an index of its own.
struct Named {
    const char* column;
    std::optional<std::string> JointFilter::*value;
};
constexpr std::array kNamed{
    Named{"bench", &JointFilter::bench}, Named{"opened_by", &JointFilter::by},
    Named{"material", &JointFilter::material}, Named{kJudged, &JointFilter::verdict},
    Named{"seam", &JointFilter::seam}};

/// The place in kNamed of what has the fewest lines, if that is few; otherwise one past the end, as
/// it is where only one thing is asked for.
std::size_t rarestOf(SQLite::Database& cache, const JointFilter& filter, bool search) {
    constexpr std::int64_t kFew = 1'000;
    std::size_t rarest = kNamed.size();
    const auto asked = std::count_if(
        kNamed.begin(), kNamed.end(), [&](const Named& one) { return filter.*one.value; });
    if (asked + (search ? 1 : 0) < 2) {
        return rarest;
    }
    std::int64_t fewest = kFew;
    for (std::size_t i = 0; i < kNamed.size(); ++i) {
        if (const auto& value = filter.*kNamed[i].value) {
            Rows count(
                cache, std::string("SELECT count(*) FROM (SELECT 1 FROM joint WHERE ") +
                           kNamed[i].column + " = ? LIMIT ?)");
            count.bind(1, *value);
            count.bind(2, fewest + 1);
            count.step();
            if (count.number(0) <= fewest) {
                fewest = count.number(0);
                rarest = i;
            }
        }
    }
    return rarest;
}

void readLine(Rows& row, JointLine& line) {
    int at = 0;
    const auto text = [&](std::string& into) { into.assign(row.text(at++)); };
    const auto number = [&] { return row.number(at++); };
    text(line.weld);
    line.number = number();
    text(line.type);
    line.openedUtc = Milliseconds(number());
    line.offset = std::chrono::minutes(number());
    text(line.day);
    text(line.bench);
    text(line.by);
    text(line.seam);
    text(line.job);
    text(line.material);
    line.thicknessUm = number();
    line.lengthUm = number();
    text(line.procedure);
    text(line.phase);
    line.open = number() != 0;
    text(line.verdict);
    text(line.verdictNow);
    line.findings = number();
    line.events = number();
    text(line.trouble);
}

void bindLine(SQLite::Statement& query, const JointLine& line) {
    int at = 0;
    const auto text = [&](const std::string& value) { query.bind(++at, value); };
    const auto number = [&](std::int64_t value) { query.bind(++at, value); };
    text(line.weld);
    number(line.number);
    text(line.type);
    number(line.openedUtc.count());
    number(line.offset.count());
    text(line.day);
    text(line.bench);
    text(line.by);
    text(line.seam);
    text(line.job);
    text(line.material);
    number(line.thicknessUm);
    number(line.lengthUm);
    text(line.procedure);
    text(line.phase);
    number(line.open ? 1 : 0);
    text(line.verdict);
    text(line.verdictNow);
    number(line.findings);
    number(line.events);
    text(line.trouble);
}

Result<Weld> foldOf(const std::vector<std::string>& bodies) {
    std::vector<Event> events;
    events.reserve(bodies.size());
    for (const std::string& body : bodies) {
        auto event = eventFromBody(body);
        if (!event) {
            return tl::unexpected<Error>(std::move(event.error()));
        }
        events.push_back(std::move(*event));
    }
    return fold(events);
}

/// As much as its events say without making a weld.
JointLine
damagedLine(const std::string& weld, const std::vector<std::string>& bodies, std::string trouble) {
    JointLine line;
    line.weld = weld;
    line.phase = "damaged";
    line.events = static_cast<std::int64_t>(bodies.size());
    line.trouble = std::move(trouble);
    for (const std::string& body : bodies) {
        const auto event = eventFromBody(body);
        if (!event) {
            continue;
        }
        if (const auto* opened = std::get_if<WeldOpened>(&event->d)) {
            line.number = opened->number;
            line.type = toString(opened->type);
            line.openedUtc = event->at.utc;
            line.offset = event->at.offset;
            line.day = toIsoDate(event->at.utc, event->at.offset);
            line.bench = opened->bench;
            line.by = event->by;
            line.seam = opened->seam.value_or("");
            line.job = opened->job.value_or("");
        }
        if (std::holds_alternative<WeldClosed>(event->d) ||
            std::holds_alternative<WeldAborted>(event->d)) {
            line.open = false;
        }
    }
    return line;
}

/// The welds that have rows of a chain in (after, upTo].
void addWelds(
    SQLite::Database& database, std::int64_t chain, std::int64_t after, std::int64_t upTo,
    std::set<std::string>& out) {
    SQLite::Statement query(
        database, "SELECT DISTINCT subject FROM event WHERE chain = ? AND seq > ? AND seq <= ?");
    query.bind(1, chain);
    query.bind(2, after);
    query.bind(3, upTo);
    while (query.executeStep()) {
        std::string subject = query.getColumn(0).getString();
        if (isWeld(subject)) {
            out.insert(std::move(subject));
        }
    }
}

} // namespace

bool isNewer(const JointLine& a, const JointLine& b) {
    return std::tie(a.openedUtc, a.number, a.weld) > std::tie(b.openedUtc, b.number, b.weld);
}

std::vector<std::int64_t> chainsOf(SQLite::Database& database) {
    std::vector<std::int64_t> out;
    SQLite::Statement query(database, "SELECT no FROM chain ORDER BY no");
    while (query.executeStep()) {
        out.push_back(query.getColumn(0).getInt64());
    }
    return out;
}

Result<void> checkFilter(const JointFilter& filter) {
    for (const auto* day : {&filter.fromDay, &filter.toDay}) {
        if (*day && !midnight(**day)) {
            return fail(
                ErrorCode::Malformed,
                "the date \"" + **day + "\" is none; allowed 0000-01-01 to 9999-12-31");
        }
    }
    if (filter.limit == 0) {
        return fail(ErrorCode::OutOfRange, "a page of 0 lines; at least 1");
    }
    return {};
}

std::vector<std::string>
bodiesOf(SQLite::Database& events, const std::string& subject, std::string* dispute) {
    // One chain at a time: for "chain IN (…)" SQLite reads whole chains instead of the index.
    using Bodies = std::vector<std::pair<std::int64_t, std::string>>; // by n
    SQLite::Statement query(
        events, "SELECT n, body FROM event WHERE chain = ? AND subject = ? ORDER BY n");
    Bodies found;
    std::int64_t first = 0;
    for (const std::int64_t chain : chainsOf(events)) {
        if (chain > 1 && !isWeld(subject)) {
            break;
        }
        Bodies here;
        query.reset();
        query.bind(1, chain);
        query.bind(2, subject);
        while (query.executeStep()) {
            here.emplace_back(query.getColumn(0).getInt64(), query.getColumn(1).getString());
        }
        if (found.empty()) {
            first = chain;
            found = std::move(here);
            continue;
        }
        Bodies both;
        std::set_union(
            found.begin(), found.end(), here.begin(), here.end(), std::back_inserter(both));
        const auto twice =
            std::adjacent_find(both.begin(), both.end(), [](const auto& a, const auto& b) {
                return a.first == b.first;
            });
        if (twice == both.end()) {
            found = std::move(both);
        } else if (dispute != nullptr && dispute->empty()) {
            *dispute = "event " + std::to_string(twice->first) + " is another in chain " +
                       std::to_string(chain) + " than in chain " + std::to_string(first);
        }
    }
    std::vector<std::string> out;
    out.reserve(found.size());
    for (auto& [n, body] : found) {
        out.push_back(std::move(body));
    }
    return out;
}

CachedJoint foldedJoint(SQLite::Database& events, const std::string& weld) {
    std::string dispute;
    const auto bodies = bodiesOf(events, weld, &dispute);
    const auto folded = foldOf(bodies);
    if (!folded) {
        return {damagedLine(weld, bodies, folded.error().detail), "", {}};
    }
    CachedJoint out = cachedJointOf(record(*folded));
    out.line.trouble = std::move(dispute);
    return out;
}

CachedJoint cachedJointOf(const WeldRecord& record) {
    return {lineOf(record), textOf(record), measuresOf(record)};
}

bool hasJointCache(SQLite::Database& database) {
    const auto tablesOf = [](SQLite::Database& from) {
        std::vector<std::string> out;
        SQLite::Statement query(
            from,
            "SELECT sql FROM sqlite_schema WHERE name IN ('joint', 'joint_gone', "
            "'joint_measure', 'joint_state', 'joint_text', 'joint_unmeasured') ORDER BY name");
        while (query.executeStep()) {
            out.push_back(query.getColumn(0).getString());
        }
        return out;
    };
    static const std::vector<std::string> kOurs = [&] {
        SQLite::Database fresh(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        remakeJointCache(fresh);
        return tablesOf(fresh);
    }();
    return tablesOf(database) == kOurs;
}

void addMissingIndexes(SQLite::Database& database) {
    database.exec("CREATE INDEX IF NOT EXISTS joint_seam ON joint(seam);"
                  "CREATE INDEX IF NOT EXISTS joint_job ON joint(job, seam);"
                  "CREATE INDEX IF NOT EXISTS joint_day ON joint(day);"
                  "DROP INDEX IF EXISTS joint_verdict;");
    database.exec(std::string("CREATE INDEX IF NOT EXISTS joint_judged ON joint(") + kJudged + ")");
}

struct CacheWatch::Inside {
    explicit Inside(SQLite::Database& of) : database(of), schema(of, "PRAGMA schema_version") {}

    SQLite::Database& database;
    Rows schema;
    std::optional<Rows> behind; // only where the cache is
    std::int64_t lookedAt = -1; // at this version of the file's tables
    bool here = false;
};

CacheWatch::CacheWatch(SQLite::Database& database) : m_inside(std::make_unique<Inside>(database)) {}
CacheWatch::CacheWatch(CacheWatch&&) noexcept = default;
CacheWatch& CacheWatch::operator=(CacheWatch&&) noexcept = default;
CacheWatch::~CacheWatch() = default;

bool CacheWatch::isHere() {
    Inside& in = *m_inside;
    in.schema.step();
    const std::int64_t now = in.schema.number(0);
    in.schema.reset();
    if (now != in.lookedAt) {
        in.here = hasJointCache(in.database);
        in.behind.reset();
        in.lookedAt = now;
    }
    return in.here;
}

bool CacheWatch::isComplete() {
    if (!isHere()) {
        return false;
    }
    Inside& in = *m_inside;
    if (!in.behind) {
        in.behind.emplace(
            in.database,
            "SELECT 1 FROM chain c LEFT JOIN joint_state s ON s.chain = c.no AND s.seq = c.seq AND "
            "s.rules = ? AND s.lines = ? WHERE s.chain IS NULL");
        in.behind->bind(1, kVerdictRules);
        in.behind->bind(2, kJointLines);
    }
    const bool behind = in.behind->step();
    in.behind->reset();
    return !behind;
}

std::int64_t cachedTo(SQLite::Database& database, std::int64_t chain) {
    if (!hasJointCache(database)) {
        return 0;
    }
    SQLite::Statement query(
        database, "SELECT s.seq FROM joint_state s JOIN chain c ON c.no = s.chain WHERE s.chain = "
                  "? AND s.seq <= c.seq AND s.rules = ? AND s.lines = ?");
    query.bind(1, chain);
    query.bind(2, kVerdictRules);
    query.bind(3, kJointLines);
    return query.executeStep() ? query.getColumn(0).getInt64() : 0;
}

std::vector<std::string> staleWelds(SQLite::Database& database) {
    std::set<std::string> welds;
    for (const std::int64_t chain : chainsOf(database)) {
        addWelds(database, chain, cachedTo(database, chain), INT64_MAX, welds);
    }
    return {welds.begin(), welds.end()};
}

struct JointStore::Inside {
    explicit Inside(SQLite::Database& cache)
        : idNow(cache, "SELECT id FROM joint WHERE weld = ?"),
          idFree(
              cache, "SELECT coalesce(max(id), ?1 - 1) + 1 FROM joint WHERE id >= ?1 AND id <= ?2"),
          store(
              cache,
              std::string("INSERT INTO joint(") + kColumns +
                  ", id) VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
                  "ON CONFLICT(weld) DO UPDATE SET number = excluded.number, type = excluded.type, "
                  "opened_ms = excluded.opened_ms, offset_min = excluded.offset_min, "
                  "day = excluded.day, bench = excluded.bench, opened_by = excluded.opened_by, "
                  "seam = excluded.seam, job = excluded.job, material = excluded.material, "
                  "thickness_um = excluded.thickness_um, length_um = excluded.length_um, "
                  "procedure = excluded.procedure, phase = excluded.phase, open = excluded.open, "
                  "verdict = excluded.verdict, verdict_now = excluded.verdict_now, "
                  "findings = excluded.findings, events = excluded.events, "
                  "trouble = excluded.trouble, id = excluded.id"),
          textNow(cache, "SELECT text FROM joint_text WHERE rowid = ?"),
          noText(cache, "DELETE FROM joint_text WHERE rowid = ?"),
          newText(cache, "INSERT INTO joint_text(rowid, text) VALUES(?, ?)"),
          moveMeasures(cache, "UPDATE joint_measure SET joint = ? WHERE joint = ?"),
          measures(
              cache,
              "INSERT INTO joint_measure(joint, number, type, opened_ms, day, bench, opened_by, "
              "procedure, thickness_um, preparation, alignment, changeover, release, plate, drift) "
              "VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT(joint) DO UPDATE "
              "SET "
              "number = excluded.number, type = excluded.type, opened_ms = excluded.opened_ms, "
              "day = excluded.day, bench = excluded.bench, opened_by = excluded.opened_by, "
              "procedure = excluded.procedure, thickness_um = excluded.thickness_um, "
              "preparation = excluded.preparation, alignment = excluded.alignment, "
              "changeover = excluded.changeover, release = excluded.release, "
              "plate = excluded.plate, drift = excluded.drift") {}

    void storeMeasures(std::int64_t id, const CachedJoint& joint) {
        measures.reset();
        int at = 0;
        measures.bind(++at, id);
        measures.bind(++at, joint.line.number);
        measures.bind(++at, joint.line.type);
        measures.bind(++at, static_cast<std::int64_t>(joint.line.openedUtc.count()));
        measures.bind(++at, joint.line.day);
        measures.bind(++at, joint.line.bench);
        measures.bind(++at, joint.line.by);
        measures.bind(++at, joint.line.procedure);
        measures.bind(++at, joint.line.thicknessUm);
        for (const auto& value : joint.measures.values) {
            ++at;
            if (value) {
                measures.bind(at, *value);
            } else {
                measures.bind(at);
            }
        }
        measures.exec();
    }

    std::int64_t freeId(const JointLine& line) {
        const auto [first, last] = idsOpenedAt(line.openedUtc.count());
        idFree.reset();
        idFree.bind(1, first);
        idFree.bind(2, last);
        idFree.executeStep();
        const std::int64_t id = idFree.getColumn(0).getInt64();
        idFree.reset();
        if (id > last) {
            throw SQLite::Exception(
                "the list of joints has no place for more than " +
                std::to_string(last - first + 1) + " opened at one instant");
        }
        return id;
    }

    SQLite::Statement idNow;
    SQLite::Statement idFree;
    SQLite::Statement store;
    SQLite::Statement textNow;
    SQLite::Statement noText;
    SQLite::Statement newText;
    SQLite::Statement moveMeasures;
    SQLite::Statement measures;
};

JointStore::JointStore(SQLite::Database& cache) : m_inside(std::make_unique<Inside>(cache)) {}
JointStore::JointStore(JointStore&&) noexcept = default;
JointStore& JointStore::operator=(JointStore&&) noexcept = default;
JointStore::~JointStore() = default;

void JointStore::store(const CachedJoint& joint) {
    Inside& in = *m_inside;
    in.idNow.reset();
    in.idNow.bind(1, joint.line.weld);
    const bool known = in.idNow.executeStep();
    const std::int64_t was = known ? in.idNow.getColumn(0).getInt64() : 0;
    in.idNow.reset();
    const auto [first, last] = idsOpenedAt(joint.line.openedUtc.count());
    const bool stays = known && first <= was && was <= last;
    const std::int64_t id = stays ? was : in.freeId(joint.line);
    in.store.reset();
    bindLine(in.store, joint.line);
    in.store.bind(kColumnCount + 1, id);
    in.store.exec();
    if (known && was != id) {
        in.moveMeasures.reset();
        in.moveMeasures.bind(1, id);
        in.moveMeasures.bind(2, was);
        in.moveMeasures.exec();
    }
    in.storeMeasures(id, joint);
    bool same = false;
    if (known) {
        in.textNow.reset();
        in.textNow.bind(1, was);
        const bool text = in.textNow.executeStep();
        same = text && stays && in.textNow.getColumn(0).getString() == joint.text;
        in.textNow.reset();
        if (text && !same) {
            in.noText.reset();
            in.noText.bind(1, was);
            in.noText.exec();
        }
    }
    if (!same) {
        in.newText.reset();
        in.newText.bind(1, id);
        in.newText.bind(2, joint.text);
        in.newText.exec();
    }
}

void cacheJoints(
    SQLite::Database& events, SQLite::Database& cache, const std::vector<std::string>& welds) {
    constexpr std::size_t kAtOnce = 1'000;
    JointStore store(cache);
    std::vector<CachedJoint> joints;
    for (std::size_t from = 0; from < welds.size(); from += kAtOnce) {
        joints.clear();
        for (std::size_t i = from; i < std::min(from + kAtOnce, welds.size()); ++i) {
            joints.push_back(foldedJoint(events, welds[i]));
        }
        // The index of texts is written fastest in the order of ids.
        std::sort(joints.begin(), joints.end(), [](const CachedJoint& a, const CachedJoint& b) {
            return isNewer(b.line, a.line);
        });
        for (const CachedJoint& joint : joints) {
            store.store(joint);
        }
    }
}

bool refreshJointCache(SQLite::Database& database, std::int64_t rows) {
    SQLite::Statement state(
        database, "INSERT INTO joint_state(chain, seq, rules, lines) VALUES(?, ?, ?, ?) "
                  "ON CONFLICT(chain) DO UPDATE SET seq = excluded.seq, rules = excluded.rules, "
                  "lines = excluded.lines");
    const auto behind = [&](std::int64_t chain) {
        SQLite::Statement head(database, "SELECT seq FROM chain WHERE no = ?");
        head.bind(1, chain);
        return (head.executeStep() ? head.getColumn(0).getInt64() : 0) - cachedTo(database, chain);
    };
    const auto chains = chainsOf(database);
    const auto stale =
        std::find_if(chains.begin(), chains.end(), [&](auto chain) { return behind(chain) > 0; });
    if (stale == chains.end()) {
        return false;
    }
    SQLite::Transaction whole(database, SQLite::TransactionBehavior::IMMEDIATE);
    if (std::all_of(chains.begin(), chains.end(), [&](auto chain) {
            return cachedTo(database, chain) == 0;
        })) {
        database.exec("DELETE FROM joint_text; DELETE FROM joint; DELETE FROM joint_measure; "
                      "DELETE FROM joint_state;");
    }
    const std::int64_t from = cachedTo(database, *stale);
    const std::int64_t to = from + std::min(rows, behind(*stale));
    std::set<std::string> welds;
    addWelds(database, *stale, from, to, welds);
    cacheJoints(database, database, {welds.begin(), welds.end()});
    state.bind(1, *stale);
    state.bind(2, to);
    state.bind(3, kVerdictRules);
    state.bind(4, kJointLines);
    state.exec();
    whole.commit();
    return std::any_of(chains.begin(), chains.end(), [&](auto chain) { return behind(chain) > 0; });
}

std::vector<std::string> cachedValues(SQLite::Database& cache, JointField field) {
    const char* column = kJudged;
    switch (field) {
    case JointField::Bench:
        column = "bench";
        break;
    case JointField::By:
        column = "opened_by";
        break;
    case JointField::Material:
        column = "material";
        break;
    case JointField::Verdict:
        break;
    }
    const std::string name(column);
    Rows first(cache, "SELECT " + name + " FROM joint ORDER BY " + name + " LIMIT 1");
    Rows next(
        cache,
        "SELECT " + name + " FROM joint WHERE " + name + " > ? ORDER BY " + name + " LIMIT 1");
    std::vector<std::string> out;
    for (bool more = first.step(); more; more = next.step()) {
        out.emplace_back((out.empty() ? first : next).text(0));
        next.reset();
        next.bind(1, out.back());
    }
    return out;
}

std::vector<std::string>
cachedDays(SQLite::Database& cache, std::size_t most, const std::optional<std::string>& before) {
    Rows rows(cache, "SELECT day FROM joint WHERE day < ? AND day > '' ORDER BY day DESC LIMIT 1");
    std::string below = before.value_or(":"); // behind every digit
    std::vector<std::string> out;
    while (out.size() < most) {
        rows.reset();
        rows.bind(1, below);
        if (!rows.step()) {
            break;
        }
        out.emplace_back(rows.text(0));
        below = out.back();
    }
    return out;
}

struct CachedJoints::Inside {
    Rows rows;
    Rows measures;
};

CachedJoints::CachedJoints(SQLite::Database& cache)
    : m_inside(new Inside{
          Rows(
              cache, std::string("SELECT ") + kColumns +
                         ", (SELECT text FROM joint_text WHERE rowid = joint.id)"
                         " FROM joint WHERE weld = ?"),
          Rows(
              cache,
              // What stands twice must be the same in both tables.
              "SELECT m.preparation, m.alignment, m.changeover, m.release, m.plate, m.drift "
              "FROM joint j JOIN joint_measure m ON m.joint = j.id WHERE j.weld = ? AND "
              "m.number = j.number AND m.type = j.type AND m.opened_ms = j.opened_ms AND "
              "m.day = j.day AND m.bench = j.bench AND m.opened_by = j.opened_by AND "
              "m.procedure = j.procedure AND m.thickness_um = j.thickness_um")}) {}
CachedJoints::CachedJoints(CachedJoints&&) noexcept = default;
CachedJoints& CachedJoints::operator=(CachedJoints&&) noexcept = default;
CachedJoints::~CachedJoints() = default;

std::optional<CachedJoint> CachedJoints::of(const std::string& weld) {
    Rows& rows = m_inside->rows;
    rows.reset();
    rows.bind(1, weld);
    if (!rows.step()) {
        return std::nullopt;
    }
    CachedJoint out;
    readLine(rows, out.line);
    out.text = rows.text(kColumnCount);
    rows.reset();
    Rows& measures = m_inside->measures;
    measures.reset();
    measures.bind(1, weld);
    if (measures.step()) {
        int at = 0;
        for (auto& value : out.measures.values) {
            value = measures.isInteger(at) ? std::optional(measures.number(at)) : std::nullopt;
            ++at;
        }
    }
    measures.reset();
    return out;
}

struct MeasureCursor::Inside {
    Rows rows;
    std::vector<JointMeasure> measures;
};

MeasureCursor::MeasureCursor(MeasureCursor&&) noexcept = default;
MeasureCursor& MeasureCursor::operator=(MeasureCursor&&) noexcept = default;
MeasureCursor::~MeasureCursor() = default;

MeasureCursor::MeasureCursor(
    SQLite::Database& cache, const std::vector<JointMeasure>& measures,
    const MeasureFilter& filter) {
    std::string columns;
    std::string any;
    for (const JointMeasure measure : measures) {
        const std::string column(toString(measure));
        columns += ", " + column;
        any += (any.empty() ? "" : " OR ") + column + " IS NOT NULL";
    }
    std::string asked =
        "SELECT joint, number, opened_ms, bench, opened_by, procedure, thickness_um" + columns +
        " FROM joint_measure WHERE type <> 'trial' AND (" + (any.empty() ? "0" : any) + ")";
    std::vector<std::variant<std::string, std::int64_t>> values;
    const auto also = [&](const char* condition, const auto& value) {
        if (value) {
            asked += std::string(" AND ") + condition + " ?";
            values.emplace_back(*value);
        }
    };
    also("day >=", filter.fromDay);
    also("day <=", filter.toDay);
    also("bench =", filter.bench);
    also("opened_by =", filter.by);
    also("procedure =", filter.procedure);
    also("thickness_um =", filter.thicknessUm);
    m_inside.reset(new Inside{Rows(cache, asked + " ORDER BY joint"), measures});
    int at = 0;
    for (const auto& value : values) {
        ++at;
        std::visit([&](const auto& one) { m_inside->rows.bind(at, one); }, value);
    }
}

bool MeasureCursor::next(MeasuredJoint& joint) {
    Rows& rows = m_inside->rows;
    if (!rows.step()) {
        return false;
    }
    joint.place = rows.number(0);
    joint.number = rows.number(1);
    joint.openedUtcMs = rows.number(2);
    joint.bench = rows.text(3);
    joint.by = rows.text(4);
    joint.procedure = rows.text(5);
    joint.thicknessUm = rows.number(6);
    int at = 7;
    for (const JointMeasure measure : m_inside->measures) {
        joint.values[measure] = rows.isInteger(at) ? std::optional(rows.number(at)) : std::nullopt;
        ++at;
    }
    return true;
}

struct JointCursor::Inside {
    Rows rows;
    bool any = false;               // a row that was stepped to and not read
    std::vector<JointLine> waiting; // of one instant, the newest last
    std::int64_t instant() { return rows.number(kColumnCount) / kPlaces; }
};

JointCursor::JointCursor(JointCursor&&) noexcept = default;
JointCursor& JointCursor::operator=(JointCursor&&) noexcept = default;
JointCursor::~JointCursor() = default;

JointCursor::JointCursor(SQLite::Database& cache, const JointFilter& filter) {
    std::vector<std::variant<std::string, std::int64_t>> values;
    std::string conditions;
    const auto also = [&](const std::string& condition, auto value) {
        conditions += std::string(conditions.empty() ? " WHERE " : " AND ") + condition;
        values.emplace_back(std::move(value));
    };
    const Search words(cache, filter.text.value_or(""), filter.names);
    if (words.findsNothing()) {
        conditions = " WHERE 0";
    }
    const bool search = !words.asksNothing() && !words.findsNothing();
    if (search) {
        also("joint_text MATCH ?", words.asked());
    }
    // The rarest of what is asked for leads: the others are then looked at in few lines only.
    const std::size_t lead = rarestOf(cache, filter, search);
    for (std::size_t i = 0; i < kNamed.size(); ++i) {
        if (const auto& value = filter.*kNamed[i].value) {
            const bool leads = i == lead || lead == kNamed.size();
            also(std::string(leads ? "" : "+") + kNamed[i].column + " = ?", *value);
        }
    }
    if (filter.verdict && filter.verdict->empty()) {
        conditions += " AND +phase <> 'damaged'"; // nobody can say that it is still open
    }
    if (filter.damaged) {
        conditions += std::string(conditions.empty() ? " WHERE " : " AND ") + "phase = 'damaged'";
    }
    if (filter.seams) {
        // Few joints are of one job: their ids are gathered, and the list goes through those only.
        std::string places;
        for (const std::string& seam : *filter.seams) {
            places += places.empty() ? "(?)" : ", (?)";
            values.emplace_back(seam);
        }
        const std::string ids =
            "WITH asked(label) AS (VALUES " + places +
            ") SELECT of.id FROM asked JOIN joint of ON of.seam = label UNION ALL "
            "SELECT of.id FROM asked JOIN joint of ON of.seam > label || '/R' AND "
            "of.seam < label || '/S'";
        conditions += std::string(conditions.empty() ? " WHERE " : " AND ") +
                      (places.empty() ? "0" : "joint.id IN (" + ids + ")");
    }
    if (filter.job) {
        also(filter.seam ? "job IN (?, '')" : "+job IN (?, '')", *filter.job);
    }
    const bool textLeads = search && lead == kNamed.size() && !filter.seams;
    const char* notBefore = textLeads ? "joint_text.rowid >= ?" : "id >= ?";
    const char* notAfter = textLeads ? "joint_text.rowid <= ?" : "id <= ?";
    // Local dates differ from UTC by a day at most: the order of ids narrows, the date decides.
    if (filter.fromDay) {
        also("+day >= ?", *filter.fromDay);
        also(notBefore, idsOpenedAt(midnight(*filter.fromDay).value_or(0) - kDayMs).first);
    }
    if (filter.toDay) {
        also("+day <= ?", *filter.toDay);
        also(notAfter, idsOpenedAt(midnight(*filter.toDay).value_or(0) + 2 * kDayMs).second);
    }
    if (filter.after) {
        also(notAfter, idsOpenedAt(filter.after->openedUtcMs).second);
        conditions += " AND (opened_ms, number, weld) < (?, ?, ?)";
        values.emplace_back(filter.after->openedUtcMs);
        values.emplace_back(filter.after->number);
        values.emplace_back(filter.after->weld);
    }
    const char* from = " FROM joint";
    if (search) {
        from = textLeads ? " FROM joint_text CROSS JOIN joint ON joint.id = joint_text.rowid"
                         : " FROM joint CROSS JOIN joint_text ON joint_text.rowid = joint.id";
    }
    const char* order = textLeads ? " ORDER BY joint_text.rowid DESC" : " ORDER BY id DESC";
    m_inside.reset(new Inside{
        Rows(cache, std::string("SELECT ") + kColumns + ", id" + from + conditions + order),
        {},
        {}});
    int at = 0;
    for (const auto& value : values) {
        ++at;
        std::visit([&](const auto& one) { m_inside->rows.bind(at, one); }, value);
    }
    m_inside->any = m_inside->rows.step();
}

bool JointCursor::next(JointLine& line) {
    Inside& in = *m_inside;
    if (!in.waiting.empty()) {
        line = std::move(in.waiting.back());
        in.waiting.pop_back();
        return true;
    }
    if (!in.any) {
        return false;
    }
    const std::int64_t instant = in.instant();
    readLine(in.rows, line);
    in.any = in.rows.step();
    if (!in.any || in.instant() != instant) {
        return true;
    }
    in.waiting.push_back(std::move(line));
    while (in.any && in.instant() == instant) {
        in.waiting.emplace_back();
        readLine(in.rows, in.waiting.back());
        in.any = in.rows.step();
    }
    std::sort(in.waiting.begin(), in.waiting.end(), [](const JointLine& a, const JointLine& b) {
        return isNewer(b, a);
    });
    line = std::move(in.waiting.back());
    in.waiting.pop_back();
    return true;
}

} // namespace seamclock
