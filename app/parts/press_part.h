// A part that is a button as a whole: it counts on press, not on release, by mouse or finger, once
// for each press. A press that Qt makes up from a touch is left out, or one touch would count
// twice. Keys are the screen's: one place there knows which key is the next step and which press is
// a held key's repeat. To a screen reader it is a button, and can be pressed by it.
#pragma once

#include "app/parts/part.h"

namespace seamclock {

class SpokenButton;

/// From here on a screen reader hears of parts that are pressed or dragged.
void tellScreenReaders();

class PressPart : public Part {
    Q_OBJECT

public:
    PressPart(const QString& name, QWidget* parent);

    /// false: its place is empty; nothing is painted there, told, or pressed.
    virtual bool isThere() const { return true; }
    /// false: it is seen, and a press does nothing now.
    virtual bool takesPress() const { return true; }
    /// A press without a finger, by a key or a screen reader: it ends as it begins.
    virtual void tap() { emit pressed(); }

signals:
    void pressed();

protected:
    bool event(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;

private:
    friend class SpokenButton;
    bool m_touched = false;
};

} // namespace seamclock
