#include "app/print/practice_pdf.h"

#include "app/parts/type.h"
#include "app/print/pdf_file.h"

#include <QBuffer>
#include <QPainter>
#include <QPainterPath>
#include <QPdfWriter>
#include <QTextLayout>
#include <algorithm>
#include <array>

namespace seamclock {
namespace {

constexpr double kPoint = kPaperDotsPerInch / 72.0;
constexpr double kMarginMm = 8; // what every printer can print
constexpr double kStripes = 12; // points; the frame
constexpr double kInset = 14;   // points, from the stripes to the text
constexpr double kBody = 9;     // points
constexpr double kLeading = 1.25;
const QColor kLine(140, 140, 140);
const QColor kFaint(228, 228, 228); // the word through the page

/// Shares of the width, of the four columns.
constexpr std::array<double, 4> kColumns{0.16, 0.27, 0.25, 0.32};

struct Ink {
    double points = kBody;
    QFont::Weight weight = kPlainWeight;
    QColor colour = kPaperInk;
};

class Pages {
public:
    Pages(QPdfWriter& writer, QPainter& painter, const PracticeSheet& sheet, int pages)
        : m_writer(writer), m_painter(painter), m_sheet(sheet), m_pages(pages) {
        const double inset = (kStripes + kInset) * kPoint;
        m_all = QRectF(0, 0, writer.width(), writer.height());
        m_area = m_all.adjusted(inset, inset, -inset, -inset);
    }

    /// Paints, where `pages` was known; either way, how many there are.
    int run() {
        begin();
        head();
        columns();
        for (const PracticeSheet::Row& row : m_sheet.rows) {
            const double high = rowHeight(row);
            if (m_y + high > m_area.bottom() - foot()) {
                end();
                m_writer.newPage();
                begin();
                columns();
            }
            paintRow(row, high);
        }
        end();
        return m_page;
    }

private:
    double text(
        double x, double y, double width, const QString& words, const Ink& ink, bool paints,
        Qt::Alignment alignment = Qt::AlignLeft) const {
        if (words.isEmpty()) {
            return 0;
        }
        QTextOption option(alignment);
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        const double size = ink.points * kPoint;
        QTextLayout layout(words, paperFont(size, ink.weight), m_painter.device());
        layout.setTextOption(option);
        layout.beginLayout();
        double height = 0;
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            line.setPosition(QPointF(0, height + (size * kLeading - line.height()) / 2));
            height += size * kLeading;
        }
        layout.endLayout();
        if (paints) {
            m_painter.setPen(ink.colour);
            layout.draw(&m_painter, QPointF(x, y));
        }
        return height;
    }

    void begin() {
        ++m_page;
        stripes();
        m_painter.setPen(kFaint);
        const double size =
            fittedSize(m_sheet.word, 200 * kPoint, 10, m_area.width() * 0.98, kWordWeight);
        // Upwards across the page.
        m_painter.save();
        m_painter.translate(m_all.center());
        m_painter.rotate(-35);
        drawLine(
            m_painter, QRectF(-m_area.width() / 2, -size, m_area.width(), 2 * size),
            Qt::AlignCenter, m_sheet.word, size, kWordWeight);
        m_painter.restore();
        m_y = m_area.top();
        const Ink word{13, kWordWeight, kPaperInk};
        text(m_area.left(), m_y, m_area.width(), m_sheet.word, word, true, Qt::AlignRight);
    }

    void stripes() {
        const double wide = kStripes * kPoint;
        QPainterPath frame;
        frame.setFillRule(Qt::OddEvenFill);
        frame.addRect(m_all);
        frame.addRect(m_all.adjusted(wide, wide, -wide, -wide));
        m_painter.save();
        m_painter.setClipPath(frame);
        m_painter.setPen(QPen(kPaperInk, wide * 0.55, Qt::SolidLine, Qt::FlatCap));
        const double step = wide * 1.5;
        for (double at = -m_all.height(); at < m_all.width() + step; at += step) {
            m_painter.drawLine(
                QPointF(at, m_all.height() + step), QPointF(at + m_all.height() + 2 * step, -step));
        }
        m_painter.restore();
        m_painter.setPen(QPen(kPaperInk, 0.8 * kPoint));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(m_all.adjusted(wide, wide, -wide, -wide));
    }

    void head() {
        const double left = m_area.left();
        const double wide = m_area.width();
        m_y += text(left, m_y, wide * 0.72, m_sheet.title, {18, kWordWeight, kPaperInk}, true);
        m_y += 4 * kPoint;
        m_y += text(left, m_y, wide, m_sheet.caution, {11, kWordWeight, kPaperInk}, true);
        m_y += 6 * kPoint;
        m_y += text(left, m_y, wide, m_sheet.who, {11, kLabelWeight, kPaperInk}, true);
        m_y += text(left, m_y, wide, m_sheet.printed, {kBody, kPlainWeight, kPaperSoft}, true);
        m_y += text(left, m_y, wide, m_sheet.summary, {kBody, kPlainWeight, kPaperInk}, true);
        m_y += 8 * kPoint;
    }

    double columnWide(std::size_t column) const {
        return m_area.width() * kColumns[column] - 6 * kPoint;
    }
    double columnLeft(std::size_t column) const {
        double left = m_area.left();
        for (std::size_t i = 0; i < column; ++i) {
            left += m_area.width() * kColumns[i];
        }
        return left;
    }

    void columns() {
        if (m_page > 1) {
            m_y += 24 * kPoint;
        }
        double high = 0;
        for (std::size_t i = 0; i < kColumns.size(); ++i) {
            high = std::max(
                high, text(
                          columnLeft(i), m_y, columnWide(i), m_sheet.heads[i],
                          {kBody, kWordWeight, kPaperInk}, true));
        }
        m_y += high + 2 * kPoint;
        rule();
    }

    void rule() {
        m_painter.setPen(QPen(kLine, 0.5 * kPoint));
        m_painter.drawLine(QPointF(m_area.left(), m_y), QPointF(m_area.right(), m_y));
        m_y += 3 * kPoint;
    }

    static std::array<QString, 4> cells(const PracticeSheet::Row& row) {
        return {row.when, row.made, row.how, row.lapses};
    }

    double rowHeight(const PracticeSheet::Row& row) const {
        double high = 0;
        const auto words = cells(row);
        for (std::size_t i = 0; i < words.size(); ++i) {
            high = std::max(high, text(0, 0, columnWide(i), words[i], {}, false));
        }
        return high + 6 * kPoint;
    }

    void paintRow(const PracticeSheet::Row& row, double high) {
        const auto words = cells(row);
        for (std::size_t i = 0; i < words.size(); ++i) {
            text(columnLeft(i), m_y, columnWide(i), words[i], {}, true);
        }
        m_y += high - 3 * kPoint;
        rule();
    }

    double foot() const { return 3 * kBody * kLeading * kPoint; }

    void end() {
        const Ink ink{8, kPlainWeight, kPaperSoft};
        const double y = m_area.bottom() - 2 * 8 * kLeading * kPoint;
        text(m_area.left(), y, m_area.width() * 0.8, m_sheet.foot, ink, true);
        if (m_pages > 0) {
            text(
                m_area.left(), y, m_area.width(), m_sheet.page.arg(m_page).arg(m_pages), ink, true,
                Qt::AlignRight);
        }
    }

    QPdfWriter& m_writer;
    QPainter& m_painter;
    const PracticeSheet& m_sheet;
    int m_pages;
    int m_page = 0;
    double m_y = 0;
    QRectF m_all;
    QRectF m_area;
};

/// How many pages it takes, with `bytes` filled; `pages`: as it says at their foot.
Result<int> write(const PracticeSheet& sheet, Paper paper, int pages, QByteArray& bytes) {
    bytes.clear();
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(kPaperDotsPerInch);
    writer.setPageLayout(pageOf(paper, kMarginMm));
    writer.setTitle(sheet.title);
    writer.setCreator(sheet.foot);
    QPainter painter;
    if (!painter.begin(&writer)) {
        return fail(ErrorCode::NotWritten, "the practice record can't be begun in memory");
    }
    painter.setRenderHint(QPainter::Antialiasing);
    const int count = Pages(writer, painter, sheet, pages).run();
    if (!painter.end()) {
        return fail(ErrorCode::NotWritten, "the practice record can't be ended in memory");
    }
    return count;
}

} // namespace

Result<QByteArray> practicePdf(const PracticeSheet& sheet, Paper paper) {
    QByteArray bytes;
    const auto pages = write(sheet, paper, 0, bytes); // to count them
    if (!pages) {
        return tl::unexpected<Error>(pages.error());
    }
    const auto written = write(sheet, paper, *pages, bytes);
    if (!written) {
        return tl::unexpected<Error>(written.error());
    }
    return bytes;
}

Result<QString> savePracticePdf(
    const PracticeSheet& sheet, Paper paper, const QString& folder, const QString& stem) {
    const auto pdf = practicePdf(sheet, paper);
    if (!pdf) {
        return tl::unexpected<Error>(pdf.error());
    }
    return savePdf(*pdf, QStringLiteral("practice record"), folder, stem);
}

} // namespace seamclock
