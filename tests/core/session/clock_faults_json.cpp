#include "tests/core/session/clock_faults.h"

#include "core/base/json.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "core/report/record_json.h"
#include "core/report/record_text.h"
#include "core/shift/shift.h"
#include "tests/support/demo_order.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace seamclock::test {

namespace {

using std::chrono::hours;
using std::chrono::seconds;

constexpr const char* kIlva = "person:ilva";
constexpr Milliseconds kNoted{2'000}; // contracts §4: "when |Δutc − Δboot| > 2 s"
constexpr Milliseconds kLongestConfirmed = hours(12);
// 2030-03-31T00:20Z: where summer time begins that night it begins at 01:00Z.
constexpr Milliseconds kStart{1'901'146'800'000};
constexpr Milliseconds kBooting = seconds(20);

/// The local date, counted off year by year and month by month from 1970-01-01.
std::string dateOf(const Instant& at) {
    constexpr std::int64_t kDayMs = 86'400'000;
    std::int64_t days = (at.utc.count() + at.offset.count() * 60'000) / kDayMs;
    int year = 1970;
    const auto leap = [&] { return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0); };
    for (; days >= (leap() ? 366 : 365); ++year) {
        days -= leap() ? 366 : 365;
    }
    int month = 1;
    for (const int length : {31, leap() ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}) {
        if (days < length) {
            break;
        }
        days -= length;
        ++month;
    }
    char text[48];
    std::snprintf(text, sizeof text, "%04d-%02d-%02d", year, month, static_cast<int>(days) + 1);
    return text;
}

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

std::string inSeconds(Milliseconds time) {
    char text[32];
    std::snprintf(text, sizeof text, "%.3f s", static_cast<double>(time.count()) / 1e3);
    return text;
}

bool isListed(const WeldRecord& record, const std::string& code) {
    const auto& all = record.verdict.findings;
    return std::any_of(
        all.begin(), all.end(), [&](const Finding& finding) { return finding.code == code; });
}

template <class Kind>
std::vector<Kind> allOf(const std::vector<Event>& events) {
    std::vector<Kind> out;
    for (const Event& event : events) {
        if (const auto* one = std::get_if<Kind>(&event.d)) {
            out.push_back(*one);
        }
    }
    return out;
}

std::string withoutBreaks(const std::string& text) {
    std::string out;
    for (const char c : text) {
        const bool space = c == '\n' || c == ' ';
        if (!space || (!out.empty() && out.back() != ' ')) {
            out += space ? ' ' : c;
        }
    }
    return out;
}

} // namespace

// ---- The machine

Instant Machine::now() const {
    const std::lock_guard<std::mutex> held(m_mutex);
    Instant at;
    at.boot = m_truth - m_bootedAt;
    at.bootId = "boot-" + std::to_string(m_boot);
    at.utc = kStart + m_truth + m_error;
    at.offset = m_offset;
    return at;
}

void Machine::live(Milliseconds time) {
    const std::lock_guard<std::mutex> held(m_mutex);
    m_truth += time;
}

void Machine::stepWall(Milliseconds by) {
    const std::lock_guard<std::mutex> held(m_mutex);
    m_error += by;
}

void Machine::setOffset(std::chrono::minutes offset) {
    const std::lock_guard<std::mutex> held(m_mutex);
    m_offset = offset;
}

void Machine::reboot(Milliseconds off, Milliseconds by) {
    const std::lock_guard<std::mutex> held(m_mutex);
    m_truth += off;
    m_bootedAt = m_truth;
    m_truth += kBooting;
    m_error += by;
    ++m_boot;
}

Milliseconds Machine::truth() const {
    const std::lock_guard<std::mutex> held(m_mutex);
    return m_truth;
}

Milliseconds Machine::error() const {
    const std::lock_guard<std::mutex> held(m_mutex);
    return m_error;
}

// ---- The program

Shop::Shop(const std::string& path) : m_path(path) {
    start();
}

void Shop::start() {
    LogWriterOptions options;
    options.quickCheck = false; // its own tests are elsewhere, and the log grows long
    options.sign = false;       // the writer reads the clock for it, when it comes to it
    auto writer = LogWriter<Production>::open(m_path, machine, options);
    ASSERT_TRUE(writer) << writer.error().detail;
    m_writer.emplace(std::move(*writer));
    // The first reading is held against the newest row of this boot, and each weld's own.
    const std::string boot = machine.now().bootId;
    const Milliseconds error = machine.error();
    const bool rowCounts = m_rowBoot == boot;
    Milliseconds newest = rowCounts ? m_rowTruth : Milliseconds(-1);
    Milliseconds then = rowCounts ? m_rowError : error;
    for (auto& [id, witness] : m_witnesses) {
        if (!witness.open || witness.last.bootId != boot) {
            continue;
        }
        if (std::chrono::abs(error - witness.lastError) > kNoted) {
            witness.jumps.push_back(error - witness.lastError);
        }
        if (witness.lastTruth > newest) {
            newest = witness.lastTruth;
            then = witness.lastError;
        }
    }
    if (std::chrono::abs(error - then) > kNoted) {
        m_stationJumps.push_back(error - then);
    }
    m_rowBoot = boot;
    m_rowTruth = machine.truth();
    m_rowError = error;
    m_readError = error;
    m_readBoot = boot;
    auto session = Session<Production>::start(*m_writer, machine);
    ASSERT_TRUE(session) << session.error().detail;
    m_session.emplace(std::move(*session));
    EXPECT_TRUE(m_session->damaged().empty());
    std::size_t open = 0;
    for (const auto& [id, witness] : m_witnesses) {
        open += witness.open ? 1 : 0;
        if (witness.open) {
            noteEvents(id);
        }
    }
    EXPECT_EQ(m_session->found().size(), open);
}

void Shop::kill() {
    ASSERT_TRUE(m_writer->flush());
    m_session.reset();
    m_writer.reset();
}

// What the next reading must note, worked out from the wall clock's error alone.
void Shop::readClock() {
    const Instant now = machine.now();
    const Milliseconds error = machine.error();
    if (m_readError && m_readBoot == now.bootId) {
        const Milliseconds jump = error - *m_readError;
        if (std::chrono::abs(jump) > kNoted) {
            m_stationJumps.push_back(jump);
            m_rowBoot = now.bootId;
            m_rowTruth = machine.truth();
            m_rowError = error;
            for (auto& [id, witness] : m_witnesses) {
                if (witness.open && witness.last.bootId == now.bootId) {
                    witness.jumps.push_back(jump);
                }
            }
        }
    }
    m_readError = error;
    m_readBoot = now.bootId;
}

void Shop::noteEvents(const std::string& weld) {
    const Weld& live = *m_session->find(weld);
    Witness& witness = m_witnesses.at(weld);
    if (witness.truths.size() == live.events.size()) {
        return;
    }
    witness.truths.resize(live.events.size(), machine.truth());
    witness.last = machine.now();
    witness.lastTruth = machine.truth();
    witness.lastError = machine.error();
    witness.open = isOpen(live.state);
}

std::string Shop::open(std::size_t seam) {
    WeldOrder order = orderOf(kDemoSeams.at(seam));
    order.type = WeldType::Production;
    order.request.alignMedian = seconds(60); // not worked out from the log: it costs ten folds
    readClock();
    const auto weld = m_session->open(order, kIlva);
    EXPECT_TRUE(weld) << (weld ? "" : weld.error().detail);
    if (!weld) {
        return "";
    }
    m_witnesses[weld->id()].openedAt = machine.now();
    m_opened.push_back(weld->id());
    for (const auto& [id, witness] : m_witnesses) {
        if (witness.open) {
            noteEvents(id);
        }
    }
    return weld->id();
}

std::optional<Weld> Shop::act(const std::string& weld, const WeldDetail& detail) {
    readClock();
    const auto next = m_session->act(weld, Intent{{}, kIlva, detail});
    for (const auto& [id, witness] : m_witnesses) {
        if (witness.open) {
            noteEvents(id);
        }
    }
    return next ? std::optional<Weld>(*next) : std::nullopt;
}

void Shop::settle(const std::string& weld, RebootWord word) {
    readClock();
    Witness& witness = m_witnesses.at(weld);
    const Instant now = machine.now();
    const bool rebooted = witness.last.bootId != now.bootId;
    const Weld before = *m_session->find(weld);
    const Milliseconds wall = now.utc - witness.last.utc;
    const Milliseconds real = machine.truth() - witness.lastTruth;
    const auto settled = m_session->settle(weld, word, kIlva);
    const bool sure = word == RebootWord::GoOnConfirmed;
    if (rebooted && sure && (wall < Milliseconds(0) || wall > kLongestConfirmed)) {
        ASSERT_FALSE(settled);
        EXPECT_EQ(settled.error().code, ErrorCode::Refused);
        EXPECT_TRUE(holds(settled.error().detail, inSeconds(wall))) << settled.error().detail;
        EXPECT_TRUE(holds(settled.error().detail, "0 to 43200 s")) << settled.error().detail;
        EXPECT_EQ(*m_session->find(weld), before);
        settle(weld, RebootWord::GoOnUnconfirmed);
        return;
    }
    ASSERT_TRUE(settled) << settled.error().detail;
    if (rebooted) {
        ClockBridged bridge;
        bridge.from = witness.last.bootId;
        bridge.lo = sure ? wall : Milliseconds(0);
        bridge.hi = std::max(wall, Milliseconds(0));
        bridge.basis = sure                     ? BridgeBasis::Confirmed
                       : wall < Milliseconds(0) ? BridgeBasis::Backwards
                                                : BridgeBasis::Unconfirmed;
        witness.bridges.push_back(bridge);
        witness.behind = witness.behind || wall < real;
        witness.vouched = witness.vouched || (sure && wall > real);
    }
    noteEvents(weld);
    const bool locked = phaseName(before.state) == "cooling" ||
                        phaseName(before.state) == "releasing" ||
                        phaseName(before.state) == "inspecting";
    const bool stopped =
        word == RebootWord::Abort || (word == RebootWord::None && rebooted && !locked);
    EXPECT_EQ(
        phaseName(settled->state), stopped ? std::string_view("aborted") : phaseName(before.state));
}

void Shop::look(const std::string& weld) {
    readClock();
    m_session->look();
    for (const auto& [id, witness] : m_witnesses) {
        if (witness.open) {
            noteEvents(id);
        }
    }
    judgePainted(*m_session->find(weld), m_witnesses.at(weld));
}

// ---- What must hold at any moment

void Shop::judgePainted(const Weld& weld, const Witness& witness) {
    const Instant now = machine.now();
    const auto t = weldTimeAt(weld, now);
    if (weld.clock.bootId != now.bootId) {
        EXPECT_FALSE(t) << "a time is painted over a bridge that nobody has made";
        EXPECT_EQ(requests(shiftOf(weld), now, hours(1)).silent.size(), 1U);
        return;
    }
    ASSERT_TRUE(t) << t.error().detail;
    const Milliseconds real = machine.truth() - witness.truths.front();
    if (!witness.vouched) {
        EXPECT_LE(t->lo, real);
    }
    if (!witness.behind) {
        EXPECT_GE(t->hi, real);
    }
    // How long ago the phase really began: the last event of that kind that stands.
    const auto since = [&](auto kind) {
        Milliseconds begun{0};
        for (const Retained& one : retained(weld.events)) {
            if (std::holds_alternative<decltype(kind)>(one.d)) {
                begun = witness.truths[static_cast<std::size_t>(one.n - 1)];
            }
        }
        return machine.truth() - begun;
    };
    const auto cues = cuesAt(weld, *t);
    const auto stands = [&](CueKind kind) {
        return std::any_of(
            cues.begin(), cues.end(), [&](const Cue& cue) { return cue.kind == kind; });
    };
    if (const auto* state = std::get_if<Soaking>(&weld.state)) {
        const Milliseconds left = weld.plan.soak->target - since(SoakStarted{});
        if (!witness.vouched) {
            EXPECT_GE(state->due.lo - t->lo, left);
            EXPECT_FALSE(stands(CueKind::ActNow) && left > Milliseconds(0));
        }
    } else if (std::holds_alternative<ChangingOver>(weld.state)) {
        const bool late = since(PlateOut{}) > *weld.plan.changeoverMax;
        EXPECT_TRUE(stands(CueKind::ChangeoverOverrun) || !late || witness.behind);
    } else if (const auto* building = std::get_if<BuildingUp>(&weld.state)) {
        const bool late = since(FacesMet{}) > weld.plan.buildUp->high && !building->inBandSince;
        EXPECT_TRUE(stands(CueKind::BuildUpLate) || !late || witness.behind);
    } else if (const auto* cooling = std::get_if<Cooling>(&weld.state)) {
        const Milliseconds left = weld.plan.cooling->atLeast - since(PressureLocked{});
        if (witness.vouched) {
            return;
        }
        EXPECT_GE(cooling->due.lo - t->lo, left);
        EXPECT_FALSE(stands(CueKind::CoolingDone) && left > Milliseconds(0));
        for (const Request& wish : requests(shiftOf(weld), now, hours(48)).requests) {
            if (wish.code == "cooling_done") {
                EXPECT_GE(wish.onset - now.boot, left);
            }
        }
    }
}

// ---- What must hold of a weld that is over

void Shop::judgePhases(const WeldRecord& record, const Witness& witness) {
    static const std::map<std::string, std::string> kCodes{
        {"soak", "soak_time"},
        {"changeover", "changeover"},
        {"build_up", "build_up"},
        {"cooling", "cooling"}};
    for (const PhaseRecord& phase : record.phases) {
        if (!phase.took) {
            continue;
        }
        const Milliseconds real = witness.truths[static_cast<std::size_t>(phase.toN - 1)] -
                                  witness.truths[static_cast<std::size_t>(phase.fromN - 1)];
        SCOPED_TRACE(phase.phase + " took " + std::to_string(real.count()) + " ms");
        const auto code = kCodes.find(phase.phase);
        const bool named = code == kCodes.end() || isListed(record, code->second);
        if (!witness.vouched) {
            EXPECT_LE(phase.took->lo, real);
            EXPECT_TRUE(named || !phase.low || real >= *phase.low);
        }
        if (!witness.behind) {
            EXPECT_GE(phase.took->hi, real);
            EXPECT_TRUE(named || !phase.high || real <= *phase.high);
        }
    }
}

void Shop::judgeTexts(const WeldRecord& record, const Witness& witness) {
    const RecordExtras extras;
    const Json json = Json::parse(recordJson(record, extras), nullptr, false);
    ASSERT_TRUE(json.is_object());
    std::vector<ClockBridged> told;
    for (const Json& event : json["events"]) {
        if (event["kind"] == "clock_bridged") {
            const std::string basis = event["d"]["basis"];
            ClockBridged bridge;
            bridge.from = event["d"]["from"];
            bridge.lo = Milliseconds(event["d"]["lo_ms"].get<std::int64_t>());
            bridge.hi = Milliseconds(event["d"]["hi_ms"].get<std::int64_t>());
            bridge.basis = basis == "confirmed"   ? BridgeBasis::Confirmed
                           : basis == "backwards" ? BridgeBasis::Backwards
                                                  : BridgeBasis::Unconfirmed;
            told.push_back(bridge);
        }
    }
    EXPECT_EQ(told, witness.bridges);
    std::size_t named = 0;
    for (const Json& reason : json["reasons"]) {
        named += reason["code"] == "bridge_used" ? 1 : 0;
    }
    EXPECT_EQ(named, witness.bridges.size());
    const std::string text = withoutBreaks(recordText(record, extras));
    for (const ClockBridged& bridge : witness.bridges) {
        const std::string between = "between " + inSeconds(bridge.lo) + " and " +
                                    inSeconds(bridge.hi) + " passed (" +
                                    std::string(toString(bridge.basis));
        EXPECT_TRUE(holds(text, between)) << between << "\n" << text;
    }
    for (std::size_t i = 0; i < record.phases.size(); ++i) {
        const auto& took = record.phases[i].took;
        if (took) {
            EXPECT_EQ(
                json["phases"][i]["took_s"]["low"].get<double>(),
                static_cast<double>(took->lo.count()) / 1e3);
            EXPECT_EQ(
                json["phases"][i]["took_s"]["high"].get<double>(),
                static_cast<double>(took->hi.count()) / 1e3);
        }
    }
}

void Shop::judge(const std::string& weld) {
    ASSERT_TRUE(m_writer->flush());
    const Witness& witness = m_witnesses.at(weld);
    EXPECT_FALSE(witness.open);
    auto reader = LogReader::open(m_path);
    ASSERT_TRUE(reader) << reader.error().detail;
    const auto events = reader->weldEvents(weld);
    ASSERT_TRUE(events) << events.error().detail;
    const auto folded = fold(*events);
    ASSERT_TRUE(folded) << folded.error().detail;
    // A weld that ended in an earlier run of the program isn't live any more.
    if (const Weld* live = m_session->find(weld); live != nullptr) {
        EXPECT_EQ(*folded, *live);
    }
    EXPECT_EQ(allOf<ClockBridged>(*events), witness.bridges);
    std::vector<Milliseconds> jumps;
    for (const ClockJumped& jump : allOf<ClockJumped>(*events)) {
        jumps.push_back(jump.delta);
    }
    EXPECT_EQ(jumps, witness.jumps);
    const WeldRecord made = record(*folded);
    if (!witness.bridges.empty() || !witness.jumps.empty()) {
        EXPECT_NE(made.verdict.word, VerdictWord::WithinLimits);
    }
    judgePhases(made, witness);
    judgeTexts(made, witness);
}

void Shop::judgeLog() {
    ASSERT_TRUE(m_writer->flush());
    const auto verified = verifyLog(m_path);
    ASSERT_TRUE(verified) << verified.error().detail;
    EXPECT_TRUE(verified->ok) << (verified->finding ? verified->finding->reason : "");
    auto reader = LogReader::open(m_path);
    ASSERT_TRUE(reader) << reader.error().detail;
    // The list in pages: every joint once, on the day that the clock on the wall showed.
    std::set<std::string> listed;
    std::optional<JointKey> after;
    std::optional<JointLine> above;
    for (;;) {
        JointFilter filter;
        filter.limit = 7;
        filter.after = after;
        const auto page = reader->joints(filter);
        ASSERT_TRUE(page) << page.error().detail;
        if (page->empty()) {
            break;
        }
        for (const JointLine& line : *page) {
            EXPECT_TRUE(listed.insert(line.weld).second) << line.number << " is listed twice";
            const Instant& opened = m_witnesses.at(line.weld).openedAt;
            EXPECT_EQ(line.day, dateOf(opened));
            EXPECT_EQ(line.openedUtc, opened.utc);
            EXPECT_EQ(line.trouble, "");
            if (above) {
                EXPECT_GE(
                    std::tie(above->openedUtc, above->number),
                    std::tie(line.openedUtc, line.number));
            }
            above = line;
            after = keyOf(line);
        }
    }
    EXPECT_EQ(listed.size(), m_opened.size());
    // Numbers follow the true order, whatever the clocks showed.
    for (std::size_t i = 0; i < m_opened.size(); ++i) {
        const auto found = reader->weldsNumbered(static_cast<std::int64_t>(i) + 1);
        ASSERT_TRUE(found);
        EXPECT_EQ(*found, std::vector<std::string>{m_opened[i]});
    }
    std::vector<Milliseconds> jumps;
    const auto station = reader->bodies("station");
    ASSERT_TRUE(station);
    for (const std::string& body : *station) {
        const Json fact = Json::parse(body, nullptr, false);
        if (fact["kind"] == "clock_jumped") {
            jumps.emplace_back(fact["d"]["delta_ms"].get<std::int64_t>());
        }
    }
    ASSERT_EQ(jumps.size(), m_stationJumps.size());
    for (std::size_t i = 0; i < jumps.size(); ++i) {
        ASSERT_EQ(jumps[i], m_stationJumps[i]) << "the station's jump " << i + 1;
    }
}

// ---- The hand

Welder::Welder(
    Shop& shop, std::size_t seam, std::vector<Planned> planned, std::uint64_t seed, bool hasty)
    : m_shop(shop), m_weld(shop.open(seam)), m_planned(std::move(planned)), m_random(seed),
      m_hasty(hasty) {}

Milliseconds Welder::own(Milliseconds least, Milliseconds most) {
    const auto span = static_cast<std::uint64_t>((most - least).count()) + 1;
    return least + Milliseconds(static_cast<std::int64_t>(m_random() % span));
}

bool Welder::weldOn() {
    while (isOpen(m_shop.weld(m_weld).state) && !::testing::Test::HasFailure()) {
        const std::string phase(phaseName(m_shop.weld(m_weld).state));
        if (phase != m_phase) {
            m_phase = phase;
            m_since = m_shop.machine.truth();
            m_ownTime.reset();
        }
        if (!befall()) {
            step();
        }
    }
    return m_planned.empty();
}

/// Whether a mishap was due.
bool Welder::befall() {
    const auto due = std::find_if(m_planned.begin(), m_planned.end(), [&](const Planned& one) {
        return one.phase == m_phase && m_shop.machine.truth() - m_since >= one.after;
    });
    if (due == m_planned.end()) {
        return false;
    }
    const Planned planned = *due;
    m_planned.erase(due);
    RebootWord word = RebootWord::None;
    for (const Mishap& mishap : planned.mishaps) {
        word = mishap.word;
        switch (mishap.kind) {
        case Mishap::Kind::StepWall:
            m_shop.machine.live(mishap.time);
            m_shop.machine.stepWall(mishap.error);
            break;
        case Mishap::Kind::ChangeOffset:
            m_shop.machine.setOffset(
                std::chrono::minutes(60) +
                std::chrono::duration_cast<std::chrono::minutes>(mishap.error));
            break;
        case Mishap::Kind::Suspend:
            m_shop.machine.live(mishap.time);
            break;
        case Mishap::Kind::Kill:
            m_shop.kill();
            m_shop.machine.live(mishap.time);
            m_shop.machine.stepWall(mishap.error);
            m_shop.start();
            break;
        case Mishap::Kind::Reboot:
            m_shop.kill();
            m_shop.machine.reboot(mishap.time, mishap.error);
            m_shop.start();
            break;
        }
        m_shop.look(m_weld);
    }
    m_shop.settle(m_weld, word);
    if (isOpen(m_shop.weld(m_weld).state)) {
        m_shop.look(m_weld);
    }
    return true;
}

/// In strides, with a look after each. False: a mishap is due before.
bool Welder::wait(Milliseconds time) {
    const Milliseconds until = m_shop.machine.truth() + time;
    while (m_shop.machine.truth() < until) {
        Milliseconds stride = std::min<Milliseconds>(until - m_shop.machine.truth(), seconds(45));
        for (const Planned& one : m_planned) {
            const Milliseconds left = m_since + one.after - m_shop.machine.truth();
            if (one.phase == m_phase && left <= Milliseconds(0)) {
                return false;
            }
            if (one.phase == m_phase) {
                stride = std::min(stride, left);
            }
        }
        m_shop.machine.live(stride);
        m_shop.look(m_weld);
    }
    return true;
}

bool Welder::stands(CueKind kind) {
    const Weld& weld = m_shop.weld(m_weld);
    const auto t = weldTimeAt(weld, m_shop.machine.now());
    if (!t) {
        return false;
    }
    const auto cues = cuesAt(weld, *t);
    return std::any_of(cues.begin(), cues.end(), [&](const Cue& cue) { return cue.kind == kind; });
}

void Welder::waitFor(CueKind kind, Milliseconds usual) {
    if (m_hasty) {
        if (!m_ownTime) {
            m_ownTime = m_shop.machine.truth() + own(usual / 2, usual * 5 / 4);
        }
        static_cast<void>(wait(*m_ownTime - m_shop.machine.truth()));
        return;
    }
    if (stands(kind)) {
        return;
    }
    const Weld& weld = m_shop.weld(m_weld);
    const auto t = weldTimeAt(weld, m_shop.machine.now());
    const auto next = t ? nextChange(weld, *t) : std::nullopt;
    ASSERT_TRUE(next) << toString(kind) << " never comes";
    static_cast<void>(wait(*next));
}

void Welder::make(const WeldDetail& detail) {
    const auto made = m_shop.act(m_weld, detail);
    ASSERT_TRUE(made) << kindOf(detail) << " was refused while " << m_phase;
    m_shop.look(m_weld);
}

/// One step, or some of the waiting for it.
void Welder::step() {
    const Weld weld = m_shop.weld(m_weld);
    const WeldPlan& plan = weld.plan;
    const Milliseconds in = m_shop.machine.truth() - m_since;
    const auto passed = [&](Milliseconds time) {
        return wait(std::max(time - in, Milliseconds(0)));
    };
    const bool brief = std::holds_alternative<Preparing>(weld.state) ||
                       std::holds_alternative<Releasing>(weld.state) ||
                       std::holds_alternative<Inspecting>(weld.state);
    if (brief && !wait(seconds(5))) {
        return;
    }
    if (const auto* state = std::get_if<Preparing>(&weld.state)) {
        if (!state->openChecks.empty()) {
            CheckMade made;
            made.check = state->openChecks.front();
            made.passed = true;
            if (made.check == "plate_temperature") {
                made.valueMc = plan.plate->targetMc;
            }
            make(made);
        } else {
            make(AlignmentStarted{});
        }
    } else if (std::holds_alternative<Aligning>(weld.state)) {
        if (passed(seconds(60))) {
            make(SoakStarted{});
            make(ReadingTaken{ReadingPhase::Soak, plan.scale->soak.setMilli});
        }
    } else if (std::holds_alternative<Soaking>(weld.state)) {
        waitFor(CueKind::ActNow, plan.soak->target);
        if (m_hasty ? m_shop.machine.truth() >= *m_ownTime : stands(CueKind::ActNow)) {
            make(PlateOut{});
        }
    } else if (std::holds_alternative<ChangingOver>(weld.state)) {
        if (passed(
                m_hasty ? own(seconds(2), *plan.changeoverMax * 2)
                        : *plan.changeoverMax - Milliseconds(300))) {
            make(FacesMet{});
        }
    } else if (const auto* building = std::get_if<BuildingUp>(&weld.state)) {
        if (building->inBandSince) {
            if (wait(seconds(1))) {
                make(PressureLocked{});
            }
        } else if (passed(
                       m_hasty ? own(plan.buildUp->low / 2, plan.buildUp->high * 2)
                               : plan.buildUp->target)) {
            make(ReadingTaken{ReadingPhase::Joining, plan.scale->joining.setMilli});
        }
    } else if (std::holds_alternative<Cooling>(weld.state)) {
        if (stands(CueKind::RecheckDue) && !m_hasty) {
            make(ReadingTaken{ReadingPhase::Recheck, plan.scale->joining.setMilli});
            return;
        }
        waitFor(CueKind::CoolingDone, plan.cooling->atLeast);
        if (m_hasty ? m_shop.machine.truth() >= *m_ownTime : stands(CueKind::CoolingDone)) {
            make(ReleaseStep{plan.releaseOrder.front()});
        }
    } else if (const auto* releasing = std::get_if<Releasing>(&weld.state)) {
        make(ReleaseStep{plan.releaseOrder[static_cast<std::size_t>(releasing->stepsDone)]});
    } else {
        const auto owed = reasonsOwed(weld);
        if (allOf<BeadMeasured>(weld.events).empty()) {
            make(BeadMeasured{{}, 4000, 2500, 300, 100});
        } else if (!owed.empty()) {
            make(ReasonGiven{owed.front(), "let_it_cool", std::nullopt});
        } else {
            make(closing(weld));
        }
    }
}

} // namespace seamclock::test
