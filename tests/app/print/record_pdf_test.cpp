// The record of a joint on paper, read back by programs that know nothing of this one.
#include "app/print/paper_flow.h"
#include "app/print/printer.h"
#include "app/print/record_paper.h"
#include "app/print/record_pdf.h"
#include "app/text/language.h"
#include "tests/app/print/full_disk.h"
#include "tests/app/print/longer_words.h"
#include "tests/app/print/paper_samples.h"
#include "tests/app/print/pdf_reader.h"
#include "tests/support/scratch_folder.h"

#include <QDir>
#include <QLocale>
#include <QPrinter>
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

/// On disk, and read back.
class Printed {
public:
    explicit Printed(
        const RecordFacts& facts, const LogFacts& log = test::sampleLog(),
        UnitSystem units = UnitSystem::Metric, Paper paper = Paper::A4)
        : m_file(m_folder.file("record.pdf")), pdf(m_file) {
        const auto written =
            writeRecordPdf(facts, log, work(), units, paper, QString::fromStdString(m_file));
        EXPECT_TRUE(written) << written.error().detail;
    }

private:
    test::ScratchFolder m_folder;
    std::string m_file;

public:
    PdfFile pdf;
};

/// A line that holds all of these, as they stand beside each other on paper.
bool anyLineHolds(const QStringList& lines, const QStringList& words) {
    return std::any_of(lines.begin(), lines.end(), [&](const QString& line) {
        return std::all_of(words.begin(), words.end(), [&](const QString& word) {
            return line.simplified().contains(word);
        });
    });
}

bool anyCellHolds(const PaperDoc& doc, const QString& text) {
    for (const PaperBlock& block : doc.blocks) {
        if (const auto* table = std::get_if<PaperTable>(&block)) {
            for (const auto& row : table->rows) {
                for (const PaperCell& cell : row) {
                    if (cell.text == text) {
                        return true;
                    }
                }
            }
        }
    }
    return false;
}

QString milli(std::int64_t value) {
    return QString::number(static_cast<double>(value) / 1000.0, 'g', 10);
}

TEST(RecordPdf, IsOnePageOfItsPaper) {
    const RecordFacts facts = test::factsOf(test::lateJoint().weld());
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const Printed page(facts, test::sampleLog(), UnitSystem::Metric, paper);
        EXPECT_EQ(page.pdf.pages(), 1);
        EXPECT_TRUE(page.pdf.info().contains(paper == Paper::A4 ? "595 x 842" : "612 x 792"))
            << page.pdf.info().toStdString();
        test::expectTidy(page.pdf);
    }
}

// The values as they were entered, each with the event of its test, and what was put right.
TEST(RecordPdf, HoldsTheCouponsThatWereCutFromIt) {
    RecordFacts facts = test::factsOf(test::lateJoint().weld());
    const auto words = [&facts] { return Printed(facts).pdf.text().simplified(); };
    EXPECT_FALSE(words().contains("Coupons cut from it"));
    facts.coupons = {test::pulledCoupons(), test::bentCoupons()};
    facts.coupons[1].unread = {{"coupon:9c11", 2, "not canonical"}};
    const QString text = words();
    for (const char* told :
         {"Coupons cut from it", "Tensile test by EN 12814-2", "welded 27.00 · 27.40 N/mm²",
          "parent sheet 29.50 · 30.50 N/mm²", "welding factor 0.907, with 95 % between ",
          "the required 0.90", "[2] (coupon:5d4e0f3a-96c2-4b6a-9c11-2f7780aa4e15)",
          "before it was put right (read from the wrong line): welded 29.00 · 27.40 N/mm²", "[1]",
          "1 of 2 cracked; travel of the ram 23.0 · 31.5 mm [1] (coupon:9c11)",
          "event 2 of coupon:9c11 can't be read"}) {
        EXPECT_TRUE(text.contains(told)) << told << "\n" << text.toStdString();
    }
    EXPECT_TRUE(text.contains("entered 13 Jan 2030"));
}

// DVS 2207-1's annex, seen and from memory: order, part, both sheets with maker and batch, bench,
// welder, date, thickness, length, ambient, weather guard, plate, drag, pressures and forces, bead,
// the five times, remarks, both signatures.
TEST(RecordPdf, HoldsWhatTheTradeWritesDown) {
    Story story = test::lateJoint();
    story.then(Decided{Decision::Repair, "cut back and weld again"});
    RecordFacts facts = test::factsOf(test::with(story, "person:oddo", SignedOff{"foreman"}));
    facts.sealed = {
        {test::sampleSeal(), static_cast<std::int64_t>(facts.record.events.size()) - 2}};
    QString text = Printed(facts).pdf.text();
    for (const char* words :
         {"Joint 7",
          "Seam S3, Brine settling tank",
          "Quillmere Vat Works",
          "QV-118",
          "13 Jan 2030 07:00:00.000",
          "UTC+01:00",
          "bench-a, East bench",
          "Ilva Borrick",
          "PE-HD, PP 3-20 mm, to 30 Jun 2031",
          "invented, edition 2030",
          "PE-HD, 8 mm, maker Maker One, batch batch 11",
          "PE-HD, natural, 8.05 mm, maker Maker One, batch batch 12, melt flow 0.3",
          "860 mm",
          "20 °C",
          "asked for by the order, not looked at", // its plan has no check of it
          "211 °C",
          "200 to 220 °C",
          "1032 N",
          "0.15 N/mm²",
          "Out of limits",
          "edge gap 0.3 mm at the back",
          "seam-s3-back.jpg",
          "412334 bytes",
          "graded by EN 16296: C",
          "reason for changeover: the plate stuck, the lifter caught",
          "to be repaired: cut back and weld again",
          "Oddo Quenley",
          "0f3a 96c2 11de 84b7 5a01 9c3e 7d20 4f88",
          "qualified welder decide",
          "protective film off",
          "Clamps are eased"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\n" << text.toStdString();
    }
    EXPECT_TRUE(text.remove(' ').contains(QString(64, 'c'))) << "the photo's hash";
}

TEST(RecordPdf, HasTheOrderOfTheJobThatTheJointItselfNames) {
    const auto textOf = [](const std::optional<std::string>& job) {
        WeldOpened opened = test::inventedOpening();
        opened.job = job;
        Story story(opened);
        story.close();
        return Printed(test::factsOf(story.weld())).pdf.text();
    };
    const QString other = textOf("QV-207"); // the tablet's job file is of QV-118
    EXPECT_TRUE(other.contains("QV-207")) << other.toStdString();
    EXPECT_FALSE(other.contains("QV-118"));
    EXPECT_FALSE(other.contains("Brine settling tank"));
    const QString same = textOf("QV-118");
    EXPECT_TRUE(same.contains("Brine settling tank (from the job's file)")) << same.toStdString();
    EXPECT_FALSE(same.contains("QV-118 (from the job's file)")) << "it stands in event 1";
    EXPECT_TRUE(textOf({}).contains("QV-118 (from the job's file)"));
}

TEST(RecordPdf, HasThePartThatTheJointItselfNames) {
    WeldOpened opened = test::inventedOpening();
    opened.job = "QV-207";
    opened.part = "Salt tank";
    Story story(opened);
    story.close();
    const QString text = Printed(test::factsOf(story.weld())).pdf.text();
    EXPECT_TRUE(text.contains("Seam S3, Salt tank")) << text.toStdString();
    EXPECT_EQ(text.count("Salt tank"), 2) << "in the head and in its own line";
    EXPECT_FALSE(text.contains("from the job's file"));
}

// Written again from the log's events and not with the program's own texts: each value in a line
// with the n of its event.
TEST(RecordPdf, TracesEachValueToItsEvent) {
    const RecordFacts facts = test::factsOf(test::lateJoint().weld());
    const QStringList lines = Printed(facts).pdf.lines();
    int found = 0;
    for (const Event& event : facts.record.events) {
        const QString n = QString("[%1]").arg(event.n);
        const auto expect = [&](const QStringList& words) {
            ++found;
            EXPECT_TRUE(anyLineHolds(lines, words + QStringList{n}))
                << words.join(" ").toStdString() << " " << n.toStdString() << "\n"
                << lines.join("\n").toStdString();
        };
        if (const auto* reading = std::get_if<ReadingTaken>(&event.d)) {
            expect({milli(reading->readingMilli) + " mm"});
        } else if (const auto* check = std::get_if<CheckMade>(&event.d)) {
            if (check->valueMc) {
                expect({milli(*check->valueMc) + " °C", "middle, face left"});
            }
            if (check->valueUm) {
                expect({milli(*check->valueUm) + " mm"});
            }
        } else if (const auto* bead = std::get_if<BeadMeasured>(&event.d)) {
            expect({"bead width", milli(bead->widthUm) + " mm"});
            expect({"bead height", milli(bead->heightUm) + " mm"});
            expect({"bead K", milli(bead->kUm) + " mm"});
            expect({"faces out of line", milli(bead->misalignmentUm) + " mm"});
        }
    }
    EXPECT_EQ(found, 2 + 4 + 8);
    for (const PhaseRecord& phase : facts.record.phases) {
        ASSERT_TRUE(phase.took);
        const std::int64_t ms = phase.took->lo.count();
        const QString took =
            ms < 60'000 ? QString("%1.%2 s").arg(ms / 1000).arg(ms % 1000, 3, 10, QLatin1Char('0'))
                        : QString("%1:%2.%3")
                              .arg(ms / 60'000)
                              .arg(ms / 1000 % 60, 2, 10, QLatin1Char('0'))
                              .arg(ms % 1000, 3, 10, QLatin1Char('0'));
        EXPECT_TRUE(anyLineHolds(lines, {took, QString("[%1–%2]").arg(phase.fromN).arg(phase.toN)}))
            << phase.phase << " " << took.toStdString();
    }
    // The late changeover: 8.813 s, its limit of 6.4 s and the two events that it follows from.
    EXPECT_TRUE(anyLineHolds(lines, {"out of limits", "changeover", "8.813 s", "6.4 s"}));
}

TEST(RecordPdf, SetsTheForceFromTheBenchBesideTheReading) {
    // (15.4 − 0.5) mm · 70 N/mm − 20 N drag = 1023 N; over 8 × 860 mm² that is 0.1487 N/mm².
    const QStringList lines = Printed(test::factsOf(test::lateJoint().weld())).pdf.lines();
    EXPECT_TRUE(anyLineHolds(lines, {"joining", "15.4 mm", "1032 N", "1023 N", "0.1487 N/mm²"}))
        << lines.join("\n").toStdString();
    RecordFacts lost = test::factsOf(test::lateJoint().weld());
    lost.bench.reset();
    const Printed without(lost);
    EXPECT_TRUE(without.pdf.text().contains("its document is not in the log"));
    EXPECT_FALSE(without.pdf.text().contains("1023 N"));
}

TEST(RecordPdf, ShowsAStoredVerdictBesideANewOneAndReplacesNone) {
    RecordFacts facts = test::factsOf(Story().close().weld());
    ASSERT_TRUE(facts.record.stored);
    const QString same = Printed(facts).pdf.text();
    EXPECT_TRUE(same.contains("The same was stored at closing"));
    EXPECT_FALSE(same.contains("Closed as"));
    // What another set of rules would have stored.
    facts.record.stored->verdict = "out of limits";
    facts.record.stored->rules = 7;
    facts.record.stored->reasons = {{"cooling", "out", 690'000, 612'345, "ms", ""}};
    const Printed page(facts);
    const QString text = page.pdf.text();
    for (const char* words :
         {"Closed as: Out of limits", "By the rules now: Within limits",
          "Stored at closing: out of limits", "rules 7", "10:12.345", "11:30",
          "Verdict: within limits"}) {
        EXPECT_TRUE(text.contains(words)) << words << "\n" << text.toStdString();
    }
    test::expectTidy(page.pdf);
}

TEST(RecordPdf, ACorrectionLeavesTheOriginalStanding) {
    Story story;
    story.close();
    const std::int64_t target = test::lastReading(story.weld(), ReadingPhase::Joining);
    story.then(ValueCorrected{target, "reading_milli", "15500", "16100", "misread"});
    story.then(ValueCorrected{1, "sheets.1.batch", "batch 12", "batch 21", "digits swapped"});
    const RecordFacts facts = test::factsOf(story.weld());
    const Printed page(facts);
    const QString text = page.pdf.text();
    const QString n = QString::number(story.weld().events.size() - 1);
    // On paper a cell's lines stand among those beside it: whole it is looked for in the document.
    const QString was = "16.1 mm (was 15.5 mm [" + n + "])";
    EXPECT_TRUE(
        anyCellHolds(recordPaper(facts, test::sampleLog(), work(), UnitSystem::Metric), was))
        << was.toStdString();
    EXPECT_TRUE(anyLineHolds(page.pdf.lines(), {"joining", "16.1 mm (was", "[11]"}))
        << page.pdf.lines().join("\n").toStdString();
    EXPECT_TRUE(text.contains("batch batch 21 (was batch 12 ["));
    EXPECT_TRUE(text.contains("reading: was 15.5 mm, is 16.1 mm (misread)"));
    test::expectTidy(page.pdf);
}

TEST(RecordPdf, TellsWhatWasTakenBackAndHowLongThePowerWasOff) {
    Story story;
    story.align().wait(std::chrono::seconds(2));
    const std::int64_t soak = lastTakeable(story.weld());
    story.then(StepTakenBack{soak});
    const QString text = Printed(test::factsOf(story.weld())).pdf.text();
    EXPECT_TRUE(text.contains(QString("event %1 taken back (soak reading reached").arg(soak)))
        << text.toStdString();
    EXPECT_TRUE(text.contains("Not finished: in alignment")) << text.toStdString();
    EXPECT_TRUE(text.contains("no verdict is stored yet"));
    Story dark;
    dark.buildUp().reboot(std::chrono::seconds(200));
    const auto bridge = bridgeTo(dark.weld(), dark.now(), true);
    ASSERT_TRUE(bridge && *bridge);
    dark.then(**bridge);
    const QString bridged = Printed(test::factsOf(dark.weld())).pdf.text();
    EXPECT_TRUE(
        bridged.contains("power was off; 3:20.000 since the step before, confirmed by a person"))
        << bridged.toStdString();
}

TEST(RecordPdf, AStoppedWeldSaysSo) {
    Story story;
    story.soak().then(WeldAborted{"sheet_slipped", "at the back"});
    const Printed page(test::factsOf(story.weld()));
    EXPECT_TRUE(page.pdf.text().contains("Stopped: incomplete"));
    EXPECT_TRUE(page.pdf.text().contains("stopped: a sheet slipped, at the back"));
    test::expectTidy(page.pdf);
}

TEST(RecordPdf, APracticeWeldIsMarkedThroughThePageAndInWords) {
    WeldOpened opened = test::inventedOpening();
    opened.type = WeldType::Practice;
    const RecordFacts facts = test::factsOf(Story(opened).close().weld());
    LogFacts log = test::sampleLog();
    log.world = "practice";
    const Printed page(facts, log);
    EXPECT_TRUE(page.pdf.text().contains("PRACTICE"));
    EXPECT_TRUE(page.pdf.text().contains("no certificate"));
    EXPECT_EQ(page.pdf.pages(), 1);
    test::expectTidy(page.pdf, "PRACTICE");
    // Not on another's: a word that stands everywhere would say nothing.
    EXPECT_FALSE(Printed(test::factsOf(Story().close().weld())).pdf.text().contains("PRACTICE"));
}

TEST(RecordPdf, SaysWhichEventsWhichSealCovers) {
    RecordFacts facts = test::factsOf(test::lateJoint().weld());
    EXPECT_TRUE(Printed(facts).pdf.text().contains("Not sealed yet."));
    facts.sealed = {{test::sampleSeal(), 20}};
    const auto last = QString::number(facts.record.events.size());
    const QString partly = Printed(facts).pdf.text();
    EXPECT_TRUE(partly.contains("Events 1 to 20: seal of 13 Jan 2030 by Oddo Quenley"));
    EXPECT_TRUE(partly.contains("Events 21 to " + last + ": not sealed yet."))
        << partly.toStdString();
    facts.sealed[0].toN = static_cast<std::int64_t>(facts.record.events.size());
    EXPECT_FALSE(Printed(facts).pdf.text().contains("not sealed yet"));
    facts.sealed.clear();
    facts.elsewhere = true;
    EXPECT_TRUE(Printed(facts).pdf.text().contains("It came with another log"));
}

/// In every place that others write to, a name as long as any may be.
RecordFacts wordyFacts(const std::string& name) {
    WeldPlan plan = test::inventedPlan();
    plan.procedure = "a-shops-own-procedure-with-a-long-name-1";
    plan.edition = name;
    for (int i = 0; i < 6; ++i) {
        plan.sources.push_back(
            {"value_" + std::to_string(i),
             {"handbook of a sheet maker, edition " + std::to_string(2000 + i) +
                  ", table on a page that is told at some length",
              Standing::Memory}});
    }
    WeldOpened opened = test::inventedOpening(plan);
    opened.seam = name;
    for (Sheet& sheet : opened.sheets) {
        sheet.maker = name;
        sheet.batch = name;
        sheet.grade = name;
        sheet.mfr = name;
    }
    opened.flags = {"certificate_expired", "calibration_overdue", "trial_not_made"};
    opened.reweldOf = "11111111-2222-4333-8444-555555555556";
    opened.lostUm = 42'000;
    Story story(opened);
    story.inspect();
    story.then(RemarkMade{name + " and " + name + ", then " + name});
    story.then(PhotoAdded{std::string(64, 'f'), 1, name + name + ".jpg"});
    story.then(closing(story.weld()));
    RecordFacts facts = test::factsOf(story.weld());
    facts.bench->name = name;
    facts.sealed = {{test::sampleSeal(), 5}};
    return facts;
}

TEST(RecordPdf, HoldsLongNamesLongerWordsAndBothSystemsOfUnits) {
    const std::string usual = "Quillfeather-Ashgrove Polymer Works East";
    const std::string widest(40, 'W'); // and no blank to wrap at
    ASSERT_EQ(usual.size(), 40U);
    for (const std::string& name : {usual, widest}) {
        LogFacts log = test::sampleLog();
        log.roster.people[0].name = name;
        for (const bool longer : {false, true}) {
            std::optional<test::LongerWords> words;
            if (longer) {
                words.emplace();
            }
            const UnitSystem units = longer ? UnitSystem::Imperial : UnitSystem::Metric;
            const Printed page(wordyFacts(name), log, units, longer ? Paper::Letter : Paper::A4);
            EXPECT_LE(page.pdf.pages(), name == widest ? 3 : longer ? 2 : 1);
            test::expectTidy(page.pdf);
            const QString text = page.pdf.text();
            EXPECT_EQ(text.contains("psi"), units == UnitSystem::Imperial);
            EXPECT_EQ(text.contains("°F"), units == UnitSystem::Imperial);
            // 211 °C is 411.8 °F; what the scale showed stays in millimetres.
            EXPECT_TRUE(text.contains(units == UnitSystem::Metric ? "211 °C" : "411.8 °F"));
            EXPECT_TRUE(text.contains("15.5 mm"));
        }
    }
}

TEST(RecordPdf, SpeaksTheLanguagesDecimals) {
    QLocale::setDefault(QLocale(QLocale::German));
    const Printed page(test::factsOf(test::lateJoint().weld()));
    QLocale::setDefault(QLocale::c());
    EXPECT_TRUE(page.pdf.text().contains("8,813 s")) << page.pdf.text().toStdString();
    EXPECT_TRUE(page.pdf.text().contains("15,4 mm"));
    EXPECT_FALSE(page.pdf.text().contains("15.4 mm"));
}

/// Words of the trade as the German and the Spanish standards and handbooks use them (common
/// practice, no source); numbers as in RecordPdf.HoldsWhatTheTradeWritesDown.
TEST(RecordPdf, IsReadBackInGermanAndSpanish) {
    for (const auto& [language, words] :
         {std::pair{Language::German, QStringList{"Umstellen", "Abkühlen", "8,813 s", "15,4 mm"}},
          std::pair{Language::Spanish, QStringList{"cambio", "enfriar", "8,813 s", "15,4 mm"}}}) {
        speak(language);
        const Printed page(test::factsOf(test::lateJoint().weld()));
        const QString text = page.pdf.text();
        speak(Language::English);
        for (const QString& word : words) {
            EXPECT_TRUE(text.contains(word, Qt::CaseInsensitive)) << word.toStdString() << "\n"
                                                                  << text.toStdString();
        }
        EXPECT_FALSE(text.contains("changeover", Qt::CaseInsensitive));
        EXPECT_FALSE(text.contains("15.4 mm"));
        test::expectTidy(page.pdf);
    }
}

TEST(RecordPdf, GoesOnOverFurtherPagesRatherThanLeaveAnythingOut) {
    Story story;
    story.inspect();
    for (int i = 0; i < 220; ++i) {
        story.then(RemarkMade{"remark number " + std::to_string(1000 + i) + " of a long day"});
    }
    story.then(RemarkMade{"the longest " + std::string(9'000, 'x') + " of all"});
    const Printed page(test::factsOf(story.weld()));
    EXPECT_GT(page.pdf.pages(), 2);
    const QString text = page.pdf.text();
    for (int i = 0; i < 220; ++i) {
        EXPECT_TRUE(text.contains("remark number " + QString::number(1000 + i))) << i;
    }
    EXPECT_EQ(text.count('x') - text.left(text.indexOf("the longest")).count('x'), 9'000)
        << "a remark longer than a page is whole";
    const QString last = QString("page %1 of %1").arg(page.pdf.pages());
    EXPECT_TRUE(text.contains(last)) << last.toStdString();
    test::expectTidy(page.pdf);
}

TEST(RecordPdf, MovesNothingByWhatPeopleTyped) {
    Story story;
    story.inspect().then(RemarkMade{"one\ntwo\r\x1b[2J\u2028three"});
    const Printed page(test::factsOf(story.weld()));
    EXPECT_TRUE(page.pdf.text().contains("one two")) << page.pdf.text().toStdString();
    test::expectTidy(page.pdf);
}

TEST(RecordPdf, ADiskThatFillsUpLeavesTheOldRecordAndNoHalfOne) {
    const test::ScratchFolder folder;
    const QString file = QString::fromStdString(folder.file("record.pdf"));
    {
        QFile old(file);
        ASSERT_TRUE(old.open(QIODevice::WriteOnly));
        old.write("the old record");
    }
    const RecordFacts facts = test::factsOf(Story().close().weld());
    Result<void> written;
    {
        const test::FullDisk full(4'096);
        written =
            writeRecordPdf(facts, test::sampleLog(), work(), UnitSystem::Metric, Paper::A4, file);
    }
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::NotWritten);
    EXPECT_NE(written.error().detail.find(file.toStdString()), std::string::npos);
    EXPECT_NE(written.error().detail.find("the record can't be written"), std::string::npos);
    QFile now(file);
    ASSERT_TRUE(now.open(QIODevice::ReadOnly));
    EXPECT_EQ(now.readAll(), "the old record");
    EXPECT_EQ(QDir(QString::fromStdString(folder.path())).entryList(QDir::Files).size(), 1);
}

TEST(RecordPdf, IsSavedUnderANameThatIsFree) {
    const test::ScratchFolder folder;
    const QString below = QString::fromStdString(folder.path()) + "/records";
    const RecordFacts facts = test::factsOf(Story().close().weld());
    for (const char* name : {"/joint-7.pdf", "/joint-7-2.pdf"}) {
        const auto saved =
            saveRecordPdf(facts, test::sampleLog(), work(), UnitSystem::Metric, Paper::A4, below);
        ASSERT_TRUE(saved) << saved.error().detail;
        EXPECT_TRUE(saved->endsWith(name)) << saved->toStdString();
    }
}

TEST(RecordPdf, IsPaintedByTheSameCodeOnAPrinter) {
    const test::ScratchFolder folder;
    const RecordFacts facts = test::factsOf(test::lateJoint().weld());
    const PaperDoc doc = recordPaper(facts, test::sampleLog(), work(), UnitSystem::Metric);
    // A printer that writes a file: nothing else differs from one that takes paper.
    const std::string file = folder.file("printed.pdf");
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(QString::fromStdString(file));
    const auto pages = paintPaper(doc, Paper::A4, printer);
    ASSERT_TRUE(pages) << pages.error().detail;
    EXPECT_EQ(*pages, 1);
    const PdfFile printed(file);
    EXPECT_EQ(printed.text(), Printed(facts).pdf.text());
    test::expectTidy(printed);
}

TEST(RecordPdf, WithoutThatPrinterIsToldInOneSentence) {
    const auto printed = printRecord(
        test::factsOf(Story().close().weld()), test::sampleLog(), work(), UnitSystem::Metric,
        Paper::A4, "no printer has this name");
    ASSERT_FALSE(printed);
    EXPECT_EQ(printed.error().code, ErrorCode::Missing);
    EXPECT_NE(printed.error().detail.find("there is no printer"), std::string::npos)
        << printed.error().detail;
    EXPECT_EQ(printed.error().detail.find('\n'), std::string::npos);
}

} // namespace
} // namespace seamclock
