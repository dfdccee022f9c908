#include "app/pages/page.h"

#include "app/parts/type.h"

#include <QPainter>
#include <QRegularExpression>
#include <algorithm>

namespace seamclock {
namespace {

constexpr double kQuiet = 26;         // units
constexpr double kSmallestOfOne = 21; // on one line; smaller, two are read better

} // namespace

Sentence::Sentence(const QString& name, QWidget* parent) : Part(name, parent) {}

void Sentence::setText(const QString& text) {
    if (text != m_text) {
        m_text = text;
        setAccessibleName(text);
        update();
    }
}

void Sentence::setQuiet(bool quiet) {
    m_quiet = quiet;
    update();
}

void Sentence::setLate(bool late) {
    m_late = late;
    update();
}

void Sentence::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(
        m_late    ? theme().tone(Tone::Late).ink
        : m_quiet ? theme().textSoft
                  : theme().text);
    // room for descenders, of one line and of two
    const double wanted = std::min(m_quiet ? textPx(kQuiet) : textPx(42), height() * 0.82);
    const double floor = m_quiet ? px(15) : px(18);
    const int most = m_quiet ? 3 : 2;
    const QFont::Weight weight = m_quiet ? kPlainWeight : kSentenceWeight;
    static const QRegularExpression kUnit(QStringLiteral("(\\d) (mm|s|°C|N)\\b"));
    QString text = m_text; // a number stays on its unit's line
    text.replace(kUnit, QStringLiteral("\\1\u00a0\\2"));
    const Wrapped lines = wrapped(text, wanted, floor, width(), most, weight, height() * 0.8);
    drawWrapped(painter, rect(), Qt::AlignLeft | Qt::AlignVCenter, lines, weight);
}

void paintWatermark(QPainter& painter, const QRectF& box, const QString& word, const Theme& theme) {
    constexpr double kFaint = 0.09;
    QColor ink = theme.text;
    ink.setAlphaF(static_cast<float>(kFaint));
    painter.setPen(ink);
    const double size =
        fittedSize(word, box.height() / kCapHeight, 12, box.width() * 0.96, kWordWeight);
    drawLine(painter, box, Qt::AlignCenter, word, size, kWordWeight);
}

Page::Page(const QString& name, QWidget* parent)
    : QWidget(parent), m_back(keep(new SlotButton(name + "Back", this))),
      m_earlier(keep(new SlotButton(name + "Earlier", this))),
      m_stop(keep(new SlotButton(name + "Stop", this))),
      m_step(keep(new SlotButton(name + "Step", this))) {
    setObjectName(name);
    SlotView hidden;
    hidden.look = SlotView::Look::Hidden;
    m_earlier->show(hidden);
    connect(m_back, &SlotButton::pressed, this, [this] { emit slotPressed(SlotPlace::Back); });
    connect(
        m_earlier, &SlotButton::pressed, this, [this] { emit slotPressed(SlotPlace::Earlier); });
    connect(m_stop, &SlotButton::pressed, this, [this] { emit slotPressed(SlotPlace::Stop); });
    connect(m_step, &SlotButton::pressed, this, [this] { emit slotPressed(SlotPlace::Step); });
}

void Page::setLook(const PageLook& look) {
    m_look = look;
    for (Part* part : m_parts) {
        part->setLook(*look.theme, look.metrics);
    }
    lookChanged();
    place();
    update();
}

void Page::resizeEvent(QResizeEvent*) {
    place();
}

void Page::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), m_look.theme->ground);
    if (!m_look.watermark.isEmpty()) {
        const double third = height() / 3.0;
        paintWatermark(painter, QRectF(0, third, width(), third), m_look.watermark, *m_look.theme);
    }
}

QSizeF Page::units() const {
    return {width() / m_look.metrics.perUnit, height() / m_look.metrics.perUnit};
}

void Page::put(QWidget* part, const QRectF& units) {
    const double k = m_look.metrics.perUnit;
    const bool there = units.width() > 0 && units.height() > 0;
    part->setVisible(there);
    if (there) {
        part->setGeometry(
            QRectF(units.x() * k, units.y() * k, units.width() * k, units.height() * k)
                .toAlignedRect());
    }
}

QRectF Page::handed(const QRectF& box) const {
    QRectF placed = box;
    if (m_look.mirrored) {
        placed.moveLeft(units().width() - box.right());
    }
    return placed;
}

double Page::quietHeight(const QString& text, double width) const {
    constexpr double kOne = 46;
    constexpr double kTwo = 74;
    const double smallest = m_look.metrics.px(kSmallestOfOne);
    const double size =
        fittedSize(text, m_look.metrics.px(kQuiet), 1, m_look.metrics.px(width), kPlainWeight);
    return size < smallest ? kTwo : kOne;
}

void Page::placeSlots(const Frame& frame) {
    put(m_back, frame.back);
    put(m_earlier, frame.earlier);
    put(m_stop, frame.stop);
    put(m_step, frame.step);
}

SlotView hiddenSlot() {
    SlotView hidden;
    hidden.look = SlotView::Look::Hidden;
    return hidden;
}

SlotView plainSlot(const QString& text, const QString& under) {
    SlotView slot;
    slot.text = text;
    slot.under = under;
    return slot;
}

SlotView stepSlot(const QString& text, bool now) {
    SlotView slot;
    slot.text = text;
    slot.large = true;
    slot.look = now ? SlotView::Look::Act : SlotView::Look::Waiting;
    return slot;
}

} // namespace seamclock
