#include "app/guide/guide_pdf.h"

#include "app/guide/guide_document.h"
#include "app/guide/pdf_outline.h"
#include "app/parts/type.h"
#include "app/print/paper_page.h"
#include "app/print/pdf_file.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <memory>
#include <vector>

namespace seamclock {
namespace {

constexpr int kDotsPerInch = 600;
constexpr double kPoint = kDotsPerInch / 72.0;
constexpr double kBody = 9.5;    // points
constexpr double kFoot = 8;      // points
constexpr double kFootRoom = 26; // points, the line above it included

const char* const kWhat = "guide";

/// What stands under the title of the first page.
QString firstPage(const Guide& guide, const QString& version) {
    QString text = QStringLiteral("# Seamclock: the user guide\n\nOf version %1.\n\n").arg(version);
    text += QStringLiteral(
        "> The program guides. The machine's own instructions, the standard in force, local rules "
        "and a qualified welder decide.\n\n");
    text += QStringLiteral("## Contents\n\n| chapter | what it is about | page |\n|---|---|---|\n");
    for (std::size_t i = 0; i < guide.chapters.size(); ++i) {
        const GuideChapter& chapter = guide.chapters[i];
        QString about = chapter.about;
        text += QStringLiteral("| **%1** | %2 | %3 |\n")
                    .arg(
                        chapter.title, about.replace(QLatin1Char('|'), QLatin1Char('/')),
                        QStringLiteral("{page %1}").arg(i));
    }
    return text;
}

class Book {
public:
    Book(QPdfWriter& writer, const Guide& guide, QString version)
        : m_writer(writer), m_guide(guide), m_version(std::move(version)) {}

    /// The contents and each chapter, where they begin.
    const std::vector<Bookmark>& bookmarks() const { return m_bookmarks; }

    /// False: a page could not be begun or ended.
    bool paint() {
        m_all = QRectF(0, 0, m_writer.width(), m_writer.height());
        // How many pages each chapter takes is known before the first page says so.
        int page = 2;
        std::vector<int> first;
        m_bookmarks = {{QStringLiteral("Contents"), 1}};
        for (const GuideChapter& chapter : m_guide.chapters) {
            m_parts.push_back(document(chapter));
            first.push_back(page);
            m_bookmarks.push_back({chapter.title, page});
            page += m_parts.back()->pageCount();
        }
        GuideChapter front;
        front.title = QStringLiteral("Contents");
        front.text = firstPage(m_guide, m_version);
        for (std::size_t i = 0; i < first.size(); ++i) {
            front.text.replace(QStringLiteral("{page %1}").arg(i), QString::number(first[i]));
        }
        auto contents = document(front);
        m_pages = page - 1;
        QPainter painter;
        if (contents->pageCount() != 1 || !painter.begin(&m_writer)) {
            return false;
        }
        bool whole = pages(painter, *contents, front.title);
        for (std::size_t i = 0; i < m_parts.size() && whole; ++i) {
            whole = m_writer.newPage() && pages(painter, *m_parts[i], m_guide.chapters[i].title);
        }
        return painter.end() && whole;
    }

private:
    std::unique_ptr<QTextDocument> document(const GuideChapter& chapter) const {
        GuideLook look;
        look.unit = kPoint;
        look.letters = kBody;
        look.text = QColor(0, 0, 0);
        look.soft = QColor(40, 40, 40);
        look.edge = QColor(140, 140, 140);
        look.raised = QColor(238, 238, 238);
        look.caution = QColor(255, 240, 196);
        look.onCaution = QColor(0, 0, 0);
        look.widest = m_all.width() * 0.72;
        look.forPaper = true;
        // Without a device of its own the layout takes all sizes as they are: pixels of the paper.
        auto made = std::make_unique<QTextDocument>();
        setChapter(*made, m_guide, chapter, look);
        made->setPageSize(QSizeF(m_all.width(), m_all.height() - kFootRoom * kPoint));
        return made;
    }

    bool pages(QPainter& painter, QTextDocument& document, const QString& title) {
        const double high = document.pageSize().height();
        for (int i = 0; i < document.pageCount(); ++i) {
            if (i > 0 && !m_writer.newPage()) {
                return false;
            }
            ++m_page;
            painter.save();
            painter.translate(0, -i * high);
            document.drawContents(&painter, QRectF(0, i * high, m_all.width(), high));
            painter.restore();
            foot(painter, title);
        }
        return true;
    }

    void foot(QPainter& painter, const QString& title) const {
        const double top = m_all.height() - (kFootRoom - 10) * kPoint;
        painter.setPen(QPen(QColor(140, 140, 140), 0.6 * kPoint));
        painter.drawLine(QPointF(0, top), QPointF(m_all.width(), top));
        painter.setPen(kPaperSoft);
        const QRectF line(0, top, m_all.width(), (kFootRoom - 10) * kPoint);
        painter.setFont(paperFont(kFoot * kPoint, kPlainWeight));
        painter.drawText(
            line, Qt::AlignLeft | Qt::AlignVCenter,
            QStringLiteral("Seamclock %1, %2").arg(m_version, title));
        painter.drawText(
            line, Qt::AlignRight | Qt::AlignVCenter,
            QStringLiteral("page %1 of %2").arg(m_page).arg(m_pages));
    }

    QPdfWriter& m_writer;
    const Guide& m_guide;
    QString m_version;
    QRectF m_all;
    std::vector<std::unique_ptr<QTextDocument>> m_parts;
    std::vector<Bookmark> m_bookmarks;
    int m_pages = 0;
    int m_page = 0;
};

} // namespace

Result<QByteArray> guidePdf(const Guide& guide, const QString& version, Paper paper) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(kDotsPerInch);
    writer.setTitle(QStringLiteral("Seamclock: the user guide"));
    writer.setCreator(QStringLiteral("Seamclock"));
    writer.setPageLayout(pageOf(paper));
    Book book(writer, guide, version);
    if (!book.paint()) {
        return fail(ErrorCode::NotWritten, std::string("the ") + kWhat + " can't be painted");
    }
    buffer.close();
    return withBookmarks(bytes, book.bookmarks());
}

Result<void>
writeGuidePdf(const Guide& guide, const QString& version, Paper paper, const QString& file) {
    const auto pdf = guidePdf(guide, version, paper);
    if (!pdf) {
        return tl::unexpected<Error>(pdf.error());
    }
    return writePdf(*pdf, QString::fromLatin1(kWhat), file);
}

} // namespace seamclock
