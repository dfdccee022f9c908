// Two whole welds at once on the real program, at practice speed, by real keys, clicks and touches
// of the strip. Every press is stamped on the boot clock; the record of both, brought back from
// practice time to true time by the rule of the pace, must agree with the stamps to 100 ms, and so
// must each phase. Meanwhile nothing comes over a changeover or a build-up.
#include "app/operate/pad_page.h"
#include "app/parts/stripes.h"
#include "core/bench/bench_codec.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "core/practice/shift_pace.h"
#include "core/weld/record.h"
#include "tests/app/operate/e2e/rig.h"
#include "tests/app/operate/e2e/weld_log.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

constexpr double kAgreeMs = 100;
constexpr int kPace = 8;
constexpr int kBenches = 2;

struct Made {
    int bench = 0;
    std::string what;
    Stamp stamp;
    double stolen = 0; // from the program, until the press stood in the log [ms]
};

/// One event of either bench.
struct Row {
    int bench = 0;
    Event event;
};

std::vector<Row> rowsOf(const std::vector<std::optional<Weld>>& welds) {
    std::vector<Row> rows;
    for (int bench = 0; bench < kBenches; ++bench) {
        for (const Event& event : welds[static_cast<std::size_t>(bench)]->events) {
            rows.push_back({bench, event});
        }
    }
    std::stable_sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) {
        return a.event.at.boot < b.event.at.boot;
    });
    return rows;
}

/// The true time that passed between two instants of the benches, which were as in that shift: the
/// rule of the pace looked up every hundredth of a second.
double trueMs(const Shift& shift, Instant from, Milliseconds to) {
    double passed = 0;
    while (from.boot < to) {
        const ShiftPace pace = paceOf(shift, from, seconds(1), kPace);
        const Milliseconds until = std::min(
            to, pace.factor > 1 ? std::max(pace.until, from.boot + milliseconds(1))
                                : from.boot + milliseconds(10));
        passed += static_cast<double>((until - from.boot).count()) / pace.factor;
        from.boot = until;
    }
    return passed;
}

/// On the benches' clock.
Milliseconds bootOf(const Weld& weld, Milliseconds weldTime) {
    const Instant& at = weld.events.back().at;
    return at.boot - weldTimeAt(weld, at)->lo + weldTime;
}

class TwoBenches : public ::testing::Test {
protected:
    TwoBenches() {
        standInFrame(static_cast<int>(kStripes)); // a unit is a pixel here
        m_rig.giveArguments({"--pace", std::to_string(kPace)});
        m_rig.startProgram();
        for (const JobSeam& seam : jobOfTests().seams) {
            const auto bench = readBenchFile(seam.benchFile);
            EXPECT_TRUE(bench);
            m_ids.push_back(bench ? bench->bench.id : "");
        }
    }

    std::optional<Weld> read(int bench) const {
        auto reader = LogReader::open(m_rig.log());
        JointFilter filter;
        filter.bench = m_ids[static_cast<std::size_t>(bench)];
        const auto lines = reader ? reader->joints(filter) : Result<std::vector<JointLine>>{};
        if (!lines || lines->empty()) {
            return std::nullopt;
        }
        const auto events = reader->weldEvents(lines->front().weld);
        const auto weld = events ? fold(*events) : tl::unexpected<Error>(events.error());
        return weld ? std::optional(*weld) : std::nullopt;
    }
    std::size_t events(int bench) const {
        const auto& weld = m_welds[static_cast<std::size_t>(bench)];
        return weld ? weld->events.size() : 0;
    }
    const Weld& weld(int bench) const { return *m_welds[static_cast<std::size_t>(bench)]; }
    bool is(int bench, const std::string& phase) const {
        return m_welds[static_cast<std::size_t>(bench)] && phaseName(weld(bench).state) == phase;
    }

    /// Until the press stands in that bench's weld; the other bench has none of it.
    void counted(int bench, const std::string& what, const Stamp& stamp, std::size_t count = 1) {
        const std::size_t wanted = events(bench) + count;
        const std::size_t others = events(1 - bench);
        EXPECT_TRUE(waitFor([&] {
            m_welds[static_cast<std::size_t>(bench)] = read(bench);
            return events(bench) >= wanted;
        })) << what
            << " is not in the log of bench " << bench;
        m_welds[static_cast<std::size_t>(1 - bench)] = read(1 - bench);
        EXPECT_EQ(events(1 - bench), others) << what << " counted on the other bench";
        m_made.push_back({bench, what, stamp, m_rig.waited() - stamp.waited});
    }
    QRectF step(FrameKind kind) const { return frameFor(kind).step; }

    /// The middle of that bench's cell.
    QPointF cell(int bench) const {
        const QRectF strip = frameFor(FrameKind::Page).strip;
        const double status = 178;
        const double gap = 8;
        const double wide = (strip.width() - status - gap - gap * (kBenches - 1)) / kBenches;
        return {strip.left() + bench * (wide + gap) + wide / 2, strip.center().y()};
    }
    QPointF statusTile() const {
        const QRectF strip = frameFor(FrameKind::Page).strip;
        return {strip.right() - 60, strip.center().y()};
    }

    void open(int bench) {
        const QRect place = pixels(step(FrameKind::Page));
        const QImage seams = m_rig.screen();
        m_rig.key("space");
        ASSERT_TRUE(waitFor([&] {
            return difference(m_rig.screen(), place, seams.copy(place)) > kSamePicture;
        })) << "no card came";
        counted(bench, "opened", m_rig.click(step(FrameKind::Page)));
    }

    void type(const std::string& digits) {
        for (const char digit : digits) {
            m_rig.key(digit == '.' ? "period" : std::string(1, digit));
        }
    }
    void expectPad(int bench, NumberFor what) {
        PadPage page;
        page.ask(numberTask(weld(bench), what, bench == 0 ? "A" : "B"));
        const QRect part = pixels(frameFor(FrameKind::Pad).body);
        const QImage wanted = painted(page, part);
        EXPECT_TRUE(waitFor([&] {
            return difference(m_rig.screen(), part, wanted) < kSamePicture;
        })) << "the pad does not stand";
    }

    void prepare(int bench) {
        for (int i = 0; i < 40; ++i) {
            const auto* state = std::get_if<Preparing>(&weld(bench).state);
            ASSERT_NE(state, nullptr);
            const std::string asked = checkAsked(weld(bench), *state);
            if (asked.empty()) {
                return;
            }
            if (asked != "plate_temperature") {
                counted(
                    bench, asked,
                    i % 2 == 0 ? m_rig.key("Return") : m_rig.click(step(FrameKind::Check)));
                continue;
            }
            if (platePlacesRead(weld(bench)) == 0) {
                m_rig.key("space"); // "Type it in"
            }
            expectPad(bench, NumberFor::PlateTemperature);
            type(bench == 0 ? "211" : "208");
            counted(bench, "plate", m_rig.key("Return"));
        }
        FAIL() << "preparation does not end";
    }

    void inspect(int bench) {
        m_rig.key("space"); // "Type it in"
        expectPad(bench, NumberFor::BeadHeight);
        type(bench == 0 ? "4.2" : "4.6");
        m_rig.click(step(FrameKind::Pad));
        expectPad(bench, NumberFor::BeadWidth);
        type("9.5");
        m_rig.key("Return");
        expectPad(bench, NumberFor::BeadK);
        type("0.8");
        m_rig.key("Next");
        expectPad(bench, NumberFor::Misalignment);
        type("0.4");
        counted(bench, "bead", m_rig.key("F9"));
    }

    void payOwed(int bench) {
        for (const std::string& owed : reasonsOwed(weld(bench))) {
            counted(bench, "a reason for " + owed, m_rig.key("space")); // too busy to be in time
        }
    }

    const Made& madeAt(int bench, const std::string& what) const {
        static const Made kNone;
        for (const Made& one : m_made) {
            if (one.bench == bench && one.what == what) {
                return one;
            }
        }
        ADD_FAILURE() << what << " was not pressed";
        return kNone;
    }
    /// On the boot clock, if nobody does anything meanwhile.
    double whenCooled(int bench) const {
        Shift shift;
        Instant last;
        for (int one = 0; one < kBenches; ++one) {
            const Weld& each = weld(one);
            if (isOpen(each.state)) {
                shift.benches.push_back({m_ids[static_cast<std::size_t>(one)], one + 1, each});
            }
            last = std::max(last.boot, each.events.back().at.boot) == last.boot
                       ? last
                       : each.events.back().at;
        }
        const Milliseconds due = bootOf(weld(bench), std::get<Cooling>(weld(bench).state).due.lo);
        return m_made.back().stamp.before + trueMs(shift, last, due);
    }
    const Stamp& stampOf(int bench, const std::string& what) const {
        return madeAt(bench, what).stamp;
    }
    void waitSince(int bench, const std::string& what, double ms) const {
        waitUntil(stampOf(bench, what).before + ms);
    }

    /// Every event is a press's, at its instant.
    void expectStamps() {
        const std::vector<Row> rows = rowsOf(m_welds);
        std::vector<std::optional<Weld>> now(kBenches);
        double passed = 0;
        std::size_t press = 0;
        double worst = 0;
        double taken = 0;
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const auto bench = static_cast<std::size_t>(rows[i].bench);
            if (i > 0) {
                Shift shift;
                for (std::size_t one = 0; one < now.size(); ++one) {
                    if (now[one] && isOpen(now[one]->state)) {
                        shift.benches.push_back({m_ids[one], static_cast<int>(one) + 1, *now[one]});
                    }
                }
                passed += trueMs(shift, rows[i - 1].event.at, rows[i].event.at.boot);
            }
            now[bench] =
                now[bench] ? *apply(*now[bench], rows[i].event) : *seamclock::open(rows[i].event);
            // The reading that goes with a step has the step's stamp.
            const auto* reading = std::get_if<ReadingTaken>(&rows[i].event.d);
            const bool same = reading != nullptr && (reading->phase == ReadingPhase::Alignment ||
                                                     reading->phase == ReadingPhase::Soak);
            if (same) {
                continue;
            }
            ASSERT_LT(press, m_made.size());
            const Made& made = m_made[press++];
            EXPECT_EQ(made.bench, rows[i].bench) << made.what;
            // The clock of practice began with the machine's, and was true until a weld might
            // hurry. The press lies between its stamps.
            const double at = static_cast<double>(rows.front().event.at.boot.count()) + passed;
            const double off = std::max({made.stamp.before - at, at - made.stamp.after, 0.0});
            const double stolen =
                made.stolen + m_probe.worstBetween(made.stamp.before, made.stamp.after + kAgreeMs);
            EXPECT_LE(off, kAgreeMs + stolen)
                << made.what << " on bench " << made.bench << "; scheduler " << stolen << " ms";
            taken = std::max(taken, stolen);
            worst = std::max(worst, off);
        }
        EXPECT_EQ(press, m_made.size()) << "a press has no event";
        std::printf(
            "%zu presses, %zu events on two benches; at worst %.0f ms off; the machine took at "
            "most %.0f ms\n",
            m_made.size(), rows.size(), worst, taken);
    }
    void expectRecord(int bench) const {
        const WeldRecord joint = record(weld(bench));
        EXPECT_EQ(joint.opened.type, WeldType::Practice);
        EXPECT_EQ(joint.opened.seam, bench == 0 ? "T1" : "T2");
        EXPECT_EQ(joint.opened.bench, m_ids[static_cast<std::size_t>(bench)]);
        ASSERT_EQ(joint.phases.size(), 5U);
        // True time from get ready to the lock: these are the stamps' own.
        const auto expectTook = [&](std::size_t phase, const char* from, const char* to) {
            const Stamp& began = stampOf(bench, from);
            const Stamp& ended = stampOf(bench, to);
            const double stolen = madeAt(bench, from).stolen + madeAt(bench, to).stolen;
            const auto took = static_cast<double>(joint.phases[phase].took->lo.count());
            EXPECT_GE(took, ended.before - began.after - kAgreeMs - stolen) << from;
            EXPECT_LE(took, ended.after - began.before + kAgreeMs + stolen) << from;
        };
        expectTook(2, "plate out", "faces met");
        expectTook(3, "faces met", "reached");
        EXPECT_GE(joint.phases[4].took->lo, weld(bench).plan.cooling->atLeast);
        ASSERT_EQ(joint.beads.size(), 1U);
        EXPECT_EQ(std::get<BeadMeasured>(joint.beads[0].d).heightUm, bench == 0 ? 4'200 : 4'600);
        EXPECT_TRUE(joint.numberedAt);
        ASSERT_TRUE(joint.stored);
        EXPECT_EQ(joint.stored->verdict, toString(joint.verdict.word));
    }

    Rig m_rig;
    SchedulerProbe m_probe;
    std::vector<std::string> m_ids;
    std::vector<std::optional<Weld>> m_welds{kBenches};
    std::vector<Made> m_made;
};

TEST_F(TwoBenches, AreWeldedAtOnceAndTheRecordsOfBothAreWhatWasDone) {
    m_rig.click(cell(0)); // the notice that this is practice: seen
    ASSERT_NO_FATAL_FAILURE(open(0));
    ASSERT_NO_FATAL_FAILURE(prepare(0));
    m_rig.click(cell(1)); // touched
    ASSERT_NO_FATAL_FAILURE(open(1));
    ASSERT_NO_FATAL_FAILURE(prepare(1));

    m_rig.key("1");
    counted(0, "pressure on", m_rig.key("space"), 2);
    m_rig.click(cell(1));
    counted(1, "pressure on", m_rig.click(step(FrameKind::Phase)), 2);
    m_rig.key("1");
    waitSince(1, "pressure on", 500);
    counted(0, "pressure off", m_rig.key("Return"), 2);
    ASSERT_TRUE(is(0, "soaking"));
    // B's soak is begun so late that it ends when A is locked: A needs 12 s, of which the first two
    // hurry, and about six for what follows.
    waitSince(0, "pressure off", 6'500);
    m_rig.key("2");
    waitSince(0, "pressure off", 7'300);
    counted(1, "pressure off", m_rig.click(step(FrameKind::Phase)), 2);
    ASSERT_TRUE(is(1, "soaking"));
    // The screen comes to A by itself when its soak is over: nobody presses a bench.
    const Event& soak = weld(0).events[weld(0).events.size() - 2]; // then its reading
    const double soakMs = trueMs(
        {{{m_ids[0], 1, weld(0)}}, {}, true, {}}, soak.at,
        bootOf(weld(0), std::get<Soaking>(weld(0).state).due.lo));
    waitSince(0, "pressure off", soakMs + 850);
    counted(0, "plate out", m_rig.key("F9"));
    ASSERT_TRUE(is(0, "changing_over"));
    m_rig.key("2");
    m_rig.click(cell(1));
    m_rig.click(statusTile());
    waitSince(0, "plate out", 1'700);
    counted(0, "faces met", m_rig.click(step(FrameKind::Changeover)));
    ASSERT_TRUE(is(0, "building_up"));
    m_rig.click(cell(1));
    m_rig.key("2");
    waitSince(0, "faces met", 2'300);
    counted(0, "reached", m_rig.key("Return"));
    waitSince(0, "faces met", 3'000);
    counted(0, "locked", m_rig.key("Next"));
    ASSERT_TRUE(is(0, "cooling"));
    payOwed(0);

    m_rig.click(cell(1));
    waitSince(1, "pressure off", 12'700);
    counted(1, "plate out", m_rig.click(step(FrameKind::Phase)));
    m_rig.key("1");
    waitSince(1, "plate out", 1'500);
    counted(1, "faces met", m_rig.key("space"));
    m_rig.key("1");
    waitSince(1, "faces met", 2'300);
    counted(1, "reached", m_rig.click(step(FrameKind::Phase)));
    waitSince(1, "faces met", 3'000);
    counted(1, "locked", m_rig.key("F9"));
    ASSERT_TRUE(is(1, "cooling"));
    payOwed(1);

    for (const int bench : {0, 1}) {
        m_rig.key(std::to_string(bench + 1));
        waitUntil(whenCooled(bench) + 2'000); // then it is true time, and nothing is lost
        counted(bench, "numbered", m_rig.key("space"));
        for (int i = 1; !is(bench, "inspecting"); ++i) {
            ASSERT_LE(i, 8);
            counted(
                bench, "release " + std::to_string(i),
                i % 2 == 0 ? m_rig.key("Return")
                           : m_rig.click(step(i == 1 ? FrameKind::Cooling : FrameKind::Phase)));
        }
        ASSERT_NO_FATAL_FAILURE(inspect(bench));
        counted(bench, "saved", m_rig.click(step(FrameKind::Phase)));
        ASSERT_TRUE(is(bench, "closed"));
    }
    m_rig.click(statusTile());
    m_rig.click(frameFor(FrameKind::Page).stop);
    EXPECT_EQ(m_rig.waitForEnd(), 0);

    ASSERT_NO_FATAL_FAILURE(expectStamps());
    for (const int bench : {0, 1}) {
        SCOPED_TRACE(bench);
        ASSERT_NO_FATAL_FAILURE(expectRecord(bench));
    }
    const auto sound = verifyLog(m_rig.log());
    ASSERT_TRUE(sound) << sound.error().detail;
    EXPECT_TRUE(sound->ok) << (sound->finding ? sound->finding->reason : "");
}

} // namespace
} // namespace seamclock::test
