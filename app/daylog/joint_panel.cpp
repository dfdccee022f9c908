#include "app/daylog/joint_panel.h"

#include "app/daylog/course_panel.h"
#include "app/parts/mark.h"
#include "app/parts/sign.h"
#include "app/parts/type.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>

namespace seamclock {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(JointPanel)
};

constexpr double kSide = 22;
constexpr double kValues = 98; // high

} // namespace

JointPanel::JointPanel(QWidget* parent) : Part("jointPanel", parent) {}

void JointPanel::show(const JointView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    QStringList words{view.verdict, view.reason, view.stored, view.photos,
                      view.decided, view.tested, view.about,  spokenCourse(view.course)};
    for (const JointView::Value& value : view.values) {
        words << Words::tr("%1: set %2, done %3").arg(value.item, value.set, value.done);
    }
    setAccessibleName(spoken(words));
    update();
}

void JointPanel::setFoot(double units) {
    if (units != m_foot) {
        m_foot = units;
        update();
    }
}

QRectF JointPanel::markPlace() const {
    return {px(kSide), px(18), px(54), px(54)};
}

/// Where it ends [px].
double JointPanel::paintHead(QPainter& painter) const {
    const double x = px(kSide);
    paintMark(painter, markPlace(), m_view.mark, theme().tone(m_view.tone).ink, theme());
    const double past = markPlace().right() + px(18);
    double beside = width() - past - x;
    if (m_view.remarks) {
        const double sign = px(38);
        paintSign(
            painter, QRectF(width() - x - sign, px(14), sign, sign), Sign::Note, theme().textSoft);
        beside -= sign + px(10);
    }
    painter.setPen(m_view.tone == Tone::Late ? theme().tone(Tone::Late).ink : theme().text);
    drawLine(
        painter, QRectF(past, px(6), beside, px(46)), Qt::AlignLeft | Qt::AlignVCenter,
        m_view.verdict, fittedSize(m_view.verdict, px(40), px(20), beside, kWordWeight),
        kWordWeight);
    double y = px(52);
    const auto line = [&](const QString& text, double left, double units, QFont::Weight weight,
                          const QColor& ink) {
        if (text.isEmpty()) {
            return;
        }
        const double room = width() - left - x;
        const Wrapped words = wrapped(text, px(units), px(14), room, 2, weight, px(units) * 2.4);
        const double high = std::max(wrappedHeight(words) + px(8), px(units) + px(8));
        painter.setPen(ink);
        drawWrapped(
            painter, QRectF(left, y, room, high), Qt::AlignLeft | Qt::AlignVCenter, words, weight);
        y += high;
    };
    line(m_view.reason, past, 23, kLabelWeight, theme().text);
    line(m_view.stored, past, 20, kLabelWeight, theme().tone(Tone::Soon).ink);
    line(m_view.photos, past, 20, kLabelWeight, theme().tone(Tone::Soon).ink);
    y = std::max(y, markPlace().bottom() + px(6));
    line(m_view.about, x, 20, kPlainWeight, theme().textSoft);
    if (!m_view.decided.isEmpty()) {
        const double sign = px(24);
        paintSign(painter, QRectF(x, y + px(2), sign, sign), Sign::Person, theme().text);
        line(m_view.decided, x + sign + px(10), 20, kLabelWeight, theme().text);
    }
    if (!m_view.tested.isEmpty()) {
        const double sign = px(24);
        paintSign(painter, QRectF(x, y + px(2), sign, sign), Sign::Clamp, theme().text);
        line(m_view.tested, x + sign + px(10), 20, kLabelWeight, theme().text);
    }
    return y;
}

void JointPanel::paintValues(QPainter& painter, const QRectF& box) const {
    painter.setPen(QPen(theme().hairline, px(1.8)));
    painter.drawLine(box.topLeft(), box.topRight());
    const auto count = static_cast<int>(m_view.values.size());
    const double labels = px(76);
    const double column = (box.width() - labels) / std::max(count, 1);
    const double row = (box.height() - px(8)) / 3;
    const auto cell = [&](int c, int r, const QString& text, QFont::Weight weight, double units,
                          const QColor& ink) {
        const double left = c < 0 ? box.left() : box.left() + labels + c * column;
        const double wide = (c < 0 ? labels : column) - px(8);
        painter.setPen(ink);
        const QRectF place(left, box.top() + px(5) + r * row, wide, row);
        drawTabular(
            painter, place, Qt::AlignLeft | Qt::AlignVCenter, text,
            fittedSize(text, std::min(textPx(units), row * 0.86), px(10), wide, weight), weight);
    };
    cell(-1, 1, Words::tr("set"), kPlainWeight, 20, theme().text);
    cell(-1, 2, Words::tr("done", "beside what was set"), kLabelWeight, 20, theme().text);
    for (int c = 0; c < count; ++c) {
        const JointView::Value& value = m_view.values[static_cast<std::size_t>(c)];
        cell(c, 0, value.item, kPlainWeight, 20, theme().textSoft);
        cell(c, 1, value.set, kPlainWeight, 20, theme().textSoft);
        const double left = box.left() + labels + c * column;
        const QRectF place(left, box.top() + px(5) + 2 * row, column - px(8), row);
        const QColor ink = value.out ? theme().tone(Tone::Late).ink : theme().text;
        const double mark = value.out ? row * 0.7 : 0;
        if (value.out) {
            paintMark(
                painter, QRectF(left, place.center().y() - mark / 2, mark, mark), Mark::Late, ink,
                theme());
        }
        const QRectF words = place.adjusted(mark > 0 ? mark + px(6) : 0, 0, 0, 0);
        const double size = fittedSize(
            value.done, std::min(textPx(24), row * 0.9), px(11), words.width(), kNumberWeight);
        painter.setPen(ink);
        drawTabular(
            painter, words, Qt::AlignLeft | Qt::AlignVCenter, value.done, size, kNumberWeight);
        const double gone = tabularWidth(value.done, size, kNumberWeight) + px(8);
        const QString event = QStringLiteral("#%1").arg(value.n); // that it comes from
        const double small = std::min(px(15), row * 0.6);
        if (value.n != 0 && words.width() - gone > tabularWidth(event, small, kPlainWeight)) {
            painter.setPen(theme().textSoft);
            drawTabular(
                painter, words.adjusted(gone, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, event,
                small, kPlainWeight);
        }
    }
}

void JointPanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(
        theme().kind == ThemeKind::Contrast ? QPen(theme().edge, px(2)) : QPen(Qt::NoPen));
    painter.setBrush(theme().panel);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), px(14), px(14));
    if (m_view.weld.empty()) {
        return;
    }
    const double top = paintHead(painter) + px(10);
    const double bottom = height() - px(m_foot);
    const double x = px(kSide);
    double course = bottom - top - px(10);
    // The few values make way before the drawing gets too small to be read.
    const bool values = !m_view.values.empty() && course >= px(kLeastCourse + kValues + 12);
    if (values) {
        course -= px(kValues + 10);
        paintValues(painter, QRectF(x, bottom - px(kValues + 8), width() - 2 * x, px(kValues)));
    }
    paintCourse(
        painter, QRectF(x, top, width() - 2 * x, std::min(course, px(330))), m_view.course, theme(),
        metrics());
    if (m_foot > 0) {
        painter.setPen(QPen(theme().hairline, px(1.8)));
        painter.drawLine(QPointF(x, bottom), QPointF(width() - x, bottom));
    }
}

} // namespace seamclock
