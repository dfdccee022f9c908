#include "app/shop/value_page.h"

#include "app/text/numbers.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr int kShownBefore = 3;

QChar decimalSign() {
    const QString sign = QLocale().decimalPoint();
    return sign.isEmpty() ? QLatin1Char('.') : sign.front();
}

/// As few decimals as the bound has.
QString boundText(double value) {
    const bool whole = value == std::floor(value);
    return numberText(value, whole ? 0 : 1);
}

} // namespace

ValuePage::ValuePage(QWidget* parent)
    : Page("value", parent), m_field(keep(new NumberField(this))),
      m_pad(keep(new NumberPad(decimalSign(), this))),
      m_sentence(keep(new Sentence("valueSentence", this))) {
    m_sentence->setLate(true);
    connect(m_pad, &NumberPad::textChanged, this, [this] { refresh(); });
}

void ValuePage::ask(const ValueTask& task, const QString& typed) {
    m_task = task;
    m_pad->setDecimalSign(decimalSign()); // the language may have changed
    m_pad->setDecimals(task.decimals);
    m_pad->setMostDigits(8);
    m_pad->setText(QString(typed)
                       .replace(QLatin1Char('.'), decimalSign())
                       .replace(QLatin1Char(','), decimalSign()));
    refresh();
}

std::optional<double> ValuePage::typedValue() const {
    bool read = false;
    const double value =
        QString(m_pad->text()).replace(m_pad->decimalSign(), QLatin1Char('.')).toDouble(&read);
    return read ? std::optional(value) : std::nullopt;
}

std::optional<double> ValuePage::value() const {
    const auto typed = typedValue();
    return typed && *typed >= m_task.least && *typed <= m_task.most ? typed : std::nullopt;
}

QString ValuePage::refusal() const {
    if (!typedValue() || value()) {
        return {};
    }
    return tr("%1 %2 is outside: allowed %3 to %4.")
        .arg(m_pad->text(), m_task.unit, boundText(m_task.least), boundText(m_task.most))
        .simplified();
}

void ValuePage::refresh() {
    NumberView view;
    view.title = m_task.title;
    view.where = m_task.where;
    view.unit = m_task.unit;
    view.text = m_pad->text();
    view.value = typedValue();
    view.low = m_task.least;
    view.high = m_task.most;
    view.lowText = boundText(m_task.least);
    view.highText = boundText(m_task.most);
    view.allowed =
        tr("allowed %1 to %2 %3").arg(view.lowText, view.highText, m_task.unit).trimmed();
    if (view.value) {
        view.mark = value() ? Mark::Done : Mark::Late;
    }
    const int first = std::max(0, static_cast<int>(m_task.before.size()) - kShownBefore);
    for (int i = first; i < m_task.before.size(); ++i) {
        view.places.push_back({m_task.before[i], true, false});
    }
    if (!m_task.before.isEmpty()) {
        view.places.push_back({QString::number(m_task.before.size() + 1), false, true});
    }
    m_field->show(view);
    m_sentence->setText(refusal());
    m_back->show(m_task.back);
    m_stop->show(m_task.stop);
    const QString kept = (m_pad->text() + QLatin1Char(' ') + m_task.unit).trimmed();
    m_step->show(stepSlot(value() ? tr("Keep %1").arg(kept) : tr("Keep it"), value().has_value()));
}

void ValuePage::place() {
    const Frame frame = frameOf(units(), FrameKind::Pad, look().mirrored);
    const PadHalves halves = padHalves(frame, units().width(), look().mirrored);
    put(m_sentence, halves.sentence);
    put(m_field, halves.field);
    put(m_pad, halves.pad);
    placeSlots(frame);
}

} // namespace seamclock
