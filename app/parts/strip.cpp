#include "app/parts/strip.h"

#include <algorithm>

#include <QPainter>

#include "app/parts/brush.h"
#include "app/parts/type.h"

namespace seamclock {

namespace {

constexpr double kNarrow = 260;  // below, the sign goes
constexpr double kStacked = 200; // below, the words have no room beside letter and mark

} // namespace

StripCell::StripCell(const QString& name, QWidget* parent) : PressPart(name, parent) {}

void StripCell::show(const StripCellView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({view.letter, view.phase, view.time}));
    update();
}

bool StripCell::isStacked() const {
    return width() < px(kStacked);
}

QRectF StripCell::markPlace() const {
    if (isStacked()) {
        const double side = px(28);
        return {width() - px(12) - side, px(8), side, side};
    }
    const bool narrow = width() < px(kNarrow);
    const double letter =
        std::max(textWidth(m_view.letter, px(narrow ? 40 : 48), kWordWeight), px(narrow ? 28 : 34));
    const double side = px(narrow ? 34 : 42);
    return {px(narrow ? 20 : 30) + letter, px(47) - side / 2, side, side};
}

void StripCell::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = rect();
    const Theme& look = theme();
    const bool plain = m_view.plain;
    const QColor white = changeoverColours().on;
    const QColor text = plain ? white : look.text;
    const QColor soft = plain ? white : look.textSoft;
    QColor fill = m_view.selected ? look.panel : look.ground;
    if (plain) {
        // over the field: dark enough for its words whichever blue or red is below
        fill = QColor(0, 0, 0, 0);
    }
    const QColor edge = plain ? white : (m_view.selected ? look.text : look.edge);
    drawPanel(painter, box, px(14), fill, edge, px(m_view.selected ? 5 : 2));

    if (isStacked()) {
        paintStacked(painter, text, soft);
        return;
    }
    const bool narrow = box.width() < px(kNarrow);
    const double middle = box.top() + px(47);
    const double letterLeft = px(narrow ? 14 : 20);
    const double letterSize = px(narrow ? 40 : 48);
    painter.setPen(text);
    drawLine(
        painter, QRectF(letterLeft, middle - px(30), px(60), px(60)),
        Qt::AlignLeft | Qt::AlignVCenter, m_view.letter, letterSize, kWordWeight);
    const QColor tone = look.tone(m_view.tone).ink;
    const QRectF mark = markPlace();
    paintMark(painter, mark, m_view.mark, plain ? white : tone, look, m_view.fraction);

    const double wordsLeft = mark.right() + px(narrow ? 10 : 14);
    const double wordsRight = box.right() - px(narrow ? 8 : 14);
    const bool enlarged = metrics().text > 1.25;
    double signRoom = 0;
    if (m_view.sign && !narrow && !enlarged) {
        const double width = px(50);
        const QRectF place(box.right() - px(22) - width, px(45), width, px(36));
        paintSign(painter, place, *m_view.sign, plain ? white : soft);
        signRoom = width + px(16);
    }
    if (m_view.time.isEmpty()) {
        const double room = wordsRight - signRoom - wordsLeft;
        const Wrapped phase =
            wrapped(m_view.phase, textPx(30), px(15), room, 3, kPlainWeight, px(66));
        painter.setPen(soft);
        drawWrapped(
            painter, QRectF(wordsLeft, middle - px(33), room, px(66)),
            Qt::AlignLeft | Qt::AlignVCenter, phase, kPlainWeight);
        return;
    }
    const Wrapped phase =
        wrapped(m_view.phase, textPx(24), px(13), wordsRight - wordsLeft, 1, kLabelWeight, px(24));
    painter.setPen(text);
    drawWrapped(
        painter, QRectF(wordsLeft, px(14), wordsRight - wordsLeft, px(28)),
        Qt::AlignLeft | Qt::AlignVCenter, phase, kLabelWeight);
    const double room = wordsRight - signRoom - wordsLeft;
    double size = px(38);
    while (size > px(18) && tabularWidth(m_view.time, size, kNumberWeight) > room) {
        size -= 1;
    }
    drawTabular(
        painter, QRectF(wordsLeft, px(40), room, px(37)), Qt::AlignLeft | Qt::AlignBottom,
        m_view.time, size, kNumberWeight);
}

void StripCell::paintStacked(QPainter& painter, const QColor& text, const QColor& soft) const {
    const double left = px(10);
    const double room = width() - 2 * left;
    painter.setPen(text);
    drawLine(
        painter, QRectF(px(12), px(4), room / 2, px(36)), Qt::AlignLeft | Qt::AlignVCenter,
        m_view.letter, px(34), kWordWeight);
    const QColor tone = m_view.plain ? text : theme().tone(m_view.tone).ink;
    paintMark(painter, markPlace(), m_view.mark, tone, theme(), m_view.fraction);
    if (m_view.time.isEmpty()) {
        const Wrapped phase =
            wrapped(m_view.phase, textPx(22), px(11), room, 2, kPlainWeight, px(42));
        painter.setPen(soft);
        drawWrapped(
            painter, QRectF(left, px(42), room, px(42)), Qt::AlignLeft | Qt::AlignVCenter, phase,
            kPlainWeight);
        return;
    }
    const Wrapped phase = wrapped(m_view.phase, px(18), px(11), room, 1, kLabelWeight, px(18));
    drawWrapped(
        painter, QRectF(left, px(40), room, px(20)), Qt::AlignLeft | Qt::AlignVCenter, phase,
        kLabelWeight);
    drawTabular(
        painter, QRectF(left, px(60), room, px(24)), Qt::AlignLeft | Qt::AlignVCenter, m_view.time,
        fittedSize(m_view.time, px(26), px(14), room, kNumberWeight), kNumberWeight);
}

StatusTile::StatusTile(QWidget* parent) : PressPart(QStringLiteral("status"), parent) {}

void StatusTile::show(const StatusView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({view.clock, view.sound}));
    update();
}

void StatusTile::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = rect();
    const Theme& look = theme();
    const QColor white = changeoverColours().on;
    const QColor text = m_view.plain ? white : look.text;
    const QColor soft = m_view.plain ? white : look.textSoft;
    const bool trouble = !m_view.soundOk;
    QColor edge = m_view.plain ? white : look.edge;
    QColor ear = m_view.plain ? white : look.tone(Tone::Normal).ink;
    if (trouble && !m_view.plain) {
        edge = look.tone(Tone::Soon).ink;
        ear = edge;
    }
    drawPanel(
        painter, box, px(14), m_view.plain ? QColor(0, 0, 0, 0) : look.ground, edge,
        px(trouble ? 5 : 2));
    const double left = px(18);
    const double right = box.right() - px(17);
    paintSign(painter, QRectF(left, px(16), px(28), px(26)), Sign::Menu, soft);
    const QRectF earPlace(left - px(2), px(53), px(28), px(28));
    if (trouble) {
        paintMark(painter, earPlace, Mark::Trouble, ear, look);
    } else {
        paintSign(painter, earPlace, Sign::Sound, ear);
    }
    const double wordsLeft = left + px(32);
    const double room = right - wordsLeft;
    double size = px(34);
    while (size > px(16) && tabularWidth(m_view.clock, size, kNumberWeight) > room) {
        size -= 1;
    }
    painter.setPen(text);
    drawTabular(
        painter, QRectF(wordsLeft, px(14), room, px(30)), Qt::AlignRight | Qt::AlignVCenter,
        m_view.clock, size, kNumberWeight);
    const QFont::Weight weight = trouble ? kWordWeight : kPlainWeight;
    const Wrapped sound = wrapped(m_view.sound, textPx(22), px(13), room, 1, weight, px(24));
    drawWrapped(
        painter, QRectF(wordsLeft, px(53), room, px(28)), Qt::AlignRight | Qt::AlignVCenter, sound,
        weight);
}

} // namespace seamclock
