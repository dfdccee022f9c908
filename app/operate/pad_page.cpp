#include "app/operate/pad_page.h"

#include <QLocale>
#include <algorithm>

namespace seamclock {
namespace {

QChar decimalSign() {
    const QString sign = QLocale().decimalPoint();
    return sign.isEmpty() ? QLatin1Char('.') : sign.front();
}

} // namespace

PadPage::PadPage(QWidget* parent)
    : Page("pad", parent), m_field(keep(new NumberField(this))),
      m_pad(keep(new NumberPad(decimalSign(), this))),
      m_sentence(keep(new Sentence("padSentence", this))) {
    connect(m_pad, &NumberPad::textChanged, this, [this] { refresh(); });
}

void PadPage::ask(const NumberTask& task) {
    m_task = task;
    m_pad->setDecimals(task.decimals);
    m_pad->setText({});
    refresh();
}

NumberShown PadPage::now() const {
    return shown(m_task, m_pad->text(), m_pad->decimalSign());
}

void PadPage::refresh() {
    const NumberShown number = now();
    m_field->show(number.view);
    m_sentence->setText(number.sentence);
    SlotView back;
    back.text = tr("Erase all");
    back.look = m_pad->text().isEmpty() ? SlotView::Look::Gone : SlotView::Look::Plain;
    m_back->show(back);
    SlotView close;
    close.text = tr("Close");
    close.under = tr("nothing is kept");
    m_stop->show(close);
    SlotView step;
    step.text = number.button;
    step.large = true;
    step.look =
        number.outcome == NumberOutcome::None ? SlotView::Look::Waiting : SlotView::Look::Act;
    m_step->show(step);
}

void PadPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Pad, look().mirrored);
    const QRectF body = frame.body;
    QRectF left = body;
    QRectF right = body;
    if (frame.portrait) {
        // four rows of keys of 15 mm; the field has what they leave
        left.setHeight(body.height() - 12 - std::max(4 * 90.0 + 3 * 13, body.height() * 0.44));
        right.setTop(left.bottom() + 12);
    } else {
        left.setWidth(body.width() * 0.513);
        right.setLeft(left.right() + 16);
        if (look().mirrored) {
            const double width = units().width();
            left.moveLeft(width - left.right());
            right.moveLeft(width - right.right());
        }
    }
    const double sentence = frame.portrait ? 72 : 96;
    put(m_sentence, QRectF(left.x() + 6, left.bottom() - sentence, left.width() - 12, sentence));
    left.setHeight(left.height() - sentence);
    put(m_field, left);
    put(m_pad, right);
    placeSlots(frame);
}

} // namespace seamclock
