// The program is killed in every phase and started again on the same log: the weld is on the screen
// without a press, and the number that is painted is the right one. What should be painted is
// rendered here from the rows of the log for the present instant and for instants around it: a
// picture within a second of now must fit, one three seconds off must not, and the number must be
// what the events' own instants give by plain arithmetic.
#include "app/operate/weld_page.h"
#include "core/log/verify.h"
#include "tests/app/operate/e2e/rig.h"
#include "tests/app/operate/e2e/weld_log.h"

#include <gtest/gtest.h>
#include <optional>
#include <utility>

namespace seamclock::test {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

constexpr Milliseconds kNear{1'000};

WeldView viewAt(const Weld& weld, Instant now, Milliseconds off, const QString& letter) {
    now.boot += off;
    now.utc += off;
    ViewContext context;
    context.now = now;
    context.letter = letter;
    context.pedal = true;
    context.lessMotion = true;
    return weldView(weld, context);
}

/// Where the number stands.
QRect numberPlace(const WeldView& view) {
    const Frame frame = frameFor(frameKindOf(view));
    return pixels(view.layout == WeldView::Layout::Changeover ? frame.body : frame.lamp);
}

double differs(const QImage& screen, const WeldView& view, const QRect& place) {
    return difference(screen, place, painted(view, place));
}

/// By how much the time that is painted differs from the present: the nearest that fits, within a
/// second. None: no picture fits. Build-up's number changes 18 times a second, hence the small
/// steps.
std::optional<Milliseconds>
paintedOff(const Rig& rig, const Weld& weld, const QString& letter, double& best) {
    const QImage screen = rig.screen();
    const Instant now = presentInstant();
    const auto differsAt = [&](Milliseconds off) {
        const WeldView view = viewAt(weld, now, off, letter);
        return differs(screen, view, numberPlace(view));
    };
    best = differsAt(Milliseconds(0));
    if (best > 0.3) {
        return std::nullopt; // quite another screen
    }
    for (Milliseconds off(0); off <= kNear; off += milliseconds(25)) {
        for (const Milliseconds signedOff : {-off, off}) {
            const double here = differsAt(signedOff);
            best = std::min(best, here);
            if (here < kSamePicture) {
                return signedOff;
            }
        }
    }
    return std::nullopt;
}

/// The screen shows this weld with the time that runs now, to a second; three seconds more or less
/// would be another picture.
void expectPainted(const Rig& rig, const Weld& weld, const QString& letter) {
    double best = 1;
    std::optional<Milliseconds> off;
    const bool fits = waitFor([&] {
        off = paintedOff(rig, weld, letter, best);
        return off.has_value();
    });
    EXPECT_TRUE(fits) << "the nearest picture differs in " << best * 100 << " % of its pixels";
    if (!fits) {
        return;
    }
    std::printf("painted as it was %lld ms from now\n", static_cast<long long>(off->count()));
    const QImage screen = rig.screen();
    const Instant now = presentInstant();
    const WeldView present = viewAt(weld, now, {}, letter);
    for (const Milliseconds far : {-seconds(3), seconds(3)}) {
        const WeldView view = viewAt(weld, now, far, letter);
        if (view.lamp.number != present.lamp.number) { // a number that goes with the time
            EXPECT_GT(differs(screen, view, numberPlace(view)), 2 * kSamePicture)
                << view.lamp.number.toStdString() << " looks like "
                << present.lamp.number.toStdString();
        }
    }
}

/// "1:05", "+0:07", "+3 s" or "4" as seconds.
double secondsOf(const QString& number) {
    const QString plain = QString(number).remove('+').section(' ', 0, 0);
    const QStringList parts = plain.split(':');
    return parts.size() == 2 ? parts[0].toDouble() * 60 + parts[1].toDouble() : parts[0].toDouble();
}

template <class Detail>
double secondsSince(const Weld& weld, const Instant& now) {
    for (const Event& event : weld.events) {
        if (std::holds_alternative<Detail>(event.d)) {
            return static_cast<double>((now.boot - event.at.boot).count()) / 1000;
        }
    }
    ADD_FAILURE() << "the step is not there";
    return 0;
}

/// By the short procedure's own figures (tests/data/e2e): soak 12 s, build-up 3 s, cooling 30 s.
void expectRightNumber(const Weld& weld) {
    const Instant now = presentInstant();
    const WeldView view = viewAt(weld, now, {}, "A");
    const double number = secondsOf(view.lamp.number);
    const std::string phase(phaseName(weld.state));
    if (phase == "aligning") {
        EXPECT_NEAR(number, secondsSince<AlignmentStarted>(weld, now), 1);
    } else if (phase == "soaking") {
        const double left = 12 - secondsSince<SoakStarted>(weld, now);
        EXPECT_NEAR(view.lamp.number.startsWith('+') ? -number : number, left, 1);
    } else if (phase == "changing_over") {
        EXPECT_NEAR(number, secondsSince<PlateOut>(weld, now), 1);
    } else if (phase == "building_up") {
        const double gone = secondsSince<FacesMet>(weld, now);
        const double set = static_cast<double>(weld.plan.scale->joining.setMilli) / 1000;
        if (view.lamp.number.startsWith('+')) {
            EXPECT_NEAR(number, gone - 3, 1);
        } else {
            EXPECT_NEAR(number, set * gone / 3, 0.5 + set / 3); // a division, and a second's rise
        }
    } else if (phase == "cooling") {
        EXPECT_NEAR(number, 30 - secondsSince<PressureLocked>(weld, now), 1);
    }
}

struct Phase {
    const char* name;
    Brought before; // one press before it
    const char* key;
};

void PrintTo(const Phase& phase, std::ostream* out) {
    *out << phase.name;
}

class Killed : public ::testing::TestWithParam<Phase> {};

TEST_P(Killed, ComesBackWithTheRightNumber) {
    const Phase& phase = GetParam();
    Rig rig;
    bringLog(rig.log(), phase.before);
    const auto before = weldIn(rig.log());
    ASSERT_TRUE(before);
    rig.startProgram();
    expectPainted(rig, *before, "A");

    rig.key(phase.key);
    // One press can make several events, which come to disk one after the other.
    std::optional<Weld> weld;
    std::size_t last = 0;
    ASSERT_TRUE(waitFor([&] {
        weld = weldIn(rig.log());
        const std::size_t count = weld ? weld->events.size() : 0;
        return std::exchange(last, count) == count && count > before->events.size();
    }));
    EXPECT_EQ(phaseName(weld->state), phase.name);
    expectPainted(rig, *weld, "A");
    rig.killProgram();
    const auto kept = weldIn(rig.log());
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->events, weld->events) << "the last step was on disk";

    const double started = bootMs();
    rig.startProgram();
    expectPainted(rig, *kept, "A");
    expectRightNumber(*kept);
    std::printf("back on the screen after %.0f ms\n", bootMs() - started);
    // And not any picture would have done: the one before the last step does not fit.
    const QImage screen = rig.screen();
    const WeldView past = viewAt(*before, presentInstant(), {}, "A");
    EXPECT_GT(differs(screen, past, numberPlace(past)), 2 * kSamePicture);
    // The weld goes on where it was: nothing was made by coming back.
    const auto now = weldIn(rig.log());
    ASSERT_TRUE(now);
    EXPECT_EQ(now->events, kept->events);
    rig.killProgram();
    const auto sound = verifyLog(rig.log());
    ASSERT_TRUE(sound) << sound.error().detail;
    EXPECT_TRUE(sound->ok) << (sound->finding ? sound->finding->reason : "");
}

INSTANTIATE_TEST_SUITE_P(
    In, Killed,
    ::testing::Values(
        Phase{"preparing", {"preparing", 4, seconds(2), 0, {}}, "space"},
        Phase{"aligning", {"preparing", 17, seconds(2), 0, {}}, "Return"},
        Phase{"soaking", {"aligning", 0, seconds(2), 0, {}}, "Next"},
        Phase{"changing_over", {"soaking", 0, milliseconds(12'100), 0, {}}, "F9"},
        Phase{"building_up", {"changing_over", 0, milliseconds(1'200), 0, {}}, "space"},
        Phase{"cooling", {"building_up", 1, milliseconds(700), 0, {}}, "Return"},
        Phase{"releasing", {"cooling", 1, seconds(2), 0, {}}, "Next"},
        Phase{"inspecting", {"releasing", 2, seconds(2), 0, {}}, "F9"}),
    [](const ::testing::TestParamInfo<Phase>& phase) { return std::string(phase.param.name); });

TEST(Killed, ShowsTheOpenWeldOfTheSecondBenchAtOnce) {
    Rig rig;
    bringLog(rig.log(), {"cooling", 0, seconds(3), 1, {}});
    const auto weld = weldIn(rig.log());
    ASSERT_TRUE(weld);
    rig.startProgram();
    expectPainted(rig, *weld, "B");
}

TEST(Started, WithoutValuesForTheHeatEstimateTheWeldGoesOn) {
    Rig rig;
    rig.takeMaterials();
    bringLog(rig.log(), {"cooling", 0, seconds(3), 0, {}});
    const auto weld = weldIn(rig.log());
    ASSERT_TRUE(weld);
    rig.startProgram();
    expectPainted(rig, *weld, "A");
}

// ---- the machine was off: another boot's instants stand in the log

Instant beforeReboot() {
    Instant past = presentInstant();
    past.bootId = "0b7a1c52-4e1d-4f0a-9a61-2f6f7d1c9e03";
    past.boot = seconds(50'000);
    past.utc -= seconds(90);
    return past;
}

void expectWords(const Rig& rig, const Weld& weld, const QString& step, const QString& stop) {
    const WeldView view = viewAt(weld, presentInstant(), {}, "A");
    EXPECT_EQ(view.step.view.text, step);
    EXPECT_EQ(view.stop.view.text, stop);
    const Frame frame = frameFor(frameKindOf(view));
    const QImage screen = rig.screen();
    EXPECT_LT(differs(screen, view, pixels(frame.step)), kSamePicture);
    EXPECT_LT(differs(screen, view, pixels(frame.stop)), kSamePicture);
}

std::optional<Weld> afterPress(const Rig& rig, const Weld& before) {
    std::optional<Weld> weld;
    EXPECT_TRUE(waitFor([&] {
        weld = weldIn(rig.log());
        return weld && weld->events.size() > before.events.size();
    }));
    return weld;
}

TEST(Rebooted, InSoakAsksForItsWordAndStopsTheWeldByKey) {
    Rig rig;
    bringLog(rig.log(), {"soaking", 0, seconds(3), 0, beforeReboot()});
    const auto weld = weldIn(rig.log());
    ASSERT_TRUE(weld);
    rig.startProgram();
    expectPainted(rig, *weld, "A");
    expectWords(rig, *weld, "Stop: cut out", "Go on");
    rig.key("space");
    const auto after = afterPress(rig, *weld);
    ASSERT_TRUE(after);
    EXPECT_TRUE(std::holds_alternative<Aborted>(after->state)) << phaseName(after->state);
}

TEST(Rebooted, InCoolingGoesOnByTheClocksWordByKey) {
    Rig rig;
    bringLog(rig.log(), {"cooling", 0, seconds(3), 0, beforeReboot()});
    const auto weld = weldIn(rig.log());
    ASSERT_TRUE(weld);
    rig.startProgram();
    expectPainted(rig, *weld, "A");
    expectWords(rig, *weld, "Seen", "Not sure");
    const Stamp pressed = rig.key("Return");
    const Instant now = presentInstant();
    const auto after = afterPress(rig, *weld);
    ASSERT_TRUE(after);
    const auto* bridge = std::get_if<ClockBridged>(&after->events.back().d);
    ASSERT_NE(bridge, nullptr);
    EXPECT_EQ(bridge->basis, BridgeBasis::Confirmed);
    const Milliseconds off = now.utc - weld->events.back().at.utc;
    EXPECT_NEAR(
        static_cast<double>(bridge->lo.count()), static_cast<double>(off.count()),
        1'000 + pressed.after - pressed.before);
    EXPECT_TRUE(std::holds_alternative<Cooling>(after->state));
    expectPainted(rig, *after, "A");
}

TEST(Rebooted, InCoolingCountsNothingWhereNobodyIsSureByClick) {
    Rig rig;
    bringLog(rig.log(), {"cooling", 0, seconds(3), 0, beforeReboot()});
    const auto weld = weldIn(rig.log());
    ASSERT_TRUE(weld);
    rig.startProgram();
    expectPainted(rig, *weld, "A");
    rig.click(frameFor(FrameKind::Phase).stop);
    const auto after = afterPress(rig, *weld);
    ASSERT_TRUE(after);
    const auto* bridge = std::get_if<ClockBridged>(&after->events.back().d);
    ASSERT_NE(bridge, nullptr);
    EXPECT_EQ(bridge->basis, BridgeBasis::Unconfirmed);
    EXPECT_EQ(bridge->lo.count(), 0);
    expectPainted(rig, *after, "A");
}

} // namespace
} // namespace seamclock::test
