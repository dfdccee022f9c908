#include "app/print/paper_flow.h"

#include "app/parts/theme.h"
#include "app/parts/type.h"
#include "app/print/page_layout.h"
#include "app/print/pdf_file.h"

#include <QBuffer>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>
#include <QTextLayout>
#include <algorithm>
#include <functional>
#include <memory>
#include <utility>

namespace seamclock {
namespace {

const QColor kLine(150, 150, 150);
const QColor kAllowed(205, 205, 205);

constexpr double kBody = 8.5; // points, at scale 1
constexpr double kLeading = 1.22;
constexpr double kFootPoints = 7;

struct Style {
    double points = kBody;
    QFont::Weight weight = kPlainWeight;
    QColor ink = kPaperInk;
};

const Style kHead{9.5, kWordWeight, kPaperInk};
const Style kSmall{kBody * 0.9, kPlainWeight, kPaperSoft};
const Style kName{kBody, kPlainWeight, kPaperSoft};

/// A text at its place in a row.
struct Piece {
    double x = 0;
    double width = 0;
    QString text;
    Style style;
    Qt::Alignment alignment = Qt::AlignLeft;
    std::optional<Mark> mark;
    std::optional<PaperBar> bar;
};

class Flow {
public:
    /// `device`: null measures only. `pages`: how many there will be.
    Flow(
        QPainter& painter, QPagedPaintDevice* device, const PaperDoc& doc, QRectF area,
        double pointPx, double scale, int pages)
        : m_painter(painter), m_device(device), m_doc(doc), m_all(area), m_point(pointPx),
          m_scale(scale), m_pages(pages) {
        const double foot = kFootPoints * m_point * kLeading + px(3);
        m_area = m_all.adjusted(0, 0, 0, -foot);
    }

    /// How many pages it takes.
    int run() {
        beginPage();
        head();
        for (std::size_t i = 0; i < m_doc.blocks.size(); ++i) {
            std::visit([this](const auto& block) { put(block); }, m_doc.blocks[i]);
        }
        endPage();
        return m_page;
    }

    bool broken() const { return m_broken; }

private:
    bool paints() const { return m_device != nullptr; }
    double px(double points) const { return points * m_scale * m_point; }
    double sizeOf(const Style& style) const {
        return std::max(px(style.points), kSmallestPaperPoints * m_point);
    }
    double lineOf(const Style& style) const { return sizeOf(style) * kLeading; }
    double left() const { return m_area.left(); }
    double wide() const { return m_area.width(); }
    double room() const { return m_area.bottom() - m_y; }

    // ---- pages

    void beginPage() {
        ++m_page;
        m_y = m_area.top();
        if (!paints()) {
            goOn();
            return;
        }
        if (m_page > 1 && !m_device->newPage()) {
            m_broken = true;
        }
        if (!m_doc.across.isEmpty()) {
            across();
        }
        goOn();
    }

    /// Over every page but the first.
    void goOn() {
        if (m_page == 1 || m_doc.goesOn.isEmpty()) {
            return;
        }
        const auto lines = laidOut({left(), wide(), m_doc.goesOn, kSmall, Qt::AlignLeft, {}, {}});
        draw(*lines, left(), m_y, kSmall);
        m_y += heightOf(*lines, kSmall) + px(2);
        rule(kPaperInk, 0.8);
        m_y += px(5);
    }

    void endPage() {
        if (!paints()) {
            return;
        }
        const Style style{
            kFootPoints / m_scale, kPlainWeight, kPaperSoft}; // the same on every scale
        const double y = m_all.bottom() - kFootPoints * m_point * kLeading;
        const QString pages =
            m_doc.pageOf.contains("%2") ? m_doc.pageOf.arg(m_page).arg(m_pages) : m_doc.pageOf;
        const double side = wide() * 0.2;
        const auto number = laidOut({0, side, pages, style, Qt::AlignRight, {}, {}});
        draw(*number, m_area.right() - side, y, style);
        const double size = fittedSize(
            m_doc.foot, sizeOf(style), kSmallestPaperPoints * m_point, wide() - side, kPlainWeight);
        const Style fitting{size / (m_scale * m_point), kPlainWeight, kPaperSoft};
        const auto foot = laidOut({0, wide() - side, m_doc.foot, fitting, Qt::AlignLeft, {}, {}});
        draw(*foot, left(), y, fitting, 0, 1);
    }

    void newPage() {
        endPage();
        beginPage();
        if (m_heads) {
            m_heads();
        }
    }

    void across() const { paintAcross(m_painter, m_all, m_doc.across, m_point); }

    // ---- texts

    std::unique_ptr<QTextLayout> laidOut(const Piece& piece) const {
        QTextOption option(piece.alignment);
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        const double size = sizeOf(piece.style);
        auto layout = std::make_unique<QTextLayout>(
            piece.text, paperFont(size, piece.style.weight), m_painter.device());
        layout->setTextOption(option);
        layout->beginLayout();
        for (QTextLine line = layout->createLine(); line.isValid(); line = layout->createLine()) {
            line.setLineWidth(piece.width);
        }
        layout->endLayout();
        return layout;
    }

    double heightOf(const QTextLayout& layout, const Style& style) const {
        return layout.text().isEmpty() ? 0 : layout.lineCount() * lineOf(style);
    }

    /// Lines from `from` on, at most `most`.
    void draw(
        const QTextLayout& layout, double x, double y, const Style& style, int from = 0,
        int most = 1 << 20) const {
        if (!paints() || layout.text().isEmpty()) {
            return;
        }
        m_painter.setPen(style.ink);
        const double leading = lineOf(style);
        const int end =
            std::min(layout.lineCount(), from > (1 << 20) - most ? 1 << 20 : from + most);
        for (int i = from; i < end; ++i) {
            const QTextLine line = layout.lineAt(i);
            line.draw(
                &m_painter, QPointF(x, y + (i - from) * leading + (leading - line.height()) / 2));
        }
    }

    void rule(const QColor& ink, double points) const {
        if (paints()) {
            m_painter.setPen(QPen(ink, points * m_point));
            m_painter.drawLine(QPointF(left(), m_y), QPointF(m_area.right(), m_y));
        }
    }

    void frame(const QRectF& box, double points) const {
        if (paints()) {
            const double in = points * m_point / 2;
            m_painter.setPen(QPen(kPaperInk, points * m_point));
            m_painter.setBrush(Qt::NoBrush);
            m_painter.drawRoundedRect(box.adjusted(in, in, -in, -in), px(4), px(4));
        }
    }

    void markAt(double x, double y, double size, Mark mark) const {
        if (paints()) {
            paintMark(
                m_painter, QRectF(x, y, size, size), mark, kPaperInk, Theme::of(ThemeKind::Light));
        }
    }

    /// On a page of its own where it must be; over several where it is higher than one.
    void row(const std::vector<Piece>& pieces, double after) {
        std::vector<std::unique_ptr<QTextLayout>> texts;
        double high = 0;
        double lowest = 0; // one line of each
        for (const Piece& piece : pieces) {
            const double side = piece.mark ? lineOf(piece.style) : 0;
            Piece narrow = piece;
            narrow.width = std::max(piece.width - side, px(6));
            texts.push_back(laidOut(narrow));
            high = std::max(high, heightOf(*texts.back(), piece.style));
            lowest = std::max(lowest, lineOf(piece.style));
            if (piece.bar || piece.mark) {
                high = std::max(high, lineOf(piece.style));
            }
        }
        const double page = m_area.height() - headsHigh();
        if (high > room() && (high <= page || room() < lowest)) {
            newPage();
        }
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            ornaments(pieces[i]);
        }
        if (high <= room()) {
            for (std::size_t i = 0; i < pieces.size(); ++i) {
                draw(*texts[i], textLeft(pieces[i]), m_y, pieces[i].style);
            }
            m_y += high + after;
            return;
        }
        overPages(pieces, texts, after);
    }

    double textLeft(const Piece& piece) const {
        return piece.x + (piece.mark ? lineOf(piece.style) : 0);
    }

    void ornaments(const Piece& piece) const {
        if (piece.mark) {
            const double size = lineOf(piece.style) * 0.82;
            markAt(piece.x, m_y + lineOf(piece.style) * 0.08, size, *piece.mark);
        }
        if (piece.bar) {
            bar(*piece.bar, QRectF(piece.x, m_y, piece.width, lineOf(piece.style)));
        }
    }

    void overPages(
        const std::vector<Piece>& pieces, const std::vector<std::unique_ptr<QTextLayout>>& texts,
        double after) {
        std::vector<int> done(pieces.size(), 0);
        for (bool more = true; more;) {
            more = false;
            double used = 0;
            for (std::size_t i = 0; i < pieces.size(); ++i) {
                const double leading = lineOf(pieces[i].style);
                const int fit = std::max(1, static_cast<int>(room() / leading));
                const int here = std::min(fit, texts[i]->lineCount() - done[i]);
                if (here > 0) {
                    draw(*texts[i], textLeft(pieces[i]), m_y, pieces[i].style, done[i], here);
                    done[i] += here;
                    used = std::max(used, here * leading);
                }
                more = more || done[i] < texts[i]->lineCount();
            }
            m_y += used;
            if (more) {
                newPage();
            }
        }
        m_y += after;
    }

    /// The allowed stretch in grey, the target as a tick, what it took as a black bar through it.
    void bar(const PaperBar& bar, const QRectF& box) const {
        if (!paints()) {
            return;
        }
        const double most = std::max(
            {bar.low.value_or(0), bar.target.value_or(0), bar.high.value_or(0),
             bar.actual.value_or(0)});
        if (most <= 0) {
            return;
        }
        const double inset = px(2);
        const auto at = [&](double value) {
            return box.left() + inset + (box.width() - 2 * inset) * value / (most * 1.1);
        };
        const double middle = box.center().y();
        const double high = box.height() * 0.62;
        if (bar.low || bar.high) {
            const double from = at(bar.low.value_or(0));
            const double to = bar.high ? at(*bar.high) : box.right() - inset;
            m_painter.fillRect(QRectF(from, middle - high / 2, to - from, high), kAllowed);
            m_painter.setPen(QPen(kPaperInk, 0.6 * m_point));
            for (const auto& limit : {bar.low, bar.high}) {
                if (limit) {
                    const double x = at(*limit);
                    m_painter.drawLine(
                        QPointF(x, middle - high / 2), QPointF(x, middle + high / 2));
                }
            }
        }
        if (bar.actual) {
            const double thick = box.height() * 0.24;
            m_painter.fillRect(
                QRectF(at(0), middle - thick / 2, at(*bar.actual) - at(0), thick), kPaperInk);
        }
        if (bar.target) {
            const double x = at(*bar.target);
            m_painter.setPen(QPen(kPaperInk, 0.8 * m_point));
            m_painter.drawLine(QPointF(x, middle + high / 2), QPointF(x, middle + high * 0.85));
        }
    }

    // ---- the first page's head

    void head() {
        const Style title{17, kWordWeight, kPaperInk};
        const Style verdict{12, kWordWeight, kPaperInk};
        const double side = m_doc.verdict.isEmpty() ? 0 : wide() * 0.34;
        const double inset = px(6);
        const double top = m_y;
        double boxed = 0;
        if (side > 0) {
            const double mark = m_doc.mark ? px(22) : 0;
            const double x = m_area.right() - side;
            const auto words = laidOut(
                {0, side - 2 * inset - mark, m_doc.verdict, verdict, Qt::AlignLeft, {}, {}});
            const double text = heightOf(*words, verdict);
            boxed = std::max(text, mark * 0.9) + 2 * inset;
            frame(QRectF(x, top, side, boxed), 1.4);
            if (m_doc.mark) {
                markAt(x + inset, top + (boxed - mark * 0.82) / 2, mark * 0.82, *m_doc.mark);
            }
            draw(*words, x + inset + mark, top + (boxed - text) / 2, verdict);
        }
        const double text = wide() - side - (side > 0 ? px(8) : 0);
        const auto put = [&](const QString& words, const Style& style) {
            const auto lines = laidOut({0, text, words, style, Qt::AlignLeft, {}, {}});
            draw(*lines, left(), m_y, style);
            m_y += heightOf(*lines, style);
        };
        put(m_doc.title, title);
        for (const QString& line : m_doc.under) {
            put(line, {10, kLabelWeight, kPaperInk});
        }
        put(m_doc.made, kName);
        m_y = std::max(m_y, top + boxed) + px(4);
        rule(kPaperInk, 1.2);
        m_y += px(5);
    }

    // ---- blocks

    void put(const PaperHeading& heading) {
        const double besideWide = heading.beside.isEmpty() ? 0 : wide() * 0.6;
        const auto words =
            laidOut({0, wide() - besideWide, heading.text, kHead, Qt::AlignLeft, {}, {}});
        const double high = heightOf(*words, kHead);
        constexpr double kBelow = 4; // lines that stay with it
        m_y += px(4);
        if (room() < high + kBelow * lineOf({})) {
            newPage();
        }
        draw(*words, left(), m_y, kHead);
        if (besideWide > 0) {
            const auto beside =
                laidOut({0, besideWide, heading.beside, kSmall, Qt::AlignRight, {}, {}});
            draw(*beside, m_area.right() - besideWide, m_y + px(1), kSmall);
            m_y += std::max(high, heightOf(*beside, kSmall) + px(1));
        } else {
            m_y += high;
        }
        m_y += px(1.5);
    }

    void put(const PaperFacts& block) {
        const auto columns = static_cast<std::size_t>(std::max(block.columns, 1));
        const std::size_t high = (block.facts.size() + columns - 1) / columns;
        const double gap = px(10);
        const double column =
            (wide() - gap * static_cast<double>(columns - 1)) / static_cast<double>(columns);
        const double name = column * (columns > 1 ? 0.27 : 0.15);
        for (std::size_t i = 0; i < high; ++i) {
            std::vector<Piece> pieces;
            for (std::size_t k = 0; k < columns; ++k) {
                const std::size_t at = k * high + i; // down a column, then the next
                if (at >= block.facts.size()) {
                    continue;
                }
                const double x = left() + static_cast<double>(k) * (column + gap);
                pieces.push_back(
                    {x, name - px(4), block.facts[at].name, kName, Qt::AlignLeft, {}, {}});
                pieces.push_back(
                    {x + name, column - name, block.facts[at].text, {}, Qt::AlignLeft, {}, {}});
            }
            row(pieces, px(1));
        }
        m_y += px(2);
    }

    std::vector<Piece>
    cells(const PaperTable& table, const std::vector<PaperCell>& row, bool isHead) const {
        double shares = 0;
        for (const double share : table.shares) {
            shares += share;
        }
        std::vector<Piece> pieces;
        double x = left();
        for (std::size_t i = 0; i < row.size() && i < table.shares.size(); ++i) {
            const double width = wide() * table.shares[i] / std::max(shares, 1e-9);
            Piece piece;
            piece.x = x;
            piece.width = width - px(5);
            piece.text = row[i].text;
            piece.style = isHead
                              ? kName
                              : Style{kBody, row[i].strong ? kWordWeight : kPlainWeight, kPaperInk};
            piece.alignment = row[i].right ? Qt::AlignRight : Qt::AlignLeft;
            piece.mark = row[i].mark;
            piece.bar = row[i].bar;
            pieces.push_back(std::move(piece));
            x += width;
        }
        return pieces;
    }

    double headsHigh() const { return m_headsHigh; }

    void put(const PaperTable& table) {
        const auto heads = [this, &table] {
            const double from = m_y;
            row(cells(table, table.heads, true), px(1.5));
            rule(kPaperInk, 0.8);
            m_y += px(1.5);
            m_headsHigh = m_y - from + (m_doc.goesOn.isEmpty() ? 0 : lineOf(kSmall) * 2 + px(8));
        };
        if (!table.heads.empty()) {
            if (room() < 4 * lineOf({})) {
                newPage();
            }
            heads();
            m_heads = heads;
        }
        for (const auto& one : table.rows) {
            row(cells(table, one, false), px(1));
            rule(kLine, 0.4);
            m_y += px(1);
        }
        m_heads = nullptr;
        m_headsHigh = 0;
        m_y += px(3);
    }

    void put(const PaperList& list) {
        const Style style = list.soft ? kSmall : Style{};
        if (list.runOn) {
            row({{left(),
                  wide(),
                  list.items.join(QStringLiteral(" – ")),
                  style,
                  Qt::AlignLeft,
                  {},
                  {}}},
                px(3));
            return;
        }
        const double in = px(8);
        for (const QString& item : list.items) {
            row({{left(), in, QStringLiteral("–"), style, Qt::AlignLeft, {}, {}},
                 {left() + in, wide() - in, item, style, Qt::AlignLeft, {}, {}}},
                px(0.6));
        }
        m_y += px(3);
    }

    void put(const PaperText& text) {
        const Style style{kBody, text.strong ? kWordWeight : kPlainWeight, kPaperInk};
        row({{left(), wide(), text.text, style, Qt::AlignLeft, {}, {}}}, px(3));
    }

    void put(const PaperNotice& notice) {
        const Style style{10, kWordWeight, kPaperInk};
        const double inset = px(6);
        const auto words =
            laidOut({0, wide() - 2 * inset, notice.text, style, Qt::AlignLeft, {}, {}});
        const double high = heightOf(*words, style);
        if (room() < high + 2 * inset && high + 2 * inset <= m_area.height()) {
            newPage();
        }
        if (high + 2 * inset <= room()) {
            frame(QRectF(left(), m_y, wide(), high + 2 * inset), 1.6);
            draw(*words, left() + inset, m_y + inset, style);
            m_y += high + 2 * inset + px(5);
            return;
        }
        row({{left(), wide(), notice.text, style, Qt::AlignLeft, {}, {}}}, px(5));
    }

    void put(const PaperSignatures& block) {
        const auto count = static_cast<double>(std::max<std::size_t>(block.lines.size(), 1));
        const double gap = px(10);
        const double width = (wide() - (count - 1) * gap) / count;
        const Style under{7.5, kPlainWeight, kPaperSoft};
        const Style on{kBody, kLabelWeight, kPaperInk};
        double above = px(20);
        double below = 0;
        for (const auto& line : block.lines) {
            const auto text = laidOut({0, width, line.signedBy, on, Qt::AlignLeft, {}, {}});
            above = std::max(above, heightOf(*text, on) + px(3));
            const auto label = laidOut({0, width, line.under, under, Qt::AlignLeft, {}, {}});
            below = std::max(below, heightOf(*label, under) + px(1));
        }
        if (room() < above + below + px(2)) {
            newPage();
        }
        if (paints()) {
            m_y = m_area.bottom() - above - below;
        }
        for (std::size_t i = 0; i < block.lines.size(); ++i) {
            const double x = left() + static_cast<double>(i) * (width + gap);
            const auto text =
                laidOut({0, width, block.lines[i].signedBy, on, Qt::AlignLeft, {}, {}});
            draw(*text, x, m_y + above - heightOf(*text, on) - px(1), on);
            if (paints()) {
                m_painter.setPen(QPen(kPaperInk, 0.5 * m_point));
                m_painter.drawLine(QPointF(x, m_y + above), QPointF(x + width, m_y + above));
            }
            const auto label =
                laidOut({0, width, block.lines[i].under, under, Qt::AlignLeft, {}, {}});
            draw(*label, x, m_y + above + px(1), under);
        }
        m_y += above + below;
    }

    QPainter& m_painter;
    QPagedPaintDevice* m_device;
    const PaperDoc& m_doc;
    QRectF m_all;
    QRectF m_area; // above the foot
    double m_point;
    double m_scale;
    int m_pages;
    int m_page = 0;
    double m_y = 0;
    bool m_broken = false;
    std::function<void()> m_heads; // of the table that goes on
    double m_headsHigh = 0;
};

struct Fit {
    double scale = 1;
    int pages = 1;
};

/// One page at the largest scale at which it is one; where there is none, as many as it takes, a
/// little smaller than a document that is meant to be long.
Fit fitOf(QPainter& painter, const PaperDoc& doc, const QRectF& area, double pointPx) {
    const auto pagesAt = [&](double scale) {
        return Flow(painter, nullptr, doc, area, pointPx, scale, 0).run();
    };
    const int full = pagesAt(1);
    if (!doc.onePage || full == 1) {
        return {1, full};
    }
    constexpr double kSmallest = kSmallestPaperPoints / kBody;
    if (pagesAt(kSmallest) > 1) {
        constexpr double kDense = 0.8; // still easy to read
        return {kDense, pagesAt(kDense)};
    }
    double fits = kSmallest;
    double tooLarge = 1;
    constexpr int kSteps = 5; // to a hundredth of a point
    for (int i = 0; i < kSteps; ++i) {
        const double middle = (fits + tooLarge) / 2;
        (pagesAt(middle) == 1 ? fits : tooLarge) = middle;
    }
    return {fits, 1};
}

} // namespace

Result<int> paintPaper(const PaperDoc& doc, Paper paper, QPagedPaintDevice& device) {
    device.setPageLayout(pageOf(paper));
    QPainter painter;
    if (!painter.begin(&device)) {
        return fail(ErrorCode::NotWritten, "the " + doc.what.toStdString() + " can't be begun");
    }
    painter.setRenderHint(QPainter::Antialiasing);
    // The painter's origin is the corner inside the margins.
    const QRectF area(0, 0, device.width(), device.height());
    const double pointPx = device.logicalDpiY() / 72.0;
    const Fit fit = fitOf(painter, doc, area, pointPx);
    Flow flow(painter, &device, doc, area, pointPx, fit.scale, fit.pages);
    const int pages = flow.run();
    if (!painter.end() || flow.broken()) {
        return fail(ErrorCode::NotWritten, "the " + doc.what.toStdString() + " can't be ended");
    }
    return pages;
}

Result<QByteArray> paperPdf(const PaperDoc& doc, Paper paper) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(kPaperDotsPerInch);
    writer.setTitle(doc.title);
    writer.setCreator(QStringLiteral("Seamclock"));
    if (const auto pages = paintPaper(doc, paper, writer); !pages) {
        return tl::unexpected<Error>(pages.error());
    }
    buffer.close();
    return bytes;
}

Result<void> writePaper(const PaperDoc& doc, Paper paper, const QString& file) {
    const auto pdf = paperPdf(doc, paper);
    if (!pdf) {
        return tl::unexpected<Error>(pdf.error());
    }
    return writePdf(*pdf, doc.what, file);
}

Result<QString>
savePaper(const PaperDoc& doc, Paper paper, const QString& folder, const QString& stem) {
    const auto pdf = paperPdf(doc, paper);
    if (!pdf) {
        return tl::unexpected<Error>(pdf.error());
    }
    return savePdf(*pdf, doc.what, folder, stem);
}

} // namespace seamclock
