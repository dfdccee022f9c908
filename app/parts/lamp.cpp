#include "app/parts/lamp.h"

#include <algorithm>

#include <QPainter>
#include <QRegularExpression>

#include "app/parts/brush.h"
#include "app/parts/type.h"

namespace seamclock {

namespace {

constexpr double kEdge = 24;
constexpr double kMarkSide = 62;
constexpr double kMiddleOfWord = 56; // from the top, of mark and word
constexpr double kLargestNumber = 217;
constexpr double kLargestWide = 250; // where the lamp is as wide as the screen
constexpr double kCommaDepth = 0.17; // of the em, below the line
constexpr double kWide = 700;

} // namespace

Lamp::Lamp(QWidget* parent) : Part(QStringLiteral("lamp"), parent) {}

void Lamp::show(const LampView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken(
        {view.word, view.unit.isEmpty() ? view.number : view.number + QLatin1Char(' ') + view.unit,
         view.under, view.under2, view.corner}));
    update();
}

QRectF Lamp::markPlace() const {
    return {px(kEdge - 2), px(kMiddleOfWord - kMarkSide / 2), px(kMarkSide), px(kMarkSide)};
}

void Lamp::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = rect();
    const Field field = theme().tone(m_view.tone);
    const bool calm = m_view.calm && m_view.tone == Tone::Rest;
    const QColor text = calm ? theme().text : field.on;
    const QColor soft = calm ? theme().textSoft : field.on;

    if (calm) {
        drawPanel(painter, box, px(14), theme().panel, theme().tone(Tone::Act).ink, px(5));
    } else if (theme().kind == ThemeKind::Contrast && !m_view.framed) {
        drawPanel(painter, box, px(14), field.field, field.ink, px(5));
    } else {
        drawPanel(painter, box, px(14), field.field, Qt::transparent, 0);
    }
    if (m_view.framed) {
        // a rim of the field's colour outside, so that the white stands out of a light ground too
        const double wide = px(m_view.frameWide ? 10 : 4);
        painter.setPen(QPen(field.on, wide, Qt::SolidLine, Qt::SquareCap, Qt::RoundJoin));
        painter.setBrush(Qt::NoBrush);
        const double inset = px(3) + wide / 2;
        painter.drawRoundedRect(box.adjusted(inset, inset, -inset, -inset), px(8), px(8));
    }

    QColor markInk = text;
    if (calm) {
        markInk = m_view.mark == Mark::Act ? theme().tone(Tone::Act).ink : theme().text;
        if (m_view.mark == Mark::Wait || m_view.mark == Mark::Done) {
            markInk = theme().tone(Tone::Normal).ink;
        }
    } else if (m_view.tone == Tone::Normal) {
        markInk = field.ink;
    }
    const double middle = px(kMiddleOfWord);
    paintMark(painter, markPlace(), m_view.mark, markInk, theme(), m_view.fraction);

    // word and corner share the first line: the corner grows only as far as the word keeps its size
    painter.setPen(text);
    const double wordLeft = px(104);
    double wordRight = box.right() - px(kEdge);
    if (!m_view.corner.isEmpty()) {
        const double wordWidth = textWidth(m_view.word, px(64), kWordWeight);
        const double size = fittedSize(
            m_view.corner, textPx(26), px(20), wordRight - wordLeft - wordWidth - px(16),
            kPlainWeight);
        painter.setPen(soft);
        drawTabular(
            painter, QRectF(0, px(32), box.width() - px(kEdge), px(24)),
            Qt::AlignRight | Qt::AlignVCenter, m_view.corner, size, kPlainWeight);
        wordRight -= tabularWidth(m_view.corner, size, kPlainWeight) + px(16);
    }
    painter.setPen(text);
    const Wrapped word =
        wrapped(m_view.word, px(64), px(26), wordRight - wordLeft, 2, kWordWeight, px(62));
    drawWrapped(
        painter, QRectF(wordLeft, middle - px(31), wordRight - wordLeft, px(62)),
        Qt::AlignLeft | Qt::AlignVCenter, word, kWordWeight);

    // from below: second line, line, and the number takes what is left; where it would fall below
    // its floor the second line goes
    const double width = box.width() - px(2 * kEdge) + px(12);
    const double left = (box.width() - width) / 2;
    const double frame = m_view.framed ? px(10) : 0;
    const double top = px(kMiddleOfWord + kMarkSide / 2 + 11);
    const Wrapped first =
        wrapped(m_view.under, textPx(30), px(20), width - frame, 2, kLabelWeight, px(74));
    const Wrapped second =
        wrapped(m_view.under2, textPx(26), px(18), width - frame, 1, kPlainWeight);
    const double lowest = box.bottom() - px(20) - frame;
    const double firstHeight = m_view.under.isEmpty() ? 0 : wrappedHeight(first) + px(8);
    const double secondHeight = px(20) * metrics().text + px(16);
    const bool withSecond =
        !m_view.under2.isEmpty() && metrics().text <= 1.25 &&
        (lowest - secondHeight - firstHeight - top) * 0.92 >= px(kClockFloorUnits);
    double bottom = lowest;
    if (withSecond) {
        painter.setPen(soft);
        drawWrapped(
            painter, QRectF(left, bottom - px(40), width, px(40)),
            Qt::AlignHCenter | Qt::AlignBottom, second, kPlainWeight);
        bottom -= secondHeight;
    } else {
        bottom -= px(8);
    }
    if (!m_view.under.isEmpty()) {
        painter.setPen(text);
        drawWrapped(
            painter, QRectF(left, bottom - px(120), width, px(120)),
            Qt::AlignHCenter | Qt::AlignBottom, first, kLabelWeight);
        bottom -= firstHeight;
    }

    if (m_view.number.isEmpty()) {
        return;
    }
    const double height = bottom - top;
    double numberWidth = box.width() - px(44) - 2 * frame;
    const double largest = px(box.width() > px(kWide) ? kLargestWide : kLargestNumber);
    const double floor = px(kClockFloorUnits) / kCapHeight;
    const bool letters = m_view.number.contains(QRegularExpression(QStringLiteral("\\p{L}")));
    // A decimal comma reaches below the line, and the line below the number keeps its place.
    const double depth = !letters && m_view.number.contains(QLatin1Char(',')) ? kCommaDepth : 0;
    const double high = kCapHeight + depth;
    double most = std::max(
        std::min(largest, height * (depth > 0 ? 0.96 : 0.86) / high),
        std::min(floor, height / high));
    if (letters) {
        most = std::min(most, height * 0.8); // letters reach below the line
    }
    double gap = m_view.unit.isEmpty() ? 0 : px(24);
    double unitSize = px(64);
    double unitWidth = 0;
    double size = 0;
    const auto fit = [&] {
        unitWidth = m_view.unit.isEmpty() ? 0 : textWidth(m_view.unit, unitSize, kWordWeight);
        size = std::max(most, px(30));
        while (size > px(30) &&
               tabularWidth(m_view.number, size, kNumberWeight) + gap + unitWidth > numberWidth) {
            size -= 1;
        }
    };
    fit();
    // the unit and then the margins give way before the number falls below its floor
    while (size < floor && !m_view.unit.isEmpty() && unitSize > px(36)) {
        unitSize -= px(4);
        gap = px(14);
        fit();
    }
    if (size < floor && !letters) {
        numberWidth += px(34);
        most = std::min(most, floor);
        fit();
    }
    const double own = tabularWidth(m_view.number, size, kNumberWeight);
    const double x = box.center().x() - (own + gap + unitWidth) / 2;
    const double base = top + height / 2 + size * (kCapHeight - depth) / 2;
    painter.setPen(text);
    drawTabular(
        painter, QRectF(x, base - size, own, size), Qt::AlignLeft | Qt::AlignBottom, m_view.number,
        size, kNumberWeight);
    if (!m_view.unit.isEmpty()) {
        drawLine(
            painter, QRectF(x + own + gap, base - size, unitWidth, size),
            Qt::AlignLeft | Qt::AlignBottom, m_view.unit, unitSize, kWordWeight);
    }
}

} // namespace seamclock
