// What a widget that is dragged along a line tells a screen reader, and is told by it: where it
// stands and between which ends. It is a slider to the reader, not a button.
#pragma once

#include <QObject>

class QAccessibleInterface;

namespace seamclock {

class Slides {
public:
    struct Range {
        double low = 0;
        double high = 1;
        double step = 0.01;
        double now = 0;
    };

    virtual ~Slides() = default;
    virtual Range range() const = 0;
    virtual void slideTo(double value) = 0;
};

/// Null: not a widget that slides.
QAccessibleInterface* spokenSlider(QObject* object);

} // namespace seamclock
