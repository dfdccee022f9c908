#include "app/parts/mark.h"

#include <algorithm>
#include <array>

#include <QPainter>

#include "app/parts/brush.h"
#include "app/parts/theme.h"

namespace seamclock {

namespace {

// All on a square of 24.
QPainterPath stroked(const char* line, double width) {
    QPainterPathStroker stroker;
    stroker.setWidth(width);
    stroker.setCapStyle(Qt::RoundCap);
    stroker.setJoinStyle(Qt::RoundJoin);
    return stroker.createStroke(pathOf(line));
}

QPainterPath exclamation(double top, double low, double dot) {
    QPainterPathStroker stroker;
    stroker.setWidth(2.9);
    stroker.setCapStyle(Qt::RoundCap);
    QPainterPath line(QPointF(12, top));
    line.lineTo(12, low);
    QPainterPath path = stroker.createStroke(line);
    path.addEllipse(QPointF(12, dot), 1.75, 1.75);
    return path;
}

void paintWait(QPainter& painter, const QColor& ink, double fraction) {
    painter.setPen(QPen(ink, 2.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(QPointF(12, 12), 10.6, 10.6);
    const double part = std::clamp(fraction, 0.0, 1.0);
    if (part <= 0) {
        return;
    }
    QPainterPath sector(QPointF(12, 12));
    sector.arcTo(QRectF(5, 5, 14, 14), 90, -360 * part);
    sector.closeSubpath();
    painter.fillPath(sector, ink);
}

// On a panel yellow, with a dark edge and stroke; on a field in the field's own ink with the stroke
// cut out.
void paintWarning(
    QPainter& painter, const QPainterPath& shape, const QPainterPath& stroke, const QColor& ink,
    const Theme& theme) {
    const bool onPanel = ink == theme.tone(Tone::Soon).ink || ink == theme.tone(Tone::Normal).ink;
    if (!onPanel) {
        QPainterPathStroker rounder;
        rounder.setWidth(2.2);
        rounder.setJoinStyle(Qt::RoundJoin);
        painter.fillPath(shape.united(rounder.createStroke(shape)).subtracted(stroke), ink);
        return;
    }
    const QColor fill =
        theme.kind == ThemeKind::Contrast ? theme.tone(Tone::Soon).field : yellowFill();
    if (theme.kind == ThemeKind::Light) {
        painter.setPen(roundPen(yellowOutline(), 2.2));
        painter.setBrush(fill);
        painter.drawPath(shape);
    } else {
        painter.setPen(roundPen(fill, 2.2));
        painter.setBrush(fill);
        painter.drawPath(shape);
    }
    painter.fillPath(stroke, yellowOutline());
}

} // namespace

void paintMark(
    QPainter& painter, const QRectF& box, Mark mark, const QColor& ink, const Theme& theme,
    double fraction) {
    const double side = std::min(box.width(), box.height());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.center() - QPointF(side / 2, side / 2));
    painter.scale(side / 24, side / 24);
    painter.setPen(Qt::NoPen);
    switch (mark) {
    case Mark::Wait:
        paintWait(painter, ink, fraction);
        break;
    case Mark::Soon:
        paintWarning(
            painter, pathOf("M12 2 L22.8 21.2 L1.2 21.2 Z"), exclamation(8.6, 13.2, 17.4), ink,
            theme);
        break;
    case Mark::Act:
        painter.setPen(roundPen(ink, 1.2));
        painter.setBrush(ink);
        painter.drawPath(pathOf("M0.8 7 L12.2 7 L12.2 1 L23.2 12 L12.2 23 L12.2 17 L0.8 17 Z"));
        break;
    case Mark::Late:
        painter.fillPath(
            pathOf("M7.2 0.6 L16.8 0.6 L23.4 7.2 L23.4 16.8 L16.8 23.4 L7.2 23.4 L0.6 16.8 "
                   "L0.6 7.2 Z")
                .subtracted(pathOf("R6 10 12 4 0.4")),
            ink);
        break;
    case Mark::Done:
        painter.fillPath(
            pathOf("R1.6 1.6 20.8 20.8 2.2")
                .subtracted(stroked("M6.6 12.4 L10.5 16.3 L17.6 7.9", 2.9)),
            ink);
        break;
    case Mark::Cut:
        painter.fillPath(
            pathOf("R1.6 1.6 20.8 20.8 2.2")
                .subtracted(
                    stroked("M7.4 7.4 L16.6 16.6", 3).united(stroked("M16.6 7.4 L7.4 16.6", 3))),
            ink);
        break;
    case Mark::Trouble:
        paintWarning(
            painter, pathOf("M12 1.6 L22.4 12 L12 22.4 L1.6 12 Z"), exclamation(7, 12.6, 16.9), ink,
            theme);
        break;
    case Mark::Open: {
        QPen pen(ink, 2.5);
        pen.setCapStyle(Qt::FlatCap);
        // eight dashes: the pattern is in pen widths, the circle 2 pi 10.4 long
        pen.setDashPattern({1.9, 1.367});
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(QPointF(12, 12), 10.4, 10.4);
        break;
    }
    case Mark::Free:
        painter.setPen(QPen(ink, 1.7));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(QPointF(12, 12), 10.6, 10.6);
        break;
    }
    painter.restore();
}

} // namespace seamclock
