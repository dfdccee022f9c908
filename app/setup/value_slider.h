// A value that a gloved hand moves: a step down, a step up, and between them a track to press or
// drag on. A mark shows where the plan has it.
#pragma once

#include "app/parts/part.h"
#include "app/parts/slides.h"

namespace seamclock {

struct SliderView {
    QString caption;
    QString value; // "215 °C"
    double low = 0;
    double high = 1;
    double step = 1;
    double now = 0;
    double plan = 0;

    bool operator==(const SliderView&) const = default;
};

class ValueSlider : public Part, public Slides {
    Q_OBJECT

public:
    explicit ValueSlider(const QString& name, QWidget* parent = nullptr);

    using QWidget::show;
    void show(const SliderView& view);
    const SliderView& view() const { return m_view; }
    Range range() const override { return {m_view.low, m_view.high, m_view.step, m_view.now}; }
    void slideTo(double value) override { moveTo(value); }
    /// The width of the step down, and of the step up, at its two ends [px].
    double ends() const;

signals:
    void moved(double value);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    QRectF track() const;
    void moveTo(double value);
    void dragTo(double x);

    SliderView m_view;
    bool m_dragged = false;
};

} // namespace seamclock
