// Small drawing helps that several parts share: a path from numbers, a mixed colour, a rounded
// panel with its frame.
#pragma once

#include <algorithm>

#include <QColor>
#include <QPainterPath>
#include <QPen>
#include <QRectF>

class QPainter;

namespace seamclock {

// A path from commands and numbers, as in "M3 9 L11 5 Z O12 12 9": M move, L line, C cubic (3
// points), Z close, O circle (centre, radius), R rectangle (x, y, width, height, corner radius), A
// arc (centre, radius, start and sweep in degrees, from 3 o'clock against the clock). Stops at what
// it can't read.
QPainterPath pathOf(const char* commands);

// Between low and high; low where a picture is so small that high lies below it.
inline double bounded(double value, double low, double high) {
    return std::max(low, std::min(value, high));
}

// `part` of `over` on `under`.
QColor mixed(const QColor& under, const QColor& over, double part);

QPen roundPen(const QColor& colour, double width);

// Fill within, and a frame of `width` that lies wholly inside the box. A transparent colour leaves
// its part out.
void drawPanel(
    QPainter& painter, const QRectF& box, double radius, const QColor& fill, const QColor& frame,
    double width);

// From `from` to `to` with an open head at its end.
void drawArrow(QPainter& painter, const QPointF& from, const QPointF& to, double head);

} // namespace seamclock
