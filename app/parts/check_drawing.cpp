#include "app/parts/check_drawing.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <QCoreApplication>
#include <QPainter>

#include "app/parts/brush.h"
#include "app/parts/mark.h"
#include "app/parts/sign.h"
#include "app/parts/type.h"

namespace seamclock {

namespace {

constexpr double kWidth = 748;
constexpr double kHeight = 336;
constexpr double kLine = 3.5;

// Draws on a sheet of kWidth x kHeight. Blue says: this is what you set.
class Pencil {
public:
    Pencil(QPainter& painter, const CheckDrawing& view, const Theme& theme, double text)
        : m_painter(painter), m_view(view), m_theme(theme), m_text(text) {}

    const CheckDrawing& view() const { return m_view; }
    const CheckWords& words() const { return m_view.words; }
    QPainter& painter() { return m_painter; }
    const Theme& theme() const { return m_theme; }
    QColor blue() const { return m_theme.tone(Tone::Act).ink; }
    // on the pink plate, whose colour no theme changes
    QColor blueOnPlate() const { return m_theme.tone(Tone::Act).field; }
    QColor tint() const { return mixed(m_theme.panel, blue(), 0.16); }
    QColor ink() const { return m_theme.text; }

    void box(const QRectF& r, const QColor& fill, const QColor& line, double radius = 5) {
        drawPanel(m_painter, r, radius, fill, line, kLine);
    }
    void table(const QRectF& r) {
        box(r, m_theme.metal, ink());
        m_painter.setPen(roundPen(m_theme.metalEdge, 2));
        for (double x = r.left() + 10; x < r.right() - 18; x += 24) {
            m_painter.drawLine(QPointF(x, r.bottom() - 9), QPointF(x + 12, r.bottom() - 23));
        }
    }
    void bar(const QRectF& r, bool set = false) {
        box(r, set ? tint() : m_theme.panel, set ? blue() : ink());
    }
    void sheet(const QRectF& r, bool set = false) {
        box(r, set ? tint() : mixed(m_theme.panel, temperatureColour(20), 0.75),
            set ? blue() : ink(), 2);
    }
    // A sheet with a double bead in its middle, one outline.
    void seam(const QRectF& r, double wide, double high) {
        QPainterPath shape;
        shape.addRect(r);
        for (double side : {-1.0, 1.0}) {
            for (double y : {r.top(), r.bottom()}) {
                QPainterPath lobe;
                lobe.addEllipse(QPointF(r.center().x() + side * wide, y), wide, high);
                shape = shape.united(lobe);
            }
        }
        m_painter.setPen(roundPen(ink(), kLine));
        m_painter.setBrush(mixed(m_theme.panel, temperatureColour(20), 0.75));
        m_painter.drawPath(shape);
    }
    void plate(const QRectF& r) { box(r, temperatureColour(200), ink(), 4); }

    void line(const QPointF& a, const QPointF& b, bool set, double width = kLine) {
        m_painter.setPen(roundPen(set ? blue() : ink(), width));
        m_painter.drawLine(a, b);
    }
    void curve(const char* commands, bool set, double width = kLine) {
        m_painter.setPen(roundPen(set ? blue() : ink(), width));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawPath(pathOf(commands));
    }
    void arrow(const QPointF& from, const QPointF& to, bool set, double head = 11) {
        m_painter.setPen(roundPen(set ? blue() : m_theme.textSoft, set ? 4.5 : kLine));
        drawArrow(m_painter, from, to, head);
    }
    // A width between two lines, its value above.
    void measure(double left, double right, double y, double foot, const QString& value) {
        line(QPointF(left, y - 12), QPointF(left, foot), true);
        line(QPointF(right, y - 12), QPointF(right, foot), true);
        const QPointF middle((left + right) / 2, y);
        const double head = std::min(11.0, (right - left) / 5);
        m_painter.setPen(roundPen(blue(), 4));
        drawArrow(m_painter, middle, QPointF(left + 2, y), head);
        drawArrow(m_painter, middle, QPointF(right - 2, y), head);
        text(value, QRectF(middle.x() - 170, y - 62, 340, 44), true, 36);
    }
    void text(
        const QString& what, const QRectF& r, bool set, double size = 22,
        Qt::Alignment alignment = Qt::AlignCenter) {
        const QFont::Weight weight = set ? kWordWeight : kPlainWeight;
        const double wanted = std::min(size * m_text, std::max(size, 34.0));
        const Wrapped fit = wrapped(what, wanted, 12, r.width(), 2, weight, r.height());
        m_painter.setPen(set ? blue() : m_theme.textSoft);
        drawWrapped(m_painter, r, alignment, fit, weight);
    }
    void sign(const QRectF& r, Sign which, bool set) {
        paintSign(m_painter, r, which, set ? blue() : ink());
    }
    void spring(double left, double right, double y, double high, bool set) {
        const int turns = 5;
        const double step = (right - left) / (2 * turns + 2);
        QPainterPath path(QPointF(left, y));
        path.lineTo(left + step / 2, y);
        for (int i = 0; i < 2 * turns; ++i) {
            path.lineTo(left + step * (i + 1), y + (i % 2 == 0 ? -high : high));
        }
        path.lineTo(right - step / 2, y);
        path.lineTo(right, y);
        m_painter.setPen(roundPen(set ? blue() : ink(), kLine));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawPath(path);
    }
    void divider(double x) {
        m_painter.setPen(QPen(m_theme.hairline, 2));
        m_painter.drawLine(QPointF(x, 6), QPointF(x, kHeight - 6));
    }
    void caption(const QString& what, double left, double width) {
        const QFont::Weight weight = kPlainWeight;
        const Wrapped fit = wrapped(what, std::min(22 * m_text, 32.0), 12, width, 1, weight, 30);
        m_painter.setPen(m_theme.textSoft);
        drawWrapped(
            m_painter, QRectF(left, 0, width, 26), Qt::AlignLeft | Qt::AlignVCenter, fit, weight);
    }

private:
    QPainter& m_painter;
    const CheckDrawing& m_view;
    const Theme& m_theme;
    double m_text;
};

constexpr double kAboveLeft = 550;
constexpr QRectF kLeftTable(4, 226, 190, 58);
constexpr QRectF kRightTable(314, 226, 190, 58);

void captions(Pencil& p) {
    p.caption(p.words().fromEnd, 0, 400);
    p.divider(530);
    p.caption(p.words().fromAbove, kAboveLeft, kWidth - kAboveLeft);
}

void tables(Pencil& p) {
    p.table(kLeftTable);
    p.table(kRightTable);
    p.text(p.words().fixedTable, QRectF(0, 294, 200, 40), false);
    p.text(p.words().movingTable, QRectF(309, 294, 200, 40), false);
}

// Two tables from above with the gap between, alike at both ends.
void gapAbove(Pencil& p) {
    const QRectF left(kAboveLeft + 6, 62, 66, 268);
    const QRectF right(kWidth - 66, 62, 66, 268);
    p.painter().fillRect(
        QRectF(left.right(), left.top(), right.left() - left.right(), left.height()), p.tint());
    p.box(left, p.theme().metal, p.ink());
    p.box(right, p.theme().metal, p.ink());
    const double middle = (left.right() + right.left()) / 2;
    for (double y : {94.0, 298.0}) {
        p.arrow(QPointF(middle, y), QPointF(left.right() + 4, y), true, 9);
        p.arrow(QPointF(middle, y), QPointF(right.left() - 4, y), true, 9);
    }
    p.painter().save();
    p.painter().translate(middle, (left.top() + left.bottom()) / 2);
    p.painter().rotate(-90);
    p.text(p.words().same, QRectF(-88, -17, 176, 34), true, 24);
    p.painter().restore();
}

void drawGap(Pencil& p) {
    captions(p);
    p.painter().fillRect(QRectF(194, 226, 120, 58), p.tint());
    tables(p);
    p.bar(QRectF(24, 134, 140, 36));
    p.bar(QRectF(344, 134, 140, 36));
    p.arrow(QPointF(94, 204), QPointF(94, 180), false);
    p.arrow(QPointF(414, 204), QPointF(414, 180), false);
    p.measure(194, 314, 118, 200, p.view().value);
    gapAbove(p);
}

void drawClampingGap(Pencil& p) {
    captions(p);
    p.painter().fillRect(QRectF(194, 226, 120, 58), p.tint());
    tables(p);
    p.sheet(QRectF(4, 202, 250, 24));
    p.bar(QRectF(24, 166, 160, 36));
    p.arrow(QPointF(94, 136), QPointF(94, 160), false);
    p.bar(QRectF(344, 140, 140, 36));
    p.arrow(QPointF(414, 210), QPointF(414, 186), false);
    p.measure(194, 314, 112, 196, p.view().value);
    gapAbove(p);
}

void drawFirstSheet(Pencil& p) {
    captions(p);
    tables(p);
    p.sheet(QRectF(4, 202, 250, 24), true);
    p.bar(QRectF(24, 160, 160, 36));
    p.arrow(QPointF(60, 108), QPointF(60, 150), true);
    p.arrow(QPointF(148, 108), QPointF(148, 150), true);
    p.bar(QRectF(344, 134, 140, 36));
    p.arrow(QPointF(414, 204), QPointF(414, 180), false);
    // from above: the bar presses evenly from end to end
    p.sheet(QRectF(kAboveLeft + 6, 62, 140, 268), true);
    p.bar(QRectF(kAboveLeft + 28, 50, 64, 284));
    for (double y : {84.0, 192.0, 300.0}) {
        p.painter().setPen(Qt::NoPen);
        p.painter().setBrush(p.blue());
        p.painter().drawEllipse(QPointF(kAboveLeft + 60, y), 11, 11);
    }
    p.text(p.words().back, QRectF(kAboveLeft + 150, 60, 50, 26), false, 18);
    p.text(p.words().front, QRectF(kAboveLeft + 150, 304, 50, 26), false, 18);
}

void drawSecondSheet(Pencil& p) {
    captions(p);
    tables(p);
    p.sheet(QRectF(4, 202, 250, 24));
    p.bar(QRectF(24, 166, 160, 36));
    p.sheet(QRectF(257, 202, 247, 24), true);
    p.bar(QRectF(334, 160, 160, 36));
    p.arrow(QPointF(370, 108), QPointF(370, 150), true);
    p.arrow(QPointF(458, 108), QPointF(458, 150), true);
    p.arrow(QPointF(324, 182), QPointF(264, 182), true);
    p.sheet(QRectF(kAboveLeft + 6, 62, 92, 268));
    p.sheet(QRectF(kAboveLeft + 101, 62, 92, 268), true);
    for (double y : {96.0, 196.0, 296.0}) {
        p.arrow(QPointF(kAboveLeft + 176, y), QPointF(kAboveLeft + 118, y), true);
    }
}

void drawEdgesMeet(Pencil& p) {
    p.caption(p.words().fromEnd, 0, 400);
    // a lens on the two edges, gap and step drawn large
    const QPointF centre(374, 182);
    const double radius = 148;
    p.sheet(QRectF(4, 158, 222, 40));
    p.sheet(QRectF(524, 164, 220, 40));
    p.painter().save();
    QPainterPath lens;
    lens.addEllipse(centre, radius, radius);
    p.painter().setClipPath(lens);
    p.painter().fillPath(lens, p.theme().panel);
    p.sheet(QRectF(140, 128, 214, 110));
    p.sheet(QRectF(392, 148, 214, 110));
    p.painter().fillRect(QRectF(355, 148, 36, 90), p.tint());
    p.line(QPointF(354, 128), QPointF(470, 128), true, 2.5);
    p.line(QPointF(392, 148), QPointF(470, 148), true, 2.5);
    p.line(QPointF(354, 104), QPointF(354, 240), true);
    p.line(QPointF(392, 104), QPointF(392, 260), true);
    p.painter().restore();
    p.painter().setPen(QPen(p.ink(), 6));
    p.painter().setBrush(Qt::NoBrush);
    p.painter().drawEllipse(centre, radius, radius);
    p.line(QPointF(482, 288), QPointF(522, 326), false, 12);
    p.arrow(QPointF(306, 92), QPointF(350, 92), true);
    p.arrow(QPointF(440, 92), QPointF(396, 92), true);
    p.arrow(QPointF(456, 98), QPointF(456, 124), true, 8);
    p.arrow(QPointF(456, 182), QPointF(456, 152), true, 8);
    p.text(p.view().value, QRectF(550, 40, 194, 60), true, 36);
}

void plateFace(Pencil& p, const QRectF& r) {
    p.plate(r);
    p.box(QRectF(r.left() + 30, r.top() - 34, 34, 36), p.theme().metal, p.ink());
    p.box(QRectF(r.right() - 64, r.top() - 34, 34, 36), p.theme().metal, p.ink());
}

void drawPlateWarm(Pencil& p) {
    plateFace(p, QRectF(24, 120, 420, 170));
    for (double x : {110.0, 234.0, 358.0}) {
        p.painter().setPen(roundPen(textOnPlate(), kLine));
        QPainterPath wave(QPointF(x, 256));
        wave.cubicTo(QPointF(x - 22, 226), QPointF(x + 22, 206), QPointF(x, 160));
        p.painter().setBrush(Qt::NoBrush);
        p.painter().drawPath(wave);
    }
    p.painter().setPen(roundPen(p.blue(), 6));
    p.painter().setBrush(p.tint());
    p.painter().drawEllipse(QPointF(610, 176), 104, 104);
    p.line(QPointF(610, 176), QPointF(610, 104), true, 6);
    p.line(QPointF(610, 176), QPointF(660, 206), true, 6);
    p.text(p.view().value, QRectF(490, 292, 240, 42), true, 32);
}

void drawPlateTemperature(Pencil& p) {
    const QRectF face(24, 110, 560, 170);
    plateFace(p, face);
    for (const auto& [column, number] : p.view().places) {
        const QPointF place(face.left() + 96 + column * 184, face.center().y());
        const bool now = column == p.view().place;
        p.painter().setPen(QPen(textOnPlate(), now ? 5 : kLine));
        p.painter().setBrush(Qt::NoBrush);
        p.painter().drawEllipse(place, 26, 26);
        p.painter().setPen(textOnPlate());
        drawTabular(
            p.painter(), QRectF(place - QPointF(26, 26), QSizeF(52, 52)), Qt::AlignCenter,
            QString::number(number), 26, kLabelWeight);
    }
    // the probe stands on the face, at the place that is read; its display stays on the sheet
    const double along = face.left() + 96 + p.view().place * 184;
    const QRectF display(std::min(along + 158, kWidth - 152), 14, 150, 60);
    p.painter().setPen(roundPen(p.blueOnPlate(), 9));
    p.painter().drawLine(QPointF(along + 26, 172), QPointF(along + 166, 60));
    p.box(display, p.tint(), p.blue(), 10);
    p.text(
        p.view().value.isEmpty() ? QStringLiteral("°C") : p.view().value,
        display.adjusted(6, 4, -6, -4), true, 30);
    p.text(p.words().readHere, QRectF(24, 294, 560, 38), false);
    p.sign(QRectF(628, 130, 116, 116), Sign::PlateTemperature, true);
}

void benchWithSpring(Pencil& p, bool springSet, bool wheelSet) {
    p.box(QRectF(4, 258, 740, 34), p.theme().metal, p.ink());
    p.table(QRectF(60, 196, 150, 60));
    p.table(QRectF(276, 196, 150, 60));
    p.spring(428, 584, 224, 22, springSet);
    p.box(QRectF(586, 196, 36, 62), p.theme().metal, p.ink());
    p.line(QPointF(622, 226), QPointF(648, 226), wheelSet, 8);
    p.sign(QRectF(638, 176, 106, 106), Sign::Wheel, wheelSet);
}

void scaleRuler(Pencil& p, const QRectF& r, double at) {
    p.box(r, p.theme().raised, p.ink());
    for (int i = 0; i <= 10; ++i) {
        const double x = r.left() + 22 + i * (r.width() - 44) / 10;
        p.line(
            QPointF(x, r.top() + 4), QPointF(x, r.top() + (i % 5 == 0 ? 34 : 22)), false,
            i % 5 == 0 ? kLine : 2.5);
    }
    const double x = r.left() + 22 + at * (r.width() - 44);
    QPainterPath flag(QPointF(x, r.top() - 4));
    flag.lineTo(x - 18, r.top() - 32);
    flag.lineTo(x + 18, r.top() - 32);
    flag.closeSubpath();
    p.painter().fillPath(flag, p.blue());
    p.line(QPointF(x, r.top() - 6), QPointF(x, r.bottom()), true, 5);
}

void drawScaleZero(Pencil& p) {
    benchWithSpring(p, false, false);
    scaleRuler(p, QRectF(250, 92, 480, 56), 0);
    p.text(
        p.view().value.isEmpty() ? QStringLiteral("0") : p.view().value, QRectF(180, 8, 180, 44),
        true, 36);
}

void drawScaleTooCoarse(Pencil& p) {
    // two marks far apart, and the reading that is wanted between them
    const QRectF ruler(120, 150, 560, 90);
    p.line(ruler.bottomLeft(), ruler.bottomRight(), false, 5);
    for (const double at : {0.1, 0.9}) {
        const double x = ruler.left() + at * ruler.width();
        p.line(QPointF(x, ruler.top()), QPointF(x, ruler.bottom()), false, 5);
    }
    p.arrow(QPointF(ruler.center().x(), 100), QPointF(ruler.center().x(), 218), true);
    p.text(p.view().value, QRectF(ruler.center().x() - 120, 40, 240, 48), true, 36);
}

void drawDrag(Pencil& p) {
    benchWithSpring(p, false, true);
    // the sheet is clamped on the moving table and touches nothing
    p.sheet(QRectF(246, 172, 180, 24));
    p.bar(QRectF(296, 138, 110, 34));
    p.arrow(QPointF(236, 120), QPointF(156, 120), true);
    p.arrow(QPointF(156, 120), QPointF(236, 120), true);
    scaleRuler(p, QRectF(440, 84, 300, 56), 0.16);
    p.text(p.view().value, QRectF(440, 4, 300, 42), true, 34);
    p.text(p.words().movingTable, QRectF(240, 298, 220, 36), false);
}

// The reading that joins, marked on the scale with chalk or a clip.
void drawForce(Pencil& p) {
    benchWithSpring(p, false, false);
    scaleRuler(p, QRectF(250, 92, 480, 56), 0.7);
    p.text(p.view().value, QRectF(440, 8, 320, 44), true, 36);
}

void drawSpringOff(Pencil& p) {
    benchWithSpring(p, true, true);
    p.sheet(QRectF(60, 172, 366, 24));
    p.painter().setPen(roundPen(p.blue(), 5));
    p.painter().setBrush(Qt::NoBrush);
    p.painter().drawPath(pathOf("A691 229 58 30 120"));
    drawArrow(p.painter(), QPointF(651, 182), QPointF(640.8, 200), 14);
    p.arrow(QPointF(462, 176), QPointF(552, 176), true);
    p.text(p.view().value, QRectF(430, 60, 300, 44), true, 34);
}

void drawSound(Pencil& p) {
    // loudspeaker, waves, ear
    p.painter().setPen(roundPen(p.ink(), 5));
    p.painter().setBrush(p.theme().metal);
    p.painter().drawPath(pathOf("M70 130 L140 130 L240 50 L240 286 L140 206 L70 206 Z"));
    p.curve("A240 168 70 -42 84", true, 9);
    p.curve("A240 168 125 -42 84", true, 9);
    p.curve("A240 168 180 -42 84", true, 9);
    p.painter().setPen(roundPen(p.ink(), 6));
    p.painter().setBrush(p.theme().panel);
    p.painter().drawPath(pathOf(
        "M520 150 C520 30 690 30 690 150 C690 220 620 220 620 270 C620 322 552 320 552 270"));
    p.curve("M566 156 C566 84 644 84 644 150 C644 186 606 186 606 216", false, 6);
}

void drawFilmOff(Pencil& p) {
    p.sheet(QRectF(24, 214, 620, 74));
    p.painter().setPen(roundPen(p.blue(), 6));
    p.painter().setBrush(Qt::NoBrush);
    // protective film, peeled back from the edge
    p.painter().drawPath(
        pathOf("M26 204 L400 204 C500 204 560 160 560 104 C560 56 500 44 474 84 C456 114 480 146 "
               "512 140"));
    p.arrow(QPointF(640, 150), QPointF(590, 70), true, 18);
    p.painter().setPen(QPen(p.blue(), 3, Qt::DashLine));
    p.painter().drawLine(QPointF(430, 206), QPointF(644, 206));
}

void drawEdgesPlaned(Pencil& p) {
    p.sheet(QRectF(4, 176, 300, 90));
    p.sheet(QRectF(444, 176, 300, 90));
    p.line(QPointF(304, 170), QPointF(304, 272), true, 8);
    p.line(QPointF(444, 170), QPointF(444, 272), true, 8);
    // shavings come off both edges
    p.curve("M310 174 C314 128 350 112 356 142 C360 166 326 168 330 146", true, 5);
    p.curve("M438 174 C432 92 380 40 366 78 C358 104 396 112 400 88", true, 5);
    p.curve("M310 268 C326 312 372 316 372 292", true, 5);
    p.text(p.view().value, QRectF(20, 30, 260, 50), true, 32);
}

void drawPlateWiped(Pencil& p) {
    plateFace(p, QRectF(24, 90, 500, 190));
    p.painter().setPen(roundPen(p.blueOnPlate(), 5));
    p.painter().setBrush(p.tint());
    p.painter().drawPath(pathOf(
        "M250 130 C290 108 350 120 372 150 C392 178 386 226 354 242 C312 258 262 244 246 214 "
        "C232 186 232 146 250 130 Z"));
    p.curve("M268 160 C300 150 330 160 352 178", true);
    p.curve("M264 194 C296 184 326 196 346 214", true);
    p.painter().setPen(roundPen(p.blueOnPlate(), 5));
    drawArrow(p.painter(), QPointF(400, 186), QPointF(490, 186), 15);
    drawArrow(p.painter(), QPointF(222, 186), QPointF(70, 186), 15);
    p.sign(QRectF(588, 104, 130, 130), Sign::Damp, false);
    p.painter().setPen(roundPen(p.blue(), 8));
    p.painter().drawLine(QPointF(586, 236), QPointF(720, 102));
}

void drawShielded(Pencil& p) {
    p.table(QRectF(150, 262, 170, 58));
    p.table(QRectF(440, 262, 170, 58));
    p.sheet(QRectF(150, 226, 229, 36));
    p.sheet(QRectF(382, 226, 228, 36));
    p.painter().setPen(roundPen(p.blue(), 8));
    p.painter().setBrush(Qt::NoBrush);
    p.painter().drawPath(pathOf("M110 316 L110 150 C110 60 650 60 650 150 L650 316"));
    // the draught goes over it
    for (double y : {0.0, 34.0}) {
        p.painter().setPen(roundPen(p.theme().textSoft, kLine));
        QPainterPath wind(QPointF(4, 150 + y));
        wind.cubicTo(QPointF(60, 150 + y), QPointF(70, 40 + y), QPointF(190, 36 + y));
        if (y <= 0) {
            p.painter().drawPath(wind);
        }
    }
    p.arrow(QPointF(188, 36), QPointF(400, 22), false, 12);
    p.arrow(QPointF(4, 200), QPointF(88, 200), false, 12);
    p.arrow(QPointF(4, 256), QPointF(88, 256), false, 12);
    p.sign(QRectF(664, 20, 76, 76), Sign::Draught, false);
    p.text(p.view().value, QRectF(250, 124, 260, 60), true, 34);
}

// The made joint between the clamps; bars lifted by `lift`.
void joint(Pencil& p, double lift, double raise) {
    p.table(QRectF(64, 250, 230, 60));
    p.table(QRectF(454, 250, 230, 60));
    p.seam(QRectF(34, 214 - raise, 680, 34), 14, 11);
    if (lift >= 0) {
        p.bar(QRectF(84, 176 - lift, 190, 36), true);
        p.bar(QRectF(474, 176 - lift, 190, 36), true);
    }
}

void drawClampsEased(Pencil& p) {
    joint(p, 12, 0);
    for (double x : {130.0, 228.0, 520.0, 618.0}) {
        p.arrow(QPointF(x, 142), QPointF(x, 102), true);
    }
}

void drawBarsOpen(Pencil& p) {
    joint(p, 116, 0);
    for (double x : {178.0, 568.0}) {
        p.arrow(QPointF(x, 202), QPointF(x, 112), true, 15);
    }
}

void drawSheetOut(Pencil& p) {
    joint(p, -1, 92);
    // held on both sides and under the seam
    for (double x : {140.0, 374.0, 608.0}) {
        p.arrow(QPointF(x, x > 300 && x < 400 ? 238 : 232), QPointF(x, 178), true, 15);
    }
    p.arrow(QPointF(374, 88), QPointF(374, 22), true, 18);
}

void drawBead(Pencil& p) {
    p.seam(QRectF(4, 190, 740, 96), 34, 26);
    p.measure(306, 442, 128, 186, p.view().value);
    p.sign(QRectF(570, 40, 150, 105), Sign::Look, false);
}

void drawUnmade(Pencil& p) {
    tables(p);
    p.sheet(QRectF(4, 190, 240, 36));
    p.sheet(QRectF(264, 190, 240, 36));
    p.text(p.view().value, QRectF(540, 120, 200, 60), true, 34);
}

struct Entry {
    const char* code;
    void (*draw)(Pencil&);
};

constexpr std::array<Entry, 22> kEntries{
    {{"plate_warm", drawPlateWarm},
     {"plate_temperature", drawPlateTemperature},
     {"scale_zero", drawScaleZero},
     {"scale_readable", drawScaleTooCoarse},
     {"sound_heard", drawSound},
     {"drag", drawDrag},
     {"force", drawForce},
     {"film_off", drawFilmOff},
     {"edges_planed", drawEdgesPlaned},
     {"plate_wiped", drawPlateWiped},
     {"gap", drawGap},
     {"first_sheet", drawFirstSheet},
     {"clamping_gap", drawClampingGap},
     {"second_sheet", drawSecondSheet},
     {"edges_meet", drawEdgesMeet},
     {"shielded", drawShielded},
     {"clamps_eased", drawClampsEased},
     {"bars_open", drawBarsOpen},
     {"bars_opened", drawBarsOpen},
     {"spring_off", drawSpringOff},
     {"sheet_out", drawSheetOut},
     {"bead", drawBead}}};

} // namespace

const std::vector<QString>& drawnChecks() {
    static const std::vector<QString> codes = [] {
        std::vector<QString> all;
        for (const Entry& entry : kEntries) {
            all.push_back(QString::fromLatin1(entry.code));
        }
        return all;
    }();
    return codes;
}

CheckPicture::CheckPicture(QWidget* parent) : Part(QStringLiteral("check_picture"), parent) {}

void CheckPicture::show(const CheckDrawing& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({QCoreApplication::translate("CheckPicture", "drawing"), view.value}));
    update();
}

void CheckPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = rect();
    drawPanel(painter, box, px(14), theme().panel, Qt::transparent, 0);
    const QRectF inner = box.adjusted(px(20), px(20), -px(20), -px(20));
    const double scale = std::min(inner.width() / kWidth, inner.height() / kHeight);
    painter.translate(inner.center());
    painter.scale(scale, scale);
    painter.translate(-kWidth / 2, -kHeight / 2);
    Pencil pencil(painter, m_view, theme(), metrics().text);
    for (const Entry& entry : kEntries) {
        if (m_view.check == QLatin1String(entry.code)) {
            entry.draw(pencil);
            return;
        }
    }
    drawUnmade(pencil);
}

} // namespace seamclock
