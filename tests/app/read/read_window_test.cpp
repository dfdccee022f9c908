// A copy of a log on an office computer: seen from outside by comparing the folder before and
// after.
#include "app/read/read_window.h"

#include "app/text/dates.h"
#include "app/text/language.h"
#include "app/text/numbers.h"
#include "app/text/record_words.h"
#include "core/copies/snapshot.h"
#include "core/log/log_reader.h"
#include "core/report/day_list.h"
#include "core/report/value_rows.h"
#include "tests/app/parts/screen_checks.h"
#include "tests/app/print/pdf_reader.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <QDir>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QThreadPool>
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

    std::unique_ptr<ReadWindow> opened(QSize size = QSize(1280, 800), double text = 1) {
        auto seen = lookAtCopy(copy);
        EXPECT_TRUE(seen) << seen.error().detail;
        ReadParts parts;
        parts.look.metrics.text = text;
        parts.seen = *seen;
        parts.folder = QString::fromStdString(folder.file("papers"));
        parts.readGuide = [] {
            return readGuide(QString(SEAMCLOCK_SOURCE_DIR) + "/docs/guide", {});
        };
        auto window = std::make_unique<ReadWindow>(std::move(parts), clock);
        window->resize(size);
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
    EXPECT_TRUE(window->mark()->text().contains(", last entry "));
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

/// By a real click on tiles and cells, from the day log to the file that came.
class ReadByClicks : public Read {
protected:
    void click(const QString& name) {
        auto* part = m_window->currentPage()->findChild<PressPart*>(name);
        ASSERT_NE(part, nullptr) << name.toStdString();
        ASSERT_TRUE(part->isVisible()) << name.toStdString();
        QTest::mouseClick(part, Qt::LeftButton, {}, part->rect().center());
    }
    QString textOn(const QString& name) const {
        const auto* tile = m_window->currentPage()->findChild<SlotButton*>(name);
        return tile == nullptr ? QString() : tile->view().text;
    }
    /// The file of which the line above the page tells.
    QString saved() {
        const QString before = m_last;
        EXPECT_TRUE(QTest::qWaitFor(
            [&] {
                const QString now = m_window->said()->text();
                m_last = now.mid(now.indexOf(QLatin1String(": ")) + 2);
                m_last.replace(QLatin1String("~/"), QDir::homePath() + QLatin1Char('/'));
                return !now.isEmpty() && m_last != before;
            },
            20'000))
            << m_window->said()->text().toStdString();
        EXPECT_TRUE(QFile::exists(m_last)) << m_last.toStdString();
        EXPECT_TRUE(settles(*m_window));
        return m_last;
    }
    QByteArray bytesOfTable(int tile) {
        click("daySearch");
        click("choiceSearch5");
        click(QString("choice%1").arg(tile));
        QFile file(saved());
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }

    std::unique_ptr<ReadWindow> m_window;

private:
    QString m_last;
};

TEST_F(ReadByClicks, TheTileOfTheReportWritesTheReportOfWhatTheListIsNarrowedTo) {
    m_window = opened();
    ASSERT_TRUE(settles(*m_window));
    ASSERT_NO_FATAL_FAILURE(click("daySearch"));
    EXPECT_EQ(textOn("choiceSearch4"), "Report");
    ASSERT_NO_FATAL_FAILURE(click("choiceSearch4"));
    const test::PdfFile all(saved().toStdString());
    EXPECT_TRUE(all.text().contains("Report of chosen joints")) << all.text().toStdString();
    ASSERT_NO_FATAL_FAILURE(click("dayDay"));
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return m_window->currentPage() == m_window->dayLog()->choicePage(); }, 20'000));
    ASSERT_NO_FATAL_FAILURE(click("choice1")); // the newest day
    ASSERT_TRUE(settles(*m_window));
    const std::string day = m_window->dayLog()->filter().day.value_or("");
    ASSERT_FALSE(day.empty());
    ASSERT_NO_FATAL_FAILURE(click("daySearch"));
    EXPECT_EQ(textOn("choiceSearch4"), "Day report");
    ASSERT_NO_FATAL_FAILURE(click("choiceSearch4"));
    const QString file = saved();
    EXPECT_TRUE(QFileInfo(file).fileName().contains(QString::fromStdString(day)))
        << file.toStdString();
    const QString text = test::PdfFile(file.toStdString()).text();
    EXPECT_TRUE(text.contains("Day report, " + fullDayWords(day))) << text.toStdString();
}

TEST_F(ReadByClicks, AReportAsksWhereItGoesWhereThereArePrinters) {
    m_window = opened();
    ASSERT_TRUE(settles(*m_window));
    QThreadPool::globalInstance()->waitForDone();
    QCoreApplication::processEvents(); // what this machine has is told by now
    m_window->dayLog()->setPrinters({"Office", "Hall"});
    ASSERT_NO_FATAL_FAILURE(click("daySearch"));
    ASSERT_NO_FATAL_FAILURE(click("choiceSearch4"));
    ASSERT_EQ(m_window->currentPage(), m_window->dayLog()->choicePage());
    EXPECT_EQ(textOn("choice0"), "Save as PDF");
    EXPECT_EQ(textOn("choice1"), "Office");
    EXPECT_EQ(textOn("choice2"), "Hall");
    ASSERT_NO_FATAL_FAILURE(click("choice0"));
    EXPECT_TRUE(test::PdfFile(saved().toStdString()).text().contains("Report of chosen joints"));
    ASSERT_NO_FATAL_FAILURE(click("daySearch"));
    ASSERT_NO_FATAL_FAILURE(click("choiceSearch4"));
    QString told;
    QObject::connect(
        m_window->dayLog(), &PageFlow::said, m_window->dayLog(),
        [&told](const QString& text) { told = text; });
    ASSERT_NO_FATAL_FAILURE(click("choice2")); // that this machine has not
    ASSERT_TRUE(QTest::qWaitFor([&told] { return !told.isEmpty(); }, 20'000));
    EXPECT_TRUE(told.contains("there is no printer", Qt::CaseInsensitive)) << told.toStdString();
    EXPECT_NE(m_window->currentPage(), m_window->dayLog()->choicePage());
}

TEST_F(ReadByClicks, EachTileOfTheTablesWritesTheTableThatItNames) {
    m_window = opened();
    ASSERT_TRUE(settles(*m_window));
    const QByteArray list = bytesOfTable(0);
    EXPECT_TRUE(QString::fromUtf8(list).startsWith(QString::fromStdString(dayListHeader())));
    EXPECT_EQ(list.count('\n'), 6) << "a head and five joints";
    const QByteArray values = bytesOfTable(1);
    EXPECT_TRUE(QString::fromUtf8(values).startsWith(QString::fromStdString(valueRowsHeader())));
    for (int number = 1; number <= 5; ++number) {
        EXPECT_TRUE(values.contains(QByteArray::fromStdString(test::weldName(number)))) << number;
    }
    const QJsonDocument json = QJsonDocument::fromJson(bytesOfTable(2));
    ASSERT_TRUE(json.isArray());
    EXPECT_EQ(json.array().size(), 5);
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

class ReadInLanguage : public Read, public ::testing::WithParamInterface<Language> {
protected:
    ReadInLanguage() { speak(GetParam()); }
    ~ReadInLanguage() override { speak(Language::English); }

    void look(ReadWindow& window, const std::string& name) {
        ASSERT_TRUE(settles(window)) << name;
        for (const std::string& trouble : test::wordTroubles(window, m_parts)) {
            ADD_FAILURE() << name << " " << window.width() << "x" << window.height() << ": "
                          << trouble;
        }
    }
    void lookAtTheLog(ReadWindow& window) {
        DayLogFlow& flow = *window.dayLog();
        look(window, "day log");
        for (const DayPress cell : {DayPress::Day, DayPress::Bench, DayPress::Verdict}) {
            emit flow.dayPage()->pressed(cell);
            ASSERT_TRUE(QTest::qWaitFor([&] { return flow.page() == flow.choicePage(); }, 20'000));
            look(window, "filter " + std::to_string(static_cast<int>(cell)));
            emit flow.choicePage()->slotPressed(SlotPlace::Stop);
            ASSERT_EQ(flow.page(), flow.dayPage());
        }
        emit flow.dayPage()->pressed(DayPress::Search);
        look(window, "search");
        emit flow.searchPage()->tilePressed(5);
        ASSERT_EQ(flow.page(), flow.choicePage());
        look(window, "tables");
        emit flow.choicePage()->chosen(0);
        ASSERT_TRUE(QTest::qWaitFor([&] { return !window.said()->text().isEmpty(); }, 20'000));
        look(window, "table saved");
        emit flow.dayPage()->pressed(DayPress::Record);
        ASSERT_EQ(flow.page(), flow.choicePage());
        look(window, "record");
        emit flow.choicePage()->chosen(0);
        for (int tab = 0; tab < 3; ++tab) {
            emit flow.tablePage()->tabPressed(tab);
            look(window, "table " + std::to_string(tab));
        }
        emit flow.tablePage()->slotPressed(SlotPlace::Step);
        emit flow.choicePage()->slotPressed(SlotPlace::Step);
        ASSERT_EQ(flow.page(), flow.dayPage());
    }

    int m_parts = 0;
};

TEST_P(ReadInLanguage, NoWordIsCutOnAnyPage) {
    for (const QSize size : {QSize(1280, 800), QSize(800, 1280)}) {
        for (const double text : {1.0, 1.5}) {
            SCOPED_TRACE(text);
            const auto window = opened(size, text);
            ASSERT_TRUE(settles(*window));
            ASSERT_NO_FATAL_FAILURE(lookAtTheLog(*window));
            QTest::keyClick(window.get(), Qt::Key_F1);
            look(*window, "help");
            window->guide()->showSearch();
            look(*window, "help's search");
            window->guide()->showChapter(0);
            look(*window, "a chapter");
        }
    }
    EXPECT_GT(m_parts, 500);
}

INSTANTIATE_TEST_SUITE_P(
    Languages, ReadInLanguage,
    ::testing::Values(Language::English, Language::German, Language::Spanish),
    [](const auto& test) { return codeOf(test.param).toStdString(); });

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
        "Copy, read only: made 13 Jan 2030 08:00, last entry 13 Jan 2030 06:00.");
    seen.copy.world = "practice";
    seen.lastRow.reset();
    EXPECT_EQ(
        copyLine(seen, std::chrono::minutes(0)),
        "Copy of practice, read only: made 13 Jan 2030 06:00.");
}

} // namespace
} // namespace seamclock
