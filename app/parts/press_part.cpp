#include "app/parts/press_part.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QEvent>
#include <QMouseEvent>

#include "app/parts/slides.h"

namespace seamclock {

/// What a screen reader is told of a part that is pressed.
class SpokenButton : public QAccessibleWidget {
public:
    explicit SpokenButton(PressPart* part)
        : QAccessibleWidget(part, QAccessible::Button), m_part(part) {}

    QStringList actionNames() const override {
        return takesPress() ? QStringList{pressAction()} : QStringList{};
    }
    void doAction(const QString& action) override {
        if (action == pressAction() && takesPress()) {
            m_part->tap();
        }
    }
    QAccessible::State state() const override {
        QAccessible::State state = QAccessibleWidget::state();
        state.disabled = !takesPress();
        state.invisible = state.invisible || !m_part->isThere();
        state.focusable = false; // keys are the screen's
        return state;
    }

private:
    bool takesPress() const { return m_part->isEnabled() && m_part->takesPress(); }

    PressPart* m_part;
};

namespace {

QAccessibleInterface* spokenPart(const QString&, QObject* object) {
    if (QAccessibleInterface* slider = spokenSlider(object)) {
        return slider;
    }
    auto* part = qobject_cast<PressPart*>(object);
    return part == nullptr ? nullptr : new SpokenButton(part);
}

} // namespace

void tellScreenReaders() {
    static const bool told = [] {
        QAccessible::installFactory(spokenPart);
        return true;
    }();
    Q_UNUSED(told);
}

PressPart::PressPart(const QString& name, QWidget* parent) : Part(name, parent) {
    tellScreenReaders();
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
