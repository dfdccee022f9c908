#include "core/log/joint_cache.h"

#include "core/log/body_codec.h"
#include "core/log/connection.h"
#include "core/log/schema.h"
#include "core/weld/event_codec.h"
#include "core/weld/record.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <chrono>
#include <iterator>
#include <set>
#include <variant>

namespace seamclock {

namespace {

constexpr const char* kColumns =
    "weld, number, type, opened_ms, offset_min, day, bench, opened_by, seam, material, "
    "thickness_um, length_um, procedure, phase, open, verdict, verdict_now, findings, "
    "events, trouble";

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

/// Each word as the beginning of a word, all of them: "tank 7" becomes "tank"* "7"*.
std::string searchOf(const std::string& text) {
    std::string out;
    std::string word;
    const auto finish = [&] {
        if (!word.empty()) {
            out += (out.empty() ? "\"" : " \"") + word + "\"*";
            word.clear();
        }
    };
    for (const char c : text) {
        if (c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\0') {
            finish();
        } else {
            word += c == '"' ? std::string("\"\"") : std::string(1, c);
        }
    }
    finish();
    return out;
}

JointLine readLine(SQLite::Statement& row) {
    JointLine line;
    int at = 0;
    const auto text = [&] { return row.getColumn(at++).getString(); };
    const auto number = [&] { return row.getColumn(at++).getInt64(); };
    line.weld = text();
    line.number = number();
    line.type = text();
    line.openedUtc = Milliseconds(number());
    line.offset = std::chrono::minutes(number());
    line.day = text();
    line.bench = text();
    line.by = text();
    line.seam = text();
    line.material = text();
    line.thicknessUm = number();
    line.lengthUm = number();
    line.procedure = text();
    line.phase = text();
    line.open = number() != 0;
    line.verdict = text();
    line.verdictNow = text();
    line.findings = number();
    line.events = number();
    line.trouble = text();
    return line;
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
        return {damagedLine(weld, bodies, folded.error().detail), ""};
    }
    const WeldRecord made = record(*folded);
    CachedJoint out{lineOf(made), textOf(made)};
    out.line.trouble = std::move(dispute);
    return out;
}

bool hasJointCache(SQLite::Database& database) {
    const auto tablesOf = [](SQLite::Database& from) {
        std::vector<std::string> out;
        SQLite::Statement query(
            from,
            "SELECT sql FROM sqlite_schema WHERE name IN ('joint', 'joint_gone', 'joint_state', "
            "'joint_text') ORDER BY name");
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

void cacheJoints(
    SQLite::Database& events, SQLite::Database& cache, const std::vector<std::string>& welds) {
    SQLite::Statement store(
        cache,
        std::string("INSERT INTO joint(id, ") + kColumns +
            ") VALUES((SELECT coalesce(max(id), 0) + 1 FROM joint), "
            "?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
            "ON CONFLICT(weld) DO UPDATE SET number = excluded.number, type = excluded.type, "
            "opened_ms = excluded.opened_ms, offset_min = excluded.offset_min, day = excluded.day, "
            "bench = excluded.bench, opened_by = excluded.opened_by, seam = excluded.seam, "
            "material = excluded.material, thickness_um = excluded.thickness_um, "
            "length_um = excluded.length_um, procedure = excluded.procedure, phase = "
            "excluded.phase, "
            "open = excluded.open, verdict = excluded.verdict, verdict_now = excluded.verdict_now, "
            "findings = excluded.findings, events = excluded.events, trouble = excluded.trouble "
            "RETURNING id");
    SQLite::Statement textNow(cache, "SELECT text FROM joint_text WHERE rowid = ?");
    SQLite::Statement noText(cache, "DELETE FROM joint_text WHERE rowid = ?");
    SQLite::Statement newText(cache, "INSERT INTO joint_text(rowid, text) VALUES(?, ?)");
    for (const std::string& weld : welds) {
        const CachedJoint joint = foldedJoint(events, weld);
        store.reset();
        bindLine(store, joint.line);
        store.executeStep();
        const std::int64_t id = store.getColumn(0).getInt64();
        store.executeStep(); // to its end, which completes the insert
        textNow.reset();
        textNow.bind(1, id);
        const bool known = textNow.executeStep();
        const bool same = known && textNow.getColumn(0).getString() == joint.text;
        textNow.reset();
        if (same) {
            continue;
        }
        if (known) {
            noText.reset();
            noText.bind(1, id);
            noText.exec();
        }
        newText.reset();
        newText.bind(1, id);
        newText.bind(2, joint.text);
        newText.exec();
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
        database.exec("DELETE FROM joint_text; DELETE FROM joint; DELETE FROM joint_state;");
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

std::optional<CachedJoint> cachedJoint(SQLite::Database& database, const std::string& weld) {
    SQLite::Statement query(
        database,
        std::string("SELECT ") + kColumns +
            ", (SELECT text FROM joint_text WHERE rowid = joint.id) FROM joint WHERE weld = ?");
    query.bind(1, weld);
    if (!query.executeStep()) {
        return std::nullopt;
    }
    JointLine line = readLine(query);
    return CachedJoint{std::move(line), query.getColumn(query.getColumnCount() - 1).getString()};
}

struct JointCursor::Inside {
    SQLite::Statement query;
};

JointCursor::JointCursor(JointCursor&&) noexcept = default;
JointCursor& JointCursor::operator=(JointCursor&&) noexcept = default;
JointCursor::~JointCursor() = default;

JointCursor::JointCursor(SQLite::Database& cache, const JointFilter& filter) {
    std::string sql = std::string("SELECT ") + kColumns + " FROM joint WHERE 1";
    std::vector<std::variant<std::string, std::int64_t>> values;
    const auto also = [&](const char* condition, auto value) {
        sql += std::string(" AND ") + condition;
        values.emplace_back(std::move(value));
    };
    // Local dates differ from UTC by a day at most: the index on opened_ms narrows, the date
    // decides.
    if (filter.fromDay) {
        also("day >= ?", *filter.fromDay);
        also("opened_ms >= ?", midnight(*filter.fromDay).value_or(0) - kDayMs);
    }
    if (filter.toDay) {
        also("day <= ?", *filter.toDay);
        also("opened_ms < ?", midnight(*filter.toDay).value_or(0) + 2 * kDayMs);
    }
    if (filter.bench) {
        also("bench = ?", *filter.bench);
    }
    if (filter.by) {
        also("opened_by = ?", *filter.by);
    }
    if (filter.material) {
        also("material = ?", *filter.material);
    }
    if (filter.verdict) {
        also("verdict = ?", *filter.verdict);
    }
    if (const std::string words = searchOf(filter.text.value_or("")); !words.empty()) {
        also("id IN (SELECT rowid FROM joint_text WHERE joint_text MATCH ?)", words);
    }
    if (filter.after) {
        sql += " AND (opened_ms, number, weld) < (?, ?, ?)";
        values.emplace_back(filter.after->openedUtcMs);
        values.emplace_back(filter.after->number);
        values.emplace_back(filter.after->weld);
    }
    sql += " ORDER BY opened_ms DESC, number DESC, weld DESC";
    m_inside = std::unique_ptr<Inside>(new Inside{SQLite::Statement(cache, sql)});
    int at = 0;
    for (const auto& value : values) {
        ++at;
        if (const auto* text = std::get_if<std::string>(&value)) {
            m_inside->query.bind(at, *text);
        } else {
            m_inside->query.bind(at, std::get<std::int64_t>(value));
        }
    }
}

bool JointCursor::next(JointLine& line) {
    if (!m_inside->query.executeStep()) {
        return false;
    }
    line = readLine(m_inside->query);
    return true;
}

} // namespace seamclock
