#include "tests/faults/kills.h"

#include "core/log/log_reader.h"
#include "core/log/recover.h"
#include "core/log/verify.h"
#include "core/practice/chance.h"
#include "core/practice/virtual_operator.h"
#include "tests/faults/driver.h"
#include "tests/support/demo_order.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>
#include <map>

namespace seamclock::test {

namespace {

/// The phase a weld is in by its last pivotal step, worked out here from
/// the kinds alone.
/// The phase that a weld is in after these kinds of events; its plan releases in so many steps.
std::string phaseAfter(const std::vector<std::string>& kinds, std::size_t releaseSteps) {
    static const std::map<std::string, std::string> kAfter{
        {"weld_opened", "preparing"}, {"alignment_started", "aligning"},
        {"soak_started", "soaking"},  {"plate_out", "changing_over"},
        {"faces_met", "building_up"}, {"pressure_locked", "cooling"},
        {"weld_closed", "closed"},    {"weld_aborted", "aborted"}};
    std::string phase;
    std::size_t released = 0;
    for (const std::string& kind : kinds) {
        const auto found = kAfter.find(kind);
        if (found != kAfter.end()) {
            phase = found->second;
        } else if (kind == kindOf(WeldDetail{ReleaseStep{}})) {
            phase = ++released == releaseSteps ? "inspecting" : "releasing";
        }
    }
    return phase;
}

std::vector<std::string> kindsOf(const std::vector<Event>& events) {
    std::vector<std::string> kinds;
    for (const Event& event : events) {
        kinds.emplace_back(kindOf(event.d));
    }
    return kinds;
}

std::size_t releaseStepsOf(const std::vector<Event>& events) {
    return std::get<WeldOpened>(events.front().d).plan.releaseOrder.size();
}

std::string phaseBy(const std::vector<Event>& events) {
    return events.empty() ? "" : phaseAfter(kindsOf(events), releaseStepsOf(events));
}

/// Events without what differs from weld to weld: its name and its boot's, the joint's number.
std::vector<Event> comparable(std::vector<Event> events) {
    for (Event& event : events) {
        event.subject = "weld:";
        event.at.bootId = "";
        if (auto* opened = std::get_if<WeldOpened>(&event.d)) {
            opened->number = 0;
        }
    }
    return events;
}

std::vector<Event> uninterrupted(const std::string& log, std::uint64_t seed) {
    RehearseOptions options;
    options.order = orderOf(kDemoSeams[1]);
    options.seed = seed;
    options.logPath = log;
    const auto result = rehearse(options, {});
    if (!result) {
        ADD_FAILURE() << result.error().detail;
        return {};
    }
    return comparable(result->events);
}

/// Everything that was told of a weld by all the runs that worked on it.
struct Account {
    std::map<std::int64_t, Told::Event> events;
    std::set<std::int64_t> saved;
    std::string weld;

    void add(const Told& told) {
        for (const auto& [n, event] : told.events) {
            events[n] = event; // a later run tells anew what was lost before it was saved
        }
        saved.insert(told.saved.begin(), told.saved.end());
        weld = told.weld.empty() ? weld : told.weld;
    }
};

std::vector<Event> eventsIn(const std::string& log, const std::string& weld) {
    auto reader = LogReader::open(log);
    if (!reader) {
        ADD_FAILURE() << reader.error().detail;
        return {};
    }
    const auto events = reader->weldEvents(weld);
    EXPECT_TRUE(events) << (events ? "" : events.error().detail);
    return events.value_or(std::vector<Event>{});
}

/// Holds the log against what was told. Returns the weld's events.
std::vector<Event> holdAgainst(const std::string& log, const Account& account) {
    std::vector<Event> events = eventsIn(log, account.weld);
    // Nothing acknowledged is lost, and what is there is what was told.
    for (const std::int64_t n : account.saved) {
        EXPECT_LE(n, static_cast<std::int64_t>(events.size())) << "told saved and not in the log";
    }
    for (const Event& event : events) {
        const auto told = account.events.find(event.n);
        if (told == account.events.end()) {
            continue; // written, and killed before it could be told
        }
        EXPECT_EQ(told->second.kind, kindOf(event.d)) << event.n;
        EXPECT_EQ(told->second.bootMs, event.at.boot.count()) << event.n;
    }
    const auto verified = verifyLog(log);
    EXPECT_TRUE(verified && verified->ok)
        << (verified ? (verified->finding ? verified->finding->reason : "")
                     : verified.error().detail);
    return events;
}

void expectFoldIsLive(const std::vector<Event>& events) {
    if (events.empty()) {
        return;
    }
    auto live = open(events.front());
    for (std::size_t i = 1; live && i < events.size(); ++i) {
        live = apply(*live, events[i]);
    }
    const auto folded = fold(events);
    ASSERT_TRUE(live && folded) << (live ? folded.error().detail : live.error().detail);
    EXPECT_EQ(*live, *folded);
}

/// A kill in the middle of a commit leaves rows in the write-ahead log that a reader does not see
/// yet and that were really given. The writer takes them back (core/log/start_check.h), so a weld
/// may resume with more than `before`, which is what a reader saw; the killed run told of each.
void expectResumedRight(
    const Told& told, const std::vector<Event>& before, const Account& account, bool trueTime) {
    if (before.empty()) {
        EXPECT_NE(told.error.find("nothing to resume"), std::string::npos) << told.error;
        return;
    }
    if (!told.resumed) {
        EXPECT_TRUE(told.killed) << told.error; // before it could say where it stands
        return;
    }
    std::vector<std::string> kinds = kindsOf(before);
    std::int64_t last = before.back().at.boot.count();
    EXPECT_GE(told.resumed->events, before.size());
    for (std::size_t n = before.size() + 1; n <= told.resumed->events; ++n) {
        const auto given = account.events.find(static_cast<std::int64_t>(n));
        ASSERT_NE(given, account.events.end()) << "event " << n << " was never given";
        kinds.push_back(given->second.kind);
        last = given->second.bootMs;
    }
    EXPECT_EQ(told.resumed->phase, phaseAfter(kinds, releaseStepsOf(before)));
    EXPECT_EQ(told.resumed->loMs, told.resumed->hiMs);
    // On one boot the weld's time is nothing but the boot clock's difference; a practice clock
    // stood still.
    const std::int64_t now = trueTime ? told.resumed->bootMs : last;
    EXPECT_EQ(told.resumed->loMs, now - before.front().at.boot.count());
}

/// One weld after the other, each killed at random moments of its life.
class Killer {
public:
    Killer(std::string log, std::uint64_t seed, bool trueTime, double speed)
        : m_log(std::move(log)), m_chance(seed), m_seed(seed), m_trueTime(trueTime),
          m_speed(speed) {}

    /// One run that is killed, if it doesn't end before. Returns the events of a weld that was
    /// finished.
    std::optional<std::vector<Event>> strike() {
        DriverCall call;
        call.log = m_log;
        call.seed = m_seed;
        call.trueTime = m_trueTime;
        call.speed = m_speed;
        call.resume = !m_account.weld.empty();
        const std::vector<Event> before = m_events;
        const Milliseconds life(m_chance.even("life" + std::to_string(m_runs++), 0, 330));
        const Told told = runDriverFor(call, life);
        m_kills += told.killed ? 1 : 0;
        if (call.resume) {
            expectResumedRight(told, before, m_account, m_trueTime);
        }
        m_account.add(told);
        if (m_account.weld.empty() || !std::filesystem::exists(m_log)) {
            return {}; // killed before it had planned anything
        }
        m_events = holdAgainst(m_log, m_account);
        expectFoldIsLive(m_events);
        if (m_events.empty()) {
            m_account = {}; // killed before the opening was on disk: there is no weld
            return {};
        }
        if (told.killed) {
            m_hit[phaseBy(m_events)]++;
        }
        const std::string phase = phaseBy(m_events);
        if (phase != "closed") {
            EXPECT_TRUE(told.killed) << "ended while " << phase << ": " << told.error;
            return {};
        }
        m_account = {};
        return std::exchange(m_events, {});
    }

    int kills() const { return m_kills; }
    int hit(const std::string& phase) const {
        const auto found = m_hit.find(phase);
        return found == m_hit.end() ? 0 : found->second;
    }
    void nextSeed() { ++m_seed; }
    std::uint64_t seed() const { return m_seed; }

private:
    std::string m_log;
    Chance m_chance;
    std::uint64_t m_seed;
    bool m_trueTime;
    double m_speed;
    Account m_account;
    std::vector<Event> m_events;
    std::map<std::string, int> m_hit;
    int m_kills = 0;
    int m_runs = 0;
};

bool hitAll(const Killer& killer) {
    const auto phases = {"aligning", "soaking", "changing_over", "building_up", "cooling"};
    return std::all_of(
        phases.begin(), phases.end(), [&](const char* phase) { return killer.hit(phase) > 0; });
}

constexpr int kMostRuns =
    20; // for each kill asked for: a driver that can't be killed ends the test

} // namespace

void killInTrueTime(const std::string& log, int kills, std::uint64_t seed) {
    Killer killer(log, seed, true, 1);
    for (int run = 0; run < kMostRuns * kills && !::testing::Test::HasFailure(); ++run) {
        if (killer.kills() >= kills && hitAll(killer)) {
            return;
        }
        const auto finished = killer.strike();
        if (!finished) {
            continue;
        }
        // However often it was interrupted: cooling was never shortened.
        Milliseconds locked{0};
        for (const Event& event : *finished) {
            if (std::holds_alternative<PressureLocked>(event.d)) {
                locked = event.at.boot;
            } else if (std::holds_alternative<ReleaseStep>(event.d)) {
                const auto& plan = std::get<WeldOpened>(finished->front().d).plan;
                EXPECT_GE(event.at.boot - locked, plan.cooling->atLeast);
                break;
            }
        }
    }
    EXPECT_GE(killer.kills(), kills);
    EXPECT_TRUE(hitAll(killer));
}

void killPaced(const std::string& log, int kills, std::uint64_t seed) {
    // A weld of some 21 minutes in half a second. A resumed practice clock stands where the last
    // event left it, so the longest wait between two events (five minutes of cooling) must be
    // shorter than the longest life.
    constexpr double kSpeed = 2500;
    Killer killer(log, seed, false, kSpeed);
    int finishedWelds = 0;
    for (int run = 0; run < kMostRuns * kills && !::testing::Test::HasFailure(); ++run) {
        if (killer.kills() >= kills && finishedWelds > 0) {
            return;
        }
        const auto finished = killer.strike();
        if (!finished) {
            continue;
        }
        ++finishedWelds;
        EXPECT_EQ(comparable(*finished), uninterrupted(log + ".whole", killer.seed()));
        killer.nextSeed();
    }
    EXPECT_GE(killer.kills(), kills);
    EXPECT_GT(finishedWelds, 0);
}

int killAfterEvents(const std::string& folder, std::uint64_t seed, int step) {
    const std::vector<Event> whole = uninterrupted(folder + "/whole.seamlog", seed);
    EXPECT_FALSE(whole.empty());
    int killed = 0;
    for (std::int64_t n = 1; n <= static_cast<std::int64_t>(whole.size()); n += step) {
        const std::string log = folder + "/" + std::to_string(n) + ".seamlog";
        DriverCall call;
        call.log = log;
        call.seed = seed;
        call.speed = 1e9;
        call.dieAt = n;
        Account account;
        const Told first = runDriver(call);
        EXPECT_TRUE(first.killed) << n;
        killed += first.killed ? 1 : 0;
        account.add(first);
        const std::vector<Event> before = holdAgainst(log, account);
        if (!before.empty() && phaseBy(before) == "closed") {
            EXPECT_EQ(comparable(before), whole) << n;
            continue;
        }
        call.dieAt = 0;
        call.resume = !before.empty();
        const Told second = runDriver(call);
        EXPECT_EQ(second.error, "") << n;
        EXPECT_FALSE(second.done.empty()) << n;
        if (call.resume) {
            expectResumedRight(second, before, account, false);
            EXPECT_EQ(second.weld, first.weld);
        }
        EXPECT_EQ(comparable(eventsIn(log, second.weld)), whole) << "killed after event " << n;
    }
    return killed;
}

} // namespace seamclock::test
