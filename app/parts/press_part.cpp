#include "app/parts/press_part.h"

#include <QEvent>
#include <QMouseEvent>

namespace seamclock {

PressPart::PressPart(const QString& name, QWidget* parent) : Part(name, parent) {
    setAttribute(Qt::WA_AcceptTouchEvents);
}

bool PressPart::event(QEvent* event) {
    if (event->type() == QEvent::TouchBegin) {
        // a second finger on the same tile comes as TouchUpdate: one touch, one press
        m_touched = true;
        event->accept();
        if (isEnabled() && takesPress()) {
            emit pressed();
        }
        return true;
    }
    if (event->type() == QEvent::TouchUpdate || event->type() == QEvent::TouchEnd ||
        event->type() == QEvent::TouchCancel) {
        event->accept();
        return true;
    }
    return Part::event(event);
}

void PressPart::mousePressEvent(QMouseEvent* event) {
    event->accept();
    const bool madeFromTouch = m_touched && event->source() != Qt::MouseEventNotSynthesized;
    if (event->button() == Qt::LeftButton && !madeFromTouch && takesPress()) {
        emit pressed();
    }
}

void PressPart::mouseDoubleClickEvent(QMouseEvent* event) {
    // the second press of two quick ones is a press like any other
    mousePressEvent(event);
}

} // namespace seamclock
