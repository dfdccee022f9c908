// The report of a day or a job on paper, read back by programs that know nothing of this one.
#include "app/print/report_paper.h"
#include "app/print/report_pdf.h"
#include "tests/app/print/full_disk.h"
#include "tests/app/print/longer_words.h"
#include "tests/app/print/paper_samples.h"
#include "tests/app/print/pdf_reader.h"
#include "tests/support/scratch_folder.h"

#include <QDir>
#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using test::PdfFile;
using test::Story;

PaperWork work() {
    return {"Quillmere Vat Works", "QV-118", "Brine settling tank",
            "2030-01-14 07:00",    false,    "QV-118"};
}

ReportJoint jointOf(Weld weld, std::int64_t number) {
    for (Event& event : weld.events) {
        event.subject = "weld:" + std::to_string(number);
        event.at.utc += std::chrono::minutes(number);
    }
    auto& opened = std::get<WeldOpened>(weld.events.front().d);
    opened.number = number;
    const auto folded = fold(weld.events);
    EXPECT_TRUE(folded) << folded.error().detail;
    ReportJoint joint;
    joint.record = record(folded ? *folded : weld);
    joint.line = lineOf(*joint.record);
    joint.sealedToN = static_cast<std::int64_t>(joint.record->events.size());
    joint.seals = {0};
    return joint;
}

Story namedStory(const std::string& seam) {
    WeldOpened opened = test::inventedOpening();
    opened.seam = seam;
    return Story(opened);
}

/// One within, one late, one stopped, one with a remark, one still in cooling.
ReportFacts fiveJoints() {
    ReportFacts report;
    report.log = test::sampleLog();
    report.filter.fromDay = report.filter.toDay = "2030-01-13";
    Story decided = test::lateJoint();
    decided.then(Decided{Decision::CutOut, "brittle"});
    Story stopped = namedStory("S9");
    stopped.soak().then(WeldAborted{"sheet_slipped", ""});
    Story remarked;
    remarked.inspect().then(RemarkMade{"edge gap 0.3 mm"});
    remarked.then(closing(remarked.weld()));
    Story cooling;
    cooling.buildUp();
    std::int64_t number = 40;
    for (const Weld& weld :
         {Story().close().weld(), decided.weld(), stopped.weld(), remarked.weld(),
          cooling.weld()}) {
        report.joints.push_back(jointOf(weld, ++number));
    }
    report.joints[3].sealedToN = 4;
    report.joints[4].sealedToN = 0;
    report.joints[4].seals.clear();
    return report;
}

class Printed {
public:
    explicit Printed(
        const ReportFacts& report, ReportOf of = ReportOf::Day,
        UnitSystem units = UnitSystem::Metric, Paper paper = Paper::A4)
        : m_file(m_folder.file("report.pdf")), pdf(m_file) {
        const auto written =
            writeReportPdf(report, of, work(), units, paper, QString::fromStdString(m_file));
        EXPECT_TRUE(written) << written.error().detail;
    }

private:
    test::ScratchFolder m_folder;
    std::string m_file;

public:
    PdfFile pdf;
};

bool anyLineHolds(const QStringList& lines, const QStringList& words) {
    return std::any_of(lines.begin(), lines.end(), [&](const QString& line) {
        return std::all_of(words.begin(), words.end(), [&](const QString& word) {
            return line.simplified().contains(word);
        });
    });
}

TEST(ReportPdf, HoldsTheCouponsOfItsJoints) {
    ReportFacts report = fiveJoints();
    EXPECT_FALSE(Printed(report).pdf.text().contains("Coupons cut from these joints"));
    report.joints[1].coupons = {test::bentCoupons()};
    const QString text = Printed(report).pdf.text().simplified();
    EXPECT_TRUE(text.contains("Coupons cut from these joints"));
    EXPECT_TRUE(text.contains("Joint 42: Bend test, entered ")) << text.toStdString();
    EXPECT_TRUE(text.contains("1 of 2 cracked; travel of the ram 23.0 · 31.5 mm [1]"));
}

TEST(ReportPdf, BeginsWithWhatIsOutOfLimitsAndWhy) {
    const Printed page(fiveJoints());
    const QString text = page.pdf.text();
    EXPECT_TRUE(text.contains("Day report, 13 Jan 2030"));
    EXPECT_TRUE(text.contains("Out of limits: 1"));
    EXPECT_TRUE(text.contains("Incomplete: 1"));
    EXPECT_TRUE(text.contains("Within limits with remarks: 1"));
    EXPECT_LT(text.indexOf("Out of limits: 1"), text.indexOf("Incomplete: 1"));
    EXPECT_LT(text.indexOf("Incomplete: 1"), text.indexOf("All joints"));
    const QStringList lines = page.pdf.lines();
    EXPECT_TRUE(anyLineHolds(lines, {"42", "S3", "changeover", "8.813 s", "6.4 s"}))
        << lines.join("\n").toStdString();
    EXPECT_TRUE(text.contains("the plate stuck, the lifter caught")) << "what the welder said";
    EXPECT_TRUE(text.contains("to be cut out: brittle")) << "what was decided";
    EXPECT_TRUE(anyLineHolds(lines, {"44", "S3", "edge gap 0.3 mm"})) << "what was remarked";
    EXPECT_TRUE(anyLineHolds(lines, {"43", "S9", "stopped"}));
    EXPECT_TRUE(text.contains("a sheet slipped [")) << "why it was stopped";
    test::expectTidy(page.pdf);
}

TEST(ReportPdf, HoldsEveryJointWithItsVerdictAndWhetherItIsSealed) {
    const Printed page(fiveJoints());
    const QStringList lines = page.pdf.lines();
    for (const QStringList& words :
         {QStringList{"41", "07:41", "S3", "PE-HD 8 × 860 mm", "bench-a", "Within limits", "yes"},
          QStringList{"42", "Out of limits", "yes"}, QStringList{"43", "Incomplete", "yes"},
          QStringList{"44", "to [4]"}, QStringList{"45", "cooling", "no"}}) {
        EXPECT_TRUE(anyLineHolds(lines, words)) << words.join(" ").toStdString() << "\n"
                                                << lines.join("\n").toStdString();
    }
    const QString text = page.pdf.text();
    EXPECT_TRUE(text.contains("Ilva Borrick"));
    EXPECT_TRUE(text.contains("fingerprint 0f3a 96c2 11de 84b7 5a01 9c3e 7d20 4f88"));
    EXPECT_TRUE(text.contains("Not wholly covered by a seal: joints 44, 45."));
    EXPECT_TRUE(text.contains("page 1 of"));
    EXPECT_TRUE(text.contains("For the customer"));
}

TEST(ReportPdf, NamesTheSealOfAnotherDayThatCoversItsJoints) {
    ReportFacts report = fiveJoints();
    report.joints.resize(1);
    report.log.seals[0].day = "2030-01-14";
    SealFact other = test::sampleSeal();
    other.day = "2030-01-12"; // covers nothing of these
    other.fingerprint = "1111";
    report.log.seals.push_back(other);
    const QString text = Printed(report).pdf.text();
    EXPECT_TRUE(text.contains("eal of 14 Jan 2030")) << text.toStdString();
    EXPECT_TRUE(text.contains("fingerprint 0f3a 96c2 11de 84b7 5a01 9c3e 7d20 4f88"));
    EXPECT_FALSE(text.contains("fingerprint 1111"));
    EXPECT_FALSE(text.contains("not sealed"));
    report.joints[0].seals.clear();
    report.joints[0].sealedToN = 0;
    const QString none = Printed(report).pdf.text();
    EXPECT_TRUE(none.contains("No joint here is wholly covered by a seal."));
    EXPECT_FALSE(none.contains("fingerprint"));
}

Weld closedOf(const std::optional<std::string>& job) {
    WeldOpened opened = test::inventedOpening();
    opened.job = job;
    Story story(opened);
    story.close();
    return story.weld();
}

TEST(ReportPdf, HasThePartsThatItsJointsName) {
    ReportFacts report = fiveJoints();
    report.joints = {jointOf(closedOf("QV-207"), 41), jointOf(closedOf("QV-207"), 42)};
    report.joints[0].record->opened.part = "Salt tank";
    report.joints[1].record->opened.part = "Its lid";
    const QString text = Printed(report).pdf.text();
    EXPECT_TRUE(text.contains("Salt tank; Its lid")) << text.toStdString();
    EXPECT_FALSE(text.contains("from the job's file"));
}

// Two shops name their people alike.
TEST(ReportPdf, NamesTheWelderOfAJointOfAnotherLogAsThatLogDoes) {
    ReportFacts report = fiveJoints();
    report.joints[0].elsewhere = true;
    report.joints[0].people.people = {{"person:op-1", "Jan Verrik", Role::Operator, true}};
    const QString text = Printed(report).pdf.text();
    EXPECT_TRUE(text.contains("Ilva Borrick; Jan Verrik")) << text.toStdString();
}

TEST(ReportPdf, HasTheOrdersThatItsJointsName) {
    ReportFacts report = fiveJoints();
    report.joints = {jointOf(closedOf("QV-207"), 41), jointOf(closedOf("QV-118"), 42)};
    QString text = Printed(report).pdf.text();
    EXPECT_TRUE(text.contains("QV-118, QV-207")) << text.toStdString();
    EXPECT_FALSE(text.contains("Brine settling tank")) << "the part is of one of them at most";
    report.joints = {jointOf(closedOf("QV-207"), 41)};
    EXPECT_TRUE(Printed(report, ReportOf::Job).pdf.text().contains("Job report, QV-207"));
    EXPECT_EQ(reportStem(report, ReportOf::Job, work()), "job-QV-207");
    report.joints = {jointOf(closedOf("QV-118"), 41), jointOf(closedOf({}), 42)};
    text = Printed(report, ReportOf::Job).pdf.text();
    EXPECT_TRUE(text.contains("Job report, QV-118 Quillmere")) << text.toStdString();
    EXPECT_TRUE(text.contains("Brine settling tank"));
    report.joints.clear();
    report.filter = {};
    report.filter.job = "QV-207";
    EXPECT_EQ(reportStem(report, ReportOf::Job, work()), "job-QV-207");
}

TEST(ReportPdf, NamesTheCertificateThatAWelderHadThen) {
    ReportFacts report = fiveJoints();
    report.log.roster.certificate["person:op-1"] = {*readCertificate("PP 3-30 mm", "2033-01-31")};
    report.joints[0].certificate = *readCertificate("PE-HD 3-20 mm", "2031-06-30");
    report.joints[0].certificateN = 4;
    const QString text = Printed(report).pdf.text();
    EXPECT_TRUE(
        text.contains("Ilva Borrick (PE-HD 3-20 mm, to 30 Jun 2031, event 4 of person:op-1)"))
        << text.toStdString();
    EXPECT_FALSE(text.contains("31 Jan 2033"));
}

TEST(ReportPdf, SumsAreThoseOfItsJoints) {
    ReportFacts report = fiveJoints();
    report.joints[1].record->plan.lengthUm = 1'140'000;
    const QStringList lines = Printed(report).pdf.lines();
    // 4 · 860 + 1140 = 4580 mm; five joints: one each within, remark, out, incomplete, open.
    EXPECT_TRUE(anyLineHolds(lines, {"PE-HD, 8 mm", "5 4580 mm 1 1 1 1 1"}))
        << lines.join("\n").toStdString();
    EXPECT_TRUE(anyLineHolds(lines, {"All", "5 4580 mm 1 1 1 1 1"}));
}

// A trial makes nothing: its seam is no seam of the day's work.
TEST(ReportPdf, SumsCountNoTrialJointAmongTheWork) {
    ReportFacts report = fiveJoints();
    report.joints[0].line.type = "trial";
    report.joints[0].record->opened.type = WeldType::Trial;
    const QStringList lines = Printed(report).pdf.lines();
    EXPECT_TRUE(anyLineHolds(lines, {"All", "4 3440 mm – 1 1 1 1"}))
        << lines.join("\n").toStdString();
    EXPECT_TRUE(anyLineHolds(lines, {"Trial joints, not in All", "1 860 mm 1 – – – –"}));
    EXPECT_TRUE(anyLineHolds(lines, {"Joints", "5"}));
}

TEST(ReportPdf, CountsWhatCantBeReadApartFromWhatIsOpen) {
    ReportFacts report = fiveJoints();
    report.joints[2].record.reset();
    report.joints[2].line.phase = "damaged";
    report.joints[2].line.open = false;
    report.joints[2].trouble = "event 5 does not fit";
    const QStringList lines = Printed(report).pdf.lines();
    EXPECT_TRUE(anyLineHolds(lines, {"Open", "Unread"})) << lines.join("\n").toStdString();
    EXPECT_TRUE(anyLineHolds(lines, {"All", "5 3440 mm 1 1 1 – 1 1"}));
    EXPECT_FALSE(Printed(fiveJoints()).pdf.text().contains("Unread"));
}

TEST(ReportPdf, MarksAnOrderThatNoJointNames) {
    const ReportFacts report = fiveJoints();
    EXPECT_TRUE(Printed(report).pdf.text().contains("QV-118 (from the job's file)"));
    ReportFacts told = report;
    told.joints = {jointOf(closedOf("QV-118"), 41)};
    EXPECT_FALSE(Printed(told).pdf.text().contains("QV-118 (from the job's file)"));
}

TEST(ReportPdf, ARemarkStandsOnceWithItsOwnEvent) {
    ReportFacts report = fiveJoints();
    Story story;
    story.inspect().then(RemarkMade{"edge gap 0.3 mm"}).then(RemarkMade{"film was torn"});
    const auto n = static_cast<qlonglong>(story.weld().events.size());
    story.then(closing(story.weld()));
    report.joints = {jointOf(story.weld(), 41)};
    const QStringList lines = Printed(report).pdf.lines();
    EXPECT_EQ(lines.join(" ").count("film was torn"), 1) << lines.join("\n").toStdString();
    EXPECT_TRUE(anyLineHolds(lines, {"film was torn", QStringLiteral("[%1]").arg(n)}));
    EXPECT_TRUE(anyLineHolds(lines, {"edge gap 0.3 mm", QStringLiteral("[%1]").arg(n - 1)}));
}

TEST(ReportPdf, AStoredVerdictStandsBesideANewOne) {
    ReportFacts report = fiveJoints();
    report.joints.resize(1);
    report.joints[0].record->stored->verdict = "out of limits";
    report.joints[0].line = lineOf(*report.joints[0].record);
    const QString text = Printed(report).pdf.text();
    EXPECT_TRUE(text.contains("Out of limits: 1")) << "the worse of the two leads";
    EXPECT_TRUE(text.contains("closed as out of limits"));
    EXPECT_TRUE(text.contains("by the rules now: within limits")) << text.toStdString();
}

TEST(ReportPdf, AJointThatCantBeReadStandsInItWithWhy) {
    ReportFacts report = fiveJoints();
    ReportJoint& joint = report.joints[2];
    joint.record.reset();
    joint.line.phase = "damaged";
    joint.line.open = false;
    joint.trouble = "event 5 does not fit";
    const QString text = Printed(report).pdf.text();
    EXPECT_TRUE(text.contains("Joint 43 (weld:43): event 5 does not fit")) << text.toStdString();
    EXPECT_TRUE(text.contains("can't be read"));
}

TEST(ReportPdf, OfNothingSaysSo) {
    ReportFacts report;
    report.log = test::sampleLog();
    report.filter.fromDay = report.filter.toDay = "2030-02-01";
    const Printed page(report);
    EXPECT_EQ(page.pdf.pages(), 1);
    EXPECT_TRUE(page.pdf.text().contains("There is no such joint in this log."));
    EXPECT_TRUE(page.pdf.text().contains("These days are not sealed."));
    test::expectTidy(page.pdf);
}

TEST(ReportPdf, SaysWhatWasAskedFor) {
    ReportFacts report = fiveJoints();
    report.filter = {};
    report.filter.fromDay = "2030-01-01";
    report.filter.bench = "bench-a";
    report.filter.by = "person:op-1";
    report.filter.verdict = "out of limits";
    report.filter.text = "tank";
    const QString text = Printed(report, ReportOf::Selection).pdf.text();
    EXPECT_TRUE(text.contains("Report of chosen joints"));
    EXPECT_TRUE(text.contains("from 1 Jan 2030, bench bench-a, begun by Ilva Borrick, verdict out "
                              "of limits, with the words “tank”"))
        << text.toStdString();
    EXPECT_TRUE(Printed(report, ReportOf::Job).pdf.text().contains("Job report, QV-118"));
}

TEST(ReportPdf, OfTwoHundredJointsWithLongNamesOverflowsNowhere) {
    ReportFacts report;
    report.log = test::sampleLog();
    report.log.roster.people[0].name = std::string(40, 'W');
    WeldOpened opened = test::inventedOpening();
    opened.seam = std::string(40, 'W');
    Story good(opened);
    good.close();
    Story late(opened);
    late.soak().wait(Milliseconds(8'813)).then(FacesMet{});
    late.then(WeldAborted{"changeover_late", std::string(60, 'W')});
    for (std::int64_t i = 1; i <= 200; ++i) {
        report.joints.push_back(jointOf(i % 10 == 0 ? late.weld() : good.weld(), i));
        report.joints.back().line.bench = std::string(40, 'W');
    }
    for (const bool longer : {false, true}) {
        std::optional<test::LongerWords> words;
        if (longer) {
            words.emplace();
        }
        const Printed page(
            report, ReportOf::Job, longer ? UnitSystem::Imperial : UnitSystem::Metric,
            longer ? Paper::Letter : Paper::A4);
        const int pages = page.pdf.pages();
        EXPECT_GT(pages, 5);
        test::expectTidy(page.pdf);
        if (longer) {
            continue; // its words are no longer these
        }
        const QString text = page.pdf.text();
        for (int i = 1; i <= pages; ++i) {
            EXPECT_TRUE(text.contains(QString("page %1 of %2").arg(i).arg(pages)));
        }
        int found = 0;
        for (const QString& line : page.pdf.lines()) {
            static const QRegularExpression kJoint(
                "^ *([0-9]+) +0[0-9]:[0-9]{2}|^ *([0-9]+) +1[0-9]:");
            found += kJoint.match(line).hasMatch() ? 1 : 0;
        }
        EXPECT_EQ(found, 200) << "each joint has its line";
        EXPECT_EQ(text.count("Joint Begun Seam"), text.count("Sealed")) << "the heads are repeated";
    }
}

TEST(ReportPdf, APracticeLogsReportIsMarkedOnEveryPage) {
    ReportFacts report = fiveJoints();
    report.log.world = "practice";
    for (std::int64_t i = 60; i < 140; ++i) {
        report.joints.push_back(jointOf(Story().close().weld(), i));
    }
    const Printed page(report);
    EXPECT_GT(page.pdf.pages(), 1);
    EXPECT_EQ(page.pdf.text().count("PRACTICE"), page.pdf.pages());
    test::expectTidy(page.pdf, "PRACTICE");
}

TEST(ReportPdf, ADiskThatFillsUpLeavesTheOldReportAndNoHalfOne) {
    const test::ScratchFolder folder;
    const QString file = QString::fromStdString(folder.file("report.pdf"));
    {
        QFile old(file);
        ASSERT_TRUE(old.open(QIODevice::WriteOnly));
        old.write("the old report");
    }
    Result<void> written;
    {
        const test::FullDisk full(4'096);
        written = writeReportPdf(
            fiveJoints(), ReportOf::Day, work(), UnitSystem::Metric, Paper::A4, file);
    }
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::NotWritten);
    QFile now(file);
    ASSERT_TRUE(now.open(QIODevice::ReadOnly));
    EXPECT_EQ(now.readAll(), "the old report");
    EXPECT_EQ(QDir(QString::fromStdString(folder.path())).entryList(QDir::Files).size(), 1);
}

TEST(ReportPdf, IsNamedAfterItsDayOrItsOrder) {
    const ReportFacts report = fiveJoints();
    EXPECT_EQ(reportStem(report, ReportOf::Day, work()), "day-2030-01-13");
    EXPECT_EQ(reportStem(report, ReportOf::Job, work()), "job-QV-118");
    PaperWork strange = work();
    strange.order = "../a b/ü";
    EXPECT_EQ(reportStem(report, ReportOf::Job, strange), "job----a-b--");
    EXPECT_EQ(reportStem(report, ReportOf::Job, {}), "job");
    EXPECT_EQ(reportStem(report, ReportOf::Selection, work()), "joints");
}

} // namespace
} // namespace seamclock
