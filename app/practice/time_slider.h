// The time of a take as a line to touch: where it stands, how long it is, and the weld's events as
// marks on it. Large enough for a glove; a touch anywhere goes there.
#pragma once

#include "app/parts/press_part.h"
#include "app/parts/slides.h"

#include <vector>

namespace seamclock {

struct TimeSliderView {
    struct Event {
        double share = 0; // of the length
        QString name;

        bool operator==(const Event&) const = default;
    };

    double share = 0;
    QString now;    // "4:31"
    QString length; // "of 26:10"
    std::vector<Event> events;

    bool operator==(const TimeSliderView&) const = default;
};

class TimeSlider : public PressPart, public Slides {
    Q_OBJECT

public:
    explicit TimeSlider(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const TimeSliderView& view);
    const TimeSliderView& view() const { return m_view; }
    Range range() const override { return {0, 1, 0.01, m_view.share}; }
    void slideTo(double value) override { emit moved(value); }

signals:
    void moved(double share);

protected:
    bool event(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QRectF line() const;
    void moveTo(double x);

    TimeSliderView m_view;
};

} // namespace seamclock
