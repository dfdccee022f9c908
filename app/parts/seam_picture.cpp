#include "app/parts/seam_picture.h"

#include <algorithm>
#include <cmath>

#include <QPainter>

#include "app/parts/brush.h"
#include "app/parts/seam_paint.h"
#include "app/parts/type.h"

namespace seamclock {

namespace {

using Phase = SeamView::Phase;

constexpr double kClampHeight = 42;
constexpr double kRoomCelsius = 20; // colour of a sheet whose temperature nobody has worked out

// Everything that the drawing steps share: one scale, the sheets' middle, and the colours of the
// ground they stand on.
struct Sketch {
    QPainter& painter;
    const QRectF box;
    const SeamView& view;
    const Theme& theme;
    const Metrics& metrics;
    bool onField = false;
    double perMm = 1;
    double sheet = 0; // half the thickness
    QPointF middle{};
    QColor line{};
    QColor words{};
    QColor body{};
    QColor bead{}; // lighter than the sheet: it is what is looked at
    QColor metalFill{};
    QColor metalLine{};

    double px(double units) const { return metrics.px(units); }
    double top() const { return middle.y() - sheet; }
    double low() const { return middle.y() + sheet; }
};

Sketch sketchOf(
    QPainter& painter, const QRectF& box, const SeamView& view, const Theme& theme,
    const Metrics& metrics, bool onField) {
    Sketch s{painter, box, view, theme, metrics};
    s.onField = onField;
    const double thickness = std::max(view.thicknessMm, 0.5);
    const double plate = std::max(view.plateMm, 0.5);
    const bool withPlate =
        view.phase == Phase::Align || view.phase == Phase::Soak || view.phase == Phase::Changeover;
    s.perMm = box.height() * (onField ? 0.33 : 0.39) / thickness;
    if (withPlate) {
        s.perMm = std::min(s.perMm, box.width() * 0.175 / plate);
    }
    s.sheet = thickness * s.perMm / 2;
    s.middle = QPointF(box.center().x(), box.top() + box.height() * (onField ? 0.54 : 0.45));
    s.line = onField ? QColor(Qt::white) : theme.outline;
    s.words = onField ? QColor(Qt::white) : theme.text;
    s.body = temperatureColour(kRoomCelsius);
    s.bead = mixed(s.body, s.line, theme.kind == ThemeKind::Light && !onField ? 0.28 : 0.36);
    s.metalFill = onField ? QColor(255, 255, 255, 0) : theme.metal;
    s.metalLine = onField ? QColor(Qt::white) : theme.metalEdge;
    return s;
}

double sideOf(bool left) {
    return left ? -1.0 : 1.0;
}

double overhangOf(const Sketch& s) {
    return (s.view.overhangMm > 0 ? s.view.overhangMm : 1.25 * s.view.thicknessMm) * s.perMm;
}

double clampRoom(const Sketch& s, double faceX, bool left) {
    return std::abs((left ? s.box.left() : s.box.right()) - faceX) - s.px(50);
}

// Where the clamp's near end is.
double clampEdge(const Sketch& s, double faceX, bool left) {
    return faceX + sideOf(left) * std::min(overhangOf(s), clampRoom(s, faceX, left));
}

// A clamp lies on the sheet from the picture's edge to its overhang before the face.
void paintClamps(Sketch& s, double faceX, bool left, double lift) {
    const double side = sideOf(left);
    const double edge = left ? s.box.left() : s.box.right();
    const bool cut = s.view.overhangMm > 0 && overhangOf(s) > clampRoom(s, faceX, left);
    const double inner = clampEdge(s, faceX, left);
    const double height = s.px(kClampHeight);
    for (bool upper : {true, false}) {
        const double near = upper ? s.top() - s.px(1) - lift : s.low() + s.px(1) + lift;
        const double far = upper ? near - height : near + height;
        const double outside = edge + side * s.px(20);
        const QRectF clamp = QRectF(QPointF(outside, near), QPointF(inner, far)).normalized();
        drawPanel(s.painter, clamp, s.px(6), s.metalFill, s.metalLine, s.px(2));
        s.painter.setPen(QPen(s.metalLine, s.px(2), Qt::SolidLine, Qt::RoundCap));
        const double from = std::min(edge, inner) + s.px(8);
        const double till = std::max(edge, inner) - s.px(14);
        const double up = upper ? -1.0 : 1.0;
        for (double x = from; x < till; x += s.px(18)) {
            s.painter.drawLine(
                QPointF(x, near + up * s.px(4)), QPointF(x + s.px(10), near + up * s.px(14)));
        }
    }
    if (cut) {
        // the overhang is longer than the picture: two strokes say that a piece is left out
        s.painter.setPen(QPen(s.line, s.px(2.5), Qt::SolidLine, Qt::RoundCap));
        for (double step : {0.0, 8.0}) {
            const double x = inner - side * s.px(14 + step);
            s.painter.drawLine(
                QPointF(x - s.px(5), s.low() + s.px(5)), QPointF(x + s.px(5), s.top() - s.px(5)));
        }
    }
}

void paintSheet(Sketch& s, double faceX, bool left, bool faceLine) {
    const double edge = left ? s.box.left() - s.px(6) : s.box.right() + s.px(6);
    const QRectF body = QRectF(QPointF(edge, s.top()), QPointF(faceX, s.low())).normalized();
    if (s.view.heat && !s.view.heat->depthMm.empty()) {
        paintSheetHeat(
            s.painter, *s.view.heat, {faceX, edge, s.middle.y(), s.sheet, s.perMm}, s.metrics);
    } else {
        s.painter.fillRect(body, s.body);
    }
    s.painter.setPen(QPen(s.line, s.px(3), Qt::SolidLine, Qt::FlatCap));
    s.painter.drawLine(body.topLeft(), body.topRight());
    s.painter.drawLine(body.bottomLeft(), body.bottomRight());
    if (faceLine) {
        s.painter.drawLine(
            QPointF(faceX, s.top() - s.px(1.5)), QPointF(faceX, s.low() + s.px(1.5)));
    }
}

void paintBead(Sketch& s, double faceX, bool left) {
    if (s.view.beadNowMm <= 0) {
        return;
    }
    const double high = s.view.beadNowMm * s.perMm;
    for (const bool upper : {true, false}) {
        const QPointF root(faceX, upper ? s.top() : s.low());
        paintBeadLobe(s.painter, {root, left, upper, high, s.bead, s.line}, s.metrics);
    }
}

// The bead to reach: a dashed line at its height, its triangle outside, its words beside it.
void paintBeadToReach(Sketch& s, double leftFace, double rightFace) {
    if (s.view.beadMm <= 0) {
        return;
    }
    const double y = s.top() - s.view.beadMm * s.perMm;
    const double start = std::max(2.35 * std::max(s.view.beadNowMm, 0.0) * s.perMm, s.px(6));
    const double length = s.px(46);
    for (bool left : {true, false}) {
        const double side = sideOf(left);
        const double from = (left ? leftFace : rightFace) + side * start;
        const double till = from + side * length;
        QPen pen(s.words, s.px(2.5), Qt::SolidLine, Qt::FlatCap);
        pen.setDashPattern({3, 2});
        s.painter.setPen(pen);
        s.painter.drawLine(QPointF(from, y), QPointF(till, y));
        QPainterPath triangle(QPointF(till, y));
        triangle.lineTo(till + side * s.px(14), y - s.px(8));
        triangle.lineTo(till + side * s.px(14), y + s.px(8));
        triangle.closeSubpath();
        s.painter.fillPath(triangle, s.words);
    }
    const double textLeft = rightFace + s.px(12);
    const double room = s.box.right() - textLeft - s.px(12);
    const double height = s.px(30);
    const Wrapped text =
        wrapped(s.view.beadText, s.metrics.textPx(22), s.px(16), room, 1, kLabelWeight, s.px(30));
    // above the clamp where it would stand in front of it
    const double textRight = textLeft + tabularWidth(text.lines.value(0), text.size, kLabelWeight);
    const bool overClamp = textRight > clampEdge(s, rightFace, false) - s.px(8);
    const double wish =
        overClamp ? std::min(y - s.px(14), s.top() - s.px(kClampHeight + 10)) : y - s.px(14);
    const double base = std::max(wish, s.box.top() + wrappedHeight(text) + s.px(8)); // but whole
    s.painter.setPen(s.words);
    drawWrapped(
        s.painter, QRectF(textLeft, base - height, room, height), Qt::AlignLeft | Qt::AlignBottom,
        text, kLabelWeight);
}

void paintPlate(Sketch& s, double lower, double upper, bool endShown) {
    const double width = s.view.plateMm * s.perMm;
    const QRectF plate(s.middle.x() - width / 2, upper, width, lower - upper);
    const bool warm = s.view.plateC.has_value();
    const QColor fill = warm ? temperatureColour(*s.view.plateC) : s.theme.metal;
    const QColor ink = warm ? textOnPlate() : s.theme.text;
    QPainterPath shape;
    if (endShown) {
        shape.addRoundedRect(plate.adjusted(0, -s.px(20), 0, 0), s.px(5), s.px(5));
    } else {
        shape.addRect(plate.adjusted(0, -s.px(20), 0, s.px(20)));
    }
    s.painter.save();
    s.painter.setClipRect(
        QRectF(s.box.left(), s.box.top(), s.box.width(), lower + s.px(3) - s.box.top()));
    s.painter.setPen(QPen(s.line, s.px(3)));
    s.painter.setBrush(fill);
    s.painter.drawPath(shape);
    QPen seams(mixed(fill, ink, 0.4), s.px(2.5), Qt::SolidLine, Qt::RoundCap);
    seams.setDashPattern({0.2, 3.2});
    s.painter.setPen(seams);
    for (double part : {0.29, 0.71}) {
        const double x = plate.left() + width * part;
        s.painter.drawLine(
            QPointF(x, plate.top() + s.px(8)),
            QPointF(x, plate.bottom() - (endShown ? s.px(14) : 0)));
    }
    s.painter.restore();
    // on its way up the plate carries the arrow, not its words
    if (!s.view.plateText.isEmpty() && s.view.phase != Phase::Changeover) {
        const double room = std::max(width - s.px(10), s.px(20));
        const Wrapped text = wrapped(
            s.view.plateText, s.metrics.textPx(22), s.px(12), room, 2, kWordWeight, s.px(64));
        if (text.fits) {
            s.painter.fillRect(
                QRectF(
                    plate.left() + s.px(3), plate.top() + s.px(10), width - s.px(6),
                    wrappedHeight(text) + s.px(14)),
                fill);
            s.painter.setPen(ink);
            drawWrapped(
                s.painter, QRectF(plate.left(), plate.top() + s.px(16), width, wrappedHeight(text)),
                Qt::AlignHCenter | Qt::AlignTop, text, kWordWeight);
        } else {
            // on the left: the bead's words stand on the right
            const double left = s.box.left() + s.px(12);
            const double side = plate.left() - left - s.px(12);
            const Wrapped beside = wrapped(
                s.view.plateText, s.metrics.textPx(22), s.px(14), side, 1, kWordWeight, s.px(30));
            s.painter.setPen(s.words);
            drawWrapped(
                s.painter, QRectF(left, plate.top() + s.px(16), side, s.px(20)),
                Qt::AlignRight | Qt::AlignTop, beside, kWordWeight);
        }
    }
}

void paintInwardArrows(Sketch& s, double y, double gap, double length) {
    s.painter.setPen(roundPen(s.words, s.px(s.onField ? 8 : 4)));
    for (bool left : {true, false}) {
        const double side = sideOf(left);
        drawArrow(
            s.painter, QPointF(s.middle.x() + side * (gap + length), y),
            QPointF(s.middle.x() + side * gap, y), s.px(s.onField ? 26 : 12));
    }
}

void paintCentre(Sketch& s, double over) {
    QPen pen(s.words, s.px(2.5), Qt::SolidLine, Qt::FlatCap);
    pen.setDashPattern({5, 4});
    s.painter.setPen(pen);
    s.painter.drawLine(
        QPointF(s.middle.x(), s.top() - over), QPointF(s.middle.x(), s.low() + over));
}

void paintApart(Sketch& s, double gap) {
    for (bool left : {true, false}) {
        const double face = s.middle.x() + sideOf(left) * gap;
        paintSheet(s, face, left, true);
        paintBead(s, face, left);
        paintClamps(s, face, left, 0);
    }
}

void paintOnPlate(Sketch& s) {
    const double half = s.view.plateMm * s.perMm / 2;
    for (bool left : {true, false}) {
        const double face = s.middle.x() + sideOf(left) * half;
        paintSheet(s, face, left, false);
        paintBead(s, face, left);
        paintClamps(s, face, left, 0);
    }
    const double lower = std::max(s.low() + s.px(44), s.box.top() + s.box.height() * 0.86);
    paintPlate(s, std::min(lower, s.box.bottom() - s.px(4)), s.box.top(), false);
    paintBeadToReach(s, s.middle.x() - half, s.middle.x() + half);
    if (s.view.phase == Phase::Align) {
        paintInwardArrows(s, s.low() + s.px(72), half + s.px(36), s.px(64));
    }
}

void paintChangeover(Sketch& s) {
    const double progress = std::clamp(s.view.progress, 0.0, 1.0);
    const double plate = s.view.plateMm * s.perMm / 2;
    const double gap = plate + s.px(32);
    paintApart(s, gap);
    const double down = s.low() + s.px(18);
    const double foot = std::lerp(down, s.top() - s.px(30), progress);
    paintPlate(s, foot, s.box.top(), true);
    const double high = std::min(foot - s.px(96), s.middle.y() - s.px(10));
    const double tip = std::max(high - s.px(s.onField ? 40 : 20), s.box.top() + s.px(12));
    const QColor ink = s.view.plateC ? textOnPlate() : s.theme.text;
    s.painter.setPen(roundPen(ink, s.px(s.onField ? 9 : 6)));
    const double tail = std::min(foot - s.px(40), tip + s.px(88));
    if (tail > tip + s.px(20)) {
        drawArrow(
            s.painter, QPointF(s.middle.x(), tail), QPointF(s.middle.x(), tip),
            std::min(plate * 0.56, s.px(24)));
    }
    paintInwardArrows(
        s, s.low() + s.px(s.onField ? 66 : 72), s.px(s.onField ? 30 : 24),
        s.px(s.onField ? 132 : 84));
}

void paintBuildUp(Sketch& s) {
    const double progress = std::clamp(s.view.progress, 0.0, 1.0);
    // faces close in the first half of the way; after that only pressure grows
    const double gap = std::max(0.0, 1 - 2 * progress) * s.px(40);
    paintApart(s, std::max(gap, s.px(0.8)));
    paintInwardArrows(s, s.low() + s.px(72), s.px(46), s.px(70));
}

void paintJoined(Sketch& s) {
    const Phase phase = s.view.phase;
    const double lift = phase == Phase::Release ? s.px(20) : 0;
    const double face = 0;
    for (bool left : {true, false}) {
        const double x = s.middle.x() + sideOf(left) * face;
        paintSheet(s, x, left, false);
        paintBead(s, x, left);
    }
    // the faces are one now: the line between them is only dotted
    QPen seam(mixed(s.body, s.line, 0.45), s.px(2.5), Qt::SolidLine, Qt::RoundCap);
    seam.setDashPattern({0.2, 3});
    s.painter.setPen(QPen(s.body, s.px(4)));
    s.painter.drawLine(
        QPointF(s.middle.x(), s.top() + s.px(2)), QPointF(s.middle.x(), s.low() - s.px(2)));
    s.painter.setPen(seam);
    s.painter.drawLine(
        QPointF(s.middle.x(), s.top() + s.px(6)), QPointF(s.middle.x(), s.low() - s.px(6)));
    if (phase != Phase::Look) {
        for (bool left : {true, false}) {
            paintClamps(s, s.middle.x(), left, lift);
        }
    }
    if (phase == Phase::Release) {
        s.painter.setPen(roundPen(s.words, s.px(5)));
        const double foot = s.top() - std::max(s.view.beadNowMm, 1.0) * s.perMm - s.px(14);
        drawArrow(
            s.painter, QPointF(s.middle.x(), foot),
            QPointF(s.middle.x(), std::max(foot - s.px(62), s.box.top() + s.px(8))), s.px(14));
    }
    if (phase == Phase::Look) {
        // the bead's width is what is measured now
        const double wide = 1.98 * std::max(s.view.beadNowMm, 0.5) * s.perMm;
        const double y = std::max(
            s.top() - 1.1 * std::max(s.view.beadNowMm, 0.5) * s.perMm - s.px(20),
            s.box.top() + s.px(66)); // its words stand above
        const QColor blue = s.theme.tone(Tone::Act).ink;
        s.painter.setPen(QPen(blue, s.px(3.5)));
        for (double x : {s.middle.x() - wide, s.middle.x() + wide}) {
            s.painter.drawLine(QPointF(x, y - s.px(14)), QPointF(x, s.top() - s.px(6)));
        }
        s.painter.setPen(roundPen(blue, s.px(3.5)));
        const double head = std::min(s.px(9), wide * 0.5);
        drawArrow(s.painter, QPointF(s.middle.x(), y), QPointF(s.middle.x() - wide, y), head);
        drawArrow(s.painter, QPointF(s.middle.x(), y), QPointF(s.middle.x() + wide, y), head);
        const Wrapped text = wrapped(
            s.view.beadText, s.metrics.textPx(22), s.px(16), s.box.width() - s.px(24), 1,
            kLabelWeight, s.px(34));
        s.painter.setPen(blue);
        drawWrapped(
            s.painter, QRectF(s.box.left(), y - s.px(56), s.box.width(), s.px(34)),
            Qt::AlignHCenter | Qt::AlignBottom, text, kLabelWeight);
    }
}

} // namespace

void paintSeam(
    QPainter& painter, const QRectF& box, const SeamView& view, const Theme& theme,
    const Metrics& metrics, SeamGround ground) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(box, Qt::IntersectClip);
    Sketch s = sketchOf(painter, box, view, theme, metrics, ground == SeamGround::Field);
    switch (view.phase) {
    case Phase::Prepare:
        paintApart(s, s.px(40));
        paintCentre(s, s.px(60));
        break;
    case Phase::Align:
    case Phase::Soak:
        paintOnPlate(s);
        break;
    case Phase::Changeover:
        paintChangeover(s);
        break;
    case Phase::BuildUp:
        paintBuildUp(s);
        break;
    case Phase::Cooling:
    case Phase::Release:
    case Phase::Look:
        paintJoined(s);
        break;
    }
    painter.restore();
    if (!view.note.isEmpty()) {
        const Wrapped note = wrapped(
            view.note, metrics.textPx(20), metrics.px(15), box.width() - metrics.px(36), 1,
            kPlainWeight, metrics.px(30));
        painter.setPen(ground == SeamGround::Field ? QColor(Qt::white) : theme.textSoft);
        drawWrapped(
            painter, box.adjusted(metrics.px(18), 0, -metrics.px(18), -metrics.px(20)),
            Qt::AlignLeft | Qt::AlignBottom, note, kPlainWeight);
    }
}

SeamPicture::SeamPicture(QWidget* parent) : Part(QStringLiteral("seam"), parent) {}

void SeamPicture::show(const SeamView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({view.plateText, view.beadText, view.note}));
    update();
}

void SeamPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawPanel(painter, rect(), px(14), theme().panel, Qt::transparent, 0);
    QPainterPath rounded;
    rounded.addRoundedRect(rect(), px(14), px(14));
    painter.setClipPath(rounded);
    paintSeam(painter, rect(), m_view, theme(), metrics(), SeamGround::Panel);
}

} // namespace seamclock
