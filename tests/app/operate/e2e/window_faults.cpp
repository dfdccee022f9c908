#include "tests/app/operate/e2e/window_faults.h"

#include "app/operate/log_notice.h"
#include "app/operate/strip_bar.h"
#include "app/platform/boot_clock.h"
#include "app/text/words.h"
#include "core/log/spill.h"
#include "core/log/verify.h"
#include "core/weld/event_codec.h"
#include "tests/app/operate/e2e/rig.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

using std::chrono::seconds;

constexpr int kCorner = 14;   // of the banner is round, and shows what is behind it
constexpr double kGone = 0.2; // differs at least so much where it does not stand
constexpr double kSameWords = 0.01;

/// The banner with these words, as the window paints it over the weld's ribbon.
QRect bannerPlace() {
    return pixels(frameFor(FrameKind::Phase).banner);
}
QImage paintedBanner(const QString& words) {
    AlarmBanner banner;
    banner.setLook(*lookOfTests().theme, lookOfTests().metrics);
    banner.resize(bannerPlace().size());
    banner.setText(words, "Seen", false);
    banner.QWidget::show();
    return banner.grab().toImage().convertToFormat(QImage::Format_RGB32);
}

double bannerDiffers(const Rig& rig, const QString& words) {
    const QRect inside = bannerPlace().adjusted(kCorner, 2, -kCorner, -2);
    const QImage wanted = paintedBanner(words).copy(QRect(QPoint(kCorner, 2), inside.size()));
    return difference(rig.screen(), inside, wanted);
}

/// The white frame that blinks while an alarm stands: seen on and off.
bool frameBlinks(const Rig& rig) {
    const QRgb ink = lookOfTests().theme->text.rgb();
    const auto isOn = [&] { return rig.screen().pixel(2, kScreenHeight / 2) == ink; };
    return waitFor([&] { return isOn(); }, seconds(5)) &&
           waitFor([&] { return !isOn(); }, seconds(5));
}

/// The newest event of the weld that waits in the spill file.
std::optional<Event> spilledEvent(const std::string& log, const std::string& weld) {
    const auto content = readSpill(log + ".spill");
    std::optional<Event> last;
    for (const LogRow& row : content ? content->rows : std::vector<LogRow>()) {
        const auto event = eventFromBody(row.body);
        if (event && event->subject == weld) {
            last = *event;
        }
    }
    return last;
}

void expectSound(const std::string& log) {
    const auto sound = verifyLog(log);
    ASSERT_TRUE(sound) << sound.error().detail;
    EXPECT_TRUE(sound->ok) << sound->finding->reason;
}

} // namespace

void expectStepOutlivesFault(const WindowFault& fault) {
    Rig rig;
    bringLog(rig.log(), fault.before);
    const auto before = weldIn(rig.log());
    ASSERT_TRUE(before);
    rig.giveFaultyDisk();
    rig.startProgram();
    rig.failDisk(fault.fault);
    const Stamp pressed = rig.key(fault.key);

    std::optional<Event> step;
    ASSERT_TRUE(waitFor([&] { return (step = spilledEvent(rig.log(), before->id())).has_value(); }))
        << "the step is not in the spill file";
    // A busy machine may bring the key to the program after whoever pressed it has gone on.
    EXPECT_GE(static_cast<double>(step->at.boot.count()), pressed.before - 1);
    EXPECT_LE(step->at.boot, bootTime());
    const bool changeover = std::string(fault.phase) == "changing_over";
    if (changeover) {
        EXPECT_TRUE(frameBlinks(rig)); // nothing but the frame stands over the changeover
    } else {
        const auto steps = step->n - static_cast<std::int64_t>(before->events.size());
        const QString words = "Last step is not on disk yet. Trying again. " +
                              (steps == 1 ? QString("1 step") : QString("%1 steps").arg(steps));
        EXPECT_TRUE(waitFor([&] { return bannerDiffers(rig, words) < kSameWords; }, seconds(10)))
            << "the alarm does not stand: differs by " << bannerDiffers(rig, words);
    }

    rig.failDisk("none");
    std::optional<Weld> weld;
    EXPECT_TRUE(waitFor([&] {
        weld = weldIn(rig.log());
        return weld && static_cast<std::int64_t>(weld->events.size()) >= step->n;
    })) << "the step does not come into the log";
    ASSERT_TRUE(weld);
    EXPECT_EQ(phaseName(weld->state), fault.phase);
    EXPECT_EQ(weld->events.at(static_cast<std::size_t>(step->n) - 1), *step);
    if (!changeover) {
        const QString words = "Last step is not on disk yet. Trying again. 1 step";
        EXPECT_TRUE(waitFor([&] { return bannerDiffers(rig, words) > kGone; }, seconds(10)))
            << "the alarm stands although all is saved";
    }
    rig.killProgram();
    expectSound(rig.log());
}

void expectStartFromDamagedLog(const Brought& to) {
    Rig rig;
    bringLog(rig.log(), to);
    const auto before = weldIn(rig.log());
    ASSERT_TRUE(before);
    {
        std::fstream file(rig.log(), std::ios::binary | std::ios::in | std::ios::out);
        file.write(std::string(20, '\0').data(), 20);
    }
    rig.startProgram();
    SetAside nothingLost;
    nothingLost.sameChain = true;
    const QString words = logNotice(nothingLost);
    EXPECT_TRUE(waitFor([&] { return bannerDiffers(rig, words) < kSameWords; }, seconds(10)))
        << "the notice does not stand: differs by " << bannerDiffers(rig, words);
    EXPECT_TRUE(frameBlinks(rig));
    const auto now = weldIn(rig.log());
    ASSERT_TRUE(now);
    EXPECT_EQ(now->events, before->events) << "the weld is as it was";
    rig.click(frameFor(FrameKind::Phase).banner);
    EXPECT_TRUE(waitFor([&] { return bannerDiffers(rig, words) > kGone; }, seconds(10)));
    rig.killProgram();
    expectSound(rig.log());
    int aside = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::filesystem::path(rig.log()).parent_path())) {
        aside += entry.path().filename().string().find(".damaged-") != std::string::npos ? 1 : 0;
    }
    EXPECT_GE(aside, 2) << "the damaged log and the note";
}

} // namespace seamclock::test
