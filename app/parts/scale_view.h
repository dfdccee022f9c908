// A window of the bench's real scale around the set point: the flag is the set value, bracket and
// tint the allowed band, diamonds the readings that were typed in. There is no sensor, so it never
// shows a live value.
#pragma once

#include <optional>
#include <vector>

#include <QString>

#include "app/parts/part.h"

namespace seamclock {

struct ScaleView {
    QString title; // "Scale A"
    QString unit;  // "mm"
    QString value; // the set value, formatted
    double set = 0;
    double low = 0; // of the band
    double high = 0;
    double zero = 0; // the scale's own ends
    double max = 1;
    double division = 1; // what one line of the scale means
    std::vector<double> readings;
    std::optional<double> follow; // the mark to keep to while the reading is brought there
    QString lowText;
    QString highText;
    QString setText;   // on the flag: "set"
    bool free = false; // no load: the sheets are off, no set point; shows `value` ("free") and the
                       // plain scale
    bool hasScale = true; // false: nothing is to be set yet; shows title and value only
    bool operator==(const ScaleView&) const = default;
};

class ScalePanel : public Part {
public:
    explicit ScalePanel(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const ScaleView& view);
    const ScaleView& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    ScaleView m_view;
};

} // namespace seamclock
