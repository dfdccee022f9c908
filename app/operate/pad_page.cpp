#include "app/operate/pad_page.h"

#include <QLocale>

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

void PadPage::ask(const NumberTask& task, const QString& typed) {
    m_task = task;
    m_pad->setDecimalSign(decimalSign()); // the language may have changed
    m_pad->setDecimals(task.decimals);
    m_pad->setText(QString(typed)
                       .replace(QLatin1Char('.'), decimalSign())
                       .replace(QLatin1Char(','), decimalSign()));
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
    const PadHalves halves = padHalves(frame, units().width(), look().mirrored);
    put(m_sentence, halves.sentence);
    put(m_field, halves.field);
    put(m_pad, halves.pad);
    placeSlots(frame);
}

} // namespace seamclock
