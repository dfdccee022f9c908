#include "app/daylog/key_ring.h"

#include <QPainter>
#include <algorithm>
#include <tuple>

namespace seamclock {

namespace {

constexpr double kLine = 6;
constexpr double kRound = 14;

} // namespace

KeyRing::KeyRing(QWidget* window) : QWidget(window) {
    setObjectName("keyRing");
    setAttribute(Qt::WA_TransparentForMouseEvents);
    hide();
}

std::vector<PressPart*> KeyRing::targetsOf(const Page& page) {
    std::vector<PressPart*> out;
    for (PressPart* part : page.findChildren<PressPart*>()) {
        if (part->isVisible() && part->isThere() && part->isEnabled()) {
            out.push_back(part);
        }
    }
    std::stable_sort(out.begin(), out.end(), [&](const PressPart* a, const PressPart* b) {
        const QPoint one = a->mapTo(&page, QPoint());
        const QPoint other = b->mapTo(&page, QPoint());
        return std::tuple(one.y(), one.x()) < std::tuple(other.y(), other.x());
    });
    return out;
}

void KeyRing::move(Page& page, int by) {
    const std::vector<PressPart*> targets = targetsOf(page);
    if (targets.empty()) {
        leave();
        return;
    }
    const auto count = static_cast<int>(targets.size());
    const auto here = std::find(targets.begin(), targets.end(), m_on.data());
    const int at = here == targets.end()
                       ? (by > 0 ? 0 : count - 1)
                       : (static_cast<int>(here - targets.begin()) + by + count) % count;
    m_on = targets[static_cast<std::size_t>(at)];
    setGeometry(QRect(m_on->mapTo(parentWidget(), QPoint()), m_on->size()));
    setVisible(true);
    raise();
    update();
}

bool KeyRing::press() {
    if (!isVisible() || !m_on || !m_on->isVisible() || !m_on->isThere()) {
        leave();
        return false;
    }
    emit m_on->pressed();
    return true;
}

void KeyRing::leave() {
    m_on.clear();
    hide();
}

void KeyRing::paintEvent(QPaintEvent*) {
    if (!m_on) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double k = m_on->metrics().perUnit;
    const double line = kLine * k;
    painter.setBrush(Qt::NoBrush);
    // Seen on every ground: its ink with the panel's colour inside it.
    painter.setPen(QPen(m_on->theme().tone(Tone::Act).ink, line));
    const QRectF box = QRectF(rect()).adjusted(line / 2, line / 2, -line / 2, -line / 2);
    painter.drawRoundedRect(box, kRound * k, kRound * k);
    painter.setPen(QPen(m_on->theme().panel, line / 3));
    painter.drawRoundedRect(
        box.adjusted(line * 0.67, line * 0.67, -line * 0.67, -line * 0.67), kRound * k * 0.7,
        kRound * k * 0.7);
}

} // namespace seamclock
