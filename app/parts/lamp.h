// The lamp: one panel that answers what to do at one glance by field, shape, word and number. Calm
// states are a tint, urgent ones a full field; a passed limit alone is framed in white, since in
// grey red and blue look the same. The number is as large as fits, and never below a cap height
// of 17.5 mm.
#pragma once

#include <QString>

#include "app/parts/mark.h"
#include "app/parts/part.h"

namespace seamclock {

struct LampView {
    Tone tone = Tone::Rest;
    Mark mark = Mark::Free;
    double fraction = 0; // of the mark's ring
    bool calm = false; // with Rest: panel with a blue edge, as in preparation where nobody hurries
    QString word;
    QString number;
    QString unit;   // beside the number, small
    QString under;  // what the number is
    QString under2; // goes first when text is enlarged
    QString corner; // "5 of 11"
    bool framed = false;
    bool frameWide = true; // the frame steps between 10 and 4 units; the screen's clock says when

    bool operator==(const LampView&) const = default;
};

inline constexpr double kClockFloorUnits =
    104; // cap height 17.5 mm: that is px of cap, 143 px of type

class Lamp : public Part, public ShowsMark {
public:
    explicit Lamp(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const LampView& view);
    const LampView& view() const { return m_view; }
    std::optional<Mark> markShown() const override { return m_view.mark; }
    QRectF markPlace() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    LampView m_view;
};

} // namespace seamclock
