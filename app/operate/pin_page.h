// A PIN typed with gloves on: dots in a field, the pad, and the three slots. The digits are in a
// draft of their own (pin_draft.h) and in no text of the page; how many they are may be seen.
#pragma once

#include "app/operate/pin_draft.h"
#include "app/pages/page.h"
#include "app/parts/number_pad.h"

namespace seamclock {

struct PinView {
    QString title;
    QString where; // quiet, below it
    int digits = 0;
    bool late = false; // what the sentence says is a refusal
    QString sentence;
    bool takesKeys = true; // not while it is checked, nor while one must wait
    SlotView back;
    SlotView stop;
    SlotView step;

    bool operator==(const PinView&) const = default;
};

class PinField : public Part {
public:
    explicit PinField(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const PinView& view);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    PinView m_view;
};

class PinPage : public Page {
    Q_OBJECT

public:
    explicit PinPage(QWidget* parent = nullptr);
    bool takesDigits() const override { return true; }

    using QWidget::show;
    void show(const PinView& view);
    const PinView& view() const { return m_view; }
    PinDraft& draft() { return m_draft; }
    NumberPad* pad() const { return m_pad; }

signals:
    /// A key was pressed; the draft has it already.
    void typed();

protected:
    void place() override;

private:
    PinView m_view;
    PinDraft m_draft;
    PinField* m_field;
    NumberPad* m_pad;
    Sentence* m_sentence;
};

} // namespace seamclock
