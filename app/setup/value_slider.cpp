#include "app/setup/value_slider.h"

#include "app/parts/brush.h"
#include "app/parts/press_part.h"
#include "app/parts/type.h"

#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace seamclock {

ValueSlider::ValueSlider(const QString& name, QWidget* parent) : Part(name, parent) {
    tellScreenReaders();
}

void ValueSlider::show(const SliderView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({view.caption, view.value}));
    update();
}

double ValueSlider::ends() const {
    return px(kTargetUnits + 2);
}

QRectF ValueSlider::track() const {
    return QRectF(ends() + px(18), height() - px(34), width() - 2 * ends() - px(36), px(14));
}

void ValueSlider::moveTo(double value) {
    const double steps = std::round((value - m_view.low) / m_view.step);
    const double to = std::clamp(m_view.low + steps * m_view.step, m_view.low, m_view.high);
    if (to != m_view.now) {
        emit moved(to);
    }
}

void ValueSlider::dragTo(double x) {
    const QRectF line = track();
    const double share = std::clamp((x - line.left()) / line.width(), 0.0, 1.0);
    moveTo(m_view.low + share * (m_view.high - m_view.low));
}

void ValueSlider::mousePressEvent(QMouseEvent* event) {
    event->accept();
    const double x = event->position().x();
    if (x < ends()) {
        moveTo(m_view.now - m_view.step);
    } else if (x > width() - ends()) {
        moveTo(m_view.now + m_view.step);
    } else {
        m_dragged = true;
        dragTo(x);
    }
}

void ValueSlider::mouseMoveEvent(QMouseEvent* event) {
    event->accept();
    if (m_dragged) {
        dragTo(event->position().x());
    }
}

void ValueSlider::mouseReleaseEvent(QMouseEvent* event) {
    event->accept();
    m_dragged = false;
}

void ValueSlider::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& look = theme();
    drawPanel(painter, rect(), px(12), look.panel, look.edge, px(1.5));
    painter.setPen(QPen(look.edge, px(1.5)));
    for (const bool left : {true, false}) {
        const double edge = left ? ends() : width() - ends();
        painter.setPen(QPen(look.edge, px(1.5)));
        painter.drawLine(QPointF(edge, px(8)), QPointF(edge, height() - px(8)));
        const QRectF end(left ? 0 : edge, 0, ends(), height());
        painter.setPen(roundPen(look.text, px(5)));
        const double arm = px(14);
        const QPointF middle = end.center();
        painter.drawLine(middle - QPointF(arm, 0), middle + QPointF(arm, 0));
        if (!left) {
            painter.drawLine(middle - QPointF(0, arm), middle + QPointF(0, arm));
        }
    }
    const QRectF line = track();
    const double words = line.width();
    painter.setPen(look.textSoft);
    const double value = textWidth(m_view.value, px(26), kLabelWeight);
    const double caption = fittedSize(
        m_view.caption, std::min(textPx(20), px(24)), px(13), words - value - px(10), kPlainWeight);
    drawLine(
        painter, QRectF(line.left(), px(8), words - value - px(10), px(36)),
        Qt::AlignLeft | Qt::AlignVCenter, m_view.caption, caption, kPlainWeight);
    painter.setPen(look.text);
    drawLine(
        painter, QRectF(line.right() - value - px(1), px(8), value + px(2), px(36)),
        Qt::AlignRight | Qt::AlignVCenter, m_view.value, px(26), kLabelWeight);

    const auto at = [&](double number) {
        const double share = (number - m_view.low) / std::max(m_view.high - m_view.low, 1e-9);
        return line.left() + std::clamp(share, 0.0, 1.0) * line.width();
    };
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.hairline);
    painter.drawRoundedRect(line, px(7), px(7));
    // the plan's place, as a notch under the track
    QPainterPath notch(QPointF(at(m_view.plan), line.bottom() + px(2)));
    notch.lineTo(at(m_view.plan) - px(8), line.bottom() + px(14));
    notch.lineTo(at(m_view.plan) + px(8), line.bottom() + px(14));
    notch.closeSubpath();
    painter.fillPath(notch, look.textSoft);
    painter.setPen(QPen(look.panel, px(3)));
    painter.setBrush(look.text);
    painter.drawEllipse(QPointF(at(m_view.now), line.center().y()), px(15), px(15));
}

} // namespace seamclock
