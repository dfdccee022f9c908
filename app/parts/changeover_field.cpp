#include "app/parts/changeover_field.h"

#include <algorithm>
#include <cmath>

#include <QPainter>

#include "app/parts/brush.h"
#include "app/parts/mark.h"
#include "app/parts/type.h"

namespace seamclock {

namespace {

// "of 8.8 s" is "of" and "8.8 s"; "s, limit 8.8 s" is "s, limit" and "8.8 s".
struct OfText {
    QString words;
    QString value;
};

OfText split(const QString& of) {
    qsizetype at = 0;
    while (at < of.size() && !of[at].isDigit()) {
        ++at;
    }
    return {of.left(at).trimmed(), of.mid(at)};
}

double railStep(double limitSeconds) {
    for (double step : {1.0, 2.0, 5.0, 10.0, 20.0, 30.0}) {
        if (limitSeconds / step <= 16) {
            return step;
        }
    }
    return 60;
}

} // namespace

double changeoverFront(const ChangeoverView& view) {
    if (view.late || view.limitMs <= 0) {
        return 1;
    }
    double elapsed = std::max(view.elapsedMs, 0.0);
    if (view.lessMotion) {
        elapsed = std::floor(elapsed / 1000) * 1000;
    }
    return std::min(elapsed / view.limitMs, 1.0);
}

ChangeoverField::ChangeoverField(QWidget* parent) : Part(QStringLiteral("changeover"), parent) {}

void ChangeoverField::show(const ChangeoverView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({view.order, view.number + QLatin1Char(' ') + view.of, view.remark}));
    update();
}

void ChangeoverField::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = rect();
    const ChangeoverColours& colours = changeoverColours();
    const double front = box.width() * changeoverFront(m_view);
    if (m_view.late) {
        painter.fillRect(box, colours.late);
    } else {
        painter.fillRect(box, colours.left);
        painter.fillRect(QRectF(0, 0, front, box.height()), colours.done);
    }

    const bool upright = box.height() > box.width();
    const double top = px(m_view.topUnits);
    const double bottom = box.bottom() - px(m_view.bottomUnits);

    // order, beside its mark
    const double markSide = px(104);
    const double wordsLeft = px(32) + markSide + px(26);
    const double orderRoom = box.width() - wordsLeft - px(24);
    const double orderHeight = px(upright ? 190 : 112);
    const Wrapped order =
        wrapped(m_view.order, px(80), px(34), orderRoom, 2, kWordWeight, orderHeight - px(8));
    const double orderMiddle = top + px(22) + std::max(markSide, wrappedHeight(order)) / 2;
    paintMark(
        painter, QRectF(px(32), orderMiddle - markSide / 2, markSide, markSide),
        m_view.late ? Mark::Late : Mark::Act, colours.on, theme());
    painter.setPen(colours.on);
    drawWrapped(
        painter, QRectF(wordsLeft, orderMiddle - orderHeight / 2, orderRoom, orderHeight),
        Qt::AlignLeft | Qt::AlignVCenter, order, kWordWeight);

    // what is under the number: the rail, or what a passed limit means
    const double railTop = bottom - px(62);
    if (m_view.late) {
        if (!m_view.remark.isEmpty()) {
            const Wrapped remark = wrapped(
                m_view.remark, textPx(27), px(17), box.width() - px(56), upright ? 3 : 2,
                kLabelWeight, px(60));
            painter.setPen(colours.on);
            drawWrapped(
                painter, QRectF(px(28), bottom - px(64), box.width() - px(56), px(54)),
                Qt::AlignLeft | Qt::AlignVCenter, remark, kLabelWeight);
        }
    } else {
        const double limitSeconds = std::max(m_view.limitMs, 1.0) / 1000;
        const double step = railStep(limitSeconds);
        const double tickTop = railTop + px(25);
        const double tickHeight = px(24);
        const double wordSize =
            fittedSize(m_view.limitWord, textPx(25), px(16), px(130), kLabelWeight);
        const double wordWidth = textWidth(m_view.limitWord, wordSize, kLabelWeight);
        const double wordLeft = box.right() - px(17) - wordWidth;
        for (int i = 0; i * step <= limitSeconds + 1e-9; ++i) {
            const double x = box.width() * i * step / limitSeconds;
            painter.fillRect(QRectF(x - px(1), tickTop, px(4), tickHeight), colours.on);
            const QString figure = QString::number(i * step);
            const double size = px(25);
            const double end = x + px(10) + tabularWidth(figure, size, kLabelWeight);
            const bool free = i > 0 && end < wordLeft - px(6);
            // the marker covers no figure
            const bool covered = front > x + px(2) && front - px(8) < end && front + px(8) > x;
            if (free && !(covered && front < end)) {
                painter.setPen(colours.on);
                drawTabular(
                    painter, QRectF(x + px(10), tickTop, px(60), tickHeight),
                    Qt::AlignLeft | Qt::AlignVCenter, figure, size, kLabelWeight);
            }
        }
        painter.setPen(colours.on);
        drawLine(
            painter, QRectF(wordLeft, tickTop, wordWidth, tickHeight),
            Qt::AlignLeft | Qt::AlignVCenter, m_view.limitWord, wordSize, kLabelWeight);
        painter.fillRect(QRectF(box.right() - px(10), railTop + px(4), px(10), px(46)), colours.on);
        // the front's own marker, as the two blues differ too little
        const double at = bounded(front, px(4), box.width() - px(4));
        painter.fillRect(QRectF(at - px(4), railTop + px(4), px(8), px(46)), colours.on);
        QPainterPath triangle(QPointF(at - px(16), railTop));
        triangle.lineTo(at + px(16), railTop);
        triangle.lineTo(at, railTop + px(17));
        triangle.closeSubpath();
        painter.fillPath(triangle, colours.on);
    }

    // number and seam share what is between: beside each other, or one over the other in portrait
    const double contentTop = orderMiddle + std::max(markSide, wrappedHeight(order)) / 2 + px(12);
    const double contentLow = railTop - px(12);
    QRectF numbers(0, contentTop, box.width() * 0.56, contentLow - contentTop);
    QRectF seam(
        box.width() * 0.575, contentTop - px(8), box.width() * 0.425, contentLow - contentTop);
    if (upright) {
        const double half = (contentLow - contentTop) * 0.5;
        numbers = QRectF(0, contentTop, box.width(), half - px(44));
        seam = QRectF(0, contentTop + half, box.width(), contentLow - contentTop - half);
    }
    SeamView drawing = m_view.seam;
    drawing.phase = SeamView::Phase::Changeover;
    drawing.plateText.clear();
    drawing.beadText.clear();
    drawing.note.clear();
    paintSeam(painter, seam, drawing, theme(), metrics(), SeamGround::Field);

    const OfText of = split(m_view.of);
    double size = std::min(px(400), (numbers.height() - px(upright ? 44 : 8)) / kCapHeight);
    // a narrow last digit leaves part of its cell empty; what follows closes up
    const auto slack = [&] {
        const QString last = m_view.number.right(1);
        return (tabularWidth(QStringLiteral("0"), size, kNumberWeight) -
                textWidth(last, size, kNumberWeight)) /
               2;
    };
    double wordSize = px(58);
    double valueSize = px(84);
    bool stacked = false;
    const auto ofWidth = [&] {
        const double words = textWidth(of.words, wordSize, kLabelWeight);
        const double value = tabularWidth(of.value, valueSize, kWordWeight);
        return stacked ? std::max(words, value) : words + px(16) + value;
    };
    const double left = px(34);
    const auto fits = [&] {
        return left + tabularWidth(m_view.number, size, kNumberWeight) - slack() + px(16) +
                   ofWidth() <
               numbers.right() - px(8);
    };
    if (!fits()) {
        stacked = true;
        wordSize = px(44);
        valueSize = px(58);
    }
    while (!fits() && size > px(330)) {
        size -= 1;
    }
    while (!fits() && wordSize > px(30)) {
        wordSize -= 1;
        valueSize -= 1;
    }
    while (!fits() && size > px(104) / kCapHeight) {
        size -= 1;
    }
    const double base = numbers.bottom();
    const double own = tabularWidth(m_view.number, size, kNumberWeight);
    painter.setPen(colours.on);
    const QRectF line(left, base - size, own, size);
    drawTabular(painter, line, Qt::AlignLeft | Qt::AlignBottom, m_view.number, size, kNumberWeight);
    const QRectF beside(left + own - slack() + px(16), base - size, box.width(), size);
    if (stacked) {
        drawTabular(
            painter, beside, Qt::AlignLeft | Qt::AlignBottom, of.value, valueSize, kWordWeight);
        drawLine(
            painter, beside.translated(0, -valueSize * kCapHeight - px(18)),
            Qt::AlignLeft | Qt::AlignBottom, of.words, wordSize, kLabelWeight);
    } else {
        drawLine(
            painter, beside, Qt::AlignLeft | Qt::AlignBottom, of.words, wordSize, kLabelWeight);
        const double words =
            of.words.isEmpty() ? 0 : textWidth(of.words, wordSize, kLabelWeight) + px(16);
        drawTabular(
            painter, beside.translated(words, 0), Qt::AlignLeft | Qt::AlignBottom, of.value,
            valueSize, kWordWeight);
    }

    if (m_view.late) {
        const double wide = px(m_view.frameWide ? 10 : 4);
        painter.setPen(QPen(colours.on, wide, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(box.adjusted(wide / 2, wide / 2, -wide / 2, -wide / 2));
    }
}

} // namespace seamclock
