// Papers of a real log, without a screen.
#include "app/print/paper_errand.h"

#include "app/text/dates.h"
#include "core/log/log_reader.h"
#include "tests/app/print/pdf_reader.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <QFile>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

class Errand : public ::testing::Test {
protected:
    /// Joints 1 to 5 under a seal, 6 behind it.
    void SetUp() override {
        errand.log = folder.file("a.log");
        errand.out = QString::fromStdString(folder.file("paper.pdf"));
        clock.wait(std::chrono::hours(24 * 10));
        test::writeSealedLog(errand.log, clock, SigningKey::make());
    }
    QString text() const { return test::PdfFile(errand.out.toStdString()).text(); }

    test::ScratchFolder folder;
    test::FakeClock clock;
    PaperErrand errand;
};

TEST_F(Errand, MakesTheRecordOfAJointWithItsSeal) {
    errand.number = 2;
    const auto put = runErrand(errand);
    ASSERT_TRUE(put) << put.error().detail;
    EXPECT_EQ(*put, errand.out);
    EXPECT_TRUE(text().contains("Joint 2"));
    auto reader = LogReader::open(errand.log);
    const auto log = logFacts(*reader);
    ASSERT_TRUE(log && !log->seals.empty());
    EXPECT_TRUE(text().contains(QString::fromStdString(log->seals[0].fingerprint)))
        << text().toStdString();
    EXPECT_TRUE(text().contains("Ines Falk"));
    errand.number = 6;
    ASSERT_TRUE(runErrand(errand));
    EXPECT_TRUE(text().contains("Not sealed yet."));
}

TEST_F(Errand, MakesTheReportOfADayAndOfAJob) {
    auto reader = LogReader::open(errand.log);
    const auto lines = reader->joints({});
    ASSERT_TRUE(lines);
    errand.what = PaperErrand::What::Day;
    errand.day = lines->back().day;
    ASSERT_TRUE(runErrand(errand));
    EXPECT_TRUE(text().contains("Day report, " + fullDayWords(errand.day)));
    errand.what = PaperErrand::What::Job;
    errand.seams = {"S3"};
    errand.work.order = "QV-118";
    ASSERT_TRUE(runErrand(errand));
    EXPECT_TRUE(text().contains("Job report, QV-118"));
    EXPECT_TRUE(text().contains("the job's seams: S3")) << text().toStdString();
    EXPECT_TRUE(text().contains("1 to 6"));
    errand.seams = {"none of this name"};
    ASSERT_TRUE(runErrand(errand));
    EXPECT_TRUE(text().contains("There is no such joint in this log."));
}

TEST_F(Errand, WhatCantBeDoneIsToldInOneSentenceAndLeavesNoFile) {
    errand.number = 77;
    const auto none = runErrand(errand);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::Missing);
    EXPECT_NE(none.error().detail.find("allowed: 1 to 6"), std::string::npos)
        << none.error().detail;
    errand.what = PaperErrand::What::Day;
    errand.day = "yesterday";
    EXPECT_EQ(runErrand(errand).error().code, ErrorCode::Malformed);
    errand.log = folder.file("no such log");
    EXPECT_EQ(runErrand(errand).error().code, ErrorCode::Unreadable);
    EXPECT_FALSE(QFile::exists(errand.out));
}

} // namespace
} // namespace seamclock
