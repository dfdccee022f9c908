#include "app/pages/key_ring.h"

#include "app/parts/press_part.h"

#include <QLineEdit>
#include <QPainter>
#include <algorithm>
#include <tuple>

namespace seamclock {

namespace {

constexpr double kRingLine = 6;
constexpr double kRound = 14;
constexpr int kPatienceMs = 5'000;

/// A field's own line is reached by its field.
bool isOfAPart(const QWidget* line) {
    for (const QWidget* up = line->parentWidget(); up != nullptr; up = up->parentWidget()) {
        if (qobject_cast<const PressPart*>(up) != nullptr) {
            return true;
        }
    }
    return false;
}

} // namespace

KeyRing::KeyRing(QWidget* window) : QWidget(window) {
    setObjectName("keyRing");
    setAttribute(Qt::WA_TransparentForMouseEvents);
    hide();
    m_patience.setParent(this);
    m_patience.setSingleShot(true);
    m_patience.setInterval(kPatienceMs);
    connect(&m_patience, &QTimer::timeout, this, &KeyRing::leave);
}

void KeyRing::setLook(const PageLook& look) {
    m_look = look;
    update();
}

bool KeyRing::takes(const QWidget* target) {
    if (target == nullptr || !target->isVisible() || !target->isEnabled()) {
        return false;
    }
    const auto* part = qobject_cast<const PressPart*>(target);
    return part == nullptr || (part->isThere() && part->takesPress());
}

std::vector<QWidget*> KeyRing::targets() const {
    std::vector<QWidget*> out;
    for (QWidget* each : parentWidget()->findChildren<QWidget*>()) {
        const bool part = qobject_cast<PressPart*>(each) != nullptr;
        const bool line = qobject_cast<QLineEdit*>(each) != nullptr && !isOfAPart(each);
        if ((part || line) && takes(each)) {
            out.push_back(each);
        }
    }
    std::stable_sort(out.begin(), out.end(), [this](const QWidget* a, const QWidget* b) {
        const QPoint one = a->mapTo(parentWidget(), QPoint());
        const QPoint other = b->mapTo(parentWidget(), QPoint());
        return std::tuple(one.y(), one.x()) < std::tuple(other.y(), other.x());
    });
    return out;
}

void KeyRing::move(int by) {
    const std::vector<QWidget*> all = targets();
    if (all.empty()) {
        leave();
        return;
    }
    const auto count = static_cast<int>(all.size());
    auto here = std::find(all.begin(), all.end(), m_on.data());
    if (here == all.end()) { // a line that has the keys is where a person is
        here = std::find(all.begin(), all.end(), window()->focusWidget());
    }
    const int at = here == all.end() ? (by > 0 ? 0 : count - 1)
                                     : (static_cast<int>(here - all.begin()) + by + count) % count;
    m_on = all[static_cast<std::size_t>(at)];
    if (qobject_cast<QLineEdit*>(m_on) != nullptr) {
        m_on->setFocus();
    } else {
        parentWidget()->setFocus();
    }
    follow();
    setVisible(true);
    raise();
    update();
    if (m_hurried) {
        m_patience.start();
    }
}

void KeyRing::follow() {
    setGeometry(QRect(m_on->mapTo(parentWidget(), QPoint()), m_on->size()));
}

bool KeyRing::press() {
    auto* part = qobject_cast<PressPart*>(m_on.data());
    if (!isVisible() || part == nullptr || !takes(part)) {
        leave();
        return false;
    }
    part->tap(); // which may take the target away, or put another in its place
    return true;
}

void KeyRing::leave() {
    m_on.clear();
    m_patience.stop();
    hide();
}

void KeyRing::look(const QString& standing, bool hurried) {
    m_hurried = hurried;
    if (standing != m_standing) {
        m_standing = standing;
        leave();
    } else if (m_on != nullptr && !takes(m_on)) {
        leave();
    } else if (m_on != nullptr) {
        follow(); // the tablet may have been turned
        if (hurried && !m_patience.isActive()) {
            m_patience.start();
        }
    }
}

void KeyRing::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double k = m_look.metrics.perUnit;
    const double line = kRingLine * k;
    painter.setBrush(Qt::NoBrush);
    // Seen on every ground: its ink with the panel's colour inside it.
    painter.setPen(QPen(m_look.theme->tone(Tone::Act).ink, line));
    const QRectF box = QRectF(rect()).adjusted(line / 2, line / 2, -line / 2, -line / 2);
    painter.drawRoundedRect(box, kRound * k, kRound * k);
    painter.setPen(QPen(m_look.theme->panel, line / 3));
    painter.drawRoundedRect(
        box.adjusted(line * 0.67, line * 0.67, -line * 0.67, -line * 0.67), kRound * k * 0.7,
        kRound * k * 0.7);
}

} // namespace seamclock
