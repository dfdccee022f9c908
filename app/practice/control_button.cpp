#include "app/practice/control_button.h"

#include "app/parts/brush.h"
#include "app/parts/mark.h"
#include "app/parts/type.h"

#include <QMouseEvent>
#include <QPainter>
#include <QTouchEvent>

namespace seamclock {

ControlButton::ControlButton(const QString& name, QWidget* parent) : PressPart(name, parent) {}

void ControlButton::show(const ControlView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(view.hidden ? QString() : spoken({view.text, view.under}));
    update();
}

/// A wheel that nobody holds does not turn; it has keys of its own, which are held.
void ControlButton::tap() {
    emit pressed();
    emit left();
}

bool ControlButton::event(QEvent* event) {
    const auto type = event->type();
    if (type == QEvent::TouchBegin || type == QEvent::TouchUpdate) {
        const auto& points = static_cast<QTouchEvent*>(event)->points();
        const bool begins = type == QEvent::TouchBegin;
        if (begins) {
            m_finger = true;
            m_from = points.isEmpty() ? 0 : points.first().position().y();
        }
        const bool done = PressPart::event(event);
        if (!begins && m_finger && !points.isEmpty()) {
            emit slid((m_from - points.first().position().y()) / metrics().perUnit);
        }
        return done;
    }
    if (type == QEvent::TouchEnd || type == QEvent::TouchCancel) {
        if (m_finger) {
            m_finger = false;
            emit left();
        }
        return PressPart::event(event);
    }
    return PressPart::event(event);
}

void ControlButton::mousePressEvent(QMouseEvent* event) {
    if (event->source() == Qt::MouseEventNotSynthesized && event->button() == Qt::LeftButton) {
        m_mouse = true;
        m_from = event->position().y();
    }
    PressPart::mousePressEvent(event);
}

void ControlButton::mouseMoveEvent(QMouseEvent* event) {
    if (m_mouse && event->source() == Qt::MouseEventNotSynthesized) {
        emit slid((m_from - event->position().y()) / metrics().perUnit);
    }
}

void ControlButton::mouseReleaseEvent(QMouseEvent* event) {
    if (m_mouse && event->button() == Qt::LeftButton) {
        m_mouse = false;
        emit left();
    }
    PressPart::mouseReleaseEvent(event);
}

void ControlButton::paintEvent(QPaintEvent*) {
    if (m_view.hidden) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& look = theme();
    const QColor ink = m_view.enabled ? look.text : look.textSoft;
    drawPanel(
        painter, rect(), px(14), m_view.enabled ? look.button : QColor(Qt::transparent),
        m_view.on        ? look.text
        : m_view.enabled ? look.edge
                         : look.hairline,
        px(m_view.on ? 5 : 2.5));
    const double inset = px(7);
    const double room = width() - 2 * inset;
    const bool withUnder = !m_view.under.isEmpty();
    const Wrapped word = wrapped(
        m_view.text, std::min(textPx(23), px(34)), px(13), room, 2, kWordWeight, height() * 0.4);
    const double words = wrappedHeight(word);
    Wrapped under;
    double below = 0;
    if (withUnder) {
        under = wrapped(
            m_view.under, std::min(textPx(19), px(22)), px(11), room, 1, kPlainWeight, px(26));
        below = wrappedHeight(under) + px(9);
    }
    const double bottom = m_view.sign ? height() - px(14) - below : (height() + words) / 2;
    painter.setPen(ink);
    drawWrapped(
        painter, QRectF(inset, bottom - words, room, words), Qt::AlignHCenter | Qt::AlignVCenter,
        word, kWordWeight);
    if (withUnder) {
        painter.setPen(m_view.enabled ? look.text : look.textSoft);
        drawWrapped(
            painter,
            QRectF(inset, height() - px(12) - wrappedHeight(under), room, wrappedHeight(under)),
            Qt::AlignHCenter | Qt::AlignVCenter, under, kPlainWeight);
    }
    const double free = bottom - words - px(18);
    if (m_view.sign && free > px(20)) {
        const double side = std::min(px(isPhaseSign(*m_view.sign) ? 66 : 50), free);
        const QRectF place((width() - side) / 2, px(10) + (free - side) / 2, side, side);
        paintSign(painter, place, *m_view.sign, ink);
    }
}

} // namespace seamclock
