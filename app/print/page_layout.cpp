#include "app/print/page_layout.h"

#include "app/parts/sign.h"
#include "app/parts/type.h"
#include "app/print/paper_page.h"

#include <QPainter>
#include <QTextLayout>
#include <algorithm>
#include <array>
#include <cmath>

namespace seamclock {
namespace {

const QColor kLine(120, 120, 120);
const QColor kFaint(226, 226, 226); // the word through the page
constexpr double kUpwards = -35;    // degrees

constexpr double kBody = 8.5; // points, at scale 1
constexpr double kLeading = 1.22;
constexpr std::array<Sign, 6> kColumnSigns{Sign::PlateTemperature, Sign::Align,   Sign::Soak,
                                           Sign::Changeover,       Sign::BuildUp, Sign::Cooling};

struct Style {
    double points = kBody;
    QFont::Weight weight = kPlainWeight;
    QColor ink = kPaperInk;
};

// Measures or paints: one code for both, so that what was measured is what is painted.
class Layout {
public:
    Layout(
        QPainter& painter, const CardSheet& sheet, const QRectF& area, double pointPx, double scale,
        bool paints)
        : m_painter(painter), m_sheet(sheet), m_area(area), m_point(pointPx), m_scale(scale),
          m_paints(paints) {}

    /// The height that is used, from the area's top to the end of the last line to sign.
    double run() {
        m_y = m_area.top();
        head();
        columns();
        sumsAndFacts();
        if (!m_sheet.card.warnings.isEmpty()) {
            list(
                m_sheet.warningsTitle, m_sheet.card.warnings, {kBody, kLabelWeight, kPaperInk},
                Items::Listed);
        }
        if (!m_sheet.estimates.isEmpty()) {
            list(m_sheet.estimatesTitle, m_sheet.estimates, {}, Items::Listed);
        }
        list(
            m_sheet.sourcesTitle, m_sheet.sources, {kBody * 0.9, kPlainWeight, kPaperSoft},
            Items::MayRunOn);
        list(m_sheet.cautionsTitle, m_sheet.cautions, {}, Items::MayRunOn);
        signatures();
        return m_y - m_area.top();
    }

private:
    double px(double points) const { return points * m_scale * m_point; }

    double pixels(const Style& style) const {
        return std::max(px(style.points), kSmallestPoints * m_point);
    }

    /// The height of the text in that width.
    double text(
        double x, double y, double width, const QString& words, const Style& style,
        Qt::Alignment alignment = Qt::AlignLeft) const {
        return textOf(x, y, width, words, pixels(style), style, alignment);
    }

    double textOf(
        double x, double y, double width, const QString& words, double size, const Style& style,
        Qt::Alignment alignment = Qt::AlignLeft) const {
        if (words.isEmpty()) {
            return 0;
        }
        QTextOption option(alignment);
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        QTextLayout layout(words, paperFont(size, style.weight), m_painter.device());
        layout.setTextOption(option);
        layout.beginLayout();
        double height = 0;
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            line.setPosition(QPointF(0, height + (size * kLeading - line.height()) / 2));
            height += size * kLeading;
        }
        layout.endLayout();
        if (m_paints) {
            m_painter.setPen(style.ink);
            layout.draw(&m_painter, QPointF(x, y));
        }
        return height;
    }

    /// In one line if it can be, smaller then, else wrapped.
    double
    fitted(double x, double y, double width, const QString& words, const Style& style) const {
        const double size = fittedSize(
            words, pixels(style), std::min(pixels(style), kSmallestPoints * m_point), width * 0.98,
            style.weight);
        return textOf(x, y, width, words, size, style);
    }

    void line(double x1, double x2, double y) const {
        if (m_paints) {
            m_painter.setPen(QPen(kLine, 0.5 * m_point));
            m_painter.drawLine(QPointF(x1, y), QPointF(x2, y));
        }
    }

    void frame(const QRectF& box, double points) const {
        if (m_paints) {
            const double in = points * m_point / 2;
            m_painter.setPen(QPen(points > 1 ? kPaperInk : kLine, points * m_point));
            m_painter.setBrush(Qt::NoBrush);
            m_painter.drawRoundedRect(box.adjusted(in, in, -in, -in), px(4), px(4));
        }
    }

    void head() {
        const double left = m_area.left();
        const double wide = m_area.width();
        const double date = m_sheet.printed.isEmpty() ? 0 : wide * 0.24;
        const double title =
            text(left, m_y, wide - date, m_sheet.title, {17, kWordWeight, kPaperInk});
        const double printed = text(
            left + wide - date, m_y + px(4), date, m_sheet.printed,
            {kBody, kPlainWeight, kPaperSoft}, Qt::AlignRight);
        m_y += std::max(title, printed);
        m_y += text(left, m_y, wide, m_sheet.seam, {12, kLabelWeight, kPaperInk});
        m_y += text(left, m_y, wide, m_sheet.sheet, {12, kPlainWeight, kPaperInk});
        for (const QString& each : m_sheet.sheets) {
            m_y += text(left, m_y, wide, each, {});
        }
        m_y += px(5);
        if (!m_sheet.card.notReady.isEmpty()) {
            const double inset = px(7);
            const double high = text(
                left + inset, m_y + px(4), wide - 2 * inset, m_sheet.card.notReady,
                {12, kWordWeight, kPaperInk});
            frame(QRectF(left, m_y, wide, high + px(8)), 2);
            m_y += high + px(14);
        }
    }

    void columns() {
        const auto& all = m_sheet.card.columns;
        if (all.empty()) {
            return;
        }
        const double gap = px(5);
        const auto count = static_cast<double>(all.size());
        const double wide = (m_area.width() - (count - 1) * gap) / count;
        const double inset = px(5);
        const double inner = wide - 2 * inset;
        const double top = m_y;
        double y = top + px(5);
        const auto row = [&](const auto& paintOne) {
            double high = 0;
            for (std::size_t i = 0; i < all.size(); ++i) {
                const double x = m_area.left() + static_cast<double>(i) * (wide + gap) + inset;
                high = std::max(high, paintOne(x, all[i], i));
            }
            y += high;
        };
        row([&](double x, const CardColumn& column, std::size_t i) {
            const double sign = px(17);
            if (m_paints && i < kColumnSigns.size()) {
                m_painter.setPen(kPaperInk);
                paintSign(m_painter, QRectF(x, y, sign, px(14)), kColumnSigns[i], kPaperInk);
            }
            const double past = sign + px(3);
            return std::max(
                px(15),
                fitted(
                    x + past, y + px(1), inner - past, column.name, {10, kLabelWeight, kPaperInk}));
        });
        y += px(2);
        row([&](double x, const CardColumn& column, std::size_t) {
            return valueWithUnit(x, y, inner, column.big, column.bigUnit, 21, 10);
        });
        const auto words = [&](QString CardColumn::*what, const Style& style) {
            row([&](double x, const CardColumn& column, std::size_t) {
                return fitted(x, y, inner, column.*what, style);
            });
        };
        words(&CardColumn::under, {9, kPlainWeight, kPaperSoft});
        words(&CardColumn::times, {9, kPlainWeight, kPaperInk});
        y += px(3);
        for (std::size_t i = 0; i < all.size(); ++i) {
            const double x = m_area.left() + static_cast<double>(i) * (wide + gap);
            line(x + inset, x + wide - inset, y);
        }
        y += px(3);
        row([&](double x, const CardColumn& column, std::size_t) {
            return column.scaleUnit.isEmpty()
                       ? 0
                       : fitted(x, y, inner, m_sheet.scaleWord, {7, kPlainWeight, kPaperSoft});
        });
        row([&](double x, const CardColumn& column, std::size_t) {
            return valueWithUnit(x, y, inner, column.scale, column.scaleUnit, 13, 9);
        });
        words(&CardColumn::band, {9, kLabelWeight, kPaperInk});
        words(&CardColumn::foot, {9, kPlainWeight, kPaperSoft});
        y += px(5);
        for (std::size_t i = 0; i < all.size(); ++i) {
            const double x = m_area.left() + static_cast<double>(i) * (wide + gap);
            frame(QRectF(x, top, wide, y - top), 0.6);
        }
        m_y = y + px(7);
    }

    double valueWithUnit(
        double x, double y, double width, const QString& value, const QString& unit, double points,
        double unitPoints) const {
        const Style style{points, kNumberWeight, kPaperInk};
        const double floor = kSmallestPoints * m_point;
        const double between = px(3);
        const double unitSize = std::max(px(unitPoints), floor);
        const double unitWide =
            unit.isEmpty() ? 0 : textWidth(unit, unitSize, kLabelWeight) + between;
        const double room = (width - unitWide) * 0.97;
        const double size = fittedSize(value, pixels(style), floor, room, style.weight);
        const bool beside = textWidth(value, size, style.weight) <= room;
        const double high = textOf(x, y, width, value, size, style);
        if (unit.isEmpty()) {
            return high;
        }
        const Style small{unitPoints, kLabelWeight, kPaperInk};
        if (!beside) {
            return high + textOf(x, y + high, width, unit, unitSize, small);
        }
        // On the number's baseline, as near as the two leadings allow.
        const double drop = (size - unitSize) * (kLeading + kCapHeight) / 2;
        textOf(
            x + textWidth(value, size, style.weight) + between, y + drop, unitWide + px(20), unit,
            unitSize, small);
        return high;
    }

    void sumsAndFacts() {
        const double gap = px(10);
        const double left = m_area.left();
        const double wide = (m_area.width() - gap) / 2;
        const double top = m_y;
        double y = top + title(left, top, wide, m_sheet.sumsTitle);
        for (const CardSum& sum : m_sheet.card.sums) {
            y += text(left, y, wide, sum.name, {kBody, kPlainWeight, kPaperSoft});
            y += text(left, y, wide, sum.force, {9.5, kLabelWeight, kPaperInk});
            y += text(left, y, wide, sum.reading, {9.5, kLabelWeight, kPaperInk});
            y += px(3);
        }
        const double right = left + wide + gap;
        double z = top + title(right, top, wide, m_sheet.factsTitle);
        const double name = wide * 0.22;
        for (const CardSheet::Fact& fact : m_sheet.facts) {
            const double a =
                fitted(right, z, name - px(4), fact.name, {kBody, kPlainWeight, kPaperSoft});
            const double b = text(right + name, z, wide - name, fact.text, {});
            z += std::max(a, b) + px(1);
        }
        m_y = std::max(y, z) + px(5);
    }

    double title(double x, double y, double width, const QString& words) const {
        return text(x, y, width, words, {9.5, kWordWeight, kPaperInk}) + px(2);
    }

    /// One under the other. What nobody works by runs on in one paragraph where the page is full.
    enum class Items { Listed, MayRunOn };
    void list(const QString& heading, const QStringList& items, const Style& style, Items may) {
        constexpr double kFull = 0.8;
        const double left = m_area.left();
        m_y += title(left, m_y, m_area.width(), heading);
        if (may == Items::MayRunOn && m_scale < kFull) {
            m_y +=
                text(left, m_y, m_area.width(), items.join(QStringLiteral(" – ")), style) + px(4);
            return;
        }
        const double in = px(9);
        for (const QString& item : items) {
            text(left, m_y, in, QStringLiteral("–"), style);
            m_y += text(left + in, m_y, m_area.width() - in, item, style) + px(0.6);
        }
        m_y += px(4);
    }

    // At the foot of the page when painting; where the text ends when measuring.
    void signatures() {
        const double high = px(34);
        const double foot = pixels({7, kPlainWeight, kPaperSoft}) * kLeading + px(2);
        if (m_paints) {
            m_y = std::max(m_y, m_area.bottom() - high - foot);
        }
        const auto count = static_cast<double>(m_sheet.signatureLines.size());
        const double gap = px(10);
        const double wide = (m_area.width() - (count - 1) * gap) / std::max(count, 1.0);
        double lowest = 0;
        for (int i = 0; i < m_sheet.signatureLines.size(); ++i) {
            const double x = m_area.left() + i * (wide + gap);
            line(x, x + wide, m_y + px(20));
            lowest = std::max(
                lowest, fitted(
                            x, m_y + px(21), wide, m_sheet.signatureLines[i],
                            {7.5, kPlainWeight, kPaperSoft}));
        }
        m_y += std::max(high, px(21) + lowest);
        text(
            m_area.left(), m_y, m_area.width(), m_sheet.foot, {7, kPlainWeight, kPaperSoft},
            Qt::AlignRight);
        m_y += foot;
    }

    QPainter& m_painter;
    const CardSheet& m_sheet;
    QRectF m_area;
    double m_point;
    double m_scale;
    bool m_paints;
    double m_y = 0;
};

} // namespace

std::optional<double>
fittingScale(QPainter& painter, const CardSheet& sheet, const QRectF& area, double pointPx) {
    constexpr double kSmallest = kSmallestPoints / kBody;
    constexpr int kSteps = 14;
    for (int i = 0; i <= kSteps; ++i) {
        const double scale = 1 - (1 - kSmallest) * i / kSteps;
        if (Layout(painter, sheet, area, pointPx, scale, false).run() <= area.height()) {
            return scale;
        }
    }
    return std::nullopt;
}

void paintAcross(QPainter& painter, const QRectF& page, const QString& word, double pointPx) {
    painter.setPen(kFaint);
    const double size =
        fittedSize(word, 170 * pointPx, 20 * pointPx, page.width() * 0.95, kWordWeight);
    painter.save();
    painter.translate(page.center());
    painter.rotate(kUpwards);
    drawLine(
        painter, QRectF(-page.width() / 2, -size, page.width(), 2 * size), Qt::AlignCenter, word,
        size, kWordWeight);
    painter.restore();
}

void paintSheet(
    QPainter& painter, const CardSheet& sheet, const QRectF& area, double pointPx, double scale) {
    if (!sheet.across.isEmpty()) {
        paintAcross(painter, area, sheet.across, pointPx);
    }
    Layout(painter, sheet, area, pointPx, scale, true).run();
}

} // namespace seamclock
