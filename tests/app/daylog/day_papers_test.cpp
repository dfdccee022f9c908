// Reports and tables of a real log, read back from the files.
#include "app/daylog/day_papers.h"

#include "app/text/dates.h"
#include "core/report/day_list.h"
#include "core/report/value_rows.h"
#include "tests/app/print/full_disk.h"
#include "tests/app/print/pdf_reader.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

class Papers : public testing::Test {
protected:
    /// Six closed joints of one day.
    void SetUp() override {
        clock.wait(std::chrono::hours(24 * 10));
        test::writeSealedLog(path, clock, SigningKey::make());
        papers.folder = QString::fromStdString(folder.file("out"));
        papers.work.shop = "Quillmere Vat Works";
    }
    Result<QString> table(DayTable which, const JointFilter& filter = {}) {
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader);
        return saveTableOf(*reader, filter, which, papers);
    }
    Result<QString> report(const JointFilter& filter) {
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader);
        return saveReportOf(*reader, filter, papers);
    }
    std::string day() {
        auto reader = LogReader::open(path);
        const auto lines = reader->joints({});
        return lines && !lines->empty() ? lines->back().day : std::string();
    }
    static QByteArray bytesOf(const Result<QString>& file) {
        EXPECT_TRUE(file) << file.error().detail;
        QFile in(file.value_or(QString()));
        EXPECT_TRUE(in.open(QIODevice::ReadOnly));
        return in.readAll();
    }
    QStringList files() const { return QDir(papers.folder).entryList(QDir::Files | QDir::Hidden); }

    test::ScratchFolder folder;
    test::FakeClock clock;
    std::string path = folder.file("a.log");
    DayPapers papers;
};

TEST_F(Papers, TheListHasALineForEachJointAndAFileOfItsOwn) {
    const auto first = table(DayTable::List);
    const QList<QByteArray> lines = bytesOf(first).split('\n');
    ASSERT_EQ(lines.size(), 8) << "a head, six joints, and the end";
    EXPECT_EQ((lines[0] + '\n').toStdString(), dayListHeader());
    const auto second = table(DayTable::List);
    ASSERT_TRUE(second);
    EXPECT_EQ(QFileInfo(*second).fileName(), "joints-2.csv") << "nothing is overwritten";
    JointFilter one;
    one.fromDay = one.toDay = day();
    const auto ofDay = table(DayTable::List, one);
    ASSERT_TRUE(ofDay);
    EXPECT_EQ(QFileInfo(*ofDay).fileName(), QString::fromStdString("joints-" + day() + ".csv"));
}

TEST_F(Papers, JsonIsReadByAnotherReaderAndHoldsTheSameJoints) {
    const QJsonDocument document = QJsonDocument::fromJson(bytesOf(table(DayTable::Json)));
    ASSERT_TRUE(document.isArray());
    ASSERT_EQ(document.array().size(), 6);
    std::vector<int> numbers;
    for (const auto& joint : document.array()) {
        numbers.push_back(joint.toObject().value("number").toInt());
    }
    EXPECT_EQ(numbers, (std::vector<int>{4, 6, 5, 3, 2, 1}))
        << "the newest first; 4 was begun last";
    JointFilter none;
    none.bench = "no such bench";
    EXPECT_EQ(
        QJsonDocument::fromJson(bytesOf(table(DayTable::Json, none))), QJsonDocument(QJsonArray()));
}

TEST_F(Papers, ADamagedJointStandsInTheValuesWithWhy) {
    const QByteArray whole = bytesOf(table(DayTable::Values));
    EXPECT_TRUE(QString::fromUtf8(whole).startsWith(QString::fromStdString(valueRowsHeader())));
    {
        test::BehindTheBack back(path);
        back.database().exec(
            "UPDATE event SET body = replace(body, 'soak_started', 'soak_startled') WHERE subject "
            "= '" +
            test::weldName(2) + "'");
    }
    const QByteArray damaged = bytesOf(table(DayTable::Values));
    const QByteArray name = QByteArray::fromStdString(test::weldName(2));
    EXPECT_GT(whole.count(name), 10);
    QByteArrayList rows;
    for (const QByteArray& line : damaged.split('\n')) {
        if (line.contains(name)) {
            rows << line;
        }
    }
    ASSERT_EQ(rows.size(), 1);
    EXPECT_TRUE(rows[0].startsWith("2," + name + ",")) << rows[0].toStdString();
    EXPECT_TRUE(rows[0].contains("soak_startled")) << rows[0].toStdString();
}

TEST_F(Papers, TheReportIsOfTheDayTheJobOrTheSelection) {
    JointFilter ofDay;
    ofDay.fromDay = ofDay.toDay = day();
    const auto made = report(ofDay);
    ASSERT_TRUE(made) << made.error().detail;
    const QString text = test::PdfFile(made->toStdString()).text();
    EXPECT_TRUE(text.contains("Day report, " + fullDayWords(day())));
    EXPECT_TRUE(text.contains("Quillmere Vat Works"));
    JointFilter ofJob;
    ofJob.job = "QV-207";
    const auto job = report(ofJob);
    ASSERT_TRUE(job) << job.error().detail;
    EXPECT_TRUE(test::PdfFile(job->toStdString()).text().contains("Job report, QV-207"));
    ofDay.job = "QV-207"; // not all that was made on that day
    const auto both = report(ofDay);
    ASSERT_TRUE(both) << both.error().detail;
    const QString chosen = test::PdfFile(both->toStdString()).text();
    EXPECT_TRUE(chosen.contains("Report of chosen joints")) << chosen.toStdString();
    EXPECT_TRUE(chosen.contains("of the job QV-207"));
    JointFilter since;
    since.fromDay = day(); // and all days behind it
    const auto days = report(since);
    ASSERT_TRUE(days) << days.error().detail;
    EXPECT_TRUE(test::PdfFile(days->toStdString()).text().contains("Report of chosen joints"));
    JointFilter noJob;
    noJob.fromDay = noJob.toDay = day();
    noJob.verdict = ""; // what is open
    const auto open = report(noJob);
    ASSERT_TRUE(open) << open.error().detail;
    EXPECT_TRUE(test::PdfFile(open->toStdString()).text().contains("not finished"));
}

TEST_F(Papers, ADiskThatFillsUpLeavesNoHalfTable) {
    for (const DayTable which : {DayTable::List, DayTable::Values, DayTable::Json}) {
        auto reader = LogReader::open(path);
        ASSERT_TRUE(reader);
        ASSERT_TRUE(reader->joints({})); // whatever the reader writes for itself is written
        Result<QString> written;
        {
            const test::FullDisk full(512);
            written = saveTableOf(*reader, {}, which, papers);
        }
        ASSERT_FALSE(written);
        EXPECT_EQ(written.error().code, ErrorCode::NotWritten);
        EXPECT_NE(written.error().detail.find("can't be written to \""), std::string::npos)
            << written.error().detail;
        EXPECT_TRUE(files().isEmpty()) << files().join(" ").toStdString();
    }
}

} // namespace
} // namespace seamclock
