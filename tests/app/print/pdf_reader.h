// A PDF as others see it: its text by pdftotext, its pages by pdfinfo, its ink by pdftoppm
// (poppler's programs, which know nothing of this one).
#pragma once

#include <QByteArray>
#include <QFile>
#include <QImage>
#include <QProcess>
#include <QRectF>
#include <QRegularExpression>
#include <QString>
#include <QStringList>
#include <algorithm>
#include <gtest/gtest.h>
#include <string>
#include <utility>
#include <vector>

namespace seamclock::test {

class PdfFile {
public:
    explicit PdfFile(const std::string& file) : m_file(QString::fromStdString(file)) {}

    int pages() const {
        static const QRegularExpression kPages("Pages: +([0-9]+)\n");
        return kPages.match(QString::fromUtf8(outputOf("pdfinfo", {m_file}))).captured(1).toInt();
    }
    QString info() const { return QString::fromUtf8(outputOf("pdfinfo", {m_file})); }
    /// One blank for every run of blanks and line ends, so that wrapped text reads on.
    QString text() const {
        return QString::fromUtf8(outputOf("pdftotext", {m_file, "-"})).simplified();
    }
    /// Its bookmarks, each with its page, as they follow each other.
    std::vector<std::pair<QString, int>> outline() const {
        const QString xml =
            QString::fromUtf8(outputOf("pdftohtml", {"-xml", "-i", "-stdout", m_file}));
        std::vector<std::pair<QString, int>> all;
        static const QRegularExpression kItem("<item page=\"([0-9]+)\">(.*)</item>");
        for (auto each = kItem.globalMatch(xml); each.hasNext();) {
            const auto item = each.next();
            QString title = item.captured(2);
            title.replace("&lt;", "<").replace("&gt;", ">").replace("&#34;", "\"");
            title.replace("&quot;", "\"").replace("&#39;", "'").replace("&amp;", "&");
            all.emplace_back(title, item.captured(1).toInt());
        }
        return all;
    }
    /// As it stands: what is beside each other on paper is in one line.
    QStringList lines() const {
        return QString::fromUtf8(outputOf("pdftotext", {"-layout", m_file, "-"})).split('\n');
    }

    struct Word {
        QRectF box; // points
        QString text;
    };
    std::vector<Word> words(int page) const {
        const QString number = QString::number(page);
        const QString xml = QString::fromUtf8(
            outputOf("pdftotext", {"-bbox", "-f", number, "-l", number, m_file, "-"}));
        static const QRegularExpression kWord(
            "<word xMin=\"([0-9.-]+)\" yMin=\"([0-9.-]+)\" xMax=\"([0-9.-]+)\" yMax=\"([0-9.-]+)\">"
            "(.*?)</word>");
        std::vector<Word> words;
        for (auto at = kWord.globalMatch(xml); at.hasNext();) {
            const auto word = at.next();
            words.push_back(
                {QRectF(
                     QPointF(word.captured(1).toDouble(), word.captured(2).toDouble()),
                     QPointF(word.captured(3).toDouble(), word.captured(4).toDouble())),
                 word.captured(5)});
        }
        return words;
    }

    QImage ink(int page) const {
        const QString stem = m_file + "-page" + QString::number(page);
        const QString number = QString::number(page);
        outputOf(
            "pdftoppm",
            {"-r", "100", "-gray", "-singlefile", "-f", number, "-l", number, m_file, stem});
        const QImage image = QImage(stem + ".pgm").convertToFormat(QImage::Format_Grayscale8);
        QFile::remove(stem + ".pgm");
        return image;
    }

private:
    static QByteArray outputOf(const QString& program, const QStringList& arguments) {
        QProcess process;
        process.start(program, arguments);
        EXPECT_TRUE(process.waitForFinished(60'000)) << program.toStdString() << " (poppler-utils)";
        EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
        return process.readAllStandardOutput();
    }

    QString m_file;
};

/// No ink outside the margins, and no word on another; on every page. `across`: the word through
/// the page, which lies under all others.
inline void expectTidy(const PdfFile& pdf, const QString& across = {}) {
    constexpr double kMarginMm = 12;
    constexpr double kLargest = 40; // points; the word through the page is larger
    const int pages = pdf.pages();
    ASSERT_GT(pages, 0);
    for (int page = 1; page <= pages; ++page) {
        const QImage ink = pdf.ink(page);
        ASSERT_FALSE(ink.isNull());
        const double mm = ink.width() / (ink.width() > 845 ? 215.9 : 210.0);
        const int margin = static_cast<int>(kMarginMm * mm) - 1; // a pixel is smoothed over it
        int outside = 0;
        for (int y = 0; y < ink.height(); ++y) {
            for (int x = 0; x < ink.width(); ++x) {
                const bool within = x >= margin && x < ink.width() - margin && y >= margin &&
                                    y < ink.height() - margin;
                outside += !within && ink.constScanLine(y)[x] <= 250 ? 1 : 0;
            }
        }
        EXPECT_EQ(outside, 0) << "pixels of ink in the margin of page " << page;
        const auto words = pdf.words(page);
        ASSERT_GT(words.size(), 10U) << "page " << page;
        for (std::size_t i = 0; i < words.size(); ++i) {
            for (std::size_t j = i + 1; j < words.size(); ++j) {
                if (!across.isEmpty() &&
                    (words[i].box.height() > kLargest || words[j].box.height() > kLargest)) {
                    continue;
                }
                const QRectF over = words[i].box.intersected(words[j].box);
                // Boxes hold the font's whole ascent and descent, so lines may touch.
                const double lower = std::min(words[i].box.height(), words[j].box.height());
                EXPECT_FALSE(over.width() > 0.7 && over.height() > 0.35 * lower)
                    << "page " << page << ": " << words[i].text.toStdString() << " lies on "
                    << words[j].text.toStdString();
            }
        }
    }
}

} // namespace seamclock::test
