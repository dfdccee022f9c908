#include "app/parts/brush.h"

#include <cmath>
#include <cstdlib>

#include <QPainter>

namespace seamclock {

namespace {

class Numbers {
public:
    explicit Numbers(const char* at) : m_at(at) {}

    char command() {
        while (*m_at == ' ') {
            ++m_at;
        }
        return *m_at == '\0' ? '\0' : *m_at++;
    }
    double number() {
        char* end = nullptr;
        const double value = std::strtod(m_at, &end);
        m_at = end;
        return value;
    }
    QPointF point() {
        const double x = number();
        return {x, number()};
    }

private:
    const char* m_at;
};

} // namespace

QPainterPath pathOf(const char* commands) {
    QPainterPath path;
    Numbers in(commands);
    for (char command = in.command(); command != '\0'; command = in.command()) {
        if (command == 'M') {
            path.moveTo(in.point());
        } else if (command == 'L') {
            path.lineTo(in.point());
        } else if (command == 'C') {
            const QPointF one = in.point();
            const QPointF two = in.point();
            path.cubicTo(one, two, in.point());
        } else if (command == 'Z') {
            path.closeSubpath();
        } else if (command == 'O') {
            const QPointF centre = in.point();
            const double radius = in.number();
            path.addEllipse(centre, radius, radius);
        } else if (command == 'R') {
            const QPointF corner = in.point();
            const QPointF size = in.point();
            const double radius = in.number();
            path.addRoundedRect(QRectF(corner, QSizeF(size.x(), size.y())), radius, radius);
        } else if (command == 'A') {
            const QPointF centre = in.point();
            const double radius = in.number();
            const double start = in.number();
            const QRectF box(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius);
            path.arcMoveTo(box, start);
            path.arcTo(box, start, in.number());
        } else {
            break;
        }
    }
    return path;
}

QColor mixed(const QColor& under, const QColor& over, double part) {
    const auto channel = [&](int a, int b) {
        return static_cast<int>(std::lround(a + (b - a) * part));
    };
    return QColor(
        channel(under.red(), over.red()), channel(under.green(), over.green()),
        channel(under.blue(), over.blue()));
}

QPen roundPen(const QColor& colour, double width) {
    return QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
}

void drawPanel(
    QPainter& painter, const QRectF& box, double radius, const QColor& fill, const QColor& frame,
    double width) {
    const bool framed = width > 0 && frame.alpha() > 0;
    const double inset = framed ? width / 2 : 0;
    painter.setPen(framed ? QPen(frame, width) : QPen(Qt::NoPen));
    painter.setBrush(fill.alpha() > 0 ? QBrush(fill) : QBrush(Qt::NoBrush));
    painter.drawRoundedRect(
        box.adjusted(inset, inset, -inset, -inset), radius - inset, radius - inset);
}

void drawArrow(QPainter& painter, const QPointF& from, const QPointF& to, double head) {
    const QPointF way = to - from;
    const double length = std::hypot(way.x(), way.y());
    if (length <= 0) {
        return;
    }
    const QPointF along = way / length * head;
    const QPointF across(-along.y(), along.x());
    QPainterPath path(from);
    path.lineTo(to);
    path.moveTo(to - along + across);
    path.lineTo(to);
    path.lineTo(to - along - across);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(path);
}

} // namespace seamclock
