// A number typed with gloves on: field and pad, and the three slots.
#pragma once

#include "app/operate/number_task.h"
#include "app/pages/page.h"

namespace seamclock {

class PadPage : public Page {
    Q_OBJECT

public:
    explicit PadPage(QWidget* parent = nullptr);
    bool takesDigits() const override { return true; }

    /// `typed`: what stands there already.
    void ask(const NumberTask& task, const QString& typed = {});
    const NumberTask& task() const { return m_task; }
    NumberShown now() const;
    NumberPad* pad() const { return m_pad; }

protected:
    void place() override;

private:
    void refresh();

    NumberTask m_task;
    NumberField* m_field;
    NumberPad* m_pad;
    Sentence* m_sentence;
};

} // namespace seamclock
