// A measured value typed with gloves on: the field with its range, the pad, and what was typed
// before it in the same row. A value outside its range is said to be so and is not kept.
#pragma once

#include "app/pages/page.h"
#include "app/parts/number_pad.h"

#include <QStringList>
#include <optional>

namespace seamclock {

struct ValueTask {
    QString title;
    QString where;
    QString unit;
    double least = 0;
    double most = 0;
    int decimals = 2;
    QStringList before; // what was kept already, the last ones are shown
    SlotView back;
    SlotView stop;

    bool operator==(const ValueTask&) const = default;
};

class ValuePage : public Page {
    Q_OBJECT

public:
    explicit ValuePage(QWidget* parent = nullptr);
    bool takesDigits() const override { return true; }

    /// `typed`: what stands there already.
    void ask(const ValueTask& task, const QString& typed = {});
    const ValueTask& task() const { return m_task; }
    /// Absent: nothing is typed, or it is outside the range.
    std::optional<double> value() const;
    /// Why there is none; empty: nothing is typed, or it is within.
    QString refusal() const;
    NumberPad* pad() const { return m_pad; }

protected:
    void place() override;

private:
    std::optional<double> typedValue() const;
    void refresh();

    ValueTask m_task;
    NumberField* m_field;
    NumberPad* m_pad;
    Sentence* m_sentence;
};

} // namespace seamclock
