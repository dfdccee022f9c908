#include "tests/speed/big_log.h"

#include "core/base/uuid.h"
#include "core/bench/bench_codec.h"
#include "core/log/chain.h"
#include "core/log/fact_codec.h"
#include "core/log/joint_cache.h"
#include "core/log/schema.h"
#include "core/log/world.h"
#include "core/procedure/procedure_codec.h"
#include "core/weld/event_codec.h"
#include "core/weld/intent.h"
#include "core/weld/record.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <array>
#include <filesystem>
#include <optional>
#include <random>
#include <utility>

namespace seamclock::test {

namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

constexpr std::int64_t kRareJoints = 7;
constexpr std::int64_t kPerTransaction = 20'000; // joints

// ---- What differs from joint to joint

namespace slot {
enum Of : std::size_t {
    Subject,
    Boot,
    BootMs,
    UtcMs,
    Offset,
    By,
    Number,
    Seam,
    FirstBatch,
    SecondBatch,
    Remark,
    Count
};
} // namespace slot

struct Joint {
    std::size_t kind = 0; // of kKinds
    std::string subject;
    std::string boot;
    Milliseconds bootMs{0};
    Milliseconds utc{0}; // of its opening, as bootMs is
    minutes offset{0};
    std::string by;
    std::int64_t number = 0;
    std::string seam;
    std::string firstBatch;
    std::string secondBatch;
    std::string remark;
};

/// Puts the joint's own values into an event that happens `later` than its opening.
void personalise(Event& event, const Joint& joint, Milliseconds later) {
    event.subject = joint.subject;
    event.at = {joint.bootMs + later, joint.boot, joint.utc + later, joint.offset};
    event.by = joint.by;
    if (auto* opened = std::get_if<WeldOpened>(&event.d)) {
        opened->number = joint.number;
        opened->seam = joint.seam;
        opened->sheets[0].batch = joint.firstBatch;
        opened->sheets[1].batch = joint.secondBatch;
    }
    if (auto* remark = std::get_if<RemarkMade>(&event.d)) {
        remark->text = joint.remark;
    }
    if (auto* closed = std::get_if<WeldClosed>(&event.d)) {
        for (StoredReason& reason : closed->reasons) {
            if (reason.code == "remark_made") {
                reason.text = joint.remark; // it says what was remarked
            }
        }
    }
}

// A joint whose values stand nowhere else in a body, so that their places can be found.
constexpr std::int64_t kMarked = 900'000'000'000'000;

Joint markedJoint() {
    Joint joint;
    joint.subject = "weld:@subject";
    joint.boot = "@boot";
    joint.bootMs = Milliseconds(kMarked + 1);
    joint.utc = Milliseconds(kMarked + 2);
    joint.offset = minutes(kMarked + 3);
    joint.by = "@by";
    joint.number = kMarked + 4;
    joint.seam = "@seam";
    joint.firstBatch = "@first";
    joint.secondBatch = "@second";
    joint.remark = "@remark";
    return joint;
}

const std::array<std::string, slot::Count>& marks() {
    static const std::array<std::string, slot::Count> kAll = {
        "weld:@subject",
        "@boot",
        std::to_string(kMarked + 1),
        std::to_string(kMarked + 2),
        std::to_string(kMarked + 3),
        "@by",
        std::to_string(kMarked + 4),
        "@seam",
        "@first",
        "@second",
        "@remark"};
    return kAll;
}

/// A text with places for a joint's values.
class Form {
public:
    explicit Form(const std::string& marked) {
        std::size_t from = 0;
        for (;;) {
            std::size_t at = std::string::npos;
            std::size_t which = slot::Count;
            for (std::size_t i = 0; i < slot::Count; ++i) {
                const std::size_t found = marked.find(marks()[i], from);
                if (found < at) {
                    at = found;
                    which = i;
                }
            }
            m_pieces.emplace_back(marked.substr(from, at - from), which);
            if (which == slot::Count) {
                return;
            }
            from = at + marks()[which].size();
        }
    }

    void fill(const std::array<std::string, slot::Count>& values, std::string& out) const {
        out.clear();
        for (const auto& [text, which] : m_pieces) {
            out += text;
            if (which != slot::Count) {
                out += values[which];
            }
        }
    }

private:
    std::vector<std::pair<std::string, std::size_t>> m_pieces;
};

// ---- The welds

enum class Course { Good, NoBead, Remarked, Stopped, Overrun };

struct Kind {
    const char* bench;
    const char* procedure;
    double thicknessMm;
    double lengthMm;
    Course course;
    int weight; // how often, of the sum of all
};

// Those of weight 0 are the rare ones, in the order of Rare.
constexpr std::array kKinds{
    Kind{"east", "pe-hd-dvs2207-1-2005", 15, 1130, Course::Good, 8},
    Kind{"east", "pe-hd-dvs2207-1-2005", 10, 860, Course::Remarked, 2},
    Kind{"east", "pp-dvs2207-11", 6, 860, Course::NoBead, 4},
    Kind{"west", "pe-hd-dvs2207-1-2005", 8, 1380, Course::Good, 8},
    Kind{"west", "pp-dvs2207-11", 6, 1760, Course::Good, 6},
    Kind{"west", "pe-hd-dvs2207-1-2005", 8, 1380, Course::Stopped, 3},
    Kind{"yard", "pe-hd-dvs2207-1-2015", 12, 2000, Course::Good, 6},
    Kind{"yard", "pp-dvs2207-11", 8, 1500, Course::Stopped, 3},
    Kind{"annex", "pp-dvs2207-11", 10, 1200, Course::Good, 6},
    Kind{"annex", "pe-hd-dvs2207-1-2015", 20, 1000, Course::NoBead, 4},
    Kind{kRareBench, "pe-hd-dvs2207-1-2005", 8, 1380, Course::Good, 0},
    Kind{"west", "pvdf-dvs2207-15", 5, 900, Course::Good, 0},
    Kind{"west", "pe-hd-dvs2207-1-2005", 8, 1380, Course::Overrun, 0},
    Kind{"west", "pe-hd-dvs2207-1-2005", 8, 1380, Course::Remarked, 0},
};

enum class Rare { Bench, Material, Verdict, Word, By };
constexpr std::size_t kFirstRare = 10;

/// The demo's west bench under another name.
Result<BenchDocument> benchNamed(const std::string& resources, const std::string& id) {
    auto west = readBenchFile(resources + "/demo/bench-west.json");
    if (!west || id == "west") {
        return west;
    }
    std::string bytes = west->bytes;
    const std::string was = "\"id\": \"west\"";
    const auto at = bytes.find(was);
    if (at == std::string::npos) {
        return fail(ErrorCode::Malformed, "the demo bench has no id \"west\"");
    }
    return readBench(id, bytes.replace(at, was.size(), "\"id\": \"" + id + "\""));
}

/// One weld told once.
struct Template {
    std::vector<Event> events;
    std::vector<Milliseconds> later; // than the opening
    std::vector<Form> bodies;
    CachedJoint cached;
    std::vector<Form> text;
    std::vector<LogDocument> documents;

    Milliseconds length() const { return later.back(); }
};

class Teller {
public:
    explicit Teller(const Joint& joint) : m_joint(joint) {}

    Result<void> begin(const WeldOpened& opened) {
        Event event{{}, "", "", 1, opened};
        personalise(event, m_joint, m_later);
        auto weld = open(event);
        if (!weld) {
            return tl::unexpected<Error>(weld.error());
        }
        m_weld = std::move(*weld);
        m_at.push_back(m_later);
        return {};
    }
    void then(Milliseconds gap, const WeldDetail& detail) {
        if (m_trouble) {
            return;
        }
        m_later += gap;
        Event event{{}, "", "", static_cast<std::int64_t>(m_weld.events.size()) + 1, detail};
        personalise(event, m_joint, m_later);
        auto weld = apply(m_weld, event);
        if (!weld) {
            m_trouble = weld.error();
            return;
        }
        m_weld = std::move(*weld);
        m_at.push_back(m_later);
    }
    const Weld& weld() const { return m_weld; }
    const std::vector<Milliseconds>& later() const { return m_at; }
    const std::optional<Error>& trouble() const { return m_trouble; }

private:
    Joint m_joint;
    Milliseconds m_later{0};
    Weld m_weld;
    std::vector<Milliseconds> m_at;
    std::optional<Error> m_trouble;
};

void tell(Teller& story, const WeldPlan& plan, Course course) {
    story.then(
        seconds(40),
        CheckMade{"plate_temperature", true, plan.plate->targetMc, {}, {}, "middle", "left", {}});
    if (course == Course::Stopped) {
        story.then(seconds(30), WeldAborted{"power", "the plate went cold"});
        return;
    }
    story.then(seconds(20), AlignmentStarted{});
    story.then(seconds(55), SoakStarted{});
    if (course != Course::NoBead) {
        story.then(seconds(2), ReadingTaken{ReadingPhase::Soak, plan.scale->soak.setMilli});
    }
    const Milliseconds soaked = seconds(course == Course::NoBead ? 0 : 2);
    story.then(plan.soak->target - soaked + Milliseconds(800), PlateOut{});
    const bool late = course == Course::Overrun;
    story.then(*plan.changeoverMax + Milliseconds(late ? 2'100 : -1'900), FacesMet{});
    const Milliseconds tenth = plan.buildUp->target / 10;
    story.then(
        plan.buildUp->target - tenth,
        ReadingTaken{ReadingPhase::Joining, plan.scale->joining.setMilli});
    story.then(tenth, PressureLocked{});
    story.then(plan.cooling->atLeast + seconds(20), ReleaseStep{plan.releaseOrder.front()});
    if (late && !story.trouble()) {
        for (const std::string& owed : reasonsOwed(story.weld())) {
            story.then(seconds(5), ReasonGiven{owed, "other", "the bars stuck"});
        }
    }
    if (course == Course::Remarked) {
        story.then(seconds(10), RemarkMade{markedJoint().remark});
    }
    if (course != Course::NoBead) {
        const std::int64_t k = plan.beadMinUm.value_or(1'000);
        story.then(seconds(25), BeadMeasured{{}, 3 * k, 2 * k, k / 2, 200});
    }
    if (!story.trouble()) {
        story.then(seconds(15), closing(story.weld()));
    }
}

Result<Template> makeTemplate(const Kind& kind, const std::string& resources) {
    const auto procedure = readProcedureFile(resources + "/procedures/" + kind.procedure + ".json");
    if (!procedure) {
        return tl::unexpected<Error>(procedure.error());
    }
    const auto bench = benchNamed(resources, kind.bench);
    if (!bench) {
        return tl::unexpected<Error>(bench.error());
    }
    PlanRequest request;
    request.thickness = millimetres(kind.thicknessMm);
    request.lengths = {millimetres(kind.lengthMm)};
    request.drag = newtons(60);
    auto plan = makePlan(request, procedure->procedure, &bench->bench);
    if (!plan) {
        return tl::unexpected<Error>(plan.error());
    }
    plan->checks = {"plate_temperature"};
    plan->releaseOrder.resize(1);
    if (plan->cooling) {
        plan->cooling->rechecks.clear();
    }
    const Sheet sheet{plan->material, "VP natural", "Velmorra Sheet", "", plan->thicknessUm, "0.5"};
    WeldOpened opened;
    opened.bench = kind.bench;
    opened.sheets = {sheet, sheet};
    opened.lengthsUm = {plan->lengthUm};
    opened.ambientMc = plan->ambientMc;
    opened.shielded = true;
    opened.plan = *plan;
    opened.docs = {procedure->sha256, bench->sha256, {}};

    // Marked names from the start; instants that a weld can have, until the bodies are made.
    Joint joint = markedJoint();
    joint.bootMs = seconds(100);
    joint.utc = hours(24);
    joint.offset = minutes(0);
    Teller story(joint);
    if (auto begun = story.begin(opened); !begun) {
        return tl::unexpected<Error>(begun.error());
    }
    tell(story, *plan, kind.course);
    if (story.trouble()) {
        return tl::unexpected<Error>(*story.trouble());
    }
    Template out;
    out.events = story.weld().events;
    out.later = story.later();
    const WeldRecord made = record(story.weld());
    out.cached = {lineOf(made), "", measuresOf(made)};
    out.text.emplace_back(textOf(made));
    for (Event event : out.events) {
        personalise(event, markedJoint(), Milliseconds(0));
        const auto body = toBody(event);
        if (!body) {
            return tl::unexpected<Error>(body.error());
        }
        out.bodies.emplace_back(*body);
    }
    out.documents = {
        {procedure->sha256, "procedure", procedure->bytes}, {bench->sha256, "bench", bench->bytes}};
    return out;
}

Result<std::vector<Template>> makeTemplates(const std::string& resources) {
    std::vector<Template> out;
    for (const Kind& kind : kKinds) {
        auto one = makeTemplate(kind, resources);
        if (!one) {
            return tl::unexpected<Error>(one.error());
        }
        out.push_back(std::move(*one));
    }
    return out;
}

// ---- The shop's years

constexpr std::array kPeople{
    "person:ilva", "person:oddo", "person:merrit", "person:sunniva", "person:jorun"};
constexpr std::array kThings{"draught", "lamp", "crane", "film", "edge", "bar", "hose", "visitor"};
constexpr std::array kWhat{"noticed", "moved", "cleaned", "changed", "dropped", "late"};

/// Four benches at once, from six in the morning to ten at night, every day; who welds what follows
/// from the seed.
class Years {
public:
    Years(const BigLogOptions& options, const std::vector<Template>& templates)
        : m_options(options), m_templates(templates), m_chance(options.seed) {
        for (const Kind& kind : kKinds) {
            m_weights += kind.weight;
        }
        for (Milliseconds& free : m_free) {
            free = m_day + minutes(draw(0, 9));
        }
        m_boot = uuid();
    }

    /// The next joint, on the bench that is free first.
    Joint next() {
        auto& free = *std::min_element(m_free.begin(), m_free.end());
        if (free >= m_day + hours(16)) {
            const auto days = (free - m_day) / hours(24) + 1;
            m_day += hours(24) * days;
            for (Milliseconds& one : m_free) {
                one = std::max(one, m_day + Milliseconds(draw(0, 600'000)));
            }
            m_boot = uuid();
            return next();
        }
        const std::int64_t index = m_made++;
        Joint joint;
        joint.kind = kindOfJoint(index);
        joint.subject = "weld:" + uuid();
        joint.boot = m_boot;
        joint.utc = free;
        joint.bootMs = free - m_day + minutes(12);
        joint.offset = minutes(60);
        joint.by = kPeople[draw(0, kPeople.size() - 1)];
        joint.number = index + 1;
        joint.seam = "S" + std::to_string(index % 60 + 1);
        joint.firstBatch = "VP-" + std::to_string(40'000 + index / 50);
        joint.secondBatch =
            "VP-" + std::to_string(40'000 + index / 50 + static_cast<std::int64_t>(draw(0, 1)));
        joint.remark = std::string(kThings[draw(0, kThings.size() - 1)]) + " " +
                       kWhat[draw(0, kWhat.size() - 1)];
        if (rare(index, Rare::Word)) {
            joint.remark = std::string(kRareWord) + " outside";
        }
        if (rare(index, Rare::By)) {
            joint.by = kRareBy;
        }
        free += m_templates[joint.kind].length() + Milliseconds(draw(60'000, 480'000));
        return joint;
    }

private:
    std::size_t draw(std::size_t low, std::size_t high) {
        return low + static_cast<std::size_t>(m_chance() % (high - low + 1));
    }

    std::string uuid() {
        static constexpr const char* kDigits = "0123456789abcdef";
        std::string out = "xxxxxxxx-xxxx-4xxx-8xxx-xxxxxxxxxxxx";
        std::uint64_t bits = 0;
        int left = 0;
        for (char& c : out) {
            if (c == 'x') {
                if (left == 0) {
                    bits = m_chance();
                    left = 16;
                }
                c = kDigits[bits & 15U];
                bits >>= 4U;
                --left;
            }
        }
        return out;
    }

    bool rare(std::int64_t index, Rare what) const {
        const std::int64_t step = std::max<std::int64_t>(m_options.joints / kRareJoints, 5);
        return index % step == static_cast<std::int64_t>(what) && index / step < kRareJoints;
    }

    std::size_t kindOfJoint(std::int64_t index) {
        auto at = static_cast<int>(draw(0, static_cast<std::size_t>(m_weights) - 1));
        std::size_t kind = 0;
        while (at >= kKinds[kind].weight) {
            at -= kKinds[kind++].weight;
        }
        for (const Rare what : {Rare::Bench, Rare::Material, Rare::Verdict, Rare::Word}) {
            if (rare(index, what)) {
                kind = kFirstRare + static_cast<std::size_t>(what);
            }
        }
        return kind;
    }

    const BigLogOptions& m_options;
    const std::vector<Template>& m_templates;
    std::mt19937_64 m_chance;
    int m_weights = 0;
    Milliseconds m_day{1'893'996'000'000}; // 2030-01-07T06:00Z
    std::array<Milliseconds, 4> m_free{};
    std::string m_boot;
    std::int64_t m_made = 0;
};

// ---- The file

/// Triggers and indexes of the log's own tables, away until the rows are in.
class Bare {
public:
    explicit Bare(SQLite::Database& database) : m_database(database) {
        std::vector<std::string> drops;
        SQLite::Statement query(
            database, "SELECT type, name, sql FROM sqlite_schema WHERE sql IS NOT NULL AND "
                      "type IN ('trigger', 'index') AND tbl_name NOT LIKE 'joint_text%'");
        while (query.executeStep()) {
            drops.push_back(
                "DROP " + query.getColumn(0).getString() + " " + query.getColumn(1).getString());
            m_again.push_back(query.getColumn(2).getString());
        }
        query.reset();
        for (const std::string& drop : drops) {
            database.exec(drop);
        }
    }
    void restore() {
        for (const std::string& sql : m_again) {
            m_database.exec(sql);
        }
    }

private:
    SQLite::Database& m_database;
    std::vector<std::string> m_again;
};

class Filler {
public:
    Filler(SQLite::Database& database, std::string genesis)
        : m_database(database), m_head(std::move(genesis)),
          m_add(database, "INSERT INTO event(chain, seq, hash, body) VALUES(1, ?, ?, ?)"),
          m_store(database) {}

    void add(const std::string& body) {
        m_head = chainHash(m_head, body);
        m_add.bind(1, ++m_seq);
        m_add.bindNoCopy(2, m_head);
        m_add.bindNoCopy(3, body);
        m_add.exec();
        m_add.reset();
        m_bytes += static_cast<std::int64_t>(body.size());
    }
    void cache(const CachedJoint& joint) { m_store.store(joint); }

    void finish() {
        SQLite::Statement head(m_database, "UPDATE chain SET seq = ?, head = ? WHERE no = 1");
        head.bind(1, m_seq);
        head.bind(2, m_head);
        head.exec();
        SQLite::Statement state(
            m_database, "INSERT INTO joint_state(chain, seq, rules, lines) VALUES(1, ?, ?, ?)");
        state.bind(1, m_seq);
        state.bind(2, kVerdictRules);
        state.bind(3, kJointLines);
        state.exec();
    }
    std::int64_t seq() const { return m_seq; }
    std::int64_t bytes() const { return m_bytes; }

private:
    SQLite::Database& m_database;
    std::string m_head;
    std::int64_t m_seq = 0;
    std::int64_t m_bytes = 0;
    SQLite::Statement m_add;
    JointStore m_store;
};

/// A joint that is being welded: which of its events comes next.
struct Running {
    Joint joint;
    const Template* told = nullptr;
    std::size_t next = 0;
    std::array<std::string, slot::Count> values;

    Milliseconds at() const { return joint.utc + told->later[next]; }
};

Running begin(Joint joint, const std::vector<Template>& templates) {
    Running out;
    out.told = &templates[joint.kind];
    out.values = {
        joint.subject,
        joint.boot,
        "",
        "",
        std::to_string(joint.offset.count()),
        joint.by,
        std::to_string(joint.number),
        joint.seam,
        joint.firstBatch,
        joint.secondBatch,
        joint.remark};
    out.joint = std::move(joint);
    return out;
}

CachedJoint cachedOf(const Running& done) {
    CachedJoint out = done.told->cached;
    const Joint& joint = done.joint;
    out.line.weld = joint.subject;
    out.line.number = joint.number;
    out.line.openedUtc = joint.utc;
    out.line.offset = joint.offset;
    out.line.day = toIsoDate(joint.utc, joint.offset);
    out.line.by = joint.by;
    out.line.seam = joint.seam;
    done.told->text.front().fill(done.values, out.text);
    return out;
}

Result<std::string> stationFact(const Instant& at, std::int64_t n, FactDetail detail) {
    return toBody(Fact{at, "station", "station", n, std::move(detail)});
}

Result<BigLogFacts>
fill(SQLite::Database& database, const BigLogOptions& options, const std::string& genesis) {
    const auto templates = makeTemplates(options.resources);
    if (!templates) {
        return tl::unexpected<Error>(templates.error());
    }
    Bare bare(database);
    std::optional<SQLite::Transaction> whole(std::in_place, database);
    SQLite::Statement document(
        database, "INSERT OR IGNORE INTO document(sha256, kind, body) VALUES(?, ?, ?)");
    for (const Template& one : *templates) {
        for (const LogDocument& each : one.documents) {
            document.bind(1, each.sha256);
            document.bind(2, each.kind);
            document.bind(3, each.bytes.data(), static_cast<int>(each.bytes.size()));
            document.exec();
            document.reset();
        }
    }
    Filler filler(database, genesis);
    Years years(options, *templates);
    std::vector<Running> running;
    std::int64_t begun = 0;
    std::int64_t done = 0;
    std::string body;
    Running first = begin(years.next(), *templates);
    Instant last{first.joint.bootMs, first.joint.boot, first.joint.utc, first.joint.offset};
    auto started = stationFact(last, 1, ProgramStarted{});
    if (!started) {
        return tl::unexpected<Error>(started.error());
    }
    filler.add(*started);
    running.push_back(std::move(first));
    begun = 1;
    std::optional<Running> coming;
    const auto earlier = [](const Running& a, const Running& b) { return a.at() < b.at(); };
    while (!running.empty()) {
        if (!coming && begun < options.joints) {
            coming = begin(years.next(), *templates);
            ++begun;
        }
        auto now = std::min_element(running.begin(), running.end(), earlier);
        if (coming && coming->joint.utc <= now->at()) {
            running.push_back(std::move(*coming));
            coming.reset();
            continue;
        }
        const Milliseconds later = now->told->later[now->next];
        last = {
            now->joint.bootMs + later, now->joint.boot, now->joint.utc + later, now->joint.offset};
        now->values[slot::BootMs] = std::to_string(last.boot.count());
        now->values[slot::UtcMs] = std::to_string(last.utc.count());
        now->told->bodies[now->next].fill(now->values, body);
        filler.add(body);
        if (++now->next < now->told->bodies.size()) {
            continue;
        }
        filler.cache(cachedOf(*now));
        running.erase(now);
        if (running.empty() && coming) {
            running.push_back(std::move(*coming));
            coming.reset();
        }
        if (++done % kPerTransaction == 0) {
            whole->commit();
            whole.emplace(database);
            if (options.progress) {
                options.progress(done);
            }
        }
    }
    auto stopped = stationFact(last, 2, ProgramStopped{});
    if (!stopped) {
        return tl::unexpected<Error>(stopped.error());
    }
    filler.add(*stopped);
    filler.finish();
    whole->commit();
    bare.restore();
    return BigLogFacts{done, filler.seq(), filler.bytes()};
}

} // namespace

Result<BigLogFacts> makeBigLog(const std::string& path, const BigLogOptions& options) {
    if (std::filesystem::exists(path)) {
        return fail(ErrorCode::NotWritten, path + ": there is a file already");
    }
    if (options.joints < 1 || options.joints > 10'000'000) {
        return fail(
            ErrorCode::OutOfRange,
            std::to_string(options.joints) + " joints; allowed 1 to 10000000");
    }
    try {
        SQLite::Database database(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        for (const char* setting :
             {"PRAGMA journal_mode=OFF", "PRAGMA synchronous=OFF", "PRAGMA cache_size=-1000000"}) {
            database.exec(setting);
        }
        database.exec("PRAGMA application_id=" + std::to_string(Production::kApplicationId));
        if (auto made = migrate(database, path, migrations()); !made) {
            return tl::unexpected<Error>(made.error());
        }
        const std::string world(Production::kName);
        const std::string id =
            "00000000-0000-4000-8000-" + sha256Hex(std::to_string(options.seed)).substr(0, 12);
        const std::string genesis = genesisHash(id, world);
        SQLite::Statement chain(
            database,
            "INSERT INTO chain(no, log_id, world, genesis, seq, head) VALUES(1, ?, ?, ?, 0, ?)");
        chain.bind(1, id);
        chain.bind(2, world);
        chain.bind(3, genesis);
        chain.bind(4, genesis);
        chain.exec();
        auto facts = fill(database, options, genesis);
        if (facts) {
            database.exec("PRAGMA journal_mode=WAL");
        }
        return facts;
    } catch (const SQLite::Exception& thrown) {
        return fail(ErrorCode::NotWritten, path + ": " + thrown.what());
    }
}

Result<std::vector<LogRow>> sampleOfBigLog(const BigLogOptions& options, std::int64_t every) {
    const auto templates = makeTemplates(options.resources);
    if (!templates) {
        return tl::unexpected<Error>(templates.error());
    }
    Years years(options, *templates);
    std::vector<LogRow> out;
    for (std::int64_t i = 0; i < options.joints; ++i) {
        const Joint joint = years.next();
        if (i % every != 0) {
            continue;
        }
        const Template& told = (*templates)[joint.kind];
        for (std::size_t k = 0; k < told.events.size(); ++k) {
            Event event = told.events[k];
            personalise(event, joint, told.later[k]);
            auto body = toBody(event);
            if (!body) {
                return tl::unexpected<Error>(body.error());
            }
            out.push_back({joint.subject, event.n, std::move(*body)});
        }
    }
    return out;
}

} // namespace seamclock::test
