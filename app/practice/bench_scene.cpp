#include "app/practice/bench_scene.h"

#include "app/pages/page.h"
#include "app/parts/brush.h"
#include "app/parts/seam_paint.h"
#include "app/parts/type.h"
#include "app/text/numbers.h"

#include <QMouseEvent>
#include <QPainter>
#include <QTouchEvent>
#include <algorithm>
#include <cmath>
#include <utility>

namespace seamclock {
namespace {

constexpr double kRoomCelsius = 20;
constexpr double kPi = 3.14159265358979323846;

double sideOf(bool left) {
    return left ? -1.0 : 1.0;
}

void hatch(
    QPainter& painter, const QRectF& box, const QColor& ink, const Metrics& metrics, double step) {
    painter.save();
    painter.setClipRect(box, Qt::IntersectClip);
    painter.setPen(QPen(ink, metrics.px(2), Qt::SolidLine, Qt::RoundCap));
    for (double x = box.left() + metrics.px(8); x < box.right(); x += metrics.px(step)) {
        painter.drawLine(
            QPointF(x, box.bottom() - metrics.px(5)),
            QPointF(x + metrics.px(10), box.top() + metrics.px(6)));
    }
    painter.restore();
}

/// The seam from its end, in one scale.
class SeamEnd {
public:
    SeamEnd(
        QPainter& painter, const QRectF& box, const BenchDrawing& drawing, const Theme& theme,
        const Metrics& metrics)
        : m_painter(painter), m_box(box), m_drawing(drawing), m_theme(theme), m_metrics(metrics) {
        const double thickness = std::max(drawing.thicknessMm, 0.5);
        m_perMm = box.height() * 0.5 / thickness;
        // A bead may stand out by a third of the sheet before the picture gives way.
        const double bead = std::max({drawing.topMm, drawing.bottomMm, drawing.beadMm});
        m_perMm = std::min(m_perMm, box.height() / (thickness + 2.5 * bead + 1));
        if (bead > 0) { // a roll is twice as wide as it is high
            m_perMm = std::min(m_perMm, box.width() * 0.4 / (2.1 * bead));
        }
        if (drawing.plateInside > 0) {
            m_perMm = std::min(m_perMm, box.width() * 0.2 / drawing.plateMm);
        }
        m_half = thickness * m_perMm / 2;
        m_middle = QPointF(box.center().x(), box.top() + box.height() * 0.5);
        const double open = std::min(drawing.openMm * m_perMm, box.width() * 0.62);
        m_open = drawing.joined ? 0 : open / 2;
    }

    void paint() {
        m_painter.save();
        m_painter.setClipRect(m_box, Qt::IntersectClip);
        for (const bool left : {true, false}) {
            if (m_drawing.sheetIn[left ? 0 : 1]) {
                m_painter.save();
                if (m_drawing.joined && m_drawing.lifted && m_drawing.kinkDeg > 0) {
                    const QPointF root(m_middle.x(), low());
                    m_painter.translate(root);
                    // Each half slopes away; where the faces met they are one, upright.
                    m_painter.shear(0, sideOf(left) * std::tan(m_drawing.kinkDeg / 2 * kPi / 180));
                    m_painter.translate(-root);
                }
                paintSheet(left);
                paintBeads(left);
                m_painter.restore();
            }
        }
        paintPlate();
        if (m_drawing.joined) {
            paintJoint();
        }
        for (const bool left : {true, false}) {
            if (m_drawing.sheetIn[left ? 0 : 1]) {
                paintStrings(left);
            }
        }
        for (const bool left : {true, false}) {
            paintClamp(left);
        }
        m_painter.restore();
    }

private:
    double px(double units) const { return m_metrics.px(units); }
    double faceX(bool left) const { return m_middle.x() + sideOf(left) * m_open; }
    double top() const { return m_middle.y() - m_half; }
    double low() const { return m_middle.y() + m_half; }

    void paintSheet(bool left) {
        const double side = sideOf(left);
        const double face = faceX(left);
        // Beyond the picture, kinked as far as it may be.
        const double edge = left ? m_box.left() - px(60) : m_box.right() + px(60);
        if (m_drawing.heat && !m_drawing.heat->depthMm.empty()) {
            paintSheetHeat(
                m_painter, *m_drawing.heat, {face, edge, m_middle.y(), m_half, m_perMm}, m_metrics);
        } else {
            m_painter.fillRect(
                QRectF(QPointF(edge, top()), QPointF(face, low())).normalized(),
                temperatureColour(kRoomCelsius));
            paintMelted(face, side);
        }
        m_painter.setPen(QPen(m_theme.outline, px(2.5), Qt::SolidLine, Qt::FlatCap));
        m_painter.drawLine(QPointF(edge, top()), QPointF(face, top()));
        m_painter.drawLine(QPointF(edge, low()), QPointF(face, low()));
        const double leans = m_drawing.leanMm[left ? 0 : 1] * m_perMm;
        const double lean = std::abs(leans);
        const double front = leans < 0 ? low() : top();
        const double behind = leans < 0 ? top() : low();
        if (lean > px(0.5)) {
            // what is missing of the edge on that side is the ground's
            const double beyond = behind + (leans < 0 ? -px(2) : px(2));
            QPainterPath missing(QPointF(face - side * px(1), front));
            missing.lineTo(QPointF(face - side * px(1), beyond));
            missing.lineTo(QPointF(face + side * lean, beyond));
            missing.closeSubpath();
            m_painter.fillPath(missing, m_theme.panel);
        }
        if (!m_drawing.joined) {
            m_painter.drawLine(QPointF(face, front), QPointF(face + side * lean, behind));
        }
    }

    // What had melted and was not pressed out, cold again, as a cut across the joint shows it.
    void paintMelted(double face, double side) {
        const double wide = m_drawing.joined ? m_drawing.meltLeftMm * m_perMm : 0;
        if (wide <= 0) {
            return;
        }
        const QColor cold = temperatureColour(kRoomCelsius);
        const double end = face + side * wide;
        m_painter.fillRect(
            QRectF(QPointF(face, top()), QPointF(end, low())).normalized(),
            mixed(cold, textOnPlate(), 0.4));
        m_painter.setPen(QPen(mixed(cold, textOnPlate(), 0.6), px(2), Qt::DashLine, Qt::FlatCap));
        m_painter.drawLine(QPointF(end, top()), QPointF(end, low()));
    }

    // Melt that is too hot follows the plate in threads; torn, they hang on the edge.
    void paintStrings(bool left) {
        const bool spans = m_drawing.threadMm > 0;
        if (!spans && m_drawing.hairMm <= 0) {
            return;
        }
        const double side = sideOf(left);
        const double face = faceX(left);
        const double plate = m_middle.x() + side * m_drawing.plateMm * m_perMm / 2;
        m_painter.setBrush(Qt::NoBrush);
        const QColor melt = temperatureColour(m_drawing.skinC);
        for (const double share : {0.12, 0.29, 0.43, 0.62, 0.77, 0.9}) {
            const double y = top() + share * 2 * m_half;
            QPainterPath thread(QPointF(face, y));
            if (spans) { // it sags
                const double sag = px(4) + 0.25 * std::abs(plate - face);
                thread.quadTo(
                    QPointF((plate + face) / 2, y + sag),
                    QPointF(plate, y - px(3) + share * px(6)));
            } else {
                const double hair = m_drawing.hairMm * m_perMm * (0.6 + 0.4 * share);
                thread.quadTo(
                    QPointF(face - side * hair * 0.5, y),
                    QPointF(face - side * hair * 0.6, y + hair * 0.7));
            }
            for (const auto& [ink, wide] :
                 {std::pair(m_theme.outline, px(4)), std::pair(melt, px(2))}) {
                m_painter.setPen(QPen(ink, wide, Qt::SolidLine, Qt::RoundCap));
                m_painter.drawPath(thread);
            }
        }
    }

    void paintBeads(bool left) {
        const QColor fill = temperatureColour(m_drawing.skinC);
        for (const bool upper : {true, false}) {
            const double mm = upper ? m_drawing.topMm : m_drawing.bottomMm;
            const double high = mm * m_perMm;
            if (high > px(1)) {
                const QPointF root(faceX(left), upper ? top() : low());
                paintBeadLobe(
                    m_painter, {root, left, upper, high, fill, m_theme.outline}, m_metrics);
            }
        }
    }

    void paintPlate() {
        if (m_drawing.plateInside <= 0) {
            return;
        }
        const double width = m_drawing.plateMm * m_perMm;
        const double lowest = m_box.bottom() + px(8);
        const double foot = m_box.top() + m_drawing.plateInside * (lowest - m_box.top());
        const QRectF plate(
            m_middle.x() - width / 2, m_box.top() - px(20), width, foot - m_box.top() + px(20));
        const QColor fill = temperatureColour(m_drawing.plateC);
        drawPanel(m_painter, plate, px(4), fill, m_theme.outline, px(2.5));
        m_painter.setPen(textOnPlate());
        const double size =
            fittedSize(m_drawing.plateText, px(20), px(10), width - px(8), kWordWeight);
        if (foot > m_box.top() + px(34)) {
            drawLine(
                m_painter, QRectF(plate.left(), m_box.top() + px(6), width, px(22)),
                Qt::AlignCenter, m_drawing.plateText, size, kWordWeight);
        }
        if (m_drawing.plateDirty) { // what sticks to it
            m_painter.setPen(Qt::NoPen);
            m_painter.setBrush(mixed(fill, textOnPlate(), 0.55));
            for (const double part : {0.38, 0.52, 0.66}) {
                const double y = m_box.top() + m_box.height() * part;
                if (y < foot) {
                    m_painter.drawEllipse(QPointF(plate.left() + px(3), y), px(3), px(5));
                    m_painter.drawEllipse(QPointF(plate.right() - px(3), y + px(6)), px(3), px(4));
                }
            }
        }
    }

    // The faces are one now: a dotted line between them, and the valley between the rolls. Faces
    // that were too cold are two still, and what lay on them lies there.
    void paintJoint() {
        const QColor ink = mixed(temperatureColour(m_drawing.skinC), textOnPlate(), 0.5);
        QPen seam(ink, px(2.5), Qt::SolidLine, Qt::RoundCap);
        if (m_drawing.skinned) {
            seam = QPen(textOnPlate(), px(4), Qt::SolidLine, Qt::FlatCap);
        } else {
            seam.setDashPattern({0.2, 3});
        }
        m_painter.setPen(seam);
        const double up = std::min(m_drawing.topMm, std::max(m_drawing.valleyTopMm, -0.5));
        const double down = std::min(m_drawing.bottomMm, std::max(m_drawing.valleyBottomMm, -0.5));
        m_painter.drawLine(
            QPointF(m_middle.x(), top() - up * m_perMm),
            QPointF(m_middle.x(), low() + down * m_perMm));
        if (m_drawing.spoiled) {
            m_painter.save();
            m_painter.setPen(Qt::NoPen);
            m_painter.setBrush(textOnPlate());
            for (const double share : {0.09, 0.26, 0.41, 0.63, 0.78, 0.91}) {
                const double aside = share > 0.5 ? px(2) : -px(2);
                m_painter.drawEllipse(
                    QPointF(m_middle.x() + aside, top() + share * 2 * m_half), px(4), px(6));
            }
            m_painter.restore();
        }
        m_painter.setPen(QPen(m_theme.outline, px(3), Qt::SolidLine, Qt::RoundCap));
        for (const bool upper : {true, false}) {
            const double mm = upper ? up : down;
            const double y = upper ? top() - mm * m_perMm : low() + mm * m_perMm;
            m_painter.drawLine(QPointF(m_middle.x() - px(4), y), QPointF(m_middle.x() + px(4), y));
        }
    }

    void paintClamp(bool left) {
        if (!m_drawing.sheetIn[left ? 0 : 1] || m_drawing.lifted) {
            return;
        }
        const double lift = m_drawing.barsOpen ? px(16) : m_drawing.clampsEased ? px(6) : 0;
        const double room = std::abs((left ? m_box.left() : m_box.right()) - faceX(left));
        const double out = std::min(1.4 * m_drawing.thicknessMm * m_perMm, room - px(30));
        const double inner = faceX(left) + sideOf(left) * std::max(out, room * 0.4);
        const double outer = left ? m_box.left() - px(20) : m_box.right() + px(20);
        for (const bool upper : {true, false}) {
            const double near = upper ? top() - px(2) - lift : low() + px(2);
            const double far = upper ? m_box.top() - px(20) : m_box.bottom() + px(20);
            const QRectF clamp = QRectF(QPointF(outer, far), QPointF(inner, near)).normalized();
            drawPanel(m_painter, clamp, px(6), m_theme.metal, m_theme.metalEdge, px(2));
            QRectF lines = clamp.intersected(m_box);
            lines.setTop(std::max(lines.top(), lines.bottom() - px(22)));
            if (!upper) {
                lines = QRectF(lines.left(), clamp.top(), lines.width(), px(22));
            }
            hatch(m_painter, lines.adjusted(0, 0, -px(10), 0), m_theme.metalEdge, m_metrics, 18);
        }
    }

    QPainter& m_painter;
    const QRectF m_box;
    const BenchDrawing& m_drawing;
    const Theme& m_theme;
    const Metrics& m_metrics;
    double m_perMm = 1;
    double m_half = 0;
    double m_open = 0; // half of it
    QPointF m_middle{};
};

/// The whole bench from its end: fixed table left, moving table right, spring and wheel.
class WholeBench {
public:
    WholeBench(
        QPainter& painter, const QRectF& box, const BenchDrawing& drawing, const Theme& theme,
        const Metrics& metrics)
        : m_painter(painter), m_box(box), m_drawing(drawing), m_theme(theme), m_metrics(metrics) {
        m_unit = box.height() / 176; // the drawing is made for so many units of height
        m_wide = box.width() / m_unit;
        m_bedTop = y(150);
        m_table = std::clamp((m_wide - 480) / 2, 110.0, 320.0);
        m_fixed = 60;
        // The gap is drawn larger than it is against the tables, and has an end.
        m_gap = std::min(10 + std::max(m_drawing.gapMm, 0.0) * 1.6, 96.0);
    }

    void paint() {
        m_painter.save();
        m_painter.setClipRect(m_box, Qt::IntersectClip);
        m_painter.setPen(QPen(m_theme.metalEdge, px(2)));
        const QRectF bed(x(14), m_bedTop, (m_wide - 28) * m_unit, 24 * m_unit);
        drawPanel(m_painter, bed, px(4), m_theme.metal, m_theme.metalEdge, px(2));
        hatch(m_painter, bed, m_theme.metalEdge, m_metrics, 30);
        block(24, 98, 30, 52); // what the fixed table stands against
        const double moving = m_fixed + m_table + m_gap;
        block(m_fixed, 104, m_table, 46);
        block(moving, 104, m_table, 46);
        paintPlate(moving);
        paintSheets(moving);
        clamp(m_fixed + 12, 0);
        clamp(moving + 12, 1);
        paintDrive(moving + m_table);
        paintRibbon();
        m_painter.restore();
    }

private:
    double px(double units) const { return m_metrics.px(units); }
    double x(double units) const { return m_box.left() + units * m_unit; }
    double y(double units) const { return m_box.top() + units * m_unit; }

    void block(double left, double topY, double width, double height) {
        drawPanel(
            m_painter, QRectF(x(left), y(topY), width * m_unit, height * m_unit), px(4),
            m_theme.metal, m_theme.metalEdge, px(2));
    }

    void paintPlate(double moving) {
        const double middle = (m_fixed + m_table + moving) / 2;
        const double wide = 12;
        const double inside = m_drawing.plateInside;
        const double foot = 44 + inside * (118 - 44);
        const QRectF plate(x(middle - wide / 2), y(foot - 86), wide * m_unit, 86 * m_unit);
        drawPanel(
            m_painter, plate, px(3), temperatureColour(m_drawing.plateC), m_theme.outline, px(2));
    }

    void paintSheets(double moving) {
        const double lift = m_drawing.lifted ? 26 : 0;
        const double thick = 22;
        const double topY = 82 - lift;
        const double open = m_drawing.joined ? 0 : std::min(m_drawing.openMm * 1.6, 96.0);
        const double middle = (m_fixed + m_table + moving) / 2;
        const bool hot = m_drawing.heat && !m_drawing.heat->celsius.empty();
        const QColor cold = temperatureColour(kRoomCelsius);
        const QColor warm = temperatureColour(m_drawing.skinC);
        for (const bool left : {true, false}) {
            if (!m_drawing.sheetIn[left ? 0 : 1]) {
                continue;
            }
            const double face = middle + sideOf(left) * open / 2;
            const double end = left ? m_fixed - 14 : moving + m_table + 10;
            m_painter.save();
            if (m_drawing.kinkDeg > 0 && (m_drawing.lifted || m_drawing.barsOpen)) {
                m_painter.translate(x(middle), y(topY + thick));
                m_painter.rotate(sideOf(left) * m_drawing.kinkDeg / 2);
                m_painter.translate(-x(middle), -y(topY + thick));
            }
            const QRectF sheet =
                QRectF(QPointF(x(end), y(topY)), QPointF(x(face), y(topY + thick))).normalized();
            if (hot) {
                QLinearGradient colours(x(face), 0, x(face + sideOf(left) * 46), 0);
                colours.setStops({{0.0, warm}, {0.35, mixed(warm, cold, 0.5)}, {1.0, cold}});
                m_painter.fillRect(sheet, colours);
            } else {
                m_painter.fillRect(sheet, cold);
            }
            m_painter.setPen(QPen(m_theme.outline, px(2)));
            m_painter.setBrush(Qt::NoBrush);
            m_painter.drawRect(sheet);
            for (const bool upper : {true, false}) {
                const double mm = upper ? m_drawing.topMm : m_drawing.bottomMm;
                const double high = mm / std::max(m_drawing.thicknessMm, 0.5) * thick * m_unit;
                if (high > px(1)) {
                    const QPointF root(x(face), y(upper ? topY : topY + thick));
                    paintBeadLobe(
                        m_painter, {root, left, upper, high, warm, m_theme.outline}, m_metrics);
                }
            }
            m_painter.restore();
        }
    }

    /// On a post at the fixed end: it hangs straight in still air, and a draught lifts it.
    void paintRibbon() {
        const double post = 34;
        const double arm = post + 12;
        const double topY = 22;
        m_painter.setPen(QPen(m_theme.metalEdge, px(4), Qt::SolidLine, Qt::RoundCap));
        m_painter.drawLine(QPointF(x(post), y(98)), QPointF(x(post), y(topY)));
        m_painter.drawLine(QPointF(x(post), y(topY)), QPointF(x(arm), y(topY)));
        m_painter.setPen(QPen(m_theme.text, px(4.5), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        m_painter.setBrush(Qt::NoBrush);
        // Bent from hanging at the knot to its full lift at the end.
        const int parts = 6;
        const double length = 50.0 / parts;
        QPointF at(arm, topY);
        QPainterPath ribbon(QPointF(x(at.x()), y(at.y())));
        for (int i = 1; i <= parts; ++i) {
            const double share = std::sqrt(static_cast<double>(i) / parts);
            const double angle = m_drawing.ribbonDeg * share * kPi / 180;
            at += QPointF(length * std::sin(angle), length * std::cos(angle));
            ribbon.lineTo(x(at.x()), y(at.y()));
        }
        m_painter.drawPath(ribbon);
    }

    void clamp(double left, int sheet) {
        const bool in = m_drawing.sheetIn[sheet] && !m_drawing.lifted;
        const double lift = !in || m_drawing.barsOpen ? 16 : m_drawing.clampsEased ? 7 : 0;
        const double width = m_table - 36;
        const double bar = 82 - 24 - lift;
        block(left, bar, width, 24);
        const double spindle = left + width / 2;
        m_painter.setPen(QPen(m_theme.metalEdge, px(5)));
        m_painter.drawLine(QPointF(x(spindle), y(bar)), QPointF(x(spindle), y(bar - 16)));
        block(spindle - 20, bar - 24, 40, 9);
    }

    void paintDrive(double from) {
        const double wheel = m_wide - 52;
        const double nut = wheel - 62;
        const double axis = 122;
        // The spring between table and nut: as many turns, closer when it is pressed.
        QPainterPath spring(QPointF(x(from), y(axis)));
        const double start = from + 6;
        const double end = std::max(nut - 4 - std::max(0.0, 8 - m_drawing.springMm), start + 24);
        const int turns = 9;
        spring.lineTo(x(start), y(axis));
        for (int i = 0; i < turns; ++i) {
            const double at = start + (end - start) * (i + 0.5) / turns;
            spring.lineTo(x(at), y(axis + (i % 2 == 0 ? -15 : 15)));
        }
        spring.lineTo(x(end), y(axis));
        spring.lineTo(x(nut), y(axis));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(m_theme.text, px(2.5), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        m_painter.drawPath(spring);
        block(nut, 104, 22, 46);
        m_painter.setPen(QPen(m_theme.metalEdge, px(6)));
        m_painter.drawLine(QPointF(x(nut + 22), y(axis)), QPointF(x(wheel), y(axis)));
        // The wheel turns a sixth for each millimetre.
        const double radius = 36 * m_unit;
        m_painter.save();
        m_painter.translate(x(wheel), y(axis));
        m_painter.rotate(m_drawing.wheelMm * 60);
        m_painter.setPen(QPen(m_theme.text, px(3.5), Qt::SolidLine, Qt::RoundCap));
        m_painter.setBrush(m_theme.panel);
        m_painter.drawEllipse(QPointF(0, 0), radius, radius);
        for (int spoke = 0; spoke < 3; ++spoke) {
            m_painter.rotate(60);
            m_painter.drawLine(QPointF(-radius, 0), QPointF(radius, 0));
        }
        m_painter.setBrush(m_theme.text);
        m_painter.drawEllipse(QPointF(0, 0), px(6), px(6));
        m_painter.drawEllipse(QPointF(radius * 0.72, 0), px(5), px(5)); // its handle
        m_painter.restore();
        if (m_drawing.wheel == WheelHold::Locked) {
            const double side = 30 * m_unit;
            const QRectF place(x(wheel) - radius - side * 0.9, y(150) - side * 0.2, side, side);
            drawPanel(
                m_painter, place.adjusted(-px(3), -px(3), px(3), px(3)), px(6), m_theme.panel,
                m_theme.text, px(2));
            paintSign(m_painter, place, Sign::Lock, m_theme.text);
        }
    }

    QPainter& m_painter;
    const QRectF m_box;
    const BenchDrawing& m_drawing;
    const Theme& m_theme;
    const Metrics& m_metrics;
    double m_unit = 1;
    double m_wide = 1; // in the drawing's units
    double m_bedTop = 0;
    double m_table = 0;
    double m_fixed = 0;
    double m_gap = 0;
};

} // namespace

void paintSeamFromEnd(
    QPainter& painter, const QRectF& box, const BenchDrawing& drawing, const Theme& theme,
    const Metrics& metrics) {
    SeamEnd(painter, box, drawing, theme, metrics).paint();
}

BenchScene::BenchScene(QWidget* parent) : Part("benchScene", parent) {}

void BenchScene::show(const BenchDrawing& drawing) {
    if (drawing == m_drawing) {
        return;
    }
    m_drawing = drawing;
    setAccessibleName(spoken(
        {drawing.placeText, drawing.note, drawing.plateText,
         drawing.ribbonDeg > 0 ? tr("the ribbon is lifted") : QString()}));
    update();
}

void BenchScene::setPlaces(const QRectF& seam, const QRectF& bench) {
    if (bench != m_bench) {
        m_ground = QPixmap();
    }
    m_seam = seam;
    m_bench = bench;
    update();
}

void BenchScene::setWatermark(const QString& word) {
    m_word = word;
    m_ground = QPixmap();
}

void BenchScene::paintGround(QPainter& painter) {
    if (m_ground.isNull()) {
        const double ratio = devicePixelRatioF();
        m_ground = QPixmap(size() * ratio);
        m_ground.setDevicePixelRatio(ratio);
        m_ground.fill(Qt::transparent);
        QPainter ground(&m_ground);
        ground.setRenderHint(QPainter::Antialiasing);
        const bool contrast = theme().kind == ThemeKind::Contrast;
        drawPanel(
            ground, rect(), px(14), theme().panel, contrast ? theme().edge : Qt::transparent,
            contrast ? px(2) : 0);
        // through the bench, where nothing stands before it
        const double high = std::min(px(m_bench.height()) * 0.9, height() * 0.34);
        paintWatermark(
            ground,
            QRectF(px(8), px(m_bench.center().y()) - high / 2 - px(8), width() - px(16), high),
            m_word, theme());
    }
    painter.drawPixmap(0, 0, m_ground);
}

void BenchScene::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paintGround(painter);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto pixels = [this](const QRectF& units) {
        return QRectF(px(units.x()), px(units.y()), px(units.width()), px(units.height()));
    };
    WholeBench(painter, pixels(m_bench), m_drawing, theme(), metrics()).paint();
    const QRectF seam = pixels(m_seam);
    QPainterPath rounded;
    rounded.addRoundedRect(seam, px(10), px(10));
    painter.save();
    painter.setClipPath(rounded);
    painter.fillRect(seam, theme().ground);
    QRectF picture = seam;
    picture.setBottom(seam.bottom() - px(24));
    paintSeamFromEnd(painter, picture, m_drawing, theme(), metrics());
    painter.restore();
    const QRectF words(seam.left() + px(8), seam.bottom() - px(24), seam.width() - px(16), px(24));
    painter.fillRect(words.adjusted(-px(4), 0, px(4), 0), theme().ground);
    const QString text = m_drawing.note.isEmpty()
                             ? m_drawing.placeText
                             : m_drawing.placeText + QStringLiteral(": ") + m_drawing.note;
    painter.setPen(QPen(theme().edge, px(1.5)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(seam, px(10), px(10));
    painter.setPen(theme().text);
    const double size =
        fittedSize(text, std::min(textPx(19), px(21)), px(11), words.width(), kLabelWeight);
    drawTabular(painter, words, Qt::AlignLeft | Qt::AlignVCenter, text, size, kLabelWeight);
}

void BenchScene::mousePressEvent(QMouseEvent* event) {
    const QPointF at = event->position() / metrics().perUnit;
    const double reach = m_seam.width() * 0.3;
    if (m_seam.contains(at) && std::abs(at.x() - m_seam.center().x()) < reach) {
        event->accept();
        emit edgeTouched(at.x() < m_seam.center().x() ? 0 : 1);
    }
}

// ---- the scale's front

ScaleFront::ScaleFront(QWidget* parent) : Part("scaleFront", parent) {}

void ScaleFront::show(const BenchDrawing& drawing) {
    if (m_scale == drawing.scale && m_reading == drawing.reading && m_text == drawing.readingText) {
        return;
    }
    m_scale = drawing.scale;
    m_reading = drawing.reading;
    m_text = drawing.readingText;
    setAccessibleName(m_text);
    update();
}

void ScaleFront::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double title = px(34);
    painter.setPen(theme().text);
    const double size =
        fittedSize(m_text, std::min(textPx(26), px(30)), px(14), width(), kWordWeight);
    drawTabular(
        painter, QRectF(0, 0, width(), title), Qt::AlignLeft | Qt::AlignVCenter, m_text, size,
        kWordWeight);
    const double labels = px(28);
    const QRectF box(0, title + px(4), width(), height() - title - labels - px(8));
    drawPanel(painter, box, px(6), theme().raised, theme().edge, px(2));
    const double low = m_scale.zero - 2 * m_scale.division;
    const double high = std::max(m_scale.max, low + 4 * m_scale.division);
    const double margin = px(14);
    const auto at = [&](double reading) {
        const double share = std::clamp((reading - low) / (high - low), 0.0, 1.0);
        return box.left() + margin + share * (box.width() - 2 * margin);
    };
    const bool band = m_scale.hasScale && !m_scale.free && m_scale.high > m_scale.low;
    if (band) { // tint and bracket, as on the operator's scale
        const QColor ink = theme().tone(Tone::Normal).ink;
        QColor tint = ink;
        tint.setAlphaF(theme().kind == ThemeKind::Contrast ? 0.25F : 0.32F);
        const QRectF allowed(
            QPointF(at(m_scale.low), box.top() + px(2)),
            QPointF(std::max(at(m_scale.high), at(m_scale.low) + px(3)), box.bottom() - px(2)));
        painter.fillRect(allowed, tint);
        painter.setPen(QPen(ink, px(3.5)));
        const double y = box.bottom() + px(1);
        painter.drawLine(QPointF(allowed.left(), y), QPointF(allowed.right(), y));
        painter.drawLine(QPointF(allowed.left(), y - px(7)), QPointF(allowed.left(), y + px(6)));
        painter.drawLine(QPointF(allowed.right(), y - px(7)), QPointF(allowed.right(), y + px(6)));
    }
    // Lines as close as can be told apart, figures as close as fit.
    const double perUnit = (at(high) - at(low)) / (high - low);
    double line = std::max(m_scale.division, 1e-6);
    for (int i = 0; i < 6 && line * perUnit < px(5); ++i) {
        line *= i % 2 == 0 ? 2 : 5;
    }
    double figure = line;
    for (const double step : {1.0, 2.0, 4.0, 10.0, 20.0, 40.0, 100.0, 200.0}) {
        figure = line * step;
        const int decimals = figure < 1 ? 1 : 0;
        const QString widest = numberText(high, decimals);
        if (figure * perUnit > tabularWidth(widest, px(20), kLabelWeight) + px(14)) {
            break;
        }
    }
    painter.setPen(QPen(theme().text, px(2)));
    const auto first = static_cast<int>(std::ceil(low / line));
    const auto last = static_cast<int>(std::floor(high / line));
    for (int i = first; i <= last; ++i) {
        const double reading = i * line;
        const bool named = std::abs(std::remainder(reading, figure)) < line / 4;
        const double x = at(reading);
        painter.setPen(QPen(theme().text, px(named ? 2.5 : 1.5)));
        painter.drawLine(
            QPointF(x, box.top() + px(2)),
            QPointF(x, box.top() + box.height() * (named ? 0.5 : 0.3)));
        if (named) {
            const int decimals = figure < 1 ? 1 : 0;
            const QString text = numberText(reading, decimals);
            const double wide = tabularWidth(text, px(20), kLabelWeight);
            const double left = std::clamp(x - wide / 2, 0.0, width() - wide);
            painter.setPen(theme().text);
            drawTabular(
                painter, QRectF(left, box.bottom() + px(8), wide, labels - px(8)),
                Qt::AlignLeft | Qt::AlignVCenter, text, px(20), kLabelWeight);
        }
    }
    if (m_scale.follow) {
        const double x = at(*m_scale.follow);
        QPainterPath mark(QPointF(x, box.bottom() - box.height() * 0.45));
        mark.lineTo(x + px(12), box.bottom() - px(1));
        mark.lineTo(x - px(12), box.bottom() - px(1));
        mark.closeSubpath();
        painter.fillPath(mark, theme().tone(Tone::Act).ink);
    }
    // The reading: a thick line, with a rim so that it is seen on tint and mark.
    const double x = at(m_reading);
    painter.setPen(QPen(theme().raised, px(10), Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(x, box.top() - px(3)), QPointF(x, box.bottom() - px(3)));
    painter.setPen(QPen(theme().text, px(6), Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(x, box.top() - px(4)), QPointF(x, box.bottom() - px(2)));
}

// ---- along the seam

SeamRow::SeamRow(QWidget* parent) : PressPart("seamRow", parent) {}

void SeamRow::show(const BenchDrawing& drawing) {
    if (m_places == drawing.places && m_beadMm == drawing.beadMm && m_place == drawing.place &&
        m_text == drawing.seamText) {
        return;
    }
    m_places = drawing.places;
    m_beadMm = drawing.beadMm;
    m_place = drawing.place;
    m_text = drawing.seamText;
    setAccessibleName(tr("along the seam: %1").arg(m_text));
    update();
}

void SeamRow::chooseAt(double x) {
    if (m_places.empty() || width() <= 0) {
        return;
    }
    const auto count = static_cast<int>(m_places.size());
    emit placeChosen(std::clamp(static_cast<int>(x / width() * count), 0, count - 1));
}

void SeamRow::mousePressEvent(QMouseEvent* event) {
    PressPart::mousePressEvent(event);
    if (event->source() == Qt::MouseEventNotSynthesized) {
        chooseAt(event->position().x());
    }
}

bool SeamRow::event(QEvent* event) {
    if (event->type() == QEvent::TouchBegin) {
        const auto* touch = static_cast<QTouchEvent*>(event);
        if (!touch->points().isEmpty()) {
            chooseAt(touch->points().first().position().x());
        }
    }
    return PressPart::event(event);
}

void SeamRow::paintEvent(QPaintEvent*) {
    if (m_places.empty()) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawPanel(painter, rect(), px(10), theme().ground, theme().edge, px(1.5));
    const double words = px(24);
    painter.setPen(theme().text);
    const double ends = px(62);
    const QString front = tr("front");
    const QString back = tr("back");
    const double side = std::min(
        fittedSize(front, px(18), px(10), ends, kPlainWeight),
        fittedSize(back, px(18), px(10), ends, kPlainWeight));
    painter.setPen(theme().textSoft);
    const QRectF head(px(10), px(3), width() - px(20), words);
    drawLine(painter, head, Qt::AlignLeft | Qt::AlignVCenter, front, side, kPlainWeight);
    drawLine(painter, head, Qt::AlignRight | Qt::AlignVCenter, back, side, kPlainWeight);
    painter.setPen(theme().text);
    const QRectF between = head.adjusted(ends, 0, -ends, 0);
    const double size =
        fittedSize(m_text, std::min(textPx(18), px(21)), px(10), between.width(), kLabelWeight);
    drawTabular(painter, between, Qt::AlignCenter, m_text, size, kLabelWeight);

    const QRectF box(px(10), words + px(4), width() - px(20), height() - words - px(10));
    const auto count = static_cast<double>(m_places.size());
    const double wide = box.width() / count;
    const double middle = box.center().y();
    const double thick = px(8);
    const double room = box.height() / 2 - thick / 2 - px(1);
    double most = std::max(1.7 * m_beadMm, 0.5);
    for (const PlaceDrawing& place : m_places) {
        most = std::max({most, place.topMm, place.bottomMm});
    }
    const double perMm = room / most;
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        const PlaceDrawing& place = m_places[i];
        const double left = box.left() + wide * static_cast<double>(i);
        const QRectF cell(left + px(2), box.top(), wide - px(4), box.height());
        if (static_cast<int>(i) == m_place) {
            painter.setPen(QPen(theme().text, px(2)));
            painter.setBrush(theme().raised);
            painter.drawRoundedRect(cell.adjusted(0, -px(1), 0, px(1)), px(5), px(5));
        }
        const double apart = std::min(place.gapMm * perMm, room);
        const QColor sheet = place.joined || place.touches ? theme().outline : theme().metalEdge;
        painter.fillRect(
            QRectF(
                cell.left() + px(3), middle - thick / 2, cell.width() - px(6), thick / 2 - px(1)),
            sheet);
        painter.fillRect(
            QRectF(
                cell.left() + px(3), middle + std::min(apart, room), cell.width() - px(6),
                thick / 2 - px(1)),
            sheet);
        const QColor melt = temperatureColour(200);
        const auto lobe = [&](double mm, bool upper) {
            const double high = mm * perMm;
            if (high < px(0.8)) {
                return;
            }
            const double y = upper ? middle - thick / 2 - high : middle + thick / 2;
            painter.setPen(QPen(theme().outline, px(1.5)));
            painter.setBrush(melt);
            painter.drawRoundedRect(
                QRectF(cell.left() + px(6), y, cell.width() - px(12), high),
                std::min(px(8), high / 2), std::min(px(8), high / 2));
        };
        lobe(place.topMm, true);
        lobe(place.bottomMm, false);
        if (place.dirty) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(theme().text);
            for (const double part : {0.3, 0.5, 0.7}) {
                painter.drawEllipse(
                    QPointF(cell.left() + cell.width() * part, middle), px(2.5), px(2.5));
            }
        }
    }
    if (m_beadMm > 0) { // to reach, above and below
        QPen dashes(theme().text, px(2), Qt::SolidLine, Qt::FlatCap);
        dashes.setDashPattern({3, 3});
        painter.setPen(dashes);
        for (const double up : {-1.0, 1.0}) {
            const double y = middle + up * (thick / 2 + m_beadMm * perMm);
            painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
        }
    }
}

} // namespace seamclock
