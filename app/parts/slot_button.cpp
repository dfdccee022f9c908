#include "app/parts/slot_button.h"

#include <algorithm>

#include <QPainter>

#include "app/parts/brush.h"
#include "app/parts/type.h"

namespace seamclock {

namespace {

constexpr double kLeastStep = 60; // the step that waits is 62 units

using Look = SlotView::Look;

struct Colours {
    QColor fill = Qt::transparent;
    QColor edge = Qt::transparent;
    QColor text;
    QColor under;
    bool dashed = false;
    bool heavy = false;
};

Colours coloursOf(const SlotView& view, const Theme& theme) {
    const ChangeoverColours& field = changeoverColours();
    Colours colours;
    const Field act = theme.tone(Tone::Act);
    switch (view.look) {
    case Look::Plain:
    case Look::Waiting:
        colours = {theme.button, theme.edge, theme.text, theme.text, false};
        break;
    case Look::Chosen:
        colours = {theme.button, theme.text, theme.text, theme.text, false, true};
        break;
    case Look::Key:
        colours = {theme.panel, theme.edge, theme.text, theme.text, false};
        break;
    case Look::Act:
        colours = {act.field, act.field, act.on, act.on, false};
        if (theme.kind == ThemeKind::Contrast) {
            colours.edge = act.ink;
        }
        break;
    case Look::Gone:
        colours = {Qt::transparent, theme.edge, theme.textSoft, theme.textSoft, true};
        break;
    case Look::White: {
        const QColor label = view.onLate ? field.lateLabel : field.label;
        colours = {field.on, field.on, label, label, false};
        break;
    }
    case Look::Hidden:
        break;
    }
    if (view.onField && view.look != Look::White && view.look != Look::Hidden) {
        colours.fill = Qt::transparent;
        colours.edge = field.on;
        colours.text = field.on;
        colours.under = field.on;
    }
    if (!view.enabled && view.look != Look::Hidden) {
        colours.text = view.onField ? field.on : theme.textSoft;
        colours.under = colours.text;
        colours.fill = Qt::transparent;
        colours.edge = view.onField ? field.on : theme.hairline;
    }
    return colours;
}

} // namespace

SlotButton::SlotButton(const QString& name, QWidget* parent) : PressPart(name, parent) {}

void SlotButton::show(const SlotView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(
        view.look == Look::Hidden
            ? QString()
            : spoken(
                  {view.accessible.isEmpty() ? view.text : view.accessible, view.under,
                   view.pedal && view.look != Look::Gone ? view.pedalText : QString()}));
    update();
}

bool SlotButton::takesPress() const {
    return m_view.enabled && m_view.look != Look::Gone && m_view.look != Look::Hidden;
}

void SlotButton::paintEvent(QPaintEvent*) {
    if (m_view.look == Look::Hidden) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = rect();
    const Colours colours = coloursOf(m_view, theme());
    const double frame = px(colours.heavy ? 7 : 3);
    if (colours.dashed) {
        QPen pen(colours.edge, frame, Qt::SolidLine, Qt::FlatCap);
        pen.setDashPattern({3.2, 2.4});
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(
            box.adjusted(frame / 2, frame / 2, -frame / 2, -frame / 2), px(14), px(14));
    } else {
        drawPanel(painter, box, px(14), colours.fill, colours.edge, frame);
    }

    if (m_view.text.isEmpty() && m_view.sign) {
        const double side = std::min(px(58), std::min(box.width(), box.height()) * 0.6);
        QRectF place(0, 0, side, side);
        place.moveCenter(box.center());
        paintSign(painter, place, *m_view.sign, colours.text);
        return;
    }

    // what stands beside the words: the sign left, the pedal right
    double left = px(m_view.large ? 22 : 14);
    double right = left;
    const bool withPedal = m_view.pedal && m_view.look != Look::Gone;
    if (withPedal) {
        const double size = fittedSize(m_view.pedalText, px(22), px(14), px(84), kPlainWeight);
        const double words = textWidth(m_view.pedalText, size, kPlainWeight);
        const double wide = std::max(px(46), words);
        const double centre = box.right() - px(23) - wide / 2;
        const double top = box.center().y() - px(36);
        paintSign(painter, QRectF(centre - px(24), top, px(48), px(46)), Sign::Pedal, colours.text);
        painter.setPen(colours.under);
        drawLine(
            painter, QRectF(centre - wide / 2, top + px(54), wide, px(22)),
            Qt::AlignHCenter | Qt::AlignTop, m_view.pedalText, size, kPlainWeight);
        right = box.right() - (centre - wide / 2) + px(12);
    }
    const bool slim = box.width() < px(250);
    const double signSide = px(m_view.tile ? 52 : slim ? 32 : 38);
    const double signLeft = px(m_view.tile ? 24 : slim ? 12 : 18);
    if (m_view.sign) {
        left = signLeft + signSide + px(m_view.tile ? 22 : slim ? 6 : 10);
        right = slim && !withPedal ? px(8) : right;
    } else if (m_view.tile) {
        left = px(28);
    }

    const bool act = m_view.look == Look::Act || m_view.look == Look::White;
    // A key of the pad has one sign, and that large; a tab that stands is a word like the others.
    const bool key = m_view.look == Look::Key && m_view.text.size() == 1;
    double wanted = m_view.large  ? px(act && m_view.under.isEmpty() ? 76 : 62)
                    : m_view.tile ? textPx(38)
                                  : textPx(32);
    double floor = m_view.large ? px(32) : px(17);
    if (key) {
        wanted = std::max(px(66), wanted);
        floor = px(32);
    }
    const QFont::Weight weight = m_view.look == Look::Gone ? kPlainWeight : kWordWeight;
    const double room = box.width() - left - right;
    // the first line never gives way to the second, which takes what is left of the height
    const double height = box.height() - px(26);
    double gap = px(14);
    double kept = m_view.under.isEmpty() ? 0 : px(24) * kCapHeight + gap + px(6);
    // and a step that would have to be small for it, in the low slot of an upright screen, stands
    // alone
    const bool withUnder =
        !m_view.under.isEmpty() && !(m_view.large && height - kept < px(kLeastStep) * kCapHeight);
    kept = withUnder ? kept : 0;
    // one line, if it need not become much smaller for it
    Wrapped text = wrapped(m_view.text, wanted, wanted * 0.75, room, 1, weight, height - kept);
    if (!text.fits || key) {
        text = wrapped(m_view.text, wanted, floor, room, key ? 1 : 2, weight, height - kept);
    }
    Wrapped under;
    double underHeight = 0;
    if (withUnder) {
        gap = std::max(gap, text.size * 0.27); // the first line's descenders need that much
        under = wrapped(
            m_view.under, std::min(textPx(24), std::max(px(24), text.size * 0.8)), px(14), room, 1,
            kPlainWeight, std::max(px(14), height - wrappedHeight(text) - gap));
        // the two lines' middles 47 units apart, if there is so much room
        const double wish = px(47) - (text.size + under.size) * kCapHeight / 2;
        const double free = height - wrappedHeight(text) - wrappedHeight(under) - px(4);
        gap = bounded(wish, gap, std::max(gap, free));
        underHeight = wrappedHeight(under) + gap;
    }

    const auto centred = [&](double width) {
        // in the middle of the tile, or of what is free where the middle would touch sign or pedal
        if (m_view.tile) {
            return left;
        }
        const double middle = box.center().x();
        const double start = middle - width / 2;
        if (start >= left && start + width <= box.width() - right) {
            return start;
        }
        return bounded(start, left, std::max(left, box.width() - right - width));
    };
    const auto widest = [&](const Wrapped& lines, QFont::Weight own) {
        double width = 0;
        for (const QString& line : lines.lines) {
            width = std::max(width, tabularWidth(line, lines.size, own));
        }
        return width;
    };
    const double block = wrappedHeight(text) + underHeight;
    double top = box.center().y() - block / 2;
    if (withUnder && !m_view.large) {
        // lower by what the eye gives the heavier first line, as far as the second's descenders let
        // it
        const double below = box.bottom() - px(14) - under.size * 0.27 - (top + block);
        top += bounded(px(7), 0, std::max(below, 0.0));
    }
    if (m_view.sign) {
        const double middle = m_view.tile ? box.center().y() : top + wrappedHeight(text) / 2;
        paintSign(
            painter, QRectF(signLeft, middle - signSide / 2, signSide, signSide), *m_view.sign,
            colours.text);
    }
    const double textWide = widest(text, weight);
    painter.setPen(colours.text);
    drawWrapped(
        painter, QRectF(centred(textWide), top, textWide, wrappedHeight(text)),
        (m_view.tile ? Qt::AlignLeft : Qt::AlignHCenter) | Qt::AlignTop, text, weight);
    if (withUnder) {
        const double underWide = widest(under, kPlainWeight);
        painter.setPen(colours.under);
        drawWrapped(
            painter,
            QRectF(
                centred(underWide), top + wrappedHeight(text) + gap, underWide,
                wrappedHeight(under)),
            Qt::AlignHCenter | Qt::AlignTop, under, kPlainWeight);
    }
}

} // namespace seamclock
