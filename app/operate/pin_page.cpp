#include "app/operate/pin_page.h"

#include "app/parts/brush.h"
#include "app/parts/mark.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {

PinField::PinField(QWidget* parent) : Part("pinField", parent) {}

void PinField::show(const PinView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({view.title, view.where, tr("digits typed: %1").arg(view.digits)}));
    update();
}

void PinField::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& look = theme();
    drawPanel(painter, rect(), px(14), look.panel, Qt::transparent, 0);
    const QRectF inner = QRectF(rect()).adjusted(px(20), px(18), -px(20), -px(20));
    const Wrapped title =
        wrapped(m_view.title, textPx(35), px(20), inner.width(), 2, kWordWeight, px(84));
    const double titleHeight = std::max(wrappedHeight(title), px(40));
    painter.setPen(look.text);
    drawWrapped(
        painter, QRectF(inner.left(), inner.top(), inner.width(), titleHeight),
        Qt::AlignLeft | Qt::AlignVCenter, title, kWordWeight);
    const Wrapped where =
        wrapped(m_view.where, textPx(27), px(17), inner.width(), 2, kPlainWeight, px(60));
    const double whereHeight = std::max(wrappedHeight(where), px(20)) + px(22);
    const double whereTop = inner.top() + titleHeight + px(metrics().text > 1 ? 14 : 4);
    painter.setPen(look.textSoft);
    drawWrapped(
        painter, QRectF(inner.left(), whereTop, inner.width(), whereHeight),
        Qt::AlignLeft | Qt::AlignVCenter, where, kPlainWeight);

    const double top = whereTop + whereHeight + px(6);
    const QRectF field(inner.left(), top, inner.width(), std::min(inner.bottom() - top, px(150)));
    const QColor ink = look.tone(m_view.late ? Tone::Late : Tone::Act).ink;
    drawPanel(
        painter, field, px(14), look.kind == ThemeKind::Light ? look.ground : look.raised, ink,
        px(5));
    double left = field.left() + px(22);
    if (m_view.late) {
        const double side = px(52);
        paintMark(
            painter, QRectF(left, field.center().y() - side / 2, side, side), Mark::Late, ink,
            look);
        left += side + px(16);
    }
    const int most = static_cast<int>(kLongestPin);
    const double pitch = (field.right() - px(22) - left) / most;
    const double radius = std::min(pitch * 0.34, field.height() * 0.14);
    for (int i = 0; i < most; ++i) {
        const QPointF centre(left + pitch * (i + 0.5), field.center().y());
        const bool typed = i < m_view.digits;
        painter.setPen(Qt::NoPen);
        painter.setBrush(typed ? look.text : look.edge);
        painter.drawEllipse(centre, typed ? radius : radius * 0.3, typed ? radius : radius * 0.3);
    }
}

PinPage::PinPage(QWidget* parent)
    : Page("pin", parent), m_field(keep(new PinField(this))),
      m_pad(keep(new NumberPad(QLatin1Char('.'), this))),
      m_sentence(keep(new Sentence("pinSentence", this))) {
    m_pad->setForgetful();
    connect(m_pad, &NumberPad::digitTyped, this, [this](QChar digit) {
        if (m_view.takesKeys) {
            m_draft.type(digit);
            emit typed();
        }
    });
    connect(m_pad, &NumberPad::eraseTyped, this, [this] {
        if (m_view.takesKeys) {
            m_draft.erase();
            emit typed();
        }
    });
}

void PinPage::show(const PinView& view) {
    m_view = view;
    m_field->show(view);
    m_sentence->setText(view.sentence);
    m_back->show(view.back);
    m_stop->show(view.stop);
    m_step->show(view.step);
}

void PinPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Pad, look().mirrored);
    const PadHalves halves = padHalves(frame, units().width(), look().mirrored);
    put(m_field, halves.field);
    put(m_sentence, halves.sentence);
    put(m_pad, halves.pad);
    placeSlots(frame);
}

} // namespace seamclock
