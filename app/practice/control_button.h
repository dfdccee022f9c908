// A control of the practice bench: its sign above its word. It counts on press as every button
// does; held, it also tells how far the finger slid from where it pressed and when it left, which
// is how the wheel is turned slower or faster.
#pragma once

#include "app/parts/press_part.h"
#include "app/practice/bench_controls.h"

namespace seamclock {

class ControlButton : public PressPart {
    Q_OBJECT

public:
    explicit ControlButton(const QString& name, QWidget* parent = nullptr);

    using QWidget::show;
    void show(const ControlView& view);
    const ControlView& view() const { return m_view; }
    bool isThere() const override { return !m_view.hidden; }
    bool takesPress() const override { return m_view.enabled && !m_view.hidden; }
    void tap() override;

signals:
    /// Upward in units of the design, from where it pressed.
    void slid(double units);
    void left();

protected:
    bool event(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    ControlView m_view;
    double m_from = 0;
    bool m_finger = false;
    bool m_mouse = false;
};

} // namespace seamclock
