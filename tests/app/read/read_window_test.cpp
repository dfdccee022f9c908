// A copy of a log on an office computer: seen from outside by comparing the folder before and
// after.
#include "app/read/read_window.h"

#include "app/text/numbers.h"
#include "app/text/record_words.h"
#include "core/copies/snapshot.h"
#include "core/log/log_reader.h"
#include "tests/app/print/pdf_reader.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <QDir>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <filesystem>
#include <gtest/gtest.h>
#include <map>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

std::map<std::string, std::string> folderAsItIs(const std::string& folder) {
    std::map<std::string, std::string> out;
    for (const auto& entry : fs::directory_iterator(folder)) {
        out[entry.path().filename().string()] = test::textOf(entry.path().string());
    }
    return out;
}

class Read : public ::testing::Test {
protected:
    void SetUp() override {
        const std::string log = folder.file("joints.seamlog");
        test::writeSampleLog(log, clock);
        share = folder.file("share");
        fs::create_directory(share);
        const auto published = publishSnapshot(log, share);
        ASSERT_TRUE(published) << published.error().detail;
        copy = published->file;
        fs::permissions(share, fs::perms::owner_read | fs::perms::owner_exec);
    }
    void TearDown() override { fs::permissions(share, fs::perms::owner_all); }

    std::unique_ptr<ReadWindow> opened() {
        auto seen = lookAtCopy(copy);
        EXPECT_TRUE(seen) << seen.error().detail;
        ReadParts parts;
        parts.seen = *seen;
        parts.folder = QString::fromStdString(folder.file("papers"));
        parts.readGuide = [] {
            return readGuide(QString(SEAMCLOCK_SOURCE_DIR) + "/docs/guide", {});
        };
        auto window = std::make_unique<ReadWindow>(std::move(parts), clock);
        window->resize(1280, 800);
        window->show();
        return window;
    }
    static bool settles(const ReadWindow& window) {
        return QTest::qWaitFor(
            [&window] {
                return !window.dayLog()->isBusy() &&
                       !window.dayLog()->dayPage()->view().rows.empty();
            },
            20'000);
    }

    test::FakeClock clock;
    test::ScratchFolder folder;
    std::string share;
    std::string copy;
};

TEST_F(Read, ShowsTheJointsOfACopyAndSaysWhatItIs) {
    const auto window = opened();
    ASSERT_TRUE(settles(*window));
    EXPECT_EQ(window->dayLog()->dayPage()->view().rows.size(), 5U);
    EXPECT_TRUE(window->mark()->text().startsWith("Copy, read only: made "))
        << window->mark()->text().toStdString();
    EXPECT_TRUE(window->mark()->text().contains(", last entry 20"));
    EXPECT_EQ(window->dayLog()->page(), window->dayLog()->dayPage());
    EXPECT_TRUE(window->dayLog()->dayPage()->isVisible());
    EXPECT_GE(window->dayLog()->dayPage()->geometry().top(), window->mark()->geometry().bottom());
}

TEST_F(Read, LeavesTheFolderOfTheCopyAsItWas) {
    const auto before = folderAsItIs(share);
    {
        const auto window = opened();
        ASSERT_TRUE(settles(*window));
        QTest::keyClick(window.get(), Qt::Key_Down);
        ASSERT_TRUE(settles(*window));
        EXPECT_EQ(folderAsItIs(share), before) << "while it is read";
    }
    EXPECT_EQ(folderAsItIs(share), before);
}

TEST_F(Read, OffersNobodyToDecide) {
    const auto window = opened();
    ASSERT_TRUE(settles(*window));
    const DayPageView& view = window->dayLog()->dayPage()->view();
    EXPECT_FALSE(view.mayDecide);
    EXPECT_EQ(view.who, "a copy, read only");
    EXPECT_EQ(view.running.leave, "Close");
}

TEST_F(Read, IsLeftByTheCellWhereABenchWouldStand) {
    const auto window = opened();
    ASSERT_TRUE(settles(*window));
    const QSignalSpy quit(window.get(), &ReadWindow::quitAsked);
    emit window->dayLog()->dayPage()->pressed(DayPress::Running);
    EXPECT_EQ(quit.count(), 1);
}

// It may stand open on an office computer for days.
TEST_F(Read, APaperCarriesTheTimeAtWhichItIsMade) {
    const auto window = opened();
    ASSERT_TRUE(settles(*window));
    DayLogFlow& flow = *window->dayLog();
    emit flow.dayPage()->pressed(DayPress::Record);
    ASSERT_EQ(flow.page(), flow.choicePage());
    clock.wait(std::chrono::hours(49));
    const int save = 6; // "Save as PDF"
    ASSERT_EQ(flow.choicePage()->view().choices[save].text, "Save as PDF");
    emit flow.choicePage()->chosen(save);
    const QDir papers(QString::fromStdString(folder.file("papers")));
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return !papers.entryList({"*.pdf"}, QDir::Files).isEmpty() && !flow.isBusy(); },
        20'000));
    const QString file = papers.filePath(papers.entryList({"*.pdf"}, QDir::Files).front());
    const QString text = test::PdfFile(file.toStdString()).text();
    const Instant now = clock.now();
    EXPECT_TRUE(text.contains(dateText(now) + " " + wallClockText(now))) << text.toStdString();
}

TEST_F(Read, HasHelpByItsKeyAndByF1AndLeadsBackToTheLog) {
    const auto window = opened();
    ASSERT_TRUE(settles(*window));
    const QSignalSpy quit(window.get(), &ReadWindow::quitAsked);
    auto* key = window->findChild<FilterCell*>("copyHelp");
    ASSERT_NE(key, nullptr);
    QTest::mouseClick(key, Qt::LeftButton);
    ASSERT_EQ(window->currentPage(), window->guide()->listPage());
    EXPECT_TRUE(window->guide()->listPage()->isVisible());
    EXPECT_FALSE(window->dayLog()->dayPage()->isVisible());
    EXPECT_TRUE(window->mark()->isVisible()) << "it is a copy, whatever stands";
    EXPECT_EQ(window->currentPage()->stepView().text, "Back to the log");
    QTest::keyClick(window.get(), Qt::Key_Return);
    EXPECT_EQ(window->currentPage(), window->dayLog()->dayPage());
    EXPECT_TRUE(window->dayLog()->dayPage()->isVisible());
    QTest::keyClick(window.get(), Qt::Key_F1);
    ASSERT_EQ(window->currentPage(), window->guide()->listPage());
    QTest::keyClick(window.get(), Qt::Key_Escape);
    EXPECT_EQ(window->currentPage(), window->dayLog()->dayPage());
    EXPECT_EQ(window->dayLog()->dayPage()->view().rows.size(), 5U);
    EXPECT_EQ(quit.count(), 0);
}

TEST_F(Read, AWordInHelpsSearchIsFoundByEnterAndTheLogHearsNoneOfIt) {
    const auto window = opened();
    ASSERT_TRUE(settles(*window));
    QTest::keyClick(window.get(), Qt::Key_F1);
    window->guide()->showSearch();
    auto* line = window->guide()->listPage()->findChild<QLineEdit*>();
    ASSERT_NE(line, nullptr);
    QTest::keyClicks(line, "battery");
    ASSERT_FALSE(window->guide()->listPage()->view().rows.empty());
    QTest::keyClick(line, Qt::Key_Return);
    EXPECT_EQ(window->currentPage(), window->guide()->chapterPage())
        << "found, and not left by the same press";
    QTest::keyClick(window.get(), Qt::Key_Tab); // a key of the log's
    EXPECT_EQ(window->currentPage(), window->guide()->chapterPage());
    QTest::keyClick(window.get(), Qt::Key_Return);
    EXPECT_EQ(window->currentPage(), window->dayLog()->dayPage());
}

TEST(CopyLine, TellsBothTimesAndPractice) {
    CopySeen seen;
    seen.copy.world = "production";
    seen.madeUtc = Milliseconds(1'894'514'400'000); // 2030-01-13T06:00Z
    Instant last;
    last.utc = Milliseconds(1'894'510'800'000);
    last.offset = std::chrono::minutes(60);
    seen.lastRow = last;
    EXPECT_EQ(
        copyLine(seen, std::chrono::minutes(120)),
        "Copy, read only: made 2030-01-13 08:00, last entry 2030-01-13 06:00.");
    seen.copy.world = "practice";
    seen.lastRow.reset();
    EXPECT_EQ(
        copyLine(seen, std::chrono::minutes(0)),
        "Copy of practice, read only: made 2030-01-13 06:00.");
}

} // namespace
} // namespace seamclock
