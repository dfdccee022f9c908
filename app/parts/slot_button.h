// A button in one of the three fixed slots, or a key of the number pad. Filled blue means: your
// hands, now. The same button stands unfilled in the same place before its time; an answer that
// stands has a heavy frame, as a bench that is looked at. An outline of
// dashes is a slot whose action is over; it keeps its place, so that no slot changes into another
// action while a weld runs.
#pragma once

#include <optional>

#include <QString>

#include "app/parts/press_part.h"
#include "app/parts/sign.h"

namespace seamclock {

struct SlotView {
    enum class Look {
        Plain,   // an action at hand
        Act,     // filled blue: the one to press now
        Waiting, // the same button before its time: outlined, large; pressing it still counts
        Gone,    // dashed outline: over; emits nothing
        White,   // over the changeover's field
        Hidden,
        Key,    // of the number pad: panel coloured
        Chosen, // the answer that stands: heavy frame
    };

    QString text;
    QString under;
    Look look = Look::Plain;
    std::optional<Sign> sign;
    bool pedal = false; // shows the pedal and its word
    QString pedalText = QStringLiteral("pedal");
    bool large = false; // the step button: 62 units waiting, 76 now
    bool tile = false;  // an answer on a page of choices: words to the left, larger
    bool enabled = true;
    bool onField = false; // Plain or Gone over the changeover's field: white outline, colourless
    bool onLate = false;  // White over the red field: its label is dark red
    QString accessible;   // where text is not words (erase)

    bool operator==(const SlotView&) const = default;
};

class SlotButton : public PressPart {
    Q_OBJECT

public:
    explicit SlotButton(const QString& name, QWidget* parent = nullptr);

    using QWidget::show;
    void show(const SlotView& view);
    const SlotView& view() const { return m_view; }
    bool isThere() const override { return m_view.look != SlotView::Look::Hidden; }

protected:
    void paintEvent(QPaintEvent* event) override;
    bool takesPress() const override;

private:
    SlotView m_view;
};

} // namespace seamclock
