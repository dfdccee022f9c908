#include "app/practice/time_slider.h"

#include "app/parts/brush.h"
#include "app/parts/type.h"

#include <QMouseEvent>
#include <QPainter>
#include <QTouchEvent>
#include <algorithm>

namespace seamclock {

TimeSlider::TimeSlider(QWidget* parent) : PressPart("timeSlider", parent) {}

void TimeSlider::show(const TimeSliderView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({tr("time of the weld"), view.now + QLatin1Char(' ') + view.length}));
    QStringList events;
    for (const TimeSliderView::Event& one : view.events) {
        events << one.name;
    }
    setAccessibleDescription(spoken(events));
    update();
}

QRectF TimeSlider::line() const {
    const double side = px(30);
    return {side, height() * 0.62, width() - 2 * side, px(10)};
}

void TimeSlider::moveTo(double x) {
    const QRectF at = line();
    emit moved(std::clamp((x - at.left()) / std::max(at.width(), 1.0), 0.0, 1.0));
}

bool TimeSlider::event(QEvent* event) {
    if (event->type() == QEvent::TouchBegin || event->type() == QEvent::TouchUpdate) {
        const auto& points = static_cast<QTouchEvent*>(event)->points();
        if (!points.isEmpty()) {
            moveTo(points.first().position().x());
        }
    }
    return PressPart::event(event);
}

void TimeSlider::mousePressEvent(QMouseEvent* event) {
    PressPart::mousePressEvent(event);
    if (event->source() == Qt::MouseEventNotSynthesized) {
        moveTo(event->position().x());
    }
}

void TimeSlider::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons().testFlag(Qt::LeftButton) &&
        event->source() == Qt::MouseEventNotSynthesized) {
        moveTo(event->position().x());
    }
}

void TimeSlider::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawPanel(painter, rect(), px(12), theme().panel, theme().edge, px(2));
    const QRectF at = line();
    drawPanel(painter, at, px(5), theme().raised, theme().edge, px(1.5));
    const double x = at.left() + m_view.share * at.width();
    drawPanel(
        painter, QRectF(at.left(), at.top(), x - at.left(), at.height()), px(5), theme().text,
        Qt::transparent, 0);
    // Names where there is room; every mark is there.
    const double size = std::min(textPx(18), px(20));
    const QString time = m_view.now + QStringLiteral(" ") + m_view.length;
    const double clock = tabularWidth(time, px(24), kNumberWeight) + px(20);
    double free = px(14);
    const double end = width() - clock - px(10);
    for (const TimeSliderView::Event& event : m_view.events) {
        const double place = at.left() + event.share * at.width();
        painter.setPen(QPen(theme().text, px(2.5)));
        painter.drawLine(QPointF(place, at.top() - px(8)), QPointF(place, at.bottom() + px(8)));
        const double wide = textWidth(event.name, size, kLabelWeight);
        const double left = std::max(place - wide / 2, px(12));
        if (left >= free && left + wide < end) {
            drawLine(
                painter, QRectF(left, px(8), wide, px(24)), Qt::AlignLeft | Qt::AlignVCenter,
                event.name, size, kLabelWeight);
            free = left + wide + px(12);
        }
    }
    painter.setPen(theme().text);
    drawTabular(
        painter, QRectF(width() - clock, px(8), clock - px(12), px(26)),
        Qt::AlignRight | Qt::AlignVCenter, time, px(24), kNumberWeight);
    painter.setPen(QPen(theme().ground, px(3)));
    painter.setBrush(theme().text);
    painter.drawEllipse(QPointF(x, at.center().y()), px(15), px(15));
}

} // namespace seamclock
