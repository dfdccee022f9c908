#include "app/operate/hands.h"

#include "app/pages/key_ring.h"

#include <QKeyEvent>
#include <QLineEdit>

namespace seamclock {
namespace {

// A press this soon after the release of the same key is the key's repeat: measured repeats carry
// the release's own time stamp, and presses of a person lie 500 ms apart.
constexpr quint64 kRepeatMs = 50;

bool isRingKey(int key) {
    return key == Qt::Key_Tab || key == Qt::Key_Backtab || key == Qt::Key_Escape;
}

} // namespace

Hands::Hands(QObject* parent) : QObject(parent) {}

void Hands::learnPedal() {
    m_learning = true;
}

bool Hands::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::WindowDeactivate) {
        m_down.clear(); // its release may go elsewhere
        return false;
    }
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::KeyRelease) {
        return false;
    }
    // Each key event passes here for the window and again for the widget that has the focus: only
    // the first counts. Text is typed into a line where one has the focus.
    if (!watched->isWidgetType()) {
        return false;
    }
    if (m_window != nullptr && static_cast<QWidget*>(watched)->window() != m_window) {
        return false;
    }
    auto* key = static_cast<QKeyEvent*>(event);
    const bool typing = qobject_cast<QLineEdit*>(watched) != nullptr;
    if (event->type() == QEvent::KeyRelease) {
        m_down[key->key()] = false;
        m_released[key->key()] = key->timestamp();
        return !typing;
    }
    const bool held = m_down[key->key()];
    m_down[key->key()] = true;
    const auto released = m_released.find(key->key());
    const bool again =
        released != m_released.end() && key->timestamp() - released->second < kRepeatMs;
    const bool ringKey = m_ring != nullptr && isRingKey(key->key());
    if (typing && !ringKey && key->key() != Qt::Key_PageDown && key->key() != m_pedal) {
        return false;
    }
    if (key->isAutoRepeat() || held || again) {
        return true;
    }
    return pressed(*key);
}

/// Whether the ring took that key.
bool Hands::ringPressed(int key) {
    if (key == Qt::Key_Tab || key == Qt::Key_Backtab) {
        m_ring->move(key == Qt::Key_Tab ? 1 : -1);
        return true;
    }
    if (key == Qt::Key_Escape) {
        if (m_ring->on() != nullptr) {
            m_ring->leave();
        } else {
            emit escaped();
        }
        return true;
    }
    const bool press = key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter;
    return press && m_ring->press();
}

bool Hands::pressed(const QKeyEvent& key) {
    if (m_learning) {
        m_learning = false;
        m_pedal = key.key();
        emit pedalLearnt(m_pedal);
        return true;
    }
    const int which = key.key();
    if (m_ring != nullptr && which != m_pedal && ringPressed(which)) {
        return true;
    }
    const bool stepKey = which == Qt::Key_Space || which == Qt::Key_Return ||
                         which == Qt::Key_Enter || which == Qt::Key_PageDown;
    if (stepKey || (m_pedal != 0 && which == m_pedal)) {
        emit step();
        return true;
    }
    if (which == Qt::Key_F1) {
        emit help();
        return true;
    }
    if (which == Qt::Key_Backspace) {
        emit erased();
        return true;
    }
    const QString text = key.text();
    if (text.size() == 1) {
        emit typed(text.front());
        if (key.key() >= Qt::Key_1 && key.key() <= Qt::Key_4) {
            emit bench(key.key() - Qt::Key_0);
        }
        return true;
    }
    return false;
}

} // namespace seamclock
