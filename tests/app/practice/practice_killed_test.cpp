// A program that is killed in mid-weld of a lesson, for real: what the next start makes of it, and
// where the trainee reads it.
#include "app/practice/practice_stand.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "tests/app/practice/practice_shop.h"

#include <QProcess>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

/// Until it was in soak; then SIGKILL.
void practiseAndDie(const std::string& log) {
    QProcess driver;
    driver.start(
        QStringLiteral(SEAMCLOCK_BIN_DIR "/practice_driver"), {QString::fromStdString(log)});
    ASSERT_TRUE(driver.waitForStarted());
    ASSERT_TRUE(driver.waitForReadyRead(120'000)) << driver.readAllStandardError().toStdString();
    ASSERT_EQ(driver.readAllStandardOutput(), "in soak\n");
    driver.kill();
    ASSERT_TRUE(driver.waitForFinished());
    ASSERT_EQ(driver.exitStatus(), QProcess::CrashExit);
}

PracticeOrder orderOn(const VirtualClock& machine, const std::string& log) {
    PracticeOrder order{machine, practiceShop(), resource("lessons"), log, "person:ilva"};
    order.preferences.dpi = kUnitsPerInch;
    return order;
}

TEST(PracticeKilled, InMidWeldTheNextStartEndsItAndSaysSo) {
    const ScratchFolder folder;
    const std::string log = folder.file("practice.seamlog");
    practiseAndDie(log);
    std::string weld;
    {
        auto reader = LogReader::open(log);
        ASSERT_TRUE(reader);
        const auto open = reader->openWelds();
        ASSERT_TRUE(open);
        ASSERT_EQ(open->size(), 1U) << "the kill left it open";
        weld = open->front();
    }
    VirtualClock machine(practiceMorning());
    machine.advance(std::chrono::hours(2));
    {
        auto stand = PracticeStand::open(orderOn(machine, log));
        ASSERT_TRUE(stand) << stand.error().detail;
        PracticeWindow& window = (*stand)->window();
        window.stopTimer();
        window.refresh();
        // Said at once, and until it was seen.
        EXPECT_TRUE(window.banner()->isVisibleTo(&window));
        EXPECT_EQ(window.banner()->text(), "Joint 1 was broken off when the program ended.");
        emit window.banner()->pressed();
        EXPECT_FALSE(window.banner()->isVisibleTo(&window));

        // And in the history; there is nothing of it to see again.
        window.openHistory();
        const auto& rows = window.listPage()->view().rows;
        ASSERT_EQ(rows.size(), 1U);
        EXPECT_TRUE(rows.front().second.contains("broken off: the program ended in mid-weld"))
            << rows.front().second.toStdString();
        EXPECT_TRUE(rows.front().text.contains("joint 1")) << rows.front().text.toStdString();
        EXPECT_FALSE(rows.front().text.contains("pe10-first")) << "the title, not the id";
        emit window.listPage()->chosen(0);
        EXPECT_EQ(window.page(), PracticePage::History);
        EXPECT_EQ(
            window.banner()->text(),
            "The program ended in mid-weld: nothing was kept to see again.");
        EXPECT_EQ(soFar((*stand)->room().history().value(), "pe10-first").takes, 0);
    }
    auto reader = LogReader::open(log);
    ASSERT_TRUE(reader);
    EXPECT_TRUE(reader->openWelds()->empty());
    const auto events = reader->weldEvents(weld);
    ASSERT_TRUE(events);
    const auto* aborted = std::get_if<WeldAborted>(&events->back().d);
    ASSERT_NE(aborted, nullptr);
    EXPECT_EQ(aborted->reason, kBrokenOff);
    EXPECT_EQ(events->back().by, "station") << "no person said so";
    const auto report = verifyLog(log);
    ASSERT_TRUE(report);
    EXPECT_TRUE(report->ok);

    auto again = PracticeStand::open(orderOn(machine, log));
    ASSERT_TRUE(again);
    EXPECT_TRUE((*again)->room().brokenOff().empty()) << "once";
}

} // namespace
} // namespace seamclock::test
