// The practice record on paper, as others see it: its text by pdftotext, its pages by pdfinfo, its
// frame by pdftoppm (poppler's programs).
#include "app/practice/practice_record.h"
#include "app/text/language.h"
#include "tests/support/scratch_folder.h"

#include <QFile>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

QByteArray outputOf(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(60'000)) << program.toStdString() << " (poppler-utils)";
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput();
}

std::vector<PracticeLine> lines(int count) {
    std::vector<PracticeLine> all;
    for (int i = 0; i < count; ++i) {
        PracticeLine line;
        line.by = "person:ilva";
        line.at.utc = std::chrono::milliseconds(1'893'996'000'000 + i * 3'600'000LL);
        line.lesson = "pe10-first";
        line.lessonTitle = "A first good weld";
        line.number = i + 1;
        line.verdict = i % 2 == 0 ? VerdictWord::WithinLimits : VerdictWord::OutOfLimits;
        line.judged = 12;
        line.inLimits = i % 2 == 0 ? 12 : 9;
        line.ductile = i % 2 == 0;
        if (i % 2 == 1) {
            line.lapses = {Lapse::SoakPressed, Lapse::SlowChangeover};
        }
        all.push_back(line);
    }
    return all;
}

class Record {
public:
    explicit Record(int count, Paper paper = Paper::A4) {
        const auto saved = savePracticePdf(
            practiceSheet(lines(count), "Ilva Borrick", "2030-01-07 14:02"), paper,
            QString::fromStdString(m_folder.file("papers")), "practice-2030-01-07");
        EXPECT_TRUE(saved) << (saved ? "" : saved.error().detail);
        if (saved) {
            m_file = *saved;
        }
    }

    QString text(const QStringList& options = {}) const {
        QString text = QString::fromUtf8(
            outputOf("pdftotext", QStringList{"-layout"} + options + QStringList{m_file, "-"}));
        return text.replace(QRegularExpression("\\s+"), " ");
    }
    int pages() const {
        const QString info = QString::fromUtf8(outputOf("pdfinfo", {m_file}));
        return QRegularExpression("Pages:\\s+(\\d+)").match(info).captured(1).toInt();
    }
    QImage ink(int page) const {
        const QString stem = QString::fromStdString(m_folder.file("page"));
        const QString number = QString::number(page);
        outputOf(
            "pdftoppm",
            {"-r", "100", "-gray", "-singlefile", "-f", number, "-l", number, m_file, stem});
        return QImage(stem + ".pgm").convertToFormat(QImage::Format_Grayscale8);
    }
    const QString& file() const { return m_file; }

private:
    ScratchFolder m_folder;
    QString m_file;
};

TEST(PracticeRecord, SaysWhatWasMadeAndThatItIsNoCertificate) {
    const Record record(3);
    EXPECT_EQ(record.pages(), 1);
    const QString text = record.text({"-raw"}).remove(QLatin1String("-"));
    for (const char* words :
         {"Practice record. Not a certificate.", "PRACTICE", "Trainee: Ilva Borrick",
          "3 welds at a virtual bench; 2 within limits and with a joint that bends.",
          "out of limits", "page 1 of 1"}) {
        EXPECT_TRUE(text.contains(words)) << words << " in " << text.toStdString();
    }
    EXPECT_TRUE(record.text().contains("9 of 12"));
    EXPECT_TRUE(record.text().contains("Soaked under pressure"));
}

TEST(PracticeRecord, SaysSoInEveryLanguageOfTheScreens) {
    const struct {
        Language language;
        QStringList words;
    } kRows[] = {
        {Language::German,
         {"Übungsprotokoll. Kein Zeugnis.", "ÜBUNG", "Lehrling: Ilva Borrick",
          "3 Schweißungen an einer virtuellen Bank; 2 in den Grenzen", "außerhalb",
          "Seite 1 von 1"}},
        {Language::Spanish,
         {"Informe de prácticas. No es un certificado.", "PRÁCTICA", "Aprendiz: Ilva Borrick",
          "Soldaduras en un banco virtual: 3", "fuera de límites", "página 1 de 1"}},
    };
    for (const auto& row : kRows) {
        speak(row.language);
        const Record record(3);
        EXPECT_EQ(record.pages(), 1);
        const QString text = record.text({"-raw"}).remove(QLatin1String("-"));
        for (const QString& words : row.words) {
            EXPECT_TRUE(text.contains(words))
                << words.toStdString() << " in " << text.toStdString();
        }
        EXPECT_FALSE(text.contains("within limits")) << text.toStdString();
    }
    speak(Language::English);
}

TEST(PracticeRecord, TakesAsManyPagesAsItNeedsAndLosesNoLine) {
    const Record record(120);
    EXPECT_GT(record.pages(), 2);
    const QString text = record.text({"-raw"});
    for (int i = 1; i <= 120; ++i) {
        EXPECT_TRUE(text.contains(QString("joint %1").arg(i))) << i;
    }
    EXPECT_EQ(text.count("PRACTICE"), 2 * record.pages()) << "at the top and through each page";
    EXPECT_TRUE(text.contains(QString("page %1 of %1").arg(record.pages())));
}

TEST(PracticeRecord, HasItsStripesAroundEveryPage) {
    const Record record(60, Paper::Letter);
    ASSERT_GE(record.pages(), 2);
    for (int page = 1; page <= record.pages(); ++page) {
        const QImage ink = record.ink(page);
        ASSERT_FALSE(ink.isNull());
        // 8 mm of margin, then 12 points of stripes; 100 dots per inch.
        const int at = static_cast<int>((8 / 25.4 + 6.0 / 72) * 100);
        int dark = 0;
        int light = 0;
        for (int y = at * 2; y < ink.height() - at * 2; ++y) {
            dark += qGray(ink.pixel(at, y)) < 80 ? 1 : 0;
            light += qGray(ink.pixel(at, y)) > 180 ? 1 : 0;
        }
        EXPECT_GT(dark, ink.height() / 4) << page;
        EXPECT_GT(light, ink.height() / 5) << page;
    }
}

TEST(PracticeRecord, IsNeverWrittenOverAnother) {
    ScratchFolder folder;
    const QString where = QString::fromStdString(folder.file("papers"));
    const PracticeSheet sheet = practiceSheet(lines(1), {}, "2030-01-07 14:02");
    const auto one = savePracticePdf(sheet, Paper::A4, where, "record");
    const auto two = savePracticePdf(sheet, Paper::A4, where, "record");
    ASSERT_TRUE(one && two);
    EXPECT_NE(*one, *two);
    EXPECT_TRUE(QFile::exists(*one));
}

TEST(PracticeRecord, IntoAFolderThatCannotBeMadeSaysSoInOneSentence) {
    ScratchFolder folder;
    QFile taken(QString::fromStdString(folder.file("taken")));
    ASSERT_TRUE(taken.open(QIODevice::WriteOnly));
    taken.close();
    const auto saved = savePracticePdf(
        practiceSheet({}, {}, "today"), Paper::A4,
        QString::fromStdString(folder.file("taken/papers")), "record");
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, ErrorCode::NotWritten);
    EXPECT_NE(saved.error().detail.find("practice record"), std::string::npos);
}

} // namespace
} // namespace seamclock::test
